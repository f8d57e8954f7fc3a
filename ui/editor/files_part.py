"""Opening, saving, printing and leaving: what is asked before something could be lost."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from tracker.errors import InputError, RunError
from tracker.outputs import must_harm_nothing
from tracker.plan.model import Plan
from tracker.session.files import write_atomically
from ui import words
from ui.editor.bar import Bar
from ui.editor.document import Document
from ui.widgets.paths import shown_path


class FilesPart:
    """Speaks through the bar.

    Parameters
    ----------
    document, bar
        What is edited, and where is asked.
    commit
        Takes over what is being typed.
    to_fault
        Shows the first fault.
    opened
        Told after another plan was opened.
    """

    def __init__(
        self,
        document: Document,
        bar: Bar,
        *,
        commit: Callable[[], None],
        to_fault: Callable[[], None],
        opened: Callable[[], None],
    ) -> None:
        self._document, self._bar = document, bar
        self._commit, self._to_fault, self._opened = commit, to_fault, opened
        #: Where files are looked for and put first.
        self.folder = Path.cwd()

    # --- leaving what is there ---

    def leave(self, then: Callable[[], None]) -> None:
        """Go on with something else; where steps would be lost, only after asking."""
        self._commit()
        if not self._document.dirty:
            then()
            return
        answers = [
            (words.say("edit.leave.save"), lambda: self.save(then)),
            (words.say("edit.leave.discard"), then),
            (words.say("edit.leave.stay"), lambda: None),
        ]
        self._bar.ask(words.say("edit.leave"), answers)

    # --- opening ---

    def ask_open(self) -> None:
        """Ask for a file and open it; what would be lost is asked last: one may type meanwhile."""
        self._bar.ask_path(
            words.say("edit.open.which"),
            words.say("edit.open"),
            self._document.path or self.folder,
            lambda path: self.leave(lambda: self.open(path)),
            opens=True,
        )

    def open(self, path: Path) -> None:
        """Open a file, or say why not; what is open then stays."""
        try:
            self._document.open(path)
        except InputError as error:
            self._say(words.told(str(error)))
            return
        self.folder = path.parent
        self._opened()

    # --- saving ---

    def _place(self) -> Path:
        plan_id = str(self._document.data.get("plan_id") or "plan")
        return self._document.path or self.folder / f"{plan_id}.json"

    def save(self, then: Callable[[], None] = lambda: None) -> None:
        """Save to the plan's file, or ask for one."""
        self._if_finished(lambda: self._save(then))

    def _save(self, then: Callable[[], None]) -> None:
        if self._document.path is None:
            self._ask_place(then)
        else:
            self._save_to(self._document.path, then)

    def save_as(self) -> None:
        """Ask for a file to save to."""
        self._if_finished(lambda: self._ask_place(lambda: None))

    def _ask_place(self, then: Callable[[], None], why: str = "") -> None:
        which = words.say("edit.save.which")
        self._bar.ask_path(
            f"{why}\n{which}" if why else which,
            words.say("edit.save"),
            self._place(),
            lambda path: self._save_to(_named(path, ".json"), then),
        )

    def _if_finished(self, then: Callable[[], None]) -> None:
        """Go on at once, or where something has to be put right, only if that is wanted."""
        self._commit()
        count = len(self._document.state.draft.faults)
        if not count:
            then()
            return
        answers = [
            (words.say("edit.unfinished.show"), self._to_fault),
            (words.say("edit.unfinished.save"), then),
            (words.say("edit.cancel"), lambda: None),
        ]
        self._bar.ask(words.say("edit.unfinished", count=count), answers)

    def _save_to(self, path: Path, then: Callable[[], None]) -> None:
        try:
            # Nobody is asked whether to replace what may not be replaced.
            self._document.must_harm_nothing(path)
        except InputError as error:
            self._ask_place(then, words.say("edit.not_saved", why=words.told(str(error))))
            return
        if self._document.is_foreign(path):
            answers = [
                (words.say("edit.replace.other"), lambda: self._ask_place(then)),
                (words.say("edit.replace"), lambda: self._write(path, then)),
                (words.say("edit.cancel"), lambda: None),
            ]
            changed = self._document.is_changed_since(path)
            question = "edit.replace.changed" if changed else "edit.replace.ask"
            self._bar.ask(words.say(question, file=shown_path(path)), answers)
            return
        self._write(path, then)

    def _write(self, path: Path, then: Callable[[], None]) -> None:
        try:
            self._document.save(path)
        except (InputError, RunError) as error:
            self._ask_place(then, words.say("edit.not_saved", why=words.told(str(error))))
            return
        self.folder = path.parent
        then()

    # --- the patient's sheet ---

    def ask_sheet(self) -> None:
        """Ask where the patient's sheet goes, and in which form."""
        if self._plan_for_sheet() is None:
            return
        place = self._place().with_suffix("")
        ways = (
            ("edit.sheet.pdf_a4", ".pdf", "a4"),
            ("edit.sheet.pdf_letter", ".pdf", "letter"),
            ("edit.sheet.html", ".html", "a4"),
        )
        answers = [
            (words.say(key), lambda suffix=suffix, paper=paper: self._sheet(suffix, paper))
            for key, suffix, paper in ways
        ]
        answers.append((words.say("edit.cancel"), lambda: None))
        self._bar.ask(
            words.say("edit.sheet.which"), answers, place.with_name(f"{place.name}-sheet")
        )

    def _plan_for_sheet(self) -> Plan | None:
        """The plan as it is now; while it is not finished, that is said instead."""
        self._commit()
        state = self._document.state
        if state.plan is None:
            self._say(words.say("edit.sheet.not_yet", count=len(state.draft.faults)))
            self._to_fault()
        return state.plan

    def _sheet(self, suffix: str, paper: str) -> None:
        typed = self._bar.path.text().strip()
        if not typed:
            return
        path = _named(Path(typed).expanduser(), suffix)
        if path.exists():
            answers = [
                (words.say("edit.replace"), lambda: self._write_sheet(path, paper)),
                (words.say("edit.cancel"), lambda: None),
            ]
            self._bar.ask(words.say("edit.replace.ask", file=shown_path(path)), answers)
            return
        self._write_sheet(path, paper)

    def _write_sheet(self, path: Path, paper: str) -> None:
        from tracker.plan.asked import week_of
        from ui.documents.sheet import sheet_of
        from ui.documents.sheet_html import sheet_html
        from ui.documents.sheet_pdf import sheet_pdf

        # Something may have been typed since the question was asked.
        plan = self._plan_for_sheet()
        if plan is None:
            return
        today = self._document.today
        sheet = sheet_of(plan, today, week_of(plan, today))
        on_paper = path.suffix.lower() == ".pdf"
        try:
            made = sheet_pdf(sheet, paper) if on_paper else sheet_html(sheet, paper)
            must_harm_nothing(path)
            write_atomically(path, made)
        except (InputError, RunError) as error:
            self._say(words.told(str(error)))
            return
        self._say(words.say("edit.sheet.written", file=shown_path(path)))

    def _say(self, text: str) -> None:
        self._bar.ask(text, [(words.say("edit.good"), lambda: None)])


def _named(path: Path, suffix: str) -> Path:
    """A file's name with its ending; one that is there already stays."""
    return path if path.suffix.lower() == suffix else path.with_name(path.name + suffix)
