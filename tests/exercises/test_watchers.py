"""Each watcher just below and just above its threshold.

Thresholds and what must be found: the table of the accuracy issue (a glance of 6
degrees for half a second, a head movement of 4 degrees, a drift of 1.5 degrees).
"""

from __future__ import annotations

from dataclasses import replace
from math import inf, isfinite, isnan, nan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibration.check import GazeCheck
from tests.session.synthetic import WELL_READ, jump_samples, steps, turns_samples
from tracker.exercises.events import Event
from tracker.exercises.watchers import (
    Amplitude,
    Asked,
    EyesClosed,
    NotMeasured,
    OfTurns,
    Tempo,
    off_target_limit_deg,
)
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.figures import NOT_CHECKED, eyes_closed_fraction, gaze_figures
from tracker.session.live import SessionInfo, check_found, setup_gaze_error_deg
from tracker.session.summary import summarise


def events_of(samples: list[Sample], exercise: str = "turns-on-target") -> list[Event]:
    return run_samples(samples, steps(exercise), SessionInfo(setup=WELL_READ)).exercises[0].events


def found(samples: list[Sample], code: str, exercise: str = "turns-on-target") -> list[Event]:
    return [e for e in events_of(samples, exercise) if e.code == code]


class TestGaze:
    @settings(deadline=None)
    @given(
        st.floats(4, 20),
        st.floats(6.2, 14),
        st.floats(0.5, 1.5),
        st.sampled_from([-1, 1]),
        st.sampled_from([15, 30, 60]),
        st.integers(0, 10_000),
    )
    def test_glances_are_found_and_dated(
        self, start: float, size: float, length: float, side: int, rate: float, number: int
    ) -> None:
        glance = (start, start + length, side * size)
        events = found(
            turns_samples(glances=[glance], rate_hz=rate, number=number), "gaze_off_target"
        )
        assert len(events) == 1
        assert events[0].start_s == pytest.approx(start, abs=0.15)
        assert events[0].end_s == pytest.approx(start + length, abs=0.15)
        # Decidable 0.3 s after the start; 0.3 s more are allowed, the look-ahead among them.
        assert events[0].decided_s <= start + 0.3 + 0.3

    @settings(deadline=None)
    @given(st.integers(0, 10_000), st.sampled_from([15, 30, 60]), st.floats(0, 0.6))
    def test_good_sets_raise_nothing(self, number: int, rate: float, noise: float) -> None:
        assert events_of(turns_samples(number=number, rate_hz=rate, noise=noise)) == []

    @pytest.mark.parametrize(
        ("size", "length", "count"),
        [(4.4, 1.0, 0), (6.0, 0.5, 1), (8.0, 0.2, 0), (8.0, 0.4, 1)],
    )
    def test_threshold(self, size: float, length: float, count: int) -> None:
        samples = turns_samples(glances=[(8.0, 8.0 + length, size)], noise=0.1)
        assert len(found(samples, "gaze_off_target")) == count

    def test_slow_drift_is_no_loss_and_a_glance_against_it_is_found(self) -> None:
        drift = turns_samples(offset=lambda t: 2.0 * t / 22)
        assert found(drift, "gaze_off_target") == []
        glance = turns_samples(offset=lambda t: 2.0 * min(t / 8, 1), glances=[(18, 18.6, -6.5)])
        assert len(found(glance, "gaze_off_target")) == 1

    def test_a_constant_loss_is_not_learnt_away(self) -> None:
        events = found(turns_samples(glances=[(2.0, 22.0, 6.0)]), "gaze_off_target")
        assert len(events) == 1
        assert events[0].end_s - events[0].start_s > 19

    def test_blinks_are_no_loss_and_do_not_split_one(self) -> None:
        assert found(turns_samples(shut=[(8, 8.3), (12, 12.4)]), "gaze_off_target") == []
        split = turns_samples(glances=[(8, 10, 9.0)], shut=[(8.8, 9.1)])
        assert len(found(split, "gaze_off_target")) == 1

    def test_nothing_is_decided_without_gaze(self) -> None:
        samples = [
            Sample(s.time_s, head_yaw_deg=s.head_yaw_deg, head_pitch_deg=0.0)
            for s in turns_samples(glances=[(5, 9, 20)])
        ]
        assert found(samples, "gaze_off_target") == []


