"""The moving background: soft bars in a round patch, fading to the paper at its edge."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPixmap, QRadialGradient, QTransform

#: Pictures of one bar are so wide; they are stretched to its width.
_COLUMNS = 128


def luminance(colour: QColor) -> float:
    """Relative luminance of a colour, 0 to 1 (WCAG 2.x)."""

    def linear(v: float) -> float:
        return v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4

    r, g, b = (linear(v) for v in (colour.redF(), colour.greenF(), colour.blueF()))
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def mixed(paper: QColor, ink: QColor, share: float) -> QColor:
    """A colour between two, 0 the first."""
    parts = zip(paper.getRgbF()[:3], ink.getRgbF()[:3], strict=True)
    return QColor.fromRgbF(*(a + share * (b - a) for a, b in parts))


def soft_ink(paper: QColor, ink: QColor, contrast: float) -> QColor:
    """The colour between paper and ink whose luminance is that far from the paper's, or less."""
    low, high = 0.0, 1.0
    for _ in range(20):
        share = 0.5 * (low + high)
        apart = abs(luminance(mixed(paper, ink, share)) - luminance(paper))
        low, high = (share, high) if apart < contrast else (low, share)
    return mixed(paper, ink, low)


class BackdropPaint:
    """Draws the bars; what does not change from picture to picture is made once."""

    def __init__(self) -> None:
        self._bar: QImage | None = None
        self._patch: QPixmap | None = None
        self._made_for: tuple[int, int, float] | None = None

    def draw(
        self,
        painter: QPainter,
        at: QPointF,
        radius_px: float,
        period_px: float,
        shift_px: float,
        colours: tuple[QColor, QColor, float],
    ) -> None:
        """Draw the patch around a place.

        Parameters
        ----------
        radius_px, period_px, shift_px
            Of the patch, from bar to bar, and how far the bars have moved to the right.
        colours
            Paper and ink, and the most that their mixture's luminance may differ.
        """
        paper, ink, contrast = colours
        key = (paper.rgb(), ink.rgb(), contrast)
        if self._bar is None or key != self._made_for:
            self._bar, self._made_for = _bar(paper, soft_ink(paper, ink, contrast)), key
        side = max(round(2 * radius_px), 2)
        if self._patch is None or self._patch.width() != side:
            self._patch = QPixmap(side, side)
        self._patch.fill(Qt.GlobalColor.transparent)
        inner = QPainter(self._patch)
        brush = QBrush(self._bar)
        scale = period_px / _COLUMNS
        brush.setTransform(QTransform().translate(radius_px + shift_px, 0.0).scale(scale, 1.0))
        inner.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        inner.fillRect(QRectF(0, 0, side, side), brush)
        inner.setCompositionMode(QPainter.CompositionMode.CompositionMode_DestinationIn)
        inner.fillRect(QRectF(0, 0, side, side), _fading(side / 2))
        inner.end()
        painter.drawPixmap(at - QPointF(side / 2, side / 2), self._patch)


def _bar(paper: QColor, other: QColor) -> QImage:
    """One bar as a row of pixels: a cosine from one colour to the other and back."""
    image = QImage(_COLUMNS, 1, QImage.Format.Format_RGB32)
    for k in range(_COLUMNS):
        share = 0.5 - 0.5 * math.cos(2 * math.pi * k / _COLUMNS)
        image.setPixelColor(k, 0, mixed(paper, other, share))
    return image


def _fading(radius: float) -> QBrush:
    """Opaque in a ring, clear at the mark in the middle and at the edge."""
    fade = QRadialGradient(QPointF(radius, radius), radius)
    for where, alpha in ((0.0, 0), (0.2, 0), (0.35, 255), (0.7, 255), (1.0, 0)):
        fade.setColorAt(where, QColor(0, 0, 0, alpha))
    return QBrush(fade)
