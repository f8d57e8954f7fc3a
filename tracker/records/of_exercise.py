"""The figures of one exercise of a summary."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import Any

from tracker.exercises.catalogue import CATALOGUE, Exercise
from tracker.records import terms
from tracker.records import units as u
from tracker.records.figure import NOT_ASKED, SIDES, Figure, Making
from tracker.records.of_body import body_figures, hand_figures, table_figures
from tracker.records.of_target import target_figures
from tracker.records.of_uncertainty import difference_figures, unknown_figures
from tracker.records.places import Place, clean
from tracker.session.said import ALSO_ASKED
from tracker.session.summary import NO_REPETITIONS
from tracker.session.sway_uncertain import PLACES

#: Measures of a movement: key in the summary -> name, unit.
MOVEMENT: dict[str, tuple[str, u.Unit]] = {
    "amplitude_deg": ("Amplitude", u.DEGREES),
    "vergence_change_deg": ("Vergence change", u.DEGREES),
    "reach_percent": ("Reach of what was asked", u.PERCENT),
    "peak_speed_deg_s": ("Peak speed", u.DEGREES_S),
    "amplitude_mm": ("Distance from rest", u.MILLIMETRES),
    "swing_mm": ("Distance end to end", u.MILLIMETRES),
    "peak_speed_mm_s": ("Peak speed", u.MILLIMETRES_S),
    "time_s": ("Time of one way", u.SECONDS),
    "tempo_bpm": ("Tempo", u.BEATS),
    "rhythm_s": ("From one to the next", u.SECONDS),
}
SWAY: dict[str, tuple[str, str, u.Unit]] = {
    "rms_sideways_mm": ("sway", "sideways", u.MILLIMETRES),
    "rms_fore_aft_mm": ("sway", "fore_aft", u.MILLIMETRES),
    "range_sideways_mm": ("sway_range", "sideways", u.MILLIMETRES),
    "range_fore_aft_mm": ("sway_range", "fore_aft", u.MILLIMETRES),
    "ellipse_95_mm2": ("sway_area", "all", u.SQUARE_MILLIMETRES),
}
#: The reason in a summary for which sway is not a question at all.
NO_STANDING = "not a standing exercise"


def exercise_figures(place: Place, *, own_setup: bool = False) -> tuple[Figure, ...]:
    """All figures of one exercise (a place such as ``exercises.0``), in order.

    ``own_setup`` is whether the set-ups of the session differ, so that each exercise
    tells of its own.
    """
    exercise = CATALOGUE.get(str(place.at("exercise").value))
    parts = (
        *(_dose, _table, _movement, _body, _gaze, _target, _lids, _standing, _answers),
        *(_changed, _events),
    )
    found = [figure for part in parts for figure in part(place, exercise)]
    if own_setup and place.at("setup").value is not None:
        found += gaze_at_setup(place.at("setup"), "gaze")
    return tuple(found)


def gaze_at_setup(setup: Place, group: str, why: str = "no gaze set-up") -> Iterator[Figure]:
    """How well the gaze was read at a set-up, by its fit and on looks kept back from it."""
    make = Making(group, "gaze_error_setup", "Gaze error at set-up", u.DEGREES)
    yield make.of(setup.at("gaze_error_deg").number(), why)
    check = setup.at("check")
    if check.value is not None:
        reason = check.at("reason").text()
        yield make.of(check.at("gaze_error_deg").number(), reason, "held_out")


def _dose(place: Place, _: Exercise | None) -> Iterator[Figure]:
    done, asked = place.at("done"), place.at("prescribed")
    reason = done.at("reason").text()
    repetitions = Making("dose", "repetitions", "Repetitions", u.COUNT)
    yield from repetitions.asked(asked.at("repetitions").number())
    # Of what is held for a time there is nothing to count, so nothing is missing.
    if reason != NO_REPETITIONS or asked.at("repetitions").value is not None:
        yield repetitions.of(done.at("repetitions").number(), reason)
        turns = Making("dose", "turns", "Single turns", u.COUNT)
        yield turns.of(done.at("turns").number(), reason)
    time = Making("dose", "duration", "Time", u.SECONDS)
    yield from time.asked(asked.at("seconds").number())
    yield time.of(done.at("duration_s").number(), "not recorded")
    if done.at("held_s").value is not None:
        held = Making("dose", "held", "Held as asked", u.SECONDS)
        yield held.of(done.at("held_s").number())
        yield held.of(done.at("held_longest_s").number(), "not recorded", "longest")
    share = Making("dose", "measured", "Time that was measured", u.PERCENT)
    yield share.of(_percent(done.at("measured_fraction")), "not recorded")


def _movement(place: Place, _: Exercise | None) -> Iterator[Figure]:
    asked = place.at("prescribed")
    tempo = asked.at("tempo_bpm")
    wanted = {"amplitude_deg": asked.at("amplitude_deg").span(), "tempo_bpm": tempo.span()}
    moved = [
        (key, found.at(key))
        for part in ("head", "eyes", "body")
        if (found := place.at(part)).value is not None
        for key in MOVEMENT
        if key in found.names()
    ]
    for key, figure in moved:
        yield from _of_turns(_making(key), figure, wanted.get(key))
    yield from unknown_figures([(_making(key), figure) for key, figure in moved])


def _making(key: str) -> Making:
    return Making("movement", key, *MOVEMENT[key])


def _body(place: Place, _: Exercise | None) -> Iterator[Figure]:
    yield from body_figures(place)
    yield from hand_figures(place)


#: What can be changed between two sets: key in the summary -> name, unit.
CHANGED: dict[str, tuple[str, u.Unit]] = {
    "tempo_bpm": ("Tempo", u.BEATS),
    "amplitude_deg": ("Amplitude", u.DEGREES),
}


def _changed(place: Place, _: Exercise | None) -> Iterator[Figure]:
    """What the plan asks for, where a therapist had it changed for this set."""
    changed = place.at("changed")
    for key, (name, unit) in CHANGED.items():
        rows = list(changed.at(key).rows())
        if rows:
            make = Making("movement", key, name, unit, "asked")
            yield make.of(rows[0].span(), "the patient's own pace", "planned")


def _table(place: Place, _: Exercise | None) -> Iterator[Figure]:
    yield from table_figures(place)


def _target(place: Place, _: Exercise | None) -> Iterator[Figure]:
    yield from target_figures(place)


def _of_turns(make: Making, found: Place, wanted: tuple[float, float] | None) -> Iterator[Figure]:
    yield from make.asked(wanted)
    yield make.read(found)
    yield from make.spread(found)
    yield from _by_side(make, found.at("by_side"))
    for part in ("first_five", "last_five"):
        if found.at(part).value is not None:
            yield make.read(found.at(part), part)
    if found.at("difference").value is not None:
        yield from difference_figures(make, found.at("difference"))


def _by_side(make: Making, sides: Place, part: str = "", factor: float = 1.0) -> Iterator[Figure]:
    known = sides.names()
    for side in (*(s for s in SIDES if s in known), *(s for s in known if s not in SIDES)):
        inside = sides.at(side).at(part) if part else sides.at(side)
        if side in SIDES:
            yield make.read(inside, side, factor=factor)
        else:
            raise sides.wrong("names a side that there is none of")


def _gaze(place: Place, _: Exercise | None) -> Iterator[Figure]:
    gaze = place.at("gaze")
    if gaze.value is not None:
        on_target = Making("gaze", "on_target", "Gaze on target", u.PERCENT)
        whole = on_target.read(gaze.at("on_target_fraction"), factor=100.0)
        yield whole
        yield from _by_side(on_target, gaze.at("by_side"), "on_target_fraction", 100.0)
        within = gaze.at("on_target_within_deg").number()
        if within is not None and whole.value is not None:
            yield on_target.of(within, aspect="within", unit=u.DEGREES)
        error = Making("gaze", "gaze_error", "Gaze from target", u.DEGREES)
        yield error.read(gaze.at("error_deg"))
        yield from error.spread(gaze.at("error_deg"))
        yield from _by_side(error, gaze.at("by_side"), "error_deg")
        turned = gaze.at("counter_turn_ratio")
        ratio = Making(
            "gaze", "counter_turn", "Eye turn per head turn (no diagnostic gain)", u.RATIO
        )
        found = ratio.read(turned)
        yield found
        yield from ratio.spread(turned)
        expected = turned.at("expected").number()
        if expected is not None and found.value is not None:
            yield ratio.of(expected, aspect="expected")
        yield from _by_side(ratio, turned.at("by_side"))
    still = place.at("stillness")
    if still.value is not None:
        make = Making("gaze", "head_still", "Head away from its middle", u.DEGREES)
        reason = still.at("reason").text()
        yield make.of(still.at("median_deg").number(), reason)
        yield make.of(still.at("p95_deg").number(), reason, "p95")


def _lids(place: Place, _: Exercise | None) -> Iterator[Figure]:
    closed = Making("gaze", "eyes_closed", "Eyes closed, blinks included", u.PERCENT)
    yield closed.read(place.at("eyes_closed_fraction"), factor=100.0)


def _standing(place: Place, _: Exercise | None) -> Iterator[Figure]:
    sway = place.at("sway")
    reason = sway.at("reason").text()
    if sway.value is None or reason == NO_STANDING:
        return
    names = {"sway": "Sway, RMS", "sway_range": "Sway, range", "sway_area": "Sway, 95 % area"}
    whole = Making("standing", "sway", names["sway"], u.MILLIMETRES)
    yield whole.of(sway.at("value").number(), reason, error=_expanded(sway, "value"))
    if sway.at("value").value is None:
        return
    for key, (measure, aspect, unit) in SWAY.items():
        make = Making("standing", measure, names[measure], unit)
        yield make.of(sway.at(key).number(), reason, aspect, error=_expanded(sway, key))
    told = sway.at("uncertainty")
    if told.value is not None and told.at("expanded").value is None:
        yield whole.of(None, told.at("reason").text(), "uncertainty", unit=u.WORDS)


def _expanded(sway: Place, key: str) -> float | None:
    """Of one of a sway's figures; None of those that have none, and of older summaries."""
    return sway.at(PLACES[key]).at("expanded").number() if key in PLACES else None


