"""A session opened: its trace, repetitions and events, notes, and another one beside it."""

# ruff: noqa: N802 - the names are Qt's

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QScrollArea,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from tracker.records.notes import NoteBook
from tracker.records.people import Person
from tracker.records.questionnaires import Score, scores_of
from tracker.records.rows import SessionRow
from ui import background, theme, words
from ui.desk import trade
from ui.desk.moments import lines_of
from ui.desk.notes_panel import NotesPanel
from ui.desk.people_list import shown_name
from ui.desk.report_button import Plans, Reporting
from ui.desk.session_data import SessionView, SetView, load_session
from ui.desk.session_table import note_key
from ui.desk.session_words import ended_words, same_exercise, set_names
from ui.desk.small import desk_words, small_button
from ui.desk.trace_pair import TracePair
from ui.ports import Job
from ui.widgets.flow import FlowRow

_TIME = int(Qt.ItemDataRole.UserRole) + 1
_NUMBER = _TIME + 1
#: From so many heights of a line on there is room for the lists beside the trace; with less the
#: trace would be narrower than they are (own choice).
BESIDE_LINES = 44
#: Heights of a line that the trace and the lists need each, and two traces below each other.
HIGH_LINES, TWO_HIGH_LINES = 22, 42


class SessionPage(QWidget):
    """One session, or two that are compared."""

    left = Signal()
    noted = Signal()

    def __init__(self, book: NoteBook, plans: Plans = tuple) -> None:
        super().__init__()
        self.folder = Path()
        self.person: Person | None = None
        self.rows: list[SessionRow | None] = [None, None]
        self.views: list[SessionView | None] = [None, None]
        #: Of one without a view: that it is being read, or why it could not be.
        self._why = ["", ""]
        self._jobs: list[tuple[int, Job]] = []
        self.back = small_button(words.say("desk.back"))
        self.title = desk_words(bold=True)
        self.sets, self.beside = QComboBox(), QComboBox()
        self.doubt = desk_words()
        self.traces = TracePair()
        self.panes = self.traces.panes
        self.what = QListWidget()
        self.figures = QListWidget()
        self.lists = QTabWidget()
        self.mark = small_button(words.say("desk.note.mark"))
        self.notes = NotesPanel(book)
        self.report = Reporting(
            self,
            self._report_of,
            self._scores,
            notes=lambda: self.notes.book.notes(),
            plans=plans,
        )
        self._labels = [QLabel(words.say(k)) for k in ("desk.set", "desk.beside")]
        #: Whether the lists are beside the trace; whether they and two traces are in one column.
        self._laid_out = True, False
        self._arrange()
        self.back.clicked.connect(self.left)
        self.sets.currentIndexChanged.connect(self._show_set)
        self.beside.currentIndexChanged.connect(self._open_beside)
        self.what.currentItemChanged.connect(self._go_to)
        self.mark.clicked.connect(self.mark_repetition)
        # Two traces need more height where they are not side by side.
        for pane in self.panes:
            pane.resized.connect(self._lay_out)
        self.notes.changed.connect(self._fill_list)
        self.notes.changed.connect(self.noted)

    def _arrange(self) -> None:
        self.sets.setAccessibleName(words.say("desk.set"))
        self.beside.setAccessibleName(words.say("desk.beside"))
        head = QHBoxLayout()
        head.addWidget(self.back)
        head.addWidget(self.title, 1)
        head.addWidget(self.report.button)
        choices = QWidget()
        flow = FlowRow(choices)
        flow.setContentsMargins(0, 0, 0, 0)
        for label, box in zip(self._labels, (self.sets, self.beside), strict=False):
            label.setBuddy(box)
            box.setMinimumContentsLength(26)
            box.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            pair = QWidget()
            inside = QHBoxLayout(pair)
            inside.setContentsMargins(0, 0, 0, 0)
            inside.addWidget(label)
            inside.addWidget(box)
            flow.addWidget(pair)
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        for part, key in ((self.what, "desk.what"), (self.figures, "desk.figures")):
            part.setWordWrap(True)
            part.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
            part.setAccessibleName(words.say(key))
            self.lists.addTab(part, words.say(key))
        self.lists.setDocumentMode(True)
        column.addWidget(self.lists, 4)
        column.addWidget(self.mark)
        column.addWidget(self.notes, 3)
        split = QSplitter()
        split.addWidget(self.traces)
        split.addWidget(side)
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 1)
        split.setChildrenCollapsible(False)
        self._split = split
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(theme.M, theme.S, theme.M, theme.S)
        column.addLayout(head)
        column.addWidget(self.report.said)
        column.addWidget(choices)
        column.addWidget(self.doubt)
        column.addWidget(split, 1)
        page = QScrollArea()
        page.setWidget(inner)
        page.setWidgetResizable(True)
        page.setFrameShape(QFrame.Shape.NoFrame)
        page.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(page)

    def set_percent(self, percent: int) -> None:
        """The words of what Qt draws."""
        font = theme.font("desk", percent)
        for part in (*self._labels, self.sets, self.beside, self.what, self.figures, self.lists):
            part.setFont(font)
        self._lay_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may have room for the lists beside the trace, or no longer."""
        super().resizeEvent(event)
        self._lay_out()

    def _lay_out(self) -> None:
        """The lists beside the trace, or below it where the words are large."""
        line, split = self.what.fontMetrics().height(), self._split
        beside = self.width() >= BESIDE_LINES * line
        stacked = self.rows[1] is not None and not self.traces.beside
        traces = TWO_HIGH_LINES if stacked else HIGH_LINES
        split.setMinimumHeight((traces if beside else traces + HIGH_LINES) * line)
        # Where the lists stand beside, how wide they are stays as the user has set it.
        if (beside, stacked and not beside) != self._laid_out:
            self._laid_out = beside, stacked and not beside
            way = Qt.Orientation
            split.setOrientation(way.Horizontal if beside else way.Vertical)
            split.setSizes([3000, 1000] if beside else [100 * traces, 100 * HIGH_LINES])

    # --- opening ---

    def open_session(self, folder: Path, person: Person, row: SessionRow) -> None:
        """Open a session; another one that stood beside it goes."""
        self.folder, self.person = folder, person
        self.report.say("")
        self.rows, self.views, self._jobs = [row, None], [None, None], []
        self._why = ["", ""]
        self.title.setText(self._title(row))
        self._offer_beside(row)
        self.sets.blockSignals(True)
        self.sets.clear()
        self.sets.blockSignals(False)
        self.what.clear()
        self.figures.clear()
        self.doubt.setText("")
        self.traces.show_second(on=False)
        self._lay_out()
        self._load(0, row)
        self.notes.show_session(note_key(row))
        self.back.setFocus()

    def _report_of(self) -> list[Path]:
        row = self.rows[0]
        return [] if row is None else [self.folder / row.place]

    def _scores(self) -> list[Score]:
        if self.person is None or self.person.nameless:
            return []
        return scores_of(self.notes.book, [self.person.name], also_withdrawn=True)

    def poll(self) -> None:
        """Show what has been read; called by the window's timer."""
        for slot, job in [j for j in self._jobs if j[1].done]:
            self._jobs.remove((slot, job))
            if job.error is not None:
                self._show_why(slot, words.failed(job.error))
                continue
            self.views[slot] = job.result
            if slot == 0:
                self._offer_sets()
                if not job.result.sets:
                    # Where nothing was practised, what was answered is all there is to see.
                    self.lists.setCurrentWidget(self.figures)
            self._show_set()

    @property
    def busy(self) -> bool:
        """Whether a session is being read."""
        return bool(self._jobs)

    def close_jobs(self) -> None:
        """Wait for what is being read."""
        for _, job in self._jobs:
            job.wait(3.0)
        self.report.close()

    def _load(self, slot: int, row: SessionRow) -> None:
        folder = self.folder
        self._jobs.append((slot, background.run(lambda: load_session(folder, row.place))))
        self._show_why(slot, words.say("desk.loading"))

    def _show_why(self, slot: int, why: str) -> None:
        """Show why there is nothing of a session yet, or nothing at all."""
        self._why[slot] = why
        self.panes[slot].show_set(self._titles[slot], None, None)

    def _title(self, row: SessionRow) -> str:
        # Its letters must not draw the day's number to them where one reads from the right.
        name = "" if self.person is None else words.apart(shown_name(self.person))
        when = f"{trade.day(row.day)} {(row.started_at or '')[11:16]}".strip()
        title = words.say("desk.session", person=name, day=when)
        return f"{title}: {ended_words(row)}"

    def _offer_beside(self, row: SessionRow) -> None:
        self.beside.blockSignals(True)
        self.beside.clear()
        self.beside.addItem(words.say("desk.beside.none"), None)
        # Whose another nameless session is, nobody knows: there is nothing to hold it against.
        others = [] if self.person is None or self.person.nameless else self.person.rows
        for other in reversed(others):
            if other is not row and other.sets:
                when = f"{trade.day(other.day)} {(other.started_at or '')[11:16]}"
                self.beside.addItem(when.strip(), other)
        self.beside.blockSignals(False)

    def _open_beside(self) -> None:
        row = self.beside.currentData()
        self.rows[1], self.views[1] = row, None
        # What is read for a session that is no longer wanted is not shown.
        self._jobs = [j for j in self._jobs if j[0] != 1]
        self.traces.show_second(on=row is not None)
        self._lay_out()
        # The name of the first one comes and goes with the second.
        self.panes[0].say_title(self._titles[0])
        if row is not None:
            self._load(1, row)

    def _offer_sets(self) -> None:
        view = self.views[0]
        self.sets.blockSignals(True)
        self.sets.clear()
        sets = [] if view is None else view.sets
        for one, name in zip(sets, set_names(sets), strict=True):
            self.sets.addItem(name, one)
        self.sets.blockSignals(False)

    # --- what is shown ---

    @property
    def chosen(self) -> SetView | None:
        """The set that is shown."""
        found = self.sets.currentData()
        return found if isinstance(found, SetView) else None

    def _show_set(self) -> None:
        chosen = self.chosen
        second = self.views[1]
        other = None if second is None else same_exercise(second, chosen)
        self.traces.show_sets(self._titles, self.views, [chosen, other])
        flags = [] if chosen is None else list(chosen.exercise.quality)
        # Then what limits the session as a whole; some of that stands with the exercise, too.
        first, named = self.views[0], {f.flag for f in flags}
        flags += [] if first is None else [f for f in first.summary.quality if f.flag not in named]
        why = trade.listed(f"{trade.flag(f.flag)} ({trade.shown(f.reason)})" for f in flags)
        self.doubt.setText(words.say("desk.flag", why=why) if flags else "")
        self.doubt.setVisible(bool(flags))
        self._fill_list()

    @property
    def _titles(self) -> list[str]:
        """Whose trace is which, where there are two; and why there is none."""
        titles = []
        for row, view, why_none in zip(self.rows, self.views, self._why, strict=True):
            title = "" if row is None or self.rows[1] is None else self._title(row)
            if view is None:
                why = why_none
            elif not view.sets:
                why = words.say("desk.no_sets")
            elif not len(view.times_s):
                why = words.told(view.why_empty) or words.say("desk.no_samples")
                why = words.say("desk.no_trace", why=why)
            else:
                why = ""
            titles.append(". ".join(part for part in (title, why) if part))
        return titles

    def _fill_list(self) -> None:
        """Repetitions, events, pauses and marks in the order of time."""
        # What goes away must not pull the cursor to where it was.
        self.what.blockSignals(True)
        self.what.clear()
        self.what.blockSignals(False)
        self._fill_figures()
        chosen = self.chosen
        if chosen is None:
            return
        marked = self.notes.marked(chosen.number)
        self.panes[0].show_not_valid(frozenset(marked))
        self.panes[0].trace.update()
        view = self.views[0]
        for line in [] if view is None else lines_of(view, chosen, marked):
            at = words.say("desk.at", time=words.number(line.time_s, 1))
            item = QListWidgetItem(f"{at}  {line.text}")
            item.setData(_TIME, line.time_s)
            item.setData(_NUMBER, line.number)
            self.what.addItem(item)

    def _fill_figures(self) -> None:
        """What is told of the exercise, then of the session; the same as on paper."""
        self.figures.clear()
        view, chosen = self.views[0], self.chosen
        record = None if view is None else view.record
        if record is None:
            return
        figures = [] if chosen is None else list(record.exercises[chosen.number].figures)
        for figure in (*figures, *record.figures):
            self.figures.addItem(trade.line_of(figure))

    def mark_repetition(self) -> None:
        """Mark the repetition that is chosen in the list as not valid."""
        item, chosen = self.what.currentItem(), self.chosen
        number = None if item is None else item.data(_NUMBER)
        if chosen is not None and number is not None:
            row = self.what.currentRow()
            self.notes.mark(chosen.number, number)
            self.what.setCurrentRow(row)

    def _go_to(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            self.panes[0].trace.go_to(float(item.data(_TIME)))
