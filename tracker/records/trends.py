"""Figures of sessions, and when a difference between them is called a change.

A baseline that was taken together in the clinic goes first: the newest visit's is compared with
the last five usable sessions after it, three at least. Without one, or while there are too few
since, the first five are compared with the last five (with fewer than ten, the
first with the last half, three at least). Two things can make two means differ without
anything having changed, and a change has to be larger than both:

the measurement's error
    The smallest change that can be told apart from it is 1.96 times root 2 times the
    standard error of measurement (Christensen L, Mendoza JL 1986, Behav Ther 17:305;
    Jacobson NS, Truax P 1991, J Consult Clin Psychol 59:12). The worst error met on
    rendered heads (DEVELOPERS.md, "How accurate it was, by lot") stands for 1.96 of those
    standard errors. It is not divided by the root of the number of sessions: the same
    camera and the same glasses err the same way each time.
the person's own spread
    :func:`tracker.differing.by_spread`, of the sessions inside both groups. It takes the
    sessions for independent of each other, which bad weeks are not; so a change is a hint to
    look, not a finding. Of a baseline of one session nothing is known of its spread: that of
    the sessions since stands for it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import sqrt
from statistics import fmean
from typing import Any, Literal, NamedTuple

from tracker.differing import by_spread, called, too_uneven
from tracker.records import units as u
from tracker.records.units import Unit

#: Sessions at each end, as many as are compared at most and at least (common practice).
MOST, LEAST = 5, 3

#: A mean of scores has a decimal that a single score has not.
MEAN_SCORE = replace(u.SCORE, decimals=1)

#: The doubt about a session of which nobody knows when it was.
NO_DATE = "no_date"
#: Limits of "on target" that differ by less are taken for the same (own choice): the share
#: within them changes less than the error that is reckoned with.
ALIKE_LIMITS = 0.1
#: The doubt about a session's time to settle that has no end.
NOT_SETTLED = "not_settled"
#: What of the dose a figure rests on, apart from what is asked of itself.
RESTS_ON = {
    "amplitude_deg": ("amplitude_deg",),
    "amplitude_mm": ("amplitude_mm",),
    "peak_speed_deg_s": ("amplitude_deg", "tempo_bpm"),
    "peak_speed_mm_s": ("tempo_bpm",),
    "tempo_bpm": ("tempo_bpm",),
    "repetitions": ("repetitions",),
    "held_s": ("held_s",),
    "on_target": ("amplitude_deg", "tempo_bpm"),
    "clear": ("amplitude_deg", "tempo_bpm"),
}
#: Amplitudes that were asked are the same within this share of the larger (own choice; the
#: smallest step of a change, 2 degrees, is more of any range of a plan up to 40 degrees).
SAME_SHARE = 0.05
#: What is asked before a session of the one before it: at a baseline it tells of no baseline.
OF_BEFORE = ("rest_of_day", "next_morning")

Verdict = Literal["rose", "fell", "no_change", "too_few", "unlike"]
#: What keeps a difference from being called a change.
Limit = Literal["error", "uneven", "answers"]


@dataclass(frozen=True, slots=True)
class Spec:
    """A figure: its name in words, its unit, and the worst error of a value.

    ``scale`` makes of the kept value the one that is shown (100 for a share in %);
    ``fewest`` sessions are compared at each end, ``fewest_baseline`` where that is a baseline;
    ``answers`` where a session has a yes or a no.
    """

    words: str
    unit: Unit
    error: Callable[[float], float]
    scale: float = 1.0
    fewest: int = LEAST
    fewest_baseline: int = 1
    answers: bool = False


def _share_of(share: float) -> Callable[[float], float]:
    return lambda value: share * abs(value)


def _at_most(error: float) -> Callable[[float], float]:
    return lambda _: error


#: Beside each error where it comes from. "By lot": the worst of DEVELOPERS.md, "How
#: accurate it was, by lot". "Own": nobody has measured it; this project's own choice.
SPECS: dict[str, Spec] = {
    # By lot: none wrong; one is the smallest step.
    "repetitions": Spec("repetitions", u.COUNT, _at_most(1.0)),
    "amplitude_deg": Spec("amplitude", u.DEGREES, _share_of(0.10)),  # by lot
    "vergence_change_deg": Spec("vergence change", u.DEGREES, _share_of(0.21)),  # by lot
    "amplitude_mm": Spec("amplitude", u.MILLIMETRES, _share_of(0.10)),  # own
    "peak_speed_deg_s": Spec("peak speed", u.DEGREES_S, _share_of(0.17)),  # by lot
    "swing_mm": Spec("end to end", u.MILLIMETRES, _share_of(0.10)),  # own, as the amplitude
    "peak_speed_mm_s": Spec("peak speed", u.MILLIMETRES_S, _share_of(0.17)),  # own, as in degrees
    # A turning point is known to one picture, at the slowest rate tried (15 a second).
    "tempo_bpm": Spec("tempo", u.BEATS, lambda v: v * abs(v) / 900.0),
    "on_target": Spec("gaze on target", u.PERCENT, _at_most(0.10), 100.0),  # own
    # Fisher's exact test: 5 of 5 against 1 of 5, and 4 of 4 against none, are the least
    # that are below 5 %.
    "clear": Spec(
        "target said to be clear", u.PERCENT, _at_most(0.76 / sqrt(2)), 100.0, 4, 4, answers=True
    ),
    "still_deg": Spec("head away from its middle", u.DEGREES, _at_most(1.3)),  # by lot, yaw
    "held_s": Spec("time held", u.SECONDS, _at_most(0.5)),  # what is bridged
    "sway_mm": Spec("sway", u.MILLIMETRES, _at_most(5.0)),  # own
    # The step of the scale.
    "dizziness_before": Spec("dizziness before", MEAN_SCORE, _at_most(1.0)),
    "dizziness_after": Spec("dizziness after", MEAN_SCORE, _at_most(1.0)),
    "nausea_before": Spec("nausea before", MEAN_SCORE, _at_most(1.0)),
    "nausea_after": Spec("nausea after", MEAN_SCORE, _at_most(1.0)),
    "unsteadiness_before": Spec("unsteadiness before", MEAN_SCORE, _at_most(1.0)),
    "unsteadiness_after": Spec("unsteadiness after", MEAN_SCORE, _at_most(1.0)),
    "settled_minutes": Spec("time to settle", u.MINUTES, _at_most(1.0)),
    "rest_of_day": Spec("dizziness, rest of the day", MEAN_SCORE, _at_most(1.0)),
    "next_morning": Spec("dizziness, next morning", MEAN_SCORE, _at_most(1.0)),
    "measured": Spec("time that was measured", u.PERCENT, _at_most(0.05), 100.0),  # own
}


class Point(NamedTuple):
    """A figure in one session; ``doubts`` are the flags for which it isn't compared.

    ``baseline``: of a session that was done together in the clinic.
    """

    place: str
    day: date | None
    value: float | None
    doubts: tuple[str, ...] = ()
    asked: Any = None
    within_deg: float | None = None
    asked_for: Any = None
    baseline: bool = False

    @property
    def usable(self) -> bool:
        """Whether it may be compared."""
        return self.value is not None and not self.doubts


@dataclass(frozen=True, slots=True)
class Change:
    """First against last.

    Attributes
    ----------
    verdict
        ``unlike`` where a difference may come from other limits of what counts as on target.
    first, last
        Means of the first and of the last ``count`` usable sessions; None with too few.
        With a baseline ``first`` is its mean.
    least
        The smallest difference that would be called a change.
    limit
        What makes it so large: the measurement's error (and a spread like it), sessions that are
        too uneven, or too few answers of yes and no.
    left_out
        Sessions that were not measured well enough to be compared.
    asked_other
        Whether something else was mostly asked at the end than at the beginning (of
        :data:`RESTS_ON`): a figure may have changed for that alone.
    since
        Day of the baseline that was compared with; None where there was none.
    """

    verdict: Verdict
    first: float | None = None
    last: float | None = None
    count: int = 0
    least: float | None = None
    left_out: int = 0
    asked_other: bool = False
    since: date | None = None
    limit: Limit = "error"


def compare(points: Sequence[Point], spec: Spec) -> Change:
    """A baseline, or else the first, against the last of a series in the order of time."""
    usable = [p for p in points if p.usable]
    left_out = sum(p.value is None or bool(p.doubts) for p in points)
    if any(NOT_SETTLED in p.doubts for p in points):
        # The times of those that did settle would tell of the better days alone.
        return Change("too_few", left_out=left_out)
    ends = _from_baseline(usable, spec)
    since = ends[0][-1].day if ends else None
    if ends is None:
        count = min(MOST, len(usable) // 2)
        if count < spec.fewest:
            return Change("too_few", left_out=left_out)
        ends = usable[:count], usable[-count:]
    found = _judge(*ends, spec)
    return replace(found, left_out=left_out, since=since)


def _from_baseline(
    usable: Sequence[Point], spec: Spec
) -> tuple[Sequence[Point], Sequence[Point]] | None:
    """The newest visit's baseline and the last sessions after it; None where that is too few."""
    at = [k for k, p in enumerate(usable) if p.baseline]
    if not at:
        return None
    visit = [p for p in usable if p.baseline and p.day == usable[at[-1]].day][-MOST:]
    after = usable[at[-1] + 1 :][-MOST:]
    few = len(visit) < spec.fewest_baseline or len(after) < spec.fewest
    return None if few else (visit, after)


