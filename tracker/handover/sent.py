"""Which sessions were handed over, and to whom."""

from __future__ import annotations

import contextlib
import json
from collections.abc import Collection, Sequence
from pathlib import Path
from typing import Any

from tracker.errors import InputError, TurnpostError
from tracker.handover.fingerprint import keys_words
from tracker.inputs import read_bytes
from tracker.plan.model import Plan
from tracker.session.files import make_private_folder, write_atomically

#: What was handed over already, and to which keys; in the data folder.
RECORD, RECORD_FORMAT, RECORD_VERSION = "handed-over.json", "turnpost-handed-over", 1
MAX_RECORD = 5_000_000


def receiver(plan: Plan) -> str:
    """Who gets a plan's sessions, in the record; a clinic without keys is known by its plan."""
    way = plan.hand_over
    if way is not None and way.keys:
        return keys_words(list(way.keys))
    return f"plain {plan.person or ''} {plan.plan_id}"


def record(data: Path) -> dict[str, list[str]]:
    """Sessions by who got them; a record that can't be read counts as none.

    Then they are handed over once more, which changes nothing at the other end.
    """
    try:
        given = _content(data).get("given", {})
        return {str(k): [str(s) for s in v] for k, v in dict(given).items()}
    except (ValueError, TypeError):
        return {}


def remember(plan: Plan, sessions: Sequence[str], data: Path) -> None:
    """Sessions went into a file for a plan's receiver."""
    given = record(data)
    who = receiver(plan)
    given[who] = sorted({*given.get(who, ()), *sessions})
    # The file is written already; without this record its sessions only go out once more.
    with contextlib.suppress(TurnpostError):
        make_private_folder(data)
        _write(given, data)


def forget(sessions: Collection[str], data: Path) -> None:
    """Take sessions that were deleted out of the record, for their names tell their days.

    Raises
    ------
    InputError, RunError
        If it can't be written.
    """
    given = record(data)
    left = {who: [s for s in ids if s not in sessions] for who, ids in given.items()}
    left = {who: ids for who, ids in left.items() if ids}
    if left != given:
        _write(left, data)


def _content(data: Path) -> dict[str, Any]:
    """What stands in the record; nothing where it can't be read or is none."""
    try:
        content = json.loads(read_bytes(data / RECORD, MAX_RECORD).decode("utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    known = isinstance(content, dict) and content.get("format") == RECORD_FORMAT
    return dict(content) if known else {}


def _write(given: dict[str, list[str]], data: Path) -> None:
    version = _content(data).get("format_version")
    if isinstance(version, int) and version > RECORD_VERSION:
        path = data / RECORD
        raise InputError(f"{path}: was written by a newer version of this program; update it")
    content = {"format": RECORD_FORMAT, "format_version": RECORD_VERSION, "given": given}
    write_atomically(data / RECORD, json.dumps(content, indent=1) + "\n")
