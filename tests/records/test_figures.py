"""What is told of a session: the summary's own numbers, in words, with nothing made up."""

from __future__ import annotations

import json
from math import inf, nan
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.records import made
from tracker.errors import InputError
from tracker.exercises.catalogue import CATALOGUE, NOT_MEASURED
from tracker.exercises.counters import CHANNELS
from tracker.exercises.events import PRIORITY
from tracker.plan.gate import QUESTIONS
from tracker.plan.offering import REFUSALS
from tracker.practice.tasks import NO_CAMERA
from tracker.records import terms
from tracker.records.figure import ASPECTS, SIDES, Making, number_text, shown
from tracker.records.figure import shown_with_unit as told
from tracker.records.figures import must_differ, record_of
from tracker.records.places import MOST_TEXT, Place, clean
from tracker.records.units import COUNT, DEGREES, PERCENT
from tracker.session.flags import _NOTES
from tracker.session.said import NOT_ANSWERED, NOT_SETTLED
from tracker.session.summary_file import ENDED, Summary
from tracker.session.weekly import FALLS, NO_FALL
from ui.documents.csv import sessions_csv
from ui.documents.fhir import fhir_bundle
from ui.documents.paragraph import paragraph


def data_of(summary: Summary) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(summary.model_dump_json())
    return found


def changed(way: str, value: Any) -> Summary:
    """The finished session with one value changed (``exercises.0.done``)."""
    data = data_of(made.finished())
    *parts, last = [int(p) if p.isdigit() else p for p in way.split(".")]
    place: Any = data
    for part in parts:
        place = place[part]
    place[last] = value
    return Summary.model_validate(data)


def test_the_figures_are_those_of_the_summary() -> None:
    summary = made.finished()
    turns, raw = record_of(summary).exercises[0], summary.exercises[0]
    assert raw.head is not None and raw.gaze is not None
    amplitude, gaze = raw.head["amplitude_deg"], raw.gaze["on_target_fraction"]
    wanted = {
        "repetitions": raw.done.repetitions,
        "repetitions.asked": 20,
        "amplitude_deg": amplitude["median"],
        "amplitude_deg.spread": amplitude["spread"],
        "amplitude_deg.right": amplitude["by_side"]["right"]["median"],
        "amplitude_deg.first_five": amplitude["first_five"]["median"],
        "amplitude_deg.asked": (15, 20),
        "on_target": 100 * gaze["value"],
        "clarity": "blurred",
        "dizziness.after": 4,
        "event.gaze_off_target": 2,
    }
    assert {k: f.value for k in wanted if (f := turns.find(k))} == wanted
    # The made-up person turned by 18 degrees and looked away twice.
    # Its distance isn't known: by lot 10 % and 1.27 degrees, each over 1.96, make 2.25 with k = 2.
    left = turns.find("amplitude_deg.left")
    assert left is not None and told(left) == "18.0 ± 2.3°" and left.side == "left"
    assert len({f.key for f in turns.figures}) == len(turns.figures)


def test_what_is_held_is_told_as_held_and_not_as_uncounted() -> None:
    stand = record_of(made.finished()).exercises[2]
    assert stand.find("repetitions") is None and stand.find("turns") is None
    assert stand.find("held") is not None and stand.find("sway.sideways") is not None
    assert [f.key for f in stand.figures if f.value is None] == ["dizziness.settled"]


def test_not_measured_is_unlike_zero() -> None:
    record = record_of(made.unseen())
    turns = record.exercises[0]
    repetitions, measured = turns.find("repetitions"), turns.find("measured")
    assert repetitions is not None and measured is not None
    assert told(repetitions) == "not measured (what it is counted from was never measured)"
    assert told(measured) == "0 %"
    assert turns.flags == ("measured only part of the time: 0 % of the time",)
    for e in record.exercises:
        assert all(f.reason for f in e.figures if f.value is None)
        assert not any(f.reason for f in e.figures if f.value is not None)


def test_who_stopped_unwell_is_read_first() -> None:
    record = record_of(made.unwell())
    assert record.alert == (
        "Answered yes: positional spin on bending, looking up or tilting",
        "Session stopped unwell; last exercise: x1 viewing, yaw",
    )
    assert record.ended_words.startswith("stopped unwell (positional spin")
    assert record_of(made.finished()).alert == ()


@pytest.mark.parametrize("ended", ENDED)
def test_every_end_but_the_usual_is_read_first(ended: str) -> None:
    alert = record_of(changed("ended", ended)).alert
    assert len(alert) == (0 if ended == "finished" else 1)
    assert all(terms.ENDED[ended] in line for line in alert)