#: What was asked with a choice of answers -> its name, and the answers.
CHOSEN: dict[str, tuple[str, dict[str, str]]] = {
    "arm": ("Arm that was used", terms.ARMS),
    "landed": ("Eyes as they opened", terms.LANDED),
}


def _answers(place: Place, exercise: Exercise | None) -> Iterator[Figure]:
    clarity = place.at("clarity")
    if clarity.at("value").value is not None or (exercise is not None and exercise.asks_clarity):
        yield _words("clarity", "Target looked", clarity)
    if clarity.at("stopped_set").truth():
        make = Making(
            "answers", "stopped_double", "Set stopped for seeing double", u.WORDS, "reported"
        )
        yield make.of("yes")
    support = place.at("support")
    if support.value is not None and support.at("asked").text() not in (None, "none"):
        make = Making("answers", "support", "Support", u.WORDS, "reported")
        yield from make.asked(terms.word(terms.SUPPORT, str(support.at("asked").text())))
        yield make.of(_yes_no(support.at("confirmed")), NOT_ASKED, "confirmed")
    steadied = place.at("steadied")
    if steadied.value is not None:
        make = Making("answers", "steadied", "Had to hold on", u.WORDS, "reported")
        yield make.of(_yes_no(steadied.at("value")), steadied.at("reason").text() or NOT_ASKED)
    for about, (name, kinds) in CHOSEN.items():
        chosen = place.at(about)
        if chosen.value is not None:
            told = chosen.at("value").text()
            make = Making("answers", about, name, u.WORDS, "reported")
            yield make.of(
                None if told is None else terms.word(kinds, told),
                chosen.at("reason").text() or NOT_ASKED,
            )
    count = place.at("own_count")
    if count.value is not None:
        make = Making("answers", "own_count", "Counted by the patient", u.COUNT, "reported")
        yield make.of(count.at("value").number(), count.at("reason").text() or NOT_ASKED)
    yield from symptom_figures(place.at("symptoms"))


