"""What a therapist in a call can have changed between two sets, and the marking of moments.

Only in the layout for a call: a person alone never changes the dose by a key that slipped.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Literal

from tracker.plan.asked import Asked as EntryAsked
from tracker.practice.changing import Changed
from ui import words
from ui.session_planned import PlannedPart
from ui.session_state import LIVE_PHASES, NOTE_SHOWN_S, Phase
from ui.speaking import Grave

Wanted = Literal["tempo", "amplitude", "next", "undo"]
#: "Marked" is shown for so long (as long as a cue, see ``session_state.CUE_SHOWN_S``).
MARK_SHOWN_S = 3.0


@dataclass(frozen=True, slots=True)
class CallNote:
    """What was just changed, or why it was not; keys of the words and their values."""

    keys: tuple[str, ...]
    values: dict[str, Any] = field(default_factory=dict)

    @property
    def text(self) -> str:
        """In words."""
        return " ".join(words.say(key, **self.values) for key in self.keys)


class CallPart(PlannedPart):
    """Takes the wishes of a therapist in a call."""

    _call_note: CallNote | None = None
    _call_noted_s = _marked_s = float("-inf")

    @property
    def may_change(self) -> bool:
        """Whether what comes next may be changed: between sets, in the layout for a call."""
        conductor = self.conductor
        asking = self.phase == Phase.asking and self.sharing
        return asking and conductor is not None and conductor.changeable

    @property
    def coming(self) -> EntryAsked | None:
        """What comes next, with what was changed."""
        return None if self.conductor is None else self.conductor.coming

    def change_coming(self, what: Wanted, steps: int = 1) -> None:
        """Change what comes next by one step, say so, and keep it in the journal."""
        conductor = self.conductor
        if conductor is None or not self.may_change:
            return
        conductor.advance(self.now_s)
        if not self.may_change:
            # The rest was over just before.
            self._follow_task()
            return
        before = conductor.task
        found = conductor.change(what, steps)
        if conductor.task is not before:
            self._follow_task()
        self._call_note = note_of(found)
        self._call_noted_s = self.now_s
        self._say((Grave.note, 0), *self._call_note.keys, **self._call_note.values)
        self._changed()

    @property
    def call_note(self) -> str:
        """What was changed last, for a while."""
        fresh = self.now_s - self._call_noted_s < NOTE_SHOWN_S
        return self._call_note.text if self._call_note is not None and fresh else ""

    def mark_moment(self) -> None:
        """Mark this moment, in a set or between two."""
        recording = self._recording
        going_on = self.conductor is not None or self.phase in LIVE_PHASES
        if recording is None or not going_on:
            return
        entry = self.entry
        values = {} if entry is None else {"entry_id": entry.entry_id}
        recording.mark("marked", self.now_s, **values)
        self._marked_s = self.now_s
        self._changed()

    @property
    def just_marked(self) -> bool:
        """Whether a moment was marked just now."""
        return 0 <= self.now_s - self._marked_s < MARK_SHOWN_S


def note_of(found: Changed | str) -> CallNote:
    """The words of a change, or of a refusal."""
    if isinstance(found, str):
        return CallNote((f"call.refused.{found}",))
    back = ("call.taken_back",) if found.undone else ()
    if found.what == "next":
        name = words.say(f"exercise.{found.asked.exercise.id}")
        return CallNote((*back, "call.changed.next"), {"name": name})
    if found.what == "tempo":
        tempo = found.after[0] if isinstance(found.after, tuple) else found.after
        return CallNote((*back, "call.changed.tempo"), {"tempo": words.number(tempo)})
    low, high = (words.number(end) for end in found.after)
    return CallNote((*back, "call.changed.amplitude"), {"low": low, "high": high})
