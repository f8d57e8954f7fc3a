"""A helper beside the patient: whose head is measured, in pictures of two shipped clips."""

from __future__ import annotations

from collections.abc import Iterator

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray

from calibration.measurer import Measurer
from sample_clips import shipped_clip
from tracker.frame import Frame
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.vision.clips import open_clip

Image = NDArray[np.uint8]
STEP_S = 0.1


def first_picture(name: str) -> Image:
    with open_clip(shipped_clip(name)) as frames:
        return next(iter(frames)).image


def with_helper(room: Image) -> Image:
    """Another head at the right edge."""
    other = cv2.resize(first_picture("jumps-good")[60:380, 200:440], (180, 240))
    out = room.copy()
    out[:240, -180:] = other
    return out


@pytest.fixture
def measurer(person: Profile) -> Iterator[Measurer]:
    made = Measurer(profile=person)
    yield made
    made.close()


def test_who_comes_back_is_measured_again_although_a_helper_stayed_in_view(
    measurer: Measurer,
) -> None:
    patient = first_picture("turns-good")
    empty = np.full_like(patient, patient[5:40, 5:40].reshape(-1, 3).mean(axis=0))
    time_s = 0.0

    def see(image: Image, lasts_s: float) -> list[Sample]:
        nonlocal time_s
        out = []
        for _ in range(round(lasts_s / STEP_S)):
            out.append(measurer.take(Frame(len(out), time_s, image)))
            time_s += STEP_S
        return out

    assert all(np.isfinite(s.head_yaw_deg) for s in see(with_helper(patient), 1.0))
    # The helper is never measured, and in the end taken for the only one there is.
    alone = see(with_helper(empty), 6.0)
    assert not any(np.isfinite(s.head_yaw_deg) for s in alone)
    assert alone[-1].reason not in ("", "no_face")
    back = see(with_helper(patient), 3.0)
    assert all(np.isfinite(s.head_yaw_deg) for s in back[15:])
