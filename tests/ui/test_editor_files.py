"""The plan editor and files: asked before anything is replaced or lost, whatever the disk does."""

from __future__ import annotations

import errno
import os
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from tests.plan.examples import TEXT, changed
from tests.records.clinic import TODAY
from tests.ui.editing import (
    CTRL,
    Hands,
    OpenEditor,
    choose,
    data_in,
    enter,
    settle,
    view,
)
from tests.ui.test_desk import Open, folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_desk import choose as choose_person
from tracker.errors import InputError, RunError
from tracker.plan.draft import data_of
from tracker.plan.files import load_plan, save_plan
from tracker.plan.starter import starter_plan
from tracker.session import files as session_files
from ui import words
from ui.editor.inputs import LineInput
from ui.editor.state import State
from ui.editor.window import EditorWindow

pytestmark = pytest.mark.timeout(300)
Key = Qt.Key


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "plan.json"
    path.write_text(TEXT, encoding="utf-8")
    return path


def answer(window: EditorWindow, key: str) -> None:
    """Press one of the answers that are offered."""
    texts = {b.text(): b for b in window.bar.buttons}
    texts[words.say(key)].click()
    settle()


def asked(window: EditorWindow) -> str:
    return "" if window.bar.isHidden() else window.bar.said.text()


def test_a_file_that_is_there_is_replaced_only_after_asking(
    open_editor: OpenEditor, file: Path
) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    Hands(window).press(Key.Key_S, CTRL)
    assert "is there already" in asked(window) and file.read_text(encoding="utf-8") == TEXT
    answer(window, "edit.cancel")
    assert file.read_text(encoding="utf-8") == TEXT and window.document.dirty
    Hands(window).press(Key.Key_S, CTRL)
    answer(window, "edit.replace")
    assert load_plan(file).rest_s == 45 and not window.document.dirty
    # What this window wrote itself it may write again.
    enter(window, ("rest_s",), "50")
    Hands(window).press(Key.Key_S, CTRL)
    assert asked(window) == "" and load_plan(file).rest_s == 50
    # Not when somebody else has changed it since.
    file.write_text(TEXT, encoding="utf-8")
    enter(window, ("rest_s",), "55")
    Hands(window).press(Key.Key_S, CTRL)
    assert "changed by somebody else" in asked(window)
    assert file.read_text(encoding="utf-8") == TEXT


def test_a_plan_that_a_colleague_saved_meanwhile_is_said_to_be_newer(
    open_editor: OpenEditor, file: Path
) -> None:
    theirs, mine = open_editor(file), open_editor(file)
    enter(theirs, ("rest_s",), "40")
    assert not mine.document.is_changed_since(file)
    theirs.document.save(file)
    enter(mine, ("rest_s",), "45")
    Hands(mine).press(Key.Key_S, CTRL)
    assert "changed by somebody else" in asked(mine)
    answer(mine, "edit.cancel")
    assert load_plan(file).rest_s == 40


def test_another_name_leaves_the_older_file_alone(
    open_editor: OpenEditor, file: Path, tmp_path: Path
) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    Hands(window).press(Key.Key_S, CTRL)
    answer(window, "edit.replace.other")
    assert "Save the plan where?" in asked(window)
    window.bar.path.setText(str(tmp_path / "other"))
    answer(window, "edit.save")
    assert file.read_text(encoding="utf-8") == TEXT
    assert load_plan(tmp_path / "other.json").rest_s == 45
    assert window.document.path == tmp_path / "other.json"


def test_another_plan_is_replaced_under_no_answer(
    open_editor: OpenEditor, file: Path, tmp_path: Path
) -> None:
    """Somebody else's plan in the folder of all: one mistyped name must not end it."""
    theirs = tmp_path / "theirs.json"
    theirs.write_text(changed("plan_id", "another"), encoding="utf-8")
    before = theirs.read_bytes()
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    window.files.save_as()
    window.bar.path.setText(str(theirs))
    answer(window, "edit.save")
    assert "holds a plan" in asked(window) and "Save the plan where?" in asked(window)
    with pytest.raises(InputError):
        window.document.save(theirs)
    assert theirs.read_bytes() == before and window.document.dirty
    # Its own may be, also after it was saved elsewhere in between; not once another is open.
    window.document.save(tmp_path / "mine.json")
    window.document.save(file)
    assert load_plan(file).rest_s == 45
    window.document.open(theirs)
    with pytest.raises(InputError):
        window.document.save(file)


def full(*_words: object) -> None:
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


