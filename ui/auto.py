"""Walks a demo through by itself: start, wait for the summary, end."""

from __future__ import annotations

import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from types import TracebackType

from PySide6.QtCore import QCoreApplication, QObject, QTimer

from tracker.errors import RunError
from ui.app import Window
from ui.session.flow import Phase

#: How long each resting page stays, so that one can see it.
LOOK_S = 1.5
#: For so long neither page nor clip may stand still. The measuring has shorter limits
#: of its own, in time that the machine really gave it; this is for what they don't see.
PATIENCE_S = 300.0


class AutoWalk(QObject):
    """Presses what a person would press; ``failure`` says why it didn't come to the end."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self.failure: Exception | None = None
        self.finished = False
        self._phase: Phase | None = None
        self._since_s = self._moved_s = time.monotonic()
        self._clip_s = 0.0
        self._pressed = False
        timer = QTimer(self)
        timer.timeout.connect(self._look)
        timer.start(100)

    @contextmanager
    def watching(self) -> Iterator[None]:
        """End at the first thing that fails in the window, which else would only be printed."""
        before = sys.excepthook
        sys.excepthook = self._failed
        try:
            yield
        finally:
            sys.excepthook = before

    def _failed(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        del kind, trace
        self._end(error if isinstance(error, Exception) else RunError(str(error)))

    def _look(self) -> None:
        director = self._window.director
        now_s = time.monotonic()
        if director.phase != self._phase:
            self._phase, self._pressed = director.phase, False
            self._since_s = self._moved_s = now_s
        if director.now_s != self._clip_s:
            self._clip_s, self._moved_s = director.now_s, now_s
        if now_s - self._since_s >= LOOK_S:
            self._go_on()
        if now_s - self._moved_s > PATIENCE_S:
            self._end(RunError("the demo stood still for too long; start it again"))

    def _go_on(self) -> None:
        director = self._window.director
        if director.phase == Phase.summary:
            self._end(RunError(director.save_error) if director.save_error else None)
        elif director.trouble is not None:
            detail = director.trouble.detail or director.trouble.state
            self._end(RunError(f"the clip can't be played ({detail})"))
        elif director.phase == Phase.welcome and not self._pressed:
            self._pressed = True
            director.start()

    def _end(self, failure: Exception | None) -> None:
        if self.finished:
            return
        self.finished, self.failure = True, failure
        try:
            self._window.close()
        finally:
            QCoreApplication.exit(0)
