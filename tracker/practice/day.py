"""Whether all is over for today: by every session of today that may be of the person."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from tracker.exercises.watchers.falls import NOT_TO_ITS_END, PossibleFall
from tracker.plan.gate import EMERGENCY
from tracker.plan.unlocking import ENDED_BADLY
from tracker.practice.week import date_of, day_of
from tracker.session.flags import FROM_CLIPS
from tracker.session.journal import JournalContent
from tracker.session.live import is_of_the_sample
from tracker.session.said import AFTER_DROP
from tracker.session.summary_file import Summary

#: Ends of a session that was not cut off, and of which nothing has to be looked up.
_WELL = ("finished", "stopped")
#: Outcomes of the safety questions after which nothing more is practised.
_NO_PRACTICE = ("sit_and_stop", "call_therapist", "emergency")


@dataclass(frozen=True, slots=True)
class Told:
    """What a session says of its day.

    Attributes
    ----------
    day
        On which it began; None where it is not known.
    person
        Whose it is; None where it names nobody.
    ends
        Whether it had to be ended with somebody there, or broke off where it would have been:
        by a symptom rule, a safety question, a possible fall, or who felt unwell. "That is all for
        today" was said then, or would have been; to nobody in a session from clips.
    because
        Why, as a summary has it in ``ended_because``.
    """

    day: date | None
    person: str | None
    ends: bool
    because: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Day:
    """Whether all is over for today, and why; ``final``: only another day lets it go on.

    That is so after an emergency of the very person, or of who was as unnamed as they are. After
    one that may have been anybody's the therapist's word of today lets it go on.
    """

    is_over: bool = False
    because: tuple[str, ...] = ()
    final: bool = False


def day_by(told: Iterable[Told], person: str | None, today: date) -> Day:
    """Whether all is over for somebody's today.

    Parameters
    ----------
    told
        What sessions say, in any order, those of other days and other people among them.
    person
        Who is about to practise; None where they are not named. Only what names another person
        than them is not theirs: to be wrong in this makes them ask their therapist, or wait a day.
    today
        The day on the person's calendar.
    """
    theirs = [t for t in told if person is None or t.person in (None, person)]
    ending = [t for t in theirs if t.ends and t.day == today]
    because = dict.fromkeys(reason for t in ending for reason in t.because)
    final = any(t.person == person and not set(EMERGENCY).isdisjoint(t.because) for t in ending)
    return Day(bool(ending), tuple(because), final)


def told_by(summary: Summary) -> Told:
    """What a session says by its summary."""
    gate = summary.gate or {}
    falls = [e for x in summary.exercises for e in x.events if e.code == PossibleFall.code]
    from_clip = any(f.flag == FROM_CLIPS for f in summary.quality)
    return _told(
        day_of(summary),
        summary.person,
        summary.ended,
        summary.ended_because,
        gates=[gate, *_list(gate.get("asked_again"))],
        drop=summary.after_drop,
        falls=[e.reason for e in falls],
        from_clip=from_clip or is_of_the_sample(summary.setup),
    )


def told_in(content: JournalContent) -> Told:
    """What a session says by its journal, whose samples are not needed: nobody has saved it."""
    found = content.of("session")[0].get("about")
    about: Mapping[str, Any] = found if isinstance(found, Mapping) else {}
    of_all = (r for r in content.of("answer") if r.get("number") is None)
    answers = {str(r.get("about")): r.get("value") for r in of_all}
    gates, why, drop = answers.get("gate"), answers.get("ended_because"), answers.get(AFTER_DROP)
    setup, notes, person = about.get("setup"), about.get("notes"), about.get("person")
    falls = [e for e in content.of("event") if e.get("code") == PossibleFall.code]
    head = content.damaged_head
    from_clip = FROM_CLIPS in _list(notes)
    from_clip = from_clip or (isinstance(setup, Mapping) and is_of_the_sample(setup))
    return _told(
        date_of(about.get("started_at")),
        person if isinstance(person, str) else None,
        content.ended,
        _list(why),
        gates=_list(gates),
        drop=drop if isinstance(drop, Mapping) else None,
        falls=[str(e.get("reason", "")) for e in falls],
        from_clip=from_clip or (head is not None and head.demo),
    )


def _told(
    day: date | None,
    person: str | None,
    ended: str,
    because: Sequence[object],
    *,
    gates: Sequence[object],
    drop: Mapping[str, Any] | None,
    falls: Sequence[object],
    from_clip: bool,
) -> Told:
    asked = [g for g in gates if isinstance(g, Mapping)]
    stopped = [g for g in asked if g.get("outcome") in _NO_PRACTICE]
    unwell = any(g.get("asked_because") == "unwell" for g in asked)
    fell = drop is not None and drop.get("seen") is True
    # It may have broken off before anybody was asked.
    fell = fell or any(reason not in NOT_TO_ITS_END for reason in falls)
    broke_off = ended not in _WELL and bool(stopped or unwell or fell)
    told = [*because, *(b for g in stopped for b in _list(g.get("because")))]
    return Told(
        day,
        person,
        not from_clip and (ended in ENDED_BADLY or broke_off),
        tuple(dict.fromkeys(str(reason) for reason in told)),
    )


def _list(value: object) -> list[Any]:
    """A list from a file; of anything else, which only damage puts there, none."""
    return value if isinstance(value, list) else []
