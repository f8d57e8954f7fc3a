"""A sudden fast drop of the head. It can't catch a fall, and it doesn't see every one."""

from __future__ import annotations

from collections import deque
from math import isfinite, nan

from tracker.exercises.watchers.base import Change, Watcher
from tracker.sample import Sample


class PossibleFall(Watcher):
    """The head drops far and fast, and doesn't come up again at once.

    The downward speed tells falls from daily movements better than acceleration does
    (Lee JK, Robinovitch SN, Park EJ 2015, IEEE Trans Neural Syst Rehabil Eng 23:258,
    doi:10.1109/TNSRE.2014.2357806). The limits are this project's own: sitting down and
    bending stay below 1.3 m/s over a fifth of a second unless one lets oneself drop, and
    a chair stops the head after some 400 mm. Whoever drops into a chair out of the
    picture may be asked in vain; who falls slowly, or is out of the picture before the
    drop is seen, is not noticed.

    Parameters
    ----------
    speed_mm_s
        Least mean downward speed over ``over_s``.
    drop_mm
        Least drop from the highest place of the last second that stays in the picture.
    lost_drop_mm
        The same if the face is lost while it drops.
    stay_s
        How long it has to stay down, or lost, before it is decided.
    most_mm_s
        Faster than anything that falls in a room: another face was taken for this one.
    """

    code = "possible_fall"

    def __init__(
        self,
        speed_mm_s: float = 1300.0,
        drop_mm: float = 480.0,
        lost_drop_mm: float = 250.0,
        stay_s: float = 0.5,
        over_s: float = 0.2,
        most_mm_s: float = 6000.0,
    ) -> None:
        super().__init__()
        self._speed, self._over_s, self._most = speed_mm_s, over_s, most_mm_s
        self._drop, self._lost_drop, self._stay_s = drop_mm, lost_drop_mm, stay_s
        self._past: deque[tuple[float, float]] = deque()
        self._fell: tuple[float, float] | None = None
        self._fast_s = nan
        self._low = 0.0

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        time_s, height = sample.time_s, sample.head_y_mm
        if not isfinite(height):
            return self.wait(time_s)
        out = self.wait(time_s)
        if self._past:
            last_s, last = self._past[-1]
            hole = time_s - last_s >= 0.5
            if not hole and abs(height - last) > self._most * max(time_s - last_s, 1e-3):
                self._forget()
            elif hole:
                self._past.clear()
        self._past.append((time_s, height))
        while time_s - self._past[0][0] > 1.0:
            self._past.popleft()
        self._look(time_s, height)
        return out + self._decide(time_s, height)

    def wait(self, now_s: float) -> list[Change]:
        """Nothing came up to now: lost while it dropped."""
        if self.on or self._fell is None:
            return []
        last_s, last = self._past[-1]
        start_s, top = self._fell
        if now_s - last_s < self._stay_s:
            return []
        in_mid_drop = last_s - self._fast_s <= 0.1
        if top - last < (self._lost_drop if in_mid_drop else self._drop):
            self._fell = None
            return []
        return [self._begin(start_s, "no_face")]

    def _look(self, time_s: float, height: float) -> None:
        """Whether the head drops fast now."""
        before = [(t, h) for t, h in self._past if t <= time_s - self._over_s + 0.01]
        if not before:
            return
        then_s, then = before[-1]
        if (then - height) / (time_s - then_s) < self._speed:
            return
        # Two heights alone could be two faces; a fall is seen on its way.
        if not any(t > then_s and height + 30.0 < h < then - 30.0 for t, h in self._past):
            return
        self._fast_s = time_s
        if self._fell is None:
            self._fell = self._began(time_s)
            self._low = height

    def _began(self, time_s: float) -> tuple[float, float]:
        """Time and height from which it dropped: the last moment near the top."""
        rows = [r for r in self._past if r[0] <= time_s]
        top = max(h for _, h in rows)
        start_s = max(t for t, h in rows if h >= top - 30.0)
        return start_s, top

    def _decide(self, time_s: float, height: float) -> list[Change]:
        if self.on:
            top = self._fell[1] if self._fell is not None else nan
            if top - height < 0.5 * (top - self._low):
                self._fell = None
                return [self._end(time_s)]
            return []
        if self._fell is None:
            return []
        start_s, top = self._fell
        self._low = min(self._low, height)
        if top - height < 0.7 * (top - self._low) or time_s - start_s > 3.0:
            self._fell = None  # up again, or slowly down: no fall
            return []
        if top - height < self._drop or time_s - self._fast_s < self._stay_s:
            return []
        return [self._begin(start_s)]

    def _forget(self) -> None:
        self._past.clear()
        if not self.on:
            self._fell = None