def _judge(start: Sequence[Point], end: Sequence[Point], spec: Spec) -> Change:
    """One end against the other."""
    first, last = ([p.value for p in part if p.value is not None] for part in (start, end))
    before, after, count = fmean(first), fmean(last), len(last)
    own, error = _hiding(first, last, spec)
    least = max(own, error)
    limit: Limit = "answers" if spec.answers else "uneven" if too_uneven(own, error) else "error"
    verdict: Verdict = called(after - before, own, error)
    if not _limits_allow(verdict, *([p.within_deg for p in part] for part in (start, end))):
        return Change("unlike", before, after, count)
    other = _asked_other(*([p.asked_for for p in part] for part in (start, end)))
    return Change(verdict, before, after, count, least, asked_other=other, limit=limit)


def _limits_allow(
    verdict: Verdict, first: Sequence[float | None], last: Sequence[float | None]
) -> bool:
    """Whether limits of "on target" leave a verdict standing.

    A wider limit can only let more pass. So what fell although the limit is wider has
    fallen, and what rose although it is narrower has risen; otherwise they must be alike.
    """
    known = [limit for limit in (*first, *last) if limit is not None]
    if not known:
        return True
    if len(known) < len(first) + len(last):
        return False
    if max(known) <= (1.0 + ALIKE_LIMITS) * min(known):
        return True
    before = [limit for limit in first if limit is not None]
    after = [limit for limit in last if limit is not None]
    if verdict == "fell":
        return min(after) >= max(before)
    return verdict == "rose" and max(after) <= min(before)


