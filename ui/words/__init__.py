"""Every word that a patient reads, by key, through Qt's translation.

The tracker speaks in keys (event codes, reasons, findings, exercise ids); the
words for them stand in the modules that are gathered here and nowhere else. Plain
words, second person, short sentences, verbs on buttons.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication, QLocale, Qt

from tracker.errors import in_words
from ui.words.camera import CAMERA_WORDS
from ui.words.desk import DESK_WORDS
from ui.words.editor import EDITOR_WORDS
from ui.words.exercise import EXERCISE_WORDS
from ui.words.figure import FIGURE_WORDS
from ui.words.first import FIRST_WORDS
from ui.words.guide import GUIDE_WORDS
from ui.words.handover import HANDOVER_WORDS
from ui.words.help import HELP_WORDS
from ui.words.manner import MANNER_WORDS
from ui.words.planned import PLANNED_WORDS
from ui.words.practice import PRACTICE_WORDS
from ui.words.safety import SAFETY_WORDS
from ui.words.sentences import Sentences
from ui.words.setup import SETUP_WORDS
from ui.words.share import SHARE_WORDS
from ui.words.sheet import SHEET_WORDS
from ui.words.stored import STORED_WORDS
from ui.words.summary import SUMMARY_WORDS
from ui.words.told import TOLD_WORDS
from ui.words.tools import TOOLS_WORDS
from ui.words.voice import VOICE_WORDS
from ui.words.weekly import WEEKLY_WORDS
from ui.words.welcome import WELCOME_WORDS
from ui.words.window import WINDOW_WORDS

CONTEXT = "turnpost"

WORDS: dict[str, object] = {
    **WINDOW_WORDS,
    **WELCOME_WORDS,
    **CAMERA_WORDS,
    **PRACTICE_WORDS,
    **EXERCISE_WORDS,
    **MANNER_WORDS,
    **FIGURE_WORDS,
    **FIRST_WORDS,
    **SAFETY_WORDS,
    **PLANNED_WORDS,
    **VOICE_WORDS,
    **WEEKLY_WORDS,
    **SHARE_WORDS,
    **TOOLS_WORDS,
    **STORED_WORDS,
    **HELP_WORDS,
    **HANDOVER_WORDS,
    **DESK_WORDS,
    **TOLD_WORDS,
    **GUIDE_WORDS,
    **EDITOR_WORDS,
    **SHEET_WORDS,
    **SETUP_WORDS,
    **SUMMARY_WORDS,
}


def has(key: str) -> bool:
    """Whether there are words for a key."""
    return key in WORDS


def say(key: str, /, **values: object) -> str:
    """The words for a key, in the user's language, with the values filled in.

    The same English may need other words elsewhere: the key tells the translation which.
    Whole numbers are written as the language does.
    """
    text = in_digits(QCoreApplication.translate(CONTEXT, str(WORDS[key]), key))
    if not values:
        return text
    return text.format(**{k: number(v) if type(v) is int else v for k, v in values.items()})


def times(count: float) -> str:
    """How often, in words."""
    if count == 1:
        return say("ask.dose.once")
    return say("ask.dose.repetitions", count=number(count))


def say_or(key: str, other: str, /, **values: object) -> str:
    """The words for a key, or those for another where there are none."""
    return say(key, **values) if key in WORDS else say(other, **values)


_TOLD = Sentences({key: str(text) for key, text in TOLD_WORDS.items()})


def told(text: str) -> str:
    """A sentence that came in English, in the user's language; an unknown one as it came.

    Paths and names in it keep their own order among words that are read from the right.
    """
    found = _TOLD.find(text)
    if found is None:
        return text
    key, fields = found
    return say(key, **{name: _in_its_place(name, value) for name, value in fields.items()})


def failed(error: BaseException) -> str:
    """Why something failed, in the user's language as far as it is known there."""
    return told(in_words(error))


def _in_its_place(name: str, value: str) -> int | str:
    """A field of a sentence that came: a reason in it is a sentence, too."""
    if value.isdecimal():
        return int(value)
    reason = told(value) if name == "why" else value
    return _as_it_is(value) if reason == value else reason


def _as_it_is(value: str) -> str:
    """A value in a sentence: Latin letters with signs among them would fall apart in Arabic."""
    return apart(value) if re.search(r"[A-Za-z]", value) else value


def sentence(text: str) -> str:
    """A text that stands by itself: with a large first letter, and a stop at its end."""
    end = "" if text[-1:] in (".", "!", "?", "؟", "") else "."
    return f"{text[:1].upper()}{text[1:]}{end}"


def from_right() -> bool:
    """Whether the language is read from right to left."""
    return QLocale().textDirection() == Qt.LayoutDirection.RightToLeft


def apart(text: str) -> str:
    """A text that keeps its own order among words that are read from the right."""
    return f"\u2066{text}\u2069" if from_right() else text


def row_of(parts: Iterable[str]) -> str:
    """Parts of a line, with the language's comma between them."""
    return f"{say('comma')} ".join(parts)


def reason(key: str) -> str:
    """Why something is not measured, in words."""
    return say_or(f"reason.{key}", "reason.other")


def in_digits(text: str) -> str:
    """A text with its digits as the user's country writes them; those of F4 or A4 stay."""
    zero = QLocale().zeroDigit()
    if zero == "0":
        return text
    put = str.maketrans("0123456789", "".join(chr(ord(zero) + d) for d in range(10)))
    return re.sub(r"(?<![A-Za-z0-9])[0-9]+", lambda run: run[0].translate(put), text)


def number(value: float, decimals: int = 0) -> str:
    """A number as the user's country writes it."""
    return QLocale().toString(float(value), "f", decimals)
