"""The table of questionnaire scores in a document, and the same as rows for a spreadsheet."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from tracker.records.figure import number_text, shown
from tracker.records.figures import SessionFigures
from tracker.records.places import clean
from tracker.records.questionnaires import Course, Score, courses_of, plain, span_words
from ui.documents.parts import Cell, Row, Table

TITLE = "Questionnaires, scores entered by the therapist"
SCORE_HEADS = (
    "person",
    "questionnaire",
    "day",
    "score",
    "least possible",
    "most possible",
    "above the first",
    "entered by",
)


def scores_for(records: Sequence[SessionFigures], scores: Sequence[Score]) -> list[Score]:
    """Those of the people whose sessions are in a document; also those that were taken back."""
    return scores_of_people({r.person_id for r in records}, scores)


def scores_of_people(people: Collection[str | None], scores: Sequence[Score]) -> list[Score]:
    """Those of some people, who are known as the figures of their sessions name them."""
    return [s for s in scores if s.person in people]


def scores_table(records: Sequence[SessionFigures], scores: Sequence[Score]) -> Table | None:
    """All scores of the people in a document; None without any."""
    columns = ("Person", "Day", "Score", "Can be", "Against the first", "Entered by")
    rows = tuple(
        Row(
            course.name,
            (
                Cell(clean(score.person)),
                Cell(score.day.isoformat()),
                Cell(shown(score.figure)),
                Cell(span_words(score.least, score.most)),
                Cell(against_words(course, score)),
                Cell(clean(score.author)),
            ),
        )
        for course in courses_of(scores_for(records, scores))
        for score in course.scores
    )
    return Table(TITLE, "Questionnaire", columns, rows) if rows else None


def against_words(course: Course, score: Score) -> str:
    """By how much a score is above or below the first."""
    by = course.against_first(score)
    if by is None:
        return "the first"
    if by == 0:
        return "the same"
    return f"{number_text(abs(by), course.decimals)} {'higher' if by > 0 else 'lower'}"


def course_line(course: Course) -> str:
    """A questionnaire in one line: its first score, its last, and what lies between them."""
    first, last = course.scores[0], course.scores[-1]
    text = f"{course.name} ({span_words(course.least, course.most)})"
    if first is last:
        return f"{text}: {plain(first.score)} on {first.day}"
    between = f"{plain(first.score)} on {first.day}, {plain(last.score)} on {last.day}"
    return f"{text}: {between}: {against_words(course, last)}"


def score_rows(
    records: Sequence[SessionFigures], scores: Sequence[Score]
) -> Iterator[dict[str, str]]:
    """One row a score."""
    for course in courses_of(scores_for(records, scores)):
        for score in course.scores:
            by = course.against_first(score)
            cells = (
                score.person,
                course.name,
                score.day.isoformat(),
                shown(score.figure),
                plain(score.least),
                plain(score.most),
                "" if by is None else number_text(by, course.decimals),
                score.author,
            )
            yield dict(zip(SCORE_HEADS, cells, strict=True))
