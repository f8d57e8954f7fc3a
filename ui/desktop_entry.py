"""The entry in the desktop's menu, and its icon (Linux).

After the Desktop Entry, Icon Theme and Base Directory specifications of freedesktop.org.
"""

from __future__ import annotations

import contextlib
import os
import re
from pathlib import Path

from tracker.errors import InputError, RunError, system_reason
from tracker.inputs import read_bytes
from tracker.session.files import write_atomically

PICTURE = Path(__file__).parent / "pictures" / "turnpost.svg"
#: In an entry of ours; one without it is somebody else's and is left alone.
MARK = "X-Turnpost-Entry=true"
#: No entry is as long (this project's own choice).
MAX_ENTRY = 1_000_000


def data_home() -> Path:
    """Where a user's own menu entries and icons lie."""
    named = os.environ.get("XDG_DATA_HOME", "")
    # The specification has relative paths passed over.
    return Path(named) if Path(named).is_absolute() else Path.home() / ".local" / "share"


def entry_path() -> Path:
    """Place of the menu entry."""
    return data_home() / "applications" / "turnpost.desktop"


def icon_path() -> Path:
    """Place of the icon, in the theme that every other one falls back to."""
    return data_home() / "icons" / "hicolor" / "scalable" / "apps" / "turnpost.svg"


def entry(command: Path) -> str:
    """Text of a menu entry that starts ``command``.

    Raises
    ------
    InputError
        If its path can't be written in an entry.
    """
    path = str(command)
    if not path.isprintable():
        raise InputError(f"{path}: no menu entry can hold this path; install Turnpost elsewhere")
    lines = (
        "[Desktop Entry]",
        "Type=Application",
        "Version=1.4",
        "Name=Turnpost",
        "GenericName=Balance and eye exercises",
        "Comment=Practise your vestibular exercises in front of the webcam",
        f"Exec={_exec_word(path)}",
        f"TryExec={_string(path)}",
        "Icon=turnpost",
        "Terminal=false",
        "Categories=Science;MedicalSoftware;",
        "Keywords=vestibular;dizziness;balance;exercise;practice;",
        "StartupNotify=true",
        "StartupWMClass=turnpost",
        MARK,
    )
    return "\n".join(lines) + "\n"


def add(command: Path) -> list[Path]:
    """Put the entry and the icon in place, anew if they are there; the files.

    Raises
    ------
    InputError
        If an entry of that name is not ours, or the place can't be written to.
    RunError
        If writing fails half-way.
    """
    text = entry(command)
    _must_be_ours()
    for path, content in ((icon_path(), PICTURE.read_text("utf-8")), (entry_path(), text)):
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise InputError(f"{path.parent}: can't be made ({system_reason(error)})") from error
        write_atomically(path, content)
    _icons_changed()
    return [entry_path(), icon_path()]


def remove() -> list[Path]:
    """Take the entry and the icon away; those that were there.

    Raises
    ------
    InputError
        If the entry is not ours.
    RunError
        If one can't be taken away.
    """
    _must_be_ours()
    gone = []
    for path in (entry_path(), icon_path()):
        try:
            path.unlink()
        except FileNotFoundError:
            continue
        except OSError as error:
            raise RunError(f"{path}: can't be taken away ({system_reason(error)})") from error
        gone.append(path)
    _icons_changed()
    return gone


def _must_be_ours() -> None:
    path = entry_path()
    try:
        lines = read_bytes(path, MAX_ENTRY).decode("utf-8", errors="replace").splitlines()
    except FileNotFoundError:
        return
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    if MARK not in lines:
        raise InputError(f"{path}: was not made by Turnpost; move it away first")


def _icons_changed() -> None:
    """Tell caches of icons that they are old, in the way the icon theme specification asks for."""
    with contextlib.suppress(OSError):
        os.utime(data_home() / "icons" / "hicolor")


def _string(text: str) -> str:
    r"""Write a value of type string: the backslash is the one sign of a path to be escaped."""
    return text.replace("\\", "\\\\")


def _exec_word(path: str) -> str:
    """One word of ``Exec``: quoted, then escaped as any string; a per cent sign is doubled."""
    quoted = '"' + re.sub(r'(["`$\\])', r"\\\1", path) + '"'
    return _string(quoted).replace("%", "%%")
