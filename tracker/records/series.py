"""Figures of a person's exercises over sessions, in the order of time."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from tracker.records.rows import SessionRow, SetRow
from tracker.records.trends import (
    NO_DATE,
    NOT_SETTLED,
    OF_BEFORE,
    RESTS_ON,
    SPECS,
    Change,
    Point,
    Spec,
    asked_alike,
    compare,
)
from tracker.session.said import ALSO_ASKED

#: Figures of which the stretches of a paused set are added up.
ADDED = ("repetitions", "held_s")


#: Scores of what a plan may have asked for beside dizziness.
ALSO = tuple(f"{name}_{when}" for name in ALSO_ASKED for when in ("before", "after"))


@dataclass(frozen=True, slots=True)
class Series:
    """One figure of one exercise over all sessions; ``exercise`` is empty for the session."""

    exercise: str
    form: str
    figure: str
    side: str
    points: tuple[Point, ...]

    @property
    def spec(self) -> Spec:
        """What the figure is."""
        return SPECS[self.figure]

    @property
    def change(self) -> Change:
        """First against last."""
        return compare(self.points, self.spec)


#: A set with the place and the day of its session, and whether that was a baseline.
_Done = tuple[str, date | None, bool, SetRow]


def series_of(
    rows: Iterable[SessionRow], only: Callable[[str], bool] | None = None
) -> list[Series]:
    """Every figure of every exercise over the sessions, in the order they came up.

    Parameters
    ----------
    rows
        Sessions of one person, oldest first.
    only
        Which figures of exercises (names without a side); None for all. Those of the
        whole session always come.
    """
    session: dict[str, list[Point]] = {}
    sets: dict[tuple[str, str], list[_Done]] = {}
    for row in rows:
        day, visit = row.day, row.baseline and row.is_bout
        for name, value in _of_session(row).items():
            waits = name == "settled_minutes" and value is None and row.not_settled
            doubts = (NOT_SETTLED,) if waits else () if day else (NO_DATE,)
            session.setdefault(name, []).append(
                Point(row.place, day, value, doubts, baseline=name not in OF_BEFORE and visit)
            )
        for done in whole_sets(row.sets):
            sets.setdefault((done.exercise, done.form), []).append(
                (row.place, day, row.baseline, done)
            )
    out = [
        Series("", "", name, "", tuple(points))
        for name, points in session.items()
        if any(p.value is not None for p in points)
    ]
    for (exercise, form), pairs in sets.items():
        # A side without a turn is missing in a set; it was not measured there.
        keys = dict.fromkeys(k for *_, done in pairs for k in done.figures)
        for key in keys:
            name, _, side = key.partition(".")
            if name in SPECS and (only is None or only(name)):
                points = _one_a_dose([_point(pair, key) for pair in pairs])
                out.append(Series(exercise, form, name, side, points))
    return out


def _one_a_dose(points: Iterable[Point]) -> tuple[Point, ...]:
    """Of sets that a session has of one dose the mean: they are no sessions of their own."""
    found: list[list[Point]] = []
    for point in points:
        group = next((p for p in _of_session_of(point, found) if _same_dose(p[0], point)), None)
        if group is None:
            found.append([point])
        else:
            group.append(point)
    return tuple(_mean(group) for group in found)


def _of_session_of(point: Point, found: Sequence[list[Point]]) -> list[list[Point]]:
    """Those of its session: they follow each other, so years need not be looked through."""
    at = len(found)
    while at and found[at - 1][0][:2] == point[:2]:
        at -= 1
    return list(found[at:])


def _same_dose(one: Point, other: Point) -> bool:
    alike = asked_alike(one.asked_for, other.asked_for) and one.asked == other.asked
    return alike and one.within_deg == other.within_deg


def _mean(group: Sequence[Point]) -> Point:
    """The mean of those that may be compared; where there is none, the first."""
    values = [p.value for p in group if p.usable and p.value is not None]
    if not values:
        return group[0]
    return next(p for p in group if p.usable)._replace(value=fmean(values))


def whole_sets(sets: Iterable[SetRow]) -> list[SetRow]:
    """The sets of a session, one that was paused as one.

    Repetitions, held time and events of its stretches are added up, and the worst of their
    rises and times to settle counts; of other figures the mean is taken, each stretch with the
    weight of its repetitions.
    """
    stretches: dict[tuple[str, str | None, str], list[SetRow]] = {}
    for done in sets:
        stretches.setdefault((done.exercise, done.entry_id, done.form), []).append(done)
    return [_joined(parts) for parts in stretches.values()]


def _joined(parts: Sequence[SetRow]) -> SetRow:
    if len(parts) == 1:
        return parts[0]
    figures: dict[str, float | None] = {}
    for name in dict.fromkeys(k for p in parts for k in p.figures):
        known = [
            (value, p.figures.get("repetitions") or 1.0)
            for p in parts
            if (value := p.figures.get(name)) is not None
        ]
        total = sum(weight for _, weight in known)
        if not known:
            figures[name] = None
        elif name in ADDED:
            figures[name] = sum(value for value, _ in known)
        else:
            figures[name] = sum(value * weight for value, weight in known) / total
    flags = {flag: why for p in parts for flag, why in p.flags.items()}
    events = Counter[str]()
    for part in parts:
        events.update(part.events)
    return parts[0]._replace(
        figures=figures,
        flags=flags,
        events=dict(events),
        rise=max((p.rise for p in parts if p.rise is not None), default=None),
        settle_minutes=max(
            (p.settle_minutes for p in parts if p.settle_minutes is not None), default=None
        ),
        eased=any(p.eased for p in parts),
    )


def _of_session(row: SessionRow) -> dict[str, float | None]:
    since = row.since_last
    return {
        "dizziness_before": row.before,
        "dizziness_after": row.after,
        **{name: row.also.get(name) for name in ALSO},
        "settled_minutes": row.settled_minutes,
        **{name: since.get(name) for name in OF_BEFORE},
    }


def _point(pair: _Done, key: str) -> Point:
    place, day, baseline, done = pair
    name, value = key.partition(".")[0], done.figures.get(key)
    within = done.figures.get("on_target_within_deg") if name == "on_target" else None
    doubts = done.doubts(key) if day else (*done.doubts(key), NO_DATE)
    asked_for = {k: done.asked.get(k) for k in RESTS_ON.get(name, ())}
    return Point(place, day, value, doubts, done.asked.get(name), within, asked_for, baseline)
