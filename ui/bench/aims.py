"""What the accuracy statement aims at, row by row, and for which clips it holds.

The figures are the project's own aims, not a standard's: what a therapist can act on.
They are meant for 50 to 75 cm, 30 pictures a second and more, no glasses, and a film that
loses little, as pictures from a camera do: a strongly compressed film of a dim face keeps
old skin in its place while the head turns, and shows the turn too small.
"""

from __future__ import annotations

from collections.abc import Sequence

from sample_clips.matrix import FINE, STANDING, Drawn
from tracker.motion.speed import LOOK_AHEAD_S

#: Distances in millimetres between which the aims hold.
NEAREST_MM, FARTHEST_MM = 500.0, 750.0
#: Pictures a second from which they hold.
SLOWEST_HZ = 30.0

#: Largest value of a row's figure. Degrees unless the name says otherwise.
_AIMS = {
    "head yaw": 0.45,
    "head pitch": 0.5,
    "head roll": 0.25,
    "head yaw, slope off 1": 0.02,
    "head pitch, slope off 1": 0.04,
    "eye yaw, head still": 0.8,
    "eye pitch, head still": 0.9,
    "eye yaw for each degree of head yaw": 0.05,
    "gaze yaw while turning": 1.1,
    "gaze pitch while nodding": 1.0,
    "gaze yaw while turning, eyes that lag": 1.8,
    "gaze pitch while turning, eyes that lag": 1.8,
    "gaze yaw while turning, lids lower": 1.5,
    "gaze pitch while turning, lids lower": 1.5,
    "gaze yaw while turning, light changed": 1.5,
    "gaze pitch while turning, light changed": 1.5,
    "glance away, %": 25.0,
    "counter-turn ratio while turning": 0.05,
    "counter-turn ratio while nodding": 0.05,
    "counter-turn ratio while turning, eyes that lag": 0.05,
    "amplitude in yaw, %": 3.0,
    "amplitude in pitch, %": 5.0,
    "peak speed in yaw, %": 4.0,
    "peak speed in pitch, %": 6.0,
    "neck point, head moves in yaw, mm": 5.0,
    "head's speed late or early by, ms": 1000.0 * LOOK_AHEAD_S,
    "vergence change, %": 25.0,
    "vergence, wrong ways": 0.0,
}
#: Stricter where the picture has 720 lines.
_FINE_PICTURE = {"gaze yaw while turning": 0.9}
#: Of somebody who stands, and how far away at most.
_STANDING_AIMS = {
    "head yaw": 0.5,
    "not measured, % of the frames": 1.0,
    "neck point, head moves in yaw, mm": 5.0,
}
STANDING_AT_MM = 900.0
#: Movements a second between which a row is aimed at.
_TEMPO_HZ = {
    "counter-turn ratio while turning": (0.5, 1.5),
    "counter-turn ratio while nodding": (0.5, 1.5),
    "counter-turn ratio while turning, eyes that lag": (0.5, 1.5),
    "peak speed in yaw, %": (0.5, 2.0),
    "peak speed in pitch, %": (0.5, 2.0),
}
#: Where there are fewer pictures than ``SLOWEST_HZ``: from so many on, up to so many
#: movements a second.
SLOW_FILM_HZ, SLOW_FILM_TEMPO_HZ = 15.0, 1.0
_SLOW_FILM = {"peak speed in yaw, %": 8.0, "peak speed in pitch, %": 8.0}
#: Least amplitude for a row, in degrees.
_FROM_DEG = {"amplitude in yaw, %": 15.0, "amplitude in pitch, %": 10.0}


def said_of(lot: Sequence[Drawn]) -> str:
    """For which clips of a lot something is aimed at, in a sentence for the table."""
    if any(one.kind == STANDING for one in lot):
        near = f"{STANDING_AT_MM / 10:g} cm"
        return f"Where something is aimed at (at {near}, 720 lines, 55 degrees of height)"
    return (
        f"Where something is aimed at ({NEAREST_MM / 10:g} to {FARTHEST_MM / 10:g} cm, "
        f"{SLOWEST_HZ:g} pictures a second and more, no glasses, fine films)"
    )


def is_within(one: Drawn) -> bool:
    """Whether a clip's conditions are those that the aims are meant for."""
    return _is_plain(one) and one.scenario.camera.rate_hz >= SLOWEST_HZ


def _is_plain(one: Drawn) -> bool:
    """The same, whatever the pictures a second."""
    at_mm = one.scenario.camera.position_mm[2]
    glasses, quality = one.scenario.glasses, one.quality
    return NEAREST_MM <= at_mm <= FARTHEST_MM and not glasses and quality == FINE


def aim_of(name: str, one: Drawn) -> float | None:
    """Largest value aimed at for a row of the table on a clip; None if there is none."""
    if one.kind == STANDING:
        there = one.scenario.camera.position_mm[2] <= STANDING_AT_MM
        return _STANDING_AIMS.get(name) if there else None
    movement, rate_hz = one.scenario.movement, one.scenario.camera.rate_hz
    if SLOW_FILM_HZ <= rate_hz < SLOWEST_HZ:
        slow = _is_plain(one) and movement.tempo_bpm / 120.0 <= SLOW_FILM_TEMPO_HZ
        return _SLOW_FILM.get(name) if slow else None
    low, high = _TEMPO_HZ.get(name, (0.0, float("inf")))
    # Two strokes of the beat are one movement there and back.
    if not is_within(one) or not low <= movement.tempo_bpm / 120.0 <= high:
        return None
    if movement.amplitude_deg < _FROM_DEG.get(name, 0.0):
        return None
    if name == "head's angle late or early by, ms":
        # Half a picture.
        return 500.0 / rate_hz
    fine = one.scenario.camera.height_px >= 720
    return _FINE_PICTURE.get(name, _AIMS.get(name)) if fine else _AIMS.get(name)
