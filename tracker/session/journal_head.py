"""What a journal says of itself: in its first line, and once more with each step and set-up.

A first line that is damaged would else hide that a demo wrote the journal, or a newer version.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from tracker.session.journal_line import Record

FORMAT = "turnpost-journal"
FORMAT_VERSION = 1

#: The folder of a session that the program recorded bears its ID.
_SESSION_ID = re.compile(r"\d{8}-\d{6}-[0-9a-f]{4}")
#: Kinds whose lines say it once more: there are few of them, and one stands soon after the first.
_MARKED = frozenset({"step", "setup"})
#: Kinds of which a session has some.
_OF_A_SESSION = _MARKED | {"sample"}


@dataclass(frozen=True, slots=True)
class Head:
    """What is known of a journal whose first line is damaged.

    Attributes
    ----------
    marked
        Whether other lines say which version wrote it, and whether in a demo; else neither can be
        told. Those written before there were such marks don't.
    demo
        A sample clip was in the camera's place.
    """

    marked: bool
    demo: bool


def marks(*, demo: bool) -> Record:
    """What a step's or a set-up's line says of the whole journal."""
    return {"journal_version": FORMAT_VERSION} | ({"demo": True} if demo else {})


def is_damaged(rows: Sequence[Record | None]) -> bool:
    """Whether the first line of a session's journal is damaged, and no other says what it said."""
    kinds = {r["kind"] for r in rows if r is not None}
    return "session" not in kinds and bool(kinds & _OF_A_SESSION)


def head_of(records: Sequence[Record]) -> Head:
    """What the other lines say."""
    marked = [r for r in records if r["kind"] in _MARKED and "journal_version" in r]
    return Head(bool(marked), any(r.get("demo") is True for r in marked))


def stand_in(folder: str, records: Sequence[Record]) -> Record:
    """What stands for a first line that is damaged: nobody's, but of a session of ours.

    It names no columns: their order follows from how many values a sample has.

    Parameters
    ----------
    folder
        Name of the journal's folder.
    records
        Its other lines.
    """
    about = {"session_id": folder} if _SESSION_ID.fullmatch(folder) else {}
    versions: list[Any] = [r.get("journal_version") for r in records if r["kind"] in _MARKED]
    known = [v for v in versions if isinstance(v, int)]
    version = max(known, default=FORMAT_VERSION)
    return {"kind": "session", "format": FORMAT, "format_version": version, "about": about}
