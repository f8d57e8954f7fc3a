"""An invented clinic: six people who practise for some weeks, through the real engine.

It lives with the tests because it needs the conductor and the engine, which
``sample_clips`` must not know. ``python -m tests.records.clinic FOLDER [WEEKS]`` writes it.

heron
    Improves: fewer glances away, larger and faster turns, less dizziness.
robin
    On a plateau, does everything.
finch
    Stops feeling unwell and reports a short spin; dizziness rises.
plover
    Poor light: hardly anything is measured.
teal
    Loss on both sides, slow tempo; the gaze falls off with the head to the left.
wren
    Skips days and bouts.
"""

from __future__ import annotations

import atexit
import json
import shutil
import sys
import tempfile
import zlib
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta, timezone
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np

from tests.practice.person import ALL_NO, Person, plan_of
from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import DoSet, Task
from tracker.sample import Sample
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal, MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.saving import SUMMARY_NAME, save_session
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import save_summary

RATE_HZ = 16.0
#: Long enough for five turns to each side at the slowest tempo.
SET_S = 20.0
FIRST_DAY = date(2026, 9, 28)
#: Of the small clinic; the day on which it is looked at is far behind its last session.
DAYS = 6
LAST_DAY = FIRST_DAY + timedelta(days=DAYS - 1)
TODAY = date(2026, 11, 26)
ZONE = timezone(timedelta(hours=1))
NEAR_MM = (0.0, 0.0, 600.0)


@dataclass(frozen=True)
class Form:
    """How somebody is on one day."""

    amplitude_deg: float = 17.0
    tempo: float = 1.0
    away_right: float = 0.05
    away_left: float = 0.05
    light: float = 0.5
    lost: float = 0.0
    sway_mm: float = 12.0
    before: int = 2
    after: int = 3
    clarity: str = "clear"
    settle_s: float | None = 60.0
    gate: Any = field(default_factory=lambda: dict(ALL_NO))
    unwell_in_set: int | None = None


@dataclass(frozen=True)
class Patient:
    """Somebody of the clinic: a plan, and their form on the day of a share of the weeks."""

    name: str
    side: str
    kind: str
    tempo_bpm: float
    form: Callable[[float, np.random.Generator], Form]
    bouts: Callable[[int, np.random.Generator], int]


def samples_of(step: Step, form: Form, rng: np.random.Generator) -> list[Sample]:
    """What a camera would have measured in a set."""
    times = np.arange(step.from_s, step.to_s, 1.0 / RATE_HZ)
    since = times - step.from_s
    bpm = step.tempo_bpm if isinstance(step.tempo_bpm, float) else 60.0
    moves = step.exercise in ("turns-on-target", "turns-together")
    swing = form.amplitude_deg * rng.normal(1.0, 0.04) if moves else 0.0
    yaw = swing * np.sin(2 * np.pi * bpm * form.tempo / 120.0 * since)
    away = np.zeros_like(times)
    for side, share in ((1, form.away_right), (-1, form.away_left)):
        # Glances of half a second while the head is on that side.
        there = np.flatnonzero(np.sign(yaw) == side)
        for start in rng.choice(there, int(share * len(there) / 8) if len(there) else 0):
            away[start : start + 8] = 9.0 * side
    lost = (since % 5.0) < 5.0 * form.lost
    sway = form.sway_mm * np.sin(2 * np.pi * 0.3 * since + rng.uniform(0, 6))
    noise = rng.normal(0.0, 0.3, (len(times), 4))
    x = 100 * np.sin(np.radians(yaw)) + sway
    gaze = np.degrees(np.arctan2(-x, 600.0)) + away + noise[:, 1]
    made = []
    for k, t in enumerate(times):
        if lost[k]:
            made.append(Sample(t, light=form.light, reason="no_face"))
            continue
        made.append(
            Sample(
                t,
                head_yaw_deg=yaw[k] + 0.3 * noise[k, 0],
                head_pitch_deg=0.3 * noise[k, 2],
                head_roll_deg=0.0,
                head_x_mm=x[k],
                head_y_mm=0.0,
                head_z_mm=0.0,
                neck_x_mm=sway[k],
                neck_y_mm=0.0,
                neck_z_mm=0.6 * sway[k] + noise[k, 3],
                gaze_yaw_deg=gaze[k],
                gaze_pitch_deg=noise[k, 2],
                eye_open=0.9,
                light=form.light,
                quality=0.9,
            )
        )
    return made


