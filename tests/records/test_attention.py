"""What raises a reason to look at somebody first, what doesn't, and in which order."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from tests.practice.person import SEATED, plan_of
from tests.records.rows import START, row, rows_with, set_row
from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.plan.starter import TRY_ID
from tracker.records import telling
from tracker.records.adherence import adherence_of
from tracker.records.attention import Kind, Reason, reasons_of, urgency
from tracker.records.rows import SessionRow
from tracker.records.series import series_of
from tracker.session.weekly import TOLD_WEEKLY
from ui.desk.text import dated

PLAN = plan_of(SEATED, bouts_a_day=1, days_a_week=7, starts_on=START.isoformat())


def reasons(rows: list[SessionRow], to_day: int | None = None, plan: Any = PLAN) -> list[Reason]:
    last = max(r.day for r in rows) if to_day is None else START + timedelta(days=to_day)
    return reasons_of(rows, adherence_of(rows, plan, last), series_of(rows))


def kinds(rows: list[SessionRow], **options: Any) -> list[Kind]:
    return [r.kind for r in reasons(rows, **options)]


CALM = [row(k) for k in range(10)]


def test_who_practises_without_trouble_gives_no_reason() -> None:
    assert kinds(CALM) == []


@pytest.mark.parametrize(
    ("plan_id", "told"),
    [("plan-7", ""), (None, "outside any plan: "), (TRY_ID, "in a try of the program: ")],
)
@pytest.mark.parametrize("kind", [Kind.unwell, Kind.red_flag, Kind.spin])
@pytest.mark.parametrize("days_later", [1, 40])
def test_what_was_in_no_session_of_a_plan_says_so(
    plan_id: str | None, told: str, kind: Kind, days_later: int
) -> None:
    """U brings the safety questions there, too."""
    ended = "red_flag" if kind == Kind.red_flag else "stopped_unwell"
    put_first = (SPIN,) if kind == Kind.spin else ()
    last = row(10, ended=ended, put_first=put_first, plan_id=plan_id, sets=())
    found = reasons([*CALM, last, row(10 + days_later)])
    (reason,) = [r for r in found if r.kind == kind]
    assert reason.text.startswith(told or ("answered", "stopped", "ended"))
    assert reason.older is (days_later == 40) and dated(reason)


@pytest.mark.parametrize("question", [*EMERGENCY, *CALL])
def test_every_red_flag_comes_first(question: str) -> None:
    rows = [*CALM, row(10, ended="red_flag", put_first=(question,), sets=())]
    (first,) = [r for r in reasons(rows) if r.kind == Kind.red_flag]
    assert reasons(rows)[0] == first
    assert first.day == rows[-1].day and first.place == rows[-1].place
    assert first.text.startswith("answered yes: ") and "_" not in first.text


@pytest.mark.parametrize(
    ("changes", "kind"),
    [
        ({"weekly": {"falls": "once"}}, Kind.fell),
        ({"weekly": {"falls": "more", "hurt": True}}, Kind.fell),
        ({"weekly": {"falls": "none", "medicines_changed": True}}, Kind.medicines),
        ({"ended": "possible_fall"}, Kind.possible_fall),
        ({"sets": (set_row(events={"possible_fall": 1}),)}, Kind.possible_fall),
        ({"ended": "stopped_unwell"}, Kind.unwell),
        ({"put_first": ("positional_spin",)}, Kind.spin),
        ({"not_settled": True}, Kind.not_settled),
        ({"ended": "symptom_rule"}, Kind.not_settled),
    ],
)
def test_one_session_is_enough(changes: dict[str, Any], kind: Kind) -> None:
    assert kinds([*CALM, row(10, **changes)]) == [kind]
    assert kinds([*CALM, row(10, **changes), row(11)]) == [kind]


@pytest.mark.parametrize(
    ("weekly", "text"),
    [
        ({"falls": "once"}, "told of falls in the last week: one fall"),
        ({"falls": "once", "hurt": False}, "told of falls in the last week: one fall, not hurt"),
        (
            {"falls": "more", "hurt": True},
            "told of falls in the last week: more than one fall, and was hurt",
        ),
    ],
)
def test_a_fall_that_was_told_is_said_with_what_is_known(weekly: Any, text: str) -> None:
    (found,) = reasons([*CALM, row(10, weekly=weekly)])
    assert found.text == text


@pytest.mark.parametrize("elsewhere", [None, TRY_ID])
def test_one_of_the_plan_is_told_before_an_equal_one_outside_it(elsewhere: str | None) -> None:
    of_plan, newer = row(11, ended="stopped_unwell"), row(12, ended="stopped_unwell")
    (found,) = reasons([*CALM, of_plan, newer._replace(plan_id=elsewhere)])
    assert found.place == of_plan.place and not found.text.startswith(("outside", "in a try"))
    # Both count, and so does the newer day; a graver one comes first wherever it was.
    assert found.times == 2 and found.newest == newer.day
    mild, hurt = row(11, weekly={"falls": "once"}), row(12, weekly={"falls": "once", "hurt": True})
    (graver,) = reasons([*CALM, mild, hurt._replace(plan_id=elsewhere)])
    assert graver.place == hurt.place


@pytest.mark.parametrize(
    ("answers", "shown", "said"),
    [
        (["fine"], 0, "said to be all right"),
        (["not_well", "fine"], 0, "said not to be well"),
        (["no_answer", "fine"], 0, "did not answer"),
        (["not_well", "no_answer"], 0, "said not to be well"),
        (["closed_unsaid", "fine"], 0, "closed the question without saying"),
        (["no_answer", "closed_unsaid"], 0, "did not answer"),
        (["fine", "fine"], 1, "said to be all right"),
    ],
)
def test_of_possible_falls_the_gravest_answer_is_said(
    answers: list[str], shown: int, said: str
) -> None:
    rows = [row(k, ended="possible_fall", after_drop=a) for k, a in enumerate(answers)]
    (found,) = reasons([*CALM, *rows])
    assert found.text == f"possible fall, and the session ended with it: {said}"
    assert found.day == rows[shown].day and found.times == len(answers)


def test_who_dropped_unseen_and_went_on_is_told_of_after_who_was_not_well() -> None:
    """The order is this project's own choice: the camera saw no end, and the person did."""
    noticed = (set_row(exercise="stand", events={"possible_fall": 1}),)
    for sets, where in ((noticed, "Quiet stance"), ((set_row(),), "a set")):
        went_on = row(12, after_drop="fine", sets=sets)
        (found,) = reasons([*CALM, went_on])
        assert found.kind == Kind.dropped and found.first
        assert found.text.startswith(f"sudden drop of the head in {where}")
        assert found.text.endswith(" not seen to its end: said to be all right")
    for graver in ("stopped_unwell", "symptom_rule"):
        both = reasons([*CALM, row(11, ended=graver), went_on])
        assert [r.kind == Kind.dropped for r in both] == [False, True]
    ended, last = reasons([*CALM, row(11, ended="possible_fall", after_drop="fine"), went_on])
    assert ended.text == "possible fall, and the session ended with it: said to be all right"
    assert last.kind == Kind.dropped


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("", ""),
        ("not_asked", ": nobody was asked"),
        ("no_answer", ": did not answer"),
        ("not_well", ": said not to be well"),
    ],
)
def test_what_was_said_stands_beside_a_fall_that_the_camera_saw(said: str, told: str) -> None:
    sets = (set_row(exercise="stand", events={"possible_fall": 1}),)
    (found,) = reasons([*CALM, row(12, sets=sets, after_drop=said)])
    assert found.kind == Kind.possible_fall
    assert found.text.startswith("possible fall seen in Quiet stance") and found.text.endswith(told)
    assert told or ":" not in found.text


