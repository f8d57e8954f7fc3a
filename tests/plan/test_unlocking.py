"""Conditions: met or not met, and never opened by figures or by the patient alone."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from functools import partial
from typing import Any

import pytest

from tests.plan.examples import TEXT
from tests.records import made
from tests.session.synthetic import WELL_READ, steps, turns_samples
from tracker.plan.files import parse_plan
from tracker.plan.model import Plan, Unlock
from tracker.plan.starter import starter_plan
from tracker.plan.unlocking import (
    _AGAINST,
    _FOR,
    TO_COME,
    SessionFigures,
    figures_of,
    history_of,
    judge_condition,
    opens,
)
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from tracker.session.summary_file import ENDED, Summary

GOOD = SessionFigures(rise=0, settle_minutes=1.0, on_target=0.95, measured=0.9, clear=True)
DAY = date(2026, 1, 10)
judge = partial(judge_condition, today=DAY)


def unlock(**figures: Any) -> Unlock:
    return Unlock(condition="Calm.", after="turns", **figures)


def test_both_have_to_say_yes() -> None:
    asked = unlock(sessions=2, rise_most=0)
    assert opens(asked, [GOOD, GOOD], DAY, patient_agrees=True)
    assert not opens(asked, [GOOD, GOOD], DAY, patient_agrees=False)
    assert not opens(asked, [GOOD], DAY, patient_agrees=True)
    assert opens(None, [], DAY, patient_agrees=False)  # nothing was asked for


@pytest.mark.parametrize(
    ("changed", "eased"),
    [
        (None, False),
        ({"tempo_bpm": [60.0, 55.0]}, True),
        ({"tempo_bpm": [60.0, 65.0]}, False),
        ({"tempo_bpm": [[60.0, 80.0], [55.0, 75.0]]}, True),
        ({"amplitude_deg": [[15.0, 20.0], [13.0, 18.0]]}, True),
        ({"amplitude_deg": [[15.0, 20.0], [17.0, 22.0]]}, False),
        ({"tempo_bpm": [60.0, 65.0], "amplitude_deg": [[15.0, 20.0], [13.0, 18.0]]}, True),
    ],
)
def test_what_was_made_easier_opens_nothing(changed: dict[str, Any] | None, eased: bool) -> None:
    summary = made.finished()
    sets = [e.model_copy(update={"changed": changed}) for e in summary.exercises]
    figures = figures_of(summary.model_copy(update={"exercises": sets}), sets)
    assert figures.eased == eased
    asked = unlock(measured_least=0.0)
    found = judge(asked, [figures])
    assert found.met != eased
    assert ("made easier" in found.because[0]) == eased


def test_words_alone_wait_for_the_therapist() -> None:
    words = Unlock(condition="When I say so.")
    assert not opens(words, [GOOD] * 9, DAY, patient_agrees=True)
    said = Unlock(condition="When I say so.", met_on=date(2026, 1, 9))
    assert opens(said, [], DAY, patient_agrees=True)
    assert not opens(said, [], DAY, patient_agrees=False)


@pytest.mark.parametrize(("days", "met"), [(-400, True), (0, True), (1, True), (2, False)])
def test_a_day_that_has_not_come_is_not_met(days: int, met: bool) -> None:
    """The clinic's calendar may be a day ahead."""
    on = DAY + timedelta(days=days)
    words = Unlock(condition="When I say so.", met_on=on)
    assert judge(words, []).met is met
    assert opens(words, [], DAY, patient_agrees=True) is met
    # Nobody knows the day: as ever.
    assert judge_condition(words, [], None).met
    if not met:
        assert judge(words, []).because == (f"{TO_COME} ({on})",)
        # The figures stand as if nothing had been written.
        figures = unlock(sessions=1, rise_most=0, met_on=on)
        assert judge(figures, [GOOD]).met
        for history in ([], [replace(GOOD, rise=1)]):
            missed = judge(figures, history)
            # The day is told besides what the figures lack.
            assert not missed.met and len(missed.because) == 2
            assert missed.because[0] == f"{TO_COME} ({on})"


