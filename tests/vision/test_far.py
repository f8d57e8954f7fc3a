"""Small faces before a wide camera, and whose face is followed."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import pytest

from sample_clips.heads import Attitude, make_head
from sample_clips.scene import CameraPlace, Scene
from tests.sample_clips.scenes import LIGHT, attitude_to, pixel_of
from tracker.frame import Frame
from tracker.vision import far
from tracker.vision.landmarks import Face, LandmarkFinder
from tracker.vision.observer import Observer
from tracker.vision.patient import FORGET_AFTER_S, Patient

#: A person 1.1 m away, as 720 lines and 55 degrees of vertical field see them.
WIDE = CameraPlace(1280, 720, 55.0, (150.0, -60.0, 1100.0), 0.0)
SIZE = (1280, 720)


def picture(shift: tuple[float, float, float] = (0.0, 0.0, 0.0), helper: bool = False):
    """The patient, aside by ``shift``; perhaps a helper whose face is much nearer."""
    head = make_head("dirk")
    people = [(head, attitude_to(head, (0.0, 0.0, 1100.0), shift=shift))]
    if helper:
        ahead = np.array([[0.0, 0.0, 1.0]] * 2)
        place = np.array([420.0, 0.0, 520.0])
        people.append((make_head("eva"), Attitude(0.0, 0.0, 0.0, place, ahead)))
    return np.clip(Scene(WIDE, LIGHT, 0).draw(people), 0, 255).astype(np.uint8)


@pytest.fixture
def observer() -> Iterator[Observer]:
    made = Observer()
    yield made
    made.close()


def watch(observer: Observer, image, first: int, count: int) -> list[Face | None]:
    return [observer.observe(Frame(k, k / 30, image)).face for k in range(first, first + count)]


def test_a_face_too_small_for_the_whole_picture_is_found_and_followed(observer: Observer) -> None:
    image = picture()
    with LandmarkFinder() as finder:
        assert finder.find(image, 0.0) == [], "then this test shows nothing"
    faces = watch(observer, image, 0, 45)
    first = next(k for k, face in enumerate(faces) if face is not None)
    assert first <= 30, "a second of searching"
    assert all(face is not None for face in faces[first:])
    nose = pixel_of(make_head("dirk").eyes_mm.mean(axis=0), WIDE)
    assert np.linalg.norm(faces[-1].centre_px - nose) < 8  # type: ignore[union-attr]


def test_it_is_followed_aside_and_past_a_helpers_nearer_face(observer: Observer) -> None:
    watch(observer, picture(), 0, 32)
    last = None
    for k in range(8):
        (last,) = watch(observer, picture((-15.0 * (k + 1), 0.0, 0.0)), 32 + k, 1)
        assert last is not None
    with_helper = watch(observer, picture((-120.0, 0.0, 0.0), helper=True), 40, 24)
    assert all(f is not None for f in with_helper)
    assert last is not None
    for face in with_helper:
        assert np.linalg.norm(face.centre_px - last.centre_px) < 0.3 * last.height_px  # type: ignore[union-attr]


@pytest.mark.parametrize("size", [(1280, 720), (640, 480), (1920, 1080), (480, 640)])
def test_every_small_face_lies_whole_in_a_tile(size: tuple[int, int]) -> None:
    width, height = size
    tiles = far._tiles(width, height)
    assert all(x >= 0 and y >= 0 and x + s <= width and y + s <= height for x, y, s in tiles)
    face = int(0.24 * height)
    rng = np.random.default_rng(1)
    for _ in range(500):
        left, top = rng.integers(0, width - face), rng.integers(0, height - face)
        assert any(
            x <= left and y <= top and left + face <= x + s and top + face <= y + s
            for x, y, s in tiles
        )


def test_pictures_too_small_for_it_are_not_searched() -> None:
    assert far._tiles(320, 240) == []


def face_at(x: float, y: float, height: float) -> Face:
    points = np.full((478, 2), [x, y], dtype=float)
    points[10, 1], points[152, 1] = y - height / 2, y + height / 2
    return Face(points, np.zeros(len(points)), (0.0, 0.0))


def test_the_nearer_face_is_not_the_patients_until_they_have_long_been_gone() -> None:
    patient = Patient()
    mine, theirs = face_at(640, 300, 120), face_at(900, 300, 300)
    assert patient.among([mine], 0.0, SIZE) is mine
    assert patient.among([theirs, mine], 0.1, SIZE) is mine
    assert patient.among([theirs], 0.2, SIZE) is None
    assert patient.among([theirs], 0.1 + FORGET_AFTER_S - 0.1, SIZE) is None
    assert patient.among([theirs], 0.1 + FORGET_AFTER_S + 0.1, SIZE) is theirs


@pytest.mark.parametrize(
    ("gone_s", "x", "height", "anew"),
    [
        (0.1, 640, 120, False),
        (0.3, 700, 120, False),
        (1.0, 660, 120, False),
        (1.0, 760, 120, True),
        (1.0, 640, 155, True),
        (FORGET_AFTER_S + 0.1, 640, 120, True),
        (FORGET_AFTER_S + 0.1, 1100, 300, True),
    ],
)
def test_a_face_that_comes_after_a_break_may_be_anothers(
    gone_s: float, x: float, height: float, anew: bool
) -> None:
    patient, face = Patient(), face_at(x, 300, height)
    patient.among([face_at(640, 300, 120)], 0.0, SIZE)
    assert not patient.anew, "the first one"
    assert patient.among([face], gone_s, SIZE) is face and patient.anew == anew
    assert patient.among([face], gone_s + 0.1, SIZE) is face and not patient.anew


def test_a_small_face_beside_a_near_one_is_found_when_asked_for(observer: Observer) -> None:
    both = picture((-120.0, 0.0, 0.0), helper=True)
    seen = [observer.observe(Frame(k, k / 30, both)) for k in range(5)]
    assert all(o.face is not None and o.face.height_px > 150 and o.other is None for o in seen)
    observer.look_for_others(True)
    times = [k / 30 for k in range(5, 155)]
    others = [
        other
        for k, time_s in enumerate(times)
        if (other := observer.observe(Frame(k + 5, time_s, both)).other) is not None
    ]
    assert len(others) > 4
    face = others[-1].face
    assert face is not None and face.height_px < 150
    observer.follow(others[-1])
    observer.look_for_others(False)
    for found in watch(observer, both, 155, 30):
        assert found is not None and found.height_px < 150
