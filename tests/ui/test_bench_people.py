"""Drawn people with many sets: measured on one set-up, judged set by set from their own start."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
import pytest

import ui.bench.people as bench
from sample_clips.people_sets import KINDS, sets_of
from sample_clips.render import make_score
from sample_clips.scenario import Scenario
from sample_clips.truth import truth_row
from tracker.frame import Frame
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Reach, Sample
from tracker.session.stage import Step
from ui.bench.tally import Tally
from ui.cli import main


@dataclass
class Fitted:
    """What a fit that found everything answers with."""

    steps: list[Step]
    error_deg: float = 0.5
    reach_deg: Reach | None = ((-26.0, 26.0), (-26.0, 20.0))
    findings: Sequence[str] = ()


@dataclass
class Exact:
    """Measures the truth itself: each picture is no more than the number of its row."""

    rows: list[dict[str, Any]] = field(default_factory=list)
    fitted: list[Sequence[Step]] = field(default_factory=list)
    times: list[float] = field(default_factory=list)

    def draw(self, scenario: Scenario) -> Iterator[tuple[float, np.ndarray, dict[str, Any]]]:
        """In place of the pictures of a scenario: rows of truth, and which of them it is."""
        score = make_score(scenario)
        for k in range(int(score.end_s * scenario.camera.rate_hz)):
            row = truth_row(score, k / scenario.camera.rate_hz)
            self.rows.append(row)
            yield k / scenario.camera.rate_hz, np.array([len(self.rows) - 1]), row

    def take(self, frame: Frame) -> Sample:
        """The row as a sample at the camera's time."""
        self.times.append(frame.time_s)
        row = self.rows[int(frame.image[0])]
        shut = row["eye_open"] < 0.35
        left_out = ("time_s", "quality", "light", "face_height_px", *TEXT_COLUMNS)
        names = [n for n in TRACE_COLUMNS if n in row and n not in left_out]
        hidden = ("eye_yaw", "eye_pitch", "gaze_", "vergence")
        values = {n: row[n] for n in names if not (shut and n.startswith(hidden))}
        return Sample(frame.time_s, **values, quality=0.95, light=0.5, face_height_px=160.0)

    def fit(self, steps: Sequence[Step]) -> Fitted:
        """All is found."""
        self.fitted.append(steps)
        return Fitted(list(steps))

    def remeasure(self) -> list[Sample]:
        """Nothing was held back."""
        return []


def measured(monkeypatch: pytest.MonkeyPatch, number: int = 0) -> tuple[Exact, Tally, list[str]]:
    """One person's sets, measured exactly."""
    exact, tally, said = Exact(), Tally(), []
    monkeypatch.setattr(bench, "frames", exact.draw)
    for one, record, truth in bench.measured_sets(sets_of(number, 9), exact):
        result = bench.judged(record, truth, one.scenario)
        said += tally.add(one.scenario.name, one.kind, result)
    return exact, tally, said


def test_what_is_measured_exactly_is_counted_and_found(monkeypatch: pytest.MonkeyPatch) -> None:
    _, tally, said = measured(monkeypatch)
    assert said == []
    assert tally.sets == dict.fromkeys(KINDS, 1) and not tally.wrong.total()
    assert tally.true == tally.found
    assert tally.true == {"gaze_off_target": 6, "eyes_closed": 3, "head_moved": 1}


def test_there_is_one_set_up_and_the_cameras_clock_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    exact, _, _ = measured(monkeypatch)
    assert len(exact.fitted) == 1
    assert {s.step for s in exact.fitted[0]} == {"rest", "look", "turn_slowly", "nod_slowly"}
    assert np.allclose(np.diff(exact.times), 1 / 30)


def test_a_set_that_is_misread_is_a_miscount(monkeypatch: pytest.MonkeyPatch) -> None:
    exact, tally = Exact(), Tally()
    monkeypatch.setattr(bench, "frames", exact.draw)
    one, record, truth = next(bench.measured_sets(sets_of(0, 9), exact))
    did = truth.events["repetitions"]
    more = replace(truth, events=truth.events | {"repetitions": did + 1})
    said = list(tally.add("x", one.kind, bench.judged(record, more, one.scenario)))
    assert tally.wrong == {"turns": 1}
    assert said == [f"x, turns: counted {did}, did {did + 1}"]


def test_the_truth_is_that_of_the_pictures_given(monkeypatch: pytest.MonkeyPatch) -> None:
    exact = Exact()
    monkeypatch.setattr(bench, "frames", exact.draw)
    one = sets_of(1, 9)[1]
    pictures = bench.Drawing(one.scenario, 100.0)
    times = [frame.time_s for frame in pictures]
    truth = pictures.truth()
    assert times[0] == 100.0 and truth.columns["time_s"][0] == 0.0
    assert pictures.until_s == pytest.approx(times[-1] + 1 / 30)
    assert truth.columns["head_pitch_deg"].max() == pytest.approx(12.0, abs=1.5)
    # What isn't in the truth is not known; what is nothing is nothing.
    assert (
        np.isnan(truth.columns["quality"]).all() and not np.isnan(truth.columns["neck_x_mm"]).any()
    )


@pytest.mark.parametrize("words", ["", "0", "9-5", "-1", "x", "1-2-3"])
def test_people_that_cannot_be_are_one_line(words: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["bench", "sets", f"--people={words}"]) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1


def test_people_go_with_sets_alone(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["bench", "accuracy", "--people", "3"]) == 2
    assert "--people goes with 'sets'" in capsys.readouterr().err
    assert main(["bench", "sets", "--rate", "15"]) == 2
    assert "--rate goes with --people" in capsys.readouterr().err


def test_numbers_of_people(monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[tuple[list[int], int, int]] = []
    monkeypatch.setattr(bench, "people_table", lambda n, s, r: asked.append((list(n), s, r)) or [])
    for words in ("3", "5-7"):
        assert main(["bench", "sets", "--people", words, "--seed", "4", "--rate", "15"]) == 0
    assert asked == [([0, 1, 2], 4, 15), ([5, 6, 7], 4, 15)]
    assert main(["bench", "sets", "--people", "1", "--rate", "5"]) == 2
