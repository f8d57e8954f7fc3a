"""Several clips in one session: each judged as it would be alone, on one clock."""

from __future__ import annotations

import itertools
import json
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from tests.practice.person import (
    ALL_NO,
    SEATED,
    SHUT,
    STAND,
    Person,
    done_ids,
    plan_of,
    refused,
)
from tests.session.synthetic import TO_S, jump_samples, steps, turns_samples
from tracker.errors import InputError
from tracker.plan.model import Plan
from tracker.practice.day import day_by, told_by
from tracker.practice.from_clips import run_plan, shifted_step
from tracker.practice.matching import StagedClip, match_clips, staged_clip
from tracker.practice.scripted import NO_ANSWERS, Answers, load_answers, schema
from tracker.records.figures import record_of
from tracker.records.rows import row_of
from tracker.sample import Sample
from tracker.session.clip_run import MeasuredClip, run_samples
from tracker.session.engine import Engine
from tracker.session.files import new_folder
from tracker.session.flags import FROM_CLIPS
from tracker.session.journal import FileJournal, MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.saving import save_session
from tracker.session.stage import StageLog, Step, load_stage_log
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary, load_summary
from tracker.session.trace import load_trace

JUMPS = {"exercise": "eyes-side-to-side"}
TWICE = (SEATED, {**SEATED, "entry_id": "again"}, JUMPS)
#: What the made-up clips ask for in the plan, so that alone and in a plan it is the same.
ASKED = {"tempo_bpm": 60.0, "repetitions": 20}

GLANCES = [(6.0, 7.0, 15.0)]
CLIPS: dict[str, tuple[list[Step], Callable[[], list[Sample]]]] = {
    "good": (steps(), lambda: turns_samples()),
    "glances": (steps(), lambda: turns_samples(f_hz=0.45, glances=GLANCES, number=3)),
    "jumps": (steps("eyes-side-to-side"), lambda: jump_samples()),
}


def clip(name: str) -> StagedClip:
    return staged_clip(Path(f"{name}.mp4"), StageLog(steps=CLIPS[name][0]))


FOUND = {
    "good": {"camera": {"width_px": 640}, "gaze_error_deg": 0.5},
    "glances": {"camera": {"width_px": 640}, "gaze_error_deg": 0.9},
    "jumps": {"camera": {"width_px": 640}},
}


@contextmanager
def measured(staged: StagedClip) -> Iterator[MeasuredClip]:
    name = staged.path.stem
    notes = ("gaze_not_fitted",) if name == "jumps" else ()
    found = dict(FOUND[name])
    yield MeasuredClip(list(staged.stage.steps), found, notes, iter(CLIPS[name][1]()))


def run(
    plan: Plan, clips: dict[str, StagedClip], folder: Path, answers: Answers = NO_ANSWERS
) -> Summary:
    with new_folder(folder) as made:
        with FileJournal(made / "journal.jsonl") as journal:
            about = SessionInfo(plan_id=plan.plan_id, notes=("from_clips",))
            run_plan(plan, Engine(journal, about=about), clips, measured, answers)
        save_session(made)
    return load_summary(folder / "summary.json")


@pytest.fixture
def plan() -> Plan:
    return plan_of(*({**e, **ASKED} for e in TWICE), STAND)


@pytest.fixture
def session(plan: Plan, tmp_path: Path) -> Path:
    names = ("good", "glances", "jumps")
    run(plan, match_clips(plan, [clip(n) for n in names]), tmp_path / "s")
    return tmp_path / "s"


