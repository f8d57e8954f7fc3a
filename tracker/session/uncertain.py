"""The uncertainty of each figure of a movement, and its first five repetitions against the last.

Only figures of turns that are read as they come have one: what is averaged first (vergence, a
followed target, ways from place to place) says why it hasn't.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from math import hypot, isfinite, log, nan, sqrt
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.differing import by_spread, called, too_uneven
from tracker.exercises.counters import Channel
from tracker.motion import uncertainty as motion
from tracker.motion.turning import Turn, TurningRule
from tracker.motion.uncertainty import Drawn, Errors, Uncertainty
from tracker.sample import Sample
from tracker.session.bench import WORST, WORST_IS, is_within, stated_offset_deg, stated_share
from tracker.session.figures import Figure, missing
from tracker.session.run import grown_share, tempo_asked
from tracker.session.stage import Step

Array = NDArray[np.float64]

#: A figure that the pictures carry worse than this share of it is withheld: the desk reckons
#: with no larger error of an amplitude and a peak speed (``records.trends.SPECS``); that of the
#: tempo is this project's own choice.
CARRIED = {"amplitude_deg": 0.10, "peak_speed_deg_s": 0.17, "tempo_bpm": 0.10}
TOO_FEW = "too few pictures a second for so fast a movement"
NOT_RECKONED = "not reckoned for what is averaged first"
NOT_OF_ASKED = "not reckoned for a share of what was asked"
NO_SETUP = "without a set-up its error is not known"
FAR = "turned farther than the set-up holds: its error there is not known"
NOT_EACH = "not measured in each of them"
NOT_DRAWN = "too few turns or samples to tell"
#: Why the two ends of a set aren't called different: the set itself asked for it.
MORE_ASKED = "more was asked towards the end"
FASTER_ASKED = "faster was asked towards the end"
SLOWER_ASKED = "slower was asked towards the end"
#: Two tempos that differ by a smaller share than this are one (own choice).
TEMPO_SAME = 0.01
#: Median angle of an error in two directions, each normal and as large as the other, in standard
#: deviations of one of them: that of Rayleigh's distribution (Rayleigh 1880, Phil Mag 10:73;
#: 1 - exp(-r^2 / 2) = 1/2). Where all of it lies in one direction it would be 0.674.
MEDIAN_ANGLE = sqrt(2.0 * log(2.0))
#: Turns at each end: five repetitions.
FIVE = 10


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
        return FAR if "far_turned" in self.flags else ""


def asked_changes(step: Step, turns: Sequence[Turn]) -> dict[str, str]:
    """Figures whose ends differ because of what was asked, and why.

    A set that is small at first, or whose tempo rises, makes itself larger and faster: how fast
    a turn is at most hangs on both.

    Parameters
    ----------
    step, turns
        What was asked, and what was done.
    """
    if not turns:
        return {}
    first_s, last_s = turns[0].peak_s, turns[-1].peak_s
    out: dict[str, str] = {}
    before, after = tempo_asked(step, first_s), tempo_asked(step, last_s)
    if before and after and abs(after - before) > TEMPO_SAME * before:
        why = FASTER_ASKED if after > before else SLOWER_ASKED
        out |= {"tempo_bpm": why, "peak_speed_deg_s": why}
    if grown_share(step, first_s) < grown_share(step, last_s):
        out |= {"amplitude_deg": MORE_ASKED, "peak_speed_deg_s": MORE_ASKED}
    return out


def add_uncertainties(
    movement: dict[str, Figure],
    channel: Channel,
    turns: Sequence[Turn],
    samples: Iterable[Sample],
    stated: Stated,
) -> None:
    """Put its uncertainty to each figure; figures that the pictures can't carry are withheld.

    Parameters
    ----------
    movement
        ``amplitude_deg``, ``peak_speed_deg_s``, ``tempo_bpm``; changed in place.
    channel, turns, samples
        What was counted, and in what.
    stated
        What is known of the set-up.
    """
    rule = channel.rule
    if not isinstance(rule, TurningRule) or channel.smooth_s or channel.unit == "mm":
        _say_why(movement, NOT_RECKONED)
        return
    rows = [(s.time_s, v) for s in samples if isfinite(v := channel.read(s))]
    times, values = np.array(rows, dtype=float).reshape(-1, 2).T
    errors = motion.errors_of(times, values, turns, rule)
    if errors is None:
        _say_why(movement, NOT_DRAWN)
        return
    _say_why({k: v for k, v in movement.items() if k not in CARRIED}, NOT_OF_ASKED)
    for key, one in _parts(channel, turns, errors, stated).items():
        found = movement.get(key)
        if found is None or found.get("median") is None:
            continue
        if _is_beyond(found, one, errors, CARRIED[key]):
            _withhold(found)
            continue
        unknown = stated.unknown() if key != "tempo_bpm" else ""
        _fill(found, one, turns, unknown)
        if len(turns) >= 2 * FIVE:
            found["difference"] = _difference(one, unknown, stated.changed.get(key, ""))


@dataclass(frozen=True, slots=True)
class _Part:
    """One figure: its turns drawn; bias and uncertainty by form of a value; the set-up's error.

    ``of_value`` is whether bias and form are shares of the value: then what is off by the same
    at both ends of a set doesn't cancel. The set-up's error is a ``share`` of the value, and an
    ``offset`` besides that is the same at both ends.
    """

    drawn: Drawn
    bias: Callable[[float], float]
    form: Callable[[float], float]
    share: float = 0.0
    offset: float = 0.0
    of_value: bool = True

    def setup(self, value: float) -> float:
        """Standard uncertainty by the set-up."""
        return hypot(self.share * value, self.offset)


def _parts(
    channel: Channel, turns: Sequence[Turn], errors: Errors, stated: Stated
) -> dict[str, _Part]:
    axis = channel.name.rpartition("_")[2]
    within = is_within(stated.setup, stated.flags)
    by_eyes = channel.name.startswith("eye")
    amplitude, speed, peak_s = (
        np.array([getattr(t, n) for t in turns], dtype=float)
        for n in ("amplitude_deg", "peak_speed_deg_s", "peak_s")
    )
    # When a turn ended whose end lay in a hole of the measuring is not known.
    peak_s[[t.hidden for t in turns]] = nan
    return {
        "amplitude_deg": _Part(
            motion.with_levels(amplitude, errors),
            lambda _: errors.level_bias,
            lambda _: errors.level_form,
            0.0 if by_eyes else stated_share("amplitude", axis, within=within),
            _eye_error(stated) if by_eyes else stated_offset_deg(axis, within=within),
            of_value=False,
        ),
        "peak_speed_deg_s": _Part(
            motion.with_speeds(speed, errors),
            lambda value: errors.speed_bias * value,
            lambda value: errors.speed_form * value,
            stated_share("peak speed", axis, within=within),
        ),
        "tempo_bpm": _Part(
            motion.with_beats(peak_s, errors),
            lambda _: 0.0 if len(errors.time_s) else nan,
            lambda _: 0.0,
        ),
    }


def _eye_error(stated: Stated) -> float:
    """Standard error of a look in one direction; of an unknown one what the bench found."""
    if isfinite(stated.look_deg):
        return stated.look_deg / MEDIAN_ANGLE
    return WORST["eye yaw, head still"][0] / WORST_IS


def _is_beyond(found: Figure, one: _Part, errors: Errors, most: float) -> bool:
    """Whether the pictures can't carry a figure of the whole set."""
    value = float(found["median"])
    own = abs(one.bias(value)) + motion.K * one.form(value)
    # A comparison with NaN is false: what couldn't be read anew isn't carried either.
    carried = errors.samples_a_turn >= motion.LEAST_SAMPLES and own <= most * abs(value)
    return not carried