@pytest.mark.parametrize(
    ("figures", "bad"),
    [
        ({"rise_most": 1}, {"rise": 2}),
        ({"settle_minutes_most": 2}, {"settle_minutes": 3.0}),
        ({"on_target_least": 0.9}, {"on_target": 0.8}),
        ({"measured_least": 0.8}, {"measured": 0.5}),
        ({"clear": True}, {"clear": False}),
    ],
)
def test_each_figure_refuses_and_lets_through(figures: dict[str, Any], bad: dict[str, Any]) -> None:
    values = {f: getattr(GOOD, f) for f in GOOD.__slots__}
    asked = unlock(sessions=2, **figures)
    assert judge(asked, [GOOD, GOOD]).met
    worse = judge(asked, [GOOD, SessionFigures(**{**values, **bad})])
    assert not worse.met and "session 2 of the last 2" in worse.because[0]
    # What was not measured is not met; an old bad session is past.
    unknown = SessionFigures(**{**values, **dict.fromkeys(bad)})
    assert not judge(asked, [GOOD, unknown]).met
    assert judge(asked, [unknown, GOOD, GOOD]).met


def test_what_is_met_says_its_figures_and_not_those_that_nobody_asked_for() -> None:
    """The limits and figures are made up; the lowest and the highest of the sessions count."""
    asked = unlock(
        sessions=2,
        rise_most=1,
        settle_minutes_most=2,
        on_target_least=0.9,
        measured_least=0.8,
        clear=True,
    )
    first = replace(GOOD, rise=0, settle_minutes=0.5, on_target=0.91, measured=0.8)
    last = replace(GOOD, rise=1, settle_minutes=1.5, on_target=0.9, measured=0.951)
    assert judge(asked, [replace(GOOD, rise=9), first, last]).because == (
        "met in the last 2 sessions",
        "rise of the score 0 to 1, asked at most 1",
        "minutes to settle 0.5 to 1.5, asked at most 2",
        "share on target 90 to 91 %, asked at least 90 %",
        "share measured 80 to 95.1 %, asked at least 80 %",
        "target said to be clear",
    )
    assert judge(unlock(sessions=2), [first, last]).because == ("met in the last 2 sessions",)


@pytest.mark.parametrize(
    ("asked", "got", "said"),
    [(0.9, 0.9004, "90"), (0.8995, 0.89951, "90"), (0.89, 0.89, "89"), (0.8994, 0.8994, "89.94")],
)
def test_a_share_that_is_met_never_reads_as_if_it_were_missed(
    asked: float, got: float, said: str
) -> None:
    found = judge(unlock(on_target_least=asked), [replace(GOOD, on_target=got)])
    assert found.met
    assert found.because[1] == f"share on target {said} %, asked at least {100 * asked:g} %"


@pytest.mark.parametrize("ended", ENDED)
def test_each_end_of_a_session_speaks_against_it_or_does_not(ended: str) -> None:
    assert {*_AGAINST, *_FOR} == set(ENDED) and not {*_AGAINST} & {*_FOR}
    found = judge(unlock(sessions=1, rise_most=0), [replace(GOOD, ended=ended)])
    assert found.met == (ended in ("finished", "stopped"))
    # The words are a plain reading of the summary's key (no source but that).
    why = {
        "stopped_unwell": "it was stopped unwell",
        "symptom_rule": "the symptom rule ended it",
        "red_flag": "a safety question ended it",
        "possible_fall": "it ended with a possible fall",
        "interrupted": "it broke off",
    }
    said = ("met in the last 1 sessions", "rise of the score 0, asked at most 0")
    assert found.because == (said if found.met else (f"session 1 of the last 1: {why[ended]}",))


