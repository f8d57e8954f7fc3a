"""Sending what a server has not got yet, session by session, and writing down how it went."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from tracker.records.figures import SessionFigures
from ui.documents.fhir import fhir_bundle
from ui.posting.record import Sent, SentRecord
from ui.posting.server import NoServerError, NotTakenError, Server
from ui.posting.sessions import Found, LeftOut, find_summaries, read_session


@dataclass(slots=True)
class Count:
    """How many sessions went, had gone before, were left out without harm, or did not go."""

    sent: int = 0
    before: int = 0
    left_out: int = 0
    failed: int = 0


def send_folder(
    folder: Path,
    server: Server,
    record: SentRecord,
    tell: Callable[[str], None],
    *,
    again: bool = False,
) -> Count:
    """Send each session of a folder that the server has not got as it is now.

    Parameters
    ----------
    tell
        Gets a line for each session that was not sent.
    again
        Send those that went before, too.

    Raises
    ------
    NoServerError
        If nothing can be sent there; what went before it is written down.
    RunError
        If what was sent can't be written down.
    """
    known = record.of(server.address)
    count = Count()
    waiting: dict[str, Found] = {}
    seen: dict[str, str] = {}
    for found in find_summaries(folder):
        if isinstance(found, LeftOut):
            _leave_out(found, count, tell)
        elif found.digest in known.went and not again:
            count.before += 1
            seen.setdefault(known.went[found.digest], found.digest)
        else:
            # The same file twice is one session.
            waiting.setdefault(found.digest, found)
    # One that a server never takes must not keep the others waiting behind it.
    for found in sorted(waiting.values(), key=lambda f: known.failed.get(f.digest, 0)):
        session = read_session(folder, found)
        if isinstance(session, LeftOut):
            _leave_out(session, count, tell)
        elif seen.setdefault(session.stable_id, found.digest) != found.digest:
            other = "another file of the same session, which went before"
            _leave_out(LeftOut(found.path, other), count, tell)
        else:
            _send(found, session, server, (record, known), count, tell)
    return count


def _leave_out(left: LeftOut, count: Count, tell: Callable[[str], None]) -> None:
    tell(f"{left.path}: not sent: {left.why}")
    if left.harmless:
        count.left_out += 1
    else:
        count.failed += 1


def _send(
    found: Found,
    session: SessionFigures,
    server: Server,
    records: tuple[SentRecord, Sent],
    count: Count,
    tell: Callable[[str], None],
) -> None:
    record, known = records
    bundle = fhir_bundle([session])
    try:
        server.post(bundle, len(json.loads(bundle)["entry"]))
    except (NotTakenError, NoServerError) as error:
        # What is the last word on it already need not be said with every call.
        if known.why.get(found.digest) != str(error):
            record.add(server.address, session.stable_id, found.digest, str(error))
        if isinstance(error, NoServerError):
            raise
        tell(f"{found.path}: not sent: {error}")
        count.failed += 1
    else:
        record.add(server.address, session.stable_id, found.digest)
        count.sent += 1
