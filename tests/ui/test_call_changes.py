"""What a therapist in a call changes by keys: between sets, in that layout, nowhere else."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.records import made
from tests.ui.fakes import FakeWorld, Voice, seen
from tests.ui.patient import ENTER, EYES, TURNS, Person, plan_of, turned
from tests.ui.test_planned_pages import after_a_set, said
from tracker.plan.model import Entry
from tracker.practice.tasks import CountDown, DoSet, Prepare, Rest
from tracker.records.figures import record_of
from tracker.session.run import amplitude_asked
from tracker.session.summary_file import Summary
from ui import words
from ui.desk.moments import marks_of
from ui.desk.session_data import SessionView, SetView
from ui.keys import KEYS
from ui.session.call import MARK_SHOWN_S
from ui.session.flow import Phase
from ui.widgets.call_panel import ACTIONS

Begin = Callable[..., Person]
F2, F4, F5, F6 = (Qt.Key.Key_F2, Qt.Key.Key_F4, Qt.Key.Key_F5, Qt.Key.Key_F6)
F7, F8, F9, F10 = (Qt.Key.Key_F7, Qt.Key.Key_F8, Qt.Key.Key_F9, Qt.Key.Key_F10)
NODS = Entry(entry_id="nods", exercise="nods-on-target", repetitions=3)


def marks(person: Person, name: str) -> list[dict[str, Any]]:
    content = person.fake.recordings[-1].journal.content()
    return [m for m in content.of("mark") if m["name"] == name]


def ready(begin: Begin, *entries: Entry, **more: Any) -> Person:
    """Before "I am in place" of the first entry."""
    person = begin(plan_of(*entries, **more))
    person.begin_day(0)
    assert isinstance(person.director.task, Prepare)
    return person


def panel(person: Person) -> Any:
    return person.window.pages["task"].call  # type: ignore[attr-defined]


def confirm(person: Person) -> None:
    """The first change of a session: the therapist is there and asks for it."""
    assert person.director.call_question
    person.choose("Yes, my therapist asks for it")


def test_alone_no_key_changes_anything(begin: Begin) -> None:
    person = ready(begin, TURNS, EYES)
    before = person.director.task
    for key in (F5, F6, F7, F8, F9, F10):
        person.press(key)
    assert person.director.task is before and not marks(person, "changed")
    assert not panel(person).isVisible()
    # Nor by what a key calls.
    person.director.change_coming("tempo", 1)
    assert person.director.task is before and not marks(person, "changed")


def test_the_layout_alone_lets_nobody_change_the_dose(begin: Begin, fake: FakeWorld) -> None:
    fake.voice = voice = Voice()
    person = ready(begin, TURNS, EYES)
    person.press(F4)
    before = person.director.task
    for _ in range(2):
        person.press(F6)
        # Once more the key is no answer, and the safe answer has the keys.
        assert person.director.call_question and panel(person).no.hasFocus()
        assert person.director.task is before and not marks(person, "changed")
    assert panel(person).question.isVisible() and "therapist" in voice.texts[-1]
    assert not panel(person).buttons["faster"].isVisible()
    person.press(ENTER)
    assert not person.director.call_question and person.director.task is before
    person.press(F6, Qt.Key.Key_Tab, ENTER)
    assert [m["confirmed"] for m in marks(person, "changed")] == [True]
    # It was said: nothing more is asked in this session.
    person.press(F6)
    assert "70 beats" in panel(person).coming.text()
    assert len(marks(person, "changed")) == 2
    person.director.end_today()
    person.settle()
    summary = person.fake.recordings[-1].save().summary
    assert [c["confirmed"] for c in summary["changes"]] == [True, True]
    # The next session asks anew.
    assert not person.director._therapist_asks


def test_in_a_call_the_next_set_is_changed_by_keys_and_said(begin: Begin, fake: FakeWorld) -> None:
    fake.voice = voice = Voice()
    person = ready(begin, TURNS, EYES)
    person.press(F4)
    assert panel(person).isVisible() and "60 beats" in panel(person).coming.text()
    person.press(F6)
    confirm(person)
    assert "65 beats" in panel(person).coming.text()
    assert voice.texts[-1] == "Now 65 beats a minute."
    assert panel(person).note.text() == "Now 65 beats a minute."
    person.press(F5, F5)
    assert "55 beats" in panel(person).coming.text()
    person.press(F10)
    assert "60 beats" in panel(person).coming.text()
    assert voice.texts[-1].startswith("Taken back. Now 60 beats")
    person.press(F7)
    assert "13 to 18 degrees" in panel(person).coming.text()
    person.press(F8, F8)
    # No neck limit is set in this plan.
    assert "15 to 20 degrees" in panel(person).coming.text()
    assert "nothing larger" in panel(person).note.text()
    person.press(F9)
    assert "eyes" in panel(person).coming.text().lower()
    task = person.director.task
    assert isinstance(task, Prepare) and task.asked is not None
    assert task.asked.entry_id == "eyes"
    person.press(F10)
    assert [m["what"] for m in marks(person, "changed")] == [
        *["tempo"] * 4,
        *["amplitude"] * 2,
        *["next"] * 2,
    ]


def test_the_set_is_done_as_changed_and_the_summary_says_so(begin: Begin) -> None:
    person = ready(begin, TURNS, NODS)
    person.press(F4)
    person.press(F6)
    confirm(person)
    person.choose("I am in place")
    person.set_up()
    assert isinstance(person.director.task, CountDown)
    person.press(F6)  # too late: nothing changes under way
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet)
    assert person.fake.beats.sounding is not None and person.fake.beats.sounding[0] == 65.0
    assert not panel(person).isVisible()
    person.press(F5, F7, F9)
    turned(person, 8.0)
    after_a_set(person)
    assert isinstance(person.director.task, Rest)
    assert panel(person).isVisible() and "60 beats" in panel(person).coming.text()
    person.press(F10)
    assert panel(person).note.text() == "Nothing to take back."
    person.director.end_today()
    summary = person.fake.recordings[-1].save().summary
    (turns,) = summary["exercises"]
    assert turns["prescribed"]["tempo_bpm"] == 65.0
    assert turns["changed"] == {"tempo_bpm": [60.0, 65.0]}
    assert [(c["what"], c["after"]) for c in summary["changes"]] == [("tempo", 65.0)]


def test_the_buttons_do_what_the_keys_do(begin: Begin) -> None:
    person = ready(begin, TURNS, EYES)
    person.press(F4)
    person.choose("Faster (F6)")
    confirm(person)
    assert "65 beats" in panel(person).coming.text()
    person.choose("Take it back (F10)")
    assert "60 beats" in panel(person).coming.text()
    person.choose("Another one first (F9)")
    assert person.director.coming is not None and person.director.coming.entry_id == "eyes"
    assert set(panel(person).buttons) == set(ACTIONS)


def test_outside_a_call_it_is_said_that_a_moment_is_marked(begin: Begin) -> None:
    person = ready(begin, TURNS)
    header, page = person.window.header, person.window.pages["practice"]
    places = [w.geometry() for w in (header.mark, *header.buttons)]
    person.press(F2)
    assert header.note.isVisible() and header.note.text() == words.say("call.marked")
    around = header.note.geometry()
    assert not any(around.intersects(w.geometry()) for w in (header.mark, *header.buttons))
    assert [w.geometry() for w in (header.mark, *header.buttons)] == places
    person.wait(MARK_SHOWN_S + 0.5)
    assert not header.note.isVisible()
    person.choose("I am in place")
    person.set_up()
    person.measured(3.2, seen)
    turned(person, 2.0)
    field = page.field.geometry()  # type: ignore[attr-defined]
    person.press(F2)
    assert page.cue.text() == words.say("call.marked")  # type: ignore[attr-defined]
    assert page.field.geometry() == field  # type: ignore[attr-defined]
    assert not header.note.isVisible()


def test_a_moment_is_marked_in_a_set_and_between_two(begin: Begin) -> None:
    person = ready(begin, TURNS)
    person.press(F2)
    person.choose("I am in place")
    person.set_up()
    person.measured(3.2, seen)
    person.measured(1.0, seen)
    person.press(F4)
    person.press(Qt.Key.Key_Space)
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise
    person.press(F2)
    assert person.director.just_marked
    found = marks(person, "marked")
    assert [m.get("entry_id") for m in found] == ["turns", "turns"]
    person.director.end_today()
    summary = person.fake.recordings[-1].save().summary
    assert [m["time_s"] for m in summary["marks"]] == [round(m["time_s"], 3) for m in found]


def test_without_a_session_a_mark_is_nothing(make: Any) -> None:
    window = make()
    window.director.mark_moment()
    assert not window.director.just_marked


@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_of_the_panel_is_cut(begin: Begin, percent: int) -> None:
    person = ready(begin, TURNS, EYES)
    person.window.appearance.set_text(percent)
    person.press(F4)
    shown = panel(person)
    person.press(F6)
    person.settle()
    for button in (shown.no, shown.yes):
        assert button.width() >= button.minimumSizeHint().width()
    confirm(person)
    for _ in range(3):
        QApplication.processEvents()
    for button in shown.buttons.values():
        assert button.width() >= button.minimumSizeHint().width()
        inside = button.mapTo(person.window, button.rect().bottomRight())
        assert inside.x() <= person.window.width()
    assert "Next: " in said(person)


def test_the_keys_of_a_call_are_in_the_one_table() -> None:
    found = {k.sequence: k.action for k in KEYS if k.call_only}
    assert found == {
        "F5": "slower",
        "F6": "faster",
        "F7": "smaller",
        "F8": "larger",
        "F9": "other_next",
        "F10": "take_back",
    }


def test_the_day_at_a_glance_is_put_in_another_order(begin: Begin) -> None:
    person = begin(plan_of(TURNS, EYES))
    person.none_of_these()
    person.press("0", ENTER)
    person.press(F4)
    first = said(person)
    person.press(F9)
    confirm(person)
    assert said(person) != first
    person.choose("Begin")
    task = person.director.task
    assert isinstance(task, Prepare) and task.asked is not None
    assert task.asked.entry_id == "eyes"


def test_the_desk_lists_the_marks_of_a_set() -> None:
    summary = Summary.model_validate(
        made.finished().model_dump() | {"marks": [{"time_s": t} for t in (5.0, 11.0, 400.0)]}
    )
    times = [(4.0, 20.0), (30.0, 50.0), (401.0, 420.0)]
    sets = [SetView(k, summary.exercises[0], a, b, "", {}, []) for k, (a, b) in enumerate(times)]
    view = SessionView(summary, sets)
    # One from between two sets is with the one before it.
    assert [marks_of(view, s) for s in sets] == [[5.0, 11.0], [400.0], []]
    told = record_of(summary).find("marks")
    assert told is not None and told.value == "0:05; 0:11; 6:40"


def test_what_the_screen_does_not_carry_is_neither_shown_nor_said(
    begin: Begin, fake: FakeWorld
) -> None:
    fake.voice = voice = Voice()
    nods = Entry(entry_id="nods2", exercise="nods-x2", repetitions=3)
    person = ready(begin, nods, TURNS)
    person.press(F4)
    director = person.director
    wanted, shown = director.coming, director.coming_shown
    assert wanted is not None and shown is not None and shown.amplitude_deg is not None
    # This window has less room in the layout for a call than the plan asks for.
    assert wanted.amplitude_deg == (10.0, 15.0) and shown.amplitude_deg[1] < 14.0
    low, high = (words.number(v) for v in shown.amplitude_deg)
    assert f"{low} to {high} degrees" in panel(person).coming.text()
    person.press(F8)
    confirm(person)
    assert "no room" in voice.texts[-1] and not marks(person, "changed")
    person.press(F7)
    smaller = director.coming_shown
    if marks(person, "changed"):
        assert smaller is not None and smaller.amplitude_deg is not None
        assert smaller.amplitude_deg[1] < shown.amplitude_deg[1]
        low, high = (words.number(v) for v in smaller.amplitude_deg)
        assert f"{low} to {high} degrees" in voice.texts[-1]
    else:
        assert "nothing smaller" in voice.texts[-1]
    before = director.coming_shown
    assert before is not None
    # The set asks for what was shown before it.
    person.choose("I am in place")
    person.set_up()
    person.measured(3.2, seen)
    asked = director.asked
    assert asked is not None and isinstance(director.task, DoSet)
    reach = amplitude_asked(asked.step, before.exercise)
    assert reach == pytest.approx(before.amplitude_deg, abs=0.3)
