"""Whether the plan at hand was compared with the therapist's, word by word."""

from __future__ import annotations

from tracker.handover.fingerprint import plan_words
from tracker.plan.model import HandOver, Plan
from ui import words
from ui.settings import Settings

#: Refused plans that are remembered; more than anybody is sent.
REFUSED_MOST = 50


class PlanCheck:
    """Remembers which plan's words were shown, and which the therapist has read out, too."""

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self.words: tuple[str, ...] = ()
        self._last: tuple[Plan, str] | None = None

    def take(self, plan: Plan) -> bool:
        """A plan is at hand; whether its words are to be shown, as they are new."""
        self.words = plan_words(plan)
        text, settings = " ".join(self.words), self._settings
        known = text in (settings.words_seen, settings.words_checked)
        return not known or text in settings.words_refused

    def answer(self, same: bool | None) -> None:
        """The words were compared; None: not now."""
        text, settings = " ".join(self.words), self._settings
        # Opened once more, a plan that was refused is to be compared once more.
        settings.words_seen = "" if same is False else text
        if same:
            settings.words_checked = text
            settings.words_refused = [t for t in settings.words_refused if t != text]
        if same is not False:
            return
        refused = [*(t for t in settings.words_refused if t != text), text]
        settings.words_refused = refused[-REFUSED_MOST:]
        if settings.words_checked == text:
            settings.words_checked = ""

    def is_refused(self, plan: Plan | None) -> bool:
        """Whether the words of a plan differed, and nobody has found them the same since."""
        refused = self._settings.words_refused
        return plan is not None and bool(refused) and self._text(plan) in refused

    def is_checked(self, plan: Plan) -> bool:
        """Whether the words of any plan, not the one at hand alone, were found the same."""
        return self._text(plan) == self._settings.words_checked

    def _text(self, plan: Plan) -> str:
        if self._last is None or self._last[0] is not plan:
            # Kept, because pages ask many times a second and words take a tenth of one.
            self._last = (plan, " ".join(plan_words(plan)))
        return self._last[1]

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
