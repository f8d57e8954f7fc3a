"""A fingertip brought near and held out again, from the arm that carries it, and from the eyes.

The size of a hand in the picture tells no distance: on rendered arms it grew and shrank
with how the hand was turned. The forearm does: it stands up under a hand that is near the
face, and lies level behind one that is held out. So what is counted is how far the wrist
stands above the elbow. On a rendered body 1 m away it went from 255 mm with the wrist
120 mm before the eyes to 15 mm below with the arm held out. Where the elbow or the hand
is out of the picture nothing is told, and the turning in of the eyes is counted instead
(:class:`NearCounter`).
"""

from __future__ import annotations

import itertools
from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import inf, isfinite, nan

import numpy as np

from tracker.body.raised import elbow_of, wrist_of
from tracker.exercises.counters import CHANNELS, Channel, Counter
from tracker.exercises.hands import Side
from tracker.motion.drift import Pace
from tracker.motion.smoothing import RunningMean
from tracker.motion.turning import Turn, TurningRule
from tracker.sample import Sample

#: From a way of 100 mm a cycle counts: two fifths of what a whole one reads (see above).
#: In a second in which the arm is not seen no whole cycle is hidden. Both are this
#: project's own choice.
_RULE = TurningRule(floor=100.0, first=110.0, bridge_s=1.2)
#: The arm has to be seen in this share of the looks (this project's own choice).
LEAST_SEEN = 0.6
#: A way of which the first or last half second was not seen is no whole one (this project's own
#: choice).
SEEN_ENDS_S = 0.5
#: Two turns that end so near to each other are one, told twice (this project's own choice).
SAME_S = 0.3
#: An arm tells for itself only what it has done in so long that it was seen: two usual cycles (the
#: catalogue's six seconds each; own choice).
LATELY_S = 12.0
#: From so many turns of the eyes on, none of them told by an arm, the eyes are believed: one or two
#: the hand is behind, as it tells a turn only once it has come back (own choice).
LEAST_UNTOLD = 3
#: An arm of which so many turns came within this time of the eyes' own carries the fingertip: eyes
#: may wander while it waits, and it is waited for until it has not moved lately (own choice).
PROVEN_TURNS, TOGETHER_S = 2, 0.6
#: A way of the forearm's rise that is about a whole one (255 to -15 mm, see above), and how many
#: such ways have to be judged (this project's own choice).
WHOLE_MM, LEAST_WAYS = 180.0, 4
#: Eyes are read for so long on each side of an end of the hand's way, in so many pictures at least
#: (this project's own choice).
AT_END_S, LEAST_READ = 0.4, 4
#: A tip that comes from arm's length to 30 cm turns the eyes in by 5 degrees and more (see
#: ``counters``), read up to a fifth short (bench of rendered heads): those that do less than
#: half of the rest did not go along. So coarse is one reading at an end, at the least: .9
#: degrees a picture (rendered heads), and the half second's mean of it wanders besides.
FOLLOW_DEG, READ_DEG = 2.0, 0.4
EYES_UNREAD = "the eyes were not read at the ends of enough whole ways of the hand"
WITHIN_ERROR = "within the error of how far the eyes turn in"
NOT_SEEN = "hand and elbow were not seen for long enough"
NOT_LOOKED_FOR = "the hand was not looked for"
NOTE = (
    "from the forearm, which stands up under a near hand and lies level behind one held out; "
    "tried on rendered bodies, not on people"
)


@dataclass(frozen=True, slots=True)
class NearHand:
    """What the hand was seen to do: whole cycles, and why there are none."""

    cycles: int | None
    side: Side | None = None
    reason: str = ""


def forearm_rise_mm(sample: Sample, side: str) -> float:
    """How far the wrist stands above the elbow, in mm; NaN unless both are seen."""
    (x, y), (elbow_x, elbow_y) = wrist_of(sample, side), elbow_of(sample, side)
    return y - elbow_y if isfinite(x + elbow_x) else nan


def near_hand(samples: Sequence[Sample]) -> NearHand:
    """How often a hand came near and went out again in a set.

    Parameters
    ----------
    samples
        Those of the set; the arm that moves more is the one that is meant.
    """
    looks = [s for s in samples if isfinite(s.body_seen)]
    if not looks:
        return NearHand(None, None, NOT_LOOKED_FOR)
    sides: tuple[Side, Side] = ("right", "left")
    ways = {side: way for side in sides if (way := _way_mm(looks, side)) is not None}
    side = max(ways, key=ways.__getitem__, default=None)
    # An arm that only hangs says nothing while the other one is not seen.
    if side is None or (len(ways) < len(sides) and ways[side] < _RULE.floor):
        return NearHand(None, None, NOT_SEEN)
    return NearHand(_cycles(looks, side), side)


def _way_mm(looks: Sequence[Sample], side: Side) -> float | None:
    """How far the forearm went up and down; None where it was not seen for long enough."""
    rises = np.array([forearm_rise_mm(s, side) for s in looks])
    known = rises[np.isfinite(rises)]
    if len(known) < LEAST_SEEN * len(looks):
        return None
    low, high = np.percentile(known, [5, 95])
    return float(high - low)


