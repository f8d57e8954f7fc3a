"""Another face in view, looked for while the one that is followed may not be the patient's."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from tracker.vision.far import FarFinder
from tracker.vision.landmarks import Face

#: Every how many-th picture is searched for a small face: six looks a second, a sixth of the
#: pictures' cost more (this project's own choice).
EVERY = 5
#: Nearer than this, in heights of the face that is followed, it is that face again: two heads
#: side by side are farther apart (this project's own choice).
APART = 0.6


class Others:
    """Looks for a face beside the one that is followed: in what was found, else in crops.

    Costs nothing until it is first asked.
    """

    def __init__(self) -> None:
        self._far = FarFinder()
        self._count = 0

    def find(self, image: NDArray[np.uint8], mine: Face, found: Sequence[Face]) -> Face | None:
        """Another face than ``mine`` in a BGR picture ``(h, w, 3)``, or None.

        Parameters
        ----------
        image
            The picture.
        mine
            The face that is followed in it.
        found
            All faces that have been found in it.
        """
        if beside := _beside(found, mine):
            self._far.forget()
            return beside[0]
        self._count += 1
        if self._count % EVERY:
            return None
        small = self._far.find(image, lambda faces: _beside(faces, mine))
        if not small:
            return None
        self._far.follow(small[0])
        return small[0]

    @property
    def small(self) -> bool:
        """Whether the other face is one that only crops show."""
        return self._far.followed is not None

    def forget(self) -> None:
        """Search afresh when next asked."""
        self._far.forget()

    def close(self) -> None:
        """Free the native parts."""
        self._far.close()


def _beside(faces: Sequence[Face], mine: Face) -> list[Face]:
    least_px = APART * mine.height_px
    return [f for f in faces if np.linalg.norm(f.centre_px - mine.centre_px) > least_px]
