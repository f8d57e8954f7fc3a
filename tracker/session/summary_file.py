"""The summary's file: what a therapist reads of one session.

``schema()`` is the published JSON Schema.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Annotated, Any, Literal, get_args

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from tracker.errors import InputError
from tracker.inputs import read_input
from tracker.session.bench import BENCH_SCHEMA
from tracker.session.files import write_atomically
from tracker.session.flags import Flag
from tracker.session.uncertain import CARRIED

FORMAT = "turnpost-session"
FORMAT_VERSION = 1
MAX_FILE_BYTES = 50_000_000


Ended = Literal[
    "finished",
    "stopped",
    "stopped_unwell",
    "symptom_rule",
    "red_flag",
    "possible_fall",
    "interrupted",
]


ENDED: tuple[str, ...] = get_args(Ended)


_NUMBER = {"type": ["number", "null"]}
#: JSON Schema of the uncertainty of a figure, in its unit. Summaries of before have none.
UNCERTAINTY_SCHEMA: dict[str, Any] = {
    "type": "object",
    "description": "Of measuring (JCGM 100:2008); the person's own spread is not in it.",
    "properties": {
        "expanded": {**_NUMBER, "description": "k times the standard one, and the bias"},
        "k": {"type": "number"},
        "noise": {**_NUMBER, "description": "standard: noise, times of the pictures, form"},
        "setup": {**_NUMBER, "description": "standard: the stated error of the set-up"},
        "bias": {**_NUMBER, "description": "how much larger than the truth it reads"},
        "reason": {"type": ["string", "null"]},
    },
    "required": ["expanded", "k", "reason"],
}
_FIGURE_SCHEMA: dict[str, Any] = {
    "type": "object",
    "properties": {
        "uncertainty": UNCERTAINTY_SCHEMA,
        "spread_uncertainty": {**_NUMBER, "description": "expanded, of the spread"},
    },
}
_WHOLE_SCHEMA: dict[str, Any] = {
    "type": "object",
    "properties": {
        **_FIGURE_SCHEMA["properties"],
        "by_side": {"type": "object", "additionalProperties": _FIGURE_SCHEMA},
        "first_five": _FIGURE_SCHEMA,
        "last_five": _FIGURE_SCHEMA,
        "difference": {
            "type": "object",
            "description": "Means of the last five repetitions less those of the first five.",
            "properties": {
                "value": _NUMBER,
                "uncertainty": UNCERTAINTY_SCHEMA,
                "least": {**_NUMBER, "description": "the smallest that is called a change"},
                "verdict": {"enum": ["rose", "fell", "no_change"]},
                "limit": {"enum": ["error", "uneven"]},
                "uncalled": {"type": "string", "description": "why there is no verdict"},
                "reason": {"type": ["string", "null"]},
            },
            "required": ["value", "reason"],
        },
    },
}
#: Figures of a movement: free, but for their uncertainty.
Movement = Annotated[
    dict[str, Any],
    Field(json_schema_extra={"properties": dict.fromkeys(CARRIED, _WHOLE_SCHEMA)}),
]


class _Part(BaseModel):
    model_config = ConfigDict(extra="allow")


class EventRow(_Part):
    """Something noticed; ``said_at_s`` is null if it was never said."""

    code: str
    start_s: float
    end_s: float | None
    said_at_s: float | None
    reason: str | None = None


class Done(_Part):
    """What was really done; the counts are null, with a reason, where nothing is counted.

    ``measured_fraction`` is null where nobody tried to measure: practice that was told of.
    """

    repetitions: int | None
    turns: int | None
    duration_s: float
    measured_fraction: float | None
    held_s: float | None = None
    held_longest_s: float | None = None
    reason: str | None = None


class ExerciseSummary(_Part):
    """One exercise; ``after_drop`` is what was said after a drop in it (see :class:`Summary`)."""

    exercise: str
    entry_id: str | None
    prescribed: dict[str, Any]
    done: Done
    head: Movement | None
    eyes: Movement | None
    body: dict[str, Any] | None = None
    hand: dict[str, Any] | None = None
    gaze: dict[str, Any] | None
    clarity: dict[str, Any]
    stillness: dict[str, Any] | None
    eyes_closed_fraction: dict[str, Any]
    sway: dict[str, Any]
    events: list[EventRow]
    repetitions_list: list[dict[str, Any]]
    symptoms: dict[str, Any] | None
    quality: list[Flag]
    not_measured: list[str]
    setup: dict[str, Any] | None = None
    support: dict[str, Any] | None = None
    steadied: dict[str, Any] | None = None
    arm: dict[str, Any] | None = None
    landed: dict[str, Any] | None = None
    after_drop: dict[str, Any] | None = None
    changed: dict[str, Any] | None = None
    own_count: dict[str, Any] | None = None
    table: dict[str, Any] | None = None
    order: dict[str, Any] | None = None
    catch_up_jumps: dict[str, Any] | None = None
    arrivals: dict[str, Any] | None = None


class ChangeRow(_Part):
    """Something that a therapist had changed between two sets of a call.

    ``confirmed``: it was said in the window that the therapist was there and asked for it.
    """

    time_s: float
    entry_id: str
    what: str
    before: Any
    after: Any
    undone: bool = False
    confirmed: bool = False


class MarkRow(_Part):
    """A moment that was marked while the session went on."""

    time_s: float
    entry_id: str | None = None


class NotDone(_Part):
    """An entry of the plan that was not begun, and why (keys)."""

    entry_id: str
    exercise: str
    reasons: list[str]


class EndedOutside(_Part):
    """A session outside any plan that had to be ended; it names nobody."""

    started_at: str | None
    ended: str


#: What a set-up found: free, but for the statement of the bench (older summaries have none).
SetupFound = Annotated[
    dict[str, Any], Field(json_schema_extra={"properties": {"bench": BENCH_SCHEMA}})
]


class Summary(_Part):
    """One session.

    ``not_done`` and ``opened`` (stages and entries that the patient has said yes to)
    are empty where no plan was gone through; ``ended_because`` holds keys; ``weekly`` is
    null where it was not the turn of the questions of the week. ``after_drop`` is what the
    person said after a sudden drop of the head (``value``: ``fine``, ``not_well``, or null with
    ``reason`` ``no_answer``, ``closed_unsaid`` or, where nobody was there, ``not_asked``), null
    where there was none. ``baseline``: it was done together with the therapist, for later ones to
    be compared with. ``ended_outside``: sessions outside any plan on the same computer that had to
    be ended, and so held back what is new of this plan; whose they were is not known.
    ``allowed_today``: an earlier session of the day had to be ended, and the person has said that
    the therapist lets them go on today.
    """

    format: Literal["turnpost-session"]
    format_version: int
    program_version: str
    session_id: str | None
    person: str | None
    plan_id: str | None
    started_at: str | None
    duration_s: float | None
    ended: Ended
    setup: SetupFound
    gate: dict[str, Any] | None
    symptoms: dict[str, Any] | None
    weekly: dict[str, Any] | None = None
    after_drop: dict[str, Any] | None = None
    exercises: list[ExerciseSummary]
    quality: list[Flag] = []
    ended_because: list[str] = []
    not_done: list[NotDone] = []
    opened: list[str] = []
    changes: list[ChangeRow] = []
    marks: list[MarkRow] = []
    ended_outside: list[EndedOutside] = []
    allowed_today: bool = False
    baseline: bool = False

    @property
    def anything_begun(self) -> bool:
        """Whether anything was begun: without it the person has not practised, only answered."""
        return bool(self.exercises)


def schema() -> dict[str, Any]:
    """JSON Schema of the summary."""
    return Summary.model_json_schema()


def save_summary(path: Path, summary: Summary) -> None:
    """Write a summary, whole or not at all."""
    text = json.dumps(summary.model_dump(mode="json"), indent=1, ensure_ascii=False)
    write_atomically(path, text + "\n")


def load_summary(path: Path) -> Summary:
    """Read a summary.

    Raises
    ------
    InputError
        If it can't be read, is none, or is of a newer version.
    """
    try:
        data = json.loads(read_input(path, MAX_FILE_BYTES, "a summary").decode("utf-8"))
        version = data.get("format_version") if isinstance(data, dict) else None
        if isinstance(version, int) and version > FORMAT_VERSION:
            raise InputError(f"{path}: was written by a newer version of this program; update it")
        return Summary.model_validate(data)
    except ValidationError as error:
        first = error.errors()[0]
        where = ".".join(str(p) for p in first["loc"])
        raise InputError(f"{path}: not a usable summary: {where}: {first['msg']}") from error
    except (ValueError, RecursionError) as error:
        raise InputError(f"{path}: not a whole JSON file ({error})") from error
