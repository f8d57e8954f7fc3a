"""A clip's set-up: fitted where there is one, noted where it can't be used, never fatal."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import nan
from typing import Any

import numpy as np
import pytest

from tests.session.synthetic import steps
from tracker.errors import InputError
from tracker.frame import Frame
from tracker.sample import Sample
from tracker.session.clip_run import REST_S, measured_clip, run_clip
from tracker.session.live import SessionInfo
from tracker.session.stage import GazeRead, StageLog, Step
from tracker.session.trace import format_trace, parse_trace, setup_notes, stage_of_trace

IMAGE = np.zeros((2, 2, 3), np.uint8)
LOOK = Step(from_s=0.5, to_s=3.0, step="look", target_mm=(0.0, 0.0, 600.0))
SET = steps()[1].model_copy(update={"from_s": 3.0, "to_s": 8.0})


@dataclass
class Found:
    """What a fit answers with here."""

    steps: list[Step]
    error_deg: float = 0.7
    reach_deg: None = None
    findings: tuple[str, ...] = ("no_setup", "far_away")


@dataclass
class Measurer:
    """Gives a sample for each frame; after a fit those held back once more, with a light of 1."""

    refuses: bool = False
    again: bool = True
    sees: dict[str, Any] = field(default_factory=dict)
    fitted: list[list[Step]] = field(default_factory=list)
    held: list[Sample] = field(default_factory=list)

    def take(self, frame: Frame) -> Sample:
        sample = Sample(frame.time_s, light=0.5, **self.sees)
        if not self.fitted:
            self.held.append(sample)
        return sample

    def fit(self, asked: Sequence[Step]) -> Found:
        self.fitted.append(list(asked))
        if self.refuses:
            raise InputError("too little was seen")
        moved = [s.model_copy(update={"target_mm": (9.0, 0.0, 600.0)}) for s in asked]
        return Found(moved)

    def remeasure(self) -> list[Sample]:
        return [Sample(s.time_s, light=1.0) for s in self.held] if self.again else []


def frames(to_s: float, from_s: float = 0.0) -> list[Frame]:
    return [Frame(k, from_s + 0.1 * k, IMAGE) for k in range(round((to_s - from_s) / 0.1))]


def lights(clip: object) -> dict[float, int]:
    """How many samples have each light."""
    values = [s.light for s in clip.samples]  # type: ignore[attr-defined]
    return {v: values.count(v) for v in dict.fromkeys(values)}


def test_the_frames_of_a_set_up_are_measured_again_once_it_is_fitted() -> None:
    measurer = Measurer()
    clip = measured_clip(frames(8.0), measurer, StageLog(steps=[LOOK, SET]))
    assert measurer.fitted == [[LOOK]]
    # What the fit found of the targets is taken over, the set's own stay.
    assert [s.target_mm for s in clip.steps] == [(9.0, 0.0, 600.0), SET.target_mm]
    assert clip.found["calibration"] == "fitted" and clip.found["gaze_error_deg"] == 0.7
    assert clip.notes == ("no_setup", "far_away")
    assert lights(clip) == {1.0: 30, 0.5: 50}


def test_a_clip_that_breaks_off_within_its_set_up_is_fitted_on_what_there_is() -> None:
    measurer = Measurer()
    clip = measured_clip(frames(2.0), measurer, StageLog(steps=[LOOK, SET]))
    assert measurer.fitted == [[LOOK]]
    assert lights(clip) == {1.0: 20}


def test_a_set_up_that_cannot_be_used_is_noted_and_measuring_goes_on() -> None:
    clip = measured_clip(frames(8.0), Measurer(refuses=True), StageLog(steps=[LOOK, SET]))
    assert clip.notes == ("setup_failed",) and clip.found == {}
    assert [s.target_mm for s in clip.steps] == [LOOK.target_mm, SET.target_mm]
    assert lights(clip) == {0.5: 80}


@pytest.mark.parametrize("from_s", [0.0, 4.0])
def test_without_a_stage_log_the_first_second_is_the_rest_pose(from_s: float) -> None:
    measurer = Measurer(again=False)
    clip = measured_clip(frames(from_s + 3.0, from_s), measurer, None)
    ((rest,),) = measurer.fitted
    assert (rest.step, rest.from_s, rest.to_s) == ("rest", from_s, from_s + REST_S)
    assert clip.found["calibration"] == "generic" and clip.steps == []
    # Said once, though the fit says it, too.
    assert clip.notes == ("no_setup", "far_away")
    assert lights(clip) == {0.5: 30}


HEAD = {"head_yaw_deg": 1.0, "head_pitch_deg": 0.0, "head_roll_deg": 0.0}


@pytest.mark.parametrize(
    ("stage", "sees", "reason"),
    [
        (None, HEAD, "no_setup"),
        (StageLog(steps=[SET]), HEAD, "no_setup"),
        # What says already why the eyes are missing stays, and eyes that are read lack nothing.
        (None, HEAD | {"reason": "eyes_shut"}, "eyes_shut"),
        (None, {"reason": "no_face"}, "no_face"),
        (None, HEAD | {"eye_yaw_deg": 0.0, "eye_pitch_deg": 0.0}, ""),
        (StageLog(steps=[LOOK, SET]), HEAD, ""),
    ],
)
def test_the_samples_of_a_clip_without_a_set_up_say_so(
    stage: StageLog | None, sees: dict[str, Any], reason: str
) -> None:
    clip = measured_clip(frames(8.0), Measurer(again=False, sees=sees), stage)
    assert {s.reason for s in clip.samples} == {reason}


def test_the_trace_of_a_clip_without_a_set_up_is_judged_as_the_clip_is() -> None:
    asked = StageLog(steps=[SET.model_copy(update={"exercise": "turns-on-target"})])
    record = run_clip(frames(8.0), Measurer(again=False, sees=HEAD), asked, SessionInfo())
    samples = parse_trace(format_trace(record.samples), "t.csv")
    assert setup_notes(samples, None) == ("no_setup",)
    # Whatever a log beside it may say.
    assert setup_notes(samples, GazeRead(calibration="fitted", gaze_error_deg=0.5)) == ("no_setup",)
    steps = stage_of_trace(samples, "turns-on-target").steps
    assert [(s.model_extra or {}).get("no_setup") for s in steps] == [True]
    # Before a set-up nothing is measured of a head: that is no clip without one.
    before = [Sample(0.1 * k, light=0.5, reason="no_setup") for k in range(9)]
    assert setup_notes([*before, Sample(1.0, **HEAD)], None) == ("setup_unknown",)


def test_without_a_set_up_that_it_fails_is_no_news() -> None:
    assert measured_clip(frames(3.0), Measurer(refuses=True), None).notes == ("no_setup",)


def test_no_frame_at_all_is_a_session_without_samples() -> None:
    measurer = Measurer()
    clip = measured_clip([], measurer, StageLog(steps=[LOOK, SET]))
    assert measurer.fitted == [] and list(clip.samples) == [] and clip.found == {}
    record = run_clip([], Measurer(), StageLog(steps=[LOOK, SET]), SessionInfo())
    assert list(record.samples) == []


@pytest.mark.parametrize(("last_s", "lasts_s"), [(7.9, 5.0), (6.9, 3.9)])
def test_the_last_frame_lasts_to_the_end_of_its_step(last_s: float, lasts_s: float) -> None:
    made = frames(last_s + 0.05)
    record = run_clip(made, Measurer(), StageLog(steps=[LOOK, SET]), SessionInfo())
    (exercise,) = record.exercises
    assert exercise.step.to_s - exercise.step.from_s == pytest.approx(lasts_s, abs=0.11)


def test_an_error_that_was_not_found_is_left_out() -> None:
    class Blind(Measurer):
        def fit(self, asked: Sequence[Step]) -> Found:
            return Found(list(asked), error_deg=nan)

    clip = measured_clip(frames(8.0), Blind(), StageLog(steps=[LOOK, SET]))
    assert "gaze_error_deg" not in clip.found and clip.found["calibration"] == "fitted"
