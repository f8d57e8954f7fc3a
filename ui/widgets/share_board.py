"""What a call reads of a set: large count, last turns, cue, symptoms, around the target.

All sizes hang on the window's height and not on the text size, because the far end has a
screen of its own.
"""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QWidget

from ui import theme, words
from ui.share import VALUES_SHARE, WORDS_SHARE, Board
from ui.widgets.outline import HeadOutline
from ui.widgets.share_text import Line, Setting, high_of, line_of, text_of

#: Parts of the board as shares of its width and height: x, y, width, height. Where the
#: target goes or jumps up and down the figures stand at its sides, else under it.
_UNDER = {
    "field": (0.0, 0.0, 1.0, 0.43),
    "cue": (0.0, 0.43, 1.0, 0.13),
    "count": (0.0, 0.56, 0.17, 0.23),
    "second": (0.17, 0.56, 0.25, 0.23),
    "outline": (0.42, 0.55, 0.16, 0.235),
    "first": (0.58, 0.56, 0.25, 0.23),
    "tempo": (0.83, 0.56, 0.17, 0.23),
    "remedy": (0.17, 0.56, 0.83, 0.23),
    "foot": (0.0, 0.80, 1.0, 0.20),
}
_BESIDE = {
    "field": (0.27, 0.0, 0.46, 0.69),
    "count": (0.0, 0.0, 0.26, 0.28),
    "outline": (0.0, 0.29, 0.26, 0.235),
    "tempo": (0.0, 0.54, 0.26, 0.16),
    "first": (0.74, 0.02, 0.26, 0.28),
    "second": (0.74, 0.38, 0.26, 0.28),
    "remedy": (0.74, 0.0, 0.26, 0.69),
    "cue": (0.0, 0.69, 1.0, 0.12),
    "foot": (0.0, 0.81, 1.0, 0.19),
}

#: The same in a window that is higher than it is wide: words that hang on its height break into
#: more lines there, and the field needs less of it.
_UNDER_TALL = {
    "field": (0.0, 0.0, 1.0, 0.29),
    "cue": (0.0, 0.29, 1.0, 0.18),
    "count": (0.0, 0.48, 0.17, 0.19),
    "second": (0.17, 0.48, 0.25, 0.19),
    "outline": (0.42, 0.48, 0.16, 0.19),
    "first": (0.58, 0.48, 0.25, 0.19),
    "tempo": (0.83, 0.48, 0.17, 0.19),
    "remedy": (0.0, 0.48, 1.0, 0.19),
    "foot": (0.0, 0.68, 1.0, 0.32),
}
_BESIDE_TALL = {
    "field": (0.27, 0.0, 0.46, 0.48),
    "count": (0.0, 0.0, 0.26, 0.19),
    "outline": (0.0, 0.19, 0.26, 0.14),
    "tempo": (0.0, 0.34, 0.26, 0.14),
    "first": (0.74, 0.02, 0.26, 0.21),
    "second": (0.74, 0.26, 0.26, 0.21),
    "remedy": (0.74, 0.0, 0.26, 0.48),
    "cue": (0.0, 0.49, 1.0, 0.18),
    "foot": (0.0, 0.68, 1.0, 0.32),
}

#: Room between two rows, even where it is low, in px and as a share of the words' capitals:
#: what hangs below a line must not reach the next.
_LEAST_GAP, _GAP_SHARE = 6.0, 0.4


