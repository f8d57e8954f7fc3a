"""The first page: what this is, the cautions, privacy, and the ways on."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.plan.model import Plan
from tracker.plan.starter import SEATED_ID, seated_starter
from ui import theme, words
from ui.session.flow import Director
from ui.widgets.basic import Button, Page, Rule, Words, relabel
from ui.widgets.flow import FlowRow
from ui.widgets.leave import unwell_button
from ui.widgets.privacy import PrivacyRow
from ui.widgets.recovery_note import RecoveryNote

CAUTIONS = ("caution.therapist", "caution.fall", "caution.stop")


class WelcomePage(Page):
    """Welcome, cautions, start; with a plan, today's practice comes first."""

    def __init__(
        self,
        director: Director,
        open_plan: Callable[[Path], object],
        starter_chosen: Callable[[], object],
        show_stored: Callable[[], object],
    ) -> None:
        super().__init__()
        self._director = director
        self._open_plan = open_plan
        self._starter_chosen = starter_chosen
        self.plan: Plan | None = None
        self._noted_at = ""
        #: What is wrong with a plan's file.
        self._why = ""
        self._lay_out(show_stored)
        self._make_buttons()
        self.refresh()

    def _lay_out(self, show_stored: Callable[[], object]) -> None:
        """What is read before practising, from top to bottom."""
        self._what = Words(role="lead")
        self.body.addWidget(Words(words.say("welcome.title"), "title"))
        self.note = RecoveryNote(self._director.recovering)
        self.body.addWidget(self.note)
        self.body.addWidget(self._what)
        self.planned = Words(role="lead", bold=True)
        self.planned.hide()
        self.body.addWidget(self.planned)
        self.together = Rule(Words(words.say("baseline.next"), "lead", bold=True))
        self.body.addWidget(self.together)
        self.body.addSpacing(theme.S)
        self.body.addWidget(Words(words.say("welcome.safe"), "lead", bold=True))
        for key in CAUTIONS:
            self.body.addWidget(Words(words.say(key)))
        self.body.addWidget(Rule(Words(words.say("caution.help"), bold=True)))
        self.body.addSpacing(theme.S)
        self._privacy = PrivacyRow(show_stored)
        self._private, self.stored = self._privacy.said, self._privacy.stored
        self.body.addLayout(self._privacy)
        self.body.addSpacing(theme.S)
        # Not among the ways on: what is read before practising must have its room.
        self.report = Button(words.say("plan.report"))
        self.report.clicked.connect(self._report)
        self.noted = Words(bold=True)
        self.noted.hide()
        self.body.addWidget(self.noted)
        # Who has a plan seldom does anything else.
        self.try_one = Button(words.say("plan.try"))
        self.try_one.clicked.connect(self._director.start)
        self.open_other = Button(words.say("plan.open"))
        self.open_other.clicked.connect(self._choose_plan)
        seldom = QWidget()
        row = FlowRow(seldom)
        for button in (self.report, self.try_one, self.open_other):
            row.addWidget(button)
        policy = seldom.sizePolicy()
        policy.setHeightForWidth(True)
        seldom.setSizePolicy(policy)
        self.body.addWidget(seldom)
        self.body.addStretch(1)

    def _make_buttons(self) -> None:
        """The ways on."""
        self.practise = Button(words.say("plan.start"), "main")
        self.practise.clicked.connect(self._practise)
        self.start = Button(words.say("welcome.start"), "main")
        self.start.clicked.connect(self._director.start)
        self.open = Button(words.say("plan.open"))
        self.open.clicked.connect(self._choose_plan)
        self.starter = Button(words.say("plan.starter"))
        self.starter.clicked.connect(self._offer_starter)
        self.tools = Button(words.say("tools.open"))
        self.tools.clicked.connect(self._director.open_tools)
        self.not_baseline = Button(words.say("baseline.not"))
        self.not_baseline.clicked.connect(self._leave_baseline)
        self.unwell = unwell_button()
        self.unwell.clicked.connect(self._director.unwell)
        self.buttons.set_apart(self.unwell)
        for button in (
            self.practise,
            self.not_baseline,
            self.start,
            self.open,
            self.starter,
            self.tools,
            self.unwell,
        ):
            self.buttons.addWidget(button)

    def set_percent(self, percent: int) -> None:
        """Large words need the whole width."""
        super().set_percent(percent)
        self._privacy.set_percent(percent)

    def offer(self, plan: Plan) -> None:
        """A plan can be practised."""
        self.plan, self._why = plan, ""
        baseline = self._director.baseline
        if baseline is not None and not baseline.is_of(plan):
            self._director.baseline = None
        starter = self._is_starter
        key = "plan.starter_named" if starter else "plan.named"
        self._say(words.say(key, entries=len(plan.entries)))
        self.refresh()
        self.enter()

    @property
    def _is_starter(self) -> bool:
        return self.plan is not None and self.plan.plan_id == SEATED_ID

    def _offer_starter(self) -> None:
        self.offer_starter()
        self._starter_chosen()

    def offer_starter(self) -> None:
        """Offer the starter on a chair that comes with the program."""
        self.offer(seated_starter())

    def refuse(self, why: str) -> None:
        """A plan's file can't be used."""
        self.plan, self._director.baseline = None, None
        self._why = why
        self.refresh()

    def put_away(self, why: str) -> None:
        """The plan at hand is not to be used."""
        self.refuse("")
        self._say(why)

    def _say(self, text: str) -> None:
        self.planned.setText(text)
        self.planned.setVisible(bool(text))

    def _practise(self) -> None:
        if self.plan is not None:
            self._director.start_plan(self.plan)

    def _report(self) -> None:
        if self.plan is not None:
            self._director.report_practice(self.plan)

    def _leave_baseline(self) -> None:
        self._director.baseline = None
        self.refresh()
        self.practise.setFocus()

    def _choose_plan(self) -> None:
        """Ask for a plan's file."""
        name, _ = QFileDialog.getOpenFileName(
            self, words.say("plan.open"), "", words.say("plan.files")
        )
        if name:
            self._open_plan(Path(name))

    def _show_noted(self) -> None:
        """Ask before practice is noted a second time on one day."""
        at = self._director.noted_today
        relabel(self.report, words.say("plan.report_again" if at else "plan.report"))
        self.report.setEnabled(not self._director.reading_report)
        if at == self._noted_at:
            return
        self._noted_at = at
        self.noted.setText(words.say("plan.noted_today", time=at) if at else "")
        self.noted.setVisible(bool(at))
        if at:
            # The same key pressed twice must not answer it.
            self.practise.setFocus()

    def refresh(self) -> None:
        """Words for a clip, for a camera or for a plan, and for sessions that broke off."""
        self.note.named = not self._director.sharing
        self.note.refresh()
        if self._why:
            bad = words.say("plan.bad", why=words.told(self._why))
            self._say(words.say("share.plan_bad") if self._director.sharing else bad)
        demo = self._director.clip is not None
        planned = self.plan is not None and not demo
        self._what.setText(words.say("welcome.what_demo" if demo else "welcome.what"))
        # Who has a plan knows what this is; what matters then has to be in sight.
        self._what.setVisible(not planned)
        relabel(self.start, words.say("welcome.start_demo" if demo else "welcome.start"))
        self._show_noted()
        together = planned and self._director.baseline is not None
        start = "plan.starter_begin" if self._is_starter else "plan.start"
        relabel(self.practise, words.say("baseline.start" if together else start))
        shown = (
            (self.together, together),
            (self.not_baseline, together),
            (self.practise, planned),
            (self.report, planned and not together),
            # With a plan the cautions need the room: both stand on the page of tools in any case.
            (self._private, not planned),
            # Who tries the sample is not to delete what is somebody's.
            (self.stored, not planned and not demo and not self._director.sharing),
            # What else there is only stands in the way of it.
            (self.start, not planned),
            (self.try_one, planned and not together),
            # Names of files are nobody's business in a call.
            (self.open, not demo and not planned and not self._director.sharing),
            (self.open_other, planned and not together and not self._director.sharing),
            # Who has a plan of their own needs no other.
            (self.starter, not demo and not planned),
            (self.unwell, self._director.can_be_unwell),
        )
        for button, on in shown:
            if button.isHidden() == on:
                button.setVisible(on)
