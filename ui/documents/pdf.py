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
from tracker.records.over_time import OverTime
from tracker.records.places import clean
from tracker.records.questionnaires import Score
from ui.documents.overview import sessions_overview
from ui.documents.page import NOTHING_LESS, page_of
from ui.documents.parts import Page, Section, Table
from ui.documents.pdf_layout import MARGIN, Block, Group, Sheet, paginate
from ui.documents.pdf_page import one_page, over_time_sheets
from ui.documents.pdf_setting import CHART_WIDTH, GAP, Setter
from ui.documents.pdf_table import DETAILS, READ, Look, table_blocks, words_block
from ui.documents.pdf_text import UNIT, Run, Style, Words
from ui.documents.questionnaires import scores_table
from ui.reserve import keep_constants_alive

#: Paper -> width and height in points.
PAPERS = {"a4": (595.0, 842.0), "letter": (612.0, 792.0)}
FOOT = 22.0
#: A session that is a little too long for one page is set smaller, down to 6.8 points.
SCALES = (1.0, 0.95, 0.9)


def pdf_document(
    records: Sequence[SessionFigures],
    paper: str = "a4",
    scores: Sequence[Score] = (),
    over_time: Sequence[OverTime] = (),
    *,
    details: bool = False,
) -> bytes:
    """The whole file: people over time, the sessions at a glance, and each session on one page.

    With ``details`` a session goes on for as many pages as all its figures need.

    Raises
    ------
    RunError
        If Qt can't write it.
    """
    need_application()
    width, height = PAPERS[paper]
    answered = scores_table(records, scores)
    bottom = height - MARGIN - FOOT
    placed = [
        (sheet, 1.0, f"{clean(one.person)} over time")
        for one in over_time
        for sheet in over_time_sheets(one, width, bottom)
    ]
    look = DETAILS if details else READ
    placed += [
        (sheet, 1.0, f"{len(records)} practice sessions")
        for sheet in _overview(records, answered, width, height, look)
    ]
    for page in (page_of(r, None if len(records) > 1 else answered) for r in records):
        scale, sheets = (
            _set(page, width, height) if details else (1.0, one_page(page, width, bottom))
        )
        placed += [(sheet, scale, f"{page.title}, {page.when}") for sheet in sheets]
    title = "Practice session" if len(records) == 1 else "Practice sessions"
    return write_pdf(placed, paper, title, foot=Style.SMALL if details else Style.READ)


def write_pdf(
    placed: Sequence[tuple[Sheet, float, str]],
    paper: str,
    title: str,
    *,
    page: Callable[[int, int], str] = lambda number, pages: f"Page {number} of {pages}",
    mirrored: bool = False,
    foot: Style = Style.SMALL,
) -> bytes:
    """A PDF of pages: each with its blocks, how much smaller they are set, and its foot.

    ``page`` gives the words for a page's number; ``mirrored`` feet are read from the right;
    ``foot`` is the style of their letters.

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
        for number, (sheet, scale, whose) in enumerate(placed, 1):
            if number > 1:
                writer.newPage()
            painter.save()
            painter.scale(scale, scale)
            for block, y in sheet:
                block.draw(painter, y)
            painter.restore()
            text = f"{whose}   {page(number, len(placed))}"
            run = Run(text, foot)
            _foot(painter, width, height, run, mirrored=mirrored)
    finally:
        painter.end()
        buffer.close()
    return bytes(data.data())


def _overview(
    records: Sequence[SessionFigures],
    answered: Table | None,
    width: float,
    height: float,
    look: Look,
) -> list[Sheet]:
    """All sessions at a glance, and the questionnaires, before the first; nothing for one."""
    if len(records) < 2:
        return []
    room = width - 2 * MARGIN
    title = words_block([Run(f"{len(records)} practice sessions", Style.TITLE)], room, below=6.0)
    table = table_blocks(sessions_overview(records), room, look)
    groups = [Group((title, *table))]
    if answered is not None:
        groups.append(Group(tuple(table_blocks(answered, room, look)), GAP))
    return paginate(groups, MARGIN, height - MARGIN - FOOT)


def _set(page: Page, width: float, height: float) -> tuple[float, list[Sheet]]:
    """A session on sheets, a little smaller where that brings it onto one; and how small."""
    for scale in SCALES:
        groups = [*_Details(page, width / scale).groups()]
        sheets = paginate(groups, MARGIN, height / scale - MARGIN - FOOT / scale)
        if len(sheets) == 1:
            return scale, sheets
    return 1.0, paginate([*_Details(page, width).groups()], MARGIN, height - MARGIN - FOOT)


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
    painter: QPainter, width: float, height: float, run: Run, *, mirrored: bool = False
) -> None:
    room = width - 2 * MARGIN
    words = Words(run, room, right=True, mirrored=mirrored)
    words.draw(painter, MARGIN, height - MARGIN - words.height)


class _Details:
    """Sets one session with all its figures."""

    def __init__(self, page: Page, width: float) -> None:
        self._page = page
        self._set = Setter(width)

    def groups(self) -> Iterable[Group]:
        """All of it, in order."""
        page, setter = self._page, self._set
        yield Group(tuple(self._top()))
        if page.glance is not None:
            yield Group(tuple(setter.titled("The exercises", setter.table(page.glance))), GAP)
        if page.left_out:
            yield Group(tuple(setter.titled("Not begun", setter.lines(page.left_out))), GAP)
        for section in page.sections:
            yield Group(tuple(self._section(section)), GAP)
        if page.scores is not None:
            yield Group(tuple(setter.titled("Questionnaires", setter.table(page.scores))), GAP)
        yield Group(tuple(setter.titled("Set-up", [setter.facts(page.setup)])), GAP)
        yield Group(tuple(setter.titled("Limits", setter.lines(page.limits, Style.SMALL))), GAP)

    def _top(self) -> Iterable[Block]:
        """Who, when, what to see first, and how it went."""
        page, setter = self._page, self._set
        yield setter.words([Run(page.title, Style.TITLE)])
        yield setter.words([Run(f"Practice session, {page.when}", Style.HEADING)])
        yield setter.words([Run(page.origin, Style.SMALL)], below=4.0)
        if page.alert:
            yield setter.box(page.alert)
        room = setter.room
        if page.chart is not None:
            room -= CHART_WIDTH + GAP
            yield setter.chart(page.chart)
        if not page.alert:
            yield setter.words([Run(page.calm, Style.BODY)], room)
        facts = (page.ended, *page.facts)
        for some in (facts[:1], facts[1:4], facts[4:]):
            yield setter.facts(some, room)
        yield setter.words([Run("What to trust less", Style.BOLD)], room, above=3.0)
        yield from setter.lines(page.warnings or (NOTHING_LESS,), room=room)

    def _section(self, section: Section) -> Iterable[Block]:
        setter = self._set
        yield setter.words([Run(section.title, Style.HEADING)])
        yield setter.words([Run(section.subtitle, Style.SMALL)], below=2.0)
        if section.warnings:
            yield from setter.lines([f"Trust less: {w}" for w in section.warnings], Style.BOLD)
        room = setter.room
        if section.chart is not None:
            room -= CHART_WIDTH + GAP
            yield setter.chart(section.chart)
        for table in section.tables:
            yield from table_blocks(table, room)
        yield setter.facts(section.facts, room)
        yield from setter.lines(section.notes, Style.SMALL, room)