def _withhold(found: Figure) -> None:
    found.update(missing(TOO_FEW))
    for name in ("first_five", "last_five"):
        if name in found:
            found[name] = missing(TOO_FEW)
    if "by_side" in found:
        found["by_side"] = {side: missing(TOO_FEW) for side in found["by_side"]}


def withheld(movement: Mapping[str, Figure] | None) -> dict[str, str]:
    """Figures of a movement that the pictures can't carry, and why."""
    found = (movement or {}).items()
    return {k: TOO_FEW for k, f in found if isinstance(f, dict) and f.get("reason") == TOO_FEW}


def _fill(found: Figure, one: _Part, turns: Sequence[Turn], unknown: str) -> None:
    index = np.arange(len(turns))
    # One side reads larger by it, the other smaller.
    aside = one.offset * np.array([1.0 if t.side == turns[0].side else -1.0 for t in turns])
    chosen = {
        "": index >= 0,
        "first_five": index < FIVE,
        "last_five": index >= len(turns) - FIVE,
        **{f"by_side.{s}": np.array([t.side == s for t in turns]) for s in _sides(found)},
    }
    for name, which in chosen.items():
        part = found
        for step in filter(None, name.split(".")):
            part = part.get(step) or {}
        value = part.get("median")
        if value is None:
            continue
        noise = hypot(one.drawn.median_u(which), one.form(value))
        bias = one.bias(value) + one.drawn.median_bias(which)
        of = Uncertainty(noise, one.setup(value), bias)
        part["uncertainty"] = _told(of, unknown)
        part["spread_uncertainty"] = _rounded(one.drawn.spread_u(which, aside))


