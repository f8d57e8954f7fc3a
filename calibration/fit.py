"""The whole fit of a set-up: face, rest frame, neck, lids, gaze."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from calibration.axes import make_rest_frame
from calibration.check import MOVING
from calibration.face_surface import lay_patches
from calibration.face_template import View, own_template
from calibration.gaze_fit import SETTLE_S, LabelledEyes, fit_gaze, just_turned
from calibration.parts import is_held_out
from calibration.placing import on_screen, placed
from tracker.errors import InputError
from tracker.eyes.in_use import EYES, eye_in_use
from tracker.eyes.openness import GENERIC_LIDS, LidRange, aperture
from tracker.eyes.patches import cornered_patches, rectified_patches
from tracker.head.alignment import align
from tracker.head.facing import facing_of_landmarks, towards
from tracker.head.perspective import Array, Pinhole, Pose
from tracker.head.shape import FaceShape, pose_of_landmarks
from tracker.head.template import Template
from tracker.profile import Profile, RestFrame
from tracker.rotation import angles_from_direction, angles_from_matrix
from tracker.session.stage import Step
from tracker.vision.observer import Observation

#: Every how many-th frame axes, neck and gaze are fitted on: neighbours say the same (this
#: project's own choice).
THINNING = 2
#: The steps in which the head was asked to be still, to turn, and to nod.
_MOVES = (("rest", "look"), ("turn_slowly",), ("nod_slowly",))
#: A set-up with fewer frames of a face than this can't be fitted (this project's own choice: a
#: third of a second at 25 pictures a second).
MIN_FACE_FRAMES = 8


@dataclass(frozen=True, slots=True)
class _Seen:
    """One set-up frame with a face: what was seen, in which step, and its pose from rest."""

    observation: Observation
    step: Step
    number: int
    pose: Pose


def fit_profile(
    observations: Sequence[Observation],
    steps: Sequence[Step],
    shape: FaceShape,
    vertical_fov_deg: float | None = None,
) -> tuple[Profile, list[Step]]:
    """Profile of a person from the observations of a set-up, and its steps.

    Where a step names the eye in use (``use_eye``), the gaze and the lids are read by that
    one alone. A step whose ``screen_mm`` says where its target was drawn (to the right of
    and above the camera, in the plane of the screen) comes back with the target's
    place in the rest frame.

    Parameters
    ----------
    observations
        All observations of the set-up, in the order of time.
    steps
        Its steps, with targets in the rest frame.
    shape
        The generic face.
    vertical_fov_deg
        Field of view of the camera where it is known.

    Raises
    ------
    InputError
        When the face was not seen for long enough to measure anything.
    """
    faces = _with_faces(observations, steps)
    first = faces[0][0]
    camera = Pinhole.from_fov(first.width_px, first.height_px, vertical_fov_deg)
    rest = _rest_observation(faces)
    rest_pose = _first_pose(rest, shape, camera)
    template, seen = _followed(faces, rest, rest_pose, shape, camera)
    # Body axes are the camera's at rest, so the face comes in as it was held then.
    eyes_mm = shape.eyes_mm @ rest_pose.rotation.T
    frame = _rest_frame(seen, steps, rest_pose, eyes_mm)
    laid = [placed(s, frame) for s in steps]
    seen = [replace(s, step=laid[s.number]) for s in seen]
    own_shape = FaceShape(shape.points_mm @ rest_pose.rotation.T, shape.triangles)
    eyes = eye_in_use(steps)
    lids = _lid_range(seen, EYES[eyes])
    profile = Profile(
        first.width_px,
        first.height_px,
        vertical_fov_deg,
        camera,
        own_shape,
        template,
        eyes_mm,
        frame,
        lids,
        fit_gaze(_label(seen, frame, eyes_mm, camera, lids, EYES[eyes])),
        eyes=eyes,
    )
    return profile, laid


def _rest_frame(
    seen: Sequence[_Seen], steps: Sequence[Step], rest_pose: Pose, eyes_mm: Array
) -> RestFrame:
    """Rest frame of the aligned frames; the rest picture's own pose stands in without any still."""
    still, turn, nod = ([s.pose for s in seen if s.step.step in names] for names in _MOVES)
    ahead = next((p for s in steps if (p := on_screen(s)) is not None), None)
    still = still or [Pose(np.eye(3), rest_pose.position_mm)]
    return make_rest_frame(still, turn, nod, ahead, eyes_mm[0] - eyes_mm[1])


def _points(observation: Observation) -> Array:
    assert observation.face is not None
    return observation.face.points_px


def _with_faces(
    observations: Sequence[Observation], steps: Sequence[Step]
) -> list[tuple[Observation, Step, int]]:
    """Observations with a face in a step of the set-up; an InputError where they are too few."""
    out = []
    for o in observations:
        for number, step in enumerate(steps):
            if step.from_s <= o.time_s < step.to_s and o.face is not None:
                out.append((o, step, number))
    if len(out) < MIN_FACE_FRAMES:
        raise InputError("the face was not seen for long enough in the set-up; do it again")
    return out


def _rest_observation(faces: Sequence[tuple[Observation, Step, int]]) -> Observation:
    """The frame of the rest step whose face lies nearest to the usual place, eyes open."""
    rest = [o for o, step, _ in faces if step.step == "rest"] or [o for o, _, _ in faces[:30]]
    points = np.stack([o.face.points_px for o in rest if o.face is not None])
    usual = np.median(points, axis=0)
    off = np.sqrt(((points - usual) ** 2).sum(axis=-1)).mean(axis=1)
    return rest[int(np.argmin(off))]


