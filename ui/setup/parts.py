"""How each part of a set-up came out, in words: roughly while it goes on, exactly afterwards."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from math import isfinite, nan
from statistics import median, quantiles
from typing import Any

from calibration.parts import STILL, parts_in
from ui import words
from ui.setup.reach import SIDES, ReachWatch, Wanted, short_of
from ui.setup.told import about, verdict_of, wall_lines

#: A part is seen well if the face was there in so much of it (common practice).
SEEN_WELL = 0.8
#: A head that should be still may stray so far (``calibration.axes.STILL_DEG``).
STILL_DEG = 2.0
#: The same by the rough readings of a set-up that goes on, in which eyes that look elsewhere
#: pull the face along a little (common practice).
ROUGH_DEG = 5.0
_STEP_OF = {"turn": "turn_slowly", "nod": "nod_slowly"}
_LEAST = 8


@dataclass(slots=True)
class PartWatch:
    """What is seen of the parts of a set-up while it goes on."""

    _frames: dict[str, int] = field(default_factory=dict)
    _facing: dict[str, list[tuple[float, float]]] = field(default_factory=dict)

    def see(self, part: str, facing_deg: tuple[float, float] | None) -> None:
        """Take a frame of a part: roughly where the face looks, None without a face."""
        self._frames[part] = self._frames.get(part, 0) + 1
        if facing_deg is not None:
            self._facing.setdefault(part, []).append(facing_deg)

    def forget(self, part: str) -> None:
        """A part is about to be done again."""
        self._frames.pop(part, None)
        self._facing.pop(part, None)

    def key(self, part: str, reach: ReachWatch) -> str:
        """Key of the words for how a part was seen."""
        frames, facing = self._frames.get(part, 0), self._facing.get(part, [])
        if len(facing) < SEEN_WELL * frames or not frames:
            return "part.unseen"
        if part in STILL:
            return "part.moved" if _stray_deg(facing) > ROUGH_DEG else "part.seen"
        step = _STEP_OF.get(part, "")
        short = isfinite(reach.wanted.of(step)) and not all(
            reach.far_enough(step, side) for side in SIDES.get(step, ())
        )
        return "part.short" if short else "part.seen"


def _stray_deg(facing: list[tuple[float, float]]) -> float:
    """How far a face that should be still strayed from its middle, but for one frame in 20."""
    if len(facing) < _LEAST:
        return 0.0
    middle = tuple(median(f[k] for f in facing) for k in (0, 1))
    off = [max(abs(f[0] - middle[0]), abs(f[1] - middle[1])) for f in facing]
    return quantiles(off, n=20)[-1]


@dataclass(frozen=True, slots=True)
class PartTold:
    """A part of a set-up: its key, its name, what is said of it, and whether it is good."""

    part: str
    name: str
    said: str
    good: bool


def parts_told(report: Any, wanted: Wanted) -> list[PartTold]:
    """How each part of a set-up came out; those of which nothing was found have only a name."""
    if report is None:
        return []
    found = {p.part: p for p in getattr(report, "parts", ())}
    rows = []
    for part in parts_in(report.steps):
        lines = list(_lines(found.get(part), report, wanted))
        said = " ".join(text for text, _ in lines)
        name = words.say(f"came.part.{part}")
        rows.append(PartTold(part, name, said, all(good for _, good in lines)))
    return rows


def _lines(found: Any, report: Any, wanted: Wanted) -> Iterator[tuple[str, bool]]:
    """Sentences on a part, each with whether it is good."""
    if found is None:
        return
    if found.seen < SEEN_WELL:
        percent = words.number(round(100 * found.seen))
        yield words.say("came.part.unseen", percent=percent), False
    if found.part in STILL and isfinite(found.wander_deg):
        yield from _still(found)
    if found.part in ("looks", "check"):
        yield from _eyes(found, report)
    elif found.part in _STEP_OF and isfinite(found.plus_deg):
        yield from _ends(found, report, wanted)


def _still(found: Any) -> Iterator[tuple[str, bool]]:
    if found.wander_deg > STILL_DEG:
        yield words.say("came.part.moved", degrees=round(found.wander_deg)), False
    elif found.part == "rest":
        yield words.say("came.part.still"), True


def _eyes(found: Any, report: Any) -> Iterator[tuple[str, bool]]:
    missed = found.points - found.points_seen
    if missed:
        yield words.say("came.part.missed", count=missed, points=found.points), False
    if "gaze_not_fitted" in report.findings:
        yield words.say("finding.gaze_not_fitted"), False
    elif not isfinite(found.error_deg):
        yield words.say("came.part.eyes_unseen"), False
    else:
        verdict = verdict_of(found.error_deg)
        key = "came.gaze" if found.part == "check" else "came.part.read"
        said = words.say(
            key,
            points=found.points_seen,
            off=about(found.error_deg),
            verdict=words.say(f"came.verdict.{verdict}"),
        )
        yield said, verdict != "poor"
    if found.part == "check":
        yield from wall_lines(report)


def _ends(found: Any, report: Any, wanted: Wanted) -> Iterator[tuple[str, bool]]:
    step = _STEP_OF[found.part]
    plus, minus = round(found.plus_deg), round(found.minus_deg)
    yield words.say(f"came.part.{found.part}.far", plus=plus, minus=minus), True
    asked = wanted.needed(step)
    if not isfinite(asked):
        return
    short = [s for s, *_ in short_of(getattr(report, "head_reach", None), wanted)]
    if any(side in short for side in SIDES[step]):
        yield words.say("came.part.need", asked=round(asked)), False
    else:
        yield words.say("came.part.enough"), True


def mark_told(mark: Any) -> str:
    """What the check by a mark on the wall showed, in words."""
    if mark is None:
        return words.say("came.mark.none")
    return words.say(
        "came.mark",
        measured=words.number(abs(mark.measured_deg), 1),
        expected=words.number(abs(mark.expected_deg), 1),
        off=about(abs(getattr(mark, "error_deg", nan))),
    )


def again_told(told: tuple[str, str], fit_message: str = "") -> str:
    """What became of a part that was done again; empty where none was."""
    part, why = told
    if not part:
        return ""
    name = words.say(f"came.part.{part}")
    if not why:
        return words.say("again.check" if part == "check" else "again.taken", part=name)
    because = words.sentence(words.told(fit_message)) if why == "failed" else ""
    return words.say(f"again.kept.{why}", part=name, why=because)
