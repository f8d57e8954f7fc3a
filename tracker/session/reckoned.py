"""What figures of a movement are uncertain by: errors of its turns, and what is stated besides."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from math import hypot, isfinite, log, nan, sqrt
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.counters import Channel
from tracker.motion import drawn
from tracker.motion.away import AwayRule
from tracker.motion.drawn import Drawn
from tracker.motion.turning import Turn
from tracker.motion.uncertainty import Errors
from tracker.scale import length_share, lens_of_setup
from tracker.session.bench import LOT, WORST, WORST_IS, is_within, stated_offset_deg, stated_share

Array = NDArray[np.float64]

NO_SETUP = "without a set-up its error is not known"
UNKNOWN_SETUP = "whether there was a set-up is not known, nor its error"
FAR = "turned farther than the set-up holds: its error there is not known"
#: Median angle of an error in two directions, each normal and as large as the other, in standard
#: deviations of one of them: that of Rayleigh's distribution (Rayleigh 1880, Phil Mag 10:73;
#: 1 - exp(-r^2 / 2) = 1/2). Where all of it lies in one direction it would be 0.674.
MEDIAN_ANGLE = sqrt(2.0 * log(2.0))
#: What is left, over both sides, of errors of which each side has its own (arithmetic).
EACH_SIDE = 1.0 / sqrt(2.0)


@dataclass(frozen=True, slots=True)
class Stated:
    """What is known of a set besides its turns.

    Attributes
    ----------
    setup
        What its set-up found.
    flags
        The flags of the set.
    look_deg
        Median angle of the error of a look (``at_target.look_error_deg``), NaN if unknown.
    changed
        Why the two ends of a figure aren't called different (:func:`asked_changes`).
    """

    setup: Mapping[str, Any]
    flags: frozenset[str]
    look_deg: float = nan
    changed: Mapping[str, str] = field(default_factory=dict)

    def unknown(self) -> str:
        """Why its error isn't known; empty where it is."""
        if self.flags & {"no_setup", "setup_failed"}:
            return NO_SETUP
        if "setup_unknown" in self.flags:
            return UNKNOWN_SETUP
        return FAR if "far_turned" in self.flags else ""


@dataclass(frozen=True, slots=True)
class Part:
    """One figure: its turns drawn; bias and uncertainty by form of a value; the set-up's error.

    ``of_value`` is whether bias and form are shares of the value: then what is off by the same
    at both ends of a set doesn't cancel. The set-up's error is a ``share`` of the value, and an
    ``offset`` besides that is the same at both ends of a set. Of both sides together ``left`` of
    the offset is left: all, where it may be too large on both; where each side has its own, of
    which none is known to be like the other's, its share by the root of two (GUM 5.1.2).
    """

    drawn: Drawn
    bias: Callable[[float], float]
    form: Callable[[float], float]
    share: float = 0.0
    offset: float = 0.0
    left: float = 1.0
    of_value: bool = True

    def setup(self, value: float, *, both: bool) -> float:
        """Standard uncertainty of a value by the set-up; of ``both`` sides together, or of one."""
        return hypot(self.share * value, self.offset * (self.left if both else 1.0))


def parts_of(
    channel: Channel, turns: Sequence[Turn], errors: Errors, stated: Stated
) -> dict[str, Part]:
    """The figures of a movement that have an uncertainty, by their names in a summary.

    Parameters
    ----------
    channel, turns, errors
        What was counted, and the errors of its turns.
    stated
        What is known of the set-up.
    """
    if channel.unit == "mm":
        parts = _in_mm(channel, turns, errors, stated)
    elif channel.name == "eye_vergence":
        parts = {"vergence_change_deg": _swings(_of(turns, "swing_deg"), errors, _vergence())}
    else:
        parts = _in_degrees(channel, turns, errors, stated)
    if isinstance(channel.rule, AwayRule):
        return parts
    peak_s = _of(turns, "peak_s")
    # When a turn ended whose end lay in a hole of the measuring is not known.
    peak_s[[t.hidden for t in turns]] = nan
    return parts | {
        "tempo_bpm": Part(
            drawn.with_beats(peak_s, errors),
            lambda _: 0.0 if len(errors.time_s) else nan,
            lambda _: 0.0,
        )
    }