def symptom_figures(place: Place) -> Iterator[Figure]:
    """Scores before and after, and the time to settle; nothing where none were asked for."""
    if place.value is None:
        return
    reasons = place.at("reasons")
    make = Making("symptoms", "dizziness", "Dizziness", u.SCORE, "reported")
    for when in ("before", "after"):
        yield make.of(place.at(when).number(), reasons.at(when).text() or NOT_ASKED, when)
    minutes, why = place.at("settled_minutes").number(), reasons.at("settled_minutes").text()
    yield make.of(minutes, why or NOT_ASKED, "settled", unit=u.MINUTES)
    for name in place.names():
        if name in ALSO_ASKED:
            more = Making("symptoms", name, name.capitalize(), u.SCORE, "reported")
            for when in ("before", "after"):
                yield more.of(place.at(name).at(when).number(), NOT_ASKED, when)


def _events(place: Place, exercise: Exercise | None) -> Iterator[Figure]:
    rows = list(place.at("events").rows())
    total = Making("events", "events", "Noticed, in all", u.COUNT)
    if not rows and (exercise is None or not exercise.watchers):
        yield total.of(None, "nothing is watched for in this exercise")
    elif not rows and not place.at("done").at("measured_fraction").number():
        yield total.of(None, "nothing was measured")
    else:
        yield total.of(float(len(rows)))
    by_code: dict[str, list[Place]] = {}
    for row in rows:
        by_code.setdefault(row.at("code").text() or "?", []).append(row)
    for code, found in by_code.items():
        make = Making(
            "events", f"event.{code}", _first_upper(terms.word(terms.EVENTS, code)), u.COUNT
        )
        yield make.of(float(len(found)))
        yield make.of(_time_in_all(found), "its end is not recorded", "total_time", unit=u.SECONDS)
        yield make.of(float(sum(r.at("said_at_s").number() is not None for r in found)), "", "said")
        reasons = Counter(text for r in found if (text := r.at("reason").text()))
        if reasons:
            told = [f"{terms.word(terms.REASONS, k)} ({n})" for k, n in reasons.most_common()]
            yield make.of(clean("; ".join(told)), aspect="why", unit=u.WORDS)


