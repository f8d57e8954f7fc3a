"""Watching a sheet or a card that is held up, until the camera's focal length is known.

It stands where a person's measurer stands, in the measuring process: frames in, and on
request what is known so far.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from calibration.lens_fit import SIDES_MM, find_focal, tilt_between_deg
from tracker.errors import InputError
from tracker.frame import Frame
from tracker.head.perspective import Array
from tracker.lens import Lens
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.sheet import find_sheet

#: A search takes some 20 ms: ten a second leave time for the picture (this project's own
#: choice).
EVERY_S = 0.1
#: Corners that moved farther than this between two searches, of 640 pixels, are blurred (this
#: project's own choice: ten times the finder's spread).
STILL_PX = 3.0
#: A view tilted by less than this from one that was taken says little new (this project's own
#: choice).
OTHER_DEG = 9.0
#: So many views are enough, and so many are kept at most (this project's own choice; with nine
#: the field of view came out within half a degree on rendered sheets).
ENOUGH, MOST = 6, 12
#: With a measured distance one view does; three guard against a slip (this project's own
#: choice).
ENOUGH_MEASURED = 3


@dataclass(frozen=True, slots=True)
class LensReport:
    """How far the measuring of the lens has come.

    Attributes
    ----------
    views, wanted
        How many views were taken, and how many are wanted.
    lens
        The result, None as long as there is none.
    why
        Why there is none, in words.
    """

    views: int
    wanted: int
    lens: Lens | None
    why: str = ""

    @property
    def done(self) -> bool:
        """Whether it is over: a result that rests on enough views."""
        return self.lens is not None and self.views >= self.wanted


class SheetWatcher:
    """Takes views of a sheet ("paper") or a card ("card") that is held up.

    Its samples carry the light, and in ``reason`` what to say: ``sheet_none`` (not seen),
    ``sheet_moving``, ``sheet_same`` (tilt it another way) or ``sheet_taken``.
    """

    def __init__(self, kind: str, distance_mm: float | None = None) -> None:
        self._kind, self._distance_mm = kind, distance_mm
        self._sides = SIDES_MM[kind]
        self._views: list[Array] = []
        self._size = (0, 0)
        self._last: Array | None = None
        self._looked_s = -np.inf
        self._hint = "sheet_none"

    def take(self, frame: Frame) -> Sample:
        """Look at one frame."""
        height, width = frame.image.shape[:2]
        if (width, height) != self._size:
            self._size, self._views, self._last = (width, height), [], None
        if frame.time_s - self._looked_s >= EVERY_S:
            self._looked_s = frame.time_s
            self._hint = self._look(frame)
        light = float(frame.image[::8, ::8].mean()) / 255.0
        return Sample(frame.time_s, light=light, reason=self._hint)

    def _look(self, frame: Frame) -> str:
        found = find_sheet(frame.image)
        last, self._last = self._last, found
        if found is None:
            return "sheet_none"
        limit = STILL_PX * max(self._size) / 640
        if last is None or np.abs(found - last).max() > limit:
            return "sheet_moving"
        if self._distance_mm is None and any(
            tilt_between_deg(found, v, self._sides, self._size) < OTHER_DEG for v in self._views
        ):
            return "sheet_same"
        if len(self._views) < MOST:
            self._views.append(found)
        return "sheet_taken"

    def fit(self, steps: Sequence[Step]) -> LensReport:
        """What is known so far; there are no steps in it."""
        del steps
        wanted = ENOUGH if self._distance_mm is None else ENOUGH_MEASURED
        if len(self._views) < min(wanted, 3):
            return LensReport(len(self._views), wanted, None)
        try:
            found = find_focal(self._views, self._sides, self._size, self._distance_mm)
        except InputError as error:
            if len(self._views) >= MOST:
                # What was seen doesn't go together: begin anew.
                self._views = []
            return LensReport(len(self._views), wanted, None, str(error))
        return LensReport(len(self._views), wanted, found.lens(self._kind, *self._size))

    def close(self) -> None:
        """Nothing to free."""


def make_watcher(kind: str, distance_mm: float | None = None) -> SheetWatcher:
    """Watcher for a fresh source; a child process imports and calls it."""
    return SheetWatcher(kind, distance_mm)
