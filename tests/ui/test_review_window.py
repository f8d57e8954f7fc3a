"""``turnpost review`` opens the desk on its folder."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.records.clinic import TODAY
from tests.records.test_folder import write
from ui.cli import main
from ui.desk import opening


def test_the_command_opens_the_window(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write(tmp_path / "clinic", "s1")
    seen: list[str] = []

    def look(self: QApplication) -> int:
        shown = [w for w in QApplication.topLevelWidgets() if w.isVisible()]
        (window,) = [w for w in shown if isinstance(w, opening.DeskWindow)]
        qtbot.addWidget(window)
        qtbot.waitUntil(lambda: window.found is not None, timeout=30_000)
        seen.append(f"{window.people.current.name}, {window.person_page.person.adherence.to_day}")
        window.close()
        return 0

    monkeypatch.setattr(QApplication, "exec", look)
    call = ["review", str(tmp_path / "clinic"), "--today", TODAY.isoformat()]
    assert main(call) == 0
    assert seen == ["P-1, 2026-03-02"]
