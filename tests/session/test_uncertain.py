"""The true value lies within what is told, in nine of ten sets and more, but not in all.

Sets are made up with their truth: turns of two forms and many sizes at uneven times, with
noise, lost pictures and a set-up that is off as it is stated to be. With k = 2 and normal errors
95 % would be (JCGM 100:2008, 6.2.1); 90 to 99 % are asked here, because neither k nor the forms
are exact. Where a bias is the larger part, more than 95 % are rightly within (F.2.4.5).
"""

from __future__ import annotations

import json
from collections import defaultdict
from functools import cache
from math import exp, hypot, log
from typing import Any

import jsonschema
import numpy as np
import pytest

from tests.session.drawn_turns import STATED, compared, drawn, told
from tests.session.synthetic import steps, turns_samples
from tracker.differing import called
from tracker.exercises.counters import channel_of
from tracker.session.bench import (
    LOT,
    LOT_DEG,
    WORST,
    is_within,
    stated_offset_deg,
    stated_share,
)
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.reckoned import FAR, NO_SETUP, Stated
from tracker.session.summary import summarise
from tracker.session.uncertain import (
    OF_BODY,
    TOO_FEW,
    add_uncertainties,
)
from ui.commands.schema import published

KEYS = ("amplitude_deg", "peak_speed_deg_s", "tempo_bpm")
RATES = (10, 15, 30, 60)
#: Noise of a sample in degrees: of a good picture, and of a dim one.
NOISES = ((0.02, 0.1), (0.1, 0.5))
SETS = 30
Rows = dict[tuple[str, int], list[float]]


@cache
def lots() -> Rows:
    """Error in uncertainties told, by kind of figure and pictures a second."""
    out: Rows = defaultdict(list)
    for rate_hz in RATES:
        for low, high in NOISES:
            for number in range(SETS):
                rng = np.random.default_rng([rate_hz, int(1000 * low), number])
                noise = exp(rng.uniform(log(low), log(high)))
                for name, error, told_error in compared(rng, rate_hz, noise):
                    if told_error:
                        out[_kind(name), rate_hz].append(abs(error) / told_error)
                    else:
                        out[name, rate_hz].append(0.0)
    return out


def _kind(name: str) -> str:
    key, _, part = name.partition(".")
    first = part.partition(".")[0]
    return f"{key}.{first}" if first in ("spread", "difference") else key


@pytest.mark.slow
@pytest.mark.timeout(900)
@pytest.mark.parametrize("part", ["", ".spread", ".difference"])
@pytest.mark.parametrize("key", KEYS)
def test_the_truth_is_within_in_nine_of_ten_and_not_in_all(key: str, part: str) -> None:
    all_of = [np.array(lots()[key + part, rate_hz]) for rate_hz in RATES]
    ratios = np.concatenate(all_of)
    assert len(ratios) > 0.9 * SETS * len(NOISES) * len(RATES)
    assert 0.90 <= (ratios <= 1.0).mean() <= 0.99
    # It can fail: of half the uncertainty too few are within, of three times it too many.
    assert (ratios <= 0.5).mean() < 0.90
    assert (ratios <= 3.0).mean() > 0.99
    # Of 60 sets by themselves nine tenths are known to 4 %: two of those below.
    for ratio in all_of:
        assert (ratio <= 1.0).mean() >= 0.82


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_what_these_pictures_carry_is_not_withheld() -> None:
    assert not [name for name, _ in lots() if name.endswith("withheld")]


@pytest.mark.parametrize(("rate_hz", "f_hz", "carried"), [(10, 2.0, 0), (10, 0.5, 1), (30, 2.0, 1)])
def test_what_too_few_pictures_cannot_carry_is_withheld(
    rate_hz: float, f_hz: float, carried: int
) -> None:
    _, times, yaw = drawn(np.random.default_rng(5), rate_hz, 0.1, f_hz=f_hz)
    turns, movement = told(times, yaw)
    assert len(turns) >= 20
    for key in KEYS:
        found = movement[key]
        parts = [found, found["first_five"], *found.get("by_side", {}).values()]
        for part in parts:
            assert (part["median"] is not None) == bool(carried), (key, part)
            assert part["reason"] == (None if carried else TOO_FEW)
        assert ("difference" in found) == bool(carried)


def movement_of(stated: Stated) -> dict[str, Any]:
    _, times, yaw = drawn(np.random.default_rng(2), 30, 0.1, f_hz=0.5)
    return told(times, yaw, stated)[1]


