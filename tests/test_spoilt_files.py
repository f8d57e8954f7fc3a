"""Whatever bytes come in, a reader gives content or one clear line that names the file.

``pytest tests/test_spoilt_files.py --spoilt 10000 -s`` does more of it and prints figures.
Nothing may take longer than a second of processor time or grow by 200 MB.
"""

from __future__ import annotations

import contextlib
import json
import os
import random
import resource
import time
import zipfile
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from calibration.profile_file import load_profile, save_profile
from sample_clips import shipped_clip
from sample_clips.scenario import ScenarioError, load_scenario
from tests.handover.made import pair, patient, plan_with
from tests.session.synthetic import steps, turns_samples
from tests.spoiling import spoilt
from tracker.errors import InputError, RunError
from tracker.eyes.model import EyeModel, GazeModel
from tracker.eyes.openness import LidRange
from tracker.eyes.regression import Ridge
from tracker.handover.receive import receive
from tracker.handover.sending import hand_over, offer_of
from tracker.handover.sent import RECORD
from tracker.head.perspective import Pinhole
from tracker.head.shape import FaceShape
from tracker.head.template import Template
from tracker.plan.files import format_plan, load_plan
from tracker.plan.starter import starter_plan
from tracker.practice.history import load_history
from tracker.practice.scripted import load_answers
from tracker.profile import Profile, RestFrame
from tracker.records.index import index_path, read_folder
from tracker.records.notes import NoteBook
from tracker.session.clip_run import run_samples
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal, read_journal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.saving import save_stage_log
from tracker.session.stage import load_stage_log, stage_path_of
from tracker.session.summary import summarise
from tracker.session.summary_file import load_summary, save_summary
from tracker.session.trace import load_trace, save_trace
from ui.bench.photos import photos_table
from ui.settings import Settings
from ui.setup.lens_store import load_lens, load_mark

MOST_S, MOST_MB = 1.0, 200.0
Read = Callable[[Path], object]
#: A file with something in it, and how it is read.
Case = tuple[bytes, Read]


def journal_told(path: Path) -> None:
    """A journal as it is recovered: read, projected, summed up, written as what is made of it."""
    record = session_record(read_journal(path))
    save_stage_log(path.with_name("stage.json"), record)
    save_summary(path.with_name("told.json"), summarise(record))


def noted(path: Path) -> None:
    """A file of notes: one more is read again, or was refused."""
    book = NoteBook(path.parent, "kim")
    book.folder.mkdir(exist_ok=True)
    path.replace(book.path)
    with contextlib.suppress(RunError):
        added = book.add("note", "s9", "one more").id
        assert added in {n.id for n in book.notes()}


def judged_trace(path: Path) -> None:
    """A trace as ``check`` reads it: judged."""
    summarise(run_samples(load_trace(path), steps(), SessionInfo()))


def in_history(path: Path) -> None:
    """A summary among a person's sessions."""
    folder = path.with_name("sessions") / "one"
    folder.mkdir(parents=True, exist_ok=True)
    path.replace(folder / "summary.json")
    load_history(folder.parent, starter_plan())


def taken_in(path: Path) -> None:
    """A hand-over, as the clinic takes it in."""
    receive(path, path.with_name("clinic"), [pair()[0]])


def record_of_sending(path: Path) -> None:
    """What was handed over before; what can't be read counts as nothing."""
    path.replace(path.parent / RECORD)
    offer_of(plan_with(pair()[1]), path.parent)


def nobody() -> Profile:
    """A profile of the right shapes, of no person."""
    rng = np.random.default_rng(0)
    of = rng.random
    triangles = rng.integers(0, 468, (20, 3))
    ridge = Ridge(of(8), of((8, 2)), of(2), of((3, 8)), 1.0)
    return Profile(
        640,
        480,
        52.0,
        Pinhole(490.0, 319.5, 239.5),
        FaceShape(of((468, 3)), triangles),
        Template(
            of(3), of((4, 9, 3)), of((4, 3)), of((4, 3)), of((4, 9)), of((4, 9, 2)), of((4, 3, 2))
        ),
        of((2, 3)),
        RestFrame(np.eye(3), np.eye(3), of(3), of(3)),
        LidRange(0.3, 0.05),
        GazeModel((EyeModel(ridge, ridge),) * 2, of((2, 2)), 0.5, np.eye(3)),
    )


