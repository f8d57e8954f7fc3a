"""Plans that nobody would write, with every field that the format has, drawn by chance."""

from __future__ import annotations

import random
from typing import Any

from tracker.exercises.catalogue import CATALOGUE, HELD, permission
from tracker.plan.asked import SUPPORTS, least_support
from tracker.plan.draft import Data, examine_draft
from tracker.plan.model import Entry
from tracker.session.chair_stands import AGE_GROUPS

WORDS = ("Little and often.", 'Say "stop"\nand sit down.', "Grüße, 東京 ✓", "  two  blanks ", "1")
DAYS = ("2026-01-05", "2025-12-31", "2026-11-26")

#: The example of a public key in the specification of age.
KEY = "age1zvkyg2lqzraa2lnjvqej32nkuu0ues2s82hzrye869xeexvn73equnujwj"


def made_up(seed: int) -> Data:
    """A plan's data; sound, but for chance."""
    rng = random.Random(seed)
    data: Data = {"format": "turnpost-plan", "format_version": 1, "plan_id": f"p-{seed}"}
    _some(rng, data, "person", [None, "P-07", "wren_2"])
    _some(rng, data, "starts_on", [None, *DAYS])
    _some(rng, data, "kind_of_loss", ["acute", "chronic", "bilateral", "other"])
    bilateral = data.get("kind_of_loss") == "bilateral"
    sides = ["both", "unknown"] if bilateral else ["right", "left", "both", "unknown"]
    _some(rng, data, "affected_side", sides)
    _some(rng, data, "age_group", [None, *AGE_GROUPS])
    _some(rng, data, "sex", [None, "female", "male"])
    _some(rng, data, "words", ["", *WORDS])
    _some(rng, data, "bouts_a_day", range(1, 13))
    _some(rng, data, "days_a_week", range(1, 8))
    _some(rng, data, "rest_s", [0, 30, 12.5, 600.0])
    _some(rng, data, "seat_distance_mm", [400, 750.0, 812.25, 4000])
    _some(rng, data, "neck_limit_deg", [None, {"yaw": 80, "pitch": 80.0}, {"pitch": 79, "yaw": 80}])
    _some(rng, data, "emergency_number", [None, "112", "+44 (0)20/79-46"])
    _some(
        rng,
        data,
        "hand_over",
        [None, {"plain": True}, {"keys": [KEY]}, {"keys": [KEY], "plain": False}],
    )
    _some(rng, data, "symptom_rules", [_rules(rng)])
    ticked = [{"item": rng.choice(WORDS)} | rng.choice([{}, {"cleared": True}]) for _ in range(3)]
    _some(rng, data, "clearance", [[], ticked])
    stages = [f"s{k}" for k in range(rng.choice([0, 0, 1, 3]))]
    entries = _entries(rng, stages)
    if stages or rng.random() < 0.3:
        data["stages"] = [_stage(rng, stages[:k], s) for k, s in enumerate(stages)]
    data["entries"] = entries
    assert examine_draft(data).faults == ()
    return data


def _some(rng: random.Random, data: Data, field: str, values: Any) -> None:
    """Now and then a field is left out."""
    if rng.random() < 0.7:
        data[field] = rng.choice(list(values))


def _rules(rng: random.Random) -> Data:
    rules: Data = {}
    _some(rng, rules, "score_most", range(11))
    _some(rng, rules, "settle_minutes_most", [0.5, 5, 60.0])
    _some(rng, rules, "also_ask", [[], ["nausea"], ["unsteadiness"], ["unsteadiness", "nausea"]])
    _some(rng, rules, "baseline_rise_most", [0, 2, 10])
    high = ["seated_only", "baseline"] if "baseline_rise_most" in rules else ["seated_only"]
    _some(rng, rules, "high_start", high)
    return rules


