"""To feel unwell outside a session of a plan: the same safety questions come as in one.

Where nothing goes on (before the first set of a session, and once it is over) it is asked first
whether it is meant: one stray key would close the day. Before a session they come in a record of
the plan at hand, in which nothing was done.
After a session they come in a record of their own. One that waits for a place on disk goes on
waiting meanwhile, and is saved together with that record.
"""

from __future__ import annotations

from collections.abc import Callable
from math import nan
from typing import Any

from tracker.plan.model import Plan
from tracker.plan.starter import seated_starter
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import AskGate, Over
from tracker.session.stage import Step
from ui.session.asked import Asked
from ui.session.first import FirstPart
from ui.session.state import LIVE_PHASES, Phase
from ui.session.tools import BACK
from ui.sounds.speaking import Grave

#: Before anything is begun, or when one is back from it.
_BEFORE = frozenset(
    {Phase.welcome, Phase.first, Phase.camera, Phase.tools, Phase.lens, Phase.screen}
)
#: From the beginning of a set-up to the end of practice.
_PRACTISING = LIVE_PHASES | {
    Phase.setup,
    Phase.fitting,
    Phase.setup_failed,
    Phase.setup_told,
    Phase.choose,
    Phase.mark,
}
#: After it: what is said then goes into a record of its own.
_AFTER = frozenset({Phase.saving, Phase.summary})
#: Ends that the safety questions led to, or came with.
_ASKED = frozenset({"stopped_unwell", "red_flag"})
#: Why the safety questions come of somebody who is not well.
NOT_WELL = frozenset({"unwell", "double"})
#: What comes after a stop is rest, for this long at most.
_REST_S = 3600.0


