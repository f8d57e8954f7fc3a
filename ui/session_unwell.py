"""To feel unwell outside a plan: it stops, and the same safety questions come as in one."""

from __future__ import annotations

from tracker.plan.starter import seated_starter
from tracker.practice.conductor import Conductor
from tracker.session.stage import Step
from ui.asked import Asked
from ui.session_first import FirstPart
from ui.session_state import LIVE_PHASES, Phase
from ui.speaking import Grave

#: From the beginning of a set-up to the end of practice: before it nothing was done.
_PRACTISING = LIVE_PHASES | {
    Phase.setup,
    Phase.fitting,
    Phase.setup_failed,
    Phase.setup_told,
    Phase.choose,
    Phase.mark,
}
#: After it: the session is saved, and what is said then goes into a record of its own.
_AFTER = frozenset({Phase.saving, Phase.summary})
#: What comes after a stop is rest, for this long at most.
_REST_S = 3600.0


class UnwellPart(FirstPart):
    """Leads to the safety questions where no plan does."""

    _unwell_alone = False
    #: Whether it was said while the session was being saved: it is asked once that is over.
    _unwell_waits = False

    def _put_away(self) -> None:
        """The session that was saved is not shown any more."""
        raise NotImplementedError

    @property
    def can_be_unwell(self) -> bool:
        """Whether to say that one feels unwell does anything now."""
        if self.conductor is not None:
            return True
        return self.clip is None and (self.phase in _PRACTISING or self._just_practised)

    @property
    def _just_practised(self) -> bool:
        """Whether a session without a plan is over that did not end with these questions.

        One that waits for a place on disk is not: it must not be lost over them.
        """
        alone = self.plan is None and not self.reported and self.ended != "stopped_unwell"
        return alone and self.phase in _AFTER and not self.unsaved

    def unwell(self) -> None:
        """The patient feels unwell: everything stops, and the safety questions come."""
        if self.conductor is None and self.can_be_unwell:
            if self.phase == Phase.saving:
                self._unwell_waits = True
                return
            if self.phase == Phase.summary:
                self._put_away()
            self._ask_alone()
        super().unwell()

    def _ask_alone(self) -> None:
        """Have a conductor ask: it has no exercises, only the questions and what follows.

        The number for help is that of the plan at hand, if there is one.
        """
        live = self.phase in LIVE_PHASES
        self._hush()
        self.mark = None
        self._forget_again()
        if self._recording is None:
            # Nothing was begun; that somebody felt unwell is kept all the same.
            self._held = []
            self._record()
        elif live:
            now_s = self.now_s
            self._add(Asked(Step(from_s=now_s, to_s=now_s + _REST_S, step="rest")))
        self._world.beats.stop()
        if live:
            self._say((Grave.stop, 0), "say.stopped", "say.sit")
        recording = self._recording
        assert recording is not None
        self._began_s = self.clock() - self.now_s
        at_hand = self.plan_at_hand() or seated_starter()
        # Without entries: whatever is answered, nothing can begin.
        self.plan = at_hand.model_copy(update={"entries": [], "stages": []})
        self._unwell_alone = True
        self.conductor = Conductor(self.plan, recording)
        self.conductor.advance(self.now_s)

    def _collect_saved(self) -> None:
        super()._collect_saved()
        if self._unwell_waits and self.phase != Phase.saving:
            self._unwell_waits = False
            self.unwell()

    def _finish(self, ended: str) -> None:
        super()._finish(ended)
        if self._unwell_alone:
            # It was no session of the plan.
            self._unwell_alone, self.plan = False, None
            self._changed()
