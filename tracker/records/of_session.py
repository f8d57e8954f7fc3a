"""The figures of a session as a whole: scores, safety questions, set-up."""

from __future__ import annotations

from collections.abc import Iterator

from tracker.records import terms
from tracker.records import units as u
from tracker.records.figure import NOT_ASKED, Figure, Making, scaled
from tracker.records.of_exercise import gaze_at_setup, symptom_figures
from tracker.records.of_uncertainty import explained
from tracker.records.places import Place, clean
from tracker.session.said import NO_ANSWER, UNASKED
from tracker.session.weekly import FELL, names_of_yes


def put_first(place: Place) -> list[str]:
    """What the gate put first in words: questions that were answered with yes."""
    gate = place.at("gate")
    keys = [p.text() or "?" for p in gate.at("put_first").rows()]
    names = names_of_yes(gate.value) if keys else []
    return [terms.word(terms.BECAUSE, clean(str(name))) for name in names or keys]


def session_figures(place: Place) -> Iterator[Figure]:
    """The figures of a session that belong to no exercise, in order."""
    minutes = scaled(place.at("duration_s").number(), 1 / 60)
    yield Making("session", "duration", "Length", u.MINUTES).of(minutes, "not recorded")
    done = Making("session", "exercises_done", "Exercises begun", u.COUNT)
    begun, left = (len(list(place.at(n).rows())) for n in ("exercises", "not_done"))
    if place.at("plan_id").value is not None:
        yield from done.asked(float(begun + left))
    yield done.of(float(begun))
    if place.at("baseline").truth():
        make = Making("session", "baseline", "Baseline", u.WORDS)
        yield make.of("taken together in the clinic")
    if place.at("allowed_today").truth():
        make = Making("session", "allowed_today", "After an end for today", u.WORDS, "reported")
        yield make.of("went on, as the therapist had said today")
    yield _gate(place)
    yield from _weekly(place.at("weekly"))
    yield from _after_drop(place.at("after_drop"))
    yield from symptom_figures(place.at("symptoms"))
    since = place.at("gate").at("since_last")
    if since.value is not None:
        make = Making("symptoms", "since_last", "Dizziness after last time", u.SCORE, "reported")
        reasons = place.at("gate").at("since_last_reasons")
        for name in ("rest_of_day", "next_morning"):
            yield make.of(since.at(name).number(), reasons.at(name).text() or NOT_ASKED, name)
    yield from _call(place)
    yield from setup_figures(place.at("setup"))
    yield from explained(place)


def _call(place: Place) -> Iterator[Figure]:
    """What a therapist had changed between two sets, and moments that were marked."""
    changes = [_change_words(row) for row in place.at("changes").rows()]
    if changes:
        make = Making("session", "call_changes", "Changed in the call", u.WORDS)
        yield make.of(clean("; ".join(changes), 3 * 120))
    marks = [_mark_words(row) for row in place.at("marks").rows()]
    if marks:
        make = Making("session", "marks", "Moments marked", u.WORDS)
        yield make.of(clean("; ".join(marks), 3 * 120))


def _change_words(row: Place) -> str:
    entry, what = row.at("entry_id").text() or "?", row.at("what").text() or "?"
    taken = " (taken back)" if row.at("undone").truth() else ""
    if what == "next":
        return f"{entry} comes next{taken}"
    before, after = (_value_words(row.at(name)) for name in ("before", "after"))
    return f"{entry}: {terms.word(terms.CHANGES, what)} {before} to {after}{taken}"


def _value_words(place: Place) -> str:
    ends = place.span()
    if ends is None:
        return "own pace"
    low, high = (f"{end:g}" for end in ends)
    return low if low == high else f"{low}–{high}"


def _mark_words(row: Place) -> str:
    time_s, entry = row.at("time_s").number() or 0.0, row.at("entry_id").text()
    at = f"{time_s // 60:.0f}:{time_s % 60:02.0f}"
    return at if entry is None else f"{at} ({entry})"


def _gate(place: Place) -> Figure:
    make = Making("session", "safety", "Safety questions", u.WORDS, "reported")
    gate = place.at("gate")
    outcome = gate.at("outcome").text()
    if gate.value is None or outcome in (None, "not_asked"):
        return make.of(None, NOT_ASKED)
    first = put_first(place)
    return make.of(clean(f"yes to: {'; '.join(first)}", 3 * 120) if first else "all answered no")


def _weekly(place: Place) -> Iterator[Figure]:
    """Falls and medicines, where it was their week."""
    if place.value is None:
        return
    why, falls = place.at("reasons"), place.at("falls").text()
    told = None if falls is None else terms.word(terms.FALLS, falls)
    make = Making("session", "falls", "Falls in the last week", u.WORDS, "reported")
    yield make.of(told, why.at("falls").text())
    wanted = [("medicines_changed", "Medicines changed")]
    if falls in FELL:
        wanted.insert(0, ("hurt", "Hurt in a fall"))
    for key, name in wanted:
        answer = place.at(key).truth()
        said = None if answer is None else "yes" if answer else "no"
        make = Making("session", key, name, u.WORDS, "reported")
        yield make.of(said, why.at(key).text())


