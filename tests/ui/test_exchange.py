"""The therapist's side: files in, plans out, and the clinic's key, in the desk."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QFileDialog, QLineEdit
from pytestqt.qtbot import QtBot

from tests.handover import reference
from tests.handover.made import PERSON, everything, pair, patient, plan_with
from tests.plan.examples import TEXT
from tests.ui.test_desk import look
from tracker.handover import crypt, keys
from tracker.handover.fingerprint import plan_words
from tracker.handover.preparing import with_keys
from tracker.handover.sending import hand_over
from tracker.plan.files import load_plan, parse_plan, save_plan
from ui import theme, words
from ui.desk.exchange_page import ExchangePage
from ui.desk.window import DeskWindow
from ui.ports import Job
from ui.settings import Settings

PASSPHRASE = "three plain words"
ENTER = Qt.Key.Key_Return

Open = Callable[..., DeskWindow]
Chosen = Callable[..., None]


@pytest.fixture(autouse=True)
def little_work(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keys that open at once."""
    monkeypatch.setattr(crypt, "lock", reference.lock_quickly)


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    (tmp_path / "clinic").mkdir()
    return tmp_path / "clinic"


@pytest.fixture
def desk(qtbot: QtBot, clinic: Path, tmp_path: Path) -> Iterator[Open]:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    made: list[DeskWindow] = []

    def build(percent: int = 100, size: tuple[int, int] = (1366, 768)) -> DeskWindow:
        theme.apply(app, "light")
        settings = Settings(tmp_path / "window.ini")
        settings.text_percent = percent
        window = DeskWindow(clinic, settings)
        window.resize(*size)
        qtbot.addWidget(window)
        made.append(window)
        with qtbot.waitActive(window):
            window.show()
            window.activateWindow()
        return window

    yield build
    for window in made:
        window.close()


@pytest.fixture
def chosen(monkeypatch: pytest.MonkeyPatch) -> Chosen:
    """What the dialogs for files give."""

    def answer(to_open: Path | str = "", to_save: Path | str = "") -> None:
        monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(to_open), ""))
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(to_save), ""))

    return answer


@pytest.fixture
def key(private_data_folder: Path) -> keys.ClinicKey:
    return keys.new_key(PASSPHRASE)


def made_file(at: Path, data: Path, *public: str, plain: bool = False) -> Path:
    """What a patient has handed over."""
    hand_over(plan_with(*public, plain=plain), patient(data), at, data=data)
    return at


def done(window: DeskWindow, qtbot: QtBot) -> ExchangePage:
    page = window.exchange
    qtbot.waitUntil(lambda: not page.work.busy, timeout=30_000)
    QApplication.processEvents()
    return page


def by_keys(window: DeskWindow, text: str) -> None:
    """Go to a button by Tab, and press it."""
    for _ in range(60):
        focus = QApplication.focusWidget()
        if isinstance(focus, QAbstractButton) and focus.text() == text:
            QTest.keyClick(focus, ENTER)
            return
        QTest.keyClick(focus or window, Qt.Key.Key_Tab)
    raise AssertionError(f"{text!r} can't be reached by Tab")


def type_in(text: str) -> None:
    field = QApplication.focusWidget()
    assert isinstance(field, QLineEdit)
    QTest.keyClicks(field, text)
    QTest.keyClick(field, ENTER)


