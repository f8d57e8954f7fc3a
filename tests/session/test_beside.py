"""A line of sight that rests a little beside its target is withheld; what lags or leaves is not.

The distances and times are made up here; the films that the limits were seen on are named in
:mod:`tracker.session.beside`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import inf, isfinite, nan, pi, sin
from typing import Any

import numpy as np
import pytest

from tests.session.synthetic import turns_samples
from tracker.exercises.watchers.gaze import OFF_TARGET_DEG
from tracker.sample import Sample
from tracker.session.beside import Band, doubted_band, withheld_beside
from tracker.session.clip_run import run_samples
from tracker.session.derive import BESIDE
from tracker.session.live import SessionInfo
from tracker.session.projections import SessionRecord
from tracker.session.stage import Step
from tracker.session.summary import summarise

RATE_HZ = 30
BAND = Band(1.5, OFF_TARGET_DEG)
#: Where the target is, so that a difference is asked and not an angle.
TARGET = (4.0, -6.0)
Offset = Callable[[float], tuple[float, float]]


def made(offset: Offset, lasts_s: float = 40.0, rate_hz: float = RATE_HZ) -> list[Sample]:
    """A line of sight as far beside the target as is said, with a noise of half a degree."""
    noise = np.random.default_rng(5).normal(0.0, 0.5, (int(lasts_s * rate_hz) + 1, 2))
    out = []
    for k, time_s in enumerate(np.arange(0.0, lasts_s, 1 / rate_hz).tolist()):
        yaw, pitch = offset(time_s)
        out.append(
            Sample(
                time_s,
                eye_yaw_deg=1.0,
                gaze_yaw_deg=TARGET[0] + yaw + float(noise[k, 0]),
                gaze_pitch_deg=TARGET[1] + pitch + float(noise[k, 1]),
                target_yaw_deg=TARGET[0],
                target_pitch_deg=TARGET[1],
            )
        )
    return out


def read(samples: list[Sample]) -> float:
    """Share of the lines of sight that are still there."""
    return sum(isfinite(s.gaze_yaw_deg) for s in samples) / len(samples)


@pytest.mark.parametrize("rate_hz", [10.0, 30.0, 60.0])
@pytest.mark.parametrize("aside", [(0.0, -2.8), (0.0, 2.8), (2.8, 0.0), (-3.5, 1.0)])
def test_what_rests_beside_the_target_is_withheld(
    aside: tuple[float, float], rate_hz: float
) -> None:
    samples = made(lambda _: aside, rate_hz=rate_hz)
    found = withheld_beside(samples, BAND)
    assert read(found) == 0.0 and {s.reason for s in found} == {BESIDE}
    # The eyes go to and fro in the head as far as before: only where they look is in doubt.
    assert all(s.eye_yaw_deg == 1.0 for s in found)


@pytest.mark.parametrize(
    "offset",
    [
        lambda _: (0.0, 0.0),
        # As far as a set-up that fits may be off.
        lambda _: (1.0, -1.0),
        # Eyes that lag behind a head that turns, to both sides in turn.
        lambda t: (8.0 * sin(2 * pi * 0.5 * t), 0.0),
        lambda t: (3.5 * sin(2 * pi * 0.25 * t), 0.0),
        # And behind one that turns to one side only.
        lambda t: (max(0.0, 4.0 * sin(2 * pi * 0.5 * t)), 0.0),
        # Glances, short and long.
        lambda t: (10.0 if t % 5.0 < 1.0 else 0.0, 0.0),
        lambda t: (0.0, -3.0 if t % 8.0 > 4.0 else 0.0),
        # Looks elsewhere for half of the time, then all along: off the target, and so said.
        lambda t: (0.0, -8.0 if t > 20.0 else 0.0),
        lambda _: (0.0, -6.5),
        # The same with low lids: what a shift of 2.5 degrees can't explain.
        lambda t: (12.0 * sin(2 * pi * 0.5 * t), -2.5),
        lambda t: (-8.0 if t % 2.0 < 1.0 else 0.0, -2.5),
        lambda _: (-15.0, -2.5),
        lambda t: (15.0 if t % 7.0 < 3.0 else 0.0, -3.0),
    ],
)
def test_what_lags_leaves_or_is_on_the_target_stays(offset: Offset) -> None:
    samples = made(offset)
    assert withheld_beside(samples, BAND) == samples


def test_lids_that_droop_in_the_middle_spoil_what_comes_after() -> None:
    samples = made(lambda t: (0.0, -3.0 if t > 20.0 else 0.0))
    found = withheld_beside(samples, BAND)
    assert read([s for s in found if s.time_s < 17.0]) == 1.0
    assert read([s for s in found if s.time_s > 23.0]) == 0.0


def test_done_again_nothing_more_is_withheld() -> None:
    once = withheld_beside(made(lambda t: (0.0, -3.0 if 12.0 < t < 30.0 else 0.0)), BAND)
    assert 0.2 < read(once) < 0.9
    assert withheld_beside(once, BAND) == once


def test_without_a_target_or_for_too_short_a_time_nothing_is_said() -> None:
    lost = [
        replace(s, target_yaw_deg=nan, target_pitch_deg=nan) for s in made(lambda _: (0.0, -3.0))
    ]
    assert withheld_beside(lost, BAND) == lost
    short = made(lambda _: (0.0, -3.0), lasts_s=4.5)
    assert withheld_beside(short, BAND) == short


def test_times_far_apart_cost_nothing() -> None:
    """A damaged journal may have them."""
    near, far = made(lambda _: (0.0, -3.0), lasts_s=0.05)
    samples = [near, replace(far, time_s=1e11)]
    assert withheld_beside(samples, BAND) == samples


def test_a_better_reason_stays() -> None:
    marked = [replace(s, reason="beyond_setup") for s in made(lambda _: (0.0, -3.0))]
    assert {s.reason for s in withheld_beside(marked, BAND)} == {"beyond_setup"}


@pytest.mark.parametrize(
    ("error_deg", "band"),
    [
        (0.4, Band(1.5, 5.0)),
        (1.0, Band(2.0, 5.0)),
        # The band goes with the limit of "off the target", four times the error.
        (1.5, Band(3.0, 6.0)),
        # So coarse a gaze is not judged at all, and an unknown one can't be held against anything.
        (2.5, None),
        (inf, None),
        (nan, None),
    ],
)
def test_how_far_is_doubted_goes_with_what_the_set_up_showed(
    error_deg: float, band: Band | None
) -> None:
    assert doubted_band(error_deg) == band


def session(setup: dict[str, float], **more: Any) -> SessionRecord:
    """Turns of a head whose eyes are read 3 degrees below the target all along."""
    samples = [
        replace(s, eye_pitch_deg=s.eye_pitch_deg - 3.0, gaze_pitch_deg=s.gaze_pitch_deg - 3.0)
        for s in turns_samples(noise=0.0, **more)
    ]
    step = Step(
        from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target", target_mm=(0, 0, 600)
    )
    return run_samples(samples, [step], SessionInfo(setup=setup))


def test_a_session_says_so_and_gives_no_gaze() -> None:
    (found,) = summarise(session({"gaze_error_deg": 0.5})).exercises
    assert found.gaze is not None and found.gaze["on_target_fraction"]["value"] is None
    assert "beside the target" in found.gaze["on_target_fraction"]["reason"]
    assert "beside the target" in {f.flag: f.reason for f in found.quality}["gaze_beside"]
    # How far the eyes turn back for each degree of the head is another thing, and is told.
    assert found.gaze["counter_turn_ratio"]["median"] == pytest.approx(1.16, abs=0.02)
    assert found.done.repetitions is not None and found.done.repetitions > 0


def test_a_glance_away_is_told_all_the_same() -> None:
    glances = [(6.0, 7.5, 15.0), (14.0, 15.5, -15.0)]
    record = session({"gaze_error_deg": 0.5}, glances=glances)
    (found,) = summarise(record).exercises
    away = [e for e in found.events if e.code == "gaze_off_target"]
    assert [e.start_s for e in away] == pytest.approx([6.0, 14.0], abs=0.2)
    assert found.gaze is not None and found.gaze["on_target_fraction"]["value"] is None


def test_without_a_measured_error_of_the_gaze_it_is_told_as_read() -> None:
    (found,) = summarise(session({})).exercises
    assert found.gaze is not None
    assert found.gaze["error_deg"]["median"] == pytest.approx(3.0, abs=0.2)
    assert "gaze_beside" not in {f.flag for f in found.quality}
