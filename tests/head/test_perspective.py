"""Camera, pose and pose fit against closed forms and scipy."""

import numpy as np
import pytest
from scipy.optimize import approx_fprime
from scipy.spatial.transform import Rotation

from tracker.head.perspective import (
    Pinhole,
    Pose,
    fit_pose,
    pose_rows,
    rotation_of_vector,
    vector_of_rotation,
)

CAMERA = Pinhole.from_fov(640, 480, 52.0)


def test_focal_length_follows_from_the_field_of_view():
    # Half the height over the tangent of half the angle: 240 / tan 26 deg.
    assert CAMERA.focal_px == pytest.approx(240 / np.tan(np.radians(26.0)))
    top = CAMERA.project(np.array([0.0, -np.tan(np.radians(26.0)) * 500, 500.0]))
    assert top == pytest.approx([319.5, 239.5 - 240.0])


def test_rays_are_the_inverse_of_projecting():
    points = np.random.default_rng(1).uniform([-200, -200, 300], [200, 200, 900], (50, 3))
    rays = CAMERA.rays(CAMERA.project(points))
    assert np.allclose(rays * points[:, 2:], points)


@pytest.mark.parametrize("size", [0.0, 1e-9, 1e-5, 0.3, 2.0, 3.1])
def test_rotation_vectors_agree_with_scipy(size):
    rng = np.random.default_rng(3)
    for _ in range(20):
        axis = rng.normal(size=3)
        vector = size * axis / np.linalg.norm(axis)
        matrix = rotation_of_vector(vector)
        assert np.allclose(matrix, Rotation.from_rotvec(vector).as_matrix(), atol=1e-14)
        assert np.allclose(vector_of_rotation(matrix), vector, atol=1e-9)


def test_jacobian_is_the_derivative_of_the_projection():
    body = np.array([[30.0, -20.0, 15.0]])
    pose = Pose(rotation_of_vector(np.array([0.1, -0.4, 0.2])), np.array([20.0, -10.0, 600.0]))

    def seen(step):
        return CAMERA.project(pose.moved(step).apply(body)).ravel()

    exact = np.empty((2, 6))
    pose_rows((body @ pose.rotation.T)[0], pose.apply(body)[0], CAMERA.focal_px, exact)
    assert np.allclose(exact, approx_fprime(np.zeros(6), seen, 1e-6), rtol=1e-4, atol=1e-3)


def test_a_pose_is_found_from_points_with_a_few_gross_errors():
    rng = np.random.default_rng(5)
    body = rng.normal(size=(60, 3)) * 40
    truth = Pose(rotation_of_vector(np.array([0.2, -0.5, 0.1])), np.array([20.0, -10.0, 600.0]))
    seen = CAMERA.project(truth.apply(body))
    seen[::10] += 40.0
    found, _ = fit_pose(body, seen, CAMERA, Pose(np.eye(3), np.array([0.0, 0.0, 500.0])), rounds=60)
    turned = np.degrees(np.linalg.norm(vector_of_rotation(found.rotation @ truth.rotation.T)))
    assert turned < 1.0
    assert np.linalg.norm(found.position_mm - truth.position_mm) < 12.0