class TestHead:
    @settings(deadline=None)
    @given(
        st.floats(4, 18),
        st.floats(4.0, 12),
        st.floats(0.2, 0.5),
        st.floats(0.6, 1.3),
        st.integers(0, 10_000),
    )
    def test_movements_from_four_degrees_are_found(
        self, start: float, size: float, rise: float, stay: float, number: int
    ) -> None:
        def head(t: float) -> float:
            up = np.clip((t - start) / rise, 0, 1)
            down = np.clip((t - start - rise - stay) / rise, 0, 1)
            return float(size * (up * up * (3 - 2 * up) - down * down * (3 - 2 * down)))

        events = found(jump_samples(head, number=number), "head_moved", "eyes-side-to-side")
        assert len(events) == 1
        assert events[0].start_s == pytest.approx(start, abs=0.15)
        assert events[0].decided_s <= start + rise + 0.3

    @settings(deadline=None)
    @given(st.floats(-1.5, 1.5), st.floats(0.05, 1), st.integers(0, 10_000))
    def test_movements_up_to_a_degree_and_a_half_are_ignored(
        self, size: float, f_hz: float, number: int
    ) -> None:
        samples = jump_samples(lambda t: size * np.sin(2 * np.pi * f_hz * t) / 2, number=number)
        assert events_of(samples, "eyes-side-to-side") == []
        drift = jump_samples(lambda t: size * t / 22, number=number)
        assert events_of(drift, "eyes-side-to-side") == []

    @pytest.mark.parametrize(("size", "count"), [(2.4, 0), (3.1, 1)])
    def test_threshold(self, size: float, count: int) -> None:
        samples = jump_samples(lambda t: size if 8 <= t < 9 else 0.0, noise=0.05)
        assert len(found(samples, "head_moved", "eyes-side-to-side")) == count

    def test_slow_drift_of_many_degrees_is_followed(self) -> None:
        samples = jump_samples(lambda t: 0.08 * t)
        assert found(samples, "head_moved", "eyes-side-to-side") == []

    def test_a_head_still_again_elsewhere_ends_it(self) -> None:
        samples = jump_samples(lambda t: 6.0 if t > 8 else 0.0, noise=0.1)
        events = found(samples, "head_moved", "eyes-side-to-side")
        assert len(events) == 1
        assert events[0].end_s < 9.0


