"""What a plan may ask for: what is refused, and what is let through."""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.plan.examples import TEXT, changed
from tracker.errors import InputError
from tracker.exercises.catalogue import CATALOGUE, OPTIONS, PERMISSIONS, Option, permission
from tracker.plan.asked import asked_of, least_support
from tracker.plan.draft import examine_draft
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.lines import field_name
from tracker.plan.model import Entry, Plan
from tracker.plan.rules import minutes_of, remarks
from tracker.plan.starter import seated_starter, starter_plan


def with_entry(**fields: Any) -> str:
    """The example with one more entry."""
    data = json.loads(TEXT)
    data["entries"].append({"entry_id": "new", **fields})
    return json.dumps(data, indent=1)


REFUSED: list[tuple[dict[str, Any], str]] = [
    ({"exercise": "spin"}, "exercise: there is no exercise 'spin'"),
    ({"exercise": "hand-toss", "eyes": "closed"}, "eyes: hand-toss with the eyes closed is not"),
    ({"exercise": "walk", "head_shake": True}, "head_shake: walk with a head shake is not given"),
    ({"exercise": "stand-head-shake", "head_shake": False}, "head_shake: stand-head-shake is done"),
    ({"exercise": "remembered-target", "eyes": "open"}, "eyes: remembered-target is done with"),
    ({"exercise": "stairs", "eyes": "closed"}, "never while tossing, walking, on stairs"),
    ({"exercise": "partner-turns", "head_shake": True}, "or with a partner"),
    ({"exercise": "turns-on-target", "posture": "walking"}, "posture: turns-on-target walking"),
    ({"exercise": "near-far", "surface": "soft"}, "surface: near-far on a soft surface is not"),
    ({"exercise": "stand", "support": "none"}, "support: stand (standing) needs the support"),
    (
        {"exercise": "stand", "eyes": "closed", "support": "corner_and_chair"},
        "support: stand (standing, with the eyes closed) needs the support 'helper'",
    ),
    (
        {"exercise": "turns-together", "posture": "standing", "eyes": "closed", "support": "none"},
        "needs the support 'helper'",
    ),
    ({"exercise": "walk", "support": "corner_and_chair"}, "needs the support 'helper'"),
    ({"exercise": "nods-together", "repetitions": 5, "seconds": 5}, "seconds: give repetitions or"),
    ({"exercise": "stand", "repetitions": 5}, "repetitions: stand is held: give seconds"),
    ({"exercise": "stand", "tempo_bpm": 60}, "tempo_bpm: stand is held: it has no tempo"),
    (
        {"exercise": "follow-slowly", "tempo_bpm": [20, 41]},
        "tempo_bpm: follow-slowly goes at 40 beats a minute at most",
    ),
    ({"exercise": "moving-background", "seconds": 20}, "note: moving-background needs a note"),
    ({"exercise": "near-far", "amplitude_deg": [5, 9]}, "near-far is not measured in degrees"),
    ({"exercise": "turns-x2", "amplitude_deg": [20, 10]}, "the least comes first, then the most"),
    ({"exercise": "turns-x2", "amplitude_deg": [20, 31]}, "beyond the neck limit of 30"),
    (
        {"exercise": "nods-x2", "ladder": [{"from_week": 3, "amplitude_deg": [15, 21]}]},
        "ladder[0].amplitude_deg: asks for up to 21 degrees, beyond the neck limit of 20",
    ),
    ({"exercise": "nods-x2", "ladder": [{"from_week": 3}]}, "ladder[0]: changes nothing"),
    (
        {
            "exercise": "nods-x2",
            "ladder": [{"from_week": 3, "tempo_bpm": 70}, {"from_week": 3, "tempo_bpm": 80}],
        },
        "ladder[1].from_week: must be later than the rung before",
    ),
    ({"exercise": "walk", "wall": {}}, "wall: walk can't be done with marks on the wall"),
    ({"exercise": "turns-x2", "wall": {}}, "wall: turns-x2 can't be done with marks"),
    (
        {"exercise": "turns-on-target", "wall": {"distance_mm": 1500, "spacing_mm": 400}},
        "wall.spacing_mm: turns-on-target has one mark",
    ),
    (
        {"exercise": "eyes-side-to-side", "wall": {"distance_mm": 1500, "spacing_mm": 900}},
        "wall.spacing_mm: the marks would lie 16.7 degrees to each side: from this far away they "
        "must be 263 to 637 mm apart",
    ),
    (
        {"exercise": "eyes-side-to-side", "wall": {"distance_mm": 1500, "spacing_mm": 150}},
        "the marks would lie 2.9 degrees to each side",
    ),
    (
        {"exercise": "eyes-side-to-side", "wall": {"spacing_mm": 1400}},
        "wall.spacing_mm: must be 158 to 1275 mm, or no distance from the wall fits it",
    ),
    (
        {"exercise": "turns-on-target", "wall": {"above_mm": 700}},
        # 3000 * tan(12 degrees)
        "wall.above_mm: must be 637 mm at most",
    ),
    (
        {"exercise": "eyes-side-to-side", "wall": {"spacing_mm": 200, "right_mm": -300}},
        # 100 mm to each side are 5 degrees from 1140 mm away: 1140 * tan(12 degrees).
        "wall.right_mm: must be 242 mm at most",
    ),
    (
        {"exercise": "eyes-then-head", "amplitude_deg": [2, 3], "wall": {}},
        "wall: the range or the neck limit leaves 3 degrees to each side",
    ),
    (
        {"exercise": "turns-on-target", "wall": {"distance_mm": 800}},
        "wall.distance_mm: must be 900",
    ),
    ({"exercise": "turns-on-target", "wall": {"distance_mm": 3001}}, "must be 3000 or less"),
    (
        {"exercise": "nods-on-target", "wall": {"distance_mm": 1000, "right_mm": -300}},
        "wall.right_mm: would lie 16.7 degrees to the side of the camera: 212 mm at most",
    ),
    (
        {"exercise": "nods-on-target", "wall": {"distance_mm": 1000, "above_mm": 400}},
        "wall.above_mm: would lie 21.8 degrees above or below the camera",
    ),
    ({"exercise": "walk", "stage": "later"}, "stage: there is no stage 'later'"),
    ({"exercise": "moving-background"}, "note: moving-background needs a note"),
    (
        {"exercise": "walk", "unlock_after": {"condition": "x", "after": "new", "sessions": 2}},
        "unlock_after.after: 'new' is no entry or stage further up",
    ),
    (
        {"exercise": "walk", "unlock_after": {"condition": "x", "clear": True}},
        "unlock_after: figures need the entry",
    ),
]


