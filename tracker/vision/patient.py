"""Which of the faces in view is the patient's."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from tracker.vision.landmarks import Face

#: A patient who has been out of sight this long is looked for afresh (this project's own choice).
FORGET_AFTER_S = 4.0


class Patient:
    """Keeps to one person: a helper's face, perhaps nearer, is never taken for theirs."""

    def __init__(self) -> None:
        self._last: Face | None = None
        self._last_s = -np.inf

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
        if face is not None:
            self._last, self._last_s = face, time_s
        return face

    def _choose(
        self, faces: Sequence[Face], time_s: float, size_px: tuple[int, int]
    ) -> Face | None:
        if not faces:
            return None
        if self._last is not None:
            last, gone_s = self._last, time_s - self._last_s
            # A head moves less than one face height in a frame; the allowance
            # grows while it is out of sight, and so does that for its size.
            reach = last.height_px * min(0.6 + 1.0 * gone_s, 2.0)
            growth = 1.25 + 0.2 * min(gone_s, 2.0)
            near = [
                f
                for f in faces
                if np.linalg.norm(f.centre_px - last.centre_px) < reach
                and 1 / growth < f.height_px / last.height_px < growth
            ]
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
