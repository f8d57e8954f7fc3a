"""Files that are too large, damaged or somewhere else, and steps that make no sense: refused."""

from __future__ import annotations

import os
import threading
from dataclasses import replace
from math import inf, isfinite, nan
from pathlib import Path
from types import ModuleType, SimpleNamespace
from typing import Any

import pytest

from tests.session.synthetic import steps, turns_samples
from tests.session.test_recovery import write_session
from tracker.errors import InputError, RunError
from tracker.sample import Sample
from tracker.session import journal as journals
from tracker.session import stage as stages
from tracker.session import summary_file, trace
from tracker.session.chair_stands import _still_up
from tracker.session.clip_run import run_samples
from tracker.session.engine import Engine
from tracker.session.figures import why_no_gaze
from tracker.session.files import must_be_writable, write_atomically
from tracker.session.journal import FileJournal, MemoryJournal, read_journal, sample_of
from tracker.session.live import SessionInfo, check_found, mark_found
from tracker.session.lock import OnlyCopy
from tracker.session.projections import session_record
from tracker.session.recovery import interrupted_sessions, save_interrupted
from tracker.session.stage import StageLog, Step, load_stage_log
from tracker.session.standing import out_of_place
from tracker.session.summary import summarise
from tracker.session.summary_file import load_summary
from tracker.session.trace import load_trace, parse_trace, stage_of_trace

# --- files ---


@pytest.mark.parametrize(
    ("module", "load"),
    [
        (stages, load_stage_log),
        (summary_file, load_summary),
        (trace, load_trace),
        (journals, read_journal),
    ],
)
def test_a_file_that_is_too_large_is_not_read(
    module: ModuleType, load: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "file"
    path.write_text("x" * 11)
    monkeypatch.setattr(module, "MAX_FILE_BYTES", 10)
    with pytest.raises(InputError, match="too large"):
        load(path)
    path.write_text("x" * 10)
    with pytest.raises(InputError, match=r"^(?!.*too large)"):
        load(path)


def test_a_place_that_cannot_be_written_to_is_told_before_the_work(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    must_be_writable(tmp_path / "out.csv")
    with pytest.raises(InputError, match="is a folder"):
        must_be_writable(tmp_path)
    with pytest.raises(InputError, match="is a folder"):
        write_atomically(tmp_path, "text")
    with pytest.raises(InputError, match="there is no folder"):
        must_be_writable(tmp_path / "none" / "out.csv")
    # Whoever is root may write anywhere, so the system's answer is put in its place.
    monkeypatch.setattr(os, "access", lambda *_: False)
    with pytest.raises(InputError, match="can't be written to"):
        must_be_writable(tmp_path / "out.csv")
    assert list(tmp_path.iterdir()) == []


def test_a_summary_of_a_later_version_is_refused_kindly(tmp_path: Path) -> None:
    path = tmp_path / "summary.json"
    later = summary_file.FORMAT_VERSION + 1
    path.write_text(f'{{"format_version": {later}}}')
    with pytest.raises(InputError, match="newer version of this program; update it"):
        load_summary(path)


# --- stage logs ---

STEP: dict[str, Any] = {"from_s": 1.0, "to_s": 2.0, "step": "look"}
ROW = (1.0, 0.0, 0.0, 600.0)


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ({"to_s": 0.5}, "to_s is before from_s"),
        ({"target_mm": (0, 0, 600), "target_track": [ROW]}, "not both"),
        ({"target_track": []}, "in the order of their times"),
        ({"target_track": [(2.0, 0, 0, 600), ROW]}, "in the order of their times"),
    ],
)
def test_steps_that_make_no_sense_name_their_place(
    fields: dict[str, Any], says: str, tmp_path: Path
) -> None:
    path = tmp_path / "a.stage.json"
    path.write_text(StageLog.model_construct(steps=[STEP | fields]).model_dump_json(warnings=False))
    with pytest.raises(InputError, match=f"not a usable stage log: steps.0: .*{says}"):
        load_stage_log(path)


def test_steps_that_overlap_and_what_is_no_log_are_refused(tmp_path: Path) -> None:
    path = tmp_path / "a.stage.json"
    path.write_text('{"steps": [{"from_s": 0, "to_s": 5, "step": "rest"}, '
                    '{"from_s": 4, "to_s": 9, "step": "look"}]}')  # fmt: skip
    with pytest.raises(InputError, match=r"the step from 4\.0 s begins before"):
        load_stage_log(path)
    path.write_text("{")
    with pytest.raises(InputError, match="not a usable stage log: Expecting"):
        load_stage_log(path)


