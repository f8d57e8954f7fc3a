"""An invented clinic: six people who practise for some weeks, through the real engine.

It lives with the tests because it needs the conductor and the engine, which
``sample_clips`` must not know. ``python -m tests.records.clinic FOLDER [WEEKS]`` writes it.

heron
    Improves since a baseline taken together: fewer glances away, larger and faster turns,
    less dizziness. A questionnaire's score of the first day and of the last has fallen.
robin
    On a plateau, does everything; was seen in the clinic first. Fell once in the last week.
finch
    Was seen in the clinic first. Tells half-way that medicines changed; from then on
    dizziness rises, and so does a questionnaire's score. Stops feeling unwell at the end and
    reports a short spin.
plover
    Poor light: hardly anything is measured.
teal
    Loss on both sides, slow tempo; the gaze falls off with the head to the left.
wren
    Skips days and bouts.

``clinic_truth.py`` has the answers to a busy therapist's questions after eight weeks, taken from
the forms below and from nothing that the review says.
"""

from __future__ import annotations

import json
import shutil
import sys
import time
import zlib
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta, timezone
from pathlib import Path
from typing import Any

import numpy as np

from tests.practice.person import ALL_NO, Person, plan_of
from tests.records.acted import acted
from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import DoSet, Task
from tracker.records.notes import NoteBook
from tracker.records.questionnaires import add_score
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal, MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.lock import OnlyCopy
from tracker.session.projections import session_record
from tracker.session.saving import SUMMARY_NAME, save_session
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary, load_summary, save_summary

#: Long enough for five turns to each side at the slowest tempo.
SET_S = 20.0
#: Of that, how long standing takes: nothing is counted there.
STAND_SHARE = 0.6
FIRST_DAY = date(2026, 9, 28)
#: Of the small clinic; the day on which it is looked at is far behind its last session.
DAYS = 6
LAST_DAY = FIRST_DAY + timedelta(days=DAYS - 1)
TODAY = date(2026, 11, 26)
ZONE = timezone(timedelta(hours=1))
#: Sets of the small clinic: as short as a trend can be read from.
SMALL_SET_S = 10.0
#: Made up; its text exists nowhere.
QUESTIONNAIRE = "Questionnaire A"


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


#: Answers to the questions of the week.
QUIET: dict[str, Any] = {"falls": "none", "hurt": False, "medicines_changed": False}


def _quiet(_: int, __: int) -> dict[str, Any]:
    return QUIET


@dataclass(frozen=True)
class Patient:
    """Somebody of the clinic: a plan, and their form on the day of a share of the weeks.

    ``visit`` is how many days before the first day at home a baseline was taken in the clinic;
    ``weekly`` what is told of a week, by its day and how many days there are; ``scores`` the
    score of a questionnaire on the first day and on the last.
    """

    name: str
    side: str
    kind: str
    tempo_bpm: float
    form: Callable[[float, np.random.Generator], Form]
    bouts: Callable[[int, np.random.Generator], int]
    visit: int | None = None
    weekly: Callable[[int, int], dict[str, Any]] = _quiet
    scores: tuple[float, float] | None = None
    head: str = "anna"


@dataclass
class Practising(Person):
    """A person who goes through a session with samples in its sets."""

    form: Form = field(default_factory=Form)
    rng: np.random.Generator = field(default_factory=np.random.default_rng)
    set_s: float = SET_S
    head: str = "anna"
    sets: int = 0

    def _do(self, conductor: Conductor, task: Task) -> None:
        if not (isinstance(task, DoSet) and task.asked is not None):
            super()._do(conductor, task)
            return
        stands = task.asked.step_values["exercise"] == "stand"
        asked = task.asked.step_values
        wanted_s = self.set_s * (STAND_SHARE if stands else 1.0)
        target_mm, length_s, samples = acted(asked, wanted_s, self.form, self.head, self.rng)
        from_s = conductor.now_s
        step = Step.model_validate(
            {
                "from_s": from_s,
                "to_s": from_s + length_s,
                "step": "exercise",
                "target_mm": target_mm,
                **asked,
            }
        )
        conductor.begin_set(step)
        self.sets += 1
        stops = self.form.unwell_in_set == self.sets
        for made in samples:
            sample = replace(made, time_s=made.time_s + from_s)
            if stops and sample.time_s > step.from_s + length_s / 2:
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
    # What was won by two thirds of the time is kept.
    u = min(1.0, 1.6 * u)
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


