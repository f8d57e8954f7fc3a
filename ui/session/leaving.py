"""What the key for stopping does where nothing moves: neither twice, nor without asking."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from tracker.practice.tasks import (
    AskAfterSet,
    AskDayOver,
    AskWell,
    CountDown,
    DoSet,
    Over,
    Task,
)
from ui.session.day_over import DayOverPart
from ui.session.state import LIVE_PHASES, Phase
from ui.session.twice import TWICE_S, Twice

#: No answer is taken for so long after its question came by itself (own choice: the key of the set
#: before is still on its way).
UNSEEN_S = 1.5
#: Outside a plan: pages after a set-up, which would be lost.
_SET_UP = frozenset({Phase.choose, Phase.setup_told, Phase.setup_failed})


class LeavingPart(DayOverPart):
    """Tells a stop that is meant from one too many."""

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        self._esc, self._came = Twice(), Twice()
        #: The page that came by itself last.
        self._came_there: tuple[Phase, Task | None] = (self.phase, None)
        #: Whether it is being asked now if this is to be all for today.
        self.asks_to_leave: Callable[[], bool] = lambda: False
        self._over_question = False
        #: The task that was followed last.
        self._followed: Task | None = None

    def stop(self, ended: str = "stopped") -> None:
        """Stop at once, whatever happens; what was done is saved."""
        raise NotImplementedError

    @property
    def came_unseen(self) -> bool:
        """Whether the page came by itself only just now: nobody can have read it."""
        return self._came_just_now(UNSEEN_S)

    @property
    def takes_no_answer(self) -> bool:
        """Whether the page takes no answer yet: a key or a click was on its way to the one before.

        So it is after a set, which a pause may have been meant for, where it is asked after a
        drop, and where another question has given way.
        """
        held = isinstance(self.task, AskAfterSet | AskWell)
        return self.came_unseen and (held or self._over_question)

    @property
    def _page_now(self) -> tuple[Phase, Task | None]:
        return self.phase, self.task

    def _note_page(self, before: tuple[Phase, Task | None], *, asked: bool) -> None:
        """Time went on, and the page may be another than before; ``asked`` if one was over it."""
        if self._page_now != before:
            self._over_question = asked
            self._came_now()
            self._changed()

    def _came_now(self) -> None:
        self._came_there = self._page_now
        self._came.happens(self.clock())

    def _follow_task(self) -> None:
        super()._follow_task()
        task = self.task
        if isinstance(task, AskWell) and task is not self._followed:
            # By a command, too, as when the session is ended: a second click is on its way then.
            self._came_now()
            self._changed()
        self._followed = task

    def answer(self, value: Any) -> None:
        """Answer the task; after a drop only once it can have been read."""
        if not (isinstance(self.task, AskWell) and self.takes_no_answer):
            super().answer(value)

    def _came_just_now(self, within_s: float = TWICE_S) -> bool:
        here = self._came_there == self._page_now
        return here and self._came.just_now(self.clock(), within_s)

    def escape(self) -> bool:
        """The key for stopping; whether it is to be asked first if this is to be all for today."""
        now_s = self.clock()
        if not self._can_stop and (self._esc.just_now(now_s) or self._came_just_now()):
            return False
        self._esc.happens(now_s)
        if self._leaves_the_day:
            return True
        self.stop()
        return False

    @property
    def _can_stop(self) -> bool:
        """Whether something goes on that a stop ends, or nothing is lost by it."""
        if self.conductor is None:
            return self.phase not in _SET_UP
        going_on = self.phase in LIVE_PHASES | {Phase.setup, Phase.fitting}
        return going_on or isinstance(self.task, DoSet)

    @property
    def _leaves_the_day(self) -> bool:
        """Whether a stop would end the session on a page between its sets."""
        task = self.task
        between = not isinstance(task, CountDown | DoSet | AskWell | AskDayOver | Over)
        # Whoever is not well is not asked whether to go on: that page must not offer it.
        asking = self.conductor is not None and self.phase == Phase.asking
        return asking and between and not self.asks_unwell
