"""What is found in a plan: a field, a message by key, and what is filled in.

The English of a message is that of the reading and the command line. An editor in another
language looks the key up, and puts :data:`PHRASES` that are filled in into it, too.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from string import Formatter

from tracker.exercises.catalogue import CATALOGUE, OPTIONS, why_never
from tracker.exercises.catalogue.permissions import Option
from tracker.exercises.catalogue.sources import GUIDELINE
from tracker.plan.asked import SUPPORTS
from tracker.plan.lines import Path

#: What is filled in: a name or a phrase, a number, or several phrases.
Value = str | float | tuple[str, ...]

#: Key -> message, with fields for what differs.
MESSAGES: dict[str, str] = {
    # a field that is not what it has to be; where there is a kind of pydantic's, it is the key
    "missing": "is missing",
    "literal_error": "must be {expected}",
    "string_type": "must be a text in quotes",
    "int_type": "must be a whole number",
    "int_from_float": "must be a whole number",
    "float_type": "must be a number",
    "bool_type": "must be true or false",
    "list_type": "must be a list in [ ]",
    "tuple_type": "must be a pair, [from, to]",
    "model_type": "must be fields in {{ }}",
    "model_attributes_type": "must be fields in {{ }}",
    "greater_than_equal": "must be {ge} or more",
    "greater_than": "must be more than {gt}",
    "less_than_equal": "must be {le} or less",
    "finite_number": "must be a finite number",
    "string_too_short": "must not be empty",
    "string_too_long": "is longer than {max_length} characters",
    "too_long": "has more than {max_length} parts",
    "too_short": "must not be empty",
    "date_from_datetime_parsing": "must be a day as in 2026-01-31",
    "date_parsing": "must be a day as in 2026-01-31",
    "date_type": "must be a day as in 2026-01-31",
    "extra_forbidden": "is not a field of a plan; see 'turnpost schema plan'",
    "telephone": "must be a telephone number",
    "public_key": "is no public key of the format age (age1 and 58 more letters)",
    "name": "{given} can't be used here (letters, digits, . _ - only)",
    "twice": "stands there twice",
    "other": "{text}",
    # faults of the plan
    "bilateral_side": "a bilateral loss has both sides affected",
    "baseline_rise": "the baseline rule needs the most rise that is allowed (baseline_rise_most)",
    "keys_and_plain": "there are keys, so nothing is handed over plain",
    "no_keys": "needs keys, or plain set to true knowingly",
    "misspelt_key": "is misspelt: its check letters don't fit",
    "two_stages": "there are two stages {name}",
    "empty_stage": "no entry is in stage {name}",
    "not_before": "{name} is no entry or stage further up in this plan",
    "figures_of_what": "figures need the entry or stage they are taken from (after)",
    # faults of an entry
    "two_entries": "there are two entries {name}",
    "name_of_stage": "{name} is the name of a stage already",
    "stage_missing": "is missing, as this plan has stages",
    "no_stage": "there is no stage {name} in this plan",
    "note_needed": "{exercise} needs a note: {why}",
    "two_doses": "give repetitions or seconds, not both",
    "held_seconds": "{exercise} is held: give seconds",
    "held_tempo": "{exercise} is held: it has no tempo",
    "tempo_to_follow": "{exercise} goes at {most} beats a minute at most",
    "no_degrees": "{exercise} is not measured in degrees",
    "least_first": "the least comes first, then the most",
    "never": "{exercise} {how} is not given: {why}",
    "support": "{exercise} ({how}) needs the support {least}",
    "eyes_closed": "{exercise} is done with the eyes closed",
    "head_shake": "{exercise} is done with a head shake",
    "no_wall": "{exercise} can't be done with marks on the wall",
    "wall_shut": "{exercise} with the eyes closed can't be done with marks on the wall",
    "one_mark": "{exercise} has one mark: leave out the distance from mark to mark",
    "wall_angle": "the marks would lie {angle} degrees to each side: from this far away they "
    "must be {least} to {most} mm apart",
    "wall_spacing": "must be {least} to {most} mm, or no distance from the wall fits it",
    "wall_right": "would lie {angle} degrees to the side of the camera: {most} mm at most from "
    "this far away",
    "wall_above": "would lie {angle} degrees above or below the camera: {most} mm at most from "
    "this far away",
    "wall_neck": "the marks ask for more than the neck limit of {limit} degrees: {most} mm "
    "apart at most from this far away",
    "wall_far": "must be {most} mm at most: farther off, no marks will do",
    "wall_small": "the range or the neck limit leaves {most} degrees to each side, too little "
    "for two marks on the wall: they need {least} at least",
    "later_rung": "must be later than the rung before",
    "idle_rung": "changes nothing: give a tempo (tempo_bpm) or a range (amplitude_deg)",
    "neck": "asks for up to {most} degrees, beyond the neck limit of {limit}",
    # what is only said
    "no_emergency_number": "none is set: the program can only say 'call for help'",
    "none_set": "none is set",
    "not_cleared": "not everything is ticked: only what the seated starter has will be offered",
    "plain": "sessions are handed over unencrypted",
    "no_person": "no pseudonym is set: nobody can tell whose sessions are handed over",
    "near_seat": "nearer than the usual {usual} mm",
    "long_stage": "takes about {minutes} minutes, more than {most}",
    "note_wanted": "a note is asked for with {exercise}: {why}",
    "no_range": "{exercise} asks for no range, so that nothing is held to the neck limit of "
    "{limit} degrees: give one",
    "no_range_held": "how far the head is shaken while {exercise} is held is not watched, whatever "
    "the neck limit of {limit} degrees",
    "degrees_passed_over": "{exercise} is not measured in degrees: the range is passed over",
    "fast": "{exercise} at {most} beats a minute is fast: its usual pace is about {own}",
    "weeks_from_when": "counts weeks, but the day it begins on is not set (starts_on)",
    # the guideline's minutes a day
    "guideline_none": "the guideline names no figure for this kind of loss",
    "guideline_least": "at least {least} for {loss} ({source})",
    "guideline_range": "{least} to {most} for {loss} ({source})",
}

#: Kind of loss, where the guideline names a figure.
LOSSES = {"acute": "an acute loss", "chronic": "a chronic loss", "bilateral": "a bilateral loss"}

#: How an exercise differs from its usual form.
OPTION_WORDS: dict[Option, str] = {
    "eyes_closed": "with the eyes closed",
    "head_shake": "with a head shake",
    "sitting": "sitting",
    "standing": "standing",
    "walking": "walking",
    "soft_surface": "on a soft surface",
}


@dataclass(frozen=True, slots=True)
class Finding:
    """Something about one field of a plan."""

    path: Path
    key: str
    values: Mapping[str, Value] = field(default_factory=dict, hash=False)

    @classmethod
    def of(cls, path: Path, key: str, **values: Value) -> Finding:
        """A finding with what is filled in."""
        return cls(path, key, values)

    @property
    def text(self) -> str:
        """The message in English."""
        return MESSAGES[self.key].format(**{k: _shown(v) for k, v in self.values.items()})


def fields_of(message: str) -> set[str]:
    """Names of the fields of a message."""
    return {name for _, name, _, _ in Formatter().parse(message) if name}


def _shown(value: Value) -> str:
    if isinstance(value, tuple):
        return ", ".join(value)
    return f"{value:g}" if isinstance(value, float) else str(value)


def _phrases() -> list[str]:
    found = [*OPTION_WORDS.values(), *LOSSES.values(), GUIDELINE]
    found += [repr(s) for s in SUPPORTS]
    found += [why_never(exercise, option) for exercise in CATALOGUE for option in OPTIONS]
    found += [e.asks_note for e in CATALOGUE.values() if e.asks_note]
    return list(dict.fromkeys(found))


#: Everything that is filled in and is neither a name nor a number.
PHRASES = tuple(_phrases())
