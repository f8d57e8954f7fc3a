"""Whether the face that is followed is the patient's, by how alike it is to the set-up's.

Only a face that was chosen after a break is doubted. What it is held against is how alike the
patient's face was before, in the light of now. How alike faces are is the ``quality`` of their
samples. Against six set-ups of rendered heads, in eight places and lights (.45 to 1.2), the
patient's own face kept .9 of it and more; of 15 other heads the middle kept .4, 6 % of the
pictures .75 and more, .8 % .9 and more (DEVELOPERS.md).
"""

from __future__ import annotations

from collections import deque
from math import isfinite, nan
from statistics import median

from tracker.measure import not_seen
from tracker.sample import Sample
from tracker.vision.observer import Observation

#: A face that has so much of the usual likeness may be the patient's, and with so much surely
#: is (this project's own choice, by the figures above).
ALIKE, SURE = 0.75, 0.9
#: Another face that is more alike by so much is the patient's: of any two of those pictures the
#: own one was so in 98.6 %, and no other one ever (this project's own choice, by these).
MORE = 0.1
#: A head turned or nodded farther than this tells nothing: its likeness falls with the angle (on
#: shipped clips the own one .82 and more up to here, down to .65 at 20 to 30 degrees; this
#: project's own choice, by these).
AHEAD_DEG = 15.0
#: A verdict is the median of the newest so many seconds, at least so many of them and so many
#: pictures: of normal blinks .2 % are as long (Ousler et al., Clin Ophthalmol 8:869, 2014; this
#: project's own choice). Longer serves nothing: of 2,351 such windows of 72 pairs of rendered
#: heads none was as alike as ``ALIKE``, of the face itself all were ``SURE``, of .3 s or 2 s alike
#: (DEVELOPERS.md).
WINDOW_S, LEAST_S, LEAST = 2.0, 0.5, 4
#: What is usual is the median of so much time (this project's own choice).
USUAL_S = 10.0
#: After so long a face is measured although it is little alike, if no other one is more so: a
#: patient may have put on glasses. It is longer than who is out of sight is asked and waited for
#: (``ui.session.out_of_sight``: 30 s), so that a helper's face doesn't keep that away (this
#: project's own choice).
GIVE_IN_S = 30.0
#: Why a face in sight tells nothing of whose it is.
TELLS_NOTHING = frozenset({"blurred", "turned_too_far", "too_dark", "too_far"})


class Looks:
    """How alike one face was to the set-up's in the newest pictures in which it looked ahead."""

    def __init__(self, window_s: float = WINDOW_S) -> None:
        self._window_s = window_s
        self._seen: deque[tuple[float, float]] = deque()

    def add(self, sample: Sample) -> None:
        """Take a picture's sample, if it tells anything."""
        # Without a believed pose it is not turned: what covers a face, or another's face.
        turned = max(abs(sample.head_yaw_deg), abs(sample.head_pitch_deg)) > AHEAD_DEG
        if turned or sample.reason in TELLS_NOTHING:
            return
        self._seen.append((sample.time_s, sample.quality))
        while sample.time_s - self._seen[0][0] > self._window_s:
            self._seen.popleft()

    @property
    def likeness(self) -> float:
        """The median; NaN where too little was seen."""
        if len(self._seen) < LEAST or self._seen[-1][0] - self._seen[0][0] < LEAST_S:
            return nan
        return median(quality for _, quality in self._seen)


class Whose:
    """Follows from picture to picture whether the face may be another person's."""

    def __init__(self) -> None:
        self._before = Looks(USUAL_S)
        self._mine, self._other = Looks(), Looks()
        self._usual = self._since_s = nan
        self._given = True
        #: Whether other faces are to be looked for.
        self.in_doubt = False
        #: Whether the other face in the newest picture is the patient's.
        self.follow_other = False

    def take(self, seen: Observation, mine: Sample, other: Sample | None) -> Sample:
        """The sample of the patient: without figures while it may be another's.

        Parameters
        ----------
        seen
            What was observed.
        mine, other
            Samples of the face that is followed, and of the other one in view.
        """
        self.follow_other = False
        if seen.face is None:
            return mine
        if seen.anew:
            self._begin(mine.time_s)
        if not self.in_doubt:
            if isfinite(mine.head_yaw_deg):
                self._before.add(mine)
            return mine
        self._mine.add(mine)
        if other is not None:
            self._other.add(other)
            self.follow_other = self._is_theirs(self._mine.likeness, self._other.likeness)
        if self.follow_other:
            self._mine, self._other = self._other, Looks()
        self._judge(mine.time_s)
        return mine if self._given and not self.follow_other else not_seen(seen)

    def _begin(self, time_s: float) -> None:
        """A face was chosen after a break."""
        if not self.in_doubt:
            self._usual = self._before.likeness
        # Where it isn't known how alike the patient is, nothing can be said of anybody.
        self.in_doubt = isfinite(self._usual)
        self._given, self._since_s = not self.in_doubt, time_s
        self._mine, self._other = Looks(), Looks()

    def _is_theirs(self, mine: float, other: float) -> bool:
        """Whether the other face is the patient's, by how alike both are."""
        if not isfinite(mine):
            return other >= SURE * self._usual
        return other >= ALIKE * self._usual and other >= mine + MORE

    def _judge(self, time_s: float) -> None:
        """Whether the face that is followed from now on is measured, and still doubted."""
        likeness = self._mine.likeness
        if likeness >= ALIKE * self._usual or time_s - self._since_s >= GIVE_IN_S:
            self._given = True
        if likeness >= SURE * self._usual:
            self.in_doubt = False
