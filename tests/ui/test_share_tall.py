"""The layout for a call in a window that is higher than it is wide: nothing is cut or covered."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make
from tests.ui.legible import cut_texts
from tests.ui.pictures import keep
from tests.ui.test_every_page import walk_shared
from ui.widgets.share_board import ShareBoard

#: A monitor that was turned.
TALL = (1080, 1920)


@pytest.mark.parametrize("language", ["en", "de", "es", "ar"])
def test_nothing_is_cut_or_lies_over_another(make: Make, fake: FakeWorld, language: str) -> None:
    window = make(language="" if language == "en" else language)
    window.resize(*TALL)
    faults, boards = [], 0
    for name in walk_shared(window, fake):
        for _ in range(5):
            QApplication.processEvents()
        assert (window.width(), window.height()) == TALL
        if any(b.isVisible() for b in window.findChildren(ShareBoard)):
            faults += [f"{name}: {fault}" for fault in cut_texts(window)]
            boards += 1
        keep(window, f"tall/{language}/{name}")
    assert boards >= 3
    assert not faults
