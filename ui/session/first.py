"""The first steps: which one it is, and the way through them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from tracker.plan.model import Plan
from ui.session.first_try import try_plan
from ui.session.state import Phase
from ui.session.tools import ToolsPart

#: In the order in which they are taken.
STEPS = ("text", "about", "stop", "privacy", "camera", "sound", "sitting", "standing", "try")
#: The page that offers all of them.
OVERVIEW = "overview"


class FirstPart(ToolsPart):
    """Leads through the first steps; each can be skipped, repeated, and taken alone."""

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        #: The step that is shown, or ``overview``; empty outside the first steps.
        self.first_step = ""
        #: Whether they were gone through or left once.
        self.first_over = False
        #: Gives the plan at hand.
        self.plan_at_hand: Callable[[], Plan | None] = lambda: None

    @property
    def looking(self) -> bool:
        """Whether the camera is tried out, and no set-up follows."""
        return self.first_step == "camera"

    @property
    def can_try(self) -> bool:
        """Whether the plan at hand lets the head turn far enough for the try."""
        return try_plan(self.plan_at_hand()) is not None

    def open_first(self, step: str = STEPS[0]) -> None:
        """Take a step, or see all of them: from the welcome or the page of tools."""
        if self.phase not in (Phase.welcome, Phase.tools, Phase.first) or self.clip is not None:
            return
        if not self.at_rest:
            return
        self._go_to(step)

    def first_go_on(self) -> None:
        """The next step; after the last one it is over."""
        if self.first_step not in STEPS:
            return
        at = STEPS.index(self.first_step) + 1
        if at < len(STEPS):
            self._go_to(STEPS[at])
        else:
            self.leave_first()

    def first_back(self) -> None:
        """One step back."""
        if self.first_step in STEPS:
            self._go_to(STEPS[max(STEPS.index(self.first_step) - 1, 0)])

    def leave_first(self) -> None:
        """To the welcome; the steps aren't asked for again."""
        if not self.first_step:
            return
        self._let_camera_go()
        self.first_step, self.first_over = "", True
        self._enter(Phase.welcome)

    def begin_try(self) -> None:
        """Half a minute of one exercise, with everything that goes before it."""
        plan = try_plan(self.plan_at_hand())
        if self.first_step == "try" and plan is not None:
            self.leave_first()
            self.start_plan(plan)

    def _go_to(self, step: str) -> None:
        self._let_camera_go()
        self.first_step = step
        if step == "camera":
            self.look_for_cameras()
            self._enter(Phase.camera)
            self.use_camera(self.camera or (self.cameras[0] if self.cameras else None))
            return
        self._enter(Phase.first)

    def _let_camera_go(self) -> None:
        if self.looking:
            self._close_service()
            self.trouble = None

    def leave_tools(self) -> bool:
        """One page back, if it is one of these."""
        if self.first_step:
            self.leave_first()
            return True
        return super().leave_tools()
