"""A change is called one where there is one, and not where error and spread would do it."""

from __future__ import annotations

import math
from datetime import date
from typing import Any

import numpy as np
import pytest
from scipy import stats

from tests.records import made
from tests.records.rows import row, rows_with, set_row
from tracker.differing import T_995
from tracker.records import telling
from tracker.records.rows import SetRow, row_of
from tracker.records.series import Series, series_of, whole_sets
from tracker.records.trends import NOT_SETTLED, SPECS, Change, Point, compare


def change_of(figure: str, values: list[float | None], **changes: object) -> Change:
    rows = rows_with(figure, values, **changes)
    (found,) = [s for s in series_of(rows) if s.exercise and s.figure == figure]
    return found.change


def test_the_table_of_students_t_is_right() -> None:
    for df, value in T_995.items():
        assert value == pytest.approx(stats.t.ppf(0.995, df), abs=1e-4)
    # One to five of a baseline, and three to five since.
    assert set(T_995) == {a + b - 2 for a in range(1, 6) for b in (3, 4, 5)}


def test_a_difference_beyond_both_is_a_change() -> None:
    change = change_of(
        "amplitude_deg", [12.0, 12.3, 11.8, 12.1, 12.0, 15, 17.9, 18.1, 18, 18.2, 18]
    )
    assert (change.verdict, change.count) == ("rose", 5)
    assert change.first == pytest.approx(12.04) and change.last == pytest.approx(18.04)
    # A tenth of the larger mean on each side: that of the error, far above the spread.
    assert change.least == pytest.approx(math.sqrt(2) * 0.1 * 18.04)


def test_the_same_difference_within_the_error_is_none() -> None:
    # 17 % is the worst that a peak speed was read wrong by: 60 to 70 may be nothing.
    steady = [60.0, 60.1, 59.9, 60.0, 60.0, 70.0, 70.1, 69.9, 70.0, 70.0]
    assert change_of("peak_speed_deg_s", steady).verdict == "no_change"
    assert change_of("peak_speed_deg_s", [v if v < 65 else 80.0 for v in steady]).verdict == "rose"


def test_the_same_difference_within_the_persons_spread_is_none() -> None:
    near = [0.60, 0.61, 0.60, 0.59, 0.60, 0.85, 0.86, 0.85, 0.84, 0.85]
    wide = [0.40, 0.90, 0.45, 0.80, 0.45, 0.65, 1.00, 0.70, 1.00, 0.90]
    assert np.mean(near[5:]) - np.mean(near[:5]) == pytest.approx(
        np.mean(wide[5:]) - np.mean(wide[:5])
    )
    assert change_of("on_target", near).verdict == "rose"
    assert change_of("on_target", wide).verdict == "no_change"


def test_people_who_stay_the_same_are_seldom_said_to_change() -> None:
    rng = np.random.default_rng(5)
    # Spread far above the error, so that only the person's own spread decides.
    spec = SPECS["sway_mm"]
    called = 0
    for values in rng.normal(200.0, 60.0, (2000, 12)):
        points = [Point("", None, float(v)) for v in values]
        called += compare(points, spec).verdict in ("rose", "fell")
    assert 0.002 < called / 2000 < 0.02


def test_people_who_change_by_five_spreads_are_mostly_found() -> None:
    rng = np.random.default_rng(6)
    found = 0
    for _ in range(500):
        values = rng.normal(200.0, 60.0, 12) + np.linspace(0, 300.0, 12)
        points = [Point("", None, float(v)) for v in values]
        found += compare(points, SPECS["sway_mm"]).verdict == "rose"
    assert found > 350


@pytest.mark.parametrize(("clear", "verdict"), [(4, "rose"), (3, "no_change")])
def test_clear_targets_follow_fishers_exact_test(clear: int, verdict: str) -> None:
    before = [1.0] + [0.0] * 4 if clear == 4 else [1.0, 1.0, 0.0, 0.0, 0.0]
    values = before + [1.0] * 5
    change = change_of("clear", values)
    p = stats.fisher_exact([[sum(before), 5 - sum(before)], [5, 0]])[1]
    assert (p < 0.05) == (verdict == "rose")
    # The spread of few sessions is a part of the rule and may only make it stricter.
    assert change.verdict == verdict or (verdict == "rose" and change.verdict == "no_change")
    assert change_of("clear", [0.0] * 5 + [1.0] * 5).verdict == "rose"
    assert change_of("clear", [0.0] * 3 + [1.0] * 3).verdict == "too_few"


