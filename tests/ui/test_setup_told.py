"""How a set-up came out, in words, and how far the head is to go in it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import isnan, nan
from pathlib import Path
from typing import Any

import pytest

from calibration.check import GazeCheck, HeadReach
from calibration.parts import PartFound
from tests.practice.person import SEATED
from tests.practice.person import plan_of as plan_in_file
from tests.ui.fakes import EXTENT, FakeService, FakeWorld, Report, feed, seen
from tests.ui.patient import TURNS, Person, plan_of
from tests.ui.pictures import keep
from tracker.exercises.watchers.gaze import ERRORS_APART, OFF_TARGET_DEG, OFF_TARGET_MOST_DEG
from tracker.practice.tasks import AskGate, CountDown, Prepare
from tracker.session.live import head_reach_found
from tracker.vision.messages import Fitted, Measured
from ui.session.asked_setup import NOD_S, TURN_S, setup_asked
from ui.session.flow import Director, Phase
from ui.setup.reach import ALLOWED_DEG, SEEN_OF, WIDER, ReachWatch, Wanted, short_of, wanted_of
from ui.setup.told import about, told_of

pytestmark = pytest.mark.usefixtures("qapp")

WIDE = HeadReach(24.0, 23.5, 17.0, 17.0)
WANTED = Wanted(23.0, 17.25, 20.0, 15.0)


@dataclass(frozen=True)
class Found(Report):
    check: GazeCheck | None = None
    head_reach: HeadReach | None = None
    wall_check: GazeCheck | None = None


def found(**changes: Any) -> Found:
    return replace(Found([], check=GazeCheck(0.5, 60, 2), head_reach=WIDE), **changes)


# --- what is said ---


def test_a_good_set_up_says_how_far_off_it_reads_and_gives_the_numbers() -> None:
    told = told_of(found(), WANTED)
    assert told.good and not told.hint
    assert told.lines == (
        "Your eyes, checked on 2 points: about half a degree off. That is good.",
        "Your head went far enough to every side.",
    )
    assert told.figures == (
        "For your therapist: gaze 0.5° off, turn 24° right, 24° left, nod 17° up, 17° down"
    )


@pytest.mark.parametrize(
    ("error_deg", "verdict", "good"),
    [
        # The limits are those of the judging: as long as 5 degrees can be told, it is good.
        (OFF_TARGET_DEG / ERRORS_APART - 0.01, "That is good.", True),
        (OFF_TARGET_DEG / ERRORS_APART + 0.01, "That will do", True),
        (OFF_TARGET_MOST_DEG / ERRORS_APART + 0.01, "is not judged", False),
    ],
)
def test_the_verdict_is_that_by_which_the_gaze_is_judged(
    error_deg: float, verdict: str, good: bool
) -> None:
    told = told_of(found(check=GazeCheck(error_deg, 60, 2)), WANTED)
    assert verdict in told.lines[0] and told.good is good
    # The fit's own error counts where it is the larger one.
    own = told_of(found(error_deg=error_deg), WANTED)
    assert verdict in own.lines[0] and "half a degree" in own.lines[0]


def test_the_eyes_at_the_wall_have_a_sentence_of_their_own_and_count() -> None:
    marks = ((265.0, 90.0, 1500.0), (-265.0, 90.0, 1500.0))
    steps = [a.step for a in setup_asked(0.0, EXTENT, 600.0, marks=marks)]
    good = told_of(found(steps=steps, wall_check=GazeCheck(0.9, 60, 2)), WANTED)
    assert good.lines[:2] == (
        "Your eyes, checked on 2 points: about half a degree off. That is good.",
        "Your eyes, checked at the wall: about one degree off. That is good.",
    )
    assert good.good and "gaze 0.5° off, at the wall 0.9° off" in good.figures
    poor = OFF_TARGET_MOST_DEG / ERRORS_APART + 0.01
    bad = told_of(found(steps=steps, wall_check=GazeCheck(poor, 60, 2)), WANTED)
    assert not bad.good and "half a degree off. That is good." in bad.lines[0]
    assert "is not judged" in bad.lines[1]
    # The wall is judged by no less than the error at the screen, as in the exercises.
    near = told_of(
        found(steps=steps, check=GazeCheck(poor, 60, 2), wall_check=GazeCheck(0.5, 60, 2)), WANTED
    )
    assert "is not judged" in near.lines[1]
    unseen = told_of(found(steps=steps, wall_check=GazeCheck(nan, 0, 0)), WANTED)
    assert not unseen.good and "Looking at the wall, your eyes were not seen." in unseen.lines
    one = told_of(found(steps=steps, wall_check=GazeCheck(0.5, 30, 1)), WANTED)
    assert not one.good and one.lines[1].startswith("At one of the two notes")
    lost = found(steps=steps, wall_check=GazeCheck(nan, 0, 0), findings=("gaze_not_fitted",))
    assert not any("wall" in line for line in told_of(lost, WANTED).lines)


def test_angles_as_one_says_them() -> None:
    said = [about(deg) for deg in (0.1, 0.74, 0.76, 1.4, 1.6, 3.2)]
    assert said == [
        *["about half a degree off"] * 2,
        *["about one degree off"] * 2,
        "about 2 degrees off",
        "about 3 degrees off",
    ]


def test_nothing_is_said_of_what_was_not_checked() -> None:
    told = told_of(Report([]), Wanted())
    assert told.good and told.lines == () and told.figures == ""
    unseen = told_of(found(check=GazeCheck(nan, 0, 0)), WANTED)
    assert not unseen.good and "not seen" in unseen.lines[0] and "gaze" not in unseen.figures
    lost = told_of(found(findings=("gaze_not_fitted",), error_deg=nan), WANTED)
    assert not lost.good and "your gaze is not" in lost.lines[0] and "checked" not in lost.lines[0]


def test_a_side_that_was_not_reached_is_named_with_what_is_needed() -> None:
    reach = replace(WIDE, left=15.0)
    told = told_of(found(head_reach=reach), WANTED)
    assert not told.good
    assert told.lines[1:] == ("To the left your head went 15°, the exercises need 20°.",)
    assert "only if that is comfortable" in told.hint and "more light" not in told.hint
    # The worst of the turn and of the nod: more could not be read in large text.
    tight = told_of(found(head_reach=HeadReach(14.0, 12.0, 9.0, 10.0)), WANTED)
    assert [line.split()[0] for line in tight.lines[1:]] == ["To", "Upwards"]
    assert "To the left" in tight.lines[1]
    assert [s for s, *_ in short_of(reach, Wanted(needed_pitch=20.0))] == ["up", "down"]
    # Within the reading's own error it is enough, and where nothing is asked anything is.
    assert not short_of(replace(WIDE, left=WANTED.needed_yaw - ALLOWED_DEG), WANTED)
    assert short_of(replace(WIDE, left=WANTED.needed_yaw - ALLOWED_DEG - 0.1), WANTED)
    assert not short_of(HeadReach(1.0, 1.0, 1.0, 1.0), Wanted())
    # What was not seen is not called short; nor is it praised.
    blind = told_of(found(head_reach=HeadReach(nan, nan, nan, nan)), WANTED)
    assert blind.good and len(blind.lines) == 1


def test_the_summary_has_the_reach_with_null_for_what_was_not_seen() -> None:
    wanted = {"right": 24.0, "left": 23.5, "up": 17.0, "down": None}
    assert head_reach_found(replace(WIDE, down=nan)) == wanted
    assert head_reach_found(None) is None


# --- how far to go ---


def test_the_widest_entry_counts_and_the_neck_limit_holds() -> None:
    wide = {**SEATED, "entry_id": "wide", "amplitude_deg": [20, 30]}
    entries = {**SEATED, "amplitude_deg": [10, 15]}, wide
    free = plan_in_file(*entries, neck_limit_deg={"yaw": 60, "pitch": 30})
    wanted = wanted_of(free)
    assert wanted.yaw == pytest.approx(WIDER * 30.0) and isnan(wanted.pitch)
    assert wanted.needed("turn_slowly") == 30.0 and isnan(wanted.needed("nod_slowly"))
    limited = wanted_of(plan_in_file(*entries, neck_limit_deg={"yaw": 32, "pitch": 12}))
    assert (limited.yaw, limited.needed_yaw) == (32.0, 30.0)
    # Without a plan it is what is offered.
    assert wanted_of(None, offered=("turns-on-target",)).yaw == pytest.approx(WIDER * 20.0)


def test_where_the_eyes_are_not_needed_the_head_need_not_go_far() -> None:
    together = {"exercise": "turns-together", "entry_id": "t", "amplitude_deg": [20, 25]}
    assert isnan(wanted_of(plan_in_file(together)).yaw)


def test_the_sign_comes_on_its_own_side_and_not_before() -> None:
    watch = ReachWatch(Wanted(20.0, 10.0))
    for facing in ((3.0, -2.0), (3.2, -2.2), (2.8, -1.8), None):
        watch.see("rest", facing)
    seen_of = SEEN_OF["turn_slowly"]
    watch.see("turn_slowly", (3.0 + 19.5 * seen_of, -2.0))
    assert watch.hint("turn_slowly", 0.2) == ""
    watch.see("turn_slowly", (3.0 + 20.5 * seen_of, -2.0))
    assert watch.hint("turn_slowly", 0.2) == "setup.far_enough"
    # On the way back, and to the other side, the usual words come.
    assert watch.hint("turn_slowly", 0.3) == "" and watch.hint("turn_slowly", 0.6) == ""
    watch.see("nod_slowly", (3.0, -2.0 - 10.5 * SEEN_OF["nod_slowly"]))
    assert watch.hint("nod_slowly", 0.6) == "setup.far_enough"
    assert watch.hint("nod_slowly", 0.2) == ""
    # Where no exercise asks, there is no "far enough" either.
    free = ReachWatch()
    free.see("rest", (0.0, 0.0))
    free.see("turn_slowly", (60.0, 0.0))
    assert free.hint("turn_slowly", 0.2) == ""


# --- in the window's session ---


def turned_in_setup(service: FakeService, director: Director, far_deg: float) -> list[str]:
    """Go through the steps of a set-up with rough readings of a head; what was hinted."""
    hints = []
    steps = [a.step for a in director._asked]
    while service.time_s < steps[-1].to_s and director.phase == Phase.setup:
        service.time_s += 0.1
        now = next((s for s in steps if s.from_s <= service.time_s < s.to_s), None)
        facing = (1.0, 1.0)
        if now is not None and now.step in ("turn_slowly", "nod_slowly"):
            part = (service.time_s - now.from_s) / (TURN_S if now.step == "turn_slowly" else NOD_S)
            way = far_deg if part < 0.25 else 0.0
            axis = 0 if now.step == "turn_slowly" else 1
            facing = (1.0 + way * (axis == 0), 1.0 + way * (axis == 1))
        service.news.append(Measured(seen(service.time_s), facing))
        director.tick()
        hints.append(director.setup_hint)
    return hints


def begun(fake: FakeWorld) -> Director:
    director = Director(fake.world(), lambda: EXTENT)
    director.start()
    feed(fake.service, director, 1.0, seen)
    director.begin_setup()
    director.tick()
    return director


@pytest.mark.parametrize(("far_deg", "told"), [(30.0, True), (12.0, False)])
def test_who_has_gone_far_enough_is_told_at_once(
    fake: FakeWorld, far_deg: float, told: bool
) -> None:
    director = begun(fake)
    hints = turned_in_setup(fake.service, director, far_deg)
    assert ("setup.far_enough" in hints) is told
    # Nods are in no exercise that is offered: how far they go is left to the person.
    assert "setup.nod_slowly.plus" in hints and "setup.turn_slowly.minus" in hints


def test_the_page_after_the_set_up_says_it(fake: FakeWorld, qtbot: Any, tmp_path: Path) -> None:
    from ui.pages.choose import ChoosePage
    from ui.settings import Settings

    director = begun(fake)
    turned_in_setup(fake.service, director, 30.0)
    report = found(steps=list(fake.service.fit_steps or []))
    fake.service.news.append(Fitted(report))
    director.tick()
    assert director.phase == Phase.choose
    page = ChoosePage(director, Settings(tmp_path / "window.ini"), lambda _percent: None)
    qtbot.addWidget(page)
    page.refresh()
    assert "checked on 2 points: about half a degree off. That is good." in page.said.text()
    assert "gaze 0.5° off" in page.figures.text() and not page.figures.isHidden()
    director.report = replace(report, head_reach=replace(WIDE, right=10.0))
    page.refresh()
    assert "To the right your head went 10°, the exercises need 20°." in page.said.text()
    assert "only if that is comfortable" in page.said.text()
    assert director._found()["head_reach_deg"]["right"] == 10.0


def set_up(person: Person, reach: HeadReach) -> None:
    """Go through the set-up that has begun, whose fit finds this reach of the head."""
    assert person.director.phase == Phase.setup
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    parts = (
        PartFound("turn", 1.0, plus_deg=reach.right, minus_deg=reach.left),
        PartFound("nod", 1.0, plus_deg=reach.up, minus_deg=reach.down),
    )
    steps = list(person.fake.service.fit_steps or [])
    report = found(steps=steps, head_reach=reach, parts=parts)
    person.fake.service.news.append(Fitted(report))
    person.settle()


def placed(begin: Callable[..., Person], percent: int = 100) -> Person:
    """Somebody who has begun the set-up of a planned session."""
    person = begin(plan_of(TURNS), percent=percent)
    person.begin_day(1)
    person.choose("I am in place")
    person.measured(0.5, seen)
    camera: Any = person.window.pages["camera"]
    person.choose(camera.next.text())
    return person


def test_in_a_plan_a_good_set_up_goes_straight_on(begin: Callable[..., Person]) -> None:
    person = placed(begin)
    set_up(person, WIDE)
    assert person.director.phase == Phase.countdown


@pytest.mark.parametrize("percent", [100, 200])
def test_in_a_plan_a_set_up_that_could_be_better_waits_for_an_answer(
    begin: Callable[..., Person], percent: int
) -> None:
    person = placed(begin, percent)
    director = person.director
    set_up(person, replace(WIDE, left=12.0))
    assert director.phase == Phase.setup_told
    page: Any = person.window.pages["came"]
    assert person.window.stack.currentWidget() is page
    assert page.rows["turn"].said.text() == "24° to the right, 12° left. Your exercises need 20°."
    assert "only if that is comfortable" in page.hint.text()
    keep(person.window, f"setup-told-{percent}")
    # Nothing goes on by itself, and one may do it again: the measuring is a fresh one.
    person.wait(30)
    assert director.phase == Phase.setup_told
    before = person.fake.service
    person.choose("Repeat the set-up")
    assert person.fake.service is not before and before.stopped
    set_up(person, replace(WIDE, left=12.0))
    # One may go on all the same; what was reached stands with the set-up.
    person.choose("Go on")
    assert isinstance(director.task, CountDown)
    rows = person.fake.recordings[-1].journal.content().records
    (record,) = (r for r in rows if r["kind"] == "setup")
    assert record["found"]["head_reach_deg"]["left"] == 12.0


def test_from_there_one_may_stop_or_feel_unwell(begin: Callable[..., Person]) -> None:
    person = placed(begin)
    set_up(person, replace(WIDE, left=12.0))
    person.window.director.stop()
    person.settle()
    assert isinstance(person.director.task, Prepare) and not person.director.camera_on
    person.choose("I am in place")
    person.measured(0.5, seen)
    camera: Any = person.window.pages["camera"]
    person.choose(camera.next.text())
    set_up(person, replace(WIDE, left=12.0))
    person.choose("I feel unwell (U)")
    assert isinstance(person.director.task, AskGate)
