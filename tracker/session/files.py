"""Files that appear whole or not at all, readable by their owner alone."""

from __future__ import annotations

import contextlib
import os
import re
import shutil
import stat
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from tracker.errors import InputError, RunError, system_reason

_SESSION_ID = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,99}\Z")


def write_atomically(path: Path, content: str | bytes) -> None:
    """Write a file so that its name only ever shows the whole of it.

    As :func:`whole_file` does; the file is readable by its owner alone.

    Raises
    ------
    InputError
        If the place named can't be written to (no such folder, a folder, no right).
    RunError
        If writing fails half-way, for example on a full disk. Nothing is left over,
        and what was there before is unharmed.
    """
    # Half of a pair of code units, as a damaged file can hold, is no text: it becomes "?".
    data = content.encode("utf-8", errors="replace") if isinstance(content, str) else content
    with whole_file(path) as file:
        file.write(data)


@contextmanager
def whole_file(path: Path) -> Iterator[BinaryIO]:
    """A file to fill, which takes its name only once the block has ended without an error.

    The content goes to a temporary file in the same folder, is flushed to the
    disk and takes the name's place. The file is readable by its owner alone.

    Raises
    ------
    InputError
        If the place named can't be written to (no such folder, a folder, no right).
    RunError
        If writing fails half-way, for example on a full disk. Nothing is left over,
        and what was there before is unharmed.
    """
    if path.is_dir():
        raise InputError(f"{path}: is a folder; name a file")
    try:
        handle, name = tempfile.mkstemp(prefix=f".{path.name[:40]}.", dir=path.parent)
    except OSError as error:
        raise InputError(
            f"{path}: can't be written ({system_reason(error)}); choose another place"
        ) from error
    temporary = Path(name)
    try:
        with os.fdopen(handle, "w+b") as file:
            yield file
            file.flush()
            os.fsync(file.fileno())
        temporary.replace(path)
    except OSError as error:
        temporary.unlink(missing_ok=True)
        raise RunError(f"{path}: could not be written ({system_reason(error)})") from error
    except BaseException:
        temporary.unlink(missing_ok=True)
        raise
    sync_folder(path.parent)


def sync_folder(folder: Path) -> None:
    """Put a changed name on disk too, where the system can (Windows can't)."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return
    try:
        os.fsync(handle)
    except OSError:
        pass
    finally:
        os.close(handle)


def make_private_folder(path: Path) -> Path:
    """Make a folder (and those above it) that only its owner can enter.

    Raises
    ------
    RunError
        If it can't be made.
    """
    try:
        make_folders(path)
    except (OSError, ValueError) as error:
        why = system_reason(error)
        raise RunError(f"{path}: the folder can't be made ({why})") from error
    return path


def make_folders(path: Path) -> None:
    """Make a folder and those above it, each for its owner alone; one that is there stays.

    Raises
    ------
    OSError
        If one can't be made.
    """
    # With its own ``parents`` Path.mkdir lets everybody into those above.
    missing = []
    while not path.is_dir():
        missing.append(path)
        if path.parent == path:
            break
        path = path.parent
    for one in reversed(missing):
        one.mkdir(mode=0o700, exist_ok=True)


def rights_of_group(new: Path | int, folder: Path) -> int:
    """What a folder lets its group do, for something new in it, which gets that group (Unix).

    Without the folder's group the rights would be those of another: that of whoever makes it.
    None are given where it can't get it, as who makes it doesn't belong to it.

    Parameters
    ----------
    new
        What was made in the folder: its place, or its handle.
    folder
        The folder.
    """
    there = folder.stat()
    if _group_of(new) != there.st_gid:
        with contextlib.suppress(OSError):
            os.chown(new, -1, there.st_gid)
    return there.st_mode & 0o070 if _group_of(new) == there.st_gid else 0


def _group_of(what: Path | int) -> int:
    return os.stat(what).st_gid  # noqa: PTH116 - it may be a handle


def open_data_folder() -> Path:
    """The data folder, made if need be, and closed to others if it is this user's alone.

    One that was made by an earlier version may be open to all users of the computer. One that
    ``TURNPOST_DATA`` names, that others may write to or that was given them in another way is
    left as it is: others may be meant to read it.

    Raises
    ------
    RunError
        If it can't be made.
    """
    data = make_private_folder(data_folder())
    if os.name == "posix" and not os.environ.get("TURNPOST_DATA"):
        for folder in (data, data / "sessions"):
            with contextlib.suppress(OSError):
                _close_to_others(folder)
    return data


def _close_to_others(folder: Path) -> None:
    """Leave a folder to its owner alone, unless it is somebody else's or was shared on purpose."""
    found = folder.lstat()
    shared = found.st_mode & (stat.S_IWGRP | stat.S_IWOTH | stat.S_ISGID | stat.S_ISVTX)
    if not stat.S_ISDIR(found.st_mode) or found.st_uid != os.geteuid() or shared:
        return
    listed = os.listxattr(folder) if hasattr(os, "listxattr") else []
    if found.st_mode & 0o077 and not any("posix_acl" in name for name in listed):
        folder.chmod(0o700)