def _sides(found: Figure) -> Iterable[str]:
    return found.get("by_side") or ()


def _difference(one: _Part, unknown: str, changed: str) -> Figure:
    """Last five less first five repetitions, each the mean of its turns, by the one rule.

    It isn't called anything where its error is unknown, or where what was asked had changed.
    """
    count = len(one.drawn.values)
    ends = [
        [np.arange(k, k + 2, dtype=np.int64) for k in range(start, start + FIVE, 2)]
        for start in (0, count - FIVE)
    ]
    with np.errstate(invalid="ignore"):
        first, last = (
            [
                float(v[np.isfinite(v)].mean()) if np.isfinite(v).any() else float("nan")
                for v in part
            ]
            for part in ([one.drawn.values[k] for k in end] for end in ends)
        )
    value = float(np.mean(last) - np.mean(first))
    if not isfinite(value):
        return {"value": None, "reason": NOT_EACH}
    noise = one.drawn.difference_u(*ends)
    of = Uncertainty(
        hypot(noise, one.form(value)) if one.of_value else noise,
        one.share * abs(value),
        (one.bias(value) if one.of_value else 0.0) + one.drawn.difference_bias(*ends),
    )
    bare = {"value": round(value, 4), "uncertainty": _told(of, unknown), "reason": None}
    if changed or unknown:
        return bare | ({"uncalled": changed} if changed else {})
    own, error = by_spread(first, last), of.expanded
    return bare | {
        "least": _rounded(max(own, error)),
        "verdict": called(value, own, error),
        "limit": "uneven" if too_uneven(own, error) else "error",
    }


def _told(of: Uncertainty, unknown: str) -> Figure:
    """As it stands in a summary."""
    return {
        "expanded": None if unknown else _rounded(of.expanded),
        "k": motion.K,
        "noise": _rounded(of.noise),
        "setup": None if unknown else _rounded(of.setup),
        "bias": _rounded(of.bias),
        "reason": unknown or None,
    }


def _say_why(movement: Mapping[str, Figure], reason: str) -> None:
    for found in movement.values():
        if isinstance(found, dict) and found.get("median") is not None:
            found["uncertainty"] = {"expanded": None, "k": motion.K, "reason": reason}


def _rounded(value: float) -> float | None:
    return round(value, 4) if isfinite(value) else None
