"""What a journal says of itself: in its first line, and once more with each step and set-up.

A first line that is damaged would else hide that a demo wrote the journal, or a newer version.
"""

from __future__ import annotations

import contextlib
import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from tracker.session.journal_line import Record
from tracker.session.live import is_of_the_sample

FORMAT = "turnpost-journal"
FORMAT_VERSION = 1

#: The folder of a session that the program recorded bears its ID: the local time, and chance.
_SESSION_ID = re.compile(r"(\d{8}-\d{6})-[0-9a-f]{4}")
#: Kinds whose lines say it once more: there are few of them, and one stands soon after the first.
_MARKED = frozenset({"step", "setup"})
#: Kinds of which a session has some: any of them makes the file the journal of one.
_OF_A_SESSION = _MARKED | {"sample", "turn", "event", "answer", "mark", "said"}
_KNOWN = _OF_A_SESSION | {"session", "end"}


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


def is_of_a_session(record: Record) -> bool:
    """Whether a line is one of those that only a session's journal has, its first line aside."""
    return record["kind"] in _OF_A_SESSION


def is_of_no_kind(record: Record) -> bool:
    """Whether nobody knows a line's kind: of the first line it is the damage."""
    return record["kind"] not in _KNOWN


def head_of(records: Sequence[Record]) -> Head | None:
    """What the lines say of a journal whose first line can't be believed; None where it can be.

    The first line and the marks are heard together. One that says "demo" is enough: a damaged
    byte makes no demo of a patient's session. The version is that of most lines; where as many
    say another, that which this program knows (damage seldom makes a right number of a wrong
    one). A first line that says another thing than what comes out of this is damaged.

    Parameters
    ----------
    records
        All that could be read, the first line too if it could.
    """
    first = next((r for r in records if r["kind"] == "session"), None)
    marked = [r for r in records if r["kind"] in _MARKED and "journal_version" in r]
    demo = _is_of_a_demo(first) or any(r.get("demo") is True for r in marked)
    damaged = Head(bool(marked), demo)
    if first is None:
        return damaged
    if not marked:
        return None
    right = (FORMAT, _version_of(records), demo)
    return None if (first.get("format"), _number(first), _is_of_a_demo(first)) == right else damaged


def stand_in(folder: str, records: Sequence[Record]) -> Record:
    """What stands for a first line that is damaged: nobody's, but of a session of ours.

    It names no columns: their order follows from how many values a sample has.

    Parameters
    ----------
    folder
        Name of the journal's folder.
    records
        All that could be read, the first line too if it could.
    """
    about = _about_of(folder)
    version = _version_of(records)
    return {"kind": "session", "format": FORMAT, "format_version": version, "about": about}


def _about_of(folder: str) -> Record:
    """What a folder's name tells of its session: ID and beginning, if the program named it.

    The offset is that of this computer: it was recorded here, or nearly always in the same land.
    """
    found = _SESSION_ID.fullmatch(folder)
    if found is None:
        return {}
    about = {"session_id": folder}
    with contextlib.suppress(ValueError, OverflowError, OSError):
        at = datetime.strptime(found[1], "%Y%m%d-%H%M%S").astimezone()
        about["started_at"] = at.isoformat(timespec="seconds")
    return about


def _version_of(records: Sequence[Record]) -> int:
    """The version that most lines name."""
    said = [_number(r) for r in records if r["kind"] in _MARKED or r["kind"] == "session"]
    counts = Counter(v for v in said if v is not None)
    # Of as many, the lower one; nothing below the first version was ever written.
    return max(counts, key=lambda v: (counts[v], v > 0, -v), default=FORMAT_VERSION)


def _number(record: Record) -> int | None:
    """The version that a line names, or None."""
    found = record.get("format_version" if record["kind"] == "session" else "journal_version")
    return found if isinstance(found, int) and not isinstance(found, bool) else None


def _is_of_a_demo(first: Record | None) -> bool:
    about = None if first is None else first.get("about")
    setup = about.get("setup") if isinstance(about, dict) else None
    return isinstance(setup, dict) and is_of_the_sample(setup)
