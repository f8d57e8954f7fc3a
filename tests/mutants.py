"""Wrong code on purpose: do the tests notice it?

``python -m tests.mutants --count 40 --seed 1`` draws changes by lot (a comparison turned, a
sum made a difference, a number off, a condition left out) in the counters and watchers, puts
each into a copy of the program, and runs there the tests that run the changed line, the quickest
first. What no test notices is printed: either a test is missing, or the change makes no
difference. Before all that every test is run once, to see that they pass, how long they take, and
what they run: some minutes. Takes up to minutes more for each change; run by hand.

``--chosen`` tries :data:`CHOSEN` alone, in about a minute, as every run of all tests does.
"""

from __future__ import annotations

import argparse
import ast
import copy
import json
import os
import random
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
#: What is made wrong, and the tests that must notice.
TARGETS = ("tracker/exercises", "tracker/motion", "tracker/body")
TESTS = ("tests/body", "tests/motion", "tests/exercises", "tests/session/test_engine.py")
#: What a copy needs besides.
COPIED = ("tracker", "calibration", "sample_clips", "ui", "tests", "pyproject.toml")
#: The catalogue is data, which its own tests list.
LEFT_OUT = "catalogue"
#: So long the tests may take; a change that makes them hang is noticed, too.
PATIENCE_S = 1800.0

_TURNED: dict[type[ast.cmpop], type[ast.cmpop]] = {
    ast.Lt: ast.GtE,
    ast.LtE: ast.Gt,
    ast.Gt: ast.LtE,
    ast.GtE: ast.Lt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
}
_OTHER: dict[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
}
#: A number off by this factor.
_OFF = 1.6


@dataclass(frozen=True, slots=True)
class Mutant:
    """One change: the file (below the project), the line, and the words before and after.

    ``index`` and ``way`` say which node of the module's tree is changed, and how.
    """

    path: str
    line: int
    before: str
    after: str
    index: int
    way: int

    def __str__(self) -> str:
        return f"{self.path}:{self.line}: {self.before}  ->  {self.after}"

    def of(self, source: str) -> str:
        """The module with the change."""
        tree = ast.parse(source)
        node = list(ast.walk(tree))[self.index]
        _put(tree, node, list(_changes(node))[self.way])
        return ast.unparse(ast.fix_missing_locations(tree))


def mutants_of(source: str, path: str) -> Iterator[Mutant]:
    """Every change of a module.

    Parameters
    ----------
    source
        The module's text.
    path
        What it is called in what is printed.
    """
    for index, node in enumerate(ast.walk(ast.parse(source))):
        for way, changed in enumerate(_changes(node)):
            before, after = ast.unparse(node), ast.unparse(changed)
            yield Mutant(path, getattr(node, "lineno", 0), before, after, index, way)


def _changes(node: ast.AST) -> Iterator[ast.AST]:
    """What may stand in a node's place."""
    made: ast.AST
    match node:
        case ast.Compare(ops=[one]) if type(one) in _TURNED:
            made = copy.deepcopy(node)
            made.ops = [_TURNED[type(one)]()]
            yield made
        case ast.BinOp(op=op) if type(op) in _OTHER and not _is_text(node):
            made = copy.deepcopy(node)
            made.op = _OTHER[type(op)]()
            yield made
        case ast.BoolOp(values=values):
            # Each part left out in turn.
            for k in range(len(values)):
                rest = [copy.deepcopy(v) for j, v in enumerate(values) if j != k]
                yield rest[0] if len(rest) == 1 else ast.BoolOp(copy.deepcopy(node.op), rest)
        case ast.UnaryOp(op=ast.Not() | ast.USub(), operand=operand):
            yield copy.deepcopy(operand)
        case ast.Constant(value=bool() as value):
            yield ast.Constant(not value)
        case ast.Constant(value=float() as value):
            yield ast.Constant(value * _OFF if value else 1.0)


def _is_text(node: ast.BinOp) -> bool:
    sides = (node.left, node.right)
    return any(isinstance(s, ast.JoinedStr) for s in sides) or any(
        isinstance(s, ast.Constant) and isinstance(s.value, str) for s in sides
    )


def _put(tree: ast.AST, old: ast.AST, made: ast.AST) -> None:
    """Put a node in the place of another."""
    for parent in ast.walk(tree):
        for name, value in ast.iter_fields(parent):
            if value is old:
                setattr(parent, name, made)
                return
            if isinstance(value, list) and any(item is old for item in value):
                setattr(parent, name, [made if item is old else item for item in value])
                return


