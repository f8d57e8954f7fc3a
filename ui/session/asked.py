"""What is asked: the steps of an exercise, from now on or from a stage log.

Offsets are millimetres from the middle of the field (right, up). What a set-up asks for is
in ``asked_setup``.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import isinf
from typing import Any

from tracker.exercises.catalogue import Exercise
from tracker.plan.asked import Asked as EntryAsked
from tracker.session.stage import Step
from tracker.targets import (
    SWING_LEAST_DEG,
    Backdrop,
    Growth,
    Point3,
    Sweep,
    fitting_swing_deg,
    lowered,
    pursuit_swing_deg,
    tempo_of_target,
    track_of,
)
from ui.geometry import FieldExtent, Point, ScreenMap, offset_mm
from ui.sounds.beats import Tempo, beat_times_s

#: Half the distance of the two targets of an eyes-only exercise: the head may stay still.
JUMP_DEG = 8.0
#: No nearer than this to the middle, so that jumps are counted: one from end to end is half as
#: far again as the counter's floor (``counters``).
NEAREST_JUMP_DEG = 3.0
#: The time that a set may take at most, as a share of what the asked tempo gives.
PATIENCE = 1.6
#: Without a tempo, a turn is given this long.
SELF_PACED_TURN_S = 2.5


@dataclass(frozen=True, slots=True)
class Asked:
    """A step with where its target is drawn.

    ``offset`` is the target's place from the field's middle, ``offsets`` the two
    places between which it jumps (first one first), if it does. ``drawn`` is false where
    the eyes have no target on the screen. ``path`` is the place at a time of a target
    that moves all the while, ``backdrop`` what moves behind one that doesn't. ``share`` is
    how far apart the two places are at a time, of all that they come to.
    """

    step: Step
    offset: Point = (0.0, 0.0)
    offsets: tuple[Point, Point] | None = None
    drawn: bool = True
    path: Callable[[float], Point] | None = None
    share: Callable[[float], float] | None = None
    backdrop: Backdrop | None = None

    def offset_at(self, time_s: float) -> Point:
        """Where the target is drawn at ``time_s``."""
        if self.path is not None:
            return self.path(min(max(time_s, self.step.from_s), self.step.to_s))
        if self.offsets is None:
            return self.offset
        return self.places_at(time_s)[self.place_at(time_s)]

    def places_at(self, time_s: float) -> list[Point]:
        """All places that targets are drawn at, at ``time_s``, where none moves all the while."""
        share = 1.0 if self.share is None else self.share(time_s)
        places = self.offsets or (self.offset,)
        return [(share * right, share * up) for right, up in places] if self.drawn else []

    def place_at(self, time_s: float) -> int:
        """Which of the two places the target is at (0 or 1)."""
        if self.offsets is None:
            return 0
        target = self.step.target_at(time_s)
        first = self.step.target_track[0] if self.step.target_track else None
        if target is None or first is None:
            return 0
        others = [r for r in self.step.target_track or [] if r[1:] != first[1:]]
        if not others:
            return 0
        other = others[0]
        to_first = sum((a - b) ** 2 for a, b in zip(target, first[1:], strict=True))
        to_other = sum((a - b) ** 2 for a, b in zip(target, other[1:], strict=True))
        return 0 if to_first <= to_other else 1


def set_length_s(repetitions: int, tempo_bpm: Tempo) -> float:
    """How long a set may last: two turns a repetition, with patience."""
    turns = 2 * max(repetitions, 1)
    if tempo_bpm is None:
        return turns * SELF_PACED_TURN_S * PATIENCE
    slowest = min(tempo_bpm) if isinstance(tempo_bpm, tuple) else tempo_bpm
    return turns * 60.0 / slowest * PATIENCE


def exercise_asked(
    begin_s: float,
    exercise: str,
    *,
    repetitions: int,
    tempo_bpm: float | None,
    jumps: bool,
    extent: FieldExtent,
    to_rest: ScreenMap,
    distance_mm: float,
) -> Asked:
    """The step of an exercise that begins at ``begin_s``.

    ``jumps`` lets the target jump between two places, one jump a beat.
    """
    duration_s = set_length_s(repetitions, tempo_bpm)
    known = {
        "from_s": begin_s,
        "to_s": begin_s + duration_s,
        "step": "exercise",
        "exercise": exercise,
        "entry_id": exercise,
        "tempo_bpm": tempo_bpm,
        "eyes": "open",
        "posture": "sitting",
        "surface": "firm",
        "repetitions": repetitions,
    }
    if not jumps:
        target = to_rest.to_rest(extent.centre_mm)
        return Asked(Step.model_validate(known | {"target_mm": target}))
    reach = offset_mm(JUMP_DEG, distance_mm)
    right, left = extent.inside((reach, 0.0)), extent.inside((-reach, 0.0))
    beats = beat_times_s(tempo_bpm or 60.0 / SELF_PACED_TURN_S, duration_s)
    places = [to_rest.to_rest(extent.on_screen(offset)) for offset in (right, left)]
    track = _jump_track(begin_s, duration_s, beats, lambda k: places[k % 2])
    return Asked(Step.model_validate(known | {"target_track": track}), offsets=(right, left))


#: A jump takes no time; the log's straight lines between rows need two rows for it.
_JUMP_S = 0.001


def _jump_track(
    begin_s: float,
    duration_s: float,
    beats_s: Sequence[float],
    place: Callable[[int], Point3],
) -> list[tuple[float, float, float, float]]:
    """Rows of a target that is at a place from each beat (by number) to the next."""
    rows: list[tuple[float, float, float, float]] = []
    for k, beat_s in enumerate(beats_s):
        until_s = beats_s[k + 1] if k + 1 < len(beats_s) else duration_s
        x, y, z = place(k)
        rows.append((begin_s + beat_s + (_JUMP_S if k else 0.0), x, y, z))
        rows.append((begin_s + max(until_s, beat_s + _JUMP_S), x, y, z))
    return rows


def clip_asked(steps: Sequence[Step], extent: FieldExtent) -> list[Asked]:
    """The steps of a clip's stage log, drawn about the field's middle.

    Nobody before the screen is measured then, so the places are brought together
    where they would not fit on it.
    """
    from ui.geometry import shrink_to_fit

    middle = _middle(steps)
    raw = [_raw_offsets(step, middle) for step in steps]
    factor = shrink_to_fit([p for places in raw for p in places], extent)
    found = []
    for step, places in zip(steps, raw, strict=True):
        drawn = [(x * factor, y * factor) for x, y in places]
        if len(drawn) > 2:
            found.append(Asked(step, drawn[0], path=_along(step, middle, factor)))
        elif len(drawn) > 1:
            found.append(Asked(step, drawn[0], (drawn[0], drawn[1])))
        else:
            found.append(Asked(step, drawn[0] if drawn else (0.0, 0.0)))
    return found


def _middle(steps: Sequence[Step]) -> Point:
    for step in steps:
        if step.step in ("rest", "turn_slowly", "nod_slowly") and step.target_mm is not None:
            return step.target_mm[0], step.target_mm[1]
    return 0.0, 0.0


def _raw_offsets(step: Step, middle: Point) -> list[Point]:
    if step.target_mm is not None:
        return [(step.target_mm[0] - middle[0], step.target_mm[1] - middle[1])]
    places = [(x - middle[0], y - middle[1]) for _, x, y, _z in step.target_track or []]
    return list(dict.fromkeys(places))


def _along(step: Step, middle: Point, factor: float) -> Callable[[float], Point]:
    """The way of a target that goes through more than two places."""

    def place(time_s: float) -> Point:
        x, y, _ = step.target_at(time_s) or (*middle, 0.0)
        return (x - middle[0]) * factor, (y - middle[1]) * factor

    return place


def needs_moving_target(entry: EntryAsked) -> bool:
    """Whether an entry needs a moving target where none can be shown: away from the screen."""
    return bool(entry.exercise.target) and not has_target(entry) and entry.wall is None


def too_small(entry: EntryAsked, extent: FieldExtent, distance_mm: float) -> bool:
    """Whether the screen carries so little of a target's way that nothing could be counted."""
    if entry.exercise.target not in ("against", "sweep", "places") or not has_target(entry):
        return False
    return fitting_swing_deg(90.0, _room_mm(entry.exercise, extent), distance_mm) < SWING_LEAST_DEG


