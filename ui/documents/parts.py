"""What a page is made of."""

from __future__ import annotations

from dataclasses import dataclass

from ui.documents.charts import Chart


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing in words; ``absent`` where it was not measured or not asked."""

    label: str
    text: str
    absent: bool = False


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell of a table; empty where the question doesn't arise."""

    text: str
    absent: bool = False


@dataclass(frozen=True, slots=True)
class Row:
    """A row: its head, and its cells, or one cell across all columns."""

    head: str
    cells: tuple[Cell, ...]
    across: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """A table; ``corner`` is the head of its first column."""

    caption: str
    corner: str
    columns: tuple[str, ...]
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True)
class Section:
    """One exercise."""

    title: str
    subtitle: str
    warnings: tuple[str, ...]
    tables: tuple[Table, ...]
    facts: tuple[Fact, ...]
    notes: tuple[str, ...]
    chart: Chart | None


@dataclass(frozen=True, slots=True)
class Page:
    """One session; ``calm`` is said where nothing is to be read first (``alert``).

    ``glance_short`` and ``begun_short`` say in less room what ``glance`` and ``left_out`` do.
    """

    title: str
    when: str
    origin: str
    ended: Fact
    calm: str
    alert: tuple[str, ...]
    facts: tuple[Fact, ...]
    warnings: tuple[str, ...]
    glance: Table | None
    glance_short: Table | None
    left_out: tuple[str, ...]
    begun_short: str
    sections: tuple[Section, ...]
    setup: tuple[Fact, ...]
    limits: tuple[str, ...]
    chart: Chart | None
    scores: Table | None = None
