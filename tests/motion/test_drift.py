"""A head that drifts to and fro does no turn; who turns slowly, small or with pauses does."""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.motion.movements import Array, hesitating_set, random_set, turning
from tests.motion.stands import Path
from tests.session.synthetic import steps
from tracker.exercises.counters import CHANNELS, Counter
from tracker.motion.drift import Pace
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise

ASKED = [(60.0, 15.0), (60.0, 10.0), (36.0, None), (10.0, 15.0), (None, 10.0), (None, None)]


def samples(times: Array, values: Array) -> list[Sample]:
    return [
        Sample(t, head_yaw_deg=v, head_pitch_deg=0.0, head_roll_deg=0.0, eye_open=0.9)
        for t, v in zip(times.tolist(), values.tolist(), strict=True)
    ]


def count(times: Array, values: Array, tempo: float | None, least: float | None) -> list[Turn]:
    counter = Counter(CHANNELS["head_yaw"], pace=Pace.of(tempo, least))
    for sample in samples(times, values):
        counter.feed(sample)
    counter.finish()
    return counter.turns


def drift(times: Array, deg: float, there_and_back_s: float) -> Array:
    """From the middle to ``deg`` on both sides."""
    return deg * np.sin(2 * np.pi * times / there_and_back_s)


def noisy(values: Array, sigma: float = 0.2) -> Array:
    return values + np.random.default_rng(len(values)).normal(0.0, sigma, len(values))


def ways(ends: list[float], way_s: float, rate_hz: float = 15.0) -> tuple[Array, Array]:
    """At an even speed from the middle to one end after the other, then a rest."""
    at = 2.0 + way_s * np.arange(len(ends) + 1)
    times = np.arange(0.0, at[-1] + 4.0, 1.0 / rate_hz)
    return times, np.interp(times, at, [0.0, *ends])


@pytest.mark.parametrize(("tempo", "least"), ASKED)
@pytest.mark.parametrize(("deg", "there_and_back_s"), [(4, 33), (8, 33), (6, 60), (8, 100)])
def test_a_head_that_drifts_does_no_turn_and_turns_after_it_count(
    deg: float, there_and_back_s: float, tempo: float | None, least: float | None
) -> None:
    times = np.arange(0.0, 2.0 * there_and_back_s, 1 / 15)
    values = drift(times, deg, there_and_back_s)
    assert count(times, noisy(values), tempo, least) == []
    move = turning(np.array([15.0, -15.0] * 3), np.full(6, 1.0), 15.0)
    times = np.concatenate([times, times[-1] + 1 / 15 + move.times_s])
    turns = count(times, noisy(np.concatenate([values, move.values_deg])), tempo, least)
    assert [t.side for t in turns] == ["right", "left"] * 3


@pytest.mark.parametrize(("tempo", "least"), ASKED)
@pytest.mark.parametrize("size", [6.0, 15.0])
def test_who_sags_and_sits_up_between_two_sets_of_turns_does_none_there(
    size: float, tempo: float | None, least: float | None
) -> None:
    half = turning(np.array([size, -size] * 3), np.full(6, 1.0), 15.0)
    rest = np.arange(0.0, 66.0, 1 / 15)
    sag = 4.0 * (1.0 - np.cos(2 * np.pi * rest / 33.0))
    values = np.concatenate([half.values_deg, sag, half.values_deg])
    times = np.arange(len(values)) / 15.0
    turns = count(times, noisy(values), tempo, least)
    assert [t.side for t in turns] == ["right", "left"] * 6
    assert [t.amplitude_deg for t in turns] == pytest.approx([size] * 12, abs=0.5)


@pytest.mark.parametrize("back_deg", [5.5, 11.0])
@pytest.mark.parametrize("sag_deg", [8.0, 11.0, 12.0])
def test_who_sags_and_comes_back_briskly_did_not_turn_before_that(
    sag_deg: float, back_deg: float
) -> None:
    """To the side of the last turn, by less than usual but more than the least way back."""
    half = turning(np.array([15.0, -15.0] * 3), np.full(6, 1.0), 15.0)
    rest = np.arange(0.0, 60.0, 1 / 15)
    sag = np.interp(rest, [12.0, 28.0, 29.0, 48.0, 56.0], [0, -sag_deg, back_deg - sag_deg, 0, 0])
    values = np.concatenate([half.values_deg, sag, half.values_deg])
    turns = count(np.arange(len(values)) / 15.0, noisy(values), 60.0, 15.0)
    assert [t.side for t in turns] == ["right", "left"] * 6


@pytest.mark.parametrize("in_one", [1, 2, 3, 4])
@pytest.mark.parametrize(("tempo", "least"), ASKED)
def test_pictures_that_come_in_bursts_tell_the_same(
    in_one: int, tempo: float | None, least: float | None
) -> None:
    slow = np.arange(0.0, 99.0, in_one / 15)
    times = (slow[:, None] + 0.001 * np.arange(in_one)).ravel()
    for deg in (4.0, 8.0):
        assert count(times, noisy(drift(times, deg, 33.0)), tempo, least) == []
    even, values = ways([5.0, -5.0] * 4, 4.5)
    times = times[times < even[-1]]
    turns = count(times, noisy(np.interp(times, even, values)), tempo, least)
    assert len(turns) == 8


@pytest.mark.parametrize("deg", [4.0, 8.0])
def test_turns_upon_a_drift_are_all_counted(deg: float) -> None:
    move = turning(np.array([10.0, -10.0] * 15), np.full(30, 1.2), 30.0)
    values = move.values_deg + drift(move.times_s, deg, 33.0)
    assert len(count(move.times_s, noisy(values), 60.0, 15.0)) == move.turns