def robin_week(day: int, days: int) -> dict[str, Any]:
    """One fall, told when falls are asked about for the last time."""
    return {**QUIET, "falls": "once"} if days - day <= 3 else QUIET


def finch(u: float, rng: np.random.Generator) -> Form:
    before = 1 if u <= 0.5 else 3 if u <= 0.6 else 4
    form = Form(before=before, after=min(before + 1, 5), away_right=0.15, away_left=0.15)
    if u == 1.0:
        return replace(form, unwell_in_set=1, gate=[dict(ALL_NO), _spin()])
    return form


def finch_week(day: int, days: int) -> dict[str, Any]:
    """Other medicines, told once, when the second half begins."""
    return {**QUIET, "medicines_changed": 0 <= day - days / 2 < 7}


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
    Patient(
        *("heron", "right", "chronic", 60.0, heron, _bout_number), visit=5, scores=(62.0, 31.0)
    ),
    Patient(
        *("robin", "left", "chronic", 60.0, robin, _both), visit=3, weekly=robin_week, head="bo"
    ),
    Patient(
        *("finch", "left", "acute", 60.0, finch, _bout_number),
        visit=4,
        weekly=finch_week,
        scores=(34.0, 48.0),
        head="eva",
    ),
    Patient("plover", "right", "chronic", 60.0, plover, _both, head="cleo"),
    Patient("teal", "both", "bilateral", 40.0, teal, _both, head="dirk"),
    Patient("wren", "right", "chronic", 60.0, wren, _few, head="finn"),
)


