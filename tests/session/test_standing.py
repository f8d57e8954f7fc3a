"""Sway and time held against exact truth."""

from __future__ import annotations

import numpy as np
import pytest

from tests.exercises.test_body_watchers import between, run, samples
from tests.session.synthetic import FROM_S, TO_S
from tracker.exercises.catalogue import CATALOGUE
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import Step
from tracker.session.standing import held, sway
from tracker.session.summary import exercise_summary
from tracker.session.summary_file import ExerciseSummary


def places(x: np.ndarray, z: np.ndarray, rate_hz: float = 30.0) -> list[Sample]:
    return [
        Sample(k / rate_hz, neck_x_mm=float(a), neck_y_mm=0.0, neck_z_mm=float(b))
        for k, (a, b) in enumerate(zip(x, z, strict=True))
    ]


def summary_of(exercise: str, made: list[Sample], **step: object) -> ExerciseSummary:
    return exercise_summary(run(exercise, made, **step))


class TestSway:
    def test_of_two_sines(self) -> None:
        """Whole cycles of amplitude A have an RMS of A over root 2 and a range of 2 A."""
        t = np.arange(0, 30, 1 / 30)
        found = sway(places(100 + 8 * np.sin(2 * np.pi * 0.2 * t), 12 * np.cos(np.pi * 0.2 * t)))
        assert found["rms_sideways_mm"] == pytest.approx(8 / np.sqrt(2), rel=1e-3)
        assert found["rms_fore_aft_mm"] == pytest.approx(12 / np.sqrt(2), rel=1e-3)
        assert found["range_sideways_mm"] == pytest.approx(16, rel=1e-3)
        assert found["value"] == pytest.approx(np.sqrt((64 + 144) / 2), rel=1e-3)

    @pytest.mark.parametrize("turn_deg", [0, 30, 77])
    def test_the_ellipse_holds_95_percent_whichever_way_it_lies(self, turn_deg: float) -> None:
        rng = np.random.default_rng(3)
        cloud = rng.normal(0, 1, (20_000, 2)) * [5.0, 15.0]
        a = np.radians(turn_deg)
        turned = cloud @ np.array([[np.cos(a), np.sin(a)], [-np.sin(a), np.cos(a)]])
        found = sway(places(*turned.T, rate_hz=500))
        # Semi-axes of root 5.991 times each spread.
        assert found["ellipse_95_mm2"] == pytest.approx(np.pi * 5.9915 * 75, rel=0.02)
        # Counted: so many of the points lie within it.
        spread = np.cov(turned.T)
        away = np.einsum("ij,jk,ik->i", turned, np.linalg.inv(spread), turned)
        size = found["ellipse_95_mm2"] / (np.pi * np.sqrt(np.linalg.det(spread)))
        assert np.mean(away <= size) == pytest.approx(0.95, abs=0.005)

    def test_along_a_line_the_ellipse_is_empty(self) -> None:
        t = np.linspace(0, 10, 400)
        assert sway(places(np.sin(t), 2 * np.sin(t)))["ellipse_95_mm2"] == pytest.approx(
            0, abs=0.01
        )

    @pytest.mark.parametrize("seconds", [0.0, 4.0])
    def test_too_little_is_not_measured(self, seconds: float) -> None:
        found = sway(places(*np.zeros((2, int(30 * seconds)))))
        assert found["value"] is None and "5 seconds" in found["reason"]

    def test_a_head_shake_is_no_sway_of_the_neck(self) -> None:
        made = samples(
            head_yaw_deg=lambda t: 20 * float(np.sin(np.pi * 0.6 * t)),
            head_x_mm=lambda t: 34 * float(np.sin(np.pi * 0.6 * t)),
            neck_x_mm=lambda t: 3 * float(np.sin(t)),
            neck_z_mm=lambda _: 0.0,
        )
        found = summary_of("stand-head-shake", made).sway
        assert found["rms_sideways_mm"] == pytest.approx(3 / np.sqrt(2), rel=0.06)

    @pytest.mark.parametrize(
        ("exercise", "why"),
        [
            ("turns-on-target", "not a standing exercise"),
            ("ankle-sway", "itself a sway"),
            ("walk", "not a standing exercise"),
            ("partner-turns", "does not count"),
        ],
    )
    def test_where_there_is_none_the_reason_is_given(self, exercise: str, why: str) -> None:
        found = summary_of(exercise, samples()).sway
        assert found["value"] is None and why in found["reason"]


