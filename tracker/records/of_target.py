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

#: Where the eyes came to rest after a jump between two targets.
ARRIVED = {
    "arrived": "on the target",
    "short": "short of it",
    "over": "beyond it",
    "not_told": "not told",
}
ARRIVALS, LEFT_OUT, OFF = "Eyes came to rest", "Targets left out", "Eyes beyond the target"
#: Lengths of marks on the wall: key in the summary -> name.
WALL = {
    "distance_mm": "Wall, from the eyes",
    "spacing_mm": "Wall, from mark to mark",
    "above_mm": "Wall, marks above the camera",
    "right_mm": "Wall, marks right of the camera",
}
WALL_ERROR = "Gaze error at the wall"


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
    wall = place.at("prescribed").at("wall")
    if wall.value is not None:
        yield from _wall(wall)
    arrivals = place.at("arrivals")
    if arrivals.value is not None:
        yield from _arrivals(arrivals)


def _wall(wall: Place) -> Iterator[Figure]:
    """The lengths as typed, and how well the gaze is read there."""
    for key, name in WALL.items():
        length = wall.at(key).number()
        if length is not None:
            yield Making("movement", f"wall_{key}", name, u.MILLIMETRES, "asked").of(length)
    error = Making("gaze", "wall_gaze_error", WALL_ERROR, u.DEGREES)
    yield error.of(wall.at("gaze_error_deg").number(), "not recorded")


def _arrivals(arrivals: Place) -> Iterator[Figure]:
    """Where the eyes came to rest, and what was left out."""
    reason = arrivals.at("reason").text()
    make = Making("gaze", "arrivals", ARRIVALS, u.WORDS)
    yield make.of(None, reason) if reason else counts_figure(make, arrivals, ARRIVED)
    within = arrivals.at("within_deg").number()
    if within is not None and not reason:
        yield make.of(within, aspect="within", unit=u.DEGREES)
    skipped = arrivals.at("skipped").number()
    if skipped is not None:
        yield Making("gaze", "targets_left_out", LEFT_OUT, u.COUNT).of(skipped)
    off = Making("gaze", "arrival_off", OFF, u.DEGREES)
    yield off.read(arrivals.at("off_deg"))
    yield from off.spread(arrivals.at("off_deg"))


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