def shown_amplitude(
    entry: EntryAsked, extent: FieldExtent, distance_mm: float
) -> tuple[float, float] | None:
    """What an entry will really ask of the head: less where the screen carries no more."""
    wanted = entry.amplitude_deg
    if wanted is None or entry.exercise.target not in ("against", "places"):
        return wanted
    if not has_target(entry):
        return wanted
    return lowered(wanted, abs(_swing_deg(entry, extent, distance_mm)))


def _room_mm(exercise: Exercise, extent: FieldExtent) -> float:
    """From the field's middle to its edge, the way the target goes."""
    up = exercise.channel == "head_pitch"
    return extent.half_height_mm if up else extent.half_width_mm


def has_target(entry: EntryAsked) -> bool:
    """Whether the eyes have a target on the screen; who stands looks at a mark on the wall."""
    exercise = entry.exercise
    on_screen = _jumps(exercise) or exercise.on_target or bool(exercise.target)
    return on_screen and entry.wall is None and entry.posture == "sitting" and entry.eyes == "open"


def planned_asked(
    begin_s: float,
    entry: EntryAsked,
    *,
    repetitions: int | None,
    seconds: float,
    extent: FieldExtent,
    to_rest: ScreenMap,
    distance_mm: float,
) -> Asked:
    """The step of a plan's entry that begins at ``begin_s``.

    Parameters
    ----------
    repetitions, seconds
        What is left of its dose; ``seconds`` is infinite for a count.
    extent, to_rest, distance_mm
        Where a target can be drawn, and where that is for the patient.
    """
    exercise = entry.exercise
    duration_s = seconds
    if repetitions is not None and isinf(seconds):
        own_pace_s = exercise.own_pace_s(repetitions) * PATIENCE
        duration_s = set_length_s(repetitions, entry.tempo_bpm) if entry.tempo_bpm else own_pace_s
    known = {
        "from_s": begin_s,
        "to_s": begin_s + duration_s,
        "step": "exercise",
        **entry.step_values,
        "repetitions": repetitions,
    }
    if entry.wall is not None:
        return _on_wall(known, entry, duration_s, to_rest)
    if exercise.target in ("against", "sweep") and has_target(entry):
        sweep = Sweep(
            _swing_deg(entry, extent, distance_mm),
            distance_mm,
            tempo_of_target(entry.tempo_bpm),
            duration_s,
        )
        known["target_swing_deg"] = round(abs(sweep.swing_deg), 2)
        return _sweeping(known, sweep, extent, to_rest, up=exercise.channel == "head_pitch")
    if _jumps(exercise) or (exercise.target == "places" and has_target(entry)):
        return _between_places(known, entry, extent, to_rest, distance_mm)
    drawn = has_target(entry)
    if drawn:
        known["target_mm"] = to_rest.to_rest(extent.centre_mm)
    backdrop = Backdrop() if drawn and exercise.target == "background" else None
    if backdrop is not None:
        known["background"] = backdrop.to_log()
    return Asked(Step.model_validate(known), drawn=drawn, backdrop=backdrop)