def test_a_file_is_taken_in_by_keys_alone(
    desk: Open, qtbot: QtBot, chosen: Chosen, key: keys.ClinicKey, tmp_path: Path
) -> None:
    file = made_file(tmp_path / "in.age", tmp_path / "patient", key.public)
    chosen(to_open=file)
    window = desk()
    by_keys(window, words.say("exchange.open"))
    page = window.exchange
    assert window.stack.currentWidget() is page and QApplication.focusWidget() is page.into.take
    QTest.keyClick(page.into.take, ENTER)
    assert page.work.box.first.echoMode() == QLineEdit.EchoMode.Password
    type_in("not the passphrase")
    done(window, qtbot)
    assert "not the passphrase" in page.work.said.text() and page.work.box.isVisible()
    assert page.work.box.first.text() == ""
    type_in(PASSPHRASE)
    done(window, qtbot)
    assert page.work.said.text() == words.say("exchange.taken", person=PERSON, new=3, known=0)
    assert not page.work.box.isVisible()
    qtbot.waitUntil(lambda: window.people.people.rowCount() == 1, timeout=30_000)
    # The same once more: nothing new, and no second passphrase in this window.
    before = everything(window.reading.folder)
    by_keys(window, words.say("exchange.take"))
    done(window, qtbot)
    assert page.work.said.text() == words.say("exchange.taken", person=PERSON, new=0, known=3)
    assert everything(window.reading.folder) == before
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.stack.currentIndex() == 0


# There is no other way to make one.
@pytest.mark.filterwarnings("ignore:.*QDragEnterEvent.*is marked as deprecated")
def test_a_file_can_be_dropped(
    desk: Open, qtbot: QtBot, key: keys.ClinicKey, tmp_path: Path, clinic: Path
) -> None:
    file = made_file(tmp_path / "in.turnpost", tmp_path / "patient", plain=True)
    window = desk()
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(file))])
    where = (QPointF(50, 50), Qt.DropAction.CopyAction, data)
    keys_held = (Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    drag = QDragEnterEvent(where[0].toPoint(), where[1], data, *keys_held)
    drag.ignore()
    window.dragEnterEvent(drag)
    assert drag.isAccepted()
    window.dropEvent(QDropEvent(*where, *keys_held))
    page = done(window, qtbot)
    assert window.stack.currentWidget() is page
    assert words.say("exchange.was_plain") in page.work.said.text()
    assert len(list(clinic.rglob("summary.json"))) == 3
    data.setUrls([QUrl("https://host.invalid/x")])
    drag.ignore()
    window.dragEnterEvent(drag)
    assert not drag.isAccepted()


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "not a hand-over"),
        (b"age-encryption.org/v1\n-> X25519 a\n", "cut or was changed"),
        (None, "can't be read"),
    ],
)
def test_what_can_not_be_taken_in_is_said(
    desk: Open,
    qtbot: QtBot,
    key: keys.ClinicKey,
    tmp_path: Path,
    clinic: Path,
    content: bytes | None,
    said: str,
) -> None:
    if content is not None:
        (tmp_path / "in.age").write_bytes(content)
    window = desk()
    window.show_exchange()
    window.exchange.into.take_in(tmp_path / "in.age")
    if window.exchange.work.box.isVisible():
        type_in(PASSPHRASE)
    page = done(window, qtbot)
    assert said in page.work.said.text().replace("\u200b", "")
    assert not list(clinic.iterdir()) and page.into.take.isEnabled()


def test_another_clinics_file_asks_for_another_key(
    desk: Open, qtbot: QtBot, key: keys.ClinicKey, tmp_path: Path, clinic: Path
) -> None:
    file = made_file(tmp_path / "in.age", tmp_path / "patient", pair()[1])
    window = desk()
    window.show_exchange()
    window.exchange.into.take_in(file)
    type_in(PASSPHRASE)
    page = done(window, qtbot)
    assert "another clinic" in page.work.said.text() and page.work.box.isVisible()
    QTest.keyClick(page.work.box.cancel, ENTER)
    assert not page.work.box.isVisible() and not list(clinic.iterdir())


def test_without_a_key_a_locked_file_says_what_to_do(
    desk: Open, private_data_folder: Path, tmp_path: Path
) -> None:
    file = made_file(tmp_path / "in.age", tmp_path / "patient", pair()[1])
    window = desk()
    window.show_exchange()
    window.exchange.into.take_in(file)
    assert "bring in a backup" in window.exchange.work.said.text()
    assert not window.exchange.work.box.isVisible()


