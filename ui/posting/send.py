"""Sending what a server has not got yet, session by session, and writing down how it went."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from tracker.records.index import Records, read_folder
from tracker.records.marks import with_marks
from tracker.records.notes import Note, NoteBook
from tracker.records.people import plans_in_force
from tracker.records.plans import with_plans
from tracker.records.questionnaires import Score, scores_of
from ui.documents.fhir import PERSON, fhir_bundle, plan_bundle, score_bundle
from ui.documents.fhir_asked import person_plan_id
from ui.documents.questionnaires import scores_of_people
from ui.posting.record import Sent, SentRecord
from ui.posting.server import NoServerError, NotTakenError, Server
from ui.posting.sessions import Found, LeftOut, each_its_own, find_summaries, read_session


@dataclass(slots=True)
class Count:
    """How many sessions, scores and plans went, had gone before, were left out, or did not go.

    ``scores`` and ``plans`` are those of ``sent`` that are questionnaire scores, or plans as
    they stand at the clinic; ``left_out`` is without harm.
    """

    sent: int = 0
    scores: int = 0
    plans: int = 0
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
    people: str = PERSON,
) -> Count:
    """Send each session of a folder, and of its people scores and plans, that are not there yet.

    A plan goes again once it was changed, into the same place.

    A score that was taken back goes only where one under its ID was on its way there before, as
    an error without what was typed: whether it arrived is not known where an answer was lost.

    Parameters
    ----------
    tell
        Gets a line for each session that was not sent.
    again
        Send those that went before, too.
    people
        The system that pseudonyms belong to there.

    Raises
    ------
    NoServerError
        If nothing can be sent there; what went before it is written down.
    RunError
        If what was sent can't be written down.
    """
    known = record.of(server.address)
    count = Count()
    book = NoteBook(folder, record.author)
    notes = book.notes()
    marks = marks_by_session(notes)
    kept = read_folder(folder)
    found_here = _left_out_told(find_summaries(kept), count, tell)
    found_here = each_its_own(found_here, known, tell)
    for found in _waiting_sessions(found_here, (known, marks), count, again=again):
        session = read_session(folder, found)
        if isinstance(session, LeftOut):
            _leave_out(session, count, tell)
            continue
        told = fhir_bundle(with_plans(with_marks([session], notes), kept.plans), people=people)
        ready = (found.name, told, marks.get(found.session, ""))
        _send(found, ready, server, (record, known), count, tell)
    scores = _to_send(book, known, {f.person for f in found_here})
    for score, digest in _waiting(scores, known, count, again=again):
        # The record names it as it names a session: by an ID, and by what went.
        found = Found(f"questionnaire score of {score.person}, {score.day}", digest)
        ready = (_known_as(score), score_bundle(score, people), "")
        count.scores += _send(found, ready, server, (record, known), count, tell)
    _send_plans(kept, server, (record, known), count, tell, again=again, people=people)
    return count


def _send_plans(
    kept: Records,
    server: Server,
    records: tuple[SentRecord, Sent],
    count: Count,
    tell: Callable[[str], None],
    *,
    again: bool,
    people: str,
) -> None:
    """Send the plan of each person that isn't there as it stands now; say whose is gone here."""
    _, known = records
    plans = plans_in_force(kept, date.today())
    for person, taken in plans.items():
        bundle, name = plan_bundle(person, taken, people), _plan_known_as(person, people)
        digest = hashlib.sha256(bundle.encode("utf-8")).hexdigest()
        # Waiting where something else went last, whatever went before that.
        if known.last.get(name) == digest and not again:
            count.before += 1
        else:
            found = Found(f"plan {taken.plan.plan_id} of {person}", digest)
            count.plans += _send(found, (name, bundle, ""), server, records, count, tell)
    for person in sorted({r.person for r in kept.rows if r.person} - plans.keys()):
        if _plan_known_as(person, people) in known.tried:
            tell(f"plan of {person}: none is here any more; what was sent stays on the server")