def plan_for(patient: Patient, set_s: float = SET_S) -> Plan:
    asked = {"repetitions": 10, "tempo_bpm": patient.tempo_bpm}
    return plan_of(
        {"exercise": "turns-on-target", **asked, "amplitude_deg": (15.0, 20.0)},
        {"exercise": "stand", "seconds": STAND_SHARE * set_s},
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


@dataclass(frozen=True)
class Visit:
    """One session that is to be practised: when, how, and after which others."""

    started: datetime
    form: Form
    history: Sequence[Summary] = ()
    weekly: dict[str, Any] = field(default_factory=lambda: QUIET)
    baseline: bool = False


def practise(
    patient: Patient, plan: Plan, visit: Visit, folder: Path, *, whole: bool, set_s: float = SET_S
) -> Summary:
    """One session; only a ``whole`` one keeps journal and trace beside its summary."""
    form, rng = visit.form, np.random.default_rng(zlib.crc32(folder.name.encode()))
    about = SessionInfo(
        session_id=folder.name,
        person=patient.name,
        plan_id=plan.plan_id,
        started_at=visit.started.isoformat(),
        # Documents show it: nobody is to take an invented session for a measured one.
        program_version="0.1.0 (invented clinic: drawn truth, no pictures)",
        setup={"calibration": "fitted", "gaze_error_deg": 0.8},
        baseline=visit.baseline,
    )
    person = Practising(
        gate=form.gate,
        weekly=visit.weekly,
        before={"dizziness": form.before},
        after={"dizziness": form.after},
        settle_s=form.settle_s,
        clarity=form.clarity,
        # What a met condition opens is left for the therapist to speak of first.
        open=False,
        form=form,
        rng=rng,
        set_s=set_s,
        head=patient.head,
    )
    known: dict[str, Any] = {"history": visit.history, "today": visit.started.date()}
    folder.mkdir(parents=True)
    if not whole:
        journal = MemoryJournal()
        person.engine = Engine(journal, about=about)
        person.go_on(Conductor(plan, person.engine, **known))
        made = summarise(session_record(journal.content()))
        save_summary(folder / SUMMARY_NAME, made)
        return made
    with FileJournal(folder / "journal.jsonl") as kept:
        person.engine = Engine(kept, about=about)
        person.go_on(Conductor(plan, person.engine, **known))
    save_session(folder)
    return load_summary(folder / SUMMARY_NAME)


def _at(day: int, bout: int) -> datetime:
    begins = datetime.combine(FIRST_DAY + timedelta(days=day), datetime.min.time(), ZONE)
    return begins + timedelta(hours=9 + 6 * bout)


def _write_person(
    home: Path,
    patient: Patient,
    number: int,
    days: int,
    whole_last: int,
    set_s: float,
    weeks: Collection[int] = (),
) -> None:
    """Plan and sessions of one person, each session with what the ones before it have told.

    Of ``weeks`` alone, where they are given; how the person is on a day is the same then.
    """
    plan = plan_for(patient, set_s)
    home.mkdir(parents=True)
    (home / "plan.json").write_text(
        json.dumps(plan.model_dump(mode="json", exclude_none=True)), encoding="utf-8"
    )
    rng = np.random.default_rng(number)
    home_bouts = [(d, b) for d in range(days) for b in range(patient.bouts(d, rng))]
    bouts = home_bouts if patient.visit is None else [(-patient.visit, 0), *home_bouts]
    history: list[Summary] = []
    ended_on: int | None = None
    for k, (day, bout) in enumerate(bouts):
        # How they are is told by the sessions at home; at the visit as on the first day.
        at = max(k - (len(bouts) - len(home_bouts)), 0)
        form = patient.form(at / max(len(home_bouts) - 1, 1), rng)
        asked = (day + (patient.visit or 0)) % 7 == 0
        left_out = bool(weeks) and day >= 0 and day // 7 + 1 not in weeks and not asked
        if day == ended_on or left_out:
            continue
        weekly, started = patient.weekly(day, days), _at(day, bout)
        visit = Visit(started, form, history, weekly, baseline=day < 0)
        folder = home / f"{started:%Y%m%d-%H%M}-{patient.name}"
        whole = k >= len(bouts) - whole_last
        done = practise(patient, plan, visit, folder, whole=whole, set_s=set_s)
        history.append(done)
        # Whoever was told to call first practises no more on that day.
        ended_on = day if done.ended == "red_flag" else ended_on


def write_clinic(
    folder: Path,
    days: int = 14,
    whole_last: int = 1,
    names: Sequence[str] = (),
    set_s: float = SET_S,
    weeks: Collection[int] = (),
) -> Path:
    """Write the clinic, or some of its people or weeks; the last sessions are kept whole."""
    folder.mkdir(parents=True, exist_ok=True)
    book = NoteBook(folder, "therapist")
    for number, patient in enumerate(PATIENTS):
        if names and patient.name not in names:
            continue
        _write_person(folder / patient.name, patient, number, days, whole_last, set_s, weeks)
        first = FIRST_DAY - timedelta(days=patient.visit or 0)
        last = FIRST_DAY + timedelta(days=days - 1)
        for day, score in zip((first, last), patient.scores or (), strict=False):
            add_score(book, patient.name, QUESTIONNAIRE, day, score, (0.0, 100.0))
    return folder


def small_clinic(shared: Path) -> Path:
    """A few days of all of them, made once in a folder that the processes of a run share.

    It takes seconds: whichever process comes first makes it, any other waits for that. Never
    write into it.
    """
    folder, done = shared / "small-clinic", shared / "small-clinic.made"
    while not done.exists():
        only = OnlyCopy(shared / "small-clinic.lock")
        try:
            if only.mine and not done.exists():
                shutil.rmtree(folder, ignore_errors=True)
                write_clinic(folder, DAYS, 1, set_s=SMALL_SET_S)
                done.touch()
        finally:
            only.close()
        if not done.exists():
            time.sleep(0.1)
    return folder


if __name__ == "__main__":
    write_clinic(Path(sys.argv[1]), 7 * (int(sys.argv[2]) if len(sys.argv) > 2 else 8), 3)