def test_marks_on_the_wall_are_refused_for_the_exercise_or_for_shut_eyes() -> None:
    def said(**fields: Any) -> list[str]:
        found = examine_draft(json.loads(with_entry(**fields))).faults
        return [f.text for f in found if f.path[-1] == "wall"]

    assert said(exercise="walk", wall={}) == ["walk can't be done with marks on the wall"]
    assert said(exercise="turns-on-target", eyes="closed", wall={}) == [
        "turns-on-target with the eyes closed can't be done with marks on the wall"
    ]
    assert said(exercise="turns-on-target", wall={}) == []


@pytest.mark.parametrize(("fields", "says"), REFUSED, ids=lambda v: str(v)[:40])
def test_refused(fields: dict[str, Any], says: str) -> None:
    with pytest.raises(InputError) as caught:
        parse_plan(with_entry(**fields), "p.json")
    message = str(caught.value)
    assert says in message and "entries[4]" in message
    assert "(and" not in message, "one mistake must give one fault"


LET_THROUGH: list[dict[str, Any]] = [
    {"exercise": "hand-toss", "posture": "standing", "support": "corner_and_chair"},
    {"exercise": "turns-together", "eyes": "closed", "support": "none"},
    {"exercise": "turns-together", "posture": "standing", "eyes": "closed", "support": "helper"},
    {"exercise": "stand", "surface": "soft", "support": "corner_and_chair"},
    {"exercise": "stand", "eyes": "closed", "surface": "soft", "support": "helper"},
    {"exercise": "stand-head-shake", "support": "helper", "tempo_bpm": [30, 50]},
    {"exercise": "walk"},
    {"exercise": "eyes-up-down", "wall": {"distance_mm": 900, "spacing_mm": 300}, "note": "x"},
    {"exercise": "eyes-side-to-side", "wall": {"distance_mm": 1500, "spacing_mm": 637}},
    {"exercise": "eyes-side-to-side", "wall": {"above_mm": 0}},
    {"exercise": "eyes-then-head", "wall": {"distance_mm": 1500, "spacing_mm": 1000}},
    {"exercise": "turns-on-target", "posture": "standing", "wall": {"distance_mm": 3000}},
    {"exercise": "turns-x2", "amplitude_deg": [20, 30]},
    {"exercise": "moving-background", "note": "A hand's breadth, slower than walking pace."},
    {"exercise": "walk", "unlock_after": {"condition": "x", "after": "corner", "sessions": 2}},
    {"exercise": "walk", "unlock_after": {"condition": "When I say so."}},
]


@pytest.mark.parametrize("fields", LET_THROUGH, ids=lambda v: str(v)[:60])
def test_let_through(fields: dict[str, Any]) -> None:
    assert len(parse_plan(with_entry(**fields)).entries) == 5


#: How a plan asks for an option.
ASKED_AS: dict[Option, dict[str, Any]] = {
    "eyes_closed": {"eyes": "closed"},
    "head_shake": {"head_shake": True},
    "sitting": {"posture": "sitting"},
    "standing": {"posture": "standing"},
    "walking": {"posture": "walking"},
    "soft_surface": {"surface": "soft"},
}


