"""What the program has stored, by kind, and what else lies in its folder.

A part is known by its name and place, as those who write it name it. What nothing of
the program writes is no part: it is named, and never copied or deleted. The one exception is
what file managers and office programs leave in a session's folder: it is not copied, and is
deleted with the session. Links are never followed, but to see who can read what they lead to.
"""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from pathlib import Path
from typing import Any

from tracker.handover import keys, sent
from tracker.records.index import cache_folder
from tracker.session.files import data_folder
from tracker.session.lock import LOCK_NAME
from tracker.session.saving import FILE_NAMES, JOURNAL_NAME, MOVED_NAME, SUMMARY_NAME
from tracker.stored.readers import Readers, who_can_read
from tracker.vision import models


class Kind(StrEnum):
    """What a stored part is."""

    sessions = "sessions"
    #: A journal without a summary.
    broken_off = "broken_off"
    #: Sessions of other people, which a clinic has received or made together with them.
    received = "received"
    #: What a set-up has learnt: the shape and the look of a face.
    faces = "faces"
    #: Copies of the plan in use and of the one before.
    plans = "plans"
    #: What was measured of cameras, and how a mark on the wall was read.
    cameras = "cameras"
    #: Which sessions were handed over.
    handed_over = "handed_over"
    settings = "settings"
    #: A clinic's keys, each locked by its passphrase.
    keys = "keys"
    #: What a therapist has noted beside sessions, and which were sent.
    notes = "notes"
    #: The desk's index of folders: it can be made anew.
    desk_index = "desk_index"
    #: Of a writing or a deletion that broke off.
    remains = "remains"


#: The kinds that are sessions.
SESSIONS = frozenset({Kind.sessions, Kind.broken_off})
#: The kinds whose parts are folders of sessions, whoever's.
RECORDED = SESSIONS | {Kind.received}
#: Begins the folder that something lies in while it is deleted.
DELETED = ".turnpost-deleted-"
#: The same of a session that was only told of, and by mistake (``ui.wiring``).
TAKEN_BACK = "taken-back-"
PROFILES, NOTES, REVIEW = "profiles", "notes", "review"
_FILES = {
    "plan-in-use.json": Kind.plans,
    "plan-before.json": Kind.plans,
    "cameras.json": Kind.cameras,
    sent.RECORD: Kind.handed_over,
    "window.ini": Kind.settings,
}
#: The program's own, without anything of a person: the lock, the models.
_PASSED_OVER = frozenset({LOCK_NAME, models.FOLDER})
_IN_SESSION = frozenset({JOURNAL_NAME, MOVED_NAME, *FILE_NAMES})
#: Folders with sessions of other people, as the desk and ``receive`` name them.
_BESIDE = ("baseline-", "handed-over-")
#: What file managers (macOS, Windows, KDE) and LibreOffice leave in a folder that was looked into:
#: nothing of anybody's, so that a session is one all the same, and takes it along when it goes.
_LEFT_BY_LOOKING = re.compile(
    r"\.DS_Store|\._.+|Thumbs\.db|[Dd]esktop\.ini|\.directory|\.~lock\..+#"
)
#: A session's name begins or ends with when it began.
_WHEN = re.compile(r"(?<!\d)(20\d{6})-(\d{6})(?!\d)")
#: Names of the files in the folders of files.
_NAMES = {
    PROFILES: (Kind.faces, re.compile(r"[0-9a-f]{12}_.+_(usual|[\d.]+)\.npz")),
    keys.FOLDER: (Kind.keys, re.compile(r"clinic-[0-9a-z]{8}\.(age|pub|old(-\d+)?)")),
    NOTES: (Kind.notes, re.compile(r".+\.(notes|sent)\.jsonl")),
    REVIEW: (Kind.desk_index, re.compile(r"[0-9a-f]{24}\.json")),
}
#: What :func:`~tracker.session.files.whole_file` calls a file, and ``new_folder`` a folder, before
#: it is whole.
_HALF_MADE = re.compile(r"\.(.+)\.[a-z0-9_]{8}")


@dataclass(frozen=True, slots=True)
class Item:
    """One part that is stored.

    Attributes
    ----------
    kind
        What it is.
    path
        Its file, or its folder with all that lies in it.
    size_bytes
        How much it takes; that of a folder is the sum of its files.
    at
        When a session began or a face was learnt, in local time; else when it was written last.
    camera, worn
        Of a face: the camera it belongs to, and what was worn; empty where not known.
    of
        Of remains: what they are remains of; None where that can't be told.
    """

    kind: Kind
    path: Path
    size_bytes: int
    at: datetime
    camera: str = ""
    worn: str = ""
    of: Kind | None = None


