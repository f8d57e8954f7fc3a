"""The uncertainty of each figure of a movement, and its first five repetitions against the last.

What each is uncertain by stands in :mod:`tracker.session.reckoned`; what has none says why.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from math import hypot, isfinite

import numpy as np
from numpy.typing import NDArray

from tracker.differing import by_spread, called, too_uneven
from tracker.exercises.counters import Channel
from tracker.motion.away import AwayRule
from tracker.motion.drawn import K, Uncertainty
from tracker.motion.turning import Turn, TurningRule
from tracker.motion.uncertainty import LEAST_SAMPLES, Errors, Mean, errors_of, errors_of_stays
from tracker.sample import Sample
from tracker.session.bench import is_within, stated_ratio
from tracker.session.figures import NOT_CHECKED, Figure, missing
from tracker.session.reckoned import Part, Stated, parts_of
from tracker.session.run import grown_share, tempo_asked
from tracker.session.stage import Step

Array = NDArray[np.float64]

#: A figure that the pictures carry worse than this share of it is withheld: the desk reckons
#: with no larger error of an amplitude and a peak speed (``records.trends.SPECS``); that of the
#: tempo is this project's own choice.
CARRIED = {
    "amplitude_deg": 0.10,
    "peak_speed_deg_s": 0.17,
    "tempo_bpm": 0.10,
    "amplitude_mm": 0.10,
    "swing_mm": 0.10,
    "peak_speed_mm_s": 0.17,
    "vergence_change_deg": 0.25,
}
TOO_FEW = "too few pictures a second for so fast a movement"
TOO_UNSTEADY = "measured too unsteadily for so small a movement"
#: From so many pictures a turn on it isn't their number that a figure fails by (own choice: the
#: forms' biases are below .02 then).
ENOUGH_SAMPLES = 8.0
OF_BODY = "not reckoned for shoulders and hands"
OF_STAYS = "not reckoned for standing up and bending down"
OF_EYES = "not known for the speed of eyes"
NOT_OF_ASKED = "not reckoned for a share of what was asked"
#: Why a figure has none, by its name; times of single ways go with the tempo and say nothing.
OF_NONE = {
    "reach_percent": NOT_OF_ASKED,
    "peak_speed_deg_s": OF_EYES,
    "peak_speed_mm_s": OF_STAYS,
    "tempo_bpm": OF_STAYS,
}
NOT_EACH = "not measured in each of them"
NOT_DRAWN = "too few turns or samples to tell"
#: Why the two ends of a set aren't called different: the set itself asked for it.
MORE_ASKED = "more was asked towards the end"
FASTER_ASKED = "faster was asked towards the end"
SLOWER_ASKED = "slower was asked towards the end"
_SPEEDS = ("peak_speed_deg_s", "peak_speed_mm_s")
_SIZES = ("amplitude_deg", "amplitude_mm", "swing_mm", "vergence_change_deg")
#: Two tempos that differ by a smaller share than this are one (own choice).
TEMPO_SAME = 0.01
#: Standard error of a median to that of a mean, and half the distance between the quartiles in
#: standard deviations, of a normal distribution (arithmetic: the root of pi / 2; its 75th centile).
MEDIAN_SE, QUARTILE = 1.2533, 0.6745
#: Turns at each end: five repetitions.
FIVE = 10


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
        out |= dict.fromkeys(("tempo_bpm", *_SPEEDS), why)
    if grown_share(step, first_s) < grown_share(step, last_s):
        out |= dict.fromkeys((*_SIZES, *_SPEEDS), MORE_ASKED)
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
        Figures by their names in a summary; changed in place.
    channel, turns, samples
        What was counted, and in what.
    stated
        What is known of the set-up.
    """
    if channel.body:
        say_why(movement, OF_BODY)
        return
    errors = _errors_of(channel, turns, samples)
    if errors is None:
        say_why(movement, NOT_DRAWN)
        return
    parts = parts_of(channel, turns, errors, stated)
    stays = isinstance(channel.rule, AwayRule)
    for key, reason in OF_NONE.items():
        if key in movement and key not in parts:
            say_why({key: movement[key]}, reason)
    for key, one in parts.items():
        found = movement.get(key)
        if found is None or found.get("median") is None:
            continue
        if not stays and _is_beyond(found, one, errors, CARRIED[key]):
            few = not errors.samples_a_turn >= ENOUGH_SAMPLES
            _withhold(found, TOO_FEW if few else TOO_UNSTEADY)
            continue
        unknown = stated.unknown() if key != "tempo_bpm" else ""
        _fill(found, one, turns, unknown)
        # What a stay is short by hangs on how quick it was; between two ends it isn't known.
        if len(turns) >= 2 * FIVE and not stays:
            found["difference"] = _difference(one, unknown, stated.changed.get(key, ""))


