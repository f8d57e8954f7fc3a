"""What OpenCV and the FFmpeg inside it read from the environment, once, when they are loaded."""

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
