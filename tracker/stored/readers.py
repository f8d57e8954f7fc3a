"""Who can read what is stored, by the rights of its files and of the folders above them.

An administrator can always; that is said beside it, and not looked for.
"""

from __future__ import annotations

import os
import stat
import sys
from collections.abc import Iterable, Iterator
from enum import StrEnum
from pathlib import Path

#: Rights of the group and of all others: to read a file, to pass through a folder. Lists of
#: single accounts (POSIX ACLs) show in those of the group.
_READ, _PASS = 0o044, 0o011
_ROOT = 0


class Readers(StrEnum):
    """Whose accounts can read it, besides an administrator's."""

    own = "own"
    #: Some of it at least may be read by another account.
    others = "others"
    #: This system keeps rights in another way, or did not tell them.
    unknown = "unknown"


def who_can_read(paths: Iterable[Path]) -> Readers:
    """Who can read files, and what lies in folders.

    Nothing of it at all is read by the owner alone. A link is judged by what it leads to, there
    where that is.

    Parameters
    ----------
    paths
        The files and folders, absolute.
    """
    if os.name != "posix":
        return Readers.unknown
    looking = _Look()
    try:
        if any(map(looking.others_read, filter(os.path.lexists, paths))):
            return Readers.others
    except (OSError, RuntimeError):
        return Readers.unknown
    return Readers.own if _rights_tell_all() else Readers.unknown


def _rights_tell_all() -> bool:
    """Whether nobody has a right that the rights of a file don't show; macOS has lists besides."""
    return sys.platform == "linux"


class _Look:
    """Looks at rights; each folder above and each place that a link leads to once."""

    def __init__(self) -> None:
        self._open_above: dict[Path, bool] = {}
        self._led_to: set[Path] = set()

    def others_read(self, path: Path) -> bool:
        """Whether another account can read a file, or anything that lies in a folder."""
        if path.is_symlink():
            return self._behind(path)
        above = path.parent
        if above not in self._open_above:
            ways = (above, *above.parents)
            self._open_above[above] = all(_lets_others(p, _PASS) for p in ways)
        return self._inside(path, come=self._open_above[above])

    def _inside(self, path: Path, *, come: bool) -> bool:
        """The same; ``come`` is whether another account comes to it."""
        try:
            mode = path.lstat().st_mode
            if stat.S_ISLNK(mode):
                return self._behind(path)
            if not stat.S_ISDIR(mode):
                return come and _lets_others(path, _READ)
            if come and _lets_others(path, _PASS):
                return any(self._inside(p, come=True) for p in path.iterdir())
            # Who can't come to a folder may still come to where a link in it leads.
            return any(map(self._behind, _links_in(path)))
        except FileNotFoundError:
            # It went away meanwhile.
            return False

    def _behind(self, link: Path) -> bool:
        """The same of what a link leads to."""
        try:
            target = link.resolve(strict=True)
        except FileNotFoundError:
            return False
        if target in self._led_to:
            return False
        self._led_to.add(target)
        return self.others_read(target)


def _links_in(folder: Path) -> Iterator[Path]:
    """All links below a folder; without a look at the rights of anything, which takes longer."""
    with os.scandir(folder) as found:
        entries = list(found)
    for entry in entries:
        if entry.is_symlink():
            yield Path(entry.path)
        elif entry.is_dir(follow_symlinks=False):
            yield from _links_in(Path(entry.path))


def _lets_others(path: Path, right: int) -> bool:
    """Whether a right is given to others, or the owner is one; the system's folders are no one's.

    Whoever owns something can give themselves any right to it.
    """
    found = path.lstat()
    return bool(found.st_mode & right) or found.st_uid not in (_ROOT, os.geteuid())
