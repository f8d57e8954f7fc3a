"""What is told of a target that moved, and of who went first to a mark."""

from __future__ import annotations

from collections.abc import Iterator

from tracker.records import units as u
from tracker.records.figure import Figure, Making
from tracker.records.of_body import counts_figure
from tracker.records.places import Place

ORDER = {
    "eyes_first": "eyes first",
    "together": "together",
    "head_first": "head first",
    "not_told": "not told",
}


def target_figures(place: Place) -> Iterator[Figure]:
    """The target's swing and what was wanted; who went first; jumps while following."""
    target = place.at("prescribed").at("target")
    if target.value is not None:
        yield from _target(target)
    order = place.at("order")
    if order.value is not None:
        make = Making("gaze", "order", "Went to the mark", u.WORDS)
        reason = order.at("reason").text()
        yield make.of(None, reason) if reason else counts_figure(make, order, ORDER)
        lead = Making("gaze", "eyes_lead", "Eyes before the head", u.SECONDS)
        yield lead.read(order.at("lead_s"))
        yield from lead.spread(order.at("lead_s"))
    jumps = place.at("catch_up_jumps")
    if jumps.value is not None:
        name = "Jumps while following, 2 degrees and more (no diagnosis)"
        yield Making("gaze", "catch_up_jumps", name, u.COUNT).read(jumps)


def _target(target: Place) -> Iterator[Figure]:
    swing = Making("movement", "target_swing", "Target, to each side", u.DEGREES, "asked")
    shown = target.at("swing_deg").number()
    if shown is not None:
        yield swing.of(shown)
    wanted = target.at("wanted_amplitude_deg").span()
    # Said only where the screen carried less than the middle of what the plan wants.
    if shown is not None and wanted is not None and shown < 0.49 * sum(wanted):
        make = Making("movement", "wanted_amplitude", "Amplitude in the plan", u.DEGREES, "asked")
        yield make.of(wanted)
    drawn = target.at("background")
    if drawn.value is not None:
        speed = Making("movement", "background_speed", "Background", u.DEGREES_S, "asked")
        yield speed.of(drawn.at("speed_deg_s").number(), "not recorded")
        radius = Making("movement", "background_radius", "Background, radius", u.DEGREES, "asked")
        yield radius.of(drawn.at("radius_deg").number(), "not recorded")
