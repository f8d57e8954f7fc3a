"""Whether all is over for today: what any session of today says of it, saved or not."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path
from typing import Any, cast

import pytest

from tests.practice.person import ALL_NO, SEATED, Person, plan_of
from tracker.exercises.watchers.falls import CUT_OFF, PossibleFall
from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.day import Day, Told, day_by, told_by
from tracker.practice.tasks import AskDayOver, AskGate, AskWell, DoSet, Over
from tracker.session.live import SAMPLE_CLIP
from tracker.session.saving import JOURNAL_NAME, MOVED_NAME, SUMMARY_NAME
from tracker.session.stage import Step
from tracker.session.summary_file import EventRow
from ui import wiring

TODAY = date.today()
PLAN = plan_of(SEATED, person="Wren")
#: What a person does until their session breaks off.
Happens = Callable[[Person, Conductor], object]


def unwell(_: Person, conductor: Conductor) -> None:
    conductor.unwell()
    assert isinstance(conductor.task, AskGate) and conductor.task.because == "unwell"


def red_flag(_: Person, conductor: Conductor) -> None:
    conductor.answer({**ALL_NO, "chest_pain": True})
    assert isinstance(conductor.task, Over)


def in_a_set(person: Person, conductor: Conductor) -> None:
    task = person.go_on(conductor, until=DoSet).task
    assert isinstance(task, DoSet) and task.asked is not None
    values = {"from_s": conductor.now_s, "to_s": conductor.now_s + 60.0, "step": "exercise"}
    conductor.begin_set(Step.model_validate(values | task.asked.step_values))


def drop(*, seen: bool) -> Happens:
    def happens(person: Person, conductor: Conductor) -> None:
        in_a_set(person, conductor)
        conductor.dropped(conductor.now_s + 2.0, seen=seen)
        assert isinstance(conductor.task, AskWell)

    return happens


def broken_off(happens: Happens, plan: Plan = PLAN) -> Path:
    """The folder of a real session that broke off there: nobody has saved it."""
    recording = wiring.make_planned(plan)
    person = Person()
    person.engine = cast(Any, recording)
    happens(person, Conductor(plan, recording))
    recording.close()
    assert [p.name for p in recording.folder.iterdir()] == [JOURNAL_NAME]
    return recording.folder


def told_today() -> list[Told]:
    return list(wiring.make_world().of_today(None))


def begin_again(plan: Plan = PLAN, **options: Any) -> Conductor:
    """The next session, with what is known by then; it stands where all was over for today."""
    known = {"history": wiring.history_of(plan), "of_today": told_today(), "today": TODAY}
    return Person().practise(plan, until=AskDayOver, **known | options)


@pytest.mark.parametrize(
    ("happens", "because"),
    [
        (unwell, ()),
        (red_flag, ("chest_pain",)),
        (drop(seen=True), ()),
        (drop(seen=False), None),
        (in_a_set, None),
    ],
    ids=["unwell", "red flag", "seen drop", "lost drop", "in a set"],
)
def test_a_session_that_broke_off_ends_the_day_though_nobody_saved_it(
    happens: Happens, because: tuple[str, ...] | None
) -> None:
    """By its journal, as it would have ended; that it can be saved is told of elsewhere."""
    folder = broken_off(happens)
    task = begin_again().task
    assert isinstance(task, Over) is (because is None)
    if because is not None:
        assert task == AskDayOver(because=because, final=bool(because))
    # Saved, it says the same.
    wiring.save_session(folder)
    assert type(begin_again().task) is type(task)


@pytest.mark.parametrize("spoilt", ["nothing", "head", "all"])
def test_what_was_saved_elsewhere_or_is_damaged_still_counts(spoilt: str) -> None:
    """Of a damaged one nobody knows whose it is; one that says nothing ends no day."""
    folder = broken_off(unwell)
    journal = (folder / JOURNAL_NAME).rename(folder / MOVED_NAME)
    first, *rest = journal.read_bytes().splitlines(keepends=True)
    left = {"nothing": [first, *rest], "head": [first[:30] + b"\n", *rest], "all": [first[:9]]}
    journal.write_bytes(b"".join(left[spoilt]))
    assert isinstance(begin_again().task, Over) is (spoilt == "all")


def test_journals_of_other_days_are_not_opened(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each is as large as a session; own choice: a day to spare for clocks of other zones."""
    folder = broken_off(unwell)
    path = folder / JOURNAL_NAME
    assert begin_again(today=TODAY + timedelta(days=1)).task == Over()
    past_s = path.stat().st_mtime - 2 * 86_400.0
    os.utime(path, (past_s, past_s))

    def opened(*_: object, **__: object) -> None:
        raise AssertionError("it was opened")

    monkeypatch.setattr("tracker.practice.history.read_journal", opened)
    assert told_today() == []


