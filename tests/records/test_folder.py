"""What is found below a folder; what can't be read says why and stops nothing."""

from __future__ import annotations

import json
import os
from functools import cache
from pathlib import Path

import pytest

from tests.handover.made import pair
from tests.plan.examples import TEXT
from tests.records.rows import row
from tests.session.synthetic import steps, turns_samples
from tracker.errors import InputError
from tracker.handover import container, crypt
from tracker.records.folder import Unread, find_places, read_place
from tracker.records.identity import content_id
from tracker.records.rows import SessionRow, Shapes, pack, row_of, unpack
from tracker.session.clip_run import run_samples
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary, save_summary


@cache
def real() -> Summary:
    """A summary of the engine."""
    about = SessionInfo(person="P-1", plan_id="plan-7", session_id="s")
    return summarise(run_samples(turns_samples(to_s=14.0), steps(to_s=14.0), about))


def write(folder: Path, name: str, person: str = "P-1", day: str = "2026-03-02") -> Path:
    """A session's folder with a summary; older than what an index is unsure of."""
    place = folder / name
    place.mkdir(parents=True)
    changes = {"session_id": name.split("/")[-1], "person": person}
    started = f"{day}T09:00:00+01:00"
    path = place / "summary.json"
    save_summary(path, real().model_copy(update={**changes, "started_at": started}))
    age(path)
    return path


def age(path: Path, by_s: float = 100.0) -> None:
    now = path.stat().st_mtime
    os.utime(path, (now - by_s, now - by_s))


def read_all(folder: Path) -> tuple[list[SessionRow], dict[str, str]]:
    rows, unread = [], {}
    for place in find_places(folder):
        found = place if isinstance(place, Unread) else read_place(folder, place)
        if isinstance(found, SessionRow):
            rows.append(found)
        elif isinstance(found, Unread):
            unread[found.path] = found.why
    return rows, unread


def test_sessions_are_found_however_the_folder_is_laid_out(tmp_path: Path) -> None:
    write(tmp_path, "a")
    write(tmp_path, "clinic/P-2/2026/b", "P-2")
    save_summary(tmp_path / "clinic" / "alone.json", real())
    rows, unread = read_all(tmp_path)
    assert {r.place for r in rows} == {
        "a/summary.json",
        "clinic/P-2/2026/b/summary.json",
        "clinic/alone.json",
    }
    assert unread == {}


class LaterSummary(Summary):
    """As a later version has it."""

    asked_later: bool = False


def test_a_lone_check_keeps_its_id_when_a_field_is_added() -> None:
    """By it the desk's marks and what was sent know it; what it says changes it."""
    held = real().model_dump()
    later = LaterSummary.model_validate(held)
    assert content_id(later) == content_id(real())
    assert content_id(later.model_copy(update={"asked_later": True})) != content_id(later)
    assert content_id(real().model_copy(update={"duration_s": 1.5})) != content_id(real())


def test_hidden_files_and_links_to_folders_are_passed_over(tmp_path: Path) -> None:
    path = write(tmp_path, "a")
    (tmp_path / ".summary.json.x7").write_text("{")
    write(tmp_path, ".trash/b")
    (tmp_path / "loop").symlink_to(tmp_path, target_is_directory=True)
    assert [r.place for r in read_all(tmp_path)[0]] == ["a/summary.json"]
    assert path.exists()


def spoil_cut(path: Path) -> None:
    path.write_bytes(path.read_bytes()[:-300])


def spoil_newer(path: Path) -> None:
    path.write_text(json.dumps({**json.loads(path.read_text()), "format_version": 99}))


def spoil_foreign(path: Path) -> None:
    path.write_text('{"summary": "of something else"}')


def spoil_empty(path: Path) -> None:
    path.write_bytes(b"")


def spoil_bytes(path: Path) -> None:
    path.write_bytes(bytes(range(256)) * 20)


def spoil_deep(path: Path) -> None:
    path.write_text("[" * 100_000)


def spoil_gone(path: Path) -> None:
    path.unlink()
    path.symlink_to("nowhere.json")


@pytest.mark.parametrize(
    ("spoil", "says"),
    [
        (spoil_cut, "not a whole JSON file"),
        (spoil_newer, "newer version"),
        (spoil_foreign, "not a usable summary"),
        (spoil_empty, "not a whole JSON file"),
        (spoil_bytes, "not a whole JSON file"),
        (spoil_deep, "not a whole JSON file"),
        (spoil_gone, "can't be read"),
    ],
)
def test_one_that_can_not_be_read_says_why_and_stops_nothing(
    tmp_path: Path, spoil: object, says: str
) -> None:
    for name in ("a", "b", "c"):
        write(tmp_path, name)
    spoil(tmp_path / "b" / "summary.json")  # type: ignore[operator]
    rows, unread = read_all(tmp_path)
    assert [r.session_id for r in rows] == ["a", "c"]
    assert list(unread) == ["b/summary.json"] and says in unread["b/summary.json"]
    assert str(tmp_path) not in unread["b/summary.json"]


def test_other_files_are_told_apart(tmp_path: Path) -> None:
    (tmp_path / "plan.json").write_text(TEXT)
    (tmp_path / "answers.json").write_text('{"format": "turnpost-answers"}')
    (tmp_path / "clip.stage.json").write_text('{"steps": []}')
    (tmp_path / "shopping.json").write_text('["milk"]')
    (tmp_path / "half.json").write_text('{"format": "turnp')
    (tmp_path / "picture.png").write_bytes(b"\x89PNG")
    rows, unread = read_all(tmp_path)
    assert rows == []
    assert unread == {
        "half.json": "is not a whole JSON file; is it still being copied?",
        "shopping.json": "is no file of this program",
    }


