"""The words around every page: the header, between the parts of a line, a second window."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

WINDOW_WORDS: dict[str, object] = {
    "program": QT_TRANSLATE_NOOP("turnpost", "Turnpost"),
    # header
    "camera_on": QT_TRANSLATE_NOOP("turnpost", "Camera on"),
    "camera_off": QT_TRANSLATE_NOOP("turnpost", "Camera off"),
    "camera_on.short": QT_TRANSLATE_NOOP("turnpost", "Cam. on"),
    "camera_off.short": QT_TRANSLATE_NOOP("turnpost", "Cam. off"),
    "clip_on.short": QT_TRANSLATE_NOOP("turnpost", "Sample"),
    "clip_on": QT_TRANSLATE_NOOP("turnpost", "Sample clip, no camera"),
    "text_smaller": QT_TRANSLATE_NOOP("turnpost", "Smaller text"),
    "text_larger": QT_TRANSLATE_NOOP("turnpost", "Larger text"),
    "switch_colours": QT_TRANSLATE_NOOP("turnpost", "Light or dark"),
    # between the parts of a line
    "comma": QT_TRANSLATE_NOOP("turnpost", ","),
    "read_on": QT_TRANSLATE_NOOP("turnpost", "Read on ↓"),
    # a second copy of the program
    "second.title": QT_TRANSLATE_NOOP("turnpost", "Turnpost is open already"),
    "second.what": QT_TRANSLATE_NOOP(
        "turnpost", "Look for its other window and go on there. Nothing is lost."
    ),
    "second.close": QT_TRANSLATE_NOOP("turnpost", "Close this note"),
    # a start that failed
    "not_open.title": QT_TRANSLATE_NOOP("turnpost", "Turnpost could not open"),
    "not_open.what": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your saved sessions stay as they are. Restart the computer and try again. If this note "
        "comes back, show it to somebody who helps you with the computer. This is what went wrong:",
    ),
    "close.saving": QT_TRANSLATE_NOOP("turnpost", "Saving ..."),
}
