"""A baseline that was taken together in the clinic is what later sessions are compared with."""

from __future__ import annotations

import json
from datetime import date, timedelta
from pathlib import Path

import numpy as np
import pytest
from scipy import stats

from tests.practice.person import SEATED, Person, plan_of
from tests.records import made
from tests.records.rows import START, row, set_row
from tracker.errors import InputError
from tracker.records import telling
from tracker.records.figures import record_of
from tracker.records.rows import SessionRow, Shapes, pack, row_of, unpack
from tracker.records.series import series_of
from tracker.records.trends import SPECS, Change, Point, compare
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.summary import summarise
from tracker.session.summary_file import FORMAT_VERSION, load_summary, save_summary


def points(values: list[float | None], *baselines: int) -> list[Point]:
    """A session a day; some of them, by number, are baselines."""
    days = [START + timedelta(days=k) for k in range(len(values))]
    return [
        Point(f"s{k}", day, value, baseline=k in baselines)
        for k, (day, value) in enumerate(zip(days, values, strict=True))
    ]


def change_of(values: list[float | None], *baselines: int, figure: str = "sway_mm") -> Change:
    return compare(points(values, *baselines), SPECS[figure])


def test_the_last_sessions_are_compared_with_the_baseline_and_not_with_the_first() -> None:
    # What was done between the baseline and lately counts for neither.
    values = [40.0, 60.0, 61.0, 59.0, 60.0, 60.0, 41.0, 40.0, 39.0, 40.0, 40.0]
    found = change_of(values, 0)
    assert (found.verdict, found.since, found.count) == ("no_change", START, 5)
    assert (found.first, found.last) == (40.0, 40.0)
    plain = change_of(values)
    assert plain.since is None and plain.first == 56.0
    assert change_of([60.0, 60, 61, 59, 41, 40, 39, 40, 40, 41], 0).verdict == "fell"


def test_a_change_is_one_only_beyond_the_persons_spread_around_the_baseline() -> None:
    steady, wide = [52.0, 51.0, 53.0, 52.0, 52.0], [30.0, 74.0, 40.0, 64.0, 52.0]
    assert change_of([40.0, *steady], 0).verdict == "rose"
    assert change_of([40.0, *wide], 0).verdict == "no_change"
    # Student's t for one against five, with the spread of the five.
    found = change_of([40.0, *wide], 0)
    own = stats.t.ppf(0.995, 4) * np.std(wide, ddof=1) * np.sqrt(1 + 1 / 5)
    assert found.least == pytest.approx(own, rel=1e-4)


def test_a_change_is_one_only_beyond_the_measurements_error() -> None:
    # 10 mm apart and no spread at all: two errors of 5 mm are 7 mm together.
    assert change_of([40.0, *[46.0] * 5], 0).verdict == "no_change"
    assert change_of([40.0, *[48.0] * 5], 0).verdict == "rose"


def test_people_who_stay_the_same_are_seldom_said_to_change_since_the_baseline() -> None:
    rng = np.random.default_rng(6)
    called = 0
    for values in rng.normal(200.0, 60.0, (2000, 8)):
        found = compare(points([float(v) for v in values], 0), SPECS["sway_mm"])
        assert found.since == START
        called += found.verdict in ("rose", "fell")
    assert 0.002 < called / 2000 < 0.02


def test_too_few_since_a_baseline_are_compared_as_without_it() -> None:
    values = [40.0, 40.1, 39.9, 60.0, 60.1, 59.9, 60.0]
    found = change_of(values, 5)
    assert found.since is None and found.verdict == "rose"


def test_the_newest_visit_counts_and_all_of_its_sessions() -> None:
    visit = START + timedelta(days=10)
    rows = points([40.0, 60.0, 61.0, 59.0], 0)
    rows += [Point("v", visit, v, baseline=True) for v in (58.0, 62.0)]
    rows += [Point("h", visit + timedelta(days=k), 60.0) for k in (1, 2, 3)]
    found = compare(rows, SPECS["sway_mm"])
    assert (found.since, found.first, found.verdict) == (visit, 60.0, "no_change")


