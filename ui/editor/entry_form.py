"""The page of an entry: dose, tempo, range, ladder, form, support, condition, note. No widgets."""

from __future__ import annotations

from collections.abc import Iterator

from tracker.exercises.catalogue import (
    CATALOGUE,
    CAUTIONS,
    HELD,
    NOT_MEASURED,
    Exercise,
    permission,
    why_never,
)
from tracker.exercises.catalogue.permissions import OPTIONS, Option
from tracker.plan.asked import SUPPORTS, least_support
from tracker.plan.draft import UNSET, Data, value_at
from tracker.plan.lines import Path
from tracker.plan.model import Entry
from tracker.plan.telling import counted_from
from tracker.wall import bounds_deg
from ui import words
from ui.desk import trade
from ui.editor.baseline import entry_section
from ui.editor.plan_form import choice, number, unlock_section
from ui.editor.rows import Row, Section
from ui.editor.state import State
from ui.editor.telling import phrase


def entry_sections(state: State, index: int) -> list[Section]:
    """Everything of one entry."""
    at: Path = ("entries", index)
    entry: Data = state.data["entries"][index]
    exercise = CATALOGUE[entry["exercise"]]
    return [
        Section(trade.shown(exercise.therapist), tuple(_name_rows(state, at, exercise))),
        Section(words.say("edit.dose"), tuple(_dose_rows(at, entry, exercise))),
        *entry_section(state, index),
        Section(words.say("edit.ladder"), tuple(_ladder_rows(at, entry, exercise))),
        Section(words.say("edit.form"), tuple(_form_rows(state.data, at, entry, exercise))),
        *_wall_section(at, entry, exercise),
        unlock_section(state, at),
    ]


def _name_rows(state: State, at: Path, exercise: Exercise) -> Iterator[Row]:
    say = words.say
    limits = trade.all_of(NOT_MEASURED[k] for k in exercise.not_measured)
    about = [
        counted(exercise),
        say(
            "edit.about.cautions",
            what=trade.all_of(CAUTIONS[k] for k in exercise.cautions),
        ),
    ]
    if limits:
        about.append(say("edit.about.not_measured", what=limits))
    yield Row(at, "note", text="\n".join(about))
    yield Row((*at, "entry_id"), "text", say("edit.id"), say("edit.entry.id.how"))
    known = [s for s in state.data.get("stages", []) if "stage_id" in s]
    stages = [(s["stage_id"], str(s.get("name", ""))) for s in known]
    if stages or "stage" in state.data["entries"][at[1]]:
        none = "" if stages else say("edit.none")
        yield choice(state.data, (*at, "stage"), say("edit.in_stage"), stages, none=none)
    # An exercise that the guideline has reservations about asks for a note first.
    asks = say("edit.note.asked", why=phrase(exercise.asks_note)) if exercise.asks_note else ""
    yield Row((*at, "note"), "area", say("edit.note"), asks or say("edit.note.how"))


def counted(exercise: Exercise) -> str:
    """What the camera makes of it, as a sentence."""
    what = phrase(counted_from(exercise))
    return words.say("edit.about.counted", what=what[:1].upper() + what[1:])


def _dose_rows(at: Path, entry: Data, exercise: Exercise) -> Iterator[Row]:
    say = words.say
    usual = say(
        "edit.dose.usual",
        dose=_usual_dose(exercise),
        source=phrase(exercise.sources["dose"]),
    )
    counts = exercise.channel != HELD or entry.get("repetitions") is not None
    if counts:
        yield number((*at, "repetitions"), say("edit.repetitions"), usual)
        yield number((*at, "seconds"), say("edit.or_seconds"), step=5)
    else:
        yield number((*at, "seconds"), say("edit.seconds"), usual, step=5)
    if exercise.channel != HELD or entry.get("tempo_bpm") is not None:
        pace = say("edit.own_pace") if exercise.tempo_bpm is None else f"{exercise.tempo_bpm:g}"
        source = phrase(exercise.sources.get("tempo_bpm", ""))
        key = "edit.usual.from" if source else "edit.usual"
        yield _tempo(
            (*at, "tempo_bpm"),
            say("edit.tempo"),
            say("edit.tempo.usual", usual=pace),
            say(key, usual=pace, source=source),
        )
    if exercise.in_degrees or entry.get("amplitude_deg") is not None:
        yield Row((*at, "amplitude_deg"), "pair", say("edit.range"), _usual_range(exercise))


