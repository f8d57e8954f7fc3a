"""Looks far down, told from lids that hang over eyes on the target; on made-up glimpses.

What rendered heads gave stands in DEVELOPERS.md ("The rows of the programme, as films").
"""

from __future__ import annotations

from dataclasses import replace
from math import isfinite, nan
from pathlib import Path

import numpy as np
import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.sample import TRACE_COLUMNS, Glimpse, Sample
from tracker.session.clip_run import run_samples
from tracker.session.figures import gaze_figures, reason_fraction
from tracker.session.live import SessionInfo
from tracker.session.projections import SessionRecord
from tracker.session.trace import load_trace, save_trace

#: An error of the gaze and a likeness as in the film of the looks down.
ERROR_DEG, UNLIKE = 0.8, 2.4
FROM_S, TO_S = 8.0, 9.6
#: What the irises' height is more than the pitch; nobody knows it beforehand.
CONSTANT = 17.0


def looked(by_model: float, by_iris: float, unlike: float = UNLIKE) -> list[Sample]:
    """Turns on the target; in a stretch the eyes are not read and seem off by so much."""
    rng = np.random.default_rng(2)
    out = []
    for s in turns_samples(noise=0.2):
        there = FROM_S <= s.time_s < TO_S
        model, iris = (by_model, by_iris) if there else (0.0, 0.0)
        iris += CONSTANT + rng.normal(0, 2.5)
        glimpse = Glimpse(model, unlike if there else 1.0, iris)
        out.append(replace(s, eye_yaw_deg=-s.head_yaw_deg, eye_pitch_deg=0.0, glimpse=glimpse))
        if there:
            unread = dict.fromkeys(
                ("gaze_yaw_deg", "gaze_pitch_deg", "eye_yaw_deg", "eye_pitch_deg"), nan
            )
            out[-1] = replace(out[-1], reason="eyes_unlike", **unread)
    return out


def judged(samples: list[Sample], error_deg: float = ERROR_DEG, **found: object) -> SessionRecord:
    setup = {"gaze_error_deg": error_deg} | found
    return run_samples(samples, steps(), SessionInfo(setup=setup))


def codes(record: SessionRecord) -> list[str]:
    return [e.code for e in record.exercises[0].events]


def test_a_look_down_on_which_both_agree_is_off_the_target() -> None:
    (event,) = judged(looked(-11.0, -8.0)).exercises[0].events
    assert event.code == "gaze_off_target"
    assert event.start_s == pytest.approx(FROM_S, abs=0.35)
    assert event.end_s == pytest.approx(TO_S, abs=0.15)


@pytest.mark.parametrize(
    ("by_model", "by_iris", "unlike"),
    [
        (-11.0, 3.0, UNLIKE),  # hanging lids on most heads: the irises stay
        (-11.0, -3.0, UNLIKE),  # or seem to go a little
        (-6.0, -8.0, UNLIKE),  # or the model does: within 4 * 0.8 * 2.4 = 7.7
        (-11.0, -8.0, 3.6),  # so unlike that 11.5 may be its error
        (-11.0, 8.0, UNLIKE),  # one up, one down
    ],
)
def test_without_both_nothing_is_said(by_model: float, by_iris: float, unlike: float) -> None:
    record = judged(looked(by_model, by_iris, unlike))
    assert codes(record) == []
    # The irises scatter: a frame here and there goes with them, and decides nothing.
    off = sum(isfinite(s.gaze_off_deg) for s in record.exercises[0].samples)
    assert off <= 0.15 * (TO_S - FROM_S) * 30


def test_without_a_known_error_or_beyond_what_was_taught_nothing_is_sure() -> None:
    assert codes(judged(looked(-11.0, -8.0), nan)) == []
    assert codes(judged(looked(-11.0, -8.0), gaze_reach_deg=((-25, 25), (3, 8)))) == []
    assert codes(judged(looked(-11.0, -8.0), gaze_reach_deg=((-25, 25), (-12, 8)))) != []


def test_it_counts_as_off_the_target_and_as_no_error() -> None:
    there = judged(looked(-11.0, -8.0)).exercises[0]
    without = judged(looked(-11.0, 3.0)).exercises[0]
    off = sum(isfinite(s.gaze_off_deg) for s in there.samples)
    assert off > 0.7 * (TO_S - FROM_S) * 30
    with_it, plain = (gaze_figures(e.samples, [], ERROR_DEG) for e in (there, without))
    assert plain["on_target_fraction"]["value"] == 1.0
    assert with_it["on_target_fraction"]["value"] == pytest.approx(
        1 - off / (plain["on_target_fraction"]["n"] + off), abs=1e-3
    )
    assert with_it["error_deg"] == plain["error_deg"]
    assert reason_fraction(there.samples, "eyes_unlike") < 0.03
    assert reason_fraction(without.samples, "eyes_unlike") > 0.07


def test_a_trace_says_the_same_again_and_keeps_no_glimpse(tmp_path: Path) -> None:
    record = judged(looked(-11.0, -8.0))
    path = tmp_path / "trace.csv"
    save_trace(path, record.samples)
    again = judged(load_trace(path))
    assert "glimpse" not in TRACE_COLUMNS and "gaze_off_deg" in TRACE_COLUMNS
    assert again.exercises[0].events == record.exercises[0].events != []
    assert all(s.glimpse is None for s in (*record.samples, *again.samples))
