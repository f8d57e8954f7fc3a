"""The window of the therapist's desk."""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

import time
from collections.abc import Callable
from datetime import date, datetime
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import (
    QCloseEvent,
    QDragEnterEvent,
    QDropEvent,
    QKeySequence,
    QShortcut,
)
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QListWidget,
    QProgressBar,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from tracker.plan.model import Plan
from tracker.records.notes import NoteBook, author_of_system
from tracker.records.people import Person, plans_of_nobody
from ui import tab_order, theme, words
from ui.appearance import Appearance
from ui.desk import together
from ui.desk.exchange_page import ExchangePage
from ui.desk.folder_name import FolderName
from ui.desk.head_row import head_row
from ui.desk.leaving import Leaving
from ui.desk.people_list import PeopleList
from ui.desk.person_page import PersonPage
from ui.desk.reading import FolderReading, Found
from ui.desk.session_page import SessionPage
from ui.desk.session_table import note_key
from ui.desk.small import desk_words, small_button
from ui.desk.together import new_session_folder, plan_path
from ui.desk.trace_view import TraceView
from ui.editor.opening import show_editor
from ui.editor.window import EditorWindow
from ui.settings import Settings
from ui.widgets.focus_frame import FocusFrame

TICK_MS = 100
#: The folder is looked through for changes so often. Asking is used in place of the system's
#: watching, which network and synced folders don't answer to.
LOOK_AGAIN_S = 10.0
SMALLEST = (960, 600)
#: From a plan's file and the new folder of a session to how it went
#: (:func:`ui.begun_from_desk.begin_baseline`).
BeginHere = Callable[[Path, Path], str]


