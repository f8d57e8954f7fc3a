"""One engine: batching doesn't matter, trace and journal give the same results again."""

from __future__ import annotations

import itertools
from collections.abc import Callable
from dataclasses import replace
from math import cos, isfinite, nan, pi
from pathlib import Path
from typing import Any

import pytest

from tests.session.synthetic import TO_S, WELL_READ, jump_samples, steps, turns_samples
from tracker.errors import InputError
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.derive import completed
from tracker.session.engine import Engine
from tracker.session.flags import flags_of
from tracker.session.journal import FileJournal, MemoryJournal, read_journal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.saving import save_session
from tracker.session.stage import StageLog, Step
from tracker.session.summary import NOTHING_SEEN, exercise_summary, summarise
from tracker.session.summary_file import Summary, load_summary
from tracker.session.trace import load_trace, save_trace
from ui.cli import main

DIRTY = {"glances": [(8.0, 8.8, 9.0), (14.0, 14.7, -8.0)], "lost": [(11.0, 11.9)]}


def test_repetitions_count_in_exercise_steps_alone() -> None:
    record = run_samples(turns_samples(), steps(), SessionInfo())
    assert len(record.exercises[0].turns) // 2 == 10
    late = [
        Step(from_s=0, to_s=12, step="rest"),
        steps()[1].model_copy(update={"from_s": 12.0}),
    ]
    assert len(run_samples(turns_samples(), late, SessionInfo()).exercises[0].turns) // 2 == 5


def test_eye_jumps_are_counted() -> None:
    record = run_samples(jump_samples(), steps("eyes-side-to-side"), SessionInfo())
    assert len(record.exercises[0].turns) == 20


def test_a_trace_judged_again_gives_the_same(tmp_path: Path) -> None:
    about = SessionInfo(setup=WELL_READ)
    first = run_samples(turns_samples(**DIRTY), steps(), about)
    save_trace(tmp_path / "t.csv", first.samples)
    again = run_samples(load_trace(tmp_path / "t.csv"), steps(), about)
    # Not measured is NaN, which from Python 3.13 on makes a dataclass unlike itself.
    assert list(map(repr, again.exercises[0].turns)) == list(map(repr, first.exercises[0].turns))
    assert summarise(again) == summarise(first)
    assert {e.code for e in first.exercises[0].events} >= {"gaze_off_target", "not_measured"}


def test_time_going_on_between_samples_changes_nothing() -> None:
    plain = run_samples(turns_samples(**DIRTY), steps(), SessionInfo())
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    for step in steps():
        engine.begin(step)
    for sample in turns_samples(**DIRTY):
        engine.advance(sample.time_s - 0.005)
        engine.feed(sample)
    engine.advance(TO_S)
    engine.finish()
    assert summarise(session_record(journal.content())) == summarise(plain)


def test_files_are_projections_of_the_journal(tmp_path: Path) -> None:
    samples = turns_samples(**DIRTY)
    with FileJournal(tmp_path / "journal.jsonl") as journal:
        engine = Engine(journal, about=SessionInfo(session_id="s1"))
        for step in steps():
            engine.begin(step)
        for sample in samples:
            engine.feed(sample)
        engine.advance(TO_S)
        engine.finish()
        turns = engine.runs[0].counter.turns
        events = engine.runs[0].events
    save_session(tmp_path)
    record = session_record(read_journal(tmp_path / "journal.jsonl"))
    kept = record.exercises[0]
    assert [t.peak_s for t in kept.turns] == pytest.approx([t.peak_s for t in turns], abs=1e-6)
    assert [(e.code, e.reason) for e in kept.events] == [(e.code, e.reason) for e in events]
    assert load_summary(tmp_path / "summary.json") == summarise(record)


def test_cues_come_one_at_a_time_at_turning_points() -> None:
    glances = [(t, t + 0.8, 9.0) for t in (5.0, 6.2, 9.0, 12.0, 15.0)]
    about = SessionInfo(setup=WELL_READ)
    record = run_samples(turns_samples(glances=glances), steps(), about)
    said = sorted(e.said_at_s for e in record.exercises[0].events if isfinite(e.said_at_s))
    confirmed = [t.end_s + 0.1 for t in record.exercises[0].turns]
    assert len(said) >= 3
    assert all(b - a >= 2.0 for a, b in itertools.pairwise(said))
    assert all(min(abs(s - c) for c in confirmed) < 1e-3 for s in said)


def test_live_state_and_silence() -> None:
    engine = Engine(MemoryJournal(), about=SessionInfo())
    for step in steps():
        engine.begin(step)
    for sample in turns_samples(to_s=10):
        engine.feed(sample)
    live = engine.live
    assert live.measured
    assert live.repetitions >= 3
    assert live.goal_repetitions == 20
    assert live.goal_tempo_bpm == 60
    assert live.tempo_bpm == pytest.approx(60, rel=0.05)
    engine.advance(10.7)
    assert not engine.live.measured
    assert engine.live.cue is not None
    assert engine.live.cue.code == "not_measured"


