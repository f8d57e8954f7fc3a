"""What is stored on this computer: to be seen, copied and deleted."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QStandardPaths, Signal
from PySide6.QtWidgets import QFileDialog, QVBoxLayout, QWidget

from tracker.stored.copy import NEVER, Copied, save_copy
from tracker.stored.delete import Deleted
from tracker.stored.look import SESSIONS, Item, Kind, Stored
from ui import stored, theme, words
from ui.ports import Job, Runner
from ui.settings import Settings
from ui.stored_telling import (
    left_words,
    others_words,
    rows_of,
    session_words,
    size_words,
)
from ui.widgets.basic import Button, Page, Rule, Words
from ui.widgets.choices import Choices
from ui.widgets.flow import FlowRow
from ui.widgets.paths import breakable, shown_path

#: Sessions that are offered at a time.
AT_A_TIME = 6
COPY_NAME = "turnpost-copy.zip"


class Step(StrEnum):
    """What the page shows."""

    #: What there is.
    all = "all"
    #: Which session is to go.
    one = "one"
    #: What a copy is wanted of.
    copy = "copy"
    #: Whether it is to go for good.
    ask = "ask"
    #: Something goes on.
    busy = "busy"
    #: What came of it.
    done = "done"
    #: All of it is deleted.
    over = "over"


class StoredPage(Page):
    """One page with a few steps; Esc takes one step back.

    Parameters
    ----------
    run
        Starts what may take long.
    settings
        What is remembered: it goes with everything else.
    sharing
        Whether the window is laid out for a call.
    close
        Leaves the page.
    deleted
        Is told of a deletion.
    """

    #: All is deleted: a new window is to take this one's place.
    anew = Signal()

    def __init__(
        self,
        run: Runner,
        settings: Settings,
        sharing: Callable[[], bool],
        close: Callable[[], object],
        deleted: Callable[[], object],
    ) -> None:
        super().__init__()
        self._run, self._settings, self._sharing = run, settings, sharing
        self._close, self._deleted = close, deleted
        self.step = Step.all
        self.stored: Stored | None = None
        self._job: Job | None = None
        #: The job that deletes everything, with the settings, while it is not known what it did.
        self._erasing: Job | None = None
        self._what, self._items = "", tuple[Item, ...]()
        self._from_row = 0
        self._said = ""
        self._percent = 100
        self._drawn: object = None
        self._make_body()
        self._make_foot()

    def _make_body(self) -> None:
        self.title = Words(words.say("stored.title"), "title")
        self.lead = Words(role="lead", bold=True)
        self.who = Words()
        self.where = Words()
        self._rows = QVBoxLayout()
        self._rows.setSpacing(theme.S)
        self._made: list[Words] = []
        self.others = Words()
        self.choice = Choices(words.say("stored.which"))
        self.goes = Words(role="lead")
        self.keys = Words(words.say("stored.goes.keys"), bold=True)
        self._keys = Rule(self.keys)
        self.no_way_back = Words(words.say("stored.no_way_back"))
        self.open = Words(words.say("stored.copy.open"), bold=True)
        self._open = Rule(self.open)
        self.copied_keys = Words(words.say("stored.copy.keys"), bold=True)
        self._copied_keys = Rule(self.copied_keys)
        for part in (self.title, self.lead, self.who, self.where):
            self.body.addWidget(part)
        self.body.addLayout(self._rows)
        asked = (self.goes, self._keys, self.no_way_back, self._open, self._copied_keys)
        for part in (self.others, self.choice, *asked):
            self.body.addWidget(part)
        self.one = self._button("stored.delete.one", self._choose_one)
        self.sessions = self._button("stored.delete.sessions", lambda: self._ask("sessions"))
        self.faces = self._button("stored.delete.faces", lambda: self._ask("faces"))
        self.everything = self._button("stored.delete.everything", lambda: self._ask("everything"))
        self.newer = self._button("stored.newer", lambda: self._turn(-AT_A_TIME))
        self.older = self._button("stored.older", lambda: self._turn(AT_A_TIME))
        # None of them is a way on: the way back has to be in sight.
        self._ways = QWidget()
        row = FlowRow(self._ways)
        for button in (
            self.one,
            self.sessions,
            self.faces,
            self.everything,
            self.newer,
            self.older,
        ):
            row.addWidget(button)
        policy = self._ways.sizePolicy()
        policy.setHeightForWidth(True)
        self._ways.setSizePolicy(policy)
        self.body.addSpacing(theme.S)
        self.body.addWidget(self._ways)
        self.body.addStretch(1)

    def _make_foot(self) -> None:
        self.keep = self._button("stored.keep", self.step_back, "main")
        self.yes = self._button("stored.yes", self._delete, "stop")
        self.begin = self._button("stored.anew", self.anew.emit, "main")
        self.place = self._button("stored.copy.go", self._ask_place, "main")
        self.back = self._button("stored.back", self._leave, "main")
        self.this = self._button("stored.this", self._ask_this)
        self.copy = self._button("stored.copy", lambda: self._go_to(Step.copy))
        row = (self.keep, self.yes, self.begin, self.place, self.back, self.this, self.copy)
        for button in row:
            self.buttons.addWidget(button)

    def _button(self, key: str, act: Callable[[], object], kind: str = "plain") -> Button:
        button = Button(words.say(key), kind)
        button.clicked.connect(lambda: act())
        return button

    # --- the way through it ---

    def enter(self) -> None:
        """The page comes to the front: look at what there is now, unless something goes on."""
        if self.step not in (Step.busy, Step.over):
            self._look()
        super().enter()
        if self.step == Step.busy:
            self.setFocus()

    def step_back(self) -> bool:
        """One step back; False where that leaves the page."""
        step = self.step
        if step == Step.over:
            self.anew.emit()
        elif step not in (Step.all, Step.busy):
            self._look()
        return step != Step.all

    def _leave(self) -> None:
        if self.step == Step.all:
            self._close()
        else:
            self.step_back()

    def _look(self) -> None:
        self.stored, self._said, self._from_row = None, "", 0
        self._job = self._run(stored.look)
        self._go_to(Step.all)

    def _go_to(self, step: Step) -> None:
        self.step = step
        if step == Step.copy:
            self.choice.fill([words.say(f"stored.copy.{what}") for what in self._copied()])
        if step == Step.one:
            self._fill_sessions()
        self.refresh()
        if self.isVisible():
            super().enter()

    def _sessions(self) -> tuple[Item, ...]:
        found = () if self.stored is None else self.stored.of(*SESSIONS)
        return tuple(sorted(found, key=lambda i: (i.at, i.path.name), reverse=True))

    def _choose_one(self) -> None:
        self._from_row = 0
        self._go_to(Step.one)
        self.choice.take_keys()

    def _turn(self, rows: int) -> None:
        """Offer other sessions."""
        self._from_row += rows
        self._fill_sessions()
        self.refresh()
        self.choice.take_keys()

    def _fill_sessions(self) -> None:
        shown = self._sessions()[self._from_row : self._from_row + AT_A_TIME]
        self.choice.fill([session_words(i) for i in shown])

    def _ask_this(self) -> None:
        self._ask("one", (self._sessions()[self._from_row + self.choice.row],))

    def _ask(self, what: str, items: tuple[Item, ...] | None = None) -> None:
        """Ask before something goes for good."""
        if self.stored is None:
            return
        self._what = what
        self._items = self.stored.meant(stored.WHAT[what]) if items is None else items
        self._go_to(Step.ask)

    # --- what takes long ---

    def _delete(self) -> None:
        found, items = self.stored, self._items
        if found is None or self.step != Step.ask:
            return
        if self._what == "everything":
            # The window may be closed meanwhile, and would write them anew.
            self._settings.hold()
        self._job = self._run(lambda: stored.delete_for_good(found, items))
        if self._what == "everything":
            self._erasing = self._job
        self._said = words.say("stored.deleting")
        self._go_to(Step.busy)

    def _copied(self) -> tuple[str, ...]:
        """What there is to copy, by the words of :data:`~ui.stored.WHAT`."""
        found = self.stored
        return tuple(
            what
            for what in ("everything", "sessions", "faces")
            if found is not None and found.of(*(stored.WHAT[what] - NEVER))
        )

    def _ask_place(self) -> None:
        """Ask where the copy is to be."""
        documents = QStandardPaths.StandardLocation.DocumentsLocation
        start = Path(QStandardPaths.writableLocation(documents)) / COPY_NAME
        what = self._copied()[self.choice.row]
        name, _ = QFileDialog.getSaveFileName(
            self, words.say("stored.copy.where"), str(start), words.say("stored.copy.kinds")
        )
        if name:
            self.save_copy(what, Path(name))

    def save_copy(self, what: str, to: Path) -> None:
        """Save a copy, beside the window."""
        found = self.stored
        if found is None:
            return
        kinds = stored.WHAT[what]
        self._job = self._run(lambda: (save_copy(found, to, kinds), to))
        self._said = words.say("stored.copy.making")
        self._go_to(Step.busy)

    def _collect(self) -> None:
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        over = self._settle_settings(job)
        if job.error is not None:
            why = breakable(words.failed(job.error))
            self._said = words.say("stored.failed", why=why)
            self._go_to(Step.done)
        elif isinstance(job.result, Stored):
            self.stored = job.result
            self._go_to(Step.all)
        elif isinstance(job.result, Deleted):
            self._has_deleted(job.result, over=over)
        else:
            self._has_copied(*job.result)

    def _settle_settings(self, job: Job) -> bool:
        """Forget the settings where everything is gone, else keep them; gives whether it is."""
        if job is not self._erasing:
            return False
        self._erasing = None
        done, elsewhere = job.result, self.stored is not None and self.stored.elsewhere
        over = isinstance(done, Deleted) and not done.left and not elsewhere
        if over:
            # Whatever is still to be remembered would be of the person before.
            self._settings.forget()
        else:
            self._settings.release()
        return over

    def _has_deleted(self, done: Deleted, *, over: bool) -> None:
        left = left_words(done, named=not self._sharing())
        elsewhere = () if self.stored is None else self.stored.elsewhere
        if over:
            said = words.say("stored.deleted.everything")
        elif done.left or (elsewhere and self._what == "everything"):
            said = words.say("stored.deleted.in_part") if done.gone else ""
        else:
            said = words.say("stored.deleted") if done.gone else ""
        self._said = "\n".join(t for t in (said, left) if t)
        self._deleted()
        self._go_to(Step.over if over else Step.done)

    def _has_copied(self, copied: Copied, to: Path) -> None:
        said = [words.say("stored.copy.made", path=shown_path(to))]
        if copied.in_use:
            said.append(words.say("stored.copy.in_use"))
        self._said = "\n".join(said)
        self._go_to(Step.done)

    def close_jobs(self, timeout_s: float = 4.0) -> None:
        """The window closes: what was begun is finished."""
        if self._job is not None:
            self._job.wait(timeout_s)
            if self._job.done:
                self._settle_settings(self._job)
            elif self._job is self._erasing:
                # It goes on, and nobody asks what comes of it any more.
                self._settings.forget()

    # --- what is shown ---

    def set_percent(self, percent: int) -> None:
        """Lines that come later get the same text size."""
        super().set_percent(percent)
        self._percent = percent

    def refresh(self) -> None:
        """Take what a job has found or done; show the step."""
        self._collect()
        found, step, named = self.stored, self.step, not self._sharing()
        state = (step, found, named, self._said, self._what, self._from_row)
        if state == self._drawn:
            return
        self._drawn = state
        self._put(self.lead, self._lead())
        who = words.say(f"stored.who.{found.readers}") if found else ""
        self._put(self.who, who if step == Step.all else "")
        where = words.say("stored.where", folder=shown_path(found.folder)) if found else ""
        self._put(self.where, where if step == Step.all and named else "")
        listed = found if step == Step.all else None
        self._show_rows([] if listed is None else rows_of(listed, named=named))
        self._put(self.others, "" if listed is None else others_words(listed, named=named))
        asked = step == Step.ask
        goes = "sessions" if self._what == "one" else self._what
        self._put(self.goes, words.say(f"stored.goes.{goes}") if asked else "")
        self._show(self._keys, asked and any(i.kind == Kind.keys for i in self._items))
        self._show(self.no_way_back, asked)
        self._show(self._open, step == Step.copy)
        keys = found is not None and bool(found.of(Kind.keys))
        self._show(self._copied_keys, step == Step.copy and keys)
        self._show(self.choice, step in (Step.one, Step.copy))
        self._show_buttons()

    def _show_buttons(self) -> None:
        found, step, count = self.stored, self.step, len(self._sessions())
        listed = found if step == Step.all else None
        ways = (
            (self.one, listed is not None and count > 0),
            (self.sessions, listed is not None and count > 1),
            (self.faces, listed is not None and bool(listed.of(Kind.faces))),
            (self.everything, listed is not None and bool(listed.items)),
            (self.newer, step == Step.one and self._from_row > 0),
            (self.older, step == Step.one and self._from_row + AT_A_TIME < count),
        )
        for button, on in (
            *ways,
            (self.keep, step == Step.ask),
            (self.yes, step == Step.ask),
            (self.begin, step == Step.over),
            (self.place, step == Step.copy),
            (self.back, step in (Step.all, Step.one, Step.copy, Step.done)),
            (self.this, step == Step.one),
            (self.copy, listed is not None and bool(self._copied())),
        ):
            had_keys = button.hasFocus()
            self._show(button, on)
            if had_keys and not on:
                # A key that is pressed twice must press nothing that comes in its place.
                self.setFocus()
        self._show(self._ways, any(on for _, on in ways))
        kind = "plain" if step == Step.copy else "main"
        if self.back.kind != kind:
            self.back.kind = kind
            self.back.update()

    def _lead(self) -> str:
        items = self._items
        match self.step:
            case Step.all if self.stored is None:
                return words.say("stored.looking")
            case Step.all:
                return "" if self.stored.items else words.say("stored.nothing")
            case Step.one:
                return words.say("stored.which")
            case Step.copy:
                return words.say("stored.copy.what")
            case Step.ask if self._what == "one":
                return words.say("stored.ask.one", when=session_words(items[0]))
            case Step.ask:
                more = {"count": len(items), "size": size_words(items)}
                return words.say(f"stored.ask.{self._what}", **more)
            case _:
                return self._said

    def _show_rows(self, lines: list[str]) -> None:
        if [label.text() for label in self._made] == lines:
            return
        for label in self._made:
            label.hide()
            label.deleteLater()
        self._made = []
        for line in lines:
            label = Words(line)
            label.set_percent(self._percent)
            self._rows.addWidget(label)
            self._made.append(label)

    def _put(self, label: Words, text: str) -> None:
        if label.text() != text:
            label.setText(text)
        self._show(label, bool(text))

    def _show(self, part: QWidget, on: bool) -> None:
        if part.isHidden() == on:
            part.setVisible(on)
