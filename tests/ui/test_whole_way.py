"""From the first start to a saved session by keys alone, with a clip as the camera."""

from __future__ import annotations

from collections.abc import Callable
from itertools import count, cycle
from typing import Any

import pytest

from sample_clips import shipped_clip
from tests.ui.fakes import FakeWorld, Make, grey_picture, seen
from tests.ui.patient import ENTER, Person
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskScores,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    ShowToday,
    Wait,
)
from tracker.sample import Sample
from tracker.session.trace import load_trace
from ui import words
from ui.languages import CODES
from ui.session.first import STEPS
from ui.session.flow import Phase
from ui.widgets.basic import Words

#: What the clip shows, from its exact truth: where the head and the eyes were in each picture.
_MOVES = [
    f"{part}_{axis}"
    for part, axes in {
        "head": ("yaw_deg", "pitch_deg", "roll_deg", "x_mm", "y_mm", "z_mm"),
        "neck": ("x_mm", "y_mm", "z_mm"),
        "eye": ("yaw_deg", "pitch_deg", "open"),
        "gaze": ("yaw_deg", "pitch_deg"),
    }.items()
    for axis in axes
]


@pytest.fixture(scope="module")
def clip() -> list[Sample]:
    """The exercise of a sample clip: turns with the eyes on the target."""
    rows = load_trace(shipped_clip("turns-good").with_suffix(".truth.csv"))
    return [row for row in rows if row.step == "exercise"]


def played(clip: list[Sample], start_s: float) -> Callable[[float], Sample]:
    """A camera that sees the clip, over and over."""

    def look(time_s: float) -> Sample:
        row = clip[round((time_s - start_s) * 30) % len(clip)]
        return seen(time_s, **{name: getattr(row, name) for name in _MOVES})

    return look


class Whole:
    """The person, and a picture of every screen on the way."""

    def __init__(self, person: Person, folder: str) -> None:
        self.person, self._folder, self._number = person, folder, count(1)
        self.cut: list[str] = []
        self.told: tuple[str, ...] = ()

    def look(self, name: str) -> None:
        window = self.person.window
        where = f"{self._folder}/{next(self._number):02}-{name}"
        # In one language in every run; in the others where pictures are asked for.
        keep(window, where, always=self._folder.startswith("whole/en"))
        self.cut += [f"{name}: {text}" for text in cut_in(window)]


#: Each language in the text size in which the real measuring does not go through it
#: (``test_language_chosen.py``), so that both sizes of all are walked in every run.
OTHER_SIZES = list(zip(CODES, cycle((200, 100)), strict=False))


@pytest.mark.slow
@pytest.mark.parametrize(("language", "percent"), OTHER_SIZES)
def test_by_keys_alone_from_the_first_start_to_a_saved_session(
    make: Make, fake: FakeWorld, clip: list[Sample], language: str, percent: int
) -> None:
    window = make(first=None, language=language, percent=percent)
    window.resize(1366, 768)
    person = Person(window, fake)
    person.settle()
    whole = Whole(person, f"whole/{language}-{percent}")
    for step in STEPS:
        assert person.director.first_step == step
        if step == "camera":
            fake.service.picture = grey_picture()
            person.measured(0.5, seen)
        whole.look(f"first-{step}")
        if step != STEPS[-1]:
            person.choose("Go on")
    person.choose("Try it now")
    practise(whole, clip)
    assert person.director.phase == Phase.summary and person.director.saved is not None
    whole.look("summary")
    told: Any = window.pages["summary"]
    assert words.say("summary.try") in told.said.text()
    (done,) = person.director.saved.summary["exercises"]
    # The last of them was under way when the time was over.
    repetitions = words.number(done["done"]["repetitions"])
    assert words.say("ask.did", count=repetitions, goal="") in whole.told[0]
    # The clip has a turn a second, each way.
    assert done["done"]["turns"] >= 20 and done["done"]["measured_fraction"] > 0.9
    assert (person.director.saved.folder / "summary.json").exists()
    person.choose("Practise again")
    assert person.director.phase == Phase.welcome
    whole.look("welcome")
    assert not whole.cut


def practise(whole: Whole, clip: list[Sample]) -> None:
    """Answer whatever is asked, and do the set, until the summary stands."""
    person = whole.person
    last: object = None
    for _ in range(60):
        task = person.director.task
        if person.director.phase == Phase.summary:
            return
        if type(task) is not last:
            last = type(task)
            whole.look(type(task).__name__.lower())
        go_on(whole, task, clip)
    raise AssertionError(f"it goes on at {person.director.task}")


def go_on(whole: Whole, task: object, clip: list[Sample]) -> None:
    person = whole.person
    match task:
        case AskGate():
            person.choose("None of these")
        case AskScores():
            person.press("1", ENTER)
        case ShowToday():
            person.choose("Begin")
        case Prepare():
            person.choose("I am in place")
            whole.look("camera")
            person.set_up()
        case CountDown():
            person.measured(1.0, seen)
        case DoSet():
            person.measured(5.0, played(clip, person.fake.service.time_s))
            whole.look("set")
        case AskAfterSet():
            person.answer_set()
        case Settle():
            person.choose("I feel as usual again")
        case Rest():
            person.choose("Go on now")
        case Over():
            person.choose("Show what I did")
        case Wait():
            whole.told = person.director.set_told
            shown = [w.text() for w in person.window.findChildren(Words) if w.isVisible()]
            assert whole.told and set(whole.told) <= set(shown)
            person.wait(1.0)
        case _:
            raise AssertionError(f"nobody knows how to answer {task}")
