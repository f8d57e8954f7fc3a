"""Scores of questionnaires: entered, withdrawn, put together; nobody's else is touched."""

from __future__ import annotations

import json
from datetime import date
from math import inf, nan
from pathlib import Path
from typing import Any

import pytest

from tracker.errors import InputError, RunError
from tracker.records.figure import shown_with_unit
from tracker.records.notes import NoteBook
from tracker.records.questionnaires import (
    Score,
    add_score,
    courses_of,
    known_scales,
    last_own_score,
    last_score_without_writer,
    scores_of,
)

DAY = date(2026, 3, 2)


@pytest.fixture
def book(tmp_path: Path) -> NoteBook:
    return NoteBook(tmp_path, "kim")


def add(book: NoteBook, score: float = 48.0, **changes: Any) -> Score:
    values: dict[str, Any] = {"person": "Wren", "name": "Balance A", "day": DAY, "ends": (0, 100)}
    return add_score(book, score=score, **{**values, **changes})


def undo_score(book: NoteBook, person: str) -> Score | None:
    last = last_own_score(book, person)
    if last is not None:
        book.withdraw(last.id)
    return last


def test_one_without_a_writer_is_withdrawn_by_the_same_login_and_by_no_other(
    tmp_path: Path,
) -> None:
    before = NoteBook(tmp_path, "kim")
    older, newer = add(before, 40), add(before, 41)
    add(before, 42, person="Robin")
    ours, lee = NoteBook(tmp_path, "kim", "a1"), NoteBook(tmp_path, "lee", "b2")
    theirs = add(NoteBook(tmp_path, "kim", "c3"), 50)
    assert last_own_score(ours, "Wren") is None
    assert last_score_without_writer(lee, "Wren") is None
    stood = before.path.read_bytes()
    for expected in (newer, older):
        found = last_score_without_writer(ours, "Wren")
        assert found == expected
        ours.withdraw(found.id)
    assert last_score_without_writer(ours, "Wren") is None
    assert scores_of(lee, ["Wren"]) == [theirs] and len(scores_of(lee, ["Robin"])) == 1
    # It was withdrawn by two more lines, in a file of one's own.
    assert before.path.read_bytes() == stood
    gone = [s for s in scores_of(lee, ["Wren"], also_withdrawn=True) if s.withdrawn]
    assert {s.id for s in gone} == {older.id, newer.id}


def test_a_score_is_read_again_as_it_was_entered(book: NoteBook) -> None:
    made = add(book, 67.5)
    (found,) = scores_of(NoteBook(book.folder.parent, "lee"))
    assert found == made
    assert (found.person, found.name, found.day) == ("Wren", "Balance A", DAY)
    assert (found.score, found.least, found.most, found.author) == (67.5, 0.0, 100.0, "kim")
    assert shown_with_unit(found.figure) == "67.5 (0 to 100)"


def test_the_file_only_grows_and_notes_are_apart(book: NoteBook) -> None:
    book.add("note", "s1", "seen")
    before = book.path.read_bytes()
    add(book)
    assert book.path.read_bytes().startswith(before)
    grown = book.path.read_bytes()
    undone = undo_score(book, "Wren")
    assert undone is not None and undone.score == 48.0
    assert book.path.read_bytes().startswith(grown) and scores_of(book) == []
    assert [n.text for n in book.notes()] == ["seen"]
    # Undoing a note takes no score away.
    add(book)
    assert book.undo() is not None and book.undo() is None
    assert len(scores_of(book)) == 1


