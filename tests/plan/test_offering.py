"""Which entries may begin now: each reason refuses by itself, and none of them lets through."""

from __future__ import annotations

from typing import Any

import pytest

from tracker.plan.asked import asked_of
from tracker.plan.gate import Gate
from tracker.plan.model import Entry
from tracker.plan.offering import REFUSALS, Around, refusals
from tracker.plan.starter import seated_starter
from tracker.plan.symptoms import Start

GO, SEATED = Gate("go"), Gate("seated_only")
CALM, HIGH = Start(5), Start(6, seated_only=True)
ALL = Around(sound_works=True, helper_here=True, helper_reads=True, support_confirmed=True)
NOTHING = Around()


def entry(exercise: str, **fields: Any) -> Entry:
    return Entry.model_validate({"entry_id": "e", "exercise": exercise, **fields})


TURNS = entry("turns-on-target")
SHUT = entry("turns-together", eyes="closed")
STAND = entry("stand")
STAND_SHUT = entry("stand", eyes="closed")
WALK = entry("walk")


def refused(
    of: Entry,
    around: Around = ALL,
    gate: Gate = GO,
    start: Start = CALM,
    unlocked: bool = True,
) -> tuple[str, ...]:
    return refusals(of, gate, start, around, unlocked=unlocked)


@pytest.mark.parametrize("of", [TURNS, SHUT, STAND, STAND_SHUT, WALK])
def test_with_everything_in_place_it_may_begin(of: Entry) -> None:
    assert refused(of) == ()


@pytest.mark.parametrize("of", [TURNS, SHUT, STAND, WALK])
def test_a_closed_gate_a_lock_or_no_score_refuses_everything(of: Entry) -> None:
    for outcome in ("ask", "emergency", "call_therapist", "sit_and_stop"):
        assert refused(of, gate=Gate(outcome)) == ("no_session",)  # type: ignore[arg-type]
    assert refused(of, unlocked=False) == ("locked",)
    assert refused(of, start=Start(None)) == ("no_start_score",)


def test_clearance_and_a_high_start_leave_seated_work() -> None:
    assert refused(TURNS, gate=SEATED) == refused(SHUT, start=HIGH) == ()
    assert refused(SHUT, gate=SEATED) == ("not_cleared",)
    assert refused(STAND, gate=SEATED) == ("not_cleared",)
    assert refused(WALK, start=HIGH) == ("high_start",)
    assert refused(entry("turns-on-target", posture="standing"), start=HIGH) == ("high_start",)


def test_without_clearance_all_of_the_seated_starter_may_begin() -> None:
    for of in seated_starter().entries:
        assert refused(of, gate=SEATED) == (), of.entry_id


@pytest.mark.parametrize(
    "of",
    [
        # Seated, but not in the starter.
        *(entry(e, note="Why.") for e in ("turns-x2", "nods-x2", "moving-background")),
        *(entry(e) for e in ("head-tilts", "remembered-target", "eyes-then-head", "near-hold")),
        # In the starter, but in another form, farther, faster or more of it.
        entry("turns-together", eyes="closed"),
        entry("turns-on-target", posture="standing"),
        entry("turns-on-target", amplitude_deg=[20, 30]),
        entry("turns-on-target", tempo_bpm=90),
        entry("nods-together", tempo_bpm=[40, 80]),
        entry("turns-on-target", repetitions=21),
        entry("turns-on-target", seconds=60),
        entry("shoulders-back", tempo_bpm=60),
    ],
    ids=lambda e: "-".join([e.exercise, *sorted(e.model_fields_set - {"entry_id", "exercise"})]),
)
def test_without_clearance_nothing_else_may_begin(of: Entry) -> None:
    assert "not_cleared" in refused(of, gate=SEATED)
    assert "not_cleared" not in refused(of, gate=GO)


@pytest.mark.parametrize(
    "less",
    [
        {"tempo_bpm": 40},
        {"tempo_bpm": None},
        {"amplitude_deg": [5, 10]},
        {"repetitions": 10},
        {"seconds": 40},
    ],
)
def test_without_clearance_less_than_the_starter_may_begin(less: dict[str, Any]) -> None:
    assert refused(entry("turns-on-target", **less), gate=SEATED) == ()


def test_what_is_asked_for_in_this_week_counts() -> None:
    ladder = [{"from_week": 3, "tempo_bpm": 90}]
    of = entry("turns-on-target", ladder=ladder)
    for week, wanted in ((1, ()), (2, ()), (3, ("not_cleared",))):
        asked = asked_of(of, week)
        assert refusals(of, SEATED, CALM, ALL, unlocked=True, asked=asked) == wanted


def test_seated_work_with_open_eyes_needs_nothing_around() -> None:
    assert refused(TURNS, NOTHING) == ()


def test_shut_eyes_and_standing_need_a_voice() -> None:
    deaf = Around(support_confirmed=True, helper_here=True)
    assert refused(SHUT, NOTHING) == ("no_voice",)
    assert refused(STAND, deaf) == ("no_voice",)
    for voice in (
        Around(sound_works=True, support_confirmed=True),
        Around(helper_here=True, helper_reads=True, support_confirmed=True),
    ):
        assert refused(SHUT, voice) == refused(STAND, voice) == ()
    # A helper who reads but isn't there is no voice.
    assert refused(SHUT, Around(helper_reads=True)) == ("no_voice",)


def test_support_is_confirmed_each_time_and_a_helper_is_there() -> None:
    alone = Around(sound_works=True, support_confirmed=True)
    unasked = Around(sound_works=True, helper_here=True)
    assert refused(STAND, unasked) == ("support_not_confirmed",)
    assert refused(STAND, alone) == ()
    for of in (STAND_SHUT, WALK, entry("stairs"), entry("partner-turns"), entry("weight-shift")):
        assert refused(of, alone) == ("no_helper",)
        assert refused(of, unasked) == ("support_not_confirmed",)
    assert refused(entry("stand", support="helper"), alone) == ("no_helper",)


def test_all_reasons_are_given_in_their_order() -> None:
    everything = refused(STAND_SHUT, NOTHING, SEATED, Start(None, seated_only=True), unlocked=False)
    assert everything == tuple(r for r in REFUSALS if r != "no_session")
