"""Eyes that are unlike again and again are not believed in between; one long look down is one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import isfinite, nan

import numpy as np
import pytest

from tests.session.synthetic import turns_samples
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.derive import BEYOND, UNLIKE, UNLIKE_AROUND, completed
from tracker.session.engine import Engine
from tracker.session.figures import reason_fraction
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.unlike import EyesInDoubt, believed

RATE_HZ = 30
UNREAD = dict.fromkeys(("eye_yaw_deg", "eye_pitch_deg", "gaze_yaw_deg", "gaze_pitch_deg"), nan)


def made(unlike: Callable[[float], bool], lasts_s: float = 40.0) -> list[Sample]:
    """Eyes that are read 1 degree aside, or unlike."""
    out = []
    for time_s in np.arange(0.0, lasts_s, 1 / RATE_HZ).tolist():
        if unlike(time_s):
            out.append(Sample(time_s, reason=UNLIKE))
        else:
            out.append(Sample(time_s, eye_yaw_deg=1.0, gaze_yaw_deg=1.0, gaze_pitch_deg=0.0))
    return out


def read(samples: list[Sample]) -> float:
    """Share of the eyes in them that can be read and are."""
    could = [s for s in samples if s.reason != UNLIKE]
    return sum(isfinite(s.gaze_yaw_deg) for s in could) / len(could)


def ends_of_turns(time_s: float) -> bool:
    """Hanging lids are seen at the ends of turns, here of one a second there and back."""
    return time_s % 0.5 > 0.15


PHASES = np.arange(0.0, 3.0, 0.05).tolist()


@pytest.mark.parametrize(
    ("every_s", "unlike_s"), [(0.5, 0.2), (1.0, 0.4), (1.5, 0.6), (2.0, 1.0), (3.0, 1.5)]
)
def test_at_the_ends_of_all_turns_the_whole_is_withheld(every_s: float, unlike_s: float) -> None:
    """Whenever they begin: the same eyes are never believed or not by chance."""
    for phase_s in PHASES:
        found = believed(made(lambda t, p=phase_s: (t + p) % every_s < unlike_s))
        assert read(found) == 0.0, phase_s
        assert {s.reason for s in found} == {UNLIKE, UNLIKE_AROUND}
        assert not any(isfinite(s.eye_yaw_deg) or isfinite(s.vergence_deg) for s in found)


@pytest.mark.parametrize(
    ("every_s", "unlike_s"),
    [
        (8.0, 1.8),  # looks down
        (5.0, 1.0),
        (1.0, 0.2),
        (0.5, 0.04),  # single pictures
        (60.0, 15.0),  # a head that turned, and stayed
        (60.0, 0.0),
    ],
)
def test_what_is_unlike_for_once_or_hardly_leaves_the_rest(every_s: float, unlike_s: float) -> None:
    for phase_s in PHASES:
        samples = made(lambda t, p=phase_s: (t + p) % every_s < unlike_s)
        assert believed(samples) == samples, phase_s


def test_a_lamp_that_is_switched_on_spoils_what_comes_after() -> None:
    found = believed(made(lambda t: t > 25.0 and ends_of_turns(t)))
    assert read([s for s in found if s.time_s < 23.0]) == 1.0
    assert read([s for s in found if s.time_s > 28.0]) == 0.0


def test_done_again_nothing_more_is_withheld() -> None:
    once = believed(made(lambda t: 12.0 < t < 25.0 and ends_of_turns(t)))
    assert 0.2 < read(once) < 0.9
    assert believed(once) == once


def test_while_it_goes_on_it_is_known_after_two_seconds_and_over_after_ten() -> None:
    doubt = EyesInDoubt()
    samples = made(lambda t: 10.0 < t < 20.0 and ends_of_turns(t))
    found = [doubt.feed(s) for s in samples]
    assert read([s for s in found if s.time_s < 10.0]) == 1.0
    assert read([s for s in found if 15.0 < s.time_s < 20.0]) == 0.0
    assert read([s for s in found if s.time_s > 30.0]) == 1.0
    early = EyesInDoubt()
    found = [early.feed(s) for s in made(ends_of_turns)]
    assert read([s for s in found if s.time_s > 2.0]) == 0.0


def test_shut_eyes_and_a_face_out_of_sight_say_nothing() -> None:
    shut = [
        s if ends_of_turns(s.time_s) else Sample(s.time_s, reason="eyes_shut")
        for s in made(ends_of_turns)
    ]
    assert believed(shut) == shut


def test_times_far_apart_cost_nothing() -> None:
    """A damaged journal may have them."""
    samples = [Sample(0.0, reason=UNLIKE), Sample(1e11, eye_yaw_deg=1.0)]
    assert believed(samples) == samples


def test_a_session_says_so_and_gives_no_gaze() -> None:
    samples = [
        replace(s, **UNREAD, reason=UNLIKE) if ends_of_turns(s.time_s) else s
        for s in turns_samples(noise=0.0)
    ]
    step = Step(
        from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target", target_mm=(0, 0, 600)
    )
    record = run_samples(samples, [step], SessionInfo())
    (exercise,) = record.exercises
    assert reason_fraction(exercise.samples, UNLIKE_AROUND) > 0.25
    (found,) = summarise(record).exercises
    assert found.gaze is not None and found.gaze["on_target_fraction"]["value"] is None
    assert "unlike those of the set-up" in found.gaze["on_target_fraction"]["reason"]
    flags = {f.flag: f.reason for f in found.quality}
    assert "100 % of the time the eyes were not read" in flags["eyes_unlike"]
    # The head is measured and counted all the same.
    assert found.done.repetitions is not None and found.done.repetitions > 0


def test_what_the_eyes_count_goes_on_and_only_where_they_look_is_not_told() -> None:
    """Eyes read some degrees aside still go to and fro."""
    found = believed(made(ends_of_turns), counted_by_eyes=True)
    assert read(found) == 0.0
    kept = [s for s in found if s.reason == UNLIKE_AROUND]
    assert kept and all(s.eye_yaw_deg == 1.0 for s in kept)


def test_a_better_reason_stays() -> None:
    marked = [s if s.reason else replace(s, reason="varifocal") for s in made(ends_of_turns)]
    assert {s.reason for s in believed(marked)} == {UNLIKE, "varifocal"}


def test_the_journal_keeps_what_was_measured() -> None:
    samples = [
        replace(s, **UNREAD, reason=UNLIKE) if ends_of_turns(s.time_s) else s
        for s in turns_samples(noise=0.0)
    ]
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    engine.begin(Step(from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target"))
    for sample in samples:
        engine.feed(sample)
    assert engine.live.reason == "" and not isfinite(engine.live.gaze_error_deg)
    engine.finish()
    reasons = {r.get("reason", "") for r in journal.records if r["kind"] == "sample"}
    assert reasons == {"", UNLIKE}


def test_eyes_that_are_asked_beyond_the_set_up_are_no_sign_of_it() -> None:
    """A head that turns farther than in the set-up: between the ends the eyes are as they were."""
    reach = ((-12.0, 12.0), (-10.0, 10.0))
    turned = Sample(1.0, head_yaw_deg=20.0, head_pitch_deg=0.0, head_roll_deg=0.0, reason=UNLIKE)
    ahead = replace(turned, target_yaw_deg=0.0, target_pitch_deg=0.0)
    assert completed(ahead, None, reach).reason == BEYOND
    near = replace(ahead, head_yaw_deg=8.0)
    assert completed(near, None, reach).reason == UNLIKE
    assert completed(ahead, None).reason == UNLIKE