def test_the_step_at_a_time_begins_with_its_first_moment_and_ends_before_its_last() -> None:
    log = StageLog(steps=steps())
    assert log.step_at(-0.1) is None
    assert log.step_at(0.0) is log.steps[0]
    assert log.step_at(2.0) is log.steps[1]
    assert log.step_at(22.0) is None


def test_a_tempo_that_rises_is_that_of_the_moment() -> None:
    step = Step.model_validate(STEP | {"to_s": 11.0, "tempo_bpm": (60.0, 120.0)})
    tempos = [step.tempo_at(t) for t in (0.0, 1.0, 6.0, 11.0, 20.0)]
    assert tempos == pytest.approx([60.0, 60.0, 90.0, 120.0, 120.0])


# --- traces ---


def test_a_trace_has_bounds(monkeypatch: pytest.MonkeyPatch) -> None:
    with pytest.raises(InputError, match="line 2 is too long"):
        parse_trace("time_s\n" + "1" * (trace.MAX_LINE_CHARS + 1), "t.csv")
    with pytest.raises(InputError, match="line 2, head_yaw_deg: 1e300 is out of range"):
        parse_trace("time_s,head_yaw_deg\n0,1e300\n", "t.csv")
    with pytest.raises(InputError, match="line 3, time_s: is empty"):
        parse_trace("time_s,light\n0,1\n,1\n", "t.csv")
    monkeypatch.setattr(trace, "MAX_ROWS", 2)
    assert len(parse_trace("time_s\n0\n1\n", "t.csv")) == 2
    with pytest.raises(InputError, match="more than 2 rows"):
        parse_trace("time_s\n0\n1\n2\n", "t.csv")


def test_empty_rows_and_what_is_no_finite_number_are_no_measurement() -> None:
    found = parse_trace("time_s,head_yaw_deg\n0,inf\n\n , \n1,nan\n2,3.5\n", "t.csv")
    assert [s.time_s for s in found] == [0.0, 1.0, 2.0]
    assert [isfinite(s.head_yaw_deg) for s in found] == [False, False, True]


def test_a_trace_without_steps_is_one_exercise_and_one_with_them_has_those() -> None:
    plain = [Sample(0.1 * k) for k in range(11)]
    (step,) = stage_of_trace(plain, "stand").steps
    assert (step.from_s, step.step, step.exercise) == (0.0, "exercise", "stand")
    assert step.to_s == pytest.approx(1.1)

    names = ["rest"] * 3 + ["exercise"] * 4 + ["lunch"] * 2 + ["exercise"] * 2
    told = [Sample(0.1 * k, step=name) for k, name in enumerate(names)]
    found = [(s.step, s.exercise, s.from_s, s.to_s) for s in stage_of_trace(told, "stand").steps]
    assert found == [
        ("rest", None, pytest.approx(0.0), pytest.approx(0.3)),
        ("exercise", "stand", pytest.approx(0.3), pytest.approx(0.7)),
        ("exercise", "stand", pytest.approx(0.9), pytest.approx(1.1)),
    ]

    (step,) = stage_of_trace([Sample(5.0)], "stand").steps
    assert step.from_s == 5.0 and 0.0 < step.to_s - 5.0 < 0.01


# --- the journal ---


@pytest.mark.parametrize(
    "values", [None, [], "0", [None, 1.0], [0.0, "1"], [0.0, True], [0.0, 1e300], {"0": 1}]
)
def test_a_damaged_row_is_no_sample(values: Any) -> None:
    assert sample_of({"kind": "sample", "v": values}) is None
    assert sample_of({"kind": "sample", "v": [0.5, None, 3.0]}) is not None


def damaged(**records: Any) -> Any:
    """A short session whose records of one kind were spoilt."""
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    engine.use_setup(0.0, {"gaze_error_deg": 0.5}, ("gaze_not_fitted",))
    for step in steps():
        engine.begin(step)
    for sample in turns_samples(glances=[(6.0, 7.0, 15.0)]):
        engine.feed(sample)
    engine.finish()
    content = journal.content()
    for record in content.records:
        record.update(records.get(record["kind"], {}))
    return content


