"""The check by one mark on the wall: two lengths, then the nose to the mark and back."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from ui import words
from ui.session.flow import Director
from ui.settings import Settings
from ui.widgets.basic import Button, Page, Words, relabel
from ui.widgets.choices import Choices, Stepper
from ui.widgets.labelled import Labelled
from ui.widgets.leave import unwell_button

DISTANCES_CM = range(50, 401, 5)
OFFSETS_CM = range(10, 301, 5)
SIDES = ("right", "left")
STAGE_WORDS = {"ahead": "mark.ahead", "mark": "mark.mark", "back": "mark.back_ahead"}


class MarkPage(Page):
    """Where the mark is, what to do, and what came of it.

    No length stands there before somebody has given it. What was given last time is offered
    as one button.
    """

    def __init__(self, director: Director, settings: Settings) -> None:
        super().__init__()
        self._director, self._settings = director, settings
        #: Whether it was begun without both lengths.
        self._in_vain = False
        self.said = Words(role="lead", bold=True)
        self.how = Words(words.say("mark.how"))
        self.distance = Stepper(words.say("mark.distance"), DISTANCES_CM, 150, _cm)
        self.offset = Stepper(words.say("mark.offset"), OFFSETS_CM, 60, _cm)
        for length in (self.distance, self.offset):
            length.clear(length.value, words.say("ask.own_count.unset"))
        self.side = Choices(words.say("mark.side"), across=True)
        self.side.fill([words.say(f"mark.side.{s}") for s in SIDES])
        self.body.addWidget(Words(words.say("mark.title"), "title"))
        self.body.addWidget(self.said)
        self.body.addWidget(self.how)
        lengths = Labelled(self.distance, self.offset)
        self._asked: list[QWidget] = [self.how, lengths, self.side]
        self.body.addWidget(lengths)
        self.body.addWidget(self.side)
        self.body.addStretch(1)
        self.begin = Button(words.say("mark.begin"), "main")
        self.begin.clicked.connect(self._begin)
        self.last = Button("")
        self.last.clicked.connect(self._as_last_time)
        self.last.hide()
        self.back = Button(words.say("mark.back"))
        self.back.clicked.connect(lambda: director.stop())
        unwell = unwell_button()
        unwell.clicked.connect(director.unwell)
        self.buttons.set_apart(unwell)
        for button in (self.begin, self.last, self.back, unwell):
            self.buttons.addWidget(button)

    def _as_last_time(self) -> None:
        """Still as it was: that is an answer, and the check begins."""
        last = self._settings.mark
        if last is None:
            return
        distance, offset, side = last
        self.distance.set_value(distance)
        self.offset.set_value(offset)
        self.side.choose(SIDES.index(side))
        self._begin()

    def _begin(self) -> None:
        distance, offset = self.distance.chosen, self.offset.chosen
        self._in_vain = True
        if distance is not None and offset is not None:
            side = SIDES[max(self.side.row, 0)]
            way = 1.0 if side == "right" else -1.0
            self._director.begin_mark(10.0 * distance, 10.0 * offset * way)
            if self._director.mark is not None:
                self._settings.mark = (distance, offset, side)
        self.refresh()

    def enter(self) -> None:
        """What was begun in vain another time is not told any more."""
        self._in_vain = False
        super().enter()

    def refresh(self) -> None:
        """Show what is asked, or what came of it."""
        was, running = self.begin.isHidden(), self._director.mark is not None
        had = self.focusWidget()
        self._in_vain = self._in_vain and None in (self.distance.chosen, self.offset.chosen)
        self._offer_last(on=not running)
        for widget in (*self._asked, self.begin):
            if widget.isHidden() != running:
                widget.setVisible(not running)
        if running and isinstance(had, QWidget) and not had.isVisibleTo(self):
            # Who looks at the wall has a hand at the keys: none of them may end it.
            self.setFocus()
        elif was and not running:
            self.enter()
        text = self._say()
        self.said.setText(text)
        if self.said.isHidden() == bool(text):
            self.said.setVisible(bool(text))

    def _offer_last(self, *, on: bool) -> None:
        """The lengths of last time, until others are chosen."""
        last = self._settings.mark
        on = on and last is not None and None in (self.distance.chosen, self.offset.chosen)
        if last is not None and on:
            distance, offset, side = last
            where = words.say(f"mark.side.{side}")
            relabel(
                self.last,
                words.say("mark.last", distance=_cm(distance), offset=_cm(offset), side=where),
            )
        if self.last.isHidden() == on:
            self.last.setVisible(on)

    def _say(self) -> str:
        director = self._director
        if any(gone := director.lost_words_now):
            return " ".join(gone)
        if self._in_vain:
            return words.say("mark.unset")
        mark = director.mark
        if mark is not None:
            if mark.reason:
                return words.say("practice.not_measured", reason=words.reason(mark.reason))
            return words.say(STAGE_WORDS[mark.stage])
        if director.mark_why:
            why = words.told(director.mark_why)
            return words.say_or(f"mark.{director.mark_why}", "mark.refused", why=why)
        found = director.mark_found
        if found is None:
            return ""
        return words.say(
            "mark.found",
            measured=words.number(abs(found.measured_deg), 1),
            expected=words.number(abs(found.expected_deg), 1),
        )


def _cm(value: int) -> str:
    return words.say("lens.distance.cm", cm=value)
