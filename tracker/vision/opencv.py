"""OpenCV, set up once: quiet, and without its hand on Qt's settings.

Everything in ``tracker/vision`` that opens a camera or a clip takes ``cv2``
from here, because OpenCV and the FFmpeg inside it read these variables only
once.
"""

from __future__ import annotations

import os

# Without these OpenCV and FFmpeg write their own lines to the terminal.
os.environ.setdefault("OPENCV_LOG_LEVEL", "SILENT")
os.environ.setdefault("OPENCV_FFMPEG_LOGLEVEL", "-8")
# A clip is a file and nothing else: no stream address inside it is followed.
os.environ.setdefault("OPENCV_FFMPEG_CAPTURE_OPTIONS", "protocol_whitelist;file")
# On Windows, cameras of some makers open in half a minute with it (opencv#17687).
os.environ.setdefault("OPENCV_VIDEOIO_MSMF_ENABLE_HW_TRANSFORMS", "0")
# The program asks macOS for the camera itself, on its main thread (opencv#16427).
os.environ.setdefault("OPENCV_AVFOUNDATION_SKIP_AUTH", "1")
# A V4L2 camera that stops sending is given up after 3 s in place of 10 s.
os.environ.setdefault("OPENCV_VIDEOIO_V4L_SELECT_TIMEOUT", "3")

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
