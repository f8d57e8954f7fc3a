"""Who is counted without a set-up: only large turns of the head, and only several of them."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from tests.motion.stands import Path
from tracker.exercises.counters import Counter, channel_of
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from ui.commands.judging import whole_clip

YAW_COLUMNS = {"head_yaw": "head_yaw_deg", "head_to_mark": "head_yaw_deg"}


def samples(channel: str, ends_deg: list[float]) -> list[Sample]:
    """A head that goes from one angle to the next, a second a way, with a short rest at each."""
    path = Path().wait(2.0)
    for end in ends_deg:
        path = path.go(end, 1.0).wait(0.3)
    times, values = path.wait(1.0).sampled(30)
    noise = np.random.default_rng(len(ends_deg)).normal(0.0, 0.2, len(values))
    column = YAW_COLUMNS.get(channel, f"{channel}_deg")
    return [
        replace(
            Sample(t, head_yaw_deg=0.0, head_pitch_deg=0.0, head_roll_deg=0.0, eye_open=1.0),
            **{column: v},
        )
        for t, v in zip(times.tolist(), (values + noise).tolist(), strict=True)
    ]


def counted(channel: str, ends_deg: list[float], *, known: bool) -> int:
    counter = Counter(channel_of(channel), known_person=known)
    for sample in samples(channel, ends_deg):
        counter.feed(sample)
    counter.finish()
    assert [t.index for t in counter.turns] == list(range(len(counter.turns)))
    return counter.repetitions


@pytest.mark.parametrize("channel", ["head_yaw", "head_pitch", "head_roll", "head_to_mark"])
def test_who_only_looks_about_does_no_repetition(channel: str) -> None:
    about = [4.0, -16.0, 5.0, 0.0]
    assert counted(channel, about, known=True) > 0
    assert counted(channel, about, known=False) == 0


@pytest.mark.parametrize("channel", ["head_yaw", "head_pitch", "head_roll", "head_to_mark"])
@pytest.mark.parametrize("repetitions", [2, 3, 8])
def test_repetitions_of_an_exercise_are_all_counted(channel: str, repetitions: int) -> None:
    ends = [20.0, -20.0] * repetitions + [0.0]
    for known in (True, False):
        assert counted(channel, ends, known=known) == repetitions


@pytest.mark.parametrize(("ends", "repetitions"), [([4.0, -16.0, 5.0], 0), ([18.0, -18.0] * 5, 5)])
def test_a_clip_without_a_set_up_is_judged_so(ends: list[float], repetitions: int) -> None:
    log = whole_clip("turns-on-target")
    record = run_samples(samples("head_yaw", ends), log.steps, SessionInfo())
    assert summarise(record).exercises[0].done.repetitions == repetitions
