"""Facing of a face in one picture: against rotations of scipy, on the generic face."""

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from tracker.head.facing import facing_of_landmarks, towards
from tracker.head.perspective import Pinhole
from tracker.head.shape import LEFT_EYE_CORNERS, NOSE_BASE, RIGHT_EYE_CORNERS, generic_shape
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm

SHAPE = generic_shape(canonical_face_vertices_cm(), canonical_face_triangles())


def off_deg(found, true):
    return np.degrees(Rotation.from_matrix(found @ true.T).magnitude())


@pytest.mark.parametrize("angles", [(0, 0, 0), (35, 0, 0), (0, -25, 0), (-20, 15, 10)])
def test_a_turned_face_is_read_back_whatever_its_size_and_place(angles):
    true = Rotation.from_euler("yxz", angles, degrees=True).as_matrix()
    for size, place in ((1.7, [300.0, 200.0, 0.0]), (0.4, [20.0, 900.0, 50.0])):
        seen = size * SHAPE.points_mm @ true.T + place
        assert off_deg(facing_of_landmarks(SHAPE, seen[:, :2], seen[:, 2]), true) < 1e-6


def test_an_open_mouth_changes_nothing():
    open_mouth = SHAPE.points_mm.copy()
    open_mouth[SHAPE.points_mm[:, 1] >= SHAPE.points_mm[NOSE_BASE, 1], 1] += 15.0
    true = Rotation.from_euler("yxz", (20, -10, 5), degrees=True).as_matrix()
    seen = open_mouth @ true.T
    assert off_deg(facing_of_landmarks(SHAPE, seen[:, :2], seen[:, 2]), true) < 1e-6


@pytest.mark.parametrize("place", [(0.0, 0.0), (150.0, 0.0), (-120.0, 90.0)])
def test_a_face_aside_that_looks_along_its_line_of_sight_is_turned_with_it(place):
    camera = Pinhole.from_fov(640, 480, 50.0)
    eyes = np.array([*place, 500.0])
    points = np.zeros((468, 2))
    corners = [*RIGHT_EYE_CORNERS, *LEFT_EYE_CORNERS]
    points[corners] = camera.project(eyes[None])[0]
    turned = towards(np.eye(3), points, camera)
    assert np.allclose(turned @ [0.0, 0.0, 1.0], eyes / np.linalg.norm(eyes))
