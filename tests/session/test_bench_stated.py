"""The bench's figures in a summary are those of the documents, and stand where one reads them."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from tests.records import made
from tracker.errors import InputError
from tracker.records.figure import shown_with_unit
from tracker.records.figures import record_of
from tracker.records.of_session import BENCH_TOLD
from tracker.records.terms import LIMITS
from tracker.session.bench import CLIPS, COMMAND, LOT_DEG, LOT_RATIO, MADE_ON, SETS, WORST
from tracker.session.summary_file import Summary, load_summary, save_summary
from ui.commands.schema import published
from ui.documents.html import html_document

ROOT = Path(__file__).parents[2]
#: Words of DEVELOPERS.md for units.
UNITS = {"deg": "deg", "%": "%", "mm": "mm", "ms": "ms", "": "1"}


def _rows(text: str, heading: str) -> list[list[str]]:
    """Cells of the first table after a heading, without its head."""
    lines = text.split(heading, 1)[1].splitlines()
    first = next(k for k, line in enumerate(lines) if line.startswith("|"))
    rows = []
    for line in lines[first + 2 :]:
        if not line.startswith("|"):
            break
        rows.append([c.strip() for c in line.strip("|").split("|")])
    return rows


def _of_document(rows: list[list[str]]) -> list[tuple[float, str]]:
    """Figures of the column "worst" with their units, in order."""
    found = []
    for _, worst, _aim in rows:
        numbers = re.findall(r"\d+(?:\.\d+)?", worst)
        unit = re.sub(r"[\d.,; ]", "", worst)
        found += [(float(n), UNITS[unit]) for n in numbers]
    return found


def test_the_statement_is_the_table_of_the_document() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text("utf-8")
    heading = "**Within the aims' conditions**"
    found = _of_document(_rows(text, heading))
    assert found == list(WORST.values())
    said = text.split(heading, 1)[1].split("|", 1)[0]
    assert all(f"`{command}`" in said for command in COMMAND.split("; "))
    day, month, year = re.findall(r"(\d+) (November) (\d{4})", said)[0]
    assert (month, f"{year}-11-{day}") == ("November", MADE_ON)
    # Of nine clips of each of two seeds, those that the conditions leave.
    accuracy, people = COMMAND.split("; ")
    assert f"{CLIPS} of\nthese {9 * accuracy.count('--seed')} clips" in said
    assert f"ten sets each, {SETS} in all" in said and f"--people {SETS // 10} " in people


def test_the_readme_tells_the_same() -> None:
    text = " ".join((ROOT / "README.md").read_text("utf-8").split())
    said = re.search(r"head yaw within ([\d.]+) degrees, gaze within ([\d.]+)\.", text)
    assert said is not None
    gaze = max(error for name, (error, _) in WORST.items() if name.startswith("gaze"))
    assert (float(said[1]), float(said[2])) == (WORST["head yaw"][0], round(gaze, 1))


def test_the_limits_are_those_of_the_lot() -> None:
    """The documents' last lines tell the worst of the table drawn by lot."""
    table = _rows((ROOT / "DEVELOPERS.md").read_text("utf-8"), "## How accurate it was, by lot")
    heads = next(cell for name, _, cell, _ in table if name == "head yaw, pitch, roll")
    angles = [float(n) for n in re.findall(r"\d+\.\d+", heads)]
    assert [LOT_DEG["head yaw"], LOT_DEG["head pitch"]] == angles[:2]
    (ratio,) = (cell for name, _, cell, _ in table if name == "counter-turn ratio")
    assert float(ratio) == LOT_RATIO
    worst: dict[str, float] = {}
    for name, clips, cell, _ in table:
        if "%" in cell or name.startswith(("gaze", "the same")):
            numbers = [float(n) for n in re.findall(r"\d+\.?\d*", cell)]
            worst[name] = max(numbers)
            assert re.fullmatch(r"\d+(, \d+)?", clips)
    gaze = max(v for k, v in worst.items() if k.startswith(("gaze", "the same turning")))
    amplitude = worst["amplitude in yaw, in pitch"]
    speed = worst["peak speed in yaw, in pitch"]
    wanted = f"amplitude was {amplitude:g} % off, peak speed {speed:g} %, gaze {gaze:.1f} degrees."
    assert wanted in LIMITS[1]


@pytest.mark.parametrize("name", made.EXAMPLES)
def test_every_summary_has_it(name: str) -> None:
    summary = made.EXAMPLES[name]()
    assert summary.setup["bench"]["worst"]["head yaw"] == {"error": 0.28, "unit": "deg"}
    assert summary.setup["bench"]["on"] == "rendered heads"


def _spoilt(**bench: Any) -> dict[str, Any]:
    data = json.loads(made.finished().model_dump_json())
    data["setup"]["bench"].update(bench)
    return data


def test_the_published_schema_knows_it() -> None:
    schema = published("summary")
    jsonschema.validate(_spoilt(), schema)
    for wrong in ({"worst": {"head yaw": {"error": "small"}}}, {"worst": None}, {"on": 3}):
        with pytest.raises(jsonschema.ValidationError):
            jsonschema.validate(_spoilt(**wrong), schema)


def test_it_stands_in_the_set_up_of_the_page_and_older_summaries_still_open(tmp_path: Path) -> None:
    record = record_of(made.finished())
    page = html_document([record])
    for measure, (name, rows, _) in BENCH_TOLD.items():
        told = record.find(measure)
        assert told is not None and told.group == "setup"
        assert told.value == max(WORST[row][0] for row in rows)
        assert f"<dt>{name}</dt><dd>{shown_with_unit(told)}</dd>" in page

    data = _spoilt()
    del data["setup"]["bench"]
    path = tmp_path / "summary.json"
    save_summary(path, Summary.model_validate(data))
    older = load_summary(path)
    assert not any(record_of(older).find(measure) for measure in BENCH_TOLD)
    jsonschema.validate(json.loads(path.read_text("utf-8")), published("summary"))


def test_a_damaged_statement_is_named() -> None:
    with pytest.raises(InputError, match=r"setup\.bench\.worst\.head yaw\.error"):
        record_of(Summary.model_validate(_spoilt(worst={"head yaw": {"error": "x"}})))
