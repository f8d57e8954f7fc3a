"""The body of a patient, found by the real model: a real picture, and rendered bodies.

The picture is ``skimage.data.astronaut`` (public domain, NASA), read from the installed
package. The rendered bodies are not real people: what they show is that pixels, planes,
counter and words fit together, and about how far the landmarks follow.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
import pytest
from skimage import data

from sample_clips.bodies import HANGING, Arm, Body, make_body, mirrored
from sample_clips.body_score import READY, arms_at
from sample_clips.heads import Attitude
from sample_clips.scenario import Movement
from sample_clips.scene import CameraPlace, Scene
from tests.body.test_shoulders import judged
from tracker.body.columns import body_columns
from tracker.body.points import SHOULDERS, BodyPoints
from tracker.body.raised import raised_side
from tracker.exercises.near_hand import forearm_rise_mm
from tracker.frame import Frame
from tracker.head.perspective import Pinhole, Pose
from tracker.profile import RestFrame
from tracker.sample import Sample
from tracker.vision.body import BodyFinder
from tracker.vision.landmarks import Face, LandmarkFinder
from tracker.vision.observer import Observer
from tracker.vision.opencv import cv2

FACING = -np.eye(3)
FOV_DEG, DISTANCE_MM = 52.0, 1000.0
CAMERA = Pinhole.from_fov(640, 480, FOV_DEG)
PLACE = CameraPlace(640, 480, FOV_DEG, (0.0, 0.0, DISTANCE_MM), 0.0)


@pytest.fixture(scope="module")
def faces() -> Iterator[LandmarkFinder]:
    with LandmarkFinder(stills=True) as finder:
        yield finder


@pytest.fixture
def finder() -> Iterator[BodyFinder]:
    with BodyFinder() as made:
        yield made


def face_in(faces: LandmarkFinder, picture: np.ndarray) -> Face:
    (found,) = faces.find(picture, 0.0)
    return found


def found_in(finder: BodyFinder, faces: LandmarkFinder, picture: np.ndarray) -> BodyPoints:
    body = finder.find(picture, face_in(faces, picture), 0.0)
    assert body is not None
    return body


def moved(photo: np.ndarray, scale: float, right_px: float, down_px: float) -> np.ndarray:
    how = np.array([[scale, 0, right_px], [0, scale, down_px]], np.float32)
    return cv2.warpAffine(photo, how, (640, 640), borderMode=cv2.BORDER_REPLICATE)


def test_shoulders_of_a_real_picture_move_with_it(faces: LandmarkFinder) -> None:
    photo = np.ascontiguousarray(data.astronaut()[:, :, ::-1])
    places = []
    for scale, right_px, down_px in ((1.0, 0.0, 0.0), (1.0, 60.0, 40.0), (0.8, 30.0, 20.0)):
        with BodyFinder() as finder:
            body = found_in(finder, faces, moved(photo, scale, right_px, down_px))
        assert all(body.visible[row] > 0.9 for row in SHOULDERS)
        places.append((body.points_px[list(SHOULDERS)] - [right_px, down_px]) / scale)
    right, left = places[0]
    # By eye her shoulders are near (100, 215) and (300, 235); the suit's ring draws them in.
    assert right == pytest.approx([110, 200], abs=40) and left == pytest.approx([295, 230], abs=30)
    for other in places[1:]:
        assert other == pytest.approx(places[0], abs=25)


def test_anothers_face_has_no_body(finder: BodyFinder, faces: LandmarkFinder) -> None:
    photo = moved(np.ascontiguousarray(data.astronaut()[:, :, ::-1]), 1.0, 0.0, 0.0)
    face = face_in(faces, photo)
    beside = Face(face.points_px + np.array([face.height_px, 0.0]), face.depth_px, face.blink)
    assert finder.find(photo, beside, 0.0) is None
    assert finder.find(photo, None, 0.1) is None


# --- rendered bodies -------------------------------------------------------------------


def standing(body: Body, arms: Any, pitch_deg: float = 0.0, right_mm: float = 0.0) -> Attitude:
    ahead = np.array([[0.0, -0.05, 1.0]] * 2) / np.hypot(1.0, 0.05)
    return Attitude(0.0, pitch_deg, 0.0, np.array([right_mm, 0.0, 0.0]), ahead, arms=arms)


def true_face(
    body: Body, attitude: Attitude, place: CameraPlace = PLACE, camera: Pinhole = CAMERA
) -> Face:
    """Where the face is, and its usual 150 mm of height; nothing else of it is looked at."""
    eyes = body.in_space(body.eyes_mm.mean(axis=0)[None], attitude)[0]
    seen = place.see(eyes[None])[0]
    scale = camera.focal_px / seen[2]
    points = np.tile(camera.project(seen), (478, 1))
    points[[10, 152], 1] += np.array([-60.0, 90.0]) * scale
    return Face(points, np.zeros(478), (0.0, 0.0))


def drawn(scene: Scene, rng: np.random.Generator, *people: tuple[Body, Attitude]) -> np.ndarray:
    lit = scene.draw(people)
    return np.clip(lit + rng.normal(0.0, 2.0, lit.shape), 0, 255).astype(np.uint8)


def filmed(
    move: Movement,
    seconds_each: float,
    pitch: Any = lambda _: 0.0,
    name: str = "anna",
) -> tuple[list[Sample], list[np.ndarray]]:
    """A rendered movement at 10 Hz through the real model; the head's pose is the true one.

    Gives the samples, and the true heights of the right and left shoulder and wrist.
    """
    body, rng = make_body(name), np.random.default_rng(2)
    scene = Scene(PLACE, (0.3, 0.6, 0.75), 1)
    rest = RestFrame(FACING, np.eye(3), np.array([0.0, 0.0, DISTANCE_MM]), FACING @ body.neck_mm)
    cycles = [(0.6 + k * seconds_each, seconds_each, 1.0) for k in range(move.repetitions)]
    samples, truth = [], []
    with BodyFinder() as finder:
        for t in np.arange(0.0, cycles[-1][0] + seconds_each + 0.6, 0.1):
            attitude = standing(body, arms_at(float(t), move, cycles, 0.0), float(pitch(t)))
            picture = drawn(scene, rng, (body, attitude))
            found = finder.find(picture, true_face(body, attitude), float(t))
            eyes = body.in_space(np.zeros((1, 3)), attitude)[0]
            pose = Pose(FACING @ attitude.rotation @ FACING.T, rest.origin_mm + FACING @ eyes)
            columns = (
                {"body_seen": 0.0} if found is None else body_columns(found, CAMERA, rest, pose)
            )
            head = {"head_yaw_deg": 0.0, "head_pitch_deg": float(pitch(t)), "eye_open": 1.0}
            samples.append(Sample(float(t), **head, **columns))
            joints = [body.joints_in_space(side, attitude)[:, 1] for side in ("r", "l")]
            truth.append(np.array([joints[0][1], joints[1][1], joints[0][3], joints[1][3]]))
    return samples, truth


@pytest.mark.parametrize(("way", "name"), [("back", "anna"), ("forward", "bo")])
def test_rendered_rolls_are_counted_and_their_way_told(way: str, name: str) -> None:
    kind = {"kind": f"shoulders_{way}", "repetitions": 2, "amplitude_mm": 45}
    samples, truth = filmed(Movement.model_validate(kind), 2.0, name=name)
    found = judged(samples, f"shoulders-{way}")
    assert found.done.repetitions == 2
    assert found.done.measured_fraction > 0.9
    assert found.body is not None and found.body["direction"][way] == 2
    lift = np.array([s.shoulder_right_y_mm for s in samples])
    slope = np.polyfit(np.array(truth)[:, 0], lift, 1)[0]
    assert 0.35 < slope < 0.8  # what the summary's note says of them


def test_rendered_nods_lift_no_shoulder() -> None:
    still = Movement.model_validate({"kind": "still", "repetitions": 1})
    samples, _ = filmed(still, 3.5, pitch=lambda t: 12.0 * np.sin(3.0 * t))
    found = judged(samples, "shoulders-back")
    assert found.done.repetitions == 0 and found.done.measured_fraction > 0.9


@pytest.mark.parametrize("low", [False, True])
def test_rendered_throws_are_counted_and_low_ones_told(low: bool) -> None:
    kind = {"kind": "toss", "repetitions": 4, "half": list(range(4)) if low else []}
    samples, truth = filmed(Movement.model_validate(kind), 1.3)
    found = judged(samples, "hand-toss")
    assert found.done.repetitions == 4
    assert ("throw_low" in [e.code for e in found.events]) == low
    rows = [
        (s.wrist_right_y_mm, t[2])
        for s, t in zip(samples, truth, strict=True)
        if np.isfinite(s.wrist_right_x_mm)
    ]
    read, true = np.array(rows).T
    # Seen means above the same line as the eyes where they are above it.
    assert (np.sign(read)[np.abs(true) > 40] == np.sign(true)[np.abs(true) > 40]).all()


def test_a_helper_beside_is_never_taken_for_the_patient() -> None:
    """The helper is nearer and larger; their shoulders are 420 mm to the side."""
    rng = np.random.default_rng(4)
    scene = Scene(PLACE, (0.3, 0.6, 0.75), 1)
    patient, helper = make_body("anna"), make_body("bo")
    mine, theirs = standing(patient, None), standing(helper, None, right_mm=-420.0)
    theirs.shift_mm[2] = 60.0
    alone = drawn(scene, rng, (patient, mine))
    both = drawn(scene, rng, (patient, mine), (helper, theirs))
    with BodyFinder() as first, BodyFinder() as second:
        face = true_face(patient, mine)
        expected = first.find(alone, face, 0.0)
        found = second.find(both, face, 0.0)
    assert expected is not None
    if found is not None:
        rows = list(SHOULDERS)
        assert found.points_px[rows] == pytest.approx(expected.points_px[rows], abs=25)


# --- when it is looked for -------------------------------------------------------------


def test_it_is_looked_for_at_most_every_sixteenth_of_a_second(finder: BodyFinder) -> None:
    for number, (rate_hz, looks) in enumerate(((60, 15), (30, 15), (15, 15), (10, 10))):
        began = 100.0 * number
        picture, count = np.zeros((64, 64, 3), np.uint8), 0
        for k in range(rate_hz):
            if finder.due(began + k / rate_hz):
                finder.find(picture, None, began + k / rate_hz)
                count += 1
        assert count == looks, rate_hz


def test_without_need_nothing_is_looked_for() -> None:
    observer = Observer()
    picture = np.zeros((120, 160, 3), np.uint8)
    try:
        assert not observer.observe(Frame(0, 0.0, picture)).body_sought
        observer.watch_body(True)
        seen = observer.observe(Frame(1, 0.1, picture))
        assert seen.body_sought and seen.body is None
        observer.watch_body(False)
        assert not observer.observe(Frame(2, 0.2, picture)).body_sought
    finally:
        observer.close()


# --- a hand held up --------------------------------------------------------------------

UP = Arm((0.9, -0.3, 0.25), (0.05, 1.0, 0.15))
#: Arms as they are held up: the elbow low or high, at the side or before the body.
HELD_UP = {
    "up": UP,
    "low": Arm((0.7, -0.7, 0.25), (0.05, 1.0, 0.15)),
    "high": Arm((0.8, 0.3, 0.25), (0.0, 1.0, 0.1)),
    "before": Arm((0.5, -0.3, 0.7), (0.1, 1.0, 0.2)),
}
ELSEWHERE = {
    "hanging": HANGING,
    "thumb ahead": Arm((-0.2, 0.0, 1.0), (-0.2, 0.1, 1.0)),
    "thumb aside": Arm((0.4, 0.05, 1.0), (0.4, 0.1, 1.0)),
    "arm aside": Arm((1.0, 0.05, 0.1), (1.0, 0.1, 0.1)),
    "at the crown": Arm((0.7, 0.5, 0.25), (-0.8, 0.6, 0.0)),
    "at the glasses": Arm((0.5, -0.5, 0.6), (-0.6, 0.8, 0.1)),
    "at the cheek": Arm((0.2, -0.8, 0.6), (-0.3, 0.9, -0.2)),
    "before a throw": READY,
}


def columns_of(
    finder: BodyFinder, place: CameraPlace, arm: Arm, *, left: bool, name: str
) -> dict[str, float]:
    """What is read of a rendered body that holds one arm so."""
    body = make_body(name)
    other = mirrored(HANGING)
    attitude = standing(body, (HANGING, mirrored(arm)) if left else (arm, other))
    camera = Pinhole.from_fov(place.width_px, place.height_px, place.vertical_fov_deg)
    away = place.position_mm[2]
    rest = RestFrame(FACING, np.eye(3), np.array([0.0, 0.0, away]), FACING @ body.neck_mm)
    picture = drawn(Scene(place, (0.3, 0.6, 0.75), 1), np.random.default_rng(2), (body, attitude))
    found = finder.find(picture, true_face(body, attitude, place, camera), 0.0)
    assert found is not None
    return body_columns(found, camera, rest, Pose(np.eye(3), rest.origin_mm))


@pytest.mark.parametrize("far", [False, True])
def test_rendered_hands_beside_the_head_are_told_from_others(finder: BodyFinder, far: bool) -> None:
    """The right one of somebody near, the left one of somebody far."""
    left = far
    place = CameraPlace(1280, 720, 45.0, (0.0, 0.0, 2000.0), 0.0) if far else PLACE
    name = "bo" if far else "anna"
    arms = {**HELD_UP, **ELSEWHERE}
    for what in ("low", "high", "thumb aside", "at the glasses") if far else arms:
        arm = arms[what]
        columns = columns_of(finder, place, arm, left=left, name=name)
        expected = ("left" if left else "right") if what in HELD_UP else ""
        assert raised_side(Sample(0.0, **columns)) == expected, what


def test_a_hand_that_is_up_is_looked_at_more_often(monkeypatch: pytest.MonkeyPatch) -> None:
    """Once it is down again the looks are as few as before."""
    up = np.full((33, 2), 300.0)
    up[16] = (200.0, 100.0)
    down = np.full((33, 2), 300.0)
    down[[15, 16], 1] = 400.0
    state = {"points": down}
    observer = Observer()
    times: list[float] = []

    def find(self: BodyFinder, _image: Any, _face: Any, time_s: float) -> BodyPoints:
        self._looked_s = time_s
        times.append(time_s)
        return BodyPoints(state["points"], np.ones(33), 640, 480)

    monkeypatch.setattr(BodyFinder, "find", find)
    try:
        observer.watch_body(True, 0.4)
        for k in range(120):
            state["points"] = up if 40 <= k < 80 else down
            observer.observe(Frame(k, k / 30, np.zeros((48, 64, 3), np.uint8)))
    finally:
        observer.close()
    gaps = np.diff(times)
    assert np.median(gaps[:3]) == pytest.approx(0.4, abs=0.04) == gaps[-1]
    middle = [g for t, g in zip(times, gaps, strict=False) if 1.8 < t < 2.5]
    assert max(middle) < 0.17


# --- a fingertip near and far ----------------------------------------------------------


def carrying(body: Body, before_mm: float) -> Arm:
    """The right arm that holds the wrist so far before the eyes, below their line."""
    shoulder, elbow, wrist = body.joints["r"][1:]
    upper, fore = np.linalg.norm(elbow - shoulder), np.linalg.norm(wrist - elbow)
    way = np.array([20.0, -170.0, before_mm]) - shoulder
    far = min(float(np.linalg.norm(way)), 0.99 * float(upper + fore))
    along = way / np.linalg.norm(way)
    # The elbow hangs below the line from shoulder to wrist.
    at = (upper**2 - fore**2 + far**2) / (2 * far)
    down = np.array([0.5, -1.0, -0.1])
    down = down - (down @ along) * along
    bent = np.sqrt(max(float(upper**2 - at**2), 0.0)) * down / np.linalg.norm(down)
    to_elbow = at * along + bent
    to_wrist = far * along - to_elbow
    return Arm(tuple(to_elbow), tuple(to_wrist))  # type: ignore[arg-type]


def test_the_forearm_of_a_rendered_hand_tells_near_from_far(finder: BodyFinder) -> None:
    place = CameraPlace(640, 480, FOV_DEG, (0.0, 40.0, DISTANCE_MM), 0.0)
    body = make_body("anna")
    rises = [
        forearm_rise_mm(
            Sample(0.0, **columns_of(finder, place, carrying(body, mm), left=False, name="anna")),
            "right",
        )
        for mm in (120.0, 240.0, 420.0)
    ]
    assert rises[0] > rises[1] + 30 > rises[2] + 130
    assert rises[0] - rises[2] > 200


def test_a_rendered_hand_is_counted_whether_the_eyes_are_read_or_not(finder: BodyFinder) -> None:
    """Nine drawn arms between near and far, gone through to and fro; the eyes are made up."""
    place = CameraPlace(640, 480, FOV_DEG, (0.0, 40.0, DISTANCE_MM), 0.0)
    body = make_body("anna")
    ways_mm = np.linspace(420.0, 120.0, 9)
    looks = [
        columns_of(finder, place, carrying(body, mm), left=False, name="anna") for mm in ways_mm
    ]
    there_and_back = [*range(9), *range(7, 0, -1)]
    played = [0, 0, *(there_and_back * 4), 0, 0]
    # A fingertip is 60 mm and more before the wrist; eyes 63 mm apart.
    eyes_deg = np.degrees(2 * np.arctan(31.5 / (ways_mm[played] + 180.0)))
    rng = np.random.default_rng(3)
    for read in (True, False):
        samples = [
            Sample(
                k / 4,
                head_yaw_deg=0.0,
                head_pitch_deg=0.0,
                eye_open=1.0,
                vergence_deg=float(v + rng.normal(0, 0.5)) if read else float("nan"),
                **looks[row],
            )
            for k, (row, v) in enumerate(zip(played, eyes_deg, strict=True))
        ]
        found = judged(samples, "near-far")
        assert found.done.repetitions == 4
        assert found.hand is not None and found.hand["counted_from"] == ["hand"]
        assert found.hand["cycles"] == 4 and found.hand["side"] == "right"
