"""What is told of the uncertainty of figures, and of the two ends of a set."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tracker.records import telling, terms
from tracker.records import units as u
from tracker.records.figure import Figure, Making, number_text
from tracker.records.places import Place


def difference_figures(make: Making, found: Place) -> Iterator[Figure]:
    """The last five repetitions less the first five, and what that is called."""
    value, reason = found.at("value").number(), found.at("reason").text()
    error = found.at("uncertainty").at("expanded").number()
    yield make.of(value, reason, "difference", error=error)
    verdict, least = found.at("verdict").text(), found.at("least").number()
    if value is None:
        return
    told = None
    if verdict is not None and least is not None:
        unit = make.unit
        shown = number_text(least, unit.decimals)
        shown += f"{' ' if unit.spaced else ''}{unit.shown}" if unit.shown else ""
        told = telling.called(verdict, found.at("limit").text() or "error", shown)
    why = found.at("uncertainty").at("reason").text()
    yield make.of(told, why, "verdict", unit=u.WORDS)


def uncertainty_figures(moved: Sequence[Place]) -> Iterator[Figure]:
    """What the sign of an error says, or why no figure has one; nothing of older summaries."""
    told = [p.at("uncertainty") for p in moved if p.at("uncertainty").value is not None]
    if not told:
        return
    make = Making("movement", "uncertainty", terms.UNCERTAINTY, u.WORDS)
    known = any(p.at("expanded").value is not None for p in told)
    yield make.of(terms.UNCERTAINTY_SAYS if known else None, told[0].at("reason").text())
