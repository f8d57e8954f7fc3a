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
from ui.sentences import Sentences

P = ParamSpec("P")

_KNOWN = Sentences(TRADE)
_NUMBER = re.compile(r"-?\d+(\.\d+)?")
_WITH_UNIT = re.compile(r"(-?\d+(?:\.\d+)?(?: to -?\d+(?:\.\d+)?)?)( ?[^\d\s]{1,4})")
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
    found = _KNOWN.find(text) or _KNOWN.find(text[:1].lower() + text[1:])
    if found is not None:
        key, fields = found
        said = words.in_digits(QCoreApplication.translate(CONTEXT, key, key))
        if text[:1].isupper():
            said = said[:1].upper() + said[1:]
        return said.format(**{k: _put(v, language, locale) for k, v in fields.items()})
    if _NUMBER.fullmatch(text):
        return words.number(float(text), len(text.partition(".")[2]))
    dated = _DATED.fullmatch(text)
    if dated:
        when = _day_words(int(dated[1]), _MONTHS[dated[2]], int(dated[3]) if dated[3] else None)
        return f"{when}: {_put(dated[4], language, locale)}" if dated[4] else when
    for joint in (": ", "; ", ", "):
        if joint in text:
            parts = [_put(part, language, locale) for part in text.split(joint)]
            return (words.say("comma") + " " if joint == ", " else joint).join(parts)
    opened = re.fullmatch(r"(.+) \((.+)\)", text, re.DOTALL)
    if opened:
        return f"{_put(opened[1], language, locale)} ({_put(opened[2], language, locale)})"
    number = _WITH_UNIT.fullmatch(text)
    if number:
        return f"{_put(number[1], language, locale)}{number[2]}"
    return text


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
exercise = _in_words(telling.exercise)
value = _in_words(telling.value)
figure = _in_words(telling.figure)
practice = _in_words(telling.practice)
condition = _in_words(telling.condition)
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