def test_what_was_not_measured_is_left_out_and_never_0() -> None:
    values = [None, 18.0, 18.1, 17.9, None, 18.0, 18.2, 18.0, None, 18.1]
    change = change_of("amplitude_deg", values)
    assert (change.verdict, change.count, change.left_out) == ("no_change", 3, 3)
    assert change.first == pytest.approx(18.0) and change.last == pytest.approx(18.1)
    nothing = change_of("amplitude_deg", [None] * 8)
    assert nothing == Change("too_few", left_out=8)


def test_sessions_in_doubt_are_shown_but_not_compared() -> None:
    dark = {"flags": {"dark": "light 0.05"}}
    change = change_of("amplitude_deg", [12.0] * 5 + [18.0] * 5, **dark)
    assert change.verdict == "too_few" and change.left_out == 10
    # What the person has said is as good in the dark.
    assert change_of("dizziness_after", [6.0] * 5 + [1.0] * 5, **dark).verdict == "fell"
    # Eyes that were not read put no doubt on the head.
    eyes = {"flags": {"eyes_unlike": "40 % of the time"}}
    assert change_of("amplitude_deg", [12.0] * 5 + [18.0] * 5, **eyes).verdict == "rose"
    assert change_of("on_target", [0.9] * 5 + [0.2] * 5, **eyes).verdict == "too_few"


@pytest.mark.parametrize(
    ("shares", "limits", "verdict"),
    [
        # What a narrower limit can do alone, and what it can't.
        ((0.9, 0.3), (8.0, 5.0), "unlike"),
        ((0.9, 0.3), (5.0, 8.0), "fell"),
        ((0.3, 0.9), (5.0, 8.0), "unlike"),
        ((0.3, 0.9), (8.0, 5.0), "rose"),
        ((0.9, 0.9), (5.0, 8.0), "unlike"),
        # Every set-up finds a limit of its own, a little aside.
        ((0.9, 0.3), (5.2, 5.0), "fell"),
        ((0.9, 0.9), (5.0, 5.2), "no_change"),
    ],
)
def test_gaze_is_compared_where_the_limits_can_not_explain_it(
    shares: tuple[float, float], limits: tuple[float, float], verdict: str
) -> None:
    rows = [
        row(k, sets=(set_row({"on_target": shares[late], "on_target_within_deg": limits[late]}),))
        for k, late in enumerate([0] * 5 + [1] * 5)
    ]
    (series,) = [s for s in series_of(rows) if s.figure == "on_target"]
    assert series.change.verdict == verdict


def test_a_session_without_a_date_is_shown_and_not_compared() -> None:
    rows = [row(k, sets=(set_row({"amplitude_deg": 12.0}),), started_at=None) for k in range(5)]
    rows += rows_with("amplitude_deg", [18.0] * 5)
    (series,) = [s for s in series_of(rows) if s.figure == "amplitude_deg"]
    assert len(series.points) == 10
    assert (series.change.verdict, series.change.left_out) == ("too_few", 5)


def test_a_change_under_another_dose_says_so() -> None:
    speeds = [60.0] * 5 + [100.0] * 5
    doses = [{"tempo_bpm": 60.0}] * 5 + [{"tempo_bpm": 100.0}] * 5
    rows = [
        row(k, sets=(set_row({"peak_speed_deg_s": v}, asked=dose),))
        for k, (v, dose) in enumerate(zip(speeds, doses, strict=True))
    ]
    (series,) = [s for s in series_of(rows) if s.figure == "peak_speed_deg_s"]
    assert series.change.verdict == "rose" and series.change.asked_other
    assert telling.verdict(series, series.change) == "rose (another dose was asked)"
    same = change_of("peak_speed_deg_s", speeds, asked=doses[0])
    assert same.verdict == "rose" and not same.asked_other


