"""One exercise while it runs: its counter, its watchers, its events and what is said."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, replace
from math import isfinite, nan
from typing import Any

from tracker.exercises.catalogue import Exercise, Eyes, WatcherSpec
from tracker.exercises.catalogue.model import ON_FEET
from tracker.exercises.counters import SEEN, channel_of
from tracker.exercises.events import (
    AGAIN_S,
    AT_ITS_OWN,
    AT_ONCE,
    CUE_SPACING_S,
    CUE_STALE_S,
    PRIORITY,
    SAID_AGAIN,
    Cue,
    Event,
)
from tracker.exercises.hands import ArmsOfBends
from tracker.exercises.near_hand import counter_for
from tracker.exercises.watchers import (
    Asked,
    Change,
    Watcher,
    is_measured,
    least_turn_deg,
    make_watcher,
    off_target_limit_deg,
    tempo_of,
)
from tracker.exercises.watchers.falls import LOOK_ON_S, NOT_TO_ITS_END, PossibleFall
from tracker.motion.drift import Pace
from tracker.motion.speed import LOOK_AHEAD_S
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.derive import BEYOND, UNLIKE, UNLIKE_AROUND
from tracker.session.journal import Journal
from tracker.session.journal_line import Record
from tracker.session.live import Dropped
from tracker.session.stage import Step
from tracker.targets import Growth, lowered, tempo_of_target, track_swing_deg
from tracker.tempo import beats_until

#: So long a moved head may be why the eyes aren't read; then that nothing is measured is the
#: thing to say, whatever the head does (this project's own choice).
EXPLAINED_S = 2.0
#: After so long it is said that the head moved: as soon as "not measured" would have been.
UNREAD_S = 0.5


class ExerciseRun:
    """Judges the samples of one exercise step.

    Parameters
    ----------
    number
        Number of the step in its session.
    step, exercise
        What was asked.
    journal
        Where turns, events and what was said go.
    last_cue_s
        When something was last said, NaN if never.
    gaze_error_deg
        Error of the gaze against the target, as for
        :func:`tracker.exercises.watchers.off_target_limit_deg`.
    tell
        Gives a cue to the person, and whether they get to know of it.
    """

    def __init__(
        self,
        number: int,
        step: Step,
        exercise: Exercise,
        journal: Journal,
        last_cue_s: float = nan,
        gaze_error_deg: float = nan,
        *,
        tell: Callable[[Cue], bool] = lambda _: True,
    ) -> None:
        self.number, self.step, self.exercise = number, step, exercise
        unknown = bool((step.model_extra or {}).get("no_setup"))
        self._amplitude = amplitude_asked(step, exercise)
        pace = pace_asked(step, self._amplitude)
        self.counter = counter_for(
            channel_of(exercise.channel), known_person=not unknown, pace=pace
        )
        self.events: list[Event] = []
        self.cue: Cue | None = None
        self.last_cue_s = last_cue_s
        self.last_measured_s = nan
        self._journal = journal
        self._watchers: list[Watcher] = [
            make_watcher(spec, self.counter.channel, step.from_s, self._head_explains)
            for spec in (_suited(s, gaze_error_deg) for s in _watchers(step, exercise))
            if spec is not None and spec.name not in _not_watched(step, exercise)
        ]
        self._ended_s = nan
        #: What still looks whether a drop of the head becomes a fall, the step being over.
        self._looking: PossibleFall | None = None
        self._arms = ArmsOfBends() if exercise.channel == "head_reach" else None
        self._open: dict[str, int] = {}
        self._last_s = step.from_s
        self._said_s: dict[int, float] = {}
        self._tell = tell
        #: What was to be said at once, and nobody heard.
        self._unheard: list[int] = []
        self._unread_from_s = nan

    def asked_at(self, time_s: float) -> Asked:
        """Amplitude and tempo that the patient was asked for at a time."""
        share, wanted = grown_share(self.step, time_s), self._amplitude
        now = wanted if wanted is None else (share * wanted[0], share * wanted[1])
        return Asked(now, tempo_asked(self.step, time_s))

    def feed(self, sample: Sample) -> None:
        """Take the next sample, with its speeds, target and gaze."""
        self._last_s = sample.time_s
        if is_measured(sample, self.counter.channel):
            self.last_measured_s = sample.time_s
        if isfinite(self.counter.channel.read(sample)):
            self._unread_from_s = nan
        elif not isfinite(self._unread_from_s):
            # A blink in between reads nothing either.
            self._unread_from_s = sample.time_s
        if self._arms is not None:
            self._arms.feed(sample)
        for watcher in self._watchers:
            self._note(watcher, watcher.feed(sample), sample.time_s + LOOK_AHEAD_S)
        self._say_unheard(sample.time_s + LOOK_AHEAD_S)
        if self._head_explains(sample) and sample.time_s - self._unread_from_s >= UNREAD_S:
            self._say_head_moved(sample.time_s + LOOK_AHEAD_S)
        for turn in self.counter.feed(sample):
            self._take(turn, sample.time_s)
        if self.counter.channel is SEEN or self._open.keys() & AT_ITS_OWN:
            # What is held, or is not counted, has no turning points to wait for.
            self._say(sample.time_s + LOOK_AHEAD_S)

    def wait(self, now_s: float) -> None:
        """Nothing came up to now."""
        for watcher in self._watchers:
            self._note(watcher, watcher.wait(now_s), now_s)
        self._say_unheard(now_s)

    def finish(self, time_s: float) -> None:
        """The step ended."""
        self.wait(time_s)
        for turn in self.counter.finish():
            self._take(turn, time_s)
        self._ended_s = time_s
        for watcher in self._watchers:
            if isinstance(watcher, PossibleFall) and not watcher.on:
                watcher.look_on(time_s)
                self._looking = watcher
            else:
                self._note(watcher, watcher.finish(time_s), time_s)

    @property
    def looks_on(self) -> bool:
        """Whether what comes after the step's end is of use: a drop in it may become a fall."""
        if isfinite(self._ended_s):
            return self._looking is not None
        return any(isinstance(w, PossibleFall) for w in self._watchers)

    def look_on(self, now_s: float, sample: Sample | None = None) -> None:
        """Look whether a drop that began in the step becomes a fall; ``None``: nothing came."""
        watcher = self._looking
        if watcher is None:
            return
        changes = watcher.wait(now_s) if sample is None else watcher.feed(sample)
        self._note(watcher, changes, now_s)
        if watcher.on or (not watcher.undecided and now_s - self._ended_s >= LOOK_ON_S):
            self._look_no_more(watcher, now_s)

    def give_up(self) -> None:
        """No more comes: a drop that is not decided is, by what was seen of it."""
        watcher = self._looking
        if watcher is not None:
            # Nobody is there any more to whom it could be said.
            self._note(watcher, watcher.give_up(), self._ended_s, said=False)
            self._look_no_more(watcher, self._ended_s)

    def _look_no_more(self, watcher: PossibleFall, now_s: float) -> None:
        """What was found lasts to the end of the step that it is of."""
        self._note(watcher, watcher.finish(self._ended_s), now_s)
        self._looking = None

    def drops(self, *, at_all: bool) -> bool:
        """Whether the head drops now and is still looked at: deep enough if no more came of it.

        ``at_all``: however little there is of it.
        """
        looking = [self._looking] if isfinite(self._ended_s) else self._watchers
        falls = [w for w in looking if isinstance(w, PossibleFall)]
        return any(w.undecided if at_all else w.cut_short for w in falls)

    @property
    def dropped(self) -> Dropped:
        """Whether the head dropped in this step, up again or not; seen counts more than lost."""
        falls = [e for e in self.events if e.code == PossibleFall.code]
        if not falls:
            return ""
        return "lost" if all(e.reason in NOT_TO_ITS_END for e in falls) else "seen"

    @property
    def untold(self) -> tuple[str, ...]:
        """What the camera could not tell of what was done, and the person can: ``arm``."""
        arms = [] if self._arms is None else self._arms.arms
        # Where nothing was seen at all something may have been done all the same.
        blind = self._arms is not None and not isfinite(self.last_measured_s)
        return ("arm",) if blind or None in arms else ()

    @property
    def tempo_bpm(self) -> float | None:
        """Tempo of the last turns, None before three of them."""
        last = self.counter.turns[-4:]
        tempo = tempo_of(last) if len(last) >= 3 else nan
        return tempo if isfinite(tempo) else None

    def _take(self, turn: Turn, time_s: float) -> None:
        values = {k: _plain(v) for k, v in asdict(turn).items()}
        self._journal.append({"kind": "turn", "number": self.number, **values})
        if self._arms is not None:
            self._arms.take(turn)
        asked = self.asked_at(turn.peak_s)
        for watcher in self._watchers:
            self._note(watcher, watcher.turn(turn, asked), time_s + LOOK_AHEAD_S)
        self._say(time_s + LOOK_AHEAD_S)

    def _note(
        self, watcher: Watcher, changes: list[Change], now_s: float, *, said: bool = True
    ) -> None:
        for change in changes:
            if change.began:
                start_s = max(change.time_s, self.step.from_s)
                self._open[watcher.code] = len(self.events)
                self.events.append(
                    Event(watcher.code, start_s, decided_s=now_s, reason=change.reason)
                )
                self._write(len(self.events) - 1)
                if said and watcher.code in AT_ONCE and not self._worse_is_on(watcher.code):
                    self._speak(len(self.events) - 1, now_s)
            elif watcher.code in self._open:
                index = self._open.pop(watcher.code)
                self.events[index] = replace(self.events[index], end_s=change.time_s)
                self._write(index)

    def _head_explains(self, sample: Sample) -> bool:
        """Whether only the eyes are not read, and a head that moved along is why.

        It takes them beyond what the set-up taught, and that it moved is the thing to say;
        for a while, since a patient must not go on for long with nothing measured and not know.
        What is counted from head or body lacks more than the eyes.
        """
        return (
            self.counter.channel.name.startswith("eye")
            and "head_moved" in self._open
            and sample.reason in (UNLIKE, UNLIKE_AROUND, BEYOND)
            and sample.time_s - self._unread_from_s < EXPLAINED_S
        )

    def _say_head_moved(self, now_s: float) -> None:
        """At once: eyes that are not read give no turning point to wait for."""
        index = self._open["head_moved"]
        if self._due(index, now_s) and not self._worse_is_on("head_moved"):
            self._speak(index, now_s)

    def _worse_is_on(self, code: str) -> bool:
        """Whether something graver, that was said at once, still lasts."""
        return any(other in AT_ONCE and _rank(other) < _rank(code) for other in self._open)

    def _say(self, now_s: float) -> None:
        """At a turning point: the most important thing not said yet, if any."""
        if now_s - self.last_cue_s < CUE_SPACING_S:
            return
        waiting = [
            k
            for k, e in enumerate(self.events)
            if self._due(k, now_s) and e.code not in AT_ONCE and not now_s - e.end_s > CUE_STALE_S
        ]
        if waiting:
            best = min(waiting, key=self._order)
            self._speak(best, now_s)

    def _due(self, index: int, now_s: float) -> bool:
        """Whether an event hasn't been said, or still lasts long after it was."""
        if index not in self._said_s:
            return True
        code = self.events[index].code
        lasts = self._open.get(code) == index
        return code in SAID_AGAIN and lasts and now_s - self._said_s[index] >= AGAIN_S

    def _order(self, index: int) -> tuple[bool, int, float]:
        """What was never said comes first, then the graver, then the earlier."""
        event = self.events[index]
        return index in self._said_s, _rank(event.code), event.start_s

    def _say_unheard(self, now_s: float) -> None:
        """What nobody heard when it was to be said at once, for as long as it lasts."""
        unheard, self._unheard = self._unheard, []
        for index in unheard:
            code = self.events[index].code
            if self._open.get(code) != index:
                continue
            if self._worse_is_on(code):
                self._unheard.append(index)
            else:
                self._speak(index, now_s)

    def _speak(self, index: int, now_s: float) -> None:
        event = self.events[index]
        # Whoever else looks at the screen sees it in any case.
        self.cue = cue = Cue(event.code, now_s, event.reason)
        if not self._tell(cue):
            if event.code in AT_ONCE:
                self._unheard.append(index)
            return
        if index not in self._said_s:
            event = replace(event, said_at_s=now_s)
            self.events[index] = event
            self._write(index)
        self._said_s[index] = now_s
        self.last_cue_s = now_s
        self._journal.append(
            {"kind": "said", "number": self.number, "code": event.code, "time_s": _plain(now_s)}
        )

    def _write(self, index: int) -> None:
        values = {k: _plain(v) for k, v in asdict(self.events[index]).items()}
        record: Record = {"kind": "event", "number": self.number, "id": f"{self.number}.{index}"}
        self._journal.append(record | values)