def remembered(path: Path) -> None:
    """The settings, all of which is asked for; Qt itself keeps what it has read by the name."""
    place = path.with_name(f"{time.monotonic_ns()}.ini")
    path.replace(place)
    settings = Settings(place)
    for name, what in vars(Settings).items():
        if isinstance(what, property):
            getattr(settings, name)
    settings.sync()
    place.unlink(missing_ok=True)


def indexed(clinic: Path) -> Case:
    """The desk's index of a folder: however it is spoilt, shown is what the folder holds."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("TURNPOST_CACHE", str(clinic.with_name("cache")))
        shown = read_folder(clinic).fingerprint
        assert read_folder(clinic).kept == 1
        content = index_path(clinic).read_bytes()

    def read(path: Path) -> None:
        place = index_path(clinic)
        place.parent.mkdir(parents=True, exist_ok=True)
        path.replace(place)
        assert read_folder(clinic).fingerprint == shown

    return content, read


@pytest.fixture(scope="module")
def cases(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Case]:
    """One good file for each reader."""
    folder = tmp_path_factory.mktemp("good")
    plan = starter_plan()
    record = run_samples(turns_samples(), steps(), SessionInfo(person="P1"))
    save_summary(folder / "s.json", summarise(record))
    save_trace(folder / "t.csv", record.samples)
    with FileJournal(folder / "j.jsonl") as journal:
        engine = Engine(journal, about=SessionInfo(person="P1"))
        for step in steps(to_s=4.0):
            engine.begin(step)
        for sample in turns_samples(to_s=4.0):
            engine.feed(sample)
        engine.finish()
    save_profile(folder / "p.npz", nobody(), {"camera": "A camera"})
    sessions = patient(folder / "data")
    for name, plan_of_clinic in (("e", plan_with(pair()[1])), ("h", plan_with(plain=True))):
        hand_over(plan_of_clinic, sessions[:1], folder / name, data=folder / "data")
    clip = shipped_clip("turns-good")
    answers = {
        "format": "turnpost-answers",
        "format_version": 1,
        "gate": False,
        "scores_before": {"dizziness": 3},
        "entries": {plan.entries[0].entry_id: {"clarity": "clear", "settled_minutes": 1.5}},
    }
    lens = {"vertical_fov_deg": 50.0, "source": "card", "error_deg": 0.4, "aspect": 1.5}
    cameras = {"format": "turnpost-cameras", "format_version": 1, "lenses": {"a": lens}}
    texts = {
        "plan": (format_plan(plan).encode(), load_plan),
        "answers": (json.dumps(answers).encode(), lambda p: load_answers(p, plan)),
        "stage log": (stage_path_of(clip).read_bytes(), load_stage_log),
        "scenario": (json.dumps({"name": "a", "movement": {"kind": "nods"}}).encode(), scenario),
        "cameras": (json.dumps(cameras).encode(), kept_cameras),
        "notes": (notes_of(folder), noted),
        "settings": (settings_of(folder), remembered),
        "desk's index": indexed(clinic_of(folder)),
    }
    files = {
        "summary": ("s.json", load_summary),
        "history": ("s.json", in_history),
        "trace": ("t.csv", judged_trace),
        "journal": ("j.jsonl", journal_told),
        "profile": ("p.npz", load_profile),
        "hand-over": ("h", taken_in),
        "encrypted hand-over": ("e", taken_in),
        "record of sending": (f"data/{RECORD}", record_of_sending),
    }
    return texts | {k: ((folder / n).read_bytes(), read) for k, (n, read) in files.items()}


def notes_of(folder: Path) -> bytes:
    """A therapist's notes, one of them withdrawn."""
    book = NoteBook(folder, "kim")
    for k in range(3):
        book.add("note", f"s{k}", f"Note {k}.")
    book.undo()
    return book.path.read_bytes()


