"""Walks a demo through by itself: start, wait for the summary, end."""

from __future__ import annotations

import time

from PySide6.QtCore import QObject, QTimer

from ui.app import Window
from ui.session_flow import Phase

#: How long each resting page stays, so that one can see it.
LOOK_S = 1.5
#: Longer than this nothing waits beyond the clip's own length.
PATIENCE_S = 120.0


class AutoWalk(QObject):
    """Presses what a person would press; ``failure`` says why it didn't come to the end."""

    def __init__(self, window: Window, clip_s: float) -> None:
        super().__init__(window)
        self._window = window
        self.failure = ""
        self.finished = False
        self._since_s = time.monotonic()
        self._phase: Phase | None = None
        self._limit_s = time.monotonic() + clip_s + PATIENCE_S
        timer = QTimer(self)
        timer.timeout.connect(self._look)
        timer.start(100)

    def _look(self) -> None:
        director = self._window.director
        now_s = time.monotonic()
        if director.phase != self._phase:
            self._phase, self._since_s = director.phase, now_s
        rested = now_s - self._since_s >= LOOK_S
        if director.trouble is not None and not rested:
            return
        if director.trouble is not None and director.phase != Phase.summary:
            self._end(f"the clip can't be played ({director.trouble.detail})")
        elif director.phase == Phase.welcome and rested:
            director.start()
        elif director.phase == Phase.summary and rested:
            self._end(director.save_error)
        elif now_s > self._limit_s:
            self._end("the demo did not come to its end in time")

    def _end(self, failure: str) -> None:
        if not self.finished:
            self.finished, self.failure = True, failure
            self._window.close()
