"""How a set-up came out, in words: what was checked, how well, and what is missing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import isfinite, nan
from typing import Any

from calibration.parts import is_held_out, on_wall
from tracker.exercises.watchers.gaze import OFF_TARGET_DEG, off_target_limit_deg
from ui import words
from ui.setup.reach import SIDES, Wanted, short_of


@dataclass(frozen=True, slots=True)
class Told:
    """What is said of a set-up.

    Attributes
    ----------
    good
        Whether nothing in it asks to be done again.
    lines
        Sentences for the patient.
    hint
        What may help where it is not good.
    figures
        The numbers, for the therapist; empty without any.
    """

    good: bool
    lines: tuple[str, ...] = ()
    hint: str = ""
    figures: str = ""


def told_of(report: Any, wanted: Wanted) -> Told:
    """What is said of a set-up's report; ``wanted`` is how far the head should have gone."""
    findings = tuple(getattr(report, "findings", ()))
    reach = getattr(report, "head_reach", None)
    short = short_of(reach, wanted)
    gaze, verdict = _gaze(report)
    wall = list(wall_lines(report))
    lines = [*([gaze] if gaze else []), *(said for said, _ in wall)]
    lines += [words.say_or(f"finding.{key}", "finding.other", key=key) for key in findings]
    for side, went, asked in _worst(short):
        lines.append(words.say(f"came.short.{side}", went=round(went), asked=round(asked)))
    if not short and _whole(reach, wanted):
        lines.append(words.say("came.reach"))
    poor = bool(findings) or verdict in ("poor", "unseen") or not all(good for _, good in wall)
    hints = [words.say("finding.repeat_hint")] if poor else []
    hints += [words.say("came.short.why")] if short else []
    return Told(not (poor or short), tuple(lines), " ".join(hints), _figures(report, reach))


def about(error_deg: float) -> str:
    """An angle as one would say it."""
    if error_deg < 0.75:
        return words.say("came.off.half")
    if error_deg < 1.5:
        return words.say("came.off.one")
    return words.say("came.off.more", degrees=round(error_deg))


def verdict_of(error_deg: float) -> str:
    """How good a reading of the eyes is for what is judged by it: good, fair or poor."""
    limit = off_target_limit_deg(error_deg)
    return "poor" if limit is None else "good" if limit <= OFF_TARGET_DEG else "fair"


def _worst(short: list[tuple[str, float, float]]) -> list[tuple[str, float, float]]:
    """Of the turn and of the nod the side that lacks most: one sentence each."""
    rows = ([r for r in short if r[0] in sides] for sides in SIDES.values())
    return [min(row, key=lambda r: r[1] - r[2]) for row in rows if row]


def _gaze(report: Any) -> tuple[str, str]:
    """What the held-out looks showed, and the verdict; empty where there were none."""
    check = getattr(report, "check", None)
    if check is None or "gaze_not_fitted" in getattr(report, "findings", ()):
        return "", ""
    if not isfinite(check.error_deg):
        return words.say("came.gaze.unseen"), "unseen"
    verdict = verdict_of(_worst_deg(report, check))
    said = words.say(
        "came.gaze",
        points=check.looks,
        off=about(check.error_deg),
        verdict=words.say(f"came.verdict.{verdict}"),
    )
    return said, verdict


def _worst_deg(report: Any, *checks: Any) -> float:
    """The worst of some checks and the fit's own error: by it is judged, as in the exercises."""
    errors = [float(getattr(report, "error_deg", nan)), *(c.error_deg for c in checks if c)]
    return max((e for e in errors if isfinite(e)), default=nan)


def wall_lines(report: Any) -> Iterator[tuple[str, bool]]:
    """What the held-out looks at notes on the wall showed: sentences, each with whether it is good.

    None where nobody was asked to look there, or the gaze is not followed at all.
    """
    check = getattr(report, "wall_check", None)
    if check is None or "gaze_not_fitted" in getattr(report, "findings", ()):
        return
    if not isfinite(check.error_deg):
        yield words.say("came.wall.unseen"), False
        return
    if check.looks < sum(is_held_out(s) and on_wall(s) is not None for s in report.steps):
        # There are two at most.
        yield words.say("came.wall.one"), False
    verdict = verdict_of(_worst_deg(report, check, getattr(report, "check", None)))
    said = words.say(f"came.verdict.{verdict}")
    yield (
        words.say("came.wall", off=about(check.error_deg), verdict=said),
        verdict != "poor",
    )


def _whole(reach: Any, wanted: Wanted) -> bool:
    """Whether something was asked of the head, and all of it was seen."""
    asked = [names for step, names in SIDES.items() if isfinite(wanted.needed(step))]
    sides = [side for names in asked for side in names]
    return bool(sides) and all(isfinite(float(getattr(reach, s, nan))) for s in sides)


def _figures(report: Any, reach: Any) -> str:
    parts = list(_parts(report, reach))
    return words.say("came.figures", figures=words.row_of(parts)) if parts else ""


def _parts(report: Any, reach: Any) -> Iterator[str]:
    error = float(getattr(getattr(report, "check", None), "error_deg", nan))
    if isfinite(error):
        yield words.say("came.figures.gaze", degrees=words.number(error, 1))
    there = float(getattr(getattr(report, "wall_check", None), "error_deg", nan))
    if isfinite(there):
        yield words.say("came.figures.wall", degrees=words.number(there, 1))
    for name, sides in (("turn", ("right", "left")), ("nod", ("up", "down"))):
        ways = {side: float(getattr(reach, side, nan)) for side in sides}
        if all(isfinite(w) for w in ways.values()):
            yield words.say(f"came.figures.{name}", **{s: round(w) for s, w in ways.items()})
