"""Files from and to patients, and the clinic's key: a page of the desk."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QStandardPaths, Qt, Signal
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from tracker.errors import TurnpostError
from tracker.handover import crypt, keys
from tracker.handover.fingerprint import plan_words
from tracker.handover.receive import Received, needs_key, receive
from tracker.plan.files import load_plan, save_plan
from tracker.plan.model import Plan
from ui import background, theme, words
from ui.desk.passphrase_box import PassphraseBox
from ui.desk.small import desk_words, small_button
from ui.ports import Job, Runner
from ui.settings import Settings
from ui.widgets.basic import Button, Words
from ui.widgets.flow import FlowRow
from ui.widgets.paths import breakable, shown_path


class ExchangePage(QWidget):
    """Takes in, hands out, keeps the key; what takes long goes on beside the window.

    Parameters
    ----------
    folder
        Gives the clinic's folder.
    settings
        Remember whether the clinic has chosen files without a lock.
    run
        Starts what may take long.
    """

    left, taken = Signal(), Signal()

    def __init__(
        self, folder: Callable[[], Path], settings: Settings, run: Runner = background.run
    ) -> None:
        super().__init__()
        self._folder, self._settings, self._run = folder, settings, run
        self._job: Job | None = None
        self._from: QWidget = self
        self._then: Callable[[object], None] = lambda _: None
        self._else: Callable[[Exception], None] = self._failed
        #: Secret keys that a passphrase has opened, as long as the window is open.
        self._opened: list[str] = []
        self.said = desk_words(bold=True)
        self.plan_words = Words(role="lead", bold=True)
        self.box = PassphraseBox()
        self.back = small_button(words.say("exchange.back"))
        self.take = small_button(words.say("exchange.take"))
        self.give = small_button(words.say("exchange.give"))
        self.give_plain = small_button(words.say("exchange.give_plain"))
        self.tell = small_button(words.say("exchange.tell"))
        self.plain_ask = desk_words(words.say("exchange.plain.ask"), bold=True)
        self.plain_yes = small_button(words.say("exchange.plain.yes"))
        self.plain_no = small_button(words.say("exchange.plain.no"))
        self.plain_on = desk_words(words.say("exchange.plain.on"))
        self.has = desk_words()
        self.make = small_button(words.say("exchange.key.make"))
        self.copy = small_button(words.say("exchange.key.copy"))
        self.bring = small_button(words.say("exchange.key.bring"))
        self._arrange()
        self._connect()
        self._ask_plain(False)
        self._show_keys()
        self._say("")

    def _arrange(self) -> None:
        title = Words(words.say("exchange.title"), "lead", bold=True)
        head = QHBoxLayout()
        head.addWidget(title, 1)
        head.addWidget(self.back)
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(theme.M, 0, theme.M, theme.M)
        column.setSpacing(theme.S)
        column.addLayout(head)
        for part in (self.box, self.said, self.plan_words):
            column.addWidget(part)
        self._block(column, "exchange.in", [self.take], [])
        plain = [self.plain_ask, _row(self.plain_yes, self.plain_no), self.plain_on]
        self._block(column, "exchange.out", [self.give, self.give_plain, self.tell], plain)
        self._block(column, "exchange.key", [self.make, self.copy, self.bring], [self.has])
        column.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidget(inner)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.scroll = scroll
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(scroll)

    def _block(
        self, column: QVBoxLayout, key: str, buttons: list[Button], more: list[QWidget]
    ) -> None:
        column.addSpacing(theme.S)
        column.addWidget(desk_words(words.say(key), bold=True))
        column.addWidget(desk_words(words.say(f"{key}.how")))
        for part in more:
            column.addWidget(part)
        column.addWidget(_row(*buttons))

    def _connect(self) -> None:
        self.back.clicked.connect(self.left)
        self.take.clicked.connect(self._choose_file)
        self.give.clicked.connect(lambda: self._choose_plan(plain=False))
        self.give_plain.clicked.connect(self._give_plain)
        self.tell.clicked.connect(self._choose_to_tell)
        self.plain_yes.clicked.connect(self._plain_meant)
        self.plain_no.clicked.connect(lambda: self._ask_plain(False))
        self.make.clicked.connect(self._make_key)
        self.copy.clicked.connect(self._copy_key)
        self.bring.clicked.connect(self._choose_key)

    def enter(self) -> None:
        """The page comes to the front."""
        self._show_keys()
        self.take.setFocus()

    def leave(self) -> None:
        """It goes: nothing stays half asked."""
        self.box.leave()
        self._ask_plain(False)

    # --- from a patient ---

    def take_in(self, path: Path) -> None:
        """Take in a file; asks for the passphrase if it is locked."""
        if self.busy:
            return
        self._say("")
        try:
            locked = needs_key(path)
            if locked and not keys.clinic_keys():
                keys.open_keys("")
        except TurnpostError as error:
            self._failed(error)
            return
        folder = self._folder()
        if locked and not self._opened:
            self._ask_to_open(path, folder)
            return
        opened = list(self._opened)
        self._start(
            lambda: receive(path, folder, opened),
            self._taken_in,
            # Another key may be behind another passphrase.
            lambda error: self._not_opened(error, path, folder),
        )

    def _ask_to_open(self, path: Path, folder: Path) -> None:
        def then(typed: str) -> None:
            self._start(
                lambda: _opened_and_received(typed, path, folder),
                self._opened_in,
                lambda error: self._not_opened(error, path, folder),
            )

        self.box.ask(words.say("exchange.pass.open"), then)

    def _not_opened(self, error: Exception, path: Path, folder: Path) -> None:
        self._failed(error)
        if isinstance(error, crypt.WrongPassphraseError | crypt.WrongKeyError):
            self._opened = []
            self._ask_to_open(path, folder)

    def _opened_in(self, found: object) -> None:
        assert isinstance(found, tuple)
        self._opened, got = found
        self._taken_in(got)

    def _taken_in(self, got: object) -> None:
        assert isinstance(got, Received)
        who = got.person or words.say("exchange.nobody")
        lines = [words.say("exchange.taken", person=who, new=len(got.new), known=len(got.known))]
        if got.other:
            lines.append(words.say("exchange.other", names=", ".join(got.other)))
        if not got.encrypted:
            lines.append(words.say("exchange.was_plain"))
        self._say("\n".join(lines))
        if got.new:
            self.taken.emit()

    def _choose_file(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self, words.say("exchange.take"), "", words.say("exchange.kinds")
        )
        if name:
            self.take_in(Path(name))

    # --- to a patient ---

    def _give_plain(self) -> None:
        """Without a lock: asked once, then remembered."""
        if self._settings.plain_files:
            self._choose_plan(plain=True)
        else:
            self._ask_plain(True)

    def _plain_meant(self) -> None:
        self._settings.plain_files = True
        self._ask_plain(False)
        self._show_keys()
        self._choose_plan(plain=True)

    def _ask_plain(self, ask: bool) -> None:
        for part in (self.plain_ask, self.plain_yes, self.plain_no):
            part.setVisible(ask)
        if ask:
            self.plain_no.setFocus()

    def _choose_plan(self, *, plain: bool) -> None:
        """Ask for the plan and for a place, and write it."""
        start = str(self._folder())
        kinds = words.say("exchange.plans")
        name, _ = QFileDialog.getOpenFileName(self, words.say("exchange.which"), start, kinds)
        if not name:
            return
        place = Path(name).with_name(f"for-patient-{Path(name).name}")
        to, _ = QFileDialog.getSaveFileName(self, words.say("exchange.where"), str(place), kinds)
        if to:
            self.hand_out(Path(name), Path(to), plain=plain)

    def hand_out(self, path: Path, to: Path, *, plain: bool = False) -> None:
        """Write a plan with the clinic's keys, and show its words."""
        from tracker.handover.preparing import with_keys

        def write() -> Plan:
            plan = with_keys(load_plan(path), plain=plain)
            save_plan(to, plan)
            return plan

        def written(plan: object) -> None:
            assert isinstance(plan, Plan)
            self._say(words.say("exchange.given", path=shown_path(to)))
            self._tell(plan)

        self._start(write, written)

    def _choose_to_tell(self) -> None:
        """Show the words of a plan that was handed out before."""
        title, kinds = words.say("exchange.which"), words.say("exchange.plans")
        name, _ = QFileDialog.getOpenFileName(self, title, str(self._folder()), kinds)
        if name:
            try:
                plan = load_plan(Path(name))
            except TurnpostError as error:
                self._failed(error)
                return
            self._say(shown_path(Path(name)))
            self._tell(plan)

    def _tell(self, plan: Plan) -> None:
        """The words of a plan, to be read aloud."""
        numbered = enumerate(plan_words(plan), 1)
        text = "   ".join(words.say("same.word", number=n, word=w) for n, w in numbered)
        self.plan_words.setText(words.say("exchange.words", words=text))
        self.plan_words.show()

    # --- the key ---

    def _make_key(self) -> None:
        def then(typed: str) -> None:
            self._start(lambda: keys.new_key(typed), self._key_made)

        self._say("")
        self.box.ask(words.say("exchange.pass.new"), then, twice=True)

    def _key_made(self, key: object) -> None:
        assert isinstance(key, keys.ClinicKey)
        # Whoever has a key needs no files without a lock.
        self._settings.plain_files = False
        self._opened = []
        self._show_keys()
        self._say(words.say("exchange.key.made", name=key.name))
        self.copy.setFocus()

    def _copy_key(self) -> None:
        """Ask where to copy the newest key."""
        key = keys.clinic_keys()[-1]
        documents = QStandardPaths.StandardLocation.DocumentsLocation
        start = Path(QStandardPaths.writableLocation(documents)) / key.path.name
        title, kinds = words.say("exchange.key.copy_where"), words.say("exchange.key.kinds")
        name, _ = QFileDialog.getSaveFileName(self, title, str(start), kinds)
        if name:
            to = Path(name)
            done = words.say("exchange.key.copied", path=shown_path(to))
            self._start(lambda: keys.back_up(key, to), lambda _: self._say(done))

    def _choose_key(self) -> None:
        title, kinds = words.say("exchange.key.which"), words.say("exchange.key.kinds")
        name, _ = QFileDialog.getOpenFileName(self, title, "", kinds)
        if name:
            self.bring_in(Path(name))

    def bring_in(self, path: Path) -> None:
        """Bring in a key from its copy."""

        def then(typed: str) -> None:
            self._start(lambda: keys.bring_in(path, typed), self._key_brought, again)

        def again(error: Exception) -> None:
            self._failed(error)
            if isinstance(error, crypt.WrongPassphraseError):
                self.box.ask(words.say("exchange.pass.brought"), then)

        self.box.ask(words.say("exchange.pass.brought"), then)

    def _key_brought(self, key: object) -> None:
        assert isinstance(key, keys.ClinicKey)
        self._settings.plain_files = False
        self._opened = []
        self._show_keys()
        self._say(words.say("exchange.key.brought", name=key.name))

    def _show_keys(self) -> None:
        """What can be done with the keys that there are."""
        found = keys.clinic_keys()
        names = ", ".join(k.name for k in found)
        key = "exchange.key.has" if found else "exchange.key.none"
        self.has.setText(words.say(key, names=names))
        self.give.setVisible(bool(found))
        self.copy.setVisible(bool(found))
        self.give_plain.setVisible(not found)
        self.plain_on.setVisible(not found and self._settings.plain_files)

    # --- work beside the window ---

    @property
    def busy(self) -> bool:
        """Whether something goes on."""
        return self._job is not None

    def _start(
        self,
        work: Callable[[], object],
        then: Callable[[object], None],
        otherwise: Callable[[Exception], None] | None = None,
    ) -> None:
        if self.busy:
            return
        self._say(words.say("exchange.working"))
        focus = QApplication.focusWidget()
        self._from = focus if isinstance(focus, Button) else self.take
        self._then, self._else = then, otherwise or self._failed
        self._let(False)
        self._job = self._run(work)
        self.poll()

    def poll(self) -> None:
        """Take what was done."""
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        self._let(True)
        if job.error is None:
            self._then(job.result)
        else:
            self._else(job.error)
        if self.isVisible() and not self.isAncestorOf(QApplication.focusWidget()):
            # The button that was pressed could not keep the keys while it was off.
            (self._from if self._from.isVisibleTo(self) else self.take).setFocus()

    def _let(self, on: bool) -> None:
        buttons = (
            self.take,
            self.give,
            self.give_plain,
            self.tell,
            self.make,
            self.copy,
            self.bring,
        )
        for button in buttons:
            button.setEnabled(on)

    def _failed(self, error: Exception) -> None:
        why = str(error) if isinstance(error, TurnpostError) else repr(error)
        self._say(words.say("exchange.failed", why=breakable(why)))

    def _say(self, text: str) -> None:
        self.said.setText(text)
        self.said.setVisible(bool(text))
        self.plan_words.hide()
        self.scroll.verticalScrollBar().setValue(0)

    def close_jobs(self, timeout_s: float = 4.0) -> None:
        """The window closes: what is being written is finished, what was opened forgotten."""
        if self._job is not None:
            self._job.wait(timeout_s)
        self._opened = []


def _opened_and_received(passphrase: str, path: Path, folder: Path) -> tuple[list[str], Received]:
    opened = keys.open_keys(passphrase)
    return opened, receive(path, folder, opened)


def _row(*buttons: Button) -> QWidget:
    holder = QWidget()
    row = FlowRow(holder)
    row.setContentsMargins(0, 0, 0, 0)
    for button in buttons:
        row.addWidget(button)
    return holder
