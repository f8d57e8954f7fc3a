"""A clip as a camera that waits for nobody: for the bench of the living program."""

from __future__ import annotations

import math
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tracker.vision.capture import CameraFeed, clock
from tracker.vision.clips import ClipReader, open_clip
from tracker.vision.messages import Begin, CameraSource


@dataclass(frozen=True, slots=True)
class Timing:
    """When which part of the clip is before the camera; all in seconds.

    Attributes
    ----------
    lead_s
        So long the clip's first frame is shown; the program loads its models meanwhile.
    setup_s
        The clip's set-up lasts so long.
    fit_s
        So long the last frame of the set-up is shown then, while the person is fitted.
    end_s
        The clip's end; from there it goes on at the end of the set-up again.
    """

    lead_s: float
    setup_s: float
    fit_s: float
    end_s: float

    @property
    def exercise_s(self) -> float:
        """When the exercise begins."""
        return self.lead_s + self.setup_s + self.fit_s

    def film_s(self, session_s: float) -> float:
        """Place in the clip at a time of the session."""
        if session_s < self.exercise_s:
            return min(max(session_s - self.lead_s, 0.0), self.setup_s)
        return self.setup_s + (session_s - self.exercise_s) % (self.end_s - self.setup_s)


@dataclass(frozen=True, slots=True)
class FilmCamera:
    """A source for the measuring process: ``rate_hz`` pictures a second of a clip.

    The newest picture alone is kept, and one that nobody took is lost, as with a camera.
    """

    path: Path
    timing: Timing
    rate_hz: float = 30.0

    def open_feed(self, begin: Begin) -> CameraFeed:
        """Begin to play."""
        return CameraFeed(
            CameraSource(0, self.path.stem),
            begin.origin_s,
            open_with=lambda _: _Film(self, begin.origin_s),
            condition_of=lambda _: None,
        )


class _Film:
    """What stands for ``cv2.VideoCapture``."""

    def __init__(self, camera: FilmCamera, origin_s: float) -> None:
        self._camera, self._origin_s = camera, origin_s
        self._clip: ClipReader = open_clip(camera.path)
        self._due = 0
        self._at_s = -math.inf
        self._image: Any = None

    def isOpened(self) -> bool:  # noqa: N802
        return True

    def grab(self) -> bool:
        """Wait for the next picture; those that were due meanwhile are gone."""
        rate_hz = self._camera.rate_hz
        now_s = clock() - self._origin_s
        self._due = max(self._due + 1, math.floor(now_s * rate_hz))
        time.sleep(max(0.0, self._due / rate_hz - now_s))
        return True

    def retrieve(self) -> tuple[bool, Any]:
        """The picture of this moment."""
        wanted_s = self._camera.timing.film_s(self._due / self._camera.rate_hz)
        if wanted_s < self._at_s:
            self._clip.close()
            self._clip, self._at_s = open_clip(self._camera.path), -math.inf
            self._clip.skip_to(wanted_s)
        # Half a picture early is the nearest one.
        while self._at_s < wanted_s - 0.5 / self._camera.rate_hz:
            frame = self._clip.read()
            if frame is None:
                break
            self._at_s, self._image = frame.time_s, frame.image
        return self._image is not None, self._image

    def release(self) -> None:
        self._clip.close()