def test_a_key_is_made_copied_and_brought_in_by_keys(
    desk: Open, qtbot: QtBot, chosen: Chosen, private_data_folder: Path, tmp_path: Path
) -> None:
    window = desk()
    window.show_exchange()
    page = window.exchange
    assert not page.out.give.isVisible() and page.key.has.text() == words.say(
        "exchange.key.none", names=""
    )
    by_keys(window, words.say("exchange.key.make"))
    type_in(PASSPHRASE)
    type_in(PASSPHRASE + "x")
    assert page.work.box.why.text() == words.say("exchange.pass.differ")
    assert keys.clinic_keys() == []
    type_in(PASSPHRASE)
    done(window, qtbot)
    (key,) = keys.clinic_keys()
    assert key.name in page.key.has.text() and page.out.give.isVisible()
    assert QApplication.focusWidget() is page.key.copy
    chosen(to_save=tmp_path / "safe.age")
    QTest.keyClick(page.key.copy, ENTER)
    done(window, qtbot)
    assert (tmp_path / "safe.age").read_bytes() == key.path.read_bytes()
    shutil.rmtree(private_data_folder / "keys")
    window.show_exchange()
    assert not page.out.give.isVisible()
    chosen(to_open=tmp_path / "safe.age")
    by_keys(window, words.say("exchange.key.bring"))
    type_in("not the passphrase")
    done(window, qtbot)
    assert "not the passphrase" in page.work.said.text() and page.work.box.isVisible()
    type_in(PASSPHRASE)
    done(window, qtbot)
    assert keys.clinic_keys() == [key]


def test_a_short_passphrase_makes_no_key(
    desk: Open, qtbot: QtBot, private_data_folder: Path
) -> None:
    window = desk()
    window.show_exchange()
    by_keys(window, words.say("exchange.key.make"))
    type_in("short")
    type_in("short")
    page = done(window, qtbot)
    assert "10 letters" in page.work.said.text() and keys.clinic_keys() == []


def test_a_plan_is_handed_out_with_the_key_and_its_words(
    desk: Open, qtbot: QtBot, chosen: Chosen, key: keys.ClinicKey, tmp_path: Path
) -> None:
    (tmp_path / "plan.json").write_text(TEXT)
    chosen(to_open=tmp_path / "plan.json", to_save=tmp_path / "out.json")
    window = desk()
    window.show_exchange()
    by_keys(window, words.say("exchange.give"))
    page = done(window, qtbot)
    made = load_plan(tmp_path / "out.json")
    assert made.hand_over is not None and made.hand_over.keys == [key.public]
    told = [w.strip(" 12345678.") for w in page.work.plan_words.text().split("   ")]
    assert page.work.plan_words.isVisible() and told[0].endswith(plan_words(made)[0])
    assert tuple(told[1:]) == plan_words(made)[1:]
    assert f"{key.name} (this computer)" in page.work.said.text()
    # The keys stay with the button that was pressed.
    assert QApplication.focusWidget() is page.out.give
    assert (tmp_path / "plan.json").read_text() == TEXT
    page.out.hand_out(tmp_path / "none.json", tmp_path / "x.json")
    done(window, qtbot)
    assert "can't be read" in page.work.said.text() and not page.work.plan_words.isVisible()


def test_a_hand_out_replaces_its_own_older_copy_alone(
    desk: Open, qtbot: QtBot, key: keys.ClinicKey, tmp_path: Path
) -> None:
    mine = parse_plan(TEXT)
    plan, out = tmp_path / "plan.json", tmp_path / "out.json"
    save_plan(plan, mine)
    window = desk()
    window.show_exchange()
    page = window.exchange
    others = [mine.model_copy(update=u) for u in ({"plan_id": "other"}, {"person": "P-99"})]
    for other in others:
        save_plan(out, other)
        before = out.read_bytes()
        page.out.hand_out(plan, out)
        done(window, qtbot)
        assert "holds a plan" in page.work.said.text() and out.read_bytes() == before
    before = plan.read_bytes()
    page.out.hand_out(plan, plan)
    done(window, qtbot)
    assert "name another file" in page.work.said.text() and plan.read_bytes() == before
    save_plan(out, mine.model_copy(update={"rest_s": 99.0}))
    page.out.hand_out(plan, out)
    done(window, qtbot)
    made = load_plan(out)
    assert made.rest_s == mine.rest_s and made.hand_over is not None


