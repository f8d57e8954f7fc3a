"""Tab through every page: each control once, in reading order, and one sees where one is."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from tests.ui.desk_walk import spoil_one, walk_desk
from tests.ui.editing import OpenEditor
from tests.ui.fakes import FakeWorld, Make
from tests.ui.focusing import focus_faults
from tests.ui.test_desk import folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_every_page import WALKS, editor_pages, pages


@pytest.mark.slow
@pytest.mark.parametrize(
    ("which", "language"), [*((w, "en") for w in sorted(WALKS)), ("planned", "ar"), ("tools", "ar")]
)
def test_the_keys_go_through_every_page(
    make: Make, fake: FakeWorld, which: str, language: str
) -> None:
    """In Arabic one reads from the right."""
    window = make(language=language)
    faults: list[str] = []
    for name in pages(window, fake, which):
        faults += [f"{name}: {fault}" for fault in focus_faults(window)]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
def test_the_keys_go_through_the_editor(open_editor: OpenEditor) -> None:
    window = open_editor()
    faults: list[str] = []
    for name in editor_pages(window):
        faults += [f"{name}: {fault}" for fault in focus_faults(window)]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_the_keys_go_through_the_desk(
    open_desk: Any,  # noqa: F811
    folder: Path,  # noqa: F811
    qtbot: QtBot,
) -> None:
    spoil_one(folder)
    window = open_desk()
    faults: list[str] = []
    for name in walk_desk(window, qtbot):
        faults += [f"{name}: {fault}" for fault in focus_faults(window)]
    assert not faults, "\n".join(dict.fromkeys(faults))