@pytest.mark.parametrize(
    ("asked", "got", "words"),
    [
        (0.9, 0.8997, "89.9 %, asked at least 90 %"),
        (0.9, 0.8999999999999999, "89.9 %, asked at least 90 %"),
        (0.9, 0.8, "80 %, asked at least 90 %"),
        (0.58, 0.57, "57 %, asked at least 58 %"),
        (0.8995, 0.89949, "89.9 %, asked at least 89.95 %"),
        (1.0, 0.9999, "99.9 %, asked at least 100 %"),
        (0.9, 0.0, "0 %, asked at least 90 %"),
        (0.9, None, "not known, asked at least 90 %"),
        (0.9, 0.9, None),
    ],
)
@pytest.mark.parametrize(
    ("field", "name"), [("on_target", "share on target"), ("measured", "share measured")]
)
def test_a_share_that_missed_its_limit_never_reads_as_if_it_had_not(
    field: str, name: str, asked: float, got: float | None, words: str | None
) -> None:
    wanted = unlock(sessions=1, **{f"{field}_least": asked})
    found = judge(wanted, [replace(GOOD, **{field: got})])
    assert found.met == (words is None)
    assert words is None or found.because == (f"session 1 of the last 1: {name} {words}",)


@pytest.mark.parametrize(
    ("got", "words"),
    [(2.004, "2.1"), (2.5, "2.5"), (12.0, "12"), (None, "not known")],
)
def test_minutes_beyond_the_limit_never_read_as_within(got: float | None, words: str) -> None:
    found = judge(unlock(sessions=1, settle_minutes_most=2), [replace(GOOD, settle_minutes=got)])
    assert found.because == (
        f"session 1 of the last 1: minutes to settle {words}, asked at most 2",
    )


def session(plan: Plan, entries: list[tuple[str, str]], **symptoms: Any) -> Summary:
    """A session in which some entries were done, with the same scores for each."""
    about = SessionInfo(setup=WELL_READ)
    found = summarise(run_samples(turns_samples(to_s=12.0), steps(to_s=12.0), about))
    one = found.exercises[0]
    rows = [
        one.model_copy(update={"entry_id": e, "exercise": x, "symptoms": symptoms or None})
        for e, x in entries
    ]
    return found.model_copy(update={"plan_id": plan.plan_id, "exercises": rows})


def test_figures_come_from_the_summaries_of_the_entry() -> None:
    plan = parse_plan(TEXT)
    mine = session(plan, [("turns", "turns-on-target")], before=2, after=3, settled_minutes=1.5)
    other_entry = session(plan, [("nods", "nods-together")], before=2, after=9)
    other_plan = mine.model_copy(update={"plan_id": "another"})
    history = history_of(plan, "turns", [mine, other_entry, other_plan])
    assert len(history) == 1
    assert (history[0].rise, history[0].settle_minutes, history[0].clear) == (1, 1.5, None)
    assert history[0].on_target is not None and history[0].on_target > 0.9
    unasked = history_of(plan, "turns", [session(plan, [("turns", "turns-on-target")])])
    assert unasked[0].rise is None  # a score that nobody gave is unknown, not 0


def test_getting_better_is_no_rise() -> None:
    plan = parse_plan(TEXT)
    better = session(plan, [("turns", "turns-on-target")], before=4, after=1)
    assert history_of(plan, "turns", [better])[0].rise == 0


def test_a_stage_counts_when_all_of_it_was_done() -> None:
    plan = starter_plan()
    rows = [(e.entry_id, e.exercise) for e in plan.entries_of("eyes-and-head")]
    whole = session(plan, rows, before=1, after=1)
    part = session(plan, rows[:-1], before=1, after=1)
    assert len(history_of(plan, "eyes-and-head", [whole, part])) == 1
    asked = plan.stages[1].unlock_after
    assert opens(asked, history_of(plan, "eyes-and-head", [whole] * 3), DAY, patient_agrees=True)
    assert not opens(
        asked, history_of(plan, "eyes-and-head", [whole] * 2), DAY, patient_agrees=True
    )
    worse = session(plan, rows, before=1, after=2)
    calm = history_of(plan, "eyes-and-head", [whole, whole, worse])
    assert not opens(asked, calm, DAY, patient_agrees=True)


def test_entries_that_open_later_are_not_needed_for_a_stage() -> None:
    plan = starter_plan()
    rows = [
        (e.entry_id, e.exercise) for e in plan.entries_of("firm-floor") if e.unlock_after is None
    ]
    assert len(rows) == 3
    assert len(history_of(plan, "firm-floor", [session(plan, rows, before=0, after=0)])) == 1
