"""From a frame to an observation: the patient's face, its grey crop, the light."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from tracker.body.points import BodyPoints
from tracker.frame import Frame
from tracker.head.crop import GreyCrop
from tracker.head.shape import LEFT_EYE_CORNERS, RIGHT_EYE_CORNERS
from tracker.vision.body import EVERY_S, BodyFinder
from tracker.vision.far import FarFinder
from tracker.vision.landmarks import Face, LandmarkFinder
from tracker.vision.opencv import cv2
from tracker.vision.others import EVERY, Others
from tracker.vision.patient import Patient

#: Distance of the outer eye corners in the crop, in pixels, at most: more adds
#: cost and no accuracy worth it (this project's own choice).
WORKING_EYE_SPAN_PX = 90.0


@dataclass(frozen=True, slots=True)
class Observation:
    """What one frame holds, before anything is known of the person.

    Attributes
    ----------
    time_s
        Capture time.
    width_px, height_px
        Size of the whole picture.
    face
        The patient's face, or None.
    crop
        Its grey crop, or None.
    light
        Mean luminance of the face (of the whole picture without one), 0 to 1.
    faces_seen
        Number of faces in view, 0 to 2.
    body
        The patient's body, or None.
    body_sought
        Whether a body was looked for in this frame.
    anew
        Whether the face was chosen after a break, so that it may be another person's.
    other
        Another face in view, as it would be observed, where one was looked for and found.
    """

    time_s: float
    width_px: int
    height_px: int
    face: Face | None
    crop: GreyCrop | None
    light: float
    faces_seen: int
    body: BodyPoints | None = None
    body_sought: bool = False
    anew: bool = False
    other: Observation | None = None


#: While a face is followed in crops the whole picture is looked at this often: somebody
#: who has come near again, or a second person, is seen within a third of a second (this
#: project's own choice).
WHOLE_EVERY = 10


#: Where the body is seldom looked at, a hand that is up is looked at so often (this project's own
#: choice).
HAND_UP_S = 0.12


class Observer:
    """Looks at the frames of one source in order and keeps to one person."""

    def __init__(self) -> None:
        self._finder = LandmarkFinder()
        self._far = FarFinder()
        self._patient = Patient()
        self._others, self._for_others = Others(), False
        self._body = BodyFinder()
        self._with_body, self._body_every_s = False, EVERY_S
        self._hand_up = False
        self._count = 0

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:
        """From the next frame on look for the body, too, or no longer.

        ``every_s`` is the least time between two looks, where the usual one is too costly. While
        a hand is up it is looked at more often: a wave would not be told from a hand held still.
        """
        if self._with_body and not on:
            self._body.close()
        self._with_body, self._body_every_s = on, max(every_s, EVERY_S)
        self._hand_up = False

    def look_for_others(self, on: bool) -> None:
        """From the next frame on look for another face, too, or no longer."""
        if self._for_others and not on:
            self._others.forget()
        self._for_others = on

    def follow(self, other: Observation) -> None:
        """Follow the other face of an observation from now on: that is the patient's."""
        assert other.face is not None
        self._patient.follow(other.face, other.time_s)
        # Beside a face that is followed in crops, it may be seen in none but these.
        if self._others.small or self._far.followed is not None:
            self._far.follow(other.face)
        else:
            self._far.forget()

    def observe(self, frame: Frame) -> Observation:
        """Observation of the next frame."""
        height, width = frame.image.shape[:2]
        face, found = self._look(frame, (width, height))
        self._count += 1
        sought = self._with_body and self._body.due(frame.time_s, self._least_gap_s())
        body = self._body.find(frame.image, face, frame.time_s) if sought else None
        if sought:
            self._hand_up = body is not None and body.hand_up
        if face is None:
            # Every eighth pixel tells the light of a room well enough.
            light = float(frame.image[::8, ::8].mean()) / 255.0
            return Observation(
                frame.time_s, width, height, None, None, light, len(found), body_sought=sought
            )
        other = self._others.find(frame.image, face, found) if self._for_others else None
        return replace(
            _observation(frame, face, len(found)),
            body=body,
            body_sought=sought,
            anew=self._patient.anew,
            other=None if other is None else _observation(frame, other, len(found)),
        )

    def _least_gap_s(self) -> float:
        return min(self._body_every_s, HAND_UP_S) if self._hand_up else self._body_every_s

    def _look(self, frame: Frame, size_px: tuple[int, int]) -> tuple[Face | None, list[Face]]:
        """The patient's face and all that were found.

        The whole picture first, which is all that a near face costs; crops where the
        patient isn't in it.
        """
        faces: list[Face] = []
        every = EVERY if self._for_others else WHOLE_EVERY
        if self._far.followed is None or self._count % every == 0:
            faces = self._finder.find(frame.image, frame.time_s)
            face = self._patient.among(faces, frame.time_s, size_px)
            if face is not None:
                self._far.forget()
                return face, faces
        far = self._far.find(frame.image)
        face = self._patient.among(far, frame.time_s, size_px)
        if face is not None:
            self._far.follow(face)
        return face, faces or far

    def close(self) -> None:
        """Free the landmark finders."""
        self._finder.close()
        self._far.close()
        self._others.close()
        self._body.close()


def _observation(frame: Frame, face: Face, seen: int) -> Observation:
    """What a frame holds of one of its faces."""
    height, width = frame.image.shape[:2]
    crop = cut_crop(frame.image, face)
    return Observation(
        frame.time_s, width, height, face, crop, float(crop.image.mean()) / 255.0, seen
    )


def cut_crop(image: NDArray[np.uint8], face: Face) -> GreyCrop:
    """Grey crop around a face, lightly smoothed and not larger than the working size."""
    height, width = image.shape[:2]
    low, high = face.points_px[:468].min(axis=0), face.points_px[:468].max(axis=0)
    margin = 0.12 * (high - low) + 4
    left, top = np.maximum(np.floor(low - margin), 0).astype(int)
    right, bottom = np.minimum(np.ceil(high + margin), [width, height]).astype(int)
    # A face that has all but left the picture still gets a crop that can be sampled.
    left, top = min(left, width - 16), min(top, height - 16)
    right, bottom = max(right, left + 16), max(bottom, top + 16)
    grey = cv2.cvtColor(np.ascontiguousarray(image[top:bottom, left:right]), cv2.COLOR_BGR2GRAY)
    span = np.linalg.norm(
        face.points_px[RIGHT_EYE_CORNERS[0]] - face.points_px[LEFT_EYE_CORNERS[0]]
    )
    scale = min(1.0, WORKING_EYE_SPAN_PX / max(float(span), 1.0))
    if scale < 0.97:
        size = (max(16, round(grey.shape[1] * scale)), max(16, round(grey.shape[0] * scale)))
        small = cv2.resize(grey, size, interpolation=cv2.INTER_AREA)
        scale = size[0] / grey.shape[1]
    else:
        small, scale = grey, 1.0
    smooth = np.asarray(cv2.GaussianBlur(small, (3, 3), 0.8), np.uint8)
    # Centres of the first pixels of crop and picture differ by half a crop pixel.
    shift = 0.5 / scale - 0.5
    return GreyCrop(smooth, float(left + shift), float(top + shift), float(scale))
