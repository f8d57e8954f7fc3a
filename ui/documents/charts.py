"""Charts as a list of lines, marks and labels, in points; HTML and PDF both draw them.

Black on white, in calm lines. Series differ by the shape of their marks, never by
colour alone.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from tracker.records.figure import number_text, shown
from tracker.records.figures import ExerciseFigures, SessionFigures

Anchor = Literal["start", "middle", "end"]
WIDTH, HEIGHT = 170.0, 88.0
LEFT, RIGHT, TOP, BOTTOM = 24.0, 6.0, 14.0, 14.0
SMALL = 7.0
#: More turns than this are drawn with smaller marks.
MANY_TURNS = 30
#: Letters of a side in the legend; all that the program knows are shorter.
MOST_LEGEND = 9


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line."""

    x1: float
    y1: float
    x2: float
    y2: float
    width: float = 0.6
    dashed: bool = False


@dataclass(frozen=True, slots=True)
class Band:
    """A pale area."""

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class Mark:
    """A mark of a series: a full circle, an open square, or a cross for not measured."""

    x: float
    y: float
    size: float
    kind: Literal["circle", "square", "cross"]


@dataclass(frozen=True, slots=True)
class Label:
    """Words; ``y`` is their base line."""

    x: float
    y: float
    text: str
    anchor: Anchor = "start"
    size: float = SMALL


Item = Line | Band | Mark | Label


@dataclass(frozen=True, slots=True)
class Chart:
    """A drawing with a title and a description in words."""

    title: str
    description: str
    items: tuple[Item, ...]
    width: float = WIDTH
    height: float = HEIGHT


@dataclass(frozen=True, slots=True)
class _Scale:
    """From values to the page."""

    most: float
    count: int

    def x(self, k: float) -> float:
        return LEFT + (WIDTH - LEFT - RIGHT) * (k + 0.5) / max(self.count, 1)

    def y(self, value: float) -> float:
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * min(value, self.most) / self.most


def amplitude_chart(e: ExerciseFigures) -> Chart | None:
    """How far each turn went to each side against what was asked; None without turns.

    None as well where the figure itself is withheld: its reason stands with it, and single
    turns carry no more (summaries of before have them all the same).
    """
    for measure, unit in (("amplitude_deg", "°"), ("amplitude_mm", " mm"), ("swing_mm", " mm")):
        whole = e.find(measure)
        if whole is None or whole.value is None:
            continue
        turns = [(t["side"] or "", t.get(measure)) for r in e.repetitions for t in r["turns"]]
        known = [abs(v) for _, v in turns if v is not None]
        if known:
            asked = e.find(f"{measure}.asked")
            span = asked.value if asked is not None and isinstance(asked.value, tuple) else None
            words = "" if asked is None else f", asked {shown(asked)}{unit}"
            return _amplitudes(e, turns, known, span, unit, words)
    return None


def _amplitudes(
    e: ExerciseFigures,
    turns: Sequence[tuple[str, float | None]],
    known: Sequence[float],
    asked: tuple[float, float] | None,
    unit: str,
    asked_words: str,
) -> Chart:
    most = max(*known, *(asked or ()), 1e-6) * 1.12
    scale = _Scale(most, len(turns))
    sides = list(dict.fromkeys(s for s, _ in turns))[:2]
    items: list[Item] = []
    if asked is not None:
        low, high = asked
        items.append(Band(LEFT, scale.y(high), WIDTH - LEFT - RIGHT, scale.y(low) - scale.y(high)))
        for value in dict.fromkeys(asked):
            items.append(Line(LEFT, scale.y(value), WIDTH - RIGHT, scale.y(value), 0.4, True))
            items.append(_tick(scale, value))
    else:
        top = max(known)
        items += [
            Line(LEFT, scale.y(top), WIDTH - RIGHT, scale.y(top), 0.3, True),
            _tick(scale, top),
        ]
    items += [*_axis(scale), *_marks(scale, turns, sides), *_legend(sides)]
    repetitions = len(e.repetitions)
    items.append(Label(WIDTH - RIGHT, HEIGHT - 4, f"repetition {repetitions}", "end"))
    items.append(Label(LEFT, HEIGHT - 4, "repetition 1" if repetitions > 1 else ""))
    lost = len(turns) - len(known)
    range_words = f"{number_text(min(known), 1)} to {number_text(max(known), 1)}{unit}"
    return Chart(
        f"How far each turn went, {e.name}",
        f"{len(turns)} turns ({' and '.join(sides)}), from {range_words}{asked_words}"
        + (f"; {lost} without a figure" if lost else "")
        + ". The table and the file of repetitions have the figures.",
        tuple(items),
    )


