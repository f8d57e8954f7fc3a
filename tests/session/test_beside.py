"""A line of sight that rests a little beside its target is withheld; what lags or leaves is not.

The distances and times are made up here; the films that the limits were seen on are named in
:mod:`tracker.session.beside`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import inf, isfinite, nan, pi, sin

import numpy as np
import pytest

from tests.session.synthetic import turns_samples
from tracker.exercises.watchers.gaze import OFF_TARGET_DEG
from tracker.sample import Sample
from tracker.session.beside import Band, GazeBeside, doubted_band, on_or_off
from tracker.session.clip_run import run_samples
from tracker.session.derive import BESIDE
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo
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


def live(samples: list[Sample], band: Band | None = BAND) -> list[Sample]:
    """The same as it goes on."""
    beside = GazeBeside(band)
    return [beside.feed(s) for s in samples]


@pytest.mark.parametrize("rate_hz", [10.0, 30.0, 60.0])
@pytest.mark.parametrize("aside", [(0.0, -2.8), (0.0, 2.8), (2.8, 0.0), (-3.5, 1.0)])
def test_what_rests_beside_the_target_is_withheld(
    aside: tuple[float, float], rate_hz: float
) -> None:
    samples = made(lambda _: aside, rate_hz=rate_hz)
    found = on_or_off(samples, BAND)
    assert read(found) == 0.0 and {s.reason for s in found} == {BESIDE}
    # The eyes go to and fro in the head as far as before: only where they look is in doubt.
    assert all(s.eye_yaw_deg == 1.0 for s in found)
    # Live it is told from the past: after five seconds of it.
    going = live(samples)
    assert read([s for s in going if s.time_s < 4.9]) == 1.0
    assert read([s for s in going if s.time_s > 5.6]) == 0.0


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
    ],
)
def test_what_lags_leaves_or_is_on_the_target_stays(offset: Offset) -> None:
    samples = made(offset)
    assert on_or_off(samples, BAND) == samples
    assert live(samples) == samples


def test_lids_that_droop_in_the_middle_spoil_what_comes_after() -> None:
    samples = made(lambda t: (0.0, -3.0 if t > 20.0 else 0.0))
    found = on_or_off(samples, BAND)
    assert read([s for s in found if s.time_s < 17.0]) == 1.0
    assert read([s for s in found if s.time_s > 23.0]) == 0.0
    going = live(samples)
    assert read([s for s in going if s.time_s < 20.0]) == 1.0
    assert read([s for s in going if s.time_s > 29.0]) == 0.0


def test_done_again_nothing_more_is_withheld() -> None:
    once = on_or_off(made(lambda t: (0.0, -3.0 if 12.0 < t < 30.0 else 0.0)), BAND)
    assert 0.2 < read(once) < 0.9
    assert on_or_off(once, BAND) == once


def test_without_a_target_or_for_too_short_a_time_nothing_is_said() -> None:
    lost = [
        replace(s, target_yaw_deg=nan, target_pitch_deg=nan) for s in made(lambda _: (0.0, -3.0))
    ]
    assert on_or_off(lost, BAND) == lost and live(lost) == lost
    short = made(lambda _: (0.0, -3.0), lasts_s=4.5)
    assert on_or_off(short, BAND) == short and live(short) == short


def test_times_far_apart_cost_nothing() -> None:
    """A damaged journal may have them."""
    near, far = made(lambda _: (0.0, -3.0), lasts_s=0.05)
    samples = [near, replace(far, time_s=1e11)]
    assert on_or_off(samples, BAND) == samples
    assert live(samples) == samples


def test_a_better_reason_stays() -> None:
    marked = [replace(s, reason="beyond_setup") for s in made(lambda _: (0.0, -3.0))]
    assert {s.reason for s in on_or_off(marked, BAND)} == {"beyond_setup"}


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


def session(setup: dict[str, float]) -> tuple[Engine, MemoryJournal, list[Sample], Step]:
    """Turns of a head whose eyes are read 3 degrees below the target all along."""
    target = (0.0, 0.0, 600.0)
    samples = [
        replace(s, eye_pitch_deg=s.eye_pitch_deg - 3.0, gaze_pitch_deg=s.gaze_pitch_deg - 3.0)
        for s in turns_samples(noise=0.0)
    ]
    step = Step(
        from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target", target_mm=target
    )
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo(setup=setup))
    return engine, journal, samples, step


def test_a_session_says_so_and_gives_no_gaze() -> None:
    _, _, samples, step = session({})
    record = run_samples(samples, [step], SessionInfo(setup={"gaze_error_deg": 0.5}))
    (found,) = summarise(record).exercises
    assert found.gaze is not None and found.gaze["on_target_fraction"]["value"] is None
    assert "beside the target" in found.gaze["on_target_fraction"]["reason"]
    assert "beside the target" in {f.flag: f.reason for f in found.quality}["gaze_beside"]
    # How far the eyes turn back for each degree of the head is another thing, and is told.
    assert found.gaze["counter_turn_ratio"]["median"] == pytest.approx(1.16, abs=0.02)
    assert found.done.repetitions is not None and found.done.repetitions > 0


def test_without_a_measured_error_of_the_gaze_it_is_told_as_read() -> None:
    _, _, samples, step = session({})
    (found,) = summarise(run_samples(samples, [step], SessionInfo())).exercises
    assert found.gaze is not None
    assert found.gaze["error_deg"]["median"] == pytest.approx(3.0, abs=0.2)
    assert "gaze_beside" not in {f.flag for f in found.quality}


def test_the_journal_keeps_what_was_measured() -> None:
    engine, journal, samples, step = session({"gaze_error_deg": 0.5})
    engine.begin(step)
    shown = []
    for sample in samples:
        engine.feed(sample)
        if 10.0 < sample.time_s < 20.0:
            shown.append(engine.live.gaze_error_deg)
    engine.finish()
    assert shown and not any(isfinite(v) for v in shown)
    assert {r.get("reason", "") for r in journal.records if r["kind"] == "sample"} == {""}
