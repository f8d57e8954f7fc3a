"""Pictures of what is shown, for whoever wants to look: ``pytest --pictures FOLDER``.

No test needs them, and writing them took a fifth of a walk through the pages.
"""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtWidgets import QWidget

#: Where they go; None keeps none (the usual run). Set from the call of pytest.
folder: Path | None = None


def keep(widget: QWidget, name: str) -> None:
    """Keep a picture of a widget.

    Parameters
    ----------
    widget
        As it is drawn now.
    name
        Of the picture, with folders, without ``.png``; signs that are no letters become "-".
    """
    if folder is None:
        return
    path = folder / (re.sub(r"[^\w/]+", "-", name) + ".png")
    path.parent.mkdir(parents=True, exist_ok=True)
    widget.grab().save(str(path))
