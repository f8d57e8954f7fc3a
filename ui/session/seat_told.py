"""The seat before a set of a plan: told where it is surely off, and never in the way for long."""

from __future__ import annotations

from typing import Any

from tracker.lens import DEFAULT_LENS, Lens
from tracker.plan.asked import seat_mm
from tracker.sample import Sample
from ui.session.clock import is_seen
from ui.session.seat import Seat, SeatWatch, seat_of
from ui.session.state import Phase
from ui.session.voice import VoicePart


class SeatPart(VoicePart):
    """Holds the measured distance against what the entry asks for."""

    #: The way that one was told to move before it was asked to go on: the second time it goes on.
    seat_told = ""
    _lens_now: Lens | None = None

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        self.seat_watch = SeatWatch()

    def _open(self, source: Any) -> None:
        self.seat_watch, self._lens_now, self.seat_told = SeatWatch(), None, ""
        super()._open(source)

    def see_seat(self, sample: Sample, away_mm: float | None) -> None:
        """Take a rough reading of how far away the face is."""
        self.seat_watch.see(sample.time_s, away_mm)

    @property
    def _lens_in_use(self) -> Lens:
        if self._lens_now is None:
            known = self.clip is None and self.camera is not None
            self._lens_now = self._world.lens(self.camera) if known else DEFAULT_LENS
        return self._lens_now

    @property
    def seat_wanted_mm(self) -> float | None:
        """How far from the screen the entry asks to sit; None where it asks for no distance."""
        entry, plan = self.entry, self.plan
        if entry is None or plan is None or entry.posture != "sitting" or not is_seen(entry):
            return None
        return seat_mm(entry, plan)

    @property
    def seat(self) -> Seat | None:
        """How far one sits before the set-up; None while that isn't known."""
        away_mm = self.seat_watch.distance_mm
        return None if away_mm is None else seat_of(away_mm, self._lens_in_use)

    @property
    def seat_verdict(self) -> str:
        """``back`` or ``closer`` where one surely sits otherwise than the entry asks."""
        seat, wanted_mm = self.seat, self.seat_wanted_mm
        if seat is None or wanted_mm is None or self.phase != Phase.camera:
            return ""
        return seat.verdict(wanted_mm)

    def refuse_seat(self) -> bool:
        """Whether one is to move first: said once for each way, and then one may go on."""
        verdict = self.seat_verdict
        if not verdict or verdict == self.seat_told:
            return False
        self.seat_told = verdict
        self._changed()
        return True

    @property
    def seat_off(self) -> dict[str, int] | None:
        """What a set says of its distance if that is surely not the one asked for; mm."""
        wanted_mm = self.seat_wanted_mm
        if wanted_mm is None or self.report is None:
            return None
        seat = seat_of(self.distance_mm, self._lens_in_use)
        if not seat.verdict(wanted_mm):
            return None
        return {
            "asked_mm": round(wanted_mm),
            "measured_mm": round(seat.distance_mm),
            "low_mm": round(seat.low_mm),
            "high_mm": round(seat.high_mm),
        }
