"""Signs on one real face: the public-domain portrait that scikit-image carries.

``skimage.data.astronaut`` is a NASA photo in the public domain; it is read from
the installed package and lies nowhere in this project. What is true of it was
read off the picture by eye; turns are made exactly, by turning the camera: a
pinhole camera that turns about its centre sees the same picture through the
homography K R K^-1 (Hartley & Zisserman, Multiple View Geometry, 2nd ed., 8.4).
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation
from skimage import data

from tracker.head.perspective import Pinhole
from tracker.head.shape import generic_shape, pose_of_landmarks
from tracker.rotation import angles_from_matrix, matrix_from_angles
from tracker.vision.landmarks import LandmarkFinder
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm
from tracker.vision.opencv import cv2

CAMERA = Pinhole.from_fov(512, 512, 52.0)
#: The camera's view of the patient's right, up and forward when it faces them.
FACING = -np.eye(3)


@pytest.fixture(scope="module")
def photo():
    return np.ascontiguousarray(data.astronaut()[:, :, ::-1])


def look(picture):
    """Yaw, pitch, roll and place (right, up, forward) of the face, and its landmarks."""
    with LandmarkFinder() as finder:
        (face,) = finder.find(np.ascontiguousarray(picture), 0.1)
    shape = generic_shape(canonical_face_vertices_cm(), canonical_face_triangles())
    pose, _ = pose_of_landmarks(shape, face.points_px, CAMERA)
    angles = angles_from_matrix(FACING.T @ pose.rotation @ FACING)
    return angles, FACING.T @ pose.position_mm, face.points_px


def seen_after_turning(photo, rotation):
    """The picture after the world has turned by ``rotation`` about the camera."""
    k = np.array(
        [
            [CAMERA.focal_px, 0, CAMERA.centre_x_px],
            [0, CAMERA.focal_px, CAMERA.centre_y_px],
            [0, 0, 1],
        ]
    )
    return cv2.warpPerspective(
        photo, k @ rotation @ np.linalg.inv(k), (512, 512), borderMode=cv2.BORDER_REPLICATE
    )


def test_the_patients_right_is_the_pictures_left(photo):
    _, place, points = look(photo)
    # By eye: irises near (203, 101) and (246, 104), so the face is left of the middle.
    assert points[468] == pytest.approx([203, 101], abs=4)
    assert points[473] == pytest.approx([246, 104], abs=4)
    assert place[0] > 20


def test_the_lower_ear_gives_rolls_sign(photo):
    # Her left eye lies 3 px lower over 43 px: the left ear is down by 4 degrees.
    (_, _, roll), _, _ = look(photo)
    assert roll == pytest.approx(-np.degrees(np.arctan2(3, 43)), abs=2.5)


def test_a_mirror_turns_yaw_roll_and_side_round(photo):
    angles, place, _ = look(photo)
    mirrored, other, _ = look(photo[:, ::-1])
    assert mirrored * [-1, 1, -1] == pytest.approx(angles, abs=2.5)
    assert other[0] == pytest.approx(-place[0], abs=5)


@pytest.mark.parametrize(
    ("axis", "index", "sign"),
    [
        # Right-handed about the picture's down: the face turns to the picture's left.
        ([0, 1, 0], 0, 1),
        # About the picture's left: the face turns up.
        ([-1, 0, 0], 1, 1),
        # About the line of sight: the picture's right, her left ear, goes down.
        ([0, 0, 1], 2, -1),
    ],
    ids=["yaw", "pitch", "roll"],
)
@pytest.mark.parametrize("by_deg", [-10.0, 10.0])
def test_a_turn_of_the_camera_is_read_as_such(photo, axis, index, sign, by_deg):
    before, _, _ = look(photo)
    rotation = Rotation.from_rotvec(np.radians(by_deg) * np.array(axis)).as_matrix()
    after, _, _ = look(seen_after_turning(photo, rotation))
    turn = FACING.T @ rotation @ FACING
    expected = angles_from_matrix(turn @ matrix_from_angles(*before))
    assert np.sign(after[index] - before[index]) == np.sign(sign * by_deg)
    # No set-up: the library's landmarks alone. This is a test of signs and axes, so
    # the limit is half the turn: a wrong axis or sign is off by 10 or 20 degrees.
    assert after == pytest.approx(expected, abs=5.0)