def amplitude_asked(step: Step, exercise: Exercise) -> tuple[float, float] | None:
    """Least and most amplitude asked, lowered where the screen carries less of a target's swing."""
    wanted = amplitude_wanted(step, exercise)
    swing = target_swing_deg(step, exercise)
    return wanted if wanted is None or swing is None else lowered(wanted, swing)


def target_swing_deg(step: Step, exercise: Exercise) -> float | None:
    """Swing to each side of a target that goes to and fro; None where there is none.

    As the step has it; else from its track, if that is long enough to have been at both
    sides, which takes two beats.
    """
    track = step.target_track
    if not exercise.target or not track:
        return None
    own = (step.model_extra or {}).get("target_swing_deg")
    if isinstance(own, int | float) and 0.0 < own < 90.0:
        return float(own)
    seconds = track[-1][0] - track[0][0]
    beats = beats_until(tempo_of_target(step.tempo_bpm), seconds, seconds)
    return track_swing_deg(track) if beats > 1.99 else None


def amplitude_wanted(step: Step, exercise: Exercise) -> tuple[float, float] | None:
    """What the plan wants: the step's own ``amplitude_deg``, else the exercise's."""
    own = (step.model_extra or {}).get("amplitude_deg")
    pair = own if isinstance(own, list | tuple) else (own, own)
    if len(pair) == 2 and all(isinstance(v, int | float) and isfinite(v) for v in pair):
        return float(pair[0]), float(pair[1])
    return exercise.amplitude_deg