def test_a_full_disk_loses_nothing(
    open_editor: OpenEditor, file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    with monkeypatch.context() as disk:
        disk.setattr(session_files.os, "fsync", full)
        Hands(window).press(Key.Key_S, CTRL)
        answer(window, "edit.replace")
    assert "the disk is full" in asked(window) and "Everything is still here" in asked(window)
    assert file.read_text(encoding="utf-8") == TEXT
    assert sorted(p.name for p in tmp_path.glob("*.json")) == ["plan.json"]
    assert window.document.dirty and data_in(window)["rest_s"] == 45
    window.bar.path.setText(str(tmp_path / "elsewhere"))
    answer(window, "edit.save")
    assert load_plan(tmp_path / "elsewhere.json").rest_s == 45 and not window.document.dirty


def test_a_folder_that_can_not_be_written_to_loses_nothing(
    open_editor: OpenEditor, file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_words: object, **_more: object) -> None:
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))

    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    monkeypatch.setattr(session_files.tempfile, "mkstemp", refuse)
    window.files.save_as()
    window.bar.path.setText(str(tmp_path / "no"))
    answer(window, "edit.save")
    assert "this account has no right to it" in asked(window) and window.document.dirty
    assert data_in(window)["rest_s"] == 45 and not (tmp_path / "no.json").exists()


