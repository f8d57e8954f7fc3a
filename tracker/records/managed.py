"""What a person managed comfortably at the baseline, as ranges that a plan could ask for.

It is only offered: a plan changes by the therapist's hand alone. "Comfortably" means that the set
was measured well and not stopped before its end, that nothing ended a session of that day, that
the scores rose by two at most and settled (common practice has a rise of two or three; the
stricter one is taken), and that a target, where there was one, was said to be clear. What nobody
has answered is never taken for a yes.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import ceil, floor, inf
from typing import Any

from tracker.exercises.catalogue import CATALOGUE, Exercise
from tracker.plan.changes import AMPLITUDE_LEAST_DEG, PURSUIT_MOST_BPM, TEMPO_EVER_BPM
from tracker.plan.unlocking import ENDED_BADLY
from tracker.records.rows import SessionRow, SetRow
from tracker.records.series import whole_sets

#: Most rise of a score that counts as comfortable (common practice, see above).
RISE_MOST = 2
#: Width of the range that is offered where none was asked for (own choice).
WIDTH_DEG = 5.0
#: A set that was over sooner was stopped, or not counted well (own choice). There is no mark of
#: its own for a set that the patient has stopped: one that reaches its dose ends by itself.
LEAST_SHARE = 0.8
#: Fewer repetitions have no median to speak of (own choice).
LEAST_REPETITIONS = 3
#: Why nothing is offered, in the order in which it is looked for.
REASONS = (
    "ended",
    "not_measured",
    "few_turns",
    "too_small",
    "doubt",
    "fall",
    "no_scores",
    "rose",
    "not_settled",
)
#: Of an entry that the newest baseline hasn't, or has in another form.
NOT_DONE, OTHER = "not_done", "other"
CLARITY_REASONS = ("clarity_not_asked", "not_clear")


@dataclass(frozen=True, slots=True)
class Managed:
    """One entry at the baseline.

    Attributes
    ----------
    day
        Day of the baseline.
    swing_deg
        Median amplitude to the side to which the head went less far; None where not measured.
    measured_bpm
        Median tempo in beats a minute; None where not measured.
    rise
        By how much the worst score rose; None where not asked.
    amplitude_deg, tempo_bpm
        What is offered: a range as wide as the one that was asked for, that ends where the
        turns did, and the tempo in whole beats. None where nothing is.
    why_not
        Why nothing is offered (:data:`REASONS`, :data:`CLARITY_REASONS`, :data:`NOT_DONE`,
        :data:`OTHER`).
    """

    day: date
    swing_deg: float | None
    measured_bpm: float | None
    rise: int | None
    amplitude_deg: tuple[float, float] | None = None
    tempo_bpm: float | None = None
    why_not: tuple[str, ...] = ()


def managed_of(
    rows: Sequence[SessionRow],
    exercise_id: str,
    entry_id: str | None,
    limit_deg: float | None = None,
    form: str = "",
) -> Managed | None:
    """What the newest baseline offers for an entry; None where there is none.

    Parameters
    ----------
    rows
        Sessions of one person, oldest first.
    exercise_id, entry_id
        The entry of the plan; the same exercise under another entry's name will do.
    form
        What is not as usual in it (:func:`~tracker.records.rows.form_of`). Another form is
        another exercise: what was managed sitting says nothing of standing.
    limit_deg
        The neck limit; what is offered stays within it. None where none is set.
    """
    exercise = CATALOGUE.get(exercise_id)
    visit = _newest_visit(rows)
    if not visit or exercise is None:
        return None
    day, ended = visit[-1].day, any(r.ended in ENDED_BADLY for r in visit)
    assert day is not None, "a visit has a day"
    sets = [(row, done) for row in reversed(visit) for done in whole_sets(row.sets)]
    same = [(r, s) for r, s in sets if s.exercise == exercise_id and s.form == form]
    own = [(r, s) for r, s in same if s.entry_id == entry_id]
    if own or same:
        row, done = (own or same)[0]
        return _offer(row, day, done, exercise, limit_deg, ended=ended)
    # What an older visit had says nothing of how it is now.
    other = any(exercise_id == s.exercise or entry_id == s.entry_id for _, s in sets)
    return Managed(day, None, None, None, why_not=(OTHER if other else NOT_DONE,))


def _newest_visit(rows: Sequence[SessionRow]) -> list[SessionRow]:
    """The baselines of the newest day on which something was practised, or ended badly."""
    known = [r for r in rows if r.baseline and r.day and (r.is_bout or r.ended in ENDED_BADLY)]
    return [r for r in known if r.day == known[-1].day]


def _offer(
    row: SessionRow,
    day: date,
    done: SetRow,
    exercise: Exercise,
    limit_deg: float | None,
    *,
    ended: bool,
) -> Managed:
    swing, tempo = _swing_deg(done), done.figures.get("tempo_bpm")
    by_head = exercise.channel.startswith("head")
    pair = _range(swing, done.asked, exercise, limit_deg) if by_head and swing is not None else None
    holds = _bars(row, done, swing, tempo) | {
        "ended": ended,
        "few_turns": exercise.counted and _too_few(done),
        "too_small": by_head and swing is not None and pair is None,
    }
    why = tuple(key for key in (*REASONS, *CLARITY_REASONS) if holds[key])
    found = Managed(day, swing, tempo, done.rise, why_not=why)
    if why:
        return found
    offered = None if tempo is None else _tempo(tempo, exercise)
    return replace(found, amplitude_deg=pair, tempo_bpm=offered)


def _swing_deg(done: SetRow) -> float | None:
    """To both sides: the lesser of the sides' medians, else that of all turns."""
    sides = [v for k, v in done.figures.items() if k.startswith("amplitude_deg.") and v is not None]
    return min(sides) if len(sides) > 1 else done.figures.get("amplitude_deg")