@pytest.mark.parametrize("option", OPTIONS)
@pytest.mark.parametrize("exercise", PERMISSIONS)
def test_a_plan_gets_what_the_table_gives(exercise: str, option: Option) -> None:
    def plan_with(support: str) -> Plan:
        note = "For the way to work."
        fields = {"exercise": exercise, "note": note, "support": support, **ASKED_AS[option]}
        return parse_plan(with_entry(**fields))

    given = permission(exercise, option)
    if given == "never":
        # Not even with a helper.
        with pytest.raises(InputError, match=f"{next(iter(ASKED_AS[option]))}: {exercise} .* not"):
            plan_with("helper")
        return
    assert plan_with("helper").entries[4].exercise == exercise
    if given == "helper":
        with pytest.raises(InputError, match="needs the support 'helper'"):
            plan_with("corner_and_chair")


@pytest.mark.parametrize(
    ("field", "value", "says"),
    [
        ("entries.3.entry_id", "turns", r"line 70, entries\[3\].entry_id: there are two entries"),
        ("kind_of_loss", "bilateral", "affected_side: a bilateral loss has both sides affected"),
        ("symptom_rules", {"high_start": "baseline"}, r"allowed \(baseline_rise_most\)"),
        (
            "stages",
            [{"stage_id": "a", "name": "A"}],
            r"entries\[0\].stage: is missing, as this plan has stages .and 4 more",
        ),
        ("neck_limit_deg", {"yaw": 12, "pitch": 20}, r"amplitude_deg: asks for up to 15 .* of 12"),
    ],
)
def test_what_does_not_fit_together_is_refused(field: str, value: Any, says: str) -> None:
    with pytest.raises(InputError, match=says):
        parse_plan(changed(field, value))


def test_an_entry_named_like_a_stage_is_refused() -> None:
    text = json.dumps(
        {
            "format": "turnpost-plan",
            "format_version": 1,
            "plan_id": "p",
            "stages": [{"stage_id": "a", "name": "A"}],
            "entries": [{"entry_id": "a", "exercise": "walk", "stage": "a"}],
        }
    )
    with pytest.raises(InputError, match="'a' is the name of a stage already"):
        parse_plan(text)
    assert parse_plan(text.replace('"entry_id": "a"', '"entry_id": "b"'))


def test_a_usual_range_beyond_the_neck_limit_is_refused_too() -> None:
    with pytest.raises(InputError, match=r"entries.1..amplitude_deg: asks for up to 20"):
        parse_plan(changed("neck_limit_deg", {"yaw": 18, "pitch": 20}).replace("25", "18"))


def test_what_an_entry_asks_for() -> None:
    turns, free, corner, nods = parse_plan(TEXT).entries
    asked = asked_of(turns)
    assert (asked.repetitions, asked.seconds) == (12, None)
    assert asked.tempo_bpm == (60.0, 90.0) and asked.amplitude_deg == (10, 15)
    assert asked_of(turns, 3).tempo_bpm == 80.0
    assert asked_of(turns, 3).amplitude_deg == (10, 15)
    assert asked_of(turns, 9).amplitude_deg == (15, 25)
    own_pace = asked_of(free)
    assert (own_pace.repetitions, own_pace.seconds, own_pace.tempo_bpm) == (None, 45, None)
    assert own_pace.amplitude_deg == CATALOGUE["turns-on-target"].amplitude_deg
    held = asked_of(corner)
    assert (held.seconds, held.eyes, held.support) == (30.0, "closed", "helper")
    usual = asked_of(nods)
    assert (usual.repetitions, usual.tempo_bpm, usual.support) == (20, 60.0, "none")


def test_support_grows_with_what_is_asked() -> None:
    def least(**fields: Any) -> str:
        return least_support(Entry.model_validate({"entry_id": "e", **fields}))

    assert least(exercise="turns-on-target") == "none"
    assert least(exercise="turns-on-target", posture="standing") == "corner_and_chair"
    assert least(exercise="turns-together", eyes="closed") == "none"
    assert least(exercise="turns-together", posture="standing", eyes="closed") == "helper"
    assert least(exercise="stand") == "corner_and_chair"
    assert least(exercise="stand", head_shake=True) == "helper"
    assert least(exercise="weight-shift") == "helper"


