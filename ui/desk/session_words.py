"""A session's repetitions in words, and the set of another session that is like one."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from tracker.records.rows import SessionRow
from tracker.records.trends import SPECS
from ui import words
from ui.desk import trade
from ui.desk.session_data import SessionView, SetView


def same_exercise(view: SessionView, chosen: SetView | None) -> SetView | None:
    """The set of another session that is the same exercise, the same entry if there is one."""
    if chosen is None:
        return None
    wanted = chosen.exercise
    same = [s for s in view.sets if s.exercise.exercise == wanted.exercise]
    entry = [s for s in same if s.exercise.entry_id == wanted.entry_id]
    return next(iter(entry or same), None)


def ended_words(row: SessionRow) -> str:
    """How a session ended, and whether it was the baseline."""
    text = trade.ended(row.ended)
    return words.say("desk.baseline", text=text) if row.baseline else text


def set_names(sets: Sequence[SetView]) -> list[str]:
    """Names of the sets of a session; the parts of one that was paused are numbered."""
    keys = [(s.exercise.exercise, s.exercise.entry_id) for s in sets]
    parts, seen = Counter(keys), Counter[tuple[str, str | None]]()
    names = []
    for key in keys:
        name = trade.exercise(key[0])
        seen[key] += 1
        if parts[key] > 1:
            name = words.say("desk.set.part", name=name, number=seen[key], of=parts[key])
        names.append(name)
    return names


#: How far a turn went, and as what that is told; of shoulders and hands only the way is known.
_FAR = (
    ("amplitude_deg", "amplitude_deg"),
    ("amplitude_mm", "amplitude_mm"),
    ("swing_mm", "amplitude_mm"),
)


def repetition_words(row: dict[str, object]) -> str:
    """A repetition: its number, and how far each of its turns went."""
    parts = [words.say("desk.rep", number=row.get("repetition"))]
    turns = row.get("turns")
    rows = turns if isinstance(turns, list) else []
    for turn in (t for t in rows if isinstance(t, dict)):
        side = trade.shown(str(turn.get("side")))
        for name, like in _FAR:
            value = turn.get(name)
            if isinstance(value, int | float):
                shown = trade.value(SPECS[like], float(value))
                parts.append(words.say("desk.rep.turn", side=side, value=shown))
                break
        else:
            shown = trade.not_measured()
            parts.append(words.say("desk.rep.turn", side=side, value=shown))
    return words.row_of(parts)
