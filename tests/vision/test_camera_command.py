"""``turnpost camera``: what is said of a camera that works, and of each that doesn't."""

from __future__ import annotations

import argparse
import errno
import os
from typing import Any

import pytest

from tests.vision.fakes import EndlessSource
from tracker.errors import RunError
from tracker.sample import Sample
from tracker.vision import cameras
from tracker.vision.messages import CameraSource, LazyFactory, SourceState, SourceStats
from tracker.vision.service import Service
from ui.commands import camera as command
from ui.commands.camera import TO_DO, Trial, lines, try_camera

WEBCAM = CameraSource(0, "Webcam")
STATS = SourceStats(1280, 720, 29.7, 100, 0)


def trial(*samples: Sample, note: str = "") -> Trial:
    return Trial(WEBCAM, SourceState.running, "", STATS, samples, note)


def test_a_camera_that_works() -> None:
    said = lines(trial(*[Sample(k / 30, light=0.4, face_height_px=260) for k in range(9)]))
    assert said == [
        "0: Webcam",
        "   picture      1280 x 720 px",
        "   frame rate   29.7 a second, measured (asked: 30)",
        "   light        0.40 of 1",
        "   face         260 px high, 36% of the picture",
    ]


def test_dark_far_and_nobody() -> None:
    assert any("too dark" in s for s in lines(trial(Sample(0, light=0.1))))
    assert any("none seen" in s for s in lines(trial(Sample(0, light=0.5))))
    assert any("come closer" in s for s in lines(trial(Sample(0, face_height_px=90))))


@pytest.mark.parametrize("state", list(TO_DO))
def test_each_failing_state_is_one_line_with_what_to_do(state: SourceState) -> None:
    (line,) = lines(Trial(WEBCAM, state, "Webcam is in trouble", SourceStats(), []))
    assert line == f"0: Webcam: Webcam is in trouble; {TO_DO[state]}"


def test_too_little_memory_for_pictures_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object, **_more: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), "/turnpost-1")

    monkeypatch.setattr("tracker.vision.blocks.SharedMemory", full)
    with pytest.raises(RunError, match="too little memory for pictures"):
        try_camera(WEBCAM, 0.5)


def test_light_alone_where_the_models_are_missing() -> None:
    def make(_: CameraSource, measurer: Any) -> Service:
        if measurer.target.startswith("calibration"):
            measurer = LazyFactory("tests.vision.fakes:make_without_models")
        return Service(EndlessSource(width=320, height=240), measurer, keep_spare=False)

    found = try_camera(WEBCAM, 0.5, make)
    said = "\n".join(lines(found))
    assert "320 x 240 px" in said and "50.0 a second" in said
    assert "face         not measured: the model file for the face is missing" in said


def test_no_camera_at_all(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(cameras, "list_cameras", list)
    with pytest.raises(RunError, match="no camera was found; plug one in"):
        command.run(argparse.Namespace(index=None, seconds=1.0))
