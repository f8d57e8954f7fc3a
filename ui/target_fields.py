"""The two fields that targets are drawn in, and where they lie on the screen."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF
from PySide6.QtWidgets import QWidget

from ui.geometry import FieldExtent, FieldPlace, ScreenGeometry
from ui.screen import geometry_of, screen_key
from ui.settings import Settings
from ui.widgets.field import EDGE_MM, TargetField


class TargetFields:
    """The field of the set-up and that of practice: same size, same words, same screen.

    Parameters
    ----------
    window
        The window that they are in.
    settings
        What is remembered, the screen's size among it.
    """

    def __init__(self, window: QWidget, settings: Settings) -> None:
        self._window, self._settings = window, settings
        self.setup, self.practice = TargetField(), TargetField()
        self._both = (self.setup, self.practice)

    def geometry(self) -> ScreenGeometry:
        """The screen that the window is on."""
        return geometry_of(self._window.screen(), self._settings)

    def extent_of(self, field: TargetField, distance_mm: float) -> FieldExtent:
        """The part of the screen that a field's targets may be drawn on.

        ``distance_mm`` is that from the eyes to the screen.
        """
        self.measure(distance_mm)
        _lay_out(field)
        origin = self._window.screen().geometry().topLeft()
        middle = field.mapToGlobal(QRectF(field.rect()).center()) - QPointF(origin)
        geometry = self.geometry()
        return FieldExtent(
            geometry.to_mm((middle.x(), middle.y())),
            max(field.width() / 2 / geometry.px_per_mm - EDGE_MM, 1.0),
            max(field.height() / 2 / geometry.px_per_mm - EDGE_MM, 1.0),
            geometry,
        )

    def place_of(self, field: TargetField) -> FieldPlace:
        """Where a field lies on which screen, as it is laid out now."""
        screen, geometry = self._window.screen(), self.geometry()
        origin = QPointF(screen.geometry().topLeft())
        rect = QRectF(field.rect())
        corners = (field.mapToGlobal(p) - origin for p in (rect.topLeft(), rect.bottomRight()))
        (left, top), (right, bottom) = (geometry.to_mm((p.x(), p.y())) for p in corners)
        at, size = self._window.mapToGlobal(QPoint(0, 0)), self._window.size()
        window = (screen_key(screen), *at.toTuple(), *size.toTuple(), field.text_percent)
        return FieldPlace(window, left, top, right, bottom)

    def measure(self, distance_mm: float) -> None:
        """Draw a degree as large as it is on this screen from this distance."""
        px_per_mm = self.geometry().px_per_mm
        for field in self._both:
            field.px_per_mm, field.distance_mm = px_per_mm, distance_mm

    def set_text(self, percent: int) -> None:
        """Size of what is read beside the target."""
        for field in self._both:
            field.text_percent = percent
            field.update()

    def set_target(self, percent: int) -> None:
        """Size of the target itself."""
        for field in self._both:
            field.target_percent = percent
            field.update()


def _lay_out(field: QWidget) -> None:
    """Give a field its place now: it may be asked for before a new page was laid out.

    Twice, because words that learn their width ask for another height.
    """
    around: list[QWidget] = []
    widget: QWidget | None = field
    while widget is not None:
        around.append(widget)
        widget = widget.parentWidget()
    for widget in (*reversed(around), *reversed(around)):
        layout = widget.layout()
        if layout is not None:
            layout.activate()
