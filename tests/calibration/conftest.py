"""The set-up of a shipped clip as it was seen, and the person that was fitted to it."""

from __future__ import annotations

import pytest

from calibration.fit import fit_profile
from sample_clips import shipped_clip
from tracker.head.shape import generic_shape
from tracker.profile import Profile
from tracker.session.stage import Step, load_stage_log, setup_steps, stage_path_of
from tracker.vision.clips import open_clip
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm
from tracker.vision.observer import Observation, Observer

SHAPE = generic_shape(canonical_face_vertices_cm(), canonical_face_triangles())
FOV_DEG = load_stage_log(stage_path_of(shipped_clip("turns-good"))).camera.vertical_fov_deg


def observed(name: str, until_s: float | None = None) -> tuple[list[Observation], list[Step]]:
    """What was seen in the set-up of a shipped clip, and its steps."""
    clip = shipped_clip(name)
    steps = setup_steps(load_stage_log(stage_path_of(clip)).steps)
    end_s = until_s or max(s.to_s for s in steps)
    observer = Observer()
    found = []
    with open_clip(clip) as frames:
        for frame in frames:
            if frame.time_s >= end_s:
                break
            found.append(observer.observe(frame))
    observer.close()
    return found, steps


@pytest.fixture(scope="package")
def seen() -> tuple[list[Observation], list[Step]]:
    """The set-up of a shipped clip."""
    return observed("turns-good")


@pytest.fixture(scope="package")
def person(seen: tuple[list[Observation], list[Step]]) -> Profile:
    """The person in it."""
    observations, steps = seen
    return fit_profile(observations, steps, SHAPE, FOV_DEG)[0]
