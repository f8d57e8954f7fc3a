"""A journal with a damaged first line still tells a demo and a newer version, or that it can't."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal, read_journal
from tracker.session.live import SAMPLE_CLIP, SessionInfo
from tracker.session.recovery import interrupted_sessions, save_interrupted
from tracker.session.saving import JOURNAL_NAME

NAME = "20260301-100000-ab12"


def written(data: Path, *, camera: str = "Camera in the lid", set_up_only: bool = False) -> Path:
    """The journal of a session that broke off."""
    path = data / "sessions" / NAME / JOURNAL_NAME
    about = SessionInfo(session_id=NAME, person="P-07", setup={"camera": {"name": camera}})
    with FileJournal(path) as journal:
        engine = Engine(journal, about=about)
        if set_up_only:
            engine.use_setup(0.0, about.setup)
            return path
        for step in steps():
            engine.begin(step)
        for sample in turns_samples(to_s=13.2):
            engine.feed(sample)
    return path


def spoil(path: Path, how: str) -> None:
    """Damage the first line."""
    first, _, rest = path.read_bytes().partition(b"\n")
    spoilt = {
        "zeros": bytes(len(first)),
        "half": first[: len(first) // 2],
        "gone": b"",
        # Still a line of a journal, but of a kind that nobody knows.
        "kind": first.replace(b'"kind":"session"', b'"kind":"sessiom"'),
    }[how]
    path.write_bytes(spoilt + b"\n" + rest)


def without_marks(path: Path) -> None:
    """As versions before the marks wrote it."""
    text = path.read_text(encoding="utf-8")
    found = text.count(',"journal_version":1')
    assert found
    path.write_text(re.sub(r',"journal_version":1(,"demo":true)?', "", text), encoding="utf-8")


HOW = ["zeros", "half", "gone", "kind"]


@pytest.mark.parametrize("how", HOW)
@pytest.mark.parametrize("set_up_only", [False, True])
def test_a_demo_is_nobody_s_session_though_its_first_line_is_damaged(
    tmp_path: Path, how: str, set_up_only: bool
) -> None:
    path = written(tmp_path, camera=SAMPLE_CLIP, set_up_only=set_up_only)
    spoil(path, how)
    assert interrupted_sessions(tmp_path, newer=True) == []


@pytest.mark.parametrize("how", HOW)
def test_one_of_a_newer_version_is_named_and_never_saved(tmp_path: Path, how: str) -> None:
    path = written(tmp_path)
    spoil(path, how)
    text = path.read_bytes().replace(b'"journal_version":1', b'"journal_version":2')
    path.write_bytes(text)
    assert interrupted_sessions(tmp_path) == []
    (found,) = interrupted_sessions(tmp_path, newer=True)
    assert found.newer and path.read_bytes() == text


@pytest.mark.parametrize("how", HOW)
def test_a_patient_s_own_is_saved_as_nobody_s_and_says_so(tmp_path: Path, how: str) -> None:
    path = written(tmp_path)
    spoil(path, how)
    (found,) = interrupted_sessions(tmp_path)
    assert (found.damaged, found.unsure, found.repetitions) == (True, False, 5)
    summary = save_interrupted(found)
    assert summary.person is None and summary.plan_id is None
    (flag,) = summary.quality
    assert flag.flag == "journal_damaged" and "whose it is" in flag.reason


@pytest.mark.parametrize("how", HOW)
@pytest.mark.parametrize("camera", [SAMPLE_CLIP, "Camera in the lid"])
def test_without_marks_it_is_told_as_not_known(tmp_path: Path, how: str, camera: str) -> None:
    path = written(tmp_path, camera=camera)
    spoil(path, how)
    without_marks(path)
    (found,) = interrupted_sessions(tmp_path)
    assert found.damaged and found.unsure and not found.newer


def test_a_whole_one_is_as_before_with_and_without_marks(tmp_path: Path) -> None:
    path = written(tmp_path)
    for _ in range(2):
        (found,) = interrupted_sessions(tmp_path)
        assert not found.damaged and not found.unsure and found.repetitions == 5
        assert read_journal(path).damaged_head is None
        if b"journal_version" in path.read_bytes():
            without_marks(path)


def test_the_marks_stand_in_every_step_and_set_up(tmp_path: Path) -> None:
    for camera, demo in ((SAMPLE_CLIP, True), ("Camera in the lid", None)):
        data = tmp_path / str(demo)
        path = written(data, camera=camera)
        lines = [json.loads(line) for line in path.read_bytes().splitlines()]
        marked = [r for r in lines if r["kind"] in ("step", "setup")]
        assert marked and all(r["journal_version"] == 1 for r in marked)
        assert {r.get("demo") for r in marked} == {demo}
        assert not any("demo" in r for r in lines if r["kind"] == "sample")
