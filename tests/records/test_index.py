"""The index: nothing is read twice, nothing is written into the folder, and none is needed."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest

from tests.plan.examples import TEXT
from tests.records.test_folder import age, write
from tracker.errors import InputError
from tracker.handover import container
from tracker.records import index as index_module
from tracker.records.index import Records, cache_folder, index_path, read_folder


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    home = tmp_path / "clinic"
    for k in range(4):
        write(home, f"s{k}", day=f"2026-03-0{k + 2}")
    return home


def listing(folder: Path) -> dict[str, tuple[int, int]]:
    found = sorted(p for p in folder.rglob("*"))
    return {str(p): (p.stat().st_size, p.stat().st_mtime_ns) for p in found}


def ids(records: Records) -> list[str | None]:
    return [r.session_id for r in records.rows]


def test_what_is_unchanged_is_not_read_again(folder: Path) -> None:
    first, second = read_folder(folder), read_folder(folder)
    assert (first.read, first.kept) == (4, 0)
    assert (second.read, second.kept) == (0, 4)
    assert second.rows == first.rows and second.fingerprint == first.fingerprint
    assert ids(second) == ["s0", "s1", "s2", "s3"]


def test_what_has_changed_is_and_what_is_gone_is_gone(folder: Path) -> None:
    read_folder(folder)
    changed = folder / "s1" / "summary.json"
    changed.write_text(changed.read_text().replace('"finished"', '"stopped"'))
    age(changed, 50)
    (folder / "s2" / "summary.json").unlink()
    write(folder, "s9", day="2026-03-01")
    found = read_folder(folder)
    assert found.read == 2 and ids(found) == ["s9", "s0", "s1", "s3"]
    assert [r.ended for r in found.rows] == ["finished", "finished", "stopped", "finished"]
    assert "s2/summary.json" not in json.loads(index_path(folder).read_text())["files"]


def test_other_figures_in_the_same_place_are_news(folder: Path) -> None:
    first = read_folder(folder)
    changed = folder / "s1" / "summary.json"
    data = json.loads(changed.read_text())
    data["symptoms"] = {**(data.get("symptoms") or {}), "after": 9}
    changed.write_text(json.dumps(data))
    age(changed, 50)
    second = read_folder(folder)
    assert [r.ended for r in second.rows] == [r.ended for r in first.rows]
    assert second.fingerprint != first.fingerprint


def test_a_file_that_was_just_written_is_not_trusted_to_stay(folder: Path) -> None:
    path = folder / "s1" / "summary.json"
    now = path.stat().st_mtime_ns + 100_000_000_000
    os.utime(path, ns=(now, now))
    read_folder(folder)
    path.write_text(path.read_text().replace('"finished"', '"possible"'[:10]))
    os.utime(path, ns=(now, now))
    # Same size, same time stamp, other content.
    assert read_folder(folder).read == 1


def test_nothing_is_written_into_the_folder(folder: Path) -> None:
    before = listing(folder)
    read_folder(folder)
    assert listing(folder) == before
    assert index_path(folder).is_file() and index_path(folder).is_relative_to(cache_folder())
    assert index_path(folder).stat().st_mode & 0o077 == 0


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"{",
        b"[]",
        b"\xff\xfe",
        b'{"format": "turnpost-review-index", "format_version": 99, "files": {}}',
        b'{"format": "turnpost-review-index", "format_version": 2, "files": {"a": 3}}',
    ],
)
def test_a_broken_index_is_made_anew(folder: Path, content: bytes) -> None:
    good = read_folder(folder)
    index_path(folder).write_bytes(content)
    found = read_folder(folder)
    assert found.read == 4 and found.rows == good.rows
    assert read_folder(folder).read == 0


def test_single_rows_that_do_not_fit_are_read_again(folder: Path) -> None:
    good = read_folder(folder)
    data = json.loads(index_path(folder).read_text())
    del data["files"]["s1/summary.json"][3][4]
    data["files"]["s2/summary.json"][2] = "something"
    data["files"]["s3/summary.json"] = []
    del data["crc32"]
    index_path(folder).write_bytes(index_module._summed(json.dumps(data).encode()))
    found = read_folder(folder)
    assert found.read == 3 and found.rows == good.rows


def test_a_figure_that_the_disk_has_changed_is_read_again(folder: Path) -> None:
    good = read_folder(folder)
    content = index_path(folder).read_bytes()
    at = content.index(b"amplitude_deg")
    for k in range(at, at + 400):
        if content[k : k + 1].isdigit():
            index_path(folder).write_bytes(
                content[:k] + b"%d" % (9 - content[k] % 10) + content[k + 1 :]
            )
            found = read_folder(folder)
            assert found.read == 4 and found.rows == good.rows
            break
    else:
        pytest.fail("there is no figure to change")


def test_the_index_of_another_folder_is_not_taken(folder: Path, tmp_path: Path) -> None:
    read_folder(folder)
    moved = folder.rename(tmp_path / "moved")
    assert index_path(moved) != index_path(folder)
    index_path(moved).write_bytes(index_path(folder).read_bytes())
    assert read_folder(moved).read == 4


def test_without_a_place_for_the_index_all_is_read_each_time(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("TURNPOST_CACHE", str(tmp_path / "file"))
    assert read_folder(folder).read == read_folder(folder).read == 4


def test_reading_can_be_stopped_and_goes_on_where_it_was(folder: Path) -> None:
    told: list[tuple[int, int]] = []
    part = read_folder(folder, progress=lambda *at: told.append(at), stopped=lambda: len(told) >= 2)
    assert not part.complete and ids(part) == ["s0", "s1"] and told[:2] == [(1, 4), (2, 4)]
    rest = read_folder(folder)
    assert rest.complete and (rest.read, rest.kept) == (2, 2) and len(rest.rows) == 4


def test_a_second_copy_of_a_session_counts_once_and_is_named(folder: Path) -> None:
    copy = folder / "backup" / "s1"
    copy.mkdir(parents=True)
    (copy / "summary.json").write_bytes((folder / "s1" / "summary.json").read_bytes())
    found = read_folder(folder)
    assert len(found.rows) == 4
    (twice,) = found.unread
    assert "second copy" in twice.why and "s1" in twice.path


def test_a_session_is_told_by_its_id_and_not_by_the_name_of_its_file(folder: Path) -> None:
    """Of copies the one counts that has a trace; the others are named, and stay where they are."""
    whole = folder / "s1" / "summary.json"
    for k, name in enumerate(("a.json", "name (1).summary.json", "s0/summary (1).json")):
        data = json.loads(whole.read_text()) | ({"duration_s": 1.0} if k else {})
        (folder / name).write_text(json.dumps(data))
        age(folder / name)
    copied = write(folder, "copied/s1")
    copied.write_bytes(whole.read_bytes())
    (whole.parent / "trace.csv").write_text("")
    found = read_folder(folder)
    assert len(found.rows) == 4 and "s1/summary.json" in [r.place for r in found.rows]
    assert {u.path: u.why.partition(",")[0] for u in found.unread} == {
        "a.json": "is a second copy of s1/summary.json",
        "copied/s1/summary.json": "is a second copy of s1/summary.json",
        "name (1).summary.json": "is the same session as s1/summary.json with other content",
        "s0/summary (1).json": "is the same session as s1/summary.json with other content",
    }
    # Without a trace anywhere a session's own folder goes before a file alone.
    (whole.parent / "trace.csv").unlink()
    assert "s1/summary.json" in [r.place for r in read_folder(folder).rows]


def test_a_lone_check_without_an_id_is_told_by_its_content(folder: Path) -> None:
    data = json.loads((folder / "s1" / "summary.json").read_text())
    for name, changes in (
        ("check.summary.json", {}),
        ("check (1).summary.json", {}),
        ("other.json", {"duration_s": 1.0}),
    ):
        found = {**data, "session_id": None, "started_at": None, **changes}
        (folder / name).write_text(json.dumps(found))
        age(folder / name)
    # Files of patients stand last.
    (folder / "an archive.turnpost").write_bytes(container.MAGIC)
    for _ in range(2):
        records = read_folder(folder)
        assert len(records.rows) == 4 + 2
        # Not the first one, whose name notes may know.
        assert [u.path for u in records.unread] == [
            "check (1).summary.json",
            "an archive.turnpost",
        ]


def test_plans_are_found_and_a_wrong_one_is_named(folder: Path) -> None:
    (folder / "plan.json").write_text(TEXT)
    (folder / "wrong.json").write_text(TEXT.replace('"repetitions": 12', '"repetitions": 0'))
    for _ in range(2):
        found = read_folder(folder)
        assert [(place, plan.plan_id) for place, plan in found.plans] == [("plan.json", "plan-7")]
        assert [u.path for u in found.unread] == ["wrong.json"]
        assert "repetitions" in found.unread[0].why


def test_a_file_that_surprises_the_reader_stops_nothing(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from tracker.records import folder as folder_module

    def surprise(summary: object, place: str) -> object:
        if place.startswith("s1"):
            raise KeyError("something nobody thought of")
        return real(summary, place)

    real = folder_module.row_of
    monkeypatch.setattr(folder_module, "row_of", surprise)
    found = read_folder(folder)
    assert ids(found) == ["s0", "s2", "s3"]
    assert [u.why for u in found.unread] == ["holds what is not understood (KeyError)"]


def test_a_file_that_the_disk_refuses_once_is_tried_again(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from tracker.records import folder as folder_module

    def refuse(path: Path) -> object:
        raise InputError(f"{path}: can't be read (Input/output error)")

    with monkeypatch.context() as once:
        once.setattr(folder_module, "load_summary", refuse)
        assert len(read_folder(folder).unread) == 4
    assert ids(read_folder(folder)) == ["s0", "s1", "s2", "s3"]


def test_without_a_folder_named_it_lies_in_the_users_cache(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("TURNPOST_CACHE")
    # As freedesktop.org's base directories have it; asked on Linux alone.
    monkeypatch.setattr("sys.platform", "linux")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "caches"))
    assert cache_folder() == tmp_path / "caches" / "turnpost"


def test_a_folder_below_that_can_not_be_looked_into_stops_nothing(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = os.scandir

    def locked(path: str) -> object:
        if str(path).endswith("s1"):
            raise PermissionError(13, "Permission denied")
        return real(path)

    # Stands in for a folder of somebody else's: tests may run as one who may read all.
    monkeypatch.setattr("os.scandir", locked)
    found = read_folder(folder)
    assert ids(found) == ["s0", "s2", "s3"]
    assert [(u.path, u.why) for u in found.unread] == [
        ("s1", "the folder can't be read (this account has no right to it)")
    ]


def test_a_folder_that_can_not_be_looked_into_is_refused(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def locked(path: str) -> object:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("os.scandir", locked)
    with pytest.raises(
        InputError, match=r"clinic: can't be read \(this account has no right to it\)"
    ):
        read_folder(folder)


def test_a_folder_that_goes_away_while_it_is_read_keeps_its_index(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    read_folder(folder)
    kept = index_path(folder).read_bytes()

    def gone(folder: Path) -> list[object]:
        folder.rename(folder.with_name("elsewhere"))
        return []

    monkeypatch.setattr(index_module, "find_places", gone)
    with pytest.raises(InputError, match="no such folder"):
        read_folder(folder)
    assert index_path(folder).read_bytes() == kept


def test_what_was_known_of_later_files_is_kept_when_reading_is_stopped(folder: Path) -> None:
    read_folder(folder)
    age(folder / "s0" / "summary.json", 50)
    assert not read_folder(folder, stopped=lambda: True).complete
    again = read_folder(folder)
    assert again.complete and again.read == 1 and ids(again) == ["s0", "s1", "s2", "s3"]


def test_a_plan_that_was_spoilt_since_is_said(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (folder / "plan.json").write_text(TEXT)
    age(folder / "plan.json")
    assert [path for path, _ in read_folder(folder).plans] == ["plan.json"]

    def spoilt(path: Path) -> object:
        raise InputError(f"{path}: is not a whole JSON file")

    monkeypatch.setattr(index_module, "load_plan", spoilt)
    found = read_folder(folder)
    assert found.plans == [] and len(found.rows) == 4
    assert [(u.path, u.why) for u in found.unread] == [("plan.json", "is not a whole JSON file")]
