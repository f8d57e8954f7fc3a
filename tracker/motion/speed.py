"""Angular speed of the head from unevenly spaced rotations.

Around each sample the rotations to its neighbours are written as rotation
vectors, a cubic is fitted to them by least squares, and its slope at the sample
is the angular velocity. No wrapped angle is ever subtracted.

What it costs (measured in ``tests/motion/test_speed.py`` on a 20 degree sine in
yaw, evenly spaced): how much the speeds fall short as a whole, and the noise of
one speed for each degree of noise in the angles.

========= ======= ======= ======= ======= ======= ====================
frames/s  0.5 Hz  1 Hz    1.5 Hz  2 Hz    2.5 Hz  noise, deg/s per deg
========= ======= ======= ======= ======= ======= ====================
15        0.0 %   -0.4 %  -2.2 %  -6.1 %  -13 %   7 to 11
30        0.0 %   0.0 %   -0.2 %  -0.6 %  -1.4 %  13 to 19
60        0.0 %   0.0 %   -0.2 %  -0.6 %  -1.4 %  9 to 14
========= ======= ======= ======= ======= ======= ====================

A turn's peak speed is therefore not read from these samples but fitted over the
whole middle of the turn: :func:`tracker.motion.reading.peak_speed`.
"""

from __future__ import annotations

from collections import deque
from dataclasses import replace
from math import isfinite, nan

import numpy as np
from numpy.typing import NDArray

from tracker.rotation import matrix_from_angles, rotation_vector
from tracker.sample import Sample

Array = NDArray[np.float64]

#: How far into the future a speed looks (own choice: one and the same everywhere).
LOOK_AHEAD_S = 0.1
#: A longer pause between samples is not fitted across: at 15 frames/s it is three lost frames
#: (this project's own choice).
MAX_GAP_S = 0.25
#: A cubic needs four samples (arithmetic); a fifth leaves something to average.
MIN_SAMPLES = 5
#: How far the window may stretch back at a low frame rate (this project's own choice;
#: what it costs is measured, above).
MAX_BACK_S = 0.45
#: Times are sums of decimals: arithmetic may leave so much.
_EPSILON_S = 1e-6


def angular_velocity(times_s: Array, rotations: Array, centre: int) -> tuple[float, float]:
    """Yaw and pitch rate at one of several samples.

    Parameters
    ----------
    times_s
        ``(n,)``, rising.
    rotations
        ``(n, 3, 3)`` head rotations in the rest frame.
    centre
        Index of the sample whose speed is asked.

    Returns
    -------
    tuple of float
        Deg/s: yaw about the rest frame's up, pitch about the yawed right axis.
        NaN from fewer than three samples.
    """
    n = len(times_s)
    if n < 3:
        return nan, nan
    degree = 3 if n >= MIN_SAMPLES else n - 2
    if centre in (0, n - 1):
        degree = min(degree, 2)
    at = rotations[centre]
    vectors = rotation_vector(at.T @ rotations)
    tau = times_s - times_s[centre]
    scale = max(float(np.abs(tau).max()), _EPSILON_S)
    design = (tau / scale)[:, None] ** np.arange(degree + 1)
    slope = np.linalg.lstsq(design, vectors, rcond=None)[0][1] / scale
    in_space = at @ slope
    forward = at[:, 2]
    flat = max(float(np.hypot(forward[0], forward[2])), 1e-9)
    right = np.array([forward[2] / flat, 0.0, -forward[0] / flat])
    return float(in_space[1]), float(-(in_space @ right))


class SpeedEstimator:
    """Holds samples back for the look-ahead and gives them on with their speeds.

    Speeds that a sample already carries (a trace's) are left alone.
    """

    def __init__(self) -> None:
        self._rows: deque[tuple[Sample, Array | None]] = deque()
        self._done = 0

    def feed(self, sample: Sample) -> list[Sample]:
        """Take a sample, later than all before; gives those whose window is complete."""
        self._rows.append((sample, _rotation(sample)))
        out = []
        while self._pending and (
            sample.time_s > self._rows[self._done][0].time_s + LOOK_AHEAD_S + _EPSILON_S
        ):
            out.append(self._next())
        self._forget()
        return out

    def flush(self) -> list[Sample]:
        """Give all samples still held back, as if nothing came after them."""
        out = []
        while self._pending:
            out.append(self._next())
        self._forget()
        return out

    @property
    def _pending(self) -> bool:
        return self._done < len(self._rows)

    def _next(self) -> Sample:
        index = self._done
        self._done += 1
        sample, rotation = self._rows[index]
        have = isfinite(sample.head_yaw_speed_deg_s) or isfinite(sample.head_pitch_speed_deg_s)
        if rotation is None or have:
            return sample
        yaw, pitch = self._speed(index)
        return replace(sample, head_yaw_speed_deg_s=yaw, head_pitch_speed_deg_s=pitch)

    def _speed(self, index: int) -> tuple[float, float]:
        time_s = self._rows[index][0].time_s
        after = self._reach(index, 1, time_s + LOOK_AHEAD_S + _EPSILON_S, 0)
        wanted = MIN_SAMPLES - 1 - len(after)
        before = self._reach(index, -1, time_s - LOOK_AHEAD_S - _EPSILON_S, wanted)
        chosen = [*reversed(before), index, *after]
        times = np.array([self._rows[k][0].time_s for k in chosen])
        rotations = np.stack([r for k in chosen if (r := self._rows[k][1]) is not None])
        return angular_velocity(times, rotations, len(before))

    def _reach(self, index: int, way: int, limit_s: float, at_least: int) -> list[int]:
        """Measured neighbours up to a time (or up to a number), none beyond a gap."""
        found: list[int] = []
        start_s = last_s = self._rows[index][0].time_s
        k = index + way
        while 0 <= k < len(self._rows):
            time_s = self._rows[k][0].time_s
            beyond = way * (time_s - limit_s) > 0
            if beyond and (len(found) >= at_least or abs(time_s - start_s) > MAX_BACK_S):
                break
            if abs(time_s - last_s) > MAX_GAP_S:
                break
            if self._rows[k][1] is not None:
                found.append(k)
                last_s = time_s
            k += way
        return found

    def _forget(self) -> None:
        if not self._rows:
            return
        reference = self._rows[min(self._done, len(self._rows) - 1)][0].time_s
        while self._done > 0 and self._rows[0][0].time_s < reference - MAX_BACK_S - MAX_GAP_S:
            self._rows.popleft()
            self._done -= 1


def _rotation(sample: Sample) -> Array | None:
    angles = (sample.head_yaw_deg, sample.head_pitch_deg, sample.head_roll_deg)
    if not isfinite(angles[0]) or not isfinite(angles[1]):
        return None
    roll = angles[2] if isfinite(angles[2]) else 0.0
    return matrix_from_angles(angles[0], angles[1], roll)
