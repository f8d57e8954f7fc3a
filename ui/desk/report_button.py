"""A button that makes a document of the sessions shown, of the kind and where one says."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.errors import InputError, TurnpostError
from tracker.records.figures import SessionFigures
from tracker.session.files import must_be_writable, write_atomically
from tracker.session.saving import JOURNAL_NAME
from ui import background, words
from ui.commands.report import maker, read_records
from ui.desk.small import desk_words, small_button
from ui.ports import Job, Runner
from ui.widgets.paths import breakable, shown_path

#: Kinds of documents, in the order in which they are offered, and how their files end.
KINDS = {
    "pdf": ".pdf",
    "html": ".html",
    "csv": ".csv",
    "repetitions_csv": ".csv",
    "fhir": ".json",
}
#: Those where a page of letter size is the usual one.
_LETTER = (QLocale.MeasurementSystem.ImperialUSSystem,)


class Reporting:
    """The button, and a line that says how it went.

    Parameters
    ----------
    parent
        Whose sessions they are.
    sessions
        Gives the files of the sessions.
    run
        Starts what may take long.
    """

    def __init__(
        self,
        parent: QWidget,
        sessions: Callable[[], Sequence[Path]],
        run: Runner = background.run,
    ) -> None:
        self._parent, self._sessions, self._run = parent, sessions, run
        self._job: Job | None = None
        self._kind, self._to, self._left_out = "", Path(), 0
        self.button = small_button(words.say("report.make"))
        self.button.clicked.connect(self._ask)
        self.said = desk_words(bold=True)
        self.say("")

    def _ask(self) -> None:
        """Ask which kind, and where."""
        kinds = {words.say(f"report.{k}", ending=f"*{end}"): k for k, end in KINDS.items()}
        name, chosen = QFileDialog.getSaveFileName(
            self._parent, words.say("report.make"), "", ";;".join(kinds)
        )
        if name:
            self.make(kinds.get(chosen, ""), Path(name))

    def make(self, kind: str, to: Path) -> None:
        """Make a document; a known ending of the file overrules the kind."""
        if self._job is not None:
            return
        by_ending = next((k for k, end in KINDS.items() if to.suffix.lower() == end), "")
        if not kind or (by_ending and KINDS[kind] != KINDS[by_ending]):
            kind = by_ending or "pdf"
        if not to.suffix:
            to = to.with_suffix(KINDS[kind])
        paths = list(self._sessions())
        whole = [p for p in paths if p.name != JOURNAL_NAME]
        self._kind, self._to, self._left_out = kind, to, len(paths) - len(whole)
        try:
            if not whole:
                raise InputError(words.say("report.nothing"))
            must_be_writable(to)
            if to.resolve() in {p.resolve() for p in whole}:
                raise InputError(words.say("report.over"))
        except TurnpostError as error:
            self._failed(error)
            return
        self.say(words.say("report.working"))
        self.button.setEnabled(False)
        self._job = self._run(lambda: read_records(whole))

    def poll(self) -> None:
        """Write what was read."""
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        self.button.setEnabled(True)
        try:
            if job.error is not None:
                raise job.error
            self._write(job.result)
        except TurnpostError as error:
            self._failed(error)

    def _write(self, records: Sequence[SessionFigures]) -> None:
        letter = QLocale.system().measurementSystem() in _LETTER
        write_atomically(self._to, maker(self._kind, "letter" if letter else "a4")(records))
        text = words.say("report.done", count=len(records), path=shown_path(self._to))
        if self._left_out:
            text += " " + words.say("report.left_out", count=self._left_out)
        self.say(text)

    def _failed(self, error: Exception) -> None:
        self.say(words.say("report.failed", why=breakable(str(error))))

    def say(self, text: str) -> None:
        """Say how it went; empty takes it back."""
        self.said.setText(text)
        self.said.setVisible(bool(text))

    def close(self, timeout_s: float = 3.0) -> None:
        """Wait for what is being read."""
        if self._job is not None:
            self._job.wait(timeout_s)
