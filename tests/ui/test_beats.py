"""Beats: their times, their sound, their shown side."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ui.beats import beat_times_s, beats_until, shown_side
from ui.sound import (
    LEFT_HZ,
    RATE_HZ,
    RIGHT_HZ,
    beat_samples,
    has_sound_device,
    make_beats,
    render_beats,
    tick,
)


@pytest.mark.parametrize("tempo", [20.0, 60.0, 97.0, 180.0])
def test_ticks_lie_within_a_millisecond_in_the_buffer(tempo: float) -> None:
    positions = beat_samples(tempo, 60.0)
    true = np.arange(len(positions)) * 60.0 / tempo
    assert np.abs(np.array(positions) / RATE_HZ - true).max() < 1e-3
    assert len(positions) == round(tempo)


def test_the_rendered_sound_begins_where_the_ticks_should() -> None:
    sound = np.abs(render_beats(60.0, 5.0).astype(float))
    loud = np.flatnonzero(sound > 500)
    starts = loud[np.insert(np.diff(loud) > RATE_HZ / 2, 0, True)] / RATE_HZ
    assert np.abs(starts - np.arange(5)).max() < 1e-3


def test_right_and_left_sound_different() -> None:
    def pitch(sound: np.ndarray) -> float:
        spectrum = np.abs(np.fft.rfft(sound, 1 << 16))
        return float(np.argmax(spectrum) * RATE_HZ / (1 << 16))

    assert pitch(tick(RIGHT_HZ)) == pytest.approx(RIGHT_HZ, rel=0.03)
    assert pitch(tick(LEFT_HZ)) == pytest.approx(LEFT_HZ, rel=0.03)


def test_a_tick_does_not_click() -> None:
    sound = tick(RIGHT_HZ).astype(int)
    assert sound[0] == 0
    assert np.abs(np.diff(sound)).max() < 0.05 * 32767


@given(first=st.floats(20, 180), last=st.floats(20, 180), duration=st.floats(1, 120))
def test_a_changing_tempo_keeps_its_beats_in_order(
    first: float, last: float, duration: float
) -> None:
    times = beat_times_s((first, last), duration)
    assert all(b > a for a, b in pairwise(times))
    assert times[0] == 0 and times[-1] < duration + 1e-6
    for k, time_s in enumerate(times):
        assert beats_until((first, last), time_s, duration) == pytest.approx(k, abs=1e-6)


def test_without_a_tempo_there_is_no_beat() -> None:
    assert beat_times_s(None, 10) == []
    assert shown_side(None, 1, 10) == 0
    assert not render_beats(None, 1.0).any()


def test_the_shown_beat_starts_right_and_holds() -> None:
    assert [shown_side(60.0, t, 20) for t in (0.0, 0.99, 1.0, 1.99, 2.0)] == [1, 1, -1, -1, 1]


def test_the_shown_beat_never_flashes() -> None:
    assert shown_side(181.0, 0.1, 20) == 0
    assert shown_side((60.0, 200.0), 0.1, 20) == 0
    assert shown_side(180.0, 0.1, 20) == 1


def test_a_machine_without_sound_is_known_and_stays_silent(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("sys.platform", "linux")
    monkeypatch.setenv("XDG_RUNTIME_DIR", "/run/user/1")
    assert not has_sound_device(tmp_path)
    (tmp_path / "run/user/1/pulse").mkdir(parents=True)
    (tmp_path / "run/user/1/pulse/native").touch()
    assert has_sound_device(tmp_path)
    monkeypatch.setattr("ui.sound.has_sound_device", lambda: False)
    beats = make_beats()
    beats.start(60.0, 5.0)
    beats.stop()
    assert type(beats).__name__ == "NoBeats"
