"""An outline of the patient's head, drawn from the measured angles: no picture is shown."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

import time
from math import isfinite

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QWidget

from tracker.sample import Sample
from ui import theme, words
from ui.figures.model import Movement, Pose
from ui.figures.paint import paint
from ui.share import HOLD_S

#: It is drawn anew this often at most: a call shows no more of it, and less pulls the
#: patient's eyes less (common practice).
_EVERY_S = 0.2
#: Less of an eye than this is drawn shut; between 0 (shut) and 1 (common practice).
_SHUT = 0.3
_ALONE = Movement(("front",), ())


def pose_of(sample: Sample | None) -> Pose | None:
    """How a measured head is drawn; None where it is not measured."""
    if sample is None or not isfinite(sample.head_yaw_deg):
        return None
    angles = (sample.head_yaw_deg, sample.head_pitch_deg, sample.head_roll_deg)
    yaw, pitch, roll = (_whole(a) for a in angles)
    eye_x, eye_y = _whole(sample.eye_yaw_deg), _whole(sample.eye_pitch_deg)
    shut = isfinite(sample.eye_open) and sample.eye_open < _SHUT
    return Pose(
        yaw=yaw, pitch=pitch, roll=roll, eye_x=eye_x, eye_y=eye_y, lids=0.0 if shut else 1.0
    )


def _whole(angle: float) -> float:
    """Whole degrees: what shakes less is no movement."""
    return float(round(angle)) if isfinite(angle) else 0.0


class HeadOutline(QWidget):
    """Draws the measured head, as in a mirror."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(words.say("share.outline"))
        self.pose: Pose | None = None
        self._drawn_s = self._turned_s = 0.0
        self.word_px = 20.0

    def minimumSizeHint(self) -> QSize:
        """It takes what it gets."""
        return QSize(60, 60)

    def show_sample(self, sample: Sample | None) -> None:
        """Draw a sample's head; now and then is enough."""
        now_s = time.monotonic()
        pose = pose_of(sample)
        if (pose is None) != (self.pose is None):
            # Whether a head is seen is read at the far end of a call: each stands for a second.
            if now_s - self._turned_s < HOLD_S:
                return
            self._turned_s = now_s
        if pose == self.pose or now_s - self._drawn_s < _EVERY_S:
            return
        self._drawn_s = now_s
        self.pose = pose
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it, or say that there is nothing to draw."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect())
        if self.pose is not None:
            paint(painter, box, "front", self.pose, _ALONE, self.palette(), least_px=theme.LINE)
            return
        role = QPalette.ColorRole
        painter.setPen(QPen(self.palette().color(role.Mid), theme.LINE, Qt.PenStyle.DashLine))
        side = min(box.width(), box.height()) - 2 * theme.LINE
        oval = QRectF(0, 0, side * 0.7, side)
        oval.moveCenter(box.center())
        painter.drawEllipse(oval)
        word, middle = words.say("share.unseen"), Qt.AlignmentFlag.AlignCenter
        font = theme.font("body", 100, bold=True)
        font.setPixelSize(round(self.word_px))
        wide = QFontMetricsF(font).horizontalAdvance(word)
        if wide > box.width():
            # Whole and smaller in a narrow board, rather than cut at both sides.
            font.setPixelSize(max(1, int(self.word_px * box.width() / wide)))
        painter.setFont(font)
        painter.setPen(self.palette().color(role.WindowText))
        # The line must not go through the letters.
        painter.fillRect(painter.boundingRect(box, middle, word), self.palette().window())
        painter.drawText(box, middle, word)