def all_mutants() -> list[Mutant]:
    """Every change of every module that is tried."""
    found: list[Mutant] = []
    for folder in TARGETS:
        for path in sorted((ROOT / folder).rglob("*.py")):
            name = path.relative_to(ROOT).as_posix()
            if LEFT_OUT not in path.parts:
                found += mutants_of(path.read_text(encoding="utf-8"), name)
    return found


@dataclass(frozen=True, slots=True)
class Looked:
    """What the tests did without a change: seconds of each, and which ran a line of a module."""

    seconds: Mapping[str, float]
    ran: Mapping[str, Mapping[str, Sequence[str]]] = field(default_factory=dict)

    def at(self, mutant: Mutant) -> list[str]:
        """The tests that can notice a change, the quickest first.

        All, where the line runs at import or makes ready something that tests share.
        """
        by = self.ran.get(mutant.path, {}).get(str(mutant.line), [""])
        names = {context.removesuffix("|run") for context in by}
        if not names <= set(self.seconds):
            names = set(self.seconds)
        return sorted(names, key=lambda name: (self.seconds[name], name))


@dataclass(frozen=True, slots=True)
class Chosen:
    """A change that would harm somebody, by its words, and the quick tests that run its line."""

    path: str
    before: str
    after: str
    tests: tuple[str, ...]

    @property
    def mutant(self) -> Mutant:
        """The change; of the same words in several lines the first."""
        source = (ROOT / self.path).read_text(encoding="utf-8")
        made = mutants_of(source, self.path)
        return min(
            (m for m in made if (m.before, m.after) == (self.before, self.after)),
            key=lambda m: m.line,
        )


_WATCHERS, _TESTS = "tracker/exercises/watchers", "tests/exercises"
#: One of each kind of counting and watching on which safety hangs.
CHOSEN = (
    # A fall is told only of who drops slowly.
    Chosen(
        f"{_WATCHERS}/falls.py",
        "(then - height) / (time_s - then_s) < self._speed",
        "(then - height) / (time_s - then_s) >= self._speed",
        (f"{_TESTS}/test_edges.py::test_a_fall_has_to_be_seen_on_its_way_but_one_place_is_enough",),
    ),
    # Open eyes are told to be shut, and shut ones are not.
    Chosen(
        f"{_WATCHERS}/lids.py",
        "sample.eye_open >= self._shut_below",
        "sample.eye_open < self._shut_below",
        (f"{_TESTS}/test_watchers.py::TestEyesClosed",),
    ),
    # A verdict on a gaze that is read too badly for one.
    Chosen(
        f"{_WATCHERS}/gaze.py",
        "limit <= OFF_TARGET_MOST_DEG",
        "limit > OFF_TARGET_MOST_DEG",
        (f"{_TESTS}/test_watchers.py::TestHowWellTheGazeIsRead",),
    ),
    # What is not seen is not said.
    Chosen(
        f"{_WATCHERS}/seen.py",
        "now_s - self._last_s < self._least_s - EPSILON_S",
        "now_s - self._last_s >= self._least_s - EPSILON_S",
        (f"{_TESTS}/test_watchers.py::TestNotMeasured",),
    ),
    # Too fast a turn is praised.
    Chosen(
        f"{_WATCHERS}/turns.py",
        "tempo > self._fast * asked.tempo_bpm",
        "tempo <= self._fast * asked.tempo_bpm",
        (f"{_TESTS}/test_watchers.py::TestTurns::test_tempo",),
    ),
    # Half a stand from a chair is a whole one.
    Chosen(
        f"{_WATCHERS}/turns.py",
        "turn.short_mm > SHORT_SHARE * whole_mm",
        "turn.short_mm <= SHORT_SHARE * whole_mm",
        (f"{_TESTS}/test_body_watchers.py::TestAllTheWay",),
    ),
    # Repetitions are counted that were none.
    Chosen(
        "tracker/motion/turning.py",
        "value - self._values[self._low] >= back",
        "value - self._values[self._low] < back",
        ("tests/motion/test_turning.py::test_sides_amplitudes_and_order",),
    ),
)


#: What coverage writes down while the tests run without a change.
SETTINGS = f"""
[run]
source = {", ".join(TARGETS)}
relative_files = true
"""