class TestHeld:
    ALL_S = TO_S - FROM_S

    def done(self, made: list[Sample], **step: object) -> tuple[float | None, float | None]:
        done = summary_of("stand", made, **step).done
        return done.held_s, done.held_longest_s

    def test_all_of_it(self) -> None:
        wobble = {a: lambda t: 25 * float(np.sin(1.5 * t)) for a in ("head_x_mm", "head_z_mm")}
        assert self.done(samples(**wobble)) == (self.ALL_S, self.ALL_S)

    @pytest.mark.parametrize(("start", "lasts"), [(6.0, 0.8), (9.0, 3.0), (15.0, 1.5)])
    def test_eyes_that_open_interrupt_it(self, start: float, lasts: float) -> None:
        look = between((0, FROM_S), (start, start + lasts), inside=0.9, outside=0.05)
        total, longest = self.done(samples(eye_open=look), eyes="closed")
        assert total == pytest.approx(self.ALL_S - lasts, abs=0.2)
        assert longest == pytest.approx(max(start - FROM_S, TO_S - start - lasts), abs=0.2)

    def test_blinks_and_short_holes_do_not(self) -> None:
        blinks = between((5, 5.3), (9, 9.4), inside=0.05, outside=0.9)
        made = samples(eye_open=blinks, lost=lambda t: 12 <= t < 12.4)
        assert self.done(made) == (self.ALL_S, self.ALL_S)

    def test_shut_eyes_interrupt_what_is_done_with_open_ones(self) -> None:
        made = samples(eye_open=between((8, 11), inside=0.05, outside=0.9))
        assert self.done(made)[0] == pytest.approx(self.ALL_S - 3, abs=0.2)

    def test_out_of_sight_is_not_held(self) -> None:
        assert self.done(samples(lost=lambda t: 8 <= t < 12))[0] == pytest.approx(
            self.ALL_S - 4, abs=0.2
        )

    @pytest.mark.parametrize("axis", ["head_x_mm", "head_z_mm", "head_y_mm"])
    def test_a_step_aside_or_sitting_down_is_not_in_place(self, axis: str) -> None:
        away = between((10, 13), inside=-350.0, outside=0.0)
        assert self.done(samples(**{axis: away}))[0] == pytest.approx(self.ALL_S - 3, abs=0.2)

    def test_nothing_seen_is_nothing_held(self) -> None:
        assert held([], [], 0.0, 10.0)["value"] == 0.0
        assert self.done(samples(lost=lambda _: True))[0] == pytest.approx(0.0, abs=0.1)

    @pytest.mark.parametrize("exercise", CATALOGUE.values(), ids=lambda e: e.id)
    def test_only_what_is_held_has_a_time_held(self, exercise) -> None:
        record = run_samples(
            samples(to_s=6.0),
            [Step(from_s=FROM_S, to_s=6.0, step="exercise", exercise=exercise.id)],
            SessionInfo(),
        ).exercises[0]
        timed = (
            exercise.posture == "standing" and exercise.dose_seconds and "chair" not in exercise.id
        )
        expected = exercise.channel == "held" or bool(timed)
        assert (exercise_summary(record).done.held_s is not None) == expected


class TestBody:
    def test_figures_of_stands(self) -> None:
        def height(t: float) -> float:
            u = (t - FROM_S - 1) % 4.0 if 0 <= t - FROM_S - 1 < 16 else 3.99
            return 380 * float(np.clip(min(u / 1.2, (2.9 - u) / 1.2), 0, 1))

        found = summary_of("sit-to-stand", samples(head_y_mm=height))
        assert found.done.repetitions == 4
        assert found.head is None and found.body is not None
        assert found.body["swing_mm"]["by_side"]["up"]["median"] == pytest.approx(380, abs=8)
        # Straight ramps: from 5 to 95 % of the way.
        assert found.body["time_s"]["by_side"]["up"]["median"] == pytest.approx(1.08, abs=0.12)
        assert found.body["rhythm_s"]["median"] == pytest.approx(4.0, abs=0.1)
        row = found.repetitions_list[0]
        assert [t["side"] for t in row["turns"]] == ["up", "down"]
        assert row["turns"][0]["amplitude_deg"] is None
        assert row["turns"][0]["swing_mm"] == pytest.approx(380, abs=8)

    def test_tilts_are_counted_with_their_size(self) -> None:
        made = samples(head_roll_deg=lambda t: 22 * float(np.sin(2 * np.pi * (t - 2) / 5)))
        found = summary_of("head-tilts", made)
        assert found.done.repetitions == 4 and found.body is None
        assert found.head["amplitude_deg"]["median"] == pytest.approx(22, abs=0.5)

    def test_weight_shifts_have_a_rhythm(self) -> None:
        made = samples(head_x_mm=lambda t: 60 * float(np.sin(2 * np.pi * (t - 2) / 4)))
        found = summary_of("weight-shift", made)
        assert found.done.repetitions == 5
        assert found.body["tempo_bpm"]["median"] == pytest.approx(30, rel=0.03)
        assert found.body["amplitude_mm"]["by_side"]["left"]["median"] == pytest.approx(
            60, rel=0.03
        )
