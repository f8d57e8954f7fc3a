"""Scores of questionnaires that were filled in elsewhere: the score alone, never their text.

Many questionnaires may not be copied, so none is built in here, by text or by name: the
therapist types the name, the score and the range that it can have. They stand in the
therapist's own file of notes (:mod:`tracker.records.notes`), append-only, with an undo.
Nothing is said of what a difference means: how much a score varies by itself, and which
end of it is the better one, is not known here.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import isfinite
from typing import Any

from tracker.errors import InputError
from tracker.records.figure import Figure, number_text
from tracker.records.notes import NoteBook
from tracker.records.places import clean
from tracker.records.units import Unit

KIND = "score"
MAX_NAME = 60
#: Wider than any questionnaire's range; keeps a slip of the hand from spoiling a chart.
LARGEST = 100_000.0
#: Scores are kept with so many decimals at most (means of items have two).
DECIMALS = 2


@dataclass(frozen=True, slots=True)
class Score:
    """One score of a person on a day; ``least`` and ``most`` are the ends of its range.

    ``withdrawn`` is a score that was taken back: only who got it before is told of it.
    """

    id: str
    author: str
    at: str
    person: str
    name: str
    day: date
    score: float
    least: float
    most: float
    withdrawn: bool = False
    writer: str = ""

    @property
    def figure(self) -> Figure:
        """As every document writes it."""
        unit = Unit("{score}", f"({span_words(self.least, self.most)})", decimals_of(self.score))
        return Figure(
            "questionnaire", "all", "questionnaires", self.name, self.score, unit, "reported"
        )


@dataclass(frozen=True, slots=True)
class Course:
    """All scores of a person in one questionnaire of one range, oldest first."""

    person: str
    name: str
    least: float
    most: float
    scores: tuple[Score, ...]

    @property
    def decimals(self) -> int:
        """So many decimals do its scores need."""
        return max(decimals_of(s.score) for s in self.scores)

    def against_first(self, score: Score) -> float | None:
        """By how much a score is above the first; None for the first itself."""
        first = self.scores[0]
        return None if score is first else round(score.score - first.score, DECIMALS)


def add_score(
    book: NoteBook, person: str, name: str, day: date, score: float, ends: tuple[float, float]
) -> Score:
    """Write a score into the author's own file.

    Parameters
    ----------
    book
        Whose file it is.
    person
        The pseudonym.
    name
        Of the questionnaire, as the therapist calls it.
    day
        On which it was filled in.
    ends
        The least and the most that the score can be.

    Raises
    ------
    InputError
        If it makes no sense; nothing is written then.
    RunError
        If it can't be written.
    """
    # As the figures of a session name their person.
    person, name, (least, most) = clean(person, None), clean(name, MAX_NAME), ends
    if not person:
        raise InputError("these sessions name nobody, so a score would be nobody's")
    if not name:
        raise InputError("type the name of the questionnaire")
    if not all(isfinite(v) and abs(v) <= LARGEST for v in (score, least, most)):
        raise InputError(f"the numbers must lie between -{LARGEST:.0f} and {LARGEST:.0f}")
    # As they are kept: ends that differ by less are one.
    score, least, most = (round(v, DECIMALS) for v in (score, least, most))
    if not least < most:
        raise InputError("the least possible score must be below the most")
    if not least <= score <= most:
        raise InputError(f"the score must lie between {plain(least)} and {plain(most)}")
    values = {
        "person": person,
        "name": name,
        "day": day.isoformat(),
        "score": score,
        "least": least,
        "most": most,
    }
    found = _score(book.write_line(KIND, values))
    assert found is not None
    return found


def last_own_score(book: NoteBook, person: str) -> Score | None:
    """The author's own newest score of a person that holds, to withdraw it; None without one."""
    # By place in the file and not by clock: a clock may be set back.
    held = _scores(book.held_lines(KIND))
    own = [s for s in held if book.wrote(s.author, s.writer) and s.person == clean(person, None)]
    return own[-1] if own else None


