"""Tells a process that hangs from one that is slow because the machine is.

The process sends a pulse several times a second from a thread of its own: how
many rounds its work has gone, and how much processor time it has used. On a
machine that is too busy the work gets little of the processor, so time that it
was not given does not count against it; time in which it asked for none does.
"""

from __future__ import annotations

#: Time between two pulses of a process that is given the processor, in seconds (this project's
#: own choice).
PULSE_S = 0.2
#: With less than this share of a processor a process stands still: it waits for
#: something. (With 40 processes a processor, each gets as little; judged by trial: the
#: share is this project's own choice.)
STILL_SHARE = 0.04


class Patience:
    """How long a process has made no progress, in seconds in which it could have.

    Parameters
    ----------
    now_s
        Reading of the clock when the process was started.
    """

    def __init__(self, now_s: float) -> None:
        self._rounds = -1
        self._cpu_s = 0.0
        self._pulse_s = now_s
        self._without_s = 0.0

    def begin(self, now_s: float) -> None:
        """Something new begins: count from here."""
        self._pulse_s, self._without_s = now_s, 0.0

    def pulse(self, at_s: float, rounds: int, cpu_s: float) -> None:
        """A pulse came in at ``at_s``: rounds of the work and processor seconds since the start."""
        gone_s, worked_s = at_s - self._pulse_s, cpu_s - self._cpu_s
        if rounds != self._rounds:
            self._without_s = 0.0
        elif worked_s < STILL_SHARE * gone_s:
            self._without_s += max(gone_s, 0.0)
        else:
            self._without_s += min(gone_s, worked_s)
        self._rounds, self._cpu_s, self._pulse_s = rounds, cpu_s, at_s

    def without_progress_s(self, now_s: float) -> float:
        """Seconds without progress up to now; a time without any pulse counts in full."""
        return self._without_s + max(0.0, now_s - self._pulse_s)
