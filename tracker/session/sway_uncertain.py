"""How far the sway of who stands can be trusted.

What is read is the true sway, times a scale, with noise of the samples upon it and with the
neck point straying where the head turns. So

- **the scale** is that of a face of the usual size, fore-aft of the lens too (`tracker.scale`);
  what is sideways and fore-aft share the face's part of it;
- **noise** of neighbouring samples is independent and adds to a sway as squares do: what it
  makes of it is the bias (`tracker.motion.uncertainty.noise_of`);
- **straying** is as large as the bench found for who stands and shakes the head. Where it goes
  with the sway it adds to it or takes from it, and nobody knows which: a rectangular
  distribution as wide as it is (JCGM 100:2008, 4.3.7). What goes on its own adds as noise does.

Ranges and the ellipse are not reckoned: single samples make them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import hypot, isfinite, sqrt
from typing import Any

import numpy as np

from tracker.motion.drawn import Uncertainty
from tracker.motion.uncertainty import LEAST_APART_S, noise_of
from tracker.sample import Sample
from tracker.scale import FACE_SHARE, length_share, lens_of_setup
from tracker.session.bench import NECK_STANDING_MM, WORST_IS
from tracker.session.figures import Figure
from tracker.session.uncertain import NOT_DRAWN, told

#: Figures of a sway, and where the uncertainty of each stands.
PLACES = {
    "value": "uncertainty",
    "rms_sideways_mm": "uncertainty_sideways",
    "rms_fore_aft_mm": "uncertainty_fore_aft",
}


def add_sway_uncertainty(
    found: Figure, samples: Sequence[Sample], setup: Mapping[str, Any], unknown: str
) -> None:
    """Put their uncertainties to a sway's figures.

    Parameters
    ----------
    found
        What :func:`tracker.session.standing.sway` found; changed in place, nothing where it
        has no value.
    samples
        Those of the set.
    setup
        What its set-up found.
    unknown
        Why the error of its set-up isn't known; empty where it is.
    """
    if found["value"] is None:
        return
    rows = np.array([(s.time_s, s.neck_x_mm, s.neck_z_mm) for s in samples], dtype=float)
    rows = rows[np.isfinite(rows).all(axis=1)]
    times, across, along = rows[np.diff(rows[:, 0], prepend=-np.inf) > LEAST_APART_S].T
    noises = noise_of(times, across), noise_of(times, along)
    for key, of in _reckoned(found, noises, length_share(lens_of_setup(setup), depth=True)).items():
        found[PLACES[key]] = told(of, unknown or ("" if isfinite(of.expanded) else NOT_DRAWN))


def _reckoned(
    found: Figure, noises: tuple[float, float], depth_share: float
) -> dict[str, Uncertainty]:
    """Of the sway as a whole, sideways and fore-aft, in mm."""
    stray = NECK_STANDING_MM / WORST_IS
    face = FACE_SHARE / 2
    lens = sqrt(max(depth_share**2 - face**2, 0.0))
    whole, fore_aft = found["value"], found["rms_fore_aft_mm"]
    # The lens moves the whole by as much as what goes fore-aft has of it.
    by_lens = {
        "value": lens * fore_aft**2 / whole if whole else 0.0,
        "rms_sideways_mm": 0.0,
        "rms_fore_aft_mm": lens * fore_aft,
    }
    extra = {
        "value": hypot(*noises, stray * sqrt(2.0)),
        "rms_sideways_mm": hypot(noises[0], stray),
        "rms_fore_aft_mm": hypot(noises[1], stray),
    }
    return {
        key: Uncertainty(
            stray / sqrt(3.0), hypot(face * found[key], by_lens[key]), _more(found[key], extra[key])
        )
        for key in PLACES
    }


def _more(read_mm: float, extra_mm: float) -> float:
    """By how much a sway reads larger for what adds to it as squares do."""
    return read_mm - sqrt(max(read_mm**2 - extra_mm**2, 0.0))
