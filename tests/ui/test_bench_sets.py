"""Sets made up by lot: counted and watched rightly, and a fault in either would show."""

from __future__ import annotations

import numpy as np
import pytest

import ui.bench.sets as bench
from sample_clips.heads import make_head
from sample_clips.score import Score
from sample_clips.sets import KINDS, drawn_set
from sample_clips.truth import truth_row
from ui.cli import main


def test_a_set_is_the_same_each_time_and_another_by_seed() -> None:
    assert drawn_set(4, 1) == drawn_set(4, 1)
    assert drawn_set(4, 1) != drawn_set(4, 2)
    assert {drawn_set(k)[0] for k in range(len(KINDS))} == set(KINDS)


def test_errors_lie_upon_the_truth_as_large_as_is_said() -> None:
    off = []
    for number in range(6):
        score = Score(drawn_set(number * len(KINDS), 7)[1], make_head("anna"))
        samples = bench.samples_of(score)
        rate = (len(samples) - 1) / (samples[-1].time_s - samples[0].time_s)
        assert rate == pytest.approx(score.scenario.camera.rate_hz, rel=0.06)
        true = [truth_row(score, s.time_s)["head_roll_deg"] for s in samples]
        off.append(np.array([s.head_roll_deg for s in samples]) - np.array(true, dtype=float))
    fast = np.concatenate([np.diff(o) for o in off]).std() / np.sqrt(2)
    slow = np.concatenate(off).std()
    # A drift of .3 degrees in 1.5 s adds a little to what changes from frame to frame.
    assert bench.HEAD_FAST_DEG * 0.9 < fast < bench.HEAD_FAST_DEG * 1.6
    assert 0.15 < slow < 0.6


def test_a_short_table_counts_all_and_notices_what_happened(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["bench", "sets", "--sets", str(len(KINDS)), "--seed", "3"]) == 0
    rows = {r[:20].strip(): r[20:].split() for r in capsys.readouterr().out.splitlines()}
    assert rows["all"] == [str(len(KINDS)), "0"]
    for code in ("gaze_off_target", "eyes_closed", "head_moved", "eyes_opened"):
        true, found, false = rows[code]
        assert int(true) > 0 and (true, false) == (found, "0"), code


def test_a_look_that_is_not_in_the_samples_is_missed(monkeypatch: pytest.MonkeyPatch) -> None:
    _, scenario = drawn_set(KINDS.index("turns-glancing"), 1)
    straight = scenario.model_copy(update={"glances": []})
    plain = bench.samples_of
    monkeypatch.setattr(
        bench, "samples_of", lambda _: plain(Score(straight, make_head(straight.head)))
    )
    result = bench.judge_set(scenario)
    assert [e["code"] for e in result.events] == ["gaze_off_target"] * 2
    assert result.seen == []


def test_a_turn_too_few_in_the_samples_is_a_miscount(monkeypatch: pytest.MonkeyPatch) -> None:
    _, scenario = drawn_set(KINDS.index("turns"), 1)
    fewer = scenario.movement.model_copy(update={"repetitions": scenario.movement.repetitions - 1})
    short = scenario.model_copy(update={"movement": fewer})
    plain = bench.samples_of
    monkeypatch.setattr(bench, "samples_of", lambda _: plain(Score(short, make_head(short.head))))
    result = bench.judge_set(scenario)
    assert (result.true, result.counted) == (fewer.repetitions + 1, fewer.repetitions)


@pytest.mark.parametrize("words", [["--sets", "0"], ["--seed", "-1"], ["clip.mp4"]])
def test_a_wrong_call_is_one_line(words: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["bench", "sets", *words]) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1
