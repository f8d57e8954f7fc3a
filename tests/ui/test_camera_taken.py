"""A camera that another program holds is said at once, with what to do."""

from __future__ import annotations

import time
from dataclasses import replace
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from tests.ui.fakes import CAMERA, FakeWorld, Make, feed, seen
from tests.ui.patient import Person
from tracker.vision import cameras
from tracker.vision.messages import SourceChanged, SourceState
from ui import wiring, words
from ui.ports import CameraChoice

pytestmark = pytest.mark.alone

BUSY = (SourceState.busy, "Webcam is in use by another program")


def test_it_is_said_within_two_seconds_while_the_measuring_still_loads(
    make: Make, fake: FakeWorld, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(cameras, "condition", lambda _source: BUSY)
    window = make()
    director = window.director
    # The real look on a real thread; the measuring says nothing at all.
    world = wiring.make_world()
    director._world = replace(director._world, look=world.look, run=world.run)
    window._timer.start(16)
    began_s = time.monotonic()
    director.start()
    qtbot.waitUntil(lambda: director.trouble is not None, timeout=2000)
    window.refresh()
    assert time.monotonic() - began_s < 2.0
    page: Any = window.pages["camera"]
    assert page.verdict.text() == words.say("trouble.busy")
    told = page.what_to_do.text()
    assert "video off" in told and "share this window" in told and "helper" in told
    assert page.what_to_do.isVisible() and page.retry.isVisible()
    window._timer.stop()
    director.stop()
    for job in director._stopping:
        job.wait(4.0)


def test_one_that_we_let_go_ourselves_just_now_is_not_called_taken(
    make: Make, fake: FakeWorld
) -> None:
    asked: list[CameraChoice] = []

    def look(camera: CameraChoice) -> tuple[SourceState, str] | None:
        asked.append(camera)
        return BUSY if len(asked) < 3 else None

    fake.look = look
    person = Person(make(), fake)
    person.director.start()
    for _ in range(8):
        person.time_s += 0.25
        person.settle()
    assert len(asked) == 3 and person.director.trouble is None


def test_what_the_measuring_sees_is_believed(make: Make, fake: FakeWorld) -> None:
    fake.look = lambda _camera: BUSY
    person = Person(make(), fake)
    person.director.start()
    feed(fake.service, person.director, 0.3, seen)
    person.time_s += 3.0
    person.settle()
    assert person.director.trouble is None and person.director._look is None


def test_a_look_that_ends_late_does_not_take_back_what_the_measuring_said(
    make: Make, fake: FakeWorld
) -> None:
    fake.look = lambda _camera: BUSY
    person = Person(make(), fake)
    person.director.start()
    # The camera is open, and no picture of it has been measured yet.
    fake.service.news.append(SourceChanged(SourceState.running))
    person.time_s += 3.0
    person.settle()
    assert person.director.trouble is None and person.director._look is None


def test_once_it_is_free_it_goes_on(make: Make, fake: FakeWorld) -> None:
    fake.look = lambda _camera: BUSY
    person = Person(make(), fake)
    person.director.start()
    person.time_s += 1.0
    person.settle()
    assert person.director.trouble is not None and not person.director.camera_on
    fake.service.news.append(SourceChanged(SourceState.running))
    person.settle()
    assert person.director.trouble is None and person.director.camera_on


def test_a_look_that_fails_says_nothing(make: Make, fake: FakeWorld) -> None:
    def look(_camera: CameraChoice) -> None:
        raise OSError("no")

    fake.look = look
    person = Person(make(), fake)
    person.director.start()
    person.settle()
    assert person.director.trouble is None and person.director._look is None


def test_the_look_knows_a_camera_by_its_number(monkeypatch: pytest.MonkeyPatch) -> None:
    sources = []
    monkeypatch.setattr(cameras, "condition", lambda source: sources.append(source))
    assert wiring.look_at_camera(CAMERA) is None
    assert sources[0].index == CAMERA.index and sources[0].name == CAMERA.name
