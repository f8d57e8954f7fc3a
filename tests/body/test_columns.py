"""Shoulders and wrists from pixels: exact geometry of made-up landmarks (logic only)."""

from __future__ import annotations

from math import isnan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tracker.body.columns import NAMES, body_columns, on_plane
from tracker.body.points import EYES, SHOULDERS, WRISTS, BodyPoints, belongs_to
from tracker.head.perspective import Pinhole, Pose
from tracker.profile import RestFrame
from tracker.rotation import matrix_from_angles
from tracker.sample import TRACE_COLUMNS

CAMERA = Pinhole.from_fov(640, 480, 52.0)
#: Right, up and forward of a person who faces a level camera.
FACING = -np.eye(3)
NECK = np.array([0.0, -70.0, -100.0])
MM = st.floats(-300.0, 300.0)


def rest_at(distance_mm: float, axes: np.ndarray = FACING) -> RestFrame:
    return RestFrame(axes, np.eye(3), np.array([0.0, 0.0, distance_mm]), axes @ NECK)


def body_of(places_px: dict[int, np.ndarray], visible: float = 1.0) -> BodyPoints:
    points = np.full((33, 2), 200.0)
    for row, place in places_px.items():
        points[row] = place
    return BodyPoints(points, np.full(33, visible), 640, 480)


def in_camera(rest: RestFrame, place_mm: np.ndarray, shift_mm: np.ndarray) -> np.ndarray:
    """A place of the rest frame, from the eyes at rest, in camera coordinates."""
    return rest.origin_mm + rest.axes @ (place_mm + shift_mm)


@settings(max_examples=100, deadline=None)
@given(MM, MM, MM, MM, st.floats(500, 1500), MM, st.floats(-15, 15))
def test_places_on_the_planes_come_back(
    x: float, y: float, aside: float, up: float, away: float, nearer: float, tilt_deg: float
) -> None:
    """Wherever the person has gone, and however the camera is tilted."""
    axes = matrix_from_angles(0.0, tilt_deg, 0.0).T @ FACING
    rest, shift = rest_at(away, axes), np.array([aside, up, 0.4 * nearer])
    pose = Pose(np.eye(3), in_camera(rest, np.zeros(3), shift))
    shoulder = CAMERA.project(in_camera(rest, NECK + np.array([x, y, 0.0]), shift))
    wrist = CAMERA.project(in_camera(rest, np.array([y, x, 0.0]), shift))
    body = BodyPoints(
        np.tile(shoulder, (33, 1)), np.ones(33), 10**6, 10**6
    )  # as large as need be: everything is in the picture that lies right and below
    body.points_px[list(WRISTS)] = wrist
    found = body_columns(body, CAMERA, rest, pose)
    if (shoulder >= 0).all():
        assert found["shoulder_right_x_mm"] == pytest.approx(x, abs=1e-6)
        assert found["shoulder_left_y_mm"] == pytest.approx(y, abs=1e-6)
    if (wrist >= 0).all():
        assert found["wrist_left_x_mm"] == pytest.approx(y, abs=1e-6)
        assert found["wrist_right_y_mm"] == pytest.approx(x, abs=1e-6)


def test_a_nod_moves_no_shoulder() -> None:
    rest = rest_at(700.0)
    place = NECK + np.array([150.0, -80.0, 0.0])
    body = body_of({row: CAMERA.project(in_camera(rest, place, np.zeros(3))) for row in SHOULDERS})
    for pitch in (-25.0, 0.0, 25.0):
        turned = matrix_from_angles(0.0, pitch, 0.0)
        # The head turns about the neck, so the eyes move and the neck does not.
        eyes = NECK - turned @ NECK
        rotation = FACING @ turned @ FACING.T
        found = body_columns(body, CAMERA, rest, Pose(rotation, in_camera(rest, eyes, np.zeros(3))))
        assert found["shoulder_right_x_mm"] == pytest.approx(150.0, abs=1e-6)
        assert found["shoulder_right_y_mm"] == pytest.approx(-80.0, abs=1e-6)


def test_what_is_not_seen_is_empty_and_not_zero() -> None:
    rest = rest_at(700.0)
    pose = Pose(np.eye(3), rest.origin_mm)
    unsure = body_columns(body_of({}, visible=0.3), CAMERA, rest, pose)
    assert unsure.pop("body_seen") == 0.3
    assert all(isnan(v) for v in unsure.values())
    outside = body_of({12: np.array([-5.0, 200.0]), 16: np.array([700.0, 200.0])})
    found = body_columns(outside, CAMERA, rest, pose)
    assert isnan(found["shoulder_right_x_mm"]) and isnan(found["wrist_right_y_mm"])
    assert not isnan(found["shoulder_left_x_mm"])


def test_a_hand_below_the_picture_is_no_higher_than_its_edge() -> None:
    rest = rest_at(700.0)
    pose = Pose(np.eye(3), rest.origin_mm)
    found = body_columns(body_of({16: np.array([300.0, 600.0])}, visible=0.3), CAMERA, rest, pose)
    edge = on_plane(np.array([300.0, 479.0]), CAMERA, FACING, rest.origin_mm)[1]
    assert isnan(found["wrist_right_x_mm"]) and found["wrist_right_y_mm"] == pytest.approx(edge)
    assert edge == pytest.approx(-239.5 / CAMERA.focal_px * 700.0)


def test_a_plane_that_is_never_met_gives_nothing() -> None:
    along = np.array([[0.0, 0, 1], [0, -1.0, 0], [1.0, 0, 0]])  # forward across the line of sight
    middle = np.array([CAMERA.centre_x_px, CAMERA.centre_y_px])
    assert all(isnan(v) for v in on_plane(middle, CAMERA, along, np.array([50.0, 0, 700.0])))
    assert all(isnan(v) for v in on_plane(middle, CAMERA, FACING, np.array([0.0, 0, -700.0])))


def test_only_the_body_that_has_the_patients_face_is_theirs() -> None:
    body = body_of(
        {
            EYES[0]: np.array([310.0, 100.0]),
            EYES[1]: np.array([290.0, 100.0]),
            SHOULDERS[0]: np.array([220.0, 200.0]),
            SHOULDERS[1]: np.array([380.0, 200.0]),
        }
    )
    assert belongs_to(body, np.array([303.0, 103.0]), 80.0)
    assert not belongs_to(body, np.array([345.0, 103.0]), 80.0)  # the neighbour's face
    assert not belongs_to(body, np.array([300.0, 100.0]), 20.0)  # a far face, near shoulders
    assert not belongs_to(body, np.array([300.0, 100.0]), 300.0)


def test_the_columns_are_those_of_a_trace() -> None:
    assert set(NAMES) < set(TRACE_COLUMNS)
