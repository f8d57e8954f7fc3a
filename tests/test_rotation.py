"""Rotations against scipy and against the worked rotation of the plan."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from tracker.rotation import (
    angle_between_deg,
    angles_from_direction,
    angles_from_matrix,
    direction_from_angles,
    matrix_from_angles,
    rotation_vector,
)

RNG = np.random.default_rng(1)
YAW, PITCH, ROLL = RNG.uniform([-179], [179], (400, 3)).T * np.array([[1], [0.49], [1]])


def scipy_matrix(yaw: np.ndarray, pitch: np.ndarray, roll: np.ndarray) -> np.ndarray:
    """The same rotation by scipy: about up, then the turned right, then the turned forward.

    Components (right, up, forward) are fed to it as (x, y, z); pitch up and roll to the
    right ear turn against its right-handed sense.
    """
    return Rotation.from_euler("YXZ", np.stack([yaw, -pitch, -roll], -1), degrees=True).as_matrix()


def test_matrices_agree_with_scipy() -> None:
    ours = matrix_from_angles(YAW, PITCH, ROLL)
    assert np.abs(ours - scipy_matrix(YAW, PITCH, ROLL)).max() < 1e-12


def test_worked_rotation_of_the_plan() -> None:
    m = matrix_from_angles(20, 10, 5)
    assert m[:, 2] == pytest.approx([0.3368, 0.1736, 0.9254], abs=5e-5)
    assert m[:, 0] == pytest.approx([0.9413, -0.0858, -0.3265], abs=5e-5)


def test_angles_come_back() -> None:
    angles = angles_from_matrix(matrix_from_angles(YAW, PITCH, ROLL))
    assert np.abs(angles - np.stack([YAW, PITCH, ROLL], -1)).max() < 1e-9


def test_rotation_vectors_agree_with_scipy() -> None:
    m = matrix_from_angles(YAW, PITCH, ROLL)
    theirs = np.degrees(Rotation.from_matrix(m).as_rotvec())
    near_half_turn = np.linalg.norm(theirs, axis=-1) > 179
    assert np.abs(rotation_vector(m) - theirs)[~near_half_turn].max() < 1e-8


def test_small_rotation_vector_has_the_stated_signs() -> None:
    vector = rotation_vector(matrix_from_angles(1e-3, 2e-3, 3e-3))
    assert vector == pytest.approx([-2e-3, 1e-3, -3e-3], rel=1e-4)
    assert rotation_vector(np.eye(3)).tolist() == [0, 0, 0]


@given(st.floats(-179, 179), st.floats(-89, 89))
def test_directions_come_back(yaw: float, pitch: float) -> None:
    assert angles_from_direction(3.0 * direction_from_angles(yaw, pitch)) == pytest.approx(
        [yaw, pitch], abs=1e-9
    )


@pytest.mark.parametrize("angle", [0.0, 1e-6, 5.0, 90.0, 179.999])
def test_angle_between_is_exact_for_small_and_large(angle: float) -> None:
    a, b = direction_from_angles(10, 0), direction_from_angles(10 + angle, 0)
    assert angle_between_deg(a, b) == pytest.approx(angle, abs=1e-9)
