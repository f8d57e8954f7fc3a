"""Wrong code is made as it is said to be, and the tests of a copy notice it."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.mutants import CHOSEN, Chosen, Mutant, Workshop, all_mutants, mutants_of, survivors

SMALL = """
def late(a, b):
    if a < b and not b == 2:
        return a + 0.5
    return True
"""


def test_every_change_is_one_change() -> None:
    found = [f"{m.before} -> {m.after}" for m in mutants_of(SMALL, "small.py")]
    assert sorted(found) == sorted(
        [
            "a < b and (not b == 2) -> not b == 2",
            "a < b and (not b == 2) -> a < b",
            "a < b -> a >= b",
            "not b == 2 -> b == 2",
            "b == 2 -> b != 2",
            "a + 0.5 -> a - 0.5",
            "0.5 -> 0.8",
            "True -> False",
        ]
    )
    whole = ast.unparse(ast.parse(SMALL))
    made = [m.of(SMALL) for m in mutants_of(SMALL, "small.py")]
    assert len(set(made) | {whole}) == len(made) + 1


def test_the_counters_and_watchers_can_be_wrong_in_many_ways() -> None:
    found = all_mutants()
    assert len(found) > 700
    assert {Path(m.path).parts[1] for m in found} == {"exercises", "motion", "body"}


MEANS = """
import numpy as np
from tracker.body.steady import running_mean

def test_the_mean_of_a_line_is_the_line():
    t = np.arange(9.0)
    assert np.allclose(running_mean(t, 2.0 * t, 2.0)[1:-1], 2.0 * t[1:-1])
"""

OTHER = """
def test_of_something_else():
    assert 1 + 1 == 2
"""


@pytest.mark.slow
def test_a_copy_passes_and_notices_a_change(tmp_path: Path) -> None:
    workshop = Workshop(tmp_path)
    (tmp_path / "tests" / "test_means.py").write_text(MEANS)
    tests = ("--noconftest", "-c", "/dev/null", "--rootdir", ".", "tests/test_means.py")
    assert not workshop.notices(None, tests)
    path = tmp_path / "tracker" / "body" / "steady.py"
    before = path.read_text(encoding="utf-8")
    wrong = next(m for m in mutants_of(before, "tracker/body/steady.py") if "sums" in m.before)
    assert workshop.notices(wrong, tests)
    assert path.read_text(encoding="utf-8") == before


@pytest.mark.slow
def test_the_tests_that_run_a_line_are_known(tmp_path: Path) -> None:
    workshop = Workshop(tmp_path)
    (tmp_path / "tests" / "test_means.py").write_text(MEANS + OTHER)
    looked = workshop.looked(
        ("--noconftest", "-c", "/dev/null", "--rootdir", ".", "tests/test_means.py")
    )
    source = (tmp_path / "tracker" / "body" / "steady.py").read_text(encoding="utf-8")
    inner = next(m for m in mutants_of(source, "tracker/body/steady.py") if "sums" in m.before)
    assert looked.at(inner) == ["tests/test_means.py::test_the_mean_of_a_line_is_the_line"]
    # A line that no test runs, and one that runs at import: all of them.
    anywhere = Mutant("tracker/body/steady.py", 1, "", "", 0, 0)
    assert set(looked.at(anywhere)) == set(looked.seconds) and len(looked.seconds) == 2


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_wrong_code_that_would_harm_is_noticed(tmp_path: Path) -> None:
    assert survivors(Workshop(tmp_path), CHOSEN) == []


def test_the_chosen_ones_are_of_counters_and_of_watchers() -> None:
    assert len({c.mutant for c in CHOSEN}) == len(CHOSEN) >= 6
    assert {Path(c.path).parts[1] for c in CHOSEN} == {"exercises", "motion"}


@pytest.mark.slow
def test_one_that_no_test_notices_is_named(tmp_path: Path) -> None:
    workshop = Workshop(tmp_path)
    (tmp_path / "tests" / "test_other.py").write_text(OTHER)
    path = "tracker/body/steady.py"
    wrong = next(mutants_of((tmp_path / path).read_text(encoding="utf-8"), path))
    blind = Chosen(path, wrong.before, wrong.after, ("tests/test_other.py",))
    assert survivors(workshop, [blind]) == [blind.mutant]
