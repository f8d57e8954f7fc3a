"""``send``: questionnaire scores that a therapist typed at the desk go along."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from tests.records import made
from tests.ui.fhir_server import FhirServer
from tests.ui.test_report_command import saved
from tests.ui.test_send import (  # noqa: F401 - fixtures
    Run,
    clinic,
    lines,
    outcome,
    pem,
    send,
    server,
)
from tracker.records.figures import SessionFigures
from tracker.records.notes import NoteBook
from tracker.records.questionnaires import Score, add_score
from ui.cli import main
from ui.posting import send as send_module
from ui.posting.sessions import Found, LeftOut, read_session

DAYS = (date(2026, 3, 1), date(2026, 4, 5))


@pytest.fixture
def typed(clinic: Path) -> list[Score]:  # noqa: F811
    """Scores of one questionnaire on two days."""
    book = NoteBook(clinic, "kim")
    return [
        add_score(book, "Wren", "Balance A", day, score, (0.0, 100.0))
        for day, score in zip(DAYS, (72.0, 47.5), strict=True)
    ]


def scores_at(there: FhirServer) -> dict[str, dict[str, Any]]:
    found = {u: r for u, r in there.resources.items() if r["resourceType"] == "Observation"}
    code = "questionnaire_score"
    return {u: r for u, r in found.items() if r["code"]["coding"][0]["code"] == code}


def test_they_arrive_once_and_as_in_a_file(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    clinic: Path,  # noqa: F811
    typed: list[Score],
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert send() == 0
    said = f"4 sent to {server.address} (2 of them questionnaire scores), 0 had gone before"
    assert said in capsys.readouterr().out
    arrived = scores_at(server)
    told = [(r["effectiveDateTime"], r["valueQuantity"]["value"]) for r in arrived.values()]
    assert sorted(told) == [("2026-03-01", 72), ("2026-04-05", 47.5)]
    # As in a file of the same session, so that both together make no doubles.
    out = clinic.parent / "one.json"
    words = ["report", str(clinic / "wren" / "one"), "--notes", str(clinic), "--fhir", str(out)]
    assert main(words) == 0
    entries = json.loads(out.read_text("utf-8"))["entry"]
    filed = {e["request"]["url"]: e["resource"] for e in entries}
    # But for who entered them: in the file one chose to give away, not on a server.
    named = [filed[u].pop("performer") for u in arrived]
    assert [n[0]["display"] for n in named] == ["kim", "kim"]
    assert arrived == {u: filed[u] for u in arrived} and len(arrived) == len(typed)
    assert "Balance A" in "".join(server.bundles) and '"kim"' not in "".join(server.bundles)
    # They are those of the person whose sessions are there.
    (person,) = {r["subject"]["reference"] for r in arrived.values()}
    (patient,) = [e for e in entries if e["fullUrl"] == person]
    assert patient["resource"]["identifier"][0]["value"] == "Wren"
    whole = dict(server.resources)
    for again in ([], ["--again"]):
        assert send(*again) == 0
        assert server.resources == whole
    # Two sessions and two scores, twice; the call between them asked for nothing.
    assert len(server.requests) == 8


def test_one_that_was_taken_back_is_an_error_there(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    clinic: Path,  # noqa: F811
    typed: list[Score],
) -> None:
    assert send() == 0
    urls = set(scores_at(server))
    NoteBook(clinic, "kim").withdraw(typed[0].id)
    assert send() == 0 and len(server.requests) == 5
    after = scores_at(server)
    assert set(after) == urls
    (wrong,) = [r for r in after.values() if r["status"] == "entered-in-error"]
    # Nothing of what was typed goes there once more.
    assert wrong.keys() == {
        *("resourceType", "id", "identifier", "status", "category", "code", "subject")
    }
    assert wrong["code"].keys() == {"coding"}
    told = server.bundles[-1]
    assert typed[0].id in told and "Balance A" not in told and "2026-03-01" not in told
    assert send() == 0 and len(server.requests) == 5


def test_one_that_was_taken_back_before_anything_went_stays_here(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    clinic: Path,  # noqa: F811
    typed: list[Score],
    capsys: pytest.CaptureFixture[str],
) -> None:
    NoteBook(clinic, "kim").withdraw(typed[0].id)
    for again in ([], ["--again"]):
        assert send(*again) == 0
        (left,) = scores_at(server).values()
        assert left["status"] == "final" and left["valueQuantity"]["value"] == 47.5
    told = "".join(server.bundles)
    assert typed[1].id in told and typed[0].id not in told
    assert "(1 of them questionnaire scores)" in capsys.readouterr().out


def test_one_whose_answer_was_lost_is_taken_back_there(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    clinic: Path,  # noqa: F811
    typed: list[Score],
) -> None:
    bad = typed[0].id
    server.otherwise = lambda b: (500, b"", {}) if bad in json.dumps(b) else None
    assert send() == 1
    NoteBook(clinic, "kim").withdraw(bad)
    # Also once the sessions lie elsewhere.
    (clinic / "wren" / "one").rename(clinic.parent / "one")
    server.otherwise = lambda _: None
    assert send() == 0
    states = [r["status"] for r in scores_at(server).values()]
    assert sorted(states) == ["entered-in-error", "final"]


def test_scores_of_people_without_a_session_here_stay_here(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    clinic: Path,  # noqa: F811
    typed: list[Score],
) -> None:
    book = NoteBook(clinic, "kim")
    add_score(book, "Nightjar", "Balance A", DAYS[0], 12.0, (0.0, 100.0))
    assert send() == 0
    assert len(scores_at(server)) == len(typed) and "Nightjar" not in "".join(server.bundles)
    # Whose sessions went before is known, too.
    add_score(book, "Wren", "Balance A", date(2026, 5, 1), 40.0, (0.0, 100.0))
    assert send() == 0 and len(scores_at(server)) == len(typed) + 1
    assert "Nightjar" not in "".join(server.bundles)
    # Once there is a session, they go along.
    other = made.finished().model_copy(update={"person": "Nightjar", "session_id": "n1"})
    saved(clinic / "nightjar" / "one", other)
    assert send() == 0 and len(scores_at(server)) == len(typed) + 2


def test_one_that_is_not_taken_keeps_no_other_waiting(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    clinic: Path,  # noqa: F811
    typed: list[Score],
    capsys: pytest.CaptureFixture[str],
) -> None:
    bad = typed[0].id
    no = (422, outcome("no such code"), {})
    server.otherwise = lambda b: no if bad in json.dumps(b) else None
    assert send() == 1
    said = capsys.readouterr().out
    assert "questionnaire score of Wren, 2026-03-01: not sent: " in said and "no such code" in said
    assert [r["effectiveDateTime"] for r in scores_at(server).values()] == ["2026-04-05"]
    left = [line["session"] for line in lines(clinic) if line.get("kind") == "not_sent"]
    assert left == [f"questionnaire/{bad}"]
    server.otherwise = lambda _: None
    assert send() == 0 and len(scores_at(server)) == 2


def test_without_scores_none_are_spoken_of(
    send: Run,  # noqa: F811
    server: FhirServer,  # noqa: F811
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert send() == 0
    assert "questionnaire" not in capsys.readouterr().out and scores_at(server) == {}


def test_to_know_whose_sessions_are_there_none_that_went_before_is_read(
    send: Run,  # noqa: F811
    clinic: Path,  # noqa: F811
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    assert send() == 0
    read: list[str] = []

    def reading(folder: Path, found: Found) -> SessionFigures | LeftOut:
        read.append(found.path)
        return read_session(folder, found)

    monkeypatch.setattr(send_module, "read_session", reading)
    for person in ("Wren", "P-07"):
        add_score(NoteBook(clinic, "kim"), person, "Balance A", DAYS[0], 12.0, (0.0, 100.0))
    assert send() == 0 and read == []
