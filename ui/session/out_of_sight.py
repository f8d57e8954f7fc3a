"""Stands from a chair, out of the picture's top and back: who has left, and who is to be asked.

Out of the top nothing tells a person who stands there until all is steady from one who has gone
or lies on the floor. So after longer than stands take it is asked aloud, and only without an
answer does the set stop. Who moved outwards just before stepped aside; who dropped just before
may have fallen, however slowly for :class:`tracker.exercises.watchers.falls.PossibleFall`.
"""

from __future__ import annotations

from collections import deque
from math import isfinite, nan
from statistics import median
from typing import Literal

from tracker.sample import Sample

#: The place of a seated head is learnt over so long, at first and anew each time one sits still.
LEARN_S = 1.5
#: So far does a head go that is still, and so far above the lowest pose does it still sit: a stand
#: lifts it by 300 to 450 mm (common practice).
STILL_MM, SEATED_MM = 60.0, 120.0
#: So far aside was who steps out (a stand goes up and forward, and to the side by less than a
#: hand's breadth), ...
ASIDE_MM = 150.0
#: ... and went outwards by so much in the last second that was seen: a step is longer, and a chair
#: that was moved, or somebody who leans, stays where it is (own choice).
OUTWARDS_MM, LAST_S = 60.0, 1.0
#: A head that dropped by so much within so long before it was lost: as low as the watcher of falls
#: asks of one that is lost (``PossibleFall``), at a quarter of its speed and more (own choice).
DROP_MM, DROP_S = 250.0, 1.0
#: So long is out of the picture who stepped aside or dropped; ...
LEFT_S = 4.0
#: ... so long is longer than three whole stands take, at five seconds each (common practice).
GONE_S = 15.0
#: So long is waited after the question: to hear it, find the chair and sit down (own choice).
ANSWER_S = 15.0

Word = Literal["", "left", "ask", "down"]


class OutOfSight:
    """Follows the head of who stands up from a chair and sits down again, as asked."""

    def __init__(self) -> None:
        #: Time, aside and up (mm) where the head was seen lately.
        self._seen: deque[tuple[float, float, float]] = deque()
        self._first: list[float] = []
        self._first_s = nan
        self._base_mm = self._low_mm = nan
        self._gone_s = nan
        self._asked = False

    def take(self, sample: Sample) -> Word:
        """Take a new sample; the word for what has been seen for long enough, or none.

        ``ask``: whether all is well is to be asked, once for each time out of the picture.
        ``left``: the person has gone. ``down``: they may have fallen.
        """
        if sample.reason != "no_face":
            self._gone_s, self._asked = nan, False
            if isfinite(sample.head_x_mm):
                self._see(sample.time_s, sample.head_x_mm, sample.head_y_mm)
            return ""
        if not isfinite(self._gone_s):
            self._gone_s = sample.time_s
        gone_for_s = sample.time_s - self._gone_s
        dropped = self.dropped
        if not dropped and self._stepped_aside():
            return "left" if gone_for_s >= LEFT_S else ""
        ask_s = LEFT_S if dropped else GONE_S
        if gone_for_s >= ask_s + ANSWER_S:
            return "down" if dropped else "left"
        if gone_for_s >= ask_s and not self._asked:
            self._asked = True
            return "ask"
        return ""

    def break_off(self) -> None:
        """Nothing was measured for a while: what was being seen begins anew."""
        self._gone_s, self._asked = nan, False

    def _see(self, time_s: float, aside_mm: float, up_mm: float) -> None:
        if not isfinite(self._first_s):
            self._first_s = time_s
        if time_s - self._first_s < LEARN_S:
            self._first.append(aside_mm)
            self._base_mm = median(self._first)
        if self._seen and time_s - self._seen[-1][0] > LEARN_S:
            self._seen.clear()
        self._seen.append((time_s, aside_mm, up_mm))
        while time_s - self._seen[0][0] > LEARN_S:
            self._seen.popleft()
        self._follow()

    def _follow(self) -> None:
        """The place of a pose that is held: where the chair stands now, if it is a seated one."""
        rows = self._seen
        if rows[-1][0] - rows[0][0] < 0.9 * LEARN_S or not all(isfinite(up) for _, _, up in rows):
            return
        for values in ([x for _, x, _ in rows], [y for _, _, y in rows]):
            if max(values) - min(values) > STILL_MM:
                return
        up = median(y for _, _, y in rows)
        if not isfinite(self._low_mm) or up < self._low_mm:
            self._low_mm = up
        if up - self._low_mm < SEATED_MM:
            self._base_mm = median(x for _, x, _ in rows)

    def _last(self, within_s: float) -> list[tuple[float, float]]:
        """Aside (from the chair) and up, in the last seconds that were seen."""
        if not self._seen:
            return []
        from_s = self._seen[-1][0] - within_s
        return [(x - self._base_mm, y) for t, x, y in self._seen if t >= from_s]

    def _stepped_aside(self) -> bool:
        rows = self._last(LAST_S)
        if not rows or abs(rows[-1][0]) < ASIDE_MM:
            return False
        return abs(rows[-1][0]) - min(abs(x) for x, _ in rows) >= OUTWARDS_MM

    @property
    def dropped(self) -> bool:
        """Whether the head dropped just before it was seen last."""
        heights = [y for _, y in self._last(DROP_S) if isfinite(y)]
        return bool(heights) and max(heights) - heights[-1] >= DROP_MM
