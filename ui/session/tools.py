"""What is measured once for a camera and a screen, outside any session."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date

from calibration.mark import MarkCheck
from tracker.errors import InputError
from tracker.sample import Sample
from ui.geometry import FieldExtent
from ui.ports import ClipPlan, World
from ui.session.report import ReportPart
from ui.session.state import Phase
from ui.setup.lens_work import LensWork

#: The pages of it, and where each goes back to.
BACK = {
    Phase.tools: Phase.welcome,
    Phase.lens: Phase.tools,
    Phase.screen: Phase.tools,
    Phase.mark: Phase.choose,
    Phase.setup_told: Phase.choose,
}


#: Sounded when a part of the check is taken: beats a minute, seconds.
TAKEN_BEATS = (180.0, 0.6)


class ToolsPart(ReportPart):
    """The way from the welcome to the camera's and the screen's measures, and back."""

    def __init__(
        self, world: World, extent: Callable[[], FieldExtent], clip: ClipPlan | None = None
    ) -> None:
        super().__init__(world, extent, clip)
        self.lens = LensWork(world, self._changed)

    @property
    def camera_on(self) -> bool:
        """Whether a camera (not a clip) may be giving pictures."""
        return self.lens.camera_on or super().camera_on

    def open_tools(self) -> None:
        """From the welcome: the measures of camera and screen."""
        if self.phase != Phase.welcome or not self.at_rest:
            return
        self.look_for_cameras()
        self.lens.use_camera(self.camera or (self.cameras[0] if self.cameras else None))
        self._enter(Phase.tools)

    def open_lens(self) -> None:
        """How wide the camera sees."""
        if self.phase != Phase.tools or self.clip is not None:
            return
        self._enter(Phase.lens)

    def open_screen(self) -> None:
        """How large the screen is."""
        if self.phase == Phase.tools:
            self._enter(Phase.screen)

    def open_told(self) -> None:
        """After a set-up outside a plan: how each part of it came out."""
        if self.phase == Phase.choose and self.clip is None and self.report is not None:
            self._enter(Phase.setup_told)

    def open_mark(self) -> None:
        """After a set-up outside a plan: the check by a mark on the wall."""
        after = self.phase in (Phase.choose, Phase.setup_told)
        if not after or self.clip is not None or self.conductor is not None:
            return
        self._open_anew_if_over()
        self.show_picture(False)
        self._enter(Phase.mark)

    def begin_mark(self, distance_mm: float, offset_mm: float) -> None:
        """Wait for the nose to point ahead, at the mark, and ahead again."""
        if self.phase != Phase.mark:
            return
        self._open_anew_if_over()
        if self._service is None:
            # Nothing measures, so that it would wait for ever; the page says what is wrong.
            self.mark, self.mark_why = None, ""
            self._changed()
            return
        # What an earlier check showed stays until this one is done.
        self.mark, self.mark_why = None, ""
        try:
            self.mark = MarkCheck(distance_mm, offset_mm)
        except InputError as error:
            self.mark_why = str(error)
        self._changed()

    def _look_at_mark(self, sample: Sample) -> None:
        mark = self.mark
        if mark is None:
            return
        before = mark.stage
        mark.take(sample)
        if mark.stage != before:
            # Who looks at the wall doesn't see the screen.
            self._world.beats.start(*TAKEN_BEATS)
        if mark.over:
            self.mark = None
            if mark.stage == "done":
                self.mark_found = replace(mark.found(), made_on=date.today().isoformat())
                self._keep_mark()
            else:
                self.mark_why = mark.stage
            self._changed()

    def leave_tools(self) -> bool:
        """One page back, if it is one of these."""
        if self.phase not in BACK or self.conductor is not None:
            return False
        self.lens.stop()
        self.mark, self.mark_why = None, ""
        self._enter(BACK[self.phase])
        return True
