"""The words of a plan: the same for the same content, others for any change."""

from __future__ import annotations

import json
from itertools import combinations

import pytest

from tests.handover.made import pair, plan_with
from tests.plan.examples import TEXT, changed
from tracker.handover.fingerprint import WORDS, plan_words
from tracker.handover.word_list import WORD_LIST
from tracker.plan.files import format_plan, parse_plan


def letters_apart(one: str, other: str) -> int:
    """How many letters have to be changed, added or left out."""
    row = list(range(len(other) + 1))
    for i, a in enumerate(one, 1):
        before, row = row, [i]
        for j, b in enumerate(other, 1):
            row.append(min(before[j] + 1, row[-1] + 1, before[j - 1] + (a != b)))
    return row[-1]


def test_the_list_has_a_word_for_each_byte_and_none_is_like_another() -> None:
    assert len(WORD_LIST) == len(set(WORD_LIST)) == 256
    assert all(w.isascii() and w.islower() and w.isalpha() and 3 <= len(w) <= 9 for w in WORD_LIST)
    near = [(a, b) for a, b in combinations(WORD_LIST, 2) if letters_apart(a, b) < 2]
    assert not near


def test_the_words_are_fixed_for_ever() -> None:
    # Two versions of the program have to say the same of the same plan.
    assert " ".join(plan_words(parse_plan(TEXT))) == (
        "puppet flag honey flag kayak umbrella banana mustard"
    )


def test_layout_and_line_ends_of_the_file_change_nothing() -> None:
    words = plan_words(parse_plan(TEXT))
    assert len(words) == WORDS
    data = json.loads(TEXT)
    back = json.dumps(dict(reversed(data.items())))
    for text in (TEXT.replace("\n", "\r\n"), json.dumps(data), back):
        assert plan_words(parse_plan(text)) == words
    assert plan_words(parse_plan(format_plan(parse_plan(TEXT)))) == words


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("person", "P-08"),
        ("words", "Little and often!"),
        ("neck_limit_deg.yaw", 31),
        ("entries.0.repetitions", 13),
        ("entries.2.support", "helper"),
        ("hand_over", {"plain": True}),
    ],
)
def test_any_change_of_the_plan_gives_other_words(path: str, value: object) -> None:
    before = plan_words(parse_plan(TEXT))
    after = plan_words(parse_plan(changed(path, value)))
    assert (after != before) == (parse_plan(changed(path, value)) != parse_plan(TEXT))
    if path != "entries.2.support":
        assert after != before


def test_another_key_gives_other_words() -> None:
    assert plan_words(plan_with(pair(0)[1])) != plan_words(plan_with(pair(1)[1]))
    assert plan_words(plan_with(pair(0)[1])) != plan_words(plan_with(pair(0)[1], pair(1)[1]))
