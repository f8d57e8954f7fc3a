"""The page of a session as a PDF: the same page as the HTML file, set on paper.

Drawn with Qt (QPdfWriter, QPainter, QTextLayout), which the program has anyway: it
writes text as text and lines as vectors, finds a font for every script that the
system has one for, and needs no native library that would have to be installed. Qt's
own HTML printing was not used: it knows a part of CSS only, takes pictures as pixels
and leaves little say in where a page ends. A print engine for HTML would bring native
libraries or a second browser. What is the same for both is
:mod:`ui.documents.page`: this module only decides where it stands on paper.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable, Sequence

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF
from PySide6.QtGui import QGuiApplication, QPageSize, QPainter, QPdfWriter

from tracker.errors import RunError
from tracker.records.figures import SessionFigures
from tracker.records.questionnaires import Score
from ui.documents.charts import Chart
from ui.documents.overview import sessions_overview
from ui.documents.page import page_of
from ui.documents.parts import Fact, Page, Section, Table
from ui.documents.pdf_chart import draw_item, rect, set_pen
from ui.documents.pdf_layout import MARGIN, Block, Group, Sheet, paginate
from ui.documents.pdf_table import table_blocks, words_block
from ui.documents.pdf_text import UNIT, Run, Style, Words
from ui.documents.questionnaires import scores_table
from ui.reserve import keep_constants_alive

#: Paper -> width and height in points.
PAPERS = {"a4": (595.0, 842.0), "letter": (612.0, 792.0)}
FOOT = 22.0
CHART_WIDTH = 158.0
GAP = 8.0
#: A session that is a little too long for one page is set smaller, down to 6.8 points.
SCALES = (1.0, 0.95, 0.9)
#: Facts of fewer letters stay on one line.
SHORT = 30


def pdf_document(
    records: Sequence[SessionFigures], paper: str = "a4", scores: Sequence[Score] = ()
) -> bytes:
    """The whole file; each session begins a page.

    Raises
    ------
    RunError
        If Qt can't write it.
    """
    need_application()
    width, height = PAPERS[paper]
    answered = scores_table(records, scores)
    placed = [
        (sheet, 1.0, f"{len(records)} practice sessions")
        for sheet in _overview(records, answered, width, height)
    ]
    placed += [
        (sheet, scale, f"{page.title}, {page.when}")
        for page in (page_of(r, None if len(records) > 1 else answered) for r in records)
        for scale, sheets in [_set(page, width, height)]
        for sheet in sheets
    ]
    return write_pdf(
        placed, paper, "Practice session" if len(records) == 1 else "Practice sessions"
    )


def write_pdf(
    placed: Sequence[tuple[Sheet, float, str]],
    paper: str,
    title: str,
    *,
    page: Callable[[int, int], str] = lambda number, pages: f"Page {number} of {pages}",
    mirrored: bool = False,
) -> bytes:
    """A PDF of pages: each with its blocks, how much smaller they are set, and its foot.

    ``page`` gives the words for a page's number; ``mirrored`` feet are read from the right.

    Raises
    ------
    RunError
        If Qt can't write it.
    """
    width, height = PAPERS[paper]
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    size = QPageSize.PageSizeId.A4 if paper == "a4" else QPageSize.PageSizeId.Letter
    writer.setPageSize(QPageSize(size))
    writer.setResolution(72 * UNIT)
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    writer.setCreator("Turnpost")
    writer.setTitle(title)
    painter = QPainter()
    if not painter.begin(writer):
        raise RunError("the PDF could not be drawn")
    try:
        for number, (sheet, scale, foot) in enumerate(placed, 1):
            if number > 1:
                writer.newPage()
            painter.save()
            painter.scale(scale, scale)
            for block, y in sheet:
                block.draw(painter, y)
            painter.restore()
            text = f"{foot}   {page(number, len(placed))}"
            _foot(painter, width, height, text, mirrored=mirrored)
    finally:
        painter.end()
        buffer.close()
    return bytes(data.data())


def _overview(
    records: Sequence[SessionFigures], answered: Table | None, width: float, height: float
) -> list[Sheet]:
    """All sessions at a glance, and the questionnaires, before the first; nothing for one."""
    if len(records) < 2:
        return []
    room = width - 2 * MARGIN
    title = words_block([Run(f"{len(records)} practice sessions", Style.TITLE)], room, below=6.0)
    table = table_blocks(sessions_overview(records), room)
    groups = [Group((title, *table))]
    if answered is not None:
        groups.append(Group(tuple(table_blocks(answered, room)), GAP))
    return paginate(groups, MARGIN, height - MARGIN - FOOT)


def _set(page: Page, width: float, height: float) -> tuple[float, list[Sheet]]:
    """A session on sheets, a little smaller where that brings it onto one; and how small."""
    for scale in SCALES:
        groups = [*_Setter(page, width / scale).groups()]
        sheets = paginate(groups, MARGIN, height / scale - MARGIN - FOOT / scale)
        if len(sheets) == 1:
            return scale, sheets
    return 1.0, paginate([*_Setter(page, width).groups()], MARGIN, height - MARGIN - FOOT)


def need_application() -> QGuiApplication:
    """Qt's application, which fonts need; without a screen where none is open yet."""
    # Many of Qt's small calls are made here, also outside the window.
    keep_constants_alive()
    found = QGuiApplication.instance()
    if isinstance(found, QGuiApplication):
        return found
    # On Linux the usual one ends the program where there is no screen.
    words = ["-platform", "offscreen"] if sys.platform == "linux" else []
    return QGuiApplication(["turnpost", *words])


