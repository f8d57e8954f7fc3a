"""A key that is pressed twice by a hand that shakes, or just as its page has gone."""

from __future__ import annotations

from math import inf

#: A second press so soon is the same one, and one so soon after a page came by itself was meant
#: for the page before (common practice: to see that a page is another and to leave the key takes
#: about as long).
TWICE_S = 2.0


class Twice:
    """Knows when something happened last, and whether that was only just now."""

    def __init__(self) -> None:
        self._last_s = -inf

    def happens(self, now_s: float) -> None:
        """It happens now."""
        self._last_s = now_s

    def just_now(self, now_s: float, within_s: float = TWICE_S) -> bool:
        """Whether it happened less than ``within_s`` ago."""
        return now_s - self._last_s < within_s
