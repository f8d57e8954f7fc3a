"""The end: what was done, in plain words, and where it was saved."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QFileDialog, QGridLayout, QHBoxLayout, QWidget

from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from ui import theme, words
from ui.reading import Row, rows_of, session_rows
from ui.session.flow import Director
from ui.widgets.basic import Button, Page, Words, relabel
from ui.widgets.leave import unwell_button
from ui.widgets.paths import shown_path
from ui.widgets.posts import Posts


class NotMeasured(QWidget):
    """The words "not measured" in a dashed box, unlike any figure."""

    def __init__(self) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        row.setContentsMargins(theme.S, 2, theme.S, 2)
        label = Words(words.say("summary.not_measured"))
        label.setWordWrap(False)
        row.addWidget(label)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002, N802
        """Draw the box."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(self.palette().color(QPalette.ColorRole.Mid), theme.LINE, Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(2, 2, -2, -2), 6, 6)


class SummaryPage(Page):
    """Rows of what was measured.

    Parameters
    ----------
    director, close
        The window's.
    hand_over
        Opens the page where the file for the therapist is made.
    plan
        Gives the plan that sessions may be handed over with, or None.
    """

    def __init__(
        self,
        director: Director,
        close: Callable[[], object],
        hand_over: Callable[[], object],
        plan: Callable[[], Plan | None],
    ) -> None:
        super().__init__()
        self._director, self._plan = director, plan
        self.percent = 100
        self.said = Words(role="lead")
        self.exercise = Words(role="lead", bold=True)
        self.saved = Words(role="body", soft=True)
        self.table = QWidget()
        self.grid = QGridLayout(self.table)
        self.grid.setContentsMargins(0, 0, 0, 0)
        self.grid.setHorizontalSpacing(theme.L)
        self.grid.setVerticalSpacing(theme.S)
        self.body.addWidget(Words(words.say("summary.title"), "title"))
        self.kept = Words(role="body", soft=True)
        self.bring = Words(words.say("summary.bring"))
        for part in (self.said, self.exercise, self.table, self.saved, self.bring, self.kept):
            self.body.addWidget(part)
        self.body.addStretch(1)
        self.again = Button(words.say("summary.again"), "main")
        self.again.clicked.connect(director.again)
        self.place = Button(words.say("summary.place"), "main")
        self.place.clicked.connect(self._choose_place)
        self.take_back = Button(words.say("summary.take_back"))
        self.take_back.clicked.connect(director.take_report_back)
        self.retry = Button(words.say("summary.retry"))
        self.retry.clicked.connect(lambda: director.save_again())
        leave = Button(words.say("summary.close"))
        leave.clicked.connect(close)
        self.hand_over = Button(words.say("handover.open"))
        self.hand_over.clicked.connect(hand_over)
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.buttons.set_apart(self.unwell)
        stay = (self.again, self.hand_over, self.take_back, self.place, self.retry)
        for button in (*stay, leave, self.unwell):
            self.buttons.addWidget(button)
        self._rows: list[Row] = []

    def enter(self) -> None:
        """What was only told of is not told once more by a key that is pressed twice."""
        super().enter()
        if self._director.reported:
            self.setFocus()

    def refresh(self) -> None:
        """Show what was saved."""
        director = self._director
        for button, on in (
            (self.again, not director.unsaved),
            (self.hand_over, self._can_hand_over()),
            (self.place, director.unsaved and not director.sharing),
            (self.retry, director.unsaved),
            (self.take_back, director.can_take_back),
            (self.unwell, director.can_be_unwell),
        ):
            if button.isHidden() == on:
                button.setVisible(on)
        # Who was told that it is all for today is not asked to practise in the next breath.
        found = {} if director.saved is None else director.saved.summary
        over = director.is_over_for_today
        relabel(self.again, words.say("summary.first_page" if over else "summary.again"))
        why = director.keep_error
        said = words.say("summary.not_kept", why=words.told(why)) if why else ""
        if director.take_back_error:
            said = words.say("summary.not_taken_back", why=words.told(director.take_back_error))
        self.kept.setText(said)
        self.kept.setVisible(bool(said))
        said = words.say(self._how_it_ended())
        if found.get("baseline") is True and found.get("exercises"):
            said = f"{said} {words.say('baseline.kept')}"
        if director.clip is not None:
            said = f"{said} {words.say('summary.demo')}"
        elif director.plan is not None and director.plan.plan_id == TRY_ID:
            said = f"{said} {words.say('summary.try')}"
        if director.saved is None:
            not_saved = words.say("summary.not_saved", why=words.told(director.save_error))
            self.said.setText(words.say("share.not_saved") if director.sharing else not_saved)
            self._show([])
            self.bring.hide()
            self.exercise.setText("")
            self.saved.setText(words.say("summary.not_saved_do") if director.unsaved else "")
            return
        self.said.setText(said)
        saved = words.say("summary.saved", folder=shown_path(director.saved.folder))
        self.saved.setText(words.say("share.saved") if director.sharing else saved)
        self.bring.setVisible(self._is_to_be_brought())
        exercises = director.saved.summary.get("exercises") or []
        if director.plan is not None:
            self.exercise.setText("")
            self._show(session_rows(director.saved.summary), posts_first=True)
        elif exercises:
            name = str(exercises[-1].get("exercise"))
            self.exercise.setText(words.say_or(f"exercise.{name}", "program"))
            self._show(rows_of(exercises[-1]))
        else:
            self.exercise.setText("")
            self._show([])

    def _how_it_ended(self) -> str:
        """Key of what is said first."""
        director = self._director
        if director.reported:
            return "summary.finished_reported"
        found = {} if director.saved is None else director.saved.summary
        if director.ended != "finished":
            if director.saved is not None and not found.get("exercises"):
                before = director.something_done
                return "summary.done_before" if before else "summary.nothing_stopped"
            a_try = director.plan is not None and director.plan.plan_id == TRY_ID
            return "summary.try_stopped" if a_try else "summary.stopped"
        if director.plan is None:
            return "summary.finished"
        nothing = bool(found.get("not_done")) and not found.get("exercises")
        return "summary.nothing_done" if nothing else "summary.finished_plan"

    def _is_to_be_brought(self) -> bool:
        """Whether it has to be said how the therapist gets to see it: no button does it."""
        director = self._director
        if director.clip is not None or director.sharing or self._can_hand_over():
            return False
        return director.plan is not None and director.plan.plan_id != TRY_ID

    def _can_hand_over(self) -> bool:
        """Whether the session's plan says to whom it goes."""
        saved, plan = self._director.saved, self._plan()
        if saved is None or plan is None or plan is not self._director.plan:
            return False
        return plan.hand_over is not None

    def _choose_place(self) -> None:
        """Ask for a folder and save there."""
        folder = QFileDialog.getExistingDirectory(self, words.say("summary.place"))
        if folder:
            self._director.save_again(Path(folder))

    def set_percent(self, percent: int) -> None:
        """Rows that are made later get the same text size."""
        super().set_percent(percent)
        self.percent = percent

    def _show(self, rows: list[Row], *, posts_first: bool = False) -> None:
        """Show other rows; the posts of many stand under each other, beside their names."""
        if rows == self._rows:
            return
        self._rows = rows
        value = 2 if posts_first else 1
        for column, stretch in enumerate((3, 0, 2) if posts_first else (0, 1, 0)):
            self.grid.setColumnStretch(column, stretch)
        while (item := self.grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        at = 0
        for row in rows:
            self.grid.addWidget(self._sized(Words(row.label, soft=True)), at, 0)
            if row.value is None:
                box = NotMeasured()
                self._sized(box.findChild(Words))
                self.grid.addWidget(box, at, value, Qt.AlignmentFlag.AlignLeft)
            else:
                text = f"{row.value}   ({row.asked})" if row.asked else row.value
                self.grid.addWidget(self._sized(Words(text, bold=True)), at, value)
            if row.share is not None:
                # Beside the name of each, or below the number of the only one.
                at += not posts_first
                posts = Posts(*row.share)
                posts.set_percent(self.percent)
                self.grid.addWidget(posts, at, 1, Qt.AlignmentFlag.AlignLeft)
            at += 1

    def _sized(self, label: Words) -> Words:
        label.set_percent(self.percent)
        return label