def test_what_is_damaged_in_a_journal_is_left_out_and_the_rest_stays() -> None:
    whole = session_record(damaged())
    turns, events = len(whole.exercises[0].turns), len(whole.exercises[0].events)
    assert turns > 15 and events == 1
    spoilt = session_record(damaged(turn={"peak_s": "soon"})).exercises[0]
    assert (len(spoilt.turns), len(spoilt.events)) == (0, 1)
    spoilt = session_record(damaged(event={"code": 7})).exercises[0]
    assert (len(spoilt.turns), len(spoilt.events)) == (turns, 0)
    assert len(whole.setups) == 1
    assert session_record(damaged(setup={"notes": 5})).setups == ()


def test_an_event_that_never_ended_lasts_to_the_end_of_its_step() -> None:
    (event,) = session_record(damaged(event={"end_s": None})).exercises[0].events
    assert event.end_s == pytest.approx(22.0, abs=0.1)


def test_a_disk_that_does_not_answer_is_said_and_nothing_is_thrown_away(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    answers = threading.Event()
    took = os.fsync
    monkeypatch.setattr(os, "fsync", lambda handle: answers.wait(30.0) and took(handle))
    journal = FileJournal(tmp_path / "journal.jsonl")
    try:
        journal.append({"kind": "mark", "name": "a", "time_s": 1.0})
        journal.finish(timeout_s=1.5)
        assert journal.fault == "the disk does not answer"
        monkeypatch.setattr(journal, "finish", lambda: None)
        with pytest.raises(RunError, match="does not answer; try again in a moment"):
            journal.rescue(tmp_path / "elsewhere.jsonl")
        assert not (tmp_path / "elsewhere.jsonl").exists()
    finally:
        answers.set()
    monkeypatch.undo()
    journal.close()
    assert b'"name":"a"' in (tmp_path / "journal.jsonl").read_bytes()


def test_a_finished_journal_takes_no_more(tmp_path: Path) -> None:
    journal = FileJournal(tmp_path / "journal.jsonl")
    journal.append({"kind": "mark", "name": "a", "time_s": 1.0})
    journal.close()
    size = (tmp_path / "journal.jsonl").stat().st_size
    journal.append({"kind": "mark", "name": "b", "time_s": 2.0})
    journal.close()
    assert (tmp_path / "journal.jsonl").stat().st_size == size > 0


def test_half_a_file_of_a_killed_program_is_taken_away(tmp_path: Path) -> None:
    folder = write_session(tmp_path, "s")
    left = folder / ".summary.json.x1y2"
    left.write_text("{")
    (found,) = interrupted_sessions(tmp_path)
    save_interrupted(found)
    assert not left.exists() and (folder / "summary.json").is_file()


def test_a_lock_is_let_go_once(tmp_path: Path) -> None:
    only = OnlyCopy(tmp_path / "lock")
    only.close()
    # The number may belong to another file by now, which must stay open.
    handle = os.open(tmp_path / "other", os.O_RDWR | os.O_CREAT)
    try:
        only.close()
        assert os.fstat(handle).st_size == 0
    finally:
        os.close(handle)


# --- the engine ---


def test_after_the_end_nothing_is_taken() -> None:
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    for step in steps():
        engine.begin(step)
    for sample in turns_samples(to_s=12.0):
        engine.feed(sample)
    engine.finish("stopped")
    before = len(journal.content().records)
    engine.feed(Sample(30.0, head_yaw_deg=5.0))
    engine.advance(40.0)
    engine.finish("finished")
    content = journal.content()
    assert len(content.records) == before
    assert [r["ended"] for r in content.of("end")] == ["stopped"]


@pytest.mark.parametrize("odd", [nan, inf, -inf])
def test_a_time_that_is_none_is_passed_over(odd: float) -> None:
    usual, twice = Engine(MemoryJournal(), about=SessionInfo()), MemoryJournal()
    spoilt = Engine(twice, about=SessionInfo())
    for engine in (usual, spoilt):
        engine.begin(steps()[0])
        engine.feed(Sample(0.5, head_yaw_deg=1.0))
    spoilt.feed(Sample(odd, head_yaw_deg=1.0))
    spoilt.advance(odd)
    # Neither the same picture again nor one of before.
    spoilt.feed(Sample(0.5, head_yaw_deg=9.0))
    spoilt.feed(Sample(0.4, head_yaw_deg=9.0))
    assert spoilt.live.time_s == usual.live.time_s == 0.5
    spoilt.finish()
    assert len(twice.content().of("sample")) == 1


# --- small ones ---


def test_a_check_that_was_not_made_says_so() -> None:
    assert check_found(None)["reason"] == "not asked"
    assert mark_found(None)["reason"] == "not asked"
    assert mark_found(None)["error_deg"] is None


@pytest.mark.parametrize(
    ("error_deg", "value", "reason"),
    [(1.23456, 1.235, None), (nan, None, "the eyes were not seen on the targets")],
)
def test_a_check_says_its_error_or_why_there_is_none(
    error_deg: float, value: float | None, reason: str | None
) -> None:
    found = check_found(SimpleNamespace(error_deg=error_deg, frames=40, looks=3))
    assert found == {"gaze_error_deg": value, "frames": 40, "looks": 3, "reason": reason}


@pytest.mark.parametrize(("made_on", "kept"), [("2026-01-05", "2026-01-05"), ("", None)])
def test_a_check_by_a_mark_says_what_was_asked_and_measured(made_on: str, kept: str | None) -> None:
    angles = {"error_deg": 0.456, "measured_deg": 20.456, "expected_deg": 20.0}
    typed = {"distance_mm": 2000.4, "offset_mm": 728.0}
    mark = SimpleNamespace(**angles, **typed, expected_error_deg=0.3, made_on=made_on)
    found = mark_found(mark)
    assert (found["error_deg"], found["measured_deg"], found["distance_mm"]) == (0.46, 20.46, 2000)
    assert (found["made_on"], found["reason"]) == (kept, None)


def test_a_gaze_that_was_not_judged_says_why() -> None:
    beyond = [Sample(0.0, reason="beyond_setup")] * 3
    seen = [Sample(0.0, gaze_yaw_deg=1.0, gaze_pitch_deg=0.0)]
    aimed = [Sample(0.0, target_yaw_deg=1.0, target_pitch_deg=0.0)]
    assert "beyond what the set-up taught" in why_no_gaze([*beyond, *seen])
    assert "was not measured" in why_no_gaze([*beyond[:1], *aimed])
    assert "place of the target isn't known" in why_no_gaze(seen)
    assert "never measured together" in why_no_gaze([*seen, *aimed])


def test_a_gaze_read_too_coarsely_is_measured_but_not_judged() -> None:
    made = turns_samples()
    coarse, fine = (
        summarise(run_samples(made, steps(), SessionInfo(setup={"gaze_error_deg": error})))
        for error in (2.5, 0.7)
    )
    figures = [s.exercises[0].gaze["on_target_fraction"] for s in (coarse, fine)]
    assert figures[0]["value"] is None and "too coarsely" in figures[0]["reason"]
    assert figures[0]["n"] == figures[1]["n"] > 300 and figures[1]["value"] > 0.9


def test_a_set_that_had_not_begun_when_it_was_stopped_is_none() -> None:
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    for step in steps():
        engine.begin(step)
    for sample in turns_samples(to_s=1.5):
        engine.feed(sample)
    engine.finish("stopped")
    record = session_record(journal.content())
    assert list(record.exercises) == []


def test_who_steps_away_and_does_not_come_back_is_away_to_the_end() -> None:
    def stood(back_s: float) -> list[tuple[float, float]]:
        return out_of_place(
            [
                Sample(
                    0.1 * k,
                    neck_x_mm=400.0 if 3.0 <= 0.1 * k < back_s else 0.0,
                    neck_y_mm=0.0,
                    neck_z_mm=0.0,
                )
                for k in range(100)
            ]
        )

    assert stood(6.0) == [(pytest.approx(3.0), pytest.approx(6.0))]
    assert stood(99.0) == [(pytest.approx(3.0), pytest.approx(9.9))]
    assert stood(0.0) == []


def test_what_is_not_measured_now_says_of_what_it_is() -> None:
    """A head without a body: shoulders and hands are what a throw is counted from."""
    for exercise, reason in (("hand-toss", "no_body"), ("turns-on-target", "")):
        engine = Engine(MemoryJournal(), about=SessionInfo())
        for step in steps(exercise):
            engine.begin(step)
        for sample in turns_samples(to_s=6.0):
            engine.feed(sample)
        live = engine.live
        assert (live.measured, live.reason) == (not reason, reason)


def test_a_stand_without_a_whole_one_before_it_is_not_guessed() -> None:
    assert not _still_up([], [Sample(0.0, head_y_mm=0.0), Sample(1.0, head_y_mm=300.0)])


def test_dark_pictures_are_flagged() -> None:
    dark = [replace(s, light=0.05) for s in turns_samples()]
    for pictures, flags in ((dark, ["dark"]), (turns_samples(), [])):
        summary = summarise(run_samples(pictures, steps(), SessionInfo()))
        assert [f.flag for f in summary.exercises[0].quality] == flags
