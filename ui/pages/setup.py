"""The set-up: a target that says where to look, and one line that says what to do."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibration.parts import PARTS
from ui import theme, words
from ui.session.flow import Director, Phase
from ui.setup.notes_on_wall import setup_key
from ui.widgets.basic import Button, Words, keep_room, relabel
from ui.widgets.field import TargetField
from ui.widgets.flow import FlowRow
from ui.widgets.leave import unwell_button
from ui.widgets.shrinking import Shrinking

#: What the line may say.
LINES = ("rest", "look", "turn_slowly", "nod_slowly", "fitting", "failed", "ready")


class SetupPage(QWidget):
    """Follows the director's set-up steps."""

    def __init__(self, director: Director, field: TargetField) -> None:
        super().__init__()
        self._director = director
        self.field = field
        self.line = Shrinking(role="lead", bold=True)
        self.part = Words(role="small", soft=True)
        self.repeat = Button(words.say("again.before", part=""))
        self.repeat.clicked.connect(director.repeat_part)
        self.repeat.others = tuple(
            words.say("again.before", part=words.say(f"came.part.{p}")) for p in PARTS
        )
        self.repeat.hide()
        self.stop = Button(words.say("setup.stop"), "plain", words.say("practice.stop_name"))
        self.stop.clicked.connect(lambda: director.stop())
        self.again = Button(words.say("setup.again"), "main")
        self.again.clicked.connect(director.begin_setup)
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.message = Shrinking(role="lead")
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.L, theme.S, theme.L, theme.L)
        column.addWidget(self.line)
        # Lies over the field, so that the target's place never depends on it.
        self.message.setParent(field)
        self.message.hide()
        column.addWidget(field, 1)
        self.part.setWordWrap(False)
        buttons = FlowRow()
        for button in (self.again, self.stop, self.unwell, self.repeat):
            buttons.addWidget(button)
        # At the end, and in a row of its own where the buttons need the room.
        buttons.addWidget(self.part)
        buttons.set_apart(self.part)
        self._row = buttons
        column.addLayout(buttons)

    def set_percent(self, percent: int) -> None:  # noqa: ARG002
        """Keep the line's room, and the progress's."""
        # In the middle of its row, as high as the buttons beside it.
        self.part.setMinimumHeight(self.stop.sizeHint().height())
        self._keep_room()

    def resizeEvent(self, event: object) -> None:  # noqa: ARG002, N802
        """Keep the line's room."""
        self._keep_room()

    def _keep_room(self) -> None:
        width = self.width() - 2 * theme.L
        # The room is that of letters of the size chosen, whatever it says now.
        self.line.set_percent(self.line.percent)
        keep_room(self.line, [words.say(f"setup.{k}") for k in LINES], width)

    def _say_line(self, text: str) -> None:
        """What is asked, in the room that is kept for it: a trouble may need smaller letters."""
        self.line.say(text, self.width() - 2 * theme.L, self.line.minimumHeight())

    def _say_more(self, text: str) -> None:
        """A second sentence in place of the target."""
        width, room_px = self.field.width(), self.field.height()
        self.message.say(text, width, room_px)
        self.message.setGeometry(0, 0, width, min(self.message.heightForWidth(width), room_px))
        self.message.setVisible(bool(text))

    def enter(self) -> None:
        """The page comes to the front: while it goes on, no stray key may end it."""
        (self.again if self._director.phase == Phase.setup_failed else self).setFocus()

    def refresh(self) -> None:
        """Show what is asked now."""
        director = self._director
        failed, repeats = director.phase == Phase.setup_failed, director.repeats
        if repeats:
            part = words.say(f"came.part.{repeats}")
            relabel(self.repeat, words.say("again.before", part=part))
        for button, on in ((self.again, failed), (self.repeat, bool(repeats))):
            if button.isHidden() == on:
                if button.hasFocus():
                    # A hand that shakes presses twice: what has the keys now must do nothing.
                    self.setFocus()
                button.setVisible(on)
        unwell = director.can_be_unwell
        if self.unwell.isHidden() == unwell:
            self.unwell.setVisible(unwell)
        # The offer comes while the eyes are to be on the next target: it must not move it.
        kept = (self.stop, self.repeat, self.part, *([self.unwell] if unwell else []))
        self._row.keep_room_for(*kept)
        if director.phase == Phase.setup:
            # Before the next step begins, a line on the one before has room over the target.
            part, key = director.part_note
            self._say_more(words.say(key, part=words.say(f"came.part.{part}")) if key else "")
            self._show_step()
            return
        self.field.show_targets([])
        self.field.show_hint("")
        self.part.setText("")
        if failed:
            self._say_line(words.say("setup.failed"))
            self._say_more(words.sentence(words.told(director.fit_message)))
            return
        self._say_line(words.say("setup.fitting"))
        self._say_more(words.say("setup.fitting_wait"))

    def _show_step(self) -> None:
        director = self._director
        part, parts = director.setup_part
        # The row must not be laid out anew as the steps come and go on: wide enough for two digits.
        most = max(parts, 88)
        longest = words.say("setup.progress", part=most, parts=most)
        self.part.setMinimumWidth(self.part.fontMetrics().horizontalAdvance(longest) + theme.S)
        self.part.setText(words.say("setup.progress", part=part, parts=parts))
        if director.setup_moved:
            self._say_line(words.say("moved.setup"))
            self._say_more(words.say("moved.setup_again"))
            self.field.show_targets([])
            return
        if director.setup_waits or director.trouble is not None:
            what, to_do = director.lost_words_now
            waits = words.say("lost.setup") if director.setup_waits else ""
            self._say_line(what)
            # What the set-up does itself comes first: a low window may have no room for the rest.
            self._say_more(" ".join(t for t in (waits, to_do) if t))
            self.field.show_targets([])
            return
        asked = director.asked
        coming = asked or director.next_asked
        if coming is None or (asked is None and director.sample is None):
            self._say_line(words.say("setup.ready"))
            self.field.show_targets([])
            return
        self._say_line(words.say(setup_key(coming.step)))
        if not coming.drawn:
            # The eyes are to leave the screen: nothing on it must hold them.
            self.field.show_targets([])
            self.field.show_hint("")
            return
        middle = coming.step.step != "look"
        offset = coming.offset if asked is not None or middle else (0.0, 0.0)
        self.field.show_targets([offset])
        self.field.show_hint(words.say(key) if (key := director.setup_hint) else "")
