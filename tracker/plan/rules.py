"""What a plan must not ask for, and what its therapist should know of it.

A fault refuses the plan; a remark is only said.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from tracker.exercises.catalogue import CATALOGUE, Exercise, no_such_exercise, permission, why_never
from tracker.exercises.catalogue.model import HELD
from tracker.plan.asked import SUPPORTS, Asked, asked_of, least_support, options_of
from tracker.plan.changes import PURSUIT_MOST_BPM, neck_limit_deg
from tracker.plan.lines import Path
from tracker.plan.model import Entry, Plan, Rung, Unlock
from tracker.tempo import fastest_bpm

#: A starter stage takes at most this long (common practice: 10 to 15 minutes).
STAGE_MINUTES = 15.0
#: From the eyes to the target, common practice; below 700 mm the eyes turn back much
#: further than for a far target (J Otolaryngol HNS 2015 44:29).
SEAT_LEAST_MM = 750.0

_OPTION_WORDS = {
    "eyes_closed": ("eyes", "with the eyes closed"),
    "head_shake": ("head_shake", "with a head shake"),
    "sitting": ("posture", "sitting"),
    "standing": ("posture", "standing"),
    "walking": ("posture", "walking"),
    "soft_surface": ("surface", "on a soft surface"),
}


@dataclass(frozen=True, slots=True)
class Finding:
    """Something about one field of a plan."""

    path: Path
    text: str


def faults(plan: Plan) -> list[Finding]:
    """Everything that refuses a plan, in the order of its fields."""
    found = [*_plan_faults(plan), *_key_faults(plan), *_stage_faults(plan)]
    for k, entry in enumerate(plan.entries):
        at: Path = ("entries", k)
        found += (Finding((*at, *f.path), f.text) for f in _entry_faults(plan, k, entry))
    return found


def _plan_faults(plan: Plan) -> Iterator[Finding]:
    if plan.kind_of_loss == "bilateral" and plan.affected_side in ("right", "left"):
        yield Finding(("affected_side",), "a bilateral loss has both sides affected")
    rules = plan.symptom_rules
    if rules.high_start == "baseline" and rules.baseline_rise_most is None:
        yield Finding(
            ("symptom_rules", "high_start"), "the baseline rule needs baseline_rise_most too"
        )


def _key_faults(plan: Plan) -> Iterator[Finding]:
    """What is wrong with where sessions are handed over to."""
    way = plan.hand_over
    if way is None:
        return
    if way.plain and way.keys:
        yield Finding(("hand_over", "plain"), "there are keys, so nothing is handed over plain")
    if not way.plain and not way.keys:
        yield Finding(("hand_over",), "needs keys, or plain set to true knowingly")
    # Imported here: only a plan with keys needs the library.
    from tracker.handover.crypt import is_public_key

    for k, key in enumerate(way.keys):
        if not is_public_key(key):
            yield Finding(("hand_over", "keys", k), "is misspelt: its check letters don't fit")
        elif key in way.keys[:k]:
            yield Finding(("hand_over", "keys", k), "stands there twice")


def _stage_faults(plan: Plan) -> Iterator[Finding]:
    seen: list[str] = []
    for k, stage in enumerate(plan.stages):
        if stage.stage_id in seen:
            yield Finding(("stages", k, "stage_id"), f"there are two stages {stage.stage_id!r}")
        yield from _unlock_faults(("stages", k), stage.unlock_after, seen)
        if not plan.entries_of(stage.stage_id):
            yield Finding(("stages", k, "stage_id"), f"no entry is in stage {stage.stage_id!r}")
        seen.append(stage.stage_id)


def _unlock_faults(at: Path, unlock: Unlock | None, before: Sequence[str]) -> Iterator[Finding]:
    if unlock is None:
        return
    where = (*at, "unlock_after")
    if unlock.after is not None and unlock.after not in before:
        yield Finding(
            (*where, "after"), f"{unlock.after!r} is no entry or stage further up in this plan"
        )
    if unlock.has_figures and unlock.after is None:
        yield Finding(where, "figures need 'after', the entry or stage they are taken from")


def _entry_faults(plan: Plan, k: int, entry: Entry) -> Iterator[Finding]:
    before = plan.entries[:k]
    if entry.entry_id in {e.entry_id for e in before}:
        yield Finding(("entry_id",), f"there are two entries {entry.entry_id!r}")
    stages = [s.stage_id for s in plan.stages]
    if entry.entry_id in stages:
        yield Finding(("entry_id",), f"{entry.entry_id!r} is the name of a stage already")
    if stages and entry.stage is None:
        yield Finding(("stage",), "is missing, as this plan has stages")
    elif entry.stage is not None and entry.stage not in stages:
        yield Finding(("stage",), f"there is no stage {entry.stage!r} in this plan")
    earlier = stages[: stages.index(entry.stage)] if entry.stage in stages else []
    yield from _unlock_faults((), entry.unlock_after, [*earlier, *(e.entry_id for e in before)])
    exercise = CATALOGUE.get(entry.exercise)
    if exercise is None:
        yield Finding(("exercise",), no_such_exercise(entry.exercise))
        return
    if exercise.off_by_default and not entry.note.strip():
        yield Finding(("note",), f"{exercise.id} needs a note: {exercise.asks_note}")
    yield from _dose_faults(entry, exercise)
    yield from _permission_faults(entry, exercise)
    yield from _form_faults(entry, exercise)
    yield from _ladder_faults(plan, entry, exercise)


def _dose_faults(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    if entry.repetitions is not None and entry.seconds is not None:
        yield Finding(("seconds",), "give repetitions or seconds, not both")
    if entry.repetitions is not None and exercise.channel == HELD:
        yield Finding(("repetitions",), f"{exercise.id} is held: give seconds")
    for at, part in _parts(entry):
        if part.tempo_bpm is not None and exercise.channel == HELD:
            yield Finding((*at, "tempo_bpm"), f"{exercise.id} is held: it has no tempo")
        elif exercise.target == "sweep" and _too_fast_to_follow(part):
            limit = f"{exercise.id} goes at {PURSUIT_MOST_BPM:g} beats a minute at most"
            yield Finding((*at, "tempo_bpm"), limit)
        if part.amplitude_deg is None:
            continue
        if not exercise.channel.startswith("head"):
            yield Finding((*at, "amplitude_deg"), f"{exercise.id} is not measured in degrees")
        elif part.amplitude_deg[0] > part.amplitude_deg[1]:
            yield Finding((*at, "amplitude_deg"), "the least comes first, then the most")


def _too_fast_to_follow(part: Entry | Rung) -> bool:
    return part.tempo_bpm is not None and fastest_bpm(part.tempo_bpm) > PURSUIT_MOST_BPM


def _parts(entry: Entry) -> list[tuple[Path, Entry | Rung]]:
    return [((), entry), *((("ladder", k), rung) for k, rung in enumerate(entry.ladder))]


def _permission_faults(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    options = options_of(entry)
    refused = [o for o in options if permission(exercise.id, o) == "never"]
    for option in refused:
        field, words = _OPTION_WORDS[option]
        yield Finding(
            (field,), f"{exercise.id} {words} is not given: {why_never(exercise.id, option)}"
        )
    if refused or entry.support is None:
        return
    least = least_support(entry)
    if SUPPORTS.index(entry.support) < SUPPORTS.index(least):
        how = ", ".join(_OPTION_WORDS[o][1] for o in options)
        yield Finding(("support",), f"{exercise.id} ({how}) needs the support {least!r}")


def _form_faults(entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    """What is the exercise itself can't be taken away from it."""
    if exercise.eyes == "closed" and entry.eyes == "open":
        yield Finding(("eyes",), f"{exercise.id} is done with the eyes closed")
    if exercise.head_shake and entry.head_shake is False:
        yield Finding(("head_shake",), f"{exercise.id} is done with a head shake")


