"""What the patient will see of the plan: today's list, and how each exercise is told and drawn.

The cards are those of the session itself, so that nothing here can differ from it.
"""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from tracker.plan.asked import asked_of, week_of
from tracker.plan.model import Entry, Plan
from tracker.plan.offering import voice_needed
from tracker.plan.rules import is_cleared
from tracker.plan.starter import needs_no_clearance
from tracker.practice.tasks import Prepare, ShowToday
from tracker.practice.today import entries_of_today
from ui import theme, words
from ui.card import Card
from ui.cards import card_of, name_of, today_card
from ui.desk.small import desk_words, small_button
from ui.editor.document import Document
from ui.editor.frames import AsHighAsWords, Ring
from ui.editor.inputs import ChoiceInput, LineInput
from ui.widgets.basic import Rule, Words
from ui.widgets.flow import FlowRow
from ui.widgets.moving import MovementBox

#: A plan has ladders up to a year.
MOST_WEEKS = 52
#: Height of the line of choices on top, as that of its button.
LINE_PX = 44
#: So many letters of a line fit beside those of another one.
LEAST_LETTERS = 38


def waits_for(plan: Plan, entry: Entry, met: bool, week: int = 1) -> tuple[str, ...]:
    """Why an entry would not be offered to a person who feels well today."""
    if entry.unlock_after is not None and not met:
        return ("locked",)
    if not is_cleared(plan) and not needs_no_clearance(asked_of(entry, week)):
        return ("not_cleared",)
    return ()


class CardView(QWidget):
    """A card of the session: title, lines, and what to take care of."""

    def __init__(self) -> None:
        super().__init__()
        self.title = Words(role="lead", bold=True)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.M)
        self._column.addWidget(self.title)
        self._lines: list[QWidget] = []
        self._percent = 100

    def set_percent(self, percent: int) -> None:
        """Lines that come later get the same text size."""
        self._percent = percent

    def show_card(self, card: Card) -> None:
        """Show a card."""
        for line in self._lines:
            line.hide()
            line.deleteLater()
        self._lines = []
        self.title.setText(card.title)
        lines = [(t, False) for t in card.lines if t]
        cares = [(t, True) for t in card.cares]
        while self._column.count() > 1:
            self._column.takeAt(1)
        quiet = [(card.quiet, False)] if card.quiet else []
        for text, cared in [*lines[:2], *cares, *lines[2:], *quiet]:
            label = Words(text, soft=text == card.quiet)
            label.set_percent(self._percent)
            line = Rule(label) if cared else label
            self._column.addWidget(line)
            line.show()
            self._lines.append(line)
        self._column.addStretch(1)


