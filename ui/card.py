"""What a task of a planned session looks like: title, lines, answers; pure values."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf
from typing import Any


@dataclass(frozen=True, slots=True)
class Option:
    """A button and what it answers; ``act`` names a command in place of an answer."""

    text: str
    value: Any = None
    main: bool = False
    act: str = ""


@dataclass(frozen=True, slots=True)
class Card:
    """What is shown of a task.

    Attributes
    ----------
    title, lines
        What is said; the first line is the task itself.
    cares
        What to take care of, marked as such.
    options
        The answers, in their order.
    count
        Numbers to choose from, where a number is asked for.
    first
        The number that choosing begins at; none stands there until one is chosen.
    until_s
        When it is over by itself, on the session's clock.
    runs
        Whether a set goes on meanwhile, whose figure is shown large.
    quiet
        What is said last and softly: what the camera doesn't see.
    leave
        Whether one may say to be unwell, or end for today.
    """

    title: str
    lines: tuple[str, ...] = ()
    cares: tuple[str, ...] = ()
    options: tuple[Option, ...] = ()
    count: range | None = None
    first: int = 0
    until_s: float = inf
    runs: bool = False
    quiet: str = ""
    leave: bool = True
