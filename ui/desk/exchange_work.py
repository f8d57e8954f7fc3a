"""What the parts of the exchange page share: work beside the window, and what is said of it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QVBoxLayout, QWidget

from tracker.handover.fingerprint import plan_words
from tracker.plan.model import Plan
from ui import theme, words
from ui.desk.passphrase_box import PassphraseBox
from ui.desk.small import desk_words, row_of
from ui.ports import Job, Runner
from ui.widgets.basic import Button, Words
from ui.widgets.paths import breakable


class ExchangeWork:
    """One thing at a time, and one place where it is said how it went.

    Parameters
    ----------
    run
        Starts what may take long.
    changed
        Told when something begins or has ended.
    """

    def __init__(self, run: Runner, changed: Callable[[], object]) -> None:
        self._run, self._changed = run, changed
        self._job: Job | None = None
        self._then: Callable[[object], None] = lambda _: None
        self._else: Callable[[Exception], None] = self.failed
        self.said = desk_words(bold=True)
        self.plan_words = Words(role="lead", bold=True)
        self.box = PassphraseBox()
        self.say("")

    @property
    def busy(self) -> bool:
        """Whether something goes on."""
        return self._job is not None

    def start(
        self,
        work: Callable[[], object],
        then: Callable[[object], None],
        otherwise: Callable[[Exception], None] | None = None,
    ) -> None:
        """Do something beside the window, unless something goes on already."""
        if self.busy:
            return
        self.say(words.say("exchange.working"))
        self._then, self._else = then, otherwise or self.failed
        self._job = self._run(work)
        self._changed()
        self.poll()

    def poll(self) -> None:
        """Take what was done."""
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        # First: what follows may give the keys to one of the buttons.
        self._changed()
        if job.error is None:
            self._then(job.result)
        else:
            self._else(job.error)

    def failed(self, error: Exception) -> None:
        """Say what went wrong."""
        why = words.failed(error)
        self.say(words.say("exchange.failed", why=breakable(why)))

    def say(self, text: str) -> None:
        """Say how it went, in place of what was said before."""
        self.said.setText(text)
        self.said.setVisible(bool(text))
        self.plan_words.hide()

    def tell(self, plan: Plan) -> None:
        """The words of a plan, to be read aloud."""
        numbered = enumerate(plan_words(plan), 1)
        text = "   ".join(words.say("same.word", number=n, word=w) for n, w in numbered)
        self.plan_words.setText(words.say("exchange.words", words=text))
        self.plan_words.show()

    def close_jobs(self, timeout_s: float = 4.0) -> None:
        """The window closes: what is being written is finished."""
        if self._job is not None:
            self._job.wait(timeout_s)


class Block(QWidget):
    """A part of the page: a heading, what it is for, its buttons."""

    def __init__(self, key: str, buttons: list[Button], more: list[QWidget]) -> None:
        super().__init__()
        self._own = buttons
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.S, 0, 0)
        column.setSpacing(theme.S)
        column.addWidget(desk_words(words.say(key), bold=True))
        column.addWidget(desk_words(words.say(f"{key}.how")))
        for part in more:
            column.addWidget(part)
        column.addWidget(row_of(buttons))

    def let(self, on: bool) -> None:
        """Let the buttons be pressed, or not while something goes on."""
        for button in self._own:
            button.setEnabled(on)
