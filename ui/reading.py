"""A summary in plain words: rows of what, how much, and what was asked.

Pure: from the summary's content to texts. A value that is null reads "not
measured" with its reason kept apart from every figure, never 0.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from tracker.session.flags import REPORTED
from ui import words


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the summary; ``value`` is None where nothing was measured.

    ``share`` is what was done and what was asked for, in the same unit, where both are
    known.
    """

    label: str
    value: str | None
    asked: str = ""
    share: tuple[float, float] | None = None


def rows_of(exercise: Mapping[str, Any]) -> list[Row]:
    """The lines for one exercise of a summary."""
    prescribed = exercise.get("prescribed") or {}
    movement = exercise.get("head") or exercise.get("eyes") or {}
    done = exercise.get("done") or {}
    if not movement and (exercise.get("body") or done.get("held_s") is not None):
        return [*_whole_body(exercise.get("body"), done, prescribed), *_last(exercise, done)]
    return [
        _repetitions(done, prescribed),
        *_how_far(movement, prescribed),
        _tempo(movement.get("tempo_bpm"), prescribed.get("tempo_bpm")),
        *_on_target(exercise.get("gaze")),
        *_last(exercise, done),
    ]


def _how_far(movement: Mapping[str, Any], prescribed: Mapping[str, Any]) -> list[Row]:
    """How far and how fast the head or the eyes moved."""
    turned_in = movement.get("vergence_change_deg")
    if turned_in is not None:
        return [_figure("summary.turned_in", turned_in, "summary.degrees")]
    return [
        *_sides(movement.get("amplitude_deg") or {}, prescribed.get("amplitude_deg")),
        _figure("summary.speed", movement.get("peak_speed_deg_s"), "summary.degrees_s"),
    ]


def session_rows(summary: Mapping[str, Any]) -> list[Row]:
    """A line an entry of a planned session: what was done of it, or why it was not done."""
    rows = []
    for exercise in summary.get("exercises") or []:
        name = words.say_or(f"exercise.{exercise.get('exercise')}", "program")
        done, asked = exercise.get("done") or {}, exercise.get("prescribed") or {}
        if any(f.get("flag") == REPORTED for f in exercise.get("quality") or []):
            row = Row("", words.say("summary.reported"))
        elif done.get("repetitions") is not None:
            # Beside the name of an exercise a bare number would say nothing.
            row = replace(_repetitions(done, asked), value=words.times(done["repetitions"]))
            row = _by_time(row, done, asked)
            by_person = _by_person(exercise).value
            if by_person is not None and row.value is not None:
                # The camera has missed some of them.
                row = replace(row, value=words.row_of([row.value, by_person]))
        else:
            row = next(iter(_whole_body(None, done, asked)), None) or _by_person(exercise)
        rows.append(replace(row, label=name))
    for left in summary.get("not_done") or []:
        reason = next(iter(left.get("reasons") or []), "")
        why = words.say_or(f"refused.{reason}", "summary.left_out")
        rows.append(Row(words.say_or(f"exercise.{left.get('exercise')}", "program"), why))
    return rows


def _by_person(exercise: Mapping[str, Any]) -> Row:
    """What only the person has counted."""
    count = (exercise.get("own_count") or {}).get("value")
    value = None if count is None else words.say("summary.own_count", count=count)
    return Row("", value)


def _last(exercise: Mapping[str, Any], done: Mapping[str, Any]) -> list[Row]:
    return [
        Row(words.say("summary.noticed"), noticed(exercise.get("events") or [])),
        _share("summary.measured", done.get("measured_fraction")),
    ]


def _whole_body(
    body: Mapping[str, Any] | None, done: Mapping[str, Any], prescribed: Mapping[str, Any]
) -> list[Row]:
    """What is done with the whole body: repetitions and how long each took, or a time held."""
    rows: list[Row] = []
    if body is not None:
        rows = [
            _repetitions(done, prescribed),
            _figure("summary.each", body.get("rhythm_s"), "summary.seconds"),
        ]
    held = done.get("held_s")
    if isinstance(held, int | float):
        goal = prescribed.get("seconds")
        asked = ""
        if isinstance(goal, int | float):
            seconds = words.say("summary.seconds", value=words.number(goal))
            asked = words.say("summary.asked", asked=seconds)
        value = words.say("summary.seconds", value=words.number(held))
        rows.append(Row(words.say("summary.held"), value, asked, _share_of(held, goal)))
    return rows


