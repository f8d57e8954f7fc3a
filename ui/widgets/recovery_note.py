"""The note about sessions that broke off: what is kept, and a button to save it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QDateTime, QLocale, Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from tracker.session.recovery import Interrupted
from ui import theme, words
from ui.recovering import Recovering, Stage
from ui.widgets.basic import Button, Rule, Words
from ui.widgets.flow import FlowRow
from ui.widgets.paths import shown_path


class RecoveryNote(QWidget):
    """Hidden while there is nothing to say."""

    def __init__(self, recovering: Recovering) -> None:
        super().__init__()
        self._recovering = recovering
        #: Whether folders are named.
        self.named = True
        self.text = Words(bold=True)
        self.save = Button(words.say("recover.save"))
        self.save.clicked.connect(recovering.save)
        self.later = Button(words.say("recover.later"))
        self.later.clicked.connect(recovering.later)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, theme.S)
        column.setSpacing(theme.S)
        column.addWidget(Rule(self.text))
        row = FlowRow()
        row.addWidget(self.save)
        row.addWidget(self.later)
        column.addLayout(row)
        self.hide()

    def refresh(self) -> None:
        """Show how it stands."""
        stage = self._recovering.stage
        text = note_text(self._recovering, named=self.named)
        if self.text.text() != text:
            self.text.setText(text)
        for button, on in (
            (self.save, stage == Stage.offered),
            (self.later, stage not in (Stage.nothing, Stage.saving)),
        ):
            if button.isHidden() == on:
                button.setVisible(on)
        word = words.say("recover.later" if stage == Stage.offered else "recover.read")
        if self.later.text() != word:
            self.later.setText(word)
            self.later.setAccessibleName(word)
        if self.isHidden() == bool(text):
            self.setVisible(bool(text))


def note_text(recovering: Recovering, *, named: bool = True) -> str:
    """The words for how it stands, empty for none; ``named`` with the names of folders."""
    text = _stage_text(recovering, named=named)
    if recovering.newer and recovering.stage in (Stage.offered, Stage.newer):
        text = f"{text} {words.say('recover.newer')}".strip()
    return text


def _stage_text(recovering: Recovering, *, named: bool) -> str:
    folders = recovering.folders
    match recovering.stage:
        case Stage.offered:
            return _offer(recovering.found)
        case Stage.saving:
            return words.say("recover.saving")
        case Stage.saved if not named:
            return words.say("share.saved")
        case Stage.failed if not named:
            return words.say("share.not_saved")
        case Stage.saved:
            place = folders[0] if len(folders) == 1 else folders[0].parent
            return words.say("recover.saved", folder=shown_path(place))
        case Stage.failed:
            return words.say("recover.failed", why=words.told(recovering.why))
        case _:
            return ""


def _offer(found: Sequence[Interrupted]) -> str:
    """What broke off; what may be nobody's is told apart, and so are its repetitions."""
    own = [s for s in found if not s.damaged]
    unsure = [s for s in found if s.unsure]
    damaged = [s for s in found if s.damaged and not s.unsure]
    said = []
    if len(own) == 1:
        count = words.number(own[0].repetitions)
        said.append(words.say("recover.one", when=_when(own[0]), count=count))
    elif own:
        said.append(words.say("recover.many", n=len(own), count=sum(s.repetitions for s in own)))
    if len(damaged) == 1:
        count = words.number(damaged[0].repetitions)
        said.append(words.say("recover.damaged.one", when=_when(damaged[0]), count=count))
    elif damaged:
        count_damaged = sum(s.repetitions for s in damaged)
        said.append(words.say("recover.damaged", n=len(damaged), count=count_damaged))
    if unsure:
        count_unsure = sum(s.repetitions for s in unsure)
        said.append(words.say("recover.unsure", n=len(unsure), count=count_unsure))
    return " ".join(said)


def _when(session: Interrupted) -> str:
    """Date and time as the user's country writes them; the folder's name where not known."""
    moment = QDateTime.fromString(session.started_at, Qt.DateFormat.ISODate)
    if not moment.isValid():
        return session.folder.name
    return QLocale().toString(moment.toLocalTime(), QLocale.FormatType.ShortFormat)
