"""Choosing an exercise from the catalogue, with what it is given with and what it isn't."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QListWidget,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from tracker.exercises.catalogue import CATALOGUE, CAUTIONS, NOT_MEASURED, Exercise
from ui import theme, words
from ui.desk import trade
from ui.desk.small import desk_words, small_button
from ui.editor.entry_form import counted, refusals
from ui.editor.frames import AsHighAsWords, Ring
from ui.editor.inputs import LineInput
from ui.editor.telling import phrase
from ui.widgets.basic import Words
from ui.widgets.moving import MovementBox


def about(exercise: Exercise) -> list[str]:
    """What a therapist should know of an exercise before it goes into a plan."""
    say = words.say
    if exercise.dose_seconds is not None:
        dose = say("edit.dose.seconds", seconds=f"{exercise.dose_seconds:g}")
    else:
        dose = say("edit.dose.times", count=str(exercise.dose_repetitions))
    lines = [
        say("edit.dose.usual", dose=dose, source=phrase(exercise.sources["dose"])),
        counted(exercise),
    ]
    if exercise.gaze_minutes:
        lines.append(say("edit.about.minutes"))
    if exercise.asks_note:
        lines.append(say("edit.note.asked", why=phrase(exercise.asks_note)))
    lines.append(
        say(
            "edit.about.cautions",
            what=trade.all_of(CAUTIONS[k] for k in exercise.cautions),
        )
    )
    limits = trade.all_of(NOT_MEASURED[k] for k in exercise.not_measured)
    if limits:
        lines.append(say("edit.about.not_measured", what=limits))
    return [*lines, say("edit.refused"), *refusals(exercise)]


class CataloguePage(QWidget):
    """The list on the left, what is chosen on the right. Enter adds it."""

    added = Signal(str)
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        title = Words(words.say("edit.catalogue"), "lead", bold=True)
        find_words = desk_words(words.say("edit.find"))
        find_words.setWordWrap(False)
        self.sought = LineInput()
        self.sought.setFrame(True)
        self.sought.setAccessibleName(words.say("edit.find"))
        self.names = QListWidget()
        self.names.setAccessibleName(words.say("edit.catalogue"))
        self.names.setWordWrap(True)
        self.names.setSpacing(2)
        self.title = Words("", "body", bold=True)
        self.patient = desk_words()
        self.about = desk_words()
        self.movement = MovementBox()
        self.add = small_button(words.say("edit.add_this"))
        self.back = small_button(words.say("edit.back"))
        search = QHBoxLayout()
        search.addWidget(find_words)
        search.addWidget(Ring(self.sought), 1)
        left = QVBoxLayout()
        left.setSpacing(theme.S)
        left.addWidget(title)
        left.addLayout(search)
        left.addWidget(Ring(self.names), 1)
        inside = AsHighAsWords()
        right = QVBoxLayout(inside)
        right.setSpacing(theme.S)
        for part in (self.title, self.patient, self.about):
            right.addWidget(part)
        right.addWidget(self.movement, 0, Qt.AlignmentFlag.AlignLeft)
        right.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidget(inside)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        foot = QHBoxLayout()
        foot.addWidget(self.add)
        foot.addWidget(self.back)
        foot.addStretch(1)
        second = QVBoxLayout()
        second.addWidget(scroll, 1)
        second.addLayout(foot)
        row = QHBoxLayout(self)
        row.setContentsMargins(theme.M, theme.S, theme.M, theme.S)
        row.setSpacing(theme.L)
        row.addLayout(left, 2)
        row.addLayout(second, 3)
        self._ids: list[str] = []
        self.sought.textChanged.connect(self._fill)
        self.sought.installEventFilter(self)
        self.names.currentRowChanged.connect(self._show)
        self.names.itemActivated.connect(lambda _item: self._add())
        self.add.clicked.connect(self._add)
        self.back.clicked.connect(self.left)
        self._fill("")

    def enter(self) -> None:
        """Look for an exercise from the beginning."""
        self.sought.clear()
        self.sought.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """From the field of the search the arrows go into the list, and Enter adds."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            if event.key() == Qt.Key.Key_Down:
                self.names.setFocus()
                return True
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self._add()
                return True
        return False

    def _fill(self, typed: str) -> None:
        sought = typed.casefold().split()
        self._ids = []
        self.names.clear()
        for exercise in CATALOGUE.values():
            name = words.say(f"exercise.{exercise.id}")
            text = f"{exercise.id} {trade.shown(exercise.therapist)} {name}".casefold()
            if all(s in text for s in sought):
                self._ids.append(exercise.id)
                self.names.addItem(f"{trade.shown(exercise.therapist)}\n{exercise.id}")
        self.names.setCurrentRow(0)
        if not self._ids:
            self._show(-1)

    @property
    def chosen(self) -> str | None:
        """The exercise that is chosen."""
        row = self.names.currentRow()
        return self._ids[row] if 0 <= row < len(self._ids) else None

    def _show(self, _row: int) -> None:
        name = self.chosen
        self.add.setEnabled(name is not None)
        self.movement.setVisible(name is not None)
        if name is None:
            self.title.setText(words.say("edit.find.none"))
            self.patient.setText("")
            self.about.setText("")
            return
        exercise = CATALOGUE[name]
        self.title.setText(trade.shown(exercise.therapist))
        called = words.say(f"exercise.{name}")
        self.patient.setText(words.say("edit.about.patient", name=called))
        self.about.setText("\n".join(about(exercise)))
        self.movement.show_exercise(name, exercise.eyes)

    def _add(self) -> None:
        name = self.chosen
        if name is not None:
            self.added.emit(name)

    def set_percent(self, percent: int) -> None:
        """The list's own words."""
        self.names.setFont(theme.font("desk", percent))
