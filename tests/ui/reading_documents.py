"""Reads figures back from documents, each in its own way, as (where, key) -> text.

Nothing here knows how a document is made; a figure that isn't there is None.
"""

from __future__ import annotations

import csv
import io
import json
import re
import unicodedata
from dataclasses import dataclass
from typing import Any

import html5lib
import pypdfium2 as pdfium
from pypdfium2 import raw

from tracker.records.figure import Figure
from tracker.records.figures import SessionFigures

Read = dict[tuple[str, str], str | None]
COLUMNS = {
    "asked": "Asked",
    "all": "Whole set",
    "spread": "Spread",
    "right": "Right",
    "left": "Left",
    "up": "Up",
    "down": "Down",
    "forward": "Forward",
    "back": "Back",
    "near": "Near",
    "far": "Far",
    "first_five": "First five",
    "last_five": "Last five",
    "difference": "Last − first",
}
EVENT_COLUMNS = {"all": "Times", "total_time": "Time in all (s)", "said": "Said to the patient"}
IN_TABLE = ("dose", "movement", "gaze", "standing")


def places(record: SessionFigures) -> list[tuple[str, Figure]]:
    """Every figure with where it stands: "session", or the number of the exercise."""
    own = [("session", f) for f in record.figures]
    return own + [(str(k), f) for k, e in enumerate(record.exercises, 1) for f in e.figures]


def head(figure: Figure) -> str:
    """The head of a figure's row."""
    return f"{figure.name} ({figure.unit.shown})" if figure.unit.shown else figure.name


def without_unit(text: str, figure: Figure) -> str | None:
    """A fact's text without its unit; None where it was not measured or not asked."""
    text = text.replace("\N{NO-BREAK SPACE}", " ")
    if re.match("not (measured|asked|answered|known|settled)", text):
        return None
    shown = figure.unit.shown
    return text.removesuffix(shown).rstrip() if shown else text


# --- CSV ---


def from_csv(data: bytes, record: SessionFigures) -> Read:
    rows = list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline="")))
    row = next(r for r in rows[1:] if r[rows[0].index("session")] == record.session_id)
    cells = dict(zip(rows[0], row, strict=True))
    out: Read = {}
    for where, f in places(record):
        prefix = "" if where == "session" else f"{record.exercises[int(where) - 1].label}: "
        name = f"{prefix}{f.label}" + (f" ({f.unit.shown})" if f.unit.shown else "")
        if name.startswith(("=", "+", "-", "@")):
            name = f"'{name}"
        if f"{name}, least" in cells:
            ends = list(dict.fromkeys((cells[f"{name}, least"], cells[f"{name}, most"])))
            out[where, f.key] = " to ".join(ends)
        else:
            text = cells[name]
            error = cells.get(f"{name}, uncertainty with k = 2")
            text += f" ± {error}" if error else ""
            out[where, f.key] = (text.removeprefix("'") if text.startswith("'") else text) or None
    return out


# --- HTML ---


@dataclass
class Html:
    """A parsed document: tables by caption, facts by heading."""

    tables: dict[str, dict[str, dict[str, str]]]
    facts: dict[str, dict[str, str]]
    tree: Any


def parsed_html(text: str) -> Html:
    """Parse it strictly: any error of HTML's grammar fails."""
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    tree = parser.parse(text)
    found = Html({}, {}, tree)
    heading = ""
    for node in tree.iter():
        if node.tag in ("h2", "h3"):
            heading = "session" if node.tag == "h2" else "".join(node.itertext())
        elif node.tag == "dl":
            names = ["".join(n.itertext()) for n in node.iter("dt")]
            values = ["".join(n.itertext()) for n in node.iter("dd")]
            found.facts.setdefault(heading, {}).update(zip(names, values, strict=True))
        elif node.tag == "table":
            found.tables["".join(node.find("caption").itertext())] = _rows(node)
    return found


def _rows(table: Any) -> dict[str, dict[str, str]]:
    heads = ["".join(n.itertext()) for n in table.find("thead").iter("th")][1:]
    out: dict[str, dict[str, str]] = {}
    for row in table.find("tbody").iter("tr"):
        cells = ["".join(n.itertext()) for n in row.iter("td")]
        if len(cells) == len(heads):
            out["".join(row.find("th").itertext())] = dict(zip(heads, cells, strict=True))
        else:
            out["".join(row.find("th").itertext())] = {"Whole set": cells[0]}
    return out


