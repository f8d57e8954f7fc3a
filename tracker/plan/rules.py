"""What a plan must not ask for, and what its therapist should know of it.

A fault refuses the plan; a remark is only said.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from math import ceil, floor, radians, tan

from tracker.exercises.catalogue import CATALOGUE, Exercise, no_such_exercise, permission, why_never
from tracker.exercises.catalogue.model import HELD
from tracker.exercises.catalogue.permissions import Option
from tracker.plan.asked import SUPPORTS, Asked, asked_of, least_support, options_of
from tracker.plan.changes import PURSUIT_MOST_BPM, neck_limit_deg
from tracker.plan.findings import OPTION_WORDS, Finding
from tracker.plan.lines import Path
from tracker.plan.model import Entry, Plan, Rung, Unlock
from tracker.plan.walls import (
    ROOM_DEG,
    half_range_deg,
    in_the_middle,
    neck_spacing_mm,
    something_fits,
    too_far_off,
    turn_most_deg,
)
from tracker.tempo import fastest_bpm
from tracker.wall import LEAST_MM, MOST_MM, WALL_FIELDS
from tracker.wall import why_not as why_no_marks

#: A starter stage takes at most this long (common practice: 10 to 15 minutes).
STAGE_MINUTES = 15.0
#: From the eyes to the target, common practice; below 700 mm the eyes turn back much
#: further than for a far target (J Otolaryngol HNS 2015 44:29).
SEAT_LEAST_MM = 750.0

#: So many times the usual pace is a beat that is asked about (own choice): of stands 72 a minute,
#: where 53 are five in 11.4 s, as fast as is safe and average from 60 on (Bohannon 2006).
FAST_IS = 3.0

#: Option -> field that asks for it.
_OPTION_FIELDS: dict[Option, str] = {
    "eyes_closed": "eyes",
    "head_shake": "head_shake",
    "sitting": "posture",
    "standing": "posture",
    "walking": "posture",
    "soft_surface": "surface",
}


def faults(plan: Plan) -> list[Finding]:
    """Everything that refuses a plan, in the order of its fields."""
    found = [*_plan_faults(plan), *_key_faults(plan), *_stage_faults(plan)]
    for k, entry in enumerate(plan.entries):
        at: Path = ("entries", k)
        found += (replace(f, path=(*at, *f.path)) for f in _entry_faults(plan, k, entry))
    return found


def _plan_faults(plan: Plan) -> Iterator[Finding]:
    if plan.kind_of_loss == "bilateral" and plan.affected_side in ("right", "left"):
        yield Finding(("affected_side",), "bilateral_side")
    rules = plan.symptom_rules
    if rules.high_start == "baseline" and rules.baseline_rise_most is None:
        yield Finding(("symptom_rules", "high_start"), "baseline_rise")


def _key_faults(plan: Plan) -> Iterator[Finding]:
    """What is wrong with where sessions are handed over to."""
    way = plan.hand_over
    if way is None:
        return
    if way.plain and way.keys:
        yield Finding(("hand_over", "plain"), "keys_and_plain")
    if not way.plain and not way.keys:
        yield Finding(("hand_over",), "no_keys")
    # Imported here: only a plan with keys needs the library.
    from tracker.handover.crypt import is_public_key

    for k, key in enumerate(way.keys):
        if not is_public_key(key):
            yield Finding(("hand_over", "keys", k), "misspelt_key")
        elif key in way.keys[:k]:
            yield Finding(("hand_over", "keys", k), "twice")


def _stage_faults(plan: Plan) -> Iterator[Finding]:
    seen: list[str] = []
    for k, stage in enumerate(plan.stages):
        if stage.stage_id in seen:
            yield Finding.of(("stages", k, "stage_id"), "two_stages", name=repr(stage.stage_id))
        yield from _unlock_faults(("stages", k), stage.unlock_after, seen)
        if not plan.entries_of(stage.stage_id):
            yield Finding.of(("stages", k, "stage_id"), "empty_stage", name=repr(stage.stage_id))
        seen.append(stage.stage_id)


def _unlock_faults(at: Path, unlock: Unlock | None, before: Sequence[str]) -> Iterator[Finding]:
    if unlock is None:
        return
    where = (*at, "unlock_after")
    if unlock.after is not None and unlock.after not in before:
        yield Finding.of((*where, "after"), "not_before", name=repr(unlock.after))
    if unlock.has_figures and unlock.after is None:
        yield Finding(where, "figures_of_what")


def _entry_faults(plan: Plan, k: int, entry: Entry) -> Iterator[Finding]:
    before = plan.entries[:k]
    if entry.entry_id in {e.entry_id for e in before}:
        yield Finding.of(("entry_id",), "two_entries", name=repr(entry.entry_id))
    stages = [s.stage_id for s in plan.stages]
    if entry.entry_id in stages:
        yield Finding.of(("entry_id",), "name_of_stage", name=repr(entry.entry_id))
    if stages and entry.stage is None:
        yield Finding(("stage",), "stage_missing")
    elif entry.stage is not None and entry.stage not in stages:
        yield Finding.of(("stage",), "no_stage", name=repr(entry.stage))
    earlier = stages[: stages.index(entry.stage)] if entry.stage in stages else []
    yield from _unlock_faults((), entry.unlock_after, [*earlier, *(e.entry_id for e in before)])
    exercise = CATALOGUE.get(entry.exercise)
    if exercise is None:
        yield Finding.of(("exercise",), "other", text=no_such_exercise(entry.exercise))
        return
    if exercise.off_by_default and not entry.note.strip():
        yield Finding.of(("note",), "note_needed", exercise=exercise.id, why=exercise.asks_note)
    yield from _dose_faults(entry, exercise)
    yield from _permission_faults(entry, exercise)
    yield from _form_faults(entry, exercise)
    yield from _wall_faults(plan, entry, exercise)
    yield from _ladder_faults(plan, entry, exercise)


def _dose_faults(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    if entry.repetitions is not None and entry.seconds is not None:
        yield Finding(("seconds",), "two_doses")
    if entry.repetitions is not None and exercise.channel == HELD:
        yield Finding.of(("repetitions",), "held_seconds", exercise=exercise.id)
    for at, part in _parts(entry):
        if part.tempo_bpm is not None and exercise.channel == HELD:
            yield Finding.of((*at, "tempo_bpm"), "held_tempo", exercise=exercise.id)
        elif exercise.target == "sweep" and _too_fast_to_follow(part):
            where: Path = (*at, "tempo_bpm")
            yield Finding.of(where, "tempo_to_follow", exercise=exercise.id, most=PURSUIT_MOST_BPM)
        if part.amplitude_deg is None:
            continue
        if not exercise.in_degrees:
            if not _degrees_passed_over(exercise):
                yield Finding.of((*at, "amplitude_deg"), "no_degrees", exercise=exercise.id)
        elif part.amplitude_deg[0] > part.amplitude_deg[1]:
            yield Finding((*at, "amplitude_deg"), "least_first")


def _degrees_passed_over(exercise: Exercise) -> bool:
    """Whether a range in degrees hurts nobody: it is of bends and stands, in millimetres.

    Plans that have one were handed out, and must still open.
    """
    return exercise.channel.startswith("head") and not exercise.in_degrees


def _too_fast_to_follow(part: Entry | Rung) -> bool:
    return part.tempo_bpm is not None and fastest_bpm(part.tempo_bpm) > PURSUIT_MOST_BPM


def _parts(entry: Entry) -> list[tuple[Path, Entry | Rung]]:
    return [((), entry), *((("ladder", k), rung) for k, rung in enumerate(entry.ladder))]


def _permission_faults(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    options = options_of(entry)
    refused = [o for o in options if permission(exercise.id, o) == "never"]
    for option in refused:
        yield Finding.of(
            (_OPTION_FIELDS[option],),
            "never",
            exercise=exercise.id,
            how=OPTION_WORDS[option],
            why=why_never(exercise.id, option),
        )
    if refused or entry.support is None:
        return
    least = least_support(entry)
    if SUPPORTS.index(entry.support) < SUPPORTS.index(least):
        how = tuple(OPTION_WORDS[o] for o in options)
        yield Finding.of(("support",), "support", exercise=exercise.id, how=how, least=repr(least))


def _form_faults(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    """What is the exercise itself can't be taken away from it."""
    if exercise.eyes == "closed" and entry.eyes == "open":
        yield Finding.of(("eyes",), "eyes_closed", exercise=exercise.id)
    if exercise.head_shake and entry.head_shake is False:
        yield Finding.of(("head_shake",), "head_shake", exercise=exercise.id)


