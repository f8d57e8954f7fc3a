"""How far away and apart marks may be where the patient measures: plain trigonometry, none of ours.

Every length that is offered is put into a room here, and the angles are taken from that.
"""

from __future__ import annotations

from math import atan2, degrees
from typing import Any

import pytest

from tests.practice.person import plan_of
from tracker.errors import InputError
from tracker.plan.asked import Asked, asked_of
from tracker.plan.changes import Shift, why_not
from tracker.plan.model import Plan, WallMarks
from tracker.plan.telling import plan_lines
from tracker.plan.walls import distance_bounds_mm, spacing_bounds_mm
from tracker.practice.tasks import AskWall
from ui.cards import card_of

#: Two marks are counted from so many degrees to each side on (``tracker.wall``: 3.5 for a head,
#: 5 for eyes), and eyes are read up to 12 degrees up, down and aside.
LEAST_DEG, EYES_DEG, ASIDE_DEG = 3.5, (5.0, 12.0), 12.0


def plan_with(wall: dict[str, Any], neck: float | None = None, **fields: Any) -> Plan:
    entry = {"exercise": "eyes-then-head", "note": "x", **fields, "wall": wall}
    limit = {} if neck is None else {"neck_limit_deg": {"yaw": neck, "pitch": 30}}
    return plan_of(entry, **limit)


def offered(plan: Plan) -> list[tuple[int, int, Asked]]:
    """Every fifth distance and spacing, the ends among them, that a patient could choose, in cm."""
    asked = asked_of(plan.entries[0])
    wall = asked.wall
    assert wall is not None
    typed = wall.distance_mm
    near, far = distance_bounds_mm(plan, asked) if typed is None else (typed, typed)
    assert near <= far
    found = []
    for away in {*range(int(near), int(far) + 1, 50), int(far)}:
        least, most = wall.spacing_mm, wall.spacing_mm
        if wall.spacing_mm is None:
            least, most = spacing_bounds_mm(plan, asked, float(away))
        assert least is not None and most is not None and least <= most, away
        found += [(away, int(apart), asked) for apart in (least, most)]
    return found


@pytest.mark.parametrize("neck", [None, 4.0, 4.3, 10.0, 18.0])
@pytest.mark.parametrize("wall", [{}, {"spacing_mm": 400}, {"distance_mm": 900}, {"right_mm": 90}])
def test_no_length_that_is_offered_goes_beyond_neck_range_or_what_is_counted(
    neck: float | None, wall: dict[str, Any]
) -> None:
    most = 10.0 if neck is None else min(neck, 10.0)
    if most < 5.0:
        # So narrow that only these fit (otherwise the plan is refused; below).
        wall = {k: {"spacing_mm": 300, "right_mm": 15}.get(k, v) for k, v in wall.items()}
    plan = plan_with(wall, neck, amplitude_deg=[min(8.0, most), most])
    aside = wall.get("right_mm", 0)
    for away, apart, _ in offered(plan):
        half = degrees(atan2(apart / 2, away))
        # From straight ahead to the farther of the two: that is what the neck has to do.
        farther = degrees(atan2(apart / 2 + aside, away))
        assert LEAST_DEG <= half <= most + 1e-9
        assert neck is None or farther <= neck + 1e-9, (away, apart)
        if away > 1500 and not aside:
            assert half >= min(8.0, most) - 0.5, "a centimetre is a third of a degree there"


def test_eyes_alone_know_no_neck_and_no_range() -> None:
    plan = plan_with({}, 4.0, exercise="eyes-side-to-side")
    for away, apart, _ in offered(plan):
        assert EYES_DEG[0] <= degrees(atan2(apart / 2, away)) <= EYES_DEG[1]


@pytest.mark.parametrize("field", ["above_mm", "right_mm"])
@pytest.mark.parametrize("mm", [-630, 0, 300, 637])
@pytest.mark.parametrize("exercise", ["turns-on-target", "eyes-up-down"])
def test_from_wherever_one_may_sit_the_marks_are_as_high_as_eyes_are_read(
    exercise: str, field: str, mm: float
) -> None:
    plan = plan_with({field: mm}, exercise=exercise)
    near, far = distance_bounds_mm(plan, asked_of(plan.entries[0]))
    assert near <= far
    assert degrees(atan2(abs(mm), near)) <= ASIDE_DEG
    # Nor is more held back than must be: a centimetre nearer is too near, or nearer than any.
    assert near == 900 or degrees(atan2(abs(mm), near - 10)) > ASIDE_DEG


