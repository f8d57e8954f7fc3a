"""Whose face it is that was chosen after a break, by how alike it is."""

from __future__ import annotations

from collections.abc import Iterable
from math import isfinite, nan

import numpy as np
import pytest

from calibration.whose import GIVE_IN_S, LEAST_S, Whose
from tracker.sample import Sample
from tracker.vision.landmarks import Face
from tracker.vision.observer import Observation

STEP_S = 0.1
FACE = Face(np.zeros((478, 2)), np.zeros(478), (0.0, 0.0))


class Watched:
    """A face that is followed, from picture to picture, and perhaps another one beside it."""

    def __init__(self) -> None:
        self.whose, self.time_s = Whose(), 0.0

    def see(
        self,
        lasts_s: float,
        alike: float,
        beside: float | None = None,
        *,
        anew: bool = False,
        yaw_deg: float = 2.0,
        reason: str = "",
    ) -> list[bool]:
        """Whether each picture is measured; ends where the other face is to be followed."""
        out = []
        for k in range(round(lasts_s / STEP_S)):
            self.time_s += STEP_S
            seen = Observation(self.time_s, 640, 480, FACE, None, 0.5, 1, anew=anew and k == 0)
            other = None if beside is None else self._sample(beside)
            mine = self._sample(alike, yaw_deg, reason)
            sample = self.whose.take(seen, mine, other)
            assert sample is mine or (sample.reason, sample.quality) == ("no_face", 0.0)
            out.append(isfinite(sample.head_yaw_deg))
            if self.whose.follow_other:
                break
        return out

    def _sample(self, alike: float, yaw_deg: float = 2.0, reason: str = "") -> Sample:
        if alike == 0.0 or reason:
            return Sample(self.time_s, quality=0.0, reason=reason or "covered")
        return Sample(self.time_s, head_yaw_deg=yaw_deg, head_pitch_deg=0.0, quality=alike)


@pytest.fixture
def watched() -> Watched:
    """The patient, seen for three seconds."""
    made = Watched()
    assert all(made.see(3.0, 0.95))
    return made


def measured_after(measured: Iterable[bool]) -> float:
    """After how many seconds a face is measured, and from then on always."""
    found = list(measured)
    first = found.index(True)
    assert all(found[first:])
    return first * STEP_S


def test_a_face_that_was_followed_without_a_break_is_never_doubted(watched: Watched) -> None:
    watched.see(6.0, 0.0, 0.95)  # a hand before it, somebody else beside it
    assert not watched.whose.in_doubt and not watched.whose.follow_other
    assert all(watched.see(1.0, 0.35))


def test_ones_own_face_is_measured_again_after_a_second(watched: Watched) -> None:
    assert measured_after(watched.see(3.0, 0.88, anew=True)) == pytest.approx(LEAST_S, abs=0.25)
    assert not watched.whose.in_doubt


def test_a_helpers_face_is_not_and_who_comes_back_is_followed(watched: Watched) -> None:
    assert not any(watched.see(10.0, 0.5, anew=True))
    alone = watched.see(5.0, 0.5, 0.9)
    assert watched.whose.follow_other and not any(alone)
    assert len(alone) * STEP_S == pytest.approx(LEAST_S, abs=0.25)
    # What was seen of it beside the other one counts.
    assert all(watched.see(1.0, 0.9)) and not watched.whose.in_doubt


def test_nobody_who_is_little_alike_is_followed(watched: Watched) -> None:
    watched.see(5.0, 0.4, 0.65, anew=True)
    assert watched.whose.in_doubt and not watched.whose.follow_other


def test_a_patient_whose_look_has_changed_is_measured_in_the_end(watched: Watched) -> None:
    assert measured_after(watched.see(GIVE_IN_S + 5.0, 0.6, anew=True)) == pytest.approx(
        GIVE_IN_S, abs=0.25
    )
    # It may be a helper after all.
    watched.see(5.0, 0.6, 0.95)
    assert watched.whose.follow_other


def test_a_face_of_which_nothing_can_be_said_is_measured_in_the_end(watched: Watched) -> None:
    found = watched.see(GIVE_IN_S + 5.0, 0.7, anew=True, yaw_deg=30.0)
    assert measured_after(found) == pytest.approx(GIVE_IN_S, abs=0.25)


@pytest.mark.parametrize("reason", ["blurred", "turned_too_far", "too_far"])
def test_pictures_that_tell_nothing_of_a_face_count_neither_way(
    watched: Watched, reason: str
) -> None:
    watched.see(3.0, 0.0, anew=True, reason=reason)
    assert measured_after(watched.see(3.0, 0.9)) == pytest.approx(LEAST_S, abs=0.25)


def test_a_turned_face_is_no_worse_for_it(watched: Watched) -> None:
    watched.see(2.0, 0.6, 0.85, anew=True, yaw_deg=28.0)
    assert not watched.whose.follow_other, "only one that is surely the patient's"
    watched.see(3.0, 0.6, 0.95, yaw_deg=28.0)
    assert watched.whose.follow_other


def test_a_moment_decides_nothing(watched: Watched) -> None:
    watched.see(0.9, 0.9, anew=True)
    assert all(not m for m in watched.see(0.1, 0.0))
    assert any(watched.see(0.5, 0.9))


def test_in_a_light_that_makes_all_less_alike_the_usual_is_less() -> None:
    watched = Watched()
    watched.see(3.0, 0.45)
    assert measured_after(watched.see(3.0, 0.42, anew=True)) == pytest.approx(LEAST_S, abs=0.25)


def test_where_the_usual_is_not_known_nobody_is_doubted() -> None:
    watched = Watched()
    assert all(watched.see(3.0, 0.5, anew=True)) and not watched.whose.in_doubt


def test_nothing_in_sight_stays_so(watched: Watched) -> None:
    watched.see(1.0, 0.5, anew=True)
    sample = Sample(watched.time_s + STEP_S, reason="too_dark")
    seen = Observation(sample.time_s, 640, 480, None, None, nan, 0)
    assert watched.whose.take(seen, sample, None) is sample
