"""One line of a journal: a record as JSON takes it, and back."""

from __future__ import annotations

import json
from math import isfinite
from typing import Any

import numpy as np

Record = dict[str, Any]

#: Stands where a record could not be written: no JSON, so that reading counts it as damaged and
#: the summary says that something is missing.
DROPPED = b"a record that could not be written\n"

#: No measured value is as large.
MOST = 1e12


def encode(record: Record) -> bytes:
    """One line; numbers that are not finite become null, numpy's scalars plain numbers.

    Raises
    ------
    TypeError, ValueError, RecursionError
        If the record holds what JSON has no form for.
    """
    try:
        text = _text(record)
    except (TypeError, ValueError):
        # Most records need no second look: they are made for this.
        text = _text(_plain(record))
    return text.encode("utf-8", errors="replace") + b"\n"


def decode(line: bytes) -> Record | None:
    """Record of a line, None of a damaged one."""
    try:
        record = json.loads(line.decode("utf-8"), parse_constant=_no_constant)
    except (ValueError, RecursionError):
        return None
    if not isinstance(record, dict) or not isinstance(record.get("kind"), str):
        return None
    return record


def is_number(value: object) -> bool:
    """Whether a damaged file's value can stand for a measured one; an integer has no bounds."""
    return isinstance(value, int | float) and not isinstance(value, bool) and abs(value) < MOST


def _text(value: Any) -> str:
    return json.dumps(value, separators=(",", ":"), ensure_ascii=False, allow_nan=False)


def _plain(value: Any) -> Any:
    if isinstance(value, np.generic):
        value = value.item()
    if isinstance(value, float):
        return value if isfinite(value) else None
    if isinstance(value, dict):
        return {key: _plain(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(one) for one in value]
    return value


def _no_constant(name: str) -> float:
    raise ValueError(f"{name} is no JSON")
