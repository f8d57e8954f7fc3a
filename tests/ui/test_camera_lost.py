"""A camera that goes in the middle of a set: who relies on it is told, and the set pauses."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import NoReturn

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import SIZE, Beats, FakeWorld, Make, Voice, grey_picture, seen, turning
from tests.ui.patient import TURNS, Person, plan_of
from tracker.errors import RunError
from tracker.plan.model import Entry, Plan
from tracker.practice.tasks import AskAfterSet, CountDown, DoSet, Prepare
from tracker.sample import Sample
from tracker.vision.messages import SourceChanged, SourceState
from ui import words
from ui.app import SMALLEST
from ui.session.flow import TROUBLES, Phase
from ui.session.lost import LOST_S

Begin = Callable[..., Person]
GONE = sorted(TROUBLES | {SourceState.silent, SourceState.restarting})


def to_place(begin: Begin, **entry: object) -> Person:
    """Somebody who has gone through the set-up, with a set to come."""
    person = begin(plan_of(Entry(entry_id="a", **entry)))  # type: ignore[arg-type]
    person.begin_day(0)
    while person.director.phase != Phase.camera:
        person.choose("I am in place" if isinstance(person.director.task, Prepare) else "Yes")
    person.set_up()
    return person


def in_set(begin: Begin, **entry: object) -> Person:
    person = to_place(begin, **entry)
    person.measured(12.0 if entry.get("posture") == "standing" else 4.0, still)
    assert isinstance(person.director.task, DoSet)
    return person


def still(time_s: float) -> Sample:
    return turning(time_s, 1e9)


def standing(begin: Begin, **more: object) -> Person:
    return in_set(begin, **{"exercise": "stand", "posture": "standing", "seconds": 60} | more)


def lose(person: Person, state: SourceState, seconds: float = 0.0) -> None:
    """The camera goes, and stays away for so long."""
    person.fake.service.news.append(SourceChanged(state, "Webcam"))
    person.settle()
    if seconds:
        person.wait(seconds)


def back(person: Person) -> None:
    person.fake.service.news.append(SourceChanged(SourceState.running))
    person.settle()


def told_to_count(person: Person, voice: Voice, state: SourceState) -> None:
    """The person hears and reads that they count now, and has a button to say that it is done."""
    page = person.window.pages["practice"]
    (told,) = [t for t in voice.texts if words.say("lost.count") in t]
    assert words.say(f"trouble.{state}") in told
    assert page.remedy.isVisible() and page.done.isVisible()
    for key in ("lost.count", f"trouble.{state}.do"):
        assert words.say(key) in page.remedy.text()


@contextmanager
def nothing_measures(person: Person) -> Iterator[None]:
    """No measuring can be begun; afterwards it can."""

    def broken(source: object, profile: object) -> NoReturn:
        raise RunError("no memory")

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(person.fake, "_service", broken)
        person.director._world = person.fake.world()
        yield
    person.director._world = person.fake.world()


@pytest.mark.parametrize("state", GONE)
def test_a_standing_set_pauses_and_says_what_is_wrong_and_what_to_do(
    begin: Begin, fake: FakeWorld, state: SourceState
) -> None:
    fake.voice = voice = Voice()
    person = standing(begin)
    voice.spoken.clear()
    lose(person, state, LOST_S - 0.5)
    assert person.director.phase == Phase.exercise
    person.wait(1.0)
    assert person.director.phase == Phase.paused and isinstance(person.director.task, DoSet)
    # What is not measured may have been said before; nothing is said after it.
    said = voice.texts[-1]
    person.wait(5.0)
    assert voice.texts[-1] is said
    for key in ("lost.paused", "lost.hold", f"trouble.{state}", f"trouble.{state}.do"):
        assert words.say(key) in said
    # A stop without hands can't be seen now: it is not promised again.
    assert words.say("ask.place.to_stop") not in said
    page = person.window.pages["practice"]
    assert page.board.isVisible() and page.board.how.isVisible()
    assert words.say(f"trouble.{state}.do") in page.board.how.text()
    marks = person.fake.recordings[-1].journal.content().of("mark")
    assert [m["state"] for m in marks if m["name"] == "camera_lost"] == [state]


def test_a_taken_camera_says_how_to_stand_in_a_call(begin: Begin, fake: FakeWorld) -> None:
    fake.voice = voice = Voice()
    person = standing(begin)
    lose(person, SourceState.busy, 2.5)
    for part in ("video off", "helper", "second device"):
        assert part in voice.texts[-1]


def test_a_stutter_pauses_nothing(begin: Begin) -> None:
    person = standing(begin)
    for _ in range(3):
        lose(person, SourceState.silent, LOST_S - 0.5)
        back(person)
    assert person.director.phase == Phase.exercise


def test_one_trouble_after_another_is_one(begin: Begin) -> None:
    person = standing(begin)
    for state in (SourceState.silent, SourceState.hanging, SourceState.unplugged):
        lose(person, state, 0.75)
    assert person.director.phase == Phase.paused
    assert person.director.lost_keys[0] == "trouble.unplugged"


def test_it_goes_on_by_ones_own_key_once_the_camera_is_back(begin: Begin, fake: FakeWorld) -> None:
    fake.voice = voice = Voice()
    person = standing(begin)
    left_s = person.director.set_left_s
    lose(person, SourceState.unplugged, 3.0)
    # With no camera the key only says it once more.
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused
    assert [words.say("trouble.unplugged") in t for t in voice.texts[-2:]] == [True, True]
    back(person)
    assert voice.texts[-1] == words.say("lost.back")
    assert words.say("lost.back") in person.window.pages["practice"].board.how.text()
    person.measured(15.0, still)
    assert person.director.phase == Phase.paused
    person.press(Qt.Key.Key_Space)
    person.measured(10.5, still)
    assert person.director.phase == Phase.exercise
    assert left_s - 4.0 < person.director.set_left_s < left_s


def test_it_can_be_ended_while_the_camera_is_gone(begin: Begin) -> None:
    person = standing(begin)
    lose(person, SourceState.unplugged, 3.0)
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)


def test_one_that_failed_for_good_is_opened_anew_by_the_key(begin: Begin) -> None:
    person = standing(begin)
    services = len(person.fake.services)
    lose(person, SourceState.failed, 3.0)
    before_s = person.director.now_s
    person.press(Qt.Key.Key_Space)
    assert len(person.fake.services) == services + 1
    assert person.fake.service.profile == "the person"
    assert person.director.phase == Phase.paused
    assert person.director.now_s == pytest.approx(before_s, abs=0.1)
    # Nor is it opened twice while it is being opened.
    person.press(Qt.Key.Key_Space)
    assert len(person.fake.services) == services + 1
    back(person)
    person.press(Qt.Key.Key_Space)
    person.measured(10.5, still)
    assert person.director.phase == Phase.exercise


def test_no_standing_set_begins_without_its_camera(begin: Begin, fake: FakeWorld) -> None:
    fake.voice = voice = Voice()
    person = to_place(begin, exercise="stand", posture="standing", seconds=60)
    assert isinstance(person.director.task, CountDown)
    lose(person, SourceState.hanging, 12.0)
    assert person.director.phase == Phase.paused
    assert words.say("say.begin") not in voice.texts
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)


def test_nor_does_one_go_on_without_it_after_ones_own_pause(begin: Begin) -> None:
    person = standing(begin)
    person.press(Qt.Key.Key_Space)
    lose(person, SourceState.unplugged, 3.0)
    assert person.director.phase == Phase.paused and not person.director.paused_by_camera
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused and person.director.paused_by_camera


@pytest.mark.parametrize("posture", ["standing", "sitting"])
def test_with_the_eyes_shut_one_is_told_to_open_them(
    begin: Begin, fake: FakeWorld, posture: str
) -> None:
    fake.voice = voice = Voice()
    exercise = "stand" if posture == "standing" else "turns-on-target"
    dose = {"seconds": 60} if posture == "standing" else {"repetitions": 20, "seconds": None}
    person = standing(begin, eyes="closed", posture=posture, exercise=exercise, **dose)
    lose(person, SourceState.unplugged, 3.0)
    assert person.director.phase == Phase.paused
    assert voice.texts[-1].startswith(words.say("say.open_eyes"))


def test_without_a_voice_the_beats_stop_and_three_tell_it(begin: Begin, fake: FakeWorld) -> None:
    person = standing(begin, exercise="turns-on-target", seconds=60)
    assert isinstance(fake.beats, Beats)
    lose(person, SourceState.unplugged, 3.0)
    assert person.director.phase == Phase.paused
    assert fake.beats.sounding == (180.0, 0.99)


@pytest.mark.parametrize("size", [SIZE, SMALLEST])
@pytest.mark.parametrize("state", GONE)
def test_in_large_text_it_all_stands_on_the_page(
    begin: Begin, state: SourceState, size: tuple[int, int]
) -> None:
    def large(plan: Plan) -> Person:
        return begin(plan, percent=200)

    person = standing(large)
    person.window.resize(*size)
    person.settle()
    lose(person, state, 3.0)
    page = person.window.pages["practice"]
    large_one = not page.board.how.isHidden()
    shown = page.board.how if large_one else page.remedy
    assert shown.isVisible() and page.remedy.isVisible() != large_one
    for key in ("lost.hold", f"trouble.{state}.do"):
        assert words.say(key) in shown.text()
    # Nothing is cut off, and the ways out stand in the window.
    assert shown.height() >= shown.heightForWidth(shown.width())
    for button in (page.stop, page.unwell, page.pause):
        assert page.rect().contains(button.geometry())


def test_where_a_helper_reads_it_stands_large_and_nothing_sounds(
    begin: Begin, fake: FakeWorld
) -> None:
    fake.voice = voice = Voice()
    person = standing(begin)
    person.director._led_by = "reader"
    voice.spoken.clear()
    lose(person, SourceState.unplugged, 3.0)
    page = person.window.pages["practice"]
    assert person.director.phase == Phase.paused and not voice.texts
    assert fake.beats.sounding is None
    assert page.board.how.isVisible() and page.board.how.role == "title"
    for key in ("lost.hold", "trouble.unplugged", "trouble.unplugged.do"):
        assert words.say(key) in page.board.how.text()


@pytest.mark.parametrize("state", GONE)
def test_a_seated_set_goes_on_and_the_page_says_what_to_do(
    begin: Begin, state: SourceState
) -> None:
    # Long enough that the beat alone does not come to its end meanwhile.
    person = begin(plan_of(TURNS.model_copy(update={"repetitions": 12})))
    person.get_in_place(0)
    person.measured(4.0, still)
    page = person.window.pages["practice"]
    assert person.director.phase == Phase.exercise and not page.remedy.isVisible()
    lose(person, state, 6.0)
    assert person.director.phase == Phase.exercise
    if state in TROUBLES:
        assert page.cue.text() == words.say(f"trouble.{state}")
    assert page.remedy.isVisible()
    do, count = words.say(f"trouble.{state}.do"), words.say("lost.count")
    assert page.remedy.text() == f"{count} {do}"
    back(person)
    assert not page.remedy.isVisible()


# --- the picture of oneself ------------------------------------------------------------


def test_p_hides_the_picture_on_the_page_of_the_camera(make: Make, fake: FakeWorld) -> None:
    person = Person(make(), fake)
    person.director.start()
    fake.service.picture = grey_picture()
    person.measured(0.5, seen)
    page = person.window.pages["camera"]
    assert page.isVisible() and page.picture._image is not None
    verdict = page.verdict.text()
    person.press(Qt.Key.Key_P)
    assert page.picture._image is None and not fake.service.preview_on
    assert page.verdict.text() == verdict and page.next.isEnabled()
    person.press(Qt.Key.Key_P)
    assert page.picture._image is not None
