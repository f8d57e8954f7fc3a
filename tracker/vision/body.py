"""The patient's body in a picture: the only room that talks to MediaPipe's pose landmarker."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.body.points import BodyPoints, belongs_to
from tracker.closing import Closing
from tracker.errors import RunError
from tracker.vision.landmarks import Face, quiet_native_code
from tracker.vision.models import load_model
from tracker.vision.opencv import cv2

#: A body is looked for at most this often. One look takes 40 to 60 ms on two cores (pictures
#: from 640x480 to 1280x720), a frame's other work about 15: at every second frame of a 30 Hz
#: camera the measuring just keeps up, and a slow roll or a throw has 15 places a second
#: (by these times this project's own choice).
EVERY_S = 0.06
#: What is looked at, in face heights to each side, up and down from the face: arms held out,
#: and not the person beside (this project's own choice).
SIDEWAYS, UPWARDS, DOWNWARDS = 4.0, 3.0, 5.5
#: The cut moves only when the face has moved or grown by so much of its height: a cut that
#: moves with each frame moves the landmarks a little, too (this project's own choice).
MOVED, GROWN = 0.5, 1.25


class BodyFinder(Closing):
    """Finds the body that belongs to a face, a still picture at a time.

    The library's film mode smooths: on rendered bodies the wrists of a throw lagged by a
    tenth of their way, against 1 % in pictures taken one by one, which also can't go on
    following somebody else.
    """

    def __init__(self) -> None:
        self._landmarker: Any = None
        self._mp: Any = None
        self._looked_s = -math.inf
        self._cut: tuple[int, int, int, int] | None = None
        self._cut_face: tuple[NDArray[np.float64], float] | None = None

    def due(self, time_s: float, every_s: float = EVERY_S) -> bool:
        """Whether it is time to look again."""
        return time_s - self._looked_s >= every_s - 1e-3

    def find(self, image: NDArray[np.uint8], face: Face | None, time_s: float) -> BodyPoints | None:
        """The body of the person whose face is there, None where it isn't found.

        Parameters
        ----------
        image
            BGR picture ``(h, w, 3)``.
        face
            The patient's face; without one nobody can tell whose a body is.
        time_s
            Capture time.
        """
        self._looked_s = time_s
        if face is None:
            return None
        height, width = image.shape[:2]
        left, top, right, bottom = self._cut_around(face, width, height)
        found = self._look(image[top:bottom, left:right])
        if found is None:
            return None
        points = found[:, :2] * [right - left, bottom - top] + [left, top]
        body = BodyPoints(points, found[:, 2], width, height)
        return body if belongs_to(body, face.centre_px, face.height_px) else None

    def _look(self, picture: NDArray[np.uint8]) -> NDArray[np.float64] | None:
        """Landmarks ``(33, 3)``: x and y as shares of the picture, and how sure."""
        if self._landmarker is None:
            self._start()
        rgb = cv2.cvtColor(np.ascontiguousarray(picture), cv2.COLOR_BGR2RGB)
        image = self._mp.Image(image_format=self._mp.ImageFormat.SRGB, data=rgb)
        bodies = self._landmarker.detect(image).pose_landmarks
        if not bodies:
            return None
        return np.array([(p.x, p.y, p.visibility) for p in bodies[0]])

    def _start(self) -> None:
        import mediapipe as mp
        from mediapipe.tasks.python import BaseOptions, vision

        self._mp = mp
        options = vision.PoseLandmarkerOptions(
            base_options=BaseOptions(model_asset_buffer=load_model("pose")),
            running_mode=vision.RunningMode.IMAGE,
            num_poses=1,
        )
        try:
            with quiet_native_code():
                self._landmarker = vision.PoseLandmarker.create_from_options(options)
                blank = mp.Image(
                    image_format=mp.ImageFormat.SRGB, data=np.zeros((64, 64, 3), np.uint8)
                )
                # The first picture makes it build its graph, and say so.
                self._landmarker.detect(blank)
        except (RuntimeError, ValueError) as error:
            raise RunError(f"the body model can't be started: {error}") from error

    def _cut_around(self, face: Face, width: int, height: int) -> tuple[int, int, int, int]:
        """Left, top, right and bottom of what is looked at."""
        tall = face.height_px
        if self._cut is not None and self._cut_face is not None:
            centre, before = self._cut_face
            near = np.linalg.norm(face.centre_px - centre) <= MOVED * before
            if near and 1 / GROWN <= tall / before <= GROWN:
                return self._cut
        x, y = face.centre_px
        self._cut = (
            max(0, round(float(x) - SIDEWAYS * tall)),
            max(0, round(float(y) - UPWARDS * tall)),
            min(width, round(float(x) + SIDEWAYS * tall)),
            min(height, round(float(y) + DOWNWARDS * tall)),
        )
        self._cut_face = (face.centre_px, tall)
        return self._cut

    def close(self) -> None:
        """Free the native parts (left to the collector they may hang); it can start anew."""
        if self._landmarker is not None:
            self._landmarker.close()
            self._landmarker = None
