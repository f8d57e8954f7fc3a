"""How this copy of Turnpost was installed: its command, how to renew it, how to take it away.

Only the standard library, and nothing heavy: ``turnpost doctor`` asks when much is missing.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import Literal

from ui.start import tool

Way = Literal["folder", "pipx", "uv", "checkout", "pip"]

#: What an installer leaves in the environment that it made.
_MARKS: dict[str, Way] = {
    "pipx_metadata.json": "pipx",
    "uv-receipt.toml": "uv",
    "turnpost.json": "checkout",
}
#: How to install it anew, by the way it came.
AGAIN: dict[Way, str] = {
    "folder": "unpack the Turnpost folder anew, in place of this one",
    "pipx": "install Turnpost anew: pipx reinstall turnpost",
    "uv": "install Turnpost anew: uv tool upgrade --reinstall turnpost",
    "checkout": "install Turnpost anew: delete the folder .venv, then python3 ui/start.py doctor",
    "pip": "install Turnpost anew, in the way it was installed",
}
#: How to take it away, by the way it came.
AWAY: dict[Way, str] = {
    "folder": "delete the Turnpost folder",
    "pipx": "pipx uninstall turnpost",
    "uv": "uv tool uninstall turnpost",
    "checkout": "delete the folder .venv and this copy of the program",
    "pip": "pip uninstall turnpost",
}


def way() -> Way:
    """How this copy was installed."""
    if getattr(sys, "frozen", False):
        return "folder"
    for name, found in _MARKS.items():
        if (Path(sys.prefix) / name).exists():
            return found
    return "pip"


def own_command() -> Path | None:
    """Path of the program that starts this copy from anywhere; None if there is none.

    Not the link in the user's ``bin`` folder, which another installation may take over.
    """
    if way() == "folder":
        return Path(sys.executable)
    command = tool(Path(sys.prefix), "turnpost")
    return command.absolute() if os.access(command, os.X_OK) else None


def models_beside() -> Path | None:
    """Folder of model files beside a frozen program; None for any other."""
    return Path(sys.executable).parent / "models" if way() == "folder" else None