def grown_share(step: Step, time_s: float) -> float:
    """What share of the amplitude was asked at a time, of a set that is small at first."""
    growth = Growth.from_log((step.model_extra or {}).get("grows"))
    return growth.share_at(time_s - step.from_s)


def tempo_asked(step: Step, time_s: float) -> float | None:
    """Tempo asked at a time, None where the patient goes at their own pace."""
    return step.tempo_at(time_s)


def pace_asked(step: Step, amplitude_deg: tuple[float, float] | None) -> Pace:
    """What is a drift in a step, by its slowest beat and the least that it asks for anywhere."""
    tempo = min(step.tempo_bpm) if isinstance(step.tempo_bpm, tuple) else step.tempo_bpm
    least = amplitude_deg and amplitude_deg[0] * grown_share(step, step.from_s)
    return Pace.of(tempo, least)


def seconds_asked(step: Step, exercise: Exercise) -> float | None:
    """Seconds asked: the step's own ``seconds``, else the usual; None for a counted dose."""
    extra: dict[str, Any] = step.model_extra or {}
    own = extra.get("seconds")
    if isinstance(own, int | float) and isfinite(own) and own > 0:
        return float(own)
    return None if repetitions_asked(step, exercise) is not None else exercise.dose_seconds


def eyes_asked(step: Step, exercise: Exercise) -> Eyes:
    """Whether the eyes were asked to be open or shut."""
    return step.eyes or exercise.eyes


