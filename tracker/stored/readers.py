"""Who can read what is stored, by the rights of its files and of the folders above them.

An administrator can always; that is said beside it, and not looked for.
"""

from __future__ import annotations

import os
import stat
from collections.abc import Iterable
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

    Nothing of it at all is read by the owner alone. Links are not followed: what they lead to
    is another place.

    Parameters
    ----------
    paths
        The files and folders, absolute.
    """
    if os.name != "posix":
        return Readers.unknown
    try:
        open_above: dict[Path, bool] = {}
        for path in filter(os.path.lexists, paths):
            above = path.parent
            if above not in open_above:
                open_above[above] = all(_lets_others(p, _PASS) for p in (above, *above.parents))
            if open_above[above] and _others_read(path):
                return Readers.others
    except OSError:
        return Readers.unknown
    return Readers.own


def _others_read(path: Path) -> bool:
    """Whether another account that comes to a file or folder can read it or what lies in it."""
    try:
        mode = path.lstat().st_mode
    except FileNotFoundError:
        # It went away meanwhile.
        return False
    if stat.S_ISLNK(mode):
        return False
    if not stat.S_ISDIR(mode):
        return _lets_others(path, _READ)
    return _lets_others(path, _PASS) and any(map(_others_read, path.iterdir()))


def _lets_others(path: Path, right: int) -> bool:
    """Whether a right is given to others, or the owner is one; the system's folders are no one's.

    Whoever owns something can give themselves any right to it.
    """
    found = path.lstat()
    return bool(found.st_mode & right) or found.st_uid not in (_ROOT, os.geteuid())