class UnwellPart(FirstPart):
    """Leads to the safety questions where no plan does."""

    #: Whether questions are asked that belong to no session of a plan.
    _asked_alone = False
    #: The plan that the session was of, if any: it has the summary again afterwards.
    _plan_before: Plan | None = None
    #: Whether it was said while the session was being saved: it is asked once that is over.
    _unwell_waits = False
    #: Whether something was practised, and saved, since what was before was forgotten.
    _done_before = False

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        #: Has it asked whether it is meant; false if that is being asked already.
        self.ask_if_meant: Callable[[], bool] = lambda: False

    def _put_away(self) -> None:
        """The session that was saved is not shown any more."""
        raise NotImplementedError

    @property
    def can_be_unwell(self) -> bool:
        """Whether to say that one feels unwell does anything now."""
        if self.conductor is not None:
            task = self.conductor.task
            return not isinstance(task, Over) or not _was_asked(task.ended, task.because)
        if self.clip is not None:
            return False
        return self.phase in _PRACTISING | _BEFORE or self._just_practised

    @property
    def _just_practised(self) -> bool:
        """Whether a session is over that did not end with these questions."""
        return self.phase in _AFTER and not _was_asked(self.ended)

    @property
    def something_done(self) -> bool:
        """Whether something was practised: in the session that is shown, or just before it."""
        saved = [*self._saved_before, *([] if self.saved is None else [self.saved])]
        return self._done_before or any(s.summary.get("exercises") for s in saved)

    def _forget_session(self) -> None:
        super()._forget_session()
        self._done_before = False

    @property
    def _reads(self) -> bool:
        """Whether what was done before is read, as something is about to begin."""
        return self._history is not None or self.reading_report

    @property
    def _nothing_begun(self) -> bool:
        """Whether nothing goes on or is about to begin: before the first set, or after them all.

        In the set-up the head moves; and who was told that all is over, or says not to be well,
        need not say it twice.
        """
        if self._reads:
            return False
        if self.conductor is None:
            return self.phase in _BEFORE or self.phase == Phase.summary
        told = isinstance(self.task, Over) or self.asks_unwell
        at_rest = self.phase in (Phase.asking, Phase.camera)
        return at_rest and not told and not self.conductor.anything_begun

    @property
    def asks_unwell(self) -> bool:
        """Whether the safety questions are asked of who is not well."""
        return isinstance(self.task, AskGate) and self.task.because in NOT_WELL

    def _is_meant(self) -> bool:
        """Whether it is no stray key; the key once more says so, if not from a shaking hand."""
        if self.ask_if_meant():
            self._unwell.happens(self.clock())
            return False
        return not self._unwell.just_now(self.clock())

    def unwell(self, *, meant: bool = False) -> None:
        """The patient feels unwell: everything stops, and the safety questions come.

        Where nothing goes on it is asked first whether it is meant, unless that is known.
        """
        if not self.can_be_unwell:
            return
        if self._nothing_begun and not (meant or self._is_meant()):
            return
        if self.conductor is not None and isinstance(self.conductor.task, Over):
            self._unwell_waits = True
            self._finish(self.conductor.task.ended)
            return
        if self.conductor is None:
            if self.phase == Phase.saving:
                self._unwell_waits = True
                return
            if self.phase == Phase.summary:
                self._keep_unsaved()
                self._put_away()
                # What comes is no practice that was told of, and can't be taken back with it.
                self.reported = False
            elif self.phase in _BEFORE:
                self._begin_nothing()
            self._ask_alone()
        super().unwell()

    def _begin_nothing(self) -> None:
        """Nothing that was about to begin does, and what was said is kept with the plan at hand."""
        self._history = self._read_before_report = None
        if self.phase == Phase.camera:
            self._close_service()
            self.trouble = None
        # The first steps are not over: they come again at the next start.
        self.first_step = ""
        while self.phase in BACK:
            self.leave_tools()
        self._forget_session()
        # The set-up went with it: where its targets were must not outlive what it found.
        self._map = None
        self.plan = self.plan_at_hand()

    def _ask_alone(self, **asked: Any) -> None:
        """Have a conductor ask: it has no exercises, only the questions and what follows.

        The number for help is that of the plan at hand, if there is one. ``asked`` is the
        conductor's.
        """
        live = self.phase in LIVE_PHASES
        self._hush()
        self.mark = None
        self._forget_again()
        if self._recording is None:
            # Nothing was begun, or it is over; that somebody felt unwell is kept all the same.
            self._held = []
            if self.plan is None:
                self._record()
            else:
                self._record_after(self.plan)
        elif live:
            now_s = self.now_s
            self._add(Asked(Step(from_s=now_s, to_s=now_s + _REST_S, step="rest")))
        self._world.beats.stop()
        if live:
            self._say((Grave.stop, 0), "say.stopped", "say.sit")
        recording = self._recording
        assert recording is not None
        self._began_s = self.clock() - self.now_s
        self._plan_before = self.plan
        at_hand = self.plan or self.plan_at_hand() or seated_starter()
        # Without entries: whatever is answered, nothing can begin.
        self.plan = at_hand.model_copy(update={"entries": [], "stages": []})
        self._asked_alone = True
        self.conductor = Conductor(self.plan, recording, **asked)
        self.conductor.advance(self.now_s)

    def _record_after(self, plan: Plan) -> None:
        """A record of the same plan: nobody has practised in it."""
        self._recording = self._world.make_planned(plan, None)
        self._recording.tell_by(self._tell_cue)
        self._asked, self._begun, self._reps_before, self._disk_said_s = [], 0, 0, nan

    def _collect_saved(self) -> None:
        super()._collect_saved()
        if self._unwell_waits and self.phase != Phase.saving:
            self._unwell_waits = False
            self.unwell(meant=True)

    def _finish(self, ended: str) -> None:
        # Saving may be over at once, and lead on to other questions.
        alone, self._asked_alone = self._asked_alone, False
        if alone:
            # It was no session of a plan.
            self.plan = self._plan_before
        super()._finish(ended)
        if alone:
            self._changed()


def _was_asked(ended: str, because: tuple[str, ...] = ()) -> bool:
    """Whether a session ended with the safety questions."""
    return ended in _ASKED or "not_well" in because
