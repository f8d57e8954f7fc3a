"""The beat as sound: rendered ahead as a whole, played by the audio clock.

A soft tick, higher for a turn to the right than for one to the left. Where there
is no sound device the program stays silent and says nothing of it; the shown
beat carries the same.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from ui.ports import BeatsLike, NoBeats
from ui.sounds.beats import Tempo, beat_times_s

RATE_HZ = 44_100
#: A fifth apart: told apart by most who hear high notes badly (both below 1 kHz).
RIGHT_HZ, LEFT_HZ = 660.0, 440.0
_TICK_S = 0.09
_RISE_S = 0.006
_FADE_S = 0.022
_LOUDNESS = 0.35


def tick(pitch_hz: float) -> NDArray[np.int16]:
    """One soft tick: it rises in 6 ms (no click) and fades."""
    time_s = np.arange(round(_TICK_S * RATE_HZ)) / RATE_HZ
    shape = np.minimum(time_s / _RISE_S, 1.0) * np.exp(-np.maximum(time_s - _RISE_S, 0) / _FADE_S)
    wave = np.sin(2 * np.pi * pitch_hz * time_s) * shape * _LOUDNESS
    return np.asarray(np.round(wave * 32767), dtype=np.int16)


def beat_samples(tempo_bpm: Tempo, duration_s: float) -> list[int]:
    """Positions in the audio buffer at which the ticks begin."""
    return [round(t * RATE_HZ) for t in beat_times_s(tempo_bpm, duration_s)]


def render_beats(tempo_bpm: Tempo, duration_s: float) -> NDArray[np.int16]:
    """The whole set as sound, one channel: right and left in turns, right first."""
    sound = np.zeros(max(round(duration_s * RATE_HZ), 0), dtype=np.int16)
    ticks = (tick(RIGHT_HZ), tick(LEFT_HZ))
    for k, at in enumerate(beat_samples(tempo_bpm, duration_s)):
        part = ticks[k % 2][: len(sound) - at]
        sound[at : at + len(part)] = part
    return sound


def has_sound_device(root: Path = Path("/")) -> bool:
    """Whether asking Qt for sound makes sense; it warns aloud where there is no sound system."""
    if not sys.platform.startswith("linux"):
        return True
    runtime = os.environ.get("XDG_RUNTIME_DIR", f"run/user/{os.getuid()}")
    served = root / runtime.lstrip("/")
    if (served / "pulse" / "native").exists() or (served / "pipewire-0").exists():
        return True
    return any((root / "dev" / "snd").glob("pcm*p"))


class QtBeats:
    """Plays beats through Qt's audio output."""

    def __init__(self) -> None:
        from PySide6.QtMultimedia import QAudioFormat, QMediaDevices

        self._format = QAudioFormat()
        self._format.setSampleRate(RATE_HZ)
        self._format.setChannelCount(1)
        self._format.setSampleFormat(QAudioFormat.SampleFormat.Int16)
        self._device = QMediaDevices.defaultAudioOutput()
        self._sink: object | None = None
        self._buffer: object | None = None

    @property
    def usable(self) -> bool:
        """Whether there is a device that takes our sound."""
        return not self._device.isNull() and self._device.isFormatSupported(self._format)

    def start(self, tempo_bpm: Tempo, duration_s: float) -> None:
        """Sound the beats of a set from now on."""
        from PySide6.QtCore import QBuffer, QByteArray, QIODevice
        from PySide6.QtMultimedia import QAudioSink

        self.stop()
        data = QByteArray(render_beats(tempo_bpm, duration_s).tobytes())
        buffer = QBuffer()
        buffer.setData(data)
        buffer.open(QIODevice.OpenModeFlag.ReadOnly)
        sink = QAudioSink(self._device, self._format)
        sink.start(buffer)
        self._sink, self._buffer = sink, buffer

    def stop(self) -> None:
        """Be silent."""
        if self._sink is not None:
            self._sink.stop()  # type: ignore[attr-defined]
        self._sink = self._buffer = None


def make_beats() -> BeatsLike:
    """Beats by the sound device, or silence where there is none."""
    if not has_sound_device():
        return NoBeats()
    os.environ.setdefault("QT_LOGGING_RULES", "qt.multimedia.*=false")
    beats = QtBeats()
    return beats if beats.usable else NoBeats()
