"""Wrong code on purpose: do the tests notice it?

``python -m tests.mutants --count 40 --seed 1`` draws changes by lot (a comparison turned, a
sum made a difference, a number off, a condition left out) in the counters and watchers, puts
each into a copy of the program, and runs their tests there. What no test notices is printed:
either a test is missing, or the change makes no difference. Takes minutes each; run by hand.
"""

from __future__ import annotations

import argparse
import ast
import copy
import random
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
#: What is made wrong, and the tests that must notice, the quickest first.
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


class Workshop:
    """A copy of the program, in which one module at a time is made wrong."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        for name in COPIED:
            copier = shutil.copytree if (ROOT / name).is_dir() else shutil.copy
            copier(ROOT / name, folder / name)

    def notices(self, mutant: Mutant | None, tests: Sequence[str] = TESTS) -> str:
        """Which test fails first with a change, "" if none does; without a change none must.

        Those that lie where the change lies come first: they mostly notice it.
        """
        path, kept = self._folder, ""
        if mutant is not None:
            path /= mutant.path
            kept = path.read_text(encoding="utf-8")
            path.write_text(mutant.of(kept), encoding="utf-8")
            home = Path(mutant.path).parent.name
            tests = sorted(tests, key=lambda t: Path(t).name != home)
        command = [sys.executable, "-m", "pytest", "-x", "-q", "-p", "no:cacheprovider", *tests]
        try:
            done = subprocess.run(
                command,
                cwd=self._folder,
                capture_output=True,
                text=True,
                timeout=PATIENCE_S,
                check=False,
            )
            if not done.returncode:
                return ""
            failed = re.search(r"^(?:FAILED|ERROR) (\S+)", done.stdout, re.MULTILINE)
            return failed[1] if failed else "all"
        except subprocess.TimeoutExpired:
            return f"none within {PATIENCE_S:.0f} s"
        finally:
            if mutant is not None:
                path.write_text(kept, encoding="utf-8")


def main(words: Sequence[str] | None = None) -> int:
    """Draw changes, try them, print what was not noticed."""
    parser = argparse.ArgumentParser(prog="python -m tests.mutants", description=__doc__)
    parser.add_argument("--count", type=int, default=20, help="how many (default: %(default)s)")
    parser.add_argument("--seed", type=int, default=0, help="other seeds draw other ones")
    args = parser.parse_args(words)
    everything = all_mutants()
    drawn = random.Random(args.seed).sample(everything, min(args.count, len(everything)))
    survived = []
    with tempfile.TemporaryDirectory() as scratch:
        workshop = Workshop(Path(scratch))
        for k, mutant in enumerate(drawn):
            by = workshop.notices(mutant)
            survived += [] if by else [mutant]
            said = f"noticed by {by}" if by else "NOT NOTICED"
            print(f"{k + 1}/{len(drawn)} {said}  {mutant}", flush=True)
    print(f"{len(drawn) - len(survived)} of {len(drawn)} noticed, of {len(everything)} possible")
    return 1 if survived else 0


if __name__ == "__main__":
    sys.exit(main())