def _time_in_all(rows: list[Place]) -> float | None:
    total = 0.0
    for row in rows:
        start, end = row.at("start_s").number(), row.at("end_s").number()
        if start is None or end is None:
            return None
        total += end - start
    return total


def _words(measure: str, name: str, place: Place) -> Figure:
    make = Making("answers", measure, name, u.WORDS, "reported")
    return make.of(place.at("value").text(), place.at("reason").text() or NOT_ASKED)


def _yes_no(place: Place) -> str | None:
    value = place.truth()
    return None if value is None else ("yes" if value else "no")


def _percent(place: Place) -> float | None:
    value = place.number()
    return None if value is None else 100.0 * value


def _first_upper(text: str) -> str:
    return text[:1].upper() + text[1:]


def repetition_rows(place: Place) -> Iterator[dict[str, Any]]:
    """One row a repetition: its times, and the numbers of its turns (None where unmeasured).

    ``reason`` says why numbers are withheld from it, None where none are.
    """
    for row in place.at("repetitions_list").rows():
        out: dict[str, Any] = {
            "repetition": row.at("repetition").number(),
            "start_s": row.at("start_s").number(),
            "end_s": row.at("end_s").number(),
            "reason": row.at("reason").text(),
            "turns": [],
        }
        for turn in row.at("turns").rows():
            numbers = {n: turn.at(n).number() for n in turn.names() if n != "side"}
            out["turns"].append({"side": turn.at("side").text(), **numbers})
        yield out
