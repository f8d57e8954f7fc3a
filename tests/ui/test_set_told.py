"""What a set is told to have been, from its turns."""

from __future__ import annotations

from itertools import accumulate

import pytest

from tracker.motion.turning import Turn
from tracker.session.flags import LOW_MEASURED
from tracker.session.live import LiveState
from ui import words
from ui.set_told import SetTold


def turn(index: int, peak_s: float) -> Turn:
    side = "left" if index % 2 else "right"
    return Turn(index, side, peak_s - 0.5, peak_s, peak_s + 0.2, 18.0, 36.0, 60.0)


def test_the_tempo_told_is_the_sets_and_not_that_of_its_last_turns() -> None:
    told = SetTold("head_yaw")
    # Sixteen turns at 60 a minute, then four at 120: the set's median is 60.
    for k, at_s in enumerate(accumulate([1.0] * 16 + [0.5] * 4)):
        told.take(LiveState(last_turn=turn(k, at_s), tempo_bpm=120.0), at_s, measured=True)
        told.take(LiveState(last_turn=turn(k, at_s), tempo_bpm=120.0), at_s + 0.1, measured=True)
    (line,) = told.lines(10, 12)
    assert words.say("ask.did.tempo", tempo=words.number(60)) in line


@pytest.mark.parametrize(("share", "is_told"), [(0.0, False), (0.5, False), (0.9, True)])
def test_a_count_is_told_where_the_set_was_measured(share: float, is_told: bool) -> None:
    # The share below which a summary says "measured only part of the time".
    assert LOW_MEASURED == 0.8
    told = SetTold("head_yaw")
    for k in range(1, 101):
        told.take(LiveState(), k / 10, measured=k <= 100 * share)
    assert bool(told.lines(0, 12)) is is_told


def test_nothing_is_told_of_a_set_that_had_no_time() -> None:
    assert SetTold("head_yaw").lines(0, 12) == ()
