"""How far eyes are open, from the gap between their lids and from how shut they look.

Gaps and scores are those read on the rendered heads, in good and in dim light, by which the limits
were set: these tests hold what was reached there, and prove nothing of other faces.
"""

from __future__ import annotations

import numpy as np
import pytest

from tracker.exercises.counters import EYE_OPEN_LEAST
from tracker.eyes.openness import GENERIC_LIDS
from tracker.measure import DIM, LIT, openness
from tracker.vision.landmarks import Face

GOOD, DARK = 0.5, 0.1
BOTH = (0, 1)


def face_of(gaps: tuple[float, float], scores: tuple[float, float]) -> Face:
    """A face whose eyes are 40 px wide and open by shares of that, right and left."""
    points = np.zeros((478, 2))
    lids = (((160, 144), (159, 145), (158, 153)), ((387, 373), (386, 374), (385, 380)))
    for pairs, (outer, inner), gap, left in zip(
        lids, ((33, 133), (263, 362)), gaps, (100.0, 200.0), strict=True
    ):
        points[outer], points[inner] = (left, 100.0), (left + 40.0, 100.0)
        for k, (upper, lower) in enumerate(pairs, start=1):
            points[upper] = left + 10.0 * k, 100.0 - 20.0 * gap
            points[lower] = left + 10.0 * k, 100.0 + 20.0 * gap
    return Face(points, np.zeros(478), scores)


def read(gap: float, score: float, light: float) -> float:
    return openness(face_of((gap, gap), (score, score)), GENERIC_LIDS, BOTH, light)


@pytest.mark.parametrize("light", [GOOD, 0.18, DARK])
def test_open_eyes_are_open_in_any_light(light: float) -> None:
    assert read(0.28, 0.04, light) == pytest.approx(1.0)
    # A turned head scores .26 at most.
    assert read(0.28, 0.26, light) > 0.6


@pytest.mark.parametrize(
    ("gap", "score", "light"),
    [(0.05, 0.61, GOOD), (0.13, 0.48, 0.14), (0.17, 0.39, DARK), (0.21, 0.42, DARK)],
)
def test_shut_eyes_are_shut_in_good_light_and_in_dim(
    gap: float, score: float, light: float
) -> None:
    assert read(gap, score, light) < EYE_OPEN_LEAST


@pytest.mark.parametrize(("gap", "score"), [(0.17, 0.34), (0.16, 0.37), (0.18, 0.36)])
def test_a_look_far_down_is_not_taken_for_shut_eyes_in_good_light(gap: float, score: float) -> None:
    assert read(gap, score, GOOD) > EYE_OPEN_LEAST
    # In the dark nobody can tell: shut eyes look just so there.
    assert read(gap, score, DARK) < EYE_OPEN_LEAST


def test_between_dim_and_good_light_it_goes_over_evenly() -> None:
    read_at = [read(0.2, 0.4, light) for light in np.linspace(0.0, 0.6, 61)]
    assert np.all(np.diff(read_at) >= 0) and max(np.diff(read_at)) < 0.06
    assert read_at[0] == read(0.2, 0.4, DIM) and read_at[-1] == read(0.2, 0.4, LIT)


def test_only_the_eyes_in_use_count() -> None:
    face = face_of((0.02, 0.28), (0.7, 0.05))
    assert openness(face, GENERIC_LIDS, (0,), GOOD) == 0.0
    assert openness(face, GENERIC_LIDS, (1,), GOOD) == pytest.approx(1.0)
