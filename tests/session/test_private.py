"""Who may read what the program keeps: nobody else, unless it was shared on purpose."""

from __future__ import annotations

import os
import stat
import sys
from pathlib import Path

import pytest

from tracker.errors import RunError
from tracker.session.files import data_folder, make_private_folder, open_data_folder
from tracker.session.journal import FileJournal

pytestmark = pytest.mark.skipif(os.name != "posix", reason="permissions of another kind there")


def mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


@pytest.fixture
def usual(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The data folder where none is named; umask as most systems have it."""
    if sys.platform != "linux":
        pytest.skip("the place is another one there")
    monkeypatch.delenv("TURNPOST_DATA")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "home" / "share"))
    return tmp_path / "home" / "share" / "turnpost"


def test_a_new_data_folder_and_those_above_it_are_its_owners_alone(usual: Path) -> None:
    assert open_data_folder() == usual
    assert [mode(p) for p in (usual, usual.parent, usual.parent.parent)] == [0o700] * 3


def test_the_sessions_are_made_for_their_owner_alone(tmp_path: Path) -> None:
    path = tmp_path / "data" / "sessions" / "a" / "journal.jsonl"
    with FileJournal(path):
        pass
    assert [mode(p) for p in list(path.parents)[:3]] == [0o700] * 3


def test_what_an_earlier_version_left_open_is_closed(usual: Path) -> None:
    (usual / "sessions").mkdir(parents=True)
    usual.chmod(0o755)
    (usual / "sessions").chmod(0o755)
    above = mode(usual.parent)
    open_data_folder()
    assert mode(usual) == mode(usual / "sessions") == 0o700 and mode(usual.parent) == above


@pytest.mark.parametrize("given", [0o2750, 0o770, 0o777, 0o1755])
def test_a_folder_that_was_shared_on_purpose_stays_so(usual: Path, given: int) -> None:
    usual.mkdir(parents=True)
    usual.chmod(given)
    open_data_folder()
    assert mode(usual) == given


def test_a_folder_that_was_named_stays_as_it_is(private_data_folder: Path) -> None:
    private_data_folder.mkdir(parents=True)
    private_data_folder.chmod(0o755)
    assert open_data_folder() == private_data_folder and mode(private_data_folder) == 0o755


def test_a_folder_that_leads_elsewhere_stays_as_it_is(usual: Path, tmp_path: Path) -> None:
    (tmp_path / "cloud").mkdir()
    (tmp_path / "cloud").chmod(0o755)
    usual.parent.mkdir(parents=True)
    usual.symlink_to(tmp_path / "cloud")
    open_data_folder()
    assert mode(tmp_path / "cloud") == 0o755


@pytest.mark.parametrize("name", ["x" * 5000, "a\0b"], ids=["long", "odd"])
def test_a_name_that_no_folder_can_have_is_said(tmp_path: Path, name: str) -> None:
    with pytest.raises(RunError, match="can't be made"):
        make_private_folder(tmp_path / name / "data")


def test_a_test_that_undoes_its_patches_is_still_kept_from_the_users_folder(
    private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TURNPOST_DATA", "elsewhere")
    monkeypatch.undo()
    assert data_folder() == private_data_folder
