"""What a set is told to have been, from its turns."""

from __future__ import annotations

from dataclasses import replace
from itertools import accumulate

import pytest

from tests.ui.fakes import FakeWorld, Make
from tracker.motion.turning import Turn
from tracker.session.flags import LOW_MEASURED
from tracker.session.live import LiveState
from ui import words
from ui.pages.practice_figures import TargetFigures
from ui.reading import _sides
from ui.session.set_told import SetTold
from ui.share import Sides


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


def short_of_the_middle(index: int, peak_s: float) -> Turn:
    """Turns that are all on the right of the middle: 18 degrees off it, and back to 2."""
    made = turn(index, peak_s)
    return replace(made, amplitude_deg=18.0 if made.side == "right" else -2.0, swing_deg=16.0)


def test_turns_that_turn_back_before_the_middle_have_no_degrees_to_that_side() -> None:
    told, sides = SetTold("head_yaw"), Sides()
    for k in range(8):
        last = short_of_the_middle(k, float(k + 1))
        told.take(LiveState(last_turn=last), k + 1.0, measured=True)
        sides.take(last)
    (line,) = told.lines(4, 12)
    assert words.say("ask.did.right", degrees=words.number(18)) in line
    assert "-2" not in line and words.say("ask.did.of", count="4", goal="12") in line
    (_, right, _), (_, left, speed) = sides.texts()
    assert right == words.say("share.degrees", value="18") and left == "–"
    assert speed == words.say("share.speed", value="60")


def test_the_summary_says_so_in_words() -> None:
    median = {"right": {"median": 18.0}, "left": {"median": -2.0}}
    rows = {row.label: row.value for row in _sides({"by_side": median}, None)}
    assert rows[words.say("summary.left")] == words.say("summary.not_past")
    assert rows[words.say("summary.right")] == words.say("summary.degrees", value="18")


def test_nor_do_they_stand_at_the_target(make: Make, fake: FakeWorld) -> None:
    figures = TargetFigures(make().director)

    def shown(made: Turn) -> tuple[float | None, float | None]:
        state = figures.state(LiveState(last_turn=made), None, upright=False)
        return state.first_deg, state.second_deg

    assert shown(turn(0, 1.0)) == (18, None) and shown(turn(1, 2.0)) == (18, 18)
    assert shown(short_of_the_middle(2, 3.0)) == (18, 18)
    assert shown(short_of_the_middle(3, 4.0)) == (18, None)