@dataclass(frozen=True, slots=True)
class Stored:
    """What is stored.

    Attributes
    ----------
    folder
        The folder of the user's data, with no link in its path.
    items
        Every part, the newest first within its kind.
    others
        What lies there and is not the program's; a session's folder that holds something
        else besides is named here, and stays.
    elsewhere
        Links under names of the program's own folders: what it reads and writes there lies
        elsewhere, and is never deleted from here.
    readers
        Who can read the parts, and what lies elsewhere.
    """

    folder: Path
    items: tuple[Item, ...]
    others: tuple[Path, ...]
    elsewhere: tuple[Path, ...] = ()
    readers: Readers = Readers.unknown

    def of(self, *kinds: Kind) -> tuple[Item, ...]:
        """The parts of some kinds."""
        return tuple(i for i in self.items if i.kind in kinds)

    def meant(self, kinds: Iterable[Kind]) -> tuple[Item, ...]:
        """The same with their remains: what goes when these kinds are deleted."""
        wanted = frozenset(kinds)
        return tuple(i for i in self.items if i.kind in wanted or i.of in wanted)


About = Callable[[Path], Mapping[str, Any]]


def what_is_stored(
    data: Path | None = None, cache: Path | None = None, about: About = lambda _path: {}
) -> Stored:
    """Look through the user's data and cache folders.

    Parameters
    ----------
    data, cache
        The folders; the user's own by default.
    about
        From the file of a face to what stands in it of ``camera``, ``glasses`` and ``made_at``.
    """
    folder = (data or data_folder()).resolve()
    looking = _Look(about)
    for entry in _entries(folder):
        looking.top(entry)
    looking.files_of((cache or cache_folder()).resolve() / REVIEW)
    found = sorted(looking.items, key=lambda i: (i.at, i.path.name), reverse=True)
    elsewhere = tuple(sorted(looking.elsewhere))
    others = tuple(sorted(looking.others))
    readers = who_can_read([*(i.path for i in found), *elsewhere])
    return Stored(folder, tuple(found), others, elsewhere, readers)


class _Look:
    """Gathers what is found."""

    def __init__(self, about: About) -> None:
        self._about = about
        self.items: list[Item] = []
        self.others: list[Path] = []
        self.elsewhere: list[Path] = []

    def top(self, entry: os.DirEntry[str]) -> None:
        """Take what lies in the data folder itself."""
        name, path = entry.name, Path(entry.path)
        if name in _PASSED_OVER:
            return
        if entry.is_symlink() and (name == "sessions" or name in _NAMES or name in _FILES):
            self.elsewhere.append(path)
        elif _is_folder(entry):
            self._top_folder(path)
        elif name in _FILES:
            self._add(_FILES[name], path)
        elif _half_made(name) in _FILES or _of_settings(name):
            self._add(Kind.remains, path, _FILES.get(_half_made(name), Kind.settings))
        else:
            self.others.append(path)

    def _top_folder(self, folder: Path) -> None:
        name = folder.name
        if is_going(name) or _is_half_made_folder(name):
            self._add(Kind.remains, folder, Kind.sessions)
        elif name == "sessions":
            self._sessions(folder)
        elif name.startswith(_BESIDE):
            if not self._session(folder, received=True):
                self._sessions(folder, received=True)
        elif name in _NAMES and name != REVIEW:
            self.files_of(folder)
        else:
            self.others.append(folder)

    def files_of(self, folder: Path) -> None:
        """Take the files in a folder of files."""
        kind, names = _NAMES[folder.name]
        for entry in _entries(folder):
            path = Path(entry.path)
            if _is_folder(entry):
                self.others.append(path)
            elif names.fullmatch(_half_made(entry.name)):
                self._add(Kind.remains, path, kind)
            elif names.fullmatch(entry.name):
                self._add(kind, path)
            else:
                self.others.append(path)

    def _sessions(self, folder: Path, *, received: bool = False) -> None:
        """Take the sessions in a folder; notes are kept beside them where the desk opened it."""
        for entry in _entries(folder):
            inside = Path(entry.path)
            if not _is_folder(entry):
                self.others.append(inside)
            elif entry.name == NOTES:
                self.files_of(inside)
            elif _is_half_made_folder(entry.name):
                self._add(Kind.remains, inside, Kind.received if received else Kind.sessions)
            elif not self._session(inside, received=received):
                self.others.append(inside)

    def _session(self, folder: Path, *, received: bool = False) -> bool:
        """Take a session's folder, if nothing else lies in it: it would go with it."""
        entries = _entries(folder)
        names = {e.name for e in entries}
        if _when(folder.name) is None or not names & _IN_SESSION:
            return False
        if any(_is_folder(e) or not _is_of_a_session(e.name) for e in entries):
            return False
        broken = JOURNAL_NAME in names and SUMMARY_NAME not in names
        own = Kind.broken_off if broken else Kind.sessions
        self._add(Kind.received if received else own, folder)
        return True

    def _add(self, kind: Kind, path: Path, of: Kind | None = None) -> None:
        try:
            written = datetime.fromtimestamp(path.lstat().st_mtime)
        except (OSError, OverflowError, ValueError):
            # It went away meanwhile, or its time makes no sense.
            written = datetime.fromtimestamp(0)
        item = Item(kind, path, size_of(path), _when(path.name) or written, of=of)
        if kind == Kind.faces and not path.is_symlink():
            about = self._about(path)
            worn = str(about.get("glasses") or _worn(path.stem))
            at = _moment(about.get("made_at")) or written
            camera = str(about.get("camera") or "")
            item = Item(kind, path, item.size_bytes, at, camera, worn)
        self.items.append(item)


