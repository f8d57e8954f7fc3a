"""What a therapist should look at first, of one person, and who comes first of many.

Pure functions: from rows to reasons. The order is: answers that are red flags, falls that
were told of, possible falls, stopped feeling unwell, spins in certain positions, symptoms
that did not settle, drops not seen to their end of who then said to be all right; then, marked as
older, the gravest of what happened longer ago; then symptoms that rise, medicines that changed,
practice against the plan, gaze that fell, figures that can't be trusted, a condition of the plan
that is met. Nothing here finds an illness: it says what was answered and measured.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import IntEnum

from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.plan.starter import TRY_ID
from tracker.records import telling
from tracker.records.adherence import LONG_PAUSE_DAYS, LOW_SHARE, Adherence
from tracker.records.conditions import Standing
from tracker.records.rows import SessionRow, SetRow
from tracker.records.series import Series
from tracker.session.flags import REPORTED
from tracker.session.said import ALSO_ASKED, CLOSED, NO_ANSWER, UNASKED
from tracker.session.weekly import FELL, TOLD_WEEKLY

#: What happened longer before the person's own last session is no longer put first. It
#: counts from their last session and not from today: who stopped after a red flag and
#: never came back is not forgotten (own choice: the length of adherence's window).
#: Of the gravest kinds it stays a reason, marked as older, below all recent ones that are said
#: with a call in mind and above what can wait: many weeks may come in one file, and nobody knows
#: here what a therapist has looked at. They are not put first, or in a year everybody would be.
#: Sessions of nobody known have no last one of their own: for them the folder's day counts.
RECENT_DAYS = 28
#: A person whose figures are in doubt in so many of the last sets (own choice).
DOUBT_SHARE = 0.5
LAST_SETS = 12


class Kind(IntEnum):
    """Kinds of reasons; the smaller comes first."""

    red_flag = 0
    fell = 1
    possible_fall = 2
    unwell = 3
    spin = 4
    not_settled = 5
    dropped = 6
    rising = 7
    medicines = 8
    practice = 9
    gaze = 10
    doubt = 11
    condition = 12


#: These are said with a call in mind; the others can wait for the next visit.
FIRST = frozenset(kind for kind in Kind if kind <= Kind.dropped)


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason to look: a short line, the day of which it tells, and that session.

    That is the newest where all are alike, else the gravest; ``newest`` is the newest then.
    ``older``: it lies more than :data:`RECENT_DAYS` before the last session.
    """

    kind: Kind
    text: str
    day: date | None = None
    place: str | None = None
    times: int = 1
    newest: date | None = None
    older: bool = False

    @property
    def last_day(self) -> date | None:
        """The newest day it was so."""
        return self.newest or self.day

    @property
    def first(self) -> bool:
        """Whether it is said with a call in mind."""
        return self.kind in FIRST and not self.older

    @property
    def order(self) -> tuple[int, Kind]:
        """Key that puts the reasons of one person in order."""
        return (0 if self.first else 1 if self.older else 2, self.kind)


def reasons_of(
    rows: Sequence[SessionRow],
    adherence: Adherence,
    series: Iterable[Series],
    conditions: Sequence[Standing] = (),
) -> list[Reason]:
    """Reasons to look at a person, the gravest first.

    Parameters
    ----------
    rows
        Their sessions, oldest first.
    series
        At least the session's scores and the gaze on target.
    conditions
        How the conditions of the plan stand.
    """
    recent, older = _by_age(rows, adherence.to_day)
    found = [
        _from_sessions(Kind.red_flag, recent, _red_flag),
        _from_sessions(Kind.fell, recent, _fell, _how_grave),
        _from_sessions(Kind.possible_fall, recent, _fall, _how_grave_drop),
        _from_sessions(Kind.unwell, recent, _unwell),
        _from_sessions(Kind.spin, recent, _spin),
        _from_sessions(Kind.not_settled, recent, _not_settled),
        _from_sessions(Kind.dropped, recent, _dropped),
        *_older(older),
        *_rising(series),
        _from_sessions(Kind.medicines, recent, _medicines),
        _practice(adherence),
        *_gaze(series),
        _doubt(rows),
        *_conditions(rows, conditions),
    ]
    return [r for r in found if r is not None]


