"""What a person managed comfortably at the baseline, as ranges that a plan could ask for.

It is only offered: a plan changes by the therapist's hand alone. "Comfortably" means that the set
was measured well, that nothing ended the session, that the scores rose by two at most and settled
(common practice has a rise of two or three; the stricter one is taken), and that a target, where
there was one, was said to be clear. What nobody has answered is never taken for a yes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from tracker.exercises.catalogue import CATALOGUE, Exercise
from tracker.plan.changes import AMPLITUDE_LEAST_DEG, PURSUIT_MOST_BPM, TEMPO_EVER_BPM
from tracker.records.rows import SessionRow, SetRow
from tracker.records.trends import whole_sets

#: Most rise of a score that counts as comfortable (common practice, see above).
RISE_MOST = 2
#: Width of the range that is offered where none was asked for (own choice).
WIDTH_DEG = 5.0
#: Endings after which nothing of a session is offered.
ENDED_BADLY = frozenset({"stopped_unwell", "symptom_rule", "red_flag", "possible_fall"})
#: Why nothing is offered, in the order in which it is looked for.
REASONS = ("ended", "not_measured", "doubt", "fall", "no_scores", "rose", "not_settled")
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
        What is offered: the range that was asked for, moved to where the turns lay, and the
        tempo in whole beats. None where nothing is.
    why_not
        Why nothing is offered (:data:`REASONS`, :data:`CLARITY_REASONS`).
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
) -> Managed | None:
    """What the newest baseline with an exercise offers; None where there is none.

    Parameters
    ----------
    rows
        Sessions of one person, oldest first.
    exercise_id, entry_id
        The entry of the plan; the same exercise under another entry's name will do.
    limit_deg
        The neck limit; what is offered stays within it. None where none is set.
    """
    exercise = CATALOGUE.get(exercise_id)
    for row in reversed(rows):
        if not row.baseline or row.day is None or exercise is None:
            continue
        same = [s for s in whole_sets(row.sets) if s.exercise == exercise_id]
        done = next((s for s in same if s.entry_id == entry_id), same[0] if same else None)
        if done is not None:
            return _offer(row, row.day, done, exercise, limit_deg)
    return None


def _offer(
    row: SessionRow,
    day: date,
    done: SetRow,
    exercise: Exercise,
    limit_deg: float | None,
) -> Managed:
    swing, tempo = _swing_deg(done), done.figures.get("tempo_bpm")
    why = tuple(_why_not(row, done, swing, tempo))
    found = Managed(day, swing, tempo, done.rise, why_not=why)
    if why:
        return found
    by_head = exercise.channel.startswith("head")
    return Managed(
        day,
        swing,
        tempo,
        done.rise,
        _range(swing, done.asked.get("amplitude_deg"), limit_deg)
        if by_head and swing is not None
        else None,
        None if tempo is None else _tempo(tempo, exercise),
    )


def _swing_deg(done: SetRow) -> float | None:
    """To both sides: the lesser of the sides' medians, else that of all turns."""
    sides = [v for k, v in done.figures.items() if k.startswith("amplitude_deg.") and v is not None]
    return min(sides) if len(sides) > 1 else done.figures.get("amplitude_deg")


def _why_not(
    row: SessionRow, done: SetRow, swing: float | None, tempo: float | None
) -> Sequence[str]:
    clear = done.figures.get("clear")
    asked = "clear" in done.figures
    holds = {
        "ended": row.ended in ENDED_BADLY,
        "not_measured": swing is None and tempo is None,
        "doubt": bool(done.doubts("tempo_bpm")),
        "fall": bool(done.events.get("possible_fall")),
        "no_scores": done.rise is None,
        "rose": done.rise is not None and done.rise > RISE_MOST,
        "not_settled": row.not_settled,
        "clarity_not_asked": asked and clear is None,
        "not_clear": clear is not None and clear < 1.0,
    }
    return [key for key in (*REASONS, *CLARITY_REASONS) if holds[key]]


def _range(swing: float, asked: Any, limit: float | None) -> tuple[float, float]:
    """A range in whole degrees about a swing, as wide as the one that was asked for."""
    wide = isinstance(asked, list | tuple) and len(asked) == 2 and asked[1] > asked[0]
    width = float(asked[1] - asked[0]) if wide else WIDTH_DEG
    most = float(round(swing + width / 2))
    if limit is not None:
        most = min(most, limit)
    least = max(float(round(most - width)), AMPLITUDE_LEAST_DEG)
    return least, max(most, least)


def _tempo(tempo: float, exercise: Exercise) -> float:
    most = PURSUIT_MOST_BPM if exercise.target == "sweep" else TEMPO_EVER_BPM[1]
    return float(round(min(max(tempo, TEMPO_EVER_BPM[0]), most)))