def test_closing_asks_and_can_be_called_off(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    assert not window.close() and window.isVisible()
    assert "in no file yet" in asked(window)
    # The keys are on the answers; Esc stays.
    assert window.bar.buttons[0].hasFocus()
    Hands(window).press(Key.Key_Escape)
    assert asked(window) == "" and window.isVisible()
    assert not window.close()
    answer(window, "edit.leave.discard")
    assert not window.isVisible() and file.read_text(encoding="utf-8") == TEXT


def test_closing_can_save_first(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    assert not window.close()
    answer(window, "edit.leave.save")
    answer(window, "edit.replace")
    assert not window.isVisible() and load_plan(file).rest_s == 45


def test_what_is_typed_and_not_left_yet_is_asked_for_too(
    open_editor: OpenEditor, file: Path
) -> None:
    window = open_editor(file)
    line = view(window, ("rest_s",)).input
    assert line is not None
    line.setFocus()
    Hands(window).type("45")
    assert not window.close() and "in no file yet" in asked(window)
    answer(window, "edit.leave.stay")
    assert data_in(window)["rest_s"] == 45


def test_nothing_changed_closes_without_a_word(open_editor: OpenEditor, file: Path) -> None:
    assert open_editor(file).close()
    assert open_editor().close()


def test_opening_another_plan_asks_first_and_refuses_what_is_none(
    open_editor: OpenEditor, file: Path, tmp_path: Path
) -> None:
    (tmp_path / "none.json").write_text("{}")
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    Hands(window).press(Key.Key_O, CTRL)
    assert asked(window) == words.say("edit.open.which")
    window.bar.path.setText(str(tmp_path / "none.json"))
    answer(window, "edit.open")
    assert "in no file yet" in asked(window)
    answer(window, "edit.leave.discard")
    assert "not a plan" in asked(window)
    # What was open is still there, with its steps.
    assert data_in(window)["rest_s"] == 45 and window.document.path == file


def test_a_new_plan_after_dropping_another_one_asks_no_second_time(
    open_editor: OpenEditor, file: Path
) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "45")
    Hands(window).press(Key.Key_N, CTRL)
    # The question is said with what has the keys.
    assert window.bar.buttons[0].accessibleDescription() == asked(window)
    answer(window, "edit.leave.discard")
    assert window.stack.currentWidget() is window.start
    assert window.close() and file.read_text(encoding="utf-8") == TEXT


def test_a_file_can_be_looked_for(
    open_editor: OpenEditor, file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = open_editor()
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_w, **_k: (str(file), ""))
    window.start.from_file.click()
    answer(window, "edit.look")
    assert window.bar.path.text() == str(file)
    answer(window, "edit.open")
    assert data_in(window)["plan_id"] == "plan-7"
    assert window.stack.currentWidget() is window.editing


# --- what is not finished ---


def test_an_unfinished_plan_can_be_kept_and_gone_on_with_and_nobody_practises_it(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    window = open_editor()
    window.start.from_empty.click()
    enter(window, ("rest_s",), "long")
    hands = Hands(window)
    hands.press(Key.Key_S, CTRL)
    assert "Not finished: 2 to put right" in asked(window)
    answer(window, "edit.unfinished.save")
    window.bar.path.setText(str(tmp_path / "half"))
    answer(window, "edit.save")
    path = tmp_path / "half.json"
    assert not window.document.dirty
    with pytest.raises(InputError, match=r"rest_s: must be a number"):
        load_plan(path)
    again = open_editor(path)
    assert [f.path for f in again.editing.found] == [("rest_s",), ("entries",)]
    enter(again, ("rest_s",), "30")
    again.editing.add_entry("walk")
    settle()
    assert again.document.state.plan is not None
    # No sheet and no preview of what is not finished.
    window.buttons["sheet"].click()
    assert "No sheet yet" in asked(window)
    window.bar.close_bar()
    window.buttons["show"].click()
    assert window.stack.currentWidget() is window.editing


def test_a_file_with_faults_can_be_opened_and_put_right(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    path = tmp_path / "bad.json"
    path.write_text(changed("entries.2.support", "none"), encoding="utf-8")
    window = open_editor(path)
    assert window.stack.currentWidget() is window.editing
    assert "needs the support" in window.editing.found[0].text
    hands = Hands(window)
    hands.press(Key.Key_F8)
    focused = window.focusWidget()
    assert focused is not None and "needs the support" in focused.accessibleDescription()
    hands.press(Key.Key_Down)
    assert window.document.state.plan is not None


def test_what_no_field_stands_for_is_not_opened(open_editor: OpenEditor, tmp_path: Path) -> None:
    path = tmp_path / "bad.json"
    for field, value, says in (
        ("entries.1.exercise", "spin", "there is no exercise"),
        ("colour", "red", "is not a field of a plan"),
        ("entries", {}, "must be a list"),
        ("entries.0", "x", "must be fields"),
        ("entries.0.eyes", "shut", "must be"),
        ("clearance", [1], "must be fields"),
        ("stages", None, "must be a list"),
        ("format_version", 2, "newer"),
    ):
        path.write_text(changed(field, value), encoding="utf-8")
        window = open_editor(path)
        assert says in asked(window), field
        assert window.stack.currentWidget() is window.start
        window.close()


# --- the patient's sheet ---


def test_the_sheet_is_written_and_an_older_one_is_asked_about(
    open_editor: OpenEditor, file: Path, tmp_path: Path
) -> None:
    window = open_editor(file)
    Hands(window).press(Key.Key_P, CTRL)
    assert window.bar.path.text() == str(tmp_path / "plan-sheet")
    answer(window, "edit.sheet.pdf_a4")
    pdf = tmp_path / "plan-sheet.pdf"
    assert pdf.read_bytes().startswith(b"%PDF") and "Written" in asked(window)
    answer(window, "edit.good")
    pdf.write_text("older")
    Hands(window).press(Key.Key_P, CTRL)
    answer(window, "edit.sheet.pdf_letter")
    assert "is there already" in asked(window) and pdf.read_text() == "older"
    answer(window, "edit.replace")
    assert pdf.read_bytes().startswith(b"%PDF")
    answer(window, "edit.good")
    Hands(window).press(Key.Key_P, CTRL)
    answer(window, "edit.sheet.html")
    assert "Turn your head" in (tmp_path / "plan-sheet.html").read_text(encoding="utf-8")


def test_what_is_typed_while_a_question_stands_is_not_lost(
    open_editor: OpenEditor, file: Path, tmp_path: Path
) -> None:
    other = tmp_path / "other.json"
    other.write_text(TEXT, encoding="utf-8")
    window = open_editor(file)
    Hands(window).press(Key.Key_O, CTRL)
    enter(window, ("rest_s",), "45")
    window.bar.path.setText(str(other))
    answer(window, "edit.open")
    assert "in no file yet" in asked(window) and window.document.path == file
    answer(window, "edit.leave.stay")
    assert data_in(window)["rest_s"] == 45


def test_no_sheet_of_what_has_been_spoilt_since_it_was_asked_for(
    open_editor: OpenEditor, file: Path, tmp_path: Path
) -> None:
    window = open_editor(file)
    Hands(window).press(Key.Key_P, CTRL)
    line = view(window, ("rest_s",)).input
    assert isinstance(line, LineInput)
    line.setText("abc")
    answer(window, "edit.sheet.pdf_a4")
    assert "No sheet yet" in asked(window) and not list(tmp_path.glob("*.pdf"))


def test_an_ending_in_capitals_is_that_of_a_pdf_too(
    open_editor: OpenEditor, file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = open_editor(file)
    Hands(window).press(Key.Key_P, CTRL)
    window.bar.path.setText(str(tmp_path / "anna.PDF"))
    answer(window, "edit.sheet.pdf_a4")
    assert (tmp_path / "anna.PDF").read_bytes().startswith(b"%PDF")

    def fail(*_what: object) -> bytes:
        raise RunError("no PDF today")

    monkeypatch.setattr("ui.documents.sheet_pdf.sheet_pdf", fail)
    Hands(window).press(Key.Key_P, CTRL)
    answer(window, "edit.sheet.pdf_a4")
    assert asked(window) == "no PDF today"


# --- from the desk ---


def test_the_desk_opens_the_last_plan_with_its_conditions_and_takes_no_step_itself(
    open_desk: Open,  # noqa: F811 - a fixture
    qtbot: QtBot,
) -> None:
    desk = open_desk()
    choose_person(desk, "heron")
    desk.person_page.plan.click()
    window = desk.editor
    assert window is not None
    qtbot.addWidget(window)
    window.document._today = TODAY
    assert words.say("edit.start.last", person="heron") == window.start.from_last.text()
    window.start.from_last.click()
    settle()
    person = desk.person_page.person
    assert person is not None and person.plan is not None
    # Nothing of the plan is changed by opening it.
    assert window.document.state.plan == person.plan and not window.document.dirty
    met = [line for line in window.editing.outline.lines if "condition met" in line.text]
    assert met and met[0].item[0] in ("entry", "stage")
    choose(window, met[0].item)
    told = [v.text.text() for v in window.editing.form.views if v.row.kind == "note"]
    assert any(t.startswith("Met: ") and "Nothing opens by itself" in t for t in told)
    # The step is taken by hand.
    part = "entries" if met[0].item[0] == "entry" else "stages"
    path = (part, met[0].item[1], "unlock_after", "met_on")
    button = view(window, path).act
    assert button is not None
    button.click()
    settle()
    assert data_in(window)[part][met[0].item[1]]["unlock_after"]["met_on"] == TODAY.isoformat()
    assert window.document.dirty
    # It is not saved yet, so neither window closes unasked.
    assert not desk.close() and desk.isVisible() and window.isVisible()
    answer(window, "edit.leave.discard")
    assert not window.isVisible()


def test_going_on_from_the_last_plan_again_takes_what_has_been_saved_since(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
) -> None:
    desk = open_desk()
    choose_person(desk, "heron")
    desk.open_plan()
    window = desk.editor
    assert window is not None
    qtbot.addWidget(window)
    window.start.from_last.click()
    enter(window, ("rest_s",), "77")
    window.files.save()
    answer(window, "edit.replace")
    Hands(window).press(Key.Key_N, CTRL)
    window.start.from_last.click()
    settle()
    assert data_in(window)["rest_s"] == 77 and not window.document.dirty


def test_sessions_of_one_person_judge_no_plan_of_another(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    desk = open_desk()
    choose_person(desk, "heron")
    desk.open_plan()
    window = desk.editor
    assert window is not None
    qtbot.addWidget(window)
    window.start.from_last.click()
    settle()
    assert window.document.rows
    plan = window.document.state.plan
    assert plan is not None
    other = tmp_path / "other.json"
    save_plan(other, plan.model_copy(update={"person": "wren"}))
    window.files.open(other)
    assert window.document.rows is None
    # Nor once the pseudonym is another one; undo brings all of it back.
    assert window._last is not None and window._last[1] is not None
    window.files.open(window._last[1])
    before = data_in(window)
    enter(window, ("person",), "wren")
    assert window.document.rows is None and data_in(window)["plan_id"] != before["plan_id"]
    window.editing.undo()
    assert data_in(window) == before and window.document.rows


def test_what_was_found_met_is_met_without_sessions_at_hand() -> None:
    data = data_of(starter_plan())
    at, day = ("stages", 1), date(2026, 11, 20)
    assert State.of(data, None, day).short_standing(at) == words.say("edit.short.condition")
    data["stages"][1]["unlock_after"]["met_on"] = day.isoformat()
    assert State.of(data, None, day).short_standing(at) == words.say("edit.short.met")
    two_days_before = State.of(data, None, day - timedelta(days=2))
    assert two_days_before.short_standing(at) != words.say("edit.short.met")
    assert "the day has not come yet" in two_days_before.standing(at)


def test_what_is_not_met_says_why(open_desk: Open, qtbot: QtBot) -> None:  # noqa: F811
    desk = open_desk()
    choose_person(desk, "wren")
    desk.open_plan()
    window = desk.editor
    assert window is not None
    qtbot.addWidget(window)
    window.start.from_last.click()
    settle()
    lines = window.editing.outline.lines
    waiting = [line for line in lines if "condition not met" in line.text]
    assert waiting
    choose(window, waiting[0].item)
    told = [v.text.text() for v in window.editing.form.views if v.row.kind == "note"]
    assert any(t.startswith("Not met: ") for t in told)


def test_a_new_plan_for_somebody_of_the_desk_has_the_pseudonym(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    folder: Path,  # noqa: F811
) -> None:
    desk = open_desk()
    choose_person(desk, "teal")
    desk.open_plan()
    window = desk.editor
    assert window is not None
    qtbot.addWidget(window)
    window.start.from_starter.click()
    settle()
    assert data_in(window)["person"] == "teal" and window.document.path is None
    before = {p: p.read_bytes() for p in folder.rglob("*.json")}
    window.files.save()
    assert window.bar.path.text().startswith(str(folder))
    answer(window, "edit.save")
    after = {p: p.read_bytes() for p in folder.rglob("*.json")}
    assert {p: after[p] for p in before} == before
    (new,) = set(after) - set(before)
    assert load_plan(new).person == "teal"
