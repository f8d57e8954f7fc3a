"""A baseline that is begun from the desk, in the program's window that the desk was opened from.

There may be one window of the program, and it holds the lock: the desk can't open another
one, and closing this one would close the desk with it.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from ui.ports import Baseline
from ui.session_state import Phase

if TYPE_CHECKING:
    from ui.app import Window

#: Pages on which nothing goes on that would be lost.
_FREE = frozenset({Phase.welcome, Phase.tools, Phase.summary})


def begin_baseline(window: Window, plan: Path, folder: Path) -> str:
    """Have the next session in a window be the baseline with a plan, in a new folder.

    Returns
    -------
    str
        ``here`` if the first page offers it now; ``busy`` if something goes on in the window,
        which is left as it is; ``refused`` if its first page says why it could not take the plan.
    """
    director = window.director
    window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
    window.raise_()
    window.activateWindow()
    after_one = director.phase == Phase.summary and (director.plan is None or director.unsaved)
    if director.phase not in _FREE or director.clip is not None or after_one:
        return "busy"
    window.cover("")
    if director.phase == Phase.summary:
        director.again()
    elif director.phase == Phase.tools:
        director.stop()
    window.open_plan(plan)
    # Its words can be compared later: the therapist sits here and has chosen the plan.
    window.cover("")
    window.expect_baseline(Baseline(folder))
    return "here" if director.baseline is not None else "refused"
