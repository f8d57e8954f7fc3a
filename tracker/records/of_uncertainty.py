"""What is told of the uncertainty of figures, and of the two ends of a set."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tracker.records import telling, terms
from tracker.records import units as u
from tracker.records.figure import Figure, Making
from tracker.records.places import Place


def difference_figures(make: Making, found: Place) -> Iterator[Figure]:
    """The last five repetitions less the first five, and what that is called."""
    value, reason = found.at("value").number(), found.at("reason").text()
    error = found.at("uncertainty").at("expanded").number()
    yield make.of(value, reason, "difference", error=error)
    if value is None:
        return
    verdict, limit = found.at("verdict").text(), found.at("limit").text()
    told = None if verdict is None else telling.called(verdict, limit or "error")
    why = found.at("uncertainty").at("reason").text()
    yield make.of(told, why, "verdict", unit=u.WORDS)


def unknown_figures(moved: Sequence[Place]) -> Iterator[Figure]:
    """Why no figure of an exercise has an uncertainty; nothing where one has, or of before."""
    told = [p.at("uncertainty") for p in moved if p.at("uncertainty").value is not None]
    if told and all(p.at("expanded").value is None for p in told):
        make = Making("movement", "uncertainty", terms.UNCERTAINTY, u.WORDS)
        yield make.of(None, told[0].at("reason").text())


def explained(session: Place) -> Iterator[Figure]:
    """What the sign of an error says, once for a session, where one is told in it."""
    known = any(
        e.at(part).at(key).at("uncertainty").at("expanded").value is not None
        for e in session.at("exercises").rows()
        for part in ("head", "eyes")
        for key in ("amplitude_deg", "peak_speed_deg_s", "tempo_bpm")
    )
    if known:
        make = Making("setup", "uncertainty", terms.UNCERTAINTY, u.WORDS)
        yield make.of(terms.UNCERTAINTY_SAYS)
