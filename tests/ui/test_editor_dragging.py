"""Moving entries and stages of the plan editor with the mouse: a real drag, undone, never lost."""

from __future__ import annotations

import copy
import json
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt, QTimer
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView

from tests.ui.editing import CTRL, Hands, OpenEditor, data_in, items, line_of, settle
from tracker.plan import arranging
from tracker.plan.draft import Data, empty_data
from ui.editor.dropping import dropped
from ui.editor.outline import Line
from ui.editor.rows import PLAN, SAFETY, SYMPTOMS, Item
from ui.editor.window import EditorWindow


def made_of(*stages: tuple[str, ...], loose: tuple[str, ...] = ()) -> Data:
    """A plan with entries of these names in stages of these."""
    data = copy.deepcopy(empty_data())
    for k, names in enumerate(stages):
        data["stages"].append({"stage_id": f"stage-{k}", "name": f"Stage {k}"})
        data["entries"] += [
            {"entry_id": n, "exercise": "nods-together", "stage": f"stage-{k}", "repetitions": 9}
            for n in names
        ]
    data["entries"] += [
        {"entry_id": n, "exercise": "nods-together", "repetitions": 9} for n in loose
    ]
    return data


def shape(data: Data) -> list[tuple[str | None, list[str]]]:
    """Stages with their entries as they are practised."""
    ids = [s["stage_id"] for s in data["stages"]]
    found: dict[str | None, list[str]] = {i: [] for i in ids}
    for s, k in arranging.entries_in_order(data):
        found.setdefault(None if s is None else ids[s], []).append(data["entries"][k]["entry_id"])
    return list(found.items())


def lines_of(data: Data) -> list[Line]:
    shown: list[Item] = [PLAN, SAFETY, SYMPTOMS]
    order = arranging.entries_in_order(data)
    for s in range(len(data["stages"])):
        shown += [("stage", s), *(("entry", k) for own, k in order if own == s)]
    shown += [("entry", k) for own, k in order if own is None]
    return [Line(i, "") for i in shown]


def put(data: Data, name: str, gap: int) -> list[tuple[str | None, list[str]]] | None:
    """The plan's shape with an entry dropped before a line; None if it is refused."""
    k = next(n for n, e in enumerate(data["entries"]) if e["entry_id"] == name)
    before = json.dumps(data)
    made = dropped(data, lines_of(data), ("entry", k), gap)
    assert json.dumps(data) == before
    if made is None:
        return None
    data, (kind, at) = made
    assert kind == "entry" and data["entries"][at]["entry_id"] == name
    return shape(data)


#: Lines: 0 to 2 the plan's pages, 3 stage, 4 a, 5 b, 6 stage, 7 c, 8 stage (empty).
THREE = made_of(("a", "b"), ("c",), ())


@pytest.mark.parametrize(
    ("name", "gap", "becomes"),
    [
        ("a", 6, [["b", "a"], ["c"], []]),
        ("b", 4, [["b", "a"], ["c"], []]),
        ("a", 7, [["b"], ["a", "c"], []]),
        ("a", 8, [["b"], ["c", "a"], []]),
        ("a", 9, [["b"], ["c"], ["a"]]),
        ("c", 3, [["c", "a", "b"], [], []]),
        ("c", 5, [["a", "c", "b"], [], []]),
        ("c", 6, [["a", "b", "c"], [], []]),
        ("b", 7, [["a"], ["b", "c"], []]),
        # Where it stands already.
        ("a", 4, None),
        ("a", 5, None),
        ("c", 7, None),
        ("c", 8, None),
    ],
)
def test_an_entry_goes_where_it_is_dropped(
    name: str, gap: int, becomes: list[list[str]] | None
) -> None:
    found = put(THREE, name, gap)
    assert found is not None
    assert [names for _, names in found] == (becomes or [["a", "b"], ["c"], []])
    if becomes is None:
        k = next(n for n, e in enumerate(THREE["entries"]) if e["entry_id"] == name)
        made = dropped(THREE, lines_of(THREE), ("entry", k), gap)
        assert made is not None and made[0] is THREE


@pytest.mark.parametrize("gap", [0, 1, 2])
def test_nothing_goes_among_the_plans_own_pages(gap: int) -> None:
    assert put(THREE, "a", gap) is None
    assert dropped(THREE, lines_of(THREE), ("stage", 1), gap) is None


@pytest.mark.parametrize("gap", range(3, 10))
@pytest.mark.parametrize("item", [PLAN, SAFETY, SYMPTOMS])
def test_the_plans_own_pages_go_nowhere(item: Item, gap: int) -> None:
    assert dropped(THREE, lines_of(THREE), item, gap) is None


