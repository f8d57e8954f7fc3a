"""The patient's end of a session: one file for the therapist."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QStandardPaths
from PySide6.QtWidgets import QFileDialog

from tracker.handover.sending import Handed, Offer, file_name, hand_over_all, offer_of
from tracker.plan.model import Plan
from ui import words
from ui.plan_check import way_words
from ui.ports import Job, Runner
from ui.widgets.basic import Button, Page, Words
from ui.widgets.paths import breakable, shown_path


class HandoverPage(Page):
    """What waits to be handed over, and the button that makes the file.

    Parameters
    ----------
    run
        Starts what may take long.
    plan
        Gives the plan at hand, or None.
    unchecked
        Whether the words of that plan were not compared yet.
    compare
        Opens the page of the words.
    sharing
        Whether the window is laid out for a call.
    close
        Leaves the page.
    """

    def __init__(
        self,
        run: Runner,
        plan: Callable[[], Plan | None],
        unchecked: Callable[[], bool],
        compare: Callable[[], object],
        sharing: Callable[[], bool],
        close: Callable[[], object],
    ) -> None:
        super().__init__()
        self._run, self._plan, self._unchecked, self._sharing = run, plan, unchecked, sharing
        self._looking: Job | None = None
        self._making: Job | None = None
        self.offer: Offer | None = None
        self._foreign = False
        self._said: tuple[str, ...] = ()
        self.state = Words(role="lead", bold=True)
        self.send = Words(role="lead")
        self.inside, self.way = Words(), Words()
        self.note = Words(bold=True)
        self.body.addWidget(Words(words.say("handover.title"), "title"))
        for part in (self.state, self.send, self.note, self.inside, self.way):
            self.body.addWidget(part)
        self.body.addStretch(1)
        self.compare = Button(words.say("same.open"), "main")
        self.compare.clicked.connect(compare)
        self.make = Button(words.say("handover.make_new"), "main")
        self.make.clicked.connect(lambda: self._ask(all_of_them=False))
        self.make_all = Button(words.say("handover.make_all", count=0))
        self.make_all.clicked.connect(lambda: self._ask(all_of_them=True))
        self.foreign = Button(words.say("handover.foreign.take"))
        self.foreign.clicked.connect(self.take_foreign)
        self.back = Button(words.say("handover.back"))
        self.back.clicked.connect(close)
        for button in (self.compare, self.make, self.make_all, self.foreign, self.back):
            self.buttons.addWidget(button)

    def enter(self) -> None:
        """The page comes to the front: look at what there is now."""
        self._said, self._foreign = (), False
        self._look()
        self.refresh()
        super().enter()
        if not any(b.isVisibleTo(self) for b in (self.compare, self.make)):
            self.back.setFocus()

    def take_foreign(self) -> None:
        """The patient says that sessions under other plans are for this clinic, too."""
        self._said, self._foreign = (), True
        self._look()
        self.refresh()

    def _look(self) -> None:
        plan, self.offer, self._looking = self._plan(), None, None
        foreign = self._foreign
        if plan is not None and plan.hand_over is not None:
            self._looking = self._run(lambda: offer_of(plan, foreign=foreign))

    def refresh(self) -> None:
        """Take what a job has found; show how it stands."""
        self._collect()
        plan = self._plan()
        busy = self._looking is not None or self._making is not None
        ready = self.offer is not None and not busy and not self._sharing()
        new = len(self.offer.new) if self.offer is not None else 0
        every = len(self.offer.all) if self.offer is not None else 0
        self._put(self.state, self._said[0] if self._said else self._state(plan, new, every))
        self._put(self.send, "\n".join(self._said[1:]))
        self._put(self.note, self._note(every))
        way = plan.hand_over if plan is not None else None
        self._put(self.inside, words.say("handover.inside") if every else "")
        self._put(self.way, way_words(way, "handover") if every else "")
        all_text = words.say("handover.make_all", count=every)
        if self.make_all.text() != all_text:
            self.make_all.setText(all_text)
            self.make_all.setAccessibleName(all_text)
            self.make_all.updateGeometry()
        unchecked = bool(every) and self._unchecked()
        kind = "plain" if unchecked else "main"
        if self.make.kind != kind:
            self.make.kind = kind
            self.make.update()
        for button, on in (
            (self.compare, unchecked),
            (self.make, ready and new > 0),
            (self.make_all, ready and every > new),
            (self.foreign, ready and self.offer is not None and bool(self.offer.foreign)),
        ):
            self._show(button, on)

    def _show(self, button: Button, on: bool) -> None:
        if button.isHidden() == on:
            had_keys = button.hasFocus()
            button.setVisible(on)
            if had_keys and not on:
                # While a file is made, a key that is pressed twice must not leave the page.
                (self if self._making is not None else self.back).setFocus()

    def _state(self, plan: Plan | None, new: int, every: int) -> str:
        if self._making is not None:
            return words.say("handover.making")
        if plan is None:
            return words.say("handover.no_plan")
        if plan.hand_over is None:
            return words.say("handover.no_way")
        if self.offer is None:
            return words.say("handover.looking")
        if new == 1:
            return words.say("handover.one_new")
        if new:
            return words.say("handover.new", count=new)
        return words.say("handover.no_new" if every else "handover.none")

    def _note(self, every: int) -> str:
        lines = []
        if self._sharing() and every:
            lines.append(words.say("handover.in_call"))
        if every and self._unchecked():
            lines.append(words.say("handover.unchecked"))
        if self.offer is not None:
            lines += _left_out(self.offer)
        return "\n".join(lines)

    def _put(self, label: Words, text: str) -> None:
        if label.text() != text:
            label.setText(text)
        if label.isHidden() == bool(text):
            label.setVisible(bool(text))

    # --- the file ---

    def _ask(self, *, all_of_them: bool) -> None:
        """Ask where the file is to be."""
        plan, offer = self._plan(), self.offer
        if plan is None or offer is None:
            return
        place = QStandardPaths.StandardLocation.DocumentsLocation
        start = Path(QStandardPaths.writableLocation(place)) / file_name(plan)
        name, _ = QFileDialog.getSaveFileName(
            self, words.say("handover.where"), str(start), words.say("handover.kinds")
        )
        if name:
            self.make_file(plan, offer.all if all_of_them else offer.new, Path(name))

    def make_file(self, plan: Plan, sessions: Sequence[Path], to: Path) -> None:
        """Make the file, beside the window."""
        from ui.cli import program_version

        self._said = ()
        version = program_version()
        self._making = self._run(lambda: hand_over_all(plan, sessions, to, version=version))
        self.refresh()

    def _collect(self) -> None:
        if self._making is not None and self._making.done:
            job, self._making = self._making, None
            if job.error is None:
                self._said = self._made(job.result)
            else:
                why = words.failed(job.error)
                self._said = (words.say("handover.failed", why=breakable(why)),)
            # After a fault, too: the first of several files may be made.
            self._look()
        if self._looking is not None and self._looking.done:
            job, self._looking = self._looking, None
            self.offer = job.result
            if job.error is not None:
                why = words.failed(job.error)
                self._said = (words.say("handover.failed", why=breakable(why)),)

    def _made(self, done: Sequence[Handed]) -> tuple[str, ...]:
        path = shown_path(done[0].path)
        count = sum(len(d.sessions) for d in done)
        lines = [words.say("handover.made", count=count, path=path), words.say("handover.send")]
        if done[1:]:
            names = ", ".join(shown_path(d.path) for d in done[1:])
            lines.append(words.say("handover.more", names=names))
        thin = sum(len(d.without_trace) for d in done)
        if thin:
            lines.append(words.say("handover.thin", count=thin))
        return tuple(lines)

    def close_jobs(self, timeout_s: float = 4.0) -> None:
        """The window closes: a file that is being made is finished."""
        for job in (self._looking, self._making):
            if job is not None:
                job.wait(timeout_s)


def _left_out(offer: Offer) -> list[str]:
    """What is there and does not go, a line each."""
    lines = []
    if offer.foreign:
        plans = ", ".join(f"{plan or '-'} ({count})" for plan, count in offer.foreign)
        lines.append(words.say("handover.foreign", plans=plans))
    counts = {
        "unread": len(offer.unread),
        "unsent": offer.unsent,
        "broken_off": offer.broken_off,
        "elsewhere": offer.elsewhere,
    }
    lines += [words.say(f"handover.{key}", count=n) for key, n in counts.items() if n]
    return lines