def _cycles(looks: Sequence[Sample], side: Side) -> int:
    arm = _Arm(side)
    for sample in looks:
        arm.feed(sample)
    arm.finish()
    return arm.counter.repetitions


class _Arm:
    """One arm in a set: its turns, and when it was seen."""

    def __init__(self, side: Side) -> None:
        self._side = side
        channel = Channel("hand_near", self._rise, ("near", "far"), _RULE, "mm", 0.3, body=True)
        self.counter = Counter(channel)
        self._mean = RunningMean(channel.smooth_s)
        self._seen_s: list[float] = []
        #: Where the forearm was lately, by how long the arm has been seen in all.
        self._lately: deque[tuple[float, float]] = deque()
        self._clock_s = 0.0
        #: Whether its turns have come while the eyes' did, until shown otherwise.
        self.believed = True

    def _rise(self, sample: Sample) -> float:
        return forearm_rise_mm(sample, self._side)

    def feed(self, sample: Sample) -> list[Turn]:
        """Take the next look; one that misses the arm is no end of a movement, many are."""
        if not isfinite(self._rise(sample)):
            # At once: what the eyes tell from here on comes after it.
            gone = self._seen_s and sample.time_s - self._seen_s[-1] >= _RULE.bridge_s
            return self.counter.finish() if gone else []
        if self._seen_s:
            self._clock_s += min(sample.time_s - self._seen_s[-1], _RULE.bridge_s)
        self._seen_s.append(sample.time_s)
        smooth = self._mean.feed(sample.time_s, self._rise(sample))
        if smooth is not None:
            self._lately.append((self._clock_s, smooth[1]))
        while self._lately and self._clock_s - self._lately[0][0] > LATELY_S:
            self._lately.popleft()
        turns = self.counter.feed(sample)
        self.believed = self.believed or bool(turns)
        return turns

    def finish(self) -> list[Turn]:
        """End the set."""
        return self.counter.finish()

    def tells_of(self, from_s: float, to_s: float, looks: int) -> bool:
        """Whether it carries the fingertip and was seen well enough at a time to tell of it.

        ``looks`` is how often it was looked for in that time. An arm that has not moved lately
        may be at rest while the other one carries the fingertip.
        """
        if not self.believed or not self.moved_lately:
            return False
        seen = [t for t in self._seen_s if from_s <= t <= to_s]
        if not seen or len(seen) < LEAST_SEEN * looks:
            return False
        ends_s = max(seen[0] - from_s, to_s - seen[-1])
        holes = np.diff([from_s, *seen, to_s])
        return ends_s <= SEEN_ENDS_S and float(holes.max()) <= _RULE.bridge_s

    @property
    def moved_lately(self) -> bool:
        """Whether it has gone as far as a cycle must, in the time of which it tells for itself."""
        rises = [rise for _, rise in self._lately]
        return bool(rises) and max(rises) - min(rises) >= _RULE.floor


