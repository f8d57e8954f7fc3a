"""The rest frame from movements about known axes, and targets drawn on a screen."""

import numpy as np
import pytest

from calibration.axes import make_rest_frame, rest_axes
from calibration.placing import placed
from tracker.head.perspective import Pose, rotation_of_vector
from tracker.rotation import angles_from_matrix, matrix_from_angles
from tracker.session.stage import Step

ORIGIN_MM = np.array([20.0, -40.0, 600.0])
#: A camera that looks down by 10 degrees sees the patient's axes tilted.
TILT = rotation_of_vector(np.radians([10.0, 0.0, 0.0]))
TRUE_AXES = TILT @ -np.eye(3)
NECK_MM = TRUE_AXES @ np.array([5.0, -70.0, -95.0])
SWEEP = np.sin(np.linspace(0, 2 * np.pi, 60))


def pose(yaw_deg, pitch_deg):
    rotation = TRUE_AXES @ matrix_from_angles(yaw_deg, pitch_deg) @ TRUE_AXES.T
    return Pose(rotation, ORIGIN_MM + NECK_MM - rotation @ NECK_MM)


TURN = [pose(24 * s, 0.0) for s in SWEEP]
NOD = [pose(0.0, 13 * s) for s in SWEEP]
STILL = [pose(0.0, 0.0)] * 10


def test_axes_and_neck_are_recovered_under_a_tilted_camera():
    frame = make_rest_frame(STILL, TURN, NOD)
    assert np.allclose(frame.axes, TRUE_AXES, atol=1e-6)
    # The usual place is a weak prior: a millimetre at most.
    assert np.abs(frame.neck_mm - NECK_MM).max() < 1.5


@pytest.mark.parametrize(("yaw", "pitch"), [(20.0, 0.0), (-15.0, 8.0), (0.0, -12.0)])
def test_angles_do_not_depend_on_the_cameras_tilt(yaw, pitch):
    frame = make_rest_frame(STILL, TURN, NOD)
    read = angles_from_matrix(frame.rotation(pose(yaw, pitch)))
    assert np.allclose(read, [yaw, pitch, 0.0], atol=1e-4)


def test_a_head_shake_does_not_move_the_neck_point_but_moves_the_eyes():
    frame = make_rest_frame(STILL, TURN, NOD)
    turned = pose(20.0, 0.0)
    assert np.abs(frame.neck_point_mm(turned)).max() < 1.0
    # 95 mm behind the eyes: 95 sin 20 = 32 mm.
    assert frame.head_mm(turned)[0] == pytest.approx(95 * np.sin(np.radians(20)), abs=2.0)


def test_without_movement_the_cameras_own_axes_serve():
    still = [Pose(np.eye(3), ORIGIN_MM)] * 30
    axes = rest_axes([p.rotation for p in still], [], np.array([0.0, 0.0, 600.0]))
    assert np.allclose(axes, -np.eye(3))


def test_forward_points_at_the_centre_target_where_its_place_is_known():
    centre = np.array([0.0, 120.0, 0.0])
    frame = make_rest_frame(STILL, TURN, NOD, centre)
    x, _, z = frame.axes.T @ (centre - ORIGIN_MM)
    assert abs(x) < 1e-6
    assert z > 0


def test_a_target_drawn_to_the_right_lies_to_the_patients_right():
    frame = make_rest_frame(
        [Pose(np.eye(3), np.array([0.0, 0.0, 600.0]))], TURN, NOD, np.array([0.0, 120.0, 0.0])
    )
    step = Step(from_s=0, to_s=1, step="look", target_mm=(0, 0, 1), screen_mm=[80.0, -120.0])
    x, y, z = placed(step, frame).target_mm
    assert x == pytest.approx(80.0, abs=1e-6)
    assert y < 0
    assert 550 < z < 650


def test_the_middle_of_a_wavering_head_is_its_rest():
    waver = [pose(1.0 + 0.4 * np.sin(k), -0.6 + 0.3 * np.cos(1.7 * k)) for k in range(200)]
    # Somebody who helped one glance with the head.
    frame = make_rest_frame([*waver, *[pose(8.0, 0.0)] * 30], TURN, NOD)
    assert np.allclose(angles_from_matrix(frame.rotation(pose(1.0, -0.6))), 0.0, atol=0.05)
    assert np.allclose(frame.head_mm(pose(1.0, -0.6)), 0.0, atol=0.1)


WANDERING = [pose(24 * s, 1.0 * s) for s in SWEEP]
EYE_LINE = TRUE_AXES[:, 0]


def test_a_turn_that_nods_along_tilts_the_axes_less_when_nod_and_eyes_speak_for_upright():
    def tilt_deg(axes):
        return abs(
            np.degrees(np.arctan2(axes[:, 1] @ TRUE_AXES[:, 0], axes[:, 1] @ TRUE_AXES[:, 1]))
        )

    alone = make_rest_frame(STILL, WANDERING, []).axes
    helped = make_rest_frame(STILL, WANDERING, NOD, None, EYE_LINE).axes
    assert tilt_deg(alone) > 2.0
    assert tilt_deg(helped) < 0.6 * tilt_deg(alone)


def test_eyes_that_lie_askew_do_not_bend_the_axis_of_the_turn():
    askew = rotation_of_vector(np.radians(6.0) * TRUE_AXES[:, 2]) @ EYE_LINE
    frame = make_rest_frame(STILL, TURN, NOD, None, askew)
    assert np.allclose(frame.axes, TRUE_AXES, atol=1e-6)
