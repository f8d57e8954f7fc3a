"""How a window looks: its text size, its colours, and whether drawn movements move."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QApplication, QWidget

from ui import theme
from ui.motion import is_still
from ui.settings import Settings
from ui.widgets.moving import MovementBox


def _as_chosen(percent: int) -> int:
    return percent


def _nothing_more(_percent: int) -> None:
    return None


class Appearance:
    """Sets and remembers how a window looks.

    Parameters
    ----------
    window
        The window; its parts that have a ``set_percent`` are told the text size.
    settings
        Where it is remembered.
    drawn
        The text size that is drawn for the one that was chosen.
    also
        Told each text size that is drawn, for what has no ``set_percent``.
    """

    def __init__(
        self,
        window: QWidget,
        settings: Settings,
        *,
        drawn: Callable[[int], int] = _as_chosen,
        also: Callable[[int], None] = _nothing_more,
    ) -> None:
        self._window, self._settings = window, settings
        self._drawn, self._also = drawn, also
        #: The text size that is drawn.
        self.percent = 0

    # --- text ---

    def step_text(self, steps: int) -> None:
        """Larger or smaller text."""
        known = theme.TEXT_STEPS
        at = known.index(self._settings.text_percent) + steps
        self.set_text(known[min(max(at, 0), len(known) - 1)])

    def set_text(self, percent: int) -> None:
        """Set the text size of everything."""
        self._settings.text_percent = percent
        self.draw_text()

    def draw_text(self) -> None:
        """Draw the text in its size, if that is another than before."""
        percent = self._drawn(self._settings.text_percent)
        if percent == self.percent:
            return
        self.percent = percent
        for widget in self._window.findChildren(QWidget):
            change = getattr(widget, "set_percent", None)
            if change is not None:
                change(percent)
        self._also(percent)

    # --- colours ---

    def switch_colours(self) -> None:
        """Light to dark and back."""
        self.set_colours("light" if theme.is_dark(self._settings.colours) else "dark")

    def set_colours(self, colours: str) -> None:
        """Light or dark."""
        self._settings.colours = colours
        app = QApplication.instance()
        if isinstance(app, QApplication):
            theme.apply(app, colours)

    # --- movement ---

    def switch_still(self) -> None:
        """Drawn movements hold still, or move again."""
        self.set_motion("moving" if is_still(self._settings.motion) else "still")

    def set_motion(self, motion: str) -> None:
        """Whether drawn movements move."""
        self._settings.motion = motion
        self.hold_still()

    def hold_still(self) -> None:
        """Tell the drawn movements whether they may move."""
        still = is_still(self._settings.motion)
        for box in self._window.findChildren(MovementBox):
            box.set_still(still)
