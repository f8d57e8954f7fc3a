"""Questionnaires of one person: their scores, and a form to enter one or take it back."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from math import isfinite

from PySide6.QtCore import QDate, QLocale, Qt, Signal
from PySide6.QtWidgets import (
    QCompleter,
    QDateEdit,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from tracker.errors import TurnpostError
from tracker.records.notes import NoteBook
from tracker.records.people import NO_NAME
from tracker.records.places import clean
from tracker.records.questionnaires import (
    DECIMALS,
    LARGEST,
    MAX_NAME,
    Score,
    add_score,
    courses_of,
    known_scales,
    last_own_score,
    last_score_without_writer,
    scores_of,
)
from ui import theme, words
from ui.desk import trade
from ui.desk.scores_table import ScoreTable, number_words
from ui.desk.small import desk_words, show_as_day, small_button
from ui.widgets.flow import FlowRow

#: Fields that hold a number.
NUMBERS = ("score", "least", "most")


class ScoresPanel(QWidget):
    """Shows and takes questionnaire scores.

    Parameters
    ----------
    book
        Gives the therapist's notes.
    today
        Gives the day.
    """

    changed = Signal()

    def __init__(self, book: Callable[[], NoteBook], today: Callable[[], date]) -> None:
        super().__init__()
        self._book, self._today = book, today
        #: None until somebody is shown.
        self.person: str | None = None
        self._scales: dict[str, tuple[float, float]] = {}
        #: Ends of a range as they were filled in, until somebody types another.
        self._filled: dict[str, str] = {}
        #: Scores that were entered since the desk was opened, which need no second thought.
        self._entered: set[str] = set()
        self._older: Score | None = None
        self.table = ScoreTable()
        self.name, self.day = QLineEdit(), QDateEdit()
        self.numbers = {key: QLineEdit() for key in NUMBERS}
        self.add = small_button(words.say("scores.add"))
        self.undo = small_button(words.say("scores.undo"))
        self.sure = small_button(words.say("scores.sure"))
        self.said = desk_words(bold=True)
        self._fields: dict[str, QWidget] = {"name": self.name, "day": self.day, **self.numbers}
        self._labels = {key: QLabel(words.say(f"scores.{key}")) for key in self._fields}
        self._completer = QCompleter([], self)
        self._completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self._arrange()
        self.add.clicked.connect(self.add_typed)
        self.undo.clicked.connect(self.undo_last)
        self.sure.clicked.connect(self.undo_older)
        self.name.textChanged.connect(self._take_scale)
        for line in (self.name, *self.numbers.values()):
            line.returnPressed.connect(self.add_typed)
        self.say("")

    def _arrange(self) -> None:
        form = QWidget()
        flow = FlowRow(form)
        flow.setContentsMargins(0, 0, 0, 0)
        for key, field in self._fields.items():
            label = self._labels[key]
            label.setBuddy(field)
            field.setAccessibleName(label.text())
            pair = QWidget()
            inside = QHBoxLayout(pair)
            inside.setContentsMargins(0, 0, 0, 0)
            inside.addWidget(label)
            inside.addWidget(field)
            flow.addWidget(pair)
        for button in (self.add, self.undo, self.sure):
            flow.addWidget(button)
        self.name.setMaxLength(MAX_NAME)
        self.name.setCompleter(self._completer)
        show_as_day(self.day)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.S // 2)
        # The form first: the page is higher than a small screen.
        column.addWidget(form)
        column.addWidget(self.said)
        column.addWidget(self.table, 1)
        column.addWidget(desk_words(words.say("scores.how"), soft=True))

    def set_percent(self, percent: int) -> None:
        """The words of what Qt draws."""
        font = theme.font("desk", percent)
        for part in (*self._labels.values(), *self._fields.values(), self._completer.popup()):
            part.setFont(font)
        letter = self.name.fontMetrics().averageCharWidth()
        self.name.setFixedWidth(26 * letter)
        for line in self.numbers.values():
            line.setFixedWidth(9 * letter)

    # --- whose ---

    def show_person(self, person: str) -> None:
        """Show somebody's scores; the form is emptied for somebody else."""
        if person != self.person:
            self.person = person
            self._empty("name", *NUMBERS)
            today = self._today()
            self.day.setDate(QDate(today.year, today.month, today.day))
            self.say("" if self._named else words.say("scores.no_person"))
        for part in (*self._fields.values(), self.add, self.undo):
            part.setEnabled(self._named)
        self.fill()

    @property
    def _named(self) -> bool:
        return self.person not in (None, NO_NAME)

    def scores(self) -> list[Score]:
        """Those of the person shown, for a document."""
        if not self._named:
            return []
        return scores_of(self._book(), [self.person], also_withdrawn=True)

    def fill(self) -> None:
        """Show what the notes hold now."""
        everybody = scores_of(self._book()) if self._named else []
        mine = [s for s in everybody if s.person == clean(self.person, None)]
        self.table.show_courses(courses_of(mine))
        scales = known_scales(everybody)
        self._scales = {name.casefold(): (least, most) for name, least, most in scales}
        names = [name for name, _, _ in scales]
        model = self._completer.model()
        if names != [model.index(k, 0).data() for k in range(model.rowCount())]:
            self._completer = QCompleter(names, self)
            self._completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            self._completer.popup().setFont(self.name.font())
            self.name.setCompleter(self._completer)

    def say(self, text: str) -> None:
        """Say how it went; empty takes it back, and what was asked with it."""
        self._older = None
        self.sure.hide()
        self.said.setText(text)
        self.said.setVisible(bool(text))

    # --- entering ---

    def add_typed(self) -> None:
        """Keep what was typed; what is wrong with it is said, and nothing is lost."""
        if not self._named:
            return
        self._take_scale()
        fault, field = self._fault()
        if fault:
            self.say(words.say("scores.failed", why=fault))
            field.setFocus()
            return
        score, least, most = (_number(self.numbers[key].text()) for key in NUMBERS)
        assert score is not None and least is not None and most is not None
        try:
            kept = add_score(
                self._book(), self.person, self.name.text(), self._chosen_day, score, (least, most)
            )
        except TurnpostError as error:
            self.say(words.say("scores.failed", why=words.told(str(error))))
            return
        self._empty("name", *NUMBERS)
        self._entered.add(kept.id)
        self._tell("scores.added", kept)
        self.name.setFocus()

    def undo_last(self) -> None:
        """Take back one's own last score of this person; one of an earlier sitting is asked for.

        One press too many must not take a true score of months ago. One of before scores had a
        writer may be of another computer with the same login: it is asked for, too.
        """
        if not self._named:
            return
        last = last_own_score(self._book(), self.person)
        unsigned = last_score_without_writer(self._book(), self.person) if last is None else None
        if last is not None and last.id in self._entered:
            self._take_back(last)
        elif last is not None:
            self._ask("scores.older", last)
        elif unsigned is not None:
            self._ask("scores.unsigned", unsigned)
        else:
            self.say(words.say("scores.no_undo"))

    def _ask(self, key: str, score: Score) -> None:
        """Ask before one is taken back."""
        self.say(self._words_of(key, score))
        self._older = score
        self.sure.show()

    def undo_older(self) -> None:
        """Take back the score that was asked for."""
        if self._older is not None:
            self._take_back(self._older)

    def _take_back(self, score: Score) -> None:
        try:
            self._book().withdraw(score.id)
        except TurnpostError as error:
            self.say(words.say("scores.failed", why=words.told(str(error))))
            return
        self._tell("scores.undone", score)

    def _tell(self, key: str, score: Score) -> None:
        self.say(self._words_of(key, score))
        self.fill()
        self.changed.emit()

    def _words_of(self, key: str, score: Score) -> str:
        values = (score.score, score.least, score.most)
        numbers = dict(zip(NUMBERS, map(number_words, values), strict=True))
        return words.say(key, name=score.name, day=trade.day(score.day), **numbers)

    @property
    def _chosen_day(self) -> date:
        chosen = self.day.date()
        return date(chosen.year(), chosen.month(), chosen.day())

    def _take_scale(self) -> None:
        """The range that this questionnaire had before, where none is typed.

        One that was filled in for another name goes when the name is corrected.
        """
        ends = self._scales.get(self.name.text().strip().casefold())
        known = dict(zip(("least", "most"), map(number_words, ends or ()), strict=False))
        for key in ("least", "most"):
            field = self.numbers[key]
            if not field.text().strip() or field.text() == self._filled.get(key):
                self._filled[key] = known.get(key, "")
                field.setText(self._filled[key])

    def _fault(self) -> tuple[str, QWidget]:
        """What is wrong with what was typed, and where; empty if nothing is."""
        if not self.name.text().strip():
            return words.say("scores.no_name"), self.name
        if self._chosen_day > self._today():
            return words.say("scores.ahead"), self.day
        found = {key: _number(line.text()) for key, line in self.numbers.items()}
        for key, value in found.items():
            if value is None:
                most = words.number(LARGEST)
                text = words.say("scores.no_number", field=self._labels[key].text(), most=most)
                return text, self.numbers[key]
        score, least, most = (v for v in found.values() if v is not None)
        if least >= most:
            return words.say("scores.ends"), self.numbers["least"]
        if not least <= score <= most:
            ends = {"least": number_words(least), "most": number_words(most)}
            return words.say("scores.outside", **ends), self.numbers["score"]
        return "", self.name

    def _empty(self, *keys: str) -> None:
        for key in keys:
            field = self._fields[key]
            if isinstance(field, QLineEdit):
                field.clear()


def _number(text: str) -> float | None:
    """A number as the country writes it or with a point, as it is kept; None where it is none."""
    value, good = QLocale().toDouble(text.strip())
    if not good:
        value, good = QLocale.c().toDouble(text.strip())
    return round(value, DECIMALS) if good and isfinite(value) and abs(value) <= LARGEST else None
