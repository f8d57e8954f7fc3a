"""Notes on the wall in the window: where they are put, what is said of them, and when."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from itertools import pairwise
from typing import Any

import pytest

from calibration.parts import on_wall
from tests.ui.fakes import FakeWorld, answer_fit, seen
from tests.ui.patient import DONE, ENTER, TURNS, Person, earlier, plan_of
from tests.ui.pictures import keep
from tracker.plan.asked import Asked as EntryAsked
from tracker.plan.asked import asked_of
from tracker.plan.model import Entry, WallMarks
from tracker.practice.tasks import (
    AskGate,
    AskScores,
    AskSinceLast,
    AskWall,
    CountDown,
    DoSet,
    Prepare,
    ShowToday,
)
from ui.cards import card_of
from ui.geometry import FieldExtent, ScreenMap, facing_map
from ui.manner import how_of, wall_words
from ui.session.asked import has_target, needs_moving_target, planned_asked
from ui.session.asked_setup import setup_asked
from ui.session.flow import Phase
from ui.setup.notes_on_wall import setup_key

Begin = Callable[..., Person]
EXTENT = FieldExtent((0.0, -110.0), 160.0, 80.0)
TYPED = WallMarks(distance_mm=1500, spacing_mm=530, above_mm=90)
JUMPS = Entry(entry_id="jumps", exercise="eyes-side-to-side", repetitions=3, note="x", wall=TYPED)
OPEN = JUMPS.model_copy(update={"wall": WallMarks(above_mm=90)})
ONE = Entry(
    entry_id="one",
    exercise="turns-on-target",
    posture="standing",
    wall=WallMarks(distance_mm=2000, above_mm=-50, right_mm=120),
)


def placed_for(entry: Entry, to_rest: ScreenMap | None = None) -> Any:
    return planned_asked(
        5.0,
        asked_of(entry),
        repetitions=entry.repetitions or 3,
        seconds=float("inf"),
        extent=EXTENT,
        to_rest=to_rest or facing_map(600.0, EXTENT.centre_mm),
        distance_mm=600.0,
    )


def test_the_track_goes_from_mark_to_mark_on_the_wall_and_nothing_is_drawn() -> None:
    asked = placed_for(JUMPS)
    assert not asked.drawn and not has_target(asked_of(JUMPS))
    # The eyes look at the field's middle, 110 mm under the camera: it is 110 above them.
    assert asked.step.target_at(5.5) == pytest.approx((265.0, 200.0, 1500.0))
    assert asked.step.target_at(6.5) == pytest.approx((-265.0, 200.0, 1500.0))
    assert (asked.step.model_extra or {})["wall"] == {
        "distance_mm": 1500.0,
        "spacing_mm": 530.0,
        "above_mm": 90.0,
        "right_mm": 0.0,
    }


def test_one_mark_stays_and_is_placed_from_the_camera() -> None:
    tilted = ScreenMap((30.0, 140.0, 640.0), (0.99, 0.0, 0.1), (0.0, 0.98, 0.2))
    asked = placed_for(ONE, tilted)
    assert asked.step.target_mm == pytest.approx((30.0 + 120.0, 140.0 - 50.0, 2000.0))
    assert not asked.drawn


def test_turning_between_two_marks_swings_as_far_as_they_lie_apart() -> None:
    entry = Entry(
        entry_id="m",
        exercise="eyes-then-head",
        wall=WallMarks(distance_mm=1200, spacing_mm=800),
    )
    asked = placed_for(entry)
    assert not needs_moving_target(asked_of(entry))
    assert (asked.step.model_extra or {})["target_swing_deg"] == pytest.approx(18.43, abs=0.01)


def test_of_marks_whose_place_is_not_known_there_is_no_target() -> None:
    asked = placed_for(OPEN)
    assert asked.step.target_at(6.0) is None and not asked.drawn
    assert "wall" not in (asked.step.model_extra or {})


def test_a_set_up_looks_at_each_note_once_to_learn_and_once_to_check() -> None:
    marks = ((265.0, 90.0, 1500.0), (-265.0, 90.0, 1500.0))
    looks = [a for a in setup_asked(0.0, EXTENT, 600.0, marks=marks) if not a.drawn]
    extras = [a.step.model_extra or {} for a in looks]
    assert [on_wall(a.step) for a in looks] == [*marks, *marks]
    assert [e.get("held_out", False) for e in extras] == [False, False, True, True]
    assert [setup_key(a.step) for a in looks] == ["setup.look.right", "setup.look.left"] * 2
    short = [a for a in setup_asked(0.0, EXTENT, 600.0, short=True, marks=marks) if not a.drawn]
    assert [(a.step.model_extra or {})["held_out"] for a in short] == [True, True]
    whole = setup_asked(0.0, EXTENT, 600.0, marks=marks)
    times = [(a.step.from_s, a.step.to_s) for a in whole]
    assert all(b[0] >= a[1] for a, b in pairwise(times))
    assert setup_key(whole[0].step) == "setup.rest"
    (one,) = {
        setup_key(a.step)
        for a in setup_asked(0.0, EXTENT, 600.0, marks=((0.0, 0.0, 900.0),))
        if not a.drawn
    }
    assert one == "setup.look.note"


def test_the_words_say_where_the_notes_hang() -> None:
    assert wall_words(asked_of(JUMPS)) == (
        "Stick two notes on the wall behind the screen, side by side.\nFrom note to note: 53 cm.\n"
        "Higher than the camera: 9 cm.\nThe camera is midway between them.\n"
        "From your eyes straight to the wall: 150 cm."
    )
    assert wall_words(asked_of(ONE)) == (
        "Stick one note on the wall behind the screen.\nLower than the camera: 5 cm.\n"
        "To the right of the camera: 12 cm.\nFrom your eyes straight to the wall: 200 cm."
    )
    assert "From note to note" not in wall_words(asked_of(OPEN))
    assert wall_words(asked_of(TURNS)) == ""
    assert how_of(asked_of(JUMPS)).startswith("Look from one note to the other")
    assert how_of(asked_of(JUMPS), paper=True) == how_of(asked_of(JUMPS))


def test_a_length_is_chosen_in_whole_centimetres_that_will_do() -> None:
    asked: EntryAsked = asked_of(OPEN)
    task = AskWall(asked=asked, length="spacing", least_mm=262.5, most_mm=637.7)
    card = card_of(task, plan_of(OPEN))
    assert card.count == range(27, 64)
    for cm in (card.count[0], card.count[-1], card.first):
        task.check(10.0 * cm)
    assert "27 to 63 cm" in card.lines[1]


# --- in the window ---


def test_the_patient_measures_hangs_and_is_led_to_the_notes(begin: Begin) -> None:
    person = begin(plan_of(OPEN))
    person.begin_day()
    person.choose("Yes")
    director, page = person.director, person.window.pages["task"]
    task = director.task
    assert isinstance(task, AskWall) and task.length == "distance"
    assert page.length.isVisible() and not page.count.isVisible()  # type: ignore[attr-defined]
    assert page.length.chosen is None, "nothing is measured before somebody has"  # type: ignore[attr-defined]
    keep(person.window, "wall/distance")
    page.length.set_value(160)  # type: ignore[attr-defined]
    person.choose("Go on")
    task = director.task
    assert isinstance(task, AskWall) and task.length == "spacing"
    keep(person.window, "wall/spacing")
    page.length.set_value(50)  # type: ignore[attr-defined]
    person.choose("Go on")
    task = director.task
    assert isinstance(task, Prepare) and task.asked is not None and task.rest_pose
    assert task.asked.marks is not None and task.asked.marks.spacing_mm == 500.0
    said = "\n".join(page.card.lines)  # type: ignore[attr-defined]
    assert "From note to note: 50 cm." in said and "to the wall: 160 cm." in said
    assert not page.length.isVisible()  # type: ignore[attr-defined]
    keep(person.window, "wall/prepare")
    person.choose("I am in place")
    shown = []
    setup = person.window.pages["setup"]
    assert director.phase == Phase.camera
    person.measured(0.5, seen)
    person.press(ENTER)
    assert director.phase == Phase.setup
    while director.phase == Phase.setup:
        person.measured(0.5, seen)
        asked = director.asked
        if asked is not None and not asked.drawn and director.phase == Phase.setup:
            shown.append(setup.line.text())  # type: ignore[attr-defined]
            keep(person.window, "wall/setup")
            assert setup.field.offsets == []  # type: ignore[attr-defined]
    assert [t.split(" note")[0] for t in dict.fromkeys(shown)] == [
        "Look at the right",
        "Look at the left",
    ]
    answer_fit(person.fake.service, director)
    person.settle()
    assert isinstance(director.task, CountDown)
    person.measured(3.5, seen)
    assert isinstance(director.task, DoSet)
    asked = director.asked
    assert asked is not None and not asked.drawn
    assert not director.target_coming
    keep(person.window, "wall/set")


def test_who_cannot_put_notes_there_goes_on_with_the_next(begin: Begin) -> None:
    person = begin(plan_of(OPEN, TURNS))
    person.begin_day()
    person.choose("Yes")
    assert isinstance(person.director.task, AskWall)
    person.choose("I can't put notes there")
    task = person.director.task
    assert isinstance(task, Prepare) and task.asked is not None
    assert task.asked.entry_id == "turns"
    said = "\n".join(person.window.pages["task"]._notes)  # type: ignore[attr-defined]
    assert "There are no notes on the wall for it." in said


@pytest.mark.parametrize("still", [True, False])
def test_what_was_given_last_time_is_confirmed_with_one_key(
    begin: Begin, fake: FakeWorld, still: bool
) -> None:
    wall = {"distance_mm": 1600.0, "spacing_mm": 500.0, "above_mm": 90.0, "right_mm": 0.0}
    prescribed = {"posture": "sitting", "wall": wall}
    turns = {"exercise": "eyes-side-to-side", "entry_id": "jumps", "prescribed": prescribed}
    done = {**DONE, **turns}
    before = f"{date.today() - timedelta(days=1)}T09:00:00"
    fake.history = [earlier("p1", started_at=before, exercises=[done])]
    person = begin(plan_of(OPEN))
    while not isinstance(person.director.task, AskWall):
        task = person.director.task
        if isinstance(task, AskGate):
            person.none_of_these()
        elif isinstance(task, AskScores | AskSinceLast):
            person.press("1", ENTER)
        else:
            person.choose("Begin" if isinstance(task, ShowToday) else "Yes")
    page: Any = person.window.pages["task"]
    assert page.card.title == "Is the wall still 160 cm from your eyes?"
    assert not page.length.isVisible() and not page.count.isVisible()
    keep(person.window, f"wall/still-{still}")
    if still:
        person.press(ENTER)
    else:
        person.choose("Measure again")
        assert isinstance(person.director.task, AskWall) and page.length.isVisible()
        assert page.length.chosen is None, "nothing is taken from last time unasked"
        page.length.set_value(160)
        person.choose("Go on")
    assert page.card.title == "Are the two notes still 50 cm apart?"
    person.press(ENTER)
    task = person.director.task
    assert isinstance(task, Prepare) and task.asked is not None and task.asked.wall is not None
    found = (task.asked.wall.distance_mm, task.asked.wall.spacing_mm)
    assert found == (1600.0, 500.0)
    marks = person.fake.recordings[-1].journal.content().of("mark")
    said = [(m["mm"], m["as_last_time"]) for m in marks if m["name"] == "wall_length"]
    # The same figure by the tape was measured all the same.
    assert said == [(1600.0, still), (500.0, True)]
