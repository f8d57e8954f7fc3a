"""Whose face it is that is measured, as far as its likeness to the set-up tells."""

from __future__ import annotations

from math import nan

import numpy as np

from tracker.sample import Sample
from tracker.vision.observer import Observation

#: A face that was out of sight for so long and comes into view elsewhere, farther off than this
#: share of its height, may be another's (this project's own choice: a head moves less in a frame).
GONE_S, ELSEWHERE = 0.5, 0.6
#: It is the patient's once it is so much as alike as the one before was. Another head was .53 as
#: one was .95, both rendered; turned by so much at most, one's own is .8 and more.
ALIKE, AHEAD_DEG = 0.7, 25.0
#: Where the one before was less alike than this, nothing is told by it (this project's own choice).
TELLING = 0.75
#: Why a face in sight holds no measurement, where it may be another person's.
UNLIKE_THEM = frozenset({"covered", "blurred", "turned_too_far"})


class Whose:
    """Follows from picture to picture whether the face is the patient's."""

    def __init__(self) -> None:
        self._last: Observation | None = None
        self._usual = nan
        self._to_show = False

    def take(self, observation: Observation, sample: Sample) -> Sample:
        """The sample; without figures where the face that came from elsewhere is another's."""
        face = observation.face
        if face is None:
            return sample
        last, self._last = self._last, observation
        if last is not None and last.face is not None:
            off = np.linalg.norm(face.centre_px - last.face.centre_px) / last.face.height_px
            came = observation.time_s - last.time_s > GONE_S and off > ELSEWHERE
            self._to_show = self._to_show or (bool(came) and self._usual >= TELLING)
        ahead = max(abs(sample.head_yaw_deg), abs(sample.head_pitch_deg)) <= AHEAD_DEG
        if self._to_show and ahead:
            if sample.quality < ALIKE * self._usual:
                return Sample(
                    sample.time_s,
                    face_height_px=sample.face_height_px,
                    light=sample.light,
                    quality=0.0,
                    reason="covered",
                    body_seen=sample.body_seen,
                )
            self._to_show = False
        if ahead and not self._to_show:
            self._usual = sample.quality
        return sample


def may_be_theirs(sample: Sample) -> bool:
    """Whether nothing in a sample with a face says that it is another's."""
    return sample.reason not in UNLIKE_THEM
