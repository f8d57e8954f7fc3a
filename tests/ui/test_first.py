"""The first steps: by keys alone, each skipped, repeated and found again."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import PLAN, FakeWorld, Make, grey_picture, seen, turning
from tests.ui.patient import ENTER, TURNS, Person, plan_of
from tracker.handover.sending import offer_of
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.model import NeckLimit, Plan, SymptomRules
from tracker.plan.starter import TRY_ID
from tracker.practice.reported import write_reported
from tracker.practice.tasks import AskGate, DoSet, Prepare
from tracker.records.index import Records
from tracker.records.people import people_of
from tracker.records.rows import SessionRow, row_of
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import load_summary
from tracker.vision.messages import SourceChanged, SourceState
from ui import words
from ui.figures.places import PLACES
from ui.languages import LANGUAGES
from ui.pages import first as first_page
from ui.session.first import OVERVIEW, STEPS
from ui.session.first_try import try_plan
from ui.session.flow import Phase
from ui.widgets.basic import Words
from ui.wiring import make_planned

GO_ON = words.say("first.next")


def begin(make: Make, fake: FakeWorld, **more: Any) -> Person:
    person = Person(make(first=None, **more), fake)
    person.settle()
    return person


def shown(person: Person) -> str:
    return person.director.first_step


def walk(person: Person) -> Iterator[str]:
    """All steps, one after the other, by Tab and Enter."""
    fake = person.fake
    while shown(person):
        step = shown(person)
        if step == "camera":
            fake.service.picture = grey_picture()
            person.measured(0.5, seen)
        yield step
        if step == STEPS[-1]:
            return
        person.choose(GO_ON)


def test_the_first_start_begins_with_them_and_keys_lead_through(
    make: Make, fake: FakeWorld
) -> None:
    person = begin(make, fake)
    assert tuple(walk(person)) == STEPS
    assert not person.director.camera_on
    person.choose("Finish")
    assert person.director.phase == Phase.welcome
    again = make(first=None)
    assert again.director.phase == Phase.welcome


def test_the_main_button_has_the_keys_at_each_step(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    for step in STEPS[:-1]:
        assert shown(person) == step
        if step == "camera":
            person.measured(0.5, seen)
        person.press(ENTER)
    assert shown(person) == "try"


def test_a_start_goes_on_where_the_last_one_broke_off(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    for _ in range(2):
        person.press(ENTER)
    assert shown(person) == "stop"
    person.window.close()
    again = make(first=None)
    assert again.director.first_step == "stop"


def test_no_camera_goes_on_by_itself_at_the_start(make: Make, fake: FakeWorld) -> None:
    window = make(first="camera")
    assert window.director.first_step == "privacy" and not fake.services


@pytest.mark.parametrize("by", ["button", "escape"])
def test_the_rest_can_be_skipped_and_is_not_asked_again(
    make: Make, fake: FakeWorld, by: str
) -> None:
    person = begin(make, fake)
    if by == "button":
        person.choose("Skip the rest")
    else:
        person.press(Qt.Key.Key_Escape)
    assert person.director.phase == Phase.welcome
    assert make(first=None).director.phase == Phase.welcome


def test_every_step_is_found_again_under_camera_and_screen(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    person.press(Qt.Key.Key_Escape)
    for step in STEPS:
        person.director.open_tools()
        person.settle()
        person.choose("First steps")
        assert shown(person) == OVERVIEW
        person.choose(words.say(f"first.{step}"))
        assert shown(person) == step
        person.press(Qt.Key.Key_Escape)
        assert person.director.phase == Phase.welcome and not person.director.camera_on
    # Looking at them again does not make the next start ask again.
    assert person.window.settings.first_step == ""


def test_one_can_go_back_from_every_step(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    for one, other in zip(STEPS[1:], STEPS[:-1], strict=True):
        person.director.open_first(one)
        person.settle()
        page = person.window.stack.currentWidget()
        back = "One step back"
        button = next(
            b for b in page.findChildren(first_page.Button) if b.isVisible() and b.text() == back
        )
        button.click()
        person.settle()
        assert shown(person) == other
        person.director.leave_first()


def test_the_demo_has_no_first_steps(make: Make) -> None:
    window = make(PLAN, first=None)
    assert window.director.phase == Phase.welcome
    window.director.open_tools()
    window.refresh()
    assert not window.pages["tools"].first.isVisible()


# --- the steps ---


def test_text_colours_and_drawings_are_chosen_at_once(make: Make, fake: FakeWorld) -> None:
    window = make(first=None)
    looks = window.pages["first"].looks
    looks.size.more.click()
    assert window.settings.text_percent == 125
    looks.colours._group.button(1).click()
    assert window.settings.colours == "dark"
    looks.motion._group.button(1).click()
    assert window.settings.motion == "still" and window.pages["choose"].movement.picture.still
    # What is changed by key shows here too.
    window.appearance.set_text(100)
    window.refresh()
    assert looks.size.value == 100


def test_the_languages_are_offered_by_their_own_names(make: Make) -> None:
    window = make(first=None)
    looks, asked = window.pages["first"].looks, []
    window.other_language.connect(asked.append)
    assert [b.text() for b in looks.language._group.buttons()] == [n for _, n in LANGUAGES]
    assert looks.language.isVisible() and looks.language.row == 0
    assert not looks.unchecked.isVisible()
    looks.language._group.button(0).click()
    assert not asked
    looks.language._group.button(1).click()
    assert asked == ["de"]


def test_the_camera_step_gives_its_verdict_and_no_set_up(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    person.director.open_first("camera")
    page: Any = person.window.pages["camera"]
    person.measured(0.5, lambda t: seen(t, light=0.05))
    assert page.verdict.text() == words.say("verdict.dark")
    assert not page.next.isVisible() and page.on.isVisible() and page.glasses.isVisible()
    fake.service.news.append(SourceChanged(SourceState.busy))
    person.settle()
    assert page.retry.isVisible() and not page.demo.isVisible()
    person.choose(GO_ON)
    assert shown(person) == "sound" and fake.service.stopped


@pytest.mark.parametrize("step", ["sitting", "standing"])
def test_a_place_is_drawn_and_described(make: Make, fake: FakeWorld, step: str) -> None:
    person = begin(make, fake)
    person.director.open_first(step)
    person.settle()
    picture = person.window.pages["first"].place.picture
    assert picture.isVisible() and picture.movement == PLACES[step] and not picture.moves
    assert words.say(f"first.{step}") in picture.accessibleName()
    assert "laptop" in picture.accessibleDescription()


def test_the_try_asks_for_safety_first_and_lasts_half_a_minute(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    person.director.open_first("try")
    person.settle()
    person.choose("Try it now")
    assert isinstance(person.director.task, AskGate)
    person.none_of_these()
    person.press("0", ENTER)
    person.choose("Begin")
    assert isinstance(person.director.task, Prepare)
    person.choose("I am in place")
    person.set_up()
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet)
    start_s = fake.service.time_s
    person.measured(29.5, lambda t: turning(t, start_s, 10.0))
    assert isinstance(person.director.task, DoSet)
    person.measured(1.0, lambda t: turning(t, start_s, 10.0))
    assert not isinstance(person.director.task, DoSet)
    person.director.end_today()
    assert person.director.phase == Phase.summary
    said = person.window.pages["summary"].said.text()
    # Not that it counts, and in the same breath that it does not.
    assert said == f"{words.say('summary.try_stopped')} {words.say('summary.try')}"
    person.choose("Practise again")
    assert person.director.phase == Phase.welcome
    assert make(first=None).director.phase == Phase.welcome


def a_try(at_hand: Plan | None = None) -> Plan:
    plan = try_plan(at_hand)
    assert plan is not None
    return plan


def test_the_try_keeps_to_the_safety_part_of_the_plan_at_hand(make: Make, fake: FakeWorld) -> None:
    rules = SymptomRules(score_most=3, settle_minutes_most=2.0, also_ask=["nausea"])
    careful = plan_of(TURNS).model_copy(
        update={
            "emergency_number": "999",
            "symptom_rules": rules,
            "neck_limit_deg": NeckLimit(yaw=11, pitch=40),
        }
    )
    person = begin(make, fake)
    person.window.pages["welcome"].offer(careful)
    person.director.open_first("try")
    person.settle()
    person.choose("Try it now")
    plan = person.director.plan
    assert plan is not None and plan.plan_id == TRY_ID
    assert (plan.emergency_number, plan.symptom_rules) == ("999", rules)
    assert plan.neck_limit_deg == careful.neck_limit_deg
    assert plan.entries[0].amplitude_deg == (7, 11)
    assert parse_plan(format_plan(plan)) == plan


def test_there_is_no_try_where_the_neck_limit_leaves_no_room_for_it(
    make: Make, fake: FakeWorld
) -> None:
    person = begin(make, fake)
    person.director.open_first("try")
    person.settle()
    page = person.window.pages["first"]
    assert page.begin.isVisible()
    person.director.leave_first()
    narrow = plan_of(TURNS).model_copy(update={"neck_limit_deg": NeckLimit(yaw=8, pitch=40)})
    person.window.pages["welcome"].offer(narrow)
    person.director.open_first("try")
    person.settle()
    assert not page.begin.isVisible() and page.finish.hasFocus()
    assert [w.findChild(Words).text() for w in page._made] == [words.say("first.try.none")]
    person.director.begin_try()
    assert person.director.task is None and shown(person) == "try"


def test_the_try_is_gentler_than_the_exercise() -> None:
    (entry,) = a_try().entries
    assert entry.seconds == 30 and entry.tempo_bpm == 40
    assert entry.amplitude_deg is not None and max(entry.amplitude_deg) <= 15


def test_the_try_is_the_persons_and_no_practice(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    person.window.pages["welcome"].offer(plan_of(TURNS))
    person.director.open_first("try")
    person.settle()
    person.choose("Try it now")
    person.none_of_these()
    person.press("0", ENTER)
    person.director.end_today()
    summary = load_summary(person.director.saved.folder / SUMMARY_NAME)
    assert (summary.person, summary.plan_id) == ("Wren", TRY_ID)


def holding(row: SessionRow) -> Records:
    """A folder with one session."""
    return Records(Path(), [row], [], [], read=1, kept=0, complete=True)


@pytest.mark.parametrize("person", [None, "Wren"])
def test_a_try_is_no_bout_but_what_it_tells_of_danger_stays(
    person: str | None, private_data_folder: Path
) -> None:
    plan = a_try(plan_of(TURNS).model_copy(update={"person": person}))
    recording = make_planned(plan)
    write_reported(recording, plan.entries, week=1)
    recording.finish("finished")
    folder = recording.save().folder
    summary = load_summary(folder / SUMMARY_NAME)
    assert summary.exercises and "first_try" in {f.flag for f in summary.quality}
    row = row_of(summary, folder.name)
    assert not row.is_bout
    shown = people_of(holding(row), date(2026, 11, 26))
    assert len(shown) == (1 if person else 0)
    bad = row._replace(put_first=("headache",), ended="red_flag")
    assert people_of(holding(bad), date(2026, 11, 26))
    mine = plan_of(TURNS).model_copy(update={"person": person})
    assert not offer_of(mine, private_data_folder, foreign=True).all
    assert not offer_of(mine, private_data_folder).unsent


def test_text_size_by_key_holds_on_the_first_page(make: Make, fake: FakeWorld) -> None:
    person = begin(make, fake)
    person.press_keys(Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    assert person.window.settings.text_percent == 125
    QApplication.processEvents()
    assert person.window.pages["first"].looks.size.value == 125