def size_of(path: Path) -> int:
    """How much a file or a folder takes, in bytes; a link takes what its own entry does."""
    return sum(_size(p) for p in files_in(path))


def files_in(path: Path) -> Iterator[Path]:
    """A file itself, or every file below a folder; links are given and not followed."""
    if path.is_symlink() or not path.is_dir():
        yield path
        return
    for entry in _entries(path):
        yield from files_in(Path(entry.path))


def _size(path: Path) -> int:
    try:
        return path.lstat().st_size
    except OSError:
        return 0


def _entries(folder: Path) -> list[os.DirEntry[str]]:
    """What lies in a folder, by name; nothing in one that can't be read or isn't there."""
    try:
        with os.scandir(folder) as found:
            return sorted(found, key=lambda e: e.name)
    except OSError:
        return []


def _is_folder(entry: os.DirEntry[str]) -> bool:
    try:
        return entry.is_dir(follow_symlinks=False)
    except OSError:
        return False


def is_going(name: str) -> bool:
    """Whether a name is that of a folder that is being deleted."""
    return name.startswith(DELETED) or (name.startswith(TAKEN_BACK) and _when(name) is not None)


def _half_made(name: str) -> str:
    """What a file or folder that is half made is to be called; nothing for any other."""
    found = _HALF_MADE.fullmatch(name)
    return "" if found is None else found[1]


def _is_of_a_session(name: str) -> bool:
    """Whether a name is that of a file of a session, whole or half made, or of nobody's."""
    return name in _IN_SESSION or _half_made(name) in _IN_SESSION or is_left_by_looking(name)


def is_left_by_looking(name: str) -> bool:
    """Whether a name is that of a file which another program leaves in a folder it has shown."""
    return _LEFT_BY_LOOKING.fullmatch(name) is not None


def _is_half_made_folder(name: str) -> bool:
    """Whether a name is that of a folder half made: of a session from clips, or received ones."""
    wanted = _half_made(name)
    return wanted.startswith(_BESIDE) or (bool(wanted) and _when(wanted) is not None)


def _of_settings(name: str) -> bool:
    """Whether a name is that of a file that Qt writes beside the settings while it saves them."""
    return bool(re.fullmatch(r"window\.ini\.(lock|\w{6})", name))


def _when(name: str) -> datetime | None:
    found = _WHEN.search(name)
    try:
        return None if found is None else datetime.strptime("".join(found.groups()), "%Y%m%d%H%M%S")
    except ValueError:
        return None


def _moment(text: Any) -> datetime | None:
    """Local time of a moment that was written down with its offset."""
    try:
        return datetime.fromisoformat(str(text)).astimezone().replace(tzinfo=None)
    except (ValueError, OverflowError, OSError):
        return None


def _worn(stem: str) -> str:
    """What was worn, by the name of a face's file: the camera's key, this, what is known of it."""
    parts = stem.split("_")
    return parts[1] if len(parts) == 3 else ""
