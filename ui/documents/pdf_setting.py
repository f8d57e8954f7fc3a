"""What pages of the PDF are set from: words, facts, lists, a box, a chart, as blocks."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from PySide6.QtGui import QPainter

from ui.documents.charts import Chart
from ui.documents.parts import Fact, Table
from ui.documents.pdf_chart import draw_item, rect, set_pen
from ui.documents.pdf_layout import MARGIN, Block
from ui.documents.pdf_table import DETAILS, Look, table_blocks, words_block
from ui.documents.pdf_text import UNIT, Run, Style, Words

CHART_WIDTH = 158.0
GAP = 8.0
#: Facts of fewer letters stay on one line.
SHORT = 30


class Setter:
    """Sets parts of a page into blocks.

    Parameters
    ----------
    width
        Of the paper, in points.
    look
        The sizes of its letters.
    chart_width
        How wide a chart is, in points.
    """

    def __init__(
        self, width: float, look: Look = DETAILS, chart_width: float = CHART_WIDTH
    ) -> None:
        self.room = width - 2 * MARGIN
        self.look = look
        self.chart_width = chart_width

    def words(
        self,
        runs: Sequence[Run],
        room: float | None = None,
        *,
        above: float = 0.0,
        below: float = 1.0,
    ) -> Block:
        """Words across the page, or a part of its width."""
        return words_block(runs, room or self.room, above=above, below=below)

    def heading(self, text: str) -> Block:
        """A heading."""
        return self.words([Run(text, self.look.heading)], below=1.0)

    def titled(self, title: str, blocks: Iterable[Block]) -> Iterator[Block]:
        """Blocks under a heading."""
        yield self.heading(title)
        yield from blocks

    def table(self, table: Table) -> Iterator[Block]:
        """A table across the page."""
        return table_blocks(table, self.room, self.look)

    def lines(
        self, lines: Iterable[str], style: Style | None = None, room: float | None = None
    ) -> Iterator[Block]:
        """Lines below each other."""
        for text in lines:
            yield self.words([Run(text, style or self.look.body)], room)

    def facts(self, facts: Sequence[Fact], room: float | None = None) -> Block:
        """Facts one behind the other; what was found stands out from its label."""
        runs: list[Run] = []
        for f in facts:
            runs.append(Run(f"{'  ·  ' if runs else ''}{f.label}: ", self.look.body))
            # A short one isn't torn apart at the end of a line.
            text = f.text.replace(" ", "\N{NO-BREAK SPACE}") if len(f.text) < SHORT else f.text
            runs.append(Run(text, self.look.absent if f.absent else self.look.bold))
        return self.words(runs, room, below=2.0 if facts else 0.0)

    def box(self, lines: Sequence[str]) -> Block:
        """What to read first, in a heavy frame."""
        pad = 5.0
        texts = [Words(Run("Read first", self.look.body), self.room - 2 * pad)]
        texts += [Words(Run(line, self.look.heading), self.room - 2 * pad) for line in lines]
        height = sum(t.height for t in texts) + 2 * pad

        def draw(painter: QPainter, y: float) -> None:
            set_pen(painter, 1.6)
            painter.drawRect(rect(MARGIN, y, self.room, height))
            at = y + pad
            for text in texts:
                text.draw(painter, MARGIN + pad, at)
                at += text.height

        return Block(height + 4.0, draw)

    def chart(self, chart: Chart) -> Block:
        """A chart at the right edge, beside what comes after it."""
        scale = self.chart_width / chart.width
        left = MARGIN + self.room - self.chart_width

        def draw(painter: QPainter, y: float) -> None:
            painter.save()
            painter.translate(left * UNIT, y * UNIT)
            painter.scale(scale, scale)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            for item in chart.items:
                draw_item(painter, item)
            painter.restore()

        return Block(0.0, draw, needs=chart.height * scale)
