"""``turnpost``: opens the program with the webcam."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from ui.app import Window
    from ui.ports import Baseline


def add_parser(sub: Any) -> None:
    """Add the command's parser."""
    parser = sub.add_parser("open", help="open the program (also without a command)")
    parser.set_defaults(run=run, tell=tell)


def run(args: argparse.Namespace) -> int:  # noqa: ARG001
    """Open the program."""
    return open_program()


def tell(error: Exception) -> None:
    """Show why the program could not open: from an icon nobody sees standard error."""
    try:
        from ui.start_failed import tell as show
    except ImportError:
        # What shows windows is what is missing; the command line has said it.
        return
    show(error)


def open_program(*, plan: Path | None = None, baseline: Baseline | None = None) -> int:
    """Open the one window there may be, with a plan or with the one it remembers."""
    from tracker.session.files import open_data_folder
    from tracker.session.lock import LOCK_NAME, OnlyCopy
    from tracker.stored.delete import finish
    from ui.opening import open_note, open_window

    folder = open_data_folder()
    only = OnlyCopy(folder / LOCK_NAME)
    try:
        if not only.mine:
            app, _note = open_note()
            return app.exec()

        finish(folder)

        def begin(window: Window) -> None:
            if baseline is not None:
                # The plan's words can be compared later: the therapist sits here and has chosen it.
                window.cover("")
            window.expect_baseline(baseline)
            window.director.look_for_interrupted()

        app, _window = open_window(plan=plan, begin=begin)
        return app.exec()
    finally:
        only.close()
