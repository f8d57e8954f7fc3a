"""Words and tables on paper, as blocks. All lengths are in points."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from PySide6.QtGui import QColor, QPainter

from ui.documents.parts import Row, Table
from ui.documents.pdf_chart import line, rect, set_pen
from ui.documents.pdf_layout import MARGIN, Block
from ui.documents.pdf_text import Run, Style, Words, text_width

#: A column of figures is at most so wide; the rest is the row heads'.
WIDEST_COLUMN = 96.0
LEAST_HEAD = 84.0
CELL_PAD = 3.0
PALE = QColor("#ececec")


@dataclass(frozen=True, slots=True)
class Look:
    """The letters of a page: of its headings, of words, and of tables."""

    heading: Style
    body: Style
    bold: Style
    absent: Style
    small: Style
    cell: Style
    cell_bold: Style
    cell_absent: Style


#: The small letters of the pages with all figures.
DETAILS = Look(
    *(Style.HEADING, Style.BODY, Style.BOLD, Style.ABSENT, Style.SMALL),
    *(Style.CELL, Style.CELL_BOLD, Style.CELL_ABSENT),
)
#: Those of the page to file.
READ = Look(
    *(Style.READ_HEADING, Style.READ, Style.READ_BOLD, Style.READ_ABSENT, Style.READ),
    *(Style.READ, Style.READ_BOLD, Style.READ_ABSENT),
)
#: The same with a tighter table.
TIGHT = replace(READ, cell=Style.BODY, cell_bold=Style.BOLD, cell_absent=Style.ABSENT)


def words_block(
    runs: Sequence[Run],
    room: float,
    *,
    above: float = 0.0,
    below: float = 1.0,
    mirrored: bool = False,
) -> Block:
    """Words across a width, with space above and below."""
    words = Words(runs, room, mirrored=mirrored)

    def draw(painter: QPainter, y: float) -> None:
        words.draw(painter, MARGIN, y + above)

    return Block(above + words.height + below, draw)


def table_blocks(table: Table, room: float, look: Look = DETAILS) -> Iterator[Block]:
    """A table, a block a row; its head comes again where a row begins a page."""
    widths = _column_widths(table, room, look.cell_bold)
    cells = [Run(c, look.cell_bold) for c in table.columns]
    top = _row_block(Row(table.corner, ()), cells, widths, look.cell_bold, shaded=True)
    yield top
    for row in table.rows:
        runs = [Run(c.text, look.cell_absent if c.absent else look.cell) for c in row.cells]
        block = _row_block(row, runs, widths, look.cell)
        yield Block(block.height, block.draw, again=top)
    yield Block(3.0, lambda _p, _y: None)


def _row_block(
    row: Row, runs: Sequence[Run], widths: Sequence[float], style: Style, *, shaded: bool = False
) -> Block:
    """A row of a table; one cell goes across all columns where the row says so."""
    total = sum(widths)
    columns = [total - widths[0]] if row.across else widths[1:]
    head = Words(Run(row.head, style), widths[0] - 2 * CELL_PAD)
    cells = [
        Words(run, width - 2 * CELL_PAD, right=not row.across)
        for run, width in zip(runs, columns, strict=True)
    ]
    height = max(w.height for w in (head, *cells)) + 1.2

    def draw(painter: QPainter, y: float) -> None:
        if shaded:
            painter.fillRect(rect(MARGIN, y, total, height), PALE)
        set_pen(painter, 0.4)
        painter.drawLine(line(MARGIN, y + height, MARGIN + total, y + height))
        head.draw(painter, MARGIN + CELL_PAD, y + 0.6)
        x = MARGIN + widths[0]
        for words, width in zip(cells, columns, strict=True):
            words.draw(painter, x + CELL_PAD, y + 0.6)
            x += width

    return Block(height, draw)


def _column_widths(table: Table, room: float, style: Style) -> list[float]:
    """Widths of the columns: as wide as their content, within what there is room for."""
    natural = []
    for k, name in enumerate(table.columns):
        texts = [*name.split(" "), *(r.cells[k].text for r in table.rows if not r.across)]
        widest = max(text_width(t, style) for t in texts)
        natural.append(min(widest + 2 * CELL_PAD + 1.0, WIDEST_COLUMN))
    spare = room - LEAST_HEAD
    natural = _narrowed(natural, spare)
    heads = [table.corner, *(r.head for r in table.rows)]
    wanted = max(text_width(t, style) for t in heads) + 2 * CELL_PAD + 1.0
    head = min(wanted, room - sum(natural))
    across = [text_width(r.cells[0].text, style) for r in table.rows if r.across]
    # What goes across all columns may make them wider.
    missing = max(across, default=0.0) + 2 * CELL_PAD + 1.0 - sum(natural)
    more = max(0.0, min(missing, room - head - sum(natural))) / len(natural)
    return [head, *(w + more for w in natural)]


def _narrowed(widths: Sequence[float], room: float) -> list[float]:
    """Widths that fit: the widest are made narrower, the others keep theirs."""
    if sum(widths) <= room:
        return list(widths)
    low, high = 0.0, max(widths)
    for _ in range(40):
        most = (low + high) / 2
        low, high = (most, high) if sum(min(w, most) for w in widths) <= room else (low, most)
    return [min(w, low) for w in widths]
