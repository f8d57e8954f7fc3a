"""What a set-up asks for: rest, looks, a slow turn and a slow nod, one after the other.

The times suit an older person: a second and a half for a look (an eye movement with its
reaction takes about half a second), and time to read before each new thing.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from calibration.parts import PARTS
from tracker.session.stage import Step
from ui.geometry import FieldExtent, Point, facing_map, offset_mm
from ui.session.asked import Asked
from ui.setup.notes_on_wall import note_of

REST_S = 2.5
LOOK_S = 1.6
TURN_S = 8.0
NOD_S = 8.0
#: Time to read what comes next.
READ_S = 3.0

#: Directions of the looks, degrees right and up of the field's middle.
LOOKS_DEG: tuple[Point, ...] = (
    (12.0, 0.0),
    (-12.0, 0.0),
    (0.0, 8.0),
    (0.0, -9.0),
    (10.0, -7.0),
    (-10.0, -7.0),
    (10.0, 7.0),
    (-10.0, 7.0),
)
#: Looks that the fit doesn't see: they tell how well the gaze is read here, by this person.
CHECK_LOOKS_DEG: tuple[Point, ...] = ((7.0, 4.0), (-7.0, -4.0))
#: Looks of a short set-up: the kept one has learnt the eyes, these see that it still fits.
SHORT_LOOKS_DEG: tuple[Point, ...] = ((8.0, 0.0), (-6.0, 5.0), (0.0, -7.0))

#: A mark on the wall: right of the camera, above it, and from the eyes, in mm.
Mark = tuple[float, float, float]


def setup_asked(
    begin_s: float,
    extent: FieldExtent,
    distance_mm: float,
    *,
    short: bool = False,
    use_eye: str = "both",
    parts: Sequence[str] = PARTS,
    marks: Sequence[Mark] = (),
) -> list[Asked]:
    """The steps of a set-up that begins at ``begin_s``; ``short`` for a kept profile.

    ``parts`` are those of ``calibration.parts.PARTS`` that are asked for. ``marks`` are those
    on the wall: each is looked at once to be learnt, where looks are, and once to be checked.

    Their targets are those of a person who looks straight at the field's middle;
    the fit finds out where they really were. Each step carries the drawn place as
    ``screen_mm`` (right of and above the camera), and ``use_eye`` where one eye alone is in
    use.
    """
    row = _Row(begin_s, extent, distance_mm, {} if use_eye == "both" else {"use_eye": use_eye})
    if "rest" in parts:
        row.read()
        row.ask("rest", REST_S)
    learnt = () if short or "looks" not in parts else LOOKS_DEG
    checked = () if "check" not in parts else SHORT_LOOKS_DEG if short else CHECK_LOOKS_DEG
    if learnt or checked:
        row.read()
    looks = [(learnt, {}), (checked, {"held_out": True})]
    for places, more in looks:
        for right, up in places:
            place = offset_mm(right, distance_mm), offset_mm(up, distance_mm)
            row.ask("look", LOOK_S, extent.inside(place), **more)
    for places, more in looks:
        for k, mark in enumerate(marks if places else ()):
            # The eyes have to find it first, beyond the screen.
            row.read()
            row.ask_on_wall(mark, note=note_of(marks, k), **more)
    if "turn" in parts:
        row.read()
        row.ask("turn_slowly", TURN_S)
    if "nod" in parts and not short:
        row.read()
        row.ask("nod_slowly", NOD_S)
    return row.asked


class _Row:
    """Steps one after the other, each told from where the one before ends."""

    def __init__(
        self, begin_s: float, extent: FieldExtent, distance_mm: float, more: dict[str, Any]
    ) -> None:
        self.asked: list[Asked] = []
        self._time_s, self._extent, self._more = begin_s, extent, more
        self._guess = facing_map(distance_mm, extent.centre_mm)

    def read(self) -> None:
        """Leave time to read what comes next."""
        self._time_s += READ_S

    def ask(self, name: str, lasts_s: float, offset: Point = (0.0, 0.0), **more: Any) -> None:
        """A step with a target on the screen."""
        place = self._extent.on_screen(offset)
        target = {"target_mm": self._guess.to_rest(place), "screen_mm": place}
        self.asked.append(Asked(self._step(name, lasts_s, **target, **more), offset))

    def ask_on_wall(self, mark: Mark, **more: Any) -> None:
        """A look at a mark on the wall, which nothing is drawn for."""
        right, up = (g + m for g, m in zip(self._guess.to_rest((0.0, 0.0))[:2], mark, strict=False))
        target = {"target_mm": (right, up, mark[2]), "wall_mm": mark}
        self.asked.append(Asked(self._step("look", LOOK_S, **target, **more), drawn=False))

    def _step(self, name: str, lasts_s: float, **more: Any) -> Step:
        from_s, self._time_s = self._time_s, self._time_s + lasts_s
        when = {"from_s": from_s, "to_s": self._time_s, "step": name}
        return Step.model_validate(when | self._more | more)
