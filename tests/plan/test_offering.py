"""Which entries may begin now: each reason refuses by itself, and none of them lets through."""

from __future__ import annotations

from typing import Any

import pytest

from tracker.plan.gate import Gate
from tracker.plan.model import Entry
from tracker.plan.offering import REFUSALS, Around, refusals
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
    assert refused(STAND, gate=SEATED) == ("not_cleared",)
    assert refused(WALK, start=HIGH) == ("high_start",)
    assert refused(entry("turns-on-target", posture="standing"), start=HIGH) == ("high_start",)


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
