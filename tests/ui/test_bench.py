"""The bench: what was measured perfectly has no error, what was spoilt shows by as much."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from sample_clips import shipped_clip
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import load_stage_log, stage_path_of
from ui.bench.matrix import matrix_table
from ui.bench.truth import Comparison, compare, load_truth
from ui.cli import main


def judged(name: str, spoil=lambda s: s) -> Comparison:
    """The truth of a clip, spoilt, taken for what was measured."""
    clip = shipped_clip(name)
    truth = load_truth(clip)
    names = [n for n in TRACE_COLUMNS if n not in TEXT_COLUMNS and n in truth.columns]
    rows = np.stack([truth.columns[n] for n in names], axis=1)
    samples = [Sample(**dict(zip(names, row, strict=True))) for row in rows.tolist()]
    steps = load_stage_log(stage_path_of(clip)).steps
    return compare(run_samples([spoil(s) for s in samples], steps, SessionInfo()), truth)


@pytest.mark.parametrize("name", ["turns-good", "turns-gaze-drops", "jumps-good"])
def test_the_truth_itself_has_no_error(name: str) -> None:
    result = judged(name)
    assert max(result.error_deg.values()) < 0.01
    assert all(abs(v - 1) < 1e-3 for v in result.slope.values())
    assert result.derived
    for figure, value in result.derived.items():
        # A peak between two pictures is seen a little low, a speed over .1 s too.
        limit = 2.5 if figure.endswith("%") else 0.01
        assert value < limit, (figure, value)


def test_a_head_read_a_tenth_too_far_shows_as_a_tenth() -> None:
    def spoil(s: Sample) -> Sample:
        # The gaze stays true, so the eye has to make up for it.
        return replace(
            s,
            head_yaw_deg=1.1 * s.head_yaw_deg,
            head_yaw_speed_deg_s=1.1 * s.head_yaw_speed_deg_s,
            eye_yaw_deg=s.eye_yaw_deg - 0.1 * s.head_yaw_deg,
        )

    good, bad = judged("turns-good"), judged("turns-good", spoil)
    assert bad.slope["head_yaw_deg"] == pytest.approx(1.1, abs=0.002)
    assert bad.derived["amplitude in yaw, %"] == pytest.approx(10, abs=1.5)
    assert bad.derived["eye yaw for each degree of head yaw"] == pytest.approx(0.1, abs=0.005)
    assert good.derived["eye yaw for each degree of head yaw"] < 0.01


def test_a_glance_read_at_half_its_size_is_half_off() -> None:
    def spoil(s: Sample) -> Sample:
        return replace(
            s,
            gaze_yaw_deg=s.target_yaw_deg + 0.5 * (s.gaze_yaw_deg - s.target_yaw_deg),
            gaze_pitch_deg=s.target_pitch_deg + 0.5 * (s.gaze_pitch_deg - s.target_pitch_deg),
        )

    assert judged("turns-gaze-drops", spoil).derived["glance away, %"] == pytest.approx(50, abs=2)


def test_the_matrix_takes_clips_that_are_there_and_names_the_worst(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    results = iter([judged("turns-good"), judged("turns-gaze-drops")])
    monkeypatch.setattr("ui.bench.matrix._render", lambda one, _: Path(one.scenario.name))
    monkeypatch.setattr("ui.bench.matrix.compare_clip", lambda _: next(results))
    lines = list(matrix_table(2, 7, tmp_path))
    table = {line[:42].strip(): line for line in lines}
    assert table["head yaw"].split()[2] == "2"
    assert "matrix-7-" in table["head yaw"]
    assert lines[-2] == "repetitions: 0 of 2 clips miscounted"
    assert lines[-1] == "events: 3 found within 0.15 s, 0 missed, 0 false"


@pytest.mark.parametrize("words", [["speed", "--matrix", "2"], ["accuracy", "--matrix", "0"]])
def test_a_matrix_of_nothing_is_a_wrong_call(
    words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["bench", *words]) == 2
    assert "--matrix takes a number of clips" in capsys.readouterr().err
