"""Going away from a home level and coming back: standing up and sitting down, bending down.

Unlike a movement to and fro, this one rests at home, may leave the picture while it
is away, and is done once it is back; nothing has to follow for it to count.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass, replace
from math import exp, isfinite, nan
from statistics import median

import numpy as np

from tracker.motion.reading import peak_speed
from tracker.motion.smoothing import RunningMean
from tracker.motion.turning import USUAL_OF, Turn


@dataclass(frozen=True, slots=True)
class AwayRule:
    """What makes a way out and back count. All choices are this project's own, tried in its tests.

    Attributes
    ----------
    direction
        1 for up, -1 for down.
    out_side, back_side
        Names of the turns out and back; with no name for the way back the whole
        excursion is one turn.
    floor_mm
        Least way out that counts; between sitting up from a slump and a real one.
    share
        The same as a share of the usual way out.
    back_share
        It has come back once it is this share of the way out, or more, back.
    again_share
        A new way out has begun once it is this share out again.
    home_mm, home_share
        So near is home: the larger of the two, the second a share of the way out.
    home_s, settled_s
        How long it has to be back to count: at home, and elsewhere (a pause on the
        way back is no end).
    lost_mm
        Out of the picture after so much of a way out it is taken to be away; None
        where a loss says nothing.
    unseen_mm
        What is taken for the way out when its end was out of the picture.
    """

    direction: int
    out_side: str
    back_side: str
    floor_mm: float
    share: float = 0.4
    back_share: float = 0.5
    again_share: float = 0.25
    home_mm: float = 60.0
    home_share: float = 0.0
    home_s: float = 0.3
    settled_s: float = 1.5
    lost_mm: float | None = None
    unseen_mm: float = 250.0


#: Half the height of a stand (about 190 mm) counts, sitting up from a slump doesn't. These
#: are this project's own choice, tried in ``tests/motion/test_away.py``.
STANDING_UP = AwayRule(1, "up", "down", floor_mm=140.0, home_share=0.2)
#: A bend to the floor takes the head down by far more, or out of the picture (this project's own
#: choice).
BENDING_DOWN = AwayRule(-1, "down", "", floor_mm=200.0, lost_mm=80.0)

#: The home level is the median of so much time at first, then follows slowly. This one
#: and those below are this project's own choice.
HOME_FIRST_S = 0.5
HOME_FOLLOW_S = 10.0
HOME_NEAR_MM = 40.0
#: So far on the other side of home for so long is another home (who begins standing,
#: or the trunk bent forward before it rises, which takes less time) (this project's own choice).
OTHER_HOME_MM = 200.0
OTHER_HOME_S = 0.6
#: Slower than this a face that is lost wasn't going anywhere (this project's own choice).
GOING_MM_S = 60.0
#: Holes from here on end what was known of the movement; longer ones all of it (this project's own
#: choice).
HOLE_S = 0.5
FORGET_S = 20.0
#: How deep a bend out of the picture was isn't known. From the speed at which the face was lost
#: it takes so long or more to stop: it went as deep as that at least (this project's own choice).
STOPS_S = 0.3
#: Who has come back by this share of it or more, to this far from home or nearer (half-way up out
#: of the deepest bend of 600 mm), and stays within so much for the rule's ``settled_s``, rests
#: half-way up. Whether they only paused is clear once they go on, up or down again. Tried on
#: made-up bends (DEVELOPERS.md).
RISEN_SHARE = 0.33
RISEN_MM = 300.0
RESTS_MM = 20.0


class AwayFinder:
    """Streaming ways out and back of the head's height; ``short_mm`` tells what was missing."""

    def __init__(self, rule: AwayRule) -> None:
        self._rule = rule
        self._mean = RunningMean(hole_s=HOLE_S)
        self._first: list[tuple[float, float]] = []
        self._home = nan
        self._past: deque[tuple[float, float]] = deque()
        self._last_s = nan
        self._other_s = nan
        self._ways: list[float] = []
        self._count = 0
        self._rest()

    def _rest(self) -> None:
        """At home, or what is taken for it."""
        self._rows: list[tuple[float, float]] = []
        self._away = self._unseen = self._back = False
        self._top = self._low = 0.0
        self._top_at = self._low_at = 0
        self._near_s = nan
        #: Least depth of a bend out of the picture; since when one rests half-way up out of it.
        self._deep = 0.0
        self._rests_s = nan

    def feed(self, time_s: float, height_mm: float) -> list[Turn]:
        """Take a height (NaN where not measured); gives the turns that count from now on."""
        out = self._lost(time_s)
        smooth = self._mean.feed(time_s, height_mm)
        if smooth is None:
            return out
        self._last_s = time_s
        at_s, height = smooth
        if not isfinite(self._home):
            return self._learn_home(at_s, height)
        way = self._rule.direction * (height - self._home)
        # As it came: where it was lost is too late to be smoothed.
        self._past.append((time_s, self._rule.direction * (height_mm - self._home)))
        while time_s - self._past[0][0] > 1.0:
            self._past.popleft()
        return out + (self._when_away(at_s, way) if self._away else self._when_home(at_s, way))

    def finish(self) -> list[Turn]:
        """End the set: what has come back by now counts."""
        out = self._closed(self._rows[-1][0]) if self._away and self._back else []
        self._rest()
        return out

    # -- home -----------------------------------------------------------------

    def _learn_home(self, at_s: float, height: float) -> list[Turn]:
        self._first.append((at_s, height))
        if at_s - self._first[0][0] >= HOME_FIRST_S:
            self._home = median(h for _, h in self._first)
            self._first.clear()
        return []

    def _when_home(self, at_s: float, way: float) -> list[Turn]:
        step_s = at_s - self._rows[-1][0] if self._rows else 0.0
        self._rows.append((at_s, way))
        if self._moved_house(at_s, way):
            return []
        if abs(way) < HOME_NEAR_MM:
            drift = (1.0 - exp(-step_s / HOME_FOLLOW_S)) * way
            self._home += self._rule.direction * drift
        if way >= self._least_way():
            self._away = True
            self._top, self._top_at = way, len(self._rows) - 1
        elif len(self._rows) > 4000:
            del self._rows[:2000]
        return []

    def _moved_house(self, at_s: float, way: float) -> bool:
        if way > -OTHER_HOME_MM:
            self._other_s = nan
            return False
        if not isfinite(self._other_s):
            self._other_s = at_s
        if at_s - self._other_s < OTHER_HOME_S:
            return False
        self._home += self._rule.direction * way
        self._other_s = nan
        self._past.clear()
        self._rest()
        return True

    def _least_way(self) -> float:
        usual = median(self._ways[-USUAL_OF:]) if len(self._ways) >= 2 else nan
        share = self._rule.share * usual if isfinite(usual) else 0.0
        return max(self._rule.floor_mm, share)

    # -- away -----------------------------------------------------------------

    def _when_away(self, at_s: float, way: float) -> list[Turn]:
        self._rows.append((at_s, way))
        now, rule, size = len(self._rows) - 1, self._rule, self._size()
        if not self._back:
            if way > self._top:
                self._top, self._top_at = way, now
            if way > (1.0 - rule.back_share) * size:
                return self._half_up(at_s, way)
            self._back = True
            self._low, self._low_at, self._near_s = way, now, at_s
            return self._out_turn(at_s)
        if way < self._low:
            # Still on its way back, unless it only trembles at home.
            if self._low - way > 1.0 and not self._is_home(self._low):
                self._near_s = at_s
            self._low, self._low_at = way, now
        if self._is_home(way):
            self._near_s = self._near_s if self._was_home() else at_s
        if way - self._low >= rule.again_share * size:
            return self._closed(at_s, again=True)
        wait_s = rule.home_s if self._is_home(way) else rule.settled_s
        return self._closed(at_s) if at_s - self._near_s >= wait_s else []

    def _half_up(self, at_s: float, way: float) -> list[Turn]:
        """A bend out of the picture that ended half-way up, once one goes down again."""
        if not isfinite(self._rests_s):
            if self._stays(at_s, way):
                self._rests_s = at_s
                self._low, self._low_at = way, len(self._rows) - 1
        elif way < self._low:
            self._low, self._low_at = way, len(self._rows) - 1
        elif way - self._low >= self._rule.again_share * self._size():
            return self._closed(self._rests_s, again=True)
        return []

    def _stays(self, at_s: float, way: float) -> bool:
        if not self._unseen or self._rule.back_side:
            return False
        if way > min((1.0 - RISEN_SHARE) * self._deep, RISEN_MM):
            return False
        lately: list[tuple[float, float]] = []
        for row in reversed(self._rows):
            # What lies before a hole is another stay.
            if at_s - row[0] > self._rule.settled_s or (lately and lately[-1][0] - row[0] > HOLE_S):
                break
            lately.append(row)
        ways = [w for _, w in lately]
        whole = at_s - lately[-1][0] > 0.9 * self._rule.settled_s
        return whole and max(ways) - min(ways) <= RESTS_MM

    def _size(self) -> float:
        return max(self._top, self._rule.unseen_mm) if self._unseen else self._top

    def _is_home(self, way: float) -> bool:
        return way <= max(self._rule.home_mm, self._rule.home_share * self._size())

    def _was_home(self) -> bool:
        return len(self._rows) > 1 and self._is_home(self._rows[-2][1])

    def _lost(self, time_s: float) -> list[Turn]:
        """Nothing came for a while: away, if it was on the way out."""
        hole_s = time_s - self._last_s
        if not hole_s >= HOLE_S or not self._past:
            return []
        if hole_s >= FORGET_S:
            self._home = nan
            self._past.clear()
            self._rest()
            return []
        last_s, way = self._past[-1]
        before = [(t, w) for t, w in self._past if t < last_s - 0.12]
        lost_mm = self._rule.lost_mm
        speed = (way - before[-1][1]) / (last_s - before[-1][0]) if before else 0.0
        # Going away by a hand's breadth in a second; and lost somewhere in the next tenth.
        going = speed >= GOING_MM_S
        deep = way + STOPS_S * max(speed, 0.0)
        way += 0.1 * max(speed, 0.0)
        out: list[Turn] = []
        if self._away and not self._back:
            if going and isfinite(self._rests_s):
                out = self._closed(self._rests_s, again=True)
            self._unseen |= going
        elif going and lost_mm is not None and not self._away and way >= lost_mm:
            self._away = self._unseen = True
            self._top, self._top_at = way, len(self._rows) - 1
        if self._unseen:
            # Lost once more, going on or not: it was as deep as where it was seen last.
            self._deep = max(self._deep, deep)
        self._past.clear()
        return out

    # -- turns ----------------------------------------------------------------

    def _out_turn(self, at_s: float) -> list[Turn]:
        """The way out, once it is clear that it is over."""
        if not self._unseen:
            self._ways.append(self._top)
        if not self._rule.back_side:
            return []
        start = self._last_below(0.05 * self._top, self._top_at)
        reached = next(k for k in range(start, len(self._rows)) if self._at_top(k))
        full = max(self._ways, default=nan)
        turn = self._turn(self._rule.out_side, start, reached, at_s)
        return [replace(turn, short_mm=nan if self._unseen else full - self._top)]

    def _closed(self, at_s: float, again: bool = False) -> list[Turn]:
        """The way back, or the whole excursion; a new one goes on from here."""
        if self._rule.back_side:
            first = max(k for k in range(self._low_at + 1) if self._at_top(k))
            near = self._low + 0.05 * self._top
            last = next(k for k in range(first, self._low_at + 1) if self._rows[k][1] <= near)
            turn = self._turn(self._rule.back_side, first, last, at_s)
        else:
            start = self._last_below(0.05 * self._size(), self._top_at)
            turn = self._turn(self._rule.out_side, start, self._top_at, at_s)
        short = max(0.0, self._low)
        rows = self._rows[self._low_at :]
        self._rest()
        self._rows = rows
        if again:
            self._away = True
            self._top_at = max(range(len(rows)), key=lambda k: rows[k][1])
            self._top = rows[self._top_at][1]
        return [replace(turn, short_mm=short)]

    def _at_top(self, k: int) -> bool:
        return self._rows[k][1] >= 0.95 * self._top

    def _last_below(self, level: float, top_at: int) -> int:
        below = [k for k in range(top_at + 1) if self._rows[k][1] <= level]
        if below:
            return below[-1]
        return min(range(top_at + 1), key=lambda k: self._rows[k][1])

    def _turn(self, side: str, first: int, last: int, at_s: float) -> Turn:
        part = np.array(self._rows[first : last + 1])
        speed = nan if self._unseen else peak_speed(part[:, 0], part[:, 1])
        self._count += 1
        way = nan if self._unseen else self._top
        return Turn(
            index=self._count - 1,
            side=side,
            start_s=self._rows[first][0],
            peak_s=self._rows[last][0],
            end_s=at_s,
            amplitude_deg=nan,
            swing_deg=nan,
            peak_speed_deg_s=nan,
            amplitude_mm=way,
            swing_mm=way,
            peak_speed_mm_s=speed,
        )
