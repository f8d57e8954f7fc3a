"""The patient's sheet on paper: large type, our drawings beside the words."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from ui import words
from ui.documents.pdf import FOOT, PAPERS, need_application, write_pdf
from ui.documents.pdf_chart import line, rect, set_pen
from ui.documents.pdf_layout import MARGIN, Block, Group, paginate
from ui.documents.pdf_table import words_block
from ui.documents.pdf_text import UNIT, Run, Style, Words
from ui.documents.sheet import Item, Listed, Sheet
from ui.documents.sheet_figures import draw_pictures, pictures_of

#: Side of a drawing, and the space between it and the words, in points.
PICTURE, BESIDE = 80.0, 16.0
GAP = 12.0
#: A bullet, and the width of its column.
BULLET, INDENT = "•", 14.0


def sheet_pdf(sheet: Sheet, paper: str = "a4") -> bytes:
    """The whole file, on A4 or Letter.

    Raises
    ------
    RunError
        If Qt can't write it.
    """
    need_application()
    width, height = PAPERS[paper]
    sheets = paginate([*_groups(sheet, width - 2 * MARGIN)], MARGIN, height - MARGIN - FOOT)
    return write_pdf(
        [(page, 1.0, sheet.foot) for page in sheets],
        paper,
        sheet.title,
        page=lambda number, pages: words.say("sheet.page", number=number, pages=pages),
        mirrored=words.from_right(),
    )


def _groups(sheet: Sheet, room: float) -> Iterable[Group]:
    def set_words(text: str, style: Style, below: float = 2.0) -> Block:
        return words_block([Run(text, style)], room, below=below, mirrored=words.from_right())

    yield Group(
        (
            set_words(sheet.title, Style.SHEET_TITLE),
            set_words(sheet.subtitle, Style.SHEET_BODY, 4.0),
            set_words(sheet.often, Style.SHEET_BOLD),
            set_words(sheet.mind, Style.SHEET_BODY),
            *([set_words(sheet.neck, Style.SHEET_BOLD)] if sheet.neck else []),
        )
    )
    if sheet.words:
        title = set_words(words.say("sheet.words"), Style.SHEET_HEADING)
        # A paragraph each, because words that are longer than a page have to be cut somewhere.
        lines = [set_words(t or " ", Style.SHEET_BODY) for t in sheet.words.splitlines()]
        yield Group((title, *lines), GAP)
    yield Group((_box(sheet.emergency, room),), GAP)
    for listed in (sheet.call, sheet.stop):
        yield Group(tuple(_listed(listed, room)), GAP)
    for part in sheet.parts:
        heading = set_words(part.title, Style.SHEET_HEADING, 4.0)
        first, *rest = (_item(item, room) for item in part.items)
        yield Group((heading, first), 1.5 * GAP)
        for block in rest:
            yield Group((block,), 0.5 * GAP)
    for last in (sheet.screen, sheet.later):
        if last is not None:
            yield Group(tuple(_listed(last, room)), 1.5 * GAP)


class _Lines:
    """Lines of words one below the other; a bullet's words begin a little after it."""

    def __init__(self, room: float) -> None:
        self._room, self._mirrored = room, words.from_right()
        self._lines: list[tuple[Words, Words | None, float]] = []

    def add(self, text: str, style: Style = Style.SHEET_BODY, above: float = 0.0) -> None:
        """One more."""
        self._lines.append((self._set(text, style, self._room), None, above))

    def add_bullet(self, text: str) -> None:
        """One more with a bullet."""
        inner = self._set(text, Style.SHEET_BODY, self._room - INDENT)
        dot = self._set(BULLET, Style.SHEET_BODY, INDENT)
        self._lines.append((inner, dot, 1.0))

    def _set(self, text: str, style: Style, room: float) -> Words:
        return Words(Run(text, style), room, mirrored=self._mirrored)

    @property
    def height(self) -> float:
        """Of all of them."""
        return sum(text.height + above for text, _, above in self._lines)

    def draw(self, painter: QPainter, x: float, y: float) -> None:
        """Draw them with their upper left corner there."""
        for text, dot, above in self._lines:
            y += above
            after = x
            if dot is not None:
                dot.draw(painter, x + self._room - INDENT if self._mirrored else x, y)
                after = x if self._mirrored else x + INDENT
            text.draw(painter, after, y)
            y += text.height


def _listed(listed: Listed, room: float) -> Iterable[Block]:
    title = [Run(listed.title, Style.SHEET_BOLD)]
    yield words_block(title, room, below=2.0, mirrored=words.from_right())
    for text in listed.lines:
        lines = _Lines(room)
        lines.add_bullet(text)
        yield Block(lines.height, lambda painter, y, lines=lines: lines.draw(painter, MARGIN, y))


def _box(listed: Listed, room: float) -> Block:
    """What needs help at once, in a heavy frame."""
    pad = 9.0
    lines = _Lines(room - 2 * pad)
    lines.add(listed.title, Style.SHEET_HEADING)
    for text in listed.lines:
        lines.add_bullet(text)
    height = lines.height + 2 * pad

    def draw(painter: QPainter, y: float) -> None:
        set_pen(painter, 2.5)
        painter.drawRect(rect(MARGIN, y, room, height))
        lines.draw(painter, MARGIN + pad, y + pad)

    return Block(height + 4.0, draw)


def _item(item: Item, room: float) -> Block:
    """An exercise: its drawings, then its words beside them; never torn apart."""
    movement, panels = pictures_of(item.exercise, item.eyes)
    beside = PICTURE + BESIDE if item.drawn else 0.0
    lines = _Lines(room - beside)
    lines.add(f"{item.number}. {item.name}", Style.SHEET_HEADING)
    lines.add(item.dose, Style.SHEET_BOLD, 2.0)
    lines.add(item.how, above=2.0)
    if item.support:
        lines.add(item.support, Style.SHEET_BOLD, 2.0)
    for care in item.cares:
        lines.add_bullet(care)
    height = max(PICTURE * len(panels) if item.drawn else 0.0, lines.height) + 6.0

    def draw(painter: QPainter, y: float) -> None:
        set_pen(painter, 0.8)
        painter.drawLine(line(MARGIN, y, MARGIN + room, y))
        mirrored = words.from_right()
        left = MARGIN + room - PICTURE if mirrored else MARGIN
        box = QRectF(left * UNIT, (y + 4.0) * UNIT, PICTURE * UNIT, PICTURE * UNIT)
        if item.drawn:
            draw_pictures(painter, box, movement, panels)
        lines.draw(painter, MARGIN if mirrored else MARGIN + beside, y + 5.0)

    return Block(height, draw)