def test_the_dizziness_since_the_last_time_is_told_and_a_gap_is_no_0() -> None:
    gate = data_of(made.finished())["gate"]
    gate["since_last"] = {"rest_of_day": 3, "next_morning": None}
    told_of = record_of(changed("gate", gate))
    found = {f.aspect: f for f in told_of.figures if f.measure == "since_last"}
    assert found["rest_of_day"].value == 3
    assert found["next_morning"].value is None and found["next_morning"].reason == "not asked"


def test_a_turn_against_a_mark_is_told_with_its_error_or_why_there_is_none() -> None:
    for mark, value, reason in (
        ({"error_deg": 0.8, "reason": None}, 0.8, None),
        ({"error_deg": None, "reason": "the mark was not looked at"}, None, "the mark was not"),
    ):
        setup = data_of(made.finished())["setup"] | {"mark": mark}
        (found,) = [f for f in record_of(changed("setup", setup)).figures if f.key == "mark_error"]
        assert found.value == value
        assert reason is None or reason in (found.reason or "")


@pytest.mark.parametrize(
    ("value", "reason", "seen", "alert", "said"),
    [
        ("fine", None, False, "Possible fall, lost on its way down: 1", "said to be all right"),
        ("fine", None, True, "Possible fall seen by the camera: 1", "said to be all right"),
        ("not_well", None, True, "Possible fall seen by the camera: 1", "said not to be well"),
        (None, "no_answer", True, "Possible fall seen by the camera: 1", "did not answer"),
        (None, "not_asked", True, "Possible fall seen by the camera: 1", "nobody was asked"),
    ],
)
def test_a_possible_fall_is_never_told_without_what_was_said_after_it(
    value: str | None, reason: str | None, seen: bool, alert: str, said: str
) -> None:
    """In every document, as text: what the camera saw, and the answer with it."""
    fall = {"code": "possible_fall", "start_s": 3.0, "end_s": 4.0, "said_at_s": 3.1}
    data = data_of(made.finished())
    for number in (0, 1):
        data["exercises"][number]["events"] = [fall]
    data["after_drop"] = {"value": value, "reason": reason, "seconds": 2.0, "seen": seen}
    record = record_of(Summary.model_validate(data))
    assert record.alert == (f"{alert.replace('1', '2')}; {said}",)
    # The answer that is kept is that to the last one.
    assert record.exercises[0].find("event.possible_fall.answer") is None
    told = record.exercises[1].find("event.possible_fall.answer")
    assert told is not None and told.value == said
    noticed = next(line for line in paragraph(record).splitlines() if line.startswith("Noticed"))
    assert noticed.count("possible fall 1") == 2 and f"possible fall 1 ({said})" in noticed
    whole = record.find("after_drop")
    assert whole is not None and whole.value == (None if value is None else said)
    assert value is not None or whole.reason == ("not asked" if reason == "not_asked" else said)
    for text in (fhir_bundle([record]), sessions_csv([record]).decode("utf-8-sig")):
        assert "Possible fall" in text
        assert said in text and "After a sudden drop of the head" in text


def test_falls_and_symptoms_that_stayed_are_read_first() -> None:
    fall = {"code": "possible_fall", "start_s": 3.0, "end_s": 4.0, "said_at_s": 3.1}
    record = record_of(changed("exercises.1.events", [fall]))
    assert record.alert == ("Possible fall seen by the camera: 1",)
    data = data_of(made.finished())
    data["symptoms"] |= {"settled_minutes": None, "reasons": {"settled_minutes": NOT_SETTLED}}
    record = record_of(Summary.model_validate(data))
    assert record.alert == ("Symptoms did not settle in the time that the plan allows",)
    settled = record.find("dizziness.settled")
    assert settled is not None and shown(settled) == "not settled"


WEEK = {"falls": "more", "hurt": True, "medicines_changed": False, "reasons": {}}


