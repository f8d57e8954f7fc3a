"""The example of DEVELOPERS.md ("A new exercise"), put into the program as it stands there."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from tests.exercises import test_catalogue
from tests.plan.examples import changed
from tests.session.synthetic import TO_S, steps, turns_samples
from tracker.exercises.catalogue import CATALOGUE, OPTIONS, PERMISSIONS, Exercise, gaze
from tracker.exercises.catalogue.permissions import _LETTERS
from tracker.plan.files import examine
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from ui import words
from ui.figures import movements

TEXT = Path(__file__).parents[2].joinpath("DEVELOPERS.md").read_text("utf-8")
SECTION = TEXT.split("\n## A new exercise\n")[1].split("\n## ")[0]
ENTRY, WORDS, DRAWING = re.findall(r"```python\n(.*?)```", SECTION, re.DOTALL)
(ROW,) = re.findall(r"```text\n(.*?)```", SECTION, re.DOTALL)
NEW = "turns-small-quick"


@pytest.fixture
def new(monkeypatch: pytest.MonkeyPatch) -> Exercise:
    """The exercise, wherever the section says that it has to be written down."""
    made: Any = eval(ENTRY, dict(vars(gaze)))
    told: Any = eval(WORDS, {"QT_TRANSLATE_NOOP": lambda _, text: text})
    drawn: Any = eval(DRAWING, dict(vars(movements)))
    name, *letters = ROW.split()
    row = {o: _LETTERS[letter] for o, letter in zip(OPTIONS, letters, strict=True)}
    assert name == NEW == made.id and NEW not in CATALOGUE
    monkeypatch.setitem(CATALOGUE, NEW, made)
    monkeypatch.setitem(PERMISSIONS, NEW, row)
    for key, text in told.items():
        monkeypatch.setitem(words.WORDS, key, text)
    for key, movement in drawn.items():
        monkeypatch.setitem(movements.MOVEMENTS, key, movement)
    assert isinstance(made, Exercise)
    return made


def test_it_holds_what_the_catalogue_asks_of_every_entry(new: Exercise) -> None:
    test_catalogue.test_channel_and_watchers_exist(new)
    test_catalogue.test_the_dose_and_every_default_say_where_they_come_from(new)
    test_catalogue.test_words_cautions_and_limits(new)
    test_catalogue.test_what_is_not_counted_says_so(new)
    test_catalogue.test_what_is_watched_is_what_must_be_seen(new)
    test_catalogue.test_the_usual_form_is_permitted(new)


def test_without_its_row_or_its_source_that_is_noticed(new: Exercise) -> None:
    with pytest.raises(KeyError):
        test_catalogue.test_the_usual_form_is_permitted(replace(new, id="turns-unknown"))
    unsourced = replace(new, sources={"dose": new.sources["dose"]})
    with pytest.raises(AssertionError):
        test_catalogue.test_the_dose_and_every_default_say_where_they_come_from(unsourced)


def test_it_has_its_words_and_its_drawing(new: Exercise) -> None:
    assert words.say(f"exercise.{new.id}") and words.say(f"exercise.{new.id}.how")
    assert new.id in movements.MOVEMENTS


def test_a_plan_may_ask_for_it(new: Exercise) -> None:
    def problems(exercise: str) -> list[str]:
        return [f.text for f in examine(changed("entries.3.exercise", exercise))[1]]

    assert problems(new.id) == problems("nods-together")
    assert any("there is no exercise" in message for message in problems("turns-unknown"))


def test_it_is_counted_and_its_watchers_speak_up(new: Exercise) -> None:
    """One and a half beats a second for 20 s: 15 there and back; then larger ones than asked."""
    for amplitude, codes in ((8.0, set()), (16.0, {"too_large"})):
        samples = turns_samples(f_hz=0.75, amplitude=amplitude, noise=0.1)
        record = run_samples(samples, steps(new.id, tempo_bpm=new.tempo_bpm), SessionInfo())
        (found,) = summarise(record).exercises
        assert found.done.repetitions == pytest.approx(0.75 * (TO_S - 2.0), abs=1)
        assert found.prescribed["repetitions"] == new.dose_repetitions
        assert {e.code for e in found.events} == codes
