"""What the patient will see of a plan, as the editor shows it: the session's own cards."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from tests.plan.examples import TEXT
from tests.ui.editing import Hands, OpenEditor, choose, enter, settle
from tracker.plan.asked import asked_of
from tracker.plan.draft import data_of
from tracker.plan.starter import starter_plan
from tracker.practice.tasks import Prepare
from ui import words
from ui.cards import card_of
from ui.editor.window import EditorWindow
from ui.widgets.basic import Words

Key = Qt.Key


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "plan.json"
    path.write_text(TEXT, encoding="utf-8")
    return path


def texts(widget: QWidget) -> list[str]:
    return [w.text() for w in widget.findChildren(Words) if w.isVisibleTo(widget) and w.text()]


def pick(window: EditorWindow, name: str, value: str) -> None:
    found = getattr(window.preview, name)
    found.activated.emit([v for v, _ in found._choices].index(value))
    settle()


def test_it_shows_the_cards_of_the_session(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    choose(window, ("entry", 0))
    Hands(window).press(Key.Key_F5)
    preview = window.preview
    today = "\n".join(texts(preview.today))
    assert "From your therapist: Little and often." in today
    assert "1.  Turn your head, eyes on the target: 12 times" in today
    assert "Not today:" in today and "This one comes later." in today
    plan = window.document.state.plan
    assert plan is not None
    for week in (1, 5):
        preview.week.setText(str(week))
        preview.week.commit()
        settle()
        asked = asked_of(plan.entries[0], week)
        card = card_of(Prepare(asked=asked), plan, week=week, can_speak=True)
        shown = texts(preview.card)
        assert shown[0] == card.title
        assert sorted(shown[1:]) == sorted(
            [*(t for t in (*card.lines, card.quiet) if t), *card.cares]
        )
    assert preview.movement.picture.movement is not None
    assert (
        preview.movement.picture.accessibleName() == "Drawing: Turn your head, eyes on the target"
    )


def test_stage_and_exercise_are_chosen_on_top(open_editor: OpenEditor) -> None:
    window = open_editor()
    window.begin(data_of(starter_plan()))
    choose(window, ("stage", 2))
    window.show_preview()
    assert window.preview.today.title.text() == "Today: Standing, firm floor"
    # Nothing is ticked on the checklist, so standing work is not offered.
    assert words.say("refused.not_cleared") in "\n".join(texts(window.preview.today))
    pick(window, "stage", "walking")
    pick(window, "entry", "stairs")
    assert window.preview.card.title.text() == "Up and down the stairs"
    Hands(window).press(Key.Key_Escape)
    assert window.stack.currentWidget() is window.editing
    assert window.editing.outline.chosen == ("stage", 2)


def test_with_a_fault_it_goes_to_the_fault(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    enter(window, ("rest_s",), "long")
    Hands(window).press(Key.Key_F5)
    assert window.stack.currentWidget() is window.editing
    focused = window.focusWidget()
    assert focused is not None and "must be a number" in focused.accessibleDescription()


def test_the_drawing_is_held_still_by_its_key(open_editor: OpenEditor, file: Path) -> None:
    window = open_editor(file)
    window.appearance.set_motion("moving")
    choose(window, ("entry", 0))
    window.show_preview()
    settle()
    assert window.preview.movement.picture.moves
    Hands(window).press(Key.Key_S)
    assert not window.preview.movement.picture.moves
