"""The file of the cameras: what can't be read now, or not by this version, is not written over."""

from __future__ import annotations

import errno
import json
import os
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from tests.stored import made
from tests.stored.made import MARK
from tracker.errors import InputError, RunError
from tracker.lens import Lens
from ui import camera_file, wiring
from ui.setup.lens_store import keep_lens, keep_mark, load_lens, load_mark

ONE, OTHER = Lens(50.0, "paper", 1.0, 1.33), Lens(60.0, "paper", 1.0, 1.33)


def refused(path: Path, most: int) -> bytes:
    """A disk that gives nothing."""
    raise OSError(errno.EIO, os.strerror(errno.EIO))


def test_a_fault_of_the_disk_costs_no_lens(
    private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep_lens("aaaaaaaaaaaa", ONE)

    with monkeypatch.context() as patched:
        patched.setattr(camera_file, "read_bytes", refused)
        with pytest.raises(RunError, match="the disk has a fault"):
            keep_lens("bbbbbbbbbbbb", OTHER)
    assert load_lens("aaaaaaaaaaaa") == ONE
    keep_lens("bbbbbbbbbbbb", OTHER)
    assert (load_lens("aaaaaaaaaaaa"), load_lens("bbbbbbbbbbbb")) == (ONE, OTHER)


def test_a_fault_in_passing_costs_none_either(
    private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Only the first reading fails: nothing may be taken from it for what is written."""
    keep_lens("aaaaaaaaaaaa", ONE)
    real, left = camera_file.read_bytes, [refused]

    def refused_once(path: Path, most: int) -> bytes:
        return left.pop()(path, most) if left else real(path, most)

    with monkeypatch.context() as patched:
        patched.setattr(camera_file, "read_bytes", refused_once)
        with pytest.raises(RunError, match="the disk has a fault"):
            keep_lens("bbbbbbbbbbbb", OTHER)
    assert load_lens("aaaaaaaaaaaa") == ONE


def test_what_can_not_be_looked_at_does_not_count_as_deleted(
    private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep_mark("k", MARK)

    with monkeypatch.context() as patched:
        patched.setattr(camera_file, "read_bytes", refused)
        with pytest.raises(RunError, match="the disk has a fault"):
            keep_mark("k", None)
    assert load_mark("k") == MARK


def test_the_file_of_a_newer_version_stays_as_it_is(private_data_folder: Path) -> None:
    keep_lens("aaaaaaaaaaaa", ONE)
    path = private_data_folder / camera_file.FILE
    newer = json.dumps(json.loads(path.read_text()) | {"format_version": 9, "more": {}})
    path.write_text(newer)
    with pytest.raises(InputError, match="newer version"):
        keep_lens("bbbbbbbbbbbb", OTHER)
    assert path.read_text() == newer


def test_a_mark_that_this_version_can_not_forget_does_not_count(private_data_folder: Path) -> None:
    keep_mark("k", MARK)
    keep_lens("aaaaaaaaaaaa", ONE)
    path = private_data_folder / camera_file.FILE
    path.write_text(json.dumps(json.loads(path.read_text()) | {"format_version": 9}))
    with pytest.raises(InputError, match="newer version"):
        keep_mark("k", None)
    assert load_mark("k") is None and load_lens("aaaaaaaaaaaa") == ONE


def test_a_mark_of_a_day_before_the_profile_was_for_another(private_data_folder: Path) -> None:
    wiring.keep_mark_of(made.CAMERA, "none", made.MARK)
    assert wiring.mark_of(made.CAMERA, "none") == made.MARK
    wiring.keep_profile(made.nobody(), made.CAMERA, "none")
    assert wiring.mark_of(made.CAMERA, "none") is None
    today = replace(made.MARK, made_on=date.today().isoformat())
    wiring.keep_mark_of(made.CAMERA, "none", today)
    assert wiring.mark_of(made.CAMERA, "none") == today


def test_a_damaged_file_keeps_nothing_from_being_written(private_data_folder: Path) -> None:
    private_data_folder.mkdir()
    (private_data_folder / camera_file.FILE).write_text('{"format": "turnpost-cam')
    keep_lens("aaaaaaaaaaaa", ONE)
    assert load_lens("aaaaaaaaaaaa") == ONE
