"""What is asked around the sets, and what follows: gate, scores, stage, what is refused.

Written as generators, so that the order reads from top to bottom: each ``yield``
hands out a task and comes back with its answer. What ``attended`` means stands in
:mod:`tracker.practice.conductor`.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any, Protocol

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import Asked
from tracker.plan.gate import QUESTIONS, Gate, judge_answers, without_answers
from tracker.plan.model import Entry, Plan, WallMarks
from tracker.plan.offering import Around, refusals, voice_needed
from tracker.plan.symptoms import Start, judge_start
from tracker.plan.walls import distance_bounds_mm, spacing_bounds_mm
from tracker.practice.changing import Changes
from tracker.practice.earlier import DAY_IS_OVER, Earlier
from tracker.practice.tasks import (
    SINCE_LAST,
    AskDayOver,
    AskGate,
    AskOpen,
    AskReader,
    AskScores,
    AskSinceLast,
    AskSound,
    AskSupport,
    AskWall,
    AskWeekly,
    Length,
    Rest,
    Task,
)
from tracker.practice.today import Openings, stages_to_offer
from tracker.session import weekly
from tracker.session.said import ALLOWED_TODAY
from tracker.session.stage import Step
from tracker.targets import Point3

#: Reasons that an answer can still take away.
_ON_SUPPORT = {"no_helper", "support_not_confirmed"}
_ASKABLE = _ON_SUPPORT | {"no_voice"}
Flow = Generator[Task, Any, None]


class Recorder(Protocol):
    """Where a session is written down; the engine is one."""

    def begin(self, step: Step) -> int:
        """A step has begun; gives its number."""

    def answer(self, about: str, value: Any, number: int | None = None) -> None:
        """Something was answered, of the whole session or of a step."""

    def untold(self, numbers: Sequence[int]) -> tuple[str, ...]:
        """What the camera could not tell of a set's steps, and the person can."""

    def dropped(self, numbers: Sequence[int]) -> str:
        """Whether the head dropped in a set's steps: ``seen`` to stay down, ``lost``, or not."""

    def dropping(self, numbers: Sequence[int], *, at_all: bool = False) -> bool:
        """Whether the head drops now in one of a set's steps, and it is not decided yet.

        Deep enough if no more came of it; ``at_all``: however little there is of it.
        """

    def mark(self, name: str, time_s: float, **values: Any) -> None:
        """Something worth a place in time."""

    def finish(self, ended: str) -> None:
        """The session ended."""


class End(Exception):  # noqa: N818
    """The session ends here; ``shown`` is whether somebody still sees why."""

    def __init__(self, ended: str, because: Sequence[str] = (), *, shown: bool = True) -> None:
        super().__init__(ended)
        self.ended, self.because, self.shown = ended, tuple(because), shown


class CantBegin(Exception):  # noqa: N818
    """The set can't begin as it is; its owner has found out why."""

    def __init__(self, reason: str) -> None:
        super().__init__(reason)
        self.reason = reason


class Reordered(Exception):  # noqa: N818
    """Another entry comes next, by the therapist's wish."""


class Unwell(Exception):  # noqa: N818
    """The patient has said to feel unwell."""


class Dropped(Exception):  # noqa: N818
    """The head dropped suddenly in a set.

    ``seen``: it was seen to stay down; else the person was lost while it dropped, as somebody
    is who sits down out of the picture. ``leaving``: it was to be all for today, and stays so.
    """

    def __init__(self, *, seen: bool, leaving: bool = False) -> None:
        super().__init__()
        self.seen, self.leaving = seen, leaving


@dataclass(slots=True)
class Known:
    """What is known of this session so far; None where nobody has answered."""

    gate: Gate = field(default_factory=lambda: Gate("ask"))
    gates: list[dict[str, Any]] = field(default_factory=list)
    start: Start = field(default_factory=lambda: Start(None))
    sound: bool | None = None
    reader: bool | None = None
    support: bool | None = None
    seated_in_place: bool = False
    #: How far from the screen the chair was asked to stand last.
    chair_mm: float | None = None
    rest_until_s: float = 0.0
    #: Entry -> its marks on the wall with what the patient has measured, None where there are none.
    walls: dict[str, WallMarks | None] = field(default_factory=dict)
    #: Places of the marks that the eyes were led to in the last set-up.
    learnt: tuple[Point3, ...] = ()