@pytest.mark.parametrize(
    ("wall", "neck", "says"),
    [
        ({}, 3.9, "leaves 3.9 degrees"),
        ({"distance_mm": 1500}, 2.0, "leaves 2 degrees"),
        ({"spacing_mm": 1200}, 10.0, "wall.spacing_mm: must be 111 to 1057 mm"),
        ({"right_mm": 600}, 10.0, "wall.right_mm: must be"),
        ({"distance_mm": 1000, "above_mm": 300}, None, "wall.above_mm: must be 212 mm at most"),
        (
            {"distance_mm": 1500, "spacing_mm": 500, "right_mm": 100},
            10.0,
            "wall.spacing_mm: the marks ask for more than the neck limit",
        ),
    ],
)
def test_where_nothing_fits_the_plan_is_refused(
    wall: dict[str, Any], neck: float | None, says: str
) -> None:
    most = neck or 20.0
    with pytest.raises(InputError) as caught:
        plan_with(wall, neck, amplitude_deg=[min(most, 2.0), most])
    assert says in str(caught.value)


def test_a_rung_of_the_ladder_is_looked_at_too() -> None:
    ladder = [{"from_week": 3, "amplitude_deg": [2, 3]}]
    with pytest.raises(InputError, match="leaves 3 degrees"):
        plan_with({}, amplitude_deg=[15, 20], ladder=ladder)


def test_what_a_rule_lets_through_can_be_chosen_on_the_patients_page() -> None:
    plan = plan_with({"distance_mm": 900}, 4.0, amplitude_deg=[4, 4])
    asked = asked_of(plan.entries[0])
    least, most = spacing_bounds_mm(plan, asked, 900.0)
    task = AskWall(asked=asked, length="spacing", least_mm=least, most_mm=most)
    card = card_of(task, plan)
    # 2 * 900 * tan(4 degrees) is 125.9 mm.
    assert card.count == range(12, 13) and card.first == 12
    task.check(120.0)


def test_marks_that_hang_set_the_range_in_a_call_too() -> None:
    hung = {"amplitude_deg": [10, 15]}
    two = plan_with({"distance_mm": 1500}, 30.0, **hung)
    one = plan_with({}, 30.0, exercise="turns-on-target", **hung)
    screen = plan_of({"exercise": "eyes-then-head", **hung})
    for steps in (-1, 1):
        assert why_not(two, two.entries[0], 1, Shift(), "amplitude", steps) == "marks_on_wall"
        assert why_not(one, one.entries[0], 1, Shift(), "amplitude", steps) == ""
    assert why_not(screen, screen.entries[0], 1, Shift(), "amplitude", -1) == ""
    assert why_not(two, two.entries[0], 1, Shift(), "tempo", -1) != "marks_on_wall"
    assert two.entries[0].wall == WallMarks(distance_mm=1500)


def told(plan: Plan) -> str:
    return next(line for line in plan_lines(plan) if "on the wall" in line)


def test_marks_are_told_with_what_is_typed_and_what_the_patient_measures() -> None:
    typed = told(plan_with({"distance_mm": 1500, "spacing_mm": 530, "above_mm": 90}))
    # atan(265 / 1500)
    assert f"53 cm apart ({degrees(atan2(265, 1500)):.1f} degrees to each side)" in typed
    assert "150 cm from the eyes, 9 cm above the camera" in typed
    left = told(plan_with({"spacing_mm": 530, "above_mm": -90}))
    assert "53 cm apart, a distance that the patient measures, 9 cm below the camera" in left
    assert "as far apart as the patient measures, 150 cm" in told(plan_with({"distance_mm": 1500}))


@pytest.mark.parametrize(("right_mm", "side"), [(-200, "20 cm left of"), (120, "12 cm right of")])
def test_one_mark_is_told_with_its_side(right_mm: float, side: str) -> None:
    wall = {"distance_mm": 2000, "above_mm": 0, "right_mm": right_mm}
    said = told(plan_with(wall, exercise="turns-on-target"))
    assert f"a mark on the wall, 200 cm from the eyes, 0 cm above and {side} the camera" in said
