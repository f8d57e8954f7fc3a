"""Whole sets, from their samples to what is told: what is called, what is withheld, and why."""

from __future__ import annotations

import json
from dataclasses import replace
from math import isnan, nan
from typing import Any

import jsonschema
import numpy as np
import pytest

from tests.session.drawn_turns import drawn
from tests.session.synthetic import steps, turns_samples
from tests.ui.test_small_first import asked_for, jumps_of
from tracker.records.figures import SessionFigures, record_of
from tracker.sample import Sample
from tracker.session.at_target import look_error_deg
from tracker.session.bench import WORST
from tracker.session.clip_run import run_samples
from tracker.session.figures import NOT_CHECKED
from tracker.session.live import SessionInfo
from tracker.session.reckoned import MEDIAN_ANGLE, NO_SETUP, Stated
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary
from tracker.session.uncertain import (
    FASTER_ASKED,
    MORE_ASKED,
    NOT_OF_ASKED,
    SLOWER_ASKED,
    TOO_FEW,
    add_to_ratio,
)
from ui.commands.schema import published
from ui.documents.charts import amplitude_chart
from ui.documents.csv import repetitions_csv
from ui.documents.html import html_document

SETUP: dict[str, Any] = {"distance_mm": 600.0, "glasses": "none", "gaze_error_deg": 0.5}


def told(samples: list[Sample], step: Step, setup: dict[str, Any] = SETUP) -> Summary:
    """A session of one set, as it is saved."""
    found = summarise(run_samples(samples, [step], SessionInfo(setup=setup)))
    jsonschema.validate(json.loads(found.model_dump_json()), published("summary"))
    return found


def eyes_on(track_of: Step) -> tuple[list[Sample], Step]:
    """Eyes that come to each target of a track a quarter of a second after it."""
    rng = np.random.default_rng(3)
    jumps = jumps_of(replace(asked_for(), step=track_of))
    end_s = jumps[20][0] + 0.2
    samples = []
    for t in np.arange(0.0, end_s, 1 / 30):
        gone = [deg for at_s, deg in jumps if at_s + 0.25 <= t]
        e = rng.normal(0.0, 0.2, 2)
        still = dict.fromkeys(("head_yaw_deg", "head_pitch_deg", "head_roll_deg"), 0.0)
        still |= dict.fromkeys(("head_x_mm", "head_y_mm", "head_z_mm"), 0.0)
        look = float(gone[-1] if gone else 0.0) + float(e[1])
        samples.append(
            Sample(float(t), **still, eye_yaw_deg=float(e[0]), eye_pitch_deg=look, eye_open=0.9)
        )
    return samples, track_of.until(end_s)


# --- the set itself asked for more, or for faster ---


def test_a_set_that_grows_by_itself_is_not_called_larger_or_faster() -> None:
    samples, step = eyes_on(asked_for().step)
    grown = told(samples, step)
    (exercise,) = grown.exercises
    assert exercise.eyes is not None and exercise.done.repetitions == 10
    amplitude, tempo = (exercise.eyes[k]["difference"] for k in ("amplitude_deg", "tempo_bpm"))
    assert amplitude["value"] > 2.0 and amplitude["uncertainty"]["expanded"] < amplitude["value"]
    assert (amplitude["uncalled"], tempo["uncalled"]) == (MORE_ASKED, FASTER_ASKED)
    assert "verdict" not in amplitude and "verdict" not in tempo
    (figures,) = record_of(grown).exercises
    for key, why in (("amplitude_deg", MORE_ASKED), ("tempo_bpm", FASTER_ASKED)):
        verdict = figures.find(f"{key}.verdict")
        assert verdict is not None and (verdict.value, verdict.reason) == (None, why)
    # It can fail: the same eyes in a set that doesn't say that it grows are called so.
    bare = {k: v for k, v in step.model_dump().items() if k != "grows"}
    plain = Step.model_validate(bare | {"tempo_bpm": 50.0})
    other = told(samples, plain).exercises[0].eyes
    assert other is not None and other["amplitude_deg"]["difference"]["verdict"] == "rose"


@pytest.mark.parametrize(
    ("tempo", "why"),
    [([40.0, 80.0], FASTER_ASKED), ([80.0, 40.0], SLOWER_ASKED), (60.0, None), ([60, 60], None)],
)
def test_where_another_tempo_was_asked_tempo_and_speed_are_not_called(
    tempo: Any, why: str | None
) -> None:
    _, step = steps(to_s=44.0)
    asked = Step.model_validate(step.model_dump() | {"tempo_bpm": tempo})
    head = told(turns_samples(to_s=44.0), asked).exercises[0].head
    assert head is not None
    for key in ("tempo_bpm", "peak_speed_deg_s"):
        difference = head[key]["difference"]
        assert difference.get("uncalled") == why
        assert ("verdict" in difference) == (why is None)
    assert head["amplitude_deg"]["difference"]["verdict"] == "no_change"


