"""The reading of the eyes: regression, what is unlike the set-up, vergence, shading."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from tests.motion.test_near_far import vergence_deg
from tracker.eyes import regression
from tracker.eyes.model import EyeModel, GazeModel
from tracker.eyes.patches import GRID_MM, PATCH_SIZE, cornered_patches
from tracker.eyes.regression import KNOWN, RIDGE, Ridge, fit_ridge, left_out
from tracker.head.crop import GreyCrop
from tracker.head.shape import LEFT_EYE_CORNERS, RIGHT_EYE_CORNERS


def looks(rng: np.random.Generator, count: int = 120) -> tuple[np.ndarray, ...]:
    """Made-up patches that follow two angles, with noise; the angles; the stretches of time."""
    angles = np.repeat(rng.uniform(-12, 12, (count // 10, 2)), 10, axis=0)
    mixing = np.random.default_rng(7).normal(0, 0.1, (2, 60))
    vectors = angles @ mixing + rng.normal(0, 0.1, (count, 60))
    return vectors, angles, np.arange(count) // 10


def test_the_fit_is_a_ridge_regression() -> None:
    """Against the primal normal equations, solved by numpy."""
    vectors, angles, stretches = looks(np.random.default_rng(1))
    weights = np.random.default_rng(2).uniform(0.1, 1.0, len(vectors))
    fit = fit_ridge(vectors, angles, weights, stretches)
    x, y = vectors - fit.mean, angles - fit.offset
    for axis, ridge in enumerate(RIDGE):
        normal = x.T @ (weights[:, None] * x) + ridge * np.eye(60)
        expected = np.linalg.solve(normal, x.T @ (weights * y[:, axis]))
        assert fit.weights[:, axis] == pytest.approx(expected, abs=1e-9)
    assert fit.mean == pytest.approx(np.average(vectors, axis=0, weights=weights))


def test_what_is_usual_is_what_kept_stretches_leave_unexplained() -> None:
    """The closed form against leaving each stretch out and solving anew."""
    vectors, angles, stretches = looks(np.random.default_rng(3))
    fit = fit_ridge(vectors, angles, np.ones(len(vectors)), stretches)
    x, left = vectors - fit.mean, []
    for stretch in np.unique(stretches):
        rows = stretches == stretch
        kept, asked = x[~rows], x[rows]
        across = asked @ kept.T
        kernel = kept @ kept.T + KNOWN * np.eye(len(kept))
        known = across @ np.linalg.solve(kernel, across.T)
        left.extend(np.diag(asked @ asked.T - known))
    assert fit.usual == pytest.approx(float(np.median(left)), rel=1e-6)


def test_stretches_left_out_read_as_in_fits_without_them() -> None:
    """The closed form against fitting anew without each stretch, by numpy, offset and all."""
    vectors, angles, stretches = looks(np.random.default_rng(12))
    weights = np.random.default_rng(13).uniform(0.1, 1.0, len(vectors))
    found = left_out(vectors, angles, weights, stretches)
    for stretch in np.unique(stretches):
        rows = stretches == stretch
        kept = np.column_stack([np.ones((~rows).sum()), vectors[~rows] - vectors.mean(axis=0)])
        asked = np.column_stack([np.ones(rows.sum()), vectors[rows] - vectors.mean(axis=0)])
        w = weights[~rows, None]
        for axis, ridge in enumerate(RIDGE):
            prior = np.diag([1e-6, *[ridge] * 60])
            fit = np.linalg.solve(
                kept.T @ (w * kept) + prior, kept.T @ (w[:, 0] * angles[~rows, axis])
            )
            assert found[rows, axis] == pytest.approx(asked @ fit - angles[rows, axis], abs=0.02)


def test_eyes_like_those_of_the_set_up_are_usual_and_others_are_not() -> None:
    vectors, angles, stretches = looks(np.random.default_rng(4))
    fit = fit_ridge(vectors, angles, np.ones(len(vectors)), stretches)
    again = looks(np.random.default_rng(5))[0]
    assert np.median(fit.unlike(again)) == pytest.approx(1.0, abs=0.2)
    other = again + np.random.default_rng(6).normal(0, 0.5, 60)
    assert np.median(fit.unlike(other)) > 3.0


def test_unbelieved_frames_do_not_say_what_is_usual() -> None:
    vectors, angles, stretches = looks(np.random.default_rng(8))
    spoilt = vectors.copy()
    spoilt[:50] += np.random.default_rng(9).normal(0, 2.0, (50, 60))
    weights = np.where(np.arange(len(vectors)) < 50, 0.02, 1.0)
    right = fit_ridge(vectors, angles, weights, stretches).usual
    assert fit_ridge(spoilt, angles, weights, stretches).usual < 2.5 * right
    assert regression.TRUSTED > 0.02


def plain_eye() -> EyeModel:
    """An eye whose patch is its own angles."""
    plain = Ridge(np.zeros(2), np.eye(2), np.zeros(2), np.zeros((1, 2)), 1.0)
    return EyeModel(plain, plain)


@pytest.mark.parametrize(("distance_mm", "expected"), [(300, 12.0), (600, 6.0), (1000, 3.6)])
def test_vergence_of_eyes_on_a_near_target(distance_mm: float, expected: float) -> None:
    """63 mm between the eyes: plain geometry."""
    half = float(np.degrees(np.arctan(31.5 / distance_mm)))
    model = GazeModel((plain_eye(), plain_eye()), np.zeros((2, 2)), 1.0)
    # The right eye turns to the left (below 0), the left one to the right.
    patches = np.array([[-half, -5.0], [half, -5.0]])
    read = model.read(patches, patches)
    assert read.vergence_deg == pytest.approx(expected, abs=0.05)
    assert read.vergence_deg == pytest.approx(vergence_deg(63.0, np.array(distance_mm)), abs=1e-6)
    assert read.yaw_deg == pytest.approx(0.0, abs=1e-9)
    assert read.pitch_deg == pytest.approx(-5.0, abs=0.05)


def test_another_rest_turns_both_eyes_and_leaves_the_vergence() -> None:
    turned = Rotation.from_euler("y", 4.0, degrees=True).as_matrix()
    before = GazeModel((plain_eye(), plain_eye()), np.zeros((2, 2)), 1.0)
    after = GazeModel((plain_eye(), plain_eye()), np.zeros((2, 2)), 1.0, turned)
    patches = np.array([[-3.0, 0.0], [3.0, 0.0]])
    first, then = before.read(patches, patches), after.read(patches, patches)
    assert then.yaw_deg - first.yaw_deg == pytest.approx(4.0, abs=1e-6)
    assert then.vergence_deg == pytest.approx(first.vergence_deg, abs=1e-6)


def eyes_in(light: np.ndarray) -> np.ndarray:
    """Patches of a made-up face under a light ``(240, 320)`` that is added to it."""
    rng = np.random.default_rng(11)
    picture = np.kron(rng.uniform(60, 160, (30, 40)), np.ones((8, 8))) + light
    points = np.zeros((478, 2))
    for (a, b), at in ((RIGHT_EYE_CORNERS, 60), (LEFT_EYE_CORNERS[::-1], 200)):
        points[a], points[b] = (at, 120), (at + 60, 124)
    crop = GreyCrop(picture.astype(np.float32), 0.0, 0.0, 1.0)
    return cornered_patches(crop, points)


def test_a_light_from_the_side_changes_no_patch() -> None:
    """A slope and a bend of the brightness over each eye are taken away."""
    assert GRID_MM.shape == (PATCH_SIZE, 2)
    still = eyes_in(np.zeros((240, 320)))
    y, x = np.mgrid[0:240, 0:320] / 320.0
    lit = eyes_in(90 * x - 60 * y + 70 * x * x)
    assert np.abs(lit - still).max() < 0.02
    assert still.std(axis=1) == pytest.approx(1.0)
