"""What is told of shoulders, hands and chair stands."""

from __future__ import annotations

from typing import Any

import pytest

from tests.session.test_chair_stands import five, stands_in_30_s, table_of
from tracker.errors import InputError
from tracker.records.figure import shown_with_unit
from tracker.records.of_body import body_figures, table_figures
from tracker.records.places import Place

WOMAN_OF_72 = {"age_group": "70-74", "sex": "female"}


def told(figures: Any) -> dict[str, str]:
    return {f.label: shown_with_unit(f) for f in figures}


@pytest.mark.parametrize(("stands", "verdict"), [(9, "below average"), (10, "not below average")])
def test_stands_are_set_against_the_table(stands: int, verdict: str) -> None:
    # US CDC STEADI: a woman of 70 to 74 is below average with fewer than 10.
    table = table_of(stands_in_30_s(stands), "chair-stands-30-s", WOMAN_OF_72)
    found = told(table_figures(Place({"table": table})))
    assert found["Stands in 30 s"] == str(stands)
    assert found["Against the published table"] == f"{verdict} (fewer than 10 is below)"
    assert "STEADI" in found["Against the published table, source"]
    assert "arms crossed" in found["Against the published table, holds for"]


def test_without_an_age_the_number_stands_alone() -> None:
    table = table_of(five(2.0), "chair-stands-five", None)
    found = told(table_figures(Place({"table": table})))
    assert found["Five stands"].endswith(" s")
    assert found["Against the published table"].startswith("not measured (the plan gives no age")


def test_of_other_exercises_nothing_is_told() -> None:
    assert told(table_figures(Place({"table": None}))) == {}
    assert told(body_figures(Place({"body": None}))) == {}
    assert told(body_figures(Place({"body": {"amplitude_mm": {"median": 5.0}}}))) == {}


def test_rolls_bends_and_throws() -> None:
    body = {
        "direction": {"back": 6, "forward": 0, "not_told": 2, "note": "n"},
        "arm": {"right": 0, "left": 0, "not_seen": 0, "note": "n"},
        "throw_height_mm": {"median": 180.4, "spread": 12.0, "by_side": {}, "note": "n"},
    }
    assert told(body_figures(Place({"body": body}))) == {
        "Way of the rolls": "back 6, not told 2",
        "Arm of the bends": "not measured (none was counted)",
        "Throw above the eyes": "180 mm",
        "Throw above the eyes, spread": "12 mm",
    }


def test_damage_is_named() -> None:
    with pytest.raises(InputError, match=r"body\.direction\.back"):
        told(body_figures(Place({"body": {"direction": {"back": "many"}}})))