@pytest.mark.parametrize("falls", [True, False])
def test_of_a_drop_in_a_clip_nobody_was_asked(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, falls: bool
) -> None:
    def dropping() -> list[Sample]:
        return [
            replace(s, head_y_mm=-900.0 * min(max((s.time_s - 8.0) / 0.4, 0.0), 1.0) * falls)
            for s in turns_samples()
        ]

    posed = steps("stand-head-shake", posture="standing")
    monkeypatch.setitem(CLIPS, "dropping", (posed, dropping))
    monkeypatch.setitem(FOUND, "dropping", {})
    plan = plan_of({"exercise": "stand-head-shake"})
    found = run(plan, match_clips(plan, [clip("dropping")]), tmp_path / "s")
    events = {e.code for e in found.exercises[0].events}
    assert ("possible_fall" in events) is falls
    unasked = {"value": None, "reason": "not_asked", "seconds": None, "seen": True}
    assert found.after_drop == (unasked if falls else None)
    assert row_of(found, "s").after_drop == ("not_asked" if falls else "")
    alert = record_of(found).alert
    assert ("Possible fall seen by the camera: 1; nobody was asked" in alert) is falls


def test_a_drop_with_which_a_clip_ends_is_an_event_too(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def dropping() -> list[Sample]:
        fell_s = TO_S - 0.35
        late = [s for s in turns_samples() if s.time_s > TO_S - 3.0]
        return [
            replace(s, head_y_mm=-900.0 * min(max((s.time_s - fell_s) / 0.4, 0.0), 1.0))
            for s in late
        ]

    posed = steps("stand-head-shake", posture="standing")
    monkeypatch.setitem(CLIPS, "dropping", (posed, dropping))
    monkeypatch.setitem(FOUND, "dropping", {})
    plan = plan_of({"exercise": "stand-head-shake"})
    found = run(plan, match_clips(plan, [clip("dropping")]), tmp_path / "s")
    (event,) = [e for e in found.exercises[0].events if e.code == "possible_fall"]
    assert event.start_s < TO_S and found.after_drop is not None
    assert found.after_drop["reason"] == "not_asked" and found.after_drop["seen"] is False


def test_clips_end_no_day_and_go_on_in_one_that_is_over() -> None:
    """Their movements are made, and nobody was told that it is all for today."""
    plan, day = plan_of({"exercise": "stand"}), date(2026, 3, 2)
    person = Person(gate={**ALL_NO, "neck_pain": True})
    person.practise(plan)
    earlier = person.summary.model_copy(update={"started_at": f"{day}T09:00:00"})
    assert day_by([told_by(earlier)], plan.person, day).is_over
    journal = MemoryJournal()
    about = SessionInfo(plan_id=plan.plan_id, started_at=f"{day}T10:00:00", notes=(FROM_CLIPS,))
    how: dict[str, Any] = {"history": [earlier], "today": day}
    answers = NO_ANSWERS.model_copy(update={"gate": {**ALL_NO, "neck_pain": True}})
    over = run_plan(plan, Engine(journal, about=about), {}, measured, NO_ANSWERS, **how)
    assert over.because == ()
    journal = MemoryJournal()
    over = run_plan(plan, Engine(journal, about=about), {}, measured, answers, **how)
    of_clips = summarise(session_record(journal.content()))
    assert (over.ended, of_clips.ended) == ("red_flag", "red_flag")
    assert not told_by(of_clips).ends


def alone(name: str) -> Any:
    """The same clip judged by itself, with its set-up and the plan's dose."""
    extra = [
        s.model_copy(update={"repetitions": 20}) if s.step == "exercise" else s
        for s in CLIPS[name][0]
    ]
    about = SessionInfo(setup=dict(FOUND[name]))
    return summarise(run_samples(CLIPS[name][1](), extra, about)).exercises[0]


def test_each_set_is_judged_as_it_would_be_alone(session: Path) -> None:
    summary = load_summary(session / "summary.json")
    assert done_ids(summary) == ["turns-on-target", "again", "eyes-side-to-side"]
    for found, name in zip(summary.exercises, ("good", "glances", "jumps"), strict=True):
        by_itself = alone(name)
        assert found.done == by_itself.done
        assert found.done.repetitions is not None and found.done.repetitions > 7
        assert found.head == by_itself.head and found.eyes == by_itself.eyes
        assert found.gaze == by_itself.gaze
        shifts = {
            round(a.start_s - b.start_s, 3)
            for a, b in zip(found.events, by_itself.events, strict=True)
        }
        assert len(shifts) <= 1
    assert next(e.code for e in summary.exercises[1].events) == "gaze_off_target"


def test_the_clips_lie_behind_each_other_with_their_pauses(session: Path) -> None:
    log = load_stage_log(session / "stage.json")
    sets = [s for s in log.steps if s.step == "exercise"]
    # 10 s to the score and 30 s of rest; then the next clip's 2 s of set-up.
    gap_s = 10.0 + 30.0 + 2.0
    assert [b.from_s - a.to_s for a, b in itertools.pairwise(sets)] == pytest.approx([gap_s, gap_s])
    samples = load_trace(session / "trace.csv")
    times = [s.time_s for s in samples]
    assert times == sorted(times)
    assert len(times) == sum(len(make()) for _, make in CLIPS.values())
    assert sum(b - a > 30.0 for a, b in itertools.pairwise(times)) == 2
    assert {s.step for s in samples} == {"rest", "exercise"}


def test_the_set_ups_stay_apart(session: Path) -> None:
    summary = load_summary(session / "summary.json")
    assert [(e.setup or {}).get("gaze_error_deg") for e in summary.exercises] == [0.5, 0.9, None]
    flags = [[f.flag for f in e.quality] for e in summary.exercises]
    assert flags == [[], [], ["gaze_not_fitted"]]
    assert [f.flag for f in summary.quality] == ["from_clips"]
    assert summary.setup["gaze_error_deg"] is None
    assert summary.setup["differs"] == ["gaze_error_deg"]
    assert summary.setup["camera"] == {"width_px": 640}


def test_the_summary_follows_from_the_journal_alone(session: Path) -> None:
    before = {p.name: p.read_bytes() for p in session.iterdir()}
    assert set(before) == {"journal.jsonl", "summary.json", "trace.csv", "stage.json"}
    for name in ("summary.json", "trace.csv", "stage.json"):
        (session / name).unlink()
    save_session(session)
    assert {p.name: p.read_bytes() for p in session.iterdir()} == before


def test_the_trace_with_its_stage_log_gives_the_same_counts(session: Path) -> None:
    log = load_stage_log(session / "stage.json")
    record = run_samples(load_trace(session / "trace.csv"), log.steps, SessionInfo())
    again = [e.done for e in summarise(record).exercises]
    assert again == [e.done for e in load_summary(session / "summary.json").exercises]


def test_an_entry_without_a_clip_is_not_done(session: Path) -> None:
    assert refused(load_summary(session / "summary.json")) == {"stand": ["no_clip"]}


def test_answers_reach_the_summary_and_the_clock(plan: Plan, tmp_path: Path) -> None:
    answers = Answers.model_validate(
        {
            "format": "turnpost-answers",
            "format_version": 1,
            "gate": False,
            "scores_before": {"dizziness": 1},
            "entries": {
                "turns-on-target": {
                    "clarity": "blurred",
                    "scores_after": {"dizziness": 3},
                    "settled_minutes": 2.0,
                },
                "again": {"scores_after": {"dizziness": 7}},
            },
        }
    )
    clips = match_clips(plan, [clip(n) for n in ("good", "glances", "jumps")])
    summary = run(plan, clips, tmp_path / "s", answers)
    assert (summary.ended, summary.ended_because) == ("symptom_rule", ["score_above"])
    assert done_ids(summary) == ["turns-on-target", "again"]
    assert refused(summary) == {
        "eyes-side-to-side": ["session_ended"],
        "stand": ["session_ended", "no_clip"],
    }
    first, second = summary.exercises
    assert first.clarity["value"] == "blurred" and second.clarity["reason"] == "not asked"
    assert first.symptoms is not None and first.symptoms["settled_minutes"] == 2.0
    sets = [s for s in load_stage_log(tmp_path / "s" / "stage.json").steps if s.exercise]
    assert sets[1].from_s - sets[0].to_s == pytest.approx(120.0 + 30.0 + 2.0)


def test_a_session_that_never_settles_lasts_as_long_as_it_was_waited(tmp_path: Path) -> None:
    plan = plan_of({**SEATED, **ASKED})
    data = {
        "format": "turnpost-answers",
        "format_version": 1,
        "entries": {"turns-on-target": {"scores_after": {"dizziness": 2}, "settled_minutes": 30.0}},
    }
    answers = Answers.model_validate(data)
    summary = run(plan, match_clips(plan, [clip("good")]), tmp_path / "s", answers)
    assert summary.ended_because == ["not_settled"]
    assert summary.duration_s == pytest.approx(TO_S + 5 * 60.0)


def test_a_clip_that_breaks_off_ends_its_set(tmp_path: Path, monkeypatch: Any) -> None:
    monkeypatch.setitem(CLIPS, "good", (steps(), lambda: turns_samples(to_s=12.0)))
    plan = plan_of({**SEATED, **ASKED})
    summary = run(plan, match_clips(plan, [clip("good")]), tmp_path / "s")
    assert summary.exercises[0].done.duration_s == pytest.approx(10.0, abs=0.1)
    assert summary.exercises[0].done.repetitions in (4, 5)


def test_a_clip_that_goes_on_holds_the_next_one_back(tmp_path: Path, monkeypatch: Any) -> None:
    monkeypatch.setitem(CLIPS, "good", (steps(), lambda: turns_samples(to_s=TO_S + 90.0)))
    plan = plan_of(*({**e, **ASKED} for e in TWICE))
    clips = match_clips(plan, [clip("good"), clip("glances")])
    summary = run(plan, clips, tmp_path / "s")
    assert summary.exercises[0].done == alone_short()
    assert summary.exercises[1].done == alone("glances").done


def alone_short() -> Any:
    return (
        summarise(run_samples(turns_samples(), steps(repetitions=20), SessionInfo()))
        .exercises[0]
        .done
    )


def test_a_moving_target_is_shifted_with_its_step() -> None:
    track = [(1.0, 0.0, 0.0, 600.0), (2.0, 10.0, 0.0, 600.0)]
    step = Step(from_s=1.0, to_s=2.0, step="look", target_track=track)
    moved = shifted_step(step, 40.123)
    assert moved.target_at(41.623) == step.target_at(1.5) == (5.0, 0.0, 600.0)


# --- which clip goes to which entry ---


def staged(exercise: str, **fields: Any) -> StagedClip:
    step = {"from_s": 0, "to_s": 9, "step": "exercise", "exercise": exercise, **fields}
    return StagedClip(Path(f"{exercise}.mp4"), StageLog.model_validate({"steps": [step]}))


def matched(plan: Plan, clips: Sequence[StagedClip], stage_id: str | None = None) -> Any:
    return {k: clips.index(v) for k, v in match_clips(plan, clips, stage_id).items()}


def test_clips_go_by_name_then_by_exercise_and_options() -> None:
    shut = {**STAND, "eyes": "closed", "entry_id": "shut"}
    plan = plan_of(SEATED, {**SEATED, "entry_id": "again"}, STAND, shut, SHUT)
    turns = [staged("turns-on-target"), staged("turns-on-target", entry_id="turns-on-target")]
    assert matched(plan, turns) == {"turns-on-target": 1, "again": 0}
    holds = [staged("stand", eyes="closed"), staged("stand", eyes="open", posture="standing")]
    assert matched(plan, holds) == {"shut": 0, "stand": 1}


@pytest.mark.parametrize(
    ("clips", "says"),
    [
        ([staged("nods-on-target")], "no entry for 'nods-on-target'"),
        ([staged("stand"), staged("stand")], "no more entries for 'stand'"),
        ([staged("stand", eyes="closed")], "other eyes, posture or surface"),
        ([staged("stand", entry_id="stand")] * 2, "has a clip already"),
        ([staged("stand"), staged("turns-on-target")], r"several stages \(one, two\)"),
    ],
)
def test_clips_that_do_not_fit_are_refused(clips: list[StagedClip], says: str) -> None:
    plan = plan_of(
        {**SEATED, "stage": "one"},
        {**STAND, "stage": "two"},
        stages=[{"stage_id": "one", "name": "One"}, {"stage_id": "two", "name": "Two"}],
    )
    with pytest.raises(InputError, match=says):
        match_clips(plan, clips)
    assert matched(plan, [staged("stand")], "two") == {"stand": 0}
    with pytest.raises(InputError, match="stage 'one' has no entry"):
        match_clips(plan, [staged("stand")], "one")


def test_a_clip_needs_one_exercise() -> None:
    with pytest.raises(InputError, match="names no exercise"):
        staged_clip(Path("c.mp4"), StageLog())
    log = StageLog.model_validate(
        {
            "steps": [
                {"from_s": k, "to_s": k + 1, "step": "exercise", "exercise": e}
                for k, e in enumerate(("stand", "walk"))
            ]
        }
    )
    with pytest.raises(InputError, match="several exercises"):
        staged_clip(Path("c.mp4"), log)


# --- answers from a file ---


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ({"gate": {"headache": True}}, "'headache' is none of"),
        ({"scores_before": {"dizziness": 11}}, "less than or equal to 10"),
        ({"scores_before": {"dizziness": True}}, "dizziness"),
        ({"entries": {"none": {}}}, "has no 'none'"),
        ({"open": ["none"]}, "has no 'none'"),
        ({"weekly": {"falls": "twice"}}, "weekly.falls"),
        ({"weekly": {"medicines": True}}, "weekly.medicines"),
        ({"entries": {"stand": {"clarity": "fine"}}}, "entries.stand.clarity"),
        ({"unheard": 1}, "unheard"),
        ({"format_version": 2}, "format_version"),
    ],
)
def test_answers_that_make_no_sense_are_refused(
    fields: dict[str, Any], says: str, plan: Plan, tmp_path: Path
) -> None:
    path = tmp_path / "a.json"
    data = {"format": "turnpost-answers", "format_version": 1} | fields
    path.write_text(json.dumps(data))
    with pytest.raises(InputError, match=says):
        load_answers(path, plan)
    path.write_text('{"format": "turnpost-answers", "format_version": 1}')
    assert load_answers(path, plan) == NO_ANSWERS


@pytest.mark.parametrize("text", ["", "[]", "{", "\x00", "nul"])
def test_what_is_no_answers_file_is_refused(text: str, plan: Plan, tmp_path: Path) -> None:
    (tmp_path / "a.json").write_text(text)
    with pytest.raises(InputError, match="not a usable file of answers"):
        load_answers(tmp_path / "a.json", plan)


def test_the_schema_knows_every_field() -> None:
    assert set(schema()["properties"]) == set(Answers.model_fields)


# --- a folder that appears whole or not at all ---


def test_a_folder_appears_whole_or_not_at_all(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError), new_folder(tmp_path / "a") as made:
        (made / "none" / "x").write_text("1")
    assert list(tmp_path.iterdir()) == []
    with new_folder(tmp_path / "a") as made:
        (made / "x").write_text("1")
    assert [p.name for p in tmp_path.iterdir()] == ["a"]
    with pytest.raises(InputError, match="already"), new_folder(tmp_path / "a"):
        pass
    assert (tmp_path / "a" / "x").read_text() == "1"
    (tmp_path / "b").mkdir()
    with new_folder(tmp_path / "b") as made:
        (made / "y").write_text("2")
    assert (tmp_path / "b" / "y").is_file()