def posture_asked(step: Step, exercise: Exercise) -> str:
    """How the patient was asked to be: sitting, standing or walking."""
    return step.posture or exercise.posture


#: Watchers whose limit follows from how well the gaze is read.
_BY_ERROR = frozenset({"gaze_off_target", "gaze_short"})


def _watchers(step: Step, exercise: Exercise) -> tuple[WatcherSpec, ...]:
    """The exercise's own watchers, and what is watched of whoever stands for a seated one."""
    own = exercise.watchers
    if posture_asked(step, exercise) != "standing" or exercise.posture == "standing":
        return own
    names = {spec.name for spec in own}
    return (*own, *(spec for spec in ON_FEET if spec.name not in names))


def _suited(spec: WatcherSpec, gaze_error_deg: float) -> WatcherSpec | None:
    """The watcher with a limit that suits how well the gaze is read; None where none does."""
    if spec.name == "eyes_not_with_head":
        least = least_turn_deg(gaze_error_deg)
        return replace(spec, parameters={"least_turn_deg": least, **spec.parameters})
    if spec.name not in _BY_ERROR or "beyond_deg" in spec.parameters:
        return spec
    limit = off_target_limit_deg(gaze_error_deg)
    if limit is None:
        return None
    return replace(spec, parameters={**spec.parameters, "beyond_deg": limit})


def _not_watched(step: Step, exercise: Exercise) -> set[str]:
    """What would complain of the very thing that was asked for."""
    names = {"eyes_closed" if eyes_asked(step, exercise) == "closed" else "eyes_opened"}
    return names | ({"head_moved"} if (step.model_extra or {}).get("head_shake") is True else set())


def repetitions_asked(step: Step, exercise: Exercise) -> int | None:
    """Repetitions asked: the step's own ``repetitions``, else the usual; None for a timed dose."""
    extra: dict[str, Any] = step.model_extra or {}
    own = extra.get("repetitions")
    if isinstance(own, int) and own > 0:
        return own
    return None if "seconds" in extra else exercise.dose_repetitions


def _rank(code: str) -> int:
    return PRIORITY.index(code) if code in PRIORITY else len(PRIORITY)


def _plain(value: Any) -> Any:
    """Value as JSON takes it: NaN as null, time and angles with the decimals that are kept."""
    if isinstance(value, float):
        return round(value, 6) if isfinite(value) else None
    return value
