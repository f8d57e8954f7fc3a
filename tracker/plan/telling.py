"""A plan, and the catalogue, in the therapist's words: one line a thing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tracker.exercises.catalogue import (
    CATALOGUE,
    GUIDED,
    HELD,
    NOT_MEASURED,
    OPTIONS,
    PERMISSIONS,
    Exercise,
)
from tracker.plan.asked import Asked, asked_of, seat_mm
from tracker.plan.guideline import gaze_minutes_a_day, guideline_words
from tracker.plan.model import Entry, Plan, Range, Rung, Tempo, Unlock, WallMarks
from tracker.plan.rules import minutes_of
from tracker.plan.starter import starter_plan
from tracker.wall import Wall

#: Every channel of the catalogue has its words here.
_COUNTED_FROM = {
    "head_yaw": "counted: head yaw",
    "head_pitch": "counted: head pitch",
    "head_roll": "counted: head tilt",
    "head_reach": "counted: head in bends",
    "head_rise": "counted: head in rises",
    "head_to_mark": "counted: head yaw",
    "eye_yaw": "counted: gaze",
    "eye_pitch": "counted: gaze",
    "eye_sweep": "counted: gaze",
    "eye_vergence": "counted: hand, else vergence",
    "neck_sideways": "counted: neck point sideways",
    "neck_fore_aft": "counted: neck point fore and aft",
    "shoulder_lift": "counted: shoulders",
    "hand_throw": "counted: hands",
    HELD: "held, timed",
    GUIDED: "led, not counted",
}
_SUPPORT = {
    "none": "no support",
    "corner_and_chair": "corner and chair",
    "helper": "helper within reach",
}


def catalogue_lines() -> list[str]:
    """The whole catalogue, a line an exercise, its ID first."""
    width = max(len(i) for i in CATALOGUE)
    from_width = max(len(counted_from(e)) for e in CATALOGUE.values())
    forms = _forms()
    return [
        f"{e.id:<{width}}  {_dose(e.dose_repetitions, e.dose_seconds):<9}"
        f"{counted_from(e):<{from_width}}  {e.therapist}{forms.get(e.id, '')}"
        for e in CATALOGUE.values()
    ]


def _forms() -> dict[str, str]:
    """What is said of exercises that the starter plan has in several forms."""
    entries = starter_plan().entries
    found = {}
    for exercise in dict.fromkeys(e.exercise for e in entries):
        own = [e for e in entries if e.exercise == exercise]
        if len(own) > 1:
            on: dict[str, list[str]] = {}
            for entry in own:
                on.setdefault(f"{entry.surface} surface", []).append(str(entry.eyes))
            forms = (f"{surface}: eyes {' and '.join(eyes)}" for surface, eyes in on.items())
            found[exercise] = f" [{'; '.join(forms)}]"
    return found


def option_lines() -> list[str]:
    """The table of options: what is allowed, given with a helper only, or never."""
    width = max(len(i) for i in CATALOGUE)
    lines = [f"{'':<{width}}  " + "".join(f"{o:<14}" for o in OPTIONS)]
    for name, row in PERMISSIONS.items():
        lines.append(f"{name:<{width}}  " + "".join(f"{row[o]:<14}" for o in OPTIONS))
    return [line.rstrip() for line in lines]


def counted_from(exercise: Exercise) -> str:
    """What an exercise is counted from, in words."""
    return _COUNTED_FROM[exercise.channel]


def plan_lines(plan: Plan, week: int = 1) -> list[str]:
    """A plan in words, as it stands in a week."""
    lines = list(_head(plan, week))
    for stage in plan.stages:
        entries = plan.entries_of(stage.stage_id)
        lines += [
            "",
            f"{stage.name} ({stage.stage_id}, about {minutes_of(plan, entries, week):.0f} minutes)",
            *_unlock(stage.unlock_after, "  "),
        ]
        lines += _entries(plan, entries, week)
    if not plan.stages:
        lines += ["", *_entries(plan, plan.entries, week)]
    return lines


def _head(plan: Plan, week: int) -> Iterator[str]:
    start = f", from {plan.starts_on}" if plan.starts_on else ""
    yield f"plan {plan.plan_id}, for {plan.person or 'nobody named'}{start}, week {week}"
    yield f"affected side {plan.affected_side}, kind of loss {plan.kind_of_loss}"
    if plan.table_group is not None:
        group = f"{plan.age_group or 'no age group'}, {plan.sex or 'no sex given'}"
        yield f"for the published tables of chair stands: {group}"
    yield (
        f"{plan.bouts_a_day} bouts a day, {plan.days_a_week} days a week, "
        f"{plan.rest_s:g} s rest, target {plan.seat_distance_mm / 10:g} cm away"
    )
    rules = plan.symptom_rules
    asked = " and ".join(["dizziness", *rules.also_ask])
    yield (
        f"ends for today above {rules.score_most} of 10 ({asked}), "
        f"or when not settled within {rules.settle_minutes_most:g} minutes"
    )
    if rules.high_start == "baseline":
        yield f"who starts higher may rise by {rules.baseline_rise_most}"
    else:
        yield "who starts higher does seated work only"
    neck = plan.neck_limit_deg
    yield "neck limit: " + (
        "none set" if neck is None else f"{neck.yaw:g} degrees in yaw, {neck.pitch:g} in pitch"
    )
    yield f"emergency number: {plan.emergency_number or 'none set'}"
    yield f"hand-over: {_hand_over(plan)}"
    ticked = sum(c.cleared for c in plan.clearance)
    yield f"clearance: {ticked} of {len(plan.clearance)} ticked"
    yield (
        f"gaze stabilisation: about {gaze_minutes_a_day(plan, week):.0f} minutes a day planned; "
        f"{guideline_words(plan)}"
    )
    if plan.words:
        yield f"to the patient: {_one_line(plan.words)}"


def _hand_over(plan: Plan) -> str:
    way = plan.hand_over
    if way is None:
        return "to nobody (no key of a clinic in it)"
    if way.plain:
        return "plain files, which anybody can read"
    return f"encrypted, to {len(way.keys)} key{'s' if len(way.keys) > 1 else ''} of the clinic"


def _entries(plan: Plan, entries: Sequence[Entry], week: int) -> Iterator[str]:
    for entry in entries:
        asked = asked_of(entry, week)
        yield f"  {entry.entry_id}: {asked.exercise.therapist}"
        yield f"    {'; '.join(asked_words(asked, plan))}"
        yield from (f"    from week {r.from_week}: {rung_words(r)}" for r in entry.ladder)
        yield from _unlock(entry.unlock_after, "    ")
        if entry.note:
            yield f"    note: {_one_line(entry.note)}"
        if asked.exercise.not_measured:
            limits = "; ".join(NOT_MEASURED[k] for k in asked.exercise.not_measured)
            yield f"    not measured: {limits}"


def asked_words(asked: Asked, plan: Plan) -> Iterator[str]:
    """What an entry asks for, one part after the other."""
    yield _dose(asked.repetitions, asked.seconds)
    if asked.exercise.channel != HELD:
        yield _tempo(asked.tempo_bpm)
    if asked.amplitude_deg is not None:
        yield _range(asked.amplitude_deg)
    surface = "" if asked.posture == "sitting" else f", {asked.surface} surface"
    yield f"{asked.posture}{surface}, eyes {asked.eyes}"
    if asked.posture == "sitting" and asked.exercise.seat_mm is not None:
        # What the patient is told, and held to.
        yield f"about {seat_mm(asked, plan) / 10:g} cm from the screen"
    if asked.head_shake:
        yield "with head shakes"
    if asked.wall is not None:
        yield _wall(asked.wall, asked.exercise)
    yield _SUPPORT[asked.support]
    yield counted_from(asked.exercise)


def _wall(wall: WallMarks, exercise: Exercise) -> str:
    """Marks on the wall, with what the patient is still to measure."""
    away = "a distance that the patient measures"
    if wall.distance_mm is not None:
        away = f"{wall.distance_mm / 10:g} cm from the eyes"
    height = f"{abs(wall.above_mm) / 10:g} cm {'below' if wall.above_mm < 0 else 'above'}"
    side = ""
    if wall.right_mm:
        side = f" and {abs(wall.right_mm) / 10:g} cm {'left' if wall.right_mm < 0 else 'right'} of"
    if exercise.wall_marks == 1:
        return f"a mark on the wall, {away}, {height}{side} the camera"
    apart = "as far apart as the patient measures"
    if wall.spacing_mm is not None:
        apart = f"{wall.spacing_mm / 10:g} cm apart"
    half = None
    if wall.distance_mm is not None and wall.spacing_mm is not None:
        half = Wall(wall.distance_mm, wall.spacing_mm).half_deg
    angle = "" if half is None else f" ({half:.1f} degrees to each side)"
    return f"two marks on the wall, {apart}{angle}, {away}, {height}{side} the camera"


def _dose(repetitions: int | None, seconds: float | None) -> str:
    if seconds is not None:
        return f"{seconds:g} s"
    return "once" if repetitions == 1 else f"{repetitions} times"


def _tempo(tempo: Tempo) -> str:
    if tempo is None:
        return "own pace"
    if isinstance(tempo, tuple):
        return f"{tempo[0]:g} to {tempo[1]:g} beats a minute"
    return f"{tempo:g} beats a minute"


def _range(amplitude_deg: Range) -> str:
    return f"{amplitude_deg[0]:g} to {amplitude_deg[1]:g} degrees to each side"


def rung_words(rung: Rung) -> str:
    """What a step of a ladder asks for."""
    parts = [_tempo(rung.tempo_bpm)] if "tempo_bpm" in rung.model_fields_set else []
    parts += [_range(rung.amplitude_deg)] if rung.amplitude_deg is not None else []
    return ", ".join(parts)


def _unlock(unlock: Unlock | None, indent: str) -> Iterator[str]:
    if unlock is None:
        return
    met = f"; found met on {unlock.met_on}" if unlock.met_on else ""
    yield f"{indent}opens when the patient agrees and: {_one_line(unlock.condition)}{met}"


def _one_line(text: str) -> str:
    return " ".join(text.split())
