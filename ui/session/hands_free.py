"""Start and stop without hands, for who stands away from the keys: by what is seen.

A set begins once the person is in the picture, and stops when they sit down, step out, or
hold a hand up beside the head. In stands from a chair one sits as asked, and goes out of the
picture's top: what that means is told by :mod:`ui.session.out_of_sight`.

What is seen decides, never what is not measured for other reasons (a dark room, a covered
camera): those hold up nothing and stop nothing.
"""

from __future__ import annotations

from math import isfinite, nan
from statistics import median
from typing import Literal

from tracker.body.raised import HELD_AT_WORK_S, HELD_S, RaisedHand
from tracker.exercises.catalogue import needs_body
from tracker.plan.asked import Asked as EntryAsked
from tracker.sample import Sample
from ui.session.out_of_sight import LEFT_S, OutOfSight

#: How high the head is, is learnt over so long from the set's beginning.
LEARN_S = 1.5
#: Lower than that by so much the person sits, or is about to: bending the knees or swaying
#: lowers a head by less, sitting down by 300 to 450 mm (common practice; the scenarios of
#: the sit-to-stand clips use these heights).
SAT_MM = 220.0
#: So long has it to be seen: a deep breath, a stumble and a look at the feet are shorter.
SAT_S = 1.5
#: A hole in what is measured that is longer than this breaks off what was being seen.
GAP_S = 0.6

#: Who comes back into the picture stands still for so long before a set begins; what was seen
#: longer ago than this says nothing of now.
AGAIN_S, FRESH_S = 2.0, 1.0
#: A set waits so long: then it begins, and ends by itself if nobody is seen.
WAIT_MOST_S = 60.0

#: Exercises in which one sits down, or bends low, as asked.
_RISES, _DOWN_AS_ASKED = "head_rise", frozenset({"head_rise", "head_reach"})

#: Exercises in which a hand may be held up as asked for a moment.
_HANDS_AT_WORK = frozenset({"hand-toss", "thumb-together", "near-far", "near-hold"})
#: Where the exercise itself needs no body, hands are looked for so often (more often while one
#: is up): a look in 12 frames of a 30 Hz camera is little.
LOOK_EVERY_S = 0.4

#: ``ask``: nothing stops yet, but it is to be asked aloud whether all is well.
Seen = Literal["", "sat", "left", "hand", "ask", "down"]


def stops_by_sight(entry: EntryAsked) -> bool:
    """Whether sitting down or stepping out of the picture stops an entry's set."""
    standing = entry.posture != "sitting" and "face" in entry.exercise.needs
    return standing and entry.exercise.channel not in _DOWN_AS_ASKED


def stops_by_leaving(entry: EntryAsked) -> bool:
    """Whether stepping out of the picture alone stops an entry's set, as sitting is part of it."""
    standing = entry.posture != "sitting" and "face" in entry.exercise.needs
    return standing and entry.exercise.channel == _RISES


def stops_by_hand(entry: EntryAsked) -> bool:
    """Whether a hand that is held up stops an entry's set: standing, or with the body watched."""
    watched = entry.posture != "sitting" or needs_body(entry.exercise.id)
    return watched and "face" in entry.exercise.needs


def stop_key(entry: EntryAsked) -> str:
    """Key of the words for how an entry's set is stopped without hands; empty where it isn't."""
    if stops_by_sight(entry):
        return "ask.place.to_stop"
    if stops_by_leaving(entry):
        return "ask.place.to_stop_aside"
    return "ask.place.to_stop_hand" if stops_by_hand(entry) else ""


def hand_held_s(exercise_id: str) -> float:
    """How long a hand has to be held up in an exercise."""
    return HELD_AT_WORK_S if exercise_id in _HANDS_AT_WORK else HELD_S


class InSight:
    """Tells whether a set may begin: with nobody in the picture it waits."""

    def __init__(self) -> None:
        self.begin()

    def begin(self) -> None:
        """A countdown begins."""
        self.waits = False
        self._since_s = self._again_s = nan

    def may_begin(self, sample: Sample | None, now_s: float) -> bool:
        """Whether the person is there; where nothing is known, nothing waits for long."""
        self.waits = self._must_wait(sample, now_s)
        if not self.waits:
            self._since_s = self._again_s = nan
        return not self.waits

    def _must_wait(self, sample: Sample | None, now_s: float) -> bool:
        if sample is None or now_s - sample.time_s >= FRESH_S:
            return False
        if sample.reason == "no_face":
            if not isfinite(self._since_s):
                self._since_s = now_s
            self._again_s = nan
            return now_s - self._since_s < WAIT_MOST_S
        if self.waits and not isfinite(self._again_s):
            self._again_s = now_s
        return self.waits and now_s - self._again_s < AGAIN_S


class HandsFree:
    """Tells whether the person has sat down, stepped out or raised a hand in a set."""

    def __init__(self) -> None:
        self._hand = RaisedHand()
        self.begin(0.0)

    def begin(
        self,
        from_s: float,
        *,
        by_place: bool = True,
        by_leaving: bool = False,
        by_hand: bool = True,
        held_s: float = HELD_S,
    ) -> None:
        """A set begins, or goes on.

        Parameters
        ----------
        from_s
            When.
        by_place
            Whether sitting down and stepping out are looked for.
        by_leaving
            Whether stepping out alone is, of who sits down and stands up as asked.
        by_hand, held_s
            Whether a raised hand is, and how long it has to be held up.
        """
        self._by_place, self._by_hand = by_place or by_leaving, by_hand
        self._rises = by_leaving and not by_place
        self._hand.begin(held_s)
        self._heights: list[tuple[float, float]] = []
        self._out = OutOfSight()
        self._since_s: dict[Seen, float] = {}
        self._last_s = from_s

    @property
    def dropped(self) -> bool:
        """Whether the head dropped just before it was seen last: one sat down, or fell."""
        return self._out.dropped

    def take(self, sample: Sample) -> Seen:
        """Take a new sample; the word for what has been seen for long enough, or none."""
        if sample.time_s <= self._last_s:
            return ""
        if sample.time_s - self._last_s > GAP_S:
            self._since_s.clear()
            self._out.break_off()
        self._last_s = sample.time_s
        if self._by_hand and self._hand.take(sample):
            return "hand"
        return self._place(sample) if self._by_place else ""

    def _place(self, sample: Sample) -> Seen:
        told = self._out.take(sample)
        if self._rises:
            return told
        if self._lasts("left", sample.reason == "no_face", sample.time_s, LEFT_S):
            return "left"
        height, time_s = sample.head_y_mm, sample.time_s
        if not isfinite(height):
            # A frame or two without a height is no end of sitting.
            if self._heights and time_s - self._heights[-1][0] > GAP_S:
                self._since_s.pop("sat", None)
            return ""
        return "sat" if self._lasts("sat", self._is_low(time_s, height), time_s, SAT_S) else ""

    def _lasts(self, word: Seen, on: bool, time_s: float, least_s: float) -> bool:
        """Whether something has been so for long enough."""
        if not on:
            self._since_s.pop(word, None)
            return False
        return time_s - self._since_s.setdefault(word, time_s) >= least_s

    def _is_low(self, time_s: float, height: float) -> bool:
        """Whether a head is low, by what it was at first and at the set-up's rest (0)."""
        if not self._heights or time_s - self._heights[0][0] < LEARN_S:
            self._heights.append((time_s, height))
        else:
            # Only the last one's time is of use from now on.
            self._heights[-1] = (time_s, self._heights[-1][1])
        usual = max(median(h for _, h in self._heights), 0.0)
        return height < usual - SAT_MM