def from_html(text: str, record: SessionFigures) -> Read:
    html = parsed_html(text)
    out: Read = {}
    for where, f in places(record):
        if where == "session":
            group = "Set-up" if f.group == "setup" else "session"
            out[where, f.key] = without_unit(html.facts[group][f.label], f)
            continue
        name = f"{where}. {record.exercises[int(where) - 1].name}"
        row = html.tables.get(f"Figures of {name}", {}).get(head(f))
        if f.group in IN_TABLE and f.aspect in COLUMNS and row is not None:
            assert f.label not in html.facts[name]
            out[where, f.key] = _cell(row.get(COLUMNS[f.aspect], ""))
        elif f.measure.startswith("event.") and f.aspect in EVENT_COLUMNS:
            row = html.tables[f"Noticed in {name}"][f.name]
            out[where, f.key] = _cell(row[EVENT_COLUMNS[f.aspect]])
        else:
            out[where, f.key] = without_unit(html.facts[name][f.label], f)
    return out


def _cell(text: str) -> str | None:
    return None if not text or text.startswith("not measured") else text


# --- FHIR ---


def from_fhir(text: str, record: SessionFigures) -> Read:
    resources = [e["resource"] for e in json.loads(text)["entry"]]
    out: Read = {}
    asked: dict[str, dict[str, str]] = {}
    values: dict[tuple[str, str], Any] = {}
    for r in resources:
        if r["resourceType"] == "Observation" and "hasMember" not in r:
            measure = r["code"]["coding"][0]["code"]
            where = r["identifier"][0]["value"].split("/", 1)[1].removesuffix(f"/{measure}")
            values[where, measure] = r
            for part in r.get("component", []):
                values[where, part["code"]["coding"][0]["code"]] = part
        elif r["resourceType"] == "QuestionnaireResponse":
            where = r["identifier"]["value"].split("/", 1)[1].removesuffix("/symptoms")
            values |= {(where, i["linkId"]): i.get("answer", [{}])[0] for i in r["item"]}
        elif r["resourceType"] == "ServiceRequest":
            label = r["identifier"][0]["value"].removeprefix(f"{record.stable_id}/")
            asked[label] = {d["coding"][0]["code"]: d["text"] for d in r.get("orderDetail", [])}
    for where, f in places(record):
        e = None if where == "session" else record.exercises[int(where) - 1]
        if f.origin == "asked":
            if e is not None:
                text = asked[e.label][f.key].removeprefix(f"{f.label}: ")
                out[where, f.key] = without_unit(text, f)
            continue
        found = values["session" if e is None else f"exercise:{e.label}", f.key]
        there = "session" if e is None else f"exercise:{e.label}"
        out[where, f.key] = _fhir_value(found, f)
        error = values.get((there, f"{f.key}.uncertainty"))
        # Without a number it is a figure of its own that says why it isn't known.
        if error is not None and "valueQuantity" in error:
            out[where, f.key] = f"{out[where, f.key]} ± {_fhir_value(error, f)}"
    return out


def _fhir_value(found: dict[str, Any], figure: Figure) -> str | None:
    if "valueQuantity" in found:
        assert found["valueQuantity"]["code"] == figure.unit.ucum
        return f"{found['valueQuantity']['value']:.{figure.unit.decimals}f}"
    if "valueInteger" in found:
        return str(found["valueInteger"])
    text = found.get("valueString")
    return None if text in (None, "not settled") else text


# --- PDF ---


@dataclass(frozen=True)
class Word:
    """A word and its box in points, from the lower left corner of its page."""

    page: int
    text: str
    left: float
    bottom: float
    right: float
    top: float


def pdf_text(data: bytes) -> str:
    """All text, page behind page, in one line."""
    document = pdfium.PdfDocument(data)
    text = " ".join(page.get_textpage().get_text_range() for page in document)
    # What was broken within a word at a line's end carries a mark.
    text = " ".join(text.replace("\ufffe", "").split())
    # A line may end behind a hyphen or a stroke of a word.
    return re.sub(r"(?<=[a-z][-/]) (?=[a-z])", "", text)


def pdf_words(data: bytes) -> list[Word]:
    """Every word with its box, from the boxes of its letters."""
    return [w for k, page in enumerate(pdfium.PdfDocument(data)) for w in _page_words(page, k)]