class Asking:
    """Asks, and decides what may begin.

    Parameters
    ----------
    plan, recorder, openings
        The plan, where answers go, and which of it is open.
    week, stage_id, absent, attended, supervised
        As those of the conductor.
    earlier
        What earlier sessions mean for this one.

    Attributes
    ----------
    now_s
        Time on the session's clock, set by the conductor.
    speaks
        Whether words can be spoken here, set by the conductor; asked when it matters, as a
        voice is looked for beside the first questions.
    """

    def __init__(
        self,
        plan: Plan,
        recorder: Recorder,
        openings: Openings,
        *,
        week: int,
        stage_id: str | None,
        absent: Mapping[str, str],
        attended: bool,
        earlier: Earlier,
        supervised: bool = False,
    ) -> None:
        self.now_s = 0.0
        self.speaks: Callable[[], bool] = lambda: True
        self._plan, self._recorder, self._openings = plan, recorder, openings
        self._week, self._stage_id, self._absent = week, stage_id, absent
        self._attended, self._supervised, self._earlier = attended, supervised, earlier
        #: Exercises in near work that are not done again today.
        self._doubled = set(earlier.doubled)
        self._lengths_mm = dict(earlier.lengths_mm)
        self._known = Known()
        self._changes = Changes(plan, week)

    def _asked(self, entry: Entry) -> Asked:
        asked = self._changes.asked(entry)
        wall = self._known.walls.get(entry.entry_id)
        return asked if wall is None else replace(asked, wall=wall)

    # --- gate, scores, stage ---

    def _ask_gate(self, because: str) -> Flow:
        """Ask the safety questions until all are answered, or nobody can."""
        answers: dict[str, bool | None] = {}
        open_ones = QUESTIONS
        while True:
            given = yield AskGate(questions=open_ones, because=because)
            answers |= {k: v for k, v in (given or {}).items() if v is not None}
            gate = judge_answers(answers, self._plan)
            if gate.outcome != "ask" or not self._attended:
                break
            open_ones = gate.because
        self._pass_gate(gate, answers, because)

    def _pass_gate(self, gate: Gate, answers: Mapping[str, bool | None], because: str) -> None:
        """Write down what the gate says, and end the session where it says so."""
        found = gate if gate.outcome != "ask" else without_answers(self._plan)
        self._known.gates.append(_gate_row(gate, found, answers, because))
        self._recorder.answer("gate", list(self._known.gates))
        if because in ("start", "allowed"):
            self._known.gate = found
        if found.ended is not None:
            raise End(found.ended, found.because)

    def _keep_unwell(self) -> None:
        """Keep that somebody is not well before it is asked why: all may break off there.

        The answers take its place.
        """
        nothing = _gate_row(Gate("ask"), without_answers(self._plan), {}, "unwell")
        self._recorder.answer("gate", [*self._known.gates, nothing])

    def _ask_day_over(self) -> Flow:
        """All was over for today: only the therapist's word of today lets it go on, said twice.

        Once is enough where the therapist sits beside; after an emergency nothing is. Then the
        safety questions come again. Whoever leaves has not been told to go on.
        """
        sure, day = False, self._earlier.day
        while True:
            try:
                said = yield AskDayOver(because=day.because, sure=sure, final=day.final)
            except End as end:
                raise End(end.ended, (DAY_IS_OVER,), shown=end.shown) from None
            if said is not True and not sure:
                raise End("stopped", (DAY_IS_OVER,))
            if said is True and (sure or self._supervised):
                break
            sure = not sure
        self._recorder.answer(ALLOWED_TODAY, True)
        yield from self._ask_gate("allowed")

    def _ask_weekly(self) -> Flow:
        """Falls and medicines, where it is their time; each answer is kept at once.

        Who has told of no fall at the gate and does here is treated as if it had been told
        there, also who ends the session at the next question: see :meth:`Week.stops`. Where
        nobody was left to see that, the next session begins with it.
        """
        last_week = self._earlier.week
        if last_week.fall_open:
            self._tell_of_fall()
        given: dict[str, Any] = {}
        try:
            for question in weekly.QUESTIONS:
                if not self._is_due(question, given.get("falls")):
                    continue
                given[question] = yield AskWeekly(question=question)
                kept = {"answers": dict(given), "attended": self._attended}
                self._recorder.answer("weekly", kept)
        except End as end:
            if end.shown and end.ended == "stopped" and last_week.stops(given.get("falls")):
                self._tell_of_fall()
            raise
        if last_week.stops(given.get("falls")):
            self._tell_of_fall()

    def _is_due(self, question: weekly.Question, falls: object) -> bool:
        if question == "hurt":
            return falls in weekly.FELL
        week = self._earlier.week
        return week.due if question == "falls" else week.medicines_due

    def _tell_of_fall(self) -> None:
        """End the session as the safety questions do after a fall."""
        answers = {"fall": True}
        self._pass_gate(judge_answers(answers, self._plan), answers, "weekly")

    def _ask_since_last(self) -> Flow:
        given = yield AskSinceLast()
        self._recorder.answer("since_last", picked(given, SINCE_LAST))

    def _ask_before(self) -> Flow:
        rules, known = self._plan.symptom_rules, self._known
        names = ("dizziness", *rules.also_ask)
        while True:
            given = picked((yield AskScores(when="before", names=names)), names)
            known.start = judge_start(rules, given)
            if known.start.limit is not None or not self._attended:
                break
        if known.start.limit is None:
            # Nobody has said: the rule for a person who did not start above it.
            known.start = Start(rules.score_most)
        self._recorder.answer("scores_before", given)

    def _choose_stage(self) -> Generator[Task, Any, str | None]:
        if self._stage_id is not None:
            yield from self._ask_open(self._stage_id)
            return self._stage_id
        for stage_id in stages_to_offer(self._plan, self._openings):
            yield from self._ask_open(stage_id)
            if self._openings.is_open(stage_id):
                return stage_id
        return self._plan.stages[0].stage_id if self._plan.stages else None

    def _ask_open(self, name: str) -> Flow:
        """Only what may open is asked about, so that a yes can't open anything else."""
        if self._openings.may_open(name) and (yield AskOpen(name=name)) is True:
            self._openings.agreed.add(name)
            self._recorder.answer("opened", sorted(self._openings.agreed))

    # --- what is refused ---

    def _refused(self, entry: Entry) -> Generator[Task, Any, tuple[str, ...]]:
        """Why an entry may not begin; asks what can be asked, unless that can't help any more."""
        if entry.entry_id not in self._absent:
            yield from self._ask_open(entry.entry_id)
        self._known.support = None
        fixed = self._fixed(entry)
        if fixed:
            return fixed
        yield from self._rest(entry)
        yield from self._ask_around(entry)
        return tuple(self._reasons(entry))

    def _fixed(self, entry: Entry) -> tuple[str, ...]:
        """Why an entry can't be done, whatever is answered around it."""
        found = [r for r in self._reasons(entry) if r not in _ASKABLE]
        if entry.exercise in self._doubled:
            found.append("saw_double")
        absent = self._absent.get(entry.entry_id)
        return (*found, *([] if absent is None else [absent]))

    def _waits(self, entry: Entry) -> tuple[str, ...]:
        """The same at a glance: whether an entry that may open does is still to be asked."""
        may_open = self._openings.entry_may_open(entry)
        return tuple(r for r in self._fixed(entry) if not (r == "locked" and may_open))

    def _rest(self, entry: Entry) -> Flow:
        """Rest until the time is up, or until the patient goes on."""
        until_s = self._known.rest_until_s
        while self.now_s < until_s:
            if (yield Rest(until_s=until_s, next_id=entry.entry_id)) is True:
                left_s = round(until_s - self.now_s, 1)
                self._recorder.mark("rest_ended", self.now_s, left_s=left_s)
                # It is over for the entry after this one, too, should this one be refused.
                self._known.rest_until_s = self.now_s
                return

    def _ask_around(self, entry: Entry) -> Flow:
        known, support = self._known, self._asked(entry).support
        if voice_needed(entry) and not known.sound:
            known.sound = yield AskSound()
        answered = known.sound is not None
        if voice_needed(entry) and answered and not self._heard(entry) and not known.reader:
            known.reader = yield AskReader(needs_words=known.sound is True)
        if support != "none" and not set(self._reasons(entry)) - _ON_SUPPORT:
            known.support = yield AskSupport(entry_id=entry.entry_id, support=support)

        if not self._reasons(entry):
            yield from self._ask_wall(entry)

    def _heard(self, entry: Entry) -> bool:
        """Whether sound leads an entry: one that is spoken through needs words, not beats."""
        spoken = CATALOGUE[entry.exercise].guide is not None
        return self._known.sound is True and (not spoken or self.speaks())

    def _ask_wall(self, entry: Entry) -> Flow:
        """The lengths of marks on the wall that the plan leaves open, once a session."""
        asked, walls = self._asked(entry), self._known.walls
        two = asked.exercise.wall_marks == 2
        wall = asked.wall
        if wall is None or walls.get(entry.entry_id, wall) is None:
            return
        if wall.distance_mm is None:
            given = yield from self._ask_length(
                asked, "distance", distance_bounds_mm(self._plan, asked)
            )
            if given is None:
                return
            wall = wall.model_copy(update={"distance_mm": given})
        if two and wall.spacing_mm is None and wall.distance_mm is not None:
            bounds = spacing_bounds_mm(self._plan, asked, wall.distance_mm)
            given = yield from self._ask_length(asked, "spacing", bounds)
            if given is None:
                return
            wall = wall.model_copy(update={"spacing_mm": given})
        walls[entry.entry_id] = wall

    def _ask_length(
        self, asked: Asked, length: Length, bounds: tuple[float, float]
    ) -> Generator[Task, Any, float | None]:
        """One length in mm; None where there is no answer, or no marks.

        What it was last time is offered; the journal tells a yes to that from a tape's figure.
        """
        key = (asked.exercise.id, asked.posture, length)
        last_mm = self._lengths_mm.get(key)
        if last_mm is not None and not bounds[0] <= last_mm <= bounds[1]:
            last_mm = None
        given = yield AskWall(
            asked=asked, length=length, least_mm=bounds[0], most_mm=bounds[1], last_mm=last_mm
        )
        if given is False:
            self._known.walls[asked.entry_id] = None
        if given is None or given is False:
            return None
        # A tape may show the same once more: that was measured.
        still = given is True
        found_mm = float(last_mm if still and last_mm is not None else given)
        self._lengths_mm[key] = found_mm
        told = {"entry_id": asked.entry_id, "length": length, "mm": found_mm}
        self._recorder.mark("wall_length", self.now_s, **told, as_last_time=still)
        return found_mm

    def _reasons(self, entry: Entry) -> list[str]:
        known = self._known
        helper = known.support is True and self._asked(entry).support == "helper"
        around = Around(
            sound_works=self._heard(entry),
            helper_here=helper or known.reader is True,
            helper_reads=known.reader is True,
            support_confirmed=known.support is True,
        )
        unlocked = self._openings.entry_is_open(entry)
        asked = self._asked(entry)
        found = refusals(entry, known.gate, known.start, around, unlocked=unlocked, asked=asked)
        if self._known.walls.get(entry.entry_id, entry.wall) is None and entry.wall is not None:
            found = (*found, "no_marks")
        passed_over = set() if self._attended else self._passed_over()
        return [r for r in found if r not in passed_over]

    def _passed_over(self) -> set[str]:
        """What hangs on a question that nobody was there to answer."""
        known, found = self._known, set()
        if known.sound is None or (known.sound is False and known.reader is None):
            found.add("no_voice")
        return found | (_ON_SUPPORT if known.support is None else set())


def _gate_row(
    gate: Gate, found: Gate, answers: Mapping[str, bool | None], because: str
) -> dict[str, Any]:
    """One time that the safety questions were asked, as it is kept; ``found`` is what holds."""
    return {
        "asked_because": because,
        "answers": {q: answers.get(q) for q in QUESTIONS},
        "outcome": "not_asked" if gate.outcome == "ask" else gate.outcome,
        "because": list(gate.because),
        "put_first": list(gate.put_first),
        "seated_only": found.outcome == "seated_only",
    }


def picked(given: Mapping[str, Any] | None, names: Sequence[str]) -> dict[str, Any]:
    """The answers that were asked for, None where there is none."""
    return {name: (given or {}).get(name) for name in names}
