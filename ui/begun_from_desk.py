"""A baseline that is begun from the desk, in the program's window that the desk was opened from.

There may be one window of the program, and it holds the lock: the desk can't open another
one, and closing this one would close the desk with it.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from ui.ports import Baseline
from ui.session.state import Phase

if TYPE_CHECKING:
    from ui.app import Window


def begin_baseline(window: Window, plan: Path, folder: Path) -> str:
    """Have the next session in a window be the baseline with a plan, in a new folder.

    Returns
    -------
    str
        ``here`` if the first page offers it now; ``refused`` if its first page says why it could
        not take the plan. The window is left as it is, and where it is, with ``busy``, if
        something goes on in it; with ``sample``, if the sample was chosen in it, which ends with
        its first page; and with ``clip``, if it was started with a clip, which it shows until it
        closes.
    """
    director = window.director
    if director.clip is not None:
        return "sample" if director.sample_chosen else "clip"
    if not director.at_rest or director.phase == Phase.first:
        return "busy"
    window.cover("")
    if director.phase == Phase.summary:
        director.leave_summary()
    elif director.phase == Phase.tools:
        director.stop()
    window.open_plan(plan)
    # Its words can be compared later: the therapist sits here and has chosen the plan.
    window.cover("")
    window.expect_baseline(Baseline(folder))
    # Not sooner: over somebody's set it would hide the answer and take the keys.
    window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
    window.raise_()
    window.activateWindow()
    return "here" if director.baseline is not None else "refused"