def _between_places(
    known: dict[str, Any],
    entry: EntryAsked,
    extent: FieldExtent,
    to_rest: ScreenMap,
    distance_mm: float,
) -> Asked:
    """A step whose target goes between two places with the beat, near each other at first."""
    exercise = entry.exercise
    across = exercise.channel != "eye_pitch"
    swing = JUMP_DEG if _jumps(exercise) else _swing_deg(entry, extent, distance_mm)
    if exercise.target:
        known["target_swing_deg"] = round(swing, 2)
    reach = offset_mm(swing, distance_mm)
    first, second = (
        extent.inside((s * reach, 0.0) if across else (0.0, s * reach)) for s in (1.0, -1.0)
    )
    begin_s, duration_s = known["from_s"], known["to_s"] - known["from_s"]
    beats = beat_times_s(entry.tempo_bpm or 60.0 / SELF_PACED_TURN_S, duration_s)
    turns = len(beats) if known["repetitions"] is None else 2 * known["repetitions"]
    nearest = offset_mm(NEAREST_JUMP_DEG, distance_mm) / max(*map(abs, (*first, *second)), 1e-9)
    growth = Growth.of_set(exercise.begins_with, beats, turns, least=nearest)
    if growth.begins_with < 1.0:
        known["grows"] = growth.to_log()

    def share(time_s: float) -> float:
        """That of the last beat: a target stays where it has jumped to."""
        last = bisect_right(beats, time_s - begin_s + _JUMP_S)
        return growth.share_at(beats[last - 1] if last else 0.0)

    def place(beat: int) -> Point3:
        right, up = (first, second)[beat % 2]
        size = growth.share_at(beats[beat])
        return to_rest.to_rest(extent.on_screen((size * right, size * up)))

    track = _jump_track(begin_s, duration_s, beats, place)
    step = Step.model_validate(known | {"target_track": track})
    return Asked(step, offsets=(first, second), share=share)