def test_an_exercise_never_seen_is_not_measured() -> None:
    engine = Engine(MemoryJournal(), about=SessionInfo())
    engine.begin(steps()[1])
    engine.advance(2.4)
    engine.advance(8.0)
    engine.finish("stopped")
    assert [e.code for e in engine.runs[0].events] == ["not_measured"]


def test_unknown_exercises_are_refused_with_a_way_on() -> None:
    engine = Engine(MemoryJournal(), about=SessionInfo())
    with pytest.raises(InputError, match=r"did you mean 'turns-on-target'.*plan show"):
        engine.begin(steps("turn-on-target")[1])


def _reach_session(reach):
    samples = turns_samples(amplitude=24.0, noise=0.0)
    step = Step(
        from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target", target_mm=(0, 0, 600)
    )
    about = SessionInfo(setup={} if reach is None else {"gaze_reach_deg": reach})
    return run_samples(samples, [step], about)


def test_gaze_is_not_measured_where_the_target_asks_the_eyes_beyond_the_set_up():
    record = _reach_session([[-20.0, 20.0], [-15.0, 15.0]])
    for s in record.exercises[0].samples:
        # At 24 degrees of head the eyes have to turn back by 28 (the eyes move 40 mm aside).
        asked = abs(s.head_yaw_deg - s.target_yaw_deg)
        assert isfinite(s.gaze_yaw_deg) == (asked <= 21.0 + 1e-6)
        assert (s.reason == "beyond_setup") == (asked > 21.0 + 1e-6)
    summary = summarise(record).exercises[0]
    assert "beyond_setup" in [f.flag for f in summary.quality]
    # The head was measured all along.
    assert summary.done.measured_fraction > 0.95


def test_within_the_set_up_nothing_is_withheld():
    for reach in (None, [[-32.0, 32.0], [-15.0, 15.0]]):
        record = _reach_session(reach)
        assert all(isfinite(s.gaze_yaw_deg) for s in record.exercises[0].samples)


def test_eyes_read_beyond_the_set_up_are_marked_and_their_look_away_is_still_found():
    """Nothing asks the eyes that far: the reading tells too little, but that they went there."""
    samples = turns_samples(amplitude=8.0, noise=0.0, glances=[(9.0, 10.2, 15.0)])
    step = Step(
        from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target", target_mm=(0, 0, 600)
    )
    reach = [[-12.0, 12.0], [-10.0, 10.0]]
    about = SessionInfo(setup=WELL_READ | {"gaze_reach_deg": reach})
    record = run_samples(samples, [step], about)
    run = record.exercises[0]
    for s in run.samples:
        assert (s.reason == "beyond_setup") == (abs(s.eye_yaw_deg) > 13.0)
        assert isfinite(s.gaze_yaw_deg)
    marked = [s.time_s for s in run.samples if s.reason]
    assert len(marked) > 10 and all(9.0 <= t < 10.2 for t in marked)
    assert "gaze_off_target" in [e.code for e in run.events]
    summary = summarise(record).exercises[0]
    assert summary.done.measured_fraction > 0.95
    # In the set-up itself, and before it is known, nothing is marked.
    free = run_samples(samples, [step], SessionInfo())
    assert not any(s.reason for s in free.exercises[0].samples)
    rest = step.model_copy(update={"step": "rest", "exercise": None})
    still = run_samples(samples, [rest], SessionInfo(setup={"gaze_reach_deg": reach}))
    assert not any(s.reason for s in still.samples)


@pytest.mark.parametrize("odd", ["wide", [1, 2], [[0, 1]], [[0, "a"], [0, 1]], [[0, 1], [0, None]]])
def test_an_odd_reach_in_a_session_is_passed_over(odd):
    assert _reach_session(odd).exercises[0].samples


def test_what_was_withheld_stays_withheld_when_the_trace_is_judged_again():
    record = _reach_session([[-20.0, 20.0], [-15.0, 15.0]])
    again = run_samples(record.samples, [e.step for e in record.exercises], SessionInfo())
    assert [isfinite(s.gaze_yaw_deg) for s in again.samples] == [
        isfinite(s.gaze_yaw_deg) for s in record.samples
    ]


def nods_samples(**more: Any) -> list[Sample]:
    """Nods with head and eyes measured, as the turns are made."""
    return [
        replace(
            s,
            head_yaw_deg=0.0,
            head_pitch_deg=s.head_yaw_deg,
            gaze_yaw_deg=nan,
            gaze_pitch_deg=nan,
            head_x_mm=0.0,
            eye_yaw_deg=0.0,
            eye_pitch_deg=s.gaze_yaw_deg - s.head_yaw_deg,
        )
        for s in turns_samples(**more)
    ]


