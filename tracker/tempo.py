"""When the beats of a set fall: one tempo, or one that changes evenly within the set."""

from __future__ import annotations

import math

Tempo = float | tuple[float, float] | None


def beats_until(tempo_bpm: Tempo, elapsed_s: float, duration_s: float) -> float:
    """Beats passed ``elapsed_s`` after the start; a pair is a tempo that changes evenly."""
    if tempo_bpm is None or elapsed_s <= 0:
        return 0.0
    if isinstance(tempo_bpm, tuple):
        first, last = (t / 60.0 for t in tempo_bpm)
        slope = (last - first) / max(duration_s, 1e-9)
        return first * elapsed_s + 0.5 * slope * elapsed_s**2
    return tempo_bpm / 60.0 * elapsed_s


def beat_times_s(tempo_bpm: Tempo, duration_s: float) -> list[float]:
    """Times of the beats from the start (the first at 0) to before ``duration_s``."""
    if tempo_bpm is None or duration_s <= 0:
        return []
    if not isinstance(tempo_bpm, tuple):
        gap = 60.0 / tempo_bpm
        return [k * gap for k in range(math.ceil(duration_s / gap - 1e-9))]
    first, last = (t / 60.0 for t in tempo_bpm)
    half_slope = 0.5 * (last - first) / duration_s
    count = math.ceil(beats_until(tempo_bpm, duration_s, duration_s) - 1e-9)
    return [_time_of(k, first, half_slope) for k in range(count)]


def _time_of(beat: float, first_hz: float, half_slope: float) -> float:
    # first*t + half_slope*t^2 = beat, in the form that stays exact for a small slope
    root = math.sqrt(max(first_hz**2 + 4.0 * half_slope * beat, 0.0))
    return 2.0 * beat / (first_hz + root)


def fastest_bpm(tempo_bpm: float | tuple[float, float]) -> float:
    """The fastest beat of a set."""
    return max(tempo_bpm) if isinstance(tempo_bpm, tuple) else tempo_bpm
