"""A hand that comes near and goes out again: made-up keypoints (logic only)."""

from __future__ import annotations

from dataclasses import replace
from math import cos, isfinite, nan, pi

import numpy as np
import pytest

from tests.body.test_raised import HANGING, sample_of
from tests.session.test_engine import near_far_session
from tracker.exercises.near_hand import (
    EYES_UNREAD,
    NOT_LOOKED_FOR,
    NOT_SEEN,
    WITHIN_ERROR,
    NearCounter,
    near_hand,
)
from tracker.records.figure import shown_with_unit
from tracker.records.of_body import hand_figures
from tracker.records.places import Place
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary

#: As a rendered arm was read: near the face, and held out.
NEAR = (20.0, -210.0, -115.0, -462.0)
OUT = (25.0, -335.0, -160.0, -320.0)
#: An arm that lies on the table.
AT_REST = {
    "wrist_left_x_mm": -120.0,
    "wrist_left_y_mm": -420.0,
    "elbow_left_x_mm": -260.0,
    "elbow_left_y_mm": -430.0,
}


def moved(share: float) -> tuple[float, float, float, float]:
    """The arm that carries the fingertip: 0 held out, 1 near."""
    return tuple(o + share * (n - o) for n, o in zip(NEAR, OUT, strict=True))  # type: ignore[return-value]


def cycles_of(
    rng: np.random.Generator, count: int, every_s: float, *, seen: float = 1.0
) -> list[Sample]:
    """So many cycles, slow or quick, uneven, with pauses at the ends."""
    spans, now = [], 1.0
    for _ in range(count):
        takes = float(rng.uniform(2.5, 7.0))
        spans.append((now, takes))
        now += takes + float(rng.uniform(0, 1.5))
    samples = []
    for t in np.arange(0.0, now + 1.0, every_s):
        share = sum(0.5 - 0.5 * cos(2 * pi * (t - a) / b) for a, b in spans if a <= t < a + b)
        arm = tuple(v + rng.normal(0, 8.0) for v in moved(float(share)))
        right = arm if rng.random() < seen else None
        samples.append(sample_of(float(t), right, HANGING))  # type: ignore[arg-type]
    return samples


@pytest.mark.parametrize("every_s", [1 / 15, 0.12, 0.2])
def test_a_hundred_sets_are_counted(every_s: float) -> None:
    """Exactly where the arm is looked at as usual, within one where seldom."""
    rng = np.random.default_rng(7)
    for _ in range(100):
        count = int(rng.integers(3, 12))
        found = near_hand(cycles_of(rng, count, every_s, seen=0.85))
        assert found.cycles is not None and found.side == "right"
        assert abs(found.cycles - count) <= (every_s > 0.15)


def test_a_hand_that_is_held_or_trembles_does_nothing() -> None:
    rng = np.random.default_rng(2)
    for share in (0.0, 0.5, 1.0):
        samples = [
            sample_of(t, tuple(v + rng.normal(0, 12.0) for v in moved(share)), HANGING)  # type: ignore[arg-type]
            for t in np.arange(0.0, 30.0, 1 / 15)
        ]
        assert near_hand(samples).cycles == 0


def test_small_ways_are_no_cycles() -> None:
    """The finger goes a third of its way to and fro."""
    samples = [
        sample_of(t, moved(0.5 + 0.16 * cos(2 * pi * t / 4)), HANGING)
        for t in np.arange(0.0, 30.0, 1 / 15)
    ]
    assert near_hand(samples).cycles == 0


def test_an_arm_that_is_seldom_seen_tells_nothing() -> None:
    found = near_hand(cycles_of(np.random.default_rng(3), 5, 1 / 15, seen=0.4))
    assert found.cycles is None and found.reason == NOT_SEEN
    blind = near_hand([Sample(k / 30, head_yaw_deg=0.0) for k in range(300)])
    assert blind.cycles is None and blind.reason == NOT_LOOKED_FOR


def told(summary: object) -> dict[str, str]:
    place = Place({"hand": summary})
    return {f.label: shown_with_unit(f) for f in hand_figures(place)}


