"""The conductor: from a plan to a finished session, one task after the other.

A state machine without clock, window or camera. Its owner looks at
:attr:`Conductor.task`, does it, and hands over answers and time; every decision
goes to the recorder at once, so that the summary is a projection of the journal.

Nobody there to answer
----------------------
With ``attended=False`` (clips without a window) the movements are made already,
so that refusing an entry for want of an answer would protect nobody. A question
without an answer is then "not asked": what hangs on it alone is passed over, and
the summary says so. What *is* known still rules: the plan's locks and clearance,
every yes at the gate, every "no" to a support, every score that was given. A live
session (``attended=True``) waits for each answer, and nothing begins without.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Any, Literal

from tracker.plan.asked import Asked
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.practice.asking import CantBegin, Dropped, End, Recorder, Reordered, Unwell
from tracker.practice.changing import Changed
from tracker.practice.day import Told, day_by, told_by
from tracker.practice.earlier import Earlier, earlier_of
from tracker.practice.flow import SessionFlow
from tracker.practice.tasks import (
    ANEW,
    AskReader,
    AskSound,
    AskSupport,
    AskWall,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Rest,
    ShowToday,
    Task,
    Wait,
)
from tracker.practice.today import Openings, entries_of_today
from tracker.session.stage import Step
from tracker.session.summary_file import Summary

#: What is asked while one gets ready for the next set.
_BETWEEN_SETS = (ShowToday, Rest, AskSound, AskReader, AskSupport, AskWall, Prepare)
#: A change, or why there is none.
Change = Changed | str
#: Time to get ready once one is in place; who stands has pressed the key out of arm's
#: reach, and goes to the place first (common practice).
COUNTDOWN_S, STANDING_COUNTDOWN_S = 3.0, 10.0


class Conductor:
    """Leads through one session.

    Parameters
    ----------
    plan
        The plan.
    recorder
        Takes every answer and every decision.
    history
        Summaries of the person's earlier sessions, oldest first.
    of_today
        What any other sessions say of today: it counts for whether all is over for today, and for
        nothing else.
    today
        The day on the person's calendar; without one nothing is asked once a week or of the
        day before, nor in a try of the program, and any day of the therapist's has come.
    week
        Week of the plan, for its ladders.
    stage_id
        The stage to practise; None for the furthest that is open.
    absent
        Entry -> why it can't be done today whatever is answered (``no_clip``).
    attended
        Whether somebody is there to answer (see above).
    supervised
        Whether the therapist sits beside the person: on a day that was over it is asked once, not
        twice, if they let it go on.
    only_whether
        Whether nothing is asked but whether practice outside a plan may begin (``may_begin``).
    speaks
        Whether words can be spoken here: what is spoken through needs them, or a reader.
    countdown_s, standing_countdown_s
        How long the countdown takes, and before a set that isn't done sitting.
    """

    def __init__(
        self,
        plan: Plan,
        recorder: Recorder,
        *,
        history: Sequence[Summary] = (),
        of_today: Sequence[Told] = (),
        today: date | None = None,
        week: int = 1,
        stage_id: str | None = None,
        absent: Mapping[str, str] | None = None,
        attended: bool = True,
        supervised: bool = False,
        only_whether: bool = False,
        speaks: Callable[[], bool] = lambda: True,
        countdown_s: float = COUNTDOWN_S,
        standing_countdown_s: float = STANDING_COUNTDOWN_S,
    ) -> None:
        if stage_id is not None:
            entries_of_today(plan, stage_id)
        a_try = plan.plan_id == TRY_ID
        earlier = Earlier() if today is None or a_try else earlier_of(history, today)
        if today is not None and attended:
            # Of clips nothing is left to be prevented.
            told = (*map(told_by, history), *of_today)
            earlier = replace(earlier, day=day_by(told, plan.person, today))
        self._begin = recorder.begin
        self._step: Step | None = None
        self._flow = SessionFlow(
            plan,
            recorder,
            Openings(plan, history, today),
            week=week,
            stage_id=stage_id,
            absent=dict(absent or {}),
            attended=attended,
            countdown_s=(countdown_s, standing_countdown_s),
            earlier=earlier,
            only_whether=only_whether,
            supervised=supervised,
        )
        self._flow.speaks = speaks
        self._going = self._flow.session()
        self._task: Task = next(self._going)

    @property
    def task(self) -> Task:
        """What comes next."""
        return self._task

    @property
    def may_begin(self) -> bool:
        """Whether only that was asked, and practice outside a plan may begin now."""
        return self._flow.may_begin

    @property
    def now_s(self) -> float:
        """Time on the session's clock."""
        return self._flow.now_s

    @property
    def not_done(self) -> Sequence[tuple[str, tuple[str, ...]]]:
        """Entries that were passed over so far, in their order, each with its reasons."""
        return self._flow.not_done

    def advance(self, now_s: float) -> None:
        """Time goes on; a task whose time is up is over."""
        self._flow.now_s = max(self._flow.now_s, now_s)
        while self._flow.now_s >= self._task.until_s:
            self._go_on(None)

    def answer(self, value: Any) -> None:
        """Answer the task; None where nobody can.

        Raises
        ------
        ValueError
            If the task takes no answer, or not this one; nothing has happened then.
        """
        if isinstance(self._task, CountDown | DoSet | Wait | Over):
            raise ValueError(f"{type(self._task).__name__} takes no answer")
        self._task.check(value)
        self._go_on(value)

    def begin_set(self, step: Step) -> int:
        """The set begins, or goes on after a pause, with a step; gives its number."""
        if not isinstance(self._task, DoSet):
            raise ValueError(f"no set can begin at {type(self._task).__name__}")
        number = self._begin(step)
        self._step = step
        self._flow.begin_step(number)
        return number

    def lose_count(self) -> None:
        """The camera has missed some of the set: the patient's own count is asked for after it."""
        if not self.set_begun:
            raise ValueError(f"no set goes on at {type(self._task).__name__}")
        self._flow.lose_count()

    @property
    def set_begun(self) -> bool:
        """Whether a set is being done, or paused, that has begun."""
        return bool(self.set_steps)

    @property
    def anything_begun(self) -> bool:
        """Whether a set of this session has begun, the one that goes on or one before."""
        return self._flow.anything_begun

    @property
    def set_steps(self) -> Sequence[int]:
        """Steps of the set that is being done, or paused, by number; none where none has begun."""
        return tuple(self._flow.numbers) if isinstance(self._task, DoSet) else ()

    @property
    def steps_to_ask_of(self) -> Sequence[int]:
        """Steps in which a drop of the head is to be asked about: of this set, or one just over.

        What it was comes out half a second later than it is; the set may have ended meanwhile.
        """
        return tuple(self._flow.numbers) if self._flow.just_over else self.set_steps

    def refuse_set(self, reason: str) -> None:
        """The set can't begin as it is: its entry is passed over, with the reason."""
        if not isinstance(self._task, CountDown | DoSet) or self.set_begun:
            raise ValueError(f"no set is to begin at {type(self._task).__name__}")
        self._task = self._going.throw(CantBegin(reason))

    def call_off(self) -> None:
        """The patient has stopped the countdown: getting into place comes again."""
        if not isinstance(self._task, CountDown):
            raise ValueError(f"there is no countdown at {type(self._task).__name__}")
        self._go_on(ANEW)

    def saw_double(self) -> None:
        """The patient sees double in near work: the set is to end, and is not repeated today."""
        if not isinstance(self._task, DoSet):
            raise ValueError(f"there is no set at {type(self._task).__name__}")
        self._flow.saw_double()

    def end_set(self, time_s: float) -> None:
        """The set is over: done, or stopped by the patient.

        What comes after it in the time that was given for it is rest.
        """
        self._rest_from(time_s)
        self._go_on(None)

    def dropped(self, time_s: float, *, seen: bool, leaving: bool = False) -> None:
        """The head dropped suddenly in the set: it is over, and how the person is is asked.

        Also where that came out when the set had just ended otherwise.

        ``seen`` is False where they were lost while it dropped: who only sat down, and says to
        be fine, goes on; or ends for today, where that was wished (``leaving``).
        """
        if self._flow.just_over:
            # The time for an answer begins when it is asked.
            self._flow.now_s = max(self._flow.now_s, time_s)
        else:
            self._rest_from(time_s)
        self._task = self._going.throw(Dropped(seen=seen, leaving=leaving))

    def _rest_from(self, time_s: float) -> None:
        """No more of the set is asked for from a time on."""
        if not isinstance(self._task, DoSet):
            raise ValueError(f"there is no set at {type(self._task).__name__}")
        if self._step is not None and self._step.to_s > time_s:
            rest = {"from_s": time_s, "to_s": self._step.to_s, "step": "rest"}
            self._begin(Step.model_validate(rest))
        self._step = None
        self._flow.now_s = max(self._flow.now_s, time_s)

    def stop(self, ended: str = "stopped", *, shown: bool = True) -> None:
        """Stop at once, whatever is being done: ``stopped``, ``possible_fall``, ...

        ``shown`` is False where the window closes: nobody sees what :class:`Over` says.
        """
        if not isinstance(self._task, Over):
            self._task = self._going.throw(End(ended, shown=shown))

    def unwell(self) -> None:
        """The patient feels unwell: everything stops, and the safety questions come."""
        if not isinstance(self._task, Over):
            self._task = self._going.throw(Unwell())

    # --- what a therapist has changed between two sets ---

    @property
    def changeable(self) -> bool:
        """Whether what comes next may be changed now: between sets, never in one."""
        return isinstance(self._task, _BETWEEN_SETS) and self._flow.coming is not None

    @property
    def coming(self) -> Asked | None:
        """What the entry that comes next asks for, with what was changed."""
        return self._flow.asked_of_coming()

    def change(
        self,
        what: Literal["tempo", "amplitude", "next", "undo"],
        steps: int = 1,
        *,
        confirmed: bool = False,
    ) -> Change:
        """Change what comes next by one step; gives the change, or why there is none.

        Parameters
        ----------
        what
            ``tempo`` or ``amplitude``; ``next`` has another entry come next, and ``undo``
            takes the last change back.
        steps
            1 for faster or larger, -1 for slower or smaller.
        confirmed
            Whether it was said that the therapist is in the call and asks for it; kept.
        """
        self._flow.confirmed = confirmed
        coming = self._flow.coming
        if coming is None or not isinstance(self._task, _BETWEEN_SETS):
            return "not_now"
        if what in ("tempo", "amplitude"):
            found = self._flow.change_dose(coming, what, steps)
        elif what == "next":
            found = self._flow.change_next(coming)
        else:
            found = self._flow.undo_change(coming)
        if isinstance(found, Changed):
            self._put_anew(found)
        return found

    def _put_anew(self, changed: Changed) -> None:
        """The task as it stands after a change."""
        if isinstance(self._task, ShowToday):
            self._go_on(ANEW)
        elif changed.what == "next":
            self._task = self._going.throw(Reordered())
        elif isinstance(self._task, Prepare):
            self._go_on(ANEW)

    def _go_on(self, value: Any) -> None:
        self._task = self._going.send(value)