def _errors_of(channel: Channel, turns: Sequence[Turn], samples: Iterable[Sample]) -> Errors | None:
    rows = [(s.time_s, v) for s in samples if isfinite(v := channel.read(s))]
    times, values = np.array(rows, dtype=float).reshape(-1, 2).T
    if isinstance(channel.rule, TurningRule):
        mean = Mean(channel.smooth_s, channel.least_s)
        return errors_of(times, values, turns, channel.rule, mean)
    return errors_of_stays(times, values, turns, channel.rule)


def _is_beyond(found: Figure, one: Part, errors: Errors, most: float) -> bool:
    """Whether the pictures can't carry a figure of the whole set."""
    value = float(found["median"])
    own = abs(one.bias(value)) + K * one.form(value)
    # A comparison with NaN is false: what couldn't be read anew isn't carried either.
    carried = errors.samples_a_turn >= LEAST_SAMPLES and own <= most * abs(value)
    return not carried


def _withhold(found: Figure, reason: str) -> None:
    found.update(missing(reason))
    for name in ("first_five", "last_five"):
        if name in found:
            found[name] = missing(reason)
    if "by_side" in found:
        found["by_side"] = {side: missing(reason) for side in found["by_side"]}


def withheld(movement: Mapping[str, Figure] | None) -> dict[str, str]:
    """Figures of a movement that the pictures can't carry, and why."""
    found = (movement or {}).items()
    told = {k: f.get("reason") for k, f in found if isinstance(f, dict)}
    return {k: why for k, why in told.items() if why in (TOO_FEW, TOO_UNSTEADY)}


def _fill(found: Figure, one: Part, turns: Sequence[Turn], unknown: str) -> None:
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
        both = len({turns[k].side for k in np.flatnonzero(which).tolist()}) > 1
        of = Uncertainty(noise, one.setup(value, both=both), bias)
        part["uncertainty"] = told(of, unknown)
        part["spread_uncertainty"] = _rounded(one.drawn.spread_u(which, aside))


def _sides(found: Figure) -> Iterable[str]:
    return found.get("by_side") or ()


def _difference(one: Part, unknown: str, changed: str) -> Figure:
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
    bare = {"value": round(value, 4), "uncertainty": told(of, unknown), "reason": None}
    if changed or unknown:
        return bare | ({"uncalled": changed} if changed else {})
    own, error = by_spread(first, last), of.expanded
    return bare | {
        "least": _rounded(max(own, error)),
        "verdict": called(value, own, error),
        "limit": "uneven" if too_uneven(own, error) else "error",
    }


def add_to_ratio(ratio: Figure, stated: Stated) -> None:
    """Put its uncertainty to the counter-turn ratio and its sides.

    Its noise is what the turns differ by, and so the person's own unevenness is in it: the
    standard error of their median.

    Parameters
    ----------
    ratio
        As of :func:`tracker.session.figures.counter_turn_ratio`; changed in place.
    stated
        What is known of the set-up.
    """
    by_side = ratio.get("by_side", {})
    axis = "pitch" if {"up", "down"} & set(by_side) else "yaw"
    for part in (ratio, *by_side.values()):
        if part.get("median") is not None:
            noise = MEDIAN_SE * part["spread"] / QUARTILE / part["n"] ** 0.5
            within = is_within(stated.setup, stated.flags)
            of = Uncertainty(noise, stated_ratio(axis, within=within), 0.0)
            unread = "" if isfinite(stated.look_deg) else NOT_CHECKED
            part["uncertainty"] = told(of, stated.unknown() or unread)


def told(of: Uncertainty, unknown: str) -> Figure:
    """An uncertainty as it stands in a summary; ``unknown`` is why its error isn't known."""
    return {
        "expanded": None if unknown else _rounded(of.expanded),
        "k": K,
        "noise": _rounded(of.noise),
        "setup": None if unknown else _rounded(of.setup),
        "bias": _rounded(of.bias),
        "reason": unknown or None,
    }


def say_why(movement: Mapping[str, Figure], reason: str) -> None:
    """Put a reason in the place of the uncertainty of figures that have a value."""
    for found in movement.values():
        if isinstance(found, dict) and found.get("median") is not None:
            found["uncertainty"] = {"expanded": None, "k": K, "reason": reason}


def _rounded(value: float) -> float | None:
    return round(value, 4) if isfinite(value) else None
