"""The program opens no network connection: run sealed from it, it works and never tries.

:mod:`tests.sealed.sitecustomize` seals the process and all its children. The first tests show
that it would tell of an attempt; the others run the main jobs. Where the kernel lets a user
make one, they run in a network namespace of their own besides, in which there is no network.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from sample_clips import shipped_clip
from tests.handover.made import PERSON, patient
from tests.plan.examples import TEXT
from tests.vision.clip_files import first_part
from tracker.session.summary_file import load_summary
from ui.wiring import demo_clip

ROOT = Path(__file__).parents[1]
SEALED = ROOT / "tests" / "sealed"

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="the seal is Linux's seccomp")


def without_network() -> list[str]:
    """What starts a program where no network is; nothing where the kernel doesn't allow it."""
    command = ["unshare", "--map-root-user", "--net"]
    try:
        tried = subprocess.run([*command, "true"], capture_output=True, check=False)
    except OSError:
        return []
    return command if tried.returncode == 0 else []


NO_NETWORK = without_network()


@dataclass
class Sealed:
    """Runs Python sealed from the network."""

    folder: Path

    def run(
        self, *words: str, timeout: float = 110.0, typed: str = ""
    ) -> subprocess.CompletedProcess[str]:
        env = os.environ | {
            "PYTHONPATH": os.pathsep.join([str(SEALED), str(ROOT)]),
            "TURNPOST_TEST_ATTEMPTS": str(self.folder / "attempts"),
            "TURNPOST_DATA": str(self.folder / "data"),
        }
        return subprocess.run(
            [*NO_NETWORK, sys.executable, *words],
            cwd=ROOT,
            env=env,
            input=typed,
            capture_output=True,
            text=True,
            timeout=timeout,
            check=False,
        )

    def turnpost(self, *words: str, timeout: float = 110.0, typed: str = "") -> str:
        """Output of a command that has to end well."""
        ended = self.run("-m", "ui.cli", *words, timeout=timeout, typed=typed)
        assert ended.returncode == 0, ended.stderr
        return ended.stdout

    @property
    def attempts(self) -> list[str]:
        path = self.folder / "attempts"
        return path.read_text(encoding="utf-8").splitlines() if path.exists() else []


@pytest.fixture
def sealed(tmp_path: Path) -> Sealed:
    return Sealed(tmp_path)


PYTHON_TRIES = "import socket; socket.create_connection(('192.0.2.1', 9))"
NAME_TRIES = "import socket; socket.getaddrinfo('host.invalid', 80)"
NATIVE_TRIES = "import ctypes; ctypes.CDLL(None).socket({family}, 1, 0)"


@pytest.mark.parametrize("code", [PYTHON_TRIES, NAME_TRIES])
def test_what_python_tries_is_refused_and_told(sealed: Sealed, code: str) -> None:
    assert "PermissionError" in sealed.run("-c", code).stderr
    assert len(sealed.attempts) == 1


@pytest.mark.parametrize("family", [2, 10])
def test_what_native_code_tries_is_told(sealed: Sealed, family: int) -> None:
    sealed.run("-c", NATIVE_TRIES.format(family=family))
    assert len(sealed.attempts) == 1 and "native" in sealed.attempts[0]


def test_what_a_child_of_a_child_tries_is_told(sealed: Sealed) -> None:
    inner = NATIVE_TRIES.format(family=2)
    sealed.run("-c", f"import subprocess, sys; subprocess.run([sys.executable, '-c', {inner!r}])")
    assert len(sealed.attempts) == 1


def test_sockets_between_processes_stay(sealed: Sealed) -> None:
    assert sealed.run("-c", "import socket; socket.socketpair()").returncode == 0
    assert sealed.attempts == []


@pytest.mark.skipif(not NO_NETWORK, reason="this kernel lets no user take the network away")
def test_there_is_no_network_where_the_jobs_run(sealed: Sealed) -> None:
    inside = sealed.run("-c", "print(open('/proc/net/dev').read())").stdout.splitlines()[2:]
    assert [line.split(":")[0].strip() for line in inside if line.strip()] in (["lo"], [])


@pytest.mark.slow
@pytest.mark.gui
@pytest.mark.timeout(400)
def test_the_whole_demo_works_and_nothing_was_tried(sealed: Sealed) -> None:
    out = sealed.turnpost("demo", "--auto", timeout=380)
    assert sealed.attempts == []
    path = Path(out.strip().splitlines()[-1])
    assert path.parent.parent == sealed.folder / "data" / "sessions"
    files = {"journal.jsonl", "summary.json", "trace.csv", "stage.json"}
    assert {p.name for p in path.parent.iterdir()} == files
    summary = json.loads(path.read_text(encoding="utf-8"))
    truth = json.loads(demo_clip().with_suffix(".events.json").read_text(encoding="utf-8"))
    exercise = summary["exercises"][0]
    assert summary["ended"] == "finished"
    assert exercise["exercise"] == truth["exercise"]
    assert exercise["done"]["repetitions"] == truth["repetitions"]
    assert exercise["done"]["measured_fraction"] > 0.95


