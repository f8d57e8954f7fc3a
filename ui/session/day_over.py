"""Practice outside a plan on a day that was over: the same questions come as in one of a plan.

They stand before the camera, and are kept with the plan at hand, if there is one: the therapist
sees there who came back, and who went on by the therapist's word of today.
"""

from __future__ import annotations

from datetime import date

from tracker.plan.unlocking import ENDED_BADLY
from tracker.practice.day import day_by
from tracker.practice.earlier import DAY_IS_OVER
from ui.ports import Job, RecordingLike, Saved
from ui.session.unwell import UnwellPart


class DayOverPart(UnwellPart):
    """Asks before practice outside a plan what a day that was over asks; else nothing."""

    _today: Job | None = None

    @property
    def at_rest(self) -> bool:
        """Nor is it about to be asked whether practice outside a plan may begin."""
        return super().at_rest and self._today is None

    @property
    def is_over_for_today(self) -> bool:
        """Whether the session that is over had to be ended, or was told that the day was over."""
        found = {} if self.saved is None else self.saved.summary
        return self.ended in ENDED_BADLY or DAY_IS_OVER in found.get("ended_because", ())

    @property
    def _reads(self) -> bool:
        return super()._reads or self._today is not None

    def _look_for_camera_first(self) -> None:
        """Practice outside a plan may begin."""
        raise NotImplementedError

    def _begin_outside(self) -> None:
        """From the welcome: what the sessions of today say is read beside the window first."""
        self._today = self._world.run(lambda: self._world.of_today(None))
        self._begin_if_not_over()

    def _begin_if_not_over(self) -> None:
        """Once it is read the camera comes, or what a day that was over asks."""
        job = self._today
        if job is None or not job.done:
            return
        self._today = None
        told, today, at_hand = job.result or [], date.today(), self.plan_at_hand()
        if not day_by(told, None if at_hand is None else at_hand.person, today).is_over:
            self._look_for_camera_first()
            return
        self._begin_nothing()
        self.first_time = False
        self._ask_alone(of_today=told, today=today, only_whether=True)
        self._follow_task()

    def _begin_nothing(self) -> None:
        self._today = None
        super()._begin_nothing()

    def _follow_task(self) -> None:
        if self.conductor is None or not self.conductor.may_begin:
            super()._follow_task()
            return
        # The therapist has allowed it. That is kept, and needs no look: practice comes.
        recording = self._recording
        self._hush()
        self.conductor, self._asked_alone, self.plan = None, False, None
        self._forget_session()
        if recording is not None:
            self._stopping.append(self._world.run(lambda: _saved(recording)))
        self._look_for_camera_first()

    def _advance_plan(self) -> None:
        self._begin_if_not_over()
        super()._advance_plan()


def _saved(recording: RecordingLike) -> Saved:
    """Save a record; where that fails it is offered as one that broke off."""
    try:
        return recording.save()
    finally:
        recording.close()