@pytest.mark.parametrize(
    ("first", "last", "other"),
    [("AAAAB", "BBBBB", True), ("AAAAA", "ABBBB", True), ("AAAAA", "AAABB", False),
     ("AABBB", "BBBAA", False), ("AAABB", "CCCCC", True), ("AAA", "AAA", False)],
)  # fmt: skip
def test_a_few_sessions_of_the_other_dose_hide_no_change_of_it(
    first: str, last: str, other: bool
) -> None:
    tempo = {"A": 60.0, "B": 100.0, "C": 140.0}
    rows = [
        row(k, sets=(set_row({"tempo_bpm": tempo[d]}, asked={"tempo_bpm": tempo[d]}),))
        for k, d in enumerate(first + last)
    ]
    (series,) = [s for s in series_of(rows) if s.figure == "tempo_bpm"]
    assert series.change.asked_other == other


def test_two_sets_of_a_dose_in_a_session_are_one_point() -> None:
    def of(value: float, entry: str, tempo: float, **changes: Any) -> Any:
        asked = {"amplitude_deg": [15.0, 20.0], "tempo_bpm": tempo}
        return set_row({"amplitude_deg": value}, entry_id=entry, asked=asked, **changes)

    sets = (of(14.0, "a", 60.0), of(18.0, "b", 60.0), of(30.0, "c", 60.0, flags={"dark": "x"}))
    rows = [row(k, sets=sets) for k in range(3)]
    (series,) = [s for s in series_of(rows) if s.figure == "amplitude_deg"]
    assert [p.value for p in series.points] == [16.0, 16.0, 16.0]
    # Three sessions are too few, however many sets they had.
    assert series.change.verdict == "too_few"
    rows = [
        row(0, sets=(of(14.0, "a", 60.0)._replace(asked={"amplitude_deg": [5.0, 9.0]}), sets[1]))
    ]
    (series,) = [s for s in series_of(rows) if s.figure == "amplitude_deg"]
    assert [p.value for p in series.points] == [14.0, 18.0]


def test_what_is_counted_from_the_eyes_is_doubted_with_them() -> None:
    eyes = {"flags": {"eyes_unlike": "40 % of the time"}, "exercise": "near-far"}
    assert change_of("vergence_change_deg", [6.0] * 10, **eyes).verdict == "too_few"


def test_unlike_forms_of_an_exercise_are_series_of_their_own() -> None:
    rows = rows_with("sway_mm", [10.0] * 6, exercise="stand")
    rows += rows_with("sway_mm", [40.0] * 6, exercise="stand", form="eyes closed")
    found = {s.form: s for s in series_of(rows) if s.figure == "sway_mm"}
    assert {f: len(s.points) for f, s in found.items()} == {"": 6, "eyes closed": 6}
    assert all(s.change.verdict == "no_change" for s in found.values())


def test_a_side_without_a_turn_is_a_gap() -> None:
    rows = [
        row(0, sets=(set_row({"amplitude_deg": 17.0, "amplitude_deg.right": 17.0}),)),
        row(1, sets=(set_row({"amplitude_deg": None}),)),
    ]
    (right,) = [s for s in series_of(rows) if s.side == "right"]
    assert [p.value for p in right.points] == [17.0, None]


def test_the_sessions_own_scores_are_a_series() -> None:
    rows = [row(k, before=1.0, since_last={"next_morning": 3}) for k in range(4)]
    found = {s.figure: s for s in series_of(rows, lambda name: name == "on_target")}
    assert set(found) == {"dizziness_before", "dizziness_after", "settled_minutes", "next_morning"}
    assert isinstance(found["next_morning"], Series) and found["next_morning"].exercise == ""


# --- what would mislead ---


def test_a_set_that_was_paused_is_one() -> None:
    part = SetRow(
        "turns-on-target", "a", "", {"repetitions": 10.0, "amplitude_deg": 16.0}, {}, {}, {}
    )
    rest = part._replace(figures={"repetitions": 5.0, "amplitude_deg": 19.0}, flags={"dark": "x"})
    other = part._replace(entry_id="b")
    joined, alone = whole_sets([part, other, rest])
    assert joined.figures == {"repetitions": 15.0, "amplitude_deg": pytest.approx(17.0)}
    assert joined.flags == {"dark": "x"} and alone == other


def test_times_to_settle_say_nothing_where_some_sessions_never_settled() -> None:
    day = date(2026, 3, 1)
    spec = SPECS["settled_minutes"]
    times = [Point("p", day, v) for v in (8.0, 8.0, 8.0, 3.0, 3.0, 3.0)]
    assert compare(times, spec).verdict == "fell"
    worse = [*times[:4], Point("p", day, None, (NOT_SETTLED,)), *times[4:]]
    assert compare(worse, spec).verdict == "too_few"


