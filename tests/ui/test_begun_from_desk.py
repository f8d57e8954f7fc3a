"""A baseline that is begun from the desk leaves what goes on in the program's window alone."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.ui.fakes import PLAN, FakeWorld, Make, seen
from tests.ui.patient import TURNS, Person, plan_of
from tests.ui.test_session_flow import through_setup
from tracker.errors import RunError
from tracker.plan.files import save_plan
from tracker.plan.model import Plan
from tracker.practice.tasks import AskGate
from ui import words
from ui.app import Window
from ui.begun_from_desk import begin_baseline
from ui.ports import Baseline, Job
from ui.session.flow import Director, Dose, Phase

OTHER = {"plan_id": "p99", "person": "P-99"}


@pytest.fixture
def of_other(tmp_path: Path) -> Path:
    """A file with the plan of another person."""
    save_plan(tmp_path / "other.json", plan_of(TURNS, **OTHER))
    return tmp_path / "other.json"


def brought_forward(window: Window, monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What would bring a window to the front, as it is called from now on."""
    called: list[str] = []
    for name in ("raise_", "activateWindow"):
        monkeypatch.setattr(window, name, lambda name=name: called.append(name))
    return called


def held_back(director: Director) -> list[Job]:
    """Have the reading of what was done before not come to its end by itself."""
    jobs: list[Job] = []

    def run(work: Callable[[], Any]) -> Job:
        jobs.append(Job(result=work()))
        return jobs[-1]

    director._world.run = run
    return jobs


def own_session(window: Window, fake: FakeWorld, fault: Exception | None = None) -> None:
    """A session without a plan, up to its figures."""
    director = window.director
    through_setup(fake, director)
    director.start_exercise(Dose("turns-on-target", 20, 60.0))
    if fault is not None:
        fake.recordings[-1].fail = fault
    Person(window, fake).measured(5.0, seen)
    director.stop()
    Person(window, fake).settle()
    assert director.phase == Phase.summary and director.plan is None


def test_only_a_window_that_is_ready_or_says_why_not_comes_to_the_front(
    make: Make, fake: FakeWorld, of_other: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    called = brought_forward(window, monkeypatch)
    window.director.start_plan(plan_of(TURNS))
    Person(window, fake).settle()
    window.showMinimized()
    assert isinstance(window.director.task, AskGate)
    assert begin_baseline(window, of_other, tmp_path / "new") == "busy"
    assert called == [] and window.isMinimized()
    window.director.end_today()
    Person(window, fake).settle()
    assert begin_baseline(window, of_other, tmp_path / "new") == "here"
    assert called == ["raise_", "activateWindow"] and not window.isMinimized()
    called.clear()
    assert begin_baseline(window, tmp_path / "none.json", tmp_path / "new") == "refused"
    assert called == ["raise_", "activateWindow"]


def test_a_window_with_a_clip_says_that_it_has_to_be_closed(
    make: Make, of_other: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make(clip=PLAN)
    called = brought_forward(window, monkeypatch)
    assert begin_baseline(window, of_other, tmp_path / "new") == "clip"
    assert called == [] and window.director.phase == Phase.welcome
    assert "start the program again" in words.say("desk.together.clip")


def test_a_sample_that_was_chosen_is_left_by_the_way_to_the_first_page(
    make: Make, fake: FakeWorld, of_other: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make()
    called = brought_forward(window, monkeypatch)
    window.use_clip()
    Person(window, fake).settle()
    assert begin_baseline(window, of_other, tmp_path / "new") == "sample" and called == []
    said = words.say("desk.together.sample")
    assert "first page" in said and "start the program again" not in said
    # What it says is enough.
    window.director.stop()
    Person(window, fake).settle()
    assert window.director.phase == Phase.welcome
    assert begin_baseline(window, of_other, tmp_path / "new") == "here"


def test_after_a_saved_session_without_a_plan_the_first_page_offers_it(
    make: Make, fake: FakeWorld, of_other: Path, tmp_path: Path
) -> None:
    window = make()
    own_session(window, fake)
    assert begin_baseline(window, of_other, tmp_path / "new") == "here"
    Person(window, fake).settle()
    director = window.director
    assert (
        director.phase == Phase.welcome and window.stack.currentWidget() is window.pages["welcome"]
    )
    # The camera is off, and nothing of that session goes into the next one.
    assert fake.service.stopped and not director.camera_on and director.saved is None
    Person(window, fake).choose("Begin the baseline")
    assert isinstance(director.task, AskGate)
    director.end_today()
    assert fake.recordings[-1].save().summary["person"] == "P-99"
    assert fake.recordings[-1].save().summary["baseline"] is True


def test_a_session_that_waits_for_its_place_is_not_left(
    make: Make, fake: FakeWorld, of_other: Path, tmp_path: Path
) -> None:
    window = make()
    own_session(window, fake, RunError("the disk is full"))
    assert window.director.unsaved
    assert begin_baseline(window, of_other, tmp_path / "new") == "busy"
    assert window.director.phase == Phase.summary and window.director.unsaved


def test_while_what_was_done_before_is_read_nothing_else_begins(
    make: Make, fake: FakeWorld, of_other: Path, tmp_path: Path
) -> None:
    window = make()
    director, own = window.director, plan_of(TURNS)
    window.pages["welcome"].offer(own)
    starts: list[Callable[[], object]] = [
        lambda: director.start_plan(own),
        lambda: director.report_practice(own),
    ]
    others = [*starts, director.start, director.open_tools, lambda: director.open_first("text")]
    for begin in starts:
        jobs = held_back(director)
        begin()
        assert len(jobs) == 1 and director.phase == Phase.welcome
        for other in others:
            other()
            assert director.phase == Phase.welcome and len(jobs) == 1 and not fake.services
        assert begin_baseline(window, of_other, tmp_path / "new") == "busy"
        assert director.baseline is None and window.pages["welcome"].plan == own
        jobs[0].done = True
        director.tick()
        made = fake.recordings[-1].save().summary
        assert made["person"] == "Wren" and made["baseline"] is False
        if director.conductor is not None:
            director.end_today()
        for job in jobs:
            # It is saved beside the window.
            job.done = True
        director.tick()
        assert director.at_rest
        director.leave_summary()
        fake.recordings.clear()


@pytest.mark.parametrize("mine", [True, False])
def test_a_session_takes_only_the_baseline_of_its_own_plan(
    make: Make, fake: FakeWorld, mine: bool
) -> None:
    director, own = make().director, plan_of(TURNS)
    wanted: Plan = own if mine else plan_of(TURNS, **OTHER)
    director.baseline = kept = Baseline(Path("there/new")).of(wanted)
    director.start_plan(own)
    made = fake.recordings[-1].save().summary
    assert made["person"] == "Wren" and made["baseline"] is mine
    # That of the other plan is still to be done.
    assert director.baseline == (None if mine else kept)
