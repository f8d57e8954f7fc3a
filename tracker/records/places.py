"""Reading the freer parts of a summary: every value with the place where it stands.

A summary's parts are dictionaries that later versions may add to. What is read of
them is checked here, so that a damaged file is named with the place of the damage.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import isfinite
from typing import Any

from tracker.errors import InputError

#: Free text is cut to this length wherever it is shown.
MOST_TEXT = 120


@dataclass(frozen=True, slots=True)
class Place:
    """A value of a summary and where it stands, for example ``exercises.0.done``.

    All readers raise InputError, naming the place, where the value is of another kind.
    """

    value: Any
    where: str = ""

    def at(self, name: str) -> Place:
        """A part of it; one whose value is None where there is none."""
        if self.value is None:
            return Place(None, self._inside(name))
        if not isinstance(self.value, Mapping):
            raise self.wrong("should hold named parts")
        return Place(self.value.get(name), self._inside(name))

    def names(self) -> list[str]:
        """Names of its parts, in order."""
        if self.value is None:
            return []
        if not isinstance(self.value, Mapping):
            raise self.wrong("should hold named parts")
        return [str(k) for k in self.value]

    def rows(self) -> Iterator[Place]:
        """Its rows."""
        if self.value is None:
            return
        if isinstance(self.value, str | bytes) or not isinstance(self.value, Sequence):
            raise self.wrong("should be a list")
        for k, row in enumerate(self.value):
            yield Place(row, self._inside(str(k)))

    def number(self) -> float | None:
        """A finite number, or None."""
        if self.value is None:
            return None
        good = isinstance(self.value, int | float) and not isinstance(self.value, bool)
        # A whole number can be too long for a float; no figure is that large.
        if not good or abs(self.value) > 1e15 or not isfinite(self.value):
            raise self.wrong("should be a number")
        return float(self.value)

    def span(self) -> tuple[float, float] | None:
        """Two numbers, or one twice, or None."""
        if isinstance(self.value, Sequence) and not isinstance(self.value, str):
            ends = [row.number() for row in self.rows()]
            if len(ends) != 2 or ends[0] is None or ends[1] is None:
                raise self.wrong("should be two numbers")
            return ends[0], ends[1]
        one = self.number()
        return None if one is None else (one, one)

    def text(self) -> str | None:
        """A word or a line, fit to be shown (see :func:`clean`); None where nothing is left."""
        if self.value is None:
            return None
        if not isinstance(self.value, str):
            raise self.wrong("should be text")
        return clean(self.value) or None

    def truth(self) -> bool | None:
        """Yes, no, or None."""
        if self.value is not None and not isinstance(self.value, bool):
            raise self.wrong("should be true or false")
        return self.value

    def wrong(self, what: str) -> InputError:
        """The error for this place."""
        return InputError(f"not a usable summary: {self.where}: {what}")

    def _inside(self, name: str) -> str:
        return f"{self.where}.{name}" if self.where else name


def clean(text: str, most: int | None = MOST_TEXT) -> str:
    """One line that is safe to show: no control or direction marks, no lone surrogates, cut.

    Marks that turn the direction of writing could make a figure read backwards.
    """
    kept = []
    for letter in text if most is None else text[: 20 * most]:
        kind = unicodedata.category(letter)
        if letter.isspace() or kind in ("Cc", "Zl", "Zp"):
            kept.append(" ")
        elif kind not in ("Cf", "Cs", "Co", "Cn"):
            kept.append(letter)
    line = " ".join("".join(kept).split())
    return line if most is None or len(line) <= most else line[: most - 1].rstrip() + "…"