@pytest.mark.parametrize(
    ("stage", "gap", "becomes"),
    [
        (0, 7, ["stage-1", "stage-0", "stage-2"]),
        (0, 9, ["stage-1", "stage-2", "stage-0"]),
        (2, 3, ["stage-2", "stage-0", "stage-1"]),
        # In the midst of a stage is behind it.
        (2, 5, ["stage-0", "stage-2", "stage-1"]),
        (1, 6, ["stage-0", "stage-1", "stage-2"]),
        (1, 8, ["stage-0", "stage-1", "stage-2"]),
    ],
)
def test_a_stage_takes_its_entries_along(stage: int, gap: int, becomes: list[str]) -> None:
    made = dropped(THREE, lines_of(THREE), ("stage", stage), gap)
    assert made is not None
    data, (_, at) = made
    assert [name for name, _ in shape(data)] == becomes
    assert data["stages"][at]["stage_id"] == f"stage-{stage}"
    assert dict(shape(data)) == dict(shape(THREE))


def test_in_a_plan_without_stages_and_among_entries_that_have_lost_theirs() -> None:
    bare = made_of(loose=("a", "b", "c"))
    assert put(bare, "c", 3) == [(None, ["c", "a", "b"])]
    assert put(bare, "a", 6) == [(None, ["b", "c", "a"])]
    mixed = made_of(("a",), loose=("x", "y"))
    assert put(mixed, "y", 5) == [("stage-0", ["a", "y"]), (None, ["x"])]
    assert put(mixed, "y", 4) == [("stage-0", ["y", "a"]), (None, ["x"])]
    assert put(mixed, "x", 7) == [("stage-0", ["a"]), (None, ["y", "x"])]
    assert put(mixed, "a", 7) is None


@pytest.mark.parametrize("gap", range(10))
@pytest.mark.parametrize("name", ["a", "b", "c"])
def test_wherever_it_is_dropped_no_entry_is_lost_or_changed(name: str, gap: int) -> None:
    k = next(n for n, e in enumerate(THREE["entries"]) if e["entry_id"] == name)
    made = dropped(THREE, lines_of(THREE), ("entry", k), gap)
    data = THREE if made is None else made[0]

    def bare(plan: Data) -> list[Data]:
        found = ({f: v for f, v in e.items() if f != "stage"} for e in plan["entries"])
        return sorted(found, key=lambda e: str(e["entry_id"]))

    assert bare(data) == bare(THREE)
    assert {f: v for f, v in data.items() if f != "entries"} == {
        f: v for f, v in THREE.items() if f != "entries"
    }


# --- with the mouse ---


DRAGGING = QAbstractItemView.State.DraggingState


class Mouse:
    """Drags lines of the outline, as a hand does."""

    def __init__(self, window: EditorWindow) -> None:
        self.window, self.outline = window, window.editing.outline
        #: What was drawn while it was dragged, at the place to which it was.
        self.shown = False

    def line(self, item: Item) -> int:
        return items(self.window).index(item)

    def at(self, row: int, high: float) -> QPoint:
        """A place on a line, from 0 at its upper edge to 1 at its lower one."""
        box = self.outline.visualItemRect(self.outline.item(row))
        return QPoint(box.left() + 60, round(box.top() + high * (box.height() - 1)))

    def drag(self, item: Item, to: QPoint, *, escape: bool = False) -> None:
        """Press on a line, move, and let go at a place of the outline's viewport."""
        view = self.outline.viewport()
        handle = self.window.windowHandle()
        left = Qt.MouseButton.LeftButton

        def place(point: QPoint) -> QPoint:
            return view.mapTo(self.window, point)

        start = self.at(self.line(item), 0.5)
        QTest.mousePress(handle, left, pos=place(start))
        settle()
        assert self.outline.chosen == item

        def look() -> None:
            settle()
            self.shown = self.outline._gap is not None

        def end() -> None:
            if escape:
                QTest.keyClick(handle, Qt.Key.Key_Escape)
            QTest.mouseRelease(handle, left, pos=place(to))

        def move(part: float) -> Callable[[], None]:
            return lambda: QTest.mouseMove(handle, place(start + (to - start) * part))

        # The drag has a loop of its own, in which these come one after another.
        steps = [move(0.5), move(0.9), move(1.0), look, end]
        patience = 25

        def tick() -> None:
            nonlocal patience
            if len(steps) == 5 and patience and self.outline.state() != DRAGGING:
                patience -= 1  # what can't be dragged never begins
            else:
                steps.pop(0)()
            if steps:
                QTimer.singleShot(40, tick)

        QTimer.singleShot(0, tick)
        QTest.mouseMove(handle, place(start + QPoint(0, 30)))
        while steps:
            QTest.qWait(20)
        settle()


@pytest.fixture
def window(open_editor: OpenEditor, tmp_path: Path) -> EditorWindow:
    file = tmp_path / "plan.json"
    file.write_text(json.dumps(THREE), "utf-8")
    return open_editor(file)


