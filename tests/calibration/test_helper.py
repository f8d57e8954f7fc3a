"""A helper beside the patient, both drawn: whose head is measured."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

import numpy as np
import pytest
from numpy.typing import NDArray

from calibration.measurer import Measurer
from sample_clips.heads import Attitude, make_head
from sample_clips.scene import CameraPlace, Scene
from tests.calibration.conftest import FOV_DEG
from tracker.frame import Frame
from tracker.profile import Profile
from tracker.sample import Sample

STEP_S = 0.1
#: Who sits there, where, and the light: those of the set-up's clip.
PATIENT, HELPER = ("anna", (-150.0, 0.0, 0.0)), ("eva", (160.0, -20.0, 0.0))
LIGHT = (0.3, 0.6, 0.75)


@cache
def drawn(*people: tuple[str, tuple[float, float, float]]) -> NDArray[np.uint8]:
    """The room with these people in it."""
    assert FOV_DEG is not None
    scene = Scene(CameraPlace(640, 480, FOV_DEG, (0.0, 60.0, 560.0), 4.0), LIGHT, 3)
    ahead = np.array([[0.0, -0.1, 1.0]] * 2) / np.hypot(1.0, 0.1)
    heads = [(make_head(n), Attitude(0.0, 0.0, 0.0, np.array(p), ahead)) for n, p in people]
    noise = np.random.default_rng(5).normal(0.0, 2.0, (480, 640, 3))
    return np.clip(scene.draw(heads) + noise, 0, 255).astype(np.uint8)


class Seen:
    """Shows a measurer pictures, one after the other."""

    def __init__(self, profile: Profile) -> None:
        self.measurer, self._count = Measurer(profile=profile), 0

    def __call__(self, lasts_s: float, image: NDArray[np.uint8]) -> list[Sample]:
        out = []
        for _ in range(round(lasts_s / STEP_S)):
            out.append(self.measurer.take(Frame(self._count, self._count * STEP_S, image)))
            self._count += 1
        return out


def measured(samples: list[Sample]) -> list[bool]:
    return [bool(np.isfinite(s.head_yaw_deg)) for s in samples]


@pytest.fixture
def see(person: Profile) -> Iterator[Seen]:
    """The patient, and then a helper too, have been seen."""
    made = Seen(person)
    made(1.0, drawn(PATIENT))
    assert all(measured(made(1.5, drawn(PATIENT, HELPER))))
    yield made
    made.measurer.close()


def test_who_comes_back_is_measured_again_and_the_helper_never_was(see: Seen) -> None:
    alone = see(6.0, drawn(HELPER))
    assert not any(measured(alone))
    # A person who has left the picture is asked after, whoever else is in it.
    assert {s.reason for s in alone} == {"no_face"}
    back = see(3.0, drawn(PATIENT, HELPER))
    assert all(measured(back[15:]))
    assert all(s.head_x_mm < -100.0 for s in back[15:])


def test_a_hand_before_the_face_costs_no_more_than_that(see: Seen) -> None:
    hand = drawn(PATIENT, HELPER).copy()
    hand[80:430, 350:560] = (110, 140, 180)
    assert not any(measured(see(1.0, hand)))
    assert all(measured(see(1.0, drawn(PATIENT, HELPER))[1:]))


def test_who_was_out_of_sight_alone_is_measured_after_half_a_second(see: Seen) -> None:
    see(5.0, drawn())
    back = measured(see(2.0, drawn(PATIENT)))
    assert not any(back[:4]) and all(back[7:])


def test_whoever_sits_there_for_a_set_up_is_not_doubted(see: Seen) -> None:
    see(6.0, drawn(HELPER))
    see.measurer.hold_setup(keep=True, take=True)
    see.measurer.hold_setup(keep=True, take=False)
    (sample,) = see(STEP_S, drawn(HELPER))
    assert sample.reason != "no_face"


def test_a_helper_who_goes_on_after_a_set_up_is_doubted_as_before(see: Seen) -> None:
    see(6.0, drawn(HELPER))
    see.measurer.hold_setup(keep=False, take=False)
    assert not any(measured(see(2.0, drawn(HELPER))))
    back = see(3.0, drawn(PATIENT, HELPER))
    assert all(measured(back[15:])) and all(s.head_x_mm < -100.0 for s in back[15:])
