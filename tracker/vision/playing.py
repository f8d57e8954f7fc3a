"""A clip as a source of the measuring process: at its own speed, or as fast as it is measured."""

from __future__ import annotations

import math
import time
from collections import deque

from tracker.frame import Frame
from tracker.vision.cameras import Condition
from tracker.vision.capture import clock
from tracker.vision.clips import ClipReader, open_clip
from tracker.vision.messages import ClipSource, Resume, SourceState, SourceStats

#: A clip that is measured too slowly may fall this far behind its clock and catch
#: up again; beyond it the clock waits, so that no frame is lost (this project's own
#: choice: about what is looked ahead).
MAX_LATE_S = 0.1


class ClipFeed:
    """Frames of a clip when they are due; none is dropped.

    A clip that is taken up again goes on after the last frame that was delivered:
    its clock waited.

    Raises
    ------
    InputError
        If the clip can't be read.
    """

    def __init__(self, source: ClipSource, resume: Resume | None = None) -> None:
        self._clip: ClipReader = open_clip(source.path)
        self._paced = source.paced
        resume = resume or Resume(-math.inf)
        #: What is not later is not new, and doesn't wait until it is due.
        self._known_s = resume.known_s
        self._discard = resume.discard
        if not resume.again and resume.known_s >= 0:
            self._clip.skip_to(resume.known_s)
        self._next = self._clip.read()
        #: Reading of the clock at the clip's time 0.
        self._zero_s = clock()
        if self._next is not None and self._next.time_s > self._known_s:
            self._begin_with_new()
        self._paused_s: float | None = None
        self._given = 0
        self._walls: deque[float] = deque(maxlen=90)

    def get(self, timeout_s: float) -> Frame | None:
        """The next frame once it is due; waits for that at most ``timeout_s``."""
        frame = self._next
        if frame is None:
            time.sleep(timeout_s)
            return None
        known = frame.time_s <= self._known_s
        if self._paced and not known and not self._wait_for(frame, timeout_s):
            return None
        self._next = self._clip.read()
        if known and self._next is not None and self._next.time_s > self._known_s:
            self._begin_with_new()
        self._given += 1
        self._walls.append(clock())
        return frame

    def _begin_with_new(self) -> None:
        """Pass over what may have killed the process before, and start the clip's clock."""
        for _ in range(self._discard):
            self._next = self._clip.read()
        if self._next is not None:
            self._zero_s = clock() - self._next.time_s

    def _wait_for(self, frame: Frame, timeout_s: float) -> bool:
        """Wait until a frame is due; False if that takes longer than ``timeout_s``."""
        wait_s = self._zero_s + frame.time_s - clock()
        time.sleep(min(max(wait_s, 0.0), timeout_s))
        if wait_s < -MAX_LATE_S:
            self._zero_s += -wait_s - MAX_LATE_S
        return wait_s <= timeout_s

    @property
    def state(self) -> Condition:
        """Running, or ended with a note if the clip broke off."""
        if self._next is not None:
            return SourceState.running, ""
        return SourceState.ended, self._clip.end_note

    @property
    def stuck(self) -> bool:
        """Never: a file answers."""
        return False

    def stats(self) -> SourceStats:
        """What the clip gives, at the speed at which it is measured."""
        walls = self._walls
        rate = (len(walls) - 1) / (walls[-1] - walls[0]) if len(walls) > 2 else math.nan
        info = self._clip.info
        return SourceStats(info.width_px, info.height_px, rate, self._given, 0)

    def pause(self) -> None:
        """Hold the clip's clock."""
        if self._paused_s is None:
            self._paused_s = clock()

    def go_on(self) -> None:
        """Let the clip's clock go on from where it was held."""
        if self._paused_s is not None:
            self._zero_s += clock() - self._paused_s
            self._paused_s = None

    def close(self) -> None:
        """Let the file go."""
        self._clip.close()