def test_what_the_sample_was_in_front_of_is_nobodys() -> None:
    recording = wiring.make_recording({"camera": {"name": SAMPLE_CLIP}})
    unwell(Person(), Conductor(PLAN, recording))
    recording.close()
    assert [t.ends for t in told_today()] == [False]


def test_a_day_is_over_but_for_who_is_named_as_another() -> None:
    """This project's own choice: to be wrong for somebody unnamed only makes them wait."""
    for theirs, mine, over in (
        ("Wren", "Wren", True),
        (None, "Wren", True),
        ("Finch", "Wren", False),
        ("Wren", None, True),
        (None, None, True),
    ):
        told = Told(TODAY, theirs, ends=True, because=("fall",))
        assert day_by([told], mine, TODAY) == (Day(True, ("fall",)) if over else Day())
        assert day_by([told], mine, TODAY + timedelta(days=1)) == Day()


@pytest.mark.parametrize(
    ("theirs", "mine", "final"),
    [("Wren", "Wren", True), (None, None, True), (None, "Wren", False), ("Wren", None, False)],
)
def test_an_emergency_is_final_for_whose_it_was(
    theirs: str | None, mine: str | None, final: bool
) -> None:
    """After what may have been somebody else's the therapist's word lets it go on."""
    told = Told(TODAY, theirs, ends=True, because=("chest_pain",))
    assert day_by([told], mine, TODAY) == Day(True, ("chest_pain",), final)


def test_what_lies_beside_in_the_clinics_folder_counts_where_it_names_them(tmp_path: Path) -> None:
    for name, plan in (("named", PLAN), ("unnamed", plan_of(SEATED, person=None))):
        broken_off(unwell, plan).rename(tmp_path / name)
    told = wiring.make_world().of_today(tmp_path / "next")
    assert [(t.person, t.ends) for t in told] == [("Wren", True)]
    assert told_today() == []


def test_beside_a_summary_that_is_damaged_the_journal_counts() -> None:
    folder = broken_off(unwell)
    (folder / SUMMARY_NAME).write_text("{")
    assert isinstance(begin_again().task, AskDayOver)


@pytest.mark.parametrize(("reason", "ends"), [("", True), (CUT_OFF, False)])
def test_who_was_seen_to_fall_before_anybody_was_asked_has_ended_the_day(
    reason: str, ends: bool
) -> None:
    person = Person()
    person.practise(PLAN)
    first, *others = person.summary.exercises
    fell = EventRow(code=PossibleFall.code, start_s=1.0, end_s=None, said_at_s=None, reason=reason)
    exercises = [first.model_copy(update={"events": [*first.events, fell]}), *others]
    broke_off = {"ended": "interrupted", "exercises": exercises, "after_drop": None}
    assert told_by(person.summary.model_copy(update=broke_off)).ends is ends


def test_by_a_summary_a_calm_session_ends_no_day() -> None:
    person = Person()
    person.practise(PLAN)
    assert not told_by(person.summary).ends
    for ended in ("stopped", "interrupted"):
        assert not told_by(person.summary.model_copy(update={"ended": ended})).ends