def reasons_of_each(rows: Sequence[SessionRow], to_day: date) -> list[Reason]:
    """Reasons to look at sessions that may be of several people, the gravest and newest first.

    Nothing is compared or called older by another of them: whom a newer session is of is not
    known, so it can't make another one's red flag the past. The calendar does: what lies more
    than :data:`RECENT_DAYS` before ``to_day`` is older, one line a kind, or the list would only
    ever grow. So is what can wait.

    Parameters
    ----------
    rows
        Their sessions, oldest first.
    to_day
        The day up to which practice is counted in their folder.
    """
    since = to_day - timedelta(days=RECENT_DAYS - 1)
    past = [r for r in rows if r.day is not None and r.day < since]
    urgent: list[Reason] = []
    rest: dict[Kind, list[Reason]] = {}
    for row in reversed(rows):
        aged = row.day is not None and row.day < since
        # Without a plan nothing is asked, so nothing of practice is missed.
        nothing = Adherence(None, row.day or date.min, {}, None, None, 0, 0, 0, None)
        for reason in reasons_of([row], nothing, ()):
            if aged and reason.kind != Kind.doubt:
                continue
            if reason.first:
                urgent.append(reason)
            else:
                rest.setdefault(reason.kind, []).append(reason)
    waiting = [replace(found[0], times=len(found)) for found in rest.values()]
    return sorted([*urgent, *_older(past), *waiting], key=lambda r: r.order)


def _older(rows: Sequence[SessionRow]) -> list[Reason]:
    """The gravest kinds of what happened longer ago, one line each."""
    found = [
        _from_sessions(Kind.red_flag, rows, _red_flag_older),
        _from_sessions(Kind.fell, rows, _fell_older, _how_grave),
        _from_sessions(Kind.possible_fall, rows, _fall, _how_grave_drop),
        _from_sessions(Kind.unwell, rows, _unwell),
        _from_sessions(Kind.spin, rows, _spin),
    ]
    return [replace(r, older=True) for r in found if r is not None]


def urgency(reasons: Sequence[Reason], share: float | None, name: str) -> tuple[object, ...]:
    """Key that puts people in order: kind by kind, then the newer, then who practised less."""
    if not reasons:
        return (_NOTHING, 0, _or_one(share), name)
    gravest = reasons[0]
    day = gravest.last_day if gravest.kind in FIRST else None
    return (gravest.order, -day.toordinal() if day else 0, _or_one(share), name)


#: After every reason.
_NOTHING = (2, len(Kind))


def _or_one(share: float | None) -> float:
    return 1.0 if share is None else share


def _by_age(rows: Sequence[SessionRow], to_day: date) -> tuple[list[SessionRow], list[SessionRow]]:
    """Those of the last weeks before the newest session, and older ones.

    One dated ahead by a wrong clock is not the newest.
    """
    days = [r.day for r in rows if r.day is not None]
    known = [d for d in days if d <= to_day + timedelta(days=1)] or days
    if not known:
        return list(rows), []
    since = max(known) - timedelta(days=RECENT_DAYS - 1)
    older = [r for r in rows if r.day is not None and r.day < since]
    return [r for r in rows if r.day is None or r.day >= since], older


