"""Truth against geometry that is worked out by hand."""

from __future__ import annotations

from math import atan2, cos, degrees, hypot, radians, sin

import numpy as np
import pytest

from sample_clips.angles import turned, yaw_pitch
from sample_clips.heads import Head, make_head
from sample_clips.people import HEADS
from tests.sample_clips.scenes import attitude_to


def test_axes_and_signs_of_the_rest_frame() -> None:
    matrix = turned(20, 10, 5)
    assert matrix[:, 2] == pytest.approx([0.3368, 0.1736, 0.9254], abs=1e-4)
    assert matrix[:, 0] == pytest.approx([0.9413, -0.0858, -0.3265], abs=1e-4)


@pytest.mark.parametrize("name", sorted(HEADS))
def test_eyes_are_a_pupil_distance_apart_around_the_origin(name: str) -> None:
    eyes = make_head(name).eyes_mm
    assert eyes.mean(axis=0) == pytest.approx([0, 0, 0], abs=1e-9)
    assert np.linalg.norm(eyes[0] - eyes[1]) == pytest.approx(63.0, abs=1e-6)
    assert eyes[0, 0] > 0 > eyes[1, 0]  # the right eye first


def test_head_of_another_pupil_distance_is_another_size() -> None:
    eyes = Head(HEADS["bo"], pupils_mm=58.0).eyes_mm
    assert np.linalg.norm(eyes[0] - eyes[1]) == pytest.approx(58.0, abs=1e-6)


def test_a_turn_about_the_neck_moves_the_eyes() -> None:
    head = make_head("anna")
    middle = head.in_space(head.eyes_mm, attitude_to(head, (0, 0, 500), yaw=20)).mean(axis=0)
    # The neck point is 100 mm behind the eyes.
    assert middle == pytest.approx([100 * sin(radians(20)), 0, 100 * cos(radians(20)) - 100])


@pytest.mark.parametrize("yaw_deg", [-20.0, 20.0])
def test_near_target_needs_an_angle_of_its_own_for_each_eye(yaw_deg: float) -> None:
    head, distance = make_head("anna"), 500.0
    attitude = attitude_to(head, (0, 0, distance), yaw=yaw_deg)
    y, (right, _) = radians(yaw_deg), head.eyes_mm
    for x_at_rest, look in zip((right[0], -right[0]), attitude.look, strict=True):
        x = x_at_rest * cos(y) + 100 * sin(y)
        z = -x_at_rest * sin(y) + 100 * (cos(y) - 1)
        by_hand = degrees(atan2(-x, distance - z)) - yaw_deg
        # Both eyes lie a hair off the horizontal plane on a head that is not symmetric.
        assert yaw_pitch(look)[0] == pytest.approx(by_hand, abs=0.05)


def test_vergence_follows_distance() -> None:
    head = make_head("anna")
    for distance in (300.0, 600.0):
        right, left = attitude_to(head, (0, 0, distance)).look
        angle = degrees(np.arccos(right @ left))
        assert angle == pytest.approx(2 * degrees(atan2(31.5, distance)), abs=0.02)
        assert yaw_pitch(right)[0] < 0 < yaw_pitch(left)[0]  # both towards the nose


def test_shut_lids_cover_the_pupil_and_open_ones_do_not() -> None:
    head = make_head("anna")

    def covered(shut: float) -> bool:
        face, _ = head.posed(attitude_to(head, (0, 0, 600), shut=shut))
        centre = head.balls_mm[0]
        across = np.hypot(face[:, 0] - centre[0], face[:, 1] - centre[1])
        # Skin in front of the ball over the pupil's place.
        return bool(np.any((across < 2.5) & (face[:, 2] > centre[2] + 0.5 * head.ball_mm)))

    assert covered(1.0)
    assert not covered(0.0)


@pytest.mark.parametrize("name", sorted(HEADS))
def test_no_skin_lies_inside_the_eyes(name: str) -> None:
    head = make_head(name)
    for point, shut in (((0, -300, 600), 0.0), ((0, 150, 600), 0.0), ((0, 0, 600), 1.0)):
        face, _ = head.posed(attitude_to(head, point, shut=shut))
        for centre in head.balls_mm:
            away = face - centre
            front = away[:, 2] > -2.0
            assert np.linalg.norm(away[front], axis=1).min() >= head.ball_mm + 0.59


def test_shoulders_stay_when_the_head_turns() -> None:
    head = make_head("dirk")
    face, moved = head.posed(attitude_to(head, (0, 0, 600), yaw=30))
    low = face[:, 1] < -195
    assert low.sum() > 50
    assert np.abs(moved[low] - face[low]).max() < 1e-9
    nose = np.argmax(np.where(face[:, 1] > -60, face[:, 2], -np.inf))
    assert hypot(*(moved[nose] - face[nose])[[0, 2]]) > 50