def _on_wall(
    known: dict[str, Any], entry: EntryAsked, duration_s: float, to_rest: ScreenMap
) -> Asked:
    """A step with marks on the wall; without a target where their lengths are not known."""
    wall = entry.marks
    if wall is None:
        return Asked(Step.model_validate(known), drawn=False)
    exercise = entry.exercise
    marks = wall.marks_mm(to_rest.to_rest((0.0, 0.0)), up=entry.marks_up)
    if len(marks) == 1:
        known["target_mm"] = marks[0]
        return Asked(Step.model_validate(known), drawn=False)
    if exercise.target:
        known["target_swing_deg"] = round(wall.half_deg or 0.0, 2)
    beats = beat_times_s(entry.tempo_bpm or 60.0 / SELF_PACED_TURN_S, duration_s)
    known["target_track"] = _jump_track(
        known["from_s"], duration_s, beats, lambda beat: marks[beat % 2]
    )
    return Asked(Step.model_validate(known), drawn=False)


def _jumps(exercise: Exercise) -> bool:
    """Whether the eyes jump between two targets."""
    return exercise.channel in ("eye_yaw", "eye_pitch")


def _swing_deg(entry: EntryAsked, extent: FieldExtent, distance_mm: float) -> float:
    """How far a target goes to each side: as wanted, or as far as the screen carries it.

    Below zero for one that goes against the head: the beat asks the head for the right,
    or up, first.
    """
    exercise = entry.exercise
    wanted = 0.5 * sum(entry.amplitude_deg or ())
    if exercise.target == "sweep":
        wanted = pursuit_swing_deg(tempo_of_target(entry.tempo_bpm))
    swing = fitting_swing_deg(wanted, _room_mm(exercise, extent), distance_mm)
    return -swing if exercise.target == "against" else swing


def _sweeping(
    known: dict[str, Any], sweep: Sweep, extent: FieldExtent, to_rest: ScreenMap, *, up: bool
) -> Asked:
    """A step whose target goes to and fro, drawn where its track says."""

    def place(offset: float) -> Point:
        return (0.0, offset) if up else (offset, 0.0)

    from_s: float = known["from_s"]
    track = track_of(sweep, from_s, lambda o: to_rest.to_rest(extent.on_screen(place(o))))
    return Asked(
        Step.model_validate(known | {"target_track": track}),
        path=lambda time_s: place(sweep.offset_mm(time_s - from_s)),
    )
