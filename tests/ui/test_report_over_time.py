"""Practice and trends: what the desk shows of a person is what all documents say of them.

Read back from screen, CSV, HTML, the PDF's text and FHIR, each in its own way, in English and
where numbers have a decimal comma.
"""

from __future__ import annotations

import csv
import io
import json
import re
import shutil
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from tests.records.clinic import TODAY
from tests.ui import axe
from tests.ui import reading_documents as reading
from tests.ui.fhir_json import must_be_valid
from tests.ui.test_desk import choose, folder, open_desk, open_last  # noqa: F401 - fixtures
from tests.ui.test_report_page import NEEDS_BROWSER
from tracker.records.figures import SessionFigures
from tracker.records.index import read_folder
from tracker.records.notes import NoteBook
from tracker.records.over_time import OverTime, over_time_of, over_time_to_tell
from tracker.records.people import NO_NAME, people_of
from tracker.session.summary_file import load_summary, save_summary
from ui import words
from ui.cli import main
from ui.commands.report import maker, read_records
from ui.desk.trend_table import Heading
from ui.desk.window import DeskWindow
from ui.documents.fhir import fhir_bundle

#: (exercise, figure) -> at first, lately, least, with a value, sessions, left out.
Trends = dict[tuple[str, str], tuple[str | None, ...]]
PRACTICE = (
    *("Bouts on a day with practice", "Days with practice", "Days counted", "Bouts measured"),
    *("Bouts not seen by the camera", "Bouts asked", "Days asked", "Done of what was asked"),
    *("Gaze stabilisation measured", "Gaze stabilisation told of", "Gaze stabilisation planned"),
    "Guideline as quoted, at least",
)
NUMBER = r"(\d+(?:[.,]\d+)?)"
#: What has no baseline, one, figures in doubt, and skipped days.
PEOPLE = ("robin", "finch", "plover", "wren", "heron")


def plain(text: str) -> str | None:
    """The number in a cell, with a point, whatever stands around it; None without one."""
    found = re.search(NUMBER, text)
    return None if found is None else found[1].replace(",", ".")


# --- from the screen ---


def from_screen(window: DeskWindow) -> Trends:
    """What the table says, and what a screen reader is told of its chart."""
    out: Trends = {}
    for row in window.person_page.trends.trends.rows:
        if isinstance(row, Heading):
            continue
        _, first, last, verdict, chart = row.cells
        with_value, sessions, _ = re.findall(r"\d+", chart)
        # The smallest change stands where none is called; that some were left out, behind it.
        least = None
        if row.change.verdict == "no_change":
            least = re.search(rf"(?:±|below |unter ){NUMBER}", verdict)
            assert least is not None, verdict
        left_out = re.search(r"; [^;]*?(\d+)[^;\d]*$", verdict)
        count = left_out[1] if left_out and row.change.left_out else "0"
        key = (row.series.exercise, f"{row.series.form}/{row.series.figure}.{row.series.side}")
        ends = (plain(first), plain(last), None if least is None else plain(least[1]))
        out[key] = (*ends, with_value, sessions, count)
    return out


def practice_on_screen(window: DeskWindow) -> list[str]:
    bouts, gaze = (part.text() for part in (window.person_page.practice, window.person_page.gaze))
    found = [*re.findall(NUMBER, bouts)[:8], *re.findall(NUMBER, gaze)[:4]]
    return [n.replace(",", ".") for n in found]


# --- from the documents ---


def names_of(one: OverTime) -> dict[tuple[str, str], tuple[str, str]]:
    """Exercise and figure as they are printed -> by key, as the screen's rows have them."""
    out = {}
    for t in one.trends:
        exercise, form, figure = t.key.split("/")
        name, _, side = figure.partition(".")
        key = ("" if exercise == "session" else exercise, f"{form}/{name}.{side}")
        out[t.where, t.name] = key
    return out


