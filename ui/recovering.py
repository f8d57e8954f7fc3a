"""Sessions that broke off before: offered at the start, saved on request. No widgets here."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import StrEnum
from pathlib import Path

from tracker.errors import in_words
from tracker.session.recovery import Interrupted
from ui.ports import Job, World


class Stage(StrEnum):
    """Where the offer stands."""

    nothing = "nothing"
    offered = "offered"
    newer = "newer"
    saving = "saving"
    saved = "saved"
    failed = "failed"


class Recovering:
    """Finds, offers and saves; what is declined is offered again at the next start."""

    def __init__(self, world: World, changed: Callable[[], None]) -> None:
        self._world, self._changed = world, changed
        self._job: Job | None = None
        self.stage = Stage.nothing
        self.found: list[Interrupted] = []
        #: Whether there are some that only a newer version of the program can save.
        self.newer = False
        self.folders: list[Path] = []
        self.why = ""

    @property
    def unanswered(self) -> bool:
        """Whether it is still being looked for, or nobody has said what to do with it."""
        return self._job is not None or self.stage in (Stage.offered, Stage.newer)

    def look(self) -> None:
        """Look for them, beside the window."""
        if self._job is None and self.stage == Stage.nothing:
            self._job = self._world.run(self._world.interrupted)

    def save(self) -> None:
        """Save all of them, beside the window."""
        if self.stage != Stage.offered:
            return
        wanted = list(self.found)
        self._job = self._world.run(lambda: self._save_all(wanted))
        self._go_to(Stage.saving)

    def later(self) -> None:
        """Not now, or: I have read it."""
        if self.stage != Stage.saving:
            self._go_to(Stage.nothing)

    def drop_gone(self) -> None:
        """Offer no longer what was deleted meanwhile."""
        if self.stage == Stage.offered:
            self.found = [s for s in self.found if s.folder.exists()]
            self._go_to(Stage.offered if self.found else Stage.nothing)

    def tick(self) -> None:
        """Collect what a job has found or done."""
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        if self.stage == Stage.saving:
            self.folders = job.result or []
            self.why = in_words(job.error) if job.error is not None else self.why
            self._go_to(Stage.failed if self.why else Stage.saved)
        elif job.error is None and job.result:
            self.found = [one for one in job.result if not one.newer]
            self.newer = len(self.found) < len(job.result)
            self._go_to(Stage.offered if self.found else Stage.newer)

    def close(self, timeout_s: float) -> None:
        """Wait for what is being saved."""
        if self._job is not None:
            self._job.wait(timeout_s)

    def _save_all(self, wanted: Sequence[Interrupted]) -> list[Path]:
        """Save each: one that can't be saved does not keep the others from it."""
        folders = []
        for session in wanted:
            try:
                folders.append(self._world.save_interrupted(session))
            except Exception as error:  # said beside those that were saved
                self.why = in_words(error)
        return folders

    def _go_to(self, stage: Stage) -> None:
        self.stage = stage
        self._changed()
