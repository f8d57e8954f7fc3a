"""The landmarks of one body, and whether it is the patient's."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

#: Rows of the library's 33 landmarks, by its documentation; the sides are the person's own.
EYES = (2, 5)
SHOULDERS = (12, 11)
ELBOWS = (14, 13)
WRISTS = (16, 15)
N_LANDMARKS = 33

#: A landmark below this is guessed, not seen. On rendered bodies wrists in the picture
#: read .98 and more, wrists out of it .5 at most, on a portrait with hidden hands .2.
VISIBLE = 0.6
#: The body's eyes lie within this share of the face's height from the face's own eyes (the
#: patient's on rendered bodies: .1 at most; this project's own choice).
SAME_FACE = 0.4
#: Shoulders are so many face heights apart (a face's landmarks are about 150 mm high; from
#: half turned away to broad). Anything else is no body, or another person's (this project's own
#: choice).
SPAN = (0.8, 4.5)


@dataclass(frozen=True, slots=True)
class BodyPoints:
    """One body as the library found it.

    Attributes
    ----------
    points_px
        ``(33, 2)`` landmarks in pixels of the whole picture.
    visible
        ``(33,)`` how sure each is, 0 to 1.
    width_px, height_px
        Size of the picture: what lies outside was guessed.
    """

    points_px: NDArray[np.float64]
    visible: NDArray[np.float64]
    width_px: int
    height_px: int

    def seen(self, row: int) -> bool:
        """Whether a landmark was seen: sure enough, and within the picture."""
        x, y = self.points_px[row]
        inside = 0 <= x < self.width_px and 0 <= y < self.height_px
        return bool(inside and self.visible[row] >= VISIBLE)

    @property
    def hand_up(self) -> bool:
        """Whether a wrist is seen higher than its shoulder."""
        return any(
            self.seen(wrist) and self.points_px[wrist, 1] < self.points_px[shoulder, 1]
            for wrist, shoulder in zip(WRISTS, SHOULDERS, strict=True)
        )

    def below(self, row: int) -> bool:
        """Whether a landmark is taken to be below the picture, where nobody sees it."""
        return bool(self.points_px[row, 1] >= self.height_px)


def belongs_to(
    body: BodyPoints, face_centre_px: NDArray[np.float64], face_height_px: float
) -> bool:
    """Whether a body is that of the person whose face is there.

    Parameters
    ----------
    body
        What was found.
    face_centre_px
        ``(2,)`` middle of the eyes of the patient's face.
    face_height_px
        Its height.
    """
    eyes = body.points_px[list(EYES)].mean(axis=0)
    if np.linalg.norm(eyes - face_centre_px) > SAME_FACE * face_height_px:
        return False
    right, left = body.points_px[list(SHOULDERS)]
    span = float(np.linalg.norm(right - left)) / face_height_px
    return SPAN[0] <= span <= SPAN[1]
