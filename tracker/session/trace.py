"""Traces: the measured samples as a CSV table.

A header row of :data:`tracker.sample.TRACE_COLUMNS`, one row a sample, ``.``
decimals, UTF-8; what wasn't measured is empty. A trace may hold some of the
columns only, and unknown ones are passed over.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from math import isfinite, nan
from pathlib import Path

from tracker.errors import InputError
from tracker.inputs import read_input_text
from tracker.sample import NO_SETUP, REASONS, TRACE_COLUMNS, Sample
from tracker.session.files import write_atomically
from tracker.session.stage import GazeRead, StageLog, Step

#: Bounds that keep a foreign file from filling the memory: four hours at 60 frames/s.
MAX_FILE_BYTES = 400_000_000
MAX_ROWS = 900_000
MAX_LINE_CHARS = 10_000
#: Angles and positions beyond this are no measurement.
MAX_VALUE = 1e7

_NO_GAP_S = 0.5


def format_trace(samples: Iterable[Sample]) -> str:
    """The table as text."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(TRACE_COLUMNS)
    for sample in samples:
        writer.writerow([_cell(getattr(sample, name)) for name in TRACE_COLUMNS])
    return out.getvalue()


def save_trace(path: Path, samples: Iterable[Sample]) -> None:
    """Write a trace, whole or not at all."""
    write_atomically(path, format_trace(samples))


def _cell(value: float | str) -> str:
    if isinstance(value, str):
        return value
    return repr(float(value)) if isfinite(value) else ""


def load_trace(path: Path) -> list[Sample]:
    """Read a trace.

    Raises
    ------
    InputError
        If it can't be read or isn't one; the message names line and column.
    """
    return parse_trace(read_input_text(path, MAX_FILE_BYTES, "a trace"), str(path))


def parse_trace(text: str, name: str) -> list[Sample]:
    """Samples of a table; ``name`` stands in the messages."""
    try:
        return _parse(text, name)
    except csv.Error as error:
        raise InputError(f"{name}: not a CSV table ({error})") from error


def _parse(text: str, name: str) -> list[Sample]:
    lines = text.splitlines()
    long = next((n for n, line in enumerate(lines, 1) if len(line) > MAX_LINE_CHARS), None)
    if long is not None:
        raise InputError(f"{name}: line {long} is too long for a trace")
    reader = csv.reader(lines)
    header = [h.strip() for h in next(reader, [])]
    _check_header(header, name)
    columns = [(k, h) for k, h in enumerate(header) if h in TRACE_COLUMNS]
    samples: list[Sample] = []
    for row in reader:
        if not any(cell.strip() for cell in row):
            continue
        if len(samples) >= MAX_ROWS:
            raise InputError(f"{name}: more than {MAX_ROWS} rows")
        sample = _sample(row, columns, name, reader.line_num)
        if samples and sample.time_s <= samples[-1].time_s:
            raise InputError(
                f"{name}: line {reader.line_num}, time_s: not later than the row before"
            )
        samples.append(sample)
    if not samples:
        raise InputError(f"{name}: holds no rows")
    return samples


def _check_header(header: Sequence[str], name: str) -> None:
    if "time_s" not in header:
        raise InputError(f"{name}: line 1: no column time_s; is this a trace?")
    twice = sorted({h for h in header if h in TRACE_COLUMNS and header.count(h) > 1})
    if twice:
        raise InputError(f"{name}: line 1: the column {twice[0]} stands there twice")


def _sample(row: Sequence[str], columns: Sequence[tuple[int, str]], name: str, line: int) -> Sample:
    numbers: dict[str, float] = {}
    text: dict[str, str] = {}
    for k, column in columns:
        cell = row[k].strip() if k < len(row) else ""
        if column == "step":
            text[column] = cell[:40]
        elif column == "reason":
            text[column] = cell if cell in REASONS else ""
        else:
            numbers[column] = _number(cell, f"{name}: line {line}, {column}")
    if not isfinite(numbers["time_s"]):
        raise InputError(f"{name}: line {line}, time_s: is empty")
    return Sample(**numbers, **text)  # type: ignore[arg-type]


def _number(cell: str, where: str) -> float:
    if not cell:
        return nan
    try:
        value = float(cell)
    except ValueError:
        raise InputError(f"{where}: {cell[:20]!r} is no number") from None
    if not isfinite(value):
        return nan
    if abs(value) > MAX_VALUE:
        raise InputError(f"{where}: {cell[:20]} is out of range")
    return value


def stage_of_trace(samples: Sequence[Sample], exercise_id: str) -> StageLog:
    """Steps of a trace that has no stage log: from its ``step`` column, else one exercise."""
    known = {"rest", "look", "turn_slowly", "nod_slowly", "exercise"}
    # As where the clip itself is judged.
    unknown = {"no_setup": True} if without_setup(samples) else {}
    end_s = _end_of(samples)
    if not any(s.step in known for s in samples):
        step = Step(
            from_s=samples[0].time_s,
            to_s=end_s,
            step="exercise",
            exercise=exercise_id,
            **unknown,
        )
        return StageLog(steps=[step])
    runs: list[tuple[str, float]] = []
    for sample in samples:
        if not runs or runs[-1][0] != sample.step:
            runs.append((sample.step, sample.time_s))
    ends = [start for _, start in runs[1:]] + [end_s]
    steps = [
        Step(
            from_s=start,
            to_s=end,
            step=name,
            exercise=exercise_id if name == "exercise" else None,
            **unknown,
        )
        for (name, start), end in zip(runs, ends, strict=True)
        if name in known
    ]
    return StageLog(steps=steps)


def without_setup(samples: Iterable[Sample]) -> bool:
    """Whether a trace says that there was no set-up: a head was measured, the eyes were not."""
    return any(s.reason == NO_SETUP and isfinite(s.head_yaw_deg) for s in samples)


def setup_notes(samples: Iterable[Sample], setup: GazeRead | None) -> tuple[str, ...]:
    """What limits the judging of a trace without its summary.

    Parameters
    ----------
    samples
        Those of the trace.
    setup
        What its stage log says of the set-up; None where there is none or it says nothing.
    """
    if without_setup(samples):
        return ("no_setup",)
    return () if setup is not None else ("setup_unknown",)


def _end_of(samples: Sequence[Sample]) -> float:
    """When a trace ends: its last sample lasts as long as those before, half a second at most."""
    if len(samples) < 2:
        return samples[-1].time_s + 1e-3
    usual = (samples[-1].time_s - samples[0].time_s) / (len(samples) - 1)
    return samples[-1].time_s + min(usual, _NO_GAP_S)
