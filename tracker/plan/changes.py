"""What a therapist may have changed between two sets of a call, and how far.

One step at a time, and within what the plan allows: the tempo so far beyond what the plan
asks for in any of its weeks, the amplitude so far below it and above it, and never beyond
the neck limit. Where the therapist has set no neck limit, no more amplitude than the plan
itself asks for. Steps and widths are common practice, and this project's own choice.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from tracker.exercises.catalogue import Exercise
from tracker.plan.asked import Asked, asked_of
from tracker.plan.model import Entry, Plan

What = Literal["tempo", "amplitude"]

#: Common practice, and this project's own choice (above).
TEMPO_STEP_BPM, TEMPO_WIDE_BPM = 5.0, 20.0
AMPLITUDE_STEP_DEG, AMPLITUDE_WIDE_DEG = 2.0, 6.0
#: A plan can ask for no other tempo (``plan.model.Beats``; this project's own choice).
TEMPO_EVER_BPM = (10.0, 240.0)
#: Beats of a target that eyes follow: a faster one would have to swing by less than they can
#: be read well in (20 degrees a second are 9.5 degrees to each side then; own choice).
PURSUIT_MOST_BPM = 40.0
#: Smaller turns are not told from the head's own unrest (``motion.turning``; this project's own
#: choice there).
AMPLITUDE_LEAST_DEG = 5.0

#: Why a change is refused.
REFUSALS = (
    "own_pace",
    "slowest",
    "fastest",
    "no_amplitude",
    "marks_on_wall",
    "smallest",
    "largest",
    "neck_limit",
)


@dataclass(frozen=True, slots=True)
class Shift:
    """How far an entry was changed from what the plan asks for, in steps."""

    tempo: int = 0
    amplitude: int = 0

    def stepped(self, what: What, steps: int) -> Shift:
        """The shift after so many steps more."""
        return replace(self, **{what: getattr(self, what) + steps})


def shifted(asked: Asked, shift: Shift) -> Asked:
    """What an entry asks for after a change."""
    tempo, amplitude = asked.tempo_bpm, asked.amplitude_deg
    if shift.tempo and tempo is not None:
        by = shift.tempo * TEMPO_STEP_BPM
        tempo = (tempo[0] + by, tempo[1] + by) if isinstance(tempo, tuple) else tempo + by
    if shift.amplitude and amplitude is not None:
        deg = shift.amplitude * AMPLITUDE_STEP_DEG
        amplitude = (amplitude[0] + deg, amplitude[1] + deg)
    return replace(asked, tempo_bpm=tempo, amplitude_deg=amplitude)


def why_not(plan: Plan, entry: Entry, week: int, shift: Shift, what: What, steps: int) -> str:
    """Why one more change is refused (one of :data:`REFUSALS`); empty where it is allowed.

    Parameters
    ----------
    plan, entry, week
        What asks for it, and its week.
    shift
        How far the entry was changed before.
    what, steps
        What is to be changed, and by how many steps (below 0: slower, smaller).
    """
    now = asked_of(entry, week)
    then = shifted(now, shift.stepped(what, steps))
    weeks = [asked_of(entry, w) for w in (1, week, *(r.from_week for r in entry.ladder))]
    if what == "tempo":
        most_ever = PURSUIT_MOST_BPM if now.exercise.target == "sweep" else TEMPO_EVER_BPM[1]
        known = [_ends(w.tempo_bpm) for w in weeks]
        return _tempo_refusal(_ends(then.tempo_bpm), known, steps, most_ever)
    if then.amplitude_deg is None:
        return "no_amplitude"
    if now.wall is not None and now.exercise.wall_marks == 2:
        return "marks_on_wall"
    asked = [w.amplitude_deg for w in weeks if w.amplitude_deg is not None]
    if steps < 0:
        least = max(min(a[0] for a in asked) - AMPLITUDE_WIDE_DEG, AMPLITUDE_LEAST_DEG)
        return "smallest" if then.amplitude_deg[0] < least else ""
    most, limit = max(a[1] for a in asked), neck_limit_deg(plan, now.exercise)
    if limit is None:
        return "largest" if then.amplitude_deg[1] > most else ""
    if then.amplitude_deg[1] > limit:
        return "neck_limit"
    return "largest" if then.amplitude_deg[1] > most + AMPLITUDE_WIDE_DEG else ""


def _tempo_refusal(
    then: tuple[float, ...], weeks: Sequence[tuple[float, ...]], steps: int, most_ever: float
) -> str:
    known = [bpm for ends in weeks for bpm in ends]
    if not then or not known:
        return "own_pace"
    if steps < 0:
        least = max(min(known) - TEMPO_WIDE_BPM, TEMPO_EVER_BPM[0])
        return "slowest" if min(then) < least else ""
    most = min(max(known) + TEMPO_WIDE_BPM, most_ever)
    return "fastest" if max(then) > most else ""


def _ends(tempo: float | tuple[float, float] | None) -> tuple[float, ...]:
    if tempo is None:
        return ()
    return tempo if isinstance(tempo, tuple) else (tempo,)


def neck_limit_deg(plan: Plan, exercise: Exercise) -> float | None:
    """How far the head may go in an exercise; None where the therapist has set no limit."""
    if plan.neck_limit_deg is None:
        return None
    vertical = exercise.channel == "head_pitch"
    return plan.neck_limit_deg.pitch if vertical else plan.neck_limit_deg.yaw
