"""Every default says beside it where it comes from.

What the catalogue asks for (doses, tempi, ranges), what the set-up and the measuring of pictures go
by, and every counter, watcher and rule: constants, defaults of parameters, and what a class hands
to its base. A note is a comment above or beside it, its docstring or that of its class; it names a
source, or says that the value is common practice, this project's own choice, derived or measured. A
value that is only remembered has no place here. What a note says is not checked, only that there is
one.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from tracker.exercises.catalogue import CATALOGUE, Exercise, sources

ROOT = Path(__file__).parents[1]
#: Where pictures are measured, and where counters, watchers and rules are.
PLACES = (
    "calibration",
    "tracker/exercises",
    "tracker/eyes",
    "tracker/head",
    "tracker/motion",
    "tracker/vision",
    "tracker/body",
    "tracker/plan",
    "tracker/practice",
    "tracker/session/body_figures.py",
    "tracker/session/chair_stands.py",
    "tracker/session/figures.py",
    "tracker/session/flags.py",
    "tracker/session/standing.py",
    "tracker/session/target_figures.py",
    "tracker/differing.py",
    "tracker/lens.py",
    "tracker/measure.py",
    "tracker/targets.py",
    "tracker/wall.py",
    "tracker/records/conditions.py",
    "tracker/records/managed.py",
    "tracker/records/rows.py",
    "tracker/records/series.py",
    "tracker/records/trends.py",
)
#: Lists of catalogue entries, whose sources are data of their own.
ENTRIES = ("EXERCISES", "GAZE", "BALANCE")
#: How a file or a block of memory is laid out, and a matrix of ones: nothing goes by these.
LAYOUT = ("(FORMAT, FORMAT_VERSION)", "_ARRAYS", "_RIDGE", "_PLACE_BYTES", "turned")
SOURCE = re.compile(
    r"common practice|own choice|measured (on|in|with|from|by)\b|measured[:)]|derived|arithmetic"
    r"|rendered|made-up|tried in|own aim"
    r"|documentation|\b(19|20)\d\d\b|WCAG|STEADI|Cawthorne-Cooksey|leaflet|\bsrc\.[A-Z]+",
    re.IGNORECASE,
)
REMEMBERED = re.compile(r"from memory|remembered", re.IGNORECASE)
#: Numbers that set no limit.
PLAIN = (0, 1, -1)


@dataclass(frozen=True, slots=True)
class Default:
    """A name with numbers of its own, and all that is said about it."""

    name: str
    line: int
    note: str

    @property
    def has_source(self) -> bool:
        return bool(SOURCE.search(self.note)) and not REMEMBERED.search(self.note)


def defaults_of(text: str) -> list[Default]:
    """What a module goes by."""
    lines = text.splitlines()
    return list(_defaults(ast.parse(text).body, "", lines))


def _defaults(nodes: list[ast.stmt], about: str, lines: list[str]) -> Iterator[Default]:
    for node in nodes:
        if isinstance(node, ast.ClassDef):
            yield from _defaults(node.body, ast.get_docstring(node) or "", lines)
        elif isinstance(node, ast.Assign | ast.AnnAssign):
            names = node.targets if isinstance(node, ast.Assign) else [node.target]
            name = ast.unparse(names[0])
            if _has_numbers(node.value) and name not in (*ENTRIES, *LAYOUT):
                said = ast.get_source_segment("\n".join(lines), node) or ""
                yield Default(
                    name,
                    node.lineno,
                    _tidy(about, _comments(lines, node), said, _after(lines, node)),
                )
        elif isinstance(node, ast.FunctionDef):
            given: list[ast.AST] = [*node.args.defaults, *(d for d in node.args.kw_defaults if d)]
            if node.name == "__init__":
                given += [n for n in ast.walk(node) if _calls_base(n)]
            if any(_has_numbers(n) for n in given):
                said = _tidy(about, ast.get_docstring(node) or "")
                yield Default(node.name, node.lineno, said)


def _calls_base(node: ast.AST) -> bool:
    return isinstance(node, ast.Call) and ast.unparse(node.func) == "super().__init__"


def _has_numbers(node: ast.AST | None) -> bool:
    found = ast.walk(node) if node is not None else ()
    return any(
        isinstance(n, ast.Constant) and type(n.value) in (int, float) and n.value not in PLAIN
        for n in found
    )


def _comments(lines: list[str], node: ast.stmt) -> str:
    """The nearest above it, as far as there is no empty line between.

    One that heads several lines is of all of them; the next one's is not.
    """
    last = node.lineno - 1
    while last > 0 and lines[last - 1].strip() and not _is_comment(lines[last - 1]):
        if lines[last - 1].startswith("class "):
            return ""
        last -= 1
    first = last
    while first > 0 and _is_comment(lines[first - 1]):
        first -= 1
    return " ".join(x.strip().lstrip("#:") for x in lines[first:last])


def _is_comment(line: str) -> bool:
    return line.strip().startswith("#")


def _after(lines: list[str], node: ast.stmt) -> str:
    """The comment that ends its line."""
    return lines[(node.end_lineno or node.lineno) - 1].partition("#")[2]


def _tidy(*parts: str) -> str:
    return " ".join(" ".join(parts).split())


MODULES = [
    path
    for place in PLACES
    for path in sorted((ROOT / place).rglob("*.py") if (ROOT / place).is_dir() else [ROOT / place])
]


@pytest.mark.parametrize("path", MODULES, ids=lambda p: p.relative_to(ROOT).as_posix())
def test_each_default_has_its_source_beside_it(path: Path) -> None:
    found = defaults_of(path.read_text(encoding="utf-8"))
    assert [(d.name, d.line) for d in found if not d.has_source] == []


def test_counters_watchers_and_rules_are_really_gone_through() -> None:
    found = {
        p.relative_to(ROOT).as_posix(): {d.name for d in defaults_of(p.read_text("utf-8"))}
        for p in MODULES
    }
    assert {"_JUMPS", "_THROWS", "CHANNELS"} <= found["tracker/exercises/counters.py"]
    assert "__init__" in found["tracker/exercises/watchers/head.py"]
    assert {"MIN_SPREAD_DEG", "STILL_DEG"} <= found["calibration/axes.py"]
    assert {"MIN_QUALITY", "(SHARP, SMEARED)"} <= found["tracker/measure.py"]
    assert {"AGREES", "align"} <= found["tracker/head/alignment.py"]
    assert {"FREE", "TRUSTED"} <= found["tracker/eyes/regression.py"]
    assert {"silent_s", "strikes"} <= found["tracker/vision/service.py"]
    assert {"floor", "share"} <= found["tracker/motion/turning.py"]
    assert "STAY_S" in found["tracker/motion/reading.py"]
    assert "score_most" in found["tracker/plan/model.py"]
    assert {"LEAST_STANDS", "MOST_SECONDS"} <= found["tracker/session/chair_stands.py"]
    assert sum(len(names) for names in found.values()) > 300


@pytest.mark.parametrize(
    "text",
    [
        "LIMIT_S = 0.7\n",
        "#: How long.\nLIMIT_S = 0.7\n",
        "#: How long (common practice).\n\nLIMIT_S = 0.7\n",
        "#: How long (from memory; common practice).\nLIMIT_S = 0.7\n",
        "def f(limit_s: float = 0.7) -> None:\n    '''Do it.'''\n",
        "class W:\n    '''W.'''\n    def __init__(self) -> None:\n        super().__init__(0.7)\n",
        "class W:\n    '''Watches.'''\n    LIMIT_S = 0.7\n",
        # That of the line before is not this one's, nor is a word in passing.
        "#: One (common practice).\n_A = 2\n#: Two.\nLIMIT_S = 0.7\n",
        "#: Enough with a measured distance.\nLIMIT_S = 0.7\n",
    ],
)
def test_a_default_without_one_is_found(text: str) -> None:
    assert [d.has_source for d in defaults_of(text)][-1] is False


@pytest.mark.parametrize(
    "text",
    [
        "LIMIT_S = 0.7  # common practice\n",
        "#: Both (common practice).\nOTHER_S = 0.5\nLIMIT_S = 0.7\n",
        "#: How long (this project's\n#: own choice).\nLIMIT_S = 0.7\n",
        "class W:\n    '''Watches, from 0.7 s on (common practice).'''\n    LIMIT_S = 0.7\n",
        "def f(limit_s: float = 0.7) -> None:\n    '''Do it (measured: 0.7).'''\n",
    ],
)
def test_a_note_beside_it_is_enough(text: str) -> None:
    assert all(d.has_source for d in defaults_of(text)) and defaults_of(text)


@pytest.mark.parametrize("exercise", CATALOGUE.values(), ids=lambda e: e.id)
def test_dose_tempo_and_range_of_each_exercise_name_a_source(exercise: Exercise) -> None:
    asked = {"dose"} | {
        name
        for name in ("amplitude_deg", "tempo_bpm", "seat_mm")
        if getattr(exercise, name) is not None
    }
    for name in asked:
        assert SOURCE.search(exercise.sources[name]), (exercise.id, name)


def test_no_source_is_a_memory() -> None:
    said = [v for k, v in vars(sources).items() if k.isupper()]
    assert len(said) > 10
    assert not [text for text in said if REMEMBERED.search(text)]
