"""From what was recorded of a session to its summary: a projection of the journal.

A value that was not measured is null and says why; it is never 0.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import isfinite, nan
from typing import Any, cast

from tracker.exercises.catalogue import HELD, Exercise, find_exercise
from tracker.exercises.counters import Channel, channel_of
from tracker.exercises.events import Event
from tracker.exercises.near_hand import eye_turns, is_of_hand
from tracker.sample import Sample
from tracker.session import figures, said, standing
from tracker.session.arrivals import arrival_figures
from tracker.session.at_target import gaze_error_at_target_deg, look_error_deg, wall_of_step
from tracker.session.bench import bench_found
from tracker.session.body_figures import body_figures, hand_figures
from tracker.session.chair_stands import against_table
from tracker.session.flags import (
    COUNT_LOST,
    REPORTED,
    SEAT_OFF,
    Flag,
    flags_of,
    flags_of_hand,
    flags_of_session,
    seat_flag,
)
from tracker.session.projections import ExerciseRecord, SessionRecord
from tracker.session.reckoned import Stated
from tracker.session.run import (
    amplitude_asked,
    amplitude_wanted,
    grown_share,
    posture_asked,
    repetitions_asked,
    seconds_asked,
    target_swing_deg,
)
from tracker.session.summary_file import (
    ENDED,
    FORMAT_VERSION,
    ChangeRow,
    Done,
    Ended,
    EndedOutside,
    EventRow,
    ExerciseSummary,
    MarkRow,
    NotDone,
    Summary,
)
from tracker.session.sway_uncertain import add_sway_uncertainty
from tracker.session.target_figures import reach_of, target_figures
from tracker.session.uncertain import (
    OF_BODY,
    add_to_ratio,
    add_uncertainties,
    asked_changes,
    say_why,
    withheld,
)
from tracker.session.weekly import weekly_of

NOT_COUNTED = "the camera does not count this exercise in this version"
NO_REPETITIONS = "it is held for a time: there is nothing to count"
NOTHING_SEEN = "what it is counted from was never measured"
ENDS_UNSEEN = "how far the turns went was not seen"
#: A set that was over sooner says nothing of what could be measured (common practice).
LEAST_SEEN_S = 1.0


def summarise(record: SessionRecord) -> Summary:
    """Summary of a session."""
    about = record.about
    first_s = min(
        [s.time_s for s in record.samples[:1]] + [s.from_s for s in record.steps[:1]],
        default=record.end_s,
    )
    duration_s = record.end_s - first_s
    moving = [s for e in record.exercises for s in e.samples]
    return Summary(
        format="turnpost-session",
        format_version=FORMAT_VERSION,
        program_version=about.program_version,
        session_id=about.session_id,
        person=about.person,
        plan_id=about.plan_id,
        started_at=about.started_at,
        duration_s=round(duration_s, 3) if isfinite(duration_s) else None,
        ended=cast(Ended, record.ended if record.ended in ENDED else "interrupted"),
        setup={
            "camera": None,
            "distance_mm": None,
            "glasses": None,
            "calibration": None,
            **about.setup,
            **_common_setup(record),
            "frame_rate_hz": figures.frame_rate_hz(_longest(record)),
            "light": figures.light_of(moving or record.samples),
            "bench": bench_found(),
        },
        gate=said.gate_of(record),
        symptoms=said.symptoms_of(record),
        weekly=weekly_of(record),
        after_drop=said.after_drop_of(record),
        exercises=[
            exercise_summary(e, about.notes, about.setup, about.table_group).model_copy(
                update={
                    "symptoms": said.symptoms_of_set(e, record),
                    "after_drop": said.after_drop_in(e.answers),
                }
            )
            for e in record.exercises
        ],
        quality=flags_of_session(record),
        ended_because=[str(k) for k in record.answers.get("ended_because", [])],
        not_done=[NotDone.model_validate(row) for row in said.not_done_rows(record)],
        opened=said.agreed_of(record),
        changes=[ChangeRow.model_validate(row) for row in said.change_rows(record)],
        marks=[MarkRow.model_validate(row) for row in said.mark_rows(record)],
        ended_outside=[EndedOutside(**row) for row in said.ended_outside_rows(record)],
        allowed_today=record.answers.get(said.ALLOWED_TODAY) is True,
        baseline=about.baseline,
    )


#: Channels whose ends are turns of the head out of its place at rest.
_TURNED = frozenset({"head_yaw", "head_pitch", "head_roll", "head_to_mark"})


def exercise_summary(
    record: ExerciseRecord,
    notes: Sequence[str] = (),
    session_setup: Mapping[str, Any] | None = None,
    table_group: Mapping[str, Any] | None = None,
) -> ExerciseSummary:
    """Summary of one exercise; its own set-up goes before that of the session.

    ``table_group`` is the age group and sex for the published tables of chair stands.
    """
    step, turns, samples = record.step, record.turns, record.samples
    exercise = find_exercise(step.exercise or "")
    found = (record.setup.found if record.setup else session_setup) or {}
    error_deg = gaze_error_at_target_deg(step, exercise, found)
    span_s = max(0.0, step.to_s - step.from_s)
    fraction = figures.measured_fraction(samples, exercise, span_s, step.to_s)
    channel = channel_of(exercise.channel)
    by_place, by_eyes = channel.unit == "mm", exercise.channel.startswith("eye")
    flags = _flags(record, channel, fraction, notes)
    changed = asked_changes(step, turns) if exercise.counted else {}
    stated = Stated(found, frozenset(f.flag for f in flags), look_error_deg(step, found), changed)
    movement = _movement(record, exercise, stated) if exercise.counted else None
    told = REPORTED in notes
    hand = None
    if exercise.channel == "eye_vergence":
        hand = hand_figures(samples, turns, vergence=fraction > 0.0 and not told)
    return ExerciseSummary(
        exercise=exercise.id,
        entry_id=step.entry_id,
        prescribed=_prescribed(record, exercise, error_deg),
        done=_done(record, exercise, hand, None if told else fraction),
        head=None if by_eyes or by_place else movement,
        eyes=movement if by_eyes else None,
        body=movement if by_place else None,
        hand=hand,
        stillness=figures.stillness(samples) if exercise.head_still else None,
        eyes_closed_fraction=figures.eyes_closed_fraction(
            samples, looks_down="gaze_bent" in exercise.not_measured
        ),
        sway=_sway(record, exercise, stated),
        events=[_event_row(e) for e in sorted(record.events, key=lambda e: e.start_s)],
        repetitions_list=figures.repetition_rows(turns, channel.turns_each, withheld(movement)),
        symptoms=None,
        quality=[*flags, *flags_of_hand(hand), *seat_flag(record.answers.get(SEAT_OFF))],
        not_measured=list(exercise.not_measured),
        setup=record.setup.found if record.setup else None,
        table=against_table(exercise.id, turns, samples, span_s, fraction, table_group),
        **_answers(record),
        **_at_target(record, exercise, error_deg, stated),
    )


def _flags(
    record: ExerciseRecord, channel: Channel, fraction: float, notes: Sequence[str]
) -> list[Flag]:
    """What limits the figures of an exercise, as far as its samples and its set-up tell."""
    turned = [t.peak_s for t in record.turns] if channel.name in _TURNED else ()
    return flags_of(record.samples, fraction, (*notes, *_notes_of(record)), turned)


def _done(
    record: ExerciseRecord,
    exercise: Exercise,
    hand: Mapping[str, Any] | None,
    fraction: float | None,
) -> Done:
    """What was done; of what was only told of (without a ``fraction``) nothing was measured."""
    step, turns = record.step, record.turns
    span_s = max(0.0, step.to_s - step.from_s)
    by_hand = fraction is not None and hand is not None and hand["cycles"] is not None
    not_counted = None if by_hand else _why_no_count(exercise, fraction, span_s)
    each = channel_of(exercise.channel).turns_each
    return Done(
        repetitions=None if not_counted else len(turns) // each,
        turns=None if not_counted else len(turns),
        duration_s=round(span_s, 3),
        measured_fraction=fraction,
        **({} if fraction is None else _held(record, exercise)),
        reason=not_counted,
    )


def _answers(record: ExerciseRecord) -> dict[str, Any]:
    """What the person was asked about an exercise, and what was changed for it."""
    answers = record.answers
    return {
        "clarity": said.clarity_of(answers),
        "support": answers.get("support"),
        "changed": said.changed_of(answers),
        **{k: _asked_only(answers, k) for k in ("steadied", "arm", "landed", "own_count")},
    }


def _at_target(
    record: ExerciseRecord, exercise: Exercise, error_deg: float, stated: Stated
) -> dict[str, Any]:
    """What is told of the eyes, or the head, against a target."""
    samples, turns = record.samples, record.turns
    head_turns, led = not exercise.head_still, record.step.tempo_bpm is not None
    jumps = "gaze_short" in {spec.name for spec in exercise.watchers}
    gaze = None
    if exercise.on_target:
        gaze = figures.gaze_figures(samples, turns, error_deg, head_turns=head_turns)
        add_to_ratio(gaze["counter_turn_ratio"], stated)
    return {
        "gaze": gaze,
        "arrivals": arrival_figures(samples, turns, error_deg, led=led) if jumps else None,
        **target_figures(exercise, samples, turns),
    }


def _notes_of(record: ExerciseRecord) -> tuple[str, ...]:
    """What limits one exercise besides its samples."""
    lost = (COUNT_LOST,) if record.answers.get(COUNT_LOST) is True else ()
    return (*lost, *(record.setup.notes if record.setup else ()))


def _movement(record: ExerciseRecord, exercise: Exercise, stated: Stated) -> dict[str, Any]:
    """Figures of the turns, each with its uncertainty."""
    turns, samples, channel = record.turns, record.samples, channel_of(exercise.channel)
    if channel.unit == "mm":
        out = body_figures(exercise, turns, samples)
    else:
        out = _bare_movement(record, exercise)
    by_hand = any(is_of_hand(t) for t in turns)
    if channel.name == "eye_vergence" and by_hand:
        # The count is the hand's, what the eyes did is told of their own turns.
        say_why({"tempo_bpm": out["tempo_bpm"]}, OF_BODY)
        change = {k: v for k, v in out.items() if k != "tempo_bpm"}
        add_uncertainties(change, channel, eye_turns(samples), samples, stated)
    else:
        add_uncertainties(out, channel, turns, samples, stated)
    return out


def _bare_movement(record: ExerciseRecord, exercise: Exercise) -> dict[str, Any]:
    turns = record.turns
    none = "no turn was counted"
    if exercise.channel == "eye_vergence":
        # From extreme to extreme: where parallel lines of sight would read isn't known.
        # From the eyes alone: the count may be the hand's, whose ways are no degrees.
        eyes = eye_turns(record.samples)
        change = figures.by_side(eyes, lambda t: t.swing_deg, none)
        return {"vergence_change_deg": change, "tempo_bpm": figures.tempo(turns)}
    out: dict[str, Any] = {
        "amplitude_deg": figures.by_side(
            turns, lambda t: t.amplitude_deg, ENDS_UNSEEN if turns else none
        ),
        "tempo_bpm": figures.tempo(turns),
    }
    if exercise.channel in ("eye_yaw", "eye_pitch"):
        reach = reach_of(record.samples, turns, up=exercise.channel == "eye_pitch")
        untold = "where the target was is not known" if turns else none
        out["reach_percent"] = figures.by_side(
            turns, lambda t: 100.0 * reach.get(t.index, nan), untold
        )
        reason = "a camera's frame rate can't carry the speed of an eye jump"
        out["peak_speed_deg_s"] = figures.missing(reason)
    else:
        reason = none if not turns else "too few samples in a turn"
        if exercise.target == "places":
            reason = "not read where the head rests at its marks"
        out["peak_speed_deg_s"] = figures.by_side(turns, lambda t: t.peak_speed_deg_s, reason)
    return out


def _prescribed(record: ExerciseRecord, exercise: Exercise, error_deg: float) -> dict[str, Any]:
    step = record.step
    amplitude = amplitude_asked(step, exercise)
    small = grown_share(step, step.from_s)
    shaken = (step.model_extra or {}).get("head_shake") is True
    return {
        "repetitions": repetitions_asked(step, exercise),
        "seconds": seconds_asked(step, exercise),
        "amplitude_deg": None if amplitude is None else list(amplitude),
        "tempo_bpm": step.tempo_bpm,
        "eyes": step.eyes,
        "posture": step.posture,
        "surface": step.surface,
        **({"head_shake": True} if shaken else {}),
        **({"begins_with": small} if small < 1.0 else {}),
        **_target(record, exercise),
        **_wall(record, error_deg),
    }


def _wall(record: ExerciseRecord, error_deg: float) -> dict[str, Any]:
    """The marks on the wall as typed, half of their angle, and how well the gaze is known there."""
    wall = wall_of_step(record.step)
    if wall is None:
        return {}
    half = wall.half_deg
    known = {"half_deg": None if half is None else round(half, 2)}
    error = round(error_deg, 2) if isfinite(error_deg) else None
    return {"wall": wall.to_log() | known | {"gaze_error_deg": error}}


def _target(record: ExerciseRecord, exercise: Exercise) -> dict[str, Any]:
    """How the target moved, and what amplitude was wanted before the screen lowered it."""
    if not exercise.target:
        return {}
    if exercise.target == "background":
        drawn = (record.step.model_extra or {}).get("background")
        why = None if drawn else "what was drawn is not known"
        return {"target": {"motion": "background", "background": drawn, "reason": why}}
    swing = target_swing_deg(record.step, exercise)
    wanted = amplitude_wanted(record.step, exercise)
    return {
        "target": {
            "motion": exercise.target,
            "swing_deg": None if swing is None else round(swing, 2),
            "wanted_amplitude_deg": None if wanted is None else list(wanted),
            "reason": "the track of the target is not known" if swing is None else None,
        }
    }


def _why_no_count(exercise: Exercise, fraction: float | None, span_s: float) -> str | None:
    """Why there is no count; one that could only be 0 because nothing was seen is none."""
    if exercise.counted:
        unseen = fraction is None or (fraction == 0.0 and span_s >= LEAST_SEEN_S)
        return NOTHING_SEEN if unseen else None
    return NO_REPETITIONS if exercise.channel == HELD else NOT_COUNTED


def _sway(record: ExerciseRecord, exercise: Exercise, stated: Stated) -> dict[str, Any]:
    if posture_asked(record.step, exercise) != "standing":
        return standing.no_sway("not a standing exercise")
    channel = channel_of(exercise.channel)
    if channel.unit == "mm" and not channel.body:
        return standing.no_sway("the movement that was asked for is itself a sway or a stand")
    if not exercise.needs:
        return standing.no_sway(NOT_COUNTED)
    found = standing.sway(record.samples)
    add_sway_uncertainty(found, record.samples, stated.setup, stated.unknown())
    return found


def _held(record: ExerciseRecord, exercise: Exercise) -> dict[str, float | None]:
    """Time held, of what is held or done standing for a time."""
    step = record.step
    timed = seconds_asked(step, exercise) is not None and exercise.channel != "head_rise"
    if exercise.channel != HELD and not (timed and posture_asked(step, exercise) == "standing"):
        return {}
    found = standing.held(record.samples, record.events, step.from_s, step.to_s)
    return {"held_s": found["value"], "held_longest_s": found["longest_s"]}


def _event_row(event: Event) -> EventRow:
    def time(value: float) -> float | None:
        return round(value, 3) if isfinite(value) else None

    return EventRow(
        code=event.code,
        start_s=round(event.start_s, 3),
        end_s=time(event.end_s),
        said_at_s=time(event.said_at_s),
        reason=event.reason or None,
    )


def _asked_only(answers: dict[str, Any], about: str) -> dict[str, Any] | None:
    """An answer where the question belongs to the entry, else None."""
    return said.answer_of(answers, about) if about in answers else None


def _common_setup(record: SessionRecord) -> dict[str, Any]:
    """What all set-ups of the session agree on; what ``differs`` stands with each exercise."""
    found = [s.found for s in record.setups]
    keys = dict.fromkeys(k for f in found for k in f)
    differs = [k for k in keys if any(f.get(k) != found[0].get(k) for f in found)]
    common = {k: None if k in differs else found[0].get(k) for k in keys}
    return {**common, "differs": differs} if differs else common


def _longest(record: SessionRecord) -> list[Sample]:
    """Samples of the longest exercise: a rate over pauses between exercises means nothing."""
    sets = [e.samples for e in record.exercises]
    return max(sets, key=len, default=record.samples) or record.samples