def test_the_summary_says_what_it_was_counted_from() -> None:
    def vergence(t: float) -> float:
        return 9.0 - 3.0 * cos(2 * pi * (t - 2.0) / 6.0)

    (alone,) = near_far_session(vergence).exercises
    assert alone.hand is not None and alone.hand["cycles"] is None
    assert told(alone.hand) == {
        "Near and far by the hand": f"not measured ({NOT_LOOKED_FOR})",
        "Near and far by the eyes": "10",
        "Counted from": "how far the eyes turn in",
        "Eyes went along with the finger": f"not measured ({NOT_LOOKED_FOR})",
    }
    assert isfinite(alone.done.repetitions or 0) and alone.done.repetitions
    both = told(alone.hand | {"cycles": 9, "counted_from": ["vergence", "hand"], "reason": None})
    assert both["Near and far by the hand"] == "9"
    assert both["Counted from"] == (
        "how far the eyes turn in and the arm that carries the fingertip"
    )
    assert told(None) == {}


Spans = list[tuple[float, float]]


def hand_and_eyes(
    rng: np.random.Generator,
    count: int,
    *,
    hidden: Spans = [],  # noqa: B006 -- never written to
    unread: Spans = [],  # noqa: B006
    turned_in_deg: float = 6.0,
    noise_deg: float = 0.7,
    rests: Spans = [],  # noqa: B006
) -> tuple[list[Sample], float]:
    """A set of so many cycles at 30 pictures a second, the arm looked at in every fourth.

    ``hidden`` and ``unread`` are when the arm is out of the picture and when the eyes are not
    read; in ``rests`` the finger waits and the eyes go their own way. Gives its end, too.
    """
    now, spans = 1.0, []
    for _ in range(count):
        for a, b in rests:
            now = b if a <= now < b else now
        takes = float(rng.uniform(3.0, 7.0))
        spans.append((now, takes))
        now += takes + float(rng.uniform(0, 1.0))
    drift = rng.uniform(0, 2 * pi)
    samples = []
    for k, t in enumerate(np.arange(0.0, now + 1.0, 1 / 30)):
        share = sum(0.5 - 0.5 * cos(2 * pi * (t - a) / b) for a, b in spans if a <= t < a + b)
        eyes = 6.0 + turned_in_deg * share + 0.4 * np.sin(0.3 * t + drift)
        if any(a <= t < b for a, b in rests):
            eyes += 2.5 - 2.5 * np.cos(2 * pi * (t - rests[0][0]) / 4.0)
        eyes += rng.normal(0.0, noise_deg)
        gone = any(a <= t < b for a, b in hidden)
        arm = None if gone or rng.random() < 0.1 else moved(float(share))
        if arm is not None:
            arm = tuple(v + rng.normal(0, 8.0) for v in arm)  # type: ignore[assignment]
        sample = sample_of(float(t), arm, HANGING) if k % 4 == 0 else Sample(float(t))
        read = nan if any(a <= t < b for a, b in unread) else float(eyes)
        still = {"head_yaw_deg": 0.0, "head_pitch_deg": 0.0, "head_roll_deg": 0.0}
        samples.append(replace(sample, vergence_deg=read, eye_open=1.0, **still))
    return samples, now


def summary_of(samples: list[Sample]) -> ExerciseSummary:
    step = Step(from_s=0.0, to_s=samples[-1].time_s + 0.1, step="exercise", exercise="near-far")
    (found,) = summarise(run_samples(samples, [step], SessionInfo())).exercises
    return found


def sources(found: ExerciseSummary) -> list[str]:
    assert found.hand is not None
    return found.hand["counted_from"]  # type: ignore[no-any-return]


@pytest.mark.parametrize("number", range(8))
def test_it_is_counted_from_the_hand_that_is_seen_though_the_eyes_are_not_read(number: int) -> None:
    rng = np.random.default_rng(number)
    count = int(rng.integers(4, 10))
    samples, _ = hand_and_eyes(rng, count, unread=[(0.0, 999.0)] if number % 2 else [])
    found = summary_of(samples)
    assert found.done.repetitions == count and sources(found) == ["hand"]
    assert found.hand is not None
    assert found.hand["vergence_cycles"] == (None if number % 2 else count)