def _asked_other(first: Sequence[Any], last: Sequence[Any]) -> bool:
    """Whether no more than half of what was asked at the end was so asked at the beginning.

    Of each dose the lesser of its shares at both ends is common to them: a few sessions with a
    dose of the other end must not let a change of the dose pass for one of the person.
    """
    doses: list[Any] = []
    for asked in (*first, *last):
        if not any(asked_alike(d, asked) for d in doses):
            doses.append(asked)

    def share(asked: Sequence[Any], dose: Any) -> float:
        mine = [next(d for d in doses if asked_alike(d, a)) is dose for a in asked]
        return sum(mine) / len(mine)

    return sum(min(share(first, d), share(last, d)) for d in doses) <= 0.5


def asked_alike(one: Any, other: Any) -> bool:
    """Whether two sets asked for the same; amplitudes may differ a little.

    How far a target goes hangs on where a person sits that day.
    """
    if not isinstance(one, dict) or not isinstance(other, dict) or one.keys() != other.keys():
        return bool(one == other)
    return all(
        _ends_alike(one[k], other[k]) if k == "amplitude_deg" else one[k] == other[k] for k in one
    )


def _ends_alike(one: Any, other: Any) -> bool:
    a, b = (v if isinstance(v, list | tuple) else [v] for v in (one, other))
    if None in a or None in b or len(a) != len(b):
        return list(a) == list(b)
    return all(abs(x - y) <= SAME_SHARE * max(x, y) for x, y in zip(a, b, strict=True))


def least_change(first: Sequence[float], last: Sequence[float], spec: Spec) -> float:
    """The smallest difference of two means that is called a change.

    Parameters
    ----------
    first, last
        One to five values and three to five; without a baseline as many each.
    """
    return max(_hiding(first, last, spec))


def _hiding(first: Sequence[float], last: Sequence[float], spec: Spec) -> tuple[float, float]:
    """How large a difference the person's own spread can make, and the measurement's error."""
    error = sqrt(2.0) * spec.error(max(abs(fmean(first)), abs(fmean(last))))
    return by_spread(first, last), error
