"""Paths as they are shown to a person."""

from __future__ import annotations

import contextlib
import re
from pathlib import Path

from ui import words


def shown_path(folder: Path) -> str:
    """A path with the home folder shortened, that may be broken after each folder."""
    return words.apart(breakable(short_path(folder)))


def short_path(folder: Path) -> str:
    """A path with the home folder shortened."""
    with contextlib.suppress(ValueError):
        folder = Path("~") / folder.relative_to(Path.home())
    return str(folder)


def breakable(text: str) -> str:
    """A text whose paths may be broken after each folder and within long names."""
    return re.sub(r"([/\\_-]|\w{20}(?=\w))", "\\1\u200b", text)
