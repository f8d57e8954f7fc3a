"""The lens of each camera, and what checked a kept set-up, in the file of the cameras."""

from __future__ import annotations

import hashlib
from dataclasses import asdict
from math import isfinite
from typing import Any

from calibration.mark import MarkFound
from tracker.lens import DEFAULT_LENS, LEAST_DEG, MOST_DEG, SOURCES, Lens
from ui.camera_file import keep_entry, load_section

LENSES, MARKS = "lenses", "marks"


def camera_key(device_id: str, name: str) -> str:
    """Short key of a camera, which tells nobody its name."""
    return hashlib.sha256(f"{device_id}|{name}".encode()).hexdigest()[:12]


def load_lens(key: str) -> Lens:
    """The lens kept for a camera; the usual one where there is none, or none that makes sense."""
    try:
        return _lens(load_section(LENSES)[key])
    except (TypeError, KeyError, ValueError, OverflowError):
        return DEFAULT_LENS


def keep_lens(key: str, lens: Lens) -> None:
    """Keep a camera's lens; the usual one is kept by forgetting."""
    keep_entry(LENSES, key, None if lens.source == "default" else asdict(lens))


def load_mark(key: str) -> MarkFound | None:
    """What the check by a mark showed for a kept set-up; None without, or if it is damaged.

    Nor is there one in the file of a newer version: it could not be forgotten with its set-up.
    """
    try:
        entry = load_section(MARKS, newer=False)[key]
        values = {k: float(v) for k, v in entry.items() if k != "made_on"}
        found = MarkFound(**values, made_on=str(entry["made_on"]))
    except (AttributeError, TypeError, KeyError, ValueError, OverflowError):
        return None
    return found if all(isfinite(v) for v in values.values()) else None


def keep_mark(key: str, found: MarkFound | None) -> None:
    """Keep what a check showed, or forget it."""
    keep_entry(MARKS, key, None if found is None else asdict(found))


def _lens(entry: Any) -> Lens:
    source = str(entry["source"])
    fov = float(entry["vertical_fov_deg"])
    error, aspect = entry["error_deg"], entry["aspect"]
    if source not in SOURCES or not LEAST_DEG <= fov <= MOST_DEG:
        raise ValueError(source)
    return Lens(
        fov,
        source,
        None if error is None else float(error),
        None if aspect is None else float(aspect),
    )
