"""To a patient: a plan with the clinic's keys, and its words."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QFileDialog

from tracker.errors import TurnpostError
from tracker.handover.keys import clinic_keys
from tracker.handover.preparing import readers, with_keys
from tracker.outputs import PLAN as A_PLAN
from tracker.outputs import must_harm_nothing
from tracker.plan.files import load_plan, save_plan
from tracker.plan.model import Plan
from tracker.records.people import HANDED_OUT
from ui import words
from ui.desk.exchange_work import Block, ExchangeWork
from ui.desk.small import desk_words, row_of, small_button
from ui.editor.inputs import Tick
from ui.settings import Settings
from ui.widgets.paths import shown_path


class HandingOut(Block):
    """Writes a plan for a patient; without a key only where that is meant.

    Parameters
    ----------
    work
        Shared with the other parts.
    folder
        Gives the clinic's folder.
    settings
        Remember whether the clinic has chosen files without a lock.
    """

    def __init__(self, work: ExchangeWork, folder: Callable[[], Path], settings: Settings) -> None:
        self.give = small_button(words.say("exchange.give"))
        self.give_plain = small_button(words.say("exchange.give_plain"))
        self.tell = small_button(words.say("exchange.tell"))
        self.plain_ask = desk_words(words.say("exchange.plain.ask"), bold=True)
        self.plain_yes = small_button(words.say("exchange.plain.yes"))
        self.plain_no = small_button(words.say("exchange.plain.no"))
        self.plain_on = desk_words(words.say("exchange.plain.on"))
        answers = row_of([self.plain_yes, self.plain_no])
        #: Whether keys of elsewhere that a plan names stay in it; which of those here are in it.
        self.keep = Tick(words.say("exchange.keep"), no=False)
        self.keep.setChecked(True)
        self.own: dict[str, Tick] = {}
        self._ticks = row_of([self.keep])
        buttons = [self.give, self.give_plain, self.tell]
        more = [self._ticks, self.plain_ask, answers, self.plain_on]
        super().__init__("exchange.out", buttons, more)
        self._work, self._folder, self._settings = work, folder, settings
        self.give.clicked.connect(lambda: self._choose(plain=False))
        self.give_plain.clicked.connect(self._give_plain)
        self.tell.clicked.connect(self._choose_to_tell)
        self.plain_yes.clicked.connect(self._plain_meant)
        self.plain_no.clicked.connect(lambda: self.ask_plain(False))
        self.ask_plain(False)

    def show_ways(self, has_key: bool) -> None:
        """Offer what can be done with or without a key."""
        self.give.setVisible(has_key)
        self.give_plain.setVisible(not has_key)
        self.plain_on.setVisible(not has_key and self._settings.plain_files)
        self._ticks.setVisible(has_key)
        keys = clinic_keys()
        if [k.public for k in keys] == list(self.own):
            return
        for tick in self.own.values():
            tick.hide()
            tick.deleteLater()
        self.own = {k.public: Tick(k.name) for k in keys}
        for tick in self.own.values():
            tick.setChecked(True)
            tick.set_percent(self._settings.text_percent)
            layout = self._ticks.layout()
            assert layout is not None
            layout.addWidget(tick)
            # There is nothing to choose from one.
            tick.setVisible(len(keys) > 1)

    def ask_plain(self, ask: bool) -> None:
        """Ask whether files without a lock are meant, or don't any more."""
        for part in (self.plain_ask, self.plain_yes, self.plain_no):
            part.setVisible(ask)
        if ask:
            self.plain_no.setFocus()

    def hand_out(self, path: Path, to: Path, *, plain: bool = False) -> None:
        """Write a plan for a patient with the keys that are ticked, and show its words."""
        own_only = not plain and not self.keep.isChecked()
        drop = [] if plain else [key for key, tick in self.own.items() if not tick.isChecked()]

        def write() -> Plan:
            plan = with_keys(load_plan(path), plain=plain, own_only=own_only, drop=drop)
            must_harm_nothing(to, replaces=A_PLAN if _is_copy(to, plan) else "", inputs=[path])
            save_plan(to, plan)
            return plan

        def written(plan: object) -> None:
            assert isinstance(plan, Plan)
            given = words.say("exchange.given", path=shown_path(to))
            self._work.say("\n".join([given, *_reader_words(plan)]))
            self._work.tell(plan)

        self._work.start(write, written)

    def _give_plain(self) -> None:
        """Without a lock: asked once, then remembered."""
        if self._settings.plain_files:
            self._choose(plain=True)
        else:
            self.ask_plain(True)

    def _plain_meant(self) -> None:
        self._settings.plain_files = True
        self.ask_plain(False)
        self.show_ways(has_key=False)
        self.give_plain.setFocus()
        self._choose(plain=True)

    def _choose(self, *, plain: bool) -> None:
        """Ask for the plan and for a place, and write it."""
        path = self._plan_file()
        if path is None:
            return
        place = path.with_name(f"{HANDED_OUT}{path.name}")
        title, kinds = words.say("exchange.where"), words.say("exchange.plans")
        to, _ = QFileDialog.getSaveFileName(self, title, str(place), kinds)
        if to:
            self.hand_out(path, Path(to), plain=plain)

    def _choose_to_tell(self) -> None:
        """Show the words of a plan that was handed out before."""
        path = self._plan_file()
        if path is None:
            return
        try:
            plan = load_plan(path)
        except TurnpostError as error:
            self._work.failed(error)
            return
        self._work.say("\n".join([shown_path(path), *_reader_words(plan)]))
        self._work.tell(plan)

    def _plan_file(self) -> Path | None:
        title, kinds = words.say("exchange.which"), words.say("exchange.plans")
        name, _ = QFileDialog.getOpenFileName(self, title, str(self._folder()), kinds)
        return Path(name) if name else None


def _is_copy(to: Path, plan: Plan) -> bool:
    """Whether the file there is the same person's same plan: an older copy, as a rule."""
    try:
        there = load_plan(to)
    except TurnpostError:
        return False
    return (there.plan_id, there.person) == (plan.plan_id, plan.person)


def _reader_words(plan: Plan) -> list[str]:
    """Who can open what a plan hands over: a key that nobody knows is noticed here."""
    found = readers(plan)
    if not found:
        return []
    names = [
        words.say("exchange.here" if here else "exchange.elsewhere", name=n) for n, here in found
    ]
    return [words.say("exchange.opens", names=", ".join(names))]
