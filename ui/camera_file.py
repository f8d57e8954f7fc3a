"""One small file of the user's data for what is known of the cameras: sections of plain values."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from tracker.errors import InputError, RunError, system_reason
from tracker.inputs import TooLargeError, read_bytes
from tracker.session.files import data_folder, make_private_folder, write_atomically

FILE = "cameras.json"
FORMAT, FORMAT_VERSION = "turnpost-cameras", 1
#: Keeps a foreign file from filling the memory; a camera takes some hundred bytes.
MAX_FILE_BYTES = 1_000_000


def load_section(section: str, *, newer: bool = True) -> dict[str, Any]:
    """What a section holds, by key; nothing where the file is missing or damaged.

    Without ``newer`` nothing either where a newer version has written it: entries that this one
    could not take away would still count.
    """
    content = _read()
    if not newer and _is_newer(content.get("format_version")):
        return {}
    return _section(content, section)


def keep_entry(section: str, key: str, value: Any) -> None:
    """Write one entry of a section, or take it away (None); all else stays.

    Raises
    ------
    InputError, RunError
        If the file can't be written; or can't be read now, or is of a newer version: all else
        would be lost with it.
    """
    content = _read(strict=True)
    known = _section(content, section)
    if value is None and key not in known:
        return
    known.pop(key, None)
    content |= {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        section: known if value is None else {**known, key: value},
    }
    make_private_folder(data_folder())
    write_atomically(_path(), json.dumps(content, indent=1).encode())


def _section(content: dict[str, Any], section: str) -> dict[str, Any]:
    found = content.get(section)
    return dict(found) if isinstance(found, dict) else {}


def _path() -> Path:
    return data_folder() / FILE


def _read(*, strict: bool = False) -> dict[str, Any]:
    """What the file holds; ``strict``: an error where something else must not take its place."""
    try:
        content = json.loads(read_bytes(_path(), MAX_FILE_BYTES).decode("utf-8"))
    except FileNotFoundError:
        return {}
    except OSError as error:
        if strict and not isinstance(error, TooLargeError):
            raise RunError(f"{_path()}: can't be read ({system_reason(error)})") from error
        return {}
    except (ValueError, RecursionError):
        return {}
    known = isinstance(content, dict) and content.get("format") == FORMAT
    if strict and known and _is_newer(content.get("format_version")):
        raise InputError(f"{_path()}: was written by a newer version of this program; update it")
    return dict(content) if known else {}


def _is_newer(version: Any) -> bool:
    return isinstance(version, int) and version > FORMAT_VERSION
