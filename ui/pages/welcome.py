"""The first page: what this is, the cautions, privacy, and one way on."""

from __future__ import annotations

from ui import theme, words
from ui.session_flow import Director
from ui.widgets.basic import Button, Page, Rule, Words
from ui.widgets.recovery_note import RecoveryNote

CAUTIONS = ("caution.therapist", "caution.fall", "caution.stop")


class WelcomePage(Page):
    """Welcome, cautions, start."""

    def __init__(self, director: Director) -> None:
        super().__init__()
        self._director = director
        self._what = Words(role="lead")
        self.body.addWidget(Words(words.say("welcome.title"), "title"))
        self.note = RecoveryNote(director.recovering)
        self.body.addWidget(self.note)
        self.body.addWidget(self._what)
        self.body.addSpacing(theme.S)
        self.body.addWidget(Words(words.say("welcome.safe"), "lead", bold=True))
        for key in CAUTIONS:
            self.body.addWidget(Words(words.say(key)))
        self.body.addWidget(Rule(Words(words.say("caution.help"), bold=True)))
        self.body.addSpacing(theme.S)
        self.body.addWidget(Words(words.say("privacy"), soft=True))
        self.body.addStretch(1)
        self.start = Button(words.say("welcome.start"), "main")
        self.start.clicked.connect(director.start)
        self.buttons.addWidget(self.start)
        self.refresh()

    def refresh(self) -> None:
        """Words for a clip or for a camera, and for sessions that broke off."""
        self.note.refresh()
        demo = self._director.clip is not None
        self._what.setText(words.say("welcome.what_demo" if demo else "welcome.what"))
        text = words.say("welcome.start_demo" if demo else "welcome.start")
        if self.start.text() != text:
            self.start.setText(text)
            self.start.setAccessibleName(text)