def _ladder_faults(plan: Plan, entry: Entry, exercise: Exercise) -> Iterator[Finding]:
    week = 1
    for k, rung in enumerate(entry.ladder):
        if rung.from_week <= week:
            yield Finding(("ladder", k, "from_week"), "must be later than the rung before")
        week = max(week, rung.from_week)
        if not {"tempo_bpm", "amplitude_deg"} & rung.model_fields_set:
            yield Finding(("ladder", k), "changes nothing: give tempo_bpm or amplitude_deg")
    limit = neck_limit_deg(plan, exercise)
    if limit is None:
        return
    asks = [(1, ()), *((r.from_week, ("ladder", k)) for k, r in enumerate(entry.ladder))]
    for from_week, at in asks:
        most = asked_of(entry, from_week).amplitude_deg
        if most is not None and most[1] > limit:
            yield Finding(
                (*at, "amplitude_deg"),
                f"asks for up to {most[1]:g} degrees, beyond the neck limit of {limit:g}",
            )


def remarks(plan: Plan) -> list[Finding]:
    """What the therapist should know of a plan that is otherwise fine."""
    return [*_plan_remarks(plan), *_entry_remarks(plan)]


def _plan_remarks(plan: Plan) -> Iterator[Finding]:
    if plan.emergency_number is None:
        yield Finding(
            ("emergency_number",), "none is set: the program can only say 'call for help'"
        )
    if plan.neck_limit_deg is None:
        yield Finding(("neck_limit_deg",), "none is set")
    if not is_cleared(plan):
        yield Finding(
            ("clearance",), "not everything is ticked: only seated entries will be offered"
        )
    if plan.hand_over is not None and plan.hand_over.plain:
        yield Finding(("hand_over",), "sessions are handed over unencrypted")
    if plan.hand_over is not None and plan.person is None:
        yield Finding(
            ("person",), "no pseudonym is set: nobody can tell whose sessions are handed over"
        )
    if plan.seat_distance_mm < SEAT_LEAST_MM:
        yield Finding(("seat_distance_mm",), f"nearer than the usual {SEAT_LEAST_MM:g} mm")
    for k, stage in enumerate(plan.stages):
        minutes = minutes_of(plan, plan.entries_of(stage.stage_id))
        if minutes > STAGE_MINUTES:
            yield Finding(
                ("stages", k), f"takes about {minutes:.0f} minutes, more than {STAGE_MINUTES:g}"
            )


def _entry_remarks(plan: Plan) -> Iterator[Finding]:
    for k, entry in enumerate(plan.entries):
        exercise = CATALOGUE[entry.exercise]
        if exercise.asks_note and not entry.note.strip():
            yield Finding(("entries", k, "note"), f"{exercise.id}: {exercise.asks_note}")
        if entry.ladder and plan.starts_on is None:
            yield Finding(("entries", k, "ladder"), "counts weeks, but starts_on is not set")


def is_cleared(plan: Plan) -> bool:
    """Whether the clearance checklist is there and ticked throughout."""
    return bool(plan.clearance) and all(c.cleared for c in plan.clearance)


def minutes_of(plan: Plan, entries: Sequence[Entry], week: int = 1) -> float:
    """About how long some entries take, rests in between included."""
    sets: list[Asked] = [asked_of(e, week) for e in entries]
    return (sum(s.about_s for s in sets) + plan.rest_s * max(len(sets) - 1, 0)) / 60.0
