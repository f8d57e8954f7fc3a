"""What lies in the time of a set: repetitions, events, pauses and marks, and their words.

The drawing, the cursor's readout and the list all take it from here.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Set
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.watchers.falls import PossibleFall
from tracker.session.flags import LOW_LIGHT
from tracker.session.summary_file import Summary
from ui import words
from ui.desk import trade
from ui.desk.session_data import HOLE_S, SessionView, SetView, Span, nearest
from ui.desk.session_words import repetition_words

#: How near the cursor has to be to a mark, which has no length, to name it (own choice).
NEAR_MARK_S = 0.15
#: Quality below which a stretch is marked as doubtful (own choice): a covered face reads 0.35 at
#: most, a still one 0.9 (``tracker.measure``).
DOUBTFUL_QUALITY = 0.5
#: Shorter stretches are drawn but not listed (own choice; a blink is shorter).
LEAST_TOLD_S = 0.5


@dataclass(frozen=True, slots=True)
class Line:
    """A line of the list: when it begins, its words, and the number of a repetition."""

    time_s: float
    text: str
    number: int | None = None


def repetitions_of(shown: SetView) -> list[Span]:
    """Repetitions of a set."""
    return [span for span, _ in _repetitions(shown)]


def _event_words(view: SessionView, shown: SetView, code: str, reason: str | None = None) -> str:
    """An event, why it was, and what was said when the person was asked after it."""
    what, drop = trade.event(code), _drop_of(view, shown)
    why = [trade.reason(reason)] if reason else []
    if code == PossibleFall.code and drop is not None:
        why.append(trade.after_drop(str(drop.get("value") or drop.get("reason"))))
    return words.say("desk.event.why", what=what, why=words.row_of(why)) if why else what


def _drop_of(view: SessionView, shown: SetView) -> dict[str, Any] | None:
    """What was said after a drop in a set; where no set has it, the session's is to the last."""
    if any(s.exercise.after_drop for s in view.sets):
        return shown.exercise.after_drop
    return view.summary.after_drop if shown.number == _last_drop(view) else None


def _last_drop(view: SessionView) -> int:
    """Number of the last set with a possible fall."""
    falls = [
        s.number for s in view.sets if PossibleFall.code in {e.code for e in s.exercise.events}
    ]
    return max(falls, default=-1)


def _repetitions(shown: SetView) -> list[tuple[Span, dict[str, Any]]]:
    """Repetitions with the rows that they come from; rows that are damaged are left out."""
    found = []
    for row in shown.repetitions:
        number, start, end = row.get("repetition"), row.get("start_s"), row.get("end_s")
        if isinstance(number, int) and _is(start) and _is(end):
            span = Span(float(start or 0), float(end or 0), str(number), number)
            found.append((span, row))
    return found


def events_of(shown: SetView) -> list[Span]:
    """Events of a set; one without an end lasts to the end of the set."""
    return [
        Span(e.start_s, shown.to_s if e.end_s is None else e.end_s, e.code)
        for e in shown.exercise.events
    ]


def marks_of(view: SessionView, shown: SetView) -> list[float]:
    """Moments that somebody marked in a set, and after it until the next one begins.

    Those from before the first set are with the first, so that none is lost.
    """
    first, last = shown is view.sets[0], shown is view.sets[-1]
    from_s = float("-inf") if first else shown.from_s
    to_s = float("inf") if last else view.sets[shown.number + 1].from_s
    return [t for t in all_marks_of(view.summary) if from_s <= t < to_s]


def all_marks_of(summary: Summary) -> list[float]:
    """Times of all that was marked."""
    return sorted(m.time_s for m in summary.marks)


def pauses_of(view: SessionView, shown: SetView) -> list[Span]:
    """The pauses that a set ends with and begins after."""
    ends = (shown.from_s, shown.to_s)
    return [s for s in view.breaks if s.text == "pause" and (s.from_s in ends or s.to_s in ends)]


def gaps_of(view: SessionView, shown: SetView) -> list[Span]:
    """Stretches of a set in which its first line was not measured, each with the usual reason."""
    first = next(iter(shown.columns.values()))
    found = []
    for a, b in _runs(view, shown, lambda: ~np.isfinite(view.columns[first])):
        why = Counter(r for r in view.reasons[a:b] if r).most_common(1)
        found.append(_span(view, shown, a, b, why[0][0] if why else "gap"))
    times = view.times_s
    for k in np.flatnonzero(np.diff(times) > HOLE_S):
        inside = shown.from_s <= times[k] and times[k + 1] < shown.to_s
        # What begins unmeasured lasts to the next sample already.
        if inside and np.isfinite(view.columns[first][k]):
            found.append(Span(float(times[k]), float(times[k + 1]), "gap"))
    return sorted(found, key=lambda span: span.from_s)


