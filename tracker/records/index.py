"""The index of a folder: what is known of its files, so that unchanged ones aren't read again.

It lies in the user's cache folder, never in the folder that is reviewed, and can be
thrown away at any time. A broken or older one is made anew.
"""

from __future__ import annotations

import contextlib
import gc
import hashlib
import json
import time
import zlib
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tracker.errors import InputError, TurnpostError
from tracker.inputs import read_bytes
from tracker.plan.files import load_plan
from tracker.plan.model import Plan
from tracker.records.folder import Place, PlanFile, Unread, find_places, read_place
from tracker.records.identity import each_once
from tracker.records.notes import unread_notes
from tracker.records.rows import SessionRow, Shapes, pack, unpack
from tracker.session.files import make_private_folder, named_folder, write_atomically
from tracker.session.recovery import IN_USE_S

FORMAT = "turnpost-review-index"
#: Raise it when a row gets other fields or is computed in another way.
FORMAT_VERSION = 20
#: Before the check sum.
_SUM = b',"crc32":'
#: A damaged index doesn't fill the memory; one of 2,400 sessions has some MB.
MAX_FILE_BYTES = 200_000_000
#: A file that was changed so shortly before it was read may change once more within the
#: same time stamp (FAT keeps two seconds), so it is read again next time.
UNSURE_NS = 2_000_000_000

#: Size, time of change in ns, kind, and what the file holds.
Seen = tuple[int, int, str, Any]
_KINDS = ("row", "unread", "plan", "passed")
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
        Plans that can be used, with their places; the file that was written last comes last.
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
            tuple(self.rows),
            tuple((u.path, u.why) for u in self.unread),
            tuple((place, plan.model_dump_json()) for place, plan in self.plans),
        )


def cache_folder() -> Path:
    """Where indexes are kept: ``TURNPOST_CACHE``, or the user's cache folder."""
    named = named_folder("TURNPOST_CACHE")
    if named is not None:
        return named
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
    unread = unread_notes(folder)
    for found in find_places(folder):
        if isinstance(found, Unread):
            unread.append(found)
        else:
            places.append(found)
    if not folder.is_dir():
        # It went away while it was looked through: what was known of it is not gone.
        raise InputError(f"{folder}: there is no such folder; name one that holds sessions")
    with without_collecting():
        before = _Index(index_path(folder), folder)
        known: dict[str, Seen] = {}
        read = 0
        complete = True
        for k, place in enumerate(places):
            if stopped():
                complete = False
                break
            seen = before.seen(place)
            if seen is None:
                seen = _look(folder, place)
                read += 1
                if progress is not None:
                    progress(k + 1, len(places))
            known[place.path] = seen
        if progress is not None and read:
            progress(len(known), len(places))
        if read or len(known) != before.count:
            before.save(known if complete else {**before.rest(known), **known})
        return _records(folder, known, unread, read, complete)


@contextlib.contextmanager
def without_collecting() -> Iterator[None]:
    """Python looks for garbage each time many objects were made; here all of them stay."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _look(folder: Path, place: Place) -> Seen:
    """Read one file; whatever its content does to us, it is only this file."""
    now_ns = time.time_ns()
    try:
        found = read_place(folder, place)
    except (TurnpostError, OSError) as error:
        found = Unread(place.path, str(error))
    except Exception as error:  # a foreign file must not stop the rest
        found = Unread(place.path, f"holds what is not understood ({type(error).__name__})")
    unsure_ns = UNSURE_NS + (int(IN_USE_S * 1e9) if place.kind == "journal" else 0)
    mtime_ns = -1 if now_ns - place.mtime_ns < unsure_ns else place.mtime_ns
    if isinstance(found, SessionRow):
        return (place.size, mtime_ns, "row", found)
    if isinstance(found, Unread) and found.why.startswith("can't be read"):
        # The disk or the network may give it the next time.
        return (place.size, -1, "unread", found.why)
    if isinstance(found, Unread):
        return (place.size, mtime_ns, "unread", found.why)
    kind = "plan" if isinstance(found, PlanFile) else "passed"
    return (place.size, mtime_ns, kind, None)


def _records(
    folder: Path, known: dict[str, Seen], unread: list[Unread], read: int, complete: bool
) -> Records:
    rows: list[SessionRow] = []
    plans: list[tuple[str, Plan]] = []
    for path, (_, _, kind, value) in known.items():
        if kind == "row":
            rows.append(value)
        elif kind == "unread":
            unread.append(Unread(path, value))
        elif kind == "plan":
            try:
                plans.append((path, load_plan(folder / path)))
            except InputError as error:
                unread.append(Unread(path, str(error).removeprefix(f"{folder / path}: ")))
    rows.sort(key=lambda r: r.order)
    plans.sort(key=lambda p: (_written_ns(folder / p[0]), p[0]))
    rows, twice = each_once(rows, folder)
    unread = sorted([*unread, *(Unread(*t, copy=True) for t in twice)], key=_order_of)
    return Records(folder, rows, plans, unread, read, len(known) - read, complete)


def _order_of(unread: Unread) -> tuple[bool, bool, str]:
    """By path, first what can't be read: whoever keeps copies and files of patients has many."""
    return unread.handed_over, unread.copy, unread.path


