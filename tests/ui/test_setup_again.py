"""Each part of a set-up says how it came out, and can be done again by itself."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import nan
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from calibration.check import GazeCheck, HeadReach
from calibration.mark import MarkFound
from calibration.parts import MAX_HELD, PARTS, PartFound, part_of
from calibration.report import Again
from tests.ui.fakes import EXTENT, FakeWorld, Make, Report, feed, seen
from tests.ui.patient import Person
from tests.ui.pictures import keep
from tests.ui.test_setup_told import WIDE, Found, set_up
from tests.ui.test_setup_told import placed as placed_in_plan
from tests.ui.test_window import cut_in, to_choose
from tracker.practice.tasks import CountDown
from tracker.session.stage import SETUP_STEPS
from tracker.vision.messages import FitFailed, Fitted, Measured, SourceStats
from ui import words
from ui.session.asked_setup import READ_S, setup_asked
from ui.session.flow import Director, Phase
from ui.setup.parts import (
    ROUGH_DEG,
    SEEN_WELL,
    STILL_DEG,
    PartWatch,
    again_told,
    mark_told,
    parts_told,
)
from ui.setup.reach import ReachWatch, Wanted

pytestmark = pytest.mark.usefixtures("qapp")

GOOD = {
    "rest": PartFound("rest", 1.0, wander_deg=0.4),
    "looks": PartFound("looks", 1.0, wander_deg=0.5, error_deg=0.6, points=8, points_seen=8),
    "check": PartFound("check", 1.0, wander_deg=0.5, error_deg=0.5, points=2, points_seen=2),
    "turn": PartFound("turn", 1.0, plus_deg=24.0, minus_deg=23.5),
    "nod": PartFound("nod", 1.0, plus_deg=17.0, minus_deg=17.0),
}
STEPS = [a.step for a in setup_asked(0.0, EXTENT, 600.0)]
FAR = Wanted(23.0, 17.25, 20.0, 15.0)


def report_of(steps: list[Any] = STEPS, **other: PartFound) -> Found:
    parts = tuple((GOOD | other).values())
    return Found(steps, check=GazeCheck(0.5, 60, 2), head_reach=WIDE, parts=parts)


# --- what is said of a part ---


def test_every_part_of_a_good_set_up_says_so() -> None:
    told = parts_told(report_of(), FAR)
    assert [t.part for t in told] == list(PARTS) and all(t.good for t in told)
    assert {t.name: t.said for t in told} == {
        "Keeping still": "Your head stayed still.",
        "Looking at points": "Your eyes on these points: about half a degree off. That is good.",
        "Checking your eyes": "Your eyes, checked on 2 points: about half a degree off. "
        "That is good.",
        "Turning the head": "24° to the right, 24° left. That is far enough.",
        "Nodding": "17° up, 17° down. That is far enough.",
    }


@pytest.mark.parametrize(
    ("found", "said"),
    [
        (replace(GOOD["rest"], seen=SEEN_WELL - 0.05), "in only 75 % of it"),
        (replace(GOOD["rest"], wander_deg=STILL_DEG + 2.0), "moved by about 4°"),
        (replace(GOOD["looks"], wander_deg=STILL_DEG + 2.0), "moved by about 4°"),
        (replace(GOOD["looks"], points_seen=6), "On 2 of 8 points"),
        (replace(GOOD["looks"], error_deg=3.5), "is not judged"),
        (replace(GOOD["check"], error_deg=nan), "Your eyes were not seen"),
    ],
)
def test_what_a_part_lacks_is_named_and_only_there(found: PartFound, said: str) -> None:
    told = {t.part: t for t in parts_told(report_of(**{found.part: found}), FAR)}
    assert said in told[found.part].said and not told[found.part].good
    assert all(t.good for part, t in told.items() if part != found.part)


def test_a_turn_that_is_short_of_the_exercises_says_how_far_they_go() -> None:
    short = replace(report_of(turn=replace(GOOD["turn"], minus_deg=12.0)))
    short = replace(short, head_reach=replace(WIDE, left=12.0))
    told = {t.part: t for t in parts_told(short, FAR)}
    assert told["turn"].said == "24° to the right, 12° left. Your exercises need 20°."
    assert not told["turn"].good and told["nod"].good
    # Where no exercise asks, nothing is called far enough or short.
    (turn,) = (t for t in parts_told(short, Wanted()) if t.part == "turn")
    assert turn.said == "24° to the right, 12° left." and turn.good
    unread = replace(report_of(), findings=("gaze_not_fitted",))
    rows = {t.part: t for t in parts_told(unread, FAR)}
    assert "your gaze is not" in rows["looks"].said and not rows["check"].good


def test_nothing_is_said_of_what_nothing_is_known_of() -> None:
    assert parts_told(None, FAR) == []
    assert all(t.said == "" for t in parts_told(Report(STEPS), FAR))
    assert again_told(("", "")) == "" and "Not done" in mark_told(None)
    mark = MarkFound(29.5, 30.0, 0.8, 1500.0, 866.0)
    assert mark_told(mark).startswith("The camera read 29.5°, the tape says 30.0°: about half")


@pytest.mark.parametrize("why", ["unseen", "moved", "eyes", "coarse", "less_far", "left", "failed"])
def test_why_the_earlier_step_stays_is_said(why: str) -> None:
    said = again_told(("turn", why), "the face was not seen for long enough")
    assert said.startswith("Turning the head: the earlier step is kept.")
    assert ("the whole set-up" in said) is (why == "moved")
    assert ("not seen for long enough" in said) is (why == "failed")


# --- while the set-up goes on ---


def test_what_was_seen_of_a_part_while_it_went_on() -> None:
    watch, reach = PartWatch(), ReachWatch(Wanted(20.0, 10.0))
    assert watch.key("rest", reach) == "part.unseen"
    for k in range(40):
        watch.see("rest", (0.1 * (k % 2), 0.0))
        watch.see("looks", (0.0, (ROUGH_DEG + 1.0) * (k > 30)))
        watch.see("check", None if k % 2 else (0.0, 0.0))
        watch.see("turn", (0.0, 0.0))
    assert watch.key("rest", reach) == "part.seen"
    assert watch.key("looks", reach) == "part.moved"
    assert watch.key("check", reach) == "part.unseen"
    assert watch.key("turn", reach) == "part.short"
    assert watch.key("turn", ReachWatch()) == "part.seen"
    watch.forget("looks")
    assert watch.key("looks", reach) == "part.unseen"


def in_setup(window: Any, fake: FakeWorld) -> Any:
    """The set-up goes on before the camera, outside a plan."""
    director = window.director
    director.start()
    feed(fake.service, director, 0.5, seen)
    director.begin_setup()
    director.tick()
    window.refresh()
    return director


def through(fake: FakeWorld, director: Director, until_s: float) -> None:
    """Let the set-up go on up to a time, with a face that looks ahead."""
    while fake.service.time_s < until_s and director.phase == Phase.setup:
        fake.service.time_s += 0.1
        fake.service.news.append(Measured(seen(fake.service.time_s), (0.0, 0.0)))
        director.tick()


def test_the_step_before_can_be_repeated_at_once_by_key(make: Make, fake: FakeWorld) -> None:
    window = make(percent=200)
    director, page = in_setup(window, fake), window.pages["setup"]
    first = [a.step for a in director._asked]
    assert page.repeat.isHidden() and director.part_over == ""
    through(fake, director, first[0].to_s + 0.3)
    window.refresh()
    QApplication.processEvents()
    assert director.part_over == "rest" and page.repeat.isVisible()
    assert page.message.text() == "Keeping still: seen well." and page.message.isVisible()
    keep(window, "setup-step-before-200")
    assert not cut_in(window)
    while QApplication.focusWidget() is not page.repeat:
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    QTest.keyClick(page.repeat, Qt.Key.Key_Return)
    window.refresh()
    # The whole of it comes once more, after time to read, and nothing of the old one is fitted.
    steps = [a.step for a in director._asked]
    assert [part_of(s) for s in steps] == [part_of(s) for s in first]
    assert steps[0].from_s == pytest.approx(fake.service.time_s + READ_S)
    assert page.repeat.isHidden() and director.asked is None
    # In the middle of the next step: that one is asked for again, too.
    through(fake, director, steps[0].to_s + READ_S + 1.0)
    assert director.asked.step.step == "look" and director.part_over == "rest"
    director.repeat_part()
    again = [a.step for a in director._asked]
    assert [part_of(s) for s in again] == [part_of(s) for s in first]
    assert again[0].from_s > steps[0].to_s
    # After the looks, those that teach and those that check come again together.
    through(fake, director, again[10].to_s + 0.5)
    assert director.part_over == "check"
    director.repeat_part()
    last = [a.step for a in director._asked]
    assert last[0] == again[0] and last[1].from_s > again[10].to_s
    through(fake, director, last[-1].to_s + 1.0)
    assert director.phase == Phase.fitting and fake.service.fit_part == ""
    assert fake.service.fit_steps == last


def test_it_ends_where_the_measuring_would_lose_the_first_pictures(
    make: Make, fake: FakeWorld
) -> None:
    director = in_setup(make(), fake)
    repeats = 0
    for _ in range(40):
        through(fake, director, director._asked[0].step.to_s + 0.3)
        held_s = director._asked[-1].step.to_s - director._asked[0].step.from_s
        assert 30.0 * held_s <= MAX_HELD
        if not director.can_repeat:
            break
        director.repeat_part()
        repeats += 1
    # The first step alone can be begun anew for ever: nothing stands before it.
    assert repeats == 40
    through(fake, director, director._asked[10].step.to_s + 0.3)
    repeats = 0
    while director.can_repeat:
        director.repeat_part()
        looks = [a.step for a in director._asked if a.step.step == "look"]
        through(fake, director, looks[-1].to_s + 0.3)
        repeats += 1
    assert 1 <= repeats <= 4
    held_s = director._asked[-1].step.to_s - director._asked[0].step.from_s
    assert 30.0 * held_s <= MAX_HELD
    # Twice as many pictures a second leave no room for it.
    director.begin_setup()
    fake.service.stats = SourceStats(rate_hz=60.0)
    assert not director.can_repeat


# --- afterwards ---


def told_page(make: Make, fake: FakeWorld, **more: Any) -> tuple[Any, Any]:
    """Outside a plan, with the page of the steps open."""
    window = make(**more)
    to_choose(window, fake)
    director = window.director
    director.report = replace(report_of(director.report.steps), profile="the person")
    window.refresh()
    page: Any = window.pages["choose"]
    (button,) = (
        b for b in page.findChildren(type(page.start)) if b.text() == words.say("came.open")
    )
    button.click()
    window.refresh()
    QApplication.processEvents()
    came: Any = window.pages["came"]
    assert director.phase == Phase.setup_told and window.stack.currentWidget() is came
    return window, came


def begin_again(window: Any, fake: FakeWorld, part: str) -> list[Any]:
    """Press the button of a part; the steps that are asked for then."""
    came: Any = window.pages["came"]
    button = came.rows[part].again
    button.setFocus()
    QTest.keyClick(button, Qt.Key.Key_Return)
    window.director.tick()
    window.refresh()
    assert window.director.phase == Phase.setup
    assert fake.service.held[-1] == (True, True)
    now_s = fake.service.time_s
    return [a.step for a in window.director._asked if a.step.from_s > now_s]


def finish_again(window: Any, fake: FakeWorld, steps: list[Any], answer: Any) -> None:
    """Go through the steps of a part, and have the fit answered."""
    through(fake, window.director, steps[-1].to_s + 0.5)
    assert window.director.phase == Phase.fitting
    fake.service.news.append(answer(list(fake.service.fit_steps or [])))
    window.director.tick()
    window.refresh()
    assert window.director.phase == Phase.setup_told


@pytest.mark.parametrize("part", PARTS)
def test_one_part_alone_is_asked_for_and_takes_the_place_of_the_old_one(
    make: Make, fake: FakeWorld, part: str
) -> None:
    window, came = told_page(make, fake)
    director = window.director
    before = [a.step for a in director._asked]
    director.mark_found = MarkFound(29.5, 30.0, 0.8, 1500.0, 866.0)
    steps = begin_again(window, fake, part)
    assert {part_of(s) for s in steps} == {part}
    assert len(steps) == sum(part_of(s) == part for s in before)
    assert director.setup_part == (1, len(steps))
    good = lambda fitted: Fitted(  # noqa: E731
        replace(report_of(fitted), profile="the person anew", again=Again(part))
    )
    finish_again(window, fake, steps, good)
    fitted = fake.service.fit_steps or []
    # What is straight ahead comes first, whatever was done last.
    assert fake.service.fit_part == part and part_of(fitted[0]) == "rest"
    assert [part_of(s) for s in fitted] == sorted((part_of(s) for s in before), key=PARTS.index)
    assert [s for s in fitted if part_of(s) != part] == [s for s in before if part_of(s) != part]
    assert director._profile == "the person anew" and director._map is not None
    # In time the steps stand in the order in which they were done.
    times = [a.step.from_s for a in director._asked]
    assert times == sorted(times) and len(times) == len(before)
    assert "now" in came.became.text()
    # The mark on the wall was checked with the person as fitted then.
    assert (director.mark_found is None) is (part != "check")
    assert fake.profiles[("Test camera", "none")] == "the person anew"


@pytest.mark.parametrize("why", ["moved", "eyes", "unseen", "less_far", "coarse"])
def test_a_worse_one_leaves_everything_as_it_was_and_says_so(
    make: Make, fake: FakeWorld, why: str
) -> None:
    window, came = told_page(make, fake)
    director = window.director
    before, profile, report = list(director._asked), director._profile, director.report
    steps = begin_again(window, fake, "turn")
    old = replace(report, again=Again("turn", why))
    finish_again(window, fake, steps, lambda _: Fitted(old))
    assert director._asked == before and director._profile == profile
    assert director.report is report
    assert "the earlier step is kept" in came.became.text()
    # And one may try once more.
    assert begin_again(window, fake, "turn")


def test_one_that_fails_leaves_everything_as_it_was(make: Make, fake: FakeWorld) -> None:
    window, came = told_page(make, fake)
    director = window.director
    before = list(director._asked)
    steps = begin_again(window, fake, "nod")
    gone = "the pictures of the other steps are gone; do the whole set-up"
    finish_again(window, fake, steps, lambda _: FitFailed(gone))
    assert director._asked == before and director.report is not None
    assert "the whole set-up" in came.became.text()


@pytest.mark.parametrize("when", ["reading", "within", "fitting"])
def test_left_half_way_the_earlier_one_stays(make: Make, fake: FakeWorld, when: str) -> None:
    window, came = told_page(make, fake)
    director = window.director
    before, profile = list(director._asked), director._profile
    service = fake.service
    steps = begin_again(window, fake, "looks")
    if when != "reading":
        through(fake, director, steps[3 if when == "within" else -1].to_s + 0.2)
    assert director.phase == (Phase.fitting if when == "fitting" else Phase.setup)
    QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Escape)
    window.refresh()
    assert director.phase == Phase.setup_told and director._profile == profile
    assert "was not finished" in came.became.text()
    if when == "fitting":
        # A fit that comes too late must not hold: the measuring begins anew with the old one.
        assert service.stopped and fake.service.profile == profile
        assert not director.can_do_again and came.rows["looks"].again.isHidden()
        assert director._asked == []
    else:
        assert service.held[-1] == (True, False) and director._asked == before
        assert begin_again(window, fake, "looks")
        director.stop()
    director.take_setup()
    assert director.phase == Phase.choose


def test_who_goes_on_lets_the_pictures_go_and_is_not_offered_it_any_more(
    make: Make, fake: FakeWorld
) -> None:
    from ui.session.flow import Dose

    window, _ = told_page(make, fake)
    director = window.director
    director.take_setup()
    assert director.phase == Phase.choose and fake.service.held == []
    service = fake.service
    director.start_exercise(Dose("turns-on-target", 3, 60.0))
    assert service.held[-1] == (False, False)
    assert not director.can_do_again
    recorded = [s for s in director._asked if s.step.step in SETUP_STEPS]
    assert len(recorded) == len(STEPS)


def test_a_part_done_again_goes_into_the_session_in_the_order_of_time(
    make: Make, fake: FakeWorld
) -> None:
    from ui.session.flow import Dose

    window, _ = told_page(make, fake)
    director = window.director
    steps = begin_again(window, fake, "rest")
    finish_again(window, fake, steps, lambda s: Fitted(replace(report_of(s), again=Again("rest"))))
    director.take_setup()
    director.start_exercise(Dose("turns-on-target", 3, 60.0))
    feed(fake.service, director, fake.service.time_s + 4.0, seen)
    rows = [r for r in fake.recordings[-1].journal.content().records if r["kind"] == "step"]
    begun = [r["step"]["from_s"] for r in rows]
    assert begun == sorted(begun) and rows[-1]["step"]["step"] == "exercise"


@pytest.mark.parametrize("language", ["en", "de", "es", "ar"])
def test_the_page_holds_large_text_in_a_laptops_window(
    make: Make, fake: FakeWorld, language: str
) -> None:
    window, came = told_page(make, fake, percent=200, language=language)
    keep(window, f"came-200-{language}")
    assert not cut_in(window)
    reached = set()
    for _ in range(30):
        focus = QApplication.focusWidget()
        reached.add(focus)
        if focus in [row.again for row in came.rows.values()]:
            # What has the keys is in sight.
            assert focus.visibleRegion().boundingRect() == focus.rect()
        QTest.keyClick(focus, Qt.Key.Key_Tab)
        QApplication.processEvents()
    assert {row.again for row in came.rows.values()} <= reached
    assert {came.go_on, came.again, came.mark.again} <= reached


@pytest.mark.parametrize("percent", [100, 200])
def test_in_a_plan_one_step_can_be_done_again_before_it_goes_on(
    begin: Callable[..., Person], percent: int
) -> None:
    person = placed_in_plan(begin, percent)
    director, fake = person.director, person.fake
    set_up(person, HeadReach(24.0, 12.0, 17.0, 17.0))
    assert director.phase == Phase.setup_told
    service = fake.service
    page: Any = person.window.pages["came"]
    page.rows["turn"].again.setFocus()
    person.press(Qt.Key.Key_Return)
    assert director.phase == Phase.setup
    while director.phase == Phase.setup:
        person.measured(1.0, seen)
    # The measuring's own clock counts in what it is asked.
    steps = list(service.fit_steps or [])
    assert service.fit_part == "turn" and steps[-2].step == "turn_slowly"
    assert max(s.to_s for s in steps) <= service.time_s
    report = replace(report_of(steps), again=Again("turn"))
    service.news.append(Fitted(report))
    person.settle()
    keep(person.window, f"came-again-{percent}")
    assert director.phase == Phase.setup_told and director.told.good
    person.choose("Go on")
    assert isinstance(director.task, CountDown) and service.held[-1] == (False, False)
