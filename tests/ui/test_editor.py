"""The plan editor: built by keys alone, every step undone, nothing lost, no slip unseen."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from tests.plan.examples import TEXT
from tests.plan.made_up import made_up
from tests.plan.test_draft import paths_of
from tests.ui.editing import (
    ALT,
    CTRL,
    SHIFT,
    Hands,
    OpenEditor,
    choose,
    data_in,
    enter,
    items,
    line_of,
    settle,
    view,
)
from tracker.errors import InputError
from tracker.exercises.catalogue import CATALOGUE, OPTIONS, PERMISSIONS, why_never
from tracker.plan.arranging import add_entry
from tracker.plan.draft import (
    MENDABLE,
    UNSET,
    data_of,
    editable_data,
    empty_data,
    examine_draft,
    text_of,
    with_value,
)
from tracker.plan.files import format_plan, load_plan, parse_plan
from tracker.plan.starter import starter_plan
from ui import words
from ui.cli import main
from ui.editor.inputs import ChoiceInput, LineInput, Tick, number_of, shown
from ui.editor.pairs import PairInput, TempoInput
from ui.editor.row_view import RowView
from ui.editor.rows import PLAN, SAFETY, SYMPTOMS, item_of
from ui.editor.window import EditorWindow

pytestmark = pytest.mark.timeout(300)
Key = Qt.Key


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "plan.json"
    path.write_text(TEXT, encoding="utf-8")
    return path


def faults_at(window: EditorWindow) -> dict[str, str]:
    """What is said to be wrong in the form that is shown, by the label of the field."""
    return {
        v.row.label: v.fault.text()
        for v in window.editing.form.views
        if not v.fault_line.isHidden()
    }


# --- by keys alone ---


def test_a_plan_is_built_from_nothing_by_keys_alone(
    open_editor: OpenEditor, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    window = open_editor()
    hands = Hands(window)
    hands.tab_to(words.say("edit.start.empty"))
    hands.press(Key.Key_Space)
    assert [f.text for f in window.editing.found] == ["must not be empty"]
    for sought in ("x1 yaw", "nods-together", "quiet stance"):
        hands.press(Key.Key_E, CTRL)
        hands.type(sought)
        hands.press(Key.Key_Return)
    assert [e["exercise"] for e in data_in(window)["entries"]] == [
        "turns-on-target",
        "nods-together",
        "stand",
    ]
    # The second one: fewer, slower and then faster, and a ladder.
    hands.press(Key.Key_Up)
    hands.press(Key.Key_F6)
    hands.tab_to("Repetitions")
    hands.type("12")
    hands.press(Key.Key_Tab)
    hands.tab_to("Tempo, beats a minute")
    hands.press(Key.Key_Down)
    hands.tab_to("Tempo, beats a minute, up to")
    hands.type("80")
    hands.tab_to("Add a step")
    hands.press(Key.Key_Space)
    assert "changes nothing" in faults_at(window)["Step 1, from week"]
    hands.tab_to("Step 1, degrees to each side, from")
    hands.type("10")
    hands.press(Key.Key_Tab)
    hands.type("12,5")
    hands.press(Key.Key_Return)
    # The third one with the eyes shut, which needs a helper, after the first one.
    hands.press(Key.Key_F6)
    hands.press(Key.Key_Down)
    hands.press(Key.Key_F6)
    hands.tab_to("Eyes")
    hands.press(Key.Key_Down, times=2)
    hands.tab_to("Set a condition")
    hands.press(Key.Key_Space)
    hands.type("Steady, eyes open.")
    hands.press(Key.Key_F6)
    hands.press(Key.Key_Up, ALT)
    assert window.document.state.draft.faults == ()
    # Who it is for, and where it goes.
    hands.press(Key.Key_Home)
    hands.press(Key.Key_F6)
    hands.type("P-09")
    hands.press(Key.Key_S, CTRL)
    hands.type(str(tmp_path / "built"))
    hands.press(Key.Key_Return)
    assert not window.document.dirty
    assert window.windowTitle().startswith("Turnpost - built.json")
    assert main(["plan", "show", str(tmp_path / "built.json"), "--week", "2"]) == 0
    out = capsys.readouterr().out
    assert "for P-09" in out
    assert "12 times; 60 to 80 beats a minute; 10 to 12.5 degrees to each side" in out
    assert "standing, firm surface, eyes closed; helper within reach" in out
    assert out.index("turns-on-target") < out.index("  stand:") < out.index("nods-together")


def test_every_step_is_undone_to_the_beginning_and_done_again(
    open_editor: OpenEditor, file: Path
) -> None:
    window = open_editor(file)
    hands = Hands(window)
    start = data_in(window)
    steps = [start]

    def took() -> None:
        assert data_in(window) is not steps[-1]
        steps.append(data_in(window))

    choose(window, ("entry", 0))
    window.editing.add_entry("walk"), took()
    window.editing.copy_entry(), took()
    window.editing.move_chosen(-1), took()
    window.editing.remove(), took()
    window.editing.add_stage(), took()
    enter(window, ("stages", 0, "name"), "First"), took()
    choose(window, SAFETY)
    window.editing._acted("add_item", ("clearance",)), took()
    enter(window, ("clearance", 1, "item"), "Seen."), took()
    view(window, ("clearance", 1, "cleared")).input.click(), took()  # type: ignore[union-attr]
    enter(window, ("neck_limit_deg", "yaw"), "25"), took()
    choose(window, SYMPTOMS)
    view(window, ("symptom_rules", "also_ask")).input.click(), took()  # type: ignore[union-attr]
    choose(window, ("entry", 2))
    window.editing._acted("met", ("entries", 2, "unlock_after", "met_on")), took()
    window.editing._acted("remove_unlock", ("entries", 2, "unlock_after")), took()
    window.editing._acted("add_rung", ("entries", 2, "ladder")), took()
    settle()
    assert window.document.stack.count() == len(steps) - 1
    for expected in reversed(steps[:-1]):
        hands.press(Key.Key_Z, CTRL)
        assert data_in(window) == expected
    assert not window.buttons["undo"].isEnabled() and not window.document.dirty
    assert text_of(data_in(window)) == text_of(start)
    for expected in steps[1:]:
        hands.press(Key.Key_Y, CTRL)
        assert data_in(window) == expected
    assert not window.buttons["redo"].isEnabled()


def test_undo_first_forgets_what_is_being_typed(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    hands = Hands(window)
    enter(window, ("rest_s",), "45")
    line = line_of(window, ("bouts_a_day",))
    line.setFocus()
    hands.type("5")
    hands.press(Key.Key_Z, CTRL)
    assert line.text() == "" and data_in(window)["rest_s"] == 45
    hands.press(Key.Key_Z, CTRL)
    assert "rest_s" not in data_in(window)
    # And it shows where the step was taken back.
    assert line_of(window, ("rest_s",)).hasFocus()


def test_an_undone_step_is_shown_where_it_was_done(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    choose(window, ("entry", 1))
    enter(window, ("entries", 1, "seconds"), "50")
    choose(window, SYMPTOMS)
    window.editing.undo()
    settle()
    assert window.editing.outline.chosen == ("entry", 1)
    assert data_in(window)["entries"][1]["seconds"] == 45


# --- nothing is lost ---


@pytest.mark.slow
@pytest.mark.parametrize("seed", range(12))
def test_going_through_every_field_changes_nothing(
    open_editor: OpenEditor, tmp_path: Path, seed: int
) -> None:
    data = made_up(seed)
    path = tmp_path / "made-up.json"
    path.write_text(text_of(data), encoding="utf-8")
    plan = load_plan(path)
    window = open_editor(path)
    fields = 0
    for item in items(window):
        choose(window, item)
        for row in window.editing.form.views:
            if row.take_keys():
                fields += 1
        window.editing.outline.setFocus()
        window.editing.commit()
    assert fields > 40 and not window.document.dirty and window.document.stack.count() == 0
    window.files.save_as()
    window.bar.path.setText(str(tmp_path / "again.json"))
    window.bar.buttons[0].click()
    again = load_plan(tmp_path / "again.json")
    assert again == plan and format_plan(again) == format_plan(plan)


@pytest.mark.slow
def test_what_a_field_shows_is_what_it_would_hand_over(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    path = tmp_path / "made-up.json"
    window = open_editor()
    looked = set()
    for seed in range(100, 106):
        path.write_text(text_of(made_up(seed)), encoding="utf-8")
        window.files.open(path)
        for item in items(window):
            choose(window, item)
            for row in window.editing.form.views:
                must_hand_over(row, value_in(data_in(window), row.row.path))
                looked.add(row.row.kind)
    assert {"text", "number", "day", "choice", "tempo", "pair", "tick", "member"} <= looked


def must_hand_over(row: RowView, given: object) -> None:
    found = row.input
    if isinstance(found, LineInput):
        if found.kind == "text" and isinstance(given, str):
            assert found.value == given.strip()
        else:
            assert found.value == (UNSET if given is None else given)
    elif isinstance(found, ChoiceInput):
        held = found._choices[found.currentIndex()][0]
        expected = row.row.default if given in (UNSET, None) else given
        assert held == expected or (held is UNSET and given in (UNSET, None))
    elif isinstance(found, TempoInput):
        assert found.value is given or (given is not UNSET and found.value == given)
    elif isinstance(found, PairInput):
        assert found.value == (UNSET if given is None else given)
    elif isinstance(found, Tick) and row.row.kind == "tick":
        assert found.isChecked() == (given is True)
    elif isinstance(found, Tick):
        assert found.isChecked() == (isinstance(given, list) and row.row.member in given)


def value_in(data: object, path: tuple[str | int, ...]) -> object:
    for part in path:
        try:
            data = data[part]  # type: ignore[index]
        except (KeyError, IndexError, TypeError):
            return UNSET
    return data


@pytest.mark.parametrize(
    ("text", "value"),
    [("", UNSET), (" 12 ", 12), ("12,5", 12.5), ("1e1", 10.0), ("nan", "nan"), ("ten", "ten")],
)
def test_typed_numbers(text: str, value: object) -> None:
    assert number_of(text) == value or number_of(text) is value
    assert number_of(shown(value)) == value or value is UNSET


# --- what is wrong is said at its field ---


WRONG = [
    (PLAN, ("bouts_a_day",), "thirteen", "must be a whole number"),
    (PLAN, ("bouts_a_day",), "13", "must be 12 or less"),
    (PLAN, ("rest_s",), "-1", "must be 0 or more"),
    (PLAN, ("starts_on",), "2026-02-30", "must be a day as in 2026-01-31"),
    (PLAN, ("person",), "P 7", "can't be used here"),
    (SAFETY, ("neck_limit_deg", "yaw"), "12", "beyond the neck limit of 12"),
    (SAFETY, ("neck_limit_deg", "yaw"), "", "is missing"),
    (SAFETY, ("emergency_number",), "call me", "must be a telephone number"),
    (("entry", 0), ("entries", 0, "repetitions"), "0", "must be 1 or more"),
    (("entry", 0), ("entries", 0, "seconds"), "30", "give repetitions or seconds, not both"),
    (("entry", 0), ("entries", 0, "ladder", 1, "from_week"), "2", "must be later than the rung"),
    (("entry", 3), ("entries", 3, "entry_id"), "corner", "there are two entries 'corner'"),
    (
        ("entry", 1),
        ("entries", 1, "unlock_after", "on_target_least"),
        "85",
        "must be 1 or less",
    ),
]


@pytest.mark.parametrize(("item", "path", "typed", "says"), WRONG, ids=lambda v: str(v)[-30:])
def test_a_slip_is_said_at_its_field_in_the_words_of_the_reading(
    open_editor: OpenEditor,
    file: Path,
    item: tuple[str, int],
    path: tuple[str | int, ...],
    typed: str,
    says: str,
) -> None:
    window = open_editor(file)
    choose(window, item)
    enter(window, path, typed)
    (fault, *_) = window.editing.found
    assert says in fault.text
    # The same as of a file that says so.
    with pytest.raises(InputError, match=r"line \d+") as caught:
        parse_plan(text_of(data_in(window)))
    assert fault.text in str(caught.value)
    # It stands at the field that it is about, and in the outline; F8 goes there.
    window.editing.outline.setFocus()
    Hands(window).press(Key.Key_F8)
    told = faults_at(window)
    assert any(fault.text in text for text in told.values())
    assert any("wrong" in line.text for line in window.editing.outline.lines)
    described = QApplication.focusWidget()
    assert described is not None and fault.text in described.accessibleDescription()
    # Nobody could practise it, so it is not saved unasked; the file is as it was.
    Hands(window).press(Key.Key_S, CTRL)
    assert "Not finished" in window.bar.said.text() and file.read_text(encoding="utf-8") == TEXT
    window.bar.close_bar()
    window.editing.undo()
    settle()
    assert faults_at(window) == {} and window.document.state.plan is not None


@pytest.mark.parametrize("exercise", sorted(CATALOGUE))
def test_what_the_table_refuses_is_not_offered_and_its_reason_is_told(
    open_editor: OpenEditor, exercise: str
) -> None:
    window = open_editor()
    data, k = add_entry(empty_data(), exercise)
    note = {"note": "As agreed."}
    data = {**data, "entries": [data["entries"][0] | note]}
    window.begin(data)
    choose(window, ("entry", k))
    fields = {
        "eyes_closed": ("eyes", "closed"),
        "head_shake": ("head_shake", True),
        "soft_surface": ("surface", "soft"),
        **{p: ("posture", p) for p in ("sitting", "standing", "walking")},
    }
    told = "\n".join(
        w.text() for w in window.editing.form.findChildren(QLabel) if w.isVisibleTo(window)
    )
    for option in OPTIONS:
        field, value = fields[option]
        allowed = PERMISSIONS[exercise][option]
        found = view(window, ("entries", k, field)).input
        assert isinstance(found, ChoiceInput)
        offered = dict(found._choices)
        assert (value in offered) == (allowed != "never"), option
        if allowed == "helper":
            assert "with a helper only" in offered[value]
        forced = with_value(data, ("entries", k, field), value)
        said = [f.text for f in examine_draft(forced).faults]
        if allowed == "never":
            assert why_never(exercise, option) in told
            assert any(why_never(exercise, option) in text for text in said), option
        else:
            assert said == [], option


def test_support_is_never_offered_below_what_was_chosen(
    open_editor: OpenEditor, file: Path
) -> None:
    window = open_editor(file)
    choose(window, ("entry", 2))
    found = view(window, ("entries", 2, "support")).input
    assert isinstance(found, ChoiceInput)
    assert [v for v, _ in found._choices if v is not UNSET] == ["helper"]
    eyes = view(window, ("entries", 2, "eyes")).input
    assert isinstance(eyes, ChoiceInput)
    eyes.activated.emit([v for v, _ in eyes._choices].index("open"))
    settle()
    assert [v for v, _ in found._choices if v is not UNSET] == ["corner_and_chair", "helper"]


# --- what is said of the plan ---


def test_minutes_stand_against_the_guideline_as_quoted(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    shown_words = [v.text.text() for v in window.editing.form.views]
    quoted = next(t for t in shown_words if "min a day planned" in t)
    assert "at least 20 for a chronic loss" in quoted and "as quoted" in quoted
    assert "Hall CD et al. 2022" in quoted
    assert "gaze stabilisation: 3 min a day" in window.state.text()
    kind = view(window, ("kind_of_loss",)).input
    assert isinstance(kind, ChoiceInput)
    kind.activated.emit([v for v, _ in kind._choices].index("acute"))
    settle()
    assert "guideline as quoted: 12" in window.state.text()


def test_each_default_says_where_it_comes_from(open_editor: OpenEditor) -> None:
    window = open_editor()
    for name, exercise in CATALOGUE.items():
        window.begin(add_entry(empty_data(), name)[0])
        choose(window, ("entry", 0))
        told = "\n".join(v.text.text() for v in window.editing.form.views)
        assert all(source in told for source in exercise.sources.values()), name
    choose(window, SYMPTOMS)
    assert sum("Mersey Care" in v.text.text() for v in window.editing.form.views) == 2


def test_the_catalogue_is_searched_and_tells_what_is_refused(open_editor: OpenEditor) -> None:
    window = open_editor()
    window.begin(empty_data())
    window.show_catalogue()
    assert window.catalogue.names.count() == len(CATALOGUE)
    window.catalogue.sought.setText("toss")
    assert window.catalogue.chosen == "hand-toss"
    assert "never while tossing, walking, on stairs" in window.catalogue.about.text()
    window.catalogue.sought.setText("no such thing")
    assert window.catalogue.chosen is None and not window.catalogue.add.isEnabled()
    Hands(window).press(Key.Key_Return)
    assert data_in(window)["entries"] == []
    Hands(window).press(Key.Key_Escape)
    assert window.stack.currentWidget() is window.editing


def test_the_wheel_does_not_change_a_choice(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    found = view(window, ("affected_side",)).input
    assert isinstance(found, ChoiceInput)
    turn = QWheelEvent(
        QPointF(5, 5),
        QPointF(found.mapToGlobal(QPoint(5, 5))),
        QPoint(0, -120),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(found, turn)
    assert found.currentText() == "right" and not window.document.dirty


def test_a_number_goes_up_and_down_by_keys(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    choose(window, ("entry", 0))
    line_of(window, ("entries", 0, "repetitions")).setFocus()
    Hands(window).press(Key.Key_Up, times=3)
    Hands(window).press(Key.Key_Down)
    assert data_in(window)["entries"][0]["repetitions"] == 14


def test_the_way_to_a_fault_counts_what_is_just_being_typed(
    open_editor: OpenEditor, file: Path
) -> None:
    window = open_editor(file)
    line_of(window, ("rest_s",)).setFocus()
    hands = Hands(window)
    hands.type("long")
    choose(window, PLAN)
    line_of(window, ("plan_id",)).setFocus()
    line_of(window, ("rest_s",)).setFocus()
    hands.type("longer")
    hands.press(Key.Key_F8)
    assert line_of(window, ("rest_s",)).hasFocus()
    assert "must be a number" in line_of(window, ("rest_s",)).accessibleDescription()


def test_what_the_therapist_should_know_stands_at_its_field(open_editor: OpenEditor) -> None:
    window = open_editor()
    window.begin(data_of(starter_plan()))
    choose(window, SAFETY)
    told = view(window, ("emergency_number",))
    assert "none is set: the program can only say" in told.text.text()
    assert "none is set" in line_of(window, ("emergency_number",)).accessibleDescription()
    enter(window, ("emergency_number",), "112")
    assert "none is set" not in told.text.text()


@pytest.mark.parametrize("size", [(1366, 768), (960, 600)])
def test_a_long_fault_in_large_text_can_be_read_to_its_end(
    open_editor: OpenEditor, size: tuple[int, int]
) -> None:
    window = open_editor(percent=200, size=size)
    window.begin(data_of(starter_plan()))
    window.editing._acted("add_rung", ("entries", 3, "ladder"))
    settle()
    found = window.editing.findings
    assert found.count() == 1
    row = found.visualItemRect(found.item(0))
    assert row.height() > 1.5 * found.fontMetrics().lineSpacing()
    found.verticalScrollBar().setValue(found.verticalScrollBar().maximum())
    settle()
    assert found.visualItemRect(found.item(0)).bottom() <= found.viewport().height() + 2
    if size[0] > 1000:
        assert row.height() <= found.viewport().height() + 2


@pytest.mark.parametrize("code", ["en", "ar"])
def test_an_entry_stands_behind_its_stage_in_each_of_its_lines(
    open_editor: OpenEditor, spoken: Any, code: str
) -> None:
    """Also where a line breaks, and from the right where it is read from there."""
    spoken(code)
    window = open_editor(percent=200)
    window.begin(data_of(starter_plan()))
    # So narrow that lines break.
    window.editing._split.setSizes([100, 1266])
    settle()
    outline = window.editing.outline
    row = items(window).index(("entry", 1))
    outline.scrollToItem(outline.item(row), outline.ScrollHint.PositionAtTop)
    settle()
    box = outline.visualItemRect(outline.item(row))
    assert box.height() > 2.5 * outline.fontMetrics().lineSpacing()
    picture = outline.viewport().grab(box).toImage()
    edge = round(0.7 * outline.fontMetrics().height())
    near = range(edge) if code == "en" else range(picture.width() - edge, picture.width())
    ground = picture.pixelColor(picture.width() // 2, 0)
    drawn = [
        (x, y) for x in near for y in range(picture.height()) if picture.pixelColor(x, y) != ground
    ]
    assert not drawn


def test_a_plan_begins_today_by_one_button(open_editor: OpenEditor) -> None:
    window = open_editor()
    window.begin(data_of(starter_plan()))
    button = view(window, ("starts_on",)).act
    assert button is not None
    button.click()
    settle()
    assert data_in(window)["starts_on"] == "2026-11-26"


def test_shift_tab_goes_back(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    hands = Hands(window)
    hands.press(Key.Key_F6)
    first = QApplication.focusWidget()
    hands.press(Key.Key_Tab, times=3)
    hands.press(Key.Key_Tab, SHIFT, times=3)
    assert QApplication.focusWidget() is first


def test_the_command_opens_a_plan_and_refuses_what_is_none(
    qtbot: QtBot, file: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    opened: list[str] = []

    def look(self: QApplication) -> int:
        (window,) = [
            w
            for w in QApplication.topLevelWidgets()
            if isinstance(w, EditorWindow) and w.isVisible()
        ]
        qtbot.addWidget(window)
        opened.append(json.dumps(window.document.data["plan_id"]))
        window.close()
        return 0

    monkeypatch.setattr(QApplication, "exec", look)
    assert main(["plan", "edit", str(file)]) == 0
    assert opened == ['"plan-7"']
    file.write_text("{}")
    assert main(["plan", "edit", str(file)]) == 2
    assert "not a plan" in capsys.readouterr().err and len(opened) == 1


@pytest.mark.slow
def test_whatever_stands_in_a_field_is_shown_with_its_fault(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    """Every field with every kind of nonsense: the form is drawn, and what is wrong is said."""
    window = open_editor()
    looked = 0
    for seed in (1, 2, 5):
        data = made_up(seed)
        for number, path in enumerate(paths_of(data)):
            if path[-1] not in MENDABLE:
                continue
            value = ("x y", -1, {"a": 1}, [1, 2, 3], True)[number % 5]
            wrong = with_value(data, path, value)
            try:
                editable_data(text_of(wrong))
            except InputError:
                continue
            window.begin(wrong)
            item = item_of(path)
            assert item is not None
            choose(window, item)
            for fault in window.editing.found[: len(window.document.state.draft.faults)]:
                looked += 1
                at = item_of(fault.path)
                if at is not None:
                    choose(window, at)
                    assert any(fault.text in text for text in faults_at(window).values()), fault
    assert looked > 50
