"""Targets that lie near each other at first: as drawn, as logged, as judged (made-up eyes)."""

from __future__ import annotations

from dataclasses import replace
from math import atan2, degrees, inf

import numpy as np
import pytest

from tests.session.synthetic import steps, turns_samples
from tests.ui.fakes import EXTENT
from tests.ui.test_moving_targets import DISTANCE_MM
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import asked_of
from tracker.plan.model import Entry, Rung
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary
from tracker.targets import Growth
from ui.geometry import FieldExtent, facing_map
from ui.session.asked import NEAREST_JUMP_DEG, Asked, planned_asked

REPETITIONS = 10
UP_DOWN = Entry(entry_id="up", exercise="eyes-up-down", repetitions=REPETITIONS, tempo_bpm=(40, 60))
#: A screen that is high enough for 8 degrees up and down.
HIGH = replace(EXTENT, half_width_mm=200.0, half_height_mm=120.0)


def asked_for(entry: Entry = UP_DOWN, extent: FieldExtent = HIGH, week: int = 1) -> Asked:
    return planned_asked(
        5.0,
        asked_of(entry, week),
        repetitions=entry.repetitions,
        seconds=inf,
        extent=extent,
        to_rest=facing_map(DISTANCE_MM, extent.centre_mm),
        distance_mm=DISTANCE_MM,
    )


def jumps_of(asked: Asked) -> list[tuple[float, float]]:
    """When the target jumps, and how many degrees above the middle it is then."""
    track = asked.step.target_track or []
    middle = facing_map(DISTANCE_MM, HIGH.centre_mm).to_rest(HIGH.centre_mm)[1]
    return [(t, degrees(atan2(y - middle, DISTANCE_MM))) for t, _, y, _z in track[::2]]


def test_it_begins_small_and_slow_and_comes_to_all_of_it_half_way_through() -> None:
    jumps = jumps_of(asked_for())
    sizes = np.abs([deg for _, deg in jumps])
    gaps = np.diff([t for t, _ in jumps])
    assert sizes[0] == pytest.approx(8.0 * CATALOGUE["eyes-up-down"].begins_with, abs=0.1)
    assert all(np.diff(sizes[: REPETITIONS + 1]) > 0.1)
    assert sizes[REPETITIONS:] == pytest.approx(8.0, abs=0.05)
    assert gaps[0] > gaps[REPETITIONS] > gaps[-1]
    # Up and down take turns.
    assert all(np.diff(np.sign([deg for _, deg in jumps])) != 0)


def test_both_targets_are_drawn_where_the_log_says() -> None:
    asked = asked_for()
    for start_s, deg in jumps_of(asked):
        now_s = start_s + 0.2
        places = asked.places_at(now_s)
        assert len(places) == 2 and places[0][1] > 0 > places[1][1]
        drawn = asked.offset_at(now_s)
        assert drawn == places[asked.place_at(now_s)]
        assert degrees(atan2(drawn[1], DISTANCE_MM)) == pytest.approx(deg, abs=0.1)


def test_what_asks_for_all_at_once_is_as_it_was() -> None:
    across = asked_for(Entry(entry_id="s", exercise="eyes-side-to-side", repetitions=5))
    assert "grows" not in (across.step.model_extra or {})
    x = {round(row[1], 3) for row in across.step.target_track or []}
    assert len(x) == 2 and across.places_at(5.0) == list(across.offsets or ())


def test_a_low_screen_begins_no_smaller_than_can_be_counted() -> None:
    low = replace(HIGH, half_height_mm=DISTANCE_MM * np.tan(np.radians(4.5)))
    sizes = [abs(deg) for _, deg in jumps_of(asked_for(extent=low))]
    assert sizes[0] == pytest.approx(NEAREST_JUMP_DEG, abs=0.05)
    assert max(sizes) == pytest.approx(4.5, abs=0.05)
    lower = replace(HIGH, half_height_mm=DISTANCE_MM * np.tan(np.radians(2.5)))
    assert {round(abs(d), 2) for _, d in jumps_of(asked_for(extent=lower))} == {2.5}


