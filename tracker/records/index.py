"""The index of a folder: what is known of its files, so that unchanged ones aren't read again.

It lies in the user's cache folder, never in the folder that is reviewed, and can be
thrown away at any time. A broken or older one is made anew.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tracker.errors import InputError, TurnpostError
from tracker.plan.files import load_plan
from tracker.plan.model import Plan
from tracker.records.folder import Place, PlanFile, Unread, find_places, read_place
from tracker.records.rows import SessionRow, from_data, to_data
from tracker.session.files import make_private_folder, write_atomically
from tracker.session.recovery import IN_USE_S

FORMAT = "turnpost-review-index"
#: Raise it when a row gets other fields or is computed in another way.
FORMAT_VERSION = 1
#: A file that was changed so shortly before it was read may change once more within the
#: same time stamp (FAT keeps two seconds), so it is read again next time.
UNSURE_NS = 2_000_000_000

Seen = tuple[int, int, str, Any]
#: Called with how many files are done, and of how many.
Progress = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class Records:
    """What a folder holds.

    Attributes
    ----------
    folder
        The folder.
    rows
        Sessions, oldest first; each session ID once.
    plans
        Plans that can be used, with their places.
    unread
        What could not be read, and why.
    read, kept
        How many files were read now, and how many were known.
    complete
        False where reading was stopped.
    """

    folder: Path
    rows: list[SessionRow]
    plans: list[tuple[str, Plan]]
    unread: list[Unread]
    read: int
    kept: int
    complete: bool

    @property
    def fingerprint(self) -> tuple[Any, ...]:
        """Changes when what is shown would change."""
        return (
            tuple((r.place, r.ended, r.started_at, len(r.sets)) for r in self.rows),
            tuple((u.path, u.why) for u in self.unread),
            tuple((place, plan.model_dump_json()) for place, plan in self.plans),
        )


def cache_folder() -> Path:
    """Where indexes are kept: ``TURNPOST_CACHE``, or the user's cache folder."""
    named = os.environ.get("TURNPOST_CACHE")
    if named:
        return Path(named).expanduser()
    from platformdirs import user_cache_dir

    return Path(user_cache_dir("turnpost", appauthor=False))


def index_path(folder: Path) -> Path:
    """The index of a folder."""
    name = hashlib.sha256(str(folder.resolve()).encode("utf-8", "replace")).hexdigest()[:24]
    return cache_folder() / "review" / f"{name}.json"


def read_folder(
    folder: Path,
    *,
    progress: Progress | None = None,
    stopped: Callable[[], bool] = lambda: False,
) -> Records:
    """Read a folder: what is unchanged comes from its index, the rest is read.

    Nothing that can't be read stops the rest. Where reading is stopped, what was read
    so far is given back and kept in the index.

    Raises
    ------
    InputError
        If the folder itself can't be read.
    """
    places: list[Place] = []
    unread: list[Unread] = []
    for found in find_places(folder):
        if isinstance(found, Unread):
            unread.append(found)
        else:
            places.append(found)
    before = _load(index_path(folder), folder)
    known: dict[str, Seen] = {}
    rows: dict[str, Any] = {}
    read = 0
    complete = True
    for k, place in enumerate(places):
        if stopped():
            complete = False
            break
        seen = before.get(place.path)
        holds = None if seen is None else _still_holds(seen, place)
        if seen is None or holds is None:
            seen = _look(folder, place)
            holds = _content(seen)
            read += 1
            if progress is not None:
                progress(k + 1, len(places))
        known[place.path], rows[place.path] = seen, holds
    if progress is not None and read:
        progress(len(known), len(places))
    if read or len(known) != len(before):
        _save(index_path(folder), folder, known if complete else {**before, **known})
    return _records(folder, rows, unread, read, complete)


