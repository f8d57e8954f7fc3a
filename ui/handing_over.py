"""The two pages of the hand-over in the patient's window, and which plan they are about."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

from tracker.plan.model import Plan
from ui import words
from ui.pages.handover import HandoverPage
from ui.pages.same_plan import SamePlanPage
from ui.pages.welcome import WelcomePage
from ui.plan_check import PlanCheck, way_words
from ui.plan_in_use import (
    forget_plan_before,
    forget_plan_in_use,
    keep_plan_in_use,
    plan_in_use,
)
from ui.ports import Runner
from ui.session.flow import Director
from ui.settings import Settings


class HandingOver:
    """Shows the words of a new plan, and the page where the file is made.

    Parameters
    ----------
    run
        Starts what may take long.
    director, settings, welcome
        The window's own.
    cover
        Lays a page over the one that is shown, by its name; empty for none.
    covered
        Name of the page that lies over another now, or empty.
    """

    def __init__(
        self,
        run: Runner,
        director: Director,
        settings: Settings,
        welcome: WelcomePage,
        cover: Callable[[str], object],
        covered: Callable[[], str],
    ) -> None:
        self._director, self._settings, self._welcome = director, settings, welcome
        self._cover, self._covered = cover, covered
        self._check = PlanCheck(settings)
        self._from = ""
        #: A new plan whose words nobody has looked at and left yet.
        self.waits: Plan | None = None
        self.same = SamePlanPage(self._compared)
        self.page = HandoverPage(
            run,
            lambda: self.plan,
            lambda: self.unchecked,
            self.open_words,
            lambda: director.sharing,
            lambda: cover(""),
        )

    @property
    def plan(self) -> Plan | None:
        """The plan of the session that has ended, else the one on the first page.

        None for one whose words differed: nothing goes to whoever made it.
        """
        plan = self._director.plan or self._welcome.plan
        return None if self._check.is_refused(plan) else plan

    @property
    def unchecked(self) -> bool:
        """Whether nobody has compared the words of that plan yet."""
        return self._check.is_unchecked(self.plan)

    def remembered(self) -> Path | None:
        """The plan opened last; its copy if its stick or folder is gone."""
        path = self._settings.plan
        # Path.exists would fail where a folder above it may not be entered.
        return path if path is None or os.path.exists(path) else plan_in_use() or path  # noqa: PTH110

    def take(self, plan: Plan) -> None:
        """A plan was opened: keep a copy, and show its words if they are new."""
        new = self._check.take(plan)
        keep_plan_in_use(plan, new=new)
        if not self._check.is_unchecked(plan):
            forget_plan_before()
        self.waits = plan if new else None
        if new:
            self._show_words(plan)

    def open(self) -> None:
        """The page where the file for the therapist is made."""
        self._cover("handover")

    def open_words(self) -> None:
        """The words of the plan, to be compared with the therapist's."""
        plan = self.plan
        if plan is not None and self._check.words:
            self._show_words(plan)

    def show_waiting(self) -> None:
        """The words that wait, if their plan is still the one on the first page."""
        if self.waits is not None and self.waits is self._welcome.plan:
            self._show_words(self.waits)

    def _show_words(self, plan: Plan) -> None:
        self._from = self._covered()
        self.same.show_words(self._check.words, way_words(plan.hand_over, "same"))
        self._cover("same")

    def _compared(self, same: bool | None) -> None:
        """What came of it; None: not now."""
        self.waits = None
        self._check.answer(same)
        if same:
            forget_plan_before()
        if same is False:
            self._welcome.put_away(words.say("same.refused"))
            forget_plan_in_use()
            # The next start offers the plan before, if there is one.
            self._settings.plan = plan_in_use()
        self._cover(self._from if same is not False else "")