def beside_samples() -> list[Sample]:
    """Turns whose line of sight rests 2.5 degrees beside the target, with the eyes measured."""
    return [completed(s, None) for s in turns_samples(offset=lambda _: 2.5)]


@pytest.mark.parametrize(
    ("exercise", "samples", "setup", "reason"),
    [
        ("nods-on-target", nods_samples(), {"glasses": "varifocal"}, "varifocal"),
        ("turns-on-target", beside_samples(), {"gaze_error_deg": 0.6}, "gaze_beside"),
    ],
)
def test_a_line_of_sight_that_was_not_believed_is_not_made_anew_from_its_trace(
    tmp_path: Path, exercise: str, samples: list[Sample], setup: dict[str, Any], reason: str
) -> None:
    live = run_samples(samples, steps(exercise), SessionInfo(setup=setup))
    assert {s.reason for s in live.exercises[0].samples} == {reason}
    save_trace(tmp_path / "trace.csv", live.samples)
    again = run_samples(load_trace(tmp_path / "trace.csv"), live.steps, SessionInfo())
    for record in (live, again):
        # The eyes in the head stay.
        assert all(isfinite(s.eye_yaw_deg) for s in record.exercises[0].samples)
        assert not any(isfinite(s.gaze_yaw_deg) for s in record.exercises[0].samples)
        (told,) = summarise(record).exercises
        assert told.gaze is not None and told.gaze["on_target_fraction"]["value"] is None
        assert not told.events


@pytest.mark.parametrize(("error_deg", "said"), [(0.6, 1), (2.4, 0), (None, 0)])
def test_a_trace_is_judged_by_how_well_its_set_up_read_the_gaze(
    tmp_path: Path, error_deg: float | None, said: int
) -> None:
    setup = {"calibration": True, "gaze_error_deg": error_deg}
    with FileJournal(tmp_path / "journal.jsonl") as journal:
        engine = Engine(journal, about=SessionInfo(setup=setup))
        for step in steps():
            engine.begin(step)
        for sample in turns_samples(glances=[(8.0, 9.5, 10.0)]):
            engine.feed(sample)
        engine.finish()
    save_session(tmp_path)
    out = tmp_path / "again.json"
    check = ["check", str(tmp_path / "trace.csv"), "--exercise", "turns-on-target"]
    assert main([*check, "--out", str(out)]) == 0
    for summary in (load_summary(tmp_path / "summary.json"), load_summary(out)):
        (told,) = summary.exercises
        assert [e.code for e in told.events] == ["gaze_off_target"] * said
        assert told.gaze is not None
        assert (told.gaze["on_target_fraction"]["value"] is not None) == bool(said)


def near_far_session(vergence: Callable[[float], float], reason: str = "") -> Summary:
    """A minute of a fingertip that comes near every six seconds."""
    samples = [
        replace(s, vergence_deg=vergence(s.time_s), eye_open=1.0, reason=reason)
        for s in turns_samples(amplitude=0.0, noise=0.0, to_s=62.0)
    ]
    step = Step(from_s=2.0, to_s=62.0, step="exercise", exercise="near-far")
    return summarise(run_samples(samples, [step], SessionInfo()))


def test_near_and_far_is_counted_and_says_how_far_the_eyes_turned_in() -> None:
    (found,) = near_far_session(lambda t: 9.0 - 3.0 * cos(2 * pi * (t - 2.0) / 6.0)).exercises
    assert found.done.repetitions == 10 and found.done.measured_fraction > 0.99
    assert found.eyes is not None and found.head is None
    # From 6 to 12 degrees; half a second of smoothing takes some per cent.
    assert found.eyes["vergence_change_deg"]["median"] == pytest.approx(6.0, abs=0.3)
    assert set(found.eyes["vergence_change_deg"]["by_side"]) == {"near", "far"}


def test_what_was_never_measured_is_no_count_of_none() -> None:
    (found,) = near_far_session(lambda _: nan, "eyes_unlike").exercises
    assert found.done.repetitions is None and found.done.turns is None
    assert found.done.reason == NOTHING_SEEN
    flags = {f.flag: f.reason for f in found.quality}
    assert "100 %" in flags["eyes_unlike"] and "little_measured" in flags
    (still,) = near_far_session(lambda _: 9.0).exercises
    assert still.done.repetitions == 0 and still.done.reason is None


def test_a_gaze_that_was_withheld_says_why() -> None:
    samples = [
        replace(s, gaze_yaw_deg=nan, gaze_pitch_deg=nan, reason="eyes_unlike")
        for s in turns_samples(noise=0.0)
    ]
    step = Step(
        from_s=2.0, to_s=22.0, step="exercise", exercise="turns-on-target", target_mm=(0, 0, 600)
    )
    (found,) = summarise(run_samples(samples, [step], SessionInfo())).exercises
    assert found.gaze is not None and found.gaze["on_target_fraction"]["value"] is None
    assert "unlike those of the set-up" in found.gaze["on_target_fraction"]["reason"]
    assert found.done.repetitions == 10


