"""What is measured once for a camera and a screen, outside any session."""

from __future__ import annotations

from collections.abc import Callable

from ui.geometry import FieldExtent
from ui.lens_work import LensWork
from ui.ports import ClipPlan, World
from ui.session_planned import PlannedPart
from ui.session_state import Phase

#: The pages of it, and where each goes back to.
BACK = {Phase.tools: Phase.welcome, Phase.lens: Phase.tools, Phase.screen: Phase.tools}


class ToolsPart(PlannedPart):
    """The way from the welcome to the camera's and the screen's measures, and back."""

    def __init__(
        self, world: World, extent: Callable[[], FieldExtent], clip: ClipPlan | None = None
    ) -> None:
        super().__init__(world, extent, clip)
        self.lens = LensWork(world, self._changed)

    @property
    def camera_on(self) -> bool:
        """Whether a camera (not a clip) may be giving pictures."""
        return self.lens.watching or super().camera_on

    def open_tools(self) -> None:
        """From the welcome: the measures of camera and screen."""
        if self.phase == Phase.welcome and self._history is None:
            self._enter(Phase.tools)

    def open_lens(self) -> None:
        """How wide the camera sees."""
        if self.phase != Phase.tools or self.clip is not None:
            return
        self.look_for_cameras()
        self._enter(Phase.lens)
        self.lens.use_camera(self.camera or (self.cameras[0] if self.cameras else None))

    def open_screen(self) -> None:
        """How large the screen is."""
        if self.phase == Phase.tools:
            self._enter(Phase.screen)

    def leave_tools(self) -> bool:
        """One page back, if it is one of these."""
        if self.phase not in BACK:
            return False
        self.lens.stop()
        self._enter(BACK[self.phase])
        return True