@dataclass(frozen=True, slots=True)
class Row:
    """A line of a part of the board, and the box of its capitals in the widget's pixels."""

    part: str
    line: Line
    box: QRectF


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
        self._fonts: dict[float, QFont] = {}
        self._setting = Setting(self.font_of)
        self._drawn: tuple[object, list[Row]] = ((), [])

    def minimumSizeHint(self) -> QSize:
        """It takes what it gets."""
        return QSize(320, 240)

    def zone(self, name: str) -> QRectF:
        """Where a part lies."""
        w, h = self.width(), self.height()
        tall = h > w
        beside, under = (_BESIDE_TALL, _UNDER_TALL) if tall else (_BESIDE, _UNDER)
        x, y, wide, high = (beside if self.beside else under)[name]
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

    def font_of(self, capital_px: float) -> QFont:
        """Our type with capitals of a height."""
        key = round(capital_px, 3)
        if key not in self._fonts:
            self._fonts[key] = self._made_font(capital_px)
        return self._fonts[key]

    @staticmethod
    def _made_font(capital_px: float) -> QFont:
        font = theme.font("body", 100, bold=True)
        font.setPixelSize(100)
        share = QFontMetricsF(font).capHeight() / 100
        # Never rounded down: what is asked for is the least.
        font.setPixelSize(max(ceil(capital_px / share), 8))
        return font

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        # The field in it is drawn anew much more often than the texts around it change.
        looks = (self.board, self.beside, self.size(), self.window().height())
        if looks != self._drawn[0]:
            self._drawn = (looks, self.rows(self.board))
        for row in self._drawn[1]:
            for run, left in self._setting.placed(row.line, row.box.left(), mirrored=mirrored):
                painter.setFont(self.font_of(run.capital_px))
                painter.drawText(round(left), round(row.box.bottom()), run.text)

    def rows(self, board: Board) -> list[Row]:
        """All that is drawn of a board."""
        parts = {"cue": [(board.cue, "cue")], "count": [(board.count, "count")]}
        parts["count"].append((board.goal, "values"))
        if board.remedy:
            # Without the camera there are no figures of a turn: what to do takes their place.
            parts["remedy"] = [(board.remedy, "words")]
        else:
            for name, texts in (("first", board.first), ("second", board.second)):
                label, degrees, speed = texts
                parts[name] = [(label, "words"), (degrees, "values"), (speed, "values")]
            parts["tempo"] = [(board.tempo, "mixed")]
        rows = [row for name, texts in parts.items() for row in self._placed(name, texts)]
        consent = words.say("share.consent")
        foot = [(board.name, "words"), (board.asked, "mixed"), (board.symptoms, "mixed")]
        while True:
            lines = self._lines("foot", [*foot, (consent, "words")])
            if not foot or self._needs_px(lines) <= self._room_px("foot"):
                break
            # What is done can be seen; the others can't.
            foot = foot[1:]
        return rows + self._set("foot", lines)

    def lines_of(self, board: Board) -> list[tuple[str, QRect]]:
        """Cue, figures and symptoms with the place of each, in the widget's pixels."""
        return [
            (text_of(row.line), row.box.toAlignedRect())
            for row in self.rows(board)
            if row.part != "foot" or any(run.is_value for word in row.line for run in word)
        ]

    def _lines(self, name: str, texts: list[tuple[str, str]]) -> list[Line]:
        """Texts of a part in their sizes, broken where the part is too narrow."""
        setting, wide = self._setting, self.zone(name).width()
        small, large = self.size_px("words"), self.size_px("values")
        lines: list[Line] = []
        for text, what in texts:
            size = large if what == "mixed" else self.size_px(what)
            line = line_of(text, small if what == "mixed" else size, size)
            if what == "values" and setting.width(line) > wide:
                # The figure keeps its size, its unit is a word.
                line = line_of(text, small, size)
            pieces = [line] if what in ("count", "values") else setting.broken(line, wide)
            lines += [setting.shrunk(piece, wide) for piece in pieces if piece]
        return lines

    def _room_px(self, name: str) -> float:
        """Height of a part, with room for what hangs below its last line."""
        return self.zone(name).height() - 0.4 * self.size_px("words")

    def _least_gap(self) -> float:
        """Room between two rows at least, where one of them can be left out."""
        return max(_LEAST_GAP, _GAP_SHARE * self.size_px("words"))

    def _needs_px(self, lines: list[Line]) -> float:
        """Height that lines need at least."""
        return sum(high_of(line) for line in lines) + self._least_gap() * max(len(lines) - 1, 0)

    def _placed(self, name: str, texts: list[tuple[str, str]]) -> list[Row]:
        return self._set(name, self._lines(name, texts))

    def _set(self, name: str, lines: list[Line]) -> list[Row]:
        """Lines of a part, one under the other, in its middle."""
        box, room = self.zone(name), self._room_px(name)
        highs = [high_of(line) for line in lines]
        wished = max(0.018 * self.window().height(), theme.S)
        gap = max(min(wished, (room - sum(highs)) / max(len(lines) - 1, 1)), _LEAST_GAP)
        y = box.top() + (room - sum(highs) - gap * (len(lines) - 1)) / 2
        rows = []
        for line, high in zip(lines, highs, strict=True):
            wide = self._setting.width(line)
            rows.append(Row(name, line, QRectF(box.center().x() - wide / 2, y, wide, high)))
            y += high + gap
        return rows
