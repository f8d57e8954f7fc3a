"""``turnpost bench speed``: the windowless pipeline against decoding and landmarks alone."""

from __future__ import annotations

import time
from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path

from tracker.session.stage import load_stage_log, setup_steps, stage_path_of

#: Frames in a stretch; the two ways take turns, so that a slow spell hits both.
STRETCH = 60


def speed_table(clip: Path) -> Iterable[str]:
    """Lines of the table for a clip with a set-up.

    All ways run over the same frames in the same process, in turns; the set-up's
    fit is timed apart, since it happens once.
    """
    from calibration.measurer import Measurer, make_measurer
    from tracker.vision.clips import open_clip
    from tracker.vision.landmarks import LandmarkFinder

    stage = load_stage_log(stage_path_of(clip))
    steps = setup_steps(stage.steps)
    end_s = max(s.to_s for s in steps)
    measurer = make_measurer(vertical_fov_deg=stage.camera.vertical_fov_deg)
    alone_s = head_s = full_s = decode_s = 0.0
    counted = 0
    with open_clip(clip) as frames, LandmarkFinder() as finder:
        source = iter(frames)
        for frame in source:
            measurer.take(frame)
            if frame.time_s >= end_s:
                break
        began = time.perf_counter()
        measurer.fit(steps)
        fit_s = time.perf_counter() - began
        assert measurer.profile is not None
        without = Measurer(profile=replace(measurer.profile, gaze=None))
        while True:
            began = time.perf_counter()
            stretch = [f for f, _ in zip(source, range(STRETCH), strict=False)]
            decode_s += time.perf_counter() - began
            if not stretch:
                break
            began = time.perf_counter()
            for frame in stretch:
                finder.find(frame.image, frame.time_s)
            alone_s += time.perf_counter() - began
            began = time.perf_counter()
            for frame in stretch:
                without.take(frame)
            head_s += time.perf_counter() - began
            began = time.perf_counter()
            for frame in stretch:
                measurer.take(frame)
            full_s += time.perf_counter() - began
            counted += len(stretch)
    measurer.close()
    without.close()
    per = 1000.0 / max(counted, 1)
    yield f"{clip.stem}, {counted} frames, one process"
    yield f"decoding                      {decode_s * per:7.2f} ms a frame"
    yield f"landmarks alone               {alone_s * per:7.2f} ms a frame"
    yield f"landmarks and head            {head_s * per:7.2f} ms a frame"
    yield f"landmarks, head and gaze      {full_s * per:7.2f} ms a frame"
    library_s = decode_s + alone_s
    yield f"without gaze / (decode + landmarks) {(decode_s + head_s) / library_s:6.2f}"
    yield f"with gaze    / (decode + landmarks) {(decode_s + full_s) / library_s:6.2f}"
    yield f"fit of the set-up, once       {fit_s:7.2f} s"
