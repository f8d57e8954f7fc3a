"""What a plan asks for next: by its weeks, and by what a condition still waits for."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest
from PySide6.QtCore import QLocale, Qt

from tests.practice.person import SEATED, STAND, plan_of
from tests.records.rows import row, set_row
from tests.records.test_people import records
from tracker.records import telling
from tracker.records.people import Person, people_of
from tracker.records.steps import steps_of
from ui import languages
from ui.desk import trade
from ui.desk.text import person_lines

FIRST = date(2026, 3, 2)
LADDER = [
    {"from_week": 2, "tempo_bpm": 80},
    {"from_week": 4, "tempo_bpm": [80, 100], "amplitude_deg": [15, 25]},
    {"from_week": 6, "tempo_bpm": None},
]
UNLOCK = {
    "condition": "Clear and calm.",
    "after": "turns",
    "sessions": 2,
    "rise_most": 1,
    "clear": True,
}
TURNS = {**SEATED, "entry_id": "turns", "repetitions": 12, "ladder": LADDER}
PLAN: dict[str, Any] = {"person": "P-1", "plan_id": "plan-7", "starts_on": FIRST.isoformat()}


def plan(**changes: Any) -> Any:
    return plan_of(TURNS, {**STAND, "unlock_after": UNLOCK}, **{**PLAN, **changes})


@pytest.mark.parametrize(
    ("days", "week", "words"),
    [
        (0, 2, "from week 2 on (9 Mar 2026): 80 beats a minute"),
        (6, 2, "from week 2 on (9 Mar 2026): 80 beats a minute"),
        (
            7,
            4,
            "from week 4 on (23 Mar 2026): 80 to 100 beats a minute, 15 to 25 degrees to each side",
        ),
        (21, 6, "from week 6 on (6 Apr 2026): own pace"),
        (35, None, ""),
    ],
)
def test_the_next_step_of_a_ladder_with_its_day(days: int, week: int | None, words: str) -> None:
    found = steps_of(plan(), FIRST + timedelta(days=days))
    assert [s.rung.from_week for s in found] == ([] if week is None else [week])
    if week is not None:
        # The day is the first on which the patient's own program asks for it.
        assert found[0].day == FIRST + timedelta(weeks=week - 1)
        assert telling.step(found[0]) == f"x1 viewing, yaw, turns: {words}"


def test_without_a_first_day_weeks_do_not_count_and_that_is_said() -> None:
    (step,) = steps_of(plan(starts_on=None), date(2027, 1, 1))
    assert "from week 2 on (the plan has no first day): 80" in telling.step(step)
    assert steps_of(None, FIRST) == []


def person(rise: int, clear: float) -> Person:
    done = set_row({"on_target": 0.9, "clear": clear}, rise=rise)
    rows = [row(k, sets=(done,)) for k in range(2)]
    (found,) = people_of(records(*rows, plans=(plan(),)), FIRST + timedelta(days=2))
    return found


def test_what_is_waited_for_stands_there_with_the_figures() -> None:
    waiting = "\n".join(person_lines(person(rise=3, clear=0.0)))
    assert "session 1 of the last 2: rise of the score 3, asked at most 1" in waiting
    assert "target not said to be clear" in waiting and "Next: x1 viewing" in waiting
    met = "\n".join(person_lines(person(rise=1, clear=1.0)))
    # Nothing opens by itself.
    assert "met; opens only with the patient's yes; met in the last 2 sessions" in met
    assert "asked at most 1" in met


STAGES = [
    {"stage_id": "first", "name": "To begin with"},
    {"stage_id": "later", "name": "On the way", "unlock_after": {"condition": "Steady."}},
]
STEP = [{"from_week": 4, "tempo_bpm": 70}]


def in_stages(found_met: bool, *practised: str) -> Person:
    """An entry that is open, and in a later stage one with a condition that is met, and one."""
    later = {"condition": "Steady.", **({"met_on": "2026-03-02"} if found_met else {})}
    new = {"condition": "Calm.", "met_on": "2026-03-02"}
    entries = (
        {**TURNS, "stage": "first"},
        {**SEATED, "entry_id": "slow", "stage": "later", "ladder": STEP, "unlock_after": new},
        {**SEATED, "entry_id": "free", "stage": "later", "ladder": STEP},
    )
    stages = [STAGES[0], {**STAGES[1], "unlock_after": later}]
    rows = [row(0, sets=tuple(set_row({}, entry_id=name) for name in ("turns", *practised)))]
    plans = (plan_of(*entries, **PLAN, stages=stages),)
    (found,) = people_of(records(*rows, plans=plans), FIRST + timedelta(days=2))
    return found


def test_in_a_closed_stage_nothing_opens_with_a_yes() -> None:
    def lines(person: Person) -> list[str]:
        return [telling.condition(s) for s in person.conditions]

    yes = "opens only with the patient's yes"
    stage, entry = lines(in_stages(False))
    assert yes not in stage and ": not met; " in stage
    assert yes not in entry and ": met; the therapist found it met" in entry
    # A stage that is met is not open yet either; it is that which the yes opens.
    stage, entry = lines(in_stages(True))
    assert yes in stage and yes not in entry
    stage, entry = lines(in_stages(True, "free"))
    assert yes not in stage and yes in entry
    stage, entry = lines(in_stages(True, "free", "slow"))
    assert yes not in stage and yes not in entry


@pytest.mark.parametrize(
    ("found_met", "practised", "coming"),
    [
        (False, (), ["turns"]),
        (True, (), ["turns"]),
        # What was practised once is closed again where its condition no longer is met.
        (False, ("free",), ["turns"]),
        (True, ("free",), ["turns", "free"]),
        (True, ("free", "slow"), ["turns", "slow", "free"]),
    ],
)
def test_what_is_not_open_has_no_next_step(
    found_met: bool, practised: tuple[str, ...], coming: list[str]
) -> None:
    person = in_stages(found_met, *practised)
    assert [s.entry_id for s in person.steps] == coming


@pytest.mark.parametrize("language", ["de", "es", "ar"])
def test_it_is_told_in_other_languages(language: str, qapp: Any) -> None:
    locale = QLocale()
    try:
        languages.speak(qapp, language)
        for days in (0, 7, 21):
            (step,) = steps_of(plan(), FIRST + timedelta(days=days))
            told = trade.step(step)
            assert not {"week", "minute", "pace", "Mar", "each"} & set(told.split()), told
        told = trade.condition(person(rise=1, clear=1.0).conditions[0])
        assert "yes" not in told and "Clear and calm" in told
    finally:
        languages.hush(qapp)
        QLocale.setDefault(locale)
        qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
