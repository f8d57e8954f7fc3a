"""The catalogue, entry by entry: nothing is named that isn't there, nothing lacks a source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.errors import InputError
from tracker.exercises.catalogue import (
    CATALOGUE,
    CAUTIONS,
    GUIDED,
    HELD,
    NOT_MEASURED,
    OPTIONS,
    PERMISSIONS,
    Exercise,
    find_exercise,
    needs_body,
    permission,
    sources,
    why_never,
)
from tracker.exercises.counters import CHANNELS, channel_of
from tracker.exercises.watchers import make_watcher
from tracker.sample import TRACE_COLUMNS
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise

#: The home programme in its order, then the exercises of the trade beyond it.
PROGRAMME = """
    eyes-up-down eyes-side-to-side nods-on-target turns-on-target nods-together turns-together
    near-far shoulders-back shoulders-forward floor-reach sit-to-stand hand-toss stand ankle-sway
    stand-head-shake weight-shift walk stairs partner-turns
"""
BEYOND = """
    turns-x2 nods-x2 eyes-then-head remembered-target follow-slowly thumb-together head-tilts
    near-hold moving-background stand-tandem stand-one-leg chair-stands-five chair-stands-30-s
"""
EVERY = pytest.mark.parametrize("exercise", CATALOGUE.values(), ids=lambda e: e.id)
KNOWN_SOURCES = {v for k, v in vars(sources).items() if k.isupper()}


def test_every_row_is_there_in_its_order() -> None:
    assert list(CATALOGUE) == f"{PROGRAMME}{BEYOND}".split()


@EVERY
def test_channel_and_watchers_exist(exercise: Exercise) -> None:
    assert exercise.channel in CHANNELS or exercise.channel in (HELD, GUIDED)
    for spec in exercise.watchers:
        watcher = make_watcher(spec, channel_of(exercise.channel), 0.0)
        assert watcher.code == spec.name


@EVERY
def test_the_dose_and_every_default_say_where_they_come_from(exercise: Exercise) -> None:
    assert (exercise.dose_repetitions is None) != (exercise.dose_seconds is None)
    assert (exercise.dose_repetitions or exercise.dose_seconds or 0) > 0
    named = {"dose"}
    some = ("amplitude_deg", "tempo_bpm", "seat_mm")
    named |= {k for k in some if getattr(exercise, k) is not None}
    named |= {"begins_with"} if exercise.begins_with < 1.0 else set()
    assert 0.0 < exercise.begins_with <= 1.0
    assert set(exercise.sources) == named
    assert set(exercise.sources.values()) <= KNOWN_SOURCES


@EVERY
def test_words_cautions_and_limits(exercise: Exercise) -> None:
    assert 10 < len(exercise.therapist) <= 90
    assert exercise.cautions and set(exercise.cautions) <= set(CAUTIONS)
    assert set(exercise.not_measured) <= set(NOT_MEASURED)
    assert len(set(exercise.not_measured)) == len(exercise.not_measured)


@EVERY
def test_what_is_not_counted_says_so(exercise: Exercise) -> None:
    said = {"count", "everything"} & set(exercise.not_measured)
    assert bool(said) == (exercise.channel == GUIDED)


@EVERY
def test_what_is_watched_is_what_must_be_seen(exercise: Exercise) -> None:
    watched = {w.name for w in exercise.watchers}
    if exercise.on_target:
        assert "gaze_off_target" in watched and exercise.needs == ("face", "eyes")
    if exercise.head_still:
        assert "head_moved" in watched
    if not watched:
        assert exercise.needs == () and not exercise.counted
    if exercise.channel.startswith("eye") or "eyes_not_with_head" in watched:
        assert "eyes" in exercise.needs
    if exercise.posture == "standing" and watched:
        assert "possible_fall" in watched


#: What is counted from elsewhere than the head's turns.
COUNTED_FROM = {
    "floor-reach": "head_reach",
    "sit-to-stand": "head_rise",
    "chair-stands-five": "head_rise",
    "chair-stands-30-s": "head_rise",
    "ankle-sway": "neck_fore_aft",
    "weight-shift": "neck_sideways",
    "stand-head-shake": "head_yaw",
    "head-tilts": "head_roll",
    "near-far": "eye_vergence",
    "shoulders-back": "shoulder_lift",
    "shoulders-forward": "shoulder_lift",
    "hand-toss": "hand_throw",
}


def test_what_head_neck_shoulders_and_hands_tell_is_counted() -> None:
    for exercise_id, channel in COUNTED_FROM.items():
        assert find_exercise(exercise_id).channel == channel
    for exercise_id in ("walk", "stairs", "partner-turns"):
        assert not find_exercise(exercise_id).counted


@EVERY
def test_a_body_is_looked_for_only_where_it_is_needed(exercise: Exercise) -> None:
    uses = channel_of(exercise.channel).body or exercise.channel in ("head_reach", "eye_vergence")
    assert needs_body(exercise.id) == uses


def test_an_unknown_exercise_needs_no_body() -> None:
    assert not needs_body(None) and not needs_body("nothing")


@EVERY
def test_the_usual_form_is_permitted(exercise: Exercise) -> None:
    row = PERMISSIONS[exercise.id]
    used = [exercise.posture]
    used += ["eyes_closed"] if exercise.eyes == "closed" else []
    used += ["head_shake"] if exercise.head_shake else []
    used += ["soft_surface"] if exercise.surface == "soft" else []
    assert set(row) == set(OPTIONS)
    found = {row[o] for o in used}
    assert "never" not in found
    assert "helper" not in found or exercise.support == "helper"
    if exercise.posture != "sitting":
        assert exercise.support != "none"


@pytest.mark.parametrize("exercise_id", ["hand-toss", "walk", "stairs", "partner-turns"])
@pytest.mark.parametrize("option", ["eyes_closed", "head_shake"])
def test_never_while_tossing_walking_on_stairs_or_with_a_partner(
    exercise_id: str, option: str
) -> None:
    assert permission(exercise_id, option) == "never"  # type: ignore[arg-type]
    assert "while tossing" in why_never(exercise_id, option)  # type: ignore[arg-type]


def test_what_a_helper_and_nobody_makes_possible() -> None:
    assert permission("stand", "eyes_closed") == "helper"
    assert permission("turns-together", "eyes_closed") == "allowed"  # seated: no helper needed
    assert permission("stand-one-leg", "eyes_closed") == "never"


def test_gaze_stabilisation_is_head_movement_with_the_eyes_on_a_target() -> None:
    assert {e.id for e in CATALOGUE.values() if e.gaze_minutes} == {
        "nods-on-target",
        "turns-on-target",
        "turns-x2",
        "nods-x2",
        "remembered-target",
    }


@EVERY
def test_eyes_only_work_asks_for_a_note(exercise: Exercise) -> None:
    eyes_only = exercise.head_still and exercise.id != "moving-background"
    assert ("guideline advises against" in exercise.asks_note) == eyes_only


def test_an_unknown_exercise_is_refused() -> None:
    with pytest.raises(InputError, match="did you mean 'weight-shift'"):
        find_exercise("wait-shift")
    with pytest.raises(InputError, match="lists them all"):
        find_exercise("zzz")


@EVERY
def test_every_exercise_goes_through_the_engine(exercise: Exercise) -> None:
    # Everything that is counted from has to be there: what was never measured has no count.
    body = {n: 0.0 for n in TRACE_COLUMNS if n.startswith(("shoulder_", "elbow_", "wrist_"))}
    body["body_seen"] = 1.0
    samples = [
        replace(s, neck_x_mm=0.0, neck_y_mm=0.0, neck_z_mm=0.0, vergence_deg=6.0, **body)
        for s in turns_samples()
    ]
    record = run_samples(samples, steps(exercise.id), SessionInfo())
    found = summarise(record).exercises[0]
    assert found.done.duration_s == pytest.approx(20.0)
    assert found.prescribed["repetitions"] == exercise.dose_repetitions
    assert found.prescribed["seconds"] == exercise.dose_seconds
    if exercise.counted:
        assert isinstance(found.done.repetitions, int) and found.done.reason is None
        if exercise.channel == "head_yaw":
            assert found.done.repetitions == 10
    else:
        assert found.done.repetitions is None and found.done.turns is None
        why = "nothing to count" if exercise.channel == HELD else "does not count"
        assert why in (found.done.reason or "")
        assert found.head is None and found.eyes is None


def test_the_head_is_not_blamed_for_a_shake_that_was_asked_for() -> None:
    def codes(**extra: object) -> set[str]:
        record = run_samples(turns_samples(), steps("stand", **extra), SessionInfo())
        return {e.code for e in record.exercises[0].events}

    assert "head_moved" in codes()
    assert "head_moved" not in codes(head_shake=True)