ONCE, HURT = {"falls": "once", "hurt": False}, {"falls": "once", "hurt": True}
MORE = {"falls": "more", "hurt": False}


@pytest.mark.parametrize(
    ("told", "shown"),
    [
        ([HURT, ONCE], 0),
        ([MORE, ONCE], 0),
        ([HURT, MORE, ONCE], 0),
        ([ONCE, HURT, HURT], 2),
        ([ONCE, {"falls": "once"}], 1),
    ],
)
def test_of_several_tellings_the_gravest_is_said(told: list[Any], shown: int) -> None:
    rows = [row(7 * k, weekly=weekly) for k, weekly in enumerate(told)]
    (found,) = [r for r in reasons(rows) if r.kind == Kind.fell]
    assert found.text == telling.fell(told[shown])
    assert (found.day, found.place) == (rows[shown].day, rows[shown].place)
    # Who fell last still comes first.
    assert found.times == len(told) and found.last_day == rows[-1].day
    which = "last" if shown == len(told) - 1 else "gravest"
    assert dated(found).endswith(f"({len(told)} sessions, the {which} one shown)")
    assert urgency([found], 1.0, "a")[1] == -(START + timedelta(days=7 * len(told) - 7)).toordinal()


@pytest.mark.parametrize("weekly", [{}, {"falls": "none", "medicines_changed": False}])
def test_no_fall_and_the_same_medicines_are_no_reason(weekly: Any) -> None:
    assert kinds([*CALM, row(10, weekly=weekly)]) == []


