"""The patient's words for every exercise: they are there, short and easy to read."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from typing import get_args

import pytest

from tracker.exercises.catalogue import CATALOGUE, CAUTIONS, NOT_MEASURED
from tracker.plan.asked import Asked, asked_of
from tracker.plan.draft import empty_data, examine_draft
from tracker.plan.gate import QUESTIONS, Outcome
from tracker.plan.model import Entry, SymptomRules
from tracker.plan.offering import REFUSALS
from tracker.plan.symptoms import Start, judge_set
from ui import words
from ui.manner import care_keys, form_of, how_of
from ui.words.exercise import EXERCISE_WORDS
from ui.words.manner import MANNER_WORDS
from ui.words.safety import SAFETY_WORDS

#: About reading age 10 is US grade 5; one grade is left for how roughly syllables are counted.
MOST_GRADE = 6.0
#: A heading of the practice screen: longer ones take the target's room.
LONGEST_NAME = 38


def syllables(word: str) -> int:
    """Vowel groups, without a silent e at the end: the usual rough count."""
    word = word.lower()
    groups = len(re.findall(r"[aeiouy]+", word))
    if re.search(r"[^aeiouyl]e(d|s)?$", word) and not re.search(r"(t|d)ed$", word):
        groups -= 1
    return max(groups, 1)


def grade_of(sentences: int, words: int, syllables: int) -> float:
    """Flesch-Kincaid grade level of counts (Kincaid JP et al. 1975)."""
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59


def grade(text: str) -> float:
    """Flesch-Kincaid grade level of a text."""
    sentences = max(len(re.findall(r"[.!?](\s|$)", text)), 1)
    found = re.findall(r"[A-Za-z']+", text)
    return grade_of(sentences, len(found), sum(syllables(w) for w in found))


def test_the_formula_tells_hard_from_easy() -> None:
    hard = (
        "Perform alternating horizontal cervical rotation while maintaining continuous "
        "foveal fixation upon the stationary target."
    )
    # The example that the package flesch-kincaid gives for its own counts.
    assert grade_of(1, 13, 26) == pytest.approx(13.08, abs=0.005)
    assert grade(hard) > 15
    assert grade("The cat sat on the mat.") < 1
    assert [syllables(w) for w in ("head", "shoulders", "move", "lifted", "moved", "target")] == [
        1,
        2,
        1,
        2,
        1,
        2,
    ]


@pytest.mark.parametrize("exercise", sorted(CATALOGUE))
def test_every_exercise_says_what_and_how(exercise: str) -> None:
    name, how = EXERCISE_WORDS[f"exercise.{exercise}"], EXERCISE_WORDS[f"exercise.{exercise}.how"]
    assert words.has(f"exercise.{exercise}")
    assert len(str(name)) <= LONGEST_NAME
    assert grade(str(how)) <= MOST_GRADE, how
    longest = max(len(s.split()) for s in re.split(r"[.!?]", str(how)))
    assert longest <= 17, how


MANNERS = {("closed",), ("paper",), ("soft",), ("soft", "closed"), ("wall",)}


@pytest.mark.parametrize("key", sorted(MANNER_WORDS))
def test_every_other_manner_is_plain(key: str) -> None:
    assert grade(str(MANNER_WORDS[key])) <= MOST_GRADE
    _, *of = key.split(".")
    assert of in (["shake"], ["shut"]) or (of[0] in CATALOGUE and tuple(of[1:]) in MANNERS)


@pytest.mark.parametrize(
    ("surface", "eyes", "feet"),
    [
        ("firm", "open", "as wide as your shoulders"),
        ("firm", "closed", "as wide as your shoulders"),
        ("soft", "open", "as wide as your hips"),
        ("soft", "closed", "as wide as your hips"),
    ],
)
def test_how_to_stand_in_the_corner_on_each_surface(surface: str, eyes: str, feet: str) -> None:
    """Feet as the programme has them; who looks, looks at a mark at eye height."""
    form = {"surface": surface, "eyes": eyes}
    entry = Entry.model_validate({"entry_id": "e", "exercise": "stand", **form})
    for paper in (False, True):
        how = how_of(asked_of(entry), paper=paper)
        assert f"feet {feet}" in how
        assert ("mark on the wall, as high as your eyes" in how) == (eyes == "open")
        assert ("Keep your eyes shut" in how) == (eyes == "closed")


def every_form() -> Iterator[Asked]:
    """Every exercise in every form that a plan may ask for."""
    for exercise in CATALOGUE.values():
        for eyes, posture, surface, shake in product(
            ("open", "closed"), ("sitting", "standing", "walking"), ("firm", "soft"), (True, False)
        ):
            form = {"eyes": eyes, "posture": posture, "surface": surface, "head_shake": shake}
            entry = {"entry_id": "e", "exercise": exercise.id, "note": "As agreed."} | form
            data = empty_data() | {"entries": [entry]}
            plan = examine_draft(data).plan
            if plan is not None:
                yield asked_of(plan.entries[0])


def test_no_words_speak_against_the_form_that_a_plan_asks_for() -> None:
    forms = list(every_form())
    assert len(forms) > 80
    for asked in forms:
        for paper in (False, True):
            told = f"{how_of(asked, paper=paper)} {' '.join(form_of(asked))}".lower()
            cares = " ".join(words.say(f"care.{k}") for k in care_keys(asked)).lower()
            where = (asked.exercise.id, asked, told)
            assert ("mat" in re.findall(r"[a-z]+", told)) == (asked.surface == "soft"), where
            assert ("the mat must" in cares) == (asked.surface == "soft"), where
            if asked.eyes == "closed":
                assert "eyes closed" in told and "look straight" not in told, where
                assert "look at the mark" not in told, where
                assert "shut" in how_of(asked, paper=paper).lower(), where
            turns = "turn your head" in told or "turning your head" in told
            assert turns or not asked.head_shake, where
            assert not re.search(r"\b(five|ten with|twenty)\b", told), where
            if asked.posture == "standing" and asked.exercise.channel != "head_rise":
                assert not re.search(r"\bsit\b", told), where
            if asked.posture == "walking":
                assert "corner" not in cares, where
            if asked.posture == "sitting":
                assert not re.search(r"\bstand\b", told), where
            if paper:
                assert "camera" not in told and "picture" not in told, where


@pytest.mark.parametrize("key", sorted(CAUTIONS))
def test_every_caution_is_plain(key: str) -> None:
    assert grade(str(EXERCISE_WORDS[f"care.{key}"])) <= MOST_GRADE


@pytest.mark.parametrize("key", sorted(NOT_MEASURED))
def test_every_limit_has_words(key: str) -> None:
    assert EXERCISE_WORDS[f"unmeasured.{key}"]


@pytest.mark.parametrize("key", sorted(SAFETY_WORDS))
def test_words_of_safety_are_plain(key: str) -> None:
    assert words.has(key)
    assert grade(str(SAFETY_WORDS[key])) <= MOST_GRADE, SAFETY_WORDS[key]


def test_every_decision_has_words() -> None:
    needed = {f"gate.{q}" for q in QUESTIONS} | {f"refused.{r}" for r in REFUSALS}
    needed |= {f"gate.outcome.{o}" for o in get_args(Outcome) if o not in ("go", "ask")}
    start = Start(5)
    for scores, settled, minutes in (({}, True, 1), ({"dizziness": 9}, True, 1)):
        needed.add(f"symptoms.{judge_set(SymptomRules(), start, scores, settled, minutes).reason}")
    for settled, minutes in ((False, 1), (False, 9)):
        found = judge_set(SymptomRules(), start, {"dizziness": 1}, settled, minutes)
        needed.add(f"symptoms.{found.reason}")
    assert needed <= set(SAFETY_WORDS)
    assert len([n for n in needed if n.startswith("symptoms.")]) == 4


def test_no_words_without_an_exercise() -> None:
    for key in EXERCISE_WORDS:
        kind, name, *_ = key.split(".")
        known = {"exercise": CATALOGUE, "care": CAUTIONS, "unmeasured": NOT_MEASURED}[kind]
        assert name in known, key
