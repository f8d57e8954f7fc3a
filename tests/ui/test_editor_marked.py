"""The editor in other languages: no English is left over but what people wrote themselves."""

from __future__ import annotations

import ast
import re
from pathlib import Path
from typing import Any, get_args

import pytest
from pydantic_core.core_schema import ErrorType

import tracker.plan
from tests.ui.editing import OpenEditor, choose, settle
from tests.ui.marked import shown_texts, unmarked
from tests.ui.test_every_page import editor_pages
from tests.ui.test_languages import TRANSLATED
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.arranging import add_entry
from tracker.plan.draft import data_of, empty_data, examine_draft
from tracker.plan.findings import MESSAGES, Finding, fields_of
from tracker.plan.starter import starter_plan
from tracker.wall import WALL_FIELDS
from ui.editor.telling import told

#: IDs, names that stand in the plan itself, and keys of the keyboard: nobody translates them.
_NAMES = [*CATALOGUE, *(n for s in starter_plan().stages for n in (s.stage_id, s.name))]
_NAMES += [e.entry_id for e in starter_plan().entries]
_OWN = re.compile(
    r"\bCtrl(\+Shift)?\+[A-Z]\b|\bF\d\b|\bplan-[0-9a-f]{8}\b|\bplan\.json\b|"
    + "|".join(rf"(?<!\w){re.escape(n)}(?!\w)" for n in sorted(_NAMES, key=len, reverse=True))
)


@pytest.mark.usefixtures("marked")
def test_no_english_is_left_over(open_editor: OpenEditor) -> None:
    window = open_editor()
    looked, left = 0, set()
    for name in editor_pages(window):
        for text in shown_texts(window):
            looked += bool(text)
            rest = unmarked(_OWN.sub("", text))
            if re.search(r"[A-Za-z]{2}", rest):
                left.add(f"{name}: {text!r}: {rest}")
    assert looked > 500
    assert not left, "\n".join(sorted(left))


@pytest.mark.usefixtures("marked")
def test_no_english_is_left_over_of_any_exercise(open_editor: OpenEditor) -> None:
    window = open_editor()
    left = set()
    for exercise in CATALOGUE:
        window.begin(add_entry(empty_data(), exercise)[0])
        choose(window, ("entry", 0))
        window.show_catalogue()
        window.catalogue.names.setCurrentRow(list(CATALOGUE).index(exercise))
        settle()
        texts = list(shown_texts(window))
        window.back()
        settle()
        for text in [*texts, *shown_texts(window)]:
            rest = unmarked(_OWN.sub("", text))
            if re.search(r"[A-Za-z]{2}", rest):
                left.add(f"{exercise}: {text!r}: {rest}")
    assert not left, "\n".join(sorted(left))


# --- what is found ---


def used() -> set[str]:
    """Keys of findings as the sources name them; why marks can't be used is one of a table's."""
    found = set(WALL_FIELDS)
    for name in ("rules", "files", "draft", "guideline"):
        path = Path(tracker.plan.__file__).with_name(f"{name}.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not isinstance(node, ast.Call):
                continue
            called = node.func
            direct = isinstance(called, ast.Name) and called.id == "Finding"
            of = isinstance(called, ast.Attribute) and called.attr == "of"
            key = node.args[1] if (direct or of) and len(node.args) > 1 else None
            if isinstance(key, ast.Constant):
                found.add(str(key.value))
    return found


def test_every_finding_has_a_message_and_no_message_is_left_over() -> None:
    kinds = set(get_args(ErrorType))
    assert len(used()) > 40
    assert used() <= set(MESSAGES)
    assert set(MESSAGES) - used() <= kinds


WRONG: list[tuple[dict[str, Any], str]] = [
    ({"bouts_a_day": 13}, "Übungszeiten am Tag: muss 12 oder weniger sein"),
    ({"rest_s": "x"}, "Pause zwischen Einträgen, s: muss eine Zahl sein"),
    ({"neck_limit_deg": {"yaw": 12.5, "pitch": 30}}, "mehr als die Grenze für den Nacken von 12,5"),
    ({"entries": []}, "Übungen: darf nicht leer sein"),
]


@pytest.mark.parametrize(("change", "says"), WRONG, ids=lambda v: str(v)[:30])
def test_what_is_wrong_is_said_in_the_language_and_by_the_fields_own_name(
    open_editor: OpenEditor, spoken: Any, change: dict[str, Any], says: str
) -> None:
    spoken("de")
    window = open_editor()
    window.begin(data_of(starter_plan()) | change)
    settle()
    found = window.editing.findings
    texts = [found.item(k).text() for k in range(found.count())]
    assert any(says in text for text in texts), texts
    # The file and the command line say it as before.
    assert all("muss" not in f.text and "Grenze" not in f.text for f in window.editing.found)


def test_an_option_that_is_not_given_is_refused_in_the_language(spoken: Any) -> None:
    plan = data_of(starter_plan())
    plan["entries"][0] |= {"eyes": "closed"}
    (fault,) = examine_draft(plan).faults
    spoken("de")
    assert told(fault) == (
        "eyes-up-down mit geschlossenen Augen ist nicht möglich: sie wird mit offenen Augen gemacht"
    )
    spoken("en")
    assert told(fault) == fault.text


@pytest.mark.parametrize("code", TRANSLATED)
def test_every_message_is_said_whole_in_every_language(spoken: Any, code: str) -> None:
    spoken(code)
    for key, text in MESSAGES.items():
        values = {name: f"<{name}>" for name in fields_of(text)}
        said = told(Finding((), key, values))
        assert all(value in said for value in values.values()), key
        assert "{" not in said, key