def test_it_goes_along_with_the_ladder_of_the_weeks() -> None:
    """The tempo of a later week, small first all the same."""
    entry = UP_DOWN.model_copy(update={"ladder": [Rung(from_week=3, tempo_bpm=70)]})
    jumps = jumps_of(asked_for(entry, week=3))
    assert np.diff([t for t, _ in jumps]) == pytest.approx(60 / 70, abs=0.01)
    assert abs(jumps[0][1]) < 4.0


def looked(asked: Asked, reach: float, seed: int, *, grows: bool = True) -> ExerciseSummary:
    """Eyes that come a quarter of a second after the target, by a share of its way."""
    rng = np.random.default_rng(seed)
    jumps = jumps_of(asked)
    small = abs(jumps[0][1])
    end_s = jumps[2 * REPETITIONS][0] if len(jumps) > 2 * REPETITIONS else asked.step.to_s
    made = []
    for t in np.arange(0.0, end_s + 0.2, 1 / 30):
        gone = [deg for at, deg in jumps[: 2 * REPETITIONS] if at + 0.25 <= t]
        deg = gone[-1] if gone else 0.0
        deg = deg if grows else small * float(np.sign(deg))
        e = rng.normal(0.0, 0.4, 2)
        made.append(
            Sample(
                float(t),
                head_yaw_deg=0.0,
                head_pitch_deg=0.0,
                head_roll_deg=0.0,
                head_x_mm=0.0,
                head_y_mm=0.0,
                head_z_mm=0.0,
                eye_yaw_deg=float(e[0]),
                eye_pitch_deg=float(reach * deg + e[1]),
                eye_open=0.9,
            )
        )
    step = asked.step.until(end_s + 0.1)
    return summarise(run_samples(made, [step], SessionInfo())).exercises[0]


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize("extent", [HIGH, replace(HIGH, half_height_mm=47.0)], ids=["high", "low"])
def test_each_jump_counts_from_the_smallest_on(extent: FieldExtent, seed: int) -> None:
    found = looked(asked_for(extent=extent), 1.0, seed)
    assert found.done.repetitions == REPETITIONS
    assert found.eyes is not None
    assert found.eyes["reach_percent"]["median"] == pytest.approx(100.0, abs=8.0)
    assert "begins_with" in found.prescribed


def test_reach_is_that_of_what_was_asked_then() -> None:
    """Eyes that go along at four fifths are so from first to last; those that stay small aren't."""
    along = looked(asked_for(), 0.8, 1).eyes
    stuck = looked(asked_for(), 1.0, 1, grows=False).eyes
    assert along is not None and stuck is not None
    for part in ("first_five", "last_five"):
        assert along["reach_percent"][part]["median"] == pytest.approx(80.0, abs=8.0)
    assert stuck["reach_percent"]["first_five"]["median"] > 55.0
    assert stuck["reach_percent"]["last_five"]["median"] == pytest.approx(40.0, abs=8.0)


@pytest.mark.parametrize("grows", [True, False])
def test_a_head_that_turns_little_is_too_small_only_once_more_is_asked(grows: bool) -> None:
    """The amplitude of the plan and of its ladder grows by the same rule."""
    growth = {"grows": Growth(0.4, 200.0).to_log()} if grows else {}
    asked = steps(amplitude_deg=[15.0, 20.0], **growth)
    found = summarise(run_samples(turns_samples(amplitude=8.0), asked, SessionInfo())).exercises[0]
    assert ("too_small" in {e.code for e in found.events}) == (not grows)


def test_growth_is_read_back_and_nonsense_asks_for_all_at_once() -> None:
    made = Growth.of_set(0.4, [0.0, 1.0, 2.0, 3.0, 4.0], 4)
    assert made == Growth(0.4, 2.0) == Growth.from_log(made.to_log())
    assert [made.share_at(t) for t in (-1.0, 0.0, 1.0, 2.0, 9.0)] == pytest.approx(
        [0.4, 0.4, 0.7, 1.0, 1.0]
    )
    for value in (None, 3, {}, {"begins_with": 0.0, "over_s": 5.0}, {"begins_with": "x"}):
        assert Growth.from_log(value).share_at(0.0) == 1.0
    assert Growth.of_set(0.4, [0.0, 1.0], 4, least=1.2) == Growth.of_set(0.4, [], 4) == Growth()