def _bars(
    row: SessionRow, done: SetRow, swing: float | None, tempo: float | None
) -> dict[str, bool]:
    clear = done.figures.get("clear")
    asked = "clear" in done.figures
    return {
        "not_measured": swing is None and tempo is None,
        "doubt": bool(done.doubts("tempo_bpm")),
        "fall": bool(done.events.get("possible_fall")),
        "no_scores": done.rise is None,
        "rose": done.rise is not None and done.rise > RISE_MOST,
        "not_settled": row.not_settled,
        "clarity_not_asked": asked and clear is None,
        "not_clear": clear is not None and clear < 1.0,
    }


def _too_few(done: SetRow) -> bool:
    """Whether a set was stopped early, or too little of it was counted."""
    count = done.figures.get("repetitions") or 0.0
    asked, seconds, tempo = (
        _last(done.asked.get(k)) for k in ("repetitions", "held_s", "tempo_bpm")
    )
    if asked is None and seconds is not None and tempo is not None:
        # Two beats a repetition.
        asked = seconds * tempo / 120.0
    return count < max(LEAST_SHARE * (asked or 0.0), min(LEAST_REPETITIONS, asked or inf))


def _last(asked: Any) -> float | None:
    """What was asked, the most of it where that is a range."""
    value = asked[-1] if isinstance(asked, list | tuple) and asked else asked
    return float(value) if isinstance(value, int | float) else None


def _range(
    swing: float, asked: Mapping[str, Any], exercise: Exercise, limit: float | None
) -> tuple[float, float] | None:
    """A range in whole degrees that ends where the swings did, as wide as what was asked for.

    None where less was managed than can be told from the head's own unrest.
    """
    pair: Any = asked.get("amplitude_deg") or exercise.amplitude_deg
    wide = isinstance(pair, list | tuple) and len(pair) == 2 and pair[1] > pair[0]
    width = float(pair[1] - pair[0]) if wide else WIDTH_DEG
    # Without a neck limit nobody has said that more than was asked for would do.
    limit = _last(pair) if limit is None else limit
    most = float(floor(swing if limit is None else min(swing, limit)))
    least = max(float(ceil(most - width)), AMPLITUDE_LEAST_DEG)
    return (least, most) if most > least else None


def _tempo(tempo: float, exercise: Exercise) -> float:
    most = PURSUIT_MOST_BPM if exercise.target == "sweep" else TEMPO_EVER_BPM[1]
    return float(round(min(max(tempo, TEMPO_EVER_BPM[0]), most)))
