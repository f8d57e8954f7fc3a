"""Beats: their times, their sound, their shown side."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QBuffer
from PySide6.QtMultimedia import QAudioFormat

from ui.sounds.beats import Tempo, beat_times_s, beats_until, shown_side
from ui.sounds.sound import (
    LEFT_HZ,
    RATE_HZ,
    RIGHT_HZ,
    QtBeats,
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


#: A set's tempo: the same throughout, from the slowest to the fastest, or changing evenly.
TEMPI = (20.0, 47.0, 60.0, 97.3, 180.0, (40.0, 80.0), (120.0, 60.0), (30.0, 180.0), (60.0, 60.01))


def true_beats_s(tempo: Tempo, lasts_s: float) -> np.ndarray:
    """When the beats should fall: the tempo summed up in steps of 0.05 ms, and no formula."""
    step_s = 5e-5
    first, last = tempo if isinstance(tempo, tuple) else (tempo, tempo)
    middles = (np.arange(round(lasts_s / step_s)) + 0.5) * step_s
    passed = np.cumsum((first + (last - first) * middles / lasts_s) / 60.0) * step_s
    beats = np.arange(1, int(passed[-1] - 1e-6) + 1)
    return np.concatenate([[0.0], (np.searchsorted(passed, beats) + 1) * step_s])


def onsets(sound: np.ndarray) -> np.ndarray:
    """Samples at which a sound comes out of silence; a tick's own first sample is 0."""
    heard = np.flatnonzero(sound)
    # A tick swings through 0 now and then, but is never silent for a hundredth of a second.
    new = np.insert(np.diff(heard) > RATE_HZ / 100, 0, True)
    return heard[new] - 1


@pytest.mark.parametrize("lasts_s", [20.0, 61.7, 120.0])
@pytest.mark.parametrize("tempo", TEMPI)
def test_every_tick_of_a_set_lies_within_a_millisecond_in_the_buffer(
    tempo: Tempo, lasts_s: float
) -> None:
    """Looked for in the sound itself, from the first tick to the last."""
    sound = render_beats(tempo, lasts_s)
    assert len(sound) == round(lasts_s * RATE_HZ)
    found, true = onsets(sound) / RATE_HZ, true_beats_s(tempo, lasts_s)
    assert len(found) == len(true)
    assert np.abs(found - true).max() < 1e-3


@pytest.mark.parametrize("tempo", TEMPI)
def test_both_sides_take_turns_and_right_begins(tempo: Tempo) -> None:
    sound = render_beats(tempo, 30.0)
    starts = onsets(sound)
    for k, start in enumerate(starts):
        part = sound[start : start + len(tick(RIGHT_HZ))]
        side = tick(RIGHT_HZ if k % 2 == 0 else LEFT_HZ)[: len(part)]
        assert (part == side).all()


def test_the_device_is_given_that_buffer_and_told_its_rate(monkeypatch: pytest.MonkeyPatch) -> None:
    """The device itself isn't heard here: what Qt is handed is looked at."""
    given: list[tuple[bytes, int, int, int]] = []

    class Sink:
        def __init__(self, _device: object, form: QAudioFormat) -> None:
            self.form = form

        def start(self, buffer: QBuffer) -> None:
            form = self.form
            data = bytes(buffer.readAll().data())
            given.append((data, form.sampleRate(), form.channelCount(), form.bytesPerSample()))

        def stop(self) -> None: ...

    class Devices:
        @staticmethod
        def defaultAudioOutput() -> None: ...

    monkeypatch.setattr("PySide6.QtMultimedia.QAudioSink", Sink)
    # Asking for real ones warns aloud where there is no sound system.
    monkeypatch.setattr("PySide6.QtMultimedia.QMediaDevices", Devices)
    beats = QtBeats()
    beats.start((50.0, 90.0), 12.0)
    beats.stop()
    assert given == [(render_beats((50.0, 90.0), 12.0).tobytes(), RATE_HZ, 1, 2)]


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
    monkeypatch.setattr("ui.sounds.sound.has_sound_device", lambda: False)
    beats = make_beats()
    beats.start(60.0, 5.0)
    beats.stop()
    assert type(beats).__name__ == "NoBeats"