def marks_by_session(notes: Iterable[Note]) -> dict[str, str]:
    """Session -> a sha256 of which of its repetitions are marked not valid, where any is."""
    found: dict[str, set[tuple[int, int]]] = {}
    for n in notes:
        if n.kind == "not_valid" and n.set_number is not None and n.repetition is not None:
            found.setdefault(n.session, set()).add((n.set_number, n.repetition))
    return {k: hashlib.sha256(json.dumps(sorted(v)).encode()).hexdigest() for k, v in found.items()}


def _left_out_told(
    found: Iterable[Found | LeftOut], count: Count, tell: Callable[[str], None]
) -> list[Found]:
    """Sessions; of all else it is told why it is left out."""
    sessions = []
    for one in found:
        if isinstance(one, LeftOut):
            _leave_out(one, count, tell)
        else:
            sessions.append(one)
    return sessions


def _waiting_sessions(
    found_here: Iterable[Found], there: tuple[Sent, dict[str, str]], count: Count, *, again: bool
) -> list[Found]:
    """Sessions to be sent, in the order in which they go.

    One whose marks have changed since goes again: the server has its figures without them.
    """
    known, marks = there
    waiting = []
    for found in found_here:
        as_it_went = known.last.get(found.name) == found.digest and known.marks.get(
            found.digest, ""
        ) == marks.get(found.session, "")
        if as_it_went and not again:
            count.before += 1
        else:
            waiting.append(found)
    # One that a server never takes must not keep the others waiting behind it.
    return sorted(waiting, key=lambda f: known.failed.get(f.digest, 0))


def _to_send(book: NoteBook, known: Sent, people: set[str]) -> list[Score]:
    """Scores of the people whose sessions are in the folder, and those to be taken back."""
    taken_back = (s for s in scores_of(book, also_withdrawn=True) if s.withdrawn)
    # Whose they are doesn't matter: the sessions may have been taken away since.
    back = [s for s in taken_back if _known_as(s) in known.tried]
    return [*scores_of_people(people, scores_of(book)), *back]


def _known_as(score: Score) -> str:
    """What a score is called in the record, as a session is by its ID."""
    return f"questionnaire/{score.id}"


def _waiting(
    scores: list[Score], known: Sent, count: Count, *, again: bool
) -> list[tuple[Score, str]]:
    """Scores that the server has not got as they are now; one that it refused goes last."""
    waiting = []
    for score in scores:
        # Of all that goes but the system of the pseudonym, as of a summary.
        digest = hashlib.sha256(score_bundle(score).encode("utf-8")).hexdigest()
        if known.last.get(_known_as(score)) == digest and not again:
            count.before += 1
        else:
            waiting.append((score, digest))
    return sorted(waiting, key=lambda w: known.failed.get(w[1], 0))


def _plan_known_as(person: str, people: str) -> str:
    """What a person's plan is called in the record, whichever it is."""
    return f"plan/{person_plan_id(person, people)}"


def _leave_out(left: LeftOut, count: Count, tell: Callable[[str], None]) -> None:
    tell(f"{left.path}: not sent: {left.why}")
    if left.harmless:
        count.left_out += 1
    else:
        count.failed += 1


def _send(
    found: Found,
    ready: tuple[str, str, str],
    server: Server,
    records: tuple[SentRecord, Sent],
    count: Count,
    tell: Callable[[str], None],
) -> bool:
    """Send one; whether it was taken."""
    record, known = records
    session, bundle, marks = ready
    try:
        server.post(bundle, len(json.loads(bundle)["entry"]))
    except (NotTakenError, NoServerError) as error:
        # What is the last word on it already need not be said with every call; a failure after
        # something went under this ID must be, or else that would be taken for what is there.
        if session in known.last or known.why.get(found.digest) != str(error):
            record.add(server.address, session, found.digest, str(error), person=found.person)
        if isinstance(error, NoServerError):
            raise
        tell(f"{found.path}: not sent: {error}")
        count.failed += 1
        return False
    record.add(server.address, session, found.digest, marks=marks, person=found.person)
    count.sent += 1
    return True
