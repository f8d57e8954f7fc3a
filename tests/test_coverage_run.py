"""Counting sees what the children of a test run, the ones that end without tidying up as well."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests import coverage_run

#: A child that ends as the measuring process does (``tracker/vision/worker.py``).
CHILD = """
import multiprocessing, os

def work():
    from tracker.body.steady import running_mean
    import numpy as np
    running_mean(np.arange(3.0), np.arange(3.0), 1.0)
    os._exit(0)

def test_a_child():
    child = multiprocessing.get_context("spawn").Process(target=work)
    child.start()
    child.join()
    assert child.exitcode == 0
"""


@pytest.mark.slow
def test_a_child_that_ends_without_tidying_up_counts(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(coverage_run, "FOLDER", tmp_path / "counted")
    # Two small packages, to be quick.
    monkeypatch.setattr(coverage_run, "COUNTED", ("tracker/body", "tracker/eyes"))
    test = tmp_path / "test_child.py"
    test.write_text(CHILD, encoding="utf-8")
    assert coverage_run.main(["--fresh", "--examples=0", str(test)]) == 0
    counted = json.loads((tmp_path / "counted" / "counted.json").read_text(encoding="utf-8"))
    steady = counted["files"]["tracker/body/steady.py"]
    assert steady["summary"]["missing_lines"] == 0
    assert counted["files"]["tracker/eyes/model.py"]["summary"]["covered_lines"] == 0
    told = {line.split()[0]: line for line in capsys.readouterr().out.splitlines() if line.strip()}
    assert told["tracker/eyes"].count(" 0.0 %") == 2
    assert told["tracker/body"].count(" 0.0 %") == 1  # lines, but no branch


def test_too_little_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    found = {"totals": {"covered_branches": 19, "num_branches": 20}, "files": {}}
    monkeypatch.setattr(coverage_run, "coverage", lambda *_: "")
    monkeypatch.setattr(coverage_run, "counted", lambda *_: found)
    assert coverage_run.report(tmp_path, missing=False, at_least=95.0) == 0
    assert coverage_run.report(tmp_path, missing=False, at_least=95.1) == 1