def test_a_hand_over_its_review_and_documents_try_nothing(sealed: Sealed, tmp_path: Path) -> None:
    plan, file = tmp_path / "plan.json", tmp_path / "file.age"
    passphrase = "three plain words\n"
    sealed.turnpost("keys", "new", typed=passphrase)
    (tmp_path / "bare.json").write_text(TEXT)
    sealed.turnpost("plan", "keys", str(tmp_path / "bare.json"), "--out", str(plan))
    patient(sealed.folder / "data")
    sealed.turnpost("handover", "--plan", str(plan), "--to", str(file))
    receive = ("receive", str(file), "--into", str(tmp_path / "clinic"))
    assert "3 new" in sealed.turnpost(*receive, typed=passphrase)
    assert PERSON in sealed.turnpost("review", str(tmp_path / "clinic"), "--text")
    summary = next((tmp_path / "clinic").rglob("summary.json"))
    outs = {kind: tmp_path / f"page.{kind}" for kind in ("html", "pdf", "csv", "fhir")}
    named = [word for kind, path in outs.items() for word in (f"--{kind}", str(path))]
    sealed.turnpost("report", str(summary), *named)
    assert all(path.stat().st_size > 500 for path in outs.values())
    assert sealed.attempts == []


#: Every person of a folder at the desk, with all tabs, and each one's newest session.
AT_THE_DESK = """
import sys, time
from pathlib import Path
from ui.desk.opening import open_desk
app, window = open_desk(Path(sys.argv[1]))
def until(reached):
    end_s = time.monotonic() + 60.0
    while not reached():
        assert time.monotonic() < end_s
        app.processEvents()
def show(tabs):
    for k in range(tabs.count()):
        tabs.setCurrentIndex(k)
        until(lambda: not window.session_page.busy)
until(lambda: window.found is not None)
known = window.people.people
for row in range(len(known.people)):
    window.people.setCurrentIndex(known.index(row))
    app.processEvents()
    person = window.person_page.person
    print(person.name)
    show(window.person_page.tabs)
    window.open_session(person.rows[-1].place)
    until(lambda: not window.session_page.busy)
    show(window.session_page.lists)
    show(window.session_page.beside)
    window.show_people()
window.show_exchange()
app.processEvents()
window.leaving.drop()
window.close()
"""


@pytest.mark.gui
def test_a_review_at_the_desk_tries_nothing(
    sealed: Sealed, small_clinic: Path, tmp_path: Path
) -> None:
    clinic = shutil.copytree(small_clinic, tmp_path / "clinic")
    ended = sealed.run("-c", AT_THE_DESK, str(clinic))
    assert ended.returncode == 0, ended.stderr
    assert {"robin", "finch", "plover", "teal", "wren", "heron"} == set(ended.stdout.split())
    assert sealed.attempts == []


#: A plan of one exercise, and what its person answers beforehand.
PLAN = json.loads(TEXT) | {
    "entries": [{"entry_id": "turns", "exercise": "turns-on-target", "repetitions": 12}]
}
ANSWERS = {
    "format": "turnpost-answers",
    "format_version": 1,
    "gate": False,
    "weekly": {"falls": "none", "medicines_changed": False},
    "scores_before": {"dizziness": 2},
    "entries": {"turns": {"clarity": "clear", "scores_after": {"dizziness": 3}}},
}


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_a_whole_planned_session_tries_nothing(sealed: Sealed, tmp_path: Path) -> None:
    """Safety questions, one exercise from pixels, saved, handed over to the clinic, read there."""
    names = ("bare.json", "plan.json", "answers.json", "file.age")
    bare, plan, answers, file = (tmp_path / name for name in names)
    passphrase = "three plain words\n"
    sealed.turnpost("keys", "new", typed=passphrase)
    bare.write_text(json.dumps(PLAN))
    answers.write_text(json.dumps(ANSWERS))
    sealed.turnpost("plan", "keys", str(bare), "--out", str(plan))
    clip = first_part(shipped_clip("turns-good"), tmp_path, 25.0)
    given = ("--clip", str(clip), "--answers", str(answers))
    out = sealed.turnpost("practise", "--plan", str(plan), "--no-window", *given, timeout=600)
    path = Path(out.strip().splitlines()[-1])
    assert path.parent.parent == sealed.folder / "data" / "sessions"
    summary = load_summary(path)
    assert summary.ended == "finished" and summary.gate is not None
    assert summary.gate["outcome"] == "go" and set(summary.gate["answers"].values()) == {False}
    (exercise,) = summary.exercises
    assert exercise.entry_id == "turns" and exercise.done.repetitions
    assert (exercise.symptoms["before"], exercise.symptoms["after"]) == (2, 3)
    sealed.turnpost("handover", "--plan", str(plan), "--to", str(file))
    clinic = tmp_path / "clinic"
    assert "1 new" in sealed.turnpost("receive", str(file), "--into", str(clinic), typed=passphrase)
    (received,) = clinic.rglob("summary.json")
    assert load_summary(received).session_id == summary.session_id
    assert sealed.attempts == []


@pytest.mark.parametrize("words", [("doctor",), ("plan", "show"), ("camera",)])
def test_the_small_commands_try_nothing(sealed: Sealed, words: tuple[str, ...]) -> None:
    # Whether there is a camera, or all that a machine needs, is not the matter here.
    assert sealed.run("-m", "ui.cli", *words).returncode in (0, 1)
    assert sealed.attempts == []
