"""The lens of each camera, kept in one small file of the user's data."""

from __future__ import annotations

import hashlib
import json
from pathlib import Path
from typing import Any

from tracker.lens import DEFAULT_LENS, LEAST_DEG, MOST_DEG, SOURCES, Lens
from tracker.session.files import data_folder, make_private_folder, write_atomically

FILE = "cameras.json"
FORMAT, FORMAT_VERSION = "turnpost-cameras", 1


def camera_key(device_id: str, name: str) -> str:
    """Short key of a camera, which tells nobody its name."""
    return hashlib.sha256(f"{device_id}|{name}".encode()).hexdigest()[:12]


def load_lens(key: str) -> Lens:
    """The lens kept for a camera; the usual one where there is none, or none that makes sense."""
    entry = _read().get(key)
    try:
        return _lens(entry)
    except (TypeError, KeyError, ValueError):
        return DEFAULT_LENS


def keep_lens(key: str, lens: Lens) -> None:
    """Keep a camera's lens; the usual one is kept by forgetting."""
    known = _read()
    known.pop(key, None)
    if lens.source != "default":
        known[key] = {
            "vertical_fov_deg": lens.vertical_fov_deg,
            "source": lens.source,
            "error_deg": lens.error_deg,
            "aspect": lens.aspect,
        }
    content = {"format": FORMAT, "format_version": FORMAT_VERSION, "cameras": known}
    make_private_folder(data_folder())
    write_atomically(_path(), json.dumps(content, indent=1).encode())


def _path() -> Path:
    return data_folder() / FILE


def _read() -> dict[str, Any]:
    try:
        content = json.loads(_path().read_text(encoding="utf-8"))
        known = content["cameras"] if content["format"] == FORMAT else {}
    except (OSError, ValueError, KeyError, TypeError):
        return {}
    return dict(known) if isinstance(known, dict) else {}


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
