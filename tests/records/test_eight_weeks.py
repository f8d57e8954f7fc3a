"""Eight weeks of the invented clinic: does the review answer what is true of its people?

Of the eight weeks the first and the last four are made, and the days of the weekly questions of
the others. Reckoned from .2 s a session, all of them would take some two minutes of processor
time; these took 84 s on 27 November 2026 (4 minutes by the clock, with six programs waiting for
two cores).
"""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import pytest

from tests.records.clinic import FIRST_DAY, PATIENTS, write_clinic
from tests.records.clinic_truth import TRUTH, WEEKS, WEEKS_ENOUGH
from tracker.records.attention import Kind, Reason
from tracker.records.index import read_folder
from tracker.records.notes import NoteBook
from tracker.records.people import Person, people_of
from tracker.records.questionnaires import courses_of, scores_of

#: The same for all, and so long that a set has room for one glance of who seldom looks away (see
#: ``TRUTH``): what is true of somebody is not to hang on how long they were watched.
SET_S = 12.0
#: The day after the last one: the last 28 days are the last four weeks.
TODAY = FIRST_DAY + timedelta(days=7 * WEEKS)


# One test: where tests are shared out among processes, each would make the clinic anew.
@pytest.mark.slow
@pytest.mark.timeout(1800)
def test_the_review_answers_what_is_true(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("TURNPOST_CACHE", str(tmp_path / "cache"))
    folder = tmp_path / "clinic"
    write_clinic(folder, 7 * WEEKS, 0, set_s=SET_S, weeks=WEEKS_ENOUGH)
    records = read_folder(folder)
    assert records.unread == [] and len(records.rows) > 300
    people = {p.name: p for p in people_of(records, TODAY)}
    assert set(people) == {p.name for p in PATIENTS}
    whom_to_call_first(people)
    who_practised_least(people)
    whose_gaze_fell_and_to_which_side(people)
    whose_symptoms_rise_and_what_had_changed(people)
    whose_condition_is_met(people)
    which_figures_can_not_be_trusted(people)
    whose_questionnaires_differ(folder)


def told(people: dict[str, Person], kind: Kind) -> dict[str, Reason]:
    return {n: r for n, p in people.items() for r in p.reasons if r.kind == kind}


def whom_to_call_first(people: dict[str, Person]) -> None:
    urgent = [n for n, p in people.items() if any(r.first for r in p.reasons)]
    assert tuple(urgent) == TRUTH.call_first == tuple(people)[: len(urgent)]
    fell, unwell = TRUTH.call_first
    assert list(told(people, Kind.fell)) == [fell]
    assert list(told(people, Kind.unwell)) == list(told(people, Kind.spin)) == [unwell]


def who_practised_least(people: dict[str, Person]) -> None:
    name, done, asked = TRUTH.practised_least
    shares = {n: p.adherence.share or 0.0 for n, p in people.items()}
    assert min(shares, key=lambda n: shares[n]) == name
    found = people[name].adherence
    assert (found.counted, round(found.asked)) == (done, asked)
    assert list(told(people, Kind.practice)) == [name]


def whose_gaze_fell_and_to_which_side(people: dict[str, Person]) -> None:
    found = told(people, Kind.gaze)
    assert set(found) == set(TRUTH.gaze_fell)
    for name, side in TRUTH.gaze_fell.items():
        assert f"head to the {side}" in found[name].text
        other = {"left": "right", "right": "left"}[side]
        assert f"head to the {other}" not in found[name].text


def whose_symptoms_rise_and_what_had_changed(people: dict[str, Person]) -> None:
    assert set(told(people, Kind.rising)) == set(TRUTH.rising)
    for name, (low, high) in TRUTH.rising.items():
        (series,) = [
            s for s in people[name].series() if not s.exercise and s.figure == "dizziness_before"
        ]
        first, last = series.change.first, series.change.last
        assert first == pytest.approx(low, abs=0.5) and last == pytest.approx(high, abs=0.5)
    who, week = TRUTH.medicines
    found = told(people, Kind.medicines)
    day = found[who].day
    assert list(found) == [who] and day is not None
    assert (day - FIRST_DAY).days // 7 + 1 == week


def whose_condition_is_met(people: dict[str, Person]) -> None:
    assert tuple(told(people, Kind.condition)) == TRUTH.condition_met
    met = {n for n, p in people.items() if any(s.condition.met for s in p.conditions)}
    assert met == set(TRUTH.condition_met)
    assert all(len(p.conditions) == 1 for p in people.values())


def which_figures_can_not_be_trusted(people: dict[str, Person]) -> None:
    found = told(people, Kind.doubt)
    assert set(found) == set(TRUTH.not_trusted)
    for name, why in TRUTH.not_trusted.items():
        assert why in found[name].text
        measured = [s for s in people[name].series() if s.figure == "amplitude_deg"]
        assert measured and all(s.change.verdict == "too_few" for s in measured)


def whose_questionnaires_differ(folder: Path) -> None:
    courses = courses_of(scores_of(NoteBook(folder, "anybody")))
    by = {c.person: c.scores[-1].score - c.scores[0].score for c in courses}
    assert {n for n, d in by.items() if d < 0} == set(TRUTH.scores_fell)
    assert {n for n, d in by.items() if d > 0} == set(TRUTH.scores_rose)
