"""What broke off is offered calmly; what can't be saved is not lost; one copy at a time."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QFileDialog
from pytestqt.qtbot import QtBot

from tests.ui.fakes import EXTENT, FakeWorld, Make, clip_steps, feed, turning
from tests.ui.test_session_flow import through_setup
from tests.ui.test_window import cut_in, to_exercise
from tracker.errors import RunError
from tracker.session.lock import OnlyCopy
from tracker.session.recovery import Interrupted
from ui import words
from ui.already_open import AlreadyOpen
from ui.ports import ClipPlan
from ui.recovering import Stage
from ui.session.flow import Director, Dose, Phase
from ui.widgets.recovery_note import _when, note_text

ROOT = Path(__file__).parents[2]
A = Interrupted(Path("/data/sessions/a"), "2026-03-01T10:31:00+01:00", 14)
B = Interrupted(Path("/data/sessions/b"), "", 3)


@pytest.fixture
def live(fake: FakeWorld) -> Director:
    return Director(fake.world(), lambda: EXTENT)


# --- offered at the start ---


def test_what_broke_off_is_offered_and_saved(fake: FakeWorld, live: Director) -> None:
    fake.interrupted = [A, B]
    live.look_for_interrupted()
    live.tick()
    assert live.recovering.stage == Stage.offered and fake.recovered == []
    live.recovering.save()
    live.tick()
    assert live.recovering.stage == Stage.saved
    assert fake.recovered == [A, B]
    live.recovering.later()
    assert live.recovering.stage == Stage.nothing


def test_what_a_newer_version_left_is_said_and_never_saved_here(
    fake: FakeWorld, live: Director
) -> None:
    newer = Interrupted(Path("/data/sessions/n"), "", 0, newer=True)
    fake.interrupted = [newer]
    live.look_for_interrupted()
    live.tick()
    assert live.recovering.stage == Stage.newer
    assert note_text(live.recovering) == words.say("recover.newer")
    live.recovering.save()
    live.recovering.later()
    assert live.recovering.stage == Stage.nothing and not note_text(live.recovering)
    fake.interrupted = [A, newer]
    live.look_for_interrupted()
    live.tick()
    assert live.recovering.stage == Stage.offered
    said = note_text(live.recovering)
    assert words.say("recover.newer") in said and words.number(A.repetitions) in said
    live.recovering.save()
    live.tick()
    assert fake.recovered == [A]


def test_what_may_be_nobody_s_is_never_counted_silently(fake: FakeWorld, live: Director) -> None:
    damaged = Interrupted(Path("/data/sessions/d"), "", 5, damaged=True)
    unsure = Interrupted(Path("/data/sessions/u"), "", 9, damaged=True, unsure=True)
    fake.interrupted = [A, unsure]
    live.look_for_interrupted()
    live.tick()
    said = note_text(live.recovering)
    assert words.say("recover.unsure", n=1, count=9) in said
    assert said.startswith(words.say("recover.one", when=_when(A), count=14))
    live.recovering.found = [A, damaged, unsure]
    said = note_text(live.recovering)
    # It is not claimed that what is damaged is theirs.
    assert said.startswith(words.say("recover.one", when=_when(A), count=14))
    assert words.say("recover.damaged.one", when="d", count=5) in said
    live.recovering.found = [damaged, damaged]
    assert note_text(live.recovering) == words.say("recover.damaged", n=2, count=10)
    live.recovering.found = [unsure]
    assert note_text(live.recovering) == words.say("recover.unsure", n=1, count=9)
    # It is saved where that is wanted, as it is nobody else's either.
    live.recovering.save()
    live.tick()
    assert fake.recovered == [unsure]


def test_declined_is_neither_saved_nor_asked_twice(fake: FakeWorld, live: Director) -> None:
    fake.interrupted = [A]
    live.look_for_interrupted()
    live.tick()
    live.recovering.later()
    live.tick()
    live.recovering.save()
    assert live.recovering.stage == Stage.nothing and fake.recovered == []


def test_nothing_broke_off_nothing_is_said(fake: FakeWorld, live: Director) -> None:
    live.look_for_interrupted()
    live.tick()
    assert live.recovering.stage == Stage.nothing


def test_a_demo_offers_nothing(fake: FakeWorld) -> None:
    fake.interrupted = [A]
    demo = Director(fake.world(), lambda: EXTENT, ClipPlan(Path("a.mp4"), clip_steps()))
    demo.look_for_interrupted()
    demo.tick()
    assert demo.recovering.stage == Stage.nothing


def test_one_that_cannot_be_saved_keeps_no_other_from_it(fake: FakeWorld, live: Director) -> None:
    fake.interrupted, fake.cannot_save = [A, B], {A.folder}
    live.look_for_interrupted()
    live.tick()
    live.recovering.save()
    live.tick()
    assert live.recovering.stage == Stage.failed
    assert fake.recovered == [B] and "the disk is full" in live.recovering.why


@pytest.mark.parametrize("percent", [100, 200])
def test_the_note_fits_and_its_button_saves(make: Make, fake: FakeWorld, percent: int) -> None:
    fake.interrupted = [A]
    window = make(percent=percent)
    note = window.pages["welcome"].note  # type: ignore[attr-defined]
    assert note.isHidden()
    window.director.look_for_interrupted()
    for stage in (Stage.offered, Stage.saved):
        window.tick()
        window.refresh()
        QApplication.processEvents()
        assert window.director.recovering.stage == stage
        assert note.isVisible() and not cut_in(window)
        if stage == Stage.offered:
            assert "14" in note.text.text() and "26" in note.text.text()
            note.save.click()
    assert fake.recovered == [A]
    assert not note.save.isVisible()
    note.later.click()
    window.refresh()
    assert note.isHidden()


def test_each_stage_has_words(fake: FakeWorld, live: Director) -> None:
    recovering = live.recovering
    assert note_text(recovering) == ""
    recovering.found, recovering.folders, recovering.why = [B], [B.folder], "the disk is full"
    seen = set()
    for stage in (Stage.offered, Stage.saving, Stage.saved, Stage.failed):
        recovering.stage = stage
        seen.add(note_text(recovering))
    recovering.found, recovering.folders, recovering.stage = [A, B], [A.folder], Stage.offered
    assert "17" in note_text(recovering)
    assert len(seen) == 4


# --- a disk that takes nothing ---


def test_a_disk_that_takes_nothing_is_said_once(fake: FakeWorld, live: Director) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 30, 60.0))
    fake.recordings[-1].fault = "no space left on device"
    start_s = fake.service.time_s + 3.1
    feed(fake.service, live, start_s, lambda t: turning(t, 1e9))
    shown = []
    while fake.service.time_s < start_s + 40:
        feed(fake.service, live, fake.service.time_s + 1.0, lambda t: turning(t, start_s))
        fake.recordings[-1].fault = "" if 15 < fake.service.time_s - start_s < 20 else "full"
        shown.append(live.disk_note)
    assert live.phase == Phase.exercise, "the session goes on"
    assert 6 <= sum(shown) <= 9
    assert shown[: sum(shown)] == [True] * sum(shown), "once, not again"


def test_what_could_not_be_saved_can_be_saved_in_another_place(
    fake: FakeWorld, live: Director, tmp_path: Path
) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    fake.recordings[-1].fail = RunError("the disk is full")
    live.stop()
    assert live.unsaved and live.save_error == "the disk is full"
    live.again()
    assert live.phase == Phase.summary, "not before it is saved"
    live.save_again()
    assert live.unsaved and live.save_error
    live.save_again(tmp_path / "stick")
    assert not live.unsaved and live.saved is not None and not live.save_error
    assert live.saved.folder == tmp_path / "stick"
    live.again()
    assert live.phase == Phase.choose


def test_the_summary_page_asks_for_another_place(
    make: Make, fake: FakeWorld, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make(percent=200)
    start_s = to_exercise(window, fake)
    feed(fake.service, window.director, start_s + 5, lambda t: turning(t, start_s))
    fake.recordings[-1].fail = RunError("/data/sessions/x: can't be written (no space left)")
    window.director.stop()
    page = window.pages["summary"]
    window.refresh()
    QApplication.processEvents()
    assert page.place.isVisible() and page.retry.isVisible()  # type: ignore[attr-defined]
    assert not page.again.isVisible()  # type: ignore[attr-defined]
    assert not cut_in(window)
    chosen = ["", str(tmp_path / "stick")]
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: chosen.pop(0))
    page.place.click()  # type: ignore[attr-defined]
    assert window.director.unsaved, "the choice was called off"
    page.place.click()  # type: ignore[attr-defined]
    window.refresh()
    assert window.director.saved is not None
    assert page.again.isVisible() and not page.place.isVisible()  # type: ignore[attr-defined]


def test_the_note_about_the_disk_gives_way_to_cues(make: Make, fake: FakeWorld) -> None:
    window = make()
    start_s = to_exercise(window, fake)
    fake.recordings[-1].fault = "full"
    feed(fake.service, window.director, start_s + 3, lambda t: turning(t, start_s))
    window.refresh()
    cue = window.pages["practice"].cue  # type: ignore[attr-defined]
    assert "disk" in cue.text()
    feed(fake.service, window.director, start_s + 7, lambda t: turning(t, start_s, 40.0))
    window.refresh()
    assert window.director.cue and "disk" not in cue.text()


# --- a second copy ---


def test_the_note_of_a_second_copy_fits(qtbot: QtBot) -> None:
    note = AlreadyOpen()
    qtbot.addWidget(note)
    note.show()
    qtbot.waitExposed(note)
    assert note.leave.isVisible()
    assert note.page.scroll.verticalScrollBar().maximum() == 0, "all of it is in sight"
    note.leave.click()
    assert not note.isVisible()


def test_a_second_copy_opens_no_second_window(qtbot: QtBot, private_data_folder: Path) -> None:
    private_data_folder.mkdir()
    first = OnlyCopy(private_data_folder / "open.lock")
    code = (
        "import sys\n"
        "from PySide6.QtCore import QTimer\n"
        "from PySide6.QtWidgets import QApplication\n"
        "import ui.opening\n"
        "def shown():\n"
        "    print(*[type(w).__name__ for w in QApplication.topLevelWidgets() if w.isVisible()])\n"
        "    QApplication.closeAllWindows()\n"
        "app = ui.opening.make_app()\n"
        "QTimer.singleShot(700, shown)\n"
        "from ui.cli import main\n"
        "sys.exit(main([]))\n"
    )

    def run() -> tuple[int, str]:
        done = subprocess.run(
            [sys.executable, "-c", code],
            cwd=ROOT,
            env=os.environ | {"TURNPOST_DATA": str(private_data_folder)},
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )
        return done.returncode, done.stdout.strip()

    assert run() == (0, "AlreadyOpen")
    first.close()
    assert run() == (0, "Window")
