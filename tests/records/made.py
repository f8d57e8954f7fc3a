"""Sessions made by the real engine from made-up samples, to tell of in documents."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from functools import cache
from math import nan
from pathlib import Path
from typing import Any

import numpy as np

from tests.body.made_up import rolls, tosses
from tests.body.test_shoulders import judged
from tests.exercises.test_body_watchers import run, samples
from tests.motion.test_near_hand import cycles_of
from tests.practice.person import SEATED, STAND, Person, plan_of
from tests.practice.test_arm import bends
from tests.session.synthetic import FROM_S, jump_samples, steps, turns_samples
from tracker.plan.gate import SPIN
from tracker.practice.conductor import Conductor
from tracker.practice.from_clips import run_plan
from tracker.practice.matching import match_clips, staged_clip
from tracker.practice.scripted import Answers
from tracker.practice.tasks import DoSet, Task
from tracker.sample import Sample
from tracker.session.clip_run import MeasuredClip
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.stage import StageLog, Step
from tracker.session.summary import exercise_summary, summarise
from tracker.session.summary_file import Summary

LONG_S = FROM_S + 44.0
FOUND = {
    "camera": {
        "vertical_fov_deg": 48.25,
        "vertical_fov_source": "card",
        "vertical_fov_error_deg": 0.9,
    },
    "distance_mm": 612,
    "calibration": True,
    "gaze_error_deg": 0.61,
    "check": {"gaze_error_deg": 0.83, "frames": 60, "looks": 2, "reason": None},
    "head_reach_deg": {"right": 24.1, "left": 23.6, "up": 16.2, "down": None},
    "glasses": "single",
    "eyes": "both",
}
NODS = {"exercise": "nods-together", "entry_id": "nods"}


def _swaying() -> list[Sample]:
    return samples(
        to_s=LONG_S,
        neck_x_mm=lambda t: 6.0 * np.sin(0.9 * t),
        neck_z_mm=lambda t: 9.0 * np.sin(0.6 * t),
    )


def _lost() -> list[Sample]:
    return turns_samples(to_s=LONG_S, lost=[(0.0, LONG_S)])


Made = Callable[[], list[Sample]]
CLIPS: dict[str, tuple[list[Step], Made]] = {
    "turns": (
        steps(to_s=LONG_S),
        lambda: turns_samples(to_s=LONG_S, glances=[(9.0, 10.0, 15.0), (20.0, 21.2, 12.0)]),
    ),
    "jumps": (
        steps("eyes-side-to-side", to_s=LONG_S),
        lambda: jump_samples(lambda t: 6.0 if 12.0 < t < 13.0 else 0.0, to_s=LONG_S),
    ),
    "stand": (steps("stand", to_s=LONG_S, posture="standing"), _swaying),
    "lost": (steps(to_s=LONG_S), _lost),
}


def _clips_session(
    names: tuple[str, ...], answers: dict[str, Any], about: dict[str, Any], *entries: dict[str, Any]
) -> Summary:
    """A session of a plan from made-up clips, through the real conductor and engine."""

    @contextmanager
    def measured(staged: Any) -> Iterator[MeasuredClip]:
        log, make = CLIPS[staged.path.stem]
        found = FOUND | ({"gaze_error_deg": 0.92} if staged.path.stem == "jumps" else {})
        yield MeasuredClip(list(log), found, (), iter(make()))

    plan = plan_of(*entries)
    clips = [staged_clip(Path(f"{n}.mp4"), StageLog(steps=CLIPS[n][0])) for n in names]
    journal = MemoryJournal()
    info = SessionInfo(plan_id=plan.plan_id, program_version="0.1.0", **about)
    given = {"format": "turnpost-answers", "format_version": 1, **answers}
    run_plan(
        plan, Engine(journal, about=info), match_clips(plan, clips), measured,
        Answers.model_validate(given),
    )  # fmt: skip
    return _from_file(summarise(session_record(journal.content())))


def _from_file(summary: Summary) -> Summary:
    return Summary.model_validate_json(summary.model_dump_json())


@cache
def finished() -> Summary:
    """Four entries, three done: with glances, with head movements, and standing."""
    answers = {
        "gate": False,
        "since_last": {"rest_of_day": 2, "next_morning": 1},
        "scores_before": {"dizziness": 2},
        "entries": {
            "turns": {"clarity": "blurred", "scores_after": {"dizziness": 4}, "settled_minutes": 2},
            "jumps": {"scores_after": {"dizziness": 3}, "settled_minutes": 0.5},
            "corner": {"support": True, "steadied": False, "scores_after": {"dizziness": 2}},
        },
    }
    about = {
        "session_id": "20260301-093000-ab12",
        "person": "Wren",
        "started_at": "2026-03-01T09:30:00+01:00",
    }
    asked = {"tempo_bpm": 60.0, "repetitions": 20}
    return _clips_session(
        ("turns", "jumps", "stand"),
        answers,
        about,
        {**SEATED, **asked, "entry_id": "turns", "amplitude_deg": [15, 20]},
        {"exercise": "eyes-side-to-side", "entry_id": "jumps", **asked, "note": "warm-up"},
        {**STAND, "entry_id": "corner", "seconds": 45},
        NODS,
    )


@cache
def unseen() -> Summary:
    """One exercise in which the face was never seen; nobody answered anything."""
    about = {"session_id": "20260302-093000-cd34", "person": "Wren", "started_at": "2026-03-02"}
    entry = {**SEATED, "tempo_bpm": 60.0, "repetitions": 20, "entry_id": "turns"}
    return _clips_session(("lost",), {}, about, entry)


class _Unwell(Person):
    """Turns for a while, then feels unwell and reports a positional spin."""

    def _do(self, conductor: Conductor, task: Task) -> None:
        if not isinstance(task, DoSet) or task.asked is None:
            super()._do(conductor, task)
            return
        start = conductor.now_s
        values = {"from_s": start, "to_s": start + 44.0, **task.asked.step_values}
        step = Step.model_validate({"step": "exercise", "target_mm": (0.0, 0.0, 600.0), **values})
        conductor.begin_set(step)
        for sample in turns_samples(to_s=14.0):
            if sample.time_s >= FROM_S:
                moved = {"time_s": round(sample.time_s - FROM_S + start, 6)}
                self.engine.feed(_with(sample, **moved))
        conductor.advance(start + 12.0)
        self.engine.advance(conductor.now_s)
        conductor.unwell()


def _with(sample: Sample, **changes: Any) -> Sample:
    from dataclasses import replace

    return replace(sample, **changes)


@cache
def unwell() -> Summary:
    """Stopped unwell within the first of two sets; a positional spin was reported."""
    calm = dict.fromkeys(Person().gate, False)
    person = _Unwell(gate=[calm, {**calm, SPIN: True}], after={"dizziness": 8}, settle_s=None)
    asked = {"tempo_bpm": 60.0, "repetitions": 20, "entry_id": "turns"}
    person.practise(plan_of({**SEATED, **asked}, NODS))
    found = person.summary
    return found.model_copy(
        update={"session_id": "20260303-093000-ef56", "started_at": "2026-03-03T18:05:00+01:00"}
    )


def _wave(size: float, period_s: float) -> Callable[[float], float]:
    return lambda t: size * np.sin(2 * np.pi * (t - FROM_S) / period_s) if t > FROM_S else 0.0


def _rising(t: float) -> float:
    return 200.0 * (1 - np.cos(2 * np.pi * (t - FROM_S) / 5.0)) if t > FROM_S else 0.0


@cache
def varied() -> Summary:
    """Seven further exercises, each with a movement of its own, in one session."""
    movements = {
        "nods-on-target": {"head_pitch_deg": _wave(12.0, 2.0)},
        "head-tilts": {"head_roll_deg": _wave(15.0, 4.0)},
        "near-far": {"vergence_deg": lambda t: 8.0 + _wave(4.0, 5.0)(t)},
        "sit-to-stand": {"head_y_mm": _rising},
        "ankle-sway": {"neck_z_mm": _wave(60.0, 4.0)},
        "weight-shift": {"neck_x_mm": _wave(70.0, 5.0)},
        "hand-toss": {},
    }
    found = [exercise_summary(run(name, samples(**m))) for name, m in movements.items()]
    data = {"session_id": "20260304-110000-aa11", "person": "Lark"}
    return without(
        finished(), **data, exercises=[e.model_dump(mode="json") for e in found], not_done=[]
    )


@cache
def hands() -> Summary:
    """What shoulders, hands and arms tell, and what was changed and marked in a call."""
    rng = np.random.default_rng(9)
    reach = Step(from_s=0.0, to_s=20.0, step="exercise", exercise="floor-reach")
    near = [
        replace(s, vergence_deg=9.0 - 3.0 * float(np.cos(2 * np.pi * s.time_s / 5.0)))
        for s in cycles_of(rng, 6, 1 / 15)
    ]
    movements = {
        "shoulders-back": rolls(rng)[0],
        "hand-toss": tosses(rng)[0],
        "floor-reach": list(bends(reach, [250.0, nan])),
        "near-far": [replace(s, head_yaw_deg=0.0, head_pitch_deg=0.0, eye_open=1.0) for s in near],
    }
    found = [judged(seen, name).model_dump(mode="json") for name, seen in movements.items()]
    found[2]["arm"] = {"value": "both", "reason": None}
    turns = json.loads(finished().model_dump_json())["exercises"][0]
    turns["changed"] = {"tempo_bpm": [55.0, 60.0], "amplitude_deg": [[13, 18], [15, 20]]}
    change = {"time_s": 4.0, "entry_id": "turns", "what": "tempo", "before": 55.0, "after": 60.0}
    return without(
        finished(),
        session_id="20260305-110000-bb22",
        person="Lark",
        exercises=[turns, *found],
        not_done=[],
        changes=[change, change | {"undone": True}, change | {"what": "next"}],
        marks=[{"time_s": 75.0, "entry_id": "turns"}, {"time_s": 80.5}],
        baseline=True,
    )


NASTY = (
    "<script>alert(1)</script>",
    "=1+1",
    "+1",
    "-1",
    "@SUM(A1)",
    "\t=2",
    "\r=3",
    "\u202eevil\u2066",
    "שלום עולם",
    "🙂👩\u200d⚕️",
    "x" * 5000,
    "many words " * 450,
    "\x00\x07\ud800",
    "\"quoted\", & 'more'; a,b",
    "",
)


@cache
def nasty() -> Summary:
    """The finished session with hostile text in every free field, in turn."""
    data = json.loads(finished().model_dump_json())
    data["session_id"] = "nasty"
    texts = iter(NASTY * 40)

    def spoil(place: Any, key: str) -> None:
        place[key] = next(texts)

    for key in ("person", "plan_id", "program_version"):
        spoil(data, key)
    data["ended"] = "stopped"
    data["ended_because"] = list(NASTY)
    data["gate"]["put_first"] = list(NASTY)
    for row in data["not_done"]:
        spoil(row, "entry_id")
        spoil(row, "exercise")
        row["reasons"] = list(NASTY)
    for key in ("glasses", "eyes"):
        spoil(data["setup"], key)
    spoil(data["setup"]["camera"], "vertical_fov_source")
    data["quality"] = [{"flag": t, "reason": t} for t in NASTY]
    for exercise in data["exercises"]:
        for key in ("exercise", "entry_id"):
            spoil(exercise, key)
        spoil(exercise["clarity"], "value")
        exercise["not_measured"] = list(NASTY)
        exercise["quality"] = [{"flag": t, "reason": t} for t in NASTY]
        exercise["done"] |= {"repetitions": None, "reason": next(texts)}
        exercise["support"] = {"asked": next(texts), "confirmed": None}
        exercise["events"] = [
            {"code": t, "start_s": 1.0, "end_s": None, "said_at_s": None, "reason": t}
            for t in NASTY
        ]
        for row in exercise["repetitions_list"]:
            for turn in row["turns"]:
                spoil(turn, "side")
    # Lone surrogates pass through JSON as escapes, as from a file.
    return Summary.model_validate(data)


EXAMPLES: dict[str, Callable[[], Summary]] = {
    "finished": finished,
    "unseen": unseen,
    "unwell": unwell,
    "varied": varied,
    "hands": hands,
    "nasty": nasty,
}


def without(summary: Summary, **changes: Any) -> Summary:
    """A copy with other fields, as read from a file."""
    return Summary.model_validate(json.loads(summary.model_dump_json()) | changes)
