"""One set of a planned session: how it is led, how long it lasts, how it begins and ends."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import inf, nan
from typing import Any

from tracker.exercises.catalogue import needs_body
from tracker.practice.conductor import STANDING_COUNTDOWN_S
from tracker.practice.tasks import CountDown, DoSet
from tracker.sample import Sample
from tracker.session.stage import Step
from ui.geometry import facing_map
from ui.session.asked import Asked, has_target, planned_asked, too_small
from ui.session.clock import is_seen
from ui.session.guiding import Guiding
from ui.session.hands_free import (
    LOOK_EVERY_S,
    HandsFree,
    InSight,
    Seen,
    hand_held_s,
    stops_by_hand,
    stops_by_leaving,
    stops_by_sight,
)
from ui.session.place import PlacePart
from ui.session.seat import seat_done_words
from ui.session.set_clock import SetClock
from ui.session.set_told import SetTold
from ui.session.state import COUNTDOWN_S, Dose, Phase
from ui.sounds.speaking import Grave

#: What the camera doesn't count lasts until the patient says "done", or this long.
_UNTIL_SAID_S = 3600.0
#: Who is waited for is called again after so long.
_CALLED_AGAIN_S = 10.0


class SetPart(PlacePart):
    """Begins, holds and ends the set that the plan asks for."""

    #: What the set that goes on says of its distance, if that is not the one asked for.
    _seat_off: dict[str, int] | None = None
    #: Whether the camera has missed some of this set, so that the person's count is asked for.
    count_lost = False
    #: Whether who stands up, and is not seen, is being asked whether all is well.
    _asks_if_well = False

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        self._set_clock = SetClock()
        self._hands_free, self._in_sight = HandsFree(), InSight()
        self._called_s = nan
        self._seen_to_stop: Seen = ""
        #: Whether the last stop was of somebody who dropped out of the picture.
        self._stopped_unseen = False
        self._told_of = SetTold()
        #: What gives the lines that the last set is told in.
        self._telling: list[Callable[[], tuple[str, ...]]] = []

    def set_done(self) -> None:
        """The set is over: its dose is done, or the patient has stopped it."""
        raise NotImplementedError

    def refuse_set(self, reason: str) -> None:
        """The set can't begin, or not go on, as it is."""
        raise NotImplementedError

    # --- how it is led, and how long it lasts ---

    @property
    def target_coming(self) -> bool:
        """Whether the eyes will have a target on the screen."""
        entry = self.entry
        return entry is None or has_target(entry)

    @property
    def until_said(self) -> bool:
        """Whether the set lasts until the patient says that it is done."""
        entry = self.entry
        return entry is not None and not entry.exercise.counted and entry.seconds is None

    @property
    def set_left_s(self) -> float:
        """How long the set still lasts; infinite where a count or the patient ends it."""
        return self._set_clock.left_s(self.now_s)

    @property
    def set_ran_s(self) -> float:
        """How long the set has gone on, pauses left out."""
        return self._set_clock.ran_s(self.now_s)

    @property
    def _reps_done(self) -> int:
        """Repetitions of this set, those before a pause too."""
        recording = self._recording
        return 0 if recording is None else recording.repetitions - self._reps_before

    @property
    def set_told(self) -> tuple[str, ...]:
        """What the last set was, in words; empty where the camera doesn't count it.

        To be asked anew while it is shown: its last moment is judged only after its end.
        """
        return tuple(line for lines in self._telling for line in lines())

    @property
    def waits_for_sight(self) -> bool:
        """Whether a set that should begin waits for somebody to come into the picture."""
        return self.phase == Phase.countdown and self._in_sight.waits

    def _not_in_sight(self, now_s: float) -> bool:
        """Whether who stands for a set is not in the picture at the end of a countdown."""
        entry = self.entry
        if entry is None or entry.posture == "sitting" or not is_seen(entry):
            return False
        told = self._in_sight.waits and now_s - self._called_s < _CALLED_AGAIN_S
        waits = not self._in_sight.may_begin(self.sample, now_s)
        if waits and not told:
            self._called_s = now_s
            self._say((Grave.edge, 0), "cue.left_picture")
        return waits

    def _stopped_by_sight(self) -> bool:
        """Whether the person has sat down, stepped out or raised a hand to stop a set."""
        seen, self._seen_to_stop = self._seen_to_stop, ""
        if seen == "ask":
            self._mark_and_ask()
            return False
        self._stopped_unseen = seen == "left" and self._hands_free.dropped
        if seen and self._recording is not None:
            self._recording.mark("stopped_by_sight", self.now_s, seen=seen)
        return bool(seen)

    def _mark_and_ask(self) -> None:
        """Who stands up has been out of the picture for long: ask aloud whether all is well."""
        if self._recording is not None:
            self._recording.mark("asked_if_well", self.now_s)
        self._asks_if_well = True
        self._say((Grave.fall, 0), "cue.possible_fall", "say.out_of_sight", led="voice")

    @property
    def asks_if_well(self) -> bool:
        """Whether it is to be read now that a person out of the picture is asked how they are."""
        return self._asks_if_well and self.phase == Phase.exercise

    def _look_for_stop(self, sample: Sample) -> None:
        """Take each sample: a hand is looked for in few of them, and none may be missed."""
        if sample.reason != "no_face":
            self._asks_if_well = False
        if self.phase == Phase.exercise and isinstance(self.task, DoSet):
            seen = self._hands_free.take(sample)
            # A question is never more than what stops.
            if seen and not (seen == "ask" and self._seen_to_stop):
                self._seen_to_stop = seen

    # --- its beginning, its pauses, its end ---

    def _count_down(self, task: CountDown) -> None:
        """Count down to a set that has not begun yet."""
        assert task.asked is not None
        self._in_sight.begin()
        # What finds the body takes a moment to begin.
        self._watch_body(task.asked.exercise.id)
        self._set_clock = SetClock(task.asked.seconds or inf)
        self._told_of, self._telling = SetTold(task.asked.exercise.channel), []
        self._seat_off = None
        self._reps_before = self._recording.repetitions if self._recording else 0
        self.dose = Dose(
            task.asked.exercise.id, task.asked.repetitions, _pace(task.asked.tempo_bpm)
        )
        self._count_from_s = task.until_s - COUNTDOWN_S
        self._lead_in(task.asked, task.until_s - self.now_s)
        self._enter(Phase.countdown)

    def _count_on(self) -> None:
        """As at the beginning: who stands goes back to the place first."""
        entry = self.entry
        self._in_sight.begin()
        self._watch_body(None if entry is None else entry.exercise.id)
        if entry is not None and entry.posture != "sitting":
            self._count_from_s += STANDING_COUNTDOWN_S - COUNTDOWN_S
        self._lead_in(entry, self.countdown_s, again=True)

    def _begin_set(self, task: DoSet) -> None:
        """The set begins, or goes on after a pause with what is left of it."""
        entry, conductor = task.asked, self.conductor
        assert entry is not None and conductor is not None
        left = None
        if entry.repetitions is not None:
            left = max(entry.repetitions - self._count_to_end, 0)
        left_s = self._set_clock.left_s(self.now_s)
        if left == 0 or left_s <= 0:
            self.set_done()
            return
        if self._refuses_still(entry):
            self.refuse_set("still_screen")
            return
        extent = self._extent()
        if too_small(entry, extent, self._rest_distance_mm):
            self.refuse_set("small_screen")
            return
        asked = planned_asked(
            self.now_s,
            entry,
            repetitions=left,
            seconds=_UNTIL_SAID_S if self.until_said else left_s,
            extent=extent,
            to_rest=self._map or facing_map(self._rest_distance_mm, extent.centre_mm),
            distance_mm=self._rest_distance_mm,
        )
        self._add(asked, begin=False)
        number = conductor.begin_set(asked.step)
        self._note_seat(number)
        self._set_clock.go(asked.step.from_s)
        self._seen_to_stop, self._asks_if_well = "", False
        guide = entry.exercise.guide
        self.guiding = None if guide is None else Guiding(guide, entry.repetitions or 1)
        self._hands_free.begin(
            asked.step.from_s,
            by_place=stops_by_sight(entry),
            by_leaving=stops_by_leaving(entry),
            by_hand=stops_by_hand(entry),
            held_s=hand_held_s(entry.exercise.id),
        )
        self._sound(asked.step)
        self._say_begin()
        self._enter(Phase.exercise if is_seen(entry) else Phase.asking)

    def _note_seat(self, number: int) -> None:
        """Keep with the set that it is surely done at another distance than was asked for."""
        off = self.seat_off
        if off is not None and self._recording is not None:
            self._recording.answer("seat_off", off, number)
            self._seat_off = off

    def _rest_from_now(self) -> None:
        """Whatever was asked for is over, in the recording too."""
        self._world.beats.stop()
        if isinstance(self.task, DoSet) and self.asked is not None:
            now_s = self.now_s
            self._add(Asked(Step(from_s=now_s, to_s=now_s + _UNTIL_SAID_S, step="rest")))

    def _follow_set(self) -> None:
        """Keep what will be told of the set that goes on."""
        live = self.live
        if live is not None and self._set_clock.runs:
            self._told_of.take(live, self.set_ran_s, measured=not self.not_measured)

    def _end_step(self) -> None:
        """No more of the set is asked for; the conductor tells the recording."""
        self._world.beats.stop()
        self._watch_body(None)
        self.guiding = None
        now_s, entry = self.now_s, self.entry
        self._telling = []
        if entry is not None and entry.exercise.counted and not self.count_lost:
            told, goal = self._told_of, entry.repetitions
            # It takes no more.
            self._told_of = SetTold()
            self._telling.append(lambda: told.lines(self._reps_done, goal))
        if (off := self._seat_off) is not None:
            self._telling.append(lambda: (seat_done_words(off),))
        self._asked = [
            replace(a, step=a.step.model_copy(update={"to_s": min(a.step.to_s, now_s)}))
            if a.step.from_s < now_s
            else a
            for a in self._asked
        ]

    def _watch_body(self, exercise: str | None) -> None:
        entry = self.entry
        seldom = entry is not None and stops_by_hand(entry) and not needs_body(exercise)
        if self._service is not None and exercise is not None and seldom:
            self._service.watch_body(True, LOOK_EVERY_S)
            return
        super()._watch_body(exercise)

    def _pause(self) -> None:
        self._set_clock.hold(self.now_s)
        super()._pause()


def _pace(tempo: float | tuple[float, float] | None) -> float | None:
    """One figure for a tempo that may rise: where it begins."""
    return tempo[0] if isinstance(tempo, tuple) else tempo
