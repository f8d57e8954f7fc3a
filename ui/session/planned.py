"""A planned session: the conductor says what comes next, this part has it done in the window.

Its clock is in ``ui.session.clock``, its set-up in ``ui.session.place``, its sets are in
``ui.session.one_set``; ``ui.session.lost`` pauses one whose camera is gone,
``ui.session.lost_alone`` has what is done then outside a set, and ``ui.session.moved`` what
is done where the target got another place.
"""

from __future__ import annotations

from datetime import date
from typing import Any

from tracker.plan.asked import asked_of, week_of
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import (
    NO_CAMERA,
    AskGate,
    AskScores,
    AskSound,
    CountDown,
    DoSet,
    Over,
    Prepare,
    ShowToday,
    Task,
)
from tracker.session.live import Dropped
from ui.ports import Baseline, Job
from ui.session.asked import needs_moving_target
from ui.session.moved import MovedPart
from ui.session.place import SETTING_UP
from ui.session.state import COUNTDOWN_S, Phase
from ui.session.twice import Twice
from ui.sounds.speaking import Grave

#: Ends that are explained before the summary is shown.
EXPLAINED = ("red_flag", "symptom_rule", "possible_fall", "stopped_unwell")
#: Three quick beats at the end, for who doesn't see the screen (no set has slow beats
#: and then these).
_END_BPM, _END_S = 180.0, 0.99
#: Pages from which a session may begin, or that lead to one.
_AT_REST = frozenset({Phase.welcome, Phase.tools, Phase.first})
#: Passed over by the patient's own choice: that need not be said again.
_OWN_CHOICE = frozenset({NO_CAMERA, "not_in_place", "session_ended", "locked"})


def _is_explained(task: Over) -> bool:
    """Whether it is told why a session is over before what was done is shown."""
    return task.ended in EXPLAINED