def _from_sessions(
    kind: Kind,
    rows: Sequence[SessionRow],
    what: Callable[[SessionRow], str],
    grave: Callable[[SessionRow], tuple[bool, ...]] = lambda _: (),
) -> Reason | None:
    """One line for all sessions of which something is so; of the gravest the newest is told.

    Where it was in none of a plan, it says so: nothing was prescribed then, nor asked before, and
    whose it was may not be known. Such a one never stands before an equal one of the plan.
    """
    told = [(r, telling.outside(r.plan_id, text)) for r in rows if (text := what(r))]
    if not told:
        return None

    def rank(found: SessionRow) -> tuple[bool, ...]:
        return (*grave(found), found.plan_id not in (None, TRY_ID))

    row, text = max(reversed(told), key=lambda found: rank(found[0]))
    return Reason(kind, text, row.day, row.place, len(told), told[-1][0].day)


def _red_flag(row: SessionRow, fell: Callable[[SessionRow], str] | None = None) -> str:
    """Answers that are red flags; ``fell`` gives the line of a fall that is shown beside it."""
    asked = [q for q in row.put_first if q in (*EMERGENCY, *CALL, TOLD_WEEKLY)]
    if TOLD_WEEKLY in asked and (fell or _fell)(row):
        # The line of the fall says more of it; twice it would look like two.
        asked.remove(TOLD_WEEKLY)
        if not asked:
            return ""
    if asked:
        return f"answered yes: {telling.listed(telling.question(q) for q in asked)}"
    return "ended by a safety question" if row.ended == "red_flag" else ""


def _fell(row: SessionRow) -> str:
    """A fall of which the person has told when asked, as each week."""
    if row.weekly.get("falls") not in FELL:
        return ""
    return telling.fell(row.weekly)


def _fell_older(row: SessionRow) -> str:
    """A fall of longer ago: all but a single one that is known not to have hurt.

    Whether it hurt may have been passed over, and then nobody knows that it did not.
    """
    harmless = row.weekly.get("hurt") is False and row.weekly.get("falls") != "more"
    return "" if harmless else _fell(row)


def _red_flag_older(row: SessionRow) -> str:
    return _red_flag(row, _fell_older)


def _how_grave(row: SessionRow) -> tuple[bool, ...]:
    """A fall that hurt comes before several that did not."""
    return row.weekly.get("hurt") is True, row.weekly.get("falls") == "more"


def _medicines(row: SessionRow) -> str:
    return telling.MEDICINES_CHANGED if row.weekly.get("medicines_changed") is True else ""


def _fall(row: SessionRow) -> str:
    """A possible fall, with what was said after it."""
    if _went_on(row):
        return ""
    said = f": {telling.after_drop(row.after_drop)}" if row.after_drop else ""
    if row.ended == "possible_fall":
        return f"possible fall, and the session ended with it{said}"
    seen = _dropped_in(row)
    if seen:
        return f"possible fall seen in {seen}{said}"
    return f"sudden drop of the head in a set not seen to its end{said}" if said else ""


def _dropped(row: SessionRow) -> str:
    """A drop that nobody saw the end of, of who said to be all right and went on."""
    if not _went_on(row):
        return ""
    where = _dropped_in(row) or "a set"
    said = telling.after_drop(row.after_drop)
    return f"sudden drop of the head in {where} not seen to its end: {said}"


def _went_on(row: SessionRow) -> bool:
    """Whether the session went on after a drop: that it does only where none saw its end.

    The face was lost, or the set ended while the head dropped.
    """
    return row.after_drop == "fine" and row.ended != "possible_fall"


def _dropped_in(row: SessionRow) -> str:
    """The first exercise in which the camera noticed a drop; empty where it did not."""
    found = [s for s in row.sets if s.events.get("possible_fall")]
    return telling.exercise(found[0].exercise) if found else ""


def _how_grave_drop(row: SessionRow) -> tuple[bool, ...]:
    """Not well comes before no answer, then a question closed, nobody asked, and fine."""
    grave = tuple(row.after_drop == said for said in ("not_well", NO_ANSWER, CLOSED, UNASKED))
    return *grave, row.ended == "possible_fall"


def _unwell(row: SessionRow) -> str:
    return telling.ended(row.ended) if row.ended == "stopped_unwell" else ""


