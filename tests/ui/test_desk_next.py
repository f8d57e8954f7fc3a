"""A person's page says what the plan opens and asks for next, and what it waits for."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from tests.handover.made import plan_with, write_session
from tests.plan.examples import changed
from tests.ui.test_desk_report import Open, desk  # noqa: F401 - a fixture
from tracker.plan.files import parse_plan, save_plan
from tracker.records import telling

DAYS = ("2026-11-18", "2026-11-19", "2026-11-20", "2026-11-21")


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    folder = tmp_path / "clinic"
    for k, day in enumerate(DAYS):
        write_session(folder, day, k)
    # A step of the ladder in a week, and conditions that are not met: one with figures,
    # one in words.
    entries = parse_plan(changed("entries.0.ladder", [{"from_week": 2, "tempo_bpm": 80}])).entries
    plan = plan_with().model_copy(update={"entries": entries, "starts_on": date.today()})
    save_plan(folder / "plan.json", plan)
    return folder


def test_all_that_is_waited_for_stands_on_the_page(desk: Open) -> None:  # noqa: F811
    page = desk().person_page
    assert page.person is not None and page.conditions.isVisible()
    lines = page.conditions.text().split("\n")
    first = next(s for s in page.person.conditions if not s.condition.met)
    assert first.condition.because and all(b in lines[0] for b in first.condition.because)
    assert lines[0].startswith("Condition: Clear target in three sessions")
    assert "it is in words only" in lines[1]
    begins = telling.day(date.today() + timedelta(days=7))
    what = f"x1 viewing, yaw, turns: from week 2 on ({begins}): 80 beats a minute"
    assert lines[-1] == f"Next: {what}"
