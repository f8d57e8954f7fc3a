"""Another face beside the one that is followed: looked for in crops, and followed there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
import pytest
from numpy.typing import NDArray

from tests.vision.test_far import face_at
from tracker.frame import Frame
from tracker.vision import far, observer
from tracker.vision.landmarks import Face
from tracker.vision.observer import Observation, Observer
from tracker.vision.others import Others

#: Lower faces than this are found in crops only.
SMALL_PX = 150


def picture(*faces: tuple[int, int, int]) -> NDArray[np.uint8]:
    """A dark picture with faces at ``x, y``, each one dot that is as bright as it is high."""
    image = np.zeros((720, 1280, 3), np.uint8)
    for x, y, height in faces:
        image[y, x] = height
    return image


class Dots:
    """Finds the faces of :func:`picture`."""

    def __init__(self, *, stills: bool = False) -> None:
        self._least_px = 0 if stills else SMALL_PX

    def find(self, image: NDArray[np.uint8], _time_s: float) -> list[Face]:
        high, wide = image.shape[:2]
        found = []
        for y, x in np.argwhere(image[..., 0]):
            height = int(image[y, x, 0])
            inside = height / 2 <= min(x, y, wide - x, high - y)
            if inside and height >= self._least_px:
                found.append(face_at(x, y, height))
        return found

    def close(self) -> None:
        pass


@pytest.fixture(autouse=True)
def dots(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(far, "LandmarkFinder", Dots)
    monkeypatch.setattr(observer, "LandmarkFinder", Dots)


@pytest.fixture
def watched() -> Iterator[Observer]:
    made = Observer()
    yield made
    made.close()


def watch(watched: Observer, image: NDArray[np.uint8], first: int, count: int) -> list[Observation]:
    """What is seen in so many pictures, 15 a second."""
    return [watched.observe(Frame(k, k / 15, image)) for k in range(first, first + count)]


def find(others: Others, mine: tuple[int, int, int], *beside: tuple[int, int, int]) -> list[float]:
    """Where another face is found, in the pictures of seven seconds."""
    image, followed = picture(mine, *beside), face_at(*mine)
    looks = (others.find(image, followed, [followed]) for _ in range(210))
    return [float(face.centre_px[0]) for face in looks if face is not None]


def test_who_comes_back_elsewhere_is_found_though_a_helper_took_their_place() -> None:
    others = Others()
    assert set(find(others, (640, 300, 120), (880, 300, 100))) == {880.0}
    assert find(others, (860, 300, 120)) == [] and not others.small
    assert set(find(others, (860, 300, 120), (300, 300, 100))) == {300.0}


@pytest.mark.parametrize("x", range(200, 1100, 100))
@pytest.mark.parametrize("y", [150, 300, 550])
def test_of_two_small_faces_side_by_side_the_other_is_followed_without_a_hole(
    watched: Observer, x: int, y: int
) -> None:
    helper, patient = (x, y, 90), (x + 90, y, 90)
    assert _centres(watch(watched, picture(helper), 0, 60)[-1:]) == [x]
    watched.look_for_others(True)
    seen = watch(watched, picture(helper, patient), 60, 10)
    others = [o.other for o in seen if o.other is not None]
    watched.follow(others[-1])
    watched.look_for_others(False)
    assert _centres(watch(watched, picture(helper, patient), 70, 30)) == [x + 90] * 30


def _centres(seen: Sequence[Observation]) -> list[float | None]:
    return [None if o.face is None else float(o.face.centre_px[0]) for o in seen]
