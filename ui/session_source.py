"""The session's source: opening and ending the measuring, the picture of oneself."""

from __future__ import annotations

from math import nan
from typing import Any

from tracker.errors import TurnpostError
from tracker.vision.messages import SourceState
from ui.ports import CameraChoice
from ui.session_state import Phase, SessionState, Trouble


class SourcePart(SessionState):
    """Opens and ends the measuring; nothing in it waits."""

    def look_for_cameras(self) -> None:
        """Ask the system for its cameras, beside the window."""
        if self.clip is None:
            self.cameras = self._world.cameras()

    def show_picture(self, on: bool) -> None:
        """Want the picture of oneself, or not."""
        self._preview_wanted = on
        if self._service is not None:
            self._service.set_preview(on)

    @property
    def picture_shown(self) -> bool:
        """Whether the picture of oneself is wanted."""
        return self._preview_wanted

    def _open(self, source: CameraChoice | Any) -> None:
        self.trouble, self.sample = None, None
        self.source = SourceState.opening
        self._news_s = nan
        try:
            service = self._world.make_service(source, self._profile)
            service.start()
        except (OSError, RuntimeError, TurnpostError) as error:
            # No process, no memory, no file: said like any other trouble of the source.
            self.source = SourceState.failed
            self.trouble = Trouble(SourceState.failed, str(error).strip())
            return
        self._service = service
        service.set_preview(self._preview_wanted)

    def _close_service(self) -> None:
        """End the measuring, beside the window: a camera's driver may hang."""
        service, self._service = self._service, None
        if service is not None:
            self._preview_wanted = False
            self._stopping.append(self._world.run(service.stop))
        self.source = SourceState.ended

    def _enter(self, phase: Phase) -> None:
        self.phase = phase
        self._changed()
