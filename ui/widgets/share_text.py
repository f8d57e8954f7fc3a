"""Lines of text for the far end of a call: figures large, the words around them smaller.

Pure but for Qt's measuring of letters. A line is broken into runs of one size each, and lines
that are wider than their place are broken between words.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtGui import QFont, QFontMetricsF

#: A figure with what belongs to it: decimals, a time, a sign of degrees.
_FIGURE = re.compile(r"\d(?:[\d.,:٫٬]*\d)?°?")


@dataclass(frozen=True, slots=True)
class Run:
    """Letters of one size.

    Attributes
    ----------
    text
        The letters.
    capital_px
        Height of a capital, or of a figure.
    is_value
        Whether it is a figure.
    """

    text: str
    capital_px: float
    is_value: bool = False


#: Runs that stand together, without a space.
Word = tuple[Run, ...]
Line = tuple[Word, ...]


def line_of(text: str, words_px: float, values_px: float) -> Line:
    """A text as a line: its figures in one size, all else in another."""
    return tuple(_word(part, words_px, values_px) for part in text.split())


def _word(part: str, words_px: float, values_px: float) -> Word:
    runs, at = [], 0
    for found in _FIGURE.finditer(part):
        if found.start() > at:
            runs.append(Run(part[at : found.start()], words_px))
        runs.append(Run(found.group(), values_px, is_value=True))
        at = found.end()
    if at < len(part):
        runs.append(Run(part[at:], words_px))
    return tuple(runs)


class Setting:
    """Sets lines in a type.

    Parameters
    ----------
    font_of
        Gives the type with capitals of a height in pixels.
    """

    def __init__(self, font_of: Callable[[float], QFont]) -> None:
        self._font_of = font_of

    def width(self, line: Sequence[Word]) -> float:
        """Width of a line in pixels."""
        spaces = sum(self._space(*pair) for pair in pairwise(line))
        return spaces + sum(self._wide(run) for word in line for run in word)

    def _wide(self, run: Run) -> float:
        return QFontMetricsF(self._font_of(run.capital_px)).horizontalAdvance(run.text)

    def _space(self, word: Word, after: Word) -> float:
        """Between two words: as wide as in the smaller letters of both."""
        least = min(run.capital_px for run in (*word, *after))
        return QFontMetricsF(self._font_of(least)).horizontalAdvance(" ")

    def broken(self, line: Line, wide: float) -> list[Line]:
        """The line as lines no wider than ``wide``, as far as single words allow."""
        lines: list[list[Word]] = []
        for word in line:
            if lines and self.width([*lines[-1], word]) <= wide:
                lines[-1].append(word)
            else:
                lines.append([word])
        return [tuple(words) for words in lines]

    def shrunk(self, line: Line, wide: float) -> Line:
        """The line, with smaller letters where it is wider than its place."""
        needs = self.width(line)
        if needs <= wide:
            return line
        share = wide / needs
        return tuple(
            tuple(Run(r.text, r.capital_px * share, r.is_value) for r in word) for word in line
        )

    def placed(self, line: Line, left: float, *, mirrored: bool) -> list[tuple[Run, float]]:
        """Each run with its left edge; ``mirrored`` where one reads from right to left."""
        found, at = [], 0.0
        wide = self.width(line)
        for k, word in enumerate(line):
            at += self._space(line[k - 1], word) if k else 0.0
            for run in word:
                own = self._wide(run)
                found.append((run, left + (wide - at - own if mirrored else at)))
                at += own
        return found


def text_of(line: Line) -> str:
    """The line as a text."""
    return " ".join("".join(run.text for run in word) for word in line)


def high_of(line: Line) -> float:
    """Height of the line's largest capitals, in pixels."""
    return max((run.capital_px for word in line for run in word), default=0.0)
