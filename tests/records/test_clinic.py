"""The invented clinic, through the real engine: the questions of a busy therapist."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from tests.records.clinic import FIRST_DAY, LAST_DAY, TODAY
from tracker.records import telling
from tracker.records.attention import Kind
from tracker.records.figure import shown_with_unit
from tracker.records.figures import record_of
from tracker.records.index import read_folder
from tracker.records.notes import NoteBook
from tracker.records.people import Person, people_of
from tracker.records.questionnaires import courses_of, scores_of
from tracker.records.trends import SPECS
from tracker.session.summary_file import load_summary
from ui.cli import main

pytestmark = pytest.mark.timeout(300)


@pytest.fixture
def folder(small_clinic: Path) -> Path:
    return small_clinic


@pytest.fixture
def people(folder: Path) -> dict[str, Person]:
    records = read_folder(folder)
    assert records.unread == []
    return {p.name: p for p in people_of(records, TODAY)}


def test_who_is_called_first(people: dict[str, Person]) -> None:
    first, second = list(people.values())[:2]
    assert (first.name, second.name) == ("robin", "finch")
    (fell,) = first.reasons
    assert fell.kind == Kind.fell and fell.text.endswith("one fall, not hurt")
    (told,) = [r for r in first.rows if r.place == fell.place]
    # That day was over with it: nothing was practised, not later either.
    assert told.ended == "red_flag" and not told.sets
    assert [r for r in first.rows if r.day == told.day] == [told]
    assert [r.kind for r in second.reasons[:2]] == [Kind.unwell, Kind.spin]
    assert all(r.day == LAST_DAY for r in second.reasons[:2])


def test_who_practised_least(people: dict[str, Person]) -> None:
    shares = {n: p.adherence.share for n, p in people.items()}
    assert min(shares, key=lambda n: shares[n] or 0.0) == "wren"
    assert [r.kind for r in people["wren"].reasons] == [Kind.practice]
    assert people["heron"].adherence.to_day == LAST_DAY


def test_whose_gaze_fell_and_to_which_side(people: dict[str, Person]) -> None:
    fell = {n: r for n, p in people.items() for r in p.reasons if r.kind == Kind.gaze}
    assert list(fell) == ["teal"] and "head to the left" in fell["teal"].text


def test_whose_symptoms_rise(people: dict[str, Person]) -> None:
    assert [n for n, p in people.items() if Kind.rising in [r.kind for r in p.reasons]] == ["finch"]


def test_medicines_changed_before_the_symptoms_rose(people: dict[str, Person]) -> None:
    told = {n: r for n, p in people.items() for r in p.reasons if r.kind == Kind.medicines}
    assert list(told) == ["finch"]
    day, rows = told["finch"].day, people["finch"].rows
    assert day is not None and FIRST_DAY < day < LAST_DAY
    assert {r.before for r in rows if r.day is not None and r.day < day} == {1}
    assert rows[-1].before == 4


def test_whose_scores_of_two_dates_differ(folder: Path) -> None:
    courses = courses_of(scores_of(NoteBook(folder, "anybody")))
    found = {c.person: [(s.day, s.score) for s in c.scores] for c in courses}
    first = {n: FIRST_DAY - timedelta(days=k) for n, k in (("heron", 5), ("finch", 4))}
    assert found == {
        "heron": [(first["heron"], 62.0), (LAST_DAY, 31.0)],
        "finch": [(first["finch"], 34.0), (LAST_DAY, 48.0)],
    }


def test_which_figures_can_not_be_trusted(people: dict[str, Person]) -> None:
    doubt = {n: r.text for n, p in people.items() for r in p.reasons if r.kind == Kind.doubt}
    assert list(doubt) == ["plover"] and "dark" in doubt["plover"]
    series = people["plover"].series()
    measured = [s for s in series if s.figure == "amplitude_deg" and not s.side]
    assert measured and measured[0].change.verdict == "too_few"
    assert all(p.doubts for s in measured for p in s.points)


def test_whose_condition_is_met(people: dict[str, Person]) -> None:
    met = [n for n, p in people.items() if Kind.condition in [r.kind for r in p.reasons]]
    assert met == ["heron"]
    assert [s.condition.met for s in people["teal"].conditions] == [False]


def test_every_figure_reads_as_in_the_documents(folder: Path, people: dict[str, Person]) -> None:
    compared = 0
    for person in people.values():
        row = person.rows[-1]
        record = record_of(load_summary(folder / row.place))
        for done, exercise in zip(row.sets, record.exercises, strict=True):
            assert exercise.exercise == done.exercise
            for key, value in done.figures.items():
                figure, spec = exercise.find(key), SPECS.get(key.partition(".")[0])
                if figure is None or spec is None or isinstance(figure.value, str):
                    continue
                shown = telling.value(spec, value)
                # The desk's rows have no errors: over time a change is called by a rule of its own.
                bare = shown_with_unit(replace(figure, error=None))
                expected = telling.NOT_MEASURED if value is None else bare
                assert shown == expected, (person.name, key)
                compared += 1
    assert compared > 50


def test_who_improves_and_nothing_is_wrong(people: dict[str, Person]) -> None:
    heron = people["heron"]
    assert [r.kind for r in heron.reasons] == [Kind.condition]
    changes = {(s.figure, s.side): s.change.verdict for s in heron.series() if s.exercise}
    assert changes["on_target", ""] == "rose"
    assert changes["amplitude_deg", "left"] == "rose"
    assert changes["dizziness_before", ""] == "fell"
    assert changes["measured", ""] == "no_change"
    # It is the baseline of the clinic that they are compared with, where one was taken.
    since = {s.change.since for s in heron.series() if s.figure == "amplitude_deg"}
    assert since == {FIRST_DAY - timedelta(days=5)} and heron.rows[0].baseline
    days = {n: p.baseline_day for n, p in people.items()}
    assert {n for n, d in days.items() if d} == {"heron", "robin", "finch"}


def test_the_list_as_text(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["review", str(folder), "--text", "--today", TODAY.isoformat()]) == 0
    out = capsys.readouterr().out
    names = ("robin", "finch", "wren", "teal", "plover", "heron")
    places = [out.index(f"\n{n}  (last session") for n in names]
    assert places == sorted(places)
    assert f"{telling.day(LAST_DAY)}: stopped unwell" in out
    assert "told of falls in the last week: one fall, not hurt" in out
    assert "said that medicines have changed" in out
    assert "not seen by the camera" in out and "Left out" not in out


def test_one_person_as_text(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["review", str(folder), "--text", "--person", "plover"]) == 0
    out = capsys.readouterr().out
    assert "plover, affected side: right" in out and "too few measured sessions" in out
    assert "amplitude, right (affected)" in out
    assert main(["review", str(folder), "--text", "--person", "heron"]) == 0
    out = capsys.readouterr().out
    assert "Baseline, taken together in the clinic: 23 Sep 2026" in out
    assert "Questionnaire A (0 to 100): 62 on 2026-09-23, 31 on 2026-10-03: 31 lower" in out


def test_a_wrong_call_says_what_to_do(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for call, says in (
        (["review", str(folder), "--text", "--person", "owl"], "it has: robin, finch, "),
        (["review", str(folder), "--person", "finch"], "goes with --text"),
        (["review", str(folder / "nowhere"), "--text"], "no such folder"),
        (["review", __file__, "--text"], "turnpost receive FILE"),
    ):
        assert main(call) == 2
        assert says in capsys.readouterr().err
    assert main(["review", str(folder), "--text", "--today", "26.11.2026"]) == 2
    assert "no day as in" in capsys.readouterr().err


def test_text_needs_no_qt(folder: Path) -> None:
    import subprocess
    import sys

    code = (
        "import sys, ui.cli; "
        f"assert ui.cli.main(['review', {str(folder)!r}, '--text']) == 0; "
        "assert 'PySide6' not in sys.modules"
    )
    subprocess.run([sys.executable, "-c", code], check=True, capture_output=True)


def test_an_empty_folder_is_no_fault(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["review", str(tmp_path), "--text"]) == 0
    assert "No sessions were found" in capsys.readouterr().out


def test_its_sets_are_acted_by_rendered_heads(folder: Path) -> None:
    """Of each person a session whose eyes turn against the head, as eyes on a near target do.

    Formulas of gaze alone would have no eyes in the head at all.
    """
    ratios: dict[str, list[float]] = {}
    for path in sorted(folder.glob("*/*/summary.json")):
        summary = load_summary(path)
        for exercise in summary.exercises:
            found = ((exercise.gaze or {}).get("counter_turn_ratio") or {}).get("median")
            if exercise.exercise == "turns-on-target" and found is not None:
                ratios.setdefault(str(summary.person), []).append(found)
    # In plover's light too little is seen to tell.
    assert set(ratios) == {"heron", "robin", "finch", "teal", "wren"}
    # Above 1, as the eyes move sideways before a near target (6 in 60 cm and more).
    steady = [v for name in ("finch", "wren") for v in ratios[name]]
    assert all(1.0 < v < 1.4 for v in steady) and len({round(v, 4) for v in steady}) > 5