@pytest.mark.parametrize(("tempo", "least"), [k for k in ASKED if k[1] is not None])
@pytest.mark.parametrize("one_sided", [False, True])
def test_a_slow_turn_of_the_size_that_was_asked_for_counts(
    one_sided: bool, tempo: float | None, least: float
) -> None:
    times, values = ways([least, 0.0 if one_sided else -least] * 3, 9.0)
    turns = count(times, noisy(values), tempo, least)
    assert [t.side for t in turns][:5] == ["right", "left"] * 2 + ["right"]
    assert len(turns) // 2 == 3


@pytest.mark.parametrize("deg", [0.0, 8.0])
def test_a_slow_turn_of_four_fifths_of_the_size_counts_upon_a_drift_too(deg: float) -> None:
    times, values = ways([12.0, -12.0] * 5, 9.0)
    values = values + drift(times, deg, 100.0)
    assert len(count(times, noisy(values), 60.0, 15.0)) == 10


@pytest.mark.parametrize(("tempo", "least"), ASKED)
def test_turns_that_are_slow_and_small_count(tempo: float | None, least: float | None) -> None:
    times, values = ways([5.0, -5.0] * 4, 4.5)
    assert len(count(times, noisy(values), tempo, least)) == 8


@pytest.mark.parametrize(("tempo", "least"), [(60.0, 15.0), (None, 10.0)])
@pytest.mark.parametrize("after_s", [0.3, 1.0, 2.0])
def test_slow_turns_count_though_the_set_ends_upon_the_last(
    after_s: float, tempo: float | None, least: float
) -> None:
    """The way to the last end is not seen to be over, and is the way back from the one before."""
    for size, back, way_s in itertools.product([8.0, 12.0], [-1.0, 0.0], [3.0, 4.5, 6.0]):
        for times_there in (1, 2, 3):
            times, values = ways([size, back * size] * times_there, way_s)
            seen = times < 2.0 + 2.0 * times_there * way_s + after_s
            turns = count(times[seen], noisy(values[seen]), tempo, least)
            assert len(turns) // 2 == times_there


@pytest.mark.parametrize(("tempo", "least"), ASKED)
def test_a_drift_that_the_set_ends_upon_does_at_most_one_repetition(
    tempo: float | None, least: float | None
) -> None:
    """Broken off like that it may look like a slow turn; mostly it does not."""
    ended = []
    for deg, there_and_back_s in ((4, 33), (8, 33), (6, 60), (8, 100)):
        for end_s in np.arange(10.0, 100.0, 5.0):
            times = np.arange(0.0, end_s, 1 / 15)
            ended.append(
                len(count(times, noisy(drift(times, deg, there_and_back_s)), tempo, least))
            )
    assert max(ended) <= 2
    assert sum(n > 0 for n in ended) <= 0.1 * len(ended)


def test_turns_of_half_the_size_with_a_long_pause_in_each_way_count() -> None:
    path = Path().wait(2.0)
    for way, end in enumerate([7.5, -7.5] * 4):
        lasts_s = 0.75 if way == 0 else 1.5
        path = path.go(0.5 * (path.level + end), lasts_s).wait(6.0).go(end, lasts_s)
    times, values = path.go(0.0, 1.5).wait(3.0).sampled(15.0)
    assert len(count(times, noisy(values), 60.0, 15.0)) == 8


def test_a_turn_that_is_held_and_sags_is_one_turn() -> None:
    at = [0.0, 2.0, 3.0, 25.0, 26.0, 28.0, 29.0, 51.0, 53.0, 60.0]
    ends = [0.0, 0.0, 15.0, 8.0, 14.0, -15.0, -15.0, -8.0, 15.0, 15.0]
    times = np.arange(0.0, 60.0, 1 / 30)
    turns = count(times, noisy(np.interp(times, at, ends)), 60.0, 15.0)
    assert [t.side for t in turns] == ["right", "left", "right"]


@settings(max_examples=40, deadline=None)
@given(st.integers(10_000, 10_000_000), st.sampled_from([random_set, hesitating_set]))
def test_whatever_is_asked_no_turn_of_a_usual_set_is_taken_for_a_drift(number, make) -> None:
    move = make(np.random.default_rng(number))
    for tempo, least in ASKED[::2]:
        turns = count(move.times_s, move.values_deg, tempo, least)
        assert len(turns) // 2 == move.turns // 2
        assert all(a.side != b.side for a, b in itertools.pairwise(turns))


def test_the_step_tells_what_is_a_drift_and_out_of_time_is_still_said() -> None:
    """Ten degrees from end to end, evenly in 7.5 s: turns at 10 beats, a drift at 60."""
    times, values = ways([5.0, -5.0] * 5, 7.5)
    for tempo, done in ((60.0, 0), (10.0, 5)):
        asked = steps(to_s=times[-1], tempo_bpm=tempo, amplitude_deg=[15, 20])
        record = run_samples(samples(times, noisy(values)), asked, SessionInfo())
        assert summarise(record).exercises[0].done.repetitions == done
    # Six times slower than asked, with a sag in the middle.
    slow, at = ways([14.0, -14.0] * 4, 4.5)
    sag = np.where(slow < 20.0, 0.0, 2.0 * (1.0 - np.cos(2 * np.pi * (slow - 20.0) / 20.0)))
    asked = steps(to_s=slow[-1], amplitude_deg=[15, 20])
    record = run_samples(samples(slow, noisy(at + sag)), asked, SessionInfo())
    assert "too_slow" in {e.code for e in record.exercises[0].events}