def _after_drop(place: Place) -> Iterator[Figure]:
    """What was said after a sudden drop of the head, where there was one."""
    if place.value is None:
        return
    value, why = place.at("value").text(), place.at("reason").text()
    reason = NOT_ASKED if why == UNASKED else terms.word(terms.AFTER_DROP, why or NO_ANSWER)
    make = Making("session", "after_drop", "After a sudden drop of the head", u.WORDS, "reported")
    yield make.of(None if value is None else terms.word(terms.AFTER_DROP, value), reason)
    seen = place.at("seen").truth()
    if seen is not None:
        make = Making("session", "drop_seen", "The head after the drop", u.WORDS)
        yield make.of("seen to stay down" if seen else "lost while it dropped")


def setup_figures(place: Place) -> Iterator[Figure]:
    """What the set-up was, and how well the gaze was read there."""
    differs = {p.text() for p in place.at("differs").rows()}

    def why(key: str, otherwise: str = "not known") -> str:
        return "differs between the exercises" if key in differs else otherwise

    def make(measure: str, name: str, unit: u.Unit) -> Making:
        return Making("setup", measure, name, unit)

    rate = place.at("frame_rate_hz").number()
    yield make("frame_rate", "Frame rate", u.HERTZ).of(rate, "too few frames")
    light = scaled(place.at("light").number(), 100)
    yield make("light", "Light on the face, of full", u.PERCENT).of(light, "no face seen")
    distance = scaled(place.at("distance_mm").number(), 0.1)
    yield make("distance", "Eyes to camera", u.CENTIMETRES).of(distance, why("distance_mm"))
    yield from gaze_at_setup(place, "setup", why("gaze_error_deg", "no gaze set-up"))
    mark = place.at("mark")
    if mark.value is not None:
        turned = make("mark_error", "Head turn against a mark on the wall", u.DEGREES)
        yield turned.of(mark.at("error_deg").number(), mark.at("reason").text())
    yield from _reach(place.at("head_reach_deg"))
    yield from _bench(place.at("bench"))
    yield from _camera(place.at("camera"))
    for key, name in (("glasses", "Glasses"), ("eyes", "Eyes watched")):
        if key in place.names():
            text = place.at(key).text()
            words = None if text is None else terms.word(terms.PLAIN, text)
            yield make(key, name, u.WORDS).of(words, why(key, NOT_ASKED))


#: What is told of the bench: measure -> name, rows of the summary (the largest is told), unit.
#: The summary has all of it, with the conditions.
BENCH_TOLD: dict[str, tuple[str, tuple[str, ...], u.Unit]] = {
    "bench_head": (
        "Worst on rendered heads in good light, head angle",
        ("head yaw", "head pitch"),
        u.DEGREES,
    ),
    "bench_amplitude": (
        "Worst on rendered heads in good light, amplitude",
        ("amplitude in yaw", "amplitude in pitch"),
        u.PERCENT,
    ),
    "bench_speed": (
        "Worst on rendered heads in good light, peak speed",
        ("peak speed in yaw", "peak speed in pitch"),
        u.PERCENT,
    ),
    "bench_gaze": (
        "Worst on rendered heads in good light, gaze",
        ("gaze yaw while turning", "gaze pitch while nodding"),
        u.DEGREES,
    ),
}


def _bench(place: Place) -> Iterator[Figure]:
    """The program's own errors, measured elsewhere; nothing in summaries from before."""
    worst = place.at("worst")
    for measure, (name, rows, unit) in BENCH_TOLD.items():
        errors = [worst.at(row).at("error").number() for row in rows]
        known = [e for e in errors if e is not None]
        if known:
            yield Making("setup", measure, name, unit).of(max(known))


#: Sides of the slow turn and nod of a set-up.
REACH_TOLD = (
    ("Slow turn", ("right", "left")),
    ("Slow nod", ("up", "down")),
)


def _reach(place: Place) -> Iterator[Figure]:
    """How far the head went in the set-up, where that is known."""
    for name, side in ((name, side) for name, sides in REACH_TOLD for side in sides):
        went = place.at(side).number()
        if went is not None:
            yield Making("setup", "head_reach", name, u.DEGREES).of(went, aspect=side)


def _camera(place: Place) -> Iterator[Figure]:
    if place.value is None:
        return
    field = Making("setup", "field_of_view", "Camera's vertical field of view", u.DEGREES)
    yield field.of(place.at("vertical_fov_deg").number(), "not known")
    error = place.at("vertical_fov_error_deg").number()
    if error is not None:
        yield field.of(error, aspect="error")
    source = place.at("vertical_fov_source").text()
    if source is not None:
        name = "Field of view known by"
        make = Making("setup", "field_of_view_source", name, u.WORDS)
        yield make.of(terms.word(terms.PLAIN, source))