def _foot(
    painter: QPainter, width: float, height: float, text: str, *, mirrored: bool = False
) -> None:
    room = width - 2 * MARGIN
    words = Words(Run(text, Style.SMALL), room, right=True, mirrored=mirrored)
    words.draw(painter, MARGIN, height - MARGIN - words.height)


class _Setter:
    """Sets one session into blocks."""

    def __init__(self, page: Page, width: float) -> None:
        self._page = page
        self._width = width - 2 * MARGIN

    def groups(self) -> Iterable[Group]:
        """All of it, in order."""
        page = self._page
        yield Group(tuple(self._top()))
        if page.glance is not None:
            yield Group(
                tuple(self._titled("The exercises", table_blocks(page.glance, self._width))), GAP
            )
        if page.left_out:
            yield Group(tuple(self._titled("Not begun", self._list(page.left_out))), GAP)
        for section in page.sections:
            yield Group(tuple(self._section(section)), GAP)
        if page.scores is not None:
            yield Group(
                tuple(self._titled("Questionnaires", table_blocks(page.scores, self._width))), GAP
            )
        yield Group(tuple(self._titled("Set-up", [self._facts(page.setup)])), GAP)
        yield Group(tuple(self._titled("Limits", self._list(page.limits, Style.SMALL))), GAP)

    def _top(self) -> Iterable[Block]:
        """Who, when, what to see first, and how it went."""
        page = self._page
        yield self._words([Run(page.title, Style.TITLE)])
        yield self._words([Run(f"Practice session, {page.when}", Style.HEADING)])
        yield self._words([Run(page.origin, Style.SMALL)], below=4.0)
        if page.alert:
            yield self._box(page.alert)
        room = self._width
        if page.chart is not None:
            room -= CHART_WIDTH + GAP
            yield self._chart(page.chart)
        if not page.alert:
            yield self._words([Run(page.calm, Style.BODY)], room)
        facts = (page.ended, *page.facts)
        for some in (facts[:1], facts[1:4], facts[4:]):
            yield self._facts(some, room)
        yield self._words([Run("What to trust less", Style.BOLD)], room, above=3.0)
        none = ("Nothing was noted besides the limits at the end.",)
        yield from self._list(page.warnings or none, room=room)

    def _section(self, section: Section) -> Iterable[Block]:
        yield self._words([Run(section.title, Style.HEADING)])
        yield self._words([Run(section.subtitle, Style.SMALL)], below=2.0)
        if section.warnings:
            yield from self._list([f"Trust less: {w}" for w in section.warnings], Style.BOLD)
        room = self._width
        if section.chart is not None:
            room -= CHART_WIDTH + GAP
            yield self._chart(section.chart)
        for table in section.tables:
            yield from table_blocks(table, room)
        yield self._facts(section.facts, room)
        yield from self._list(section.notes, Style.SMALL, room)

    def _titled(self, title: str, blocks: Iterable[Block]) -> Iterable[Block]:
        yield self._words([Run(title, Style.HEADING)], below=1.0)
        yield from blocks

    # --- blocks ---

    def _words(
        self,
        runs: Sequence[Run],
        room: float | None = None,
        *,
        above: float = 0.0,
        below: float = 1.0,
    ) -> Block:
        return words_block(runs, room or self._width, above=above, below=below)

    def _list(
        self, lines: Iterable[str], style: Style = Style.BODY, room: float | None = None
    ) -> Iterable[Block]:
        for text in lines:
            yield self._words([Run(text, style)], room)

    def _facts(self, facts: Sequence[Fact], room: float | None = None) -> Block:
        """Facts one behind the other; what was found stands out from its label."""
        runs: list[Run] = []
        for f in facts:
            runs.append(Run(f"{'  ·  ' if runs else ''}{f.label}: ", Style.BODY))
            # A short one isn't torn apart at the end of a line.
            text = f.text.replace(" ", "\N{NO-BREAK SPACE}") if len(f.text) < SHORT else f.text
            runs.append(Run(text, Style.ABSENT if f.absent else Style.BOLD))
        return self._words(runs, room, below=2.0 if facts else 0.0)

    def _box(self, lines: Sequence[str]) -> Block:
        """What to read first, in a heavy frame."""
        pad = 5.0
        texts = [Words(Run("Read first", Style.BODY), self._width - 2 * pad)]
        texts += [Words(Run(line, Style.HEADING), self._width - 2 * pad) for line in lines]
        height = sum(t.height for t in texts) + 2 * pad

        def draw(painter: QPainter, y: float) -> None:
            set_pen(painter, 1.6)
            painter.drawRect(rect(MARGIN, y, self._width, height))
            at = y + pad
            for text in texts:
                text.draw(painter, MARGIN + pad, at)
                at += text.height

        return Block(height + 4.0, draw)

    def _chart(self, chart: Chart) -> Block:
        """A chart at the right edge, beside what comes after it."""
        scale = CHART_WIDTH / chart.width
        left = MARGIN + self._width - CHART_WIDTH

        def draw(painter: QPainter, y: float) -> None:
            painter.save()
            painter.translate(left * UNIT, y * UNIT)
            painter.scale(scale, scale)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            for item in chart.items:
                draw_item(painter, item)
            painter.restore()

        return Block(0.0, draw, needs=chart.height * scale)
