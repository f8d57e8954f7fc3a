"""What a session asks for next: one task at a time, said in keys, not in words.

A task with ``until_s`` is over by itself at that time (seconds on the session's
clock); any other waits for an answer.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import inf
from typing import Any, Literal, get_args

from tracker.exercises.catalogue import Support
from tracker.plan.asked import Asked
from tracker.plan.gate import QUESTIONS
from tracker.session import weekly
from tracker.session.said import DROP_ANSWERS

SINCE_LAST: tuple[str, ...] = ("rest_of_day", "next_morning")
#: What leads a set: sounds that were heard, a helper who reads aloud, or the screen.
Voice = Literal["", "sound", "reader"]
Clarity = Literal["clear", "blurred", "jumping", "double"]
CLARITY: tuple[str, ...] = get_args(Clarity)
#: With which arm something was reached for.
Arm = Literal["right", "left", "both", "not_sure"]
ARMS: tuple[str, ...] = get_args(Arm)
#: Where eyes that had been shut were as they opened: on the target, beside it.
Landed = Literal["on", "beside", "not_sure"]
LANDED: tuple[str, ...] = get_args(Landed)
#: Questions after a set that are answered by a choice of several.
CHOICES: dict[str, tuple[str, ...]] = {"clarity": CLARITY, "arm": ARMS, "landed": LANDED}
#: What is measured with a tape: from the eyes to the wall, from mark to mark.
Length = Literal["distance", "spacing"]
#: Most repetitions that a plan can ask for is 200; a person may count beyond it (own choice).
MAX_COUNT = 999


#: Handed over in place of an answer: the task is to be put anew, as something has changed.
ANEW = object()


@dataclass(frozen=True, slots=True)
class Task:
    """Something to do or to answer."""

    until_s: float = inf

    def check(self, answer: Any) -> None:
        """Refuse an answer that makes no sense.

        Raises
        ------
        ValueError
            If it makes none.
        """


@dataclass(frozen=True, slots=True)
class AskGate(Task):
    """The safety questions; ``because`` is empty at the start, else why they come again.

    Answer: question -> yes, no, or None.
    """

    questions: tuple[str, ...] = QUESTIONS
    because: str = ""


@dataclass(frozen=True, slots=True)
class AskDayOver(Task):
    """All was over for today: whether the therapist has said today that it may go on.

    ``because`` is why it was over. ``sure``: it was said to be so, and is asked once more.
    ``final``: it was an emergency of theirs, and only another day lets it go on. Answer: yes or no.
    """

    because: tuple[str, ...] = ()
    sure: bool = False
    final: bool = False

    def check(self, answer: Any) -> None:
        """No yes where it is final."""
        if answer is True and self.final:
            raise ValueError("it was an emergency: there is no more of it today")


@dataclass(frozen=True, slots=True)
class AskWeekly(Task):
    """One of the questions of the week (``session.weekly``).

    Answer: none, once or more for ``falls``, else yes or no; None if it is passed over.
    """

    question: weekly.Question = "falls"

    def check(self, answer: Any) -> None:
        """An answer of its kind."""
        if not weekly.usable(self.question, answer):
            raise ValueError(f"{self.question}: {answer!r} is no answer")


@dataclass(frozen=True, slots=True)
class AskSinceLast(Task):
    """How the rest of the last day of practice was, and the morning after it; once each is over.

    Answer: ``rest_of_day`` and ``next_morning`` -> 0 to 10, or None.
    """

    def check(self, answer: Any) -> None:
        """Two scores."""
        _check_scores(answer)


@dataclass(frozen=True, slots=True)
class AskOpen(Task):
    """Whether the patient wants to begin with a stage or an entry that may now open.

    Answer: yes or no.
    """

    name: str = ""


@dataclass(frozen=True, slots=True)
class ShowToday(Task):
    """Today's practice at a glance, once the stage is chosen. Answer: true once it is read.

    ``entries`` are those of today in their order, each with why it can't be done today
    whatever is answered (as in ``plan.offering.REFUSALS``); empty where it may be done.
    """

    stage_id: str | None = None
    entries: tuple[tuple[str, tuple[str, ...]], ...] = ()


@dataclass(frozen=True, slots=True)
class AskScores(Task):
    """Symptom scores, 0 to 10.

    Answer: name -> score. ``when`` is ``before`` the session or ``after`` a set.
    """

    when: str = "before"
    names: tuple[str, ...] = ("dizziness",)
    entry_id: str | None = None

    def check(self, answer: Any) -> None:
        """Scores."""
        _check_scores(answer)


@dataclass(frozen=True, slots=True)
class AskSound(Task):
    """Whether the test sound was heard. Answer: yes or no."""


@dataclass(frozen=True, slots=True)
class AskReader(Task):
    """Whether a helper is here who reads the screen aloud. Answer: yes or no.

    ``needs_words``: beats are heard, but what comes is spoken through step by step.
    """

    needs_words: bool = False


@dataclass(frozen=True, slots=True)
class AskSupport(Task):
    """Whether the support of an entry is in its place, this time. Answer: yes or no."""

    entry_id: str = ""
    support: Support = "corner_and_chair"


@dataclass(frozen=True, slots=True)
class AskWall(Task):
    """A length of the marks on the wall that the plan leaves to the patient, with a tape.

    ``length`` is ``distance`` (from the eyes to the wall) or ``spacing`` (from mark to mark);
    ``least_mm`` and ``most_mm`` are what will do, ``last_mm`` what it was last time, if it
    still will do: to be confirmed, never taken unasked. Answer: millimetres by the tape, true
    where it still is ``last_mm``, false where there are no marks, or None.
    """

    asked: Asked | None = None
    length: Length = "distance"
    least_mm: float = 0.0
    most_mm: float = inf
    last_mm: float | None = None

    def check(self, answer: Any) -> None:
        """A length that will do."""
        if answer is None or answer is False or (answer is True and self.last_mm is not None):
            return
        if type(answer) not in (int, float) or not self.least_mm <= answer <= self.most_mm:
            raise ValueError(f"{answer!r} mm: {self.least_mm:.0f} to {self.most_mm:.0f} will do")


#: An entry is left out since no camera can be used.
NO_CAMERA = "no_camera"


@dataclass(frozen=True, slots=True)
class Prepare(Task):
    """Get into place; ``rest_pose`` if the set-up or the rest pose has to be taken (again).

    ``voice`` is what leads who doesn't see the screen: ``sound``, a ``reader``, or nothing
    where none is needed. ``chair_mm`` is how far from the screen the chair stands from an entry
    before, None where none was asked for yet. Answer: true once it is done; false leaves the
    entry out, and so does :data:`NO_CAMERA`, which says why.
    """

    asked: Asked | None = None
    rest_pose: bool = False
    voice: Voice = ""
    chair_mm: float | None = None


@dataclass(frozen=True, slots=True)
class CountDown(Task):
    """Count down to a set."""

    asked: Asked | None = None


@dataclass(frozen=True, slots=True)
class DoSet(Task):
    """The set itself: begun with ``begin_set``, over with ``end_set``."""

    asked: Asked | None = None


@dataclass(frozen=True, slots=True)
class AskWell(Task):
    """Whether somebody whose head dropped suddenly is all right.

    Answer: ``fine`` or ``not_well``; None where nobody has answered by ``until_s``.
    """

    def check(self, answer: Any) -> None:
        """One of the two, or none."""
        if answer not in (None, *DROP_ANSWERS):
            raise ValueError(f"{answer!r} is none of {', '.join(DROP_ANSWERS)}")


@dataclass(frozen=True, slots=True)
class AskAfterSet(Task):
    """What only the patient knows of a set.

    ``clarity`` (clear, blurred, jumping, double), ``steadied`` (yes or no), ``arm`` (right,
    left, both, not_sure), ``landed`` (on, beside, not_sure), ``own_count`` (a number). Answer:
    question -> answer.
    """

    entry_id: str = ""
    questions: tuple[str, ...] = ()

    def check(self, answer: Any) -> None:
        """Each answer of its kind."""
        found = dict(answer or {})
        count = found.get("own_count")
        for question, choices in CHOICES.items():
            if found.get(question) not in (None, *choices):
                raise ValueError(f"{found[question]!r} is none of {', '.join(choices)}")
        if count is not None and (type(count) is not int or not 0 <= count <= MAX_COUNT):
            raise ValueError(f"{count!r} is no count")


@dataclass(frozen=True, slots=True)
class Wait(Task):
    """Sit still until the score is asked for; ``saw_double`` if that is why the set ended."""

    saw_double: bool = False


@dataclass(frozen=True, slots=True)
class Settle(Task):
    """Rest until the patient says to be back to usual (answer: true), at most ``until_s``."""

    since_s: float = 0.0
    entry_id: str = ""


@dataclass(frozen=True, slots=True)
class Rest(Task):
    """Rest before the next entry, until ``until_s`` or until the patient goes on (answer: true)."""

    next_id: str = ""


@dataclass(frozen=True, slots=True)
class Over(Task):
    """The session is over: how it ended (as in a summary), and why."""

    ended: str = "finished"
    because: tuple[str, ...] = ()


def _check_scores(answer: Any) -> None:
    for name, score in dict(answer or {}).items():
        if score is not None and (type(score) is not int or not 0 <= score <= 10):
            raise ValueError(f"{name}: {score!r} is no score from 0 to 10")