class TestEyesClosed:
    @pytest.mark.parametrize(("length", "count"), [(0.3, 0), (0.45, 0), (0.6, 1), (1.5, 1)])
    def test_blinks_are_not_closed_eyes(self, length: float, count: int) -> None:
        events = found(turns_samples(shut=[(8, 8 + length)]), "eyes_closed")
        assert len(events) == count
        if count:
            assert events[0].start_s == pytest.approx(8, abs=0.05)
            assert events[0].end_s == pytest.approx(8 + length, abs=0.05)

    @pytest.mark.parametrize(("openness", "on"), [(0.31, False), (0.29, True)])
    def test_threshold(self, openness: float, on: bool) -> None:
        watcher = EyesClosed()
        for k in range(30):
            watcher.feed(Sample(k / 30, eye_open=openness))
        assert watcher.on == on

    @pytest.mark.parametrize("rate_hz", [15, 30, 60])
    def test_shut_lids_that_are_read_to_and_fro_are_shut(self, rate_hz: float) -> None:
        # As on a small face: a quarter of the samples between .3 and .5.
        rng = np.random.default_rng(int(rate_hz))
        samples = turns_samples(shut=[(8, 9.2)], rate_hz=rate_hz)
        read = [
            replace(s, eye_open=float(rng.choice([0.05, 0.15, 0.25, 0.45])))
            if s.eye_open == 0.0
            else s
            for s in samples
        ]
        (event,) = found(read, "eyes_closed")
        assert event.start_s == pytest.approx(8, abs=0.1)
        assert event.end_s == pytest.approx(9.2, abs=0.1)
        told = eyes_closed_fraction(read)["value"]
        assert told == pytest.approx(eyes_closed_fraction(samples)["value"], abs=0.01)

    @pytest.mark.parametrize("lids", [[0.1] * 9 + [0.5] * 6, [0.2] * 9 + [0.8], [0.29, 0.31, 0.35]])
    def test_lids_that_open_or_look_half_open_on_the_whole_are_not(self, lids: list[float]) -> None:
        watcher = EyesClosed()
        changes = [
            c for k in range(90) for c in watcher.feed(Sample(k / 30, eye_open=lids[k % len(lids)]))
        ]
        assert changes == []

    @pytest.mark.parametrize("rate_hz", [15.0, 30.0, 60.0])
    @pytest.mark.parametrize("shut", [1, 2, 6])
    def test_a_share_of_shut_eyes_counts_each_blink(self, shut: int, rate_hz: float) -> None:
        opened = ([1.0] * 20 + [0.1] * shut) * 3
        samples = [Sample(k / rate_hz, eye_open=v) for k, v in enumerate(opened)]
        assert eyes_closed_fraction(samples)["value"] == pytest.approx(shut / (20 + shut), abs=1e-4)

    @pytest.mark.parametrize(("half", "shut"), [([0.5, 0.6], 5), ([0.5, 0.8], 3), ([0.5] * 6, 3)])
    def test_a_flicker_within_a_closing_is_shut_a_look_is_not(
        self, half: list[float], shut: int
    ) -> None:
        opened = [1.0] * 10 + [0.1, 0.1, *half, 0.1] + [1.0] * 10
        samples = [Sample(k / 30, eye_open=v) for k, v in enumerate(opened)]
        assert eyes_closed_fraction(samples)["value"] == pytest.approx(
            shut / len(samples), abs=1e-4
        )

    def test_an_unknown_openness_decides_nothing(self) -> None:
        watcher = EyesClosed()
        assert [c for k in range(60) for c in watcher.feed(Sample(k / 30))] == []

    def test_asked_to_close_the_eyes_it_does_not_watch(self) -> None:
        samples = turns_samples(shut=[(8, 12)])
        record = run_samples(samples, steps("turns-on-target", eyes="closed"), SessionInfo())
        assert "eyes_closed" not in {e.code for e in record.exercises[0].events}


class TestNotMeasured:
    @pytest.mark.parametrize(("length", "count"), [(0.4, 0), (0.6, 1), (3.0, 1)])
    def test_half_a_second(self, length: float, count: int) -> None:
        events = found(turns_samples(lost=[(8, 8 + length)]), "not_measured")
        assert len(events) == count
        if count:
            assert events[0].start_s == pytest.approx(8, abs=0.05)
            assert events[0].end_s == pytest.approx(8 + length, abs=0.05)
            assert events[0].reason == "no_face"
            assert isfinite(events[0].said_at_s)

    def test_missing_samples_count_as_well(self) -> None:
        samples = [s for s in turns_samples() if not 8 < s.time_s < 9]
        events = found(samples, "not_measured")
        assert len(events) == 1
        assert events[0].reason == "gap"

    def test_it_waits_for_nobody(self) -> None:
        watcher = NotMeasured(lambda _: True, 0.0)
        assert watcher.wait(0.45) == []
        assert watcher.wait(0.5)[0].time_s == 0.0
        assert watcher.wait(0.6) == []


def turn(k: int, peak_s: float, amplitude: float = 18.0) -> Turn:
    return Turn(k, "right", peak_s - 0.8, peak_s, peak_s + 0.2, amplitude, 2 * amplitude, 60.0)


def judged(watcher: OfTurns, amplitudes: list[float], step_s: float, asked: Asked) -> bool:
    for k, a in enumerate(amplitudes):
        watcher.turn(turn(k, k * step_s, a), asked)
    return watcher.on


