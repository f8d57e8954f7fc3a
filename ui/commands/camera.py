"""``turnpost camera``: what each camera really gives, or why it can't be used."""

from __future__ import annotations

import argparse
import math
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

from tracker.errors import RunError
from tracker.sample import Sample
from tracker.vision.messages import (
    CameraSource,
    LazyFactory,
    Measured,
    SourceChanged,
    SourceState,
    SourceStats,
)
from ui.verdict import DARK, FAR

#: A camera that hasn't given a picture by then is left (Windows needs up to 30 s).
PATIENCE_S = 35.0
#: Not said before a camera has had so long: it may only be slow to wake.
SETTLE_S = 3.0
#: The same of one whose pictures are blank, as those of many are at first.
BLANK_S = 7.0

#: State -> what to do about it.
TO_DO = {
    SourceState.no_camera: "plug one in, or open the shutter or switch that disconnects it",
    SourceState.busy: "end the other program (a video call, a browser page), then try again",
    SourceState.perhaps_busy: (
        "end any other program that shows pictures (a video call, a browser page), allow this "
        "program to use the camera, and open its cover; then try again"
    ),
    SourceState.perhaps_forbidden: (
        "allow this program, or the terminal it runs in, to use the camera, open its cover, and "
        "end any other program that shows pictures; then try again"
    ),
    SourceState.no_permission: "allow this program, or the terminal it runs in, to use the camera",
    SourceState.unplugged: "plug it in again, in another socket if it happens often",
    SourceState.hanging: "unplug it, plug it in again, and try once more",
    SourceState.failed: "try another camera, or another program to see whether it works there",
}


@dataclass(frozen=True, slots=True)
class Trial:
    """What came of trying one camera."""

    camera: CameraSource
    state: SourceState
    detail: str
    stats: SourceStats
    samples: Sequence[Sample]
    note: str = ""


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "camera",
        help="say what the camera gives",
        description="Tries each camera for a few seconds and prints its picture size, its real "
        "frame rate, the light and the size of the face. Saves no picture. Ends with 1 if no "
        "camera can be used.",
    )
    parser.add_argument("--index", type=int, help="try this camera alone, by its number")
    parser.add_argument(
        "--seconds", type=float, default=4.0, help="how long to look (default: %(default)s)"
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Try the cameras and print a few lines on each."""
    from tracker.vision.cameras import list_cameras

    cameras = list_cameras()
    if args.index is not None:
        cameras = [c for c in cameras if c.index == args.index] or [CameraSource(args.index)]
    if not cameras:
        raise RunError(f"no camera was found; {TO_DO[SourceState.no_camera]}")
    usable = False
    for camera in cameras:
        outcome = try_camera(camera, min(max(args.seconds, 1.0), 60.0))
        usable = usable or outcome.state is SourceState.running
        for line in lines(outcome):
            print(line, flush=True)
    return 0 if usable else 1


def try_camera(
    camera: CameraSource,
    seconds: float,
    make_service: Callable[[CameraSource, Any], Any] | None = None,
) -> Trial:
    """Try a camera, with the face measured if that works, else with the light alone."""
    measurer = LazyFactory("calibration.measurer:make_measurer")
    trial = _try(camera, seconds, measurer, make_service)
    if trial.state is SourceState.failed and not trial.samples:
        light = _try(camera, seconds, LazyFactory("tracker.vision.light:LightMeter"), make_service)
        if light.state is SourceState.running:
            return Trial(camera, light.state, "", light.stats, light.samples, trial.detail)
    return trial


def _try(camera: CameraSource, seconds: float, measurer: Any, make_service: Any) -> Trial:
    from tracker.vision.service import Service

    service = (make_service or (lambda *a: Service(*a, keep_spare=False)))(camera, measurer)
    service.start()
    samples: list[Sample] = []
    state, detail = SourceState.opening, ""
    began_s = time.monotonic()
    try:
        while True:
            for message in service.poll():
                if isinstance(message, SourceChanged):
                    state, detail = message.state, message.detail
                elif isinstance(message, Measured):
                    samples.append(message.sample)
            past_s = time.monotonic() - began_s
            if samples and samples[-1].time_s - samples[0].time_s >= seconds:
                break
            if state is SourceState.failed or past_s > PATIENCE_S + seconds:
                break
            settled = state in TO_DO and state is not SourceState.hanging
            perhaps = state in (SourceState.perhaps_busy, SourceState.perhaps_forbidden)
            if settled and not samples and past_s > (BLANK_S if perhaps else SETTLE_S):
                break
            time.sleep(0.01)
        return Trial(camera, state, detail, service.stats, samples)
    finally:
        service.stop()


def lines(trial: Trial) -> list[str]:
    """What is said about one camera."""
    camera = trial.camera
    head = f"{camera.index}: {camera.name or 'camera'}"
    if trial.state is not SourceState.running or not trial.samples:
        reason = trial.detail or "it gave no picture"
        return [f"{head}: {reason}; {TO_DO.get(trial.state, TO_DO[SourceState.hanging])}"]
    stats, said = trial.stats, [head]
    said.append(f"   picture      {stats.width_px} x {stats.height_px} px")
    if math.isfinite(stats.rate_hz):
        asked = f" (asked: {camera.rate_hz:.0f})"
        said.append(f"   frame rate   {stats.rate_hz:.1f} a second, measured{asked}")
    said += _light(trial.samples)
    said += _face(trial)
    return said


def _light(samples: Sequence[Sample]) -> list[str]:
    values = sorted(s.light for s in samples if math.isfinite(s.light))
    if not values:
        return ["   light        not measured"]
    light = values[len(values) // 2]
    hint = "; too dark, turn on a lamp in front of you" if light < DARK else ""
    return [f"   light        {light:.2f} of 1{hint}"]


def _face(trial: Trial) -> list[str]:
    if trial.note:
        return [f"   face         not measured: {trial.note}"]
    values = sorted(s.face_height_px for s in trial.samples if math.isfinite(s.face_height_px))
    if len(values) < len(trial.samples) / 2:
        return ["   face         none seen; sit in front of the camera"]
    height = values[len(values) // 2]
    share = height / max(trial.stats.height_px, 1)
    hint = "; come closer" if share < FAR else ""
    return [f"   face         {height:.0f} px high, {share:.0%} of the picture{hint}"]
