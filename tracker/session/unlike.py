"""Eyes that look unlike those of the set-up again and again are not believed in between, either.

A light that has changed, or lids that hang lower, are seen at some angles of the head and not at
others; misread are the eyes at all of them. On rendered heads half and more of such films was
withheld picture by picture, and the rest read as far off, 1.4 to 3 degrees. There .6 to 1 of the
half seconds had some that were unlike; in nine films with nothing of the kind 0 to .24 (the films
of ``tracker.measure.UNLIKE_MOST``).
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import floor, isfinite, nan

import numpy as np

from tracker.sample import Sample
from tracker.session.derive import UNLIKE, UNLIKE_AROUND

#: Times are looked at by bins, of those in which anything was read: a look far down, or a head
#: that is turned and stays so, is unlike all along, and tells nothing of before and after (own
#: choice).
BIN_S = 0.5
#: So many bins are looked at together: ten seconds, half of them before and half after where what
#: comes after is known (own choice).
BINS = 20
#: A bin counts with this share of its eyes unlike, and all are in doubt with this share of bins:
#: between the films above (own choice).
SOME, MANY = 0.2, 0.5
#: Of fewer bins nothing is said (own choice).
LEAST_BINS = 4


def believed(samples: Sequence[Sample]) -> list[Sample]:
    """The samples of one exercise, eyes withheld where they are often unlike around.

    Parameters
    ----------
    samples
        In the order of time.

    Returns
    -------
    list of Sample
        As many; those withheld have no eyes and no gaze, and the reason ``UNLIKE_AROUND``.
        The same again for what it gave.
    """
    if not any(s.reason == UNLIKE for s in samples):
        return list(samples)
    seen = [s for s in samples if _is_known(s)]
    numbers, bins = np.unique([_bin_of(s) for s in seen], return_inverse=True)
    known, unlike = np.bincount(bins), np.bincount(bins, [s.reason == UNLIKE for s in seen])
    read = unlike < known
    numbers = numbers[read]
    up_to = np.concatenate([[0], np.cumsum((unlike >= SOME * known)[read])])
    first = np.searchsorted(numbers, numbers - BINS // 2)
    past = np.searchsorted(numbers, numbers + BINS // 2, side="right")
    had, many = past - first, up_to[past] - up_to[first]
    doubted = {int(n) for n in numbers[(had >= LEAST_BINS) & (many >= MANY * had)]}
    return [_withheld(s) if _bin_of(s) in doubted else s for s in samples]


@dataclass(slots=True)
class _Bin:
    number: int
    known: int = 0
    unlike: int = 0

    @property
    def counts(self) -> bool:
        return self.unlike >= SOME * self.known


class EyesInDoubt:
    """The same while samples come, from what came before alone."""

    def __init__(self) -> None:
        self._bins: deque[_Bin] = deque()

    def feed(self, sample: Sample) -> Sample:
        """The sample, its eyes withheld where those before it were often unlike."""
        if not _is_known(sample):
            return sample
        number = _bin_of(sample)
        if not self._bins or self._bins[-1].number != number:
            self._bins.append(_Bin(number))
        while self._bins[0].number <= number - BINS:
            self._bins.popleft()
        self._bins[-1].known += 1
        self._bins[-1].unlike += sample.reason == UNLIKE
        had = [b.counts for b in self._bins if b.unlike < b.known]
        doubted = len(had) >= LEAST_BINS and sum(had) >= MANY * len(had)
        return _withheld(sample) if doubted else sample


def _bin_of(sample: Sample) -> int:
    return floor(sample.time_s / BIN_S)


def _is_known(sample: Sample) -> bool:
    """Whether the eyes were seen well enough to tell what they look like."""
    return sample.reason in (UNLIKE, UNLIKE_AROUND) or isfinite(sample.eye_yaw_deg)


def _withheld(sample: Sample) -> Sample:
    if not isfinite(sample.eye_yaw_deg):
        return sample
    return replace(
        sample,
        eye_yaw_deg=nan,
        eye_pitch_deg=nan,
        vergence_deg=nan,
        gaze_yaw_deg=nan,
        gaze_pitch_deg=nan,
        reason=UNLIKE_AROUND,
    )
