"""What is told of the uncertainty of figures, and of the two ends of a set."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tracker.records import telling, terms
from tracker.records import units as u
from tracker.records.figure import Figure, Making
from tracker.records.places import Place
from tracker.session.uncertain import CARRIED


def difference_figures(make: Making, found: Place) -> Iterator[Figure]:
    """The last five repetitions less the first five, and what that is called."""
    value, reason = found.at("value").number(), found.at("reason").text()
    error = found.at("uncertainty").at("expanded").number()
    yield make.of(value, reason, "difference", error=error)
    if value is None:
        return
    verdict, limit = found.at("verdict").text(), found.at("limit").text()
    told = None if verdict is None else telling.called(verdict, limit or "error")
    why = found.at("uncalled").text() or found.at("uncertainty").at("reason").text()
    yield make.of(told, why, "verdict", unit=u.WORDS)


def unknown_figures(moved: Sequence[tuple[Making, Place]]) -> Iterator[Figure]:
    """Why figures of an exercise have no uncertainty; nothing of those of before.

    Once where it is the same of all of them, else of each.

    Parameters
    ----------
    moved
        The whole figures of a movement, and what makes them.
    """
    told = [(make, found.at("uncertainty")) for make, found in moved]
    told = [(make, u_of) for make, u_of in told if u_of.value is not None]
    unknown = [(make, u_of) for make, u_of in told if u_of.at("expanded").value is None]
    reasons = {u_of.at("reason").text() for _, u_of in unknown}
    if len(unknown) == len(told) and len(reasons) == 1:
        make = Making("movement", "uncertainty", terms.UNCERTAINTY, u.WORDS)
        yield make.of(None, reasons.pop())
        return
    for make, u_of in unknown:
        yield make.of(None, u_of.at("reason").text(), "uncertainty", unit=u.WORDS)


def explained(session: Place) -> Iterator[Figure]:
    """What the sign of an error says, once for a session, where one is told in it."""
    told = [
        found.at("uncertainty")
        for e in session.at("exercises").rows()
        for found in (
            e.at("sway"),
            *(e.at(part).at(key) for part in ("head", "eyes", "body") for key in CARRIED),
        )
    ]
    known = any(u_of.at("expanded").value is not None for u_of in told)
    if known:
        make = Making("setup", "uncertainty", terms.UNCERTAINTY, u.WORDS)
        yield make.of(terms.UNCERTAINTY_SAYS)