@contextmanager
def new_folder(path: Path) -> Iterator[Path]:
    """A folder to fill, which takes its name only once the block has ended without an error.

    Raises
    ------
    InputError
        If something is there already.
    RunError
        If it can't be made.
    """
    if path.exists() and not (path.is_dir() and not any(path.iterdir())):
        raise InputError(f"{path}: is there already; name a new folder")
    make_private_folder(path.parent)
    try:
        name = tempfile.mkdtemp(prefix=f".{path.name[:40]}.", dir=path.parent)
    except OSError as error:
        raise RunError(f"{path}: the folder can't be made ({system_reason(error)})") from error
    try:
        # One level down, where nobody looks for a session.
        whole = make_private_folder(Path(name) / "whole")
        yield whole
        _take_name(whole, path)
    finally:
        shutil.rmtree(name, ignore_errors=True)
    sync_folder(path.parent)


def _take_name(whole: Path, path: Path) -> None:
    try:
        if path.exists():
            path.rmdir()
        whole.replace(path)
    except OSError as error:
        raise RunError(f"{path}: the folder can't be made ({system_reason(error)})") from error


def data_folder() -> Path:
    """Where sessions and profiles are kept: ``TURNPOST_DATA``, or the user's data folder."""
    named = named_folder("TURNPOST_DATA")
    if named is not None:
        return named
    # Imported here: the check of a clip needs no data folder.
    from platformdirs import user_data_dir

    return Path(user_data_dir("turnpost", appauthor=False))


def named_folder(variable: str) -> Path | None:
    """The folder that a variable of the environment names, if it names one.

    Raises
    ------
    InputError
        If it lies in the home of somebody who is not known here.
    """
    named = os.environ.get(variable)
    try:
        return Path(named).expanduser() if named else None
    except RuntimeError as error:
        raise InputError(
            f"{named}: nobody of this name is known; name another folder in {variable}"
        ) from error


def session_folder(session_id: str, data: Path | None = None) -> Path:
    """Folder of one session inside the data folder; not made yet.

    Raises
    ------
    InputError
        If the ID could lead outside the data folder.
    """
    if not _SESSION_ID.match(session_id):
        raise InputError(f"{session_id!r} is no session ID")
    return (data or data_folder()) / "sessions" / session_id


def must_be_writable(path: Path) -> None:
    """Refuse an output before long work is done for it.

    Raises
    ------
    InputError
        If the file could not be written there.
    """
    if path.is_dir():
        raise InputError(f"{path}: is a folder; name a file")
    if not path.parent.is_dir():
        raise InputError(f"{path}: there is no folder {path.parent}; choose another place")
    if not os.access(path.parent, os.W_OK):
        raise InputError(f"{path}: the folder can't be written to; choose another place")