class PreviewPage(QWidget):
    """Stage, week and exercise are chosen on top; below is what the patient reads."""

    left = Signal()

    def __init__(self, document: Document) -> None:
        super().__init__()
        self._document = document
        self._plan: Plan | None = None
        self._percent = 100
        self.back = small_button(words.say("edit.back"))
        self.stage, self.entry = ChoiceInput(), ChoiceInput()
        self.week = LineInput("number")
        self.week.setFrame(True)
        self.today, self.card = CardView(), CardView()
        self.movement = MovementBox()
        head = FlowRow()
        head.addWidget(self.back)
        for key, part in (
            ("edit.preview.stage", self.stage),
            ("edit.preview.week", self.week),
            ("edit.preview.entry", self.entry),
        ):
            label = desk_words(words.say(key))
            label.setWordWrap(False)
            label.setMinimumHeight(LINE_PX)
            part.setAccessibleName(words.say(key))
            # Together, or a row could end with the name of what stands in the next one.
            pair = QWidget()
            beside = QHBoxLayout(pair)
            beside.setContentsMargins(0, 0, 0, 0)
            beside.addWidget(label)
            beside.addWidget(Ring(part))
            head.addWidget(pair)
        inside = AsHighAsWords()
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight, inside)
        self._columns.setSpacing(theme.XL)
        self._columns.addWidget(self.today, 4)
        self._columns.addWidget(self.card, 5)
        self._columns.addWidget(self.movement, 0, Qt.AlignmentFlag.AlignTop)
        self.area = QScrollArea()
        self.area.setWidget(inside)
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.area.setAccessibleName(words.say("edit.preview.name"))
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.M, theme.S, theme.M, theme.S)
        column.setSpacing(theme.M)
        column.addLayout(head)
        column.addWidget(Ring(self.area), 1)
        self.back.clicked.connect(self.left)
        self.stage.edited.connect(self._stage)
        self.entry.edited.connect(self._entry)
        self.week.edited.connect(lambda _value: self._show())

    def set_percent(self, percent: int) -> None:
        """Larger text needs more room."""
        self._percent = percent
        self._fit()

    def show_plan(self, plan: Plan, chosen: str | None) -> None:
        """Show a plan; ``chosen`` is the entry or the stage to begin with."""
        self._plan = plan
        # As the patient reads them.
        stages = [(s.stage_id, words.told(s.name)) for s in plan.stages]
        self.stage.set_choices(stages or [("", words.say("edit.preview.all"))])
        of = {e.entry_id: e.stage or "" for e in plan.entries}
        first = of.get(chosen or "", chosen if chosen in dict(stages) else None)
        self.stage.show_value(first or (stages[0][0] if stages else ""))
        self.week.show_value(min(week_of(plan, self._document.today), MOST_WEEKS))
        self._offer(chosen)

    def enter(self) -> None:
        """The page comes to the front."""
        self.back.setFocus()

    @property
    def _stage_id(self) -> str | None:
        return self.stage._value or None

    def _stage(self, stage_id: str) -> None:
        self.stage.show_value(stage_id)
        self._offer(None)

    def _entry(self, entry_id: str) -> None:
        self.entry.show_value(entry_id)
        self._show()

    def _offer(self, chosen: str | None) -> None:
        plan = self._plan
        assert plan is not None
        entries = entries_of_today(plan, self._stage_id)
        ids = [e.entry_id for e in entries]
        self.entry.set_choices([(i, name_of(i, plan)) for i in ids])
        self.entry.show_value(chosen if chosen in ids else ids[0])
        self._show()

    def _show(self) -> None:
        plan = self._plan
        assert plan is not None
        typed = self.week.value
        week = min(max(typed, 1), MOST_WEEKS) if isinstance(typed, int) else 1
        state = self._document.state
        rows = []
        for k, entry in enumerate(plan.entries):
            if entry in entries_of_today(plan, self._stage_id):
                found = state.condition(("entries", k))
                met = found is not None and found.met
                rows.append((entry.entry_id, waits_for(plan, entry, met, week)))
        today = ShowToday(stage_id=self._stage_id, entries=tuple(rows))
        self.today.show_card(today_card(today, plan, week))
        entry = next(e for e in plan.entries if e.entry_id == self.entry._value)
        asked = asked_of(entry, week)
        prepare = Prepare(asked=asked, voice="sound" if voice_needed(entry) else "")
        self.card.show_card(card_of(prepare, plan, week=week, can_speak=True))
        self.movement.show_exercise(asked.exercise.id, asked.eyes)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Under each other where there is little room."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        self.movement.set_across(False)
        free = self.area.viewport().width() - self.movement.sizeHint().width() - 3 * theme.XL
        font = theme.font("body", self._percent)
        narrow = free < 2 * LEAST_LETTERS * QFontMetrics(font).averageCharWidth()
        way = QBoxLayout.Direction
        self._columns.setDirection(way.TopToBottom if narrow else way.LeftToRight)
        for k, share in enumerate((4, 5)):
            self._columns.setStretch(k, 0 if narrow else share)
        self.movement.set_across(narrow)