def from_csv(data: bytes, one: OverTime, comma: bool) -> tuple[Trends, list[str]]:
    text = io.StringIO(data.decode("utf-8-sig"), newline="")
    rows = list(csv.DictReader(text, delimiter=";" if comma else ","))

    def number(cell: str) -> str | None:
        assert ("." if comma else ",") not in cell
        return cell.replace(",", ".") or None

    by_name = names_of(one)
    out, practice = {}, {}
    columns = ("at first", "lately", "smallest change told")
    counts = ("sessions measured", "sessions", "sessions left out")
    for row in rows:
        if row["exercise"] == "practice":
            practice[row["figure"]] = number(row["lately"])
            continue
        key = by_name[row["exercise"], row["figure"]]
        out[key] = tuple(number(row[c]) for c in (*columns, *counts))
    return out, [practice[name] or "" for name in PRACTICE]


def from_html(text: str, one: OverTime) -> tuple[Trends, list[str]]:
    html = reading.parsed_html(text)
    out: Trends = {}
    for (where, name), key in names_of(one).items():
        table = html.tables[f"Trends of {where}: {one.person}"]
        cells = table.get(name) or table[f"{name} (affected side)"]
        ends = [plain(cells[c]) for c in ("At first", "Lately", "Least told")]
        counts = re.findall(r"\d+", cells["Sessions measured"])
        out[key] = (*ends, *counts)
    facts = html.facts["session"]
    return out, [plain(facts[name]) or "" for name in PRACTICE]


VALUE = (
    r"(?!\d+ answers)(?:\d+(?:\.\d+)? ?(?:of 10|°/s|°|mm/s|mm|%|beats/min|min|s\b)?|not measured)"
)


def from_pdf(data: bytes, one: OverTime) -> tuple[Trends, list[str]]:
    text = reading.pdf_text(data)
    text = re.sub(rf"{re.escape(one.person)} over time Page \d+ of \d+", "", text)
    head = "Figure At first Lately Least told Change Compared Sessions measured"
    text = " ".join(text.split()).replace(head, "")
    text = " ".join(text.split())
    out: Trends = {}
    at = 0
    for (where, name), key in names_of(one).items():
        at = text.index(f"{name} ", at) if where in text else -1
        rest = text[at + len(name) :].removeprefix(" (affected side)")
        row = re.match(rf"((?: {VALUE})*) (.*?) (\d+) of (\d+), (\d+) left out", rest)
        assert row is not None, (where, name, rest[:200])
        values = re.findall(VALUE, row[1])
        told = {1: [None, *values, None], 2: [*values, None], 3: values}[len(values)]
        ends = [None if v is None else plain(v) for v in told]
        out[key] = (*ends, *row.groups()[2:])
    practice = []
    for name in PRACTICE:
        found = re.search(rf"{name}: {NUMBER}", text)
        practice.append("" if found is None else found[1])
    return out, practice


def from_fhir(text: str, one: OverTime) -> tuple[Trends, list[str]]:
    must_be_valid(text)
    by_name = names_of(one)
    out: Trends = {}
    practice: dict[str, str] = {}
    for entry in json.loads(text)["entry"]:
        found = entry["resource"]
        code = found.get("code", {}).get("coding", [{}])[0].get("code")
        if code not in ("trend", "practice"):
            continue
        parts = {
            c["code"]["coding"][0]["code"]: _amount(c.get("valueQuantity"))
            for c in found.get("component", ())
        }
        if code == "trend":
            where, _, name = found["code"]["text"].partition(": ")
            order = ("first", "last", "least", "measured", "sessions", "left_out")
            key = by_name[where, name.removesuffix(", affected side")]
            out[key] = tuple(parts[f"trend.{n}"] for n in order)
        else:
            texts = [c["code"]["text"] for c in found["component"]]
            practice = dict(zip(texts, (v or "" for v in parts.values()), strict=True))
    return out, [practice[name] for name in PRACTICE]


#: UCUM code -> decimals of the trade: what is shown has no more.
_DECIMALS = {"deg": 1, "s": 1, "min": 1, "{score}": 1, "/d": 1, "d/wk": 1, "min/d": 1}


def _amount(quantity: dict[str, Any] | None) -> str | None:
    if quantity is None:
        return None
    value = quantity["value"]
    return str(value) if isinstance(value, int) else f"{value:.{_DECIMALS[quantity['code']]}f}"