@pytest.mark.parametrize("number", range(8))
def test_where_the_hand_goes_out_of_the_picture_the_eyes_are_counted(number: int) -> None:
    """No cycle is told twice, and none is lost but at the seams (within one: row 7)."""
    rng = np.random.default_rng(100 + number)
    count = int(rng.integers(6, 12))
    from_s = float(rng.uniform(6.0, 12.0))
    samples, _ = hand_and_eyes(rng, count, hidden=[(from_s, from_s + float(rng.uniform(6, 15)))])
    found = summary_of(samples)
    assert found.done.repetitions is not None and abs(found.done.repetitions - count) <= 1
    assert sources(found) == ["hand", "vergence"]
    never, _ = hand_and_eyes(rng, count, hidden=[(0.0, 999.0)])
    alone = summary_of(never)
    assert alone.done.repetitions == count and sources(alone) == ["vergence"]


def test_forty_sets_with_the_arm_gone_twice_are_counted_exactly() -> None:
    """By the counter alone; seeds that were not looked at while it was made."""
    for number in range(9000, 9040):
        rng = np.random.default_rng(number)
        count, at = int(rng.integers(6, 12)), float(rng.uniform(2, 20))
        first, second = float(rng.uniform(1, 12)), float(rng.uniform(1, 9))
        gone = [(at, at + first), (at + 14.0, at + 14.0 + second)]
        samples, _ = hand_and_eyes(rng, count, hidden=gone)
        counter = NearCounter()
        for sample in samples:
            counter.feed(sample)
        counter.finish()
        assert counter.repetitions == count


def test_eyes_that_wander_while_the_finger_waits_are_no_cycle() -> None:
    samples, _ = hand_and_eyes(np.random.default_rng(4), 6, rests=[(14.0, 22.0)])
    found = summary_of(samples)
    assert found.done.repetitions == 6
    assert found.hand is not None and found.hand["vergence_cycles"] > 6


def test_an_arm_at_rest_in_the_picture_leaves_the_count_to_the_eyes() -> None:
    """The other one carries the fingertip, and is not seen."""
    rng = np.random.default_rng(6)
    samples, _ = hand_and_eyes(rng, 6, hidden=[(0.0, 999.0)])
    lying = [
        replace(s, **{k: v + rng.normal(0, 8.0) for k, v in AT_REST.items()})
        if isfinite(s.body_seen)
        else s
        for s in samples
    ]
    found = summary_of(lying)
    assert found.done.repetitions == 6 and sources(found) == ["vergence"]


def with_lifts(samples: list[Sample], at_s: list[float], takes_s: float = 2.0) -> list[Sample]:
    """The left arm goes up to the glasses and back at these times, before the face and seen."""
    rng, found = np.random.default_rng(8), []
    for s in samples:
        if isfinite(s.body_seen):
            shares = [(s.time_s - at) / takes_s for at in at_s]
            share = sum(0.5 - 0.5 * cos(2 * pi * u) for u in shares if 0.0 <= u <= 1.0)
            x, y, elbow_x, elbow_y = moved(float(share))
            left = {"wrist_left_x_mm": -x, "wrist_left_y_mm": y + rng.normal(0, 8.0)}
            left |= {"elbow_left_x_mm": -elbow_x, "elbow_left_y_mm": elbow_y}
            s = replace(s, **left)
        found.append(s)
    return found


