"""A hand held up beside the head: how somebody says "stop" who stands away from the keys.

The forearm tells it from a hand at the face, an arm held out and an arm that hangs: it
stands upright under a wrist that is about as high as the eyes and well beside them. That
the other hand is down, and that this one is held still, tells it from hands at work.

The limits are this project's own choice, between what rendered bodies that stood 1 and 2 m
away read: hands held up had the wrist 275 mm and more aside, between 176 below and 155
above the eyes, with the forearm within 8 degrees of upright; hands at the glasses, the
cheek or the crown of the head had it within 160 mm, or a forearm that leaned 37 degrees
and more.
"""

from __future__ import annotations

from math import isfinite

from tracker.sample import Sample

#: All of them are this project's own choice (above).
#: The wrist beside the eyes, on its own side, and against their height.
ASIDE_MM, LOWEST_MM = 190.0, -190.0
#: How far the forearm rises, and how far it may lean as a share of that (24 degrees; this project's
#: own choice).
RISES_MM, LEANS = 130.0, 0.45
#: The other hand is lower by so much, or out of the picture (this project's own choice).
OTHER_LOWER_MM = 200.0
#: A hand is held still that stays within so much, in each direction (this project's own choice).
STILL_MM = 120.0
#: So long has it to be seen, in so many looks (at 8 a second there are nine, if none fails);
#: where the exercise itself lifts the hands longer (this project's own choice).
HELD_S, HELD_AT_WORK_S, LOOKS = 1.0, 2.0, 5
#: Looks that don't see the arm break nothing off for so long (this project's own choice).
UNSEEN_S = 0.5


class RaisedHand:
    """Tells whether one hand has been held up beside the head for long enough.

    Parameters
    ----------
    held_s
        How long it has to be held up.
    """

    def __init__(self, held_s: float = HELD_S) -> None:
        self.held_s = held_s
        self._side = ""
        self._seen: list[tuple[float, float, float]] = []

    def begin(self, held_s: float = HELD_S) -> None:
        """Forget what was seen: a set begins, or goes on."""
        self.held_s, self._side = held_s, ""
        self._seen.clear()

    def take(self, sample: Sample) -> bool:
        """Take the next sample; whether the hand has been up for long enough."""
        if not isfinite(sample.body_seen):
            return False
        side = raised_side(sample)
        if not side:
            last_s = self._seen[-1][0] if self._seen else sample.time_s
            if arm_seen(sample, self._side) or sample.time_s - last_s > UNSEEN_S:
                self._seen.clear()
            return False
        x, y = wrist_of(sample, side)
        if side != self._side or self._too_far(sample.time_s, x, y):
            self._seen.clear()
        self._side = side
        self._seen.append((sample.time_s, x, y))
        return len(self._seen) >= LOOKS and sample.time_s - self._seen[0][0] >= self.held_s - 1e-3

    def _too_far(self, time_s: float, x_mm: float, y_mm: float) -> bool:
        """Whether a hand has moved on, or was not seen for too long."""
        if not self._seen:
            return False
        if time_s - self._seen[-1][0] > UNSEEN_S:
            return True
        places = [*self._seen, (time_s, x_mm, y_mm)]
        spreads = [max(p[k] for p in places) - min(p[k] for p in places) for k in (1, 2)]
        return max(spreads) > STILL_MM


def raised_side(sample: Sample) -> str:
    """``right`` or ``left`` where that hand alone is up beside the head; else empty."""
    for side, other in (("right", "left"), ("left", "right")):
        if _is_up(sample, side):
            y, other_y = wrist_of(sample, side)[1], wrist_of(sample, other)[1]
            return "" if other_y > y - OTHER_LOWER_MM else side
    return ""


def _is_up(sample: Sample, side: str) -> bool:
    x, y = wrist_of(sample, side)
    elbow_x, elbow_y = elbow_of(sample, side)
    aside = x if side == "right" else -x
    rises = y - elbow_y
    return (
        aside >= ASIDE_MM
        and y >= LOWEST_MM
        and rises >= RISES_MM
        and abs(x - elbow_x) <= LEANS * rises
    )


def arm_seen(sample: Sample, side: str) -> bool:
    """Whether elbow and wrist of a side were seen."""
    if side not in ("right", "left"):
        return False
    return all(isfinite(v) for v in (*wrist_of(sample, side), *elbow_of(sample, side)))


def wrist_of(sample: Sample, side: str) -> tuple[float, float]:
    """Place of a wrist from the eyes, right and up, in mm; NaN where not seen."""
    if side == "right":
        return sample.wrist_right_x_mm, sample.wrist_right_y_mm
    return sample.wrist_left_x_mm, sample.wrist_left_y_mm


def elbow_of(sample: Sample, side: str) -> tuple[float, float]:
    """The same of an elbow."""
    if side == "right":
        return sample.elbow_right_x_mm, sample.elbow_right_y_mm
    return sample.elbow_left_x_mm, sample.elbow_left_y_mm
