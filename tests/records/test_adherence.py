"""Practice against the plan: what counts as a bout, and what nobody has missed."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from tests.practice.person import SEATED, plan_of
from tests.records.rows import START, row, set_row
from tracker.records import telling
from tracker.records.adherence import Bouts, adherence_of, bouts_by_day

PLAN = plan_of(SEATED, bouts_a_day=2, days_a_week=7, starts_on=START.isoformat())


def day(k: int) -> date:
    return START + timedelta(days=k)


def test_bouts_seen_and_only_reported_are_apart() -> None:
    unseen = set_row({"measured": 0.0}, exercise="walk")
    rows = [row(0), row(0, 15, sets=(unseen,)), row(1, sets=())]
    assert bouts_by_day(rows) == {day(0): Bouts(1, 1)}
    found = adherence_of(rows, PLAN, day(1))
    assert (found.measured, found.reported, found.days_practised) == (1, 1, 1)
    assert "1 measured, 1 not seen by the camera" in telling.practice(found)


def test_the_share_of_what_was_asked() -> None:
    rows = [row(k, h) for k in range(14) for h in (9, 15)]
    assert adherence_of(rows, PLAN, day(13)).share == pytest.approx(1.0)
    half = [r for k, r in enumerate(rows) if k % 2]
    found = adherence_of(half, PLAN, day(13))
    assert found.share == pytest.approx(0.5) and found.bouts_a_day == pytest.approx(1.0)
    assert found.days_a_week == pytest.approx(7.0)


def test_much_on_one_day_makes_up_for_no_other() -> None:
    rows = [row(0, h) for h in range(8, 18)]
    found = adherence_of(rows, PLAN, day(6))
    assert found.share == pytest.approx(2 / 14) and found.bouts_a_day == pytest.approx(10.0)


def test_nobody_missed_what_was_not_asked_yet() -> None:
    later = plan_of(SEATED, bouts_a_day=2, days_a_week=7, starts_on=day(7).isoformat())
    rows = [row(k, h) for k in range(7, 14) for h in (9, 15)]
    assert adherence_of(rows, later, day(13)).share == pytest.approx(1.0)
    assert adherence_of(rows, None, day(13)).from_day == day(7)
    assert adherence_of(rows, later, day(3)).length_days == 0


def test_each_day_is_held_against_the_plan_of_that_day() -> None:
    once = plan_of(SEATED, bouts_a_day=1, days_a_week=7, starts_on=START.isoformat())
    twice = plan_of(SEATED, bouts_a_day=2, days_a_week=7, starts_on=day(7).isoformat())
    rows = [row(k) for k in range(7)] + [row(k, h) for k in range(7, 14) for h in (9, 15)]
    found = adherence_of(rows, twice, day(13), earlier=[once])
    assert (found.counted, found.asked) == (21, pytest.approx(21.0))
    # So it is on days before the window, too; what was not asked yet was not missed.
    window = adherence_of(rows, twice, day(60), earlier=[once])
    assert window.from_day == day(33)
    assert [window.asked_on(day(k)) for k in (-1, 0, 6, 7, 40)] == [0, 1, 1, 2, 2]
    assert adherence_of(rows, None, day(13)).asked_on(day(3)) == 0
    # With the present plan alone the first week would not count at all.
    assert adherence_of(rows, twice, day(13)).length_days == 7
    # One who did once a day in the second week has missed seven bouts of 21.
    slack = adherence_of([row(k) for k in range(14)], twice, day(13), earlier=[once])
    assert slack.share == pytest.approx(14 / 21)


def test_a_day_that_is_not_over_asks_for_no_more_than_was_done() -> None:
    rows = [row(k, h) for k in range(6) for h in (9, 15)] + [row(6)]
    assert adherence_of(rows, PLAN, day(6), today=day(6)).share == pytest.approx(1.0)
    assert adherence_of(rows, PLAN, day(6), today=day(7)).share == pytest.approx(13 / 14)


def test_the_words_and_the_share_count_the_same_bouts() -> None:
    found = adherence_of([row(0, h) for h in range(8, 18)], PLAN, day(6))
    text = telling.low_practice(found)
    assert text == "practised 2 of 14 bouts in 7 days, and 8 beyond a day's dose"


def test_without_a_plan_it_says_so() -> None:
    found = adherence_of([row(0)], None, day(3))
    assert found.share is None and "no plan at hand" in telling.practice(found)


def test_only_the_last_weeks_count_but_all_days_are_kept() -> None:
    rows = [row(k, h) for k in range(10) for h in (9, 15)]
    found = adherence_of(rows, PLAN, day(60))
    assert found.share == 0.0 and found.length_days == 28
    assert len(found.days) == 10 and found.last_day == day(9)


def test_of_one_day_nothing_is_told_as_of_many() -> None:
    text = telling.practice(adherence_of([row(0)], PLAN, day(0), today=day(1)))
    assert text.startswith("1.0 bouts a day on the one day counted (1 measured, 0 not seen")
    assert "in the last 2 days" in telling.practice(adherence_of([row(0)], PLAN, day(1)))
