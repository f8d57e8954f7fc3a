"""Measuring: from pixels to samples, to exercise checks, to a session's summary.

No Qt anywhere below this package. ``tracker.vision`` is the only part that
knows OpenCV and MediaPipe; everything else is numpy and plain Python.
"""
