"""What a therapist in a call can have changed between two sets, and the marking of moments.

Only in the layout for a call, and only once it was said in this session that the therapist
is in the call and asks for it: the layout alone can be switched on by anybody.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any, Literal

from tracker.plan.asked import Asked as EntryAsked
from tracker.plan.changes import AMPLITUDE_LEAST_DEG, Shift, shifted
from tracker.practice.changing import Changed
from ui import words
from ui.session.asked import shown_amplitude
from ui.session.planned import PlannedPart
from ui.session.state import LIVE_PHASES, NOTE_SHOWN_S, Phase
from ui.sounds.speaking import Grave

Wanted = Literal["tempo", "amplitude", "next", "undo"]
#: "Marked" is shown for so long (as long as a cue, see ``session_state.CUE_SHOWN_S``).
MARK_SHOWN_S = 3.0
#: More steps of the amplitude than any range has.
MOST_STEPS = 50


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
    #: Whether it was said in this session that the therapist asks for changes.
    _therapist_asks = False
    #: The change that waits for that to be said.
    _call_wanted: tuple[Wanted, int] | None = None

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

    @property
    def coming_shown(self) -> EntryAsked | None:
        """The same, with the amplitude that the screen carries."""
        coming = self.coming
        return None if coming is None else replace(coming, amplitude_deg=self._carried(coming))

    def _carried(self, asked: EntryAsked) -> tuple[float, float] | None:
        extent = self.extent_of_set(asked.exercise.id)
        return shown_amplitude(asked, extent, self._rest_distance_mm)

    def _screen_steps(self, steps: int) -> int:
        """Steps of the amplitude until something else is shown than now; 0 where nothing is.

        A target that the screen carries only in part must become so much smaller first.
        """
        asked = self.coming
        if asked is None or asked.amplitude_deg is None:
            return steps
        now = self._carried(asked)
        if now == asked.amplitude_deg:
            return steps
        if steps > 0:
            return 0
        for more in range(1, MOST_STEPS):
            smaller = shifted(asked, Shift(amplitude=more * steps))
            reach = smaller.amplitude_deg
            if reach is None or reach[0] < AMPLITUDE_LEAST_DEG or self._carried(smaller) == reach:
                return more * steps
        return steps

    def change_coming(self, what: Wanted, steps: int = 1) -> None:
        """Change what comes next by one step, say so, and keep it in the journal.

        Before the first change of a session it only asks whether the therapist wants it.
        """
        conductor = self.conductor
        if conductor is None or not self.may_change:
            return
        if not self._therapist_asks:
            self._call_wanted = what, steps
            self._say((Grave.note, 0), "call.ask")
            self._changed()
            return
        conductor.advance(self.now_s)
        if not self.may_change:
            # The rest was over just before.
            self._follow_task()
            return
        before = conductor.task
        if what == "amplitude":
            steps = self._screen_steps(steps)
        found: Changed | str = "screen"
        if steps:
            found = conductor.change(what, steps, confirmed=True)
        if conductor.task is not before:
            self._follow_task()
        carried = None if isinstance(found, str) else self._carried(found.asked)
        self._call_note = note_of(found, carried)
        self._call_noted_s = self.now_s
        self._say((Grave.note, 0), *self._call_note.keys, **self._call_note.values)
        self._changed()

    @property
    def call_question(self) -> bool:
        """Whether it is to be said now that the therapist is in the call and asks for it."""
        return self._call_wanted is not None and self.may_change

    def answer_call(self, *, asks: bool) -> None:
        """Say whether the therapist asks for the change; then it is made, or it is not."""
        wanted, self._call_wanted = self._call_wanted, None
        if wanted is not None and asks and self.may_change:
            self._therapist_asks = True
            self.change_coming(*wanted)
        self._changed()

    def _begin_plan(self) -> None:
        if self.conductor is None:
            self._forget_call()
        super()._begin_plan()

    def _finish(self, ended: str) -> None:
        self._forget_call()
        super()._finish(ended)

    def _follow_task(self) -> None:
        # A question about what came next is none about what comes next now.
        self._call_wanted = None
        super()._follow_task()

    def _forget_call(self) -> None:
        """What was said of a therapist in the call holds for one session."""
        self._therapist_asks, self._call_wanted = False, None

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


def note_of(found: Changed | str, carried: tuple[float, float] | None = None) -> CallNote:
    """The words of a change with the amplitude that the screen carries, or of a refusal."""
    if isinstance(found, str):
        return CallNote((f"call.refused.{found}",))
    back = ("call.taken_back",) if found.undone else ()
    if found.what == "next":
        name = words.say(f"exercise.{found.asked.exercise.id}")
        return CallNote((*back, "call.changed.next"), {"name": name})
    if found.what == "tempo":
        tempo = found.after[0] if isinstance(found.after, tuple) else found.after
        return CallNote((*back, "call.changed.tempo"), {"tempo": words.number(tempo)})
    low, high = (words.number(end) for end in carried or found.after)
    return CallNote((*back, "call.changed.amplitude"), {"low": low, "high": high})
