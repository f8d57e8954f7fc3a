"""A planned session: the conductor says what comes next, this part has it done in the window.

The session's clock starts with the first question. The measuring has a clock of its
own, which starts when it is opened; its times are moved to the session's where they
come in (:meth:`PlannedPart.now_s`, ``_moved``), so that everything after that knows one
clock.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from math import inf, nan
from typing import Any

from tracker.plan.asked import Asked as EntryAsked
from tracker.plan.asked import week_of
from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.from_clips import shifted_sample, shifted_step
from tracker.practice.tasks import AskSound, CountDown, DoSet, Over, Prepare, Task
from tracker.sample import Sample
from tracker.session.stage import Step
from ui.asked import Asked, has_target, needs_moving_target, planned_asked
from ui.geometry import facing_map
from ui.ports import Job, NoBeats
from ui.session_exercise import ExercisePart
from ui.session_state import COUNTDOWN_S, Dose, Phase

#: Ends that are explained before the summary is shown.
EXPLAINED = ("red_flag", "symptom_rule", "possible_fall", "stopped_unwell")
#: Signals for who doesn't see the screen: a beat a second before a set, and three quick
#: beats at its end (two sounds that no set has in this order).
_BEFORE_BPM, _END_BPM, _END_S = 60.0, 180.0, 0.99
#: What the camera doesn't count lasts until the patient says "done", or this long.
_UNTIL_SAID_S = 3600.0
_SETTING_UP = frozenset({Phase.camera, Phase.setup, Phase.fitting, Phase.setup_failed})


class PlannedPart(ExercisePart):
    """Leads through a plan; without one it does nothing."""

    plan: Plan | None = None
    conductor: Conductor | None = None
    clock: Callable[[], float] = staticmethod(time.monotonic)
    _began_s = nan
    _history: Job | None = None
    _setting_up = False
    _set_left_s = inf

    # --- the clock ---

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

    # --- commands ---

    def start_plan(self, plan: Plan) -> None:
        """From the welcome: today's session of a plan."""
        if self.phase != Phase.welcome or self.clip is not None or self._history is not None:
            return
        self.plan = plan
        self._history = self._world.run(lambda: self._world.history(plan))
        self._begin_plan()

    def _begin_plan(self) -> None:
        """Once what was done before has been read, the first question comes."""
        if self._history is None or not self._history.done or self.plan is None:
            return
        history, self._history = self._history, None
        self._forget_session()
        self._began_s = self.clock()
        recording = self._world.make_planned(self.plan)
        self._recording = recording
        self.conductor = Conductor(
            self.plan,
            recording,
            history=history.result or [],
            # The day on the person's calendar is meant, wherever they are.
            week=week_of(self.plan, date.today()),
            absent={
                e.entry_id: "moving_target"
                for e in self.plan.entries
                if needs_moving_target(e.exercise)
            },
        )
        self._follow_task()

    @property
    def task(self) -> Task | None:
        """What the plan asks for now; None outside a planned session."""
        return None if self.conductor is None else self.conductor.task

    @property
    def entry(self) -> EntryAsked | None:
        """The entry that is got ready for, or done."""
        task = self.task
        return task.asked if isinstance(task, Prepare | CountDown | DoSet) else None

    def answer(self, value: Any) -> None:
        """Answer the task."""
        conductor = self.conductor
        if conductor is None:
            return
        if isinstance(conductor.task, Over):
            self._finish(conductor.task.ended)
            return
        asked = conductor.task
        conductor.advance(self.now_s)
        if conductor.task is asked:
            conductor.answer(value)
        # Else its time was up just before, and the answer is to nothing.
        self._follow_task()

    def play_test(self, tempo_bpm: float, duration_s: float) -> None:
        """Sound some beats, to hear whether they are heard."""
        self._world.beats.start(tempo_bpm, duration_s)

    def in_place(self) -> None:
        """The patient is in place: the set-up first, where one is needed."""
        task = self.task
        if not isinstance(task, Prepare) or task.asked is None:
            return
        if not _is_seen(task.asked) or not (task.rest_pose or self._service is None):
            self.answer(True)
            return
        # One sees oneself first: who has stood up may be out of the picture.
        self.look_for_cameras()
        self._enter(Phase.camera)
        self.use_camera(self.camera or (self.cameras[0] if self.cameras else None))

    def unwell(self) -> None:
        """The patient feels unwell: everything stops, and the safety questions come."""
        if self.conductor is None or isinstance(self.conductor.task, Over):
            return
        self._rest_from_now()
        self.conductor.unwell()
        self._follow_task()

    def set_done(self) -> None:
        """The set is over: its dose is done, or the patient has stopped it."""
        if self.conductor is None or not isinstance(self.conductor.task, DoSet):
            return
        by_ear = self.by_ear
        self._end_step()
        self.conductor.end_set(self.now_s)
        self._follow_task()
        if by_ear:
            self._world.beats.start(_END_BPM, _END_S)

    def stop_plan(self, ended: str = "stopped") -> None:
        """Stop a set, or leave the set-up; anywhere else the session ends."""
        conductor = self.conductor
        if conductor is None:
            return
        if isinstance(conductor.task, DoSet) and ended == "stopped":
            self.set_done()
            return
        if isinstance(conductor.task, Over):
            self._finish(conductor.task.ended)
            return
        if self.phase in _SETTING_UP:
            # Back to "I am in place": one may leave this entry out, or end for today.
            self._close_service()
            self.trouble = None
            self._follow_task()
            return
        self._rest_from_now()
        conductor.stop(ended)
        self._follow_task()

    # --- what the conductor asks for ---

    def _follow_task(self) -> None:
        """Show the task as it stands now."""
        conductor = self.conductor
        if conductor is None:
            return
        self._setting_up = False
        if isinstance(conductor.task, AskSound) and isinstance(self._world.beats, NoBeats):
            # Without a sound device there is nothing to hear, whatever one would answer.
            conductor.answer(False)
        task = conductor.task
        if isinstance(task, CountDown):
            assert task.asked is not None
            self._set_left_s = task.asked.seconds or inf
            self._reps_before = self._recording.repetitions if self._recording else 0
            self.dose = Dose(
                task.asked.exercise.id, task.asked.repetitions, _pace(task.asked.tempo_bpm)
            )
            self._count_from_s = task.until_s - COUNTDOWN_S
            if self.by_ear:
                self._world.beats.start(_BEFORE_BPM, task.until_s - self.now_s)
            self._enter(Phase.countdown)
        elif isinstance(task, DoSet):
            self._begin_set(task)
        elif isinstance(task, Over) and task.ended not in EXPLAINED:
            self._finish(task.ended)
        else:
            if isinstance(task, Over):
                self._close_service()
            self._enter(Phase.asking)

    def _begin_set(self, task: DoSet) -> None:
        """The set begins, or goes on after a pause with what is left of it."""
        entry, conductor = task.asked, self.conductor
        assert entry is not None and conductor is not None
        left = None
        if entry.repetitions is not None:
            left = max(entry.repetitions - self._reps_done, 0)
        if left == 0 or self._set_left_s <= 0:
            self.set_done()
            return
        extent = self._extent()
        asked = planned_asked(
            self.now_s,
            entry,
            repetitions=left,
            seconds=_UNTIL_SAID_S if self.until_said else self._set_left_s,
            extent=extent,
            to_rest=self._map or facing_map(self._rest_distance_mm, extent.centre_mm),
            distance_mm=self._rest_distance_mm,
        )
        self._add(asked, begin=False)
        conductor.begin_set(asked.step)
        self._sound(asked.step)
        self._enter(Phase.exercise if _is_seen(entry) else Phase.asking)

    @property
    def target_coming(self) -> bool:
        """Whether the eyes will have a target on the screen."""
        entry = self.entry
        return entry is None or has_target(entry)

    @property
    def by_ear(self) -> bool:
        """Whether the entry is led by sound: the eyes are shut, or the screen is far."""
        entry = self.entry
        return entry is not None and (entry.eyes == "closed" or entry.posture != "sitting")

    @property
    def until_said(self) -> bool:
        """Whether the set lasts until the patient says that it is done."""
        entry = self.entry
        return entry is not None and not entry.exercise.counted and entry.seconds is None

    @property
    def _reps_done(self) -> int:
        """Repetitions of this set, those before a pause too."""
        recording = self._recording
        return 0 if recording is None else recording.repetitions - self._reps_before

    def _rest_from_now(self) -> None:
        """Whatever was asked for is over, in the recording too."""
        self._world.beats.stop()
        if isinstance(self.task, DoSet) and self.asked is not None:
            now_s = self.now_s
            self._add(Asked(Step(from_s=now_s, to_s=now_s + _UNTIL_SAID_S, step="rest")))

    def _end_step(self) -> None:
        """No more of the set is asked for; the conductor tells the recording."""
        self._world.beats.stop()
        now_s = self.now_s
        self._asked = [
            replace(a, step=a.step.model_copy(update={"to_s": min(a.step.to_s, now_s)}))
            if a.step.from_s < now_s
            else a
            for a in self._asked
        ]

    def _pause(self) -> None:
        asked = self.asked
        if self.conductor is not None and asked is not None:
            self._set_left_s -= self.now_s - asked.step.from_s
        super()._pause()

    def _set_over(self, ended: str) -> None:
        if self.conductor is None:
            super()._set_over(ended)
        else:
            self.set_done()

    def _finish(self, ended: str) -> None:
        if self.conductor is not None and not isinstance(self.conductor.task, Over):
            self._rest_from_now()
            self.conductor.stop(ended)
        if self.conductor is not None:
            # The plan is through; its steps stay with the recording.
            self.conductor = None
            self._asked, self._begun, self._offset_s = [], 0, 0.0
        super()._finish(ended)

    # --- its set-up ---

    def _ask_for_fit(self) -> None:
        if self._service is not None and self.conductor is not None:
            steps = [shifted_step(a.step, -self._offset_s) for a in self._setup_asked()]
            self._service.request_fit(steps)
            self._enter(Phase.fitting)
            return
        super()._ask_for_fit()

    def _fitted(self, report: Any) -> None:
        if self.conductor is not None:
            steps = [shifted_step(s, self._offset_s) for s in report.steps]
            report = replace(report, steps=steps)
        super()._fitted(report)

    def _begin_setup(self) -> None:
        if self.conductor is None:
            super()._begin_setup()
            return
        self._asked, self._begun, self._held = [], 0, []
        self.report, self.fit_message = None, ""
        self._setting_up = True
        self._enter(Phase.setup)

    def _after_setup(self) -> None:
        recording = self._recording
        if self.conductor is None or recording is None:
            super()._after_setup()
            return
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

    # --- time ---

    def _advance_plan(self) -> None:
        """Let the plan's time go on; a task whose time is up gives way to the next."""
        self._begin_plan()
        conductor = self.conductor
        if conductor is None or self._setting_up or self.phase in (Phase.camera, Phase.saving):
            return
        now_s, before = self.now_s, conductor.task
        if isinstance(before, DoSet) and self._may_have_fallen():
            self.stop_plan("possible_fall")
            return
        if self._recording is not None and self.phase == Phase.asking:
            self._recording.advance(now_s)
        conductor.advance(now_s)
        if conductor.task is not before:
            self._follow_task()
        elif (
            isinstance(before, DoSet)
            and self.phase == Phase.countdown
            and now_s >= self._count_from_s + COUNTDOWN_S
        ):
            self._begin_set(before)

    def _may_have_fallen(self) -> bool:
        """Whether a sudden drop of the head was noticed in this set."""
        live, asked = self.live, self.asked
        cue = None if live is None else live.cue
        if cue is None or asked is None:
            return False
        return cue.code == "possible_fall" and cue.said_at_s >= asked.step.from_s


def _is_seen(entry: EntryAsked) -> bool:
    """Whether the camera is needed for an entry."""
    return "face" in entry.exercise.needs


def _pace(tempo: float | tuple[float, float] | None) -> float | None:
    """One figure for a tempo that may rise: where it begins."""
    return tempo[0] if isinstance(tempo, tuple) else tempo
