"""Choosing exercise and days; both tables follow."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QDateEdit, QHBoxLayout, QLabel, QWidget

from tracker.records.rows import SessionRow
from ui import theme, words
from ui.desk import trade
from ui.desk.small import show_as_day
from ui.widgets.basic import Button
from ui.widgets.flow import FlowRow


@dataclass(frozen=True)
class Choice:
    """What is shown: an exercise (None for all) and days."""

    exercise: str | None = None
    from_day: date | None = None
    to_day: date | None = None

    def rows(self, rows: Sequence[SessionRow]) -> list[SessionRow]:
        """Sessions that are shown."""
        return [r for r in rows if self._in_days(r) and self._has_exercise(r)]

    def _in_days(self, row: SessionRow) -> bool:
        if row.day is None:
            return self.from_day is None and self.to_day is None
        early = self.from_day is not None and row.day < self.from_day
        late = self.to_day is not None and row.day > self.to_day
        return not (early or late)

    def _has_exercise(self, row: SessionRow) -> bool:
        return self.exercise is None or any(s.exercise == self.exercise for s in row.sets)


class Filters(QWidget):
    """A row of filters."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        row = FlowRow(self)
        row.setContentsMargins(0, 0, 0, 0)
        self.exercise = QComboBox()
        self.exercise.setAccessibleName(words.say("desk.filter.exercise"))
        self.from_day, self.to_day = QDateEdit(), QDateEdit()
        self.reset = Button(words.say("desk.filter.reset"), "small")
        self._labels = [QLabel(words.say(f"desk.filter.{k}")) for k in ("exercise", "from", "to")]
        self._pairs: list[QWidget] = []
        for label, field in zip(
            self._labels, (self.exercise, self.from_day, self.to_day), strict=True
        ):
            label.setBuddy(field)
            pair = QWidget()
            inside = QHBoxLayout(pair)
            inside.setContentsMargins(0, 0, 0, 0)
            inside.addWidget(label)
            inside.addWidget(field)
            row.addWidget(pair)
            self._pairs.append(pair)
        self.only_changed = QCheckBox(words.say("desk.filter.changed"))
        row.addWidget(self.only_changed)
        row.addWidget(self.reset)
        self.exercise.setMinimumContentsLength(14)
        self.exercise.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        for edit, key in ((self.from_day, "from"), (self.to_day, "to")):
            edit.setAccessibleName(words.say(f"desk.filter.{key}"))
            show_as_day(edit)
            edit.dateChanged.connect(self._change)
        self.exercise.currentIndexChanged.connect(self._change)
        self.only_changed.toggled.connect(self._change)
        self.reset.clicked.connect(self.show_all)
        self._filling = False
        self._span: tuple[date, date] | None = None
        self.set_percent(100)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        font = theme.font("desk", percent)
        for widget in (*self._labels, self.exercise, self.from_day, self.to_day, self.only_changed):
            widget.setFont(font)
        self.reset.role = "desk"
        self.reset.set_percent(percent)
        for pair in (*self._pairs, self.only_changed):
            pair.setMinimumHeight(self.reset.sizeHint().height())

    def offer(self, rows: Sequence[SessionRow], *, again: bool = False) -> None:
        """Offer somebody's exercises and days; the exercise chosen stays if it is still there.

        Parameters
        ----------
        rows
            Their sessions.
        again
            Whether they were offered before, and may only have got more sessions: days stay,
            too, as far as there still are such days.
        """
        was = self.choice if again else Choice(self.choice.exercise)
        self._filling = True
        self.exercise.clear()
        self.exercise.addItem(words.say("desk.filter.all"), None)
        for exercise in dict.fromkeys(s.exercise for r in rows for s in r.sets):
            self.exercise.addItem(trade.exercise(exercise), exercise)
        self.exercise.setCurrentIndex(max(self.exercise.findData(was.exercise), 0))
        days = [r.day for r in rows if r.day is not None]
        self._span = (min(days), max(days)) if days else None
        if self._span is not None:
            self._set_days(*_within(was, self._span))
        self._filling = False

    def show_all(self) -> None:
        """Show everything."""
        self._filling = True
        self.only_changed.setChecked(False)
        self.exercise.setCurrentIndex(0)
        if self._span is not None:
            self._set_days(*self._span)
        self._filling = False
        self.changed.emit()

    def _set_days(self, first: date, last: date) -> None:
        for edit, day in ((self.from_day, first), (self.to_day, last)):
            edit.setDate(QDate(day.year, day.month, day.day))

    @property
    def choice(self) -> Choice:
        """What is chosen; days at the ends of all days leave nothing out."""
        exercise = self.exercise.currentData()
        if self._span is None:
            return Choice(exercise)
        # Either way round: while one of them is being changed nothing would be left.
        first, last = sorted(e.date().toPython() for e in (self.from_day, self.to_day))
        low = None if first <= self._span[0] else first
        high = None if last >= self._span[1] else last
        return Choice(exercise, low, high)

    def _change(self) -> None:
        if not self._filling:
            self.changed.emit()


def _within(was: Choice, span: tuple[date, date]) -> tuple[date, date]:
    """Days that were chosen, or the ends of all days where those chosen are no more."""
    first, last = was.from_day or span[0], was.to_day or span[1]
    if first > span[1] or last < span[0]:
        return span
    return max(first, span[0]), min(last, span[1])
