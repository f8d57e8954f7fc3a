"""The picture of oneself, mirrored; shown only when it is asked for."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter, QPainterPath, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from ui import theme, words


class Picture(QWidget):
    """Shows the newest camera picture, as a mirror does."""

    def __init__(self, least_height: int = 270) -> None:
        super().__init__()
        self._least_height = least_height
        self._image: QImage | None = None
        self._hidden = False
        self._instead = ""
        self.setAccessibleName(words.say("camera.picture"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("body", percent))

    def sizeHint(self) -> QSize:
        """A good size on a page."""
        return QSize(480, self._least_height)

    def minimumSizeHint(self) -> QSize:
        """Still large enough to see a face."""
        return QSize(240, 160)

    def set_hidden(self, hidden: bool) -> None:
        """Show no picture, whoever is before the camera."""
        if hidden != self._hidden:
            self._hidden, self._image = hidden, None
            self.update()

    def say_instead(self, text: str) -> None:
        """Words in the place of a picture that the person doesn't want; empty for none."""
        if text != self._instead:
            self._instead = text
            self.update()

    def show_bgr(self, picture: Any) -> None:
        """Take a picture (height, width, 3; blue, green, red), or None for none."""
        if picture is None or self._hidden:
            if self._image is not None:
                self._image = None
                self.update()
            return
        height, width = picture.shape[:2]
        form = QImage.Format.Format_BGR888
        image = QImage(picture.data, width, height, picture.strides[0], form)
        self._image = image.flipped(Qt.Orientation.Horizontal)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it, whole, in a frame."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        box = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        if self._image is not None:
            size = self._image.size().scaled(
                box.size().toSize(), Qt.AspectRatioMode.KeepAspectRatio
            )
            box = QRectF(
                box.center().x() - size.width() / 2,
                box.center().y() - size.height() / 2,
                size.width(),
                size.height(),
            )
        shape = QPainterPath()
        shape.addRoundedRect(box, theme.CORNER, theme.CORNER)
        painter.fillPath(shape, self.palette().color(QPalette.ColorRole.Base))
        if self._image is not None:
            painter.setClipPath(shape)
            painter.drawImage(box, self._image)
            painter.setClipping(False)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.Mid), theme.LINE))
        painter.drawPath(shape)
        instead = words.say("share.hidden") if self._hidden else self._instead
        if instead:
            painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
            flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.setFont(self.font())
            painter.drawText(box, flags, instead)