def test_keys_are_left_out_of_a_plan(
    desk: Open, qtbot: QtBot, key: keys.ClinicKey, tmp_path: Path
) -> None:
    plan, out = tmp_path / "plan.json", tmp_path / "out.json"
    save_plan(plan, with_keys(parse_plan(TEXT), [pair()[1]]))
    window = desk()
    window.show_exchange()
    page = window.exchange
    assert page.out.keep.isVisible() and not page.out.own[key.public].isVisible()

    def handed_out() -> list[str]:
        page.out.hand_out(plan, out)
        done(window, qtbot)
        way = load_plan(out).hand_over
        assert way is not None
        return sorted(way.keys)

    assert handed_out() == sorted([key.public, pair()[1]])
    page.out.keep.click()
    assert handed_out() == [key.public]
    # The one here was stolen: a new one is made, the old one stays, to read with.
    new = keys.new_key(PASSPHRASE)
    window.show_exchange()
    assert look(window, "exchange-two-keys") == []
    QTest.keyClick(page.out.own[key.public], Qt.Key.Key_Space)
    assert handed_out() == [new.public]
    assert key.name not in page.work.said.text()
    page.out.own[new.public].click()
    out.unlink()
    page.out.hand_out(plan, out)
    done(window, qtbot)
    assert "no key would be left" in page.work.said.text() and not out.exists()


def test_the_folder_of_a_share_that_is_missing_is_not_made_anew(
    desk: Open, qtbot: QtBot, tmp_path: Path, clinic: Path
) -> None:
    file = made_file(tmp_path / "in.turnpost", tmp_path / "patient", plain=True)
    window = desk()
    window.show_exchange()
    clinic.rename(tmp_path / "unmounted")
    window.exchange.into.take_in(file)
    page = done(window, qtbot)
    assert "is not there" in page.work.said.text() and not clinic.exists()


def test_a_file_dropped_while_another_is_taken_in_is_told(
    desk: Open, qtbot: QtBot, tmp_path: Path
) -> None:
    file = made_file(tmp_path / "in.turnpost", tmp_path / "patient", plain=True)
    window = desk()
    window.show_exchange()
    page = window.exchange
    waiting: list[Job] = []

    def later(work: object) -> Job:
        waiting.append(Job(result=work()))  # type: ignore[operator]
        return waiting[-1]

    page.work._run = later
    page.into.take_in(file)
    page.into.take_in(file)
    waiting[0].done = True
    done(window, qtbot)
    assert len(waiting) == 1 and words.say("exchange.missed") in page.work.said.text()
    page.into.take_in(file)
    waiting[1].done = True
    done(window, qtbot)
    assert words.say("exchange.missed") not in page.work.said.text()


def test_the_words_of_a_plan_that_went_out_can_be_read_again(
    desk: Open, chosen: Chosen, private_data_folder: Path, tmp_path: Path
) -> None:
    (tmp_path / "plan.json").write_text(TEXT)
    chosen(to_open=tmp_path / "plan.json")
    window = desk()
    window.show_exchange()
    by_keys(window, words.say("exchange.tell"))
    page = window.exchange
    for word in plan_words(load_plan(tmp_path / "plan.json")):
        assert f". {word}" in page.work.plan_words.text()
    (tmp_path / "plan.json").write_text("{")
    by_keys(window, words.say("exchange.tell"))
    assert "Not done" in page.work.said.text() and not page.work.plan_words.isVisible()


