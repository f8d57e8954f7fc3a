"""The rows of the home programme as films, through ``turnpost check``.

Drawing and measuring a film takes a minute and more, so that only ``--rows N`` of them are
gone through in a usual run; ``--rows 100`` takes all. What a camera can't be blamed for
(counters, watchers) is tested on the exact truth of all of them in ``test_body_logic.py``.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from sample_clips import scenarios
from sample_clips.render import make_score, render_scenario
from sample_clips.scenario import Scenario, load_scenario
from sample_clips.truth import events
from tests.sample_clips.rows import ROWS, Row
from ui.cli import main

HERE = Path(__file__).parent
FILES = {
    p.stem: p
    for p in (*scenarios(), *(HERE / "body").glob("*.json"), *(HERE / "eyes").glob("*.json"))
}
#: Frames a second: enough for the body; the eyes need a few more.
BODY_HZ, EYES_HZ = 15, 24
#: Counts of these may be one off, as of real ones.
WITHIN_ONE = frozenset(
    {"near-far", "shoulders-back", "shoulders-forward", "floor-reach", "hand-toss"}
)
#: The one to begin with: it is drawn soonest.
FIRST = ("standing-chin-down",)
PAIRS = [(row, name) for row in ROWS for name in (*row.well, *row.badly)]
SHIPPED = frozenset(p.stem for p in scenarios())


def in_turn() -> list[tuple[Row, str]]:
    """Films that are not shipped, the one to begin with first."""
    left = [p for p in PAIRS if p[1] not in SHIPPED]
    return sorted(left, key=lambda p: p[1] not in FIRST)


def test_every_measured_row_has_a_clip_done_well_and_one_done_badly() -> None:
    assert [row.number for row in ROWS] == list(range(1, 19))
    for row in ROWS:
        for name in row.well:
            scenario = load_scenario(FILES[name])
            assert scenario.exercise == row.exercise
            assert events(make_score(scenario))["events"] == [], name
        assert row.badly, row.number
        for name, code in row.badly.items():
            scenario = load_scenario(FILES[name])
            assert scenario.exercise == row.exercise
            assert code in {e["code"] for e in events(make_score(scenario))["events"]}, name


def test_none_lies_unused() -> None:
    # Moving targets are no rows of the table; tests/exercises/test_moving_sets.py judges such sets.
    rows = {row.exercise for row in ROWS}
    of_rows = {name for name, path in FILES.items() if load_scenario(path).exercise in rows}
    assert {name for _, name in PAIRS} == of_rows


def filmed(name: str, folder: Path) -> tuple[Scenario, Path]:
    """The clip, drawn with a set-up where the eyes are judged."""
    scenario = load_scenario(FILES[name])
    eyes = FILES[name].parent.name == "eyes"
    camera = scenario.camera.model_copy(update={"rate_hz": EYES_HZ if eyes else BODY_HZ})
    scenario = scenario.model_copy(update={"camera": camera, "setup": eyes})
    return scenario, render_scenario(scenario, folder)


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    """As many films as are wanted."""
    if "name" in metafunc.fixturenames:
        films = in_turn()[: metafunc.config.getoption("--rows")]
        metafunc.parametrize(("row", "name"), films, ids=[name for _, name in films])


@pytest.mark.timeout(1800)
def test_check_tells_what_was_done_well_from_what_was_not(
    row: Row, name: str, tmp_path: Path
) -> None:
    scenario, clip = filmed(name, tmp_path)
    out = tmp_path / "summary.json"
    assert main(["check", str(clip), "--exercise", row.exercise, "--out", str(out)]) == 0
    found: dict[str, Any] = json.loads(out.read_text(encoding="utf-8"))["exercises"][0]
    truth = events(make_score(scenario))
    off = abs((found["done"]["repetitions"] or 0) - truth["repetitions"])
    assert off <= (row.exercise in WITHIN_ONE)
    codes = {e["code"] for e in found["events"]}
    assert codes == {e["code"] for e in truth["events"]}
