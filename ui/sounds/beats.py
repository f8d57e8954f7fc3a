"""When the beats fall: shared by the sound, the shown beat and the jumping target."""

from __future__ import annotations

import math

from tracker.tempo import Tempo, beat_times_s, beats_until, fastest_bpm

__all__ = ["MAX_SHOWN_HZ", "Tempo", "beat_times_s", "beats_until", "shown_side", "shown_sway"]

#: Up to this many beats a minute the shown beat holds for a second at each side.
HELD_BPM = 60.0
#: A shown beat never changes more often than this (WCAG 2.3.1: at most three flashes a second).
MAX_SHOWN_HZ = 3.0


def shown_side(tempo_bpm: Tempo, elapsed_s: float, duration_s: float) -> int:
    """Side that the shown beat asks for: +1 right, -1 left, 0 none (too fast to show calmly)."""
    if tempo_bpm is None or elapsed_s < 0:
        return 0
    if fastest_bpm(tempo_bpm) / 60.0 > MAX_SHOWN_HZ:
        return 0
    return 1 if math.floor(beats_until(tempo_bpm, elapsed_s, duration_s) + 1e-9) % 2 == 0 else -1


def shown_sway(tempo_bpm: Tempo, elapsed_s: float, duration_s: float) -> float | None:
    """Where a shown beat is that goes to and fro and reaches each side at the beat after.

    From -1 (left) to 1; None where :func:`shown_side` holds each side for a second, or shows
    none. It begins in the middle.
    """
    side = shown_side(tempo_bpm, elapsed_s, duration_s)
    if side == 0 or tempo_bpm is None or fastest_bpm(tempo_bpm) <= HELD_BPM:
        return None
    beats = beats_until(tempo_bpm, elapsed_s, duration_s) + 1e-9
    gone = math.cos(math.pi * (beats - math.floor(beats)))
    return side * (1.0 - gone) / 2.0 if beats < 1.0 else -side * gone
