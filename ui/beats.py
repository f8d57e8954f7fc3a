"""When the beats fall: shared by the sound, the shown beat and the jumping target."""

from __future__ import annotations

import math

from tracker.tempo import Tempo, beat_times_s, beats_until, fastest_bpm

__all__ = ["MAX_SHOWN_HZ", "Tempo", "beat_times_s", "beats_until", "shown_side"]

#: A shown beat never changes more often than this (WCAG 2.3.1: at most three flashes a second).
MAX_SHOWN_HZ = 3.0


def shown_side(tempo_bpm: Tempo, elapsed_s: float, duration_s: float) -> int:
    """Side that the shown beat asks for: +1 right, -1 left, 0 none (too fast to show calmly)."""
    if tempo_bpm is None or elapsed_s < 0:
        return 0
    if fastest_bpm(tempo_bpm) / 60.0 > MAX_SHOWN_HZ:
        return 0
    return 1 if math.floor(beats_until(tempo_bpm, elapsed_s, duration_s) + 1e-9) % 2 == 0 else -1
