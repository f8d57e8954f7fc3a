"""How far the head should go in a set-up, and how far it has gone so far.

What lies beyond the range of the set-up is not judged later, so it should be a little wider
than what the exercises ask for; farther need nobody turn.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from math import inf, isfinite, nan
from statistics import median
from typing import Any

from tracker.exercises.catalogue import CATALOGUE, Exercise
from tracker.plan.asked import asked_of
from tracker.plan.changes import neck_limit_deg
from tracker.plan.model import Plan
from tracker.session.derive import BEYOND_DEG
from ui.setup.hint import quarter_of

#: So much wider than the widest exercise, where the neck may: the eyes of who overshoots a
#: little are still read.
WIDER = 1.15
#: What the rough reading shows of a turn and of a nod, before the person is known: at their
#: ends .85 to 1.06 and .57 to .88 on three rendered heads (the shipped clips turns-good,
#: jumps-good, blinks-and-closed). For the nod rather much is taken: said too early it would
#: leave the ends of the exercise out.
SEEN_OF = {"turn_slowly": 0.92, "nod_slowly": 0.8}
#: A reading from the fit may be so much less than what is needed and still be enough: the eyes
#: are judged as far beyond what was taught (``tracker.session.derive.BEYOND_DEG``).
ALLOWED_DEG = BEYOND_DEG
#: Sides of a slow turn and nod, the plus side first.
SIDES = {"turn_slowly": ("right", "left"), "nod_slowly": ("up", "down")}


@dataclass(frozen=True, slots=True)
class Wanted:
    """How far the head should go to each side, in degrees; NaN where no exercise asks.

    ``yaw`` and ``pitch`` are what is aimed at, ``needed_yaw`` and ``needed_pitch`` what the
    exercises themselves ask for.
    """

    yaw: float = nan
    pitch: float = nan
    needed_yaw: float = nan
    needed_pitch: float = nan

    def of(self, step: str) -> float:
        """What is aimed at in a step of the set-up."""
        return {"turn_slowly": self.yaw, "nod_slowly": self.pitch}.get(step, nan)

    def needed(self, step: str) -> float:
        """What the exercises ask for, in a step of the set-up."""
        return {"turn_slowly": self.needed_yaw, "nod_slowly": self.needed_pitch}.get(step, nan)


def wanted_of(plan: Plan | None, week: int = 1, offered: Iterable[str] = ()) -> Wanted:
    """What the exercises of a plan ask for, or, without a plan, those that are offered.

    Only exercises in which the eyes stay on a target while the head turns count: in the
    others no range of the eyes is needed.
    """
    rows: list[tuple[Exercise, tuple[float, float] | None, float]] = []
    if plan is None:
        rows = [(CATALOGUE[name], CATALOGUE[name].amplitude_deg, inf) for name in offered]
    else:
        for entry in plan.entries:
            exercise = CATALOGUE[entry.exercise]
            limit = neck_limit_deg(plan, exercise)
            asked = asked_of(entry, week).amplitude_deg
            rows.append((exercise, asked, inf if limit is None else limit))
    found: dict[str, list[tuple[float, float]]] = {"head_yaw": [], "head_pitch": []}
    for exercise, amplitude, limit in rows:
        watched = exercise.on_target or exercise.target == "against"
        if watched and amplitude is not None and exercise.channel in found:
            most = min(amplitude[1], limit)
            found[exercise.channel].append((min(WIDER * most, limit), most))
    yaw, pitch = (max(found[c], default=(nan, nan)) for c in ("head_yaw", "head_pitch"))
    return Wanted(yaw[0], pitch[0], yaw[1], pitch[1])


@dataclass(slots=True)
class ReachWatch:
    """How far a head has gone, by rough readings, while a set-up goes on."""

    wanted: Wanted = field(default_factory=Wanted)
    _still: list[tuple[float, float]] = field(default_factory=list)
    _far: dict[str, float] = field(default_factory=dict)

    def see(self, step: str, facing_deg: tuple[float, float] | None) -> None:
        """Take a rough reading (yaw, pitch) in a step of the set-up."""
        if facing_deg is None:
            return
        if step == "rest":
            self._still.append(facing_deg)
        elif step in SIDES and self._still:
            axis = 0 if step == "turn_slowly" else 1
            away = (facing_deg[axis] - median(s[axis] for s in self._still)) / SEEN_OF[step]
            for side, way in zip(SIDES[step], (away, -away), strict=True):
                self._far[side] = max(self._far.get(side, 0.0), way)

    def forget(self, step: str) -> None:
        """A step is about to be done again."""
        for side in SIDES.get(step, ()):
            self._far.pop(side, None)

    def far_enough(self, step: str, side: str) -> bool:
        """Whether the head has gone as far to a side as the exercises need."""
        wanted = self.wanted.of(step)
        return isfinite(wanted) and self._far.get(side, 0.0) >= wanted

    def hint(self, step: str, share: float) -> str:
        """Key of "far enough" while the head is still to go to a side; else empty."""
        sides = dict(zip(("plus", "minus"), SIDES.get(step, ()), strict=False))
        side = sides.get(quarter_of(share))
        return "setup.far_enough" if side is not None and self.far_enough(step, side) else ""


def short_of(reach: Any, wanted: Wanted) -> list[tuple[str, float, float]]:
    """Sides to which the head went less far than the exercises ask: side, how far, how far asked.

    ``reach`` is the ``HeadReach`` of a report, or None.
    """
    out = []
    for step, sides in SIDES.items():
        asked = wanted.needed(step)
        for side in sides:
            went = float(getattr(reach, side, nan))
            if isfinite(went) and isfinite(asked) and went < asked - ALLOWED_DEG:
                out.append((side, went, asked))
    return out
