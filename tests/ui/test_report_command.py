"""``report`` as one calls it, and the tables and the paragraph it writes."""

from __future__ import annotations

import csv
import io
import json
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from tests.records import made
from tests.session.synthetic import steps, turns_samples
from tests.ui.reading_documents import pdf_text
from tracker.records.figures import record_of
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import Summary, load_summary, save_summary
from tracker.session.trace import save_trace
from ui.cli import main
from ui.documents.csv import FORMULA_STARTS, repetitions_csv, safe, sessions_csv
from ui.documents.paragraph import paragraph

ROOT = Path(__file__).parents[2]
KINDS = ("pdf", "pdf-details", "html", "csv", "repetitions-csv", "fhir")


def saved(folder: Path, summary: Summary) -> Path:
    folder.mkdir(parents=True)
    save_summary(folder / SUMMARY_NAME, summary)
    return folder


@pytest.fixture
def session(tmp_path: Path) -> Path:
    return saved(tmp_path / "secret-place", made.finished())


def asked(out: Path, *kinds: str) -> list[str]:
    return [w for k in kinds or KINDS for w in (f"--{k}", str(out / f"made.{k}"))]


@pytest.mark.usefixtures("qapp")
def test_one_call_writes_all_and_no_file_names_a_path(
    session: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    out.mkdir()
    words = ["report", str(session), *asked(out), "--text", "--paper", "letter"]
    assert main(words) == 0
    said = capsys.readouterr().out
    assert sorted(p.name for p in out.iterdir()) == sorted(f"made.{k}" for k in KINDS)
    assert [line for line in said.splitlines() if line.endswith(": written")][4:]
    text = pdf_text((out / "made.pdf").read_bytes())
    for content in (*(p.read_bytes().decode("utf-8", "replace") for p in out.iterdir()), text):
        assert "secret-place" not in content
    assert "Wren" in text and "0.1.0" in text and "no diagnosis" in text
    assert "size: letter" in (out / "made.html").read_text("utf-8")
    assert "secret-place" not in said.split(": written")[-1]


def test_a_folder_or_its_summary_and_several_at_once(
    session: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    other = saved(tmp_path / "b", made.unwell()) / SUMMARY_NAME
    assert main(["report", str(session), str(other), "--csv", str(tmp_path / "t.csv")]) == 0
    rows = list(csv.reader(io.StringIO((tmp_path / "t.csv").read_text("utf-8-sig"))))
    assert [r[0] for r in rows] == ["person", "P-07", "Wren"]
    assert len({len(r) for r in rows}) == 1 and len(set(rows[0])) == len(rows[0])


def damaged(way: str) -> dict[str, Any]:
    data: dict[str, Any] = json.loads(made.unseen().model_dump_json())
    if way == "newer":
        data["format_version"] = 99
    elif way == "foreign":
        data = {"format": "something-else", "values": [1, 2]}
    elif way == "place":
        data["exercises"][0]["done"]["measured_fraction"] = "much"
    elif way == "deep":
        data["exercises"][0]["head"]["amplitude_deg"] = "wide"
    return data


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize(
    ("way", "says"),
    [
        ("newer", "newer version"),
        ("foreign", "not a usable summary: format"),
        ("place", "exercises.0.done.measured_fraction"),
        ("deep", "exercises.0.head.amplitude_deg"),
        ("cut", "not a whole JSON file"),
        ("empty", "not a whole JSON file"),
        ("none", "can't be read"),
        ("folder", "no summary.json in this folder"),
        ("same", "same session"),
    ],
)
def test_one_bad_summary_is_named_and_nothing_is_written(
    way: str, says: str, session: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bad = tmp_path / "bad.json"
    if way in ("newer", "foreign", "place", "deep"):
        bad.write_text(json.dumps(damaged(way)), encoding="utf-8")
    elif way in ("cut", "empty"):
        whole = (session / SUMMARY_NAME).read_text("utf-8")
        bad.write_text(whole[: len(whole) // 2] if way == "cut" else "", encoding="utf-8")
    elif way == "folder":
        bad.mkdir()
    elif way == "same":
        bad.write_text((session / SUMMARY_NAME).read_text("utf-8"), encoding="utf-8")
    out = tmp_path / "out"
    out.mkdir()
    assert main(["report", str(session), str(bad), *asked(out)]) == 2
    said = capsys.readouterr()
    assert says in said.err and "bad.json" in said.err and said.err.count("\n") == 1
    assert said.out == "" and list(out.iterdir()) == []


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ([], "say what to make: --pdf"),
        (["--csv", "OUT/a", "--html", "OUT/a"], "is named twice"),
        (["--csv", "SUMMARY"], "is named twice"),
        (["--csv", "OUT/none/a"], "there is no folder"),
        (["--pdf", "OUT"], "is a folder"),
        (["--pdf", "OUT/a", "--paper", "a3"], "invalid choice"),
    ],
)
def test_a_call_that_makes_no_sense_writes_nothing(
    words: list[str], says: str, session: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    out.mkdir()
    before = (session / SUMMARY_NAME).read_bytes()
    named = [
        w.replace("OUT", str(out)).replace("SUMMARY", str(session / SUMMARY_NAME)) for w in words
    ]
    assert main(["report", str(session), *named]) == 2
    assert says in capsys.readouterr().err
    assert list(out.iterdir()) == [] and (session / SUMMARY_NAME).read_bytes() == before


def test_qt_is_imported_for_a_pdf_alone_and_a_pdf_needs_no_screen(
    session: Path, tmp_path: Path
) -> None:
    code = (
        "import os, sys; os.environ.pop('DISPLAY', None); os.environ.pop('QT_QPA_PLATFORM', None);"
        "from ui.cli import main; "
        f"code = main(['report', {str(session)!r}, *{asked(tmp_path, *KINDS[2:])!r}, '--text']); "
        "code = code or 5 * ('PySide6' in sys.modules or 'cv2' in sys.modules); "
        f"code = code or main(['report', {str(session)!r}, *{asked(tmp_path, 'pdf')!r}]); "
        "sys.exit(code)"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, check=False)
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "made.pdf").read_bytes().startswith(b"%PDF-")
    assert done.stderr == b""


@pytest.mark.usefixtures("qapp")
def test_a_lone_check_has_documents_too(tmp_path: Path) -> None:
    """What ``check`` writes, with neither person nor plan nor session."""
    trace, summary = tmp_path / "t.csv", tmp_path / "check.json"
    samples = turns_samples(glances=[(6.0, 7.5, 15.0)])
    save_trace(trace, run_samples(samples, steps(), SessionInfo()).samples)
    assert main(["check", str(trace), "--exercise", "turns-on-target", "--out", str(summary)]) == 0
    assert main(["report", str(summary), *asked(tmp_path)]) == 0
    record = record_of(load_summary(summary))
    assert record.person == "no person named" and record.stable_id.startswith("check-")
    text = pdf_text((tmp_path / "made.pdf").read_bytes())
    assert "no person named" in text and "gaze off target" in text
    # How well a trace alone was read nobody knows, and the page says so.
    assert "set-up not known" in text
    rows = list(csv.reader(io.StringIO((tmp_path / "made.repetitions-csv").read_text("utf-8-sig"))))
    repetitions = load_summary(summary).exercises[0].done.repetitions
    assert repetitions and len(rows) == 1 + repetitions


# --- tables ---


def rows_of(data: bytes) -> list[list[str]]:
    assert data.startswith(b"\xef\xbb\xbf") and b"\r\n" in data
    return list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline="")))