def _page_words(page: Any, number: int) -> list[Word]:
    text = page.get_textpage()
    out: list[Word] = []
    letters: list[tuple[str, tuple[float, ...]]] = []

    def close() -> None:
        if letters:
            boxes = [b for _, b in letters]
            left, bottom = min(b[0] for b in boxes), min(b[1] for b in boxes)
            right, top = max(b[2] for b in boxes), max(b[3] for b in boxes)
            word = "".join(c for c, _ in letters)
            out.append(Word(number, word, left, bottom, right, top))
            letters.clear()

    for k in range(text.count_chars()):
        letter = chr(raw.FPDFText_GetUnicode(text, k))
        box = text.get_charbox(k)
        if letter.isspace() or raw.FPDFText_IsGenerated(text, k) == 1:
            close()
            continue
        if letters and not _goes_on(letters[-1], (letter, box)):
            close()
        letters.append((letter, box))
    close()
    return out


def _goes_on(last: tuple[str, tuple[float, ...]], new: tuple[str, tuple[float, ...]]) -> bool:
    """Whether a letter belongs to the word of the one before it."""
    backward = [unicodedata.bidirectional(c) in ("R", "AL") for c, _ in (last, new)]
    if backward[0] != backward[1] or abs(new[1][1] - last[1][1]) > 8:
        return False
    # Letters from another font may come out of their order.
    return backward[0] or last[1][0] - 1 <= new[1][0] <= last[1][2] + 3


CELL = r"(?:-?\d+(?:\.\d+)?(?: (?:to|±) \d+(?:\.\d+)?)?|not measured|not asked|not known)"


def from_pdf(data: bytes, record: SessionFigures) -> Read:
    text = pdf_text(data)
    text = re.sub(
        rf"{re.escape(record.person)}, {re.escape(record.when)} Page \d+ of \d+", "", text
    )
    text = " ".join(text.split())
    names = [f"{k}. {e.name} " for k, e in enumerate(record.exercises, 1)]
    starts = [text.rindex(n) for n in names] + [text.rindex("Set-up ")]
    parts = {str(k): text[starts[k - 1] : starts[k]] for k in range(1, len(starts))}
    parts["session"] = text[: starts[0]] + text[starts[-1] :]
    out: Read = {}
    for where, f in places(record):
        is_fact = f"{f.label}: " in parts[where]
        if where != "session" and f.group in IN_TABLE and not is_fact:
            out[where, f.key] = _pdf_cell(parts[where], f, record.exercises[int(where) - 1].figures)
        elif f.measure.startswith("event.") and f.aspect in EVENT_COLUMNS:
            found = re.search(rf"{re.escape(f.name)}((?: {CELL}){{3}})", parts[where])
            assert found, (f, parts[where])
            cells = re.findall(CELL, found[1])
            out[where, f.key] = _cell(cells[list(EVENT_COLUMNS).index(f.aspect)])
        else:
            out[where, f.key] = _pdf_fact(parts[where], f)
    return out


def _pdf_cell(text: str, figure: Figure, all_figures: tuple[Figure, ...]) -> str | None:
    """The row's cells are in the order of the columns; which of them are filled is known."""
    found = re.search(rf"(?<![\w,]) ?{re.escape(head(figure))}((?: {CELL})*)(?= [A-Z]|$| \()", text)
    assert found, (figure, text)
    cells = re.findall(CELL, found[1])
    shown_columns = {f.aspect for f in all_figures if f.value is not None} | {"all"}
    row = [f for f in all_figures if f.measure == figure.measure and f.group == figure.group]
    order = [c for c in COLUMNS if c in shown_columns and c in {f.aspect for f in row}]
    if cells == ["not measured"]:
        return None
    assert len(cells) == len(order), (figure.key, cells, order)
    return _cell(cells[order.index(figure.aspect)]) if figure.aspect in order else None


def _pdf_fact(text: str, figure: Figure) -> str | None:
    found = re.search(rf"{re.escape(figure.label)}: (.*)", text)
    assert found, (figure, text)
    rest = found[1]
    if re.match("not (measured|asked|answered|known|settled)", rest):
        return None
    if isinstance(figure.value, str):
        # Words end where the next label begins, which only the figure can tell.
        return rest[: len(figure.value)]
    number = re.match(r"-?\d+(\.\d+)?( (to|±) -?\d+(\.\d+)?)?", rest)
    assert number, (figure, rest)
    unit = figure.unit
    tail = rest[number.end() :]
    assert tail.startswith((" " if unit.spaced and unit.shown else "") + unit.shown), (figure, tail)
    return number[0]
