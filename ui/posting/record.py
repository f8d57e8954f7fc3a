"""Which sessions and scores went where: a therapist's own record, only ever added to.

``notes/AUTHOR.sent.jsonl`` below the folder whose sessions are sent, beside the notes. It has
no token and no figure in it.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from math import inf
from pathlib import Path
from typing import Any

from tracker.errors import RunError, system_reason
from tracker.inputs import TooLargeError
from tracker.records.appended import MAX_FILE_BYTES, append_line, read_lines
from tracker.records.notes import FOLDER_NAME

FORMAT = "turnpost-sent"
FORMAT_VERSION = 1
SUFFIX = ".sent.jsonl"


@dataclass(frozen=True, slots=True)
class Sent:
    """What is known of one server: the summaries that it has, and what it did not take.

    Attributes
    ----------
    went
        sha256 of a summary that was sent -> the session's ID; of a questionnaire score that of
        its Bundle -> ``questionnaire/`` and its ID.
    failed
        sha256 of a summary -> how often it was not taken, each time for another reason.
    why
        sha256 of a summary that was not taken last time -> the reason.
    marks
        sha256 of a summary that was sent -> what the therapists had marked in it when it was sent
        last (``send.marks_by_session``); empty where nothing was.
    last
        ID of what was sent -> sha256 of what was sent of it last; of a person's
        plan ``plan/`` and the ID of its CarePlan.
        An ID whose last sending failed is not in it: the server may have taken it all the same,
        and only the answer was lost.
    tried
        IDs of all that was ever on its way there, taken or not: an answer may have been lost.
    people
        ID of a session that was on its way -> the pseudonym whose it is.
    """

    went: dict[str, str]
    failed: dict[str, int]
    why: dict[str, str]
    marks: dict[str, str]
    last: dict[str, str]
    tried: set[str]
    people: dict[str, str]


class SentRecord:
    """The record of a folder: all authors' are read, one author's is written."""

    def __init__(self, folder: Path, author: str) -> None:
        self.folder = folder / FOLDER_NAME
        self.author = author
        self.path = self.folder / f"{author}{SUFFIX}"

    @property
    def _too_large(self) -> str:
        return (
            f"{self.path}: the record of what was sent has become too large to be read; move "
            "it elsewhere and send again: what went before goes once more, nothing is doubled"
        )

    def of(self, address: str) -> Sent:
        """What was sent to an address; a line that can't be read only means a second sending.

        Raises
        ------
        RunError
            If the author's own record is larger than is read; it would be taken for empty.
        """
        if self.path.is_file() and self.path.stat().st_size > MAX_FILE_BYTES:
            raise RunError(self._too_large)
        sent = Sent({}, {}, {}, {}, {}, set(), {})
        for line in self._lines():
            if line["to"] != address:
                continue
            sent.tried.add(line["session"])
            if line.get("person"):
                sent.people[line["session"]] = str(line["person"])
            if line["kind"] == "sent":
                sent.went[line["summary"]] = line["session"]
                sent.last[line["session"]] = line["summary"]
                sent.marks[line["summary"]] = str(line.get("marks") or "")
                sent.why.pop(line["summary"], None)
            else:
                sent.last.pop(line["session"], None)
                sent.why[line["summary"]] = str(line.get("why"))
                sent.failed[line["summary"]] = sent.failed.get(line["summary"], 0) + 1
        return sent

    def _lines(self) -> list[dict[str, Any]]:
        """All authors' lines, the newest last: the last word is not that of the last name."""
        found = [
            line
            for path in sorted(self.folder.glob("*.jsonl"))
            for line in read_lines(path, FORMAT, FORMAT_VERSION, _makes_sense)
        ]
        return sorted(found, key=_when)

    def add(
        self,
        address: str,
        session: str,
        summary: str,
        why: str | None = None,
        marks: str = "",
        person: str = "",
    ) -> None:
        """Write that a person's session went to an address, with which marks, or why it didn't.

        Raises
        ------
        RunError
            If it can't be written.
        """
        head = {"format": FORMAT, "format_version": FORMAT_VERSION, "author": self.author}
        line = {
            "at": datetime.now().astimezone().isoformat(timespec="seconds"),
            "kind": "sent" if why is None else "not_sent",
            "to": address,
            "session": session,
            "summary": summary,
            **({"marks": marks} if marks else {}),
            **({"person": person} if person else {}),
        }
        try:
            append_line(self.path, head, line if why is None else {**line, "why": why})
        except TooLargeError as error:
            # It is full: no room on the disk and no right help.
            raise RunError(self._too_large) from error
        except OSError as error:
            raise RunError(
                f"{self.path}: what was sent could not be written down ({system_reason(error)}); "
                "make room or get the right to write there, then send again: nothing is doubled"
            ) from error


def _when(line: dict[str, Any]) -> float:
    """When it was written, in seconds; where nobody knows, before all others."""
    try:
        return datetime.fromisoformat(str(line.get("at"))).timestamp()
    except (ValueError, OverflowError, OSError):
        return -inf


def _makes_sense(line: dict[str, Any]) -> bool:
    words = all(isinstance(line.get(k), str) for k in ("to", "session", "summary"))
    return words and line.get("kind") in ("sent", "not_sent")
