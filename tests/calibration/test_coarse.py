"""A film that loses the moving face is told; one that keeps it, dim or not, is not blamed."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from io import BytesIO

import av
import numpy as np
import pytest

from calibration.check import MOVING, head_reach, is_coarse, moving_samples
from calibration.fit import fit_profile
from sample_clips import shipped_clip
from tests.calibration.conftest import FOV_DEG, SHAPE
from tracker.frame import Frame
from tracker.measure import measure
from tracker.profile import Profile
from tracker.session.stage import Step, load_stage_log, setup_steps, stage_path_of
from tracker.vision.clips import open_clip
from tracker.vision.observer import Observation, Observer
from ui.bench.truth import load_truth

CLIP = shipped_clip("turns-good")
Seen = tuple[list[Observation], list[Step]]


def filmed_again(steps: list[Step], light: float, rate_factor: int) -> Iterator[Frame]:
    """The set-up of a clip in less light, filmed with a rate factor (more loses more)."""
    end_s = max(s.to_s for s in steps)
    rng = np.random.default_rng(3)
    out, times = BytesIO(), []
    with av.open(out, "w", format="mp4") as file, open_clip(CLIP) as frames:
        stream = file.add_stream("libx264", rate=Fraction(15))
        stream.pix_fmt = "yuv420p"
        stream.options = {"crf": str(rate_factor), "preset": "veryfast"}
        for frame in frames:
            if frame.time_s >= end_s:
                break
            # Half of the pictures tell the same in half the time.
            if frame.index % 2:
                continue
            if not times:
                stream.height, stream.width = frame.image.shape[:2]
            dim = frame.image * light + rng.normal(0.0, 1.5, frame.image.shape)
            picture = np.clip(dim, 0, 255).astype(np.uint8)
            file.mux(stream.encode(av.VideoFrame.from_ndarray(picture, format="bgr24")))
            times.append(frame.time_s)
        file.mux(stream.encode())
    out.seek(0)
    with av.open(out) as file:
        for number, picture in enumerate(file.decode(video=0)):
            yield Frame(number, times[number], picture.to_ndarray(format="bgr24"))


def fitted(light: float, rate_factor: int) -> tuple[Profile, Seen]:
    """Person and pictures of such a film."""
    steps = setup_steps(load_stage_log(stage_path_of(CLIP)).steps)
    observer = Observer()
    try:
        found = [observer.observe(f) for f in filmed_again(steps, light, rate_factor)]
    finally:
        observer.close()
    return fit_profile(found, steps, SHAPE, FOV_DEG)[0], (found, steps)


def off_in_yaw_deg(person: Profile, seen: Seen) -> float:
    """Mean error of the head's yaw in the slow turn of the set-up."""
    truth = load_truth(CLIP).columns
    turn = next(s for s in seen[1] if s.step == "turn_slowly")
    during = [o for o in seen[0] if turn.from_s <= o.time_s < turn.to_s]
    read = np.array([measure(o, person).head_yaw_deg for o in during])
    true = np.interp([o.time_s for o in during], truth["time_s"], truth["head_yaw_deg"])
    return float(np.nanmean(np.abs(read - true)))


def test_the_film_as_it_is_is_not_blamed(person: Profile, seen: Seen) -> None:
    assert not is_coarse(moving_samples(person, *seen))


@pytest.mark.slow
def test_a_dim_film_that_loses_little_is_not_blamed() -> None:
    dim, seen = fitted(0.4, 18)
    assert not is_coarse(moving_samples(dim, *seen))


def test_a_dim_film_of_few_bits_is_told_and_is_worse(person: Profile, seen: Seen) -> None:
    coarse, seen_coarsely = fitted(0.4, 33)
    assert is_coarse(moving_samples(coarse, *seen_coarsely))
    assert off_in_yaw_deg(coarse, seen_coarsely) > 2.0 * off_in_yaw_deg(person, seen)


@pytest.mark.parametrize("none_of", [MOVING, ("rest", "look", *MOVING)])
def test_without_a_movement_nothing_is_said(
    person: Profile, seen: Seen, none_of: tuple[str, ...]
) -> None:
    observations, steps = seen
    left = [s for s in steps if s.step not in none_of]
    assert not is_coarse(moving_samples(person, observations, left))
    reach = head_reach(moving_samples(person, observations, left))
    assert np.isnan([reach.right, reach.left, reach.up, reach.down]).all()
