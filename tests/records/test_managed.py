"""What the baseline offers for a plan: only what was managed, measured well and answered."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from tests.records.rows import START, row, set_row
from tracker.plan.changes import PURSUIT_MOST_BPM
from tracker.records.managed import Managed, managed_of

FIGURES: dict[str, float | None] = {
    "amplitude_deg": 13.0,
    "amplitude_deg.right": 14.0,
    "amplitude_deg.left": 12.2,
    "tempo_bpm": 47.6,
    "repetitions": 20.0,
    "clear": 1.0,
}
ASKED = {"amplitude_deg": [15.0, 20.0], "tempo_bpm": 60.0, "repetitions": 20.0}


def offer(limit: float | None = None, session: Any = None, **changes: Any) -> Managed | None:
    """What is offered of a baseline whose set differs from one that went well."""
    figures = FIGURES | changes.pop("figures", {})
    values: dict[str, Any] = {"figures": figures, "asked": ASKED, "rise": 1, "settle_minutes": 1.0}
    done = set_row(**{**values, **changes})
    rows = [row(0, sets=(done,), **{"baseline": True, **(session or {})}), row(1)]
    return managed_of(rows, done.exercise, "turns", limit)


def test_the_range_ends_where_both_sides_got_and_the_tempo_is_whole() -> None:
    found = offer()
    assert found is not None and found.day == START and found.why_not == ()
    assert (found.swing_deg, found.measured_bpm, found.rise) == (12.2, 47.6, 1)
    # Five degrees wide as what was asked for, up to the side that went less far.
    assert (found.amplitude_deg, found.tempo_bpm) == ((7.0, 12.0), 48.0)


def test_never_beyond_what_was_managed_nor_the_neck_limit_nor_what_was_asked() -> None:
    def of(side_deg: float, limit: float | None = None) -> tuple[float, float] | None:
        sides = {"amplitude_deg.left": side_deg, "amplitude_deg.right": side_deg + 2.0}
        found = offer(limit, figures=sides)
        assert found is not None and found.why_not == ()
        return found.amplitude_deg

    assert of(12.9) == (7.0, 12.0)
    assert of(12.9, 10.0) == (5.0, 10.0)
    # Who went further than asked is offered that only where a neck limit allows it.
    assert of(26.3) == (15.0, 20.0) and of(26.3, 30.0) == (21.0, 26.0)
    # Nor below what can be told.
    assert of(8.4) == (5.0, 8.0)


def test_less_than_an_exercise_takes_is_not_offered() -> None:
    found = offer(figures={"amplitude_deg.left": 5.4})
    assert found is not None and found.why_not == ("too_small",) and found.amplitude_deg is None


@pytest.mark.parametrize(
    ("count", "asked", "few"),
    [
        (15.0, {}, True),
        (16.0, {}, False),
        (None, {}, True),
        # Sixty seconds at sixty beats are thirty repetitions.
        (20.0, {"repetitions": None, "held_s": 60.0}, True),
        (25.0, {"repetitions": None, "held_s": 60.0}, False),
        (2.0, {"repetitions": None, "tempo_bpm": None, "held_s": 60.0}, True),
        (3.0, {"repetitions": None, "tempo_bpm": None, "held_s": 60.0}, False),
    ],
)
def test_of_a_set_that_was_stopped_nothing_is_offered(
    count: float | None, asked: dict[str, Any], few: bool
) -> None:
    found = offer(figures={"repetitions": count}, asked=ASKED | asked)
    assert found is not None and found.why_not == (("few_turns",) if few else ())


@pytest.mark.parametrize(
    ("why", "changes"),
    [
        ("rose", {"rise": 3}),
        ("no_scores", {"rise": None}),
        ("not_settled", {"session": {"not_settled": True}}),
        ("ended", {"session": {"ended": "stopped_unwell"}}),
        ("doubt", {"flags": {"dark": "light 0.05"}}),
        ("fall", {"events": {"possible_fall": 1}}),
        ("not_clear", {"figures": {"clear": 0.0}}),
        ("clarity_not_asked", {"figures": {"clear": None}}),
    ],
)
def test_what_was_not_managed_comfortably_is_not_offered(why: str, changes: dict[str, Any]) -> None:
    found = offer(**changes)
    assert found is not None and found.why_not == (why,)
    assert found.amplitude_deg is None and found.tempo_bpm is None


def test_what_was_not_measured_is_not_offered() -> None:
    nothing = dict.fromkeys(FIGURES, None) | {"clear": 1.0, "repetitions": 20.0}
    found = offer(figures=nothing)
    assert found is not None and found.why_not == ("not_measured",)


def test_without_a_baseline_there_is_nothing() -> None:
    assert offer(session={"baseline": False}) is None
    assert managed_of([], "turns-on-target", None) is None
    # One that was over before anything was practised is none.
    assert managed_of([row(0, baseline=True, sets=())], "turns-on-target", None) is None


def test_an_older_visit_is_never_offered_in_the_place_of_the_newest() -> None:
    done = set_row(FIGURES, asked=ASKED, rise=0)
    nods = set_row(FIGURES, asked=ASKED, rise=0, exercise="nods-on-target", entry_id="nods")
    rows = [row(0, sets=(done,), baseline=True), row(7, sets=(nods,), baseline=True)]
    found = managed_of(rows, "turns-on-target", "turns")
    assert found is not None and found.why_not == ("not_done",)
    assert found.day == START + timedelta(days=7) and found.amplitude_deg is None
    # Not even begun for a red flag: a visit, too.
    rows[1] = row(7, sets=(), baseline=True, ended="red_flag")
    found = managed_of(rows, "turns-on-target", "turns")
    assert found is not None and found.why_not == ("not_done",)


@pytest.mark.parametrize("first", [True, False])
def test_after_any_session_of_the_day_that_ended_badly_nothing_is_offered(first: bool) -> None:
    done = set_row(FIGURES, asked=ASKED, rise=0)
    good = row(0, 9 if first else 11, sets=(done,), baseline=True)
    bad = row(0, 10, sets=(), baseline=True, ended="symptom_rule")
    found = managed_of(sorted([good, bad], key=lambda r: r.order), "turns-on-target", "turns")
    assert found is not None and found.why_not == ("ended",) and found.tempo_bpm is None


def test_the_newest_baseline_counts_and_the_entrys_own_set() -> None:
    def of(tempo: float, entry: str) -> Any:
        figures = FIGURES | {"tempo_bpm": tempo}
        return set_row(figures, entry_id=entry, asked=ASKED, rise=0)

    rows = [
        row(0, sets=(of(40.0, "turns"),), baseline=True),
        row(1, sets=(of(80.0, "other"), of(55.0, "turns")), baseline=True),
        row(2, sets=(of(90.0, "turns"),)),
    ]
    found = managed_of(rows, "turns-on-target", "turns")
    assert found is not None and found.tempo_bpm == 55.0


def test_a_paused_set_is_taken_as_one() -> None:
    parts = tuple(
        set_row(FIGURES | {"tempo_bpm": t, "repetitions": 10.0}, asked=ASKED, rise=0)
        for t in (40.0, 50.0)
    )
    found = managed_of([row(0, sets=parts, baseline=True)], "turns-on-target", "turns")
    assert found is not None and found.tempo_bpm == 45.0


def test_what_was_felt_and_noticed_in_a_paused_set_counts_whatever_its_stretch() -> None:
    half = FIGURES | {"repetitions": 10.0}
    calm = set_row(half, asked=ASKED, rise=0)
    for other, why in [
        (set_row(half, asked=ASKED, rise=4), "rose"),
        (set_row(half, asked=ASKED, rise=0, events={"possible_fall": 1}), "fall"),
    ]:
        for parts in ((calm, other), (other, calm)):
            rows = [row(0, sets=parts, baseline=True)]
            found = managed_of(rows, "turns-on-target", "turns")
            assert found is not None and found.why_not == (why,)


def test_another_form_of_an_exercise_is_another_exercise() -> None:
    seated = set_row(FIGURES, asked=ASKED, rise=0)
    rows = [row(0, sets=(seated,), baseline=True)]
    # Under another entry's name it is the same still.
    same = managed_of(rows, "turns-on-target", "again")
    assert same is not None and same.why_not == ()
    for entry in ("turns", "upright"):
        other = managed_of(rows, "turns-on-target", entry, form="standing")
        assert other is not None and other.why_not == ("other",)
        assert other.tempo_bpm is None
    swapped = managed_of(rows, "nods-on-target", "turns")
    assert swapped is not None and swapped.why_not == ("other",)


def test_the_entrys_own_set_counts_in_whichever_session_of_the_day() -> None:
    own = set_row(FIGURES, asked=ASKED, rise=0)
    other = own._replace(entry_id="other", figures=FIGURES | {"tempo_bpm": 90.0})
    rows = [row(0, 9, sets=(own,), baseline=True), row(0, 10, sets=(other,), baseline=True)]
    found = managed_of(rows, "turns-on-target", "turns")
    assert found is not None and found.measured_bpm == 47.6


def test_a_target_that_eyes_follow_is_never_offered_too_fast() -> None:
    found = offer(exercise="follow-slowly", figures={"tempo_bpm": 55.0})
    if found is None:
        pytest.fail("there is no such exercise")
    assert found.tempo_bpm == PURSUIT_MOST_BPM
    # Their range is the target's own.
    assert found.amplitude_deg is None
