"""One person's sets: the same for the same name, and what happens in them keeps apart."""

from __future__ import annotations

from itertools import pairwise

import pytest

from sample_clips.people_sets import KINDS, sets_of
from sample_clips.render import make_score
from sample_clips.truth import events
from ui.bench.aims import is_within

LOT = [sets_of(number, 5) for number in range(12)]


def test_the_same_number_is_the_same_person_and_another_seed_another() -> None:
    assert sets_of(3, 5) == LOT[3]
    assert sets_of(3, 6)[0].scenario.head != LOT[3][0].scenario.head
    assert len({sets[0].scenario.head for sets in LOT}) == len(LOT)


def test_all_sets_are_one_persons_before_one_camera_after_one_set_up() -> None:
    for sets in LOT:
        assert tuple(one.kind for one in sets) == KINDS
        assert [one.scenario.setup for one in sets] == [True] + [False] * (len(KINDS) - 1)
        assert len({one.scenario.name for one in sets}) == len(KINDS)
        for one in sets:
            assert is_within(one) and one.conditions == sets[0].conditions
            for field in ("head", "camera", "light", "light_from", "target_distance_mm"):
                assert getattr(one.scenario, field) == getattr(sets[0].scenario, field)


@pytest.mark.parametrize("kind", KINDS)
def test_what_happens_in_a_set_lies_in_it_and_apart(kind: str) -> None:
    expected = {
        "turns-glancing": ("gaze_off_target", 3),
        "turns-looking-down": ("gaze_off_target", 3),
        "turns-shut": ("eyes_closed", 3),
        "jumps-helped": ("head_moved", 1),
    }
    for sets in LOT:
        scenario = sets[KINDS.index(kind)].scenario
        score = make_score(scenario)
        found = events(score)["events"]
        code, count = expected.get(kind, ("", 0))
        assert [e["code"] for e in found] == [code] * count
        for before, after in pairwise(found):
            assert after["start_s"] - before["end_s"] > 0.5
        for event in found:
            assert score.start_s + 1.0 < event["start_s"] < event["end_s"] < score.end_s


def test_with_few_pictures_nothing_is_faster_than_once_a_second() -> None:
    for number in range(6):
        for one in sets_of(number, 5, rate_hz=15):
            assert one.scenario.camera.rate_hz == 15 and "15/s" in one.conditions
            assert one.scenario.movement.tempo_bpm <= 120.0