@dataclass
class Practising(Person):
    """A person who goes through a session with samples in its sets."""

    form: Form = field(default_factory=Form)
    rng: np.random.Generator = field(default_factory=np.random.default_rng)
    set_s: float = SET_S
    sets: int = 0

    def _do(self, conductor: Conductor, task: Task) -> None:
        if not (isinstance(task, DoSet) and task.asked is not None):
            super()._do(conductor, task)
            return
        step = Step.model_validate(
            {
                "from_s": conductor.now_s,
                "to_s": conductor.now_s + self.set_s,
                "step": "exercise",
                "target_mm": NEAR_MM,
                **task.asked.step_values,
            }
        )
        conductor.begin_set(step)
        self.sets += 1
        stops = self.form.unwell_in_set == self.sets
        for sample in samples_of(step, self.form, self.rng):
            if stops and sample.time_s > step.from_s + self.set_s / 2:
                conductor.advance(sample.time_s)
                conductor.unwell()
                return
            self.engine.feed(sample)
        conductor.end_set(step.to_s)


def _bout_number(day: int, rng: np.random.Generator) -> int:
    return 2 if rng.random() < 0.9 else 1


def _both(_: int, __: np.random.Generator) -> int:
    return 2


def _few(day: int, _: np.random.Generator) -> int:
    return int(day % 4 == 0)


def heron(u: float, rng: np.random.Generator) -> Form:
    return Form(
        amplitude_deg=13.0 + 6.0 * u,
        tempo=0.9 + 0.15 * u,
        away_right=0.5 * (1 - u),
        away_left=0.4 * (1 - u),
        sway_mm=20.0 - 9.0 * u,
        before=round(5 - 4 * u),
        after=round(5 - 3 * u),
        clarity="clear" if rng.random() < 0.2 + u else "blurred",
    )


def robin(u: float, rng: np.random.Generator) -> Form:
    return Form(away_right=0.2, away_left=0.2, before=3 if rng.random() < 0.5 else 2, after=3)


def finch(u: float, rng: np.random.Generator) -> Form:
    before = round(1 + 3 * u)
    form = Form(before=before, after=min(before + 1, 5), away_right=0.15, away_left=0.15)
    if u > 0.98:
        return replace(form, unwell_in_set=1, gate=[dict(ALL_NO), _spin()])
    return form


def _spin() -> dict[str, bool]:
    return {**ALL_NO, "positional_spin": True}


def plover(u: float, rng: np.random.Generator) -> Form:
    return Form(light=0.08, lost=0.5 + 0.4 * rng.random(), before=2, after=2)


def teal(u: float, rng: np.random.Generator) -> Form:
    return Form(
        amplitude_deg=15.0, away_right=0.1, away_left=0.1 + 0.8 * u, sway_mm=22.0, before=4, after=4
    )


def wren(u: float, rng: np.random.Generator) -> Form:
    return Form(away_right=0.1, away_left=0.1, before=1, after=2)


PATIENTS = (
    Patient("heron", "right", "chronic", 60.0, heron, _bout_number),
    Patient("robin", "left", "chronic", 60.0, robin, _both),
    Patient("finch", "left", "acute", 60.0, finch, _bout_number),
    Patient("plover", "right", "chronic", 60.0, plover, _both),
    Patient("teal", "both", "bilateral", 40.0, teal, _both),
    Patient("wren", "right", "chronic", 60.0, wren, _few),
)