class PlannedPart(MovedPart):
    """Leads through a plan; without one it does nothing."""

    _history: Job | None = None
    #: What the session that goes on is known as, if it is the baseline.
    _as_baseline: Baseline | None = None
    #: Whether no earlier session of the plan is known in which anything was begun.
    first_time = False
    #: Entries that were passed over and that the patient knows of.
    _told: frozenset[str] = frozenset()

    @property
    def at_rest(self) -> bool:
        """Whether no session goes on, is about to begin, or waits for its place on disk.

        The page of a session stays the welcome while what was done before is read.
        """
        over = self.phase == Phase.summary and not self.unsaved
        return (self.phase in _AT_REST or over) and self._history is None

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        self._unwell = Twice()

    # --- commands ---

    def start_plan(self, plan: Plan) -> None:
        """From the welcome: today's session of a plan."""
        if self.phase != Phase.welcome or self.clip is not None or not self.at_rest:
            return
        self.plan, self._lack_told = plan, False
        self.prepare_voice()
        new = None if self.baseline is None else self.baseline.folder
        world = self._world
        self._history = world.run(lambda: (world.history(plan, new), world.of_today(new)))
        self._begin_plan()

    def _begin_plan(self) -> None:
        """Once what was done before has been read, the first question comes."""
        if self._history is None or not self._history.done or self.plan is None:
            return
        history, self._history = self._history, None
        self._forget_session()
        self._began_s, self._told = self.clock(), frozenset()
        self.scores = None
        # The day on the person's calendar is meant, wherever they are.
        today = date.today()
        self.week = week_of(self.plan, today)
        self._as_baseline = self._baseline_of(self.plan)
        recording = self._world.make_planned(self.plan, self._as_baseline)
        recording.tell_by(self._tell_cue)
        if self._as_baseline is not None:
            # One session is the baseline, and not all that come after it.
            self.baseline = None
        self._recording = recording
        known, of_today = history.result or ((), ())
        self.first_time = not any(s.plan_id and s.anything_begun for s in known)
        self.conductor = Conductor(
            self.plan,
            recording,
            history=known,
            of_today=of_today,
            today=today,
            week=self.week,
            absent=self._not_on_screen(self.plan),
            supervised=self._as_baseline is not None,
            speaks=lambda: self.can_speak,
        )
        self._follow_task()

    def _baseline_of(self, plan: Plan) -> Baseline | None:
        """What is expected of the next session, if one of this plan may be it."""
        wanted = self.baseline
        fits = wanted is not None and wanted.is_of(plan) and plan.plan_id != TRY_ID
        return wanted if fits else None

    def _not_on_screen(self, plan: Plan) -> dict[str, str]:
        """Entries that the screen can't show now, or is not to, with the reason."""
        found = {}
        for entry in plan.entries:
            asked = asked_of(entry, self.week)
            if needs_moving_target(asked):
                found[entry.entry_id] = "moving_target"
            elif self._refuses_still(asked):
                found[entry.entry_id] = "still_screen"
        return found

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
            if isinstance(asked, AskScores) and isinstance(value, dict):
                self.scores = (asked.when, dict(value))
            conductor.answer(value)
        # Else its time was up just before, and the answer is to nothing.
        self._follow_task()

    def unwell(self, *, meant: bool = False) -> None:  # noqa: ARG002
        """The patient feels unwell: everything stops, and the safety questions come."""
        task, now_s = self.task, self.clock()
        if self.conductor is None or isinstance(task, Over):
            return
        again = isinstance(task, AskGate) and task.because == "unwell"
        if again and self._unwell.just_now(now_s):
            # A hand that shakes: the questions must not be passed over unseen.
            return
        self._unwell.happens(now_s)
        self.trouble = None
        self.show_picture(False)
        self._stop_all("say.unwell")
        self.conductor.unwell()
        self._follow_task()

    def set_done(self) -> None:
        """The set is over: its dose is done, or the patient says so."""
        if self.conductor is None:
            super().set_done()
        else:
            self._end_set("say.end")

    @property
    def near_set(self) -> bool:
        """Whether a set goes on, or rests, in which one may come to see double."""
        entry = self.entry
        return isinstance(self.task, DoSet) and entry is not None and entry.exercise.near_work

    def saw_double(self) -> None:
        """The patient sees double in near work: the set ends at once, and is done for today."""
        if self.conductor is not None and self.near_set:
            self.conductor.saw_double()
            self._end_set("say.double")

    def _end_set(self, key: str) -> None:
        if self.conductor is None or not isinstance(self.conductor.task, DoSet):
            return
        if self._asked_if_well():
            return
        entry, by_ear, led = self.entry, self.by_ear, self.led
        self._end_step()
        self.conductor.end_set(self.now_s)
        self._follow_task()
        self._sound_end(by_ear=by_ear, led=led)
        if entry is not None:
            self._say_end(key, entry, led)

    def _sound_end(self, *, by_ear: bool, led: str) -> None:
        """What was led by sound is over: who doesn't see the screen hears quick beats."""
        if by_ear and led != "silence":
            self._world.beats.start(_END_BPM, _END_S)

    def refuse_set(self, reason: str) -> None:
        """The set can't begin, or not go on, as it is: what was done of it stays."""
        conductor, recording = self.conductor, self._recording
        if conductor is None or recording is None:
            return
        if conductor.set_begun:
            recording.mark("set_ended", self.now_s, reason=reason)
            self._end_set("say.stopped")
            return
        self._end_step()
        conductor.refuse_set(reason)
        self._follow_task()

    def stop_plan(self, ended: str = "stopped") -> None:
        """Stop a set, or leave its countdown or the set-up; anywhere else the session ends."""
        conductor = self.conductor
        if conductor is None:
            return
        if isinstance(conductor.task, DoSet) and ended == "stopped":
            self._end_set("say.stopped")
            return
        if isinstance(conductor.task, CountDown):
            self._leave_countdown(conductor)
            return
        if isinstance(conductor.task, Over):
            self._finish(conductor.task.ended)
            return
        if self.phase in SETTING_UP:
            # Back to "I am in place": one may leave this entry out, or end for today.
            self._close_service()
            self.trouble = None
            self._follow_task()
            return
        self.end_today(ended)

    def _leave_countdown(self, conductor: Conductor) -> None:
        """Back to "I am in place"; who was waited for in vain leaves this set alone."""
        if self.waits_for_sight:
            # What comes after it can still be done.
            conductor.advance(self.now_s)
            self._follow_task()
            self._end_set("say.stopped")
            return
        entry, by_ear, led = self.entry, self.by_ear, self.led
        self._world.beats.stop()
        self._watch_body(None)
        conductor.call_off()
        self._follow_task()
        # Who has shut the eyes or gone to the place hears that it is called off.
        self._sound_end(by_ear=by_ear, led=led)
        if entry is not None:
            self._say_end("say.stopped", entry, led)

    def end_today(self, ended: str = "stopped") -> None:
        """End the session, from within a set too; what was done is saved."""
        if self.conductor is None or self._asked_if_well(leaving=True):
            return
        self._stop_all("say.stopped" if ended == "stopped" else "")
        self.conductor.stop(ended)
        self._follow_task()

    def _stop_all(self, key: str) -> None:
        """Nothing is asked for any more, and who was about it hears so, in the words of a key."""
        entry = self.entry
        self._rest_from_now()
        if key and entry is not None and not isinstance(self.task, Prepare):
            self._say_end(key, entry, self.led)

    # --- what the conductor asks for ---

    def _follow_task(self) -> None:
        """Show the task as it stands now."""
        conductor = self.conductor
        if conductor is None:
            return
        self._setting_up = False
        if isinstance(conductor.task, AskSound) and not self.can_sound:
            # Without a sound device there is nothing to hear, whatever one would answer.
            conductor.answer(False)
        task = conductor.task
        if isinstance(task, Prepare):
            self._led_by = task.voice
        if isinstance(task, CountDown):
            self._count_down(task)
        elif isinstance(task, DoSet):
            self._begin_set(task)
        elif isinstance(task, Over) and not _is_explained(task):
            self._finish(task.ended)
        else:
            if isinstance(task, Over):
                self._close_service()
            self._say_task(task)
            self._enter(Phase.asking)

    def take_left_out(self) -> list[tuple[str, str]]:
        """Entries that were passed over since this was last asked, each with the reason.

        What the glance at the day has said already is not said again, nor what the
        patient has chosen.
        """
        conductor = self.conductor
        if conductor is None:
            return []
        if isinstance(conductor.task, ShowToday):
            self._told |= {entry_id for entry_id, waits in conductor.task.entries if waits}
        passed = [(e, why[0]) for e, why in conductor.not_done if e not in self._told and why]
        self._told |= {entry_id for entry_id, _ in passed}
        return [(e, why) for e, why in passed if why not in _OWN_CHOICE]

    def _set_over(self, ended: str) -> None:
        if self.conductor is None:
            super()._set_over(ended)
            if self.clip is None:
                self._say((Grave.edge, 0), "say.end")
        else:
            self.set_done()

    def _finish(self, ended: str) -> None:
        if self.conductor is not None and not isinstance(self.conductor.task, Over):
            self._rest_from_now()
            self.conductor.stop(ended, shown=False)
            if isinstance(self.conductor.task, Over):
                # Who leaves without an answer has not undone why it was asked.
                ended = self.conductor.task.ended
        if self.conductor is not None:
            self._hush()
            # The plan is through; its steps stay with the recording.
            self.conductor = None
            self._asked, self._begun, self._offset_s = [], 0, 0.0
        super()._finish(ended)

    def _collect_saved(self) -> None:
        super()._collect_saved()
        wanted = self._as_baseline
        if self.saved is None or wanted is None:
            return
        self._as_baseline = None
        found = [s.summary for s in (*self._saved_before, self.saved)]
        if not any(s.get("exercises") for s in found):
            # It ended before anything was done: the next session is still to be the baseline.
            self.baseline = wanted.anew()

    # --- time ---

    def _advance_plan(self) -> None:
        """Let the plan's time go on; a task whose time is up gives way to the next."""
        self._begin_plan()
        conductor = self.conductor
        if conductor is None or self._setting_up or self.phase in (Phase.camera, Phase.saving):
            return
        now_s, before = self.now_s, conductor.task
        self._say_fall_again()
        if self._dropped() and self._asked_if_well():
            return
        if self._must_be_still(before):
            self.refuse_set("still_screen")
            return
        if isinstance(before, DoSet) and self._stopped_by_sight():
            if self._stopped_unseen:
                self._ask_if_well(seen=False)
            else:
                self._end_set("say.stopped")
            return
        self._look_for_camera()
        if isinstance(before, CountDown) and now_s >= before.until_s and self._not_in_sight(now_s):
            return
        if self._recording is not None and self.phase == Phase.asking:
            self._recording.advance(now_s)
        conductor.advance(now_s)
        entry = self.entry
        self._follow_set()
        if entry is not None and conductor.task is before and self._set_clock.runs:
            self._say_of_set(entry, self.live, self._reps_done)
        if conductor.task is not before:
            self._follow_task()
        elif isinstance(before, DoSet) and self.phase == Phase.asking and self.set_left_s <= 0:
            # Nobody watches this one: its time alone ends it.
            self.set_done()
        elif (
            isinstance(before, DoSet)
            and self.phase == Phase.countdown
            and now_s >= self._count_from_s + COUNTDOWN_S
            and not self._not_in_sight(now_s)
        ):
            self._begin_set(before)

    def _ask_if_well(self, *, seen: bool, leaving: bool = False) -> None:
        """Nothing is asked for any more; how the person is stands on the screen and is said."""
        entry, conductor = self.entry, self.conductor
        if conductor is None or not conductor.steps_to_ask_of:
            return
        if isinstance(conductor.task, DoSet):
            self._end_step()
        conductor.dropped(self.now_s, seen=seen, leaving=leaving)
        self._follow_task()
        self._say_fall(entry)

    def _must_be_still(self, task: Task) -> bool:
        """Whether a set that moves what is to be still now is going on, or about to begin."""
        entry = task.asked if isinstance(task, CountDown | DoSet) else None
        return entry is not None and self._refuses_still(entry)

    def _dropped(self) -> Dropped:
        """Whether the head dropped in this set: ``lost`` if it left the picture on its way.

        By what was found, not by what was said last: more may have come while the window stood.
        """
        if isinstance(self.task, DoSet) and self._seen_to_stop == "down":
            return "lost"
        if self.conductor is None or self._recording is None:
            return ""
        return self._recording.dropped(self.conductor.steps_to_ask_of)

    def _asked_if_well(self, *, leaving: bool = False) -> bool:
        """Ask about a drop in the set, if there was one; before a set is left, however it ends.

        More may have come while the window stood than it has looked at: the end of the set, too.
        Who is ``leaving`` for today is asked about a drop that goes on: no more is seen of it;
        and who is fine then has left.
        """
        dropped, conductor, recording = self._dropped(), self.conductor, self._recording
        if conductor is None or recording is None:
            return False
        left = isinstance(conductor.task, DoSet) and self._seen_to_stop == "left"
        if not dropped and left and self._hands_free.dropped:
            dropped = "lost"
        if not dropped and leaving and recording.dropping(conductor.steps_to_ask_of):
            dropped = "lost"
        if not dropped:
            return False
        self._ask_if_well(seen=dropped == "seen", leaving=leaving)
        return True
