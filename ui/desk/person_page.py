"""One person: what needs eyes first, practice, trends, sessions."""

# ruff: noqa: N802 - the names are Qt's

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from tracker.exercises.catalogue.sources import GUIDELINE
from tracker.records.marks import marked_sets
from tracker.records.notes import NoteBook
from tracker.records.over_time import OverTime, over_time_to_tell
from tracker.records.people import Person
from tracker.records.series import Series
from ui import theme, words
from ui.desk import trade
from ui.desk.filters import Filters
from ui.desk.people_list import shown_name
from ui.desk.reasons import Reasons
from ui.desk.report_button import Plans, Reporting
from ui.desk.scores_panel import ScoresPanel
from ui.desk.session_table import SessionTable, note_key
from ui.desk.small import as_tip, desk_words, row_of, small_button
from ui.desk.strip import PracticeStrip
from ui.desk.trend_table import TrendTable, trend_rows
from ui.editor.baseline import offers_changes
from ui.editor.telling import phrase
from ui.widgets.basic import Words

#: Beside the name and its line of words there is room for the buttons from so many heights of
#: a line on.
HEAD_LINES = 40
#: Beyond this text size, in percent, the page is higher than the screen.
LARGE = 125
#: Of a condition that is waited for so many figures are shown (all have room on hover).
MOST_FIGURES = 6