def _written_ns(path: Path) -> int:
    try:
        return path.stat().st_mtime_ns
    except OSError:
        return 0


class _Index:
    """The index as it was left; empty where there is none, or a broken or older one."""

    def __init__(self, path: Path, folder: Path) -> None:
        self._path, self._folder = path, str(folder.resolve())
        self._files: dict[str, Any] = {}
        self._shapes: list[list[str]] = []
        try:
            data = json.loads(_unharmed(read_bytes(path, MAX_FILE_BYTES)).decode("utf-8"))
            own = (data["format"], data["format_version"], data["folder"])
            if own == (FORMAT, FORMAT_VERSION, self._folder):
                self._files, self._shapes = dict(data["files"]), list(data["shapes"])
        except (OSError, ValueError, KeyError, TypeError, RecursionError):
            pass

    @property
    def count(self) -> int:
        """How many files it knows."""
        return len(self._files)

    def seen(self, place: Place) -> Seen | None:
        """What an unchanged file holds; None if it has to be read (again)."""
        entry: Any = self._files.get(place.path)
        try:
            size, mtime_ns, kind, value = entry
            if (size, mtime_ns) != (place.size, place.mtime_ns) or kind not in _KINDS:
                return None
            if kind == "row":
                value = unpack(place.path, value, self._shapes)
            return (size, mtime_ns, kind, value)
        except (TypeError, ValueError, IndexError, KeyError):
            return None

    def rest(self, known: Iterable[str]) -> dict[str, Seen]:
        """What it knows of other files, for a reading that was stopped."""
        done = set(known)
        found = {}
        for path, entry in self._files.items():
            if path not in done:
                with contextlib.suppress(TypeError, ValueError, IndexError, KeyError):
                    size, mtime_ns, kind, value = entry
                    if kind == "row":
                        value = unpack(path, value, self._shapes)
                    found[path] = (size, mtime_ns, kind, value)
        return found

    def save(self, known: Mapping[str, Seen]) -> None:
        """Write it whole or not at all; without an index the next opening is only slower."""
        shapes: Shapes = {}
        files = {
            path: [size, mtime_ns, kind, pack(value, shapes) if kind == "row" else value]
            for path, (size, mtime_ns, kind, value) in known.items()
        }
        data = {
            "format": FORMAT,
            "format_version": FORMAT_VERSION,
            "folder": self._folder,
            "shapes": list(shapes),
            "files": files,
        }
        with contextlib.suppress(TurnpostError):
            make_private_folder(self._path.parent)
            text = json.dumps(data, ensure_ascii=False, separators=(",", ":"))
            write_atomically(self._path, _summed(text.encode("utf-8", errors="replace")))


def _summed(content: bytes) -> bytes:
    """An index with its check sum as its last value."""
    return content[:-1] + _SUM + b"%d}" % zlib.crc32(content[:-1])


def _unharmed(content: bytes) -> bytes:
    """An index whose check sum is right: another figure in it could not be told from a true one.

    Raises
    ------
    ValueError
        If it is not.
    """
    body, _, told = content.rpartition(_SUM)
    if told != b"%d}" % zlib.crc32(body):
        raise ValueError("the index was damaged")
    return content
