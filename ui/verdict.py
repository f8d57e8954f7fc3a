"""Whether the camera sees the person well enough: one plain verdict at a time."""

from __future__ import annotations

from math import nan

from tracker.sample import Sample
from tracker.session.flags import LOW_FRAME_RATE_HZ

#: Mean luminance of the face. Below the first the sensor's noise takes over and the
#: exposure grows long; above the second the skin is near white (common practice).
DARK, BRIGHT = 0.18, 0.92
#: Height of the face as a share of the picture's: below the first it is small for the library,
#: which asks for about a fifth; above the second a turning head leaves the picture (own choice).
FAR, NEAR = 0.15, 0.6


def verdict(sample: Sample | None, picture_height_px: float, rate_hz: float = nan) -> str:
    """Key of the words: opening, no_face, dark, bright, far, near, slow or good.

    Parameters
    ----------
    picture_height_px
        Height of the camera's own pictures, in whose pixels the face is; 0 while none is
        known: then nothing is said of near or far.
    rate_hz
        Pictures a second that the camera gives, NaN while that isn't known. A slow one can be
        used, and light is mostly what it lacks, so that this is said where nothing else is.
    """
    if sample is None:
        return "opening"
    if sample.reason == "no_face" or sample.face_height_px != sample.face_height_px:
        return "dark" if sample.light < DARK else "no_face"
    if sample.light < DARK or sample.reason == "too_dark":
        return "dark"
    if sample.light > BRIGHT:
        return "bright"
    if sample.reason == "too_far":
        return "far"
    share = sample.face_height_px / picture_height_px if picture_height_px > 0.0 else nan
    if share < FAR:
        return "far"
    if share > NEAR:
        return "near"
    return "slow" if rate_hz < LOW_FRAME_RATE_HZ else "good"