def documents_of(
    root: Path, window: DeskWindow, one: OverTime, comma: bool
) -> Iterator[tuple[str, tuple[Trends, list[str]]]]:
    page = window.person_page
    assert page.person is not None
    paths = [root / r.place for r in page.person.rows[-1:]]
    records: list[SessionFigures] = read_records(paths)

    def make(kind: str) -> Any:
        return maker(kind, "a4", comma=comma)(records, (), [one])

    yield "csv", from_csv(make("trends_csv"), one, comma)
    yield "html", from_html(make("html"), one)
    yield "pdf", from_pdf(make("pdf"), one)
    yield "fhir", from_fhir(make("fhir"), one)


def without_unshown_least(found: Trends, seen: Trends) -> Trends:
    """The screen has the smallest change only where none is called."""
    return {
        key: (*v[:2], v[2] if seen[key][2] is not None else None, *v[3:])
        for key, v in found.items()
    }


@pytest.mark.parametrize("language", ["en", "de"])
def test_practice_and_trends_on_the_screen_are_those_of_each_document(
    open_desk: Callable[..., DeskWindow],  # noqa: F811
    folder: Path,  # noqa: F811
    spoken: Any,
    language: str,
) -> None:
    spoken(language)
    window = open_desk()
    compared = 0
    for name in PEOPLE:
        choose(window, name)
        (one,) = window.person_page.report.over_time()
        seen, practice = from_screen(window), practice_on_screen(window)
        assert len(seen) == len(one.trends) > 15 and len(practice) in (11, 12)
        for kind, (trends, told) in documents_of(folder, window, one, language == "de"):
            assert without_unshown_least(trends, seen) == seen, (name, kind)
            # Where the guideline names no figure none stands anywhere.
            assert [n for n in told if n] == practice, (name, kind)
            compared += len(trends)
    assert compared > 4 * 5 * 15


def test_another_persons_documents_do_not_read_as_the_screen(
    open_desk: Callable[..., DeskWindow],  # noqa: F811
    folder: Path,  # noqa: F811
) -> None:
    """The comparison can fail: other sessions give other figures, in each document."""
    window = open_desk()
    choose(window, "heron")
    seen, practice = from_screen(window), practice_on_screen(window)
    person = window.person_page.person
    assert person is not None
    fewer = over_time_of(person, person.rows[:-2])
    for kind, (trends, told) in documents_of(folder, window, fewer, comma=False):
        differ = {k for k in seen if without_unshown_least(trends, seen).get(k) != seen[k]}
        assert len(differ) > 10, kind
        # Practice is not filtered.
        assert [n for n in told if n] == practice, kind


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_repetitions_on_the_screen_are_those_of_the_table(
    open_desk: Callable[..., DeskWindow],  # noqa: F811
    qtbot: QtBot,
    spoken: Any,
    language: str,
) -> None:
    spoken(language)
    window = open_desk()
    open_last(window, qtbot, "heron")
    page = window.session_page
    comma = language == "de"
    person = window.person_page.person
    assert person is not None
    records = read_records([page.folder / person.rows[-1].place])
    data = maker("repetitions_csv", "a4", comma=comma)(records, (), ())
    assert isinstance(data, bytes)
    text = io.StringIO(data.decode("utf-8-sig"), newline="")
    rows = list(csv.DictReader(text, delimiter=";" if comma else ","))
    sign = "," if comma else "."
    wanted = [
        (r["repetition"], r["turn 1 amplitude (deg)"], r["turn 2 amplitude (deg)"]) for r in rows
    ]
    assert all(sign in far for _, *both in wanted for far in both)
    word = words.say("desk.rep", number=0).split()[0]
    lines = [page.what.item(k).text().split("  ", 1)[1] for k in range(page.what.count())]
    found = [tuple(re.findall(r"\d+(?:[.,]\d+)?", t)) for t in lines if t.startswith(word)]
    assert len(found) >= 4 and found == wanted[: len(found)]


