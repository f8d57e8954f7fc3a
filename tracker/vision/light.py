"""A measurer of light alone: for a camera check where the models are missing."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.errors import InputError
from tracker.frame import Frame
from tracker.sample import Sample
from tracker.session.stage import Step


class LightMeter:
    """Measures the mean luminance of the picture, and nothing of a person."""

    def take(self, frame: Frame) -> Sample:
        """Sample with ``light`` alone."""
        # Every eighth pixel tells the light of a room well enough.
        light = float(frame.image[::8, ::8].mean()) / 255.0
        return Sample(frame.time_s, light=light, reason="no_setup")

    def fit(self, steps: Sequence[Step]) -> None:
        """Refused: there is no person in a light."""
        del steps
        raise InputError("a light meter can't be set up for a person")

    def close(self) -> None:
        """Nothing to free."""