def _of(turns: Sequence[Turn], name: str) -> Array:
    return np.array([getattr(t, name) for t in turns], dtype=float)


def _in_degrees(
    channel: Channel, turns: Sequence[Turn], errors: Errors, stated: Stated
) -> dict[str, Part]:
    axis = channel.name.rpartition("_")[2]
    within = is_within(stated.setup, stated.flags)
    by_eyes = channel.name.startswith("eye")
    share = 0.0 if by_eyes else stated_share("amplitude", axis, within=within)
    offset = _eye_error(stated) if by_eyes else stated_offset_deg(axis, within=within)
    # A look is read with one error for each place, or too large everywhere: nobody knows.
    left = 1.0 if by_eyes else EACH_SIDE
    amplitudes = drawn.with_levels(_of(turns, "amplitude_deg"), errors)
    found = {"amplitude_deg": _levels(amplitudes, errors, share, offset, left)}
    if not by_eyes:
        speeds = _of(turns, "peak_speed_deg_s")
        share = stated_share("peak speed", axis, within=within)
        found["peak_speed_deg_s"] = _speeds(speeds, errors, share)
    return found


def _in_mm(
    channel: Channel, turns: Sequence[Turn], errors: Errors, stated: Stated
) -> dict[str, Part]:
    """By the size of a usual face; the rest position as well as the neck point is found."""
    share = length_share(lens_of_setup(stated.setup), depth=channel.depth)
    swings, amplitudes = _of(turns, "swing_mm"), _of(turns, "amplitude_mm")
    if isinstance(channel.rule, AwayRule):
        # From a home that is measured too; the way back is told with the reading of the way out.
        of = np.arange(len(turns)) // (2 if channel.rule.back_side else 1)
        ways = {"amplitude_mm": amplitudes, "swing_mm": swings}
        return {
            k: _levels(drawn.with_levels(v, errors, of), errors, share) for k, v in ways.items()
        }
    offset = WORST["neck point, head moves in yaw"][0] / WORST_IS
    levels = drawn.with_levels(amplitudes, errors)
    return {
        "amplitude_mm": _levels(levels, errors, share, offset, EACH_SIDE),
        "swing_mm": _swings(swings, errors, share),
        "peak_speed_mm_s": _speeds(_of(turns, "peak_speed_mm_s"), errors, share),
    }


def _levels(
    levels: Drawn, errors: Errors, share: float, offset: float = 0.0, left: float = 1.0
) -> Part:
    return Part(
        levels,
        lambda _: errors.level_bias,
        lambda _: errors.level_form,
        share,
        offset,
        left,
        of_value=False,
    )


def _swings(values: Array, errors: Errors, share: float) -> Part:
    """From end to end: what either end reads too far adds up."""
    return Part(
        drawn.with_swings(values, errors),
        lambda _: 2.0 * errors.level_bias,
        lambda _: 2.0 * errors.level_form,
        share,
        of_value=False,
    )


def _speeds(values: Array, errors: Errors, share: float) -> Part:
    return Part(
        drawn.with_speeds(values, errors),
        lambda value: errors.speed_bias * value,
        lambda value: errors.speed_form * value,
        share,
    )


def _eye_error(stated: Stated) -> float:
    """Standard error of a look in one direction; of an unknown one what the bench found."""
    if isfinite(stated.look_deg):
        return stated.look_deg / MEDIAN_ANGLE
    return WORST["eye yaw, head still"][0] / WORST_IS


def _vergence() -> float:
    """Standard error of a change of vergence, as a share: the bench's worst, anywhere."""
    return max(WORST["vergence change"][0], LOT["vergence"]) / 100.0 / WORST_IS