def _first_pose(rest: Observation, shape: FaceShape, camera: Pinhole) -> Pose:
    """Pose at rest of a face of which nothing else is known.

    Turned as the landmarks' depth says: on photos of people that is nearer to the
    truth in pitch than a perspective fit without depth (3.1 degrees against 3.9).
    """
    assert rest.face is not None
    pose, _ = pose_of_landmarks(shape, _points(rest), camera)
    facing = facing_of_landmarks(shape, _points(rest), rest.face.depth_px)
    return replace(pose, rotation=towards(facing, _points(rest), camera))


def _start_poses(
    faces: Sequence[tuple[Observation, Step, int]],
    shape: FaceShape,
    camera: Pinhole,
    rest_pose: Pose,
) -> list[_Seen]:
    """Poses from rest, from the landmarks alone."""
    out = []
    for o, step, number in faces:
        assert o.face is not None
        pose, _ = pose_of_landmarks(shape, o.face.points_px, camera, rest_pose)
        from_rest = replace(pose, rotation=pose.rotation @ rest_pose.rotation.T)
        out.append(_Seen(o, step, number, from_rest))
    return out


def _followed(
    faces: Sequence[tuple[Observation, Step, int]],
    rest: Observation,
    rest_pose: Pose,
    shape: FaceShape,
    camera: Pinhole,
) -> tuple[Template, list[_Seen]]:
    """The person's own template, and the poses that it gives to some of the frames."""
    seen = _start_poses(faces, shape, camera, rest_pose)
    assert rest.crop is not None
    surface = lay_patches(shape, rest_pose, _points(rest), rest.crop)
    views = [
        View(s.observation.crop, s.pose, s.step.step in MOVING)
        for s in seen
        if s.observation.crop is not None
    ]
    template = own_template(surface, rest.crop, camera, rest_pose.position_mm, views)
    return template, [_aligned(s, template, camera) for s in seen[::THINNING]]


def _aligned(seen: _Seen, template: Template, camera: Pinhole) -> _Seen:
    assert seen.observation.crop is not None
    # Done once, so it may take all the steps that it wants.
    found = align(template, seen.observation.crop, camera, seen.pose, rounds=8)
    return replace(seen, pose=found.pose)


def _lid_range(seen: Sequence[_Seen], rows: Sequence[int]) -> LidRange:
    """Open lids of this person; shut lids stay generic until they have been seen shut."""
    still = [
        aperture(s.observation.face.points_px, rows)
        for s in seen
        if s.observation.face is not None and s.step.step in ("rest", "look")
    ]
    if len(still) < 10:
        return GENERIC_LIDS
    return LidRange(float(np.percentile(still, 70)), GENERIC_LIDS.shut_ratio)


def _label(
    seen: Sequence[_Seen],
    frame: RestFrame,
    eyes_mm: Array,
    camera: Pinhole,
    lids: LidRange,
    rows: Sequence[int],
) -> LabelledEyes:
    """Patches and geometric labels of the frames in which the eyes should be on the target.

    ``rows`` are the eyes in use. One eye too is labelled with the direction from the
    mid-point of both: what it reads is then that direction, for targets about as far.
    """
    rectified, cornered, angles, group, moving, turned = [], [], [], [], [], []
    turns_deg = np.array([angles_from_matrix(frame.rotation(s.pose))[:2] for s in seen])
    just_deg = just_turned(np.array([s.observation.time_s for s in seen]), turns_deg)
    for s, just in zip(seen, just_deg, strict=True):
        target = s.step.target_at(s.observation.time_s)
        settled = s.observation.time_s - s.step.from_s > SETTLE_S or s.number == 0
        face, crop = s.observation.face, s.observation.crop
        if target is None or not settled or face is None or crop is None:
            continue
        if is_held_out(s.step):
            continue
        if aperture(face.points_px, rows) < 0.5 * (lids.open_ratio + lids.shut_ratio):
            continue
        at_mm = (s.pose.apply(eyes_mm) - frame.origin_mm) @ frame.axes
        if len(rows) == 1:
            # One eye stands for the line of sight, which starts from between both.
            at_mm = np.tile(frame.head_mm(s.pose), (2, 1))
        in_head = (np.asarray(target) - at_mm[list(rows)]) @ frame.rotation(s.pose)
        angles.append([angles_from_direction(d) for d in in_head])
        rectified.append(rectified_patches(crop, camera, s.pose, eyes_mm)[list(rows)])
        cornered.append(cornered_patches(crop, face.points_px)[list(rows)])
        group.append(s.number)
        moving.append(s.step.step in MOVING)
        turned.append(just if moving[-1] else np.zeros(2))
    if not angles:
        empty, none = np.zeros((0, 2, 1)), np.zeros((0, 2))
        labels = np.zeros((0, 2, 2))
        return LabelledEyes(empty, empty, labels, np.zeros(0, int), np.zeros(0, bool), none)
    return LabelledEyes(
        np.stack(rectified),
        np.stack(cornered),
        np.array(angles),
        np.array(group),
        np.array(moving),
        np.array(turned),
    )
