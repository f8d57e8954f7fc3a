"""How the set-up came out, step by step; each step can be done again."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QBoxLayout, QVBoxLayout, QWidget

from calibration.parts import PARTS
from ui import theme, words
from ui.session.flow import Director, Phase
from ui.setup.parts import PartTold, again_told, mark_told, parts_told
from ui.widgets.basic import Button, Page, Words, relabel
from ui.widgets.leave import unwell_button

#: From this text size on a step's button lies under its words.
_LARGE_PERCENT = 140


class StepRow(QWidget):
    """One step: its name, how it came out, and the button that does it again."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.name, self.said = Words(name, bold=True), Words()
        self.again = Button(words.say("again.do"), "plain", words.say("again.name", part=name))
        self._box = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(theme.M)
        texts = QVBoxLayout()
        texts.setSpacing(theme.S)
        texts.addWidget(self.name)
        texts.addWidget(self.said)
        self._box.addLayout(texts, 1)
        self._box.addWidget(self.again, 0, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        policy = self.sizePolicy()
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def set_percent(self, percent: int) -> None:
        """Large words need the whole width."""
        large = percent > _LARGE_PERCENT
        way = QBoxLayout.Direction
        self._box.setDirection(way.TopToBottom if large else way.LeftToRight)

    def show_said(self, said: str) -> None:
        """Say how the step came out."""
        if self.said.text() != said:
            self.said.setText(said)
        if self.said.isHidden() == bool(said):
            self.said.setVisible(bool(said))


class CamePage(Page):
    """Follows the director's report; in a plan it comes only where something lacks."""

    def __init__(self, director: Director) -> None:
        super().__init__()
        self._director = director
        self.title = Words(role="title")
        #: What became of the step that was done again last.
        self.became = Words(role="lead", bold=True)
        self.findings = Words()
        self.hint = Words(soft=True)
        self.figures = Words(role="small", soft=True)
        self.rows = {part: StepRow(words.say(f"came.part.{part}")) for part in PARTS}
        for part, row in self.rows.items():
            row.again.clicked.connect(lambda _=False, p=part: director.do_again(p))
        self.mark = StepRow(words.say("came.part.mark"))
        self.mark.again.clicked.connect(director.open_mark)
        for line in (self.title, self.became, self.findings):
            self.body.addWidget(line)
        for below in (*self.rows.values(), self.mark, self.hint, self.figures):
            self.body.addWidget(below)
        self.body.addStretch(1)
        self.go_on = Button(words.say("ask.go_on"), "main")
        self.go_on.clicked.connect(director.take_setup)
        self.again = Button(words.say("setup.again"))
        self.again.clicked.connect(director.begin_setup)
        self.stop = Button(words.say("setup.stop"), "plain", words.say("practice.stop_name"))
        self.stop.clicked.connect(lambda: director.stop())
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.buttons.set_apart(self.unwell, self.stop)
        for button in (self.go_on, self.again, self.unwell, self.stop):
            self.buttons.addWidget(button)

    def refresh(self) -> None:
        """Say how the set-up and each of its steps came out."""
        director = self._director
        if director.phase != Phase.setup_told:
            return
        told, planned = director.told, director.conductor is not None
        self.title.setText(words.say("setup.told" if not told.good else "came.title"))
        _say(self.became, again_told(director.again_told, director.fit_message))
        found = getattr(director.report, "findings", ())
        lines = [words.say_or(f"finding.{k}", "finding.other", key=k) for k in found]
        _say(self.findings, " ".join(lines))
        self._show_rows(parts_told(director.report, director.wanted_reach))
        self.mark.show_said(mark_told(director.mark_found))
        done = director.mark_found is not None
        relabel(self.mark.again, words.say("came.mark.again" if done else "came.mark.do"))
        how = "again.sits" if director.can_do_again else "again.gone"
        _say(self.hint, " ".join(t for t in (told.hint, words.say(how)) if t))
        _say(self.figures, told.figures)
        for part, on in (
            (self.mark, not planned),
            (self.unwell, director.can_be_unwell),
            (self.stop, planned),
        ):
            if part.isHidden() == on:
                part.setVisible(on)

    def _show_rows(self, told: list[PartTold]) -> None:
        """The steps that were asked for, each with what is said of it."""
        said = {t.part: t.said for t in told}
        for part, row in self.rows.items():
            if row.isHidden() == (part in said):
                row.setVisible(part in said)
            row.show_said(said.get(part, ""))
            if row.again.isHidden() == self._director.can_do_again:
                row.again.setVisible(self._director.can_do_again)


def _say(label: Words, text: str) -> None:
    """Give a line its words, or take it away."""
    if label.text() != text:
        label.setText(text)
    if label.isHidden() == bool(text):
        label.setVisible(bool(text))
