"""What films of the home programme came to, as a table that a program can read."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable
from dataclasses import asdict, dataclass, fields
from typing import Any

#: Under this name a test hands its result to the summary at the end.
PROPERTY = "film"


@dataclass(frozen=True, slots=True)
class FilmResult:
    """One film: what was played and what was found.

    ``row`` is 0 for exercises beyond the rows; counts, seconds held and sway (RMS of the neck
    point, in mm) are None where there are none; events are codes, each once, in the order
    of the alphabet.
    """

    row: int
    clip: str
    exercise: str
    expected: int | None
    counted: int | None
    expected_held_s: float | None
    held_s: float | None
    expected_sway_mm: float | None
    sway_mm: float | None
    expected_events: tuple[str, ...]
    events: tuple[str, ...]

    @classmethod
    def of(cls, found: dict[str, Any], truth: dict[str, Any], row: int, clip: str) -> FilmResult:
        """From an exercise of a summary, and the events that belong to the clip."""
        done = found["done"]
        counts = done["repetitions"] is not None or truth["repetitions"] > 0
        held = done["held_s"] is not None
        sway_mm = found["sway"]["value"]
        return cls(
            row,
            clip,
            found["exercise"],
            truth["repetitions"] if counts else None,
            done["repetitions"],
            round(truth["held_s"], 1) if held else None,
            round(done["held_s"], 1) if held else None,
            None if sway_mm is None else round(truth["sway_mm"], 1),
            None if sway_mm is None else round(sway_mm, 1),
            _codes(truth["events"]),
            _codes(found["events"]),
        )


def _codes(events: Iterable[dict[str, Any]]) -> tuple[str, ...]:
    return tuple(sorted({str(e["code"]) for e in events}))


def as_csv(results: Iterable[dict[str, Any]]) -> str:
    """Results with a header row, in the order of the rows; several events with a blank between."""
    out = io.StringIO()
    writer = csv.DictWriter(out, [f.name for f in fields(FilmResult)], lineterminator="\n")
    writer.writeheader()
    for result in sorted(results, key=lambda r: (r["row"] or 99, r["exercise"], r["clip"])):
        cells = {k: " ".join(v) if isinstance(v, list | tuple) else v for k, v in result.items()}
        writer.writerow(cells)
    return out.getvalue()


def as_property(result: FilmResult) -> tuple[str, dict[str, Any]]:
    """What a test reports, in values that any process can hand on."""
    return PROPERTY, {k: list(v) if isinstance(v, tuple) else v for k, v in asdict(result).items()}