def _spin(row: SessionRow) -> str:
    return f"answered yes: {telling.question(SPIN)}" if SPIN in row.put_first else ""


def _not_settled(row: SessionRow) -> str:
    if row.not_settled:
        return "symptoms did not settle in the time that the plan allows"
    if row.ended == "symptom_rule":
        after = "" if row.after is None else f" ({row.after:.0f} of 10 at the end)"
        return f"symptoms above the plan's limit ended the session{after}"
    return ""


def _rising(series: Iterable[Series]) -> list[Reason]:
    """Scores that rose, one line a symptom."""
    found: dict[str, Reason] = {}
    for one in series:
        symptom = _symptom(one.figure)
        if one.exercise or not symptom or symptom in found:
            continue
        change = one.change
        if change.verdict == "rose":
            last = one.points[-1]
            found[symptom] = Reason(Kind.rising, telling.rose(one, change), last.day)
    return list(found.values())


def _symptom(figure: str) -> str:
    """What a score is of; empty for another figure."""
    if figure.startswith(("dizziness", "rest_of", "next_")):
        return "dizziness"
    return next((name for name in ALSO_ASKED if figure.startswith(f"{name}_")), "")


def _practice(adherence: Adherence) -> Reason | None:
    last = adherence.last_day
    pause = None if last is None else (adherence.to_day - last).days
    if adherence.share is not None and adherence.share < LOW_SHARE:
        return Reason(Kind.practice, telling.low_practice(adherence), last)
    if pause is not None and pause >= LONG_PAUSE_DAYS:
        return Reason(Kind.practice, f"no practice for {pause} days", last)
    return None


def _gaze(series: Iterable[Series]) -> list[Reason]:
    """Gaze that fell, the side on which it fell most; one line an exercise."""
    fell: dict[tuple[str, str], list[tuple[float, Series]]] = {}
    for one in series:
        if one.figure != "on_target":
            continue
        change = one.change
        if change.verdict == "fell" and change.first is not None and change.last is not None:
            by = change.first - change.last
            fell.setdefault((one.exercise, one.form), []).append((by, one))
    found = []
    for parts in fell.values():
        sides = [p for p in parts if p[1].side]
        most = max(sides or parts, key=lambda p: p[0])[1]
        both = len(sides) > 1
        text = telling.gaze_fell(most, most.change, both=both)
        found.append(Reason(Kind.gaze, text, most.points[-1].day))
    return found


def _conditions(rows: Sequence[SessionRow], standing: Sequence[Standing]) -> list[Reason]:
    """Conditions that are met, of what isn't practised yet."""
    last = max((r.day for r in rows if r.day is not None), default=None)
    return [
        Reason(Kind.condition, f"condition met: {telling.opening(s)}", last)
        for s in standing
        if s.condition.met and not s.practised
    ]


def _doubts(done: SetRow) -> tuple[str, ...]:
    """Doubts about what a set was watched for: where nobody looked at the eyes, not theirs."""
    return done.doubts("on_target" if "on_target" in done.figures else "tempo_bpm")


def _doubt(rows: Sequence[SessionRow]) -> Reason | None:
    """Whether the figures of late can't be trusted, and why."""
    # What was only told of was never to be measured.
    watched = [(r, s) for r in rows for s in r.sets if REPORTED not in s.flags]
    last = watched[-LAST_SETS:]
    bad = [(r, s) for r, s in last if _doubts(s)]
    if not last or len(bad) < DOUBT_SHARE * len(last):
        return None
    flags = [f for _, s in bad for f in _doubts(s)]
    often = sorted(set(flags), key=lambda f: (-flags.count(f), f))
    text = f"figures can't be trusted in {len(bad)} of the last {len(last)} sets: "
    text += telling.listed(telling.flag(f) for f in often[:2])
    return Reason(Kind.doubt, text, bad[-1][0].day, bad[-1][0].place)
