"""What the baseline offers for the plan, in words, and taking it over. No widgets."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.draft import Data, data_of, value_at, with_value
from tracker.plan.lines import Path
from tracker.plan.model import Plan
from tracker.records.managed import NOT_DONE, OTHER, Managed, managed_of
from tracker.records.rows import SessionRow, form_of
from ui import words
from ui.desk import trade
from ui.editor.rows import Row, Section
from ui.editor.state import State

#: What the buttons do, to one entry and to all.
TAKE = "take_baseline"


def offered(state: State, index: int) -> Managed | None:
    """What the baseline has of an entry; None where there is none."""
    entry = state.data["entries"][index]
    exercise = CATALOGUE.get(entry.get("exercise", ""))
    if exercise is None or not state.rows:
        return None
    axis = "pitch" if exercise.channel == "head_pitch" else "yaw"
    limit = _number(value_at(state.data, ("neck_limit_deg", axis)))
    form = form_of(exercise.id, entry)
    return managed_of(state.rows, exercise.id, entry.get("entry_id"), limit, form)


def changes_of(state: State, index: int) -> dict[str, Any]:
    """Fields of an entry that would become another, with what they would become.

    Only a tempo that is a number becomes another: one that rises over the set is a ladder of its
    own, and who goes at their own pace gets no beat. Those of the later weeks stay, too.
    """
    found = offered(state, index)
    if found is None:
        return {}
    made: dict[str, Any] = {}
    given = _now(state, index)
    now, tempo = given["amplitude_deg"], given["tempo_bpm"]
    wanted = found.amplitude_deg
    if wanted is not None and (now is None or list(now) != list(wanted)):
        made["amplitude_deg"] = list(wanted)
    fixed = _number(tempo) is not None
    if fixed and found.tempo_bpm is not None and tempo != found.tempo_bpm:
        made["tempo_bpm"] = found.tempo_bpm
    return made


def offers_changes(plan: Plan, rows: Sequence[SessionRow]) -> bool:
    """Whether the baseline among a person's sessions would change anything of a plan."""
    data = data_of(plan)
    # No condition is looked at, so that the day is of no matter.
    state = State.of(data, rows, None)
    return any(changes_of(state, k) for k in range(len(data.get("entries", []))))


def take_over(state: State, path: Path) -> tuple[Data, Path]:
    """Take over what the baseline offers, for one entry (its path) or for all (``entries``).

    Returns
    -------
    data, path
        And the field that gets the keys.
    """
    data = state.data
    for index in [int(path[1])] if len(path) > 1 else range(len(data.get("entries", []))):
        for field, value in changes_of(state, index).items():
            data = with_value(data, ("entries", index, field), value)
    return data, path


def entry_section(state: State, index: int) -> list[Section]:
    """What the baseline has of an entry; nothing where there is no baseline."""
    found = offered(state, index)
    if found is None:
        return []
    at: Path = ("entries", index)
    title = words.say("edit.baseline", day=trade.day(found.day))
    rows = [Row(at, "note", text=_told(found))]
    changes = changes_of(state, index)
    if changes:
        text = words.say("edit.baseline.take", what=words.row_of(_change_words(changes)))
        rows.append(Row(at, "button", act=TAKE, act_text=text))
    return [Section(title, tuple(rows))]


def plan_section(state: State) -> list[Section]:
    """What the baseline offers for all entries, in a line each; nothing where there is none."""
    entries = state.data.get("entries", [])
    known = [(k, m) for k in range(len(entries)) if (m := offered(state, k)) is not None]
    if not known:
        return []
    newest = known[0][1].day
    lines = list(_lines(state, known))
    rows = [Row(("entries",), "note", text="\n".join(lines))]
    if any(changes_of(state, k) for k, _ in known):
        rows.append(
            Row(("entries",), "button", act=TAKE, act_text=words.say("edit.baseline.take_all"))
        )
    return [Section(words.say("edit.baseline", day=trade.day(newest)), tuple(rows))]


def _lines(state: State, known: Iterable[tuple[int, Managed]]) -> Iterator[str]:
    """A line for each entry that was done, and one for all that were not."""
    left_out: list[str] = []
    for index, found in known:
        name = words.apart(str(state.data["entries"][index].get("entry_id", "")))
        if found.why_not == (NOT_DONE,):
            left_out.append(name)
            continue
        told, changes = _told(found), changes_of(state, index)
        if changes:
            takes = words.row_of(_change_words(changes, _now(state, index)))
            told = words.say("edit.baseline.takes", told=told, what=takes)
        yield words.say("edit.baseline.line", entry=name, what=told)
    if left_out:
        why = words.say(f"edit.baseline.why.{NOT_DONE}")
        yield words.say("edit.baseline.line", entry=words.row_of(left_out), what=why)


def _told(found: Managed) -> str:
    """What was managed, and whether it is offered."""
    parts = []
    if found.swing_deg is not None:
        parts.append(words.say("edit.baseline.swing", deg=words.number(found.swing_deg, 1)))
    if found.measured_bpm is not None:
        parts.append(words.say("edit.baseline.bpm", tempo=words.number(found.measured_bpm)))
    if found.rise is not None:
        parts.append(words.say("edit.baseline.rise", points=words.number(found.rise)))
    told = words.row_of(parts) or words.say("edit.baseline.nothing")
    if not found.why_not:
        return told
    why = words.row_of(words.say(f"edit.baseline.why.{key}") for key in found.why_not)
    if found.why_not in ((NOT_DONE,), (OTHER,)):
        return why
    return words.say("edit.baseline.not_offered", told=told, why=why)


def _change_words(changes: Data, now: Data | None = None) -> Iterator[str]:
    """Each field that would become another; after it what it is ``now``, where that is given."""
    for field, value in changes.items():
        new, old = _field_words(field, value), (now or {}).get(field)
        if old is None:
            yield new
        else:
            yield words.say("edit.baseline.instead", new=new, old=_field_words(field, old))


def _field_words(field: str, value: Any) -> str:
    if field == "tempo_bpm":
        return words.say("edit.baseline.bpm", tempo=words.number(value))
    low, high = (words.number(v) for v in value)
    return words.say("edit.baseline.range", low=low, high=high)


def _now(state: State, index: int) -> Data:
    """Range and tempo of an entry as they are: its own, else those of its exercise."""
    entry = state.data["entries"][index]
    exercise = CATALOGUE[entry["exercise"]]
    return {
        "amplitude_deg": entry.get("amplitude_deg") or exercise.amplitude_deg,
        "tempo_bpm": entry.get("tempo_bpm", exercise.tempo_bpm),
    }


def _number(value: Any) -> float | None:
    known = isinstance(value, int | float) and not isinstance(value, bool)
    return float(value) if known else None
