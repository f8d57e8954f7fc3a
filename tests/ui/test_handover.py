"""The patient's side: the words of a plan, and the file for the therapist."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog

from tests.handover.made import DAYS, PERSON, pair, patient, plan_with, session_id, write_session
from tests.ui.fakes import PLAN, FakeWorld, Make
from tests.ui.patient import ENTER, TURNS, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in
from tracker.handover import container, crypt
from tracker.handover.fingerprint import plan_words
from tracker.handover.sending import hand_over
from tracker.plan.files import load_plan, save_plan
from tracker.plan.model import HandOver, Plan
from ui import words
from ui.app import Window
from ui.plan_in_use import plan_in_use
from ui.ports import Job
from ui.session.flow import Phase


@pytest.fixture
def plan() -> Plan:
    return plan_with(pair(0)[1], pair(1)[1])


@pytest.fixture
def path(tmp_path: Path, plan: Plan) -> Path:
    save_plan(tmp_path / "plan.json", plan)
    return tmp_path / "plan.json"


def shown(window: Window) -> str:
    page = window.stack.currentWidget()
    return next(n for n, p in window.pages.items() if p is page)


def settle(window: Window) -> None:
    for _ in range(4):
        window.refresh()
        QApplication.processEvents()


def to_handover(window: Window, plan: Plan) -> None:
    window.pages["welcome"].offer(plan)
    window.handing_over.open()
    settle(window)
    assert shown(window) == "handover"


def walk(window: Window, fake: FakeWorld) -> Iterator[str]:
    """Every state of the two pages."""
    del fake
    data = Path(window.settings._store.fileName()).parent / "data-of-turnpost"
    saved = data.parent / "walk.json"
    window.handing_over.open()
    yield "handover without a plan"
    window.cover("")
    window.pages["welcome"].offer(plan_with())
    window.handing_over.open()
    yield "handover no clinic"
    window.cover("")
    for number, made in enumerate((plan_with(pair(0)[1]), plan_with(plain=True))):
        save_plan(saved, made)
        window.open_plan(saved)
        assert shown(window) == "same"
        yield f"words {number}"
        window.pages["same"].later.click()
        window.handing_over.open()
        yield f"handover nothing yet {number}"
        window.cover("")
        if not number:
            (write_session(data, "2026-11-24") / "summary.json").write_text("{")
            patient(data)
        window.handing_over.open()
        yield f"handover new {number}"
        page = window.pages["handover"]
        page.make_file(made, page.offer.new[:1], data.parent / f"file {number}.age")
        yield f"handover made {number}"
        page.make_file(made, page.offer.new, data.parent / f"file {number}.age")
        yield f"handover failed {number}"
        page.make_file(made, page.offer.new, data.parent / f"rest {number}.age")
        window.cover("")
        window.handing_over.open()
        yield f"handover no new {number}"
        window.switch_sharing()
        yield f"handover in a call {number}"
        window.switch_sharing()
        window.cover("")
        window.pages["welcome"].offer(made.model_copy(update={"plan_id": "plan-8"}))
        window.handing_over.open()
        yield f"handover other plans {number}"
        window.cover("")


@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut(
    make: Make, fake: FakeWorld, percent: int, private_data_folder: Path
) -> None:
    window = make(percent=percent)
    faults = []
    for k, name in enumerate(walk(window, fake)):
        settle(window)
        keep(window, f"pages/handover-{percent}-{k:02d}-{name}")
        faults += [f"{name}: {fault}" for fault in cut_in(window)]
    assert not faults


# --- the words ---


def test_the_words_of_a_new_plan_are_shown_and_remembered(
    make: Make, path: Path, plan: Plan, private_data_folder: Path
) -> None:
    window = make()
    window.open_plan(path)
    assert shown(window) == "same"
    page = window.pages["same"]
    told = [label.text().split(". ")[1] for label in page.labels]
    assert tuple(told) == plan_words(plan)
    # A stray key says nothing.
    assert QApplication.focusWidget() is page.later
    assert words.say("same.locked") == page.way.text()
    QTest.keyClick(page.yes, ENTER)
    assert shown(window) == "welcome" and window.pages["welcome"].plan == plan
    copy = plan_in_use()
    assert copy is not None and load_plan(copy) == plan
    window.open_plan(path)
    assert shown(window) == "welcome"
    # So is it at the next start, but not once the plan says something else.
    assert shown(make()) == "welcome"
    save_plan(path, plan.model_copy(update={"words": "Something else."}))
    again = make()
    assert shown(again) == "same" and again.handing_over.unchecked


def test_a_plan_whose_words_differ_is_put_away(
    make: Make, path: Path, private_data_folder: Path
) -> None:
    window = make()
    window.open_plan(path)
    person = Person(window, None)  # type: ignore[arg-type]
    person.choose(words.say("same.no"))
    settle(window)
    welcome = window.pages["welcome"]
    assert shown(window) == "welcome" and welcome.plan is None
    assert welcome.planned.text() == words.say("same.refused") and welcome.planned.isVisible()
    assert window.settings.plan is None and plan_in_use() is None
    # Opened once more it is asked once more.
    window.open_plan(path)
    assert shown(window) == "same"


def test_a_plan_refused_after_a_session_hands_nothing_over(
    make: Make, fake: FakeWorld, private_data_folder: Path, tmp_path: Path
) -> None:
    forged = plan_of(TURNS).model_copy(update={"hand_over": HandOver(keys=[pair(2)[1]])})
    save_plan(tmp_path / "forged.json", forged)
    patient(private_data_folder)
    window = make()
    window.open_plan(tmp_path / "forged.json")
    window.pages["same"].later.click()
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.begin_day()
    person.director.end_today()
    person.settle()
    person.choose(words.say("handover.open"))
    window.handing_over.open_words()
    person.choose(words.say("same.no"))
    settle(window)
    assert shown(window) == "summary" and person.director.plan is not None
    assert window.handing_over.plan is None
    assert not window.pages["summary"].hand_over.isVisible()
    window.handing_over.open()
    settle(window)
    page = window.pages["handover"]
    assert page.state.text() == words.say("handover.no_plan")
    assert not page.make.isVisible() and not page.make_all.isVisible()
    # Nor after a new start, where it is opened once more and not compared.
    again = make()
    again.open_plan(tmp_path / "forged.json")
    assert shown(again) == "same" and again.handing_over.plan is None
    again.pages["same"].later.click()
    assert again.handing_over.plan is None
    # Unless the therapist says that it was theirs after all.
    again.open_plan(tmp_path / "forged.json")
    again.pages["same"].yes.click()
    assert again.handing_over.plan == forged


def test_a_forged_plan_does_not_push_out_the_one_before(
    make: Make, path: Path, plan: Plan, private_data_folder: Path, tmp_path: Path
) -> None:
    window = make()
    window.open_plan(path)
    window.pages["same"].yes.click()
    forged = tmp_path / "forged.json"
    save_plan(forged, plan.model_copy(update={"hand_over": HandOver(keys=[pair(2)[1]])}))
    window.open_plan(forged)
    window.pages["same"].later.click()
    window.open_plan(forged)
    window.handing_over.open_words()
    window.pages["same"].no.click()
    copy = plan_in_use()
    assert copy is not None and load_plan(copy) == plan
    # It was compared already, and is offered at the next start.
    again = make()
    assert shown(again) == "welcome" and again.pages["welcome"].plan == plan
    assert not again.handing_over.unchecked


def test_a_refused_plan_does_not_come_back_as_the_one_before(
    make: Make, path: Path, private_data_folder: Path
) -> None:
    window = make()
    for _ in range(3):
        window.open_plan(path)
        window.pages["same"].later.click()
    window.open_plan(path)
    window.handing_over.open_words()
    window.pages["same"].no.click()
    assert plan_in_use() is None
    for _ in range(2):
        window.open_plan(path)
        window.pages["same"].later.click()
    window.open_plan(path)
    window.pages["same"].no.click()
    assert plan_in_use() is None and window.settings.plan is None


def test_it_is_reminded_of_before_a_file_with_all(
    make: Make, path: Path, plan: Plan, private_data_folder: Path, tmp_path: Path
) -> None:
    hand_over(plan, patient(private_data_folder), tmp_path / "before")
    window = make()
    window.open_plan(path)
    window.pages["same"].later.click()
    window.handing_over.open()
    settle(window)
    page = window.pages["handover"]
    assert page.make_all.isVisible() and words.say("handover.unchecked") in page.note.text()


def test_escape_compares_later_and_the_hand_over_reminds_of_it(
    make: Make, path: Path, private_data_folder: Path
) -> None:
    patient(private_data_folder)
    window = make()
    window.open_plan(path)
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert shown(window) == "welcome" and window.director.phase == Phase.welcome
    window.handing_over.open()
    settle(window)
    page = window.pages["handover"]
    assert words.say("handover.unchecked") in page.note.text()
    assert QApplication.focusWidget() is page.compare
    QTest.keyClick(page.compare, ENTER)
    assert shown(window) == "same"
    QTest.keyClick(window.pages["same"].yes, ENTER)
    settle(window)
    assert shown(window) == "handover"
    assert not page.compare.isVisible() and page.note.text() == ""


def test_a_plan_from_a_stick_that_is_gone_is_still_there(
    make: Make, path: Path, plan: Plan, private_data_folder: Path
) -> None:
    window = make()
    window.open_plan(path)
    window.pages["same"].yes.click()
    path.unlink()
    assert make().pages["welcome"].plan == plan


def test_the_starter_has_no_words_to_compare(make: Make, private_data_folder: Path) -> None:
    window = make()
    window.pages["welcome"].starter.click()
    assert shown(window) == "welcome"


# --- the file ---


def test_the_file_is_made_by_keys_alone(
    make: Make,
    plan: Plan,
    private_data_folder: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    patient(private_data_folder)
    asked: list[str] = []
    target = tmp_path / "out" / "for the clinic.age"
    target.parent.mkdir()

    def choose(_parent: object, _title: str, start: str, _kinds: str) -> tuple[str, str]:
        asked.append(start)
        return str(target), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    window = make()
    window.pages["welcome"].offer(plan)
    person = Person(window, None)  # type: ignore[arg-type]
    person.choose(words.say("tools.open"))
    person.choose(words.say("handover.open"))
    settle(window)
    page = window.pages["handover"]
    assert page.state.text() == words.say("handover.new", count=3)
    assert QApplication.focusWidget() is page.make
    person.press(ENTER)
    settle(window)
    assert "for the clinic.age" in page.state.text() and "3" in page.state.text()
    assert words.say("handover.send") in page.send.text()
    head, contents = container.unpack(crypt.decrypt(target.read_bytes(), [pair(1)[0]]))
    assert head.person == PERSON and {s for s, _ in contents} == {session_id(d) for d in DAYS}
    assert not any(part in Path(asked[0]).name for part in (PERSON, "2026", "plan"))
    # All went out; the button for all of them is what is left.
    assert not page.make.isVisible() and page.make_all.isVisible()
    target = target.with_name("again.age")
    person.choose(words.say("handover.make_all", count=3))
    settle(window)
    assert target.exists()
    person.press(Qt.Key.Key_Escape)
    assert shown(window) == "tools"


def test_what_goes_wrong_is_said_and_can_be_tried_again(
    make: Make, plan: Plan, private_data_folder: Path, tmp_path: Path
) -> None:
    patient(private_data_folder)
    window = make()
    to_handover(window, plan)
    page = window.pages["handover"]
    page.make_file(plan, page.offer.new, tmp_path / "no" / "folder")
    settle(window)
    assert "choose another place" in page.state.text() and page.make.isVisible()
    page.make_file(plan, page.offer.new, tmp_path / "file")
    settle(window)
    assert (tmp_path / "file").exists() and not page.make.isVisible()


def test_what_does_not_fit_goes_into_further_files_that_are_named(
    make: Make,
    plan: Plan,
    private_data_folder: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    hand_over(plan, patient(private_data_folder), tmp_path / "before")
    monkeypatch.setattr(container, "MAX_SESSIONS", 2)
    window = make()
    to_handover(window, plan)
    page = window.pages["handover"]
    page.make_file(plan, page.offer.all, tmp_path / "f.age")
    settle(window)
    assert "Sessions in it: 3" in page.state.text()
    # A long path may be broken after a hyphen, too.
    assert "f-2.age" in page.send.text().replace("\u200b", "") and (tmp_path / "f-2.age").exists()


def test_sessions_of_another_plan_stay_unless_they_are_meant(
    make: Make, plan: Plan, private_data_folder: Path, tmp_path: Path
) -> None:
    patient(private_data_folder)
    write_session(private_data_folder, "2026-11-25", person="P-08")
    window = make()
    to_handover(window, plan.model_copy(update={"plan_id": "plan-8"}))
    page = window.pages["handover"]
    assert "plan-7 (3)" in page.note.text() and page.offer.all == ()
    assert words.say("handover.unsent", count=1) in page.note.text()
    assert not page.make.isVisible() and not page.make_all.isVisible()
    page.foreign.click()
    settle(window)
    assert page.make.isVisible() and not page.foreign.isVisible() and len(page.offer.new) == 3
    assert "plan-7" not in page.note.text()
    # It is asked anew the next time.
    window.cover("")
    window.handing_over.open()
    settle(window)
    assert page.foreign.isVisible()


def test_a_choice_that_is_taken_back_makes_nothing(
    make: Make, plan: Plan, private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    patient(private_data_folder)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: ("", ""))
    window = make()
    to_handover(window, plan)
    before = set(private_data_folder.rglob("*"))
    window.pages["handover"].make.click()
    settle(window)
    assert set(private_data_folder.rglob("*")) == before


def test_a_clinic_without_keys_is_told_to_the_patient(
    make: Make, private_data_folder: Path
) -> None:
    patient(private_data_folder)
    window = make()
    to_handover(window, plan_with(plain=True))
    assert window.pages["handover"].way.text() == words.say("handover.plain")
    window.cover("")
    to_handover(window, plan_with())
    page = window.pages["handover"]
    assert page.state.text() == words.say("handover.no_way")
    assert not page.make.isVisible() and QApplication.focusWidget() is page.back


def test_in_a_call_no_file_is_named(make: Make, plan: Plan, private_data_folder: Path) -> None:
    patient(private_data_folder)
    window = make()
    window.switch_sharing()
    to_handover(window, plan)
    page = window.pages["handover"]
    assert not page.make.isVisible() and words.say("handover.in_call") in page.note.text()
    window.switch_sharing()
    settle(window)
    assert shown(window) == "handover" and page.make.isVisible()


def test_looking_takes_its_time_beside_the_window(
    make: Make, plan: Plan, private_data_folder: Path
) -> None:
    patient(private_data_folder)
    window = make()
    page = window.pages["handover"]
    waiting: list[tuple[Job, object]] = []

    def later(work: object) -> Job:
        waiting.append((Job(), work))
        return waiting[-1][0]

    page._run = later
    to_handover(window, plan)
    assert page.state.text() == words.say("handover.looking") and not page.make.isVisible()
    job, work = waiting.pop()
    job.result, job.done = work(), True  # type: ignore[operator]
    settle(window)
    assert page.make.isVisible()
    page.make_file(plan, page.offer.new, private_data_folder / "f.age")
    settle(window)
    assert page.state.text() == words.say("handover.making") and not page.make.isVisible()
    job, work = waiting.pop()
    job.result, job.done = work(), True  # type: ignore[operator]
    settle(window)
    assert "f.age" in page.state.text() and (private_data_folder / "f.age").exists()


def test_the_end_of_a_session_leads_to_it(
    make: Make, fake: FakeWorld, private_data_folder: Path
) -> None:
    base = plan_of(TURNS)
    window = make()
    window.pages["welcome"].offer(base.model_copy(update={"hand_over": HandOver(plain=True)}))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.begin_day()
    person.director.end_today()
    person.settle()
    assert shown(window) == "summary"
    person.choose(words.say("handover.open"))
    assert shown(window) == "handover"
    person.press(Qt.Key.Key_Escape)
    assert shown(window) == "summary" and person.director.saved is not None
    # A session without a plan is not the business of the plan on the first page.
    plan, person.director.plan = person.director.plan, None
    settle(window)
    assert window.handing_over.plan is not None
    assert not window.pages["summary"].hand_over.isVisible()
    person.director.plan = plan
    person.director.again()
    window.pages["welcome"].offer(base)
    person.settle()
    person.choose("Practise my plan")
    person.begin_day()
    person.director.end_today()
    person.settle()
    assert not window.pages["summary"].hand_over.isVisible()


def test_the_demo_has_nothing_to_hand_over(make: Make) -> None:
    window = make(clip=PLAN)
    window.director.open_tools()
    window.refresh()
    assert not window.pages["tools"].hand_over.isVisible()
