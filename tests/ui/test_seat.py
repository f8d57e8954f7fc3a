"""The distance that an exercise asks for, against the measured one and its own error."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from tests.ui.fakes import CAMERA, FakeWorld, answer_fit, seen
from tests.ui.patient import TURNS, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in
from tracker.lens import DEFAULT_LENS, Lens
from tracker.plan.model import Entry
from tracker.practice.tasks import DoSet
from tracker.sample import Sample
from tracker.scale import FACE_SHARE
from tracker.session.flags import SEAT_OFF, seat_flag
from tracker.session.projections import session_record
from tracker.session.summary import summarise
from tracker.vision.messages import Measured
from ui import words
from ui.session.flow import Phase
from ui.session.seat import (
    ALLOWED,
    HAND_MM,
    LEAST,
    RECENT_S,
    ROUGH,
    SeatWatch,
    seat_of,
    seat_words,
)

Begin = Callable[..., Person]
#: A lens that was measured with a sheet of paper.
KNOWN = Lens(50.0, "paper", 1.0)
FAR = Entry(entry_id="e", exercise="near-far", repetitions=3)


# --- without a window ---


def test_the_error_is_that_of_the_face_and_of_the_lens() -> None:
    """Dodgson 2004 for the face; the lens by hand: tan 26 / tan 20 = 1.340, / tan 32 = 0.781."""
    exact = seat_of(1000.0, Lens(50.0, "card", 0.0))
    assert (exact.low_mm, exact.high_mm) == (
        pytest.approx(1000.0 * (1 - FACE_SHARE)),
        pytest.approx(1000.0 * (1 + FACE_SHARE)),
    )
    assert pytest.approx(0.121, abs=0.001) == FACE_SHARE
    usual = seat_of(1000.0, DEFAULT_LENS)
    assert usual.high_mm == pytest.approx(1000.0 * (1 + (0.340**2 + 0.121**2) ** 0.5), abs=2)
    assert usual.low_mm == pytest.approx(1000.0 * (1 - (0.219**2 + 0.121**2) ** 0.5), abs=2)
    assert usual.rough and not seat_of(1000.0, KNOWN).rough and 0.12 < ROUGH < 0.34
    # A lens of which nobody says how well it is known is no better than the usual one.
    assert seat_of(1000.0, Lens(52.0, "stated", None)) == usual


@pytest.mark.parametrize("lens", [KNOWN, DEFAULT_LENS])
def test_nothing_is_said_where_the_error_does_not_allow_it(lens: Lens) -> None:
    share = seat_of(1.0, lens)
    near_mm = 1000.0 * (1 - ALLOWED) / share.high_mm
    far_mm = 1000.0 * (1 + ALLOWED) / share.low_mm
    for mm, verdict in ((0.99 * near_mm, "back"), (1.01 * near_mm, ""), (1000.0, "")):
        assert seat_of(mm, lens).verdict(1000.0) == verdict
    for mm, verdict in ((0.99 * far_mm, ""), (1.01 * far_mm, "closer")):
        assert seat_of(mm, lens).verdict(1000.0) == verdict


def test_the_usual_lens_tells_only_a_seat_that_is_far_off() -> None:
    # Two thirds of what is asked for: told with a lens that was measured, and not without.
    assert seat_of(680.0, KNOWN).verdict(1000.0) == "back"
    assert seat_of(680.0, DEFAULT_LENS).verdict(1000.0) == ""
    assert seat_of(450.0, DEFAULT_LENS).verdict(1000.0) == "back"


def test_the_words_name_the_way_the_distance_and_its_error(qapp: Any) -> None:
    exact = Lens(50.0, "card", 0.0)
    move, known = seat_words(seat_of(600.0, exact), 1000.0)
    assert move == "Too near for this exercise. Move back by about 40 cm."
    assert known == "You sit about 60 cm from the screen, give or take 7 cm."
    move, known = seat_words(seat_of(1100.0, exact), 750.0)
    assert "Come closer by about 40 cm" in move
    # Only for a short way "a hand": at 30 cm the whole error is 4 cm.
    near = seat_words(seat_of(300.0, exact), 300.0 + HAND_MM)[0]
    assert near.endswith("Move back by about the width of your hand.")
    move, known = seat_words(seat_of(700.0, DEFAULT_LENS), 750.0)
    assert not move and known.endswith("This is only a rough figure.")


def test_one_reading_is_none_and_old_ones_are_forgotten() -> None:
    watch = SeatWatch()
    for k in range(LEAST - 1):
        watch.see(0.03 * k, 800.0)
    assert watch.distance_mm is None
    watch.see(0.2, 2000.0)
    assert watch.distance_mm == 800.0
    watch.see(0.2 + RECENT_S + 0.1, None)
    assert watch.distance_mm is None


@pytest.mark.parametrize("found", [None, True, {}, {"asked_mm": 1000}, {"asked_mm": "far"}])
def test_an_answer_that_makes_no_sense_is_no_flag(found: Any) -> None:
    assert seat_flag(found) == []


# --- in the window ---


def sit(person: Person, away_mm: float, seconds: float = 1.5) -> None:
    """The face is seen so far away, as a measurer tells it that does not know the person yet."""
    service = person.fake.service
    until_s = service.time_s + seconds
    while service.time_s < until_s:
        service.time_s += 1 / 30
        service.news.append(Measured(seen(service.time_s), (0.0, 0.0), away_mm))
        person.director.tick()
    person.settle()


def before_camera(begin: Begin, *entries: Entry, percent: int = 100) -> Person:
    person = begin(plan_of(*entries), percent=percent)
    person.fake.lenses[CAMERA.name] = KNOWN
    person.begin_day(1)
    person.choose("I am in place")
    assert person.director.phase == Phase.camera
    return person


def page_of(person: Person) -> Any:
    return person.window.pages["camera"]


@pytest.mark.parametrize("percent", [100, 200])
def test_who_sits_too_near_is_told_once_and_may_go_on(begin: Begin, percent: int) -> None:
    person = before_camera(begin, FAR, percent=percent)
    page = page_of(person)
    sit(person, 600.0)
    assert page.verdict.text() == words.say("seat.back", cm="40")
    assert page.seat.isVisible() and "give or take" in page.seat.text()
    person.choose(words.say("camera.next"))
    # Refused: nothing begins, and what one can do stands there.
    assert person.director.phase == Phase.camera
    assert "go on as you sit" in page.seat.text()
    keep(person.window, f"seat-told-{percent}")
    assert not cut_in(person.window)
    person.choose("Go on as I sit")
    assert person.director.phase == Phase.setup


def test_who_moves_back_is_let_through_at_once(begin: Begin) -> None:
    person = before_camera(begin, FAR)
    page = page_of(person)
    sit(person, 600.0)
    person.choose(words.say("camera.next"))
    assert person.director.phase == Phase.camera
    sit(person, 980.0)
    assert page.verdict.text() == words.say("verdict.good")
    assert page.next.text() == words.say("camera.next")
    person.choose(words.say("camera.next"))
    assert person.director.phase == Phase.setup


def test_another_way_is_told_anew(begin: Begin) -> None:
    person = before_camera(begin, FAR)
    sit(person, 600.0)
    person.choose(words.say("camera.next"))
    sit(person, 1500.0)
    assert "Come closer" in page_of(person).verdict.text()
    person.choose(words.say("camera.next"))
    assert person.director.phase == Phase.camera


def test_with_the_usual_lens_the_same_seat_is_not_refused(begin: Begin) -> None:
    person = before_camera(begin, FAR)
    person.fake.lenses.clear()
    person.director._lens_now = None
    sit(person, 700.0)
    page = page_of(person)
    assert page.verdict.text() == words.say("verdict.good")
    assert words.say("seat.rough") in page.seat.text()
    person.choose(words.say("camera.next"))
    assert person.director.phase == Phase.setup


def test_the_seat_of_the_plan_is_that_of_other_exercises(begin: Begin) -> None:
    person = before_camera(begin, TURNS)
    asked = person.director.plan.seat_distance_mm
    sit(person, 0.98 * asked)
    assert page_of(person).verdict.text() == words.say("verdict.good")
    assert "give or take" in page_of(person).seat.text()


def test_outside_a_plan_no_distance_is_asked_for(make: Any, fake: FakeWorld) -> None:
    window = make()
    person = Person(window, fake)
    person.director.start()
    sit(person, 300.0)
    assert page_of(person).seat.isHidden()
    person.director.begin_setup()
    assert person.director.phase == Phase.setup


def at(time_s: float) -> Sample:
    return seen(time_s)


@pytest.mark.parametrize(("away_mm", "told"), [(600.0, True), (980.0, False)])
def test_the_set_says_at_what_distance_it_was_done(
    begin: Begin, away_mm: float, told: bool
) -> None:
    person = before_camera(begin, FAR)
    sit(person, away_mm)
    person.choose(words.say("camera.next"))
    if told:
        person.choose("Go on as I sit")
    while person.director.phase == Phase.setup:
        person.measured(1.0, at)
    steps = [
        s.model_copy(update={"target_mm": (*(s.target_mm or (0, 0, 0))[:2], away_mm)})
        for s in person.fake.service.fit_steps or []
    ]
    person.fake.service.fit_steps = steps
    answer_fit(person.fake.service, person.director)
    person.settle()
    person.measured(3.2, at)
    assert isinstance(person.director.task, DoSet)
    person.measured(2.0, at)
    person.director.set_done()
    person.settle()
    said = " ".join(person.director.set_told)
    assert ("Done at about 60 cm from the screen; 100 cm were asked for." in said) is told
    person.director.end_today()
    summary = summarise(session_record(person.fake.recordings[-1].journal.content()))
    flags = {f.flag: f.reason for f in summary.exercises[0].quality}
    assert (SEAT_OFF in flags) is told
    if told:
        assert flags[SEAT_OFF].startswith("done at about 60 cm (5")
        assert flags[SEAT_OFF].endswith("100 cm were asked for")
