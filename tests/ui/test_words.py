"""Words: there are some for every key that the tracker may say."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest

import ui
from tracker.exercises.catalogue import CATALOGUE
from tracker.exercises.events import PRIORITY
from tracker.sample import REASONS
from tracker.vision.messages import SourceState
from ui import words
from ui.keys import KEYS
from ui.reading import noticed, rows_of, session_rows
from ui.session.flow import TROUBLES


@pytest.mark.parametrize("key", REASONS)
def test_every_reason_has_words(key: str) -> None:
    assert words.has(f"reason.{key}")


@pytest.mark.parametrize("code", PRIORITY)
def test_every_cue_has_words(code: str) -> None:
    assert words.has(f"cue.{code}")
    assert words.has(f"event.{code}")


@pytest.mark.parametrize("state", sorted(TROUBLES))
def test_every_trouble_says_what_it_is_and_what_to_do(state: SourceState) -> None:
    assert words.has(f"trouble.{state}") and words.has(f"trouble.{state}.do")


@pytest.mark.parametrize("exercise", sorted(CATALOGUE))
def test_every_exercise_has_a_name(exercise: str) -> None:
    assert words.has(f"exercise.{exercise}")


def test_every_key_that_the_pages_use_exists() -> None:
    used: set[str] = set()
    for path in Path(ui.__file__).parent.rglob("*.py"):
        used |= set(re.findall(r'say\(\s*"([a-z_.\-]+)"', path.read_text(encoding="utf-8")))
    assert used
    assert {k for k in used if not words.has(k)} == set()


def test_words_can_be_translated() -> None:
    for key, text in words.WORDS.items():
        assert isinstance(text, str) and text, key


def test_no_key_does_two_things() -> None:
    sequences = [k.sequence for k in KEYS]
    assert len(sequences) == len(set(sequences))


def test_what_was_not_measured_is_not_a_number() -> None:
    rows = rows_of(
        {
            "prescribed": {"repetitions": 10, "amplitude_deg": [15, 20], "tempo_bpm": 60},
            "done": {"repetitions": 0, "measured_fraction": 0.0},
            "head": {
                "amplitude_deg": {"median": None, "by_side": {}},
                "peak_speed_deg_s": {"median": None},
                "tempo_bpm": {"median": None},
            },
            "gaze": {"on_target_fraction": {"value": None}},
            "events": [],
        }
    )
    values = {r.label: r.value for r in rows}
    assert values["Repetitions"] == "0"
    assert values["Measured"] == "0 % of the time"
    for label in ("To the left", "To the right", "Fastest in a turn", "Tempo"):
        assert values[label] is None
    assert values["Eyes on the target"] is None


def test_a_measured_set_reads_in_plain_words() -> None:
    rows = rows_of(
        {
            "prescribed": {"repetitions": 8, "amplitude_deg": [15, 20], "tempo_bpm": 60},
            "done": {"repetitions": 8, "measured_fraction": 0.98},
            "head": {
                "amplitude_deg": {"by_side": {"left": {"median": 17.6}, "right": {"median": 18.2}}},
                "peak_speed_deg_s": {"median": 57.2},
                "tempo_bpm": {"median": 59.6},
            },
            "gaze": {"on_target_fraction": {"value": 0.912}},
            "events": [{"code": "gaze_off_target"}, {"code": "gaze_off_target"}],
        }
    )
    values = {r.label: r.value for r in rows}
    assert values["To the left"] == "18 degrees"
    assert values["Tempo"] == "60 turns a minute"
    assert values["Eyes on the target"] == "91 % of the time"
    assert values["Noticed"] == "eyes left the target 2 times"
    asked = {r.label: r.asked for r in rows}
    assert asked["To the right"] == "asked: 15 to 20 degrees"


def test_nothing_noticed_is_said() -> None:
    assert noticed([]) == "nothing to mention"


def test_a_hold_and_stands_read_in_plain_words() -> None:
    held = {
        "prescribed": {"repetitions": None, "seconds": 30.0},
        "done": {"repetitions": None, "held_s": 27.6, "measured_fraction": 1.0},
        "events": [],
    }
    rows = {r.label: r for r in rows_of(held)}
    assert rows["Held"].value == "28 seconds" and rows["Held"].asked == "asked: 30 seconds"
    # The posts are of the numbers that stand beside them.
    assert rows["Held"].share == (28.0, 30.0)
    assert "Repetitions" not in rows and "To the left" not in rows
    stands = {
        "prescribed": {"repetitions": 20},
        "done": {"repetitions": 19, "held_s": None, "measured_fraction": 1.0},
        "body": {"rhythm_s": {"median": 4.2}},
        "events": [{"code": "not_upright"}],
    }
    rows = {r.label: r for r in rows_of(stands)}
    assert rows["Repetitions"].value == "19" and rows["Time for each"].value == "4 seconds"
    assert rows["Noticed"].value == "not all the way up once"
    assert "Held" not in rows


def test_of_what_was_asked_for_as_a_time_a_session_says_how_long_it_went_on() -> None:
    """Else nothing would stand beside the count, and no posts: most turns are asked for so."""
    turns = {
        "exercise": "turns-on-target",
        "prescribed": {"repetitions": None, "seconds": 30.0},
        "done": {"repetitions": 9, "duration_s": 29.8},
    }
    (row,) = session_rows({"exercises": [turns]})
    assert (row.value, row.asked) == ("9 times", "asked: 30 seconds")
    assert row.share == (30.0, 30.0)
    left = {**turns, "done": {"repetitions": 3, "duration_s": 12.0}}
    by_count = {**turns, "prescribed": {"repetitions": 12, "seconds": None}}
    rows = session_rows({"exercises": [left, by_count]})
    assert (rows[0].value, rows[0].share) == ("12 seconds, 3 times", (12.0, 30.0))
    assert (rows[1].value, rows[1].asked) == ("9 times", "asked: 12")
    assert rows[1].share == (9.0, 12.0)


def test_near_and_far_says_how_far_the_eyes_turned_in_and_no_speed() -> None:
    rows = rows_of(
        {
            "prescribed": {"repetitions": 10},
            "done": {"repetitions": 9, "measured_fraction": 0.97},
            "eyes": {"vergence_change_deg": {"median": 6.2}, "tempo_bpm": {"median": 20.0}},
            "events": [],
        }
    )
    values = {r.label: r.value for r in rows}
    assert values["How far your eyes turned in"] == "6 degrees"
    assert "Fastest in a turn" not in values and "To the left" not in values


def test_a_path_in_an_arabic_sentence_keeps_its_order(spoken: Callable[[str], None]) -> None:
    key = next(k for k, text in words.WORDS.items() if k.startswith("told.") and "{" in str(text))
    field = re.findall(r"{(\w+)}", str(words.WORDS[key]))
    english = str(words.WORDS[key]).format(**dict.fromkeys(field, "/home/wren/file.age"))
    spoken("de")
    assert "/home/wren/file.age" in words.told(english) and "\u2066" not in words.told(english)
    spoken("ar")
    # Without the marks Qt puts the first stroke at the other end.
    assert "\u2066/home/wren/file.age\u2069" in words.told(english)