class DeskWindow(QWidget):
    """People on the left, one of them on the right, a session in place of both.

    Parameters
    ----------
    folder
        Holds the sessions.
    settings
        Text size and colours, as in the program.
    today
        Up to which practice is counted; None for the real day.
    begin_here
        Begins a baseline in the program's window that the desk was opened from; None where the
        desk was opened by itself, and calls the program.
    """

    def __init__(
        self,
        folder: Path,
        settings: Settings,
        today: date | None = None,
        begin_here: BeginHere | None = None,
    ) -> None:
        super().__init__()
        self._begin_here = begin_here
        self.settings = settings
        self._fixed_day = today
        self.found: Found | None = None
        self.setMinimumSize(*SMALLEST)
        self.folder_name = FolderName()
        self.state = desk_words()
        self.progress = QProgressBar()
        self.progress.setTextVisible(False)
        self.progress.setAccessibleName(words.say("desk.looking"))
        self.stop = small_button(words.say("desk.stop"))
        self.go_on = small_button(words.say("desk.go_on"))
        self.faults = small_button("")
        self.fault_list = QListWidget()
        self.fault_list.setAccessibleName(words.say("desk.unread.name"))
        # What is to be done about a file stands at the end of its line.
        self.fault_list.setWordWrap(True)
        self.fault_list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        # A line may be higher than the list.
        self.fault_list.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.people = PeopleList()
        self._book = NoteBook(folder, author_of_system(), settings.writer)
        #: The plan editor, once it was opened for somebody.
        self.editor: EditorWindow | None = None
        self.person_page = PersonPage(
            lambda: self._book, lambda: self.reading.folder, self._today, self._plans
        )
        self.session_page = SessionPage(self._book, self._plans)
        self.exchange = ExchangePage(lambda: self.reading.folder, settings)
        self.setAcceptDrops(True)
        self.leaving = Leaving(self.session_page.notes, self._show_noted, self.close)
        self.stack = QStackedWidget()
        self.appearance = Appearance(self, settings, also=self._fault_text)
        self._arrange()
        self._ring = FocusFrame(self, (TraceView,))
        self._connect()
        self.appearance.draw_text()
        self._looked_s = 0.0
        self.reading = FolderReading(folder, self._today)
        self.open_folder(folder)
        self._timer = QTimer(self)
        self._timer.timeout.connect(self.tick)
        self._timer.start(TICK_MS)

    def _arrange(self) -> None:
        self.open_exchange = small_button(words.say("exchange.open"))
        self.open_other = small_button(words.say("desk.open"))
        head = head_row(
            words.say("desk.title"), (), (self.open_exchange, self.open_other), self.appearance
        )
        status = QHBoxLayout()
        status.setContentsMargins(theme.M, 0, theme.M, 0)
        status.setSpacing(theme.M)
        status.addWidget(self.state, 1)
        status.addWidget(self.folder_name, 1)
        for part in (self.progress, self.stop, self.go_on, self.faults):
            status.addWidget(part)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(self.people)
        split.addWidget(self.person_page)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 3)
        split.setChildrenCollapsible(False)
        split.setSizes([340, 1026])
        self.split = split
        self.stack.addWidget(split)
        self.stack.addWidget(self.session_page)
        self.stack.addWidget(self.exchange)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.S // 2)
        column.addLayout(head)
        column.addLayout(status)
        column.addWidget(self.fault_list)
        column.addWidget(self.leaving.bar)
        column.addWidget(self.stack, 1)
        self.fault_list.hide()

    def _connect(self) -> None:
        self.people.chosen.connect(self.person_page.show_person)
        self.person_page.opened.connect(self.open_session)
        self.person_page.plan_wanted.connect(self.open_plan)
        self.person_page.baseline_wanted.connect(self.begin_baseline)
        self.person_page.ranges_wanted.connect(self.set_ranges)
        self.session_page.left.connect(self.show_people)
        self.session_page.noted.connect(self.person_page.fill)
        self.open_exchange.clicked.connect(self.show_exchange)
        self.exchange.left.connect(self.show_people)
        self.exchange.into.taken.connect(self.look_again)
        self.stop.clicked.connect(lambda: self.reading.stop())
        self.go_on.clicked.connect(lambda: self.reading.start())
        self.faults.clicked.connect(self.switch_faults)
        self.open_other.clicked.connect(self.choose_folder)
        keys = {
            "Esc": self.show_people,
            "Ctrl++": lambda: self.appearance.step_text(1),
            "Ctrl+-": lambda: self.appearance.step_text(-1),
            "Ctrl+0": lambda: self.appearance.set_text(100),
            "Ctrl+O": self.choose_folder,
            "Ctrl+Z": self.undo_note,
            "Ctrl+E": self.open_plan,
            "Ctrl+Q": self.close,
        }
        for key, action in keys.items():
            shortcut = QShortcut(QKeySequence(key), self)
            # One press is one step: a held key must not withdraw all notes.
            shortcut.setAutoRepeat("+" in key[-2:] or key == "Ctrl+-")
            shortcut.activated.connect(action)

    # --- the folder ---

    def _today(self) -> date:
        return self._fixed_day or date.today()

    def open_folder(self, folder: Path) -> None:
        """Read a folder and show it."""
        self.reading.close()
        self.reading = FolderReading(folder, self._today)
        self._book = NoteBook(folder, self._book.author, self._book.writer)
        self.session_page.notes.book = self._book
        self.found = None
        # A score typed for somebody of the folder before must not go into this one.
        self.people.show_people([])
        self.person_page.name.setText("")
        self.folder_name.show_folder(folder)
        self.setWindowTitle(f"{words.say('program')} - {words.say('desk.title')}: {folder.name}")
        self.show_people()
        self.reading.start()
        self._say_state()

    def choose_folder(self) -> None:
        """Ask for another folder."""
        start = str(self.reading.folder)
        found = QFileDialog.getExistingDirectory(self, words.say("desk.open"), start)
        if found:
            self.open_folder(Path(found))

    def tick(self) -> None:
        """Take what was read; look again now and then."""
        was_busy = self.reading.busy
        found = self.reading.poll()
        if found is not None:
            self._show(found)
        if was_busy or self.reading.busy:
            self._looked_s = time.monotonic()
            self._say_state()
        elif self._may_look_again():
            self.reading.start()
        if self.session_page.busy:
            self.session_page.poll()
        for waiting in (self.exchange.work, self.person_page.report, self.session_page.report):
            waiting.poll()

    def _may_look_again(self) -> bool:
        """Not after a stop: who stopped reading doesn't want it to begin by itself."""
        stopped = self.found is not None and not self.found.records.complete
        return not stopped and time.monotonic() - self._looked_s >= LOOK_AGAIN_S

    def _show(self, found: Found) -> None:
        self.found = found
        self.people.show_people(found.people)
        self.fault_list.clear()
        for unread in found.records.unread:
            text = words.say("desk.unread.row", path=unread.path, why=words.told(unread.why))
            self.fault_list.addItem(text)
        if not found.records.unread:
            self.fault_list.hide()

    def _say_state(self) -> None:
        """How far the reading is, or what was read."""
        reading, found = self.reading, self.found
        # A look for changes that finds nothing to read is not worth a word.
        busy = reading.busy and (found is None or reading.of > 0 or not found.records.complete)
        self.progress.setVisible(busy)
        self.stop.setVisible(busy)
        stopped = found is not None and not found.records.complete and not reading.busy
        self.go_on.setVisible(stopped)
        unread = [] if found is None else found.records.unread
        self.faults.setVisible(bool(unread))
        if unread:
            not_read = sum(u.not_read for u in unread)
            name = "desk.unread.some" if not_read else "desk.unread"
            text = words.say(name, count=len(unread), not_read=not_read)
            if self.faults.text() != text:
                self.faults.setText(text)
                self.faults.setAccessibleName(text)
        self.progress.setRange(0, reading.of)
        self.progress.setValue(reading.done)
        self.state.setText(self._state_words(busy, stopped))

    def _state_words(self, busy: bool, stopped: bool) -> str:
        reading, found = self.reading, self.found
        if reading.error is not None:
            return words.say("desk.failed", why=words.failed(reading.error))
        if busy:
            if reading.of:
                return words.say("desk.reading", done=reading.done, of=reading.of)
            return words.say("desk.looking")
        if found is None:
            return ""
        sessions = len(found.records.rows)
        if stopped:
            return words.say("desk.stopped", count=sessions)
        known = sum(not p.nameless for p in found.people)
        return words.say("desk.read", people=known, sessions=sessions)

    def switch_faults(self) -> None:
        """Show or hide what could not be read."""
        self.fault_list.setVisible(self.fault_list.isHidden())
        if self.fault_list.isVisible():
            self.fault_list.setFocus()

    # --- pages ---

    def _plans(self) -> list[tuple[str, Plan]]:
        """The files of plans in the folder."""
        return [] if self.found is None else self.found.records.plans

    def open_session(self, place: str) -> None:
        """Open a session of the person shown."""
        person: Person | None = self.person_page.person
        row = None if person is None else next((r for r in person.rows if r.place == place), None)
        if person is None or row is None:
            return
        self.stack.setCurrentWidget(self.session_page)
        self.session_page.open_session(self.reading.folder, person, row)

    def open_plan(self) -> bool:
        """Open the plan of the person shown, or a new one, in the editor; whether it is open.

        Of sessions without a pseudonym the plans that they name are offered.
        """
        person, found = self.person_page.person, self.found
        if person is None or found is None or self.stack.currentIndex() != 0:
            return False
        if self.editor is not None and not self.editor.close():
            # It asks about the plan of somebody else first.
            self.editor.activateWindow()
            return False
        path = next((p for p, plan in found.records.plans if plan is person.plan), None)
        folder = self.reading.folder
        self.editor = show_editor(self.settings)
        nobodys = plans_of_nobody(person.rows, found.records.plans) if person.nameless else []
        self.editor.open_for(
            person, folder, None if path is None else folder / path, [Path(p) for p in nobodys]
        )
        return True

    def set_ranges(self) -> None:
        """The plan of the person shown, at what their baseline offers, to be taken by hand."""
        if self.open_plan() and self.editor is not None:
            self.editor.show_baseline()

    def begin_baseline(self) -> None:
        """Open the program for a session together; it comes into the folder by itself."""
        person, found = self.person_page.person, self.found
        path = None if person is None or found is None else plan_path(person, found.records)
        if person is None or path is None:
            return
        out = new_session_folder(self.reading.folder, person, datetime.now())
        if self._begin_here is not None:
            how = self._begin_here(path, out)
        elif together.is_open():
            how = "open"
        else:
            how = "begun" if together.start(together.call(path, out)) else "failed"
        self.person_page.report.say(words.say(f"desk.together.{how}"))

    def undo_note(self) -> None:
        """Take back one's last note on the session, or score of the person, that is shown."""
        page = self.person_page
        if self.stack.currentWidget() is self.session_page:
            self.session_page.notes.undo_note()
        elif self.stack.currentIndex() == 0 and page.tabs.currentWidget() is page.scores:
            page.scores.undo_last()

    def show_exchange(self) -> None:
        """The page of files from and to patients."""
        self.stack.setCurrentWidget(self.exchange)
        self.exchange.enter()

    def look_again(self) -> None:
        """Something has come into the folder."""
        if not self.reading.busy:
            self.reading.start()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """A file may be dropped here."""
        if _dropped(event) is not None:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Take in the file that was dropped."""
        path = _dropped(event)
        if path is not None:
            event.acceptProposedAction()
            self.show_exchange()
            self.exchange.into.take_in(path)

    def show_people(self) -> None:
        """Back to the people."""
        self.exchange.leave()
        self.stack.setCurrentIndex(0)
        self.people.setFocus()

    # --- looks ---

    def _fault_text(self, percent: int) -> None:
        self.leaving.bar.set_percent(percent)
        self.fault_list.setFont(theme.font("desk", percent))
        self.fault_list.setMaximumHeight(6 * self.fault_list.fontMetrics().height())

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Tab goes through the window as it is read."""
        return tab_order.step(self, forward=forward)

    def closeEvent(self, event: QCloseEvent) -> None:
        """End what goes on beside the window; an unsaved plan or note keeps it open."""
        if self.editor is not None and not self.editor.close():
            event.ignore()
            return
        if not self.leaving.may_close():
            event.ignore()
            return
        self._timer.stop()
        self.reading.close()
        self.session_page.close_jobs()
        self.person_page.report.close()
        self.exchange.close_jobs()
        self.settings.sync()
        super().closeEvent(event)

    def _show_noted(self, session: str) -> None:
        """Show the session that notes know by this key, where it is here."""
        people = [] if self.found is None else self.found.people
        found = next(((p, r) for p in people for r in p.rows if note_key(r) == session), None)
        if found is None:
            return
        self.stack.setCurrentWidget(self.session_page)
        if self.session_page.notes.session != session:
            self.session_page.open_session(self.reading.folder, *found)


def _dropped(event: QDropEvent) -> Path | None:
    """The one file that is dragged, or None."""
    urls = event.mimeData().urls()
    if len(urls) != 1 or not urls[0].isLocalFile():
        return None
    return Path(urls[0].toLocalFile())