def plan_for(patient: Patient, set_s: float = SET_S) -> Plan:
    asked = {"repetitions": 10, "tempo_bpm": patient.tempo_bpm}
    return plan_of(
        {"exercise": "turns-on-target", **asked, "amplitude_deg": (15.0, 20.0)},
        {"exercise": "stand", "seconds": set_s},
        {
            "exercise": "turns-together",
            "unlock_after": {
                "condition": "Eyes stay on the target in three sessions in a row.",
                "after": "turns-on-target",
                "sessions": 3,
                "on_target_least": 0.95,
                "measured_least": 0.8,
                "clear": True,
            },
        },
        plan_id=f"plan-{patient.name}",
        person=patient.name,
        starts_on=FIRST_DAY.isoformat(),
        affected_side=patient.side,
        kind_of_loss=patient.kind,
        bouts_a_day=2,
        days_a_week=7,
    )


def practise(
    patient: Patient,
    plan: Plan,
    form: Form,
    started: datetime,
    folder: Path,
    *,
    whole: bool,
    set_s: float = SET_S,
) -> None:
    """One session; only a ``whole`` one keeps journal and trace beside its summary."""
    rng = np.random.default_rng(zlib.crc32(folder.name.encode()))
    about = SessionInfo(
        session_id=folder.name,
        person=patient.name,
        plan_id=plan.plan_id,
        started_at=started.isoformat(),
        program_version="0.1.0",
        setup={"calibration": "fitted", "gaze_error_deg": 0.8},
    )
    person = Practising(
        gate=form.gate,
        before={"dizziness": form.before},
        after={"dizziness": form.after},
        settle_s=form.settle_s,
        clarity=form.clarity,
        form=form,
        rng=rng,
        set_s=set_s,
    )
    folder.mkdir(parents=True)
    if not whole:
        journal = MemoryJournal()
        person.engine = Engine(journal, about=about)
        person.go_on(Conductor(plan, person.engine))
        save_summary(folder / SUMMARY_NAME, summarise(session_record(journal.content())))
        return
    with FileJournal(folder / "journal.jsonl") as kept:
        person.engine = Engine(kept, about=about)
        person.go_on(Conductor(plan, person.engine))
    save_session(folder)


def write_clinic(
    folder: Path,
    days: int = 14,
    whole_last: int = 1,
    names: Sequence[str] = (),
    set_s: float = SET_S,
) -> Path:
    """Write the clinic, or some of its people; of each the last sessions are kept whole."""
    for number, patient in enumerate(PATIENTS):
        if names and patient.name not in names:
            continue
        plan = plan_for(patient, set_s)
        home = folder / patient.name
        home.mkdir(parents=True)
        (home / "plan.json").write_text(
            json.dumps(plan.model_dump(mode="json", exclude_none=True)), encoding="utf-8"
        )
        rng = np.random.default_rng(number)
        times = [
            datetime.combine(FIRST_DAY + timedelta(days=day), datetime.min.time(), ZONE)
            + timedelta(hours=9 + 6 * bout)
            for day in range(days)
            for bout in range(patient.bouts(day, rng))
        ]
        for k, started in enumerate(times):
            form = patient.form(k / max(len(times) - 1, 1), rng)
            name = f"{started:%Y%m%d-%H%M}-{patient.name}"
            whole = k >= len(times) - whole_last
            practise(patient, plan, form, started, home / name, whole=whole, set_s=set_s)
    return folder


@cache
def small_clinic() -> Path:
    """A few days of five of them, made once for all tests; never write into it."""
    folder = Path(tempfile.mkdtemp(prefix="turnpost-clinic-"))
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    names = ("heron", "finch", "plover", "teal", "wren")
    return write_clinic(folder, DAYS, 1, names, set_s=10.0)


if __name__ == "__main__":
    write_clinic(Path(sys.argv[1]), 7 * (int(sys.argv[2]) if len(sys.argv) > 2 else 8), 3)
