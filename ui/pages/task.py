"""A task of a planned session: a title, a few lines, and the answers as large buttons."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import ceil, isfinite
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout

from tracker.plan.model import Plan
from tracker.practice.tasks import (
    AskAfterSet,
    AskDayOver,
    AskSound,
    AskSupport,
    AskWall,
    AskWeekly,
    Over,
    Prepare,
    Task,
    Wait,
)
from ui import theme, words
from ui.card import Card, Option
from ui.cards import after_set_card, card_of, guided_card, name_of
from ui.session.flow import Director
from ui.session.set_figure import clock_words, set_figure
from ui.widgets.basic import Button, Page, Rule, Words
from ui.widgets.call_panel import CallPanel
from ui.widgets.choices import Stepper
from ui.widgets.far import FarFigure
from ui.widgets.leave import end_button, unwell_button
from ui.widgets.moving import Beside, MovementBox

#: So few paragraphs are all written large: there is room for it.
FEW = 4
#: From note to note on a wall, or from the eyes to it.
LENGTHS_CM = range(10, 401)
#: Beats of the test sound.
TEST_BPM, TEST_S = 60.0, 3.0


class TaskPage(Page):
    """Shows the director's task, one question at a time, and hands over the answer."""

    def __init__(self, director: Director) -> None:
        super().__init__()
        self._director = director
        self._percent = 100
        self._task: Task | None = None
        self._left: list[str] = []
        self._given: dict[str, Any] = {}
        self._notes: list[str] = []
        self._told: tuple[str, ...] = ()
        self.card = Card("")
        self.title = Words(role="title")
        self._column = QVBoxLayout()
        self._column.setSpacing(theme.M)
        self.far = FarFigure()
        self.count = Stepper(words.say("ask.own_count.name"), range(1000), 10)
        self.length = Stepper(words.say("ask.wall.length"), LENGTHS_CM, 150, _cm)
        self.length.hide()
        left = QVBoxLayout()
        left.setSpacing(theme.M)
        left.addWidget(self.title)
        self._beside = QHBoxLayout()
        self._beside.setSpacing(theme.L)
        self._beside.addWidget(self.far, 0, Qt.AlignmentFlag.AlignTop)
        # Takes what is free: a figure alone would else make the whole page as narrow as it is.
        self._beside.addStretch(1)
        left.addLayout(self._beside)
        left.addLayout(self._column)
        self.movement = MovementBox()
        self.movement.hide()
        self._drawn = Beside(left, self.movement)
        self.body.addLayout(self._drawn)
        self.body.addWidget(self.count)
        self.body.addWidget(self.length)
        self.call = CallPanel(_call_actions(director), lambda asks: director.answer_call(asks=asks))
        self.call.hide()
        self.body.addWidget(self.call)
        self.body.addStretch(1)
        self._lines: list[Words | Rule] = []
        self._options: list[Button] = []
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.end = end_button()
        self.end.clicked.connect(lambda: director.end_today())
        self.buttons.set_apart(self.unwell, self.end)

    def set_percent(self, percent: int) -> None:
        """Lines that come later get the same text size."""
        super().set_percent(percent)
        self._percent = percent
        for part in (self.unwell, self.end, self.call):
            part.set_percent(percent)
        self._drawn.fit(self.body_width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The drawing lies beside the words where there is room."""
        super().resizeEvent(event)
        self._drawn.fit(self.body_width())

    def ask(self, task: Task) -> None:
        """Show a task."""
        director = self._director
        self._task, self._given = task, {}
        plan = director.plan
        self._notes = [
            _left_out_words(entry_id, why, plan)
            for entry_id, why in director.take_left_out()
            if plan is not None
        ]
        self._told = director.set_told if isinstance(task, Wait) else ()
        lack = director.take_voice_note()
        if lack:
            self._notes.append(words.say(lack))
        self._left = list(task.questions) if isinstance(task, AskAfterSet) else []
        if isinstance(task, AskSound):
            director.play_test(TEST_BPM, TEST_S)
        self._show()

    def enter(self) -> None:
        """The main answer gets the keys, or the first; where none is asked for, nothing does.

        A key that is pressed while one waits must not end the session, nor a rest; a second
        Enter at the safety questions must not say that nobody fell; nor must a Space that was to
        pause a set say how the target was seen in it.
        """
        self.scroll.verticalScrollBar().setValue(0)
        if self.card.count is not None:
            (self.length if isinstance(self._task, AskWall) else self.count).setFocus()
            return
        main = [b for b in self._options if b.kind == "main"]
        unseen = isfinite(self.card.until_s) or isinstance(self._task, AskWeekly)
        # The key of a pause may be on its way as a set ends.
        unseen = unseen or (isinstance(self._task, AskAfterSet) and not self._given)
        (*main, *([] if unseen else self._options), self)[0].setFocus()

    def refresh(self) -> None:
        """The time that is left, or a set's figure, in whole seconds."""
        director = self._director
        if isinstance(self._task, Wait) and self._told != director.set_told:
            # A repetition was under way as the set ended, and counts now.
            self._told = director.set_told
            self._show()
        until_s = self.card.until_s
        waits = isfinite(until_s)
        entry = director.entry if self.card.runs else None
        if waits:
            left = max(0, ceil(until_s - director.now_s))
            self.far.show_figure(clock_words(left), words.say("far.left"))
        elif entry is not None:
            left_s, ran_s = director.set_left_s, director.set_ran_s
            figure = set_figure(entry, repetitions=None, left_s=left_s, ran_s=ran_s)
            self.far.show_figure(*figure)
            if director.guiding is not None and self._lines:
                self._lines[0].setText(words.say(director.guiding.key))
        shown = waits or self.card.runs
        if self.far.isHidden() == shown:
            self.far.setVisible(shown)
        if shown:
            self._fit_figure()
        self._show_call()

    def _fit_figure(self) -> None:
        """The figure is seen whole below the title, however low the window is."""
        above = self.title.height() + theme.L + theme.M
        room = self.scroll.viewport().height() - above
        self.far.fit(max(room, self.title.fontMetrics().height()), self._percent)

    def _show_call(self) -> None:
        """What a therapist can have changed, between sets in the layout for a call."""
        director = self._director
        coming = director.coming_shown if director.may_change else None
        if coming is not None:
            note = words.say("call.marked") if director.just_marked else director.call_note
            self.call.show_coming(coming, note)
        self.call.setVisible(coming is not None)
        asked = self.call.no.hasFocus() or self.call.yes.hasFocus()
        if self.call.show_question(on=director.call_question):
            # The safe answer gets the keys.
            self.call.no.setFocus()
            self.scroll.ensureWidgetVisible(self.call.yes)
        elif asked and not director.call_question:
            self.enter()

    def show_again(self) -> None:
        """The same task, once more: what is shown around it has changed."""
        if isinstance(self._task, AskSupport):
            self._show()

    def _show(self) -> None:
        task, plan = self._task, self._director.plan
        if task is None or plan is None:
            return
        if isinstance(task, AskAfterSet):
            counted = self._director.counted_with_gap
            self.card = after_set_card(task, self._left[0], plan, counted)
        else:
            first = isinstance(task, Prepare) and task.rest_pose
            director = self._director
            self.card = card_of(
                task,
                plan,
                week=director.week,
                setup_first=first,
                can_sound=director.can_sound,
                can_speak=director.can_speak,
                sounds=director.sounds,
                still=director.still(),
            )
        guiding = self._director.guiding
        if self.card.runs and guiding is not None:
            self.card = guided_card(self.card, guiding.key)
        if isinstance(task, AskSupport) and self._director.sharing:
            cares = (words.say("share.helper"), *self.card.cares)
            self.card = replace(self.card, cares=cares)
        self.title.setText(self.card.title)
        self._show_movement(task)
        self._show_lines()
        self._show_options()
        numbers = self.card.count
        by_tape = numbers is not None and isinstance(task, AskWall)
        self.count.setVisible(numbers is not None and not by_tape)
        self.length.setVisible(by_tape)
        if numbers is not None and by_tape:
            self.length.offer(numbers, self.card.first)
            self.length.clear(self.card.first, words.say("ask.own_count.unset"))
        elif numbers is not None:
            self.count.clear(self.card.first, words.say("ask.own_count.unset"))
        self.refresh()
        self.enter()

    def _show_movement(self, task: Task) -> None:
        """How it is done as a drawing, before a set and not while it goes on."""
        asked = task.asked if isinstance(task, Prepare) else None
        if asked is not None:
            self.movement.show_exercise(asked.exercise.id, asked.eyes)
        self.movement.setVisible(asked is not None)

    def _show_lines(self) -> None:
        for line in self._lines:
            # One that is only hidden would still have a say in how wide the others are.
            for row in (self._beside, self._column):
                row.removeWidget(line)
            line.hide()
            line.deleteLater()
        self._lines = []
        card = self.card
        quiet = [card.quiet] if card.quiet else []
        lines = [(t, False) for t in card.lines if t]
        cares = [(t, True) for t in card.cares]
        # The task and its dose, then what to take care of: that must not be far down.
        texts = [
            *lines[:2],
            *cares,
            *lines[2:],
            *((t, False) for t in [*self._told, *self._notes, *quiet]),
        ]
        for k, (text, cared) in enumerate(texts):
            beside = k == 0 and (card.runs or isfinite(card.until_s))
            large = k == 0 or len(texts) <= FEW
            role = "title" if beside and card.runs else "lead" if large else "body"
            label = Words(text, role, soft=bool(quiet) and k == len(texts) - 1)
            label.set_percent(self._percent)
            part = Rule(label) if cared else label
            if beside:
                self._beside.insertWidget(1, part, 1000)
            else:
                self._column.addWidget(part)
            self._lines.append(part)

    def _show_options(self) -> None:
        for button in self._options:
            self.buttons.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._options = []
        for own in (self.unwell, self.end):
            self.buttons.removeWidget(own)
        for option in self.card.options:
            button = Button(option.text, "main" if option.main else "plain")
            button.set_percent(self._percent)
            button.clicked.connect(lambda _=False, o=option: self._take(o))
            self.buttons.addWidget(button)
            # Else it would be shown only later, and couldn't take the keys now.
            button.show()
            self._options.append(button)
        for own in (self.unwell, self.end):
            self.buttons.addWidget(own)
            own.setVisible(self.card.leave)
        if isinstance(self._task, Over | AskDayOver):
            self.unwell.setVisible(self._director.can_be_unwell)

    def _take(self, option: Option) -> None:
        director = self._director
        if director.takes_no_answer:
            return
        if option.act == "sound":
            director.play_test(TEST_BPM, TEST_S)
        elif option.act == "voice":
            director.say_test()
        elif option.act == "in_place":
            director.in_place()
        elif option.act == "done":
            director.set_done()
        elif option.act in ("again", "next"):
            director.guide(again=option.act == "again")
        elif option.act == "measure" and isinstance(self._task, AskWall):
            self._task = replace(self._task, last_mm=None)
            self._show()
        elif option.act == "length":
            # Nothing that nobody has measured: without it the eyes are not judged.
            cm = self.length.chosen
            director.answer(None if cm is None else 10.0 * cm)
        elif isinstance(self._task, AskAfterSet):
            self._answer_part(self.count.chosen if option.act == "count" else option.value)
        else:
            director.answer(option.value)

    def _answer_part(self, value: Any) -> None:
        """One of the questions after a set; the answers go together."""
        self._given[self._left.pop(0)] = value
        if self._left:
            self._show()
        else:
            self._director.answer(dict(self._given))


def _left_out_words(entry_id: str, reason: str, plan: Plan) -> str:
    """What is said of an entry that was passed over."""
    why = words.say_or(f"refused.{reason}", "summary.left_out")
    return words.say("ask.left_out", name=name_of(entry_id, plan), why=why)


def _cm(value: int) -> str:
    return words.say("lens.distance.cm", cm=value)


def _call_actions(director: Director) -> dict[str, Callable[[], None]]:
    """What the buttons of a call do; the keys of the table do the same."""
    return {
        "slower": lambda: director.change_coming("tempo", -1),
        "faster": lambda: director.change_coming("tempo", 1),
        "smaller": lambda: director.change_coming("amplitude", -1),
        "larger": lambda: director.change_coming("amplitude", 1),
        "other_next": lambda: director.change_coming("next"),
        "take_back": lambda: director.change_coming("undo"),
        "mark": director.mark_moment,
    }