def doubts_of(view: SessionView, shown: SetView) -> list[Span]:
    """Stretches that were measured, but in the dark or with a face hard to follow."""
    first = next(iter(shown.columns.values()))

    def doubtful() -> NDArray[np.bool_]:
        poor = view.columns["quality"] < DOUBTFUL_QUALITY
        return np.isfinite(view.columns[first]) & (poor | (view.columns["light"] < LOW_LIGHT))

    found = []
    for a, b in _runs(view, shown, doubtful):
        dark = np.nanmedian(view.columns["light"][a:b]) < LOW_LIGHT
        found.append(_span(view, shown, a, b, "dark" if dark else "unsure"))
    return found


def _runs(
    view: SessionView, shown: SetView, where: Callable[[], NDArray[np.bool_]]
) -> list[tuple[int, int]]:
    """First sample and the one after the last of each stretch of a set where something is so."""
    if not len(view.times_s):
        return []
    inside = (view.times_s >= shown.from_s) & (view.times_s < shown.to_s)
    edges = np.flatnonzero(np.diff(np.concatenate([[0], (inside & where()).astype(int), [0]])))
    return [(int(a), int(b)) for a, b in zip(edges[::2], edges[1::2], strict=True)]


def _span(view: SessionView, shown: SetView, a: int, b: int, text: str) -> Span:
    """A stretch of samples lasts to the next one; what comes after the set is not its own."""
    last = min(b, len(view.times_s) - 1)
    return Span(float(view.times_s[a]), min(float(view.times_s[last]), shown.to_s), text)


def told_at(view: SessionView, shown: SetView, time_s: float, near_s: float) -> list[str]:
    """What there is at a time, in words; ``near_s`` is how far a mark may be away."""
    told = [
        words.say("desk.rep", number=s.number)
        for s in repetitions_of(shown)
        if s.from_s <= time_s < s.to_s
    ]
    told += [
        _event_words(view, shown, s.text) for s in events_of(shown) if s.from_s <= time_s <= s.to_s
    ]
    at = nearest(view.times_s, time_s)
    if at is not None:
        why = view.reasons[at]
        told += [trade.reason(why)] if why else []
    doubts = [s for s in doubts_of(view, shown) if s.from_s <= time_s < s.to_s]
    told += [words.say(f"desk.doubt.{s.text}") for s in doubts]
    told += [words.say(f"desk.{s.text}") for s in view.breaks if s.from_s < time_s < s.to_s]
    told += [
        words.say("desk.mark.at", time=words.number(t, 1))
        for t in all_marks_of(view.summary)
        if abs(t - time_s) <= max(near_s, NEAR_MARK_S)
    ]
    return told


def lines_of(view: SessionView, shown: SetView, not_valid: Set[int]) -> list[Line]:
    """What there is in a set, in the order of time; ``not_valid`` are repetitions."""
    lines = []
    for span, row in _repetitions(shown):
        text = repetition_words(row)
        if span.number in not_valid:
            text = words.say("desk.rep.invalid", what=text)
        lines.append(Line(span.from_s, text, span.number))
    events = events_of(shown)
    for span, row in zip(events, shown.exercise.events, strict=True):
        what = _event_words(view, shown, span.text, row.reason)
        lines.append(Line(span.from_s, words.say("desk.event", what=what, length=_length(span))))
    said = [s for s in events if s.text == "not_measured"]
    for span in gaps_of(view, shown):
        known = any(s.from_s <= span.to_s and span.from_s <= s.to_s for s in said)
        if not known and span.to_s - span.from_s >= LEAST_TOLD_S:
            why = trade.reason(span.text)
            text = words.say("desk.gap.of", length=_length(span), why=why)
            lines.append(Line(span.from_s, text))
    for span in doubts_of(view, shown):
        if span.to_s - span.from_s >= LEAST_TOLD_S:
            why = words.say(f"desk.doubt.{span.text}")
            text = words.say("desk.doubt.of", length=_length(span), why=why)
            lines.append(Line(span.from_s, text))
    for span in pauses_of(view, shown):
        lines.append(Line(span.from_s, words.say("desk.pause.of", length=_length(span))))
    for time_s in marks_of(view, shown):
        inside = shown.from_s <= time_s < shown.to_s
        lines.append(Line(time_s, words.say("desk.marked" if inside else "desk.marked.outside")))
    return sorted(lines, key=lambda line: line.time_s)


def _length(span: Span) -> str:
    return words.number(span.to_s - span.from_s, 1)


def _is(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)