def _usual_dose(exercise: Exercise) -> str:
    if exercise.dose_seconds is not None:
        return words.say("edit.dose.seconds", seconds=f"{exercise.dose_seconds:g}")
    return words.say("edit.dose.times", count=str(exercise.dose_repetitions))


def _usual_range(exercise: Exercise) -> str:
    if exercise.amplitude_deg is None:
        return words.say("edit.range.none")
    low, high = exercise.amplitude_deg
    return words.say(
        "edit.usual.from",
        usual=words.say("edit.from_to", low=f"{low:g}", high=f"{high:g}"),
        source=phrase(exercise.sources["amplitude_deg"]),
    )


def _tempo(path: Path, label: str, unset: str, text: str = "") -> Row:
    """A tempo and its ways: as usual (or as before), own pace, one figure, from one to another."""
    ways = (
        ("unset", unset),
        ("own", words.say("edit.own_pace")),
        ("fixed", words.say("edit.tempo.fixed")),
        ("pair", words.say("edit.tempo.pair")),
    )
    return Row(path, "tempo", label, text, choices=ways, step=5)


def _ladder_rows(at: Path, entry: Data, exercise: Exercise) -> Iterator[Row]:
    say = words.say
    has_tempo = exercise.channel != HELD
    has_range = exercise.in_degrees
    can = has_tempo or has_range
    yield Row((*at, "ladder"), "note", text=say(f"edit.ladder.{'how' if can else 'held'}"))
    for k, rung in enumerate(entry.get("ladder", [])):
        where: Path = (*at, "ladder", k)
        step = k + 1
        yield Row(
            (*where, "from_week"),
            "number",
            say("edit.rung", number=step),
            act="remove",
            act_text=say("edit.rung.remove", number=step),
        )
        if has_tempo or rung.get("tempo_bpm") is not None:
            label = say("edit.rung.tempo", number=step)
            yield _tempo((*where, "tempo_bpm"), label, say("edit.rung.as_before"))
        if has_range or rung.get("amplitude_deg") is not None:
            label = say("edit.rung.range", number=step)
            yield Row((*where, "amplitude_deg"), "pair", label, say("edit.rung.range.how"))
    if can:
        yield Row((*at, "ladder"), "button", act="add_rung", act_text=say("edit.rung.add"))


def _seat(exercise: Exercise) -> str:
    """How far from the screen one sits for it, where it is farther than the plan's own seat."""
    if exercise.seat_mm is None:
        return ""
    source = phrase(exercise.sources["seat_mm"])
    return words.say("edit.seat.least", cm=f"{exercise.seat_mm / 10:g}", source=source)


def _form_rows(data: Data, at: Path, entry: Data, exercise: Exercise) -> Iterator[Row]:
    say = words.say

    def usual(value: str) -> str:
        return say("edit.as_usual", usual=value)

    postures: list[Option] = ["sitting", "standing", "walking"]
    values = [(p, _with_helper(exercise, p)) for p in postures if _given(exercise, p)]
    none = usual(say(f"edit.option.{exercise.posture}"))
    yield choice(data, (*at, "posture"), say("edit.posture"), values, _seat(exercise), none=none)
    for field, name, base, other, option in (
        ("eyes", "edit.eyes", "open", "closed", "eyes_closed"),
        ("surface", "edit.surface", "firm", "soft", "soft_surface"),
    ):
        # Shut eyes that are the exercise itself can't be left out.
        itself = field == "eyes" and exercise.eyes == other
        values = [] if itself else [(base, say(f"edit.option.{base}"))]
        if _given(exercise, option):
            values.append((other, _with_helper(exercise, option)))
        none = usual(say(f"edit.option.{getattr(exercise, field)}"))
        yield choice(data, (*at, field), say(name), values, none=none)
    shakes: list[tuple[bool, str]] = []
    if not exercise.head_shake:
        shakes.append((False, say("edit.option.no_shake")))
    if _given(exercise, "head_shake"):
        shakes.append((True, _with_helper(exercise, "head_shake")))
    none = usual(say("edit.option.head_shake" if exercise.head_shake else "edit.option.no_shake"))
    yield choice(data, (*at, "head_shake"), say("edit.shake"), shakes, none=none)
    yield _support(data, at, entry)
    refused = refusals(exercise)
    if refused:
        yield Row(at, "note", say("edit.refused"), "\n".join(refused))