@pytest.mark.parametrize(
    ("last", "other"),
    [([13.3, 17.7], False), ([12.2, 16.3], True), ([13.0, 20.0], True), ([None, 17.0], True)],
)
def test_an_amplitude_that_hangs_on_the_seat_is_no_other_dose(last: list[Any], other: bool) -> None:
    speeds = [100.0, 102, 101, 150, 152, 151]
    doses = [{"amplitude_deg": [13.0, 17.3], "tempo_bpm": 60.0}] * 3
    doses += [{"amplitude_deg": last, "tempo_bpm": 60.0}] * 3
    rows = [
        row(k, sets=(set_row({"peak_speed_deg_s": v}, asked=dose),))
        for k, (v, dose) in enumerate(zip(speeds, doses, strict=True))
    ]
    (series,) = [s for s in series_of(rows) if s.figure == "peak_speed_deg_s"]
    assert series.change.asked_other == other


def test_what_the_eyes_follow_has_its_swing_for_an_amplitude() -> None:
    (turns,) = made.finished().exercises[:1]
    target = {"motion": "sweep", "swing_deg": 9.5}
    prescribed = turns.prescribed | {"amplitude_deg": None, "target": target}
    summary = made.finished()
    sets = [turns.model_copy(update={"prescribed": prescribed})]
    found = row_of(summary.model_copy(update={"exercises": sets}), "a.json")
    assert found.sets[0].asked["amplitude_deg"] == 9.5


def told_of(figure: str, values: list[float | None]) -> str:
    (found,) = [s for s in series_of(rows_with(figure, values)) if s.figure == figure]
    return telling.verdict(found, found.change)


def test_why_no_change_is_called_is_told_in_words() -> None:
    """Error, a person who is too uneven, and answers of which five tell little."""
    steady = [0.80, 0.81, 0.80, 0.79, 0.80] * 2
    assert told_of("on_target", steady) == "no change beyond error and spread (14 %)"
    wild = [0.10, 0.90, 0.15, 0.95, 0.10, 0.90, 0.20, 0.85, 0.30, 0.90]
    change = change_of("on_target", wild)
    assert change.least is not None and change.least > 2 * math.sqrt(2) * 0.10
    percent = round(100 * min(change.least, 1.0))
    assert told_of("on_target", wild) == f"too uneven to tell a change below {percent} %"
    # Every answer the same: nothing is uneven, and still five against five show little.
    assert told_of("clear", [1.0] * 10) == "5 answers tell no change below 76 %"


def test_no_share_is_said_to_change_by_more_than_all() -> None:
    mixed: list[float | None] = [1.0, 0.0, 1.0, 0.0, 0.0, 1.0, 0.0, 1.0, 1.0, 0.0]
    change = change_of("clear", mixed)
    assert change.least is not None and change.least > 1.0
    assert told_of("clear", mixed) == "5 answers tell no change below 100 %"


def test_movements_from_place_to_place_have_trends_too() -> None:
    """Shoulders and hands: the way and the peak speed, as their summaries tell them."""
    summary = made.hands()
    kept = row_of(summary, "x/summary.json")
    for name in ("shoulders-back", "hand-toss"):
        (told,) = [e for e in summary.exercises if e.exercise == name]
        (done,) = [s for s in kept.sets if s.exercise == name]
        assert told.body is not None
        for figure in ("swing_mm", "peak_speed_mm_s"):
            wanted = told.body[figure]
            assert wanted["median"] is not None
            assert done.figures[figure] == pytest.approx(wanted["median"])
            for side, part in wanted["by_side"].items():
                assert done.figures[f"{figure}.{side}"] == pytest.approx(part["median"])
    found = {(s.exercise, s.figure) for s in series_of([kept])}
    assert {("shoulders-back", "swing_mm"), ("hand-toss", "peak_speed_mm_s")} <= found
    slow, quick = [200.0, 202.0, 199.0, 201.0, 200.0], [300.0, 301.0, 299.0, 300.0, 302.0]
    assert change_of("peak_speed_mm_s", [*slow, *quick]).verdict == "rose"
    assert change_of("swing_mm", [*slow, *slow]).verdict == "no_change"
