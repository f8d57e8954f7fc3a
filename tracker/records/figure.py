"""A figure: one thing that is told of a session, and how it is written.

Whoever shows a figure, on paper, on the screen or in a file, writes it with
:func:`shown` (or :func:`shown_with_error`, :func:`shown_with_unit`), so that all of them agree.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import ceil
from typing import Literal

from tracker.records.places import Place
from tracker.records.units import Unit
from tracker.session.said import NOT_ANSWERED

Origin = Literal["asked", "measured", "reported"]
#: A number, words, or a range from the one to the other.
Value = float | str | tuple[float, float] | None

NOT_ASKED = "not asked"
#: The reason in a summary of a score that did not go back (``said.NOT_SETTLED``).
NOT_SETTLED_START = "not back to usual"

#: What a part of a measure is called behind its name.
ASPECTS: dict[str, str] = {
    "all": "",
    "asked": "asked",
    "planned": "in the plan, changed in the call",
    "spread": "spread",
    "right": "right",
    "left": "left",
    "up": "up",
    "down": "down",
    "forward": "forward",
    "back": "back",
    "near": "near",
    "far": "far",
    "first_five": "first five",
    "last_five": "last five",
    "difference": "last five less first five (means)",
    "verdict": "first against last five",
    "uncertainty": "uncertainty",
    "expected": "expected",
    "before": "before",
    "after": "after",
    "settled": "time to settle",
    "longest": "longest stretch",
    "total_time": "time in all",
    "said": "said to the patient",
    "why": "why",
    "within": "counted within",
    "p95": "95 % below",
    "sideways": "sideways",
    "fore_aft": "fore-aft",
    "error": "error",
    "held_out": "on looks kept back",
    "rest_of_day": "rest of the day",
    "next_morning": "next morning",
    "confirmed": "confirmed",
    "source": "source",
    "holds_for": "holds for",
    "answer": "asked after it",
}
SIDES = ("right", "left", "up", "down", "forward", "back", "near", "far")


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure.

    Attributes
    ----------
    measure, aspect
        What it is and which part of it (a key of :data:`ASPECTS`).
    group
        Where it belongs: dose, movement, gaze, standing, answers, events, symptoms, setup.
    name
        The measure in the therapist's words.
    value
        None where there is none; then ``reason`` says why.
    unit
        Its unit; :data:`~tracker.records.units.WORDS` for words.
    origin
        Whether it was asked for by the plan, measured, or reported by the patient.
    error
        Its expanded uncertainty of measuring (k = 2), in its unit; None where none is told.
    """

    measure: str
    aspect: str
    group: str
    name: str
    value: Value
    unit: Unit
    origin: Origin
    reason: str | None = None
    error: float | None = None

    @property
    def key(self) -> str:
        """Its name in files."""
        return self.measure if self.aspect == "all" else f"{self.measure}.{self.aspect}"

    @property
    def label(self) -> str:
        """Its name in words."""
        part = ASPECTS.get(self.aspect, self.aspect)
        return f"{self.name}, {part}" if part else self.name

    @property
    def side(self) -> str | None:
        """The side it belongs to."""
        return self.aspect if self.aspect in SIDES else None


def shown(figure: Figure) -> str:
    """A figure without its unit and its error; one without a value says so, never as 0."""
    value, decimals = figure.value, figure.unit.decimals
    if value is None:
        return _absent(figure)
    if isinstance(value, str):
        return value
    if isinstance(value, tuple):
        low, high = (number_text(v, decimals) for v in value)
        return low if low == high else f"{low} to {high}"
    return number_text(value, decimals)


def shown_with_error(figure: Figure) -> str:
    """A figure with its error, where one is told, and without its unit: ``18.2 ± 0.4``."""
    error = error_text(figure)
    return f"{shown(figure)} ± {error}" if error else shown(figure)


def error_text(figure: Figure) -> str:
    """Its uncertainty in the decimals of the figure; empty where none is told.

    It is rounded up (JCGM 100:2008, 7.2.6), so it is never told as 0.
    """
    if figure.error is None or not isinstance(figure.value, float):
        return ""
    step = 10.0**-figure.unit.decimals
    return number_text(max(ceil(figure.error / step - 1e-9), 1) * step, figure.unit.decimals)


def shown_with_unit(figure: Figure) -> str:
    """A figure with its error and its unit; one without a value with the reason."""
    if figure.value is None:
        reason = figure.reason
        text = shown(figure)
        return text if not reason or reason == text else f"{text} ({reason})"
    unit = figure.unit
    if not unit.shown:
        return shown_with_error(figure)
    return f"{shown_with_error(figure)}{' ' if unit.spaced else ''}{unit.shown}"


def number_text(value: float, decimals: int) -> str:
    """A number with its decimals; never "-0"."""
    return f"{round(value, decimals) + 0.0:.{decimals}f}"


def _absent(figure: Figure) -> str:
    if figure.reason in (NOT_ASKED, NOT_ANSWERED):
        return figure.reason
    if figure.reason is not None and figure.reason.startswith(NOT_SETTLED_START):
        return "not settled"
    return "not measured" if figure.origin == "measured" else "not known"


@dataclass(frozen=True, slots=True)
class Making:
    """Makes the figures of one measure."""

    group: str
    measure: str
    name: str
    unit: Unit
    origin: Origin = "measured"

    def of(
        self,
        value: Value,
        reason: str | None = None,
        aspect: str = "all",
        *,
        unit: Unit | None = None,
        origin: Origin | None = None,
        error: float | None = None,
    ) -> Figure:
        """A figure; it has a reason only where it has no value."""
        why = None if value is not None else (reason or "no reason recorded")
        return Figure(
            self.measure,
            aspect,
            self.group,
            self.name,
            value,
            unit or self.unit,
            origin or self.origin,
            why,
            error if isinstance(value, float) else None,
        )

    def asked(self, value: Value) -> Iterable[Figure]:
        """What the plan asks for; nothing where it asks for nothing."""
        return () if value is None else (self.of(value, aspect="asked", origin="asked"),)

    def read(self, place: Place, aspect: str = "all", *, factor: float = 1.0) -> Figure:
        """A median or value with its reason from a summary, times ``factor``."""
        kind = "median" if "median" in place.names() else "value"
        value = scaled(place.at(kind).number(), factor)
        error = scaled(place.at("uncertainty").at("expanded").number(), factor)
        return self.of(value, place.at("reason").text(), aspect, error=error)

    def spread(self, place: Place) -> Iterable[Figure]:
        """Half the distance between the quartiles; nothing where nothing was measured."""
        value = place.at("spread").number()
        error = place.at("spread_uncertainty").number()
        return () if value is None else (self.of(value, aspect="spread", error=error),)


def scaled(value: float | None, factor: float) -> float | None:
    """A number times a factor; None stays None."""
    return None if value is None else value * factor