def test_repetitions_marked_not_valid_are_told_beside_the_trends_everywhere(
    open_desk: Callable[..., DeskWindow],  # noqa: F811
    folder: Path,  # noqa: F811
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    person = {p.name: p for p in people_of(read_folder(folder), TODAY)}["heron"]
    exercises = {s.exercise for s in person.series() if s.exercise}
    book = NoteBook(folder, "kim")
    for row in person.rows[-2:]:
        at = [s.exercise for s in row.sets].index("turns-on-target")
        book.add("not_valid", str(row.session_id), set_number=at, repetition=2)
    book.add("not_valid", "a session that went away", set_number=0, repetition=1)
    window = open_desk(folder)

    def told() -> dict[str, list[str]]:
        choose(window, "robin")
        choose(window, "heron")
        heads = [r.text for r in window.person_page.trends.trends.rows if isinstance(r, Heading)]
        assert len(heads) == len(exercises) + 1
        over_time = window.person_page.report.over_time()
        made = {k: maker(k, "a4")([], (), over_time) for k in ("trends_csv", "html", "fhir", "pdf")}
        table = csv.DictReader(io.StringIO(made["trends_csv"].decode("utf-8-sig")))
        column = "repetitions marked not valid"
        found = [e["resource"] for e in json.loads(str(made["fhir"]))["entry"]]
        must_be_valid(str(made["fhir"]))
        trends = [r for r in found if '"code": "trend"' in json.dumps(r.get("code"))]
        parts = [c for r in trends for c in r["component"]]
        assert main(["review", str(folder), "--text", "--person", "heron"]) == 0
        printed = capsys.readouterr().out
        pdf = " ".join(reading.pdf_text(made["pdf"]).split())
        return {
            "screen": re.findall(r"with (\d+) marked not valid", " ".join(heads)),
            "csv": sorted({r[column] for r in table if r["exercise"] != "practice"}),
            "html": re.findall(
                r"marked not valid by the therapist in these sessions: (\d+)", str(made["html"])
            ),
            "text": re.findall(
                r"marked not valid by the therapist in these sessions: (\d+)", printed
            ),
            "pdf": re.findall(r"marked not valid by the therapist in these sessions: (\d+)", pdf),
            "fhir": sorted(
                {
                    str(c["valueQuantity"]["value"])
                    for c in parts
                    if c["code"]["coding"][0]["code"] == "trend.marked"
                }
            ),
            "notes": sorted(
                {n["text"] for r in trends for n in r["note"] if "marked" in n["text"]}
            ),
        }

    two = ["2"]
    kinds = ("screen", "html", "text", "pdf", "fhir")
    assert {k: v for k, v in told().items() if k in kinds} == dict.fromkeys(kinds, two)
    assert told()["csv"] == ["0", "2"]
    # One may lie in a session that is not among those compared.
    (note,) = told()["notes"]
    assert "in it where their session is one of those compared" in note
    # Taken back, nothing is said any more.
    for _ in range(3):
        book.undo()
    nothing = told()
    assert nothing.pop("csv") == ["0"] and not any(nothing.values())
    # Where no notes were read nobody says that there are none.
    (one,) = over_time_to_tell(person)
    assert one.trends[0].marked.value is None and one.trends[0].marked.reason == "no notes read"


# --- the command, and the page ---


def test_the_command_makes_them_of_a_folder(
    small_clinic: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], qapp: object
) -> None:
    summary = str(next(small_clinic.glob("wren/*/summary.json")))
    out = tmp_path / "t.csv"
    assert main(["report", summary, "--trends-csv", str(out)]) == 2
    assert "needs --trends FOLDER" in capsys.readouterr().err
    assert main(["report", summary, "--trends", str(tmp_path / "no"), "--csv", str(out)]) == 2
    assert "no such folder" in capsys.readouterr().err
    call = ["report", summary, "--trends", str(small_clinic), "--decimal", "comma"]
    assert main([*call, "--trends-csv", str(out), "--html", str(tmp_path / "w.html")]) == 0
    rows = list(csv.DictReader(io.StringIO(out.read_text("utf-8-sig")), delimiter=";"))
    assert {r["person"] for r in rows} == {"wren"}
    assert any(re.fullmatch(r"\d+,\d", r["lately"]) for r in rows)
    assert "wren over time" in (tmp_path / "w.html").read_text("utf-8")


