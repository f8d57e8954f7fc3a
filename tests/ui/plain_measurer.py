"""A measurer that looks at nothing and needs no time: for the child process of a test."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from tests.ui.fakes import Report, turning
from tracker.frame import Frame
from tracker.sample import Sample
from tracker.session.stage import Step

#: When the exercise of the test's clip begins.
EXERCISE_S = 1.8


class PlainMeasurer:
    """A head that turns by the clock."""

    def take(self, frame: Frame) -> Sample:
        return turning(frame.time_s, EXERCISE_S)

    def fit(self, steps: Sequence[Step]) -> Report:
        return Report(list(steps))

    def use_profile(self, profile: Any) -> None:
        """Needs none."""

    def close(self) -> None:
        """Holds nothing."""


def make(**_: Any) -> PlainMeasurer:
    """Make one."""
    return PlainMeasurer()
