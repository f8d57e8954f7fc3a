"""A journal with a damaged first line still tells a demo and a newer version, or that it can't."""

from __future__ import annotations

import json
import re
from datetime import datetime
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
        # Still the first line of a journal, but another than was written.
        "camera": first.replace(b'"sample clip"', b'"sample clhp"'),
        "version": first.replace(b'"format_version":1', b'"format_version":3'),
        "format": first.replace(b'"turnpost-journal"', b'"turnpost-jourmal"'),
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
    # Its folder's name is the local time of its beginning.
    at = datetime(2026, 3, 1, 10).astimezone().isoformat()
    assert found.started_at == at
    summary = save_interrupted(found)
    assert summary.started_at == at
    assert summary.person is None and summary.plan_id is None
    (flag,) = summary.quality
    assert flag.flag == "journal_damaged" and "whose it is" in flag.reason
    assert "sample" not in flag.reason


@pytest.mark.parametrize("how", HOW)
@pytest.mark.parametrize("camera", [SAMPLE_CLIP, "Camera in the lid"])
def test_without_marks_it_is_told_as_not_known(tmp_path: Path, how: str, camera: str) -> None:
    path = written(tmp_path, camera=camera)
    spoil(path, how)
    without_marks(path)
    (found,) = interrupted_sessions(tmp_path)
    assert found.damaged and found.unsure and not found.newer
    (flag,) = save_interrupted(found).quality
    assert flag.flag == "journal_damaged" and flag.reason.endswith("it may be from the sample")


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


@pytest.mark.parametrize("name", ["20261301-100000-ab12", "mine", "20260301-100000"])
def test_a_folder_s_name_that_is_no_time_dates_nothing(tmp_path: Path, name: str) -> None:
    path = written(tmp_path)
    spoil(path, "zeros")
    path.parent.rename(path.parent.with_name(name))
    (found,) = interrupted_sessions(tmp_path)
    assert found.started_at == "" and save_interrupted(found).started_at is None


def said(path: Path, kind: str) -> list[int]:
    """Places of the lines of a kind."""
    lines = path.read_bytes().splitlines()
    return [k for k, line in enumerate(lines) if line.startswith(b'{"kind":"%s"' % kind.encode())]


def change(path: Path, line: int, was: bytes, now: bytes) -> None:
    """Damage one line inside."""
    lines = path.read_bytes().splitlines(keepends=True)
    assert was in lines[line]
    lines[line] = lines[line].replace(was, now)
    path.write_bytes(b"".join(lines))


@pytest.mark.parametrize("set_up_only", [False, True])
@pytest.mark.parametrize("how", ["camera", "version", "format"])
def test_a_first_line_damaged_inside_makes_no_demo_a_patient_s(
    tmp_path: Path, how: str, set_up_only: bool
) -> None:
    path = written(tmp_path, camera=SAMPLE_CLIP, set_up_only=set_up_only)
    spoil(path, how)
    assert interrupted_sessions(tmp_path, newer=True) == []
    content = read_journal(path)
    assert content.damaged_head is not None and content.damaged_head.demo
    assert content.damaged_lines == 1


@pytest.mark.parametrize("how", ["version", "format"])
def test_a_first_line_damaged_inside_loses_no_session(tmp_path: Path, how: str) -> None:
    path = written(tmp_path)
    spoil(path, how)
    (found,) = interrupted_sessions(tmp_path, newer=True)
    assert (found.damaged, found.unsure, found.newer) == (True, False, False)
    assert found.repetitions == 5 and save_interrupted(found).person is None


def test_the_version_is_that_of_most_lines(tmp_path: Path) -> None:
    path = written(tmp_path)
    first, *others = said(path, "step")
    assert others
    change(path, first, b'"journal_version":1', b'"journal_version":7')
    (found,) = interrupted_sessions(tmp_path, newer=True)
    assert not found.newer and not found.damaged
    # As many say this as that: it is the one which this program knows.
    for at in others[1:]:
        change(path, at, b'"journal_version":1', b'"no":0')
    spoil(path, "gone")
    (found,) = interrupted_sessions(tmp_path, newer=True)
    assert not found.newer and found.damaged


def test_one_mark_of_a_demo_is_enough(tmp_path: Path) -> None:
    path = written(tmp_path, camera=SAMPLE_CLIP)
    for at in said(path, "step")[1:]:
        change(path, at, b'"demo":true', b'"dem0":true')
    spoil(path, "camera")
    assert interrupted_sessions(tmp_path, newer=True) == []


def test_a_start_of_zeros_that_took_the_steps_too_is_found_and_saved(tmp_path: Path) -> None:
    path = written(tmp_path)
    past = max(said(path, "step"))
    lines = path.read_bytes().splitlines(keepends=True)
    rest = lines[past + 1 :]
    start = sum(map(len, lines[: past + 1]))
    path.write_bytes(bytes(start) + b"".join(rest))
    (found,) = interrupted_sessions(tmp_path)
    assert found.damaged and found.unsure
    # Even where samples are all that is left.
    path.write_bytes(bytes(start) + b"".join(r for r in rest if b'"kind":"sample"' in r))
    (found,) = interrupted_sessions(tmp_path)
    assert found.damaged and found.unsure
    summary = save_interrupted(found)
    assert summary.person is None and "sample" in summary.quality[0].reason


@pytest.mark.parametrize(("how", "lines"), [("gone", 0), ("zeros", 1), ("kind", 1), ("half", 1)])
def test_only_lines_that_are_damaged_are_counted(tmp_path: Path, how: str, lines: int) -> None:
    path = written(tmp_path)
    spoil(path, how)
    assert read_journal(path).damaged_lines == lines
