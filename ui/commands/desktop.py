"""``turnpost desktop``: Turnpost in the menu of the desktop, and out of it again."""

from __future__ import annotations

import argparse
import sys


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "desktop",
        help="put Turnpost into the desktop's menu, or take it out",
        description="Puts an entry with Turnpost's icon into your own menu of programs, or takes "
        "it out (Linux). Nobody else's menu is touched, and no session.",
    )
    which = parser.add_mutually_exclusive_group(required=True)
    which.add_argument("--add", action="store_true", help="put it in; anew if it is there")
    which.add_argument(
        "--remove", action="store_true", help="take it out; do so before uninstalling"
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Change the menu and say what was done."""
    from tracker.errors import InputError, RunError
    from tracker.session.files import data_folder
    from ui import desktop_entry, installed

    if sys.platform != "linux":
        raise InputError(
            "'turnpost desktop' is for Linux; here make a shortcut to turnpost by hand"
        )
    if args.remove:
        for path in desktop_entry.remove() or ["nothing; Turnpost was not in the menu"]:
            print(f"taken away: {path}")
        print(f"To take Turnpost itself away: {installed.AWAY[installed.way()]}")
        print(f"Sessions and set-ups stay, in {data_folder()}; delete them there if you want to.")
        return 0
    command = installed.own_command()
    if command is None:
        raise RunError(
            "there is no command 'turnpost' in this installation; install Turnpost first"
        )
    for path in desktop_entry.add(command):
        print(f"put in place: {path}")
    print("Turnpost is in the menu now; with some desktops from the next login on.")
    return 0
