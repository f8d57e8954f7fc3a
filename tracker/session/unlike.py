"""Eyes that look unlike those of the set-up again and again are not believed in between, either.

A light that has changed, or lids that hang lower, are seen at some angles of the head and not at
others; misread are the eyes at all of them. Of three such films of rendered heads a third and
more was withheld picture by picture, and the rest read as far off, 1.4 to 2.6 degrees. In nine
films with nothing of the kind .09 of the eyes at the most were unlike (the films of
``tracker.measure.UNLIKE_MOST``). Two more are not found by it: .14 were unlike under lids that hung
lower, and none in dim light. Where the line of sight then rests shows them (``beside``).
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import replace
from math import isfinite, nan

import numpy as np
from numpy.typing import NDArray

from tracker.sample import Sample
from tracker.session.derive import UNLIKE, UNLIKE_AROUND

Array = NDArray[np.float64]

#: Looked at together: ten seconds, half of them before and half after where what comes after is
#: known; with less of them known nothing is said (own choice).
SPAN_S, LEAST_S = 10.0, 2.0
#: Longer spells without an eye that was read count as this: a look far down, or a head that is
#: turned and stays so, is unlike all along, and tells little of before and after (own choice).
SPELL_S = 1.0
#: All are in doubt from this share of unlike ones: between the films above (own choice).
MANY = 0.25


def believed(samples: Sequence[Sample], *, counted_by_eyes: bool = False) -> list[Sample]:
    """The samples of one exercise, eyes withheld where they are often unlike around.

    Parameters
    ----------
    samples
        In the order of time.
    counted_by_eyes
        Whether the eyes' movement is what is counted: an eye read some degrees aside still goes
        to and fro. Then the line of sight alone is withheld.

    Returns
    -------
    list of Sample
        As many; those withheld have the reason ``UNLIKE_AROUND``, if they had none before.
    """
    seen = [s for s in samples if _is_known(s)]
    unlike = np.array([s.reason == UNLIKE for s in seen], dtype=bool)
    if not unlike.any():
        return list(samples)
    times = np.array([s.time_s for s in seen])
    # At the ends of a set as much is looked at as in its middle.
    from_s = np.maximum(np.minimum(times - 0.5 * SPAN_S, times[-1] - SPAN_S), times[0])
    first = np.searchsorted(times, from_s)
    past = np.searchsorted(times, from_s + SPAN_S, side="right")
    doubted = _share(times, unlike, first, past) >= MANY
    doubted &= times[past - 1] - times[first] >= LEAST_S
    bad = {id(s) for s, d in zip(seen, doubted, strict=True) if d}
    return [_withheld(s, eyes=not counted_by_eyes) if id(s) in bad else s for s in samples]


class EyesInDoubt:
    """The same while samples come, from what came before alone."""

    def __init__(self) -> None:
        self._known: deque[tuple[float, bool]] = deque()

    def feed(self, sample: Sample) -> Sample:
        """The sample, its eyes withheld where those before it were often unlike."""
        if not _is_known(sample):
            return sample
        self._known.append((sample.time_s, sample.reason == UNLIKE))
        while self._known[0][0] < sample.time_s - SPAN_S:
            self._known.popleft()
        lasts_s = sample.time_s - self._known[0][0]
        if lasts_s < LEAST_S or not any(unlike for _, unlike in self._known):
            return sample
        times, unlike = (np.array(column) for column in zip(*self._known, strict=True))
        share = _share(times, unlike, np.zeros(1, int), np.full(1, len(times)))
        return _withheld(sample, eyes=True) if share[0] >= MANY else sample


def _share(
    times: Array, unlike: NDArray[np.bool_], first: NDArray[np.intp], past: NDArray[np.intp]
) -> Array:
    """Share of the unlike among the known, from ``first`` up to ``past``; long spells cut short."""
    weights = np.ones(len(times))
    of_unlike = np.flatnonzero(unlike)
    # What is read in between ends a spell.
    at, spell = times[of_unlike], np.append(0, np.cumsum(np.diff(of_unlike) > 1))
    begins = np.flatnonzero(np.diff(spell, prepend=-1))
    ends = np.append(begins[1:], len(at)) - 1
    lasts_s = at[ends] - at[begins]
    weights[unlike] = (SPELL_S / np.maximum(lasts_s, SPELL_S))[spell]
    up_to = np.concatenate([[0.0], np.cumsum(weights)])
    of_these = np.concatenate([[0.0], np.cumsum(weights * unlike)])
    share: Array = (of_these[past] - of_these[first]) / (up_to[past] - up_to[first])
    return share


def _is_known(sample: Sample) -> bool:
    """Whether the eyes were seen well enough to tell what they look like."""
    return sample.reason in (UNLIKE, UNLIKE_AROUND) or isfinite(sample.eye_yaw_deg)


def _withheld(sample: Sample, *, eyes: bool) -> Sample:
    if not isfinite(sample.eye_yaw_deg):
        return sample
    reason = sample.reason or UNLIKE_AROUND
    sample = replace(sample, gaze_yaw_deg=nan, gaze_pitch_deg=nan, reason=reason)
    if not eyes:
        return sample
    return replace(sample, eye_yaw_deg=nan, eye_pitch_deg=nan, vergence_deg=nan)
