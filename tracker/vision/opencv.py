"""OpenCV, set up once: quiet, and without its hand on Qt's settings.

Everything in ``tracker/vision`` that opens a camera or a clip takes ``cv2``
from here.
"""

from __future__ import annotations

import os

from tracker.vision import environment

del environment  # importing it has set the variables that OpenCV reads

# Where Qt was looked for before OpenCV came in: its wheel names its own Qt here.
_BEFORE = {name: os.environ.get(name) for name in ("QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_FONTDIR")}

import cv2  # noqa: E402

for _name, _value in _BEFORE.items():
    if _value is None:
        os.environ.pop(_name, None)
    else:
        os.environ[_name] = _value

cv2.utils.logging.setLogLevel(0)

__all__ = ["cv2"]
