"""A sudden fast drop of the head. It can't catch a fall, and it doesn't see every one."""

from __future__ import annotations

from collections import deque
from math import inf, isfinite, nan

from tracker.exercises.watchers.base import Change, Watcher
from tracker.sample import Sample

#: After a set's end a drop that began in it has so long to become fast (own choice: a body that
#: topples is fast within a second, as the watcher's own second of memory takes it).
LOOK_ON_S = 1.0
#: Why a drop is not known to its end: no more samples came of it.
CUT_OFF = "cut_off"
#: Reasons of a drop that was not seen to stay down.
NOT_TO_ITS_END = frozenset({"no_face", CUT_OFF})


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
        self._until_s = inf

    def look_on(self, ended_s: float) -> None:
        """The set is over: from now on only a drop that began in it is of interest."""
        self._until_s = ended_s

    @property
    def undecided(self) -> bool:
        """Whether the head has dropped fast, and is not known yet to stay down."""
        return self._fell is not None and not self.on

    @property
    def cut_short(self) -> bool:
        """Whether what has been seen of an undecided drop would do if no more came of it."""
        return self.undecided and self._deep_enough()

    def give_up(self) -> list[Change]:
        """No more comes: a drop is decided by what there is of it."""
        if not self.cut_short or self._fell is None:
            return []
        return [self._begin(self._fell[0], CUT_OFF)]

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
        if now_s - self._past[-1][0] < self._stay_s:
            return []
        if not self._deep_enough():
            self._fell = None
            return []
        return [self._begin(self._fell[0], "no_face")]

    def _deep_enough(self) -> bool:
        """Whether the head was low enough where it was seen last."""
        if self._fell is None:
            return False
        last_s, last = self._past[-1]
        in_mid_drop = last_s - self._fast_s <= 0.1
        return self._fell[1] - last >= (self._lost_drop if in_mid_drop else self._drop)

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
        if self._fell is None:
            fell = self._began(time_s)
            if fell[0] >= self._until_s:
                return
            self._fell, self._low = fell, height
        self._fast_s = time_s

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