def test_what_was_told_of_the_week_is_among_the_figures_and_a_fall_is_read_first() -> None:
    record = record_of(changed("weekly", WEEK))
    found = {k: record.find(k) for k in ("falls", "hurt", "medicines_changed")}
    assert {k: f and f.value for k, f in found.items()} == {
        "falls": "more than one fall",
        "hurt": "yes",
        "medicines_changed": "no",
    }
    assert all(f is not None and f.origin == "reported" for f in found.values())
    assert record.alert == ("Told of falls in the last week: more than one fall, and was hurt",)
    calm = {"falls": "none", "hurt": None, "medicines_changed": None}
    passed = {"hurt": NO_FALL, "medicines_changed": NOT_ANSWERED}
    record = record_of(changed("weekly", calm | {"reasons": passed}))
    assert record.alert == () and record.find("hurt") is None
    medicines = record.find("medicines_changed")
    assert medicines is not None and shown(medicines) == NOT_ANSWERED
    # Where it was not their week, nothing is told of it.
    assert record_of(made.finished()).find("falls") is None


def test_a_session_in_which_nothing_was_measured_says_so_first() -> None:
    assert record_of(made.unseen()).alert == ("Nothing was measured in this session",)
    data = data_of(made.unseen())
    data["exercises"].append(data_of(made.finished())["exercises"][0])
    assert record_of(Summary.model_validate(data)).alert == ()
    # A walk is never watched, so that nothing is missing of it.
    data["exercises"] = [data["exercises"][0] | {"exercise": "walk"}]
    assert record_of(Summary.model_validate(data)).alert == ()


def test_what_was_not_begun_says_why() -> None:
    (left,) = record_of(made.finished()).left_out
    assert (left.entry_id, left.why) == ("nods", "no clip of it")


# --- words for every key ---


def test_there_are_words_for_every_key() -> None:
    assert set(PRIORITY) <= set(terms.EVENTS)
    watched = {w.name for e in CATALOGUE.values() for w in e.watchers}
    assert watched <= set(terms.EVENTS)
    assert set(QUESTIONS) <= set(terms.BECAUSE)
    assert {*REFUSALS, NO_CAMERA} <= set(terms.NOT_DONE)
    assert set(ENDED) == set(terms.ENDED)
    assert set(_NOTES) <= set(terms.FLAGS)
    assert set(FALLS) == set(terms.FALLS)
    assert {s for c in CHANNELS.values() for s in c.sides} <= set(SIDES)


def test_an_unknown_key_stands_for_itself() -> None:
    data = data_of(made.finished())
    data["exercises"][0]["exercise"] = "something-new"
    data["exercises"][0]["events"] = [
        {"code": "new_code", "start_s": 1, "end_s": 2, "said_at_s": None}
    ]
    e = record_of(Summary.model_validate(data)).exercises[0]
    event = e.find("event.new_code")
    assert e.name == "something-new" and event is not None and event.name == "New code"


def test_the_camera_limits_are_in_words() -> None:
    turns = record_of(made.finished()).exercises[0]
    assert turns.unmeasured == tuple(
        NOT_MEASURED[k] for k in CATALOGUE["turns-on-target"].not_measured
    )


# --- damage ---


@pytest.mark.parametrize(
    ("way", "value"),
    [
        ("exercises.0.head.amplitude_deg.median", "eighteen"),
        ("exercises.0.head.amplitude_deg.median", nan),
        ("exercises.0.head.amplitude_deg.median", inf),
        ("exercises.0.head.amplitude_deg.median", True),
        ("exercises.0.head.amplitude_deg.median", 10**400),
        ("exercises.0.head.amplitude_deg", [1, 2]),
        ("exercises.0.head.amplitude_deg.by_side", {"middle": {"median": 1}}),
        ("exercises.0.prescribed.amplitude_deg", [1, 2, 3]),
        ("exercises.0.prescribed.tempo_bpm", "fast"),
        ("exercises.0.gaze.on_target_fraction", 0.9),
        ("exercises.0.done.measured_fraction", nan),
        ("exercises.0.events.0.start_s", inf),
        ("exercises.0.repetitions_list.0.turns", 4),
        ("exercises.0.repetitions_list.0.turns.0.amplitude_deg", "x"),
        ("exercises.0.clarity.value", 3),
        ("exercises.0.symptoms.after", "bad"),
        ("setup.light", {}),
        ("setup.camera", "a camera"),
        ("gate.put_first", "fall"),
        ("started_at", "yesterday"),
        ("started_at", "2026-99-01"),
    ],
)
def test_damage_is_named_with_its_place(way: str, value: Any) -> None:
    with pytest.raises(InputError) as caught:
        record_of(changed(way, value))
    text = str(caught.value)
    assert way in text or f"{way}." in text or text.split(": ")[1].startswith(way.rsplit(".", 1)[0])
    assert "not a usable summary" in text and "\n" not in text