@pytest.mark.parametrize(("at_ends", "flagged"), [(0.9, False), (0.65, False), (0.44, True)])
def test_turns_farther_than_the_set_up_holds_are_said_to_be_in_doubt(
    at_ends: float, flagged: bool
) -> None:
    made = [
        replace(s, quality=0.95 if abs(s.head_yaw_deg) < 12 else at_ends) for s in turns_samples()
    ]
    record = run_samples(made, steps(), SessionInfo()).exercises[0]
    flags = {f.flag for f in exercise_summary(record).quality}
    assert ("far_turned" in flags) == flagged


def test_ends_at_which_nothing_was_measured_are_in_doubt_too() -> None:
    assert {f.flag for f in flags_of([Sample(1.0, quality=0.9)], 1.0, (), [4.0])} == {"far_turned"}
    assert flags_of([Sample(1.0, quality=0.9)], 1.0, (), [1.1]) == []
    assert flags_of([Sample(1.0)], 1.0, (), [1.0]) == []


@pytest.mark.parametrize(
    "setup", [True, "measured", {"calibration": "kept"}, {"gaze_error_deg": "none"}, {"x": 1}, None]
)
def test_what_a_stage_log_says_of_a_set_up_in_other_words_leaves_its_steps_usable(
    setup: Any,
) -> None:
    log = StageLog.model_validate(
        {"setup": setup, "steps": [{"from_s": 0.0, "to_s": 1.0, "step": "rest"}]}
    )
    assert len(log.steps) == 1
    assert log.setup is None


@pytest.mark.parametrize(
    ("rates_hz", "said"),
    [
        ((60, 10), ["47 % of the time fewer than 14 pictures a second"]),
        ((10, 60), ["53 % of the time fewer than 14 pictures a second"]),
        ((60, 60, 60, 60, 10), []),
        ((10, 10), ["10.0 pictures a second"]),
        ((30, 15), []),
        ((60, 0, 60), []),
    ],
)
def test_a_time_with_few_pictures_is_not_hidden_by_one_with_many(
    rates_hz: tuple[int, ...], said: list[str]
) -> None:
    """Each rate for 10 s, the last second left out; without pictures nothing is slow."""
    samples = [
        Sample(10.0 * part + k / rate_hz)
        for part, rate_hz in enumerate(rates_hz)
        for k in range(10 * rate_hz)
    ]
    found = [f.reason for f in flags_of(samples, 1.0, ()) if f.flag == "low_frame_rate"]
    assert found == said


def test_hardly_any_pictures_are_a_slow_camera_and_no_outage() -> None:
    times_s = [k / 30 for k in range(210)] + [7.0 + k / 1.9 for k in range(6)]
    (flag,) = [f for f in flags_of([Sample(t) for t in times_s], 1.0, ()) if "rate" in f.flag]
    assert flag.reason == "22 % of the time fewer than 14 pictures a second"


def test_a_few_slow_seconds_among_outages_are_no_large_share() -> None:
    """Of thirty seconds two are slow; in most others there is an outage."""
    times_s = [k / 30 for k in range(900)]
    kept = [t for t in times_s if t < 4 or t % 4 > 1.5]
    slow = [t for k, t in enumerate(kept) if not 1 <= t < 3 or k % 3 == 0]
    assert "low_frame_rate" not in {f.flag for f in flags_of([Sample(t) for t in slow], 1.0, ())}


@pytest.mark.parametrize("back_s", [4.3, 4.6, 5.05, 6.0, 7.9])
def test_the_seconds_beside_an_outage_are_not_slow_ones(back_s: float) -> None:
    """It begins and ends within a second, whose rest has pictures enough for its time."""
    samples = [Sample(k / 60) for k in range(600) if not 4.05 < k / 60 < back_s]
    assert "low_frame_rate" not in {f.flag for f in flags_of(samples, 1.0, ())}


@pytest.mark.parametrize(
    ("fast_s", "slow_s", "said"),
    [(1, 2, False), (2, 1, False), (4, 1, False), (3, 2, True), (8, 2, False), (7, 3, True)],
)
def test_one_slow_second_of_a_short_set_says_nothing(fast_s: int, slow_s: int, said: bool) -> None:
    """The set goes on for a picture after the last whole second."""
    times_s = [k / 60 for k in range(60 * fast_s)]
    times_s += [fast_s + k / 10 for k in range(10 * slow_s + 1)]
    found = {f.flag for f in flags_of([Sample(t) for t in times_s], 1.0, ())}
    assert ("low_frame_rate" in found) == said