class Workshop:
    """A copy of the program, in which one module at a time is made wrong."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        # The copy must be what is tested, in children of the tests, too.
        self._environment = os.environ | {"PYTHONPATH": str(folder)}
        for name in COPIED:
            copier = shutil.copytree if (ROOT / name).is_dir() else shutil.copy
            copier(ROOT / name, folder / name)

    def looked(self, tests: Sequence[str] = TESTS) -> Looked:
        """Run the tests without a change, and see what each looks at; all must pass."""
        (self._folder / "counted.ini").write_text(SETTINGS, encoding="utf-8")
        words = ["--cov", "--cov-config=counted.ini", "--cov-context=test", "--cov-report="]
        done = self._pytest(*words, "--durations=0", "-vv", *tests)
        if done.returncode:
            raise RuntimeError(f"tests fail without a change:\n{done.stdout[-2000:]}")
        spent = re.findall(r"^([\d.]+)s call +(.+?) *$", done.stdout, re.MULTILINE)
        passed = re.findall(r"^(\S+\.py::.+?) PASSED", done.stdout, re.MULTILINE)
        out = self._folder / "counted.json"
        words = ["-m", "coverage", "json", "--rcfile=counted.ini", "--show-contexts", "-q"]
        subprocess.run([sys.executable, *words, "-o", out.name], cwd=self._folder, check=True)
        files = json.loads(out.read_text(encoding="utf-8"))["files"]
        return Looked(
            # Not listed with a duration is what took less than five milliseconds.
            dict.fromkeys(passed, 0.0) | {name: float(s) for s, name in spent},
            {name: file["contexts"] for name, file in files.items()},
        )

    def notices(self, mutant: Mutant | None, tests: Sequence[str] = TESTS) -> str:
        """Which test fails first with a change, "" if none does; without a change none must."""
        path, kept = self._folder, ""
        if mutant is not None:
            path /= mutant.path
            kept = path.read_text(encoding="utf-8")
            path.write_text(mutant.of(kept), encoding="utf-8")
        try:
            done = self._pytest("-x", *tests)
            if not done.returncode:
                return ""
            failed = re.search(r"^(?:FAILED|ERROR) (\S+)", done.stdout, re.MULTILINE)
            return failed[1] if failed else "all"
        except subprocess.TimeoutExpired:
            return f"none within {PATIENCE_S:.0f} s"
        finally:
            if mutant is not None:
                path.write_text(kept, encoding="utf-8")

    def _pytest(self, *words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", *words],
            cwd=self._folder,
            env=self._environment,
            capture_output=True,
            text=True,
            timeout=PATIENCE_S,
            check=False,
        )


def survivors(workshop: Workshop, chosen: Sequence[Chosen]) -> list[Mutant]:
    """Those of chosen changes that their tests don't notice.

    Raises
    ------
    RuntimeError
        If one of the tests fails without a change: it would notice anything.
    """
    tests = sorted({test for one in chosen for test in one.tests})
    if failed := workshop.notices(None, tests):
        raise RuntimeError(f"fails without a change: {failed}")
    return [one.mutant for one in chosen if not workshop.notices(one.mutant, one.tests)]


def try_chosen() -> int:
    """Try the chosen changes, print what was not noticed."""
    with tempfile.TemporaryDirectory() as scratch:
        left = survivors(Workshop(Path(scratch)), CHOSEN)
    for mutant in left:
        print(f"NOT NOTICED  {mutant}")
    print(f"{len(CHOSEN) - len(left)} of {len(CHOSEN)} chosen ones noticed")
    return 1 if left else 0


def main(words: Sequence[str] | None = None) -> int:
    """Draw changes, try them, print what was not noticed."""
    parser = argparse.ArgumentParser(prog="python -m tests.mutants", description=__doc__)
    parser.add_argument("--count", type=int, default=20, help="how many (default: %(default)s)")
    parser.add_argument("--seed", type=int, nargs="+", default=[0], help="each draws other ones")
    parser.add_argument("--chosen", action="store_true", help="the chosen ones alone")
    args = parser.parse_args(words)
    if args.chosen:
        return try_chosen()
    everything = all_mutants()
    count = min(args.count, len(everything))
    drawn = [m for seed in args.seed for m in random.Random(seed).sample(everything, count)]
    survived = []
    with tempfile.TemporaryDirectory() as scratch:
        workshop = Workshop(Path(scratch))
        looked = workshop.looked()
        for k, mutant in enumerate(drawn):
            by = workshop.notices(mutant, looked.at(mutant))
            survived += [] if by else [mutant]
            said = f"noticed by {by}" if by else "NOT NOTICED"
            print(f"{k + 1}/{len(drawn)} {said}  {mutant}", flush=True)
    print(f"{len(drawn) - len(survived)} of {len(drawn)} noticed, of {len(everything)} possible")
    return 1 if survived else 0


if __name__ == "__main__":
    sys.exit(main())
