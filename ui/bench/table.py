"""Figures of clips, gathered by row: median, worst, the aim, and on what the worst was measured."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from statistics import median

from sample_clips.matrix import Drawn
from ui.bench.aims import aim_of
from ui.bench.truth import Comparison

#: One figure of one clip: its value, who and what it was measured on, and what is aimed at.
Reading = tuple[float, str, float | None]
#: Columns of truth as they are called in the table.
_SAID = {
    "head_yaw_deg": "head yaw",
    "head_pitch_deg": "head pitch",
    "head_roll_deg": "head roll",
    "gaze_yaw_deg": "gaze yaw",
    "gaze_pitch_deg": "gaze pitch",
}
#: What was done to make the eyes harder to read, as it stands behind a row's name.
_MADE_HARD = {
    "turns-lagging": ", eyes that lag",
    "turns-lids-lower": ", lids lower",
    "turns-light-changed": ", light changed",
    "turns-looking-down": ", looks far down",
}
_RATIO = "counter-turn ratio"
#: Figures that rest on how the eyes are read while the head moves.
_OF_THE_GAZE = (_RATIO, "eye yaw for each degree of head yaw", "glance away, %")


def readings_of(one: Drawn, result: Comparison) -> Iterable[tuple[str, Reading]]:
    """Rows' names, each with what one clip has to say there."""
    where = f"{one.scenario.name}, {one.kind}: {one.conditions}"
    for name, value in figures_of(one, result):
        yield name, (value, where, aim_of(name, one))


def figures_of(one: Drawn, result: Comparison) -> Iterable[tuple[str, float]]:
    """Names and values of a clip's rows."""
    made_hard = _MADE_HARD.get(one.kind, "")
    moved = {"turns": "turning", "nods": "nodding"}.get(one.scenario.movement.kind)
    for column, name in _SAID.items():
        value = result.error_deg.get(column)
        if value is None or (name.startswith("gaze") and moved is None):
            continue
        said = f"{name} while {moved}{made_hard}" if name.startswith("gaze") else name
        yield said, value
    for axis in ("yaw", "pitch"):
        slope = result.slope.get(f"head_{axis}_deg")
        if slope is not None:
            yield f"head {axis}, slope off 1", abs(slope - 1.0)
    for name, value in result.derived.items():
        said = f"{name} while {moved}" if name == _RATIO else name
        yield (f"{said}{made_hard}" if name in _OF_THE_GAZE else said), value
    if made_hard:
        yield f"gaze not measured, %{made_hard}", 100 * (1.0 - result.gaze_measured)
    yield "not measured, % of the frames", 100 * (1.0 - result.measured)


def table_lines(readings: Mapping[str, Sequence[Reading]]) -> Iterable[str]:
    """Lines of the table, by the rows' names."""
    yield f"{'':44}{'clips':>6}{'median':>8}{'worst':>8}{'aim':>7}{'kept':>8}  worst clip"
    for name in sorted(readings):
        aimed = [row for row in readings[name] if row[2] is not None]
        rest = [row for row in readings[name] if row[2] is None]
        yield from _line(name, aimed)
        yield from _line(f"{name}, beyond" if aimed else name, rest)


def _line(name: str, rows: Sequence[Reading]) -> Iterable[str]:
    """A row of the table, if there is anything to say."""
    if not rows:
        return
    worst, where, aim = max(rows, key=lambda row: row[0])
    middle = median(value for value, *_ in rows)
    kept = sum(value <= limit for value, _, limit in rows if limit is not None)
    # The strictest, where fine pictures have an aim of their own.
    said = "" if aim is None else f"{min(row[2] for row in rows if row[2] is not None):.3g}"
    share = "" if aim is None else f"{kept}/{len(rows)}"
    yield f"{name:44}{len(rows):>6}{middle:>8.3f}{worst:>8.3f}{said:>7}{share:>8}  {where}"
