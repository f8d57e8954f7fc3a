"""Sets counted rightly or not, and events found, missed and invented: the table of many sets."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from ui.bench.truth import match_events


@dataclass(frozen=True, slots=True)
class SetResult:
    """What was made of one set.

    Attributes
    ----------
    counted, true
        Repetitions.
    seen
        Events as ``(code, start_s)``.
    events
        Those of the truth.
    lasts_s
        How long the set is.
    blinks
        How many blinks lie in it.
    """

    counted: int
    true: int
    seen: list[tuple[str, float]]
    events: list[dict[str, Any]]
    lasts_s: float
    blinks: int


@dataclass
class Tally:
    """Gathers :class:`SetResult` by kind of set and of event."""

    sets: Counter[str] = field(default_factory=Counter)
    wrong: Counter[str] = field(default_factory=Counter)
    true: Counter[str] = field(default_factory=Counter)
    found: Counter[str] = field(default_factory=Counter)
    false: Counter[str] = field(default_factory=Counter)
    lasted_s: float = 0.0
    blinks: int = 0

    def add(self, name: str, kind: str, result: SetResult) -> Iterable[str]:
        """Count a set in; gives a line for each thing that was wrong with it."""
        self.sets[kind] += 1
        self.lasted_s += result.lasts_s
        self.blinks += result.blinks
        if result.counted != result.true:
            self.wrong[kind] += 1
            yield f"{name}, {kind}: counted {result.counted}, did {result.true}"
        for code in sorted({c for c, _ in result.seen} | {str(e["code"]) for e in result.events}):
            hit, missed, more = match_events(
                [s for s in result.seen if s[0] == code],
                [e for e in result.events if e["code"] == code],
            )
            self.true[code] += hit + missed
            self.found[code] += hit
            self.false[code] += more
            if missed or more:
                yield f"{name}, {kind}: {code}: {missed} missed, {more} false"

    def lines(self) -> Iterable[str]:
        """One line for each kind of set, then one for each kind of event."""
        yield f"{'':20}{'sets':>6}{'miscounted':>12}"
        for kind in self.sets:
            yield f"{kind:20}{self.sets[kind]:>6}{self.wrong[kind]:>12}"
        yield f"{'all':20}{self.sets.total():>6}{self.wrong.total():>12}"
        yield ""
        yield f"{'':20}{'true':>6}{'found':>12}{'false':>8}"
        for code in sorted(self.true):
            yield f"{code:20}{self.true[code]:>6}{self.found[code]:>12}{self.false[code]:>8}"
        yield f"in {self.lasted_s / 60:.0f} minutes with {self.blinks} blinks"
