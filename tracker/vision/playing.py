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
#: up again; beyond it the clock waits, so that no frame is lost.
MAX_LATE_S = 0.1


class ClipFeed:
    """Frames of a clip when they are due; none is dropped.

    Raises
    ------
    InputError
        If the clip can't be read.
    """

    def __init__(self, source: ClipSource, resume: Resume | None = None) -> None:
        self._clip: ClipReader = open_clip(source.path)
        self._paced = source.paced
        #: Reading of the clock at the clip's time 0.
        self._zero_s = clock() if resume is None else resume.wall_s - resume.time_s
        if resume is not None:
            self._take_up(resume)
        self._next = self._clip.read()
        if resume is None:
            self._zero_s = clock()
        self._paused_s: float | None = None
        self._given = 0
        self._walls: deque[float] = deque(maxlen=90)

    def _take_up(self, resume: Resume) -> None:
        """Go on where the clip should be by the clock, or after the last frame that is known."""
        if self._paced:
            # Passing over takes time, in which the clock goes on.
            self._clip.skip_to(clock() - self._zero_s)
            return
        self._clip.skip_to(resume.time_s + 1e-4)
        for _ in range(resume.discard):
            self._clip.read()

    def get(self, timeout_s: float) -> Frame | None:
        """The next frame once it is due; waits for that at most ``timeout_s``."""
        frame = self._next
        if frame is None:
            time.sleep(timeout_s)
            return None
        if self._paced:
            wait_s = self._zero_s + frame.time_s - clock()
            if wait_s > timeout_s:
                time.sleep(timeout_s)
                return None
            if wait_s > 0:
                time.sleep(wait_s)
            elif wait_s < -MAX_LATE_S:
                self._zero_s += -wait_s - MAX_LATE_S
        self._next = self._clip.read()
        self._given += 1
        self._walls.append(clock())
        return frame

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
