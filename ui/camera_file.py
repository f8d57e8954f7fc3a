"""One small file of the user's data for what is known of the cameras: sections of plain values."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from tracker.inputs import read_bytes
from tracker.session.files import data_folder, make_private_folder, write_atomically

FILE = "cameras.json"
FORMAT, FORMAT_VERSION = "turnpost-cameras", 1
#: Keeps a foreign file from filling the memory; a camera takes some hundred bytes.
MAX_FILE_BYTES = 1_000_000


def load_section(section: str) -> dict[str, Any]:
    """What a section holds, by key; nothing where the file is missing or damaged."""
    found = _read().get(section)
    return dict(found) if isinstance(found, dict) else {}


def save_section(section: str, values: dict[str, Any]) -> None:
    """Write a section anew; the others stay.

    Raises
    ------
    InputError, RunError
        If the file can't be written.
    """
    content = _read() | {"format": FORMAT, "format_version": FORMAT_VERSION, section: values}
    make_private_folder(data_folder())
    write_atomically(_path(), json.dumps(content, indent=1).encode())


def _path() -> Path:
    return data_folder() / FILE


def _read() -> dict[str, Any]:
    try:
        content = json.loads(read_bytes(_path(), MAX_FILE_BYTES).decode("utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    known = isinstance(content, dict) and content.get("format") == FORMAT
    return dict(content) if known else {}
