"""What is found in a plan, and phrases of the catalogue, in the user's language.

The English stands in ``tracker.plan.findings``, where the reading of files has it from; a
translation may call a field as the editor does, and not as the file.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from tracker.exercises.catalogue import CATALOGUE
from tracker.exercises.catalogue.sources import COMMON, LEAFLET
from tracker.plan.findings import MESSAGES, PHRASES, Finding, Value
from tracker.plan.telling import counted_from
from ui import words
from ui.languages import SOURCE

CONTEXT = "plan"
_PHRASES = [
    *PHRASES,
    COMMON,
    LEAFLET,
    *(counted_from(exercise) for exercise in CATALOGUE.values()),
    *(source for exercise in CATALOGUE.values() for source in exercise.sources.values()),
]
#: Every text by what it is found by in the files of the languages.
PLAN_TEXTS: dict[str, str] = {f"finding.{k}": v for k, v in MESSAGES.items()} | {
    phrase: phrase for phrase in _PHRASES
}


def told(finding: Finding) -> str:
    """The message of a finding."""
    if words.say("voice.language") == SOURCE:
        return finding.text
    said = _looked_up(f"finding.{finding.key}")
    return said.format(**{name: _put(value) for name, value in finding.values.items()})


def phrase(text: str) -> str:
    """A phrase of the catalogue; anything else stays as it is."""
    return _looked_up(text) if text in PLAN_TEXTS else text


def _looked_up(key: str) -> str:
    return QCoreApplication.translate(CONTEXT, PLAN_TEXTS[key], key)


def _put(value: Value) -> str:
    if isinstance(value, tuple):
        return words.row_of(_put(part) for part in value)
    if isinstance(value, str):
        # A name of the plan's own keeps its order, also one that begins with a digit.
        return phrase(value) if value in PLAN_TEXTS else words.apart(value)
    # As many decimals as it has, and as the country writes them.
    text = f"{value:g}"
    return words.number(value, len(text.partition(".")[2]))
