"""Deleting what is stored, for good.

A folder first leaves its place by one rename and is taken apart after that, so that a
kill in the middle leaves either all of it in its place or nothing there. What is left to
be taken apart then is done by :func:`finish`. A block on a disk that was written
over may still be read by special means; copies that were handed over or saved elsewhere
are not touched.
"""

from __future__ import annotations

import contextlib
import secrets
import shutil
import sys
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from tracker.errors import TurnpostError, system_reason
from tracker.handover import sent
from tracker.handover.sending import session_of
from tracker.records.index import cache_folder, index_path
from tracker.session.files import sync_folder
from tracker.session.recovery import is_in_use
from tracker.stored.look import DELETED, RECORDED, REVIEW, Item, Stored, is_going

#: Why a session stays.
IN_USE = "it is being recorded now"


@dataclass(frozen=True, slots=True)
class Deleted:
    """What was deleted, and what could not be: its path, and why (one line)."""

    gone: tuple[Item, ...]
    left: tuple[tuple[Path, str], ...]


def delete(stored: Stored, items: Iterable[Item], cache: Path | None = None) -> Deleted:
    """Delete some of what is stored.

    Parameters
    ----------
    stored
        What :func:`~tracker.stored.look.what_is_stored` has found.
    items
        Those that go.
    cache
        The cache folder; the user's own by default.

    Returns
    -------
    Deleted
        A session that is being recorded, what lies behind a link, and what the system
        refuses is among those left.
    """
    review = (cache or cache_folder()).resolve() / REVIEW
    gone: list[Item] = []
    left: list[tuple[Path, str]] = []
    wanted = list(items)
    # Once a folder has gone it tells no more whose session it was, if it was renamed by hand.
    ids = {i.path: session_of(i.path) for i in wanted if i.kind in RECORDED}
    with _Away(stored.folder) as away:
        for item in wanted:
            why = _refusal(item, (stored.folder, review)) or away.take(item.path)
            if why:
                left.append((item.path, why))
            else:
                gone.append(item)
        _take_indexes(gone, left)
        _tidy(stored.folder, gone)
    left += away.left
    names = {n for i in gone if i.path in ids for n in (i.path.name, ids[i.path])}
    # Now that a full disk has room to write it.
    _take_names(stored.folder, names - _names_that_stay(stored, gone) if names else names, left)
    return Deleted(tuple(gone), tuple(left))


def finish(data: Path) -> None:
    """Take apart what a deletion that broke off has left; nothing is raised."""
    with contextlib.suppress(OSError):
        for path in data.resolve().iterdir():
            if is_going(path.name) and path.is_dir() and not path.is_symlink():
                shutil.rmtree(path, ignore_errors=True)


def _tidy(folder: Path, gone: list[Item]) -> None:
    """Put on disk what has gone, and take away the program's folders that are empty now."""
    above = {p for i in gone for p in i.path.parents if p.is_relative_to(folder)}
    above |= {i.path.parent for i in gone}
    for parent in sorted(above, key=lambda p: len(p.parts), reverse=True):
        sync_folder(parent)
        if parent != folder:
            with contextlib.suppress(OSError):
                parent.rmdir()


class _Away:
    """Takes folders from their places, and apart at the end.

    Only renames go before: a full disk would have no room for a new folder.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._lot = secrets.token_hex(4)
        self._taken: list[Path] = []
        self.left: list[tuple[Path, str]] = []

    def __enter__(self) -> _Away:
        return self

    def __exit__(self, *_: object) -> None:
        """Take them apart; after an error, too: they have left their places."""
        sync_folder(self._folder)
        for path in self._taken:
            _take_apart(path, self.left)

    def take(self, path: Path) -> str:
        """Take a file or a folder from its place; gives why not, or nothing."""
        try:
            if path.is_symlink() or not path.is_dir():
                path.unlink()
            elif is_going(path.name):
                _take_apart(path, self.left)
            else:
                to = self._folder / f"{DELETED}{self._lot}-{len(self._taken)}"
                path.rename(to)
                self._taken.append(to)
        except OSError as error:
            return system_reason(error)
        return ""


def _take_apart(folder: Path, left: list[tuple[Path, str]]) -> None:
    """Delete a folder and all in it; what stays is noted."""

    def note(_call: Callable[..., object], path: str, error: BaseException) -> None:
        left.append((Path(path), system_reason(error)))

    if sys.version_info >= (3, 12):
        shutil.rmtree(folder, onexc=note)
    else:
        shutil.rmtree(folder, onerror=lambda call, path, error: note(call, path, error[1]))


def _refusal(item: Item, folders: tuple[Path, ...]) -> str:
    """Why something is not to be deleted, or nothing."""
    try:
        place = item.path.parent.resolve(strict=True)
    except OSError as error:
        return system_reason(error)
    # A link on the way, made since it was looked at, would lead elsewhere.
    if place != item.path.parent or not any(place.is_relative_to(f) for f in folders):
        return "it lies behind a link"
    if item.kind in RECORDED and is_in_use(item.path):
        return IN_USE
    return ""


def _take_indexes(gone: list[Item], left: list[tuple[Path, str]]) -> None:
    """Take away the desk's figures of deleted sessions.

    It may have looked at any folder above them, and makes its index anew.
    """
    above = {p for i in gone if i.kind in RECORDED for p in (i.path, *i.path.parents)}
    for path in sorted(map(index_path, above)):
        try:
            path.unlink(missing_ok=True)
        except OSError as error:
            left.append((path, system_reason(error)))


def _names_that_stay(stored: Stored, gone: Iterable[Item]) -> set[str]:
    """Names and IDs of the sessions that are left: a copy made by hand has that of another."""
    away = {i.path for i in gone}
    stay = [i.path for i in stored.items if i.kind in RECORDED and i.path not in away]
    return {n for path in stay for n in (path.name, session_of(path))}


def _take_names(folder: Path, names: set[str], left: list[tuple[Path, str]]) -> None:
    """Take deleted sessions out of the record of who got them."""
    if names:
        try:
            sent.forget(names, folder)
        except TurnpostError as error:
            left.append((folder / sent.RECORD, str(error)))
