"""The first steps that are pages to read and to choose from; camera and sound have their own."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from ui import theme, words
from ui.figures.places import PLACES
from ui.languages import CODES, LANGUAGES, SOURCE, language_of
from ui.motion import is_still
from ui.session.first import OVERVIEW, STEPS
from ui.session.flow import Director
from ui.settings import Settings
from ui.stored import readers_of_folder
from ui.widgets.basic import Button, Page, Rule, Words
from ui.widgets.choices import Choices, Stepper
from ui.widgets.flow import FlowRow
from ui.widgets.moving import Beside, MovementBox

#: Lines of the try where the plan at hand leaves no room for it.
_NO_TRY = "no_try"
#: Who can read what is stored, which is looked at.
_WHO = "stored.who"
#: What is read at each step; a mark in front says that it is a caution.
_LINES: dict[str, tuple[tuple[str, bool], ...]] = {
    OVERVIEW: (("first.overview.how", False),),
    "text": (("first.text.how", False),),
    "about": (
        ("first.about.does", False),
        ("first.about.saves", False),
        ("first.about.not", True),
    ),
    "stop": (("caution.help", True), ("caution.stop", True), ("caution.fall", False)),
    "privacy": (("privacy", False), (_WHO, False), ("first.privacy.mark", False)),
    "sitting": (
        ("first.sitting.chair", False),
        ("first.sitting.screen", False),
        ("first.sitting.light", False),
    ),
    "standing": (
        ("first.standing.only", False),
        ("first.standing.corner", True),
        ("first.standing.laptop", True),
        ("first.standing.helper", True),
    ),
    "try": (("first.try.how", False), ("first.try.care", True)),
    _NO_TRY: (("first.try.none", True),),
}
_COLOURS = ("light", "dark")
_MOTIONS = ("moving", "still")


class Looks(QWidget):
    """How the program looks: text, language, colours, drawings.

    Parameters
    ----------
    settings
        What is chosen now.
    set_text, set_colours, set_motion, set_language
        Take what is chosen.
    """

    def __init__(
        self,
        settings: Settings,
        set_text: Callable[[int], None],
        set_colours: Callable[[str], None],
        set_motion: Callable[[str], None],
        set_language: Callable[[str], None],
    ) -> None:
        super().__init__()
        self._settings = settings
        self._set_text = set_text
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.S)
        self.size = Stepper(
            words.say("first.text.size"),
            theme.TEXT_STEPS,
            settings.text_percent,
            lambda p: words.say("first.text.percent", percent=p),
        )
        self.size.changed.connect(self._sized)
        self._add(words.say("first.text.size"), self.size)
        self.language = self._choices("first.text.language", [name for _, name in LANGUAGES])
        self.language.chosen.connect(lambda row: set_language(CODES[row]))
        self.unchecked = Words(words.say("first.text.unchecked"), "small", soft=True)
        self._column.addWidget(self.unchecked)
        self.colours = self._choices(
            "first.text.colours", [words.say(f"first.text.{c}") for c in _COLOURS]
        )
        self.colours.chosen.connect(lambda row: set_colours(_COLOURS[row]))
        self.motion = self._choices(
            "first.text.motion", [words.say(f"first.text.{m}") for m in _MOTIONS]
        )
        self.motion.chosen.connect(lambda row: set_motion(_MOTIONS[row]))

    def _choices(self, key: str, texts: list[str]) -> Choices:
        made = Choices(words.say(key), across=True)
        made.fill(texts)
        label = self._add(words.say(key), made)
        # One choice is none.
        for part in (label, made):
            part.setVisible(len(texts) > 1)
        return made

    def _add(self, text: str, widget: QWidget) -> Words:
        label = Words(text)
        self._column.addWidget(label)
        self._column.addWidget(widget, 0, Qt.AlignmentFlag.AlignLeft)
        return label

    def _sized(self, percent: int) -> None:
        if percent != self._settings.text_percent:
            self._set_text(percent)

    def refresh(self) -> None:
        """Show what was chosen elsewhere, by key or at the top of the window."""
        settings = self._settings
        if self.size.value != settings.text_percent:
            self.size.set_value(settings.text_percent)
        self.colours.choose(1 if theme.is_dark(settings.colours) else 0)
        self.motion.choose(1 if is_still(settings.motion) else 0)
        language = language_of(settings.language)
        self.language.choose(CODES.index(language))
        # The words in the code are the ones that were looked through.
        self.unchecked.setVisible(language != SOURCE)


def _words(key: str) -> str:
    return words.say(f"{_WHO}.{readers_of_folder()}" if key == _WHO else key)


def progress_words(step: str) -> str:
    """Which of the first steps this is; empty for what is none."""
    if step not in STEPS:
        return ""
    return words.say("first.progress", at=STEPS.index(step) + 1, of=len(STEPS))


def leave_button(director: Director) -> Button:
    """Skip what is left of the first steps."""
    button = Button(words.say("first.leave"), "plain", words.say("first.leave_name"))
    button.clicked.connect(director.leave_first)
    return button


class FirstPage(Page):
    """One step at a time, or all of them to choose from."""

    def __init__(self, director: Director, show_stored: Callable[[], object], looks: Looks) -> None:
        super().__init__()
        self._director = director
        self._percent = 100
        self.shown = ""
        self.looks = looks
        column = QVBoxLayout()
        column.setSpacing(theme.M)
        self.progress = Words(soft=True)
        self.title = Words(role="title")
        self._lines = QVBoxLayout()
        self._lines.setSpacing(theme.M)
        for part in (self.progress, self.title):
            column.addWidget(part)
        column.addLayout(self._lines)
        self.stored = Button(words.say("stored.open"))
        self.stored.clicked.connect(lambda: show_stored())
        column.addWidget(self.stored, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(looks)
        self.steps = [self._step_button(s) for s in STEPS]
        self._all = QWidget()
        row = FlowRow(self._all)
        for button in self.steps:
            row.addWidget(button)
        policy = self._all.sizePolicy()
        policy.setHeightForWidth(True)
        self._all.setSizePolicy(policy)
        column.addWidget(self._all)
        self.place = MovementBox(scale=1.7)
        self._drawn = Beside(column, self.place)
        self.body.addLayout(self._drawn)
        self.body.addStretch(1)
        self._made: list[QWidget] = []
        self._make_buttons()

    def _step_button(self, step: str) -> Button:
        button = Button(words.say(f"first.{step}"))
        button.clicked.connect(lambda: self._director.open_first(step))
        return button

    def _make_buttons(self) -> None:
        director = self._director
        self.begin = Button(words.say("first.try.begin"), "main")
        self.begin.clicked.connect(director.begin_try)
        self.next = Button(words.say("first.next"), "main")
        self.next.clicked.connect(director.first_go_on)
        self.before = Button(words.say("first.before"))
        self.before.clicked.connect(director.first_back)
        self.leave = leave_button(director)
        self.finish = Button(words.say("first.finish"))
        self.finish.clicked.connect(director.leave_first)
        for button in (self.begin, self.next, self.before, self.finish, self.leave):
            self.buttons.addWidget(button)
        self.buttons.set_apart(self.finish, self.leave)

    def set_percent(self, percent: int) -> None:
        """Lines that come later get the same text size."""
        super().set_percent(percent)
        self._percent = percent
        self._drawn.fit(self.body_width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """A drawing lies beside the words where there is room."""
        super().resizeEvent(event)
        self._drawn.fit(self.body_width())

    def enter(self) -> None:
        """The page comes to the front."""
        self.refresh()
        super().enter()
        if self.shown == OVERVIEW:
            # None of its buttons is the main one.
            self.steps[0].setFocus()
        elif self.shown == _NO_TRY:
            self.finish.setFocus()

    def refresh(self) -> None:
        """Show the step."""
        step = self._director.first_step or OVERVIEW
        lines = _NO_TRY if step == "try" and not self._director.can_try else step
        if lines in _LINES and lines != self.shown:
            self._show(step, lines)
        if step == "text":
            self.looks.refresh()

    def _show(self, step: str, lines: str) -> None:
        self.shown = lines
        at = STEPS.index(step) + 1 if step in STEPS else 0
        self.progress.setText(progress_words(step))
        self.progress.setVisible(bool(at))
        self.title.setText(words.say(f"first.{step}"))
        self._show_lines(lines)
        self.looks.setVisible(step == "text")
        self.stored.setVisible(step == "privacy" and not self._director.sharing)
        self._all.setVisible(step == OVERVIEW)
        place = PLACES.get(step)
        if place is not None:
            how = " ".join(_words(key) for key, _ in _LINES[step])
            self.place.show_movement(place, words.say(f"first.{step}"), how)
        self.place.setVisible(place is not None)
        last = step == STEPS[-1]
        for button, on in (
            (self.begin, last and lines != _NO_TRY),
            (self.next, bool(at) and not last),
            (self.before, at > 1),
            (self.leave, bool(at) and not last),
            (self.finish, last or not at),
        ):
            button.setVisible(on)
        self._drawn.fit(self.body_width())
        if self.isVisible():
            self.enter()

    def _show_lines(self, lines: str) -> None:
        for part in self._made:
            part.hide()
            part.deleteLater()
        self._made = []
        for key, cared in _LINES[lines]:
            # Little is said at a time, so it can be large.
            label = Words(_words(key), "lead")
            label.set_percent(self._percent)
            part = Rule(label) if cared else label
            self._lines.addWidget(part)
            self._made.append(part)
