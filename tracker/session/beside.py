"""A line of sight that rests a little beside its target, all along, is not believed.

Lids that hang lower, another light or glasses that slipped shift what the eyes are read as, and
keep the shift: of three films of rendered heads whose lids hung lower than in the set-up, the
gaze was read 2.3 to 3.0 degrees below the target in every ten seconds, and their eyes needn't look
unlike those of the set-up (:mod:`tracker.session.unlike`). In thirteen others it was
at most 0.4 degrees above or below. (The limits were placed with these films in sight.) Eyes that
lag are off to both sides in turn, and who looks elsewhere for a quarter of the time, or as far
aside as counts for off the target, is believed. A person who really does look that little aside
all along can't be told from it: it is not measured either.

This is for the figures, once the exercise is known: while it goes on the watcher of the gaze has
what was read, and takes a small shift off by itself
(:class:`tracker.exercises.watchers.gaze.GazeOffTarget`): a glance away is told all the same.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import isfinite, nan

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.watchers.gaze import off_target_limit_deg
from tracker.sample import Sample
from tracker.session.derive import BESIDE

Array = NDArray[np.float64]

#: Looked at together, and the least of it that has to be known (own choice).
SPAN_S, LEAST_S = 10.0, 5.0
#: So often it is decided anew: no more is needed of what is told from ten seconds.
EVERY_S = 0.5
#: As far as a gaze may be misread by other lids or another light before it is withheld: the aim
#: that the project has for them.
LEAST_DEG = 1.5
#: No less than so many times the error of a look that the set-up measured (own choice: chance
#: leaves few medians beyond it, and a set-up that fits is no farther off for long).
ERRORS_APART = 2.0
#: It rests: so much of it lies no farther from its median than what is doubted begins (own choice).
RESTS = 0.75
#: Where more than this share of an exercise's line of sight is in doubt, none of it is believed:
#: the rest would tell of its glances alone (own choice).
MOST = 0.5


@dataclass(frozen=True, slots=True)
class Band:
    """How far beside the target is not believed, in degrees, from and below."""

    from_deg: float
    below_deg: float


def doubted_band(error_deg: float) -> Band | None:
    """How far beside its target a steady line of sight isn't believed; None where none is judged.

    Parameters
    ----------
    error_deg
        Error of the gaze against the target, as the set-up measured it; NaN for none: what
        nobody measured can't be held against anything.
    """
    below = off_target_limit_deg(error_deg) if isfinite(error_deg) else None
    if below is None:
        return None
    band = Band(max(LEAST_DEG, ERRORS_APART * error_deg), below)
    return band if band.from_deg < band.below_deg else None


def withheld_beside(samples: Sequence[Sample], band: Band | None) -> list[Sample]:
    """The samples of one exercise, the line of sight withheld where it rests beside the target.

    Parameters
    ----------
    samples
        In the order of time, completed: with target and line of sight.

    Returns
    -------
    list of Sample
        As many; those withheld have the reason ``BESIDE``, if they had none before.
    """
    known = [s for s in samples if isfinite(_offset(s)[0])]
    if band is None or not known:
        return list(samples)
    times = np.array([s.time_s for s in known])
    offsets = np.array([_offset(s) for s in known])
    # Half before and half after; at the ends of a set as much as in its middle.
    from_s = np.maximum(np.minimum(times - 0.5 * SPAN_S, times[-1] - SPAN_S), times[0])
    spans = np.floor((from_s - times[0]) / EVERY_S)
    bad: set[int] = set()
    for span in np.unique(spans).tolist():
        begin_s = times[0] + EVERY_S * span
        first, past = np.searchsorted(times, (begin_s, begin_s + SPAN_S + EVERY_S))
        if _rests_beside(times[first:past], offsets[first:past], band):
            bad.update(id(known[k]) for k in np.flatnonzero(spans == span).tolist())
    whole = len(bad) > MOST * len(known)
    return [_withheld(s) if whole or id(s) in bad else s for s in samples]


def _rests_beside(times: Array, offsets: Array, band: Band) -> bool:
    """Whether most of a span lies close together, and as far beside the target as is doubted."""
    if times[-1] - times[0] < LEAST_S:
        return False
    middle = np.median(offsets, axis=0)
    near = np.hypot(*(offsets - middle).T) <= band.from_deg
    apart = float(np.hypot(*middle))
    return band.from_deg <= apart < band.below_deg and float(near.mean()) >= RESTS


def _offset(sample: Sample) -> tuple[float, float]:
    """Yaw and pitch of the line of sight less those of the target, in degrees; NaN if unknown."""
    yaw = sample.gaze_yaw_deg - sample.target_yaw_deg
    pitch = sample.gaze_pitch_deg - sample.target_pitch_deg
    return (yaw, pitch) if isfinite(yaw) and isfinite(pitch) else (nan, nan)


def _withheld(sample: Sample) -> Sample:
    if not isfinite(sample.gaze_yaw_deg):
        return sample
    reason = sample.reason or BESIDE
    return replace(sample, gaze_yaw_deg=nan, gaze_pitch_deg=nan, reason=reason)
