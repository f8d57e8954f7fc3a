"""Whether there is anything to measure."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from math import hypot, isfinite, nan
from statistics import median

from tracker.exercises.counters import EYE_OPEN_LEAST, Channel
from tracker.exercises.watchers.base import EPSILON_S, Change, Watcher
from tracker.sample import Sample


class NotMeasured(Watcher):
    """No usable sample for half a second (own choice); says why.

    ``otherwise`` is the reason where no sample gives one.
    """

    code = "not_measured"

    def __init__(
        self,
        usable: Callable[[Sample], bool],
        from_s: float,
        least_s: float = 0.5,
        otherwise: str = "gap",
    ) -> None:
        super().__init__()
        self._usable, self._least_s, self._otherwise = usable, least_s, otherwise
        self._last_s = from_s
        self._reasons: list[str] = []

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        if not self._usable(sample):
            self._reasons.append(sample.reason)
            return self.wait(sample.time_s)
        # Whatever arrived only after the hole still was one.
        out = self.wait(sample.time_s)
        if self.on:
            out.append(self._end(sample.time_s))
        self._last_s = sample.time_s
        self._reasons.clear()
        return out

    def wait(self, now_s: float) -> list[Change]:
        """Nothing usable came up to now."""
        if self.on or now_s - self._last_s < self._least_s - EPSILON_S:
            return []
        named = [r for r in self._reasons if r]
        reason = max(set(named), key=lambda r: (named.count(r), r)) if named else self._otherwise
        return [self._begin(self._last_s, reason)]


class LeftPicture(Watcher):
    """The person went out of the picture, which is more than a face not found.

    No face for half a second (own choice), and before that it was far from its place
    and still going away. A hand before the face, a turned head or a dark room leave
    it where it was. How wide the picture is at the person isn't known; a picture that
    shows a face with some room round it ends more than 150 mm from the face's middle.

    Parameters
    ----------
    least_s
        How long nothing has to be seen.
    far_mm
        Least distance from its place, sideways and up or down.
    """

    code = "left_picture"
    #: Its place is the middle of so much time; then followed slowly.
    PLACE_S = 0.5

    def __init__(self, least_s: float = 0.5, far_mm: float = 150.0) -> None:
        super().__init__()
        self._least_s, self._far_mm = least_s, far_mm
        self._place: tuple[float, float] | None = None
        self._first: list[tuple[float, float, float]] = []
        self._recent: deque[tuple[float, float]] = deque()
        self._last_s = nan

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        at = (sample.head_x_mm, sample.head_y_mm)
        if not (isfinite(at[0]) and isfinite(at[1])):
            return self.wait(sample.time_s)
        out = self.wait(sample.time_s)
        if self.on:
            out.append(self._end(sample.time_s))
        self._last_s = sample.time_s
        if self._place is None:
            self._first.append((sample.time_s, *at))
            if sample.time_s - self._first[0][0] >= self.PLACE_S:
                self._place = (
                    median(r[1] for r in self._first),
                    median(r[2] for r in self._first),
                )
            return out
        away = hypot(at[0] - self._place[0], at[1] - self._place[1])
        self._recent.append((sample.time_s, away))
        while sample.time_s - self._recent[0][0] > 0.4:
            self._recent.popleft()
        return out

    def wait(self, now_s: float) -> list[Change]:
        """Nothing came up to now."""
        if self.on or not now_s - self._last_s >= self._least_s - EPSILON_S or not self._recent:
            return []
        first, last = self._recent[0][1], self._recent[-1][1]
        self._recent.clear()
        if last < self._far_mm or last - first < 0.1 * self._far_mm:
            return []
        return [self._begin(self._last_s, "no_face")]


def is_measured(sample: Sample, channel: Channel) -> bool:
    """Whether a sample carries what a set is counted from; shut eyes were measured as shut."""
    if channel.seen is not None:
        return channel.seen(sample)
    if isfinite(channel.read(sample)):
        return True
    return channel.name.startswith("eye") and sample.eye_open < EYE_OPEN_LEAST