@pytest.mark.parametrize("at_s", [[1.0], [12.0], [30.0], [8.0, 31.0]])
def test_the_other_arm_that_moves_by_the_way_takes_nothing_from_the_eyes(at_s: list[float]) -> None:
    """The finger's arm is out of the picture; live, too, the set comes to its end in time."""
    for number in range(7300, 7306):
        samples, end_s = hand_and_eyes(np.random.default_rng(number), 10, hidden=[(0.0, 999.0)])
        counter, by_s = NearCounter(), []
        for sample in with_lifts(samples, at_s):
            counter.feed(sample)
            by_s.append((sample.time_s, counter.repetitions))
        counter.finish()
        # Each lift is a way of its own, which may take one away or add one.
        assert abs(counter.repetitions - 10) <= len(at_s)
        # Never further behind than by the two cycles in which nothing is known.
        half = next(n for t, n in by_s if t >= 0.5 * end_s)
        assert half >= 2, "in the middle of the set most were passed over"


def test_an_arm_that_wanders_off_after_carrying_the_finger_is_not_waited_for() -> None:
    """Four cycles by the right hand, then by the left one, unseen; the right one lies."""
    first, end_s = hand_and_eyes(np.random.default_rng(31), 4)
    then, _ = hand_and_eyes(np.random.default_rng(32), 6, hidden=[(0.0, 999.0)])
    still = np.random.default_rng(33)
    lying: list[Sample] = []
    for s in then:
        moment = replace(s, time_s=s.time_s + end_s + 1.0)
        if isfinite(s.body_seen):
            body = sample_of(s.time_s, tuple(v + still.normal(0, 8.0) for v in OUT), HANGING)  # type: ignore[arg-type]
            names = [n for n in Sample.__dataclass_fields__ if n.startswith(("wrist", "elbow"))]
            moment = replace(moment, **{n: getattr(body, n) for n in names})
        lying.append(moment)
    counter = NearCounter()
    for sample in [*first, *lying]:
        counter.feed(sample)
    counter.finish()
    assert abs(counter.repetitions - 10) <= 1


def test_the_turning_in_of_the_eyes_is_told_of_the_eyes_whatever_was_counted() -> None:
    samples, _ = hand_and_eyes(np.random.default_rng(8), 6)
    found = summary_of(samples)
    assert found.eyes is not None
    assert found.eyes["vergence_change_deg"]["median"] == pytest.approx(6.0, abs=0.6)
    assert found.repetitions_list[0]["turns"][0]["swing_mm"] > 200


@pytest.mark.parametrize(
    ("turned_in_deg", "noise_deg", "followed"),
    [(6.0, 0.7, True), (4.0, 0.9, True), (0.0, 0.7, False), (0.5, 0.9, False)],
)
def test_eyes_that_do_not_follow_are_told_only_beyond_their_error(
    turned_in_deg: float, noise_deg: float, followed: bool | None
) -> None:
    """4 degrees: those of the narrowest eyes, read by a fifth too short."""
    for number in range(3):
        rng = np.random.default_rng(200 + number)
        samples, _ = hand_and_eyes(rng, 7, turned_in_deg=turned_in_deg, noise_deg=noise_deg)
        found = summary_of(samples)
        assert found.done.repetitions == 7 and found.hand is not None
        assert found.hand["eyes_followed"]["value"] is followed
        flagged = "eyes_not_with_finger" in {f.flag for f in found.quality}
        assert flagged == (followed is False)
        assert (found.hand["eyes_followed"]["reason"] is None) == (followed is not None)


def test_what_lies_within_the_error_is_no_verdict() -> None:
    samples, _ = hand_and_eyes(np.random.default_rng(9), 5, turned_in_deg=2.2, noise_deg=0.9)
    found = summary_of(samples)
    assert found.hand is not None and found.hand["eyes_followed"]["value"] is None
    assert found.hand["eyes_followed"]["reason"] == WITHIN_ERROR


def test_eyes_that_were_hardly_read_are_not_blamed() -> None:
    samples, _ = hand_and_eyes(
        np.random.default_rng(5), 8, turned_in_deg=0.0, unread=[(6.0, 999.0)]
    )
    found = summary_of(samples)
    assert found.hand is not None and found.hand["eyes_followed"]["value"] is None
    assert found.hand["eyes_followed"]["reason"] == EYES_UNREAD
    assert "eyes_not_with_finger" not in {f.flag for f in found.quality}
