"""How long a set has gone on, pauses left out."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf, isfinite, nan


@dataclass(slots=True)
class SetClock:
    """Runs while a set goes on and stands in its pauses.

    Attributes
    ----------
    seconds
        How long the set is to last; infinite where a count or the patient ends it.
    """

    seconds: float = inf
    _ran_s: float = 0.0
    _since_s: float = nan

    @property
    def runs(self) -> bool:
        """Whether the set goes on."""
        return isfinite(self._since_s)

    def go(self, now_s: float) -> None:
        """The set begins, or goes on after a pause."""
        self._since_s = now_s

    def hold(self, now_s: float) -> None:
        """A pause, or the end."""
        self._ran_s, self._since_s = self.ran_s(now_s), nan

    def ran_s(self, now_s: float) -> float:
        """How long the set has gone on."""
        running_s = now_s - self._since_s if isfinite(self._since_s) else 0.0
        return self._ran_s + max(running_s, 0.0)

    def left_s(self, now_s: float) -> float:
        """How long it is still to last."""
        return max(self.seconds - self.ran_s(now_s), 0.0)
