"""What stands at the target in a set: count, degrees to each side and tempo; and the line below."""

from __future__ import annotations

from math import isfinite

from tracker.exercises.catalogue import CATALOGUE, HELD
from tracker.session.live import LiveState
from ui import words
from ui.session.asked import Asked
from ui.session.flow import Director
from ui.widgets.field import FieldState


class TargetFigures:
    """The figures at the target; remembers the last turn to each side.

    Parameters
    ----------
    director
        Its state says what is counted and measured now.
    """

    def __init__(self, director: Director) -> None:
        self._director = director
        self.forget()

    def forget(self) -> None:
        """The turns so far were of another set."""
        self._sides: dict[str, float] = {}
        self._last_index = -1

    def state(self, live: LiveState, asked: Asked | None, *, upright: bool) -> FieldState:
        """What the target's field shows.

        Parameters
        ----------
        live
            The engine's state.
        asked
            The step as it is asked.
        upright
            Whether a target that moves goes up and down.
        """
        jumps = asked is not None and bool(asked.offsets)
        moving = asked is not None and asked.path is not None
        turn = live.last_turn
        if turn is not None and turn.index != self._last_index:
            self._last_index = turn.index
            if isfinite(turn.reached_deg):
                self._sides[turn.side] = round(turn.reached_deg)
            elif isfinite(turn.amplitude_deg):
                # It turned back before the middle: what it did before on that side is over.
                self._sides.pop(turn.side, None)
        vertical = upright if moving else bool({"up", "down"} & set(self._sides))
        first, second = ("up", "down") if vertical else ("right", "left")
        tempo, counts = live.tempo_bpm, self._counts(asked)
        return FieldState(
            count=live.repetitions if counts else None,
            goal=live.goal_repetitions if counts else None,
            first_deg=self._sides.get(first),
            second_deg=self._sides.get(second),
            asked_deg=live.goal_amplitude_range_deg,
            tempo_bpm=None if tempo is None else round(tempo),
            asked_bpm=live.goal_tempo_bpm,
            side=0 if jumps or moving else self._director.side,
            vertical=vertical,
            measured=not self._director.not_measured,
            # A bow that went to and fro with the target would only be in the way.
            bow=not jumps and not moving,
            moving=moving,
        )

    def _counts(self, asked: Asked | None) -> bool:
        """Whether there is a count to show."""
        exercise = CATALOGUE.get(asked.step.exercise or "") if asked is not None else None
        held = exercise is not None and exercise.channel == HELD
        # A count with a gap in it would be taken for that of the set.
        return not held and not self._director.until_said and not self._director.count_lost


def set_line(director: Director, live: LiveState) -> str:
    """The one line of a set: what is wrong with the camera, a cue, or a note; often empty."""
    if director.trouble is not None:
        return words.say_or(f"trouble.{director.trouble.state}", "trouble.failed")
    if director.again_note:
        return words.say("lost.again")
    missing = director.not_measured
    if missing and live.elapsed_s > 1.0:
        return words.say("practice.not_measured", reason=words.reason(missing))
    cue = director.cue
    if cue and cue != "not_measured" and words.has(f"cue.{cue}"):
        return words.say(f"cue.{cue}")
    notes = (("disk", director.disk_note), ("busy", director.busy_note))
    note = next((words.say(f"practice.{name}") for name, now in notes if now), "")
    return note or (words.say("call.marked") if director.just_marked else "")
