"""Scenario in, clip with its truth out."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from sample_clips.bodies import make_body
from sample_clips.body_score import BODY_KINDS
from sample_clips.heads import Attitude, Head, make_head
from sample_clips.people import HEADS, RANDOM, find_head
from sample_clips.scenario import Scenario, ScenarioError, load_scenario
from sample_clips.scene import CameraPlace, Scene
from sample_clips.score import Score
from sample_clips.truth import truth_row, write_truth

Picture = NDArray[np.uint8]
#: Share of the time between two frames in which the shutter is open.
SHUTTER = 0.5


def make_score(scenario: Scenario) -> Score:
    """The worked-out scenario; raises ScenarioError for an unknown head."""
    for name in (scenario.head, scenario.neighbour):
        try:
            find_head(name or scenario.head)
        except KeyError:
            known = f"{', '.join(HEADS)} and {RANDOM}NUMBER"
            raise ScenarioError(f"head: no head is called {name!r}; there are {known}") from None
    has_body = scenario.movement.kind in BODY_KINDS
    return Score(scenario, (make_body if has_body else make_head)(scenario.head))


def frames(scenario: Scenario) -> Iterator[tuple[float, Picture, dict[str, float | str]]]:
    """Time, picture (blue, green, red) and truth of each frame, without any file."""
    score = make_score(scenario)
    camera = scenario.camera
    scene = Scene(
        CameraPlace(
            camera.width_px,
            camera.height_px,
            camera.vertical_fov_deg,
            camera.position_mm,
            camera.tilt_deg,
        ),
        scenario.light_from,
        scenario.seed,
    )
    rng = np.random.default_rng(scenario.seed + 1)
    for number in range(int(score.end_s * camera.rate_hz)):
        time_s = number / camera.rate_hz
        if scenario.light_then_from is not None and time_s >= score.start_s:
            scene.light_from(scenario.light_then_from)
        exposures = [
            scene.draw(_people(score, time_s + offset))
            for offset in _moments(camera.exposures, camera.rate_hz)
        ]
        light = scenario.light * (scenario.light_change if time_s >= score.start_s else 1.0)
        lit = (exposures[0] if len(exposures) == 1 else np.mean(exposures, axis=0)) * light
        noisy = lit + rng.normal(0.0, camera.noise, lit.shape)
        yield time_s, np.clip(noisy, 0, 255).astype(np.uint8), truth_row(score, time_s)


def _moments(count: int, rate_hz: float) -> list[float]:
    """Times of the exposures around the middle of a frame."""
    return [((k + 0.5) / count - 0.5) * SHUTTER / rate_hz for k in range(count)]


def _people(score: Score, time_s: float) -> list[tuple[Head, Attitude]]:
    people: list[tuple[Head, Attitude]] = [(score.head, score.attitude(time_s))]
    if score.scenario.neighbour is not None:
        other = make_head(score.scenario.neighbour)
        ahead = np.array([[0.0, -0.05, 1.0]] * 2)
        turn = 14.0 * float(np.sin(0.5 * time_s))
        place = np.array(score.scenario.neighbour_mm)
        people.append((other, Attitude(turn, 0.0, 0.0, place, ahead / np.linalg.norm(ahead[0]))))
    return people


def render_scenario(scenario: Scenario, out: Path, quality: int = 27) -> Path:
    """Write NAME.mp4 (H.264), NAME.truth.csv, NAME.stage.json and NAME.events.json.

    Parameters
    ----------
    scenario
        What to render.
    out
        Folder, made if missing.
    quality
        The encoder's constant rate factor; larger is smaller and coarser.
    """
    import av  # only rendering needs the encoder

    out.mkdir(parents=True, exist_ok=True)
    clip = out / f"{scenario.name}.mp4"
    part = out / f".{scenario.name}.part.mp4"
    camera, rows = scenario.camera, []
    try:
        with av.open(str(part), "w") as container:
            stream = container.add_stream("libx264", rate=camera.rate_hz)
            stream.width, stream.height, stream.pix_fmt = (
                camera.width_px,
                camera.height_px,
                "yuv420p",
            )
            stream.options = {"crf": str(quality), "preset": "slow"}
            for number, (_, picture, row) in enumerate(frames(scenario)):
                frame = av.VideoFrame.from_ndarray(np.ascontiguousarray(picture), format="bgr24")
                frame.pts = number
                container.mux(stream.encode(frame))
                rows.append(row)
            container.mux(stream.encode())
        part.replace(clip)
    finally:
        part.unlink(missing_ok=True)
    write_truth(make_score(scenario), rows, clip)
    return clip


def main(arguments: list[str] | None = None) -> int:
    """``python -m sample_clips.render SCENARIO... --out DIR``."""
    parser = argparse.ArgumentParser(description="Render clips with their truth.")
    parser.add_argument("scenario", nargs="+", type=Path)
    parser.add_argument("--out", type=Path, required=True)
    parser.add_argument("--quality", type=int, default=27)
    args = parser.parse_args(arguments)
    try:
        for path in args.scenario:
            clip = render_scenario(load_scenario(path), args.out, args.quality)
            sys.stdout.write(f"{clip}\n")
    except (ScenarioError, RuntimeError, OSError) as error:
        sys.stderr.write(f"{error}\n")
        return 2
    return 0


if __name__ == "__main__":
    sys.exit(main())