class TestTurns:
    ASKED = Asked((15.0, 20.0), 60.0)

    @pytest.mark.parametrize(
        ("tempo", "step_s", "on"),
        [(10.0, 6.0, True), (10.0, 9.1, False), (60.0, 4.9, True), (60.0, 5.1, False)],
    )
    def test_the_way_of_a_slow_beat_is_no_rest(self, tempo: float, step_s: float, on: bool) -> None:
        asked = Asked((15.0, 20.0), tempo)
        assert judged(Amplitude("too_small"), [10.0] * 6, step_s, asked) == on

    @pytest.mark.parametrize(
        ("code", "size", "on"),
        [
            ("too_small", 13.6, False),
            ("too_small", 13.4, True),
            ("too_large", 24.9, False),
            ("too_large", 25.1, True),
        ],
    )
    def test_amplitude(self, code: str, size: float, on: bool) -> None:
        assert judged(Amplitude(code), [size] * 6, 1.0, self.ASKED) == on

    @pytest.mark.parametrize(
        ("code", "tempo", "on"),
        [
            ("too_slow", 51.5, False),
            ("too_slow", 50.5, True),
            ("too_fast", 68.5, False),
            ("too_fast", 69.5, True),
        ],
    )
    def test_tempo(self, code: str, tempo: float, on: bool) -> None:
        assert judged(Tempo(code), [18.0] * 6, 60 / tempo, self.ASKED) == on

    def test_one_odd_turn_is_no_reason_to_speak(self) -> None:
        assert not judged(Amplitude("too_small"), [18, 18, 18, 6, 18, 18], 1.0, self.ASKED)

    def test_nothing_asked_nothing_wrong(self) -> None:
        assert not judged(Amplitude("too_small"), [5.0] * 6, 1.0, Asked(None, None))
        assert not judged(Tempo("too_slow"), [5.0] * 6, 3.0, Asked(None, None))

    def test_it_is_over_when_it_is_right_again(self) -> None:
        samples = [
            s if s.time_s < 12 else t
            for s, t in zip(
                turns_samples(amplitude=9.0), turns_samples(amplitude=18.0), strict=True
            )
        ]
        events = found(samples, "too_small")
        assert len(events) == 1
        assert events[0].start_s == pytest.approx(2.0, abs=0.2)
        assert 12 < events[0].end_s < 16

    def test_a_rising_tempo_is_judged_by_what_was_asked_then(self) -> None:
        samples = turns_samples(f_hz=0.5)
        for tempo, codes in (([60.0, 60.0], set()), ([60.0, 120.0], {"too_slow"})):
            record = run_samples(samples, steps(tempo_bpm=tempo), SessionInfo())
            assert {e.code for e in record.exercises[0].events} == codes

    def test_unmeasured_amplitudes_do_not_matter(self) -> None:
        assert not judged(Amplitude("too_small"), [nan] * 6, 1.0, self.ASKED)