def test_falls_come_right_after_red_flags_and_medicines_later() -> None:
    weekly = {"falls": "once", "hurt": False, "medicines_changed": True}
    rows = [
        *CALM,
        row(10, ended="red_flag", put_first=("fall",), weekly=weekly, sets=()),
        row(11, ended="stopped_unwell"),
    ]
    assert kinds(rows) == [Kind.red_flag, Kind.fell, Kind.unwell, Kind.medicines]


def test_a_fall_told_in_the_question_of_the_week_is_one_line() -> None:
    ended = {"ended": "red_flag", "weekly": ONCE, "sets": ()}
    (found,) = reasons([*CALM, row(10, put_first=(TOLD_WEEKLY,), **ended)])
    assert (found.kind, found.text) == (
        Kind.fell,
        "told of falls in the last week: one fall, not hurt",
    )
    other = EMERGENCY[0]
    first, second = reasons([*CALM, row(10, put_first=(other, TOLD_WEEKLY), **ended)])
    assert first.text == f"answered yes: {telling.question(other)}"
    assert [first.kind, second.kind] == [Kind.red_flag, Kind.fell]
    # Where what was told is lost, the answer alone is said.
    (alone,) = reasons([*CALM, row(10, put_first=(TOLD_WEEKLY,), **{**ended, "weekly": {}})])
    assert alone.kind == Kind.red_flag and "a fall" in alone.text


@pytest.mark.parametrize("ended", ["stopped", "interrupted", "finished"])
def test_a_plain_end_is_no_reason(ended: str) -> None:
    assert kinds([*CALM, row(10, ended=ended)]) == []


def test_several_sessions_are_one_line_with_the_newest() -> None:
    rows = [row(k, ended="stopped_unwell") for k in range(5)]
    (found,) = reasons(rows)
    assert found.times == 5 and found.day == START + timedelta(days=4)


def test_what_lies_weeks_before_the_last_session_is_not_put_first() -> None:
    old = row(0, ended="stopped_unwell")
    assert kinds([old, *(row(k) for k in range(1, 28))]) == [Kind.unwell]
    (found,) = reasons([old, *(row(k) for k in range(1, 29))])
    assert found.older and not found.first and dated(found).startswith("older: 2 Mar 2026: ")
    # What is not of the gravest kinds is over then.
    for over in ({"not_settled": True}, {"weekly": ONCE}, {"weekly": {"medicines_changed": True}}):
        assert kinds([row(0, **over), *(row(k) for k in range(1, 29))]) == []
    # Who never came back is not forgotten, however long ago.
    assert Kind.unwell in kinds([old], to_day=90)