def _wall_faults(plan: Plan, entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    """Marks where there can be none, or that the eyes or the head are not read at."""
    if entry.wall is None:
        return
    if not exercise.wall_marks:
        yield Finding.of(("wall",), "no_wall", exercise=exercise.id)
        return
    if (entry.eyes or exercise.eyes) == "closed":
        yield Finding.of(("wall",), "wall_shut", exercise=exercise.id)
        return
    if exercise.wall_marks == 1 and entry.wall.spacing_mm is not None:
        yield Finding.of(("wall", "spacing_mm"), "one_mark", exercise=exercise.id)
        return
    eyes = exercise.channel.startswith("eye")
    wall = asked_of(entry).marks
    if wall is None:
        found_open = _open_wall_fault(plan, entry)
        if found_open is not None:
            yield found_open
        return
    found = why_no_marks(wall, two=exercise.wall_marks == 2, eyes=eyes)
    if found is not None:
        key, values = found
        yield Finding.of(("wall", WALL_FIELDS[key]), key, **values)
    most = neck_spacing_mm(plan, asked_of(entry), wall.distance_mm, wall.right_mm)
    if wall.spacing_mm is not None and wall.spacing_mm > most:
        limit = turn_most_deg(plan, asked_of(entry))
        values = {"limit": limit, "most": max(float(floor(most)), 0.0)}
        yield Finding.of(("wall", "spacing_mm"), "wall_neck", **values)


def _open_wall_fault(plan: Plan, entry: Entry) -> Finding | None:
    """Why nothing that the patient may measure fits, in one of the plan's weeks."""
    for week in (1, *(r.from_week for r in entry.ladder)):
        asked = asked_of(entry, week)
        least, widest = half_range_deg(plan, asked)
        if asked.exercise.wall_marks == 2 and widest < least + ROOM_DEG:
            values = {"least": least + ROOM_DEG, "most": widest}
            return Finding.of(("wall",), "wall_small", **values)
        if something_fits(plan, asked):
            continue
        if not something_fits(plan, in_the_middle(asked)):
            closest, farthest = (2.0 * mm * tan(radians(d)) for mm, d in _ends(least, widest))
            values = {"least": float(ceil(closest)), "most": float(floor(farthest))}
            return Finding.of(("wall", "spacing_mm"), "wall_spacing", **values)
        field, most = too_far_off(plan, asked)
        return Finding.of(("wall", field), "wall_far", most=float(floor(most)))
    return None


def _ends(least_deg: float, most_deg: float) -> tuple[tuple[float, float], ...]:
    return (LEAST_MM, least_deg), (MOST_MM, most_deg)


def _ladder_faults(plan: Plan, entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    week = 1
    for k, rung in enumerate(entry.ladder):
        if rung.from_week <= week:
            yield Finding(("ladder", k, "from_week"), "later_rung")
        week = max(week, rung.from_week)
        if not {"tempo_bpm", "amplitude_deg"} & rung.model_fields_set:
            yield Finding(("ladder", k), "idle_rung")
    limit = neck_limit_deg(plan, exercise)
    if limit is None:
        return
    asks = [(1, ()), *((r.from_week, ("ladder", k)) for k, r in enumerate(entry.ladder))]
    for from_week, at in asks:
        most = asked_of(entry, from_week).amplitude_deg
        if most is not None and most[1] > limit:
            yield Finding.of((*at, "amplitude_deg"), "neck", most=most[1], limit=limit)


def remarks(plan: Plan) -> list[Finding]:
    """What the therapist should know of a plan that is otherwise fine."""
    return [*_plan_remarks(plan), *_entry_remarks(plan)]


def _plan_remarks(plan: Plan) -> Iterator[Finding]:
    if plan.emergency_number is None:
        yield Finding(("emergency_number",), "no_emergency_number")
    if plan.neck_limit_deg is None:
        yield Finding(("neck_limit_deg",), "none_set")
    if not is_cleared(plan):
        yield Finding(("clearance",), "not_cleared")
    if plan.hand_over is not None and plan.hand_over.plain:
        yield Finding(("hand_over",), "plain")
    if plan.hand_over is not None and plan.person is None:
        yield Finding(("person",), "no_person")
    if plan.seat_distance_mm < SEAT_LEAST_MM:
        yield Finding.of(("seat_distance_mm",), "near_seat", usual=SEAT_LEAST_MM)
    for k, stage in enumerate(plan.stages):
        minutes = minutes_of(plan, plan.entries_of(stage.stage_id))
        if minutes > STAGE_MINUTES:
            yield Finding.of(
                ("stages", k), "long_stage", minutes=float(round(minutes)), most=STAGE_MINUTES
            )


def _entry_remarks(plan: Plan) -> Iterator[Finding]:
    for k, entry in enumerate(plan.entries):
        exercise = CATALOGUE[entry.exercise]
        if exercise.asks_note and not entry.note.strip():
            yield Finding.of(
                ("entries", k, "note"), "note_wanted", exercise=exercise.id, why=exercise.asks_note
            )
        if entry.ladder and plan.starts_on is None:
            yield Finding(("entries", k, "ladder"), "weeks_from_when")
        for finding in (
            *_passed_over_remark(entry, exercise),
            *_open_range_remark(plan, entry, exercise),
            *_fast_remark(entry, exercise),
        ):
            yield replace(finding, path=("entries", k, *finding.path))


def _passed_over_remark(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    if _degrees_passed_over(exercise):
        for at, part in _parts(entry):
            if part.amplitude_deg is not None:
                where: Path = (*at, "amplitude_deg")
                yield Finding.of(where, "degrees_passed_over", exercise=exercise.id)


def _open_range_remark(plan: Plan, entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    """A neck limit that nothing of the entry is held to: no range is asked, so none is watched."""
    limit = neck_limit_deg(plan, exercise)
    turns = exercise.in_degrees or asked_of(entry).head_shake
    weeks = (1, *(rung.from_week for rung in entry.ladder))
    if limit is None or not turns or all(asked_of(entry, w).amplitude_deg for w in weeks):
        return
    if exercise.in_degrees:
        yield Finding.of(("amplitude_deg",), "no_range", exercise=exercise.id, limit=limit)
    else:
        yield Finding.of(("head_shake",), "no_range_held", exercise=exercise.id, limit=limit)


def _fast_remark(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    """A beat far from the usual pace: a figure too many is soon typed.

    Not of what is done to a beat on a chair: turns with the eyes on a target grow quicker by plan.
    """
    if not exercise.counted or (exercise.tempo_bpm is not None and exercise.posture == "sitting"):
        return
    for at, part in _parts(entry):
        own = round(exercise.tempo_bpm or exercise.own_pace_bpm)
        if part.tempo_bpm is not None and fastest_bpm(part.tempo_bpm) > FAST_IS * own:
            most = float(fastest_bpm(part.tempo_bpm))
            where: Path = (*at, "tempo_bpm")
            yield Finding.of(where, "fast", exercise=exercise.id, most=most, own=float(own))


def is_cleared(plan: Plan) -> bool:
    """Whether the clearance checklist is there and ticked throughout."""
    return bool(plan.clearance) and all(c.cleared for c in plan.clearance)


def minutes_of(plan: Plan, entries: Sequence[Entry], week: int = 1) -> float:
    """About how long some entries take, rests in between included."""
    sets: list[Asked] = [asked_of(e, week) for e in entries]
    return (sum(s.about_s for s in sets) + plan.rest_s * max(len(sets) - 1, 0)) / 60.0
