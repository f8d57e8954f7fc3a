"""What a call reads of a set: large count, last turns, cue, symptoms, around the target.

All sizes hang on the window's height and not on the text size, because the far end has a
screen of its own.
"""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF, QSize
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QWidget

from ui import theme, words
from ui.share import VALUES_SHARE, WORDS_SHARE, Board
from ui.widgets.outline import HeadOutline

#: Parts of the board as shares of its width and height: x, y, width, height. Where the
#: target goes or jumps up and down the figures stand at its sides, else under it.
_UNDER = {
    "field": (0.0, 0.0, 1.0, 0.46),
    "cue": (0.0, 0.46, 1.0, 0.13),
    "count": (0.0, 0.60, 0.17, 0.24),
    "second": (0.17, 0.60, 0.25, 0.24),
    "outline": (0.42, 0.59, 0.16, 0.26),
    "first": (0.58, 0.60, 0.25, 0.24),
    "tempo": (0.83, 0.60, 0.17, 0.24),
    "foot": (0.0, 0.85, 1.0, 0.15),
}
_BESIDE = {
    "field": (0.27, 0.0, 0.46, 0.73),
    "count": (0.0, 0.0, 0.26, 0.28),
    "outline": (0.0, 0.30, 0.26, 0.28),
    "tempo": (0.0, 0.58, 0.27, 0.15),
    "first": (0.74, 0.02, 0.26, 0.28),
    "second": (0.74, 0.38, 0.26, 0.28),
    "cue": (0.0, 0.73, 1.0, 0.12),
    "foot": (0.0, 0.85, 1.0, 0.15),
}

#: Room between two rows, even where it is low.
_LEAST_GAP = 6.0


class ShareBoard(QWidget):
    """Holds the field of the target and draws the figures around it.

    Parameters
    ----------
    field
        The target's field; it is placed within the board while that is shown.
    """

    def __init__(self, field: QWidget) -> None:
        super().__init__()
        self.setAccessibleName(words.say("share.name"))
        self.field = field
        self.board = Board()
        self.beside = False
        self.outline = HeadOutline(self)
        self.outline_wanted = True

    def minimumSizeHint(self) -> QSize:
        """It takes what it gets."""
        return QSize(320, 240)

    def zone(self, name: str) -> QRectF:
        """Where a part lies."""
        x, y, wide, high = (_BESIDE if self.beside else _UNDER)[name]
        w, h = self.width(), self.height()
        return QRectF(x * w, y * h, wide * w, high * h)

    def arrange(self, *, beside: bool) -> None:
        """Put the figures under the target, or at its sides."""
        self.beside = beside
        if self.field.parentWidget() is self:
            self.field.setGeometry(self.zone("field").toRect())
        self.outline.setGeometry(self.zone("outline").toRect())
        self.outline.word_px = self.size_px("words") / 0.7
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Arrange it anew."""
        self.arrange(beside=self.beside)

    def show_board(self, board: Board) -> None:
        """Show other texts; nothing happens while they are the same."""
        if board != self.board:
            self.board = board
            self.setAccessibleDescription(board.in_words())
            self.update()

    def size_px(self, what: str) -> float:
        """Height of a capital or figure of ``words``, ``values``, ``cue`` or ``count``."""
        high = self.window().height()
        least = {"words": WORDS_SHARE, "values": VALUES_SHARE, "cue": VALUES_SHARE}
        if what == "count":
            return max(VALUES_SHARE * high, 0.52 * self.zone("count").height())
        return least[what] * high * 1.04

    def font_of(self, capital_px: float, text: str = "", wide: float = 0.0) -> QFont:
        """Our type with capitals of a height, smaller only where a text would not fit."""
        font = theme.font("body", 100, bold=True)
        font.setPixelSize(100)
        share = QFontMetricsF(font).capHeight() / 100
        size = capital_px / share
        font.setPixelSize(max(round(size), 8))
        if text and wide:
            needs = QFontMetricsF(font).horizontalAdvance(text)
            if needs > wide:
                font.setPixelSize(max(int(size * wide / needs), 8))
        return font

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
        board = self.board
        for name, rows in self._values(board).items():
            self._column(painter, name, rows)
        self._column(
            painter, "tempo", [(t, "words") for t in self._lines(board.tempo, board.asked)]
        )
        consent = words.say("share.consent")
        foot = [t for t in (board.name, board.symptoms, consent) if t]
        row_px = self.size_px("words") + _LEAST_GAP
        # What is done can be seen; the others can't.
        foot = foot[-max(int((self.zone("foot").height() + _LEAST_GAP) / row_px), 1) :]
        self._column(painter, "foot", [(t, "words") for t in foot])

    def _values(self, board: Board) -> dict[str, list[tuple[str, str]]]:
        """The cue and the figures: part, and its rows with their size."""
        found = {
            "cue": [(board.cue, "cue")],
            "count": [(board.count, "count"), (board.goal, "values")],
        }
        for name, texts in (("first", board.first), ("second", board.second)):
            label, degrees, speed = texts
            found[name] = [(label, "words"), (degrees, "values"), (speed, "values")]
        return found

    def lines_of(self, board: Board) -> list[tuple[str, QRect]]:
        """Texts of cue and figures with the place of each, in the widget's pixels."""
        return [
            (text, line.toAlignedRect())
            for name, rows in self._values(board).items()
            for text, _, line in self._placed(name, rows)
            if text
        ]

    def _lines(self, *texts: str) -> list[str]:
        """Texts broken into lines that fit the narrow part."""
        wide = self.zone("tempo").width()
        metrics = QFontMetricsF(self.font_of(self.size_px("words")))
        lines: list[str] = []
        for text in texts:
            line = ""
            for word in text.split():
                longer = f"{line} {word}".strip()
                if line and metrics.horizontalAdvance(longer) > wide:
                    lines.append(line)
                    longer = word
                line = longer
            if line:
                lines.append(line)
        return lines

    def _column(self, painter: QPainter, name: str, rows: list[tuple[str, str]]) -> None:
        """Rows of text, one under the other, in the middle of a part."""
        for text, font, line in self._placed(name, rows):
            painter.setFont(font)
            painter.drawText(round(line.left()), round(line.bottom()), text)

    def _placed(self, name: str, rows: list[tuple[str, str]]) -> list[tuple[str, QFont, QRectF]]:
        """Texts with their type and the box of their capitals."""
        box = self.zone(name)
        # Room for what hangs below the last line.
        box.setBottom(box.bottom() - 0.4 * self.size_px("words"))
        fonts = [self.font_of(self.size_px(what), text, box.width()) for text, what in rows]
        highs = [QFontMetricsF(f).capHeight() for f in fonts]
        free = box.height() - sum(highs)
        wished = max(0.018 * self.window().height(), theme.S)
        gap = max(min(wished, free / max(len(rows) - 1, 1)), _LEAST_GAP)
        y = box.center().y() - (sum(highs) + gap * (len(rows) - 1)) / 2
        placed = []
        for (text, _), font, high in zip(rows, fonts, highs, strict=True):
            wide = QFontMetricsF(font).horizontalAdvance(text)
            placed.append((text, font, QRectF(box.center().x() - wide / 2, y, wide, high)))
            y += high + gap
        return placed