CHEST = EMERGENCY[0]


@pytest.mark.parametrize(
    ("changes", "kind"),
    [
        ({"ended": "red_flag", "put_first": (CHEST,), "sets": ()}, Kind.red_flag),
        ({"weekly": HURT}, Kind.fell),
        ({"ended": "possible_fall"}, Kind.possible_fall),
        ({"sets": (set_row(events={"possible_fall": 1}),)}, Kind.possible_fall),
        ({"ended": "stopped_unwell"}, Kind.unwell),
        ({"put_first": ("positional_spin",)}, Kind.spin),
    ],
)
def test_the_gravest_of_weeks_that_came_at_once_stays_below_what_is_recent(
    changes: dict[str, Any], kind: Kind
) -> None:
    """Eight weeks in one file: nobody has seen the first of them (the rule is our own)."""
    weeks = [row(k) for k in range(1, 56)]
    (found,) = reasons([row(0, **changes), *weeks])
    assert (found.kind, found.day, found.older) == (kind, START, True)
    recent = reasons([row(0, **changes), *weeks, row(56, not_settled=True)])
    assert [(r.kind, r.older) for r in recent] == [(Kind.not_settled, False), (kind, True)]


@pytest.mark.parametrize(
    ("weekly", "stays"),
    [
        ({"falls": "once", "hurt": None}, True),
        ({"falls": "once"}, True),
        ({"falls": "more", "hurt": None}, True),
        (MORE, True),
        (HURT, True),
        (ONCE, False),
        ({"falls": "none"}, False),
    ],
)
def test_an_older_fall_stays_unless_it_is_known_that_it_did_not_hurt(
    weekly: Any, stays: bool
) -> None:
    weeks = [row(k) for k in range(1, 56)]
    found = reasons([row(0, weekly=weekly), *weeks])
    assert [(r.kind, r.older) for r in found] == ([(Kind.fell, True)] if stays else [])
    # The answer that ended the session goes only where the fall's own line tells more of it.
    (one,) = reasons([row(0, put_first=(TOLD_WEEKLY,), weekly=weekly, sets=()), *weeks])
    assert one.kind == (Kind.fell if stays else Kind.red_flag) and one.older


def test_older_reasons_stand_between_what_asks_for_a_call_and_what_can_wait() -> None:
    weeks = [
        row(28 + k, before=b, weekly={"medicines_changed": True})
        for k, b in enumerate([1, 1, 1, 1, 2, 4, 5, 5, 5, 5])
    ]
    flag = {"ended": "red_flag", "put_first": (CHEST,), "sets": ()}
    found = reasons([row(0, **flag), *weeks, row(38, before=5, not_settled=True)], plan=None)
    assert [(r.kind, r.older) for r in found] == [
        (Kind.not_settled, False),
        (Kind.red_flag, True),
        (Kind.rising, False),
        (Kind.medicines, False),
    ]
    # As the desk puts them in order together with what it adds itself.
    assert sorted(found, key=lambda r: r.order) == found


def test_an_older_reason_comes_among_people_after_what_asks_for_a_call() -> None:
    weeks = [row(k) for k in range(1, 56)]
    flag = {"ended": "red_flag", "put_first": (CHEST,), "sets": ()}
    keys = [
        urgency(found, 1.0, "a")
        for found in (
            reasons([*weeks, row(56, ended="stopped_unwell")]),
            reasons([*weeks, row(56, not_settled=True)]),
            reasons([row(0, **flag), *weeks]),
            reasons([row(0, ended="stopped_unwell"), *weeks]),
            reasons([row(40), row(53)]),
            reasons(weeks),
        )
    ]
    assert keys == sorted(keys) and len(set(keys)) == len(keys)