def settings_of(folder: Path) -> bytes:
    """Settings of somebody who has changed some."""
    settings = Settings(folder / "window.ini")
    settings.text_percent, settings.colours, settings.glasses = 150, "dark", "single"
    settings.sync()
    return (folder / "window.ini").read_bytes()


def clinic_of(folder: Path) -> Path:
    """A clinic's folder with one session, written an hour ago and so trusted to stay."""
    home = folder / "clinic"
    (home / "one").mkdir(parents=True)
    path = home / "one" / "summary.json"
    path.write_bytes((folder / "s.json").read_bytes())
    hour_ago = time.time() - 3600.0
    os.utime(path, (hour_ago, hour_ago))
    return home


def scenario(path: Path) -> object:
    """A scenario; its error is one of its own, as its package knows none of the others."""
    try:
        return load_scenario(path)
    except ScenarioError as error:
        raise InputError(str(error)) from error


def kept_cameras(path: Path) -> None:
    """The file of the cameras, in the data folder."""
    path.replace(path.parent / "cameras.json")
    load_lens("a")
    load_mark("a")


KINDS = ("plan", "answers", "stage log", "scenario", "cameras", "notes", "settings",
         "desk's index", "summary", "history",
         "trace", "journal", "profile", "hand-over", "encrypted hand-over",
         "record of sending")  # fmt: skip


def grown_mb(before: float) -> float:
    """Growth of the most memory that this process has had."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024 - before


@pytest.mark.timeout(0)
@pytest.mark.parametrize("kind", KINDS)
def test_a_spoilt_file_is_read_or_refused_in_one_line(
    kind: str,
    cases: dict[str, Case],
    private_data_folder: Path,
    request: pytest.FixtureRequest,
) -> None:
    content, read = cases[kind]
    path = private_data_folder / "some file"
    private_data_folder.mkdir(exist_ok=True)
    before_mb = grown_mb(0.0)
    slowest_s, refused = 0.0, 0
    count = request.config.getoption("--spoilt")
    for number in range(count):
        rng = random.Random(f"{kind} {number}")
        path.write_bytes(spoilt(content, rng))
        began_s = time.process_time()
        try:
            read(path)
        except InputError as error:
            refused += 1
            message = str(error)
            assert len(message.splitlines()) == 1 and message.isprintable(), (number, message)
            assert path.name in message, (number, message)
        except Exception as error:
            raise AssertionError(f"{kind}, number {number}: {error!r}") from error
        slowest_s = max(slowest_s, time.process_time() - began_s)
    line = f" {kind}: {count} spoilt, {refused} refused, slowest {slowest_s:.2f} s"
    request.config.get_terminal_writer().line(line)
    assert slowest_s < MOST_S
    assert grown_mb(before_mb) < MOST_MB


@pytest.mark.parametrize("kind", KINDS)
def test_the_good_file_is_read(
    kind: str, cases: dict[str, Case], private_data_folder: Path
) -> None:
    content, read = cases[kind]
    path = private_data_folder / "some file"
    private_data_folder.mkdir(exist_ok=True)
    path.write_bytes(content)
    read(path)


@pytest.mark.parametrize("read", [load_profile, lambda p: list(photos_table(p))])
def test_an_array_whose_header_is_never_closed_is_refused(tmp_path: Path, read: Read) -> None:
    # numpy's reader for old headers then fails in the tokenizer (number 5399 of the profiles).
    text = b"{'descr': '<f8', 'fortran_order': False, 'shape': (2L,\n"
    array = b"\x93NUMPY\x01\x00" + len(text).to_bytes(2, "little") + text
    path = tmp_path / "some.npz"
    with zipfile.ZipFile(path, "w") as packed:
        packed.writestr("header.npy", array)
    with pytest.raises(InputError, match=r"some\.npz"):
        read(path)