def test_files_without_a_lock_are_asked_for_once_and_written_into_the_plan(
    desk: Open, qtbot: QtBot, chosen: Chosen, private_data_folder: Path, tmp_path: Path
) -> None:
    (tmp_path / "plan.json").write_text(TEXT)
    chosen(to_open=tmp_path / "plan.json", to_save=tmp_path / "out.json")
    window = desk()
    window.show_exchange()
    page = window.exchange
    by_keys(window, words.say("exchange.give_plain"))
    assert page.out.plain_ask.isVisible() and QApplication.focusWidget() is page.out.plain_no
    QTest.keyClick(page.out.plain_no, ENTER)
    assert not page.out.plain_ask.isVisible() and not (tmp_path / "out.json").exists()
    by_keys(window, words.say("exchange.give_plain"))
    by_keys(window, words.say("exchange.plain.yes"))
    done(window, qtbot)
    made = load_plan(tmp_path / "out.json")
    assert made.hand_over is not None and made.hand_over.plain
    # Not asked again, but it stands there; a key ends it.
    assert page.out.plain_on.isVisible()
    (tmp_path / "out.json").unlink()
    by_keys(window, words.say("exchange.give_plain"))
    done(window, qtbot)
    assert (tmp_path / "out.json").exists()
    page.work.box.leave()
    by_keys(window, words.say("exchange.key.make"))
    type_in(PASSPHRASE)
    type_in(PASSPHRASE)
    done(window, qtbot)
    assert not page.out.give_plain.isVisible() and not window.settings.plain_files


def test_leaving_forgets_what_was_typed(desk: Open, key: keys.ClinicKey, tmp_path: Path) -> None:
    file = made_file(tmp_path / "in.age", tmp_path / "patient", key.public)
    window = desk()
    window.show_exchange()
    window.exchange.into.take_in(file)
    QTest.keyClicks(window.exchange.work.box.first, "half a pass")
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.stack.currentIndex() == 0
    assert window.exchange.work.box.first.text() == "" and window.exchange.work.box.isHidden()


def test_closing_while_it_is_taken_in_ends_whole(
    desk: Open, qtbot: QtBot, key: keys.ClinicKey, tmp_path: Path, clinic: Path
) -> None:
    file = made_file(tmp_path / "in.turnpost", tmp_path / "patient", plain=True)
    window = desk()
    window.exchange.into.take_in(file)
    window.close()
    assert len(list(clinic.rglob("summary.json"))) == 3
    assert not [p for p in clinic.iterdir() if p.name.startswith(".")]


@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut(
    desk: Open, qtbot: QtBot, key: keys.ClinicKey, tmp_path: Path, percent: int
) -> None:
    (tmp_path / "plan.json").write_text(TEXT)
    file = made_file(tmp_path / "in.age", tmp_path / "patient", key.public)
    window = desk(percent)
    window.show_exchange()
    page = window.exchange
    faults = look(window, f"exchange-{percent}")
    page.into.take_in(file)
    faults += look(window, f"exchange-{percent}-passphrase")
    type_in(PASSPHRASE)
    done(window, qtbot)
    faults += look(window, f"exchange-{percent}-taken")
    page.out.hand_out(tmp_path / "plan.json", tmp_path / "out.json")
    done(window, qtbot)
    faults += look(window, f"exchange-{percent}-words")
    by_keys(window, words.say("exchange.key.make"))
    faults += look(window, f"exchange-{percent}-new-key")
    shutil.rmtree(key.path.parent)
    window.show_exchange()
    page.out.ask_plain(True)
    faults += look(window, f"exchange-{percent}-plain")
    controls = [*page.findChildren(QAbstractButton), *page.findChildren(QLineEdit)]
    for widget in controls:
        if widget.isVisible():
            assert widget.accessibleName() or widget.text(), widget
            assert widget.height() >= 44, widget.text()
    assert not faults
