"""Faces in a picture: the only room that talks to MediaPipe's face landmarker."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.closing import Closing
from tracker.errors import RunError
from tracker.vision.models import load_model
from tracker.vision.opencv import cv2

#: 468 of the face mesh and 5 of each iris (the model's documentation).
N_LANDMARKS = 478


@dataclass(frozen=True, slots=True)
class Face:
    """One face as the library found it.

    Attributes
    ----------
    points_px
        ``(478, 2)`` landmarks in pixels of the whole picture; the last ten are
        the irises (468-472 the patient's right eye, 473-477 the left).
    depth_px
        ``(478,)`` depth of the landmarks away from the camera in the same unit, from
        the library's guess of the face's middle.
    blink
        ``(2,)`` closing score of the right and the left eye, 0 to 1, not linear:
        about .15-.19 half shut, .6-.75 shut (measured on rendered heads).
    """

    points_px: NDArray[np.float64]
    depth_px: NDArray[np.float64]
    blink: tuple[float, float]

    @property
    def centre_px(self) -> NDArray[np.float64]:
        """Middle of the four eye corners, ``(2,)``."""
        return np.asarray(self.points_px[[33, 133, 362, 263]].mean(axis=0))

    @property
    def height_px(self) -> float:
        """Extent from the highest to the lowest landmark in pixels."""
        return float(np.ptp(self.points_px[:468, 1]))


@contextmanager
def quiet_native_code() -> Iterator[None]:
    """Keep the library's own start-up lines off the terminal; they help no user."""
    try:
        sys.stderr.flush()
        kept = os.dup(2)
    except (OSError, ValueError, AttributeError):
        # No terminal at all (a windowed program): nothing to keep quiet.
        yield
        return
    nowhere = os.open(os.devnull, os.O_WRONLY)
    try:
        os.dup2(nowhere, 2)
        yield
    finally:
        os.dup2(kept, 2)
        os.close(kept)
        os.close(nowhere)


class LandmarkFinder(Closing):
    """Finds up to two faces in each picture of one source, without smoothing.

    With one face asked for, the library smooths over time: the head then lags
    by 8-19 ms and fast turns are distorted. Asking for two switches that off
    and shows when somebody else is in view.

    Parameters
    ----------
    stills
        Whether each picture is one by itself, not the next of a film: for crops that
        move about.
    """

    def __init__(self, *, stills: bool = False) -> None:
        # Imported here: it takes most of a second and only measuring needs it.
        import mediapipe as mp
        from mediapipe.tasks.python import BaseOptions, vision

        self._mp: Any = mp
        self._stills = stills
        options = vision.FaceLandmarkerOptions(
            base_options=BaseOptions(model_asset_buffer=load_model("face")),
            running_mode=vision.RunningMode.IMAGE if stills else vision.RunningMode.VIDEO,
            num_faces=2,
            output_face_blendshapes=True,
        )
        try:
            with quiet_native_code():
                self._landmarker: Any = vision.FaceLandmarker.create_from_options(options)
                # The first picture makes it build its graph, and say so.
                self._last_ms = -1
                self.find(np.zeros((64, 64, 3), np.uint8), 0.0)
        except (RuntimeError, ValueError) as error:
            raise RunError(f"the face model can't be started: {error}") from error

    def find(self, image: NDArray[np.uint8], time_s: float) -> list[Face]:
        """Faces in a BGR picture ``(h, w, 3)``; times must not run backwards."""
        height, width = image.shape[:2]
        # The library refuses equal or falling stamps in whole milliseconds.
        self._last_ms = max(self._last_ms + 1, round(time_s * 1000))
        rgb = cv2.cvtColor(image, cv2.COLOR_BGR2RGB)
        picture = self._mp.Image(image_format=self._mp.ImageFormat.SRGB, data=rgb)
        if self._stills:
            result = self._landmarker.detect(picture)
        else:
            result = self._landmarker.detect_for_video(picture, self._last_ms)
        faces = []
        for points, shapes in zip(result.face_landmarks, result.face_blendshapes, strict=True):
            xyz = np.array([(p.x, p.y, p.z) for p in points]) * [width, height, width]
            score = {s.category_name: s.score for s in shapes}
            # The library names the sides as the person's own.
            blink = (score["eyeBlinkRight"], score["eyeBlinkLeft"])
            faces.append(Face(xyz[:, :2], xyz[:, 2], blink))
        return faces

    def close(self) -> None:
        """Free the native parts; left to the collector at exit they complain."""
        if self._landmarker is not None:
            self._landmarker.close()
            self._landmarker = None
