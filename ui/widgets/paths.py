"""Paths as they are shown to a person."""

from __future__ import annotations

import contextlib
import re
from pathlib import Path

from PySide6.QtCore import QLocale, Qt


def shown_path(folder: Path) -> str:
    """A path with the home folder shortened, that may be broken after each folder."""
    with contextlib.suppress(ValueError):
        folder = Path("~") / folder.relative_to(Path.home())
    text = re.sub(r"([/\\])", "\\1\u200b", str(folder))
    # Among words that are read from the right its folders would change places.
    mirrored = QLocale().textDirection() == Qt.LayoutDirection.RightToLeft
    return f"\u2066{text}\u2069" if mirrored else text
