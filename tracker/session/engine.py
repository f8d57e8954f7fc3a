"""The engine: samples in, repetitions, events, cues and a journal out.

One engine serves live practice, clips and traces. It holds no clock and no
thread; time is what the samples and the caller say. The same samples give the
same results however they were handed over.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from math import isfinite, nan
from typing import Any

from tracker.exercises.catalogue import CATALOGUE, find_exercise
from tracker.exercises.events import Cue
from tracker.motion.speed import LOOK_AHEAD_S, SpeedEstimator
from tracker.sample import Reach, Sample
from tracker.session.at_target import gaze_error_at_target_deg
from tracker.session.derive import VARIFOCAL, completed, gaze_error_deg, rounded
from tracker.session.journal import NUMBER_COLUMNS, Journal, sample_record
from tracker.session.journal_head import FORMAT, FORMAT_VERSION, marks
from tracker.session.journal_line import Record
from tracker.session.live import Dropped, LiveState, SessionInfo, is_of_the_sample
from tracker.session.run import ExerciseRun, repetitions_asked
from tracker.session.stage import Step, is_judged
from tracker.session.unlike import EyesInDoubt

#: Half a second without news means "not measured" (own choice).
SILENT_S = 0.5


class Engine:
    """Judges one session.

    Parameters
    ----------
    journal
        Takes every record.
    about
        What is known of the session at its start.
    """

    def __init__(self, journal: Journal, *, about: SessionInfo) -> None:
        self._journal = journal
        self._marks = marks(demo=is_of_the_sample(about.setup))
        self._speeds = SpeedEstimator()
        self._steps: list[Step] = []
        self._runs: dict[int, ExerciseRun] = {}
        self._done: set[int] = set()
        self._current: int | None = None
        self._fed_s = nan
        self._now_s = nan
        self._last: Sample | None = None
        self._last_cue_s = nan
        self._finished = False
        self._reach: Reach | None = None
        self._in_doubt = EyesInDoubt()
        self._setup: Mapping[str, Any] = {}
        self._varifocal = False
        #: Gives a cue to the person, and whether they get to know of it: one that they don't is
        #: not said, and comes again while it lasts. Without a screen every one counts as given.
        self.tell: Callable[[Cue], bool] = lambda _: True
        self._learn(about.setup)
        head = {"kind": "session", "format": FORMAT, "format_version": FORMAT_VERSION}
        head |= {"columns": list(NUMBER_COLUMNS)}
        journal.append(head | {"about": about.model_dump(mode="json")})

    @property
    def runs(self) -> list[ExerciseRun]:
        """The exercises so far, in their order."""
        return [self._runs[k] for k in sorted(self._runs)]

    def begin(self, step: Step) -> int:
        """A step has begun; it ends at its ``to_s`` or when the next one begins.

        An exercise step that names no exercise is measured, but not judged.

        Returns
        -------
        int
            Its number, for the answers that belong to it.

        Raises
        ------
        InputError
            If its exercise isn't in the catalogue.
        """
        if is_judged(step):
            find_exercise(step.exercise or "")
        self._steps.append(step)
        number = len(self._steps) - 1
        self._journal.append(
            {"kind": "step", "number": number, "step": step.model_dump(mode="json")} | self._marks
        )
        return number

    def use_setup(self, from_s: float, found: Mapping[str, Any], notes: Sequence[str] = ()) -> None:
        """From a time on a new set-up holds: what it found, and what limits it."""
        self._learn(found)
        self._journal.append(
            {"kind": "setup", "from_s": from_s, "found": dict(found), "notes": list(notes)}
            | self._marks
        )

    def _learn(self, setup: Mapping[str, Any]) -> None:
        """How far and how well a set-up lets the gaze be read."""
        reach = setup.get("gaze_reach_deg")
        self._reach = reach if _is_reach(reach) else None
        self._setup = setup
        self._varifocal = setup.get("glasses") == "varifocal"

    def answer(self, about: str, value: Any, number: int | None = None) -> None:
        """Something was answered, of the whole session or of a step; a later answer counts."""
        record: Record = {"kind": "answer", "about": about, "value": value}
        self._journal.append(record if number is None else record | {"number": number})

    def untold(self, numbers: Sequence[int]) -> tuple[str, ...]:
        """What the camera could not tell of a set (its steps), and the person can: ``arm``."""
        runs = [self._run(n) if n not in self._runs else self._runs[n] for n in numbers]
        return tuple(dict.fromkeys(u for r in runs if r is not None for u in r.untold))

    def dropped(self, numbers: Sequence[int]) -> Dropped:
        """Whether the head dropped suddenly in any of a set's steps; seen counts more than lost.

        By what was found in them, however long they are over.
        """
        found: set[Dropped] = {self._runs[n].dropped for n in numbers if n in self._runs}
        return "seen" if "seen" in found else "lost" if "lost" in found else ""

    def dropping(self, numbers: Sequence[int], *, at_all: bool = False) -> bool:
        """Whether the head drops now in one of a set's steps, and it is not decided yet.

        Deep enough if no more came of it; ``at_all``: however little there is of it.
        """
        return any(self._runs[n].drops(at_all=at_all) for n in numbers if n in self._runs)

    @property
    def looks_on(self) -> bool:
        """Whether samples are of use although a step is over: a drop in it may become a fall."""
        return any(run.looks_on for run in self._runs.values())

    def mark(self, name: str, time_s: float, **values: Any) -> None:
        """Something is worth a place in time."""
        self._journal.append({"kind": "mark", "name": name, "time_s": time_s} | values)

    def feed(self, sample: Sample) -> None:
        """Take the next sample; one that isn't later than all before is passed over."""
        if self._finished or not isfinite(sample.time_s) or sample.time_s <= self._fed_s:
            return
        sample = rounded(sample)
        self._fed_s = sample.time_s
        self._now_s = sample.time_s if not isfinite(self._now_s) else max(self._now_s, self._fed_s)
        for ready in self._speeds.feed(sample):
            self._process(ready)

    def advance(self, now_s: float) -> None:
        """Time goes on although no sample may have come."""
        if self._finished or not isfinite(now_s):
            return
        self._now_s = now_s if not isfinite(self._now_s) else max(self._now_s, now_s)
        if now_s - self._fed_s < SILENT_S:
            return
        for ready in self._speeds.flush():
            self._process(ready)
        silent_s = self._now_s - SILENT_S
        self._end_before(silent_s)
        number = self._number_at(self._now_s)
        run = self._run(number) if number is not None else None
        if run is not None:
            run.wait(self._now_s)
        for over in self._runs.values():
            over.look_on(self._now_s)

    def finish(self, ended: str = "finished") -> None:
        """End the session: everything held back is judged, and the journal gets its end."""
        if self._finished:
            return
        for ready in self._speeds.flush():
            self._process(ready)
        end_s = self._now_s
        for number, step in enumerate(self._steps):
            if step.from_s < end_s:
                self._end(number, min(self._end_of(number), end_s))
        for run in self._runs.values():
            run.give_up()
        self._finished = True
        self._journal.append(
            {"kind": "end", "time_s": end_s if isfinite(end_s) else None, "ended": ended}
        )

    @property
    def live(self) -> LiveState:
        """How it stands now."""
        now_s = self._now_s
        number = self._number_at(now_s) if isfinite(now_s) else None
        step = self._steps[number] if number is not None else None
        run = self._runs.get(number) if number is not None else None
        last = self._last
        heard = last is not None and now_s - self._fed_s < SILENT_S
        measured = heard and (
            now_s - run.last_measured_s < SILENT_S
            if run is not None
            else last is not None and not last.reason
        )
        state: dict[str, object] = {}
        if step is not None and is_judged(step):
            state = self._exercise_state(step, run)
        if last is not None and heard:
            state |= {
                "gaze_error_deg": gaze_error_deg(last),
                "head_yaw_deg": last.head_yaw_deg,
                "head_pitch_deg": last.head_pitch_deg,
                "head_roll_deg": last.head_roll_deg,
                "eye_yaw_deg": last.eye_yaw_deg,
                "eye_pitch_deg": last.eye_pitch_deg,
                "eye_open": last.eye_open,
                "light": last.light,
                "face_height_px": last.face_height_px,
            }
        return LiveState(
            time_s=now_s,
            step=step,
            elapsed_s=max(0.0, now_s - step.from_s) if step is not None else 0.0,
            measured=measured,
            reason="" if measured else _why_not(last if heard else None, run),
            **state,  # type: ignore[arg-type]
        )

    def _exercise_state(self, step: Step, run: ExerciseRun | None) -> dict[str, object]:
        exercise = CATALOGUE[step.exercise or ""]
        run = run or ExerciseRun(-1, step, exercise, _Nowhere())
        asked = run.asked_at(self._now_s)
        reach = asked.amplitude_deg
        return {
            "repetitions": run.counter.repetitions,
            "turns": len(run.counter.turns),
            "goal_repetitions": repetitions_asked(step, exercise),
            "goal_amplitude_deg": None if reach is None else 0.5 * (reach[0] + reach[1]),
            "goal_amplitude_range_deg": reach,
            "goal_tempo_bpm": asked.tempo_bpm,
            "last_turn": run.counter.turns[-1] if run.counter.turns else None,
            "tempo_bpm": run.tempo_bpm,
            "cue": run.cue,
        }

    def _process(self, sample: Sample) -> None:
        self._end_before(sample.time_s)
        number = self._number_at(sample.time_s)
        step = self._steps[number] if number is not None else None
        sample = rounded(completed(sample, step, self._reach, withhold=self._withheld(step)))
        self._journal.append(sample_record(sample))
        run = self._run(number) if number is not None else None
        if run is not None and not run.exercise.channel.startswith("eye"):
            # The journal keeps what was measured: later, what came after tells more (projections).
            sample = self._in_doubt.feed(sample)
        self._last = sample
        if run is not None:
            run.feed(sample)
            self._last_cue_s = run.last_cue_s
        for over in self._runs.values():
            over.look_on(sample.time_s + LOOK_AHEAD_S, sample)

    def _withheld(self, step: Step | None) -> str:
        """Why the line of sight is not believed in a step, or empty.

        Who nods behind lenses that change from top to bottom looks through another
        strength at each angle: the eyes rightly turn by more or less than the head.
        """
        if not self._varifocal or step is None or not is_judged(step):
            return ""
        nods = CATALOGUE[step.exercise or ""].channel == "head_pitch"
        return VARIFOCAL if nods else ""

    def _number_at(self, time_s: float) -> int | None:
        """The step that covers a time: the last one begun by then, unless it is over."""
        for number in range(len(self._steps) - 1, -1, -1):
            if self._steps[number].from_s <= time_s:
                return number if time_s < self._end_of(number) else None
        return None

    def _end_of(self, number: int) -> float:
        to_s = self._steps[number].to_s
        if number + 1 < len(self._steps):
            return min(to_s, self._steps[number + 1].from_s)
        return to_s

    def _run(self, number: int) -> ExerciseRun | None:
        step = self._steps[number]
        if not is_judged(step) or number in self._done:
            return None
        if number not in self._runs:
            exercise = CATALOGUE[step.exercise or ""]
            error_deg = gaze_error_at_target_deg(step, exercise, self._setup)
            self._runs[number] = ExerciseRun(
                number,
                step,
                exercise,
                self._journal,
                self._last_cue_s,
                error_deg,
                # Whatever it is by then.
                tell=lambda cue: self.tell(cue),
            )
        return self._runs[number]

    def _end_before(self, time_s: float) -> None:
        """End the exercises that were over by a time."""
        for number in range(len(self._steps)):
            if number not in self._done and self._end_of(number) <= time_s:
                self._end(number, self._end_of(number))

    def _end(self, number: int, end_s: float) -> None:
        run = self._run(number)
        if run is not None:
            run.finish(end_s)
            self._last_cue_s = run.last_cue_s
        self._done.add(number)


def _why_not(last: Sample | None, run: ExerciseRun | None) -> str:
    """Why nothing is measured now, by the last sample that was heard."""
    if last is None:
        return "gap"
    body = run is not None and run.counter.channel.body
    return last.reason or ("no_body" if body else "")


def _is_reach(value: object) -> bool:
    """Whether what a session's set-up says is two ranges of finite angles."""
    return (
        isinstance(value, list | tuple)
        and len(value) == 2
        and all(
            isinstance(part, list | tuple)
            and len(part) == 2
            and all(isinstance(v, int | float) and isfinite(v) for v in part)
            for part in value
        )
    )


class _Nowhere:
    """A journal that keeps nothing, for looking at an exercise that hasn't begun."""

    def append(self, record: dict[str, object]) -> None:
        """Take one record."""
