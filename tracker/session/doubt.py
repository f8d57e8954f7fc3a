"""Eyes that can't be read, and yet are surely above or below the target."""

from __future__ import annotations

from collections import deque
from dataclasses import replace
from math import isfinite, nan
from statistics import median

from tracker.exercises.watchers.gaze import ERRORS_APART, OFF_TARGET_DEG
from tracker.sample import Reach, Sample
from tracker.session.derive import asks_beyond, target_in_head

#: What the irises' height is apart from the pitch that was read: the median of so many samples
#: in which the eyes were read, some ten seconds, and not of fewer than the second number.
USUAL_OF, USUAL_LEAST = 300, 15
#: Irises are told to 2 to 3 degrees in one frame; the median of so long is steadier.
RECENT_S, RECENT_LEAST = 0.35, 3


class Doubt:
    """Tells looks far down (or up) from lids that hang over eyes on the target.

    Who looks far down lowers the lids, and eyes whose lids hang lower than in the set-up look
    unlike it, so that neither is read. Two ways have to agree that the eyes are off the target,
    to the same side. The person's own model has to be beyond four times the error that the
    set-up found, times how unlike the eyes look: what is not explained of a look is the
    variance of what is read from it (Rasmussen and Williams 2006, section 2.2). By itself that
    took hanging lids for a look down on 2 of 9 rendered heads. The irises' height has to be
    beyond the 5 degrees from which a gaze is off, against what it usually is.
    """

    def __init__(self) -> None:
        self._usual: deque[float] = deque(maxlen=USUAL_OF)
        self._recent: deque[tuple[float, float]] = deque()

    def judged(self, sample: Sample, error_deg: float, reach: Reach | None) -> Sample:
        """The sample with ``gaze_off_deg`` where it is sure, and without its glimpse.

        Parameters
        ----------
        sample
            Completed, in the order of time.
        error_deg
            Median error of the gaze that the set-up measured; NaN: nothing is sure.
        reach
            Eye-in-head angles that the set-up taught.
        """
        if sample.glimpse is None:
            return sample
        off_deg = self._off_deg(sample, error_deg)
        if reach is not None and asks_beyond(sample, reach):
            off_deg = nan
        return replace(sample, gaze_off_deg=off_deg, glimpse=None)

    def _off_deg(self, sample: Sample, error_deg: float) -> float:
        glimpse = sample.glimpse
        assert glimpse is not None
        read = isfinite(sample.eye_pitch_deg)
        if read:
            self._usual.append(glimpse.iris_deg - sample.eye_pitch_deg)
        asked_deg = target_in_head(sample)[1]
        if not isfinite(asked_deg) or len(self._usual) < USUAL_LEAST:
            return nan
        by_iris = glimpse.iris_deg - asked_deg
        self._recent.append((sample.time_s, by_iris))
        while self._recent[0][0] < sample.time_s - RECENT_S:
            self._recent.popleft()
        if read or not isfinite(error_deg) or len(self._recent) < RECENT_LEAST:
            return nan
        by_model = glimpse.pitch_deg - asked_deg
        iris_deg = median(v for _, v in self._recent) - median(self._usual)
        sure_deg = max(OFF_TARGET_DEG, ERRORS_APART * error_deg * glimpse.unlike)
        agree = abs(iris_deg) > OFF_TARGET_DEG and iris_deg * by_model > 0
        return abs(by_model) if agree and abs(by_model) > sure_deg else nan
