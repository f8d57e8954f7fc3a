"""The session's source: opening and ending the measuring, the picture of oneself."""

from __future__ import annotations

import time
from collections.abc import Callable
from math import nan
from typing import Any

from tracker.errors import TurnpostError, in_words
from tracker.vision.messages import SourceState
from ui.ports import CameraChoice, Job
from ui.session.state import Phase, SessionState, Trouble

#: So long a camera that we have let go may still seem taken, and so often it is looked at
#: meanwhile (as in ``tracker.vision.capture.Patience``).
LET_GO_S, LOOK_AGAIN_S = 0.8, 0.2


class SourcePart(SessionState):
    """Opens and ends the measuring; nothing in it waits."""

    clock: Callable[[], float] = staticmethod(time.monotonic)
    _look: tuple[CameraChoice, Job] | None = None
    _look_from_s = _looked_s = nan

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
            self.trouble = Trouble(SourceState.failed, in_words(error))
            return
        self._service = service
        service.set_preview(self._preview_wanted)
        if isinstance(source, CameraChoice):
            self._begin_look(source)

    def _open_anew_if_over(self) -> None:
        """A measuring that failed for good measures nothing any more: begin another."""
        if self.source is SourceState.failed:
            self._close_service()
        if self._service is None and self.camera is not None:
            # The steps of the set-up belong to the clock of the service before.
            self._asked = []
            self._open(self.camera)

    def _begin_look(self, camera: CameraChoice) -> None:
        """See beside the window whether another program has the camera.

        The measuring would find that out too, but needs some seconds to load first.
        """
        self._look_from_s = self.clock()
        self._look_at(camera)

    def _look_at(self, camera: CameraChoice) -> None:
        self._looked_s = self.clock()
        self._look = (camera, self._world.run(lambda: self._world.look(camera)))

    def _tell_look(self) -> None:
        """Say what the look has shown, unless the measuring knows better by now."""
        if self._look is None:
            return
        camera, job = self._look
        opened = self.sample is not None or self.source is SourceState.running
        if self._service is None or self.camera is not camera or opened:
            self._look = None
            return
        found = job.result if job.done else None
        if not job.done:
            return
        if found is None or job.error is not None:
            self._look = None
            return
        now_s = self.clock()
        if found[0] == SourceState.busy and now_s - self._look_from_s < LET_GO_S:
            # It may be ourselves who let it go just now: look once more.
            if now_s - self._looked_s >= LOOK_AGAIN_S:
                self._look_at(camera)
            return
        self._look = None
        self.source, self.trouble = found[0], Trouble(*found)
        self._changed()

    def _close_service(self) -> None:
        """End the measuring, beside the window: a camera's driver may hang."""
        was_on = self._measures_by_camera
        service, self._service = self._service, None
        if service is not None:
            self._preview_wanted = False
            stopping = self._world.run(service.stop)
            self._stopping.append(stopping)
            if was_on:
                going = [job for job in self._letting_go if not job.done]
                self._letting_go = [*going, stopping]
        self.source = SourceState.ended

    def _enter(self, phase: Phase) -> None:
        self.phase = phase
        self._changed()
