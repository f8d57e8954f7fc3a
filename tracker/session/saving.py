"""The files of a finished session, written from its journal alone."""

from __future__ import annotations

import json
from pathlib import Path

from tracker.session.files import write_atomically
from tracker.session.journal import read_journal
from tracker.session.projections import SessionRecord, session_record, stage_log_of
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary, save_summary
from tracker.session.trace import save_trace

JOURNAL_NAME = "journal.jsonl"
SUMMARY_NAME = "summary.json"
TRACE_NAME = "trace.csv"
STAGE_NAME = "stage.json"
#: What the first part of a journal is called once all of it was saved in another place.
MOVED_NAME = "journal-saved-elsewhere.jsonl"
#: What is made from the journal.
FILE_NAMES = (STAGE_NAME, TRACE_NAME, SUMMARY_NAME)


def save_session(folder: Path) -> Summary:
    """Write summary, trace and stage log beside the journal of a session.

    Serves a session that has just ended and one that was interrupted; each file
    appears whole or not at all.

    Raises
    ------
    InputError
        If there is no readable journal in the folder.
    RunError
        If a file can't be written.
    """
    record = session_record(read_journal(folder / JOURNAL_NAME))
    save_stage_log(folder / STAGE_NAME, record)
    save_trace(folder / TRACE_NAME, record.samples)
    summary = summarise(record)
    save_summary(folder / SUMMARY_NAME, summary)
    return summary


def save_stage_log(path: Path, record: SessionRecord) -> None:
    """Write the stage log of a session."""
    log = stage_log_of(record).model_dump(mode="json")
    write_atomically(path, json.dumps(log, indent=1, ensure_ascii=False) + "\n")