def test_the_starter_plan_is_sound() -> None:
    plan = starter_plan()
    assert [s.stage_id for s in plan.stages] == [
        "eyes-and-head",
        "body-sitting",
        "firm-floor",
        "soft-surface",
        "walking",
    ]
    for k, stage in enumerate(plan.stages):
        assert minutes_of(plan, plan.entries_of(stage.stage_id)) <= 15
        unlock = stage.unlock_after
        assert (unlock is None) == (k == 0)
        assert unlock is None or (unlock.after, unlock.rise_most) == (
            plan.stages[k - 1].stage_id,
            0,
        )
    asked = [asked_of(e) for e in plan.entries]
    seated = [
        a for a in asked if plan.entries[asked.index(a)].stage in ("eyes-and-head", "body-sitting")
    ]
    assert {a.posture for a in seated} == {"sitting"}
    assert all(permission(a.exercise.id, a.posture) == "allowed" for a in asked)
    assert starter_plan().plan_id != plan.plan_id


def test_remarks_say_what_the_therapist_should_know() -> None:
    def said(plan: Plan) -> dict[str, str]:
        return {field_name(r.path): r.text for r in remarks(plan)}

    assert said(parse_plan(TEXT)) == {}
    starter = said(starter_plan())
    assert {"emergency_number", "neck_limit_deg", "clearance", "entries[0].note"} <= set(starter)
    assert "guideline" in starter["entries[0].note"]
    assert "seat_distance_mm" in said(parse_plan(changed("seat_distance_mm", 600)))
    assert "entries[0].ladder" in said(parse_plan(changed("starts_on", None)))


@pytest.mark.parametrize(
    ("entry", "said"),
    [
        # Counted from the head, and in millimetres; beyond any neck limit, as nobody goes by it.
        (
            {"exercise": "floor-reach", "amplitude_deg": [5, 60]},
            "amplitude_deg: floor-reach is not measured in degrees: the range is passed over",
        ),
        (
            {"exercise": "sit-to-stand", "ladder": [{"from_week": 2, "amplitude_deg": [5, 9]}]},
            "ladder[0].amplitude_deg: sit-to-stand is not measured in degrees: the range is passed",
        ),
        ({"exercise": "stand-head-shake"}, "amplitude_deg: stand-head-shake asks for no range"),
        ({"exercise": "head-tilts"}, "amplitude_deg: head-tilts asks for no range"),
        ({"exercise": "stand", "head_shake": True}, "head_shake: how far the head is shaken"),
        ({"exercise": "stand-head-shake", "amplitude_deg": [10, 15]}, ""),
        ({"exercise": "stand"}, ""),
        ({"exercise": "floor-reach", "tempo_bpm": 31}, "tempo_bpm: floor-reach at 31 beats"),
        ({"exercise": "floor-reach", "tempo_bpm": 30}, ""),
        (
            {"exercise": "sit-to-stand", "ladder": [{"from_week": 2, "tempo_bpm": [24, 200]}]},
            "ladder[0].tempo_bpm: sit-to-stand at 200 beats a minute is fast: its usual pace is "
            "about 24",
        ),
        ({"exercise": "turns-on-target", "tempo_bpm": 200}, ""),
        (
            {"exercise": "stand-head-shake", "amplitude_deg": [5, 9], "tempo_bpm": 120},
            "tempo_bpm: stand-head-shake at 120 beats",
        ),
    ],
)
def test_what_is_soon_overlooked_or_mistyped_is_remarked(entry: dict[str, Any], said: str) -> None:
    made = [{"entry_id": "a", **entry}]
    plan = parse_plan(changed("entries", made))
    found = [f"{field_name(r.path)}: {r.text}" for r in remarks(plan)]
    assert [f.startswith(f"entries[0].{said}") for f in found] == ([True] if said else [])
    if "not measured in degrees" in said:
        assert all(asked_of(plan.entries[0], week).amplitude_deg is None for week in (1, 2))
    # Where no limit is set there is none to be kept.
    free = remarks(plan.model_copy(update={"neck_limit_deg": None}))
    assert not any("neck limit" in r.text for r in free)


def test_the_starter_goes_slowly_first_where_the_programme_does() -> None:
    """Eyes up and down, and nods and turns with the eyes going along; 40 to 60: common practice."""
    rising = {"eyes-up-down", "nods-together", "turns-together"}
    for plan in (starter_plan(), seated_starter()):
        asked = {e.exercise: asked_of(e).tempo_bpm for e in plan.entries}
        pairs = {name: pace for name, pace in asked.items() if isinstance(pace, tuple)}
        assert set(pairs) == rising
        assert all(pace[0] < pace[1] for pace in pairs.values())
        # The end is the catalogue's own tempo, so that it is no harder than before.
        assert all(pace[1] == CATALOGUE[name].tempo_bpm for name, pace in pairs.items())


def test_the_seated_starter_is_sound_stays_on_a_chair_and_keeps_its_id() -> None:
    plan = seated_starter()
    assert parse_plan(format_plan(plan)) == plan
    assert {asked_of(e).posture for e in plan.entries} == {"sitting"}
    assert {asked_of(e).support for e in plan.entries} == {"none"}
    assert seated_starter() == plan