def test_a_session_that_broke_off_is_shown_as_such_and_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "a" / "journal.jsonl"
    about = SessionInfo(session_id="a", person="P-1", started_at="2026-03-02T09:00:00+01:00")
    with FileJournal(path) as journal:
        engine = Engine(journal, about=about)
        for step in steps():
            engine.begin(step)
        for sample in turns_samples(to_s=13.2):
            engine.feed(sample)
    rows, unread = read_all(tmp_path)
    assert rows == [] and "being written" in unread["a/journal.jsonl"]
    # Where the clock was set back, what was written before lies ahead of it.
    age(path, by_s=-86_400.0)
    ((ahead,), unread) = read_all(tmp_path)
    assert unread == {} and ahead.ended == "interrupted"
    age(path, by_s=86_400.0 + 100.0)
    ((row,), unread) = read_all(tmp_path)
    assert unread == {} and row.ended == "interrupted" and row.person == "P-1"
    assert row.sets[0].figures["repetitions"] == 5.0
    assert [p.name for p in path.parent.iterdir()] == ["journal.jsonl"]


def test_a_folder_that_is_not_there_is_a_wrong_call(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="no such folder"):
        list(find_places(tmp_path / "nowhere"))


def test_a_row_holds_what_the_summary_says_and_no_0_for_what_is_missing() -> None:
    summary = real()
    row = row_of(summary, "a/summary.json")
    exercise, found = summary.exercises[0], row.sets[0]
    assert exercise.head is not None and exercise.gaze is not None
    amplitude = exercise.head["amplitude_deg"]
    assert found.figures["amplitude_deg"] == amplitude["median"]
    assert found.figures["amplitude_deg.left"] == amplitude["by_side"]["left"]["median"]
    assert found.figures["on_target"] == exercise.gaze["on_target_fraction"]["value"]
    assert found.figures["repetitions"] == exercise.done.repetitions
    assert found.figures["clear"] is None and found.figures["dizziness_after"] is None
    assert row.before is None and row.settled_minutes is None and not row.not_settled
    assert found.asked["amplitude_deg"] == [15.0, 20.0]


def test_a_row_is_the_same_after_the_index() -> None:
    row = row_of(real(), "a/summary.json")
    shapes: Shapes = {}
    packed = json.loads(json.dumps(pack(row, shapes)))
    assert unpack(row.place, packed, list(shapes)) == row


def test_a_head_shake_makes_another_form_of_an_exercise() -> None:
    asked = [
        s.model_copy(update={"head_shake": True}) if s.step == "exercise" else s
        for s in steps(to_s=14.0)
    ]
    shaken = summarise(run_samples(turns_samples(to_s=14.0), asked, SessionInfo()))
    assert shaken.exercises[0].prescribed["head_shake"] is True
    assert row_of(shaken, "a").sets[0].form == "head shake"
    assert row_of(real(), "a").sets[0].form == ""


@pytest.mark.parametrize(
    ("started", "day", "place"),
    [
        (None, None, 0),
        ("soon", None, 0),
        ("2026-02-30T09:00:00", None, 0),
        ("2026-03-01 at nine", "2026-03-01", 1),
        ("2026-03-02T09:00:00+01:00", "2026-03-02", 2),
    ],
)
def test_a_session_without_a_time_that_can_be_read_comes_first(
    started: str | None, day: str | None, place: int
) -> None:
    found = row(started_at=started)
    assert (None if found.day is None else found.day.isoformat()) == day
    others = [row(-40, started_at="2025-12-01T09:00:00Z"), row(0, hour=8)]
    before = [other.order < found.order for other in others]
    assert before == [place > 0, place > 1]


def test_a_summary_put_beside_the_folders_of_others_hides_none_of_them(tmp_path: Path) -> None:
    write(tmp_path, "clinic/a")
    write(tmp_path, "clinic/P-2/b", "P-2")
    dropped = write(tmp_path, "c", "P-3").rename(tmp_path / "clinic" / "summary.json")
    # Beside a session's own files, which are no sessions by themselves.
    save_summary(dropped.parent / "a" / "summary (1).json", real())
    (dropped.parent / "a" / "stage.json").write_text('{"steps": []}')
    rows, unread = read_all(tmp_path / "clinic")
    assert {r.place for r in rows} == {
        *("summary.json", "a/summary.json", "a/summary (1).json", "P-2/b/summary.json"),
    }
    assert unread == {}


def test_what_was_handed_over_and_is_still_shut_is_said(tmp_path: Path) -> None:
    _, public = pair()
    for name, content in (
        ("P-07/from-mail.age", crypt.encrypt(container.MAGIC, [public])),
        ("plain.turnpost", container.MAGIC + b"..."),
        ("of something else.turnpost", b"what?"),
        # A key of the clinic (C2SP, age.md, "The scrypt recipient type").
        ("clinic-key.age", b"age-encryption.org/v1\n-> scrypt bBjlhJVYZeE4aqUdmtRHfw 18\n"),
    ):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_bytes(content)
    rows, unread = read_all(tmp_path)
    assert rows == [] and set(unread) == {"P-07/from-mail.age", "plain.turnpost"}
    assert all("take it in" in why for why in unread.values())
