"""The pages of what is measured once: the camera's lens and the screen."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog
from pytestqt.qtbot import QtBot

from calibration.lens_watch import LensReport
from calibration.mark import MarkFound
from tests.ui.fakes import CAMERA, PLAN, FakeWorld, Make, answer_fit, feed, grey_picture, seen
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in, to_choose
from tracker.lens import DEFAULT_LENS, Lens
from tracker.sample import Sample
from tracker.vision.messages import FitFailed, Fitted, Measured, SourceChanged, SourceState
from ui import wiring, words
from ui.app import SMALLEST, Window
from ui.camera_file import keep_entry
from ui.editor.window import EditorWindow
from ui.languages import CODES
from ui.ports import CameraChoice
from ui.session.flow import Dose, Phase
from ui.settings import Settings
from ui.setup.lens_store import camera_key, keep_lens, keep_mark, load_lens, load_mark
from ui.setup.lens_work import Stage
from ui.widgets.basic import Words

MEASURED = Lens(44.0, "paper", 1.2, 640 / 480)


def to_lens(window: Window) -> None:
    window.director.open_tools()
    window.director.open_lens()
    assert window.director.phase == Phase.lens


def walk(window: Window, fake: FakeWorld) -> Iterator[str]:
    director = window.director
    director.open_tools()
    yield "tools"
    director.open_lens()
    yield "lens"
    page = window.pages["lens"]
    page.begin.click()
    fake.service.picture = grey_picture()
    fake.service.news.append(Measured(Sample(0.1, reason="sheet_same")))
    director.tick()
    why = "it was held too square to the camera; tilt it more, to several sides"
    fake.service.news.append(Fitted(LensReport(4, 6, None, why)))
    director.tick()
    yield "lens watching"
    fake.service.news.append(SourceChanged(SourceState.busy))
    director.tick()
    yield "lens trouble"
    page.end.click()
    page.kind._group.button(1).click()
    yield "lens card"
    page.kind._group.button(2).click()
    yield "lens stated"
    page.keep.click()
    yield "lens kept"
    director.stop()
    director.open_screen()
    yield "screen"
    window.pages["screen"].fits.click()
    yield "tools measured"
    director.open_screen()
    yield "screen measured"
    director.stop()
    director.stop()
    fake.service.picture = None
    to_choose(window, fake)
    yield "choose"
    director.open_mark()
    window.settings.mark = (150, 60, "right")
    yield "mark"
    director.begin_mark(1500.0, 50.0)
    yield "mark refused"
    director.begin_mark(1500.0, 600.0)
    hold(window, fake, 0.0)
    yield "mark turning"
    for yaw in (20.6, 0.0):
        hold(window, fake, yaw)
    yield "mark found"


@pytest.mark.parametrize("language", CODES)
def test_the_way_back_is_in_sight_in_the_smallest_window(make: Make, language: str) -> None:
    window = make(percent=200, language=language)
    window.director.open_tools()
    window.resize(*SMALLEST)
    for _ in range(3):
        window.refresh()
        QApplication.processEvents()
    keep(window, f"pages/tools-smallest-{language}")
    page = window.pages["tools"]
    assert (window.width(), window.height()) == SMALLEST and page.back.isVisible()
    assert not cut_in(window)
    # What is below comes into sight with the keys.
    page.edit.setFocus(Qt.FocusReason.TabFocusReason)
    page.scroll.ensureWidgetVisible(page.edit)
    QApplication.processEvents()
    assert not page.edit.visibleRegion().isEmpty()


def test_the_mark_says_whether_the_camera_is_on_where_it_is_narrow(make: Make) -> None:
    for language in CODES:
        window = make(percent=200, language=language)
        window.resize(*SMALLEST)
        drawn = []
        for key in ("camera_on", "camera_off", "clip_on"):
            window.header.mark.show_state(key)
            window.header.make_room()
            QApplication.processEvents()
            drawn.append(window.header.mark.drawn)
            assert not cut_in(window)
            assert window.header.mark.toolTip() == words.say(key)
        assert len(set(drawn)) == 3
        window.close()


def test_a_sheet_held_up_is_kept_and_the_camera_goes_off(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    page, director = window.pages["lens"], window.director
    page.begin.click()
    assert fake.watchers == [("paper", None)] and director.camera_on
    director.tick()
    assert fake.service.fit_steps == []
    fake.service.news.append(Measured(Sample(0.2, reason="sheet_same")))
    fake.service.news.append(Fitted(LensReport(3, 6, MEASURED)))
    director.tick()
    window.refresh()
    assert "tilt" in page.hint.text() and "3 of 6" in page.hint.text()
    assert not fake.lenses
    fake.service.news.append(Fitted(LensReport(6, 6, MEASURED)))
    director.tick()
    assert fake.lenses == {CAMERA.name: MEASURED}
    assert fake.service.stopped and not director.camera_on
    window.refresh()
    assert director.lens.stage == Stage.done
    assert "44" in page.known.text() and "sheet" in page.known.text()
    page.forget.click()
    assert fake.lenses == {CAMERA.name: DEFAULT_LENS}


def test_one_key_hides_the_picture_while_a_sheet_is_held_up(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    page = window.pages["lens"]
    page.begin.click()
    fake.service.picture = grey_picture()
    window.refresh()
    assert page.picture._image is not None
    QTest.keyClick(window, Qt.Key.Key_P)
    assert page.picture._image is None and not fake.service.preview_on
    assert window.director.lens.watching and not fake.service.stopped
    QTest.keyClick(window, Qt.Key.Key_P)
    assert page.picture._image is not None and fake.service.preview_on
    QTest.keyClick(window, Qt.Key.Key_P)
    page.end.click()
    page.begin.click()
    assert fake.service.preview_on and window.director.lens.picture_shown


def test_what_went_wrong_is_said(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    page = window.pages["lens"]
    page.begin.click()
    fake.service.news.append(FitFailed("the measuring process ended"))
    window.director.tick()
    window.refresh()
    assert "ended" in page.why.text()
    fake.service.news.append(SourceChanged(SourceState.busy))
    window.director.tick()
    window.refresh()
    assert page.hint.text() == words.say("trouble.busy")


def test_a_measured_distance_is_handed_on(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    page = window.pages["lens"]
    page.kind._group.button(1).click()
    page.distance.set_value(40)
    page.begin.click()
    assert fake.watchers == [("card", 400.0)]


def test_a_typed_diagonal(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    page = window.pages["lens"]
    page.kind._group.button(2).click()
    page.angle.set_value(78)
    page.keep.click()
    lens = fake.lenses[CAMERA.name]
    # tan(v / 2) = 9 / sqrt(337) tan(39 deg)
    assert lens.source == "stated" and lens.vertical_fov_deg == pytest.approx(43.3, abs=0.05)


def test_escape_goes_back_page_by_page_and_lets_the_camera_go(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    window.pages["lens"].begin.click()
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.director.phase == Phase.tools and fake.service.stopped
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.director.phase == Phase.welcome


def test_without_a_camera_it_says_so(make: Make, fake: FakeWorld) -> None:
    fake.cameras = []
    window = make()
    to_lens(window)
    window.refresh()
    assert window.pages["lens"].hint.text() == words.say("lens.no_camera")


def test_closing_the_window_ends_the_watching(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_lens(window)
    window.pages["lens"].begin.click()
    window.close()
    assert fake.service.stopped


def test_what_is_known_of_the_camera_is_said_before_anything_is_opened(
    make: Make, fake: FakeWorld
) -> None:
    fake.lenses[CAMERA.name] = MEASURED
    window = make()
    window.director.open_tools()
    window.refresh()
    assert "44" in window.pages["tools"].camera.text() and not fake.services


def test_what_becomes_of_pictures_and_results_stands_beside_the_way_to_them(make: Make) -> None:
    """The first page has no room for it where there is a plan; here it is said to everybody."""
    window = make()
    window.director.open_tools()
    window.refresh()
    page = window.pages["tools"]
    said = [w for w in page.findChildren(Words) if w.text() == words.say("privacy")]
    assert len(said) == 1 and said[0].isVisible() and page.stored.isVisible()
    beside = said[0].geometry().center().y() - page.stored.geometry().center().y()
    assert abs(beside) < page.stored.height()


def test_the_demo_has_no_camera_to_measure(make: Make) -> None:
    window = make(clip=PLAN)
    window.director.open_tools()
    window.refresh()
    assert not window.pages["tools"].lens.isVisible()


# --- the screen ---


def test_a_card_held_against_the_screen_sets_the_size_of_targets(make: Make) -> None:
    window = make()
    window.director.open_tools()
    window.director.open_screen()
    page = window.pages["screen"]
    assert window.focusWidget() is page.card
    before = page.card.outline()
    for _ in range(7):
        QTest.keyClick(page.card, Qt.Key.Key_Right)
    QTest.keyClick(page.card, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    page.larger.click()
    after = page.card.outline()
    assert after.topLeft() == before.topLeft()
    assert after.width() == round(before.width()) - 2
    assert after.width() / after.height() == pytest.approx(85.60 / 53.98)
    page.fits.click()
    assert window.director.phase == Phase.tools
    geometry = window.extent().screen
    assert geometry is not None and geometry.source == "card"
    assert geometry.px_per_mm == pytest.approx(after.width() / 85.60, abs=1e-4)
    assert window.fields.setup.px_per_mm == geometry.px_per_mm
    assert window.director._about_screen() == {
        "width_mm": round(geometry.width_px * 85.60 / after.width(), 1),
        "source": "card",
    }
    window.refresh()
    assert "card" in window.pages["tools"].screen_size.text()
    # Another window remembers it, and can forget it.
    again = make()
    assert again.extent().screen.source == "card"
    again.director.open_tools()
    again.director.open_screen()
    again.pages["screen"].forget.click()
    assert again.extent().screen.source != "card"


def test_the_drawn_card_has_the_size_that_is_kept(make: Make) -> None:
    window = make()
    window.director.open_tools()
    window.director.open_screen()
    card = window.pages["screen"].card
    for _ in range(12):
        QTest.keyClick(card, Qt.Key.Key_PageUp)
    QApplication.processEvents()
    picture = card.grab().toImage()
    ratio = picture.devicePixelRatio()
    middle = int((8 + 53.98 * card.px_per_mm / 2) * ratio)
    dark = [x for x in range(picture.width()) if picture.pixelColor(x, middle).lightness() < 120]
    box = card.outline()
    inside = [x for x in dark if box.left() - 3 < x / ratio < box.right() + 3]
    drawn = (inside[-1] + 1 - inside[0]) / ratio
    assert drawn == pytest.approx(card.px_per_mm * 85.60, abs=1.5)


@pytest.mark.parametrize("text", ["", "x", "-4", "0.5", "90", "nan"])
def test_a_measure_that_makes_no_sense_is_none(tmp_path: Path, text: str) -> None:
    path = tmp_path / "s.ini"
    path.write_text(f"[screens]\nabc={text}\n")
    assert Settings(path).screen_px_mm("abc") is None


# --- the mark on the wall ---


def nose(time_s: float, yaw_deg: float) -> Sample:
    """A head turned about a point 95 mm behind the eyes, read 4 % too large."""
    yaw = math.radians(yaw_deg)
    return seen(
        time_s,
        head_yaw_deg=1.04 * yaw_deg,
        head_x_mm=95 * math.sin(yaw),
        head_y_mm=0.0,
        head_z_mm=95 * (math.cos(yaw) - 1),
    )


def hold(window: Window, fake: FakeWorld, yaw_deg: float) -> None:
    until_s = fake.service.time_s + 1.3
    feed(fake.service, window.director, until_s, lambda t: nose(t, yaw_deg))


def test_the_mark_on_the_wall_goes_into_the_set_up(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_choose(window, fake)
    director, page = window.director, window.pages["mark"]
    assert director._found()["mark"]["reason"] == "not asked"
    director.open_mark()
    page.side._group.button(1).click()
    page.begin.click()
    assert director.mark is None and page.said.text() == words.say("mark.unset")
    page.distance.set_value(150)
    page.begin.click()
    assert director.mark is None, "nor one of two"
    window.refresh()
    assert page.said.text() == words.say("mark.unset")
    page.offset.set_value(60)
    window.refresh()
    assert not page.said.isVisible(), "both are given"
    page.begin.click()
    window.refresh()
    assert page.said.text() == words.say("mark.ahead") and not page.distance.isVisible()
    hold(window, fake, 0.0)
    window.refresh()
    assert page.said.text() == words.say("mark.mark") and fake.beats.started == 1
    turn = -math.degrees(math.atan(600 / (1500 + 95)))
    hold(window, fake, turn)
    hold(window, fake, 0.0)
    window.refresh()
    found = director._found()["mark"]
    assert found["expected_deg"] == pytest.approx(turn, abs=0.05)
    assert found["error_deg"] == pytest.approx(0.04 * turn, abs=0.05)
    assert (found["distance_mm"], found["offset_mm"]) == (1500, -600)
    assert "20.6" in page.said.text()
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert director.phase == Phase.choose
    director.start_exercise(Dose("turns-on-target", 12, 60.0))
    assert fake.recordings[-1].setup["mark"] == found


def checked_by_mark(make: Make, fake: FakeWorld) -> Window:
    """A window after a set-up and the check by a mark on the wall."""
    window = make()
    to_choose(window, fake)
    window.director.open_mark()
    window.director.begin_mark(1500.0, 600.0)
    for yaw in (0.0, 20.6, 0.0):
        hold(window, fake, yaw)
    return window


def test_another_set_up_forgets_the_mark(make: Make, fake: FakeWorld) -> None:
    director = checked_by_mark(make, fake).director
    assert director.mark_found is not None
    director.stop()
    director.begin_setup()
    director.tick()
    fake.service.time_s += 100.0
    director.tick()
    answer_fit(fake.service, director)
    assert director.mark_found is None and set(fake.marks.values()) == {None}


def test_the_mark_stays_with_the_kept_set_up(make: Make, fake: FakeWorld) -> None:
    director = checked_by_mark(make, fake).director
    before = director._found()["mark"]
    assert before["made_on"] == date.today().isoformat()
    director.stop()
    director.stop()
    director.start()
    feed(fake.service, director, fake.service.time_s + 0.5, seen)
    director.use_kept()
    director.tick()
    fake.service.time_s += 60.0
    director.tick()
    answer_fit(fake.service, director)
    assert director.phase == Phase.choose
    assert director._found()["mark"] == before


def test_a_mark_in_a_bad_place_and_a_head_that_never_rests_are_said(
    make: Make, fake: FakeWorld
) -> None:
    window = make()
    to_choose(window, fake)
    director, page = window.director, window.pages["mark"]
    director.open_mark()
    page.distance.set_value(150)
    page.offset.set_value(10)
    page.begin.click()
    assert "farther out" in page.said.text()
    page.offset.set_value(60)
    page.begin.click()
    until_s = fake.service.time_s + 61.0
    feed(fake.service, director, until_s, lambda t: nose(t, 8 * math.sin(5 * t)))
    window.refresh()
    assert page.said.text() == words.say("mark.gave_up") and page.begin.isVisible()
    assert director._found()["mark"]["error_deg"] is None


def test_the_lengths_of_last_time_are_offered_and_never_taken_unasked(
    make: Make, fake: FakeWorld
) -> None:
    window = make()
    window.settings.mark = (200, 75, "left")
    to_choose(window, fake)
    director, page = window.director, window.pages["mark"]
    director.open_mark()
    window.refresh()
    assert page.last.isVisible() and page.distance.chosen is None
    assert page.last.text() == "As last time: wall 200 cm, mark 75 cm. To my left"
    page.begin.click()
    assert director.mark is None
    page.last.click()
    assert director.mark is not None
    assert (director.mark._distance_mm, director.mark._offset_mm) == (2000.0, -750.0)
    window.refresh()
    assert not page.last.isVisible()


@pytest.mark.parametrize("kept", ["", "150", "150;60;up", "a;60;left", "0;60;left", "9999;60;left"])
def test_lengths_that_make_no_sense_are_not_offered(make: Make, kept: str) -> None:
    settings = make().settings
    settings._store.setValue("mark", kept)
    assert settings.mark is None
    settings.mark = (150, 60, "left")
    assert settings.mark == (150, 60, "left")


def test_after_a_session_the_check_opens_the_camera_again(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_choose(window, fake)
    director = window.director
    director.start_exercise(Dose("turns-on-target", 12, 60.0))
    director.stop()
    director.again()
    assert director.phase == Phase.choose
    director.open_mark()
    assert director.phase == Phase.mark and not fake.service.stopped
    assert fake.service.profile == "the person"


# --- where it is kept ---


def test_each_camera_keeps_its_lens_and_hands_it_to_the_measuring(
    private_data_folder: Path,
) -> None:
    one, other = CameraChoice(0, "One", "usb-1"), CameraChoice(1, "Other", "usb-2")
    assert wiring.lens_of_camera(one) == DEFAULT_LENS
    wiring.keep_lens_of(one, MEASURED)
    assert wiring.lens_of_camera(one) == MEASURED
    assert wiring.lens_of_camera(other) == DEFAULT_LENS
    text = (private_data_folder / "cameras.json").read_text()
    assert "One" not in text and "usb" not in text
    wiring.keep_lens_of(one, DEFAULT_LENS)
    assert wiring.lens_of_camera(one) == DEFAULT_LENS


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[]",
        "[" * 100_000,
        '{"format": "turnpost-cameras", "lenses": []}',
        '{"format": "turnpost-cameras", "lenses": {"KEY": {"source": "paper"}}}',
        '{"format": "turnpost-cameras", "lenses": {"KEY": {"vertical_fov_deg": 900, '
        '"source": "paper", "error_deg": 1, "aspect": 1}}}',
    ],
)
def test_a_damaged_file_reads_as_nothing_measured(private_data_folder: Path, text: str) -> None:
    key = camera_key("usb-1", "One")
    private_data_folder.mkdir()
    (private_data_folder / "cameras.json").write_text(text.replace("KEY", key))
    assert load_lens(key) == DEFAULT_LENS and load_mark(key) is None
    keep_lens(key, MEASURED)
    assert load_lens(key) == MEASURED


def test_a_mark_is_kept_for_what_is_worn_and_the_lens(private_data_folder: Path) -> None:
    one = CameraChoice(0, "One", "usb-1")
    found = MarkFound(20.9, 20.6, 0.8, 1500.0, 600.0, "2026-01-02")
    assert wiring.mark_of(one, "none") is None
    wiring.keep_mark_of(one, "none", None)
    assert not (private_data_folder / "cameras.json").exists()
    wiring.keep_mark_of(one, "none", found)
    assert wiring.mark_of(one, "none") == found
    assert wiring.mark_of(one, "none-left") is None
    wiring.keep_lens_of(one, MEASURED)
    assert wiring.mark_of(one, "none") is None
    wiring.keep_lens_of(one, DEFAULT_LENS)
    assert wiring.mark_of(one, "none") == found
    wiring.keep_mark_of(one, "none", None)
    assert wiring.mark_of(one, "none") is None


@pytest.mark.parametrize(
    "entry",
    [
        7,
        {},
        {"made_on": "x", "expected_deg": 3},
        {
            "made_on": "x",
            "expected_deg": float("nan"),
            "measured_deg": 3,
            "expected_error_deg": 1,
            "distance_mm": 1,
            "offset_mm": 1,
        },
    ],
)
def test_a_damaged_mark_is_none(entry: object) -> None:
    keep_entry("marks", "k", entry)
    assert load_mark("k") is None
    keep_mark("k", None)


def test_a_therapist_opens_the_desk_from_here(
    make: Make, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make()
    window.director.open_tools()
    chosen = iter(["", str(tmp_path)])
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: next(chosen))
    window.pages["tools"].review.click()
    assert window.beside.desk is None
    window.pages["tools"].review.click()
    assert window.beside.desk is not None
    qtbot.addWidget(window.beside.desk)
    assert window.beside.desk.isVisible() and window.isVisible()
    qtbot.waitUntil(lambda: not window.beside.desk.reading.busy, timeout=10_000)
    window.beside.desk.close()


def test_the_plan_editor_opens_beside_the_window_and_keeps_it_open_while_unsaved(
    make: Make,
) -> None:
    window = make()
    window.director.open_tools()
    window.pages["tools"].edit.click()
    editor = window.beside.editor
    assert isinstance(editor, EditorWindow) and editor.isVisible()
    window.pages["tools"].edit.click()
    assert window.beside.editor is editor
    editor.start.from_empty.click()
    editor.editing.add_entry("walk")
    assert not window.close() and window.isVisible() and editor.isVisible()
    editor.bar.buttons[1].click()
    assert not editor.isVisible()
    assert window.close()
