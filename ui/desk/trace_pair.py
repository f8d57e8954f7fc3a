"""Two traces to compare: one time, one cursor, one scale; side by side where there is room."""

# ruff: noqa: N802 - the names are Qt's

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

from ui import theme
from ui.desk.session_data import SessionView, SetView
from ui.desk.trace_pane import TracePane
from ui.desk.trace_view import TraceView

#: As much as a window of 1200 px leaves for both beside the lists, at a text size of 100 %; with
#: less a set of a minute would have no room for its repetitions (own choice).
BESIDE_PX = 860


class TracePair(QWidget):
    """The trace of a session, and that of another one beside it or below it."""

    def __init__(self) -> None:
        super().__init__()
        self.panes = (TracePane(), TracePane())
        self._views: list[SessionView | None] = [None, None]
        self._percent = 100
        self._filling = False
        self._box = QBoxLayout(QBoxLayout.Direction.TopToBottom, self)
        self._box.setContentsMargins(0, 0, theme.S, 0)
        self._box.setSpacing(theme.M)
        for pane in self.panes:
            self._box.addWidget(pane, 1)
            pane.resized.connect(lambda: self._level(anew=True))
        first, second = (pane.trace for pane in self.panes)
        first.moved.connect(lambda: self._lead(first, second))
        second.moved.connect(lambda: self._lead(second, first))
        self.show_second(on=False)

    # --- what is shown ---

    def show_second(self, *, on: bool) -> None:
        """Make room for another session, or none."""
        self._views[1] = None
        self.panes[1].setVisible(on)
        self._lay_out()
        self.compare()

    def show_sets(
        self,
        titles: Sequence[str],
        views: Sequence[SessionView | None],
        sets: Sequence[SetView | None],
    ) -> None:
        """Show a set of each session; a session of None is not read yet and stays as it is."""
        # One that is filled shows all of its set: that's no wish for the other to show no more.
        self._filling = True
        self._views = list(views)
        for pane, title, view, one in zip(self.panes, titles, views, sets, strict=True):
            if view is not None:
                pane.show_set(title, view, one)
        self._filling = False
        self.compare()

    # --- one time and one scale ---

    @property
    def _compared(self) -> bool:
        """Whether two sets that are drawn in the same units are shown."""
        first, second = (pane.trace.shown for pane in self.panes)
        shown = self._views[1] is not None and first is not None and second is not None
        return shown and first.axis == second.axis

    def _lead(self, leader: TraceView, other: TraceView) -> None:
        """What is zoomed and pointed at in one is so in the other."""
        if self._compared and not self._filling:
            other.follow(leader)
        self._level()

    def compare(self) -> None:
        """Both on one scale, or the smaller would look as large as the larger."""
        first, second = (pane.trace for pane in self.panes)
        first.share_scale(second if self._compared else None)
        if self._compared:
            second.share_scale(first)
            # The longer one leads, so that none is cut.
            longer = first.to_s - first.from_s >= second.to_s - second.from_s
            leader, other = (first, second) if longer else (second, first)
            other.follow(leader)
        self._level(anew=True)

    # --- where they stand ---

    @property
    def beside(self) -> bool:
        """Whether they stand side by side."""
        return self._box.direction() == QBoxLayout.Direction.LeftToRight

    def set_percent(self, percent: int) -> None:
        """Large text needs more width."""
        self._percent = percent
        self._lay_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may have room for both, or no longer."""
        super().resizeEvent(event)
        self._lay_out()

    def event(self, event: QEvent) -> bool:
        """Words that became longer or shorter move what is below them, in both alike."""
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self._level()
        return done

    def _lay_out(self) -> None:
        """Side by side where the width carries it."""
        wide = self.width() >= BESIDE_PX * self._percent / 100
        both = not self.panes[1].isHidden()
        way = QBoxLayout.Direction
        self._box.setDirection(way.LeftToRight if wide and both else way.TopToBottom)
        self._level(anew=True)

    def _level(self, *, anew: bool = False) -> None:
        """Side by side a degree is as high in both: what is above and below gets equal room.

        It grows with the words and shrinks only when ``anew``, or the lines would jump with
        each word that the cursor meets.
        """
        for parts in zip(*(pane.around for pane in self.panes), strict=True):
            if anew:
                for part in parts:
                    # What a label needs is never less than this.
                    part.setMinimumHeight(0)
            needs = [part.minimumHeight() for part in parts]
            if self.beside:
                shown = [p for p in parts if not p.isHidden()]
                needs += [p.heightForWidth(p.width()) for p in shown if p.hasHeightForWidth()]
            for part in parts:
                if part.minimumHeight() != max(needs):
                    part.setMinimumHeight(max(needs))