def test_the_error_of_the_setup_is_the_one_that_is_stated() -> None:
    found = movement_of(STATED)["amplitude_deg"]
    share, offset = WORST["amplitude in yaw"][0] / 100, WORST["head yaw"][0]
    # Each side has its own; of both together the root of two is left.
    assert found["uncertainty"]["setup"] == pytest.approx(
        hypot(share * found["median"], offset / 2**0.5) / 1.96, rel=0.01
    )
    for part in found["by_side"].values():
        assert part["uncertainty"]["setup"] == pytest.approx(
            hypot(share * part["median"], offset) / 1.96, rel=0.01
        )
    # What is off by the same at both ends of a set is no error of their difference.
    difference = found["difference"]
    assert difference["uncertainty"]["setup"] == pytest.approx(
        share * abs(difference["value"]) / 1.96, abs=1e-4
    )
    worse = movement_of(Stated({"distance_mm": 600.0, "glasses": "single"}, frozenset()))
    found = worse["peak_speed_deg_s"]
    assert found["uncertainty"]["setup"] == pytest.approx(
        found["median"] * LOT["peak speed in yaw"] / 100 / 1.96, rel=0.01
    )
    assert stated_share("amplitude", "pitch", within=False) == pytest.approx(0.049 / 1.96)
    assert stated_offset_deg("pitch", within=True) == pytest.approx(0.36 / 1.96)
    assert stated_offset_deg("roll", within=False) == pytest.approx(LOT_DEG["head yaw"] / 1.96)
    assert not is_within({"distance_mm": 600.0, "glasses": "none"}, ["coarse_picture"])
    assert not is_within({"glasses": "none"}, [])
    assert not is_within({"distance_mm": 800.0, "glasses": "none"}, [])


@pytest.mark.parametrize(("flag", "why"), [("no_setup", NO_SETUP), ("far_turned", FAR)])
def test_where_the_setups_error_is_not_known_none_is_told(flag: str, why: str) -> None:
    movement = movement_of(Stated({}, frozenset({flag})))
    for part in (movement["amplitude_deg"], movement["amplitude_deg"]["difference"]):
        assert part["uncertainty"]["expanded"] is None
        assert part["uncertainty"]["reason"] == why
    assert "verdict" not in movement["amplitude_deg"]["difference"]
    # Times do not hang on it.
    assert movement["tempo_bpm"]["uncertainty"]["expanded"] > 0


def test_what_has_none_says_why() -> None:
    movement: dict[str, Any] = {"tempo_bpm": {"median": 30.0}, "swing_mm": {"median": None}}
    add_uncertainties(movement, channel_of("shoulder_lift"), [], [], STATED)
    assert movement["tempo_bpm"]["uncertainty"]["reason"] == OF_BODY
    assert "uncertainty" not in movement["swing_mm"]


@pytest.mark.parametrize("tires", [-0.3, 0.0])
def test_the_last_five_are_called_less_only_beyond_error_and_spread(tires: float) -> None:
    rng = np.random.default_rng(11)
    times = np.arange(0.0, 40.0, 1 / 30)
    size = 18.0 * (1.0 + tires * times / 40.0)
    yaw = size * np.sin(2 * np.pi * 0.5 * times) + 0.1 * rng.standard_normal(len(times))
    found = told(times, yaw)[1]["amplitude_deg"]["difference"]
    assert found["verdict"] == ("fell" if tires else "no_change")
    assert found["verdict"] == called(found["value"], found["least"], found["least"])
    assert found["least"] >= found["uncertainty"]["expanded"]
    # From the middle of the first to that of the last five: 30 of 40 seconds.
    assert found["value"] == pytest.approx(18.0 * tires * 30.0 / 40.0, abs=0.4)


def test_a_summary_has_it_and_twice_the_same() -> None:
    setup = {"distance_mm": 600, "glasses": "none"}
    samples = turns_samples(to_s=44.0)
    one, two = (
        summarise(run_samples(samples, steps(to_s=44.0), SessionInfo(setup=setup)))
        for _ in range(2)
    )
    head = one.exercises[0].head
    assert head is not None and head == two.exercises[0].head
    told_of = head["amplitude_deg"]["by_side"]["right"]["uncertainty"]
    # 18 degrees; the samples' noise of 0.09 degrees, the set-up's 1.28 % and 0.14 degrees: with
    # k = 2 these two alone are 0.54.
    assert 0.54 < told_of["expanded"] < 0.6
    assert told_of["k"] == 2.0
    jsonschema.validate(json.loads(one.model_dump_json()), published("summary"))
    spoilt = json.loads(one.model_dump_json())
    spoilt["exercises"][0]["head"]["amplitude_deg"]["uncertainty"]["k"] = "two"
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(spoilt, published("summary"))


def test_ends_in_holes_leave_the_tempo_its_uncertainty() -> None:
    _, times, yaw = drawn(np.random.default_rng(5), 30, 0.1, f_hz=0.5)
    turns, whole = told(times, yaw)
    ends = np.array([turns[n].peak_s for n in (6, 11, 15)])
    kept = ~((times[:, None] > ends - 0.25) & (times[:, None] < ends + 0.35)).any(axis=1)
    turns, movement = told(times[kept], yaw[kept])
    assert sum(t.hidden for t in turns) == 3
    found = movement["tempo_bpm"]
    assert found["difference"]["value"] is not None
    own = found["uncertainty"]["expanded"], whole["tempo_bpm"]["uncertainty"]["expanded"]
    assert own[1] < own[0] < 2.0 * own[1]
