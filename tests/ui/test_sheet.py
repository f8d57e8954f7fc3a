"""The patient's sheet: what is on it and what is not, large, whole, and the same on both papers."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pypdfium2 as pdfium
import pytest

from tests.plan.examples import TEXT
from tests.plan.made_up import made_up
from tests.ui import axe
from tests.ui.reading_documents import parsed_html, pdf_text, pdf_words
from tests.ui.test_report_page import NEEDS_BROWSER, _overlap, _pairs
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.arranging import add_entry
from tracker.plan.draft import data_of, empty_data, text_of
from tracker.plan.files import parse_plan
from tracker.plan.gate import CALL, EMERGENCY
from tracker.plan.model import Plan
from tracker.plan.starter import starter_plan
from ui import words
from ui.cli import main
from ui.documents.pdf import PAPERS
from ui.documents.sheet import ON_SCREEN, Item, Sheet, sheet_of
from ui.documents.sheet_figures import pictures_of, svg_of
from ui.documents.sheet_html import sheet_html
from ui.documents.sheet_pdf import sheet_pdf

pytestmark = pytest.mark.usefixtures("qapp")

DAY = date(2026, 11, 20)


def every_exercise() -> Plan:
    """A plan with all of the catalogue, cleared, and with many words."""
    data = empty_data()
    for name in CATALOGUE:
        data, k = add_entry(data, name)
        data["entries"][k]["note"] = "As agreed."
    cleared = [c | {"cleared": True} for c in data["clearance"]]
    text = "Take your time. <b>Sit</b> & rest.\n" + "Hold on to the chair when you stand up. " * 30
    data |= {"clearance": cleared, "words": text, "person": "P-07", "emergency_number": "112"}
    return parse_plan(text_of(data))


def starter(**changes: Any) -> Plan:
    return parse_plan(text_of({**data_of(starter_plan()), **changes}))


PLANS = {"every": every_exercise, "starter": starter_plan, "example": lambda: parse_plan(TEXT)}


def sheet(name: str) -> Sheet:
    return sheet_of(PLANS[name](), DAY)


def lines_of(made: Sheet) -> list[str]:
    """Everything that has to be read somewhere."""
    ends = [one for one in (made.screen, made.later) if one is not None]
    lists = [made.emergency, made.call, made.stop, *ends]
    lines = [made.title, made.subtitle, made.often, made.mind, *made.words.splitlines()]
    lines += [made.neck] if made.neck else []
    lines += [line for one in lists for line in (one.title, *one.lines)]
    for part in made.parts:
        lines.append(part.title)
        for item in part.items:
            lines += [f"{item.number}. {item.name}", item.dose, item.how, *item.cares]
            lines += [item.support] if item.support else []
    return lines


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", PLANS)
def test_every_word_is_on_paper_and_none_is_clipped_or_over_another(name: str, paper: str) -> None:
    made = sheet(name)
    data = sheet_pdf(made, paper)
    text = pdf_text(data)
    for line in lines_of(made):
        assert " ".join(line.split()) in text, line
    found = pdf_words(data)
    width, height = PAPERS[paper]
    assert len(found) > 100
    for w in found:
        assert w.left >= 32 and w.right <= width - 32, w
        assert w.bottom >= 34 and w.top <= height - 32, w
    assert [pair for pair in _pairs(found) if _overlap(*pair)] == []
    pages = pdfium.PdfDocument(data)
    assert all(p.get_size() == pytest.approx(PAPERS[paper], abs=0.6) for p in pages)


@pytest.mark.parametrize("seed", range(6))
def test_made_up_plans_fit_on_their_pages(seed: int) -> None:
    data = sheet_pdf(sheet_of(parse_plan(text_of(made_up(seed))), DAY))
    width, height = PAPERS["a4"]
    for w in pdf_words(data):
        assert w.left >= 32 and w.right <= width - 32 and w.bottom >= 34 and w.top <= height - 32


def test_the_type_is_large_and_the_drawings_are_vectors() -> None:
    data = sheet_pdf(sheet("every"))
    foot = {"Plan", "Page", "of", "week", "1"}
    heights = [w.top - w.bottom for w in pdf_words(data) if w.text.isalpha() and w.text not in foot]
    # Letters without strokes up or down are half as high as their type: 14 points and more.
    assert min(heights) >= 6.5
    pages = pdfium.PdfDocument(data)
    kinds = [{o.type for o in p.get_objects()} for p in pages]
    assert not any(pdfium.raw.FPDF_PAGEOBJ_IMAGE in k for k in kinds)
    paths = [sum(o.type == pdfium.raw.FPDF_PAGEOBJ_PATH for o in p.get_objects()) for p in pages]
    # Where there are exercises there are drawings, which are many strokes.
    texts = [" ".join(p.get_textpage().get_text_range().split()) for p in pages]
    drawn = [n for n, t in zip(paths, texts, strict=True) if " moves a minute" in t]
    assert drawn and min(drawn) > 30


def test_every_exercise_is_drawn_beside_its_words() -> None:
    for name, exercise in CATALOGUE.items():
        movement, panels = pictures_of(name, exercise.eyes)
        assert 1 <= len(panels) <= 2 and movement.views
        assert (
            svg_of(name, exercise.eyes).count("<path")
            + svg_of(name, exercise.eyes).count("<polyline")
            > 3
        )
    html = sheet_html(sheet("every"))
    moving = [e for e in CATALOGUE.values() if e.target in ON_SCREEN]
    assert html.count('<figure role="img"') == len(CATALOGUE) - len(moving)


def test_what_is_not_open_yet_has_neither_dose_nor_drawing() -> None:
    made = sheet_of(starter(), DAY)
    assert [p.title for p in made.parts] == ["Eyes and head, sitting"]
    assert made.later is not None and "Stand in the corner, eyes closed" in made.later.lines
    html = sheet_html(made)
    assert html.count("<figure") == 7
    # The therapist has found a condition met; standing work still waits for the checklist.
    stages = [s.model_dump(mode="json", exclude_unset=True) for s in starter_plan().stages]
    for stage in stages[1:3]:
        stage["unlock_after"]["met_on"] = "2026-11-20"
    made = sheet_of(starter(stages=stages), DAY)
    assert [p.title for p in made.parts] == ["Eyes and head, sitting", "Body, sitting"]
    two_days_before = sheet_of(starter(stages=stages), DAY - timedelta(days=2))
    assert [p.title for p in two_days_before.parts] == ["Eyes and head, sitting"]
    cleared = [{"item": "Seen.", "cleared": True}]
    made = sheet_of(starter(stages=stages, clearance=cleared), DAY)
    assert [p.title for p in made.parts][-1] == "Standing, firm floor"
    numbers = [i.number for p in made.parts for i in p.items]
    assert numbers == list(range(1, len(numbers) + 1))


def test_stop_rules_red_flags_and_the_clinics_number() -> None:
    rules = {"score_most": 4, "settle_minutes_most": 2.5}
    made = sheet_of(starter(emergency_number="+44 112", symptom_rules=rules), DAY)
    assert made.emergency.title == "Call +44 112 at once if this is new:"
    assert made.emergency.lines == tuple(words.say(f"gate.{k}") for k in EMERGENCY)
    assert made.call.lines == tuple(words.say(f"gate.{k}") for k in CALL)
    assert "4 of 10" in made.stop.lines[0] and "2.5 minutes" in made.stop.lines[1]
    assert "emergency help" in sheet_of(starter(), DAY).emergency.title


def test_the_dose_is_that_of_the_week() -> None:
    plan = parse_plan(TEXT)
    doses = {w: sheet_of(plan, DAY, w).parts[0].items[0].dose for w in (1, 2)}
    where, how_far = "Sitting on a firm chair, 12 times", "up to 15 degrees to each side"
    assert doses[1] == f"{where}, first 60 moves a minute, at the end 90, {how_far}"
    assert doses[2] == f"{where}, 80 moves a minute, {how_far}"
    assert "up to 25 degrees" in sheet_of(plan, DAY, 4).parts[0].items[0].dose
    assert "week 2" in sheet_of(plan, DAY, 2).foot


def open_entries(*entries: dict[str, Any], **changes: Any) -> Sheet:
    """The sheet of a cleared plan with these entries."""
    named = [{"entry_id": f"e{k}", "note": "As agreed.", **e} for k, e in enumerate(entries)]
    data = empty_data() | {"clearance": [{"item": "Seen.", "cleared": True}], "entries": named}
    return sheet_of(parse_plan(text_of(data | changes)), DAY)


def items_of(made: Sheet) -> list[Item]:
    return [item for part in made.parts for item in part.items]


def test_the_words_are_those_of_the_options_of_the_plan() -> None:
    shift, shake, tosses, stands = items_of(
        open_entries(
            {"exercise": "weight-shift", "surface": "firm"},
            {"exercise": "stand", "head_shake": True, "eyes": "closed"},
            {"exercise": "hand-toss", "posture": "standing", "repetitions": 4},
            {"exercise": "sit-to-stand"},
        )
    )
    assert "on the firm floor" in shift.dose and "mat" not in shift.how.split()
    assert words.say("care.soft") not in shift.cares
    assert "turning your head" in shake.dose and "Turn your head" in shake.how
    assert "Keep your eyes shut" in shake.how and "Look at" not in shake.how
    assert tosses.dose.startswith("Standing, 4 times") and "Sit" not in tosses.how
    assert stands.dose.startswith("From a firm chair, 20 times")
    # No drawing of somebody who sits, or of a mat that is not there.
    assert [i.drawn for i in (shift, shake, tosses, stands)] == [False, True, False, True]


def test_what_is_not_drawn_leaves_its_room_to_the_words() -> None:
    made = open_entries({"exercise": "hand-toss", "posture": "standing"}, {"exercise": "stand"})
    assert sheet_html(made).count("<figure role") == 1
    text = pdf_text(sheet_pdf(made))
    assert all(" ".join(line.split()) in text for line in lines_of(made))
    # The doses begin with it.
    first, second = [w.left for w in pdf_words(sheet_pdf(made)) if w.text.startswith("Standing")]
    assert first < second - 60


def test_how_far_the_head_may_go() -> None:
    made = open_entries(
        {"exercise": "nods-on-target", "amplitude_deg": [5, 12.5]},
        {"exercise": "turns-on-target", "amplitude_deg": [5, 20]},
        {"exercise": "eyes-up-down"},
        neck_limit_deg={"yaw": 20, "pitch": 12.5},
    )
    nods, turns, eyes = items_of(made)
    assert "up to 12.5 degrees up and down" in nods.dose
    assert "up to 20 degrees to each side" in turns.dose
    assert "degrees" not in eyes.dose
    assert "20 degrees" in made.neck and "12.5 degrees" in made.neck
    assert made.neck in sheet_html(made)
    assert open_entries({"exercise": "turns-on-target"}).neck == ""


def test_what_moves_on_the_screen_is_only_named() -> None:
    made = open_entries(
        {"exercise": "turns-x2"}, {"exercise": "follow-slowly"}, {"exercise": "stand"}
    )
    assert [i.exercise for i in items_of(made)] == ["stand"]
    assert made.screen is not None
    assert made.screen.lines == tuple(
        words.say(f"exercise.{e}") for e in ("turns-x2", "follow-slowly")
    )


def test_every_symptom_that_is_asked_for_has_its_line() -> None:
    rules = {"score_most": 4, "also_ask": ["nausea", "unsteadiness"]}
    lines = sheet_of(starter(symptom_rules=rules), DAY).stop.lines
    assert [k for k in ("dizzier", "sick", "unsteady") if any(k in t for t in lines[:3])] == [
        "dizzier",
        "sick",
        "unsteady",
    ]
    assert all("4 of 10" in line for line in lines[:3])
    # Nobody is dizzier than the worst that there is.
    lines = sheet_of(starter(symptom_rules=rules | {"score_most": 10}), DAY).stop.lines
    assert not any("than 10 of 10" in line for line in lines) and "as dizzy as" in lines[0]
    assert len(lines) == 6


def test_the_page_needs_nothing_runs_nothing_and_escapes_text() -> None:
    html = sheet_html(sheet("every"))
    parsed_html(html)
    assert "<script" not in html and "<b>" not in html and "&lt;b&gt;Sit&lt;/b&gt; &amp;" in html
    assert "http://" not in html.replace("http://www.w3.org", "") and "src=" not in html
    assert "size: letter" in sheet_html(sheet("example"), "letter")


@NEEDS_BROWSER
@pytest.mark.slow
@pytest.mark.parametrize("dark", [False, True])
def test_the_page_passes_an_accessibility_checker(dark: bool, tmp_path: Path) -> None:
    found = axe.check(sheet_html(sheet("every")), tmp_path, dark=dark)
    assert found["violations"] == []
    assert {"color-contrast", "heading-order", "role-img-alt"} <= set(found["passes"])


def test_the_command_writes_both(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan = tmp_path / "plan.json"
    plan.write_text(TEXT, encoding="utf-8")
    pdf, html = tmp_path / "s.pdf", tmp_path / "s.html"
    call = ["plan", "sheet", str(plan), "--pdf", str(pdf), "--html", str(html), "--week", "2"]
    assert main(call) == 0
    assert "80 moves a minute" in pdf_text(pdf.read_bytes())
    assert "80 moves a minute" in html.read_text(encoding="utf-8")
    for wrong in ([], ["--week", "0", "--pdf", str(pdf)], ["--html", str(plan)]):
        assert main(["plan", "sheet", str(plan), *wrong]) == 2
    assert "is the plan itself" in capsys.readouterr().err
    assert plan.read_text(encoding="utf-8") == TEXT


def test_one_file_for_both_forms_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan, to = tmp_path / "plan.json", tmp_path / "sheet"
    plan.write_text(TEXT, encoding="utf-8")
    assert main(["plan", "sheet", str(plan), "--pdf", str(to), "--html", str(to)]) == 2
    assert "named twice" in capsys.readouterr().err and not to.exists()
