"""``turnpost bench accuracy --matrix N``: clips of people and conditions drawn by lot."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable
from pathlib import Path

from sample_clips.matrix import Drawn
from ui.bench.accuracy import compare_clip
from ui.bench.aims import said_of
from ui.bench.table import Reading, readings_of, table_lines


def matrix_table(lot: Iterable[Drawn], seed: int, folder: Path) -> Iterable[str]:
    """Lines of the table, after one line a clip while it is worked out.

    Parameters
    ----------
    lot
        What to draw and to measure.
    seed
        What it was drawn with, for the table's heading.
    folder
        Where the clips go; a clip that is there already is not drawn again.
    """
    lot = list(lot)
    readings: dict[str, list[Reading]] = defaultdict(list)
    wrong, missed, false, found = 0, 0, 0, 0
    for number, one in enumerate(lot, start=1):
        result = compare_clip(_render(one, folder))
        for name, reading in readings_of(one, result):
            readings[name].append(reading)
        wrong += result.repetitions != result.true_repetitions
        found, missed, false = found + result.found, missed + result.missed, false + result.false
        yield (
            f"{number:>3}/{len(lot)} {one.kind:15} {one.conditions}: "
            f"yaw {result.error_deg.get('head_yaw_deg', float('nan')):.2f} "
            f"pitch {result.error_deg.get('head_pitch_deg', float('nan')):.2f} "
            f"counted {result.repetitions}/{result.true_repetitions}, "
            f"{result.found} found, {result.missed} missed, {result.false} false"
        )
    yield ""
    yield (
        f"On rendered heads, {len(lot)} clips drawn with seed {seed}, {dt.date.today():%Y-%m-%d}; "
        "mean absolute errors in degrees unless said."
    )
    yield f"{said_of(lot)}: the aim, and how many of those clips keep it."
    yield from table_lines(readings)
    yield f"repetitions: {wrong} of {len(lot)} clips miscounted"
    yield f"events: {found} found within 0.15 s, {missed} missed, {false} false"


def _render(one: Drawn, folder: Path) -> Path:
    clip = folder / f"{one.scenario.name}.mp4"
    if not clip.exists() or not clip.with_suffix(".events.json").exists():
        from sample_clips.render import render_scenario

        render_scenario(one.scenario, folder, one.quality)
    return clip
