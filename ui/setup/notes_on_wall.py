"""Notes on the wall in a set-up: which of them is looked at, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.session.stage import Step
from tracker.targets import Point3


def note_of(marks: Sequence[Point3], number: int) -> str:
    """Which of the notes on the wall one is."""
    if len(marks) == 1:
        return "note"
    aside = marks[0][0] != marks[1][0]
    return (("right", "left") if aside else ("upper", "lower"))[number]


def setup_key(step: Step) -> str:
    """Key of what to say in a step of a set-up; empty where there is nothing."""
    note = (step.model_extra or {}).get("note")
    return f"setup.{step.step}" if note is None else f"setup.look.{note}"
