"""Where in a JSON text each field stands: its line, by its path."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from dataclasses import dataclass

Path = tuple[str | int, ...]

#: A plan has five levels; a text that goes deeper than this is not gone
#: through (this project's own choice).
MAX_DEPTH = 12

_TOKEN = re.compile(r'"(?:[^"\\]|\\.)*"|[{}\[\],:]|[^\s{}\[\],:"]+')


@dataclass(frozen=True, slots=True)
class LineIndex:
    """Lines of the fields of a JSON text.

    Attributes
    ----------
    lines
        Path of a field -> line of its name, or of the value in a list; from 1.
    repeated
        Paths of names that stand twice in their object.
    too_deep
        Path of the first object or list below ``MAX_DEPTH`` others, or None; the
        index ends there.
    """

    lines: dict[Path, int]
    repeated: list[Path]
    too_deep: Path | None = None

    def line_of(self, path: Sequence[str | int]) -> int:
        """Line of a field, or of the nearest one around it that is there."""
        known = tuple(path)
        while known not in self.lines:
            known = known[:-1]
        return self.lines[known]


def index_lines(text: str) -> LineIndex:
    """Index of a text that ``json.loads`` has taken; others give nonsense."""
    lines: dict[Path, int] = {(): 1}
    repeated: list[Path] = []
    stack: list[list[str | int | None]] = []  # bracket, and the name or number of the member
    line, counted_to = 1, 0
    for match in _TOKEN.finditer(text):
        line += text.count("\n", counted_to, match.start())
        counted_to = match.start()
        token, top = match[0], stack[-1] if stack else None
        if token in "}]":
            stack.pop()
        elif token == ",":
            assert top is not None
            top[1] = top[1] + 1 if isinstance(top[1], int) else None
        elif top is not None and top[0] == "{" and top[1] is None:
            top[1] = json.loads(token)
            path = _path(stack)
            if path in lines:
                repeated.append(path)
            lines[path] = line
        elif token != ":":
            path = _path(stack)
            lines.setdefault(path, line)
            if token in "{[":
                stack.append([token, None if token == "{" else 0])
                if len(stack) > MAX_DEPTH:
                    return LineIndex(lines, repeated, path)
    return LineIndex(lines, repeated)


def _path(stack: Sequence[Sequence[str | int | None]]) -> Path:
    return tuple(member for _, member in stack if member is not None)


def field_name(path: Sequence[str | int]) -> str:
    """A path as one reads it: ``entries[2].tempo_bpm``; "the file" for the whole."""
    text = "".join(f"[{p}]" if isinstance(p, int) else f".{p}" for p in path)
    return text.lstrip(".") or "the file"
