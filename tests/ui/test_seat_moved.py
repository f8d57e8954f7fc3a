"""A chair that stands elsewhere for some of the day: the set-up follows it, and so do the words."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from tests.ui.fakes import FakeWorld, Report, seen, turning
from tests.ui.patient import Person, plan_of
from tests.ui.test_planned_pages import after_a_set, said
from tracker.plan.model import Entry
from tracker.practice.tasks import DoSet, Prepare
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.messages import Fitted
from ui.session.asked import JUMP_DEG
from ui.session.flow import Phase

Begin = Callable[..., Person]
FAR_MM, NEAR_MM = 1000.0, 750.0


def fitted_at(person: Person, distance_mm: float) -> None:
    """Go through a set-up whose fit finds the person so far from the screen."""
    assert person.director.phase == Phase.camera
    person.measured(0.5, seen)
    page: Any = person.window.pages["camera"]
    # The second one is the short look: a whole set-up was kept by then.
    person.choose((page.kept if page.kept.isVisible() else page.next).text())
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    service = person.fake.service
    assert service.fit_steps is not None

    def placed(step: Step) -> Step:
        if step.target_mm is None:
            return step
        x, y, _ = step.target_mm
        return step.model_copy(update={"target_mm": (x, y, distance_mm)})

    service.news.append(Fitted(Report([placed(s) for s in service.fit_steps])))
    person.director.tick()
    person.settle()


def seated_at(time_s: float) -> Sample:
    return turning(time_s, 1e9)


def test_a_set_nearer_by_is_shown_for_its_own_distance(begin: Begin, fake: FakeWorld) -> None:
    fingertip, jumps = (
        Entry(entry_id=e, exercise=e, repetitions=12) for e in ("near-far", "eyes-side-to-side")
    )
    person = begin(plan_of(fingertip, jumps, seat_distance_mm=NEAR_MM))
    person.begin_day(0)
    assert "about 100 cm" in said(person)
    person.choose("I am in place")
    fitted_at(person, FAR_MM)
    person.measured(4.0, seated_at)
    assert isinstance(person.director.task, DoSet)
    person.director.set_done()
    person.director.answer({"clarity": "clear"})
    person.settle()
    after_a_set(person)
    person.wait(6)
    assert isinstance(person.director.task, Prepare)
    assert "Move your chair closer again, about 75 cm" in said(person)
    person.choose("I am in place")
    page: Any = person.window.pages["camera"]
    person.measured(0.5, seen)
    assert page.kept.isVisible() and page.kept.hasFocus()
    fitted_at(person, NEAR_MM)
    assert person.director._short
    person.measured(4.0, seated_at)
    asked = person.director.asked
    assert isinstance(person.director.task, DoSet) and asked is not None
    # 10 degrees are 132 mm from 75 cm, and 176 mm from a metre.
    shown_deg = [math.degrees(math.atan2(x, NEAR_MM)) for x, _ in asked.offsets]
    assert shown_deg == pytest.approx([JUMP_DEG, -JUMP_DEG], abs=0.1)
    setups = fake.recordings[-1].journal.content().of("setup")
    assert [s["found"]["distance_mm"] for s in setups] == [FAR_MM, NEAR_MM]


def test_a_head_that_moves_changes_no_size_within_a_set(begin: Begin) -> None:
    person = begin(plan_of(Entry(entry_id="t", exercise="turns-on-target", repetitions=12)))
    person.begin_day(0)
    person.choose("I am in place")
    fitted_at(person, NEAR_MM)
    person.measured(3.5, seated_at)
    page: Any = person.window.pages["practice"]
    sizes = []
    for moved_mm in (0.0, 120.0, -150.0):
        person.measured(1.0, lambda t, mm=moved_mm: replace(seated_at(t), head_z_mm=mm))
        assert person.director.phase == Phase.exercise
        sizes.append((page.field.distance_mm, page.field.px_of(2.0)))
    assert len(set(sizes)) == 1 and sizes[0][0] == NEAR_MM
