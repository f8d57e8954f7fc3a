"""What an entry asks for in a week: its own values, its ladder, else the catalogue's."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any

from tracker.errors import InputError
from tracker.exercises.catalogue import (
    CATALOGUE,
    Exercise,
    Eyes,
    Option,
    Posture,
    Support,
    Surface,
    permission,
)
from tracker.plan.model import Entry, Plan, Tempo, WallMarks
from tracker.targets import Point3
from tracker.wall import Wall

SUPPORTS: tuple[Support, ...] = ("none", "corner_and_chair", "helper")


@dataclass(frozen=True, slots=True)
class Asked:
    """An entry with nothing left open; times in seconds, angles in degrees."""

    entry_id: str
    exercise: Exercise
    repetitions: int | None
    seconds: float | None
    tempo_bpm: float | tuple[float, float] | None
    amplitude_deg: tuple[float, float] | None
    eyes: Eyes
    posture: Posture
    surface: Surface
    head_shake: bool
    support: Support
    wall: WallMarks | None = None

    @property
    def marks(self) -> Wall | None:
        """The marks on the wall, once all of their lengths are known."""
        wall = self.wall
        if wall is None or wall.distance_mm is None:
            return None
        if self.exercise.wall_marks == 2 and wall.spacing_mm is None:
            return None
        return Wall(wall.distance_mm, wall.spacing_mm, wall.above_mm, wall.right_mm)

    @property
    def marks_up(self) -> bool:
        """Whether two marks are one above the other."""
        return self.exercise.channel == "eye_pitch"

    @property
    def mark_places_mm(self) -> tuple[Point3, ...]:
        """Where the marks are: right of the camera, above it, from the eyes; empty as above."""
        wall = self.marks
        return () if wall is None else wall.marks_mm((0.0, 0.0, 0.0), up=self.marks_up)

    @property
    def about_s(self) -> float:
        """About how long the set takes."""
        tempo = self.tempo_bpm
        pair = tempo if tempo is None or isinstance(tempo, tuple) else (tempo, tempo)
        return length_s(self.repetitions, self.seconds, pair, self.exercise)

    @property
    def step_values(self) -> dict[str, Any]:
        """What a step of the stage log says of it, beside its times and its target."""
        return {
            "exercise": self.exercise.id,
            "entry_id": self.entry_id,
            "tempo_bpm": self.tempo_bpm,
            "amplitude_deg": self.amplitude_deg,
            "repetitions": self.repetitions,
            "seconds": self.seconds,
            "eyes": self.eyes,
            "posture": self.posture,
            "surface": self.surface,
            "head_shake": self.head_shake,
            **({} if self.marks is None else {"wall": self.marks.to_log()}),
        }


def seat_mm(asked: Asked, plan: Plan) -> float:
    """How far from the screen one sits for an entry, mm: as the plan has it, or further back."""
    return max(plan.seat_distance_mm, asked.exercise.seat_mm or 0.0)


def length_s(
    repetitions: int | None,
    seconds: float | None,
    tempo_bpm: tuple[float, float] | None,
    exercise: Exercise,
) -> float:
    """About how long a dose of an exercise takes."""
    if seconds is not None:
        return seconds
    count = repetitions or 0
    if tempo_bpm is None or exercise.guide is not None:
        return exercise.own_pace_s(count)
    return count * 2 * 60.0 / (0.5 * sum(tempo_bpm))


def asked_of(entry: Entry, week: int = 1) -> Asked:
    """What an entry asks for; KeyError if its exercise isn't in the catalogue."""
    exercise = CATALOGUE[entry.exercise]
    own_dose = entry.repetitions is not None or entry.seconds is not None
    tempo: Tempo = exercise.tempo_bpm
    if "tempo_bpm" in entry.model_fields_set:
        tempo = entry.tempo_bpm
    amplitude = entry.amplitude_deg or exercise.amplitude_deg
    for rung in entry.ladder:
        if rung.from_week <= week:
            tempo = rung.tempo_bpm if "tempo_bpm" in rung.model_fields_set else tempo
            amplitude = rung.amplitude_deg or amplitude
    if not exercise.in_degrees:
        # A plan of before may have a range where millimetres are counted; it is passed over.
        amplitude = None
    return Asked(
        entry_id=entry.entry_id,
        exercise=exercise,
        repetitions=entry.repetitions if own_dose else exercise.dose_repetitions,
        seconds=entry.seconds if own_dose else exercise.dose_seconds,
        tempo_bpm=_floats(tempo),
        amplitude_deg=amplitude,
        eyes=entry.eyes or exercise.eyes,
        posture=entry.posture or exercise.posture,
        surface=entry.surface or exercise.surface,
        head_shake=exercise.head_shake if entry.head_shake is None else entry.head_shake,
        support=entry.support or least_support(entry),
        wall=entry.wall,
    )


def find_entry(plan: Plan, exercise_id: str, entry_id: str | None = None) -> Entry:
    """The entry of a plan for an exercise.

    Raises
    ------
    InputError
        If there is none, if several are and none of them is named, or if the one
        named is for another exercise.
    """
    fitting = [e for e in plan.entries if e.exercise == exercise_id]
    name = f"plan {plan.plan_id!r}"
    if not fitting:
        has = ", ".join(dict.fromkeys(e.exercise for e in plan.entries))
        raise InputError(f"{name} has no entry for {exercise_id!r}; it has: {has}")
    ids = ", ".join(e.entry_id for e in fitting)
    if entry_id is None:
        if len(fitting) > 1:
            raise InputError(f"{name} has several entries for {exercise_id!r}: name one of {ids}")
        return fitting[0]
    for entry in fitting:
        if entry.entry_id == entry_id:
            return entry
    raise InputError(f"{name} has no entry {entry_id!r} for {exercise_id!r}; it has: {ids}")


def options_of(entry: Entry) -> tuple[Option, ...]:
    """The options of the table that an entry makes use of."""
    exercise = CATALOGUE[entry.exercise]
    used: list[Option] = [entry.posture or exercise.posture]
    if (entry.eyes or exercise.eyes) == "closed":
        used.append("eyes_closed")
    if entry.head_shake or (entry.head_shake is None and exercise.head_shake):
        used.append("head_shake")
    if (entry.surface or exercise.surface) == "soft":
        used.append("soft_surface")
    return tuple(used)


def least_support(entry: Entry) -> Support:
    """The least support that an entry can do with.

    Standing needs a corner and a chair; standing with shut eyes, or an option that
    the table gives with a helper only, needs a helper; seated work needs none.
    """
    exercise, options = CATALOGUE[entry.exercise], options_of(entry)
    if any(permission(exercise.id, o) == "helper" for o in options):
        return "helper"
    if "sitting" in options:
        return "none"
    if "eyes_closed" in options or exercise.support == "helper":
        return "helper"
    return "corner_and_chair"


def week_of(plan: Plan, today: date) -> int:
    """Week of a plan, from 1; 1 before its start and without one."""
    if plan.starts_on is None:
        return 1
    return max((today - plan.starts_on).days // 7, 0) + 1


def _floats(tempo: Tempo) -> float | tuple[float, float] | None:
    if tempo is None:
        return None
    return (float(tempo[0]), float(tempo[1])) if isinstance(tempo, tuple) else float(tempo)