def _unlock(rng: random.Random, before: list[str]) -> Data:
    unlock: Data = {"condition": rng.choice(WORDS)}
    if before and rng.random() < 0.6:
        unlock["after"] = rng.choice(before)
        _some(rng, unlock, "sessions", [None, 1, 100])
        _some(rng, unlock, "rise_most", [None, 0, 10])
        _some(rng, unlock, "settle_minutes_most", [None, 0.1, 5])
        _some(rng, unlock, "on_target_least", [None, 0, 0.85, 1.0])
        _some(rng, unlock, "measured_least", [None, 0.9])
        _some(rng, unlock, "clear", [None, True])
    _some(rng, unlock, "met_on", [None, *DAYS])
    return unlock


def _stage(rng: random.Random, before: list[str], stage_id: str) -> Data:
    stage: Data = {"stage_id": stage_id, "name": rng.choice(WORDS)}
    _some(rng, stage, "unlock_after", [None, _unlock(rng, before)])
    return stage


def _entries(rng: random.Random, stages: list[str]) -> list[Data]:
    chosen = stages + [rng.choice(stages) if stages else "" for _ in range(rng.randint(1, 6))]
    found: list[Data] = []
    for k, stage in enumerate(chosen):
        entry: Data = {"entry_id": f"e{k}", "exercise": rng.choice(list(CATALOGUE))}
        if stages:
            entry["stage"] = stage
        earlier = stages[: stages.index(stage)] if stages else []
        _form(rng, entry)
        _dose(rng, entry)
        before = [*earlier, *(e["entry_id"] for e in found)]
        _some(rng, entry, "unlock_after", [None, _unlock(rng, before)])
        entry["note"] = rng.choice(WORDS)
        exercise = CATALOGUE[entry["exercise"]]
        if exercise.wall_marks and entry.get("eyes") != "closed":
            apart = {"spacing_mm": 500} if exercise.wall_marks == 2 else {}
            typed = {"distance_mm": 1500.5, "above_mm": -20, "right_mm": 0.0, **apart}
            _some(rng, entry, "wall", [None, {"above_mm": 90}, typed])
        found.append(entry)
    return found


def _form(rng: random.Random, entry: Data) -> None:
    name = entry["exercise"]
    postures = [p for p in ("sitting", "standing", "walking") if permission(name, p) != "never"]
    _some(rng, entry, "posture", [None, *postures])
    exercise = CATALOGUE[name]
    eyes = [
        *(["open"] if exercise.eyes == "open" else []),
        *(["closed"] if permission(name, "eyes_closed") != "never" else []),
    ]
    surfaces = ["firm", *(["soft"] if permission(name, "soft_surface") != "never" else [])]
    shakes = [
        *([] if exercise.head_shake else [False]),
        *([True] if permission(name, "head_shake") != "never" else []),
    ]
    for field, values in (("eyes", eyes), ("surface", surfaces), ("head_shake", shakes)):
        _some(rng, entry, field, [None, *values])
    least = least_support(Entry.model_validate(entry))
    _some(rng, entry, "support", [None, *SUPPORTS[SUPPORTS.index(least) :]])


def _dose(rng: random.Random, entry: Data) -> None:
    exercise = CATALOGUE[entry["exercise"]]
    held = exercise.channel == HELD
    if rng.random() < 0.4 and not held:
        entry["repetitions"] = rng.choice([None, 1, 200])
    else:
        _some(rng, entry, "seconds", [None, 1, 45.5, 600])
    tempos = [None, 60, 72.5, [60, 90.0], [120, 30]]
    if exercise.target == "sweep":
        tempos = [None, 20, 37.5, [20, 40.0], [30, 15]]
    ranges = [None, [10, 15], [1.5, 79]]
    degrees = exercise.in_degrees
    if not held:
        _some(rng, entry, "tempo_bpm", tempos)
    if degrees:
        _some(rng, entry, "amplitude_deg", ranges)
    ladder: list[Data] = []
    for week in sorted(rng.sample(range(2, 53), rng.randint(0, 3))):
        rung: Data = {"from_week": week}
        if not held:
            _some(rng, rung, "tempo_bpm", tempos)
        if degrees:
            _some(rng, rung, "amplitude_deg", ranges)
        if len(rung) > 1:
            ladder.append(rung)
    _some(rng, entry, "ladder", [ladder])
