"""The lens page with the real measuring process, before a clip of a sheet that is held up."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
from pytestqt.qtbot import QtBot

from tests.calibration.sheets import held
from tests.ui.fakes import CAMERA, PLAN
from tracker.vision.messages import ClipSource, LazyFactory
from tracker.vision.service import Service
from tracker.vision.sheet import find_sheet
from ui import wiring
from ui.app import Window
from ui.ports import CameraChoice, ServiceLike
from ui.settings import Settings
from ui.setup.lens_work import Stage

FOV_DEG = 46.0


def clip_of_a_sheet(path: Path) -> Path:
    """Nine tilts for half a second each, the last one for two, at 30 frames/s."""
    rng = np.random.default_rng(11)
    views = [v.image for v in held(rng, FOV_DEG, 9)]
    assert sum(find_sheet(v) is not None for v in views) >= 7
    code = cv2.VideoWriter_fourcc(*"mp4v")
    writer = cv2.VideoWriter(str(path), cv2.CAP_FFMPEG, code, 30.0, (640, 480))
    for k, view in enumerate(views):
        for _ in range(15 if k < len(views) - 1 else 60):
            writer.write(view)
    writer.release()
    return path


def test_a_sheet_before_the_camera_ends_in_a_kept_lens(qtbot: QtBot, tmp_path: Path) -> None:
    clip = clip_of_a_sheet(tmp_path / "sheet.mp4")

    def watch(_camera: CameraChoice, kind: str, distance_mm: float | None) -> ServiceLike:
        arguments = {"kind": kind, "distance_mm": distance_mm}
        factory = LazyFactory("calibration.lens_watch:make_watcher", arguments)
        return Service(ClipSource(clip), factory, keep_spare=False)

    world = replace(wiring.make_world(), make_watcher=watch, cameras=lambda: [CAMERA])
    settings = Settings(tmp_path / "s.ini")
    settings.first_step = ""
    window = Window(world, clip=None, demo_clip=lambda: PLAN, settings=settings)
    qtbot.addWidget(window)
    window.show()
    window.director.open_tools()
    window.director.open_lens()
    window.pages["lens"].begin.click()  # type: ignore[attr-defined]
    work = window.director.lens
    qtbot.waitUntil(lambda: work.stage == Stage.done, timeout=60_000)
    lens = wiring.lens_of_camera(CAMERA)
    assert lens.source == "paper" and lens.error_deg is not None
    assert abs(lens.vertical_fov_deg - FOV_DEG) < min(lens.error_deg, 0.7)
    assert not work.watching
    window.close()
