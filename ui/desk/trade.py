"""The records' words for the therapist in the user's language: as ``telling``, put into it.

The records know no languages, and documents, which are read elsewhere, stay in English; only
what the desk shows goes through here.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from datetime import date
from functools import lru_cache
from typing import ParamSpec

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from tracker.records import telling
from tracker.records.figure import Figure, shown_with_unit
from ui import words
from ui.desk.trade_words import CONTEXT, TRADE
from ui.languages import SOURCE
from ui.words.sentences import Sentences

P = ParamSpec("P")

_KNOWN = Sentences(TRADE)
#: What begins with more zeros is a name or a code.
_DIGITS = r"-?(?:0|[1-9]\d*)(?:\.\d+)?"
_NUMBER = re.compile(_DIGITS)
_WITH_UNIT = re.compile(rf"({_DIGITS}(?: (?:to|±) {_DIGITS})?)( ?[^\d\s]{{1,4}})")
#: Where a further reason begins: a form would take all after the first for its own.
_NEXT_REASON = re.compile(
    r", (?=session \d+ of the last \d+: |rise of the score |minutes to settle |share on target |"
    r"share measured |target said to be clear)"
)
#: Fields that hold what a therapist wrote.
_FREE = frozenset({"words"})
_MONTHS = {name: k for k, name in enumerate(telling._MONTHS, 1)}
_DATED = re.compile(rf"(\d{{1,2}}) ({'|'.join(_MONTHS)})(?: (\d{{4}}))?(?:: (.+))?", re.DOTALL)


def shown(text: str) -> str:
    """A text of the records in the user's language; parts that are not known stay."""
    language = words.say("voice.language")
    return text if language == SOURCE or not text else _put(text, language, QLocale().name())


def all_of(texts: Iterable[str]) -> str:
    """Several texts of the records, one after the other."""
    return "; ".join(shown(text) for text in texts)


@lru_cache(8192)
def _put(text: str, language: str, locale: str) -> str:
    """As `shown`; ``language`` and ``locale`` tell kept answers apart."""
    told = _told(text, language, locale)
    return text if told is None else told


def _told(text: str, language: str, locale: str) -> str | None:
    """A text in the language; None for somebody's own words."""
    dated = _DATED.fullmatch(text)
    if dated:
        when = _day_words(int(dated[1]), _MONTHS[dated[2]], int(dated[3]) if dated[3] else None)
        return f"{when}: {_put(dated[4], language, locale)}" if dated[4] else when
    reasons = _NEXT_REASON.split(text)
    if len(reasons) > 1:
        parts = _parts(reasons, language, locale)
        return None if parts is None else words.row_of(parts)
    found = _KNOWN.find(text) or _KNOWN.find(text[:1].lower() + text[1:])
    if found is not None:
        key, fields = found
        said = words.in_digits(QCoreApplication.translate(CONTEXT, key, key))
        if text[:1].isupper():
            said = said[:1].upper() + said[1:]
        put = {k: v if k in _FREE else _put(v, language, locale) for k, v in fields.items()}
        return said.format(**put)
    if _NUMBER.fullmatch(text):
        return words.number(float(text), len(text.partition(".")[2]))
    for joint in (": ", "; ", ", "):
        if joint in text:
            parts = _parts(text.split(joint), language, locale)
            if parts is None:
                return None
            return words.row_of(parts) if joint == ", " else joint.join(parts)
    opened = re.fullmatch(r"(.+) \((.+)\)", text, re.DOTALL)
    if opened:
        parts = _parts([opened[1], opened[2]], language, locale)
        return None if parts is None else f"{parts[0]} ({parts[1]})"
    number = _WITH_UNIT.fullmatch(text)
    if number:
        return f"{_put(number[1], language, locale)}{number[2]}"
    return None


def _parts(texts: list[str], language: str, locale: str) -> list[str] | None:
    """Parts of a text; None where all are somebody's own words.

    A number beside such words belongs to them and stays as it was written.
    """
    told = [_told(text, language, locale) for text in texts]
    if None in told:
        told = [None if _NUMBER.fullmatch(p) else t for t, p in zip(told, texts, strict=True)]
        if not any(told):
            return None
    return [p if t is None else t for t, p in zip(told, texts, strict=True)]


def _day_words(day: int, month: int, year: int | None) -> str:
    form = words.say("desk.day.short" if year is None else "desk.day")
    return QLocale().toString(QDate(year or 2000, month, day), form)


def _in_words(tell: Callable[P, str]) -> Callable[P, str]:
    def put(*args: P.args, **more: P.kwargs) -> str:
        return shown(tell(*args, **more))

    return put


question = _in_words(telling.question)
ended = _in_words(telling.ended)
flag = _in_words(telling.flag)
event = _in_words(telling.event)
after_drop = _in_words(telling.after_drop)
reason = _in_words(telling.reason)
exercise = _in_words(telling.exercise)
value = _in_words(telling.value)
figure = _in_words(telling.figure)
least_told = _in_words(telling.least_told)
practice = _in_words(telling.practice)
gaze = _in_words(telling.gaze)
condition = _in_words(telling.condition)
step = _in_words(telling.step)
listed = words.row_of


def day(found: date | None, this_year: int | None = None) -> str:
    """A day as :func:`telling.day` writes it."""
    return shown(telling.day(found, this_year))


def not_measured() -> str:
    """What stands in place of a figure."""
    return shown(telling.NOT_MEASURED)


def line_of(told: Figure) -> str:
    """A figure with its name and unit, as every document writes it."""
    return words.say("desk.figure", name=shown(told.label), value=shown(shown_with_unit(told)))
