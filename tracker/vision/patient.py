"""Which of the faces in view is the patient's."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from tracker.vision.landmarks import Face

#: A patient who has been out of sight this long is looked for afresh (this project's own choice).
FORGET_AFTER_S = 4.0
#: A head moves less than this in a picture, in heights of its face, and changes in size by less
#: than this factor (this project's own choice).
REACH, GROWTH = 0.6, 1.25
#: Who was out of sight for so long may be somebody else where they come into view farther off
#: than in a picture (this project's own choice: longer than a blur or a blink of the finder).
BREAK_S = 0.5


class Patient:
    """Keeps to one person: a helper's face, perhaps nearer, is never taken for theirs."""

    def __init__(self) -> None:
        self._last: Face | None = None
        self._last_s = -np.inf
        #: Whether the face in the newest picture was chosen after a break, and may be another's.
        self.anew = False

    def among(self, faces: Sequence[Face], time_s: float, size_px: tuple[int, int]) -> Face | None:
        """The face that goes on from the last one seen; at first the largest near the middle.

        Parameters
        ----------
        faces
            All that were found in the picture.
        time_s
            Its time.
        size_px
            Its width and height.
        """
        face = self._choose(faces, time_s, size_px)
        self.anew = face is not None and self._may_be_another(face, time_s)
        if face is not None:
            self.follow(face, time_s)
        return face

    def follow(self, face: Face, time_s: float) -> None:
        """From now on this is the patient's."""
        self._last, self._last_s = face, time_s

    def _may_be_another(self, face: Face, time_s: float) -> bool:
        if self._last is None:
            return False
        gone_s = time_s - self._last_s
        if gone_s >= FORGET_AFTER_S:
            return True
        return gone_s >= BREAK_S and not _near(face, self._last, REACH, GROWTH)

    def _choose(
        self, faces: Sequence[Face], time_s: float, size_px: tuple[int, int]
    ) -> Face | None:
        if not faces:
            return None
        if self._last is not None:
            last, gone_s = self._last, time_s - self._last_s
            # A head moves less than one face height in a frame; the allowance
            # grows while it is out of sight, and so does that for its size.
            reach, growth = min(REACH + 1.0 * gone_s, 2.0), GROWTH + 0.2 * min(gone_s, 2.0)
            near = [f for f in faces if _near(f, last, reach, growth)]
            if near:
                return min(near, key=lambda f: float(np.linalg.norm(f.centre_px - last.centre_px)))
            if gone_s < FORGET_AFTER_S:
                return None
        width, height = size_px
        middle = np.array([width, height]) / 2

        def claim(face: Face) -> float:
            off = float(np.linalg.norm(face.centre_px - middle)) / height
            return face.height_px * (1.0 - 0.8 * min(off, 1.0))

        return max(faces, key=claim)


def _near(face: Face, last: Face, reach: float, growth: float) -> bool:
    """Whether a face lies within so many of the last one's heights, about as large."""
    off_px = float(np.linalg.norm(face.centre_px - last.centre_px))
    return off_px < reach * last.height_px and 1 / growth < face.height_px / last.height_px < growth
