"""Getting into place in a planned session: the set-up, where an entry needs one."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from tracker.plan.asked import Asked as EntryAsked
from tracker.practice.from_clips import shifted_step
from tracker.practice.tasks import NO_CAMERA, Prepare
from tracker.session.stage import Step
from ui.session.clock import is_seen
from ui.session.seat_told import SeatPart
from ui.session.state import Phase
from ui.setup.reach import Wanted, wanted_of
from ui.sounds.speaking import Grave

#: Phases that a stop leads back from to "I am in place".
SETTING_UP = frozenset(
    {Phase.camera, Phase.setup, Phase.fitting, Phase.setup_failed, Phase.setup_told}
)


class PlacePart(SeatPart):
    """Has the set-up done within a planned session, on its clock."""

    _setting_up = False
    #: Week of the plan, for its ladders.
    week = 1

    def answer(self, value: Any) -> None:
        """Answer the task."""
        raise NotImplementedError

    def in_place(self) -> None:
        """The patient is in place: the set-up first, where one is needed."""
        task = self.task
        if not isinstance(task, Prepare) or task.asked is None:
            return
        if self._refuses_still(task.asked):
            # It was asked for since the day began.
            self.answer(False)
            return
        if not is_seen(task.asked) or not (task.rest_pose or self._service is None):
            self.answer(True)
            return
        # One sees oneself first: who has stood up may be out of the picture.
        self.look_for_cameras()
        self._enter(Phase.camera)
        self.use_camera(self.camera or (self.cameras[0] if self.cameras else None))

    def leave_out(self) -> None:
        """Leave out an exercise whose camera can't be used, and go on with what comes after it."""
        if self.phase == Phase.camera and isinstance(self.task, Prepare):
            self._close_service()
            self.trouble = None
            self.answer(NO_CAMERA)

    def _refuses_still(self, asked: EntryAsked) -> bool:
        """Whether an entry moves what the person wants to be still: all but the target itself."""
        return asked.exercise.target == "background" and self.still()

    @property
    def wall_looks(self) -> tuple[tuple[float, float, float], ...]:
        """Those of the entry that the set-up is for."""
        task = self.task
        asked = task.asked if isinstance(task, Prepare) else None
        return () if asked is None else asked.mark_places_mm

    def use_camera(self, camera: Any) -> None:
        """Open a camera to see whether it sees the person."""
        raise NotImplementedError

    def _fit_steps(self) -> list[Step]:
        steps = super()._fit_steps()
        if self.conductor is None:
            return steps
        return [shifted_step(s, -self._offset_s) for s in steps]

    def _fitted(self, report: Any) -> None:
        if self.conductor is not None:
            steps = [shifted_step(s, self._offset_s) for s in report.steps]
            report = replace(report, steps=steps)
        super()._fitted(report)

    def _forget_steps(self) -> None:
        if self.conductor is None:
            # In a plan there is one clock all the way.
            super()._forget_steps()

    def _begin_setup(self) -> None:
        if self.conductor is None:
            super()._begin_setup()
            return
        self._forget_again()
        self._asked, self._begun, self._held = [], 0, []
        self.report, self.fit_message = None, ""
        self._setting_up = True
        self._enter(Phase.setup)

    @property
    def wanted_reach(self) -> Wanted:
        """How far the head should go for what the plan asks this week."""
        plan = self.plan
        if plan is None or self._short:
            return super().wanted_reach
        return wanted_of(plan, self.week)

    def _after_setup(self) -> None:
        if self.conductor is None or self._recording is None:
            super()._after_setup()
        elif self.told.good:
            self.take_setup()
        else:
            # Before anything rests on it one may do it again, or go on all the same.
            self._enter(Phase.setup_told)
            self._say((Grave.cue, 0), "setup.told")

    def take_setup(self) -> None:
        """Go on with the set-up as it came out: in the plan, or to the choice of an exercise."""
        recording = self._recording
        if self.phase == Phase.setup_told and self.conductor is None:
            self._enter(Phase.choose)
            return
        if self.conductor is None or recording is None:
            return
        self.let_setup_go()
        found = self._found()
        steps = [a.step for a in self._setup_asked()]
        recording.use_setup(steps[0].from_s if steps else self.now_s, found)
        held, self._held = self._held, []
        for step in steps:
            recording.begin(step)
        self._begun = len(self._asked)
        for sample in held:
            recording.feed(sample)
        self.answer(True)