def noticed(events: list[Mapping[str, Any]]) -> str:
    """The events, each kind once with how often."""
    counts = Counter(str(e.get("code")) for e in events)
    if not counts:
        return words.say("summary.nothing_noticed")
    parts = []
    for code, count in counts.items():
        what = words.say_or(f"event.{code}", "event.other", code=code)
        often = words.say("event.once") if count == 1 else words.say("event.times", count=count)
        parts.append(f"{what} {often}")
    return words.row_of(parts)


def _repetitions(done: Mapping[str, Any], prescribed: Mapping[str, Any]) -> Row:
    count, goal = done.get("repetitions"), prescribed.get("repetitions")
    asked = "" if goal is None else words.say("summary.asked", asked=words.number(goal))
    value = None if count is None else words.number(count)
    return Row(words.say("summary.repetitions"), value, asked, _share_of(count, goal))


def _by_time(row: Row, done: Mapping[str, Any], prescribed: Mapping[str, Any]) -> Row:
    """The row of what was asked for as a time; how long it went on is said where it was less."""
    goal, lasted = prescribed.get("seconds"), done.get("duration_s")
    share = _share_of(lasted, goal)
    if share is None or prescribed.get("repetitions") is not None or row.value is None:
        return row
    asked, went = (words.say("summary.seconds", value=words.number(v)) for v in (goal, lasted))
    value = row.value if share[0] >= share[1] else words.row_of([went, row.value])
    return replace(row, value=value, asked=words.say("summary.asked", asked=asked), share=share)


def _share_of(done: Any, goal: Any) -> tuple[float, float] | None:
    if not isinstance(done, int | float) or not isinstance(goal, int | float) or goal <= 0:
        return None
    # As the text beside it says it.
    return float(round(done)), float(max(round(goal), 1))


def _sides(amplitude: Mapping[str, Any], asked_deg: Any) -> list[Row]:
    asked = ""
    if asked_deg:
        low, high = (words.number(v) for v in asked_deg)
        reach = words.say("summary.degrees_range", low=low, high=high)
        asked = words.say("summary.asked", asked=reach)
    sides = amplitude.get("by_side") or {}
    names = [s for s in ("left", "right", "up", "down") if s in sides] or ["left", "right"]
    return [Row(words.say(f"summary.{s}"), _reached(sides.get(s)), asked) for s in names]


def _reached(figure: Any) -> str | None:
    """How far it went to a side; no figure where the median turned back before the middle."""
    value = figure.get("median") if isinstance(figure, Mapping) else None
    past = value is None or value >= 0.0
    return _median(figure, "summary.degrees") if past else words.say("summary.not_past")


def _median(figure: Any, words_key: str) -> str | None:
    value = figure.get("median") if isinstance(figure, Mapping) else None
    return None if value is None else words.say(words_key, value=words.number(value))


def _figure(label: str, figure: Any, words_key: str) -> Row:
    return Row(words.say(label), _median(figure, words_key))


def _tempo(figure: Any, asked_bpm: Any) -> Row:
    asked = ""
    if isinstance(asked_bpm, int | float):
        asked = words.say("summary.asked", asked=words.number(asked_bpm))
    return Row(words.say("summary.tempo"), _median(figure, "summary.per_minute"), asked)


def _on_target(gaze: Any) -> list[Row]:
    if gaze is None:
        return []
    return [_share("summary.on_target", (gaze.get("on_target_fraction") or {}).get("value"))]


def _share(label: str, share: Any) -> Row:
    value = None
    if isinstance(share, int | float):
        value = words.say("summary.of_time", value=words.number(100 * share))
    return Row(words.say(label), value)