def test_a_clock_that_ran_ahead_hides_nothing() -> None:
    ahead = row(400)
    rows = [*CALM, row(10, ended="stopped_unwell"), ahead]
    assert Kind.unwell in kinds(rows, to_day=11)


def test_symptoms_that_rise_are_said_and_those_that_only_wobble_are_not() -> None:
    rising = [row(k, before=b) for k, b in enumerate([1, 1, 1, 1, 2, 4, 5, 5, 5, 5])]
    assert kinds(rising) == [Kind.rising]
    wobbling = [row(k, before=b) for k, b in enumerate([1, 3, 2, 1, 3, 2, 3, 2, 3, 2])]
    assert kinds(wobbling) == []
    falling = [row(k, before=b) for k, b in enumerate([5, 5, 5, 5, 4, 2, 1, 1, 1, 1])]
    assert kinds(falling) == []


def test_little_practice_and_long_pauses() -> None:
    few = [row(k) for k in (0, 5, 13)]
    (found,) = reasons(few)
    assert found.kind == Kind.practice and "3 of 14 bouts" in found.text
    assert kinds(CALM, to_day=12) == []
    (pause,) = reasons([row(k) for k in range(20)], to_day=24)
    assert pause.kind == Kind.practice and "no practice for 5 days" in pause.text
    # With no plan nobody can say that it was too little, but a pause is a pause.
    assert kinds(few, plan=None) == []
    assert kinds(few, plan=None, to_day=30) == [Kind.practice]


def sided(right: list[float], left: list[float]) -> list[SessionRow]:
    return [
        row(
            k,
            sets=(set_row({"on_target": (a + b) / 2, "on_target.right": a, "on_target.left": b}),),
        )
        for k, (a, b) in enumerate(zip(right, left, strict=True))
    ]


def test_gaze_that_fell_is_said_with_its_side() -> None:
    rows = sided([0.9] * 10, [0.9] * 5 + [0.4] * 5)
    (found,) = reasons(rows)
    assert found.kind == Kind.gaze
    assert "from 90 to 40 %" in found.text and "to the left" in found.text
    both = reasons(sided([0.9] * 5 + [0.6] * 5, [0.9] * 5 + [0.3] * 5))[0].text
    assert "to the left" in both and "less so to the other side" in both
    assert kinds(sided([0.5] * 5 + [0.9] * 5, [0.9] * 10)) == []


def test_figures_that_can_not_be_trusted_are_said_with_the_cause() -> None:
    dark = rows_with("amplitude_deg", [17.0] * 8, flags={"dark": "light 0.05"})
    (found,) = reasons(dark)
    assert found.kind == Kind.doubt and "8 of the last 8 sets: dark" in found.text
    mixed = rows_with("amplitude_deg", [17.0] * 9)[:5] + dark[5:8]
    assert kinds(mixed) == []


def test_people_are_ordered_by_kind_then_day_then_practice() -> None:
    def key(found: list[Reason], share: float | None, name: str) -> tuple[object, ...]:
        return urgency(found, share, name)

    unwell = reasons([*CALM, row(10, ended="stopped_unwell")])
    earlier = reasons([row(0, ended="stopped_unwell"), *(row(k) for k in range(1, 10))])
    flag = reasons([row(0, ended="red_flag", put_first=("neck_pain",)), *(row(1),)])
    keys = {
        "flag": key(flag, 1.0, "d"),
        "unwell": key(unwell, 1.0, "c"),
        "earlier": key(earlier, 1.0, "b"),
        "lazy": key(reasons([row(0), row(13)]), 0.1, "z"),
        "less lazy": key(reasons([row(0), row(4), row(9), row(13)]), 0.3, "a"),
        "calm": key([], 0.7, "b"),
        "calmer": key([], 1.0, "a"),
    }
    assert sorted(keys, key=keys.__getitem__) == list(keys)
