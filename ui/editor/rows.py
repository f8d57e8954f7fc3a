"""What a form of the editor is made of: sections of rows, as data. No Qt.

The forms are made anew from the plan's data after each step; the window compares them with
what it shows and only rebuilds what has another shape.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Literal

from tracker.plan.findings import Finding
from tracker.plan.lines import Path

#: What may be chosen in the outline: the plan's own pages, a stage or an entry by number.
Item = tuple[str, int]
PLAN: Item = ("plan", 0)
SAFETY: Item = ("safety", 0)
SYMPTOMS: Item = ("symptoms", 0)

Kind = Literal[
    "text", "area", "number", "day", "choice", "tick", "member", "tempo", "pair", "note", "button"
]


@dataclass(frozen=True, slots=True)
class Row:
    """One row.

    Attributes
    ----------
    path
        Field of the plan; of a note or a button what it belongs to.
    kind
        What it is edited with. ``member`` ticks a word in a list; ``pair`` is two numbers.
    label, name
        What stands before it, and what a screen reader says where that is more.
    text
        Of a note its words; else what is said below the field (what is usual, and why).
    choices
        Values and words of a choice; the first words of a tempo's ways are its own.
    default
        The value of a choice or a tick that holds where the field is left out.
    member
        The word that is ticked.
    step
        By how much the arrow keys change a number.
    act, act_text
        A button behind the row: what it does, and its words.
    strong
        Whether a note is to be seen first.
    """

    path: Path
    kind: Kind
    label: str = ""
    text: str = ""
    name: str = ""
    choices: tuple[tuple[Any, str], ...] = ()
    default: Any = None
    member: str = ""
    step: float = 1.0
    act: str = ""
    act_text: str = ""
    strong: bool = False

    @property
    def shape(self) -> tuple[Any, ...]:
        """What has to be the same for the row to be kept."""
        return (
            self.path,
            self.kind,
            self.label,
            # A choice is given other values while it stays where it is.
            () if self.kind == "choice" else self.choices,
            self.member,
            self.act,
            self.act_text,
        )

    @property
    def said(self) -> str:
        """What a screen reader calls it."""
        return self.name or self.label


@dataclass(frozen=True, slots=True)
class Section:
    """Rows under a title."""

    title: str
    rows: tuple[Row, ...]


def item_of(path: Path) -> Item | None:
    """Where in the outline a field is edited; None for the list of entries itself."""
    first = path[0] if path else ""
    if first == "entries":
        return ("entry", int(path[1])) if len(path) > 1 else None
    if first == "stages" and len(path) > 1:
        return ("stage", int(path[1]))
    if first == "symptom_rules":
        return SYMPTOMS
    if first in ("neck_limit_deg", "emergency_number", "clearance"):
        return SAFETY
    return PLAN


def row_of(path: Path, rows: Sequence[Row]) -> int | None:
    """Number of the row that a finding belongs to: the one whose path is most like its own."""
    best, longest = None, 0
    for k, row in enumerate(rows):
        common = 0
        for a, b in zip(row.path, path, strict=False):
            if a != b:
                break
            common += 1
        if common > longest:
            best, longest = k, common
    return best


def findings_of(
    rows: Sequence[Row], item: Item, found: Sequence[Finding]
) -> dict[int, list[Finding]]:
    """Number of a row -> what is found at it."""
    at: dict[int, list[Finding]] = {}
    for finding in found:
        if item_of(finding.path) == item:
            k = row_of(finding.path, rows)
            if k is not None:
                at.setdefault(k, []).append(finding)
    return at
