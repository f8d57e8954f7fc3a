"""Whether the plan at hand was compared with the therapist's, word by word."""

from __future__ import annotations

from tracker.handover.fingerprint import plan_words
from tracker.plan.model import HandOver, Plan
from ui import words
from ui.settings import Settings


class PlanCheck:
    """Remembers which plan's words were shown, and which the therapist has read out, too."""

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self.words: tuple[str, ...] = ()

    def take(self, plan: Plan) -> bool:
        """A plan is at hand; whether it is another than the one before."""
        self.words = plan_words(plan)
        text = " ".join(self.words)
        if self._settings.words_seen == text:
            return False
        self._settings.words_seen, self._settings.words_checked = text, ""
        return True

    def answer(self, same: bool) -> None:
        """The words were compared."""
        self._settings.words_checked = " ".join(self.words) if same else ""
        if not same:
            # Opened once more it is to be compared once more.
            self._settings.words_seen = ""

    def is_unchecked(self, plan: Plan | None) -> bool:
        """Whether nobody has compared the words of a plan yet."""
        if plan is None or not self.words:
            return False
        return self._settings.words_checked != " ".join(self.words)


def way_words(way: HandOver | None, page: str) -> str:
    """How a plan hands over, in the words of a page; empty where it does not."""
    if way is None:
        return ""
    return words.say(f"{page}.plain" if way.plain else f"{page}.locked")
