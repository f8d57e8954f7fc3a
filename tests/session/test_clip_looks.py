"""In a clip the body is looked for where the exercise needs it, as often as it needs it."""

from __future__ import annotations

import numpy as np

from tracker.frame import Frame
from tracker.session.clip_run import _watching
from tracker.session.stage import Step


class Measurer:
    """Notes what it is told."""

    def __init__(self) -> None:
        self.told: list[tuple[float, bool, float]] = []
        self.time_s = 0.0

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:
        self.told.append((self.time_s, on, every_s))


def test_each_exercise_is_looked_at_as_it_needs() -> None:
    steps = [
        Step(from_s=0.0, to_s=1.0, step="rest"),
        Step(from_s=1.0, to_s=2.0, step="exercise", exercise="near-far"),
        Step(from_s=2.0, to_s=3.0, step="exercise", exercise="hand-toss"),
        Step(from_s=3.0, to_s=4.0, step="exercise", exercise="turns-on-target"),
    ]
    measurer, picture = Measurer(), np.zeros((2, 2, 3), np.uint8)

    def frames():  # type: ignore[no-untyped-def]
        for k in range(40):
            measurer.time_s = k / 10
            yield Frame(k, k / 10, picture)

    assert len(list(_watching(frames(), measurer, steps))) == 40  # type: ignore[arg-type]
    assert measurer.told == [(1.0, True, 0.12), (2.0, True, 0.0), (3.0, False, 0.0)]