def test_no_cell_of_hostile_text_is_a_formula() -> None:
    records = [record_of(made.nasty()), record_of(made.finished())]
    for data in (sessions_csv(records), repetitions_csv(records)):
        cells = [c for row in rows_of(data) for c in row]
        numbers = [c for c in cells if c[:1] == "-" and c[1:].replace(".", "").isdigit()]
        assert not [c for c in cells if c.startswith(FORMULA_STARTS) and c not in numbers]
        assert [c for c in cells if c.startswith("'=")]
        assert not [c for c in cells if "\n" in c or "\x00" in c]


@pytest.mark.parametrize("text", ["=1", "+1", "-1", "@a", "\t=1", "\r=1", "＝1"])
def test_formulas_become_text(text: str) -> None:
    assert safe(text) == f"'{text}"
    assert safe(f"a{text}") == f"a{text}"


@pytest.mark.parametrize(
    "name",
    ["007", "1-2", "3E5", "3e-5", "1.2.26", "2026-03-01", "12", "Mar-5", "5-May", "dez2", "sept.1"],
)
def test_a_pseudonym_stays_what_it_is_in_a_spreadsheet(name: str) -> None:
    """What becomes a number or a day: from memory of several spreadsheets, none was run here."""
    record = replace(record_of(made.finished()), person_id=name, plan_id=name)
    for data in (sessions_csv([record]), repetitions_csv([record])):
        cells = dict(zip(*rows_of(data)[:2], strict=True))
        assert (cells["person"], cells["plan"]) == (f"person {name}", f"plan {name}")


@pytest.mark.parametrize("name", ["P-07", "Wren", "Wren-7", "7-Wren", "Marten2b", "k.3", "A1"])
def test_other_pseudonyms_stand_as_they_are(name: str) -> None:
    record = replace(record_of(made.finished()), person_id=name)
    assert rows_of(sessions_csv([record]))[1][0] == name


def test_a_row_a_repetition_holds_the_summarys_numbers() -> None:
    summary = made.finished()
    heads, *rows = rows_of(repetitions_csv([record_of(summary)]))
    listed = [r for e in summary.exercises for r in e.repetitions_list]
    assert len(rows) == len(listed) > 30
    for row, wanted in zip(rows, listed, strict=True):
        cells = dict(zip(heads, row, strict=True))
        first = wanted["turns"][0]
        assert cells["repetition"] == str(wanted["repetition"])
        assert cells["turn 1 side"] == first["side"]
        assert cells["turn 1 amplitude (deg)"] == f"{first['amplitude_deg']:.1f}"
        assert float(cells["turn 2 peak (s)"]) == pytest.approx(
            wanted["turns"][1]["peak_s"], abs=0.01
        )
        assert cells["turn 1 amplitude (mm)"] == ""


def test_no_repetition_is_a_table_of_heads_alone() -> None:
    (heads,) = rows_of(repetitions_csv([record_of(made.unseen())]))
    assert heads == rows_of(repetitions_csv([record_of(made.finished())]))[0]


# --- paragraph ---


@pytest.mark.parametrize("name", ["finished", "unseen", "unwell", "varied"])
def test_the_paragraph_is_short_and_says_what_matters(name: str) -> None:
    record = record_of(made.EXAMPLES[name]())
    lines = paragraph(record).splitlines()
    assert 5 <= len(lines) <= 8 and all(line.endswith((".", "?")) for line in lines)
    assert lines[0].startswith(f"{record.person}, {record.when}")
    assert lines[1].startswith(f"Ended: {record.ended_words}")
    if name == "finished":
        assert "repetitions 22 of 20" in lines[2] and "gaze on target 95 %" in lines[2]
        assert "gaze off target 2" in paragraph(record)
    if name == "unseen":
        assert "repetitions not measured" in lines[2]
    if name == "unwell":
        assert "Read first: Answered yes: positional spin" in lines[1]
