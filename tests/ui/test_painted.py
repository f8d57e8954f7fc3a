"""Every text and shape that the windows paint: whole, large enough, and to be told from its ground.

Looked at as painters are told it (:mod:`tests.ui.painted`), so that widgets that paint
themselves are no exception; and held against the window's picture.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from PySide6.QtWidgets import QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from tests.ui.desk_walk import spoil_one, walk_desk
from tests.ui.editing import OpenEditor
from tests.ui.fakes import FakeWorld, Make
from tests.ui.painted import cut_texts, faint_shapes, faint_texts, low_texts, small_texts
from tests.ui.test_desk import folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_every_page import (
    DESK_PX,
    SHAPES_LEAST,
    TEXT_PX,
    WALKS,
    WORDS_LEAST,
    editor_pages,
    pages,
)
from tests.ui.test_window import pixels
from ui.share import WORDS_SHARE


def faults_of(window: QWidget, least_px: int) -> list[str]:
    """Everything that is wrong with what a window paints now."""
    for line in window.findChildren(QLineEdit):
        # What is chosen in a field is painted twice, over itself.
        line.deselect()
    picture = pixels(window.grab().toImage())
    found = cut_texts(window) + small_texts(window, least_px)
    found += faint_texts(window, picture, WORDS_LEAST)
    return found + faint_shapes(window, picture, SHAPES_LEAST)


@pytest.mark.slow
@pytest.mark.parametrize("colours", ["light", "dark"])
@pytest.mark.parametrize("which", sorted(WALKS))
def test_all_that_is_painted_can_be_read(
    make: Make, fake: FakeWorld, which: str, colours: str
) -> None:
    window = make(colours=colours)
    faults: list[str] = []
    for name in pages(window, fake, which):
        found = faults_of(window, TEXT_PX)
        if window.director.sharing:
            found += low_texts(window, WORDS_SHARE)
        faults += [f"{name}: {fault}" for fault in found]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
@pytest.mark.parametrize("colours", ["light", "dark"])
def test_all_that_the_editor_paints_can_be_read(open_editor: OpenEditor, colours: str) -> None:
    window = open_editor(colours=colours)
    faults: list[str] = []
    for name in editor_pages(window):
        faults += [f"{name}: {fault}" for fault in faults_of(window, DESK_PX)]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
@pytest.mark.timeout(300)
@pytest.mark.parametrize("colours", ["light", "dark"])
def test_all_that_the_desk_paints_can_be_read(
    open_desk: Any,  # noqa: F811
    folder: Path,  # noqa: F811
    qtbot: QtBot,
    colours: str,
) -> None:
    spoil_one(folder)
    window = open_desk()
    window.appearance.set_colours(colours)
    faults: list[str] = []
    for name in walk_desk(window, qtbot):
        faults += [f"{name}: {fault}" for fault in faults_of(window, DESK_PX)]
    assert not faults, "\n".join(dict.fromkeys(faults))