def test_the_speed_of_a_head_that_was_asked_for_more_is_not_called_either() -> None:
    _, step = steps(to_s=44.0, grows={"begins_with": 0.4, "over_s": 15.0})
    head = told(turns_samples(to_s=44.0), step).exercises[0].head
    assert head is not None
    for key in ("amplitude_deg", "peak_speed_deg_s"):
        assert head[key]["difference"]["uncalled"] == MORE_ASKED
    assert "uncalled" not in head["tempo_bpm"]["difference"]


# --- the error of a look ---

ON_WALL = {"wall": {"distance_mm": 1500.0, "spacing_mm": 400.0}}


@pytest.mark.parametrize(
    ("found", "screen", "wall"),
    [
        ({}, nan, nan),
        ({"gaze_error_deg": 0.7}, 0.7, 0.7),
        ({"gaze_error_deg": 0.7, "check": {"gaze_error_deg": 0.4}}, 0.7, 0.7),
        ({"gaze_error_deg": 0.7, "check": {"gaze_error_deg": 1.1}}, 1.1, 1.1),
        ({"gaze_error_deg": 0.7, "wall_check": {"gaze_error_deg": 1.3}}, 0.7, 1.3),
        ({"wall_check": {"gaze_error_deg": 1.3}}, nan, 1.3),
    ],
)
def test_one_error_of_a_look_for_limits_and_uncertainties(
    found: dict[str, Any], screen: float, wall: float
) -> None:
    samples, step = eyes_on(asked_for().step)
    for asked, error in ((step, screen), (step.model_copy(update=ON_WALL), wall)):
        got = look_error_deg(asked, found)
        assert got == error or (isnan(got) and isnan(error))
        eyes = told(samples, asked, found | {"distance_mm": 600.0}).exercises[0].eyes
        assert eyes is not None
        # Of both sides too: it may be too large on both.
        stated = eyes["amplitude_deg"]["uncertainty"]["setup"]
        known = WORST["eye yaw, head still"][0] / 1.96 if isnan(error) else error / MEDIAN_ANGLE
        assert stated == pytest.approx(known, abs=1e-4)


def test_the_median_angle_of_two_directions_is_that_of_rayleigh() -> None:
    """Drawn, and against the closed form 2 ln 2 (Rayleigh 1880)."""
    off = np.random.default_rng(5).standard_normal((200_000, 2))
    assert np.median(np.hypot(*off.T)) == pytest.approx(MEDIAN_ANGLE, rel=0.01)
    assert pytest.approx(1.17741, abs=1e-5) == MEDIAN_ANGLE


# --- an uncertainty that there is none of ---


def labels(record: SessionFigures) -> dict[str, str | None]:
    (exercise,) = record.exercises
    found = [f for f in exercise.figures if "uncertainty" in (f.aspect, f.measure)]
    assert all(f.value is None for f in found)
    return {f.key: f.reason for f in found}


def test_each_figure_without_an_uncertainty_says_why() -> None:
    """A short set without a set-up, whose tempo alone has one."""
    short = turns_samples(to_s=12.0)
    _, step = steps(to_s=12.0)
    blind = record_of(
        summarise(run_samples(short, [step], SessionInfo(setup=SETUP, notes=("no_setup",))))
    )
    assert labels(blind) == {
        "amplitude_deg.uncertainty": NO_SETUP,
        "peak_speed_deg_s.uncertainty": NO_SETUP,
    }
    said = f'<dt>Amplitude, uncertainty</dt><dd class="none">not measured ({NO_SETUP})</dd>'
    assert said in html_document([blind])
    tempo = blind.exercises[0].find("tempo_bpm")
    assert tempo is not None and tempo.error is not None
    assert labels(record_of(told(short, step))) == {}


def test_a_share_of_what_was_asked_says_that_none_is_reckoned() -> None:
    samples, step = eyes_on(asked_for().step)
    assert labels(record_of(told(samples, step))) == {"reach_percent.uncertainty": NOT_OF_ASKED}


# --- what is withheld ---


def fast(rate_hz: float) -> Summary:
    _, times, yaw = drawn(np.random.default_rng(5), rate_hz, 0.1, f_hz=2.0)
    still = dict.fromkeys(("head_pitch_deg", "head_roll_deg"), 0.0)
    still |= dict.fromkeys(("head_x_mm", "head_y_mm", "head_z_mm"), 0.0)
    samples = [
        Sample(float(t), head_yaw_deg=float(v), **still) for t, v in zip(times, yaw, strict=True)
    ]
    _, step = steps(to_s=float(times[-1]) + 0.1)
    return told(samples, step.model_copy(update={"from_s": 0.0}))