def _wall_section(at: Path, entry: Data, exercise: Exercise) -> Iterator[Section]:
    """Marks on the wall, where they can stand for the screen."""
    say = words.say
    wall = entry.get("wall")
    typed = wall if isinstance(wall, dict) else {}
    if not exercise.wall_marks and wall is None:
        return
    rows = [
        Row((*at, "wall"), "note", text=say("edit.wall.how")),
        number((*at, "wall", "distance_mm"), say("edit.wall.distance"), step=50),
    ]
    if exercise.wall_marks == 2 or "spacing_mm" in typed:
        low, high = bounds_deg(eyes=exercise.channel.startswith("eye"))
        text = say("edit.wall.spacing.how", low=f"{low:g}", high=f"{high:g}")
        rows.append(number((*at, "wall", "spacing_mm"), say("edit.wall.spacing"), text, step=10))
    rows += [
        number(
            (*at, "wall", "above_mm"), say("edit.wall.above"), say("edit.wall.above.how"), step=10
        ),
        number(
            (*at, "wall", "right_mm"), say("edit.wall.right"), say("edit.wall.right.how"), step=10
        ),
    ]
    yield Section(say("edit.wall"), tuple(rows))


def refusals(exercise: Exercise) -> list[str]:
    """What an exercise is never given with, and why, a line an option."""
    return [
        words.say(
            "edit.refused.line",
            option=words.say(f"edit.option.{option}"),
            why=phrase(why_never(exercise.id, option)),
        )
        for option in OPTIONS
        if not _given(exercise, option)
    ]


def _given(exercise: Exercise, option: Option | str) -> bool:
    return permission(exercise.id, option) != "never"  # type: ignore[arg-type]


def _with_helper(exercise: Exercise, option: Option | str) -> str:
    """Words for an option, and whether it needs a helper."""
    name = words.say(f"edit.option.{option}")
    if permission(exercise.id, option) == "helper":  # type: ignore[arg-type]
        return words.say("edit.option.helper", option=name)
    return name


def _support(data: Data, at: Path, entry: Data) -> Row:
    """The support: never less than what was chosen asks for."""
    least = least_support(
        Entry.model_construct(
            **{k: entry.get(k) for k in ("exercise", "eyes", "posture", "surface", "head_shake")}
        )
    )
    values = [(s, words.say(f"edit.support.{s}")) for s in SUPPORTS[SUPPORTS.index(least) :]]
    given = value_at(data, (*at, "support"))
    if given in SUPPORTS and given not in [v for v, _ in values]:
        values.insert(0, (given, words.say(f"edit.support.{given}")))
    none = words.say("edit.support.least", support=words.say(f"edit.support.{least}"))
    return choice(data, (*at, "support"), words.say("edit.support"), values, none=none)


def dose_line(entry: Data) -> str:
    """An entry's dose and what is special about it, for the outline."""
    exercise = CATALOGUE.get(entry.get("exercise", ""))
    if exercise is None:
        return ""
    count, seconds = entry.get("repetitions"), entry.get("seconds")
    if count is None and seconds is None:
        dose = _usual_dose(exercise)
    elif seconds is not None:
        dose = words.say("edit.dose.seconds", seconds=_shown(seconds))
    else:
        dose = words.say("edit.dose.times", count=_shown(count))
    parts = [dose]
    tempo = entry.get("tempo_bpm", UNSET)
    if tempo is UNSET:
        tempo = exercise.tempo_bpm
    # Of a pair that is half typed nothing is said.
    if isinstance(tempo, list):
        pair = [_shown(t) for t in tempo]
        parts += [words.say("edit.from_to", low=pair[0], high=pair[1])] if len(pair) == 2 else []
    elif tempo is not None and exercise.channel != HELD:
        parts.append(words.say("edit.bpm", tempo=_shown(tempo)))
    if (entry.get("eyes") or exercise.eyes) == "closed":
        parts.append(words.say("edit.eyes_closed"))
    if (entry.get("surface") or exercise.surface) == "soft":
        parts.append(words.say("edit.option.soft"))
    if entry.get("wall") is not None:
        parts.append(words.say("edit.option.wall"))
    return words.row_of(parts)


def _shown(value: object) -> str:
    return f"{value:g}" if isinstance(value, int | float) else str(value)