def test_parts_that_are_not_there_are_not_told() -> None:
    """A summary of which only the required fields are filled."""
    data = data_of(made.finished())
    data |= {"setup": {}, "gate": None, "symptoms": None, "person": None, "started_at": None}
    for e in data["exercises"]:
        e |= dict.fromkeys(("head", "eyes", "body", "gaze", "stillness", "symptoms"))
        e |= {"prescribed": {}, "clarity": {}, "eyes_closed_fraction": {}, "sway": {}}
    record = record_of(Summary.model_validate(data))
    assert record.person == "no person named" and record.when == "date not known"
    for figure in (*record.figures, *(f for e in record.exercises for f in e.figures)):
        assert figure.value is not None or figure.reason


def test_the_same_session_twice_is_refused() -> None:
    record, check = (
        record_of(made.finished()),
        record_of(made.without(made.unseen(), session_id=None)),
    )
    must_differ([("a", record), ("b", check)])
    with pytest.raises(InputError, match="c: is the same session as a"):
        must_differ([("a", record), ("b", check), ("c", record)])
    with pytest.raises(InputError, match="same session"):
        must_differ([("a", check), ("b", check)])


@pytest.mark.parametrize(
    ("started", "when"),
    [
        ("2026-03-01T09:30:00+01:00", "1 March 2026, 09:30 (UTC+01:00)"),
        ("2026-03-01T09:30:00-05:30", "1 March 2026, 09:30 (UTC-05:30)"),
        ("2026-03-01T23:05:00Z", "1 March 2026, 23:05 (UTC+00:00)"),
        ("2026-03-01T09:30:00", "1 March 2026, 09:30"),
        ("2026-03-01", "1 March 2026"),
        (None, "date not known"),
    ],
)
def test_when_it_was(started: str | None, when: str) -> None:
    assert record_of(changed("started_at", started)).when == when


# --- numbers and text ---


def test_numbers_have_their_decimals() -> None:
    assert number_text(-0.04, 1) == "0.0"
    assert number_text(-0.06, 1) == "-0.1"
    assert number_text(19.96, 1) == "20.0"
    assert number_text(0.4, 0) == "0" and number_text(1234.6, 0) == "1235"
    make = Making("g", "m", "M", DEGREES)
    assert told(make.of((15.0, 20.0))) == "15.0 to 20.0°"
    assert told(make.of((60.0, 60.0), unit=COUNT)) == "60"
    assert told(make.of(99.6, unit=PERCENT)) == "100 %"
    assert make.of(None).reason


def test_every_aspect_has_words() -> None:
    used: set[str] = set()
    for make in made.EXAMPLES.values():
        record = record_of(make())
        used |= {f.aspect for f in record.figures}
        used |= {f.aspect for e in record.exercises for f in e.figures}
    assert used <= set(ASPECTS)


@given(st.text(max_size=400))
def test_clean_text_is_one_safe_line(text: str) -> None:
    found = clean(text)
    assert len(found) <= MOST_TEXT and found == " ".join(found.split())
    bad = set("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\u200e\u200f\x00\x1b\x7f\n\t")
    assert not bad & set(found)
    found.encode("utf-8")


def test_clean_text_keeps_letters_of_all_scripts() -> None:
    assert clean("  Ænne\u202e שלום\n🙂 ") == "Ænne שלום 🙂"
    assert clean("x" * 5000) == "x" * (MOST_TEXT - 1) + "…"
    assert clean("\ud800a") == "a"
    assert Place("\x00\u202e").text() is None


def test_a_limit_without_its_figure_is_not_told() -> None:
    turns = record_of(made.unseen()).exercises[0]
    assert turns.find("on_target") is not None and turns.find("on_target.within") is None
    assert turns.find("counter_turn") is not None and turns.find("counter_turn.expected") is None


def test_each_exercise_tells_of_its_set_up_where_they_differ() -> None:
    record = record_of(made.finished())
    common = record.find("gaze_error_setup")
    assert common is not None and told(common) == "not measured (differs between the exercises)"
    own = [e.find("gaze_error_setup") for e in record.exercises]
    assert [f and told(f) for f in own] == ["0.6°", "0.9°", "0.6°"]
    alone = record_of(made.unseen())
    assert alone.find("gaze_error_setup.held_out") is not None
    assert alone.exercises[0].find("gaze_error_setup") is None


def test_a_stretch_that_was_not_measured_says_why() -> None:
    why = record_of(made.unseen()).exercises[0].find("event.not_measured.why")
    assert why is not None and why.value == "no face in the picture (1)"