def test_the_command_names_what_is_left_out_of_the_trends(
    small_clinic: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    wren, teal = (next(small_clinic.glob(f"{n}/*/summary.json")) for n in ("wren", "teal"))
    nobody = tmp_path / "nobody.json"
    one = load_summary(teal).model_copy(update={"person": None, "session_id": "other"})
    save_summary(nobody, one)
    kept = tmp_path / "all"
    shutil.copytree(small_clinic / "wren", kept / "wren")
    (spoilt, *_) = sorted((kept / "wren").glob("*/summary.json"))
    spoilt.write_text("{", encoding="utf-8")
    summaries = [str(p) for p in (wren, teal, nobody)]
    call = ["report", *summaries, "--trends", str(kept), "--trends-csv", str(tmp_path / "t.csv")]
    assert main(call) == 0
    said = capsys.readouterr().err.splitlines()
    (unread,) = (line for line in said if line.startswith("left out of the trends: "))
    assert spoilt.relative_to(kept).as_posix() in unread
    without = [line.split(": ")[1] for line in said if line.startswith("without trends: ")]
    assert without == ["teal", "sessions without a pseudonym, which may be of many"]


def test_of_those_without_a_pseudonym_no_document_makes_one_person(
    open_desk: Callable[..., DeskWindow],  # noqa: F811
    folder: Path,  # noqa: F811
) -> None:
    for path in folder.glob("teal/*/summary.json"):
        save_summary(path, load_summary(path).model_copy(update={"person": None}))
    for path in folder.glob("teal/plan*.json"):
        path.unlink()
    window = open_desk(folder)
    choose(window, NO_NAME)
    person = window.person_page.person
    assert person is not None and person.nameless and len(person.rows) > 2
    # Neither the desk nor a document has anything of them over time.
    assert not window.person_page.trends.trends.rows and not over_time_of(person).trends
    over_time = window.person_page.report.over_time()
    records = read_records([folder / r.place for r in person.rows])
    assert list(over_time) == [] == over_time_to_tell(person)
    bundle = json.loads(str(maker("fhir", "a4")(records, (), over_time)))
    kinds = [e["resource"]["resourceType"] for e in bundle["entry"]]
    assert "Observation" in kinds and "Patient" not in kinds
    assert words.say("desk.nameless") not in json.dumps(bundle)


def test_a_report_of_some_sessions_does_not_replace_that_of_all(small_clinic: Path) -> None:
    """Not even where it begins and ends on the same days."""
    people = {p.name: p for p in people_of(read_folder(small_clinic), TODAY)}
    person = people["heron"]
    some = [r for k, r in enumerate(person.rows) if k != 2]

    def ids(one: OverTime) -> dict[str, set[str]]:
        found: dict[str, set[str]] = {}
        for entry in json.loads(fhir_bundle((), over_time=[one]))["entry"]:
            made = entry["resource"]
            if made["resourceType"] == "Observation":
                found.setdefault(made["code"]["coding"][0]["code"], set()).add(made["id"])
        return found

    all_ids, some_ids = ids(over_time_of(person)), ids(over_time_of(person, some))
    assert ids(over_time_of(person)) == all_ids and len(all_ids["trend"]) > 15
    # Practice is of all sessions, whatever is shown.
    assert all_ids["practice"] == some_ids["practice"]
    left_in = {
        t.key for t in over_time_of(person).trends if person.rows[2].session_id in t.session_ids
    }
    assert len(all_ids["trend"] - some_ids["trend"]) == len(left_in) > 10
    # Another copy of the folder gives the same ids.
    moved = replace(person, rows=[r._replace(place=f"copy/{r.place}") for r in person.rows])
    assert ids(over_time_of(moved)) == all_ids


@NEEDS_BROWSER
@pytest.mark.slow
def test_the_page_over_time_passes_the_checker(small_clinic: Path, tmp_path: Path) -> None:
    people = {p.name: p for p in people_of(read_folder(small_clinic), TODAY)}
    records = read_records(sorted(small_clinic.glob("teal/*/summary.json"))[:2])
    html = maker("html", "a4")(records, (), [over_time_of(people["teal"])])
    assert isinstance(html, str)
    assert axe.check(html, tmp_path)["violations"] == []


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_no_word_of_its_pages_is_over_another(small_clinic: Path, paper: str) -> None:
    from tests.ui.test_report_one_page import LEAST_POINTS, sizes
    from tests.ui.test_report_page import _overlap, _pairs

    people = {p.name: p for p in people_of(read_folder(small_clinic), TODAY)}
    records = read_records(sorted(small_clinic.glob("teal/*/summary.json"))[:2])
    data = maker("pdf", paper)(records, (), [over_time_of(people["teal"])])
    assert isinstance(data, bytes)
    assert [p for p in _pairs(reading.pdf_words(data)) if _overlap(*p)] == []
    assert min(sizes(data)) >= LEAST_POINTS
