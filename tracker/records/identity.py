"""Which session a file holds: told by what stands in it, never by the name of the file."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Sequence
from pathlib import Path, PurePosixPath
from typing import TYPE_CHECKING

from tracker.session.saving import SUMMARY_NAME, TRACE_NAME

if TYPE_CHECKING:
    from tracker.records.rows import SessionRow
    from tracker.session.summary_file import Summary


def content_id(summary: Summary) -> str:
    """An ID for a lone check, which has none: made from all that its summary says.

    What is as it is by default is left out, so that the same file has the same ID when a later
    version knows a field more.
    """
    text = json.dumps(summary.model_dump(exclude_defaults=True), sort_keys=True, ensure_ascii=True)
    return f"check-{hashlib.sha256(text.encode()).hexdigest()[:24]}"


def each_once(
    rows: Sequence[SessionRow], folder: Path
) -> tuple[list[SessionRow], list[tuple[str, str]]]:
    """Each session once, and of every further file of it the place, and why it is left out.

    Of two files of a session the one counts that was finished (the other was taken while it went
    on), then the one with more sets, then a session's own folder with its trace: from a file
    alone no trace can be shown.

    Parameters
    ----------
    rows
        Sessions in the order of time.
    folder
        What their places lie below.
    """
    files: dict[tuple[str | None, str], list[SessionRow]] = {}
    for row in rows:
        files.setdefault(_identity(row), []).append(row)
    # Whether there is a trace is looked at only where a session is there twice.
    taken = {
        key: of[0] if len(of) == 1 else min(of, key=lambda r: _rank(r, folder))
        for key, of in files.items()
    }
    kept, left = [], []
    for row in rows:
        first = taken[_identity(row)]
        if row is first:
            kept.append(row)
        elif row._replace(place=first.place) == first:
            left.append((row.place, f"is a second copy of {first.place}, left out"))
        else:
            why = f"is the same session as {first.place} with other content, left out"
            left.append((row.place, f"{why}; look which of them is right"))
    return kept, left


def _identity(row: SessionRow) -> tuple[str | None, str]:
    return row.person, row.session_id or row.content_id or row.place


def _rank(row: SessionRow, folder: Path) -> tuple[bool, int, bool, bool, int, str]:
    place = PurePosixPath(row.place)
    has_trace = place.name == SUMMARY_NAME and (folder / place.with_name(TRACE_NAME)).is_file()
    return (
        row.ended == "interrupted",
        -len(row.sets),
        not has_trace,
        place.name != SUMMARY_NAME,
        # Copies have longer names; notes know a file without an ID by its own.
        len(row.place),
        row.place,
    )
