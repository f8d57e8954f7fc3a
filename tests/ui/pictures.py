"""Pictures of what is shown, for whoever wants to look: ``pytest --pictures FOLDER``.

No test needs them, and writing them took a fifth of a walk through the pages. Those of the
way from the first run to a saved session are kept each time, in :data:`OUTPUT`.
"""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtWidgets import QWidget

OUTPUT = Path(__file__).parents[1] / "output"
#: Where they go; None keeps none (the usual run). Set from the call of pytest.
folder: Path | None = None


def keep(widget: QWidget, name: str, *, always: bool = False) -> None:
    """Keep a picture of a widget.

    Parameters
    ----------
    widget
        As it is drawn now.
    name
        Of the picture, with folders, without ``.png``; signs that are no letters become "-".
    always
        Keep it in a run that did not ask for pictures, too.
    """
    into = OUTPUT if always and folder is None else folder
    if into is None:
        return
    path = into / (re.sub(r"[^\w/]+", "-", name) + ".png")
    path.parent.mkdir(parents=True, exist_ok=True)
    widget.grab().save(str(path))
