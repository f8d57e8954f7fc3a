"""What was done of what was asked for, as a row of posts: tall ones are done, low ones not.

Their height says it, not their colour.
"""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from math import floor

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QSizePolicy, QWidget

from ui import theme, words

#: So many posts at most; each then stands for several.
MOST = 20
_HIGH_PX, _LOW_PX, _WIDE_PX, _STEP_PX = 28, 8, 5, 12


def posts_of(done: float, goal: float) -> tuple[int, int]:
    """How many posts are tall, and how many there are; all are tall only when all is done."""
    many = max(min(round(goal), MOST), 1)
    tall = min(floor(many * max(done, 0.0) / goal + 1e-9), many)
    return max(tall, 1 if done > 0 else 0), many


class Posts(QWidget):
    """Draws them from where reading begins.

    Parameters
    ----------
    done, goal
        What was done and what was asked for, in the same unit; ``goal`` is above 0.
    """

    def __init__(self, done: float, goal: float) -> None:
        super().__init__()
        self.set_percent(100)
        self.tall, self.many = posts_of(done, goal)
        self.setAccessibleName(
            words.say("practice.of", done=words.number(done), goal=words.number(goal))
        )
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_percent(self, percent: int) -> None:
        """They grow with the text, upwards: to the side there is no more room."""
        self._high_px, self._low_px = (round(px * percent / 100) for px in (_HIGH_PX, _LOW_PX))
        self._wide_px = _WIDE_PX * (percent / 100) ** 0.5
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Room for the most there can be: those of all rows stand under each other."""
        return QSize(MOST * _STEP_PX, self._high_px + 2)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw them on a line."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        role = QPalette.ColorRole
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        foot = float(self._high_px)
        for k in range(self.many):
            tall = k < self.tall
            painter.setBrush(self.palette().color(role.Highlight if tall else role.Mid))
            high = self._high_px if tall else self._low_px
            left = self.width() - (k + 1) * _STEP_PX if mirrored else k * _STEP_PX
            wide = self._wide_px
            box = QRectF(left + (_STEP_PX - wide) / 2, foot - high, wide, high)
            painter.drawRoundedRect(box, 2, 2)
        wide = float(self.many * _STEP_PX)
        line = QRectF(self.width() - wide if mirrored else 0, foot - 1, wide, theme.LINE)
        painter.fillRect(line, self.palette().color(role.Mid))
