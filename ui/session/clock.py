"""The clock of a planned session, and what its plan asks for at this time.

The session's clock starts with the first question. The measuring has a clock of its
own, which starts when it is opened; its times are moved to the session's where they
come in (:meth:`ClockPart.now_s`, ``_moved``), so that everything after that knows one
clock.
"""

from __future__ import annotations

from math import nan
from typing import Any

from tracker.plan.asked import Asked as EntryAsked
from tracker.practice.conductor import Conductor
from tracker.practice.from_clips import shifted_sample
from tracker.practice.tasks import CountDown, DoSet, Prepare, Task
from tracker.sample import Sample
from ui.session.exercise import ExercisePart


class ClockPart(ExercisePart):
    """Keeps one clock from the first question to the end; without a plan the measuring's."""

    conductor: Conductor | None = None
    _began_s = nan

    @property
    def now_s(self) -> float:
        """The session's clock."""
        if self.conductor is None:
            return super().now_s
        if self._service is not None:
            return self._service.now_s() + self._offset_s
        return self.clock() - self._began_s

    def _open(self, source: Any) -> None:
        self._offset_s = 0.0 if self.conductor is None else self.now_s
        super()._open(source)

    def _close_service(self) -> None:
        if self.conductor is not None and self._service is not None:
            # The clock goes on from where the measuring's stands, and never back.
            self._began_s = self.clock() - self.now_s
        super()._close_service()

    def _moved(self, sample: Sample) -> Sample:
        """A sample of the measuring on the session's clock."""
        return shifted_sample(sample, self._offset_s) if self._offset_s else sample

    # --- what is asked for ---

    @property
    def task(self) -> Task | None:
        """What the plan asks for now; None outside a planned session."""
        return None if self.conductor is None else self.conductor.task

    @property
    def entry(self) -> EntryAsked | None:
        """The entry that is got ready for, or done."""
        task = self.task
        return task.asked if isinstance(task, Prepare | CountDown | DoSet) else None


def is_seen(entry: EntryAsked) -> bool:
    """Whether the camera is needed for an entry."""
    return "face" in entry.exercise.needs
