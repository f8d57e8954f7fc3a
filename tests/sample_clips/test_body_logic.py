"""Exercises done well and done badly, from the scenarios' exact truth through the engine.

No picture is drawn here: this tells whether counters, watchers and figures are right when
the measuring is, not how well a camera measures.
"""

from __future__ import annotations

from dataclasses import fields
from pathlib import Path

import numpy as np
import pytest

from sample_clips.render import make_score
from sample_clips.scenario import load_scenario
from sample_clips.score import Score
from sample_clips.truth import events, stage_log, truth_row
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import StageLog
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary

SCENARIOS = sorted(p for f in ("body", "eyes") for p in (Path(__file__).parent / f).glob("*.json"))
NAMES = {f.name for f in fields(Sample)}


def judged(score: Score, rate_hz: float) -> ExerciseSummary:
    """What the engine makes of the truth of an exercise, with the noise of a fair camera."""
    rng = np.random.default_rng(score.scenario.seed)
    made = []
    for t in np.arange(score.start_s - 1, score.end_s, 1 / rate_hz):
        row = {k: v for k, v in truth_row(score, float(t)).items() if k in NAMES}
        for name, value in row.items():
            if isinstance(value, float) and name != "time_s":
                size = 1.5 if name.endswith("_mm") else 0.2 if name.endswith("_deg") else 0.02
                row[name] = value + rng.normal(0, size)
        made.append(Sample(**row))  # type: ignore[arg-type]
    steps = StageLog.model_validate(stage_log(score)).steps
    # As large as the noise.
    about = SessionInfo(setup={"gaze_error_deg": 0.2})
    return summarise(run_samples(made, steps, about)).exercises[0]


#: A slow camera too, where no eyes are read.
RATES = {"body": (15, 30), "eyes": (30,)}
CASES = [pytest.param(p, r, id=f"{p.stem}-{r}") for p in SCENARIOS for r in RATES[p.parent.name]]


@pytest.mark.parametrize(("path", "rate_hz"), CASES)
def test_counts_are_exact_and_events_are_those_that_were_played(path: Path, rate_hz: float) -> None:
    score = make_score(load_scenario(path))
    found, truth = judged(score, rate_hz), events(score)
    assert (found.done.repetitions or 0) == truth["repetitions"]
    played = truth["events"]
    assert [e.code for e in found.events] == [e["code"] for e in played]
    assert path.stem.endswith("-good") == (not played)
    for mine, theirs in zip(found.events, played, strict=True):
        within = _within_s(mine.code, score)
        assert mine.start_s == pytest.approx(theirs["start_s"], abs=within)
        assert mine.end_s == pytest.approx(theirs["end_s"], abs=2 * within)


def test_of_who_looks_at_the_floor_it_is_not_told_how_long_the_eyes_were_shut() -> None:
    """Lids that hang over a look down read as shut ones; where one stands it is told (above)."""
    (path,) = [p for p in SCENARIOS if p.stem == "reach-good"]
    bent = judged(make_score(load_scenario(path)), 15)
    assert bent.eyes_closed_fraction["value"] is None
    assert "lowers the lids" in bent.eyes_closed_fraction["reason"]
    assert bent.gaze is None and "gaze_bent" in bent.not_measured


def _within_s(code: str, score: Score) -> float:
    """How near an event's time has to be found."""
    if code == "not_upright" and score.scenario.movement.kind == "reach":
        # That somebody has stopped half-way up is sure only once they stay there.
        return 1.7
    # A stand's top and a chin's fall have soft ends; lids don't. Of eyes that go along or
    # don't only whole turns tell, which begin softly too.
    return 0.15 if code in ("eyes_opened", "eyes_closed") else 0.35


def test_time_held_is_what_is_left_when_the_eyes_were_open() -> None:
    by_name = {p.stem: make_score(load_scenario(p)) for p in SCENARIOS}
    score = by_name["eyes-shut-opening"]
    whole = score.end_s - score.start_s
    found = judged(score, 30)
    assert found.done.held_s == pytest.approx(whole - 3.0, abs=0.4)
    assert found.eyes_closed_fraction["value"] == pytest.approx(
        (whole - 0.4 - 3.0) / whole, abs=0.02
    )
    well = by_name["eyes-shut-good"]
    good = judged(well, 30)
    assert good.done.held_s == pytest.approx(well.end_s - well.start_s, abs=0.1)
    assert good.sway["value"] == pytest.approx(
        np.sqrt(np.var(_places(well), axis=0).sum()), rel=0.04
    )


def _places(score: Score) -> np.ndarray:
    times = np.arange(score.start_s, score.end_s, 0.02)
    return np.array([score.attitude(float(t)).shift_mm[[0, 2]] for t in times])
