"""The measures that are taken once, and what else is seldom needed: first steps, help, the desk."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from tracker.plan.model import Plan
from ui import theme, words
from ui.geometry import ScreenGeometry
from ui.pages.screen import say_screen
from ui.ports import Baseline
from ui.session.first import OVERVIEW
from ui.session.flow import Director
from ui.widgets.basic import Button, Page, Words
from ui.widgets.flow import FlowRow
from ui.widgets.leave import unwell_button
from ui.widgets.privacy import PrivacyRow


def say_lens(director: Director) -> str:
    """What is known of the camera's lens, in words."""
    lens = director.lens.lens
    error = "?" if lens.error_deg is None else _tenths(lens.error_deg)
    deg = _tenths(lens.vertical_fov_deg)
    return words.say(f"lens.known.{lens.source}", deg=deg, error=error)


def _tenths(value: float) -> str:
    """A number with one decimal, and a whole one with none."""
    return words.number(value, 0 if round(value, 1).is_integer() else 1)


class ToolsPage(Page):
    """What is known of camera and screen."""

    def __init__(
        self,
        director: Director,
        geometry: Callable[[], ScreenGeometry],
        review: Callable[[], None],
        edit: Callable[[], None],
        hand_over: Callable[[], None],
        show_help: Callable[[], None],
        show_stored: Callable[[], None],
        plan: Callable[[], Plan | None],
    ) -> None:
        super().__init__()
        self._director, self._geometry, self._plan = director, geometry, plan
        self.camera, self.screen_size = Words(), Words()
        self.body.addWidget(Words(words.say("tools.title"), "title"))
        self.body.addWidget(Words(words.say("tools.why"), "lead"))
        self.body.addWidget(self.camera)
        self.body.addWidget(self.screen_size)
        self.lens = Button(words.say("tools.lens"), "main")
        self.lens.clicked.connect(director.open_lens)
        self.measure_screen = Button(words.say("tools.screen"))
        self.measure_screen.clicked.connect(director.open_screen)
        self.back = Button(words.say("tools.back"))
        self.back.clicked.connect(lambda: director.stop())
        self.first = Button(words.say("first.open"))
        self.first.clicked.connect(lambda: director.open_first(OVERVIEW))
        self.review = Button(words.say("tools.review"))
        self.review.clicked.connect(review)
        self.edit = Button(words.say("tools.edit"))
        self.edit.clicked.connect(edit)
        self.hand_over = Button(words.say("handover.open"))
        self.hand_over.clicked.connect(hand_over)
        self.help = Button(words.say("help.open"))
        self.help.clicked.connect(show_help)
        self._privacy = PrivacyRow(show_stored)
        self.stored = self._privacy.stored
        self.baseline = Button(words.say("tools.baseline"))
        self.baseline.clicked.connect(self._ask_baseline)
        self.ask = Words(words.say("baseline.ask"), "lead", bold=True)
        self.no = Button(words.say("call.ask.no"))
        self.no.clicked.connect(self._leave_baseline)
        self.yes = Button(words.say("baseline.ask.yes"))
        self.yes.clicked.connect(self._begin_baseline)
        # What is seldom needed may lie below; the way back has to be in sight.
        seldom = QWidget()
        row = FlowRow(seldom)
        ways = (self.first, self.help, self.review, self.edit, self.baseline)
        for button in ways:
            row.addWidget(button)
        policy = seldom.sizePolicy()
        policy.setHeightForWidth(True)
        seldom.setSizePolicy(policy)
        self.body.addSpacing(theme.S)
        self.body.addWidget(seldom)
        self.body.addLayout(self._privacy)
        self.body.addWidget(self.ask)
        self.body.addStretch(1)
        usual = (self.lens, self.measure_screen, self.hand_over, self.back)
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.buttons.set_apart(self.unwell)
        for button in (self.no, self.yes, *usual, self.unwell):
            self.buttons.addWidget(button)
        for part in (self.ask, self.no, self.yes):
            part.hide()

    def set_percent(self, percent: int) -> None:
        """Large words need the whole width."""
        super().set_percent(percent)
        self._privacy.set_percent(percent)

    def enter(self) -> None:
        """The page comes to the front; nothing is asked any more."""
        self._show_question(on=False)
        super().enter()

    def _ask_baseline(self) -> None:
        """Who is alone must not put another session in the place of the reference."""
        self._show_question(on=True)
        self.no.setFocus()
        bar = self.scroll.verticalScrollBar()
        QTimer.singleShot(0, self, lambda: bar.setValue(bar.maximum()))

    def _leave_baseline(self) -> None:
        self._show_question(on=False)
        self.baseline.setFocus()

    def _show_question(self, *, on: bool) -> None:
        for part in (self.ask, self.no, self.yes):
            part.setVisible(on)

    def _begin_baseline(self) -> None:
        """Back to the first page, which says what the next session is to be."""
        plan = self._plan()
        if plan is None:
            return
        self._director.baseline = Baseline().of(plan)
        self._director.stop()

    def refresh(self) -> None:
        """Say what is known."""
        self.camera.setText(say_lens(self._director))
        self.screen_size.setText(say_screen(self._geometry()))
        sharing = self._director.sharing
        for button in (self.review, self.edit):
            if button.isHidden() != sharing:
                # Whoever is in the call need not see who else practises.
                button.setVisible(not sharing)
        plan = self._plan()
        # One of nobody's plan would be nobody's: nothing could be compared with it.
        own = plan is not None and plan.person is not None
        offered = own and self._director.clip is None
        if self.baseline.isHidden() == offered:
            self.baseline.setVisible(offered)
        without_camera = self._director.clip is not None
        for button in (self.lens, self.first, self.hand_over):
            if button.isHidden() != without_camera:
                button.setVisible(not without_camera)
        # Who tries the sample is not to delete what is somebody's.
        hidden = sharing or without_camera
        if self.stored.isHidden() != hidden:
            self.stored.setVisible(not hidden)
        unwell = self._director.can_be_unwell
        if self.unwell.isHidden() == unwell:
            self.unwell.setVisible(unwell)
