"""A clinic's key, a patient's plan and sessions, for the tests of the hand-over."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from tests.plan.examples import TEXT
from tests.session.synthetic import steps, turns_samples
from tracker.handover import crypt
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.model import HandOver, Plan
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.projections import SessionRecord
from tracker.session.summary import summarise
from tracker.session.summary_file import save_summary
from tracker.session.trace import save_trace

PERSON = "P-07"
DAYS = ("2026-11-20", "2026-11-21", "2026-11-22")


@cache
def pair(number: int = 0) -> tuple[str, str]:
    """A secret key and its public one; the same again for the same number."""
    return crypt.new_identity()


def plan_with(*keys: str, plain: bool = False, person: str | None = PERSON) -> Plan:
    """The example plan, handing over to some keys."""
    way = HandOver(keys=list(keys)) if keys else HandOver(plain=True) if plain else None
    changed = parse_plan(TEXT).model_copy(update={"hand_over": way, "person": person})
    return parse_plan(format_plan(changed))


def session_id(day: str, number: int = 0) -> str:
    return f"{day.replace('-', '')}-0900{number:02d}-ab{number:02d}"


@cache
def _record() -> SessionRecord:
    about = SessionInfo(person=PERSON, plan_id="plan-7", session_id="s")
    return run_samples(turns_samples(to_s=8.0), steps(to_s=8.0), about)


def write_session(data: Path, day: str, number: int = 0, person: str | None = PERSON) -> Path:
    """A session's folder in the patient's data, with a journal that must stay there."""
    name = session_id(day, number)
    folder = data / "sessions" / name
    folder.mkdir(parents=True)
    started = f"{day}T09:00:{number:02d}+01:00"
    changes = {"session_id": name, "person": person, "started_at": started}
    save_summary(folder / "summary.json", summarise(_record()).model_copy(update=changes))
    save_trace(folder / "trace.csv", _record().samples)
    (folder / "stage.json").write_text('{"steps": []}\n')
    (folder / "journal.jsonl").write_text('{"kind": "journal of the patient"}\n')
    return folder


def patient(data: Path) -> list[Path]:
    """A patient's data: three sessions, and a profile with the shape of a face."""
    (data / "profiles").mkdir(parents=True)
    (data / "profiles" / "camera_none_usual.npz").write_bytes(b"the shape of a face" * 50)
    return [write_session(data, day) for day in DAYS]


def everything(folder: Path) -> dict[str, bytes]:
    """All files below a folder, hidden ones too."""
    return {str(p.relative_to(folder)): p.read_bytes() for p in folder.rglob("*") if p.is_file()}
