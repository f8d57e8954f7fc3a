"""A button that makes a document of the sessions shown, of the kind and where one says."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.errors import InputError, TurnpostError
from tracker.outputs import HeldDataError, must_harm_nothing
from tracker.plan.model import Plan
from tracker.records.marks import with_marks
from tracker.records.notes import Note
from tracker.records.over_time import OverTime
from tracker.records.plans import with_plans
from tracker.records.questionnaires import Score
from tracker.session.files import write_atomically
from tracker.session.saving import JOURNAL_NAME
from ui import background, words
from ui.commands.report import maker, read_records
from ui.desk.small import desk_words, small_button
from ui.ports import Job, Runner
from ui.widgets.paths import breakable, shown_path

#: Kinds of documents, in the order in which they are offered, and how their files end.
KINDS = {
    "pdf": ".pdf",
    "pdf_details": ".pdf",
    "html": ".html",
    "csv": ".csv",
    "repetitions_csv": ".csv",
    "scores_csv": ".csv",
    "trends_csv": ".csv",
    "fhir": ".json",
}
#: Those where a page of letter size is the usual one.
_LETTER = (QLocale.MeasurementSystem.ImperialUSSystem,)
#: Gives the files of plans that are at hand, with their places.
Plans = Callable[[], Sequence[tuple[str, Plan]]]


class Reporting:
    """The button, and a line that says how it went.

    Parameters
    ----------
    parent
        Whose sessions they are.
    sessions
        Gives the files of the sessions.
    scores
        Gives the questionnaire scores of their person.
    over_time
        Gives the one of their person over these sessions; none for one session.
    notes
        Gives the notes that hold, for the marks among them.
    plans
        Gives the files of plans that are at hand, with their places.
    run
        Starts what may take long.
    """

    def __init__(
        self,
        parent: QWidget,
        sessions: Callable[[], Sequence[Path]],
        scores: Callable[[], Sequence[Score]] = tuple,
        over_time: Callable[[], Sequence[OverTime]] = tuple,
        notes: Callable[[], Sequence[Note]] = tuple,
        plans: Plans = tuple,
        run: Runner = background.run,
    ) -> None:
        self._parent, self._sessions, self._scores, self._run = parent, sessions, scores, run
        self._notes, self._plans = notes, plans
        self.over_time = over_time
        #: Whether the tables are for spreadsheets with a decimal comma, as this system's are.
        self.comma = QLocale.system().decimalPoint() == ","
        self._job: Job | None = None
        self._to, self._left_out = Path(), 0
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
        chosen = to
        if not to.suffix:
            to = to.with_suffix(KINDS[kind])
        paths = list(self._sessions())
        whole = [p for p in paths if p.name != JOURNAL_NAME]
        self._to, self._left_out = to, len(paths) - len(whole)
        try:
            if not whole:
                raise InputError(words.say("report.nothing"))
            try:
                must_harm_nothing(to)
            except HeldDataError as error:
                raise InputError(words.say("report.over", path=shown_path(to))) from error
            if to != chosen and to.exists():
                # The dialog has asked about the name without its ending.
                raise InputError(words.say("report.there", path=shown_path(to)))
        except TurnpostError as error:
            self._failed(error)
            return
        self.say(words.say("report.working"))
        self.button.setEnabled(False)
        letter = QLocale.system().measurementSystem() in _LETTER
        make = maker(kind, "letter" if letter else "a4", comma=self.comma)
        scores, over_time = list(self._scores()), list(self.over_time())
        notes, plans = list(self._notes()), list(self._plans())

        def work() -> int:
            records = with_plans(with_marks(read_records(whole), notes), plans)
            write_atomically(to, make(records, scores, over_time))
            return len(records)

        self._job = self._run(work)

    def poll(self) -> None:
        """Say how it went."""
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        self.button.setEnabled(True)
        if job.error is not None:
            self._failed(job.error)
            return
        text = words.say("report.done", count=job.result, path=shown_path(self._to))
        if self._left_out:
            text += " " + words.say("report.left_out", count=self._left_out)
        self.say(text)

    def _failed(self, error: Exception) -> None:
        why = words.failed(error)
        self.say(words.say("report.failed", why=breakable(why)))

    def say(self, text: str) -> None:
        """Say how it went; empty takes it back."""
        self.said.setText(text)
        self.said.setVisible(bool(text))

    def close(self, timeout_s: float = 3.0) -> None:
        """Wait for what is being read."""
        if self._job is not None:
            self._job.wait(timeout_s)
