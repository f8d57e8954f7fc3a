"""Choosing one of the exercises, how many and how fast."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout

from tracker.exercises.catalogue import CATALOGUE
from ui import theme, words
from ui.session.flow import Director, Dose
from ui.session.setup import OFFERED
from ui.settings import TARGET_STEPS, Settings
from ui.widgets.basic import Button, Page, Words
from ui.widgets.choices import Choices, Stepper
from ui.widgets.labelled import Labelled
from ui.widgets.leave import unwell_button
from ui.widgets.moving import Beside, MovementBox

REPETITIONS = range(1, 61)
TEMPI_BPM = range(20, 181, 5)


class ChoosePage(Page):
    """Exercise, repetitions, tempo, target size."""

    def __init__(
        self, director: Director, settings: Settings, target_changed: Callable[[int], None]
    ) -> None:
        super().__init__()
        self._director, self._settings = director, settings
        self._target_changed = target_changed
        self.said = Words()
        self.trouble = Words(role="lead")
        self.figures = Words(role="small", soft=True)
        self.choice = Choices(words.say("choose.title"))
        self.choice.fill([words.say(f"exercise.{e}") for e in OFFERED])
        self.how = Words(soft=True)
        self.repetitions = Stepper(words.say("choose.repetitions"), REPETITIONS, 20)
        self.tempo = Stepper(words.say("choose.tempo"), TEMPI_BPM, 60)
        self.target = Stepper(
            words.say("choose.target"),
            TARGET_STEPS,
            settings.target_percent,
            lambda p: words.say("choose.target_value", percent=p),
        )
        self._lay_out()
        self.choice.chosen.connect(lambda _row: self._shown())
        self.target.changed.connect(self._target_chosen)
        self._shown()

    def _lay_out(self) -> None:
        column = QVBoxLayout()
        column.setSpacing(theme.M)
        title = Words(words.say("choose.title"), "title")
        for part in (title, self.trouble, self.said, self.figures, self.choice, self.how):
            column.addWidget(part)
        column.addWidget(Labelled(self.repetitions, self.tempo, self.target))
        column.addStretch(1)
        self.movement = MovementBox()
        self._drawn = Beside(column, self.movement)
        self.body.addLayout(self._drawn)
        self.body.addStretch(1)
        self.start = Button(words.say("choose.start"), "main")
        self.start.clicked.connect(self._start)
        again = Button(words.say("setup.again"))
        again.clicked.connect(self._director.begin_setup)
        came = Button(words.say("came.open"))
        came.clicked.connect(self._director.open_told)
        mark = Button(words.say("mark.open"))
        mark.clicked.connect(self._director.open_mark)
        leave = Button(words.say("choose.leave"))
        leave.clicked.connect(lambda: self._director.stop())
        unwell = unwell_button()
        unwell.clicked.connect(self._director.unwell)
        self.buttons.set_apart(unwell)
        for button in (self.start, came, again, mark, leave, unwell):
            self.buttons.addWidget(button)

    def set_percent(self, percent: int) -> None:
        """Larger text leaves less room beside it."""
        super().set_percent(percent)
        self._drawn.fit(self.body_width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The drawing lies beside the words where there is room."""
        super().resizeEvent(event)
        self._drawn.fit(self.body_width())

    @property
    def exercise(self) -> str:
        """The exercise chosen."""
        return OFFERED[max(self.choice.row, 0)]

    def _shown(self) -> None:
        exercise = CATALOGUE[self.exercise]
        self.how.setText(words.say(f"exercise.{exercise.id}.how"))
        self.movement.show_exercise(exercise.id)
        self.repetitions.set_value(exercise.dose_repetitions)
        self.tempo.set_value(round(exercise.tempo_bpm or 60))

    def _target_chosen(self, percent: int) -> None:
        self._settings.target_percent = percent
        self._target_changed(percent)

    def _start(self) -> None:
        self._director.start_exercise(
            Dose(self.exercise, self.repetitions.value, float(self.tempo.value))
        )

    def refresh(self) -> None:
        """Say how the set-up came out, and what is wrong with the camera by now."""
        trouble = " ".join(t for t in self._director.lost_words_now if t)
        self.trouble.setText(trouble)
        if self.trouble.isHidden() == bool(trouble):
            self.trouble.setVisible(bool(trouble))
        told = self._director.told
        lines = [words.say("choose.ok"), *told.lines] if told.good else [*told.lines, told.hint]
        self.said.setText(" ".join(lines))
        self.figures.setText(told.figures)
        if self.figures.isHidden() == bool(told.figures):
            self.figures.setVisible(bool(told.figures))