def last_score_without_writer(book: NoteBook, person: str) -> Score | None:
    """The newest score of a person by the same login that names no writer; None without one.

    Files of before there were writers hold such. It may have been entered at another computer
    with that login, so it is withdrawn only after a question.
    """
    held = _scores(book.held_lines(KIND))
    whose = (book.author, "", clean(person, None))
    found = [s for s in held if (s.author, s.writer, s.person) == whose]
    return found[-1] if found else None


def scores_of(
    book: NoteBook, people: Iterable[str] | None = None, *, also_withdrawn: bool = False
) -> list[Score]:
    """Scores that hold, of some people or all, by person, questionnaire and day.

    ``also_withdrawn`` ones come with them for documents, which know what to do with them.
    """
    wanted = None if people is None else {clean(name, None) for name in people}
    found = _scores(book.held_lines(KIND))
    if also_withdrawn:
        gone = _scores(line for line, withdrawn in book.all_lines(KIND) if withdrawn)
        found += [replace(score, withdrawn=True) for score in gone]
    return sorted((s for s in found if wanted is None or s.person in wanted), key=_order)


def courses_of(scores: Sequence[Score]) -> list[Course]:
    """Scores that hold, by person, questionnaire (capitals don't matter) and range.

    A questionnaire with another range is another scale, and is not compared.
    """
    groups: dict[tuple[Any, ...], list[Score]] = {}
    for score in sorted((s for s in scores if not s.withdrawn), key=_order):
        groups.setdefault(_scale(score), []).append(score)
    return [
        Course(g[-1].person, g[-1].name, g[-1].least, g[-1].most, tuple(g)) for g in groups.values()
    ]


def known_scales(scores: Sequence[Score]) -> list[tuple[str, float, float]]:
    """Names and ranges that were typed before, the newest first, to be chosen again."""
    # Within a second the later day is the newer one.
    newest = sorted(scores, key=lambda s: (s.at, s.day), reverse=True)
    found: dict[str, tuple[str, float, float]] = {}
    for score in newest:
        found.setdefault(score.name.casefold(), (score.name, score.least, score.most))
    return list(found.values())


def decimals_of(value: float) -> int:
    """Fewest decimals that show a value as it was typed."""
    fits = (d for d in range(DECIMALS) if round(value, d) == round(value, DECIMALS))
    return next(fits, DECIMALS)


def plain(value: float) -> str:
    """A number with the decimals that it needs."""
    return number_text(value, decimals_of(value))


def span_words(least: float, most: float) -> str:
    """The range of a score."""
    return f"{plain(least)} to {plain(most)}"


def _order(score: Score) -> tuple[Any, ...]:
    return (*_scale(score), score.day, score.at, score.id)


def _scale(score: Score) -> tuple[Any, ...]:
    return score.person, score.name.casefold(), score.least, score.most


def _scores(lines: Iterable[dict[str, Any]]) -> list[Score]:
    return [s for line in lines if (s := _score(line)) is not None]


def _score(line: dict[str, Any]) -> Score | None:
    """A line of a file of notes as a score; None where a damaged one makes no sense."""
    texts = [line.get(k) for k in ("id", "author", "at", "person", "name", "day")]
    numbers = [line.get(k) for k in ("score", "least", "most")]
    if not all(isinstance(t, str) and t for t in texts) or not all(map(_is_number, numbers)):
        return None
    made, author, at, person, name, day = (str(t) for t in texts)
    score, least, most = (round(float(n), DECIMALS) for n in numbers if n is not None)
    person, name = clean(person, None), clean(name, MAX_NAME)
    try:
        on = date.fromisoformat(day)
    except ValueError:
        return None
    if not name or not person or not least <= score <= most or least == most:
        return None
    writer = str(line.get("writer") or "")
    return Score(made, author, at, person, name, on, score, least, most, writer=writer)


def _is_number(value: Any) -> bool:
    good = isinstance(value, int | float) and not isinstance(value, bool)
    return good and abs(value) <= LARGEST