def _still_holds(seen: Seen, place: Place) -> Any:
    """What the index knows of an unchanged file; None if it has to be read again."""
    try:
        size, mtime_ns, kind, _ = seen
        if (size, mtime_ns) != (place.size, place.mtime_ns) or kind == "unsure":
            return None
        return _content(seen)
    except (TypeError, KeyError, ValueError, AttributeError):
        return None


def _content(seen: Seen) -> Any:
    """A row, why it could not be read, or the name of another kind of file."""
    _, _, kind, value = seen
    if kind == "unsure":
        kind, value = value
    if kind == "row":
        return from_data(value)
    if kind == "unread":
        return Unread("", str(value))
    if kind not in ("plan", "passed"):
        raise ValueError(kind)
    return kind


def _look(folder: Path, place: Place) -> Seen:
    """Read one file; whatever its content does to us, it is only this file."""
    now_ns = time.time_ns()
    try:
        found = read_place(folder, place)
    except (TurnpostError, OSError) as error:
        found = Unread(place.path, str(error))
    except Exception as error:  # a foreign file must not stop the rest
        found = Unread(place.path, f"holds what is not understood ({type(error).__name__})")
    kind, value = _kept(found)
    unsure_ns = UNSURE_NS + (int(IN_USE_S * 1e9) if place.kind == "journal" else 0)
    if now_ns - place.mtime_ns < unsure_ns:
        return (place.size, place.mtime_ns, "unsure", [kind, value])
    return (place.size, place.mtime_ns, kind, value)


def _kept(found: SessionRow | PlanFile | Unread | None) -> tuple[str, Any]:
    if isinstance(found, SessionRow):
        return "row", to_data(found)
    if isinstance(found, Unread):
        return "unread", found.why
    return ("plan" if isinstance(found, PlanFile) else "passed"), None


def _records(
    folder: Path, found: dict[str, Any], unread: list[Unread], read: int, complete: bool
) -> Records:
    rows: list[SessionRow] = []
    plans: list[tuple[str, Plan]] = []
    for path, holds in found.items():
        if isinstance(holds, SessionRow):
            rows.append(holds)
        elif isinstance(holds, Unread):
            unread.append(Unread(path, holds.why))
        elif holds == "plan":
            try:
                plans.append((path, load_plan(folder / path)))
            except InputError as error:
                unread.append(Unread(path, str(error).removeprefix(f"{folder / path}: ")))
    rows.sort(key=lambda r: r.order)
    rows, twice = _once(rows)
    unread = sorted([*unread, *twice], key=lambda u: u.path)
    return Records(folder, rows, plans, unread, read, len(found) - read, complete)


def _once(rows: list[SessionRow]) -> tuple[list[SessionRow], list[Unread]]:
    """Each session once; a second copy of it is named."""
    first: dict[tuple[str | None, str], SessionRow] = {}
    kept, twice = [], []
    for row in rows:
        key = (row.person, row.session_id or "")
        if row.session_id and key in first:
            twice.append(Unread(row.place, f"is a second copy of {first[key].place}, left out"))
            continue
        first[key] = row
        kept.append(row)
    return kept, twice


def _load(path: Path, folder: Path) -> dict[str, Seen]:
    """The index as it was left; empty where there is none, or a broken or older one."""
    try:
        data = json.loads(path.read_text(encoding="utf-8"))
        if (data["format"], data["format_version"]) != (FORMAT, FORMAT_VERSION):
            return {}
        if data["folder"] != str(folder.resolve()):
            return {}
        return {str(p): tuple(s) for p, s in data["files"].items()}
    except (OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return {}


def _save(path: Path, folder: Path, known: dict[str, Seen]) -> None:
    """Write it whole or not at all; without an index the next opening is slower, no more."""
    data = {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        "folder": str(folder.resolve()),
        "files": known,
    }
    with contextlib.suppress(TurnpostError):
        make_private_folder(path.parent)
        write_atomically(path, json.dumps(data, ensure_ascii=False, separators=(",", ":")))