def test_undo_takes_ones_own_last_of_that_person(book: NoteBook) -> None:
    lee = NoteBook(book.folder.parent, "lee")
    add(book, 1)
    add(book, 2, day=date(2020, 1, 1))
    add(book, 3, person="Finch")
    add(lee, 4)
    undone = undo_score(book, "Wren")
    assert undone is not None and undone.score == 2
    assert [undo_score(book, "Wren").score, undo_score(book, "Wren")] == [1, None]  # type: ignore[union-attr]
    assert [(s.person, s.score) for s in scores_of(book)] == [("Finch", 3), ("Wren", 4)]


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"name": " \u202e "}, "type the name"),
        ({"person": ""}, "name nobody"),
        ({"score": 101}, "between 0 and 100"),
        ({"score": -1}, "between 0 and 100"),
        ({"ends": (5, 5)}, "below the most"),
        ({"ends": (9, 5)}, "below the most"),
        ({"score": 0.002, "ends": (0.001, 0.004)}, "below the most"),
        ({"score": nan}, "numbers must lie"),
        ({"ends": (0, inf)}, "numbers must lie"),
        ({"ends": (0, 1e9)}, "numbers must lie"),
    ],
)
def test_what_makes_no_sense_is_refused_and_not_written(
    book: NoteBook, changes: dict[str, Any], says: str
) -> None:
    with pytest.raises(InputError, match=says):
        add(book, **changes)
    assert not book.path.exists()


def test_a_score_at_an_end_stays_there_when_it_is_rounded(book: NoteBook) -> None:
    made = add(book, 2.6749, ends=(1.001, 2.6701))
    assert (made.score, made.least, made.most) == (2.67, 1.0, 2.67)
    assert scores_of(book) == [made]


def test_what_can_not_be_written_is_said(tmp_path: Path) -> None:
    (tmp_path / "notes").write_text("a file where the folder should be")
    with pytest.raises(RunError, match="not saved"):
        add(NoteBook(tmp_path, "kim"))


def test_courses_are_by_person_name_and_range(book: NoteBook) -> None:
    add(book, 60, day=date(2026, 4, 1))
    add(book, 48.5, name="balance a", day=date(2026, 5, 1))
    add(book, 72, day=DAY)
    add(book, 3, ends=(0, 10))
    add(book, 40, name="Other")
    add(book, 10, person="Finch")
    courses = courses_of(scores_of(book, ["Wren"]))
    assert [(c.name, c.most, [s.score for s in c.scores]) for c in courses] == [
        ("Balance A", 10, [3]),
        ("balance a", 100, [72, 60, 48.5]),
        ("Other", 100, [40]),
    ]
    course = courses[1]
    assert [course.against_first(s) for s in course.scores] == [None, -12, -23.5]
    assert course.decimals == 1 and courses[0].decimals == 0


def test_what_was_typed_before_can_be_chosen_again(book: NoteBook) -> None:
    assert known_scales(scores_of(book)) == []
    add(book, person="Finch")
    add(book, 5, name="Other", ends=(0, 10))
    assert sorted(known_scales(scores_of(book))) == [("Balance A", 0, 100), ("Other", 0, 10)]


@pytest.mark.parametrize(
    "spoilt",
    [
        {"score": "48"},
        {"score": True},
        {"score": 1e300},
        {"score": 200},
        {"day": "yesterday"},
        {"day": 5},
        {"name": "\u202e"},
        {"person": ""},
        {"least": None},
        {"most": [100]},
        {"id": ""},
    ],
)
def test_a_damaged_line_is_passed_over_and_the_others_stay(
    book: NoteBook, spoilt: dict[str, Any]
) -> None:
    add(book, 1)
    lines = book.path.read_text(encoding="utf-8").splitlines()
    damaged = json.loads(lines[1]) | {"id": "other"} | spoilt
    book.path.write_text("\n".join([lines[0], json.dumps(damaged), lines[1], ""]), "utf-8")
    assert [s.score for s in scores_of(book)] == [1]


def test_nobody_writes_into_anothers_name(book: NoteBook) -> None:
    add(book, 1)
    text = book.path.read_text(encoding="utf-8").replace(
        '"author": "kim", "at"', '"author": "lee", "at"'
    )
    book.path.write_text(text, encoding="utf-8")
    assert [s.author for s in scores_of(book)] == ["kim"]