class PersonPage(QWidget):
    """The right side of the window."""

    opened = Signal(str)
    plan_wanted = Signal()
    baseline_wanted = Signal()
    ranges_wanted = Signal()

    def __init__(
        self,
        book: Callable[[], NoteBook],
        folder: Callable[[], Path],
        today: Callable[[], date],
        plans: Plans = tuple,
    ) -> None:
        super().__init__()
        self._book, self._today = book, today
        self.scores = ScoresPanel(book, today)
        self.report = Reporting(
            self,
            lambda: [folder() / row.place for row in self.sessions.sessions.rows],
            self.scores.scores,
            self._over_time,
            lambda: self._book().notes(),
            plans,
        )
        self._series: list[Series] = []
        self.person: Person | None = None
        #: The tab that is shown again once the nameless are left; None for other people.
        self._tab: int | None = None
        self.name = Words(role="lead", bold=True)
        self.about = desk_words(soft=True)
        self.reasons = Reasons()
        self.practice, self.gaze = desk_words(), desk_words()
        self.conditions = desk_words()
        self.strip = PracticeStrip()
        self.strip_key = desk_words(words.say("desk.strip.key"), soft=True)
        self.filters = Filters()
        self.trends, self.sessions = TrendTable(), SessionTable()
        self.key = desk_words(words.say("desk.key"), soft=True)
        self._make_tabs()
        self._make_head()
        self._lay_out()
        self.reasons.opened.connect(self.opened)
        self.sessions.chosen.connect(lambda row: self.opened.emit(row.place))
        self.filters.changed.connect(self.fill)

    def _make_tabs(self) -> None:
        """Trends, sessions and scores, of which one is in sight."""
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        trends = QWidget()
        inside = QVBoxLayout(trends)
        inside.setContentsMargins(0, 0, 0, 0)
        # Above the table, or in a low window nobody would see it beside what it explains.
        inside.addWidget(self.key)
        inside.addWidget(self.trends, 1)
        self.tabs.addTab(trends, words.say("desk.trends"))
        self.tabs.addTab(self.sessions, words.say("desk.sessions"))
        self.tabs.addTab(self.scores, words.say("scores.tab"))

    def _make_head(self) -> None:
        """Who it is, and the buttons of what can be done for them."""
        who = QVBoxLayout()
        who.setSpacing(0)
        who.addWidget(self.name)
        who.addWidget(self.about)
        self._head = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._head.addLayout(who, 1)
        self.plan = small_button(words.say("desk.plan"))
        self.plan.clicked.connect(self.plan_wanted)
        self.baseline = small_button(words.say("desk.together"))
        self.baseline.clicked.connect(self.baseline_wanted)
        self._head.addWidget(row_of([self.plan, self.baseline, self.report.button]))

    def _lay_out(self) -> None:
        inner = QWidget()
        self._column = column = QVBoxLayout(inner)
        column.setContentsMargins(theme.M, theme.S, theme.M, theme.S)
        column.setSpacing(theme.S)
        column.addLayout(self._head)
        column.addWidget(self.report.said)
        column.addWidget(self._make_offer())
        for part in (
            self.reasons,
            self.practice,
            self.gaze,
            self.strip,
            self.strip_key,
            self.conditions,
            self.filters,
        ):
            column.addWidget(part)
        column.addWidget(self.tabs, 1)
        # With large text the page is higher than the screen.
        scroll = QScrollArea()
        scroll.setWidget(inner)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(scroll)

    def set_percent(self, percent: int) -> None:
        """The tabs' own words."""
        self._lay_out_head()
        # Of several lines it would push the trends out of sight.
        self._column.removeWidget(self.gaze)
        large = percent > LARGE
        self._column.insertWidget(
            self._column.indexOf(self.tabs if large else self.practice) + 1, self.gaze
        )
        self.tabs.setFont(theme.font("desk", percent))
        self.trends.set_percent(percent)
        self.sessions.set_percent(percent)
        self.reasons.set_percent(percent)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may have room for the buttons beside the name, or no longer."""
        super().resizeEvent(event)
        self._lay_out_head()

    def _make_offer(self) -> QWidget:
        """After a baseline together: the way to what it offers for the plan."""
        self.ranges = small_button(words.say("desk.ranges.set"))
        self.ranges.clicked.connect(self.ranges_wanted)
        self.offer = QWidget()
        row = QHBoxLayout(self.offer)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(desk_words(words.say("desk.ranges"), bold=True), 1)
        row.addWidget(self.ranges)
        self.offer.hide()
        return self.offer

    def _show_offer(self, person: Person | None) -> None:
        new = person is not None and person.baseline_day == self._today()
        own = new and person.plan is not None and person.plan.person == person.name
        self.offer.setVisible(own and offers_changes(person.plan, person.rows))

    def _lay_out_head(self) -> None:
        """The buttons beside the name, or below it, where it would be squeezed into a column."""
        wide = self.width() >= HEAD_LINES * self.about.fontMetrics().height()
        way = QBoxLayout.Direction
        self._head.setDirection(way.LeftToRight if wide else way.TopToBottom)

    def show_person(self, person: Person | None) -> None:
        """Show somebody; nobody where the folder is empty."""
        again = person is not None and self.person is not None and person.name == self.person.name
        if not again:
            self.report.say("")
        self.person = person
        self.setEnabled(person is not None)
        self._show_offer(person)
        if person is None:
            self.name.setText(words.say("desk.nobody"))
            self.about.setText("")
            self.reasons.show_reasons([])
            self.practice.setText("")
            self.gaze.hide()
            self.conditions.hide()
            self.strip.show_practice(None)
            self.trends.show_rows([])
            self.sessions.show_rows([], {})
            self.scores.show_person("")
            return
        self.name.setText(shown_name(person))
        for part in (self.practice, self.strip, self.strip_key):
            part.setVisible(not person.nameless)
        self._choose_tab(person)
        own = person.plan is not None and person.plan.person == person.name
        self.baseline.setEnabled(own)
        self.baseline.setToolTip("" if own else as_tip(words.say("desk.together.no_plan")))
        about = words.say(
            "desk.nameless.what" if person.nameless else f"desk.side.{person.affected_side}"
        )
        if person.baseline_day is not None:
            day = trade.day(person.baseline_day)
            about = words.say("desk.baseline.of", text=about, day=day)
        self.about.setText(about)
        self.reasons.show_reasons(person.reasons)
        to_day = trade.day(person.adherence.to_day)
        counted = words.say("desk.counted_to", day=to_day)
        gaze = trade.gaze(person.gaze, person.plan)
        self.practice.setText(f"{trade.practice(person.adherence)}. {counted}")
        self.gaze.setText(words.sentence(gaze) if gaze else "")
        self.gaze.setToolTip(as_tip(phrase(GUIDELINE)))
        self.gaze.setVisible(bool(gaze))
        self.strip.show_practice(person.adherence)
        self._show_next(person)
        self.scores.show_person(person.name)
        self.filters.offer(person.rows, again=again)
        self.fill(again=again)

    def _choose_tab(self, person: Person) -> None:
        """The nameless have sessions alone; for all others the tab stays that was chosen."""
        if person.nameless and self._tab is None:
            self._tab = self.tabs.currentIndex()
            self.tabs.setCurrentWidget(self.sessions)
        elif not person.nameless and self._tab is not None:
            self.tabs.setCurrentIndex(self._tab)
            self._tab = None

    def _show_next(self, person: Person) -> None:
        """What the plan opens and asks for next, and what it waits for.

        Of the first condition that is waited for all figures stand there, of the others one.
        """
        standing = person.conditions
        waiting = [s for s in standing if not s.condition.met and not s.practised]
        lines = [
            words.say(
                "desk.condition",
                text=trade.condition(s, most=MOST_FIGURES if s in waiting[:1] else 1),
            )
            for s in standing
        ]
        lines += [words.say("desk.step", text=trade.step(s)) for s in person.steps]
        self.conditions.setToolTip(as_tip("\n".join(trade.condition(s) for s in standing)))
        self.conditions.setText("\n".join(lines))
        self.conditions.setVisible(bool(lines))

    def _over_time(self) -> list[OverTime]:
        """The person over the sessions that are shown."""
        if self.person is None:
            return []
        return over_time_to_tell(self.person, self._series, self._book().notes())

    def fill(self, *, again: bool = True) -> None:
        """Fill the tables with what the filters let through.

        ``again``: of the same person, so that the rows that are chosen stay chosen.
        """
        person = self.person
        if person is None:
            return
        choice = self.filters.choice
        rows = choice.rows(person.rows)
        series = person.series_over(rows)
        if choice.exercise is not None:
            series = [s for s in series if s.exercise in ("", choice.exercise)]
        self._series = series
        only = self.filters.only_changed.isChecked()
        notes = self._book().notes()
        marked = marked_sets(rows, notes)
        self.trends.show_rows(
            trend_rows(series, person.affected_side, only_changed=only, marked=marked), again=again
        )
        counts = Counter(n.session for n in notes)
        mine = {note_key(r): counts[note_key(r)] for r in rows if counts[note_key(r)]}
        self.sessions.show_rows(rows, mine, again=again)
