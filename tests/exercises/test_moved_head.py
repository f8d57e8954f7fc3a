"""What is said of a head that moves where only the eyes should: when, how often, what it explains.

Times and limits are this project's own choices (``tracker/session/run.py``, ``events.py``);
that silence is never long while nothing is measured is common practice.
"""

from __future__ import annotations

import itertools
from dataclasses import replace
from math import nan

import numpy as np
import pytest

from tests.session.synthetic import TO_S, jump_samples, steps
from tracker.exercises.events import Event
from tracker.sample import Sample
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record


def heard(
    samples: list[Sample], exercise: str = "eyes-side-to-side", to_s: float = TO_S
) -> tuple[list[Event], list[tuple[str, float]]]:
    """Events, and every cue that was said with its time."""
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    for step in steps(exercise, to_s):
        engine.begin(step)
    for sample in samples:
        engine.feed(sample)
    engine.finish("finished")
    content = journal.content()
    said = [(r["code"], r["time_s"]) for r in content.of("said")]
    return session_record(content).exercises[0].events, said


def unread(sample: Sample, reason: str = "eyes_unlike") -> Sample:
    """The same with eyes that are not read."""
    return replace(sample, eye_yaw_deg=nan, eye_pitch_deg=nan, reason=reason)


def to_and_fro(
    unread_until_s: float, blinks: tuple[float, ...] = ()
) -> tuple[list[Event], list[tuple[str, float]]]:
    """A head to and fro by 5 degrees, 20 a minute, from 4 to 21 s; eyes unread from 5 s on."""

    def head(t: float) -> float:
        return 5.0 * np.sin(2 * np.pi * (t - 4) * 20 / 120) if 4 <= t < 21 else 0.0

    made = []
    for s in jump_samples(head):
        out = unread(s) if 5 <= s.time_s < unread_until_s else s
        shut = any(at <= s.time_s < at + 0.15 for at in blinks)
        made.append(replace(out, eye_open=0.05) if shut else out)
    return heard(made)


@pytest.mark.parametrize(
    ("moves_deg", "reason", "codes"),
    [
        (-9.0, "eyes_unlike", ["head_moved"]),
        (-9.0, "beyond_setup", ["head_moved"]),
        (0.0, "eyes_unlike", ["not_measured"]),
        (0.0, "no_face", ["not_measured"]),
        # Not even the head is seen: that is said, and the one movement is seen in two parts.
        (-9.0, "no_face", ["head_moved", "head_moved", "not_measured"]),
    ],
)
def test_eyes_that_a_moved_head_takes_out_of_reach_are_its_fault(
    moves_deg: float, reason: str, codes: list[str]
) -> None:
    made = []
    for s in jump_samples(lambda t: moves_deg if 8 <= t < 9.4 else 0.0):
        there = 8.2 <= s.time_s < 9.3
        blind = {"head_yaw_deg": nan, "head_pitch_deg": nan} if reason == "no_face" else {}
        made.append(replace(unread(s, reason), **blind) if there else s)
    assert sorted(e.code for e in heard(made)[0]) == codes


def test_where_the_head_explains_it_that_is_said_as_soon() -> None:
    events, said = to_and_fro(6.5)
    assert [e.code for e in events] == ["head_moved"]
    # Half a second unread, and a tenth that the sample looks ahead.
    assert events[0].said_at_s == pytest.approx(5.6, abs=0.1)
    assert said[0] == ("head_moved", events[0].said_at_s)


@pytest.mark.parametrize("blinks", [(), (6.2, 6.8)])
def test_a_patient_is_not_left_to_go_on_with_nothing_measured(blinks: tuple[float, ...]) -> None:
    """Nor if they blink in between, which reads nothing either."""
    events, said = to_and_fro(21.0, blinks)
    assert [e.code for e in events] == ["head_moved", "not_measured"]
    assert events[1].end_s == pytest.approx(21, abs=0.1)
    assert [code for code, _ in said[:2]] == ["head_moved", "not_measured"]
    # Two seconds explained, and half a second in which nothing is.
    assert said[1][1] == pytest.approx(7.6, abs=0.1)


def test_a_body_that_is_not_seen_is_not_explained_by_a_moved_head() -> None:
    made = []
    for t in np.arange(0.0, 22.0, 1 / 30):
        lift = nan if 9 <= t < 15 else 12 * np.sin(np.pi * t)
        sample = Sample(float(t), head_yaw_deg=14 * np.sin(2 * (t - 6)) if t >= 6 else 0.0)
        made.append(
            replace(
                sample,
                head_pitch_deg=0.0,
                eye_open=0.9,
                reason="eyes_unlike",
                shoulder_right_y_mm=lift,
                shoulder_left_y_mm=lift,
            )
        )
    events, _ = heard(made, "shoulders-back")
    assert "head_moved" in {e.code for e in events}
    (event,) = (e for e in events if e.code == "not_measured")
    assert event.start_s == pytest.approx(9, abs=0.3)
    assert event.end_s == pytest.approx(15, abs=0.3)


def test_one_that_goes_on_and_on_is_said_again_now_and_then() -> None:
    def head(t: float) -> float:
        return 6.0 * np.sin(2 * np.pi * (t - 4) * 20 / 120) if 4 <= t <= 40 else 0.0

    events, said = heard(jump_samples(head, to_s=48.0), to_s=48.0)
    moved = [at for code, at in said if code == "head_moved"]
    (event,) = (e for e in events if e.code == "head_moved")
    assert len(moved) == 3
    assert all(11.9 < b - a < 15 for a, b in itertools.pairwise(moved))
    # The summary names the first time; what is over is not said again.
    assert event.said_at_s == pytest.approx(moved[0], abs=1e-6)
    assert moved[-1] < 40
