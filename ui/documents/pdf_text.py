"""Text for the PDF: fonts, and words that are wrapped to a width and know their height."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from functools import cache

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import (
    QFont,
    QFontMetricsF,
    QPainter,
    QTextCharFormat,
    QTextLayout,
    QTextOption,
)

#: Device units to the point; text is laid out on this grid, far finer than it is seen.
UNIT = 20
FAMILIES = ["Arial", "Liberation Sans", "Noto Sans", "DejaVu Sans"]


#: Smallest letters of the page to file, in points (common practice for print that is read).
LEAST_READ = 9.0
#: Smallest letters of its table of exercises (own choice: a second page is lost more easily).
LEAST_TIGHT = 8.0


class Style(Enum):
    """Size in points, and whether bold or slanted."""

    TITLE = (15.0, True, False)
    HEADING = (10.0, True, False)
    BODY = (8.0, False, False)
    BOLD = (8.0, True, False)
    ABSENT = (8.0, False, True)
    SMALL = (7.0, False, False)
    CELL = (7.5, False, False)
    CELL_BOLD = (7.5, True, False)
    CELL_ABSENT = (7.5, False, True)
    # The one page to file.
    READ_HEADING = (11.0, True, False)
    READ = (9.0, False, False)
    READ_BOLD = (9.0, True, False)
    READ_ABSENT = (9.0, False, True)
    # The patient's sheet, read at a distance and by old eyes.
    SHEET_TITLE = (26.0, True, False)
    SHEET_HEADING = (18.0, True, False)
    SHEET_BODY = (14.0, False, False)
    SHEET_BOLD = (14.0, True, False)


@cache
def font_of(style: Style) -> QFont:
    """The font of a style."""
    size, bold, slanted = style.value
    return font_of_size(size, bold=bold, slanted=slanted)


def font_of_size(points: float, *, bold: bool = False, slanted: bool = False) -> QFont:
    """A font of a size in points, without hinting: paper has no pixels."""
    font = QFont()
    font.setFamilies(FAMILIES)
    font.setStyleHint(QFont.StyleHint.SansSerif)
    font.setPixelSize(round(points * UNIT))
    font.setBold(bold)
    font.setItalic(slanted)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def text_width(text: str, style: Style) -> float:
    """Width of a text on one line, in points."""
    return QFontMetricsF(font_of(style)).horizontalAdvance(text) / UNIT


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of text in one style."""

    text: str
    style: Style


class Words:
    """Text wrapped to a width: at words where it can be, within a word where it must be.

    Parameters
    ----------
    runs
        The text, in stretches of a style.
    width
        In points.
    right
        Whether it is set to the edge where lines end.
    mirrored
        Whether it is read from the right, and begins at the right edge.
    """

    def __init__(
        self,
        runs: Sequence[Run] | Run,
        width: float,
        *,
        right: bool = False,
        mirrored: bool = False,
    ) -> None:
        runs = [runs] if isinstance(runs, Run) else list(runs)
        self.width = width
        text = "".join(r.text for r in runs)
        base = runs[0].style if runs else Style.BODY
        self._layout = QTextLayout(text, font_of(base))
        self._layout.setTextOption(_option(right, mirrored))
        self._layout.setFormats(_formats(runs))
        self.height = self._lay_out()

    def _lay_out(self) -> float:
        self._layout.beginLayout()
        y = 0.0
        while (line := self._layout.createLine()).isValid():
            line.setLineWidth(self.width * UNIT)
            line.setPosition(QPointF(0, y))
            y += line.height()
        self._layout.endLayout()
        return y / UNIT

    @property
    def widest(self) -> float:
        """Width of its widest line, in points."""
        lines = range(self._layout.lineCount())
        return max((self._layout.lineAt(k).naturalTextWidth() for k in lines), default=0.0) / UNIT

    def draw(self, painter: QPainter, x: float, y: float) -> None:
        """Draw it with its upper left corner there, in points."""
        painter.setPen(Qt.GlobalColor.black)
        self._layout.draw(painter, QPointF(x * UNIT, y * UNIT))


def _option(right: bool, mirrored: bool) -> QTextOption:
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    # The page reads from the left, whatever script a name is in.
    way = Qt.LayoutDirection
    option.setTextDirection(way.RightToLeft if mirrored else way.LeftToRight)
    at_right = right != mirrored
    side = Qt.AlignmentFlag.AlignRight if at_right else Qt.AlignmentFlag.AlignLeft
    option.setAlignment(side)
    return option


def _formats(runs: Sequence[Run]) -> list[QTextLayout.FormatRange]:
    out, start = [], 0
    for run in runs:
        # Qt counts in UTF-16.
        length = len(run.text.encode("utf-16-le", "replace")) // 2
        made = QTextLayout.FormatRange()
        made.start, made.length = start, length
        style = QTextCharFormat()
        style.setFont(font_of(run.style))
        made.format = style
        out.append(made)
        start += length
    return out