def test_a_baseline_in_doubt_or_not_measured_is_none() -> None:
    assert change_of([None, 60.0, 60, 60, 60, 60, 60], 0).since is None
    rows = points([40.0, 60.0, 60, 60, 60, 60, 60], 0)
    rows[0] = rows[0]._replace(doubts=("dark",))
    found = compare(rows, SPECS["sway_mm"])
    assert found.since is None and found.left_out == 1


def test_one_answer_is_no_baseline_for_clear_targets() -> None:
    # Fisher's exact test finds nothing in one against five, however they differ.
    assert stats.fisher_exact([[0, 1], [5, 0]])[1] > 0.05
    assert change_of([0.0] + [1.0] * 9, 0, figure="clear").since is None


def test_another_dose_than_at_the_baseline_is_said() -> None:
    doses = [{"tempo_bpm": 60.0}] + [{"tempo_bpm": 100.0}] * 4
    rows = [
        row(k, sets=(set_row({"tempo_bpm": 60.0 if k == 0 else 99.0}, asked=d),), baseline=k == 0)
        for k, d in enumerate(doses)
    ]
    (series,) = [s for s in series_of(rows) if s.figure == "tempo_bpm"]
    change = series.change
    assert (change.verdict, change.asked_other, change.since) == ("rose", True, START)
    said = telling.verdict(series, change)
    assert said == "rose since the baseline of 2 Mar 2026 (another dose was asked)"


def test_a_baseline_in_which_nothing_was_practised_is_none() -> None:
    rows = [row(k, before=2.0) for k in range(5)]
    rows += [row(5, before=8.0, sets=(), baseline=True), *(row(k, before=2.0) for k in range(6, 9))]
    (series,) = [s for s in series_of(rows) if s.figure == "dizziness_before"]
    assert series.change.since is None and len(series.points) == 9


@pytest.mark.parametrize("figure", ["rest_of_day", "next_morning"])
def test_what_is_asked_of_the_session_before_has_no_baseline(figure: str) -> None:
    rows = [row(k, since_last={figure: 6.0 if k == 0 else 2.0}, baseline=k == 0) for k in range(5)]
    found = {s.figure: s.change for s in series_of(rows)}
    assert found[figure].since is None and found["dizziness_before"].since == START


# --- through the files ---


def baseline_session() -> SessionInfo:
    return SessionInfo(person="P-1", plan_id="plan-7", started_at="2026-03-02", baseline=True)


def test_a_session_says_in_its_journal_and_its_summary_that_it_is_the_baseline() -> None:
    from tracker.practice.conductor import Conductor
    from tracker.session.engine import Engine
    from tracker.session.journal import MemoryJournal

    person, journal = Person(), MemoryJournal()
    person.engine = Engine(journal, about=baseline_session())
    person.go_on(Conductor(plan_of(SEATED), person.engine))
    # The questions of the gate come all the same.
    assert person.kinds()[0] == "AskGate"
    summary = summarise(session_record(journal.content()))
    assert summary.baseline and row_of(summary, "a").baseline
    told = record_of(summary).find("baseline")
    assert told is not None and told.value == "taken together in the clinic"
    assert record_of(made.finished()).find("baseline") is None


def test_older_summaries_open_and_newer_ones_are_refused(tmp_path: Path) -> None:
    path = tmp_path / "summary.json"
    save_summary(path, made.finished().model_copy(update={"baseline": True}))
    assert load_summary(path).baseline
    data = json.loads(path.read_text())
    del data["baseline"]
    path.write_text(json.dumps(data))
    assert load_summary(path).baseline is False
    path.write_text(json.dumps(data | {"format_version": FORMAT_VERSION + 1}))
    with pytest.raises(InputError, match="newer version of this program"):
        load_summary(path)


def test_the_index_keeps_it() -> None:
    kept: list[SessionRow] = [row(0, baseline=True), row(1)]
    shapes: Shapes = {}
    packed = [json.loads(json.dumps(pack(r, shapes))) for r in kept]
    read = [unpack(r.place, data, list(shapes)) for r, data in zip(kept, packed, strict=True)]
    assert read == kept and isinstance(read[0].day, date)
