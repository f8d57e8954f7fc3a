"""Finding out how wide the camera sees: by a sheet or a card held up, or typed. No widgets."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum
from math import inf
from typing import Any

from tracker.errors import InputError, TurnpostError
from tracker.lens import DEFAULT_LENS, Lens, stated_lens
from tracker.vision.messages import FitFailed, Fitted, Measured, SourceChanged
from ui.ports import CameraChoice, Job, ServiceLike, World
from ui.session.state import NO_PICTURE

#: How often the watcher is asked how far it is.
ASK_S = 0.5
#: Views that are wanted, before the watcher has said how many.
ENOUGH = 6
#: The shape of most webcams' pictures, for a diagonal that is typed (common practice).
USUAL_SIZE = (1280, 720)


class Stage(StrEnum):
    """Where it stands."""

    idle = "idle"
    watching = "watching"
    done = "done"


class LensWork:
    """Measures and keeps the lens of one camera."""

    def __init__(self, world: World, changed: Callable[[], None]) -> None:
        self._world, self._changed = world, changed
        self._service: ServiceLike | None = None
        self._stopping: list[Job] = []
        self._asked_s = -inf
        self.camera: CameraChoice | None = None
        self.stage = Stage.idle
        #: A key of the words: what to do with the sheet.
        self.hint = "sheet_none"
        self.views, self.wanted = 0, ENOUGH
        #: Why nothing came of it so far, in words.
        self.why = ""
        #: State of the source in which nothing can be measured, or empty.
        self.trouble = ""
        #: Whether the picture is wanted, while it watches.
        self.picture_shown = True

    @property
    def watching(self) -> bool:
        """Whether the camera is on for it."""
        return self._service is not None

    @property
    def camera_on(self) -> bool:
        """Whether the camera may be giving pictures: it does until it is let go."""
        return self.watching or any(not job.done for job in self._stopping)

    @property
    def lens(self) -> Lens:
        """What is known of the camera."""
        return DEFAULT_LENS if self.camera is None else self._world.lens(self.camera)

    def use_camera(self, camera: CameraChoice | None) -> None:
        """Another camera is meant."""
        self.stop()
        self.camera = camera
        self._changed()

    def start(self, kind: str, distance_mm: float | None = None) -> None:
        """Watch for a sheet ("paper") or a card ("card")."""
        self.stop()
        if self.camera is None:
            self.trouble = "no_camera"
            self._changed()
            return
        try:
            service = self._world.make_watcher(self.camera, kind, distance_mm)
            service.start()
        except (OSError, RuntimeError, TurnpostError):
            self.trouble = "failed"
            self._changed()
            return
        service.set_preview(True)
        self.picture_shown = True
        self._service, self._asked_s = service, -inf
        self.stage = Stage.watching
        self._changed()

    def state(self, fov_deg: float, *, diagonal: bool) -> None:
        """Keep a field of view that somebody has typed."""
        try:
            self._keep(stated_lens(fov_deg, *USUAL_SIZE, diagonal=diagonal))
        except InputError as error:
            self.why = str(error)
            self._changed()

    def forget(self) -> None:
        """Go back to the value that is taken for granted."""
        self._keep(DEFAULT_LENS)

    def stop(self) -> None:
        """End the watching; what was found stays."""
        service, self._service = self._service, None
        if service is not None:
            self._stopping.append(self._world.run(service.stop))
        self.stage = Stage.idle
        self.hint, self.why, self.trouble = "sheet_none", "", ""
        self.views, self.wanted = 0, ENOUGH

    def close(self, timeout_s: float) -> None:
        """End, and wait for the camera to be let go."""
        self.stop()
        for job in self._stopping:
            job.wait(timeout_s)

    def show_picture(self, on: bool) -> None:
        """Want the picture, or not; the watching goes on."""
        self.picture_shown = on
        if self._service is not None:
            self._service.set_preview(on)

    def preview(self) -> Any:
        """The newest picture (BGR, not mirrored), or None."""
        return self._service.preview() if self._service is not None else None

    def tick(self) -> None:
        """Take the news, and ask now and then how far it is."""
        self._stopping = [j for j in self._stopping if not j.done]
        service = self._service
        if service is None:
            return
        for message in service.poll():
            match message:
                case Measured(sample):
                    self.hint = sample.reason or self.hint
                case Fitted(report):
                    self._reported(report)
                case FitFailed(text):
                    self.why = text
                case SourceChanged(state, _):
                    self.trouble = str(state) if state in NO_PICTURE else ""
        if self._service is not None and service.now_s() - self._asked_s >= ASK_S:
            self._asked_s = service.now_s()
            service.request_fit([])

    def _reported(self, report: Any) -> None:
        self.views, self.wanted, self.why = report.views, report.wanted, report.why
        if report.done and report.lens is not None:
            self._keep(report.lens)

    def _keep(self, lens: Lens) -> None:
        self.stop()
        if self.camera is None:
            return
        try:
            self._world.keep_lens(self.camera, lens)
        except (OSError, TurnpostError) as error:
            self.why = str(error)
        else:
            self.stage = Stage.done
        self._changed()