@pytest.mark.parametrize(("rate_hz", "carried"), [(10, False), (30, True)])
def test_what_is_withheld_of_a_set_is_withheld_of_its_turns(rate_hz: float, carried: bool) -> None:
    found = fast(rate_hz)
    (exercise,) = found.exercises
    assert exercise.head is not None and len(exercise.repetitions_list) > 8
    assert (exercise.head["amplitude_deg"]["reason"] == TOO_FEW) != carried
    for row in exercise.repetitions_list:
        assert row.get("reason") == (None if carried else TOO_FEW)
        assert row["start_s"] < row["end_s"]
        for name in ("amplitude_deg", "time_s"):
            assert all((turn[name] is not None) == carried for turn in row["turns"])
        assert carried or all(turn["peak_speed_deg_s"] is None for turn in row["turns"])
    record = record_of(found)
    assert (amplitude_chart(record.exercises[0]) is not None) == carried
    table = repetitions_csv([record]).decode("utf-8-sig")
    assert "withheld because" in table and (TOO_FEW in table) != carried


def test_a_summary_of_before_draws_no_turns_of_what_is_withheld() -> None:
    data = json.loads(fast(10).model_dump_json())
    for row in data["exercises"][0]["repetitions_list"]:
        row.pop("reason")
        for turn in row["turns"]:
            turn |= {"amplitude_deg": 12.0, "peak_speed_deg_s": 90.0, "time_s": 0.25}
    assert amplitude_chart(record_of(Summary.model_validate(data)).exercises[0]) is None


# --- how far the eyes turn back ---


def turned_back(off: float, number: int, noise_deg: float = 0.5) -> list[Sample]:
    """Turns with the eyes on the target, read too far out by a share, with noise."""
    rng = np.random.default_rng(number)
    made = turns_samples(noise=0.0, number=number, f_hz=float(rng.uniform(0.4, 0.8)))
    return [
        replace(
            s,
            eye_yaw_deg=(s.gaze_yaw_deg - s.head_yaw_deg) * (1.0 + off)
            + rng.normal(0.0, noise_deg),
            eye_pitch_deg=0.0,
            gaze_yaw_deg=nan,
            gaze_pitch_deg=nan,
        )
        for s in made
    ]


def test_what_is_right_lies_within_the_uncertainty_of_the_counter_turn() -> None:
    rows = [f"counter-turn ratio while turning{of}" for of in ("", ", eyes that lag")]
    stated = max(WORST[row][0] for row in rows) / 1.96
    inside, widths = 0, []
    for number, off in enumerate(np.random.default_rng(9).normal(0.0, stated / 1.16, 40).tolist()):
        (found,) = told(turned_back(off, number), steps()[1]).exercises
        assert found.gaze is not None
        ratio = found.gaze["counter_turn_ratio"]
        error = ratio["uncertainty"]["expanded"]
        inside += abs(ratio["median"] - ratio["expected"]) <= error
        widths.append(error)
        for side in ratio["by_side"].values():
            assert side["uncertainty"]["expanded"] >= 2.0 * stated - 1e-4
    assert inside >= 36 and max(widths) < 0.1


def test_of_nods_the_counter_turn_is_known_less_well() -> None:
    def of(sides: tuple[str, str]) -> float:
        exact = {"median": 1.2, "spread": 0.0, "n": 9}
        ratio: dict[str, Any] = exact | {"by_side": {side: dict(exact) for side in sides}}
        add_to_ratio(ratio, Stated(SETUP, frozenset(), look_deg=0.5))
        (told,) = {p["uncertainty"]["expanded"] for p in (ratio, *ratio["by_side"].values())}
        return float(told)

    row = "counter-turn ratio while {}"
    assert of(("left", "right")) == pytest.approx(
        2 * WORST[row.format("turning")][0] / 1.96, abs=1e-3
    )
    assert of(("down", "up")) == pytest.approx(2 * WORST[row.format("nodding")][0] / 1.96, abs=1e-3)
    assert of(("down", "up")) > of(("left", "right"))


@pytest.mark.parametrize(
    ("setup", "expanded_is", "reason"),
    [
        (SETUP, "within", None),
        (SETUP | {"glasses": "single"}, "by lot", None),
        ({"distance_mm": 600.0, "glasses": "none"}, "", NOT_CHECKED),
    ],
)
def test_the_counter_turn_says_what_is_known_of_its_error(
    setup: dict[str, Any], expanded_is: str, reason: str | None
) -> None:
    session = told(turned_back(0.0, 1, noise_deg=0.0), steps()[1], setup)
    (found,) = session.exercises
    assert found.gaze is not None
    of = found.gaze["counter_turn_ratio"]["uncertainty"]
    assert of["reason"] == reason
    stated = {"within": 0.05, "by lot": 0.07}.get(expanded_is)
    # Next to no noise: the set-up's error alone.
    assert of["expanded"] == (
        None if stated is None else pytest.approx(2 * stated / 1.96, abs=0.005)
    )
    shown = [
        f.error
        for e in record_of(session).exercises
        for f in e.figures
        if f.measure == "counter_turn"
    ]
    assert (shown[0] is None) == (stated is None)
