"""A ring around whatever of Qt's own has the keys: its own lines are too thin to be found."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QRegion
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from ui import theme
from ui.widgets.basic import Button, draw_focus

_MOVES = (
    QEvent.Type.Move,
    QEvent.Type.Resize,
    QEvent.Type.Show,
    QEvent.Type.Hide,
)


class FocusFrame(QWidget):
    """Lies over a window and follows the keys; what draws a ring of its own is left to do so.

    Parameters
    ----------
    window
        The window; the frame lives as long.
    own
        Further kinds of widgets that draw their ring themselves.
    """

    def __init__(self, window: QWidget, own: tuple[type[QWidget], ...] = ()) -> None:
        super().__init__(window)
        self._own = (Button, *own)
        self._around: QWidget | None = None
        #: The widget and what holds it: where these go, the ring goes.
        self._followed: list[QWidget] = []
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._follow)

    def _follow(self, _before: QWidget | None, now: QWidget | None) -> None:
        window = self.parentWidget()
        ours = now is not None and window.isAncestorOf(now) and not isinstance(now, self._own)
        for widget in self._followed:
            # What had the keys may have been deleted while it was shown.
            if isValid(widget):
                widget.removeEventFilter(self)
        self._around, self._followed = (now if ours else None), []
        if self._around is not None:
            self._followed = [self._around]
            while self._followed[-1] is not window:
                self._followed.append(self._followed[-1].parentWidget())
            for widget in self._followed:
                widget.installEventFilter(self)
        self._place()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Go where it goes."""
        if event.type() in _MOVES:
            self._place()
        return False

    def _place(self) -> None:
        """Around the part of it that is in sight."""
        box = self._sight()
        if box.isEmpty():
            self.hide()
            return
        edge = theme.FOCUS_WIDTH
        box = box.adjusted(-edge, -edge, edge, edge).intersected(self.parentWidget().rect())
        self.setGeometry(box)
        # Words within it are not drawn anew with it.
        inner = self.rect().adjusted(edge, edge, -edge, -edge)
        self.setMask(QRegion(self.rect()).subtracted(QRegion(inner)))
        self.raise_()
        self.show()

    def _sight(self) -> QRect:
        """The part that all that holds it lets be seen, in the window's pixels."""
        around, window = self._around, self.parentWidget()
        if around is None or not all(isValid(w) for w in self._followed) or not around.isVisible():
            return QRect()
        box = QRect(around.mapTo(window, QPoint(0, 0)), around.size())
        for holder in self._followed[1:]:
            box = box.intersected(QRect(holder.mapTo(window, QPoint(0, 0)), holder.size()))
        return box

    def paintEvent(self, event: QPaintEvent) -> None:
        """The ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        draw_focus(painter, QRectF(self.rect()), self.palette())
