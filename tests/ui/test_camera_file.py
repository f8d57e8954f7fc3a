"""The file of the cameras: what can't be read now, or not by this version, is not written over."""

from __future__ import annotations

import errno
import json
import os
from pathlib import Path

import pytest

from tracker.errors import InputError, RunError
from tracker.lens import Lens
from ui import camera_file
from ui.setup.lens_store import keep_lens, load_lens

ONE, OTHER = Lens(50.0, "paper", 1.0, 1.33), Lens(60.0, "paper", 1.0, 1.33)


def test_a_fault_of_the_disk_costs_no_lens(
    private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep_lens("aaaaaaaaaaaa", ONE)

    def refused(path: Path, most: int) -> bytes:
        raise OSError(errno.EIO, os.strerror(errno.EIO))

    with monkeypatch.context() as patched:
        patched.setattr(camera_file, "read_bytes", refused)
        with pytest.raises(RunError, match="the disk has a fault"):
            keep_lens("bbbbbbbbbbbb", OTHER)
    assert load_lens("aaaaaaaaaaaa") == ONE
    keep_lens("bbbbbbbbbbbb", OTHER)
    assert (load_lens("aaaaaaaaaaaa"), load_lens("bbbbbbbbbbbb")) == (ONE, OTHER)


def test_the_file_of_a_newer_version_stays_as_it_is(private_data_folder: Path) -> None:
    keep_lens("aaaaaaaaaaaa", ONE)
    path = private_data_folder / camera_file.FILE
    newer = json.dumps(json.loads(path.read_text()) | {"format_version": 9, "more": {}})
    path.write_text(newer)
    with pytest.raises(InputError, match="newer version"):
        keep_lens("bbbbbbbbbbbb", OTHER)
    assert path.read_text() == newer


def test_a_damaged_file_keeps_nothing_from_being_written(private_data_folder: Path) -> None:
    private_data_folder.mkdir()
    (private_data_folder / camera_file.FILE).write_text('{"format": "turnpost-cam')
    keep_lens("aaaaaaaaaaaa", ONE)
    assert load_lens("aaaaaaaaaaaa") == ONE