class NearCounter(Counter):
    """Counts near and far from the hand where it is seen, where not from the eyes.

    The turns of the hand are in millimetres of the forearm's rise, those of the eyes in degrees.
    Near and far take turns, whatever each of them was told from, and a turn that ended with the
    one before it is the same one, told twice.
    """

    def __init__(self) -> None:
        super().__init__(CHANNELS["eye_vergence"])
        self._arms = [_Arm("right"), _Arm("left")]
        self._looks_s: list[float] = []
        #: Turns of the eyes that are the hand's to tell, until it has.
        self._passed_over: list[Turn] = []
        #: All that the eyes told.
        self._eyes: list[Turn] = []

    def feed(self, sample: Sample) -> list[Turn]:
        """Take a sample; gives the turns that count from now on."""
        found: list[Turn] = []
        if isfinite(sample.body_seen):
            self._looks_s.append(sample.time_s)
            found = [turn for arm in self._arms for turn in arm.feed(sample)]
        eyes = self._finder.feed(sample.time_s, self.channel.read(sample))
        return self._keep(found + self._untold(eyes) + self._given_back())

    def finish(self) -> list[Turn]:
        """End the set."""
        found = [turn for arm in self._arms for turn in arm.finish()]
        return self._keep(found + self._untold(self._finder.finish()))

    def _untold(self, eyes: list[Turn]) -> list[Turn]:
        """Those of the eyes' turns of which no hand tells."""
        self._eyes += eyes
        told = [t for t in eyes if self._hand_tells(t)]
        self._passed_over += told
        return [t for t in eyes if t not in told]

    def _given_back(self) -> list[Turn]:
        """The eyes' turns once no arm has told any of them: it only moved by the way."""
        told = [arm.counter.turns for arm in self._arms if arm.believed]
        last_s = max((turns[-1].peak_s for turns in told if turns), default=-inf)
        untold = [t for t in self._passed_over if t.peak_s > last_s + SAME_S]
        if len(untold) < LEAST_UNTOLD:
            return []
        moved = [arm for arm in self._arms if arm.believed and arm.moved_lately]
        if any(self._together(arm) >= PROVEN_TURNS for arm in moved):
            return []
        for arm in self._arms:
            arm.believed = False
        return untold

    def _together(self, arm: _Arm) -> int:
        """How many turns of an arm came with one of the eyes, the same way."""
        return sum(
            any(e.side == t.side and abs(e.peak_s - t.peak_s) <= TOGETHER_S for e in self._eyes)
            for t in arm.counter.turns
        )

    def _hand_tells(self, turn: Turn) -> bool:
        looks = sum(turn.start_s <= t <= turn.peak_s for t in self._looks_s)
        return looks > 0 and any(a.tells_of(turn.start_s, turn.peak_s, looks) for a in self._arms)

    def _keep(self, turns: list[Turn]) -> list[Turn]:
        kept: list[Turn] = []
        for turn in sorted(turns, key=lambda t: t.peak_s):
            last = next(iter((*reversed(kept), *self.turns[-1:])), None)
            between = self._missed(last, turn)
            is_new = last is None or turn.peak_s > last.peak_s + SAME_S
            if is_new and (last is None or turn.side != last.side or between):
                for t in (*between, turn):
                    kept.append(replace(t, index=len(self.turns) + len(kept)))
                self._passed_over = [t for t in self._passed_over if t.peak_s > turn.peak_s]
        self.turns += kept
        return kept

    def _missed(self, last: Turn | None, turn: Turn) -> list[Turn]:
        """A way that the hand was to tell of and has not, between two the other way.

        Of its very first way it tells only with the second, which may be out of the picture.
        """
        if last is not None and turn.side != last.side:
            return []
        from_s = -inf if last is None else last.peak_s + SAME_S
        to_s = turn.peak_s - SAME_S
        fitting = (t for t in self._passed_over if t.side != turn.side)
        return [t for t in fitting if from_s < t.peak_s < to_s][-1:]


def counter_for(channel: Channel, *, known_person: bool, pace: Pace | None = None) -> Counter:
    """The counter of an exercise: that of its channel, or of near and far."""
    if channel.name == "eye_vergence":
        return NearCounter()
    return Counter(channel, known_person=known_person, pace=pace)


def is_of_hand(turn: Turn) -> bool:
    """Whether a turn of near and far was told from the hand."""
    return isfinite(turn.swing_mm)


def eye_turns(samples: Sequence[Sample]) -> list[Turn]:
    """What the eyes alone tell of near and far."""
    counter = Counter(CHANNELS["eye_vergence"])
    for sample in samples:
        counter.feed(sample)
    counter.finish()
    return counter.turns


@dataclass(frozen=True, slots=True)
class Followed:
    """Whether the eyes went along with the fingertip; ``followed`` is None where not told.

    ``change_deg`` is how much further they turned in near than far (the usual one), with the
    ``error_deg`` that its spread leaves (two standard errors of a median).
    """

    followed: bool | None
    change_deg: float | None = None
    error_deg: float | None = None
    reason: str = ""


def eyes_followed(samples: Sequence[Sample]) -> Followed:
    """Whether the eyes turned in as the hand came near, as far as their error lets it be told.

    Only ways of the hand of :data:`WHOLE_MM` are looked at: a fingertip that goes a short way
    asks little of the eyes.
    """
    found = near_hand(samples)
    if found.side is None:
        return Followed(None, reason=found.reason)
    arm = _Arm(found.side)
    for sample in samples:
        if isfinite(sample.body_seen):
            arm.feed(sample)
    arm.finish()
    turns = arm.counter.turns
    changes = [
        (1.0 if b.side == "near" else -1.0)
        * (_vergence_at(samples, b.peak_s) - _vergence_at(samples, a.peak_s))
        for a, b in itertools.pairwise(turns)
        if b.swing_mm >= WHOLE_MM
    ]
    known = np.array([c for c in changes if isfinite(c)])
    if len(known) < LEAST_WAYS:
        return Followed(None, reason=EYES_UNREAD)
    usual = float(np.median(known))
    # 1.48 median deviations are a standard deviation, 1.25 of its mean's error the median's.
    spread = 1.4826 * float(np.median(np.abs(known - usual)))
    error = 2 * 1.2533 * max(spread, READ_DEG) / float(np.sqrt(len(known)))
    told = abs(usual - FOLLOW_DEG) > error
    return Followed(
        (usual > FOLLOW_DEG) if told else None,
        round(usual, 2),
        round(error, 2),
        "" if told else WITHIN_ERROR,
    )


def _vergence_at(samples: Sequence[Sample], time_s: float) -> float:
    """How far the eyes are turned in about a time; NaN where they were hardly read."""
    read = CHANNELS["eye_vergence"].read
    near = [v for s in samples if abs(s.time_s - time_s) <= AT_END_S and isfinite(v := read(s))]
    return float(np.median(near)) if len(near) >= LEAST_READ else nan
