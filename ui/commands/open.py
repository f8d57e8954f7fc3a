"""``turnpost``: opens the program with the webcam."""

from __future__ import annotations

import argparse
from typing import Any


def add_parser(sub: Any) -> None:
    """Add the command's parser."""
    parser = sub.add_parser("open", help="open the program (also without a command)")
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:  # noqa: ARG001
    """Open the program."""
    from ui.app import open_window

    app, _window = open_window()
    return app.exec()
