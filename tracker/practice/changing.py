"""Changes that a therapist has made between two sets, in a session: what, how far, and back."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from tracker.plan.asked import Asked, asked_of
from tracker.plan.changes import Shift, What, shifted, why_not
from tracker.plan.model import Entry, Plan

#: Besides those of a dose: there is nothing to change, no other entry, nothing to take back.
REFUSALS = ("not_now", "only_one", "nothing_to_undo")


@dataclass(frozen=True, slots=True)
class Changed:
    """One change, as it holds now.

    Attributes
    ----------
    what
        ``tempo``, ``amplitude`` or ``next``.
    asked
        What the entry that comes next asks for now.
    before, after
        The value as it was, and as it is; of ``next`` the IDs of the entries.
    undone
        Whether a change was taken back.
    """

    what: Literal["tempo", "amplitude", "next"]
    asked: Asked
    before: Any
    after: Any
    undone: bool = False


class Changes:
    """Keeps what was changed in a session; the plan itself stays as it is.

    Parameters
    ----------
    plan, week
        The plan and its week.
    """

    def __init__(self, plan: Plan, week: int) -> None:
        self._plan, self._week = plan, week
        self._shifts: dict[str, Shift] = {}
        #: What can be taken back, newest last: an entry and its steps, or the entry before.
        self._back: list[tuple[Literal["tempo", "amplitude", "next"], str, int]] = []

    def asked(self, entry: Entry) -> Asked:
        """What an entry asks for, with what was changed."""
        return shifted(asked_of(entry, self._week), self._shift(entry.entry_id))

    def begin_set(self) -> None:
        """A set begins: what was changed before it can't be taken back any more."""
        self._back.clear()

    def dose(self, entry: Entry, what: What, steps: int) -> Changed | str:
        """Change tempo or amplitude of an entry by a step; or say why not."""
        name, shift = entry.entry_id, self._shift(entry.entry_id)
        refused = why_not(self._plan, entry, self._week, shift, what, steps)
        if refused:
            return refused
        self._back.append((what, name, steps))
        return self._shifted(entry, what, steps)

    def other_next(
        self, left: Sequence[Entry], can_come: Callable[[Entry], bool]
    ) -> tuple[list[Entry], Changed] | str:
        """The entries that are left with another one in front; or say why not.

        The one in front is followed by the next of the plan that can be done; the others
        stay in the plan's order.
        """
        order = self._in_order(left)
        at = order.index(left[0])
        others = [e for e in (*order[at + 1 :], *order[:at]) if can_come(e)]
        if not others:
            return "only_one"
        self._back.append(("next", left[0].entry_id, 0))
        return self._in_front(left, others[0])

    def undo(self, left: Sequence[Entry]) -> tuple[list[Entry], Changed] | str:
        """Take the last change back; gives the entries that are left, too."""
        by_id = {e.entry_id: e for e in left}
        # What is gone, or comes next anyhow, has nothing to be taken back.
        while self._back and (
            self._back[-1][1] not in by_id or self._back[-1][:2] == ("next", left[0].entry_id)
        ):
            self._back.pop()
        if not self._back:
            return "nothing_to_undo"
        what, name, steps = self._back.pop()
        if what == "next":
            entries, changed = self._in_front(left, by_id[name])
        else:
            entries, changed = list(left), self._shifted(by_id[name], what, -steps)
        back = Changed(changed.what, changed.asked, changed.before, changed.after, undone=True)
        return entries, back

    def told(self, entry: Entry) -> dict[str, list[Any]] | None:
        """What was changed of an entry: what the plan asks for, and what was asked."""
        plan, now = asked_of(entry, self._week), self.asked(entry)
        pairs = {
            "tempo_bpm": (plan.tempo_bpm, now.tempo_bpm),
            "amplitude_deg": (plan.amplitude_deg, now.amplitude_deg),
        }
        found = {name: [a, b] for name, (a, b) in pairs.items() if a != b}
        return found or None

    def _shift(self, entry_id: str) -> Shift:
        return self._shifts.get(entry_id, Shift())

    def _shifted(self, entry: Entry, what: What, steps: int) -> Changed:
        before = _value(self.asked(entry), what)
        self._shifts[entry.entry_id] = self._shift(entry.entry_id).stepped(what, steps)
        asked = self.asked(entry)
        return Changed(what, asked, before, _value(asked, what))

    def _in_front(self, left: Sequence[Entry], entry: Entry) -> tuple[list[Entry], Changed]:
        rest = [e for e in self._in_order(left) if e is not entry]
        names = left[0].entry_id, entry.entry_id
        return [entry, *rest], Changed("next", self.asked(entry), *names)

    def _in_order(self, left: Sequence[Entry]) -> list[Entry]:
        places = {e.entry_id: k for k, e in enumerate(self._plan.entries)}
        return sorted(left, key=lambda e: places[e.entry_id])


def _value(asked: Asked, what: What) -> Any:
    return asked.tempo_bpm if what == "tempo" else asked.amplitude_deg
