"""The demo that walks by itself: it comes to an end, whatever fails."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui.fakes import FakeService, FakeWorld, clip_steps
from tracker.errors import RunError
from tracker.vision.messages import SourceChanged, SourceState
from ui import auto, cli, wiring
from ui.app import Window
from ui.ports import ClipPlan
from ui.session.flow import Director, Phase
from ui.settings import Settings

Run = Callable[[], int]


@pytest.fixture
def fake(tmp_path: Path) -> FakeWorld:
    return FakeWorld(tmp_path / "sessions")


@pytest.fixture
def run(
    qtbot: QtBot, fake: FakeWorld, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Run]:
    """``demo --auto`` as it is called, with the window in front of stand-ins."""
    plan = ClipPlan(Path("a.mp4"), clip_steps())

    def open_window(*, clip: ClipPlan) -> tuple[Any, Window]:
        settings = Settings(tmp_path / "window.ini")
        window = Window(fake.world(), clip=clip, demo_clip=lambda: plan, settings=settings)
        qtbot.addWidget(window)
        window.show()
        return QApplication.instance(), window

    monkeypatch.setattr("ui.opening.open_window", open_window)
    monkeypatch.setattr(wiring, "clip_plan", lambda _path: plan)
    monkeypatch.setattr(auto, "LOOK_S", 0.05)
    # The close of the last window posts a quit. The walk has ended by then, so the quit
    # would be met by a later test's loops, none of which runs again after it.
    QGuiApplication.setQuitOnLastWindowClosed(False)
    yield lambda: cli.main(["demo", "--auto"])
    QGuiApplication.setQuitOnLastWindowClosed(True)


def only_line(capsys: pytest.CaptureFixture[str]) -> str:
    out, err = capsys.readouterr()
    assert out == ""
    (line,) = err.splitlines()
    return line


@pytest.mark.parametrize("error", [ValueError("no such thing"), RunError("the disk is gone")])
def test_a_start_that_fails_is_tried_once_and_said_in_one_line(
    run: Run, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], error: Exception
) -> None:
    calls: list[int] = []

    def fail(_: Director) -> None:
        calls.append(1)
        raise error

    monkeypatch.setattr(Director, "start", fail)
    assert run() == 1
    assert str(error) in only_line(capsys)
    assert len(calls) == 1


def test_a_failure_in_the_middle_ends_it_too(
    run: Run, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    tick = Director.tick

    def fail(director: Director) -> None:
        if director.phase == Phase.setup:
            raise ValueError("lost the thread")
        tick(director)

    monkeypatch.setattr(Director, "tick", fail)
    assert run() == 1
    assert "lost the thread" in only_line(capsys)


def test_a_window_that_cannot_even_close_does_not_hold_it_up(
    run: Run, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail(*_: Any) -> None:
        raise ValueError("everything is broken")

    monkeypatch.setattr(Director, "start", fail)
    closing = Director.close
    monkeypatch.setattr(Director, "close", fail)
    assert run() == 1
    assert "everything is broken" in capsys.readouterr().err
    monkeypatch.setattr(Director, "close", closing)


def test_a_clip_that_cannot_be_played_is_said(
    run: Run, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def broken(service: FakeService) -> None:
        service.news.append(SourceChanged(SourceState.failed, "the model file is missing"))

    monkeypatch.setattr(FakeService, "start", broken)
    assert run() == 1
    assert "the model file is missing" in only_line(capsys)


def test_standing_still_has_an_end(
    run: Run, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(auto, "PATIENCE_S", 0.5)
    assert run() == 1  # the stand-in for the measuring never sends anything
    assert "stood still" in only_line(capsys)
