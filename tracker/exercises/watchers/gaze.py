"""Whether the eyes stay on the target, or go along with the head."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque
from math import exp, hypot, isfinite, isnan, nan
from statistics import median

from tracker.exercises.counters import eyes_usable
from tracker.exercises.watchers.base import Asked, Change, Excursion, Watcher
from tracker.motion.turning import Turn
from tracker.rotation import angle_between_deg, direction_from_angles
from tracker.sample import Sample

#: The gaze counts as off the target above this many degrees, so that 6 are found. A
#: person whose gaze is read worse gets a limit that is four times the error (on
#: rendered heads 99 % of the readings lie within four times the median error), and no
#: verdict where that is beyond the largest.
OFF_TARGET_DEG, ERRORS_APART, OFF_TARGET_MOST_DEG = 5.0, 4.0, 8.0
#: Smaller turns of the head tell nothing of whether the eyes go along (this project's own choice:
#: an error of the eyes of a degree is an eighth of it).
LEAST_TURN_DEG = 8.0


def off_target_limit_deg(error_deg: float) -> float | None:
    """Degrees from which the gaze counts as off the target; None where it can't be told.

    Parameters
    ----------
    error_deg
        Median error of the gaze that the set-up measured; NaN where nothing is known of a set-up
        (a trace alone), infinite where there was one that measured none.
    """
    if isnan(error_deg):
        return OFF_TARGET_DEG
    limit = max(OFF_TARGET_DEG, ERRORS_APART * error_deg)
    return limit if limit <= OFF_TARGET_MOST_DEG else None


def least_turn_deg(error_deg: float) -> float:
    """Least turn of the head of which it can be told whether the eyes went along.

    Half of the turn lies between what is held apart, so that is to be as many errors of the
    gaze as everywhere.

    Parameters
    ----------
    error_deg
        As for :func:`off_target_limit_deg`.
    """
    if isnan(error_deg):
        return LEAST_TURN_DEG
    return max(LEAST_TURN_DEG, 2.0 * ERRORS_APART * error_deg)


class GazeOffTarget(Excursion):
    """The gaze leaves the target.

    Found from 6 degrees for half a second, so decided above 5 degrees seen for 0.3 s
    (or above what :func:`off_target_limit_deg` says); over again below 0.7 of that. A
    steady offset up to 2 degrees (a calibration that has drifted) is learnt slowly and
    taken off. What is to be found is this project's own aim, how it is
    decided its own choice.
    """

    code = "gaze_off_target"

    def __init__(
        self,
        beyond_deg: float = OFF_TARGET_DEG,
        least_s: float = 0.3,
        offset_most_deg: float = 2.0,
        offset_s: float = 10.0,
    ) -> None:
        super().__init__(
            beyond_deg, 0.7 * beyond_deg, least_s, calm_s=0.1, foot_deg=0.5 * beyond_deg
        )
        self._offset = [0.0, 0.0]
        self._offset_most, self._offset_s = offset_most_deg, offset_s
        self._offset_at_s = nan

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample; shut eyes are no loss of gaze."""
        yaw = sample.gaze_yaw_deg - sample.target_yaw_deg
        pitch = sample.gaze_pitch_deg - sample.target_pitch_deg
        if not (isfinite(yaw) and isfinite(pitch) and eyes_usable(sample)):
            return self._unmeasured(sample.time_s)
        distance = float(
            angle_between_deg(
                direction_from_angles(
                    sample.gaze_yaw_deg - self._offset[0], sample.gaze_pitch_deg - self._offset[1]
                ),
                direction_from_angles(sample.target_yaw_deg, sample.target_pitch_deg),
            )
        )
        if distance < self._limits[1]:
            self._learn(sample.time_s, yaw, pitch)
        return self._follow(sample.time_s, distance)

    def _unmeasured(self, time_s: float) -> list[Change]:
        if self.on and time_s - self._last_s >= self.BRIDGE_S:
            return self._break()
        return []

    def _learn(self, time_s: float, yaw: float, pitch: float) -> None:
        step_s = min(time_s - self._offset_at_s, 0.2) if isfinite(self._offset_at_s) else 0.0
        self._offset_at_s = time_s
        share = 1.0 - exp(-step_s / self._offset_s)
        moved = [o + share * (e - o) for o, e in zip(self._offset, (yaw, pitch), strict=True)]
        size = hypot(*moved)
        shrink = min(1.0, self._offset_most / size) if size > 0 else 1.0
        self._offset = [m * shrink for m in moved]


class EyesNotWithHead(Watcher):
    """The eyes stay behind although they should go along with the head.

    Eyes that go along lie near their middle in the head at both ends of a turn,
    however they got there (many jump ahead and let the head follow); eyes that stay
    on something in the room have turned back by as much as the head turned. Decided
    half-way, and from two turns, never from one alone (common practice).

    Parameters
    ----------
    channel
        ``head_yaw`` or ``head_pitch``.
    back_share
        Share of the head's turn by which the eyes have turned back.
    least_turn_deg
        Smaller turns of the head decide nothing (:func:`least_turn_deg`).
    """

    code = "eyes_not_with_head"
    #: Where the eyes are at an extreme is read from shortly before it, as far out as they
    #: were: many jump ahead to the other side just when the head turns round.
    BEFORE_S, AFTER_S = 0.2, 0.05
    #: Turns that are handed over later than this decide nothing (own choice: the first ones of a
    #: slow person without a set-up, who are told of with the fourth).
    KEEP_S = 6.0

    def __init__(
        self, channel: str, back_share: float = 0.5, least_turn_deg: float = LEAST_TURN_DEG
    ) -> None:
        super().__init__()
        self._axis = 1 if channel == "head_pitch" else 0
        self._share, self._least = back_share, least_turn_deg
        self._rows: deque[tuple[float, float, float]] = deque()
        self._before: tuple[float, float] | None = None
        self._wrong_since: list[float] = []
        self._half_since = nan

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        head = (sample.head_yaw_deg, sample.head_pitch_deg)[self._axis]
        eye = (sample.eye_yaw_deg, sample.eye_pitch_deg)[self._axis]
        if isfinite(head) and isfinite(eye) and eyes_usable(sample):
            self._rows.append((sample.time_s, head, eye))
        while self._rows and self._rows[0][0] < sample.time_s - self.KEEP_S:
            self._rows.popleft()
        return []

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next turn."""
        from_s, to_s = turn.peak_s - self.BEFORE_S, turn.peak_s + self.AFTER_S
        near = [r for r in self._rows if from_s <= r[0] <= to_s]
        before, self._before = self._before, None
        if near:
            eyes = sorted(r[2] for r in near)
            outer = int(0.8 * (len(eyes) - 1) + 0.5)
            out = turn.side in ("right", "up")
            eye = eyes[outer] if out else eyes[len(eyes) - 1 - outer]
            self._before = (median(r[1] for r in near), eye)
        if before is None or self._before is None:
            return []
        turned = self._before[0] - before[0]
        if abs(turned) < self._least:
            return []
        back = -(self._before[1] - before[1]) / turned
        if back <= self._share:
            # Between the one and the other lies a turn with one end of each.
            self._half_since = turn.start_s if back > 0.5 * self._share else nan
            self._wrong_since.clear()
            return [self._end(turn.start_s)] if self.on else []
        if not self._wrong_since and isfinite(self._half_since):
            self._wrong_since.append(self._half_since)
            self._half_since = nan
        self._wrong_since.append(turn.start_s)
        if self.on or len(self._wrong_since) < 2:
            return []
        return [self._begin(self._wrong_since[0])]