def test_a_drag_moves_an_entry_and_undo_brings_it_back(window: EditorWindow) -> None:
    mouse, before = Mouse(window), data_in(window)
    mouse.drag(("entry", 0), mouse.at(mouse.line(("entry", 2)), 0.9))
    assert mouse.shown
    assert [n for _, n in shape(data_in(window))] == [["b"], ["c", "a"], []]
    assert window.editing.chosen_name == "a" and window.editing.outline._gap is None
    assert window.editing.outline.count() == len(items(window)) == 9
    hands = Hands(window)
    hands.press(Qt.Key.Key_Z, CTRL)
    assert data_in(window) == before and not window.document.stack.canUndo()
    hands.press(Qt.Key.Key_Y, CTRL)
    assert [n for _, n in shape(data_in(window))] == [["b"], ["c", "a"], []]


def test_a_drag_into_an_empty_stage_and_of_a_stage(window: EditorWindow) -> None:
    mouse = Mouse(window)
    mouse.drag(("entry", 2), mouse.at(mouse.line(("stage", 2)), 0.9))
    assert [n for _, n in shape(data_in(window))] == [["a", "b"], [], ["c"]]
    mouse.drag(("stage", 2), mouse.at(mouse.line(("stage", 0)), 0.1))
    assert [i for i, _ in shape(data_in(window))] == ["stage-2", "stage-0", "stage-1"]
    assert window.editing.chosen_name == "stage-2"


@pytest.mark.parametrize("how", ["refused", "escape", "outside", "own place"])
def test_a_drop_that_comes_to_nothing_changes_nothing(window: EditorWindow, how: str) -> None:
    mouse, before = Mouse(window), data_in(window)

    def texts() -> list[str]:
        outline = window.editing.outline
        return [outline.item(k).text() for k in range(outline.count())]

    told = texts()
    to = {
        "refused": mouse.at(1, 0.3),
        "escape": mouse.at(mouse.line(("entry", 2)), 0.9),
        "outside": QPoint(700, 60),
        "own place": mouse.at(mouse.line(("entry", 0)), 0.95),
    }[how]
    mouse.drag(("entry", 0), to, escape=how == "escape")
    assert data_in(window) is before and not window.document.stack.canUndo()
    assert window.editing.outline.count() == len(items(window)) == 9
    assert texts() == told
    assert mouse.shown == (how in ("escape", "own place"))


def test_what_is_being_typed_is_taken_over_first(window: EditorWindow) -> None:
    mouse = Mouse(window)
    window.editing.outline.choose(("entry", 0))
    settle()
    line_of(window, ("entries", 0, "repetitions")).setText("12")
    mouse.drag(("entry", 0), mouse.at(mouse.line(("entry", 1)), 0.9))
    assert [n for _, n in shape(data_in(window))] == [["b", "a"], ["c"], []]
    assert data_in(window)["entries"][1]["repetitions"] == 12


def test_a_page_of_the_plan_can_not_be_taken(window: EditorWindow) -> None:
    mouse, before = Mouse(window), data_in(window)
    mouse.drag(SAFETY, mouse.at(mouse.line(("entry", 2)), 0.9))
    assert data_in(window) is before and not mouse.shown


def test_what_comes_from_elsewhere_is_not_taken(window: EditorWindow) -> None:
    """From another window, another program: what it is can't be known."""
    outline, before = window.editing.outline, data_in(window)
    outline.choose(("entry", 0))
    settle()
    content = outline.model().mimeData([outline.model().index(4, 0)])
    event = QDropEvent(
        outline.visualItemRect(outline.item(7)).center(),
        Qt.DropAction.CopyAction,
        content,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    outline.dropEvent(event)
    settle()
    assert not event.isAccepted()
    assert data_in(window) is before and outline.count() == 9


@pytest.mark.parametrize(
    ("item", "gap", "name"), [(("entry", 0), 8, "a"), (("stage", 0), 9, "stage-0")]
)
def test_what_was_moved_stays_chosen_after_undo_and_redo(
    window: EditorWindow, item: Item, gap: int, name: str
) -> None:
    page = window.editing
    page.choose(item)
    page.drop(item, gap)
    after = data_in(window)
    for _ in range(2):
        assert page.chosen_name == name
        page.undo()
        assert data_in(window) is not after and page.chosen_name == name
        page.redo()
        assert data_in(window) is after
    page.undo()
    page.remove()
    names = {i for stage in shape(data_in(window)) for i in (stage[0], *stage[1])}
    assert name not in names and {"c", "stage-2"} <= names


def test_what_was_removed_is_chosen_when_it_is_back(window: EditorWindow) -> None:
    page = window.editing
    page.choose(("entry", 2))
    page.remove()
    page.undo()
    assert page.chosen_name == "c"