def _axis(scale: _Scale) -> Iterator[Item]:
    yield Line(LEFT, scale.y(0), WIDTH - RIGHT, scale.y(0), 0.8)
    yield Line(LEFT, TOP, LEFT, scale.y(0), 0.8)
    yield _tick(scale, 0.0)


def _tick(scale: _Scale, value: float) -> Label:
    return Label(LEFT - 3, scale.y(value) + 2.4, number_text(value, 0), "end")


def _marks(
    scale: _Scale, turns: Sequence[tuple[str, float | None]], sides: Sequence[str]
) -> Iterator[Item]:
    size = 3.4 if len(turns) <= MANY_TURNS else 2.2
    for k, (side, value) in enumerate(turns):
        if value is None:
            yield Mark(scale.x(k), scale.y(0) - 3, size, "cross")
        else:
            kind: Literal["circle", "square"] = "circle" if side == sides[0] else "square"
            yield Mark(scale.x(k), scale.y(abs(value)), size, kind)


def _legend(sides: Sequence[str]) -> Iterator[Item]:
    x = LEFT
    for side, kind in zip(sides, ("circle", "square"), strict=False):
        yield Mark(x + 2, 5.5, 3.4, "circle" if kind == "circle" else "square")
        yield Label(x + 7, 8, side[:MOST_LEGEND])
        x += 48.0


#: Lines across the chart of dizziness, at these scores.
_ACROSS = (5.0, 10.0)
#: How high digits stand above their base line, by their size (those of most typefaces).
_DIGITS = 0.72
#: Where the heading of the chart ends, and the way from a mark to its number.
_HEAD_ENDS, _TO_NUMBER = 10.0, 4.0


def _base_of_number(scale: _Scale, value: float) -> float:
    """Base line of a score's number: above its mark, or below, where a line would strike it."""
    y = scale.y(value)
    base, high = y - _TO_NUMBER, _DIGITS * SMALL
    struck = any(base - high - 0.5 <= scale.y(v) <= base + 0.5 for v in _ACROSS)
    return y + _TO_NUMBER + high if struck or base - high < _HEAD_ENDS else base


def symptom_chart(record: SessionFigures) -> Chart | None:
    """Dizziness at the start and after each exercise; None with fewer than two scores."""
    before = record.find("dizziness.before")
    points = [("start", before.value)] if before is not None else []
    for k, e in enumerate(record.exercises, 1):
        after = e.find("dizziness.after")
        if after is not None:
            points.append((str(k), after.value))
    scores = [(k, n, v) for k, (n, v) in enumerate(points) if isinstance(v, float)]
    if len(scores) < 2:
        return None
    scale = _Scale(10.0, len(points))
    items: list[Item] = [*_axis(scale), *(_tick(scale, v) for v in _ACROSS)]
    items += [Line(LEFT, scale.y(v), WIDTH - RIGHT, scale.y(v), 0.3, True) for v in _ACROSS]
    for (a, _, v), (b, _, w) in pairwise(scores):
        # Across a score that was not asked for the line is broken.
        items.append(Line(scale.x(a), scale.y(v), scale.x(b), scale.y(w), 0.8, b - a > 1))
    for k, name, value in scores:
        items.append(Mark(scale.x(k), scale.y(value), 3.4, "circle"))
        base = _base_of_number(scale, value)
        items.append(Label(scale.x(k), base, number_text(value, 0), "middle"))
        items.append(Label(scale.x(k), HEIGHT - 4, name, "middle"))
    items.append(Label(LEFT, 8, "Dizziness at the start and after each"))
    told = ", ".join(
        f"{number_text(v, 0)} {'at the start' if n == 'start' else f'after exercise {n}'}"
        for _, n, v in scores
    )
    return Chart("Dizziness through the session", f"Of 10: {told}.", tuple(items))