class TestHowWellTheGazeIsRead:
    """The limit follows the error that the set-up measured."""

    @pytest.mark.parametrize(
        ("error_deg", "limit_deg"), [(nan, 5.0), (0.6, 5.0), (1.25, 5.0), (1.5, 6.0), (2.0, 8.0)]
    )
    def test_the_limit_is_five_degrees_or_four_errors(
        self, error_deg: float, limit_deg: float
    ) -> None:
        assert off_target_limit_deg(error_deg) == limit_deg

    @pytest.mark.parametrize("error_deg", [2.1, inf])
    def test_a_coarse_reading_or_one_that_nobody_checked_gets_no_verdict(
        self, error_deg: float
    ) -> None:
        assert off_target_limit_deg(error_deg) is None

    @pytest.mark.parametrize(("error_deg", "found_ones"), [(0.8, 1), (1.7, 0), (2.5, 0)])
    def test_a_slip_of_six_degrees_is_told_only_where_it_can_be(
        self, error_deg: float, found_ones: int
    ) -> None:
        samples = turns_samples(glances=[(6.0, 7.0, 6.3)], rate_hz=30, number=3)
        about = SessionInfo(setup={"gaze_error_deg": error_deg})
        run = run_samples(samples, steps("turns-on-target"), about).exercises[0]
        assert [e.code for e in run.events].count("gaze_off_target") == found_ones

    @pytest.mark.parametrize("calibration", ["fitted", True])
    def test_a_set_up_that_measured_no_error_allows_no_verdict(self, calibration: object) -> None:
        samples = turns_samples(glances=[(6.0, 7.5, 15.0)], rate_hz=30, number=3)
        about = SessionInfo(setup={"calibration": calibration, "gaze_error_deg": None})
        (told,) = summarise(run_samples(samples, steps("turns-on-target"), about)).exercises
        assert not told.events and told.gaze is not None
        shares = [told.gaze, *told.gaze["by_side"].values()]
        assert len(shares) == 3
        for share in shares:
            assert share["on_target_fraction"]["value"] is None
            assert share["on_target_fraction"]["reason"] == NOT_CHECKED
        assert told.gaze["on_target_within_deg"] is None

    @pytest.mark.parametrize(("error_deg", "said"), [(0.8, True), (3.0, False), (None, False)])
    def test_eyes_that_stay_behind_a_turn_are_told_only_where_they_can_be(
        self, error_deg: float | None, said: bool
    ) -> None:
        # Turns of 20 degrees from end to end, eyes on the wall ahead: half of it is 10.
        samples = turns_samples(amplitude=10.0, rate_hz=30, number=3)
        about = SessionInfo(setup={"calibration": "fitted", "gaze_error_deg": error_deg})
        run = run_samples(samples, steps("turns-together"), about).exercises[0]
        assert ("eyes_not_with_head" in [e.code for e in run.events]) is said

    def test_the_share_on_target_is_withheld_with_its_reason(self) -> None:
        run = run_samples(
            turns_samples(rate_hz=30, number=3), steps("turns-on-target"), SessionInfo()
        )
        samples = run.exercises[0].samples
        fine, coarse = gaze_figures(samples, [], 0.7), gaze_figures(samples, [], 3.0)
        assert fine["on_target_fraction"]["value"] > 0.99
        assert coarse["on_target_fraction"]["value"] is None
        assert "coarsely" in coarse["on_target_fraction"]["reason"]


class TestGlasses:
    """Behind lenses that change from top to bottom, nods say nothing of the eyes."""

    @pytest.mark.parametrize(
        ("glasses", "exercise", "judged"),
        [
            ("varifocal", "nods-on-target", False),
            ("single", "nods-on-target", True),
            (None, "nods-on-target", True),
            ("varifocal", "turns-on-target", True),
        ],
    )
    def test_only_nods_behind_varifocals_are_not_judged(
        self, glasses: str | None, exercise: str, judged: bool
    ) -> None:
        samples = turns_samples(glances=[(6.0, 7.0, 9.0)], rate_hz=30, number=3)
        about = SessionInfo(setup=WELL_READ | {"glasses": glasses})
        run = run_samples(samples, steps(exercise), about).exercises[0]
        assert ("gaze_off_target" in [e.code for e in run.events]) == judged
        figures = gaze_figures(run.samples, [], 0.7)
        assert (figures["on_target_fraction"]["value"] is not None) == judged
        if not judged:
            assert "varifocal" in figures["on_target_fraction"]["reason"]
            assert all(np.isnan(s.gaze_yaw_deg) for s in run.samples)


class TestCheckOfTheGaze:
    """A check that came out worse than the fit's own error decides."""

    @pytest.mark.parametrize(
        ("found", "error_deg"),
        [
            ({}, nan),
            ({"gaze_error_deg": 0.7}, 0.7),
            ({"gaze_error_deg": 0.7, "check": {"gaze_error_deg": 1.6}}, 1.6),
            ({"gaze_error_deg": 0.9, "check": {"gaze_error_deg": 0.5}}, 0.9),
            ({"gaze_error_deg": 0.9, "check": {"gaze_error_deg": None}}, 0.9),
        ],
    )
    def test_the_larger_error_counts(self, found: dict[str, object], error_deg: float) -> None:
        got = setup_gaze_error_deg(found)
        assert got == error_deg or (isnan(got) and isnan(error_deg))

    def test_a_check_that_nobody_made_says_so(self) -> None:
        assert check_found(None)["reason"] == "not asked"
        made = check_found(GazeCheck(0.8123, 30, 2))
        assert made == {"gaze_error_deg": 0.812, "frames": 30, "looks": 2, "reason": None}
        assert check_found(GazeCheck(nan, 0, 0))["gaze_error_deg"] is None
