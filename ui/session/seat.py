"""How far from the screen somebody sits, against what an exercise asks for.

The distance comes from the size of the face in the picture. How large a face is and how wide the
camera sees are both known only roughly; where what is asked for lies within that error nothing
is said against it.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass, field
from math import hypot, isfinite
from statistics import median
from typing import Any

from tracker.lens import Lens
from tracker.scale import FACE_SHARE, distance_shares
from ui import words

#: One sits as asked within so much, as a share (common practice: the seat is told to the
#: nearest 5 cm, and nobody sits as still as that).
ALLOWED = 0.1
#: Up to here one moves "by a hand".
HAND_MM = 120.0
#: Half an interval wider than this share of the distance is called rough.
ROUGH = 0.2
#: The newest readings that count, in seconds, and how many there must be.
RECENT_S, LEAST = 1.0, 5


@dataclass(frozen=True, slots=True)
class Seat:
    """A distance from the screen, and between what bounds it lies in 19 of 20 cases; mm."""

    distance_mm: float
    low_mm: float
    high_mm: float

    @property
    def error_mm(self) -> float:
        """The farther of the two bounds."""
        return max(self.distance_mm - self.low_mm, self.high_mm - self.distance_mm)

    @property
    def rough(self) -> bool:
        """Whether so little is known that only a seat far off could be told."""
        return self.error_mm > ROUGH * self.distance_mm

    def verdict(self, wanted_mm: float) -> str:
        """``back`` or ``closer`` where all of the interval is beside what is wanted."""
        if self.high_mm < (1 - ALLOWED) * wanted_mm:
            return "back"
        return "closer" if self.low_mm > (1 + ALLOWED) * wanted_mm else ""


def seat_of(distance_mm: float, lens: Lens) -> Seat:
    """A measured distance with its error.

    Parameters
    ----------
    distance_mm
        As measured with that lens.
    lens
        The camera's; its error is taken as that of the usual value where none is known.
    """
    nearer, farther = distance_shares(lens)
    return Seat(
        distance_mm,
        distance_mm * (1 - hypot(nearer, FACE_SHARE)),
        distance_mm * (1 + hypot(farther, FACE_SHARE)),
    )


@dataclass(slots=True)
class SeatWatch:
    """The newest rough distances of a face of which nothing else is known yet."""

    _recent: deque[tuple[float, float]] = field(default_factory=deque)

    def see(self, time_s: float, distance_mm: float | None) -> None:
        """Take a reading, or that there is no face."""
        if distance_mm is not None and isfinite(distance_mm):
            self._recent.append((time_s, distance_mm))
        while self._recent and time_s - self._recent[0][0] > RECENT_S:
            self._recent.popleft()

    @property
    def distance_mm(self) -> float | None:
        """The middle of the newest readings; None of too few."""
        if len(self._recent) < LEAST:
            return None
        return median(d for _, d in self._recent)


def seat_words(seat: Seat, wanted_mm: float) -> tuple[str, str]:
    """The verdict in words, empty where there is none, and how well the distance is known."""
    known = words.say("seat.about", cm=_cm(seat.distance_mm), error=_cm(seat.error_mm))
    if seat.rough:
        known = f"{known} {words.say('seat.rough')}"
    way = seat.verdict(wanted_mm)
    if not way:
        return "", known
    far_mm = abs(wanted_mm - seat.distance_mm)
    if far_mm <= HAND_MM:
        return words.say(f"seat.{way}.hand"), known
    return words.say(f"seat.{way}", cm=words.number(10 * round(far_mm / 100))), known


def seat_done_words(found: dict[str, Any]) -> str:
    """What is said of a set that was done at another distance than was asked for."""
    measured, asked = (_cm(found[k]) for k in ("measured_mm", "asked_mm"))
    return words.say("seat.done", cm=measured, asked=asked)


def _cm(mm: float) -> str:
    return words.number(round(mm / 10))
