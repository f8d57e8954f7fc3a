"""After a sudden drop of the head: how the person is, and what follows of it for the session."""

from __future__ import annotations

from collections.abc import Generator, Mapping, Sequence
from typing import Any

from tracker.plan.unlocking import ENDED_BADLY
from tracker.practice.asking import Asking, Dropped, End, Flow, Unwell
from tracker.practice.tasks import AskWell, Task
from tracker.session.said import AFTER_DROP, CLOSED, NO_ANSWER

#: So long an answer is waited for after a sudden drop of the head (own choice: to collect oneself
#: and walk some steps back to the keys takes that long; nobody is called at its end).
WELL_S = 60.0


class AskingWell(Asking):
    """Asks after a drop; its arguments are those of what asks around the sets.

    Attributes
    ----------
    numbers
        Steps of the set that is being done.
    """

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        self.numbers: list[int] = []
        #: What was answered after each drop so far, with the steps of its set.
        self._drops: list[tuple[Sequence[int], dict[str, Any]]] = []

    def _ask_well(self, dropped: Dropped) -> Flow:
        """Ask how the person is, and end the session unless they only sat down and are fine.

        Who is fine, and had wished to end for today, is not led on.

        It is kept as not answered from the first: a session that breaks off while nobody
        answers must say so. Who is not well is asked the safety questions, as anywhere else.
        """
        asked_s = self.now_s
        about: dict[str, Any] = {"seen": dropped.seen, "answer": None, "seconds": None}
        self._keep_drop(about, self.numbers)
        given, unsaid, shown = None, NO_ANSWER, True
        try:
            given = yield from self._answer_of(AskWell(until_s=asked_s + WELL_S))
        except Unwell:
            given = "not_well"
        except End as end:
            # Whoever leaves has not said how they are, and yet was there.
            unsaid, shown, about = CLOSED, end.shown, {**about, "closed": True}
        if given is not None:
            seconds = round(self.now_s - asked_s, 1)
            about = {**about, "answer": given, "seconds": seconds}
        # It may not have been decided yet when it was asked about.
        about["seen"] = about["seen"] or self._stayed_down(self.numbers)
        self._keep_drop(about, self.numbers)
        self._drops.append((self.numbers, about))
        if given == "fine" and not about["seen"]:
            if dropped.leaving:
                raise End("stopped")
            return
        because: tuple[str, ...] = (given or unsaid,)
        if given == "not_well":
            found = yield from self._safety_again()
            because += () if found is None else found.because
        raise End("possible_fall", because, shown=shown)

    def _answer_of(self, task: AskWell) -> Generator[Task, Any, str | None]:
        """The answer; nobody is fine while the head still drops, however far it has come.

        That is decided soon, also where nothing comes of it any more (``PossibleFall``).
        """
        while True:
            given: str | None = yield task
            if given != "fine" or not self._recorder.dropping(self.numbers, at_all=True):
                return given

    def _stayed_down(self, numbers: Sequence[int]) -> bool:
        return self._recorder.dropped(numbers) == "seen"

    def _judged_anew(self, end: End) -> End:
        """The end by what came out of a drop after it was asked about: seen to stay down after all.

        Then the session ends with it, as it would have, whatever was practised since.
        """
        for numbers, about in self._drops:
            if about["seen"] or not self._stayed_down(numbers):
                continue
            # What is kept with the session is the answer to the last drop.
            last = about is self._drops[-1][1]
            self._keep_drop({**about, "seen": True}, numbers, of_session=last)
            if end.ended not in ENDED_BADLY:
                end = End("possible_fall", (about["answer"],), shown=end.shown)
        return end

    def _keep_drop(
        self, about: Mapping[str, Any], numbers: Sequence[int], *, of_session: bool = True
    ) -> None:
        """Keep what was said after a drop with the session, and with the set that it was in."""
        if of_session:
            self._recorder.answer(AFTER_DROP, about)
        for number in numbers:
            self._recorder.answer(AFTER_DROP, about, number)

    def _safety_again(self) -> Generator[Task, Any, End | None]:
        """The safety questions of who is not well; the end that came of them, if one did."""
        self._keep_unwell()
        try:
            yield from self._ask_gate("unwell")
        except End as end:
            return end
        except Unwell:
            pass
        return None

    def _of_set(self, about: str, value: Any) -> None:
        """Write an answer for every step of the set: a pause makes several."""
        for number in self.numbers:
            self._recorder.answer(about, value, number)
