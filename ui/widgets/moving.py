"""A drawn movement that one can copy: small, slow, and still at the press of a key."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

import math
import time

from PySide6.QtCore import QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QHideEvent, QPainter, QPaintEvent, QPalette, QShowEvent
from PySide6.QtWidgets import QBoxLayout, QLayout, QSizePolicy, QVBoxLayout, QWidget

from ui import theme, words
from ui.figures.model import Movement, Pose
from ui.figures.movements import MOVEMENTS
from ui.figures.paint import paint
from ui.widgets.basic import Button

#: Twenty pictures a second look smooth at this pace (common practice).
_FRAME_MS = 50
#: Side of one picture at 100 and at 200 % text: small, so that it does not fill the view.
SIDE_PX, LARGEST_PX = 160, 190
#: Words beside a drawing have at least this width.
LEAST_WORDS_PX = 480


class MovementPicture(QWidget):
    """One or two drawings of a movement, one under the other or side by side.

    Where nothing may move, two moments of it are drawn in place of one that moves. It
    draws anew only while it is seen and something in it moves.

    Parameters
    ----------
    scale
        How much larger than usual it is: for what never moves.
    """

    def __init__(self, scale: float = 1.0) -> None:
        super().__init__()
        self._scale = scale
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.movement: Movement | None = None
        self.still = False
        self.across = False
        self.clock = time.monotonic
        self._percent = 100
        self._what = self._how = ""
        self._from_s = 0.0
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._next)

    def show_exercise(self, exercise: str, eyes: str = "open") -> None:
        """Draw an exercise of the catalogue."""
        movement = MOVEMENTS[exercise]
        if eyes == "closed":
            movement = movement.with_eyes_shut()
        name, how = words.say(f"exercise.{exercise}"), words.say(f"exercise.{exercise}.how")
        self.show_movement(movement, name, how)

    def show_movement(self, movement: Movement, name: str, how: str) -> None:
        """Draw a movement; its name and how it is done are what a screen reader says."""
        if (movement, name) == (self.movement, self._what):
            return
        self.movement, self._what, self._how = movement, name, how
        # It begins with a pause, so that nothing moves at once on a new page.
        last = movement.keys[-1]
        self._from_s = self.clock() - movement.period_s + last.hold_s
        self.updateGeometry()
        self._begin()

    def set_still(self, still: bool) -> None:
        """Let nothing move, or let it."""
        if still != self.still:
            self.still = still
            self.updateGeometry()
            self._begin()

    def set_percent(self, percent: int) -> None:
        """Larger with larger text."""
        self._percent = percent
        self.setFont(theme.font("small", percent))
        self.updateGeometry()

    @property
    def moves(self) -> bool:
        """Whether something in it moves now."""
        movement = self.movement
        return movement is not None and movement.moves and not self.still

    @property
    def side_px(self) -> int:
        """Side of one drawing."""
        share = (self._percent - 100) / 100
        return round(self._scale * (SIDE_PX + (LARGEST_PX - SIDE_PX) * min(share, 1.0)))

    def panels(self) -> list[tuple[str, Pose]]:
        """What is drawn now: views and poses, from top to bottom."""
        movement = self.movement
        if movement is None:
            return []
        if self.still and movement.moves:
            return [(movement.views[0], pose) for pose in movement.stills()]
        pose, _ = movement.pose_at(self.clock() - self._from_s)
        return [(view, pose) for view in movement.views]

    def _captions(self) -> bool:
        """Whether it is said from where the person is seen."""
        return self.movement is not None and len(self.movement.views) > 1

    def _caption_px(self) -> int:
        return QFontMetrics(self.font()).height() if self._captions() else 0

    def sizeHint(self) -> QSize:
        """Room for the drawings, and a line under each."""
        many = max(len(self.panels()), 1)
        wide, high = self._panel_size()
        return QSize(wide * many, high) if self.across else QSize(wide, high * many)

    def _panel_size(self) -> tuple[int, int]:
        metrics = QFontMetrics(self.font())
        texts = [words.say(f"figure.view.{v}") for v, _ in self.panels() if self._captions()]
        # Ink reaches a little beyond what a text takes.
        wide = max([self.side_px, *(metrics.horizontalAdvance(t) + 4 for t in texts)])
        return wide, self.side_px + self._caption_px()

    def minimumSizeHint(self) -> QSize:
        """It is not drawn smaller."""
        return self.sizeHint()

    def showEvent(self, event: QShowEvent) -> None:
        """Begin."""
        self._begin()

    def hideEvent(self, event: QHideEvent) -> None:
        """Nothing is drawn that nobody sees."""
        self._timer.stop()

    def _begin(self) -> None:
        self.setAccessibleName(words.say("figure.name", what=self._what))
        moving = "figure.moving" if self.moves else "figure.still"
        self.setAccessibleDescription(f"{self._how} {words.say(moving)}")
        self._timer.stop()
        self.update()
        self._plan()

    def _plan(self) -> None:
        """Draw again soon, or when the hold is over."""
        movement = self.movement
        if movement is None or not self.moves or not self.isVisible():
            return
        _, holds_s = movement.pose_at(self.clock() - self._from_s)
        if math.isfinite(holds_s):
            self._timer.start(max(_FRAME_MS, round(holds_s * 1000)))

    def _next(self) -> None:
        self.update()
        self._plan()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        movement = self.movement
        if movement is None:
            return
        painter = QPainter(self)
        side, caption = self.side_px, self._caption_px()
        wide, high = self._panel_size()
        for k, (view, pose) in enumerate(self.panels()):
            left, top = (k * wide, 0) if self.across else (0, k * high)
            box = QRectF(left + (wide - side) / 2, top, side, side)
            paint(painter, box, view, pose, movement, self.palette())
            if caption:
                painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
                line = QRectF(left, top + side, wide, caption)
                text = words.say(f"figure.view.{view}")
                painter.drawText(line, Qt.AlignmentFlag.AlignCenter, text)


class MovementBox(QWidget):
    """A drawn movement with the button that holds it still."""

    still_asked = Signal()

    def __init__(self, scale: float = 1.0) -> None:
        super().__init__()
        self.picture = MovementPicture(scale)
        self.hold = Button(words.say("figure.hold"), "small", words.say("figure.hold_name"))
        self.hold.clicked.connect(self.still_asked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.S)
        # On top, so that it is in sight however much the page holds.
        column.addWidget(self.hold, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addWidget(self.picture, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(1)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)

    def show_exercise(self, exercise: str, eyes: str = "open") -> None:
        """Draw an exercise of the catalogue."""
        self.picture.show_exercise(exercise, eyes)
        self._word()

    def show_movement(self, movement: Movement, name: str, how: str) -> None:
        """Draw a movement with a name and words of its own."""
        self.picture.show_movement(movement, name, how)
        self._word()

    def set_still(self, still: bool) -> None:
        """Let nothing move, or let it."""
        self.picture.set_still(still)
        self._word()

    def set_across(self, across: bool) -> None:
        """Lay the drawings side by side, or one under the other."""
        if across != self.picture.across:
            self.picture.across = across
            self.picture.updateGeometry()

    def _word(self) -> None:
        movement = self.picture.movement
        can_move = movement is not None and movement.moves
        if self.hold.isHidden() == can_move:
            self.hold.setVisible(can_move)
        key = "figure.go" if self.picture.still else "figure.hold"
        if self.hold.text() != words.say(key):
            self.hold.setText(words.say(key))
            self.hold.setAccessibleName(words.say(f"{key}_name"))
            self.hold.updateGeometry()


class Beside(QBoxLayout):
    """Words with a drawing at their right; in a narrow window it lies under them.

    Parameters
    ----------
    column
        The words and what is chosen.
    box
        The drawing.
    """

    def __init__(self, column: QLayout, box: MovementBox) -> None:
        super().__init__(QBoxLayout.Direction.LeftToRight)
        self._column, self._box = column, box
        self.setSpacing(theme.L)
        self.addLayout(column, 1)
        self.addWidget(box, 0, Qt.AlignmentFlag.AlignTop)

    def fit(self, width: int) -> None:
        """Use a width."""
        beside = width - self._box.sizeHint().width() - theme.L
        narrow = beside < max(self._column.minimumSize().width(), LEAST_WORDS_PX)
        way = QBoxLayout.Direction
        self._box.set_across(narrow)
        self.setDirection(way.TopToBottom if narrow else way.LeftToRight)
