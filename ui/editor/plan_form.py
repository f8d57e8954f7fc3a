"""The pages of the plan itself: person and days, safety, symptom rules, a stage. No widgets."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from tracker.exercises.catalogue.sources import COMMON, LEAFLET
from tracker.plan.arranging import names_before
from tracker.plan.draft import UNSET, Data, value_at
from tracker.plan.guideline import SOURCE
from tracker.plan.lines import Path
from tracker.plan.model import Plan, SymptomRules
from tracker.session.chair_stands import AGE_GROUPS
from ui import words
from ui.editor.baseline import plan_section
from ui.editor.rows import Row, Section
from ui.editor.state import State
from ui.editor.telling import phrase


def plan_sections(state: State) -> list[Section]:
    """Person, loss, what the baseline offers, days, words to the patient, minutes."""
    say = words.say
    sides = [(s, say(f"edit.side.{s}")) for s in ("right", "left", "both", "unknown")]
    losses = [(k, say(f"edit.loss.{k}")) for k in ("acute", "chronic", "bilateral", "other")]
    ages = [(a, a) for a in AGE_GROUPS]
    sexes = [(s, say(f"edit.sex.{s}")) for s in ("female", "male")]
    return [
        Section(
            say("edit.who"),
            (
                Row(("person",), "text", say("edit.person"), say("edit.person.how")),
                Row(("plan_id",), "text", say("edit.plan_id"), say("edit.plan_id.how")),
                Row(
                    ("starts_on",),
                    "day",
                    say("edit.starts_on"),
                    say("edit.starts_on.how"),
                    act="today",
                    act_text=say("edit.today"),
                ),
                choice(state.data, ("affected_side",), say("edit.side"), sides, default="unknown"),
                choice(state.data, ("kind_of_loss",), say("edit.loss"), losses, default="other"),
                Row((), "note", say("edit.minutes"), state.minutes, strong=True),
            ),
        ),
        *plan_section(state),
        Section(
            say("edit.days"),
            (
                number(
                    ("bouts_a_day",),
                    say("edit.bouts"),
                    say("edit.bouts.how", source=phrase(SOURCE)),
                ),
                number(("days_a_week",), say("edit.days_a_week")),
                number(("rest_s",), say("edit.rest"), step=5),
                number(("seat_distance_mm",), say("edit.seat"), say("edit.seat.how"), step=50),
            ),
        ),
        Section(
            say("edit.words.title"),
            (Row(("words",), "area", say("edit.words"), say("edit.words.how")),),
        ),
        Section(
            say("edit.tables"),
            (
                choice(state.data, ("age_group",), say("edit.age"), ages, none=say("edit.none")),
                choice(
                    state.data,
                    ("sex",),
                    say("edit.sex"),
                    sexes,
                    say("edit.sex.how"),
                    none=say("edit.none"),
                ),
            ),
        ),
    ]


def safety_sections(state: State) -> list[Section]:
    """Emergency number, neck limit and the checklist."""
    say = words.say
    items: list[Row] = []
    for k in range(len(state.data.get("clearance", []))):
        at: Path = ("clearance", k)
        place = k + 1
        items.append(Row((*at, "item"), "text", say("edit.item", number=place)))
        items.append(
            Row(
                (*at, "cleared"),
                "tick",
                say("edit.cleared"),
                name=say("edit.cleared.name", number=place),
                act="remove",
                act_text=say("edit.item.remove", number=place),
            )
        )
    items.append(Row(("clearance",), "button", act="add_item", act_text=say("edit.item.add")))
    number_how = say("edit.emergency.how")
    neck_how = say("edit.neck.how")
    return [
        Section(
            say("edit.safety"),
            (
                Row(("emergency_number",), "text", say("edit.emergency"), number_how),
                number(("neck_limit_deg", "yaw"), say("edit.neck.yaw"), neck_how, step=5),
                number(("neck_limit_deg", "pitch"), say("edit.neck.pitch"), step=5),
            ),
        ),
        Section(
            say("edit.clearance"),
            (Row(("clearance",), "note", text=say("edit.clearance.how")), *items),
        ),
        Section(
            say("edit.hand_over"),
            (
                Row(("hand_over",), "note", text=_hand_over_words(state.data.get("hand_over"))),
                Row(("hand_over",), "note", text=say("edit.hand_over.how")),
            ),
        ),
    ]


def _hand_over_words(way: Any) -> str:
    """To whom sessions are handed over; what the file says may be anything."""
    if not isinstance(way, dict):
        return words.say("edit.hand_over.nobody")
    if way.get("plain") is True:
        return words.say("edit.hand_over.plain")
    keys = way.get("keys")
    count = len(keys) if isinstance(keys, list) else 0
    return words.say("edit.hand_over.keys", count=count)


def symptom_sections(state: State) -> list[Section]:
    """When it is enough for today."""
    say = words.say
    at: Path = ("symptom_rules",)
    usual = SymptomRules()
    score = _usual(usual.score_most, phrase(LEAFLET))
    settle = _usual(usual.settle_minutes_most, phrase(LEAFLET))
    high = [(h, say(f"edit.high.{h}")) for h in ("seated_only", "baseline")]
    return [
        Section(
            say("edit.symptoms"),
            (
                number((*at, "score_most"), say("edit.score"), score),
                number((*at, "settle_minutes_most"), say("edit.settle"), settle),
                Row(
                    (*at, "also_ask"),
                    "member",
                    say("edit.ask.nausea"),
                    member="nausea",
                ),
                Row(
                    (*at, "also_ask"),
                    "member",
                    say("edit.ask.unsteadiness"),
                    member="unsteadiness",
                ),
                choice(
                    state.data,
                    (*at, "high_start"),
                    say("edit.high"),
                    high,
                    say("edit.high.how", source=phrase(COMMON)),
                    default="seated_only",
                ),
                number((*at, "baseline_rise_most"), say("edit.rise"), say("edit.rise.how")),
            ),
        )
    ]


def stage_sections(state: State, index: int) -> list[Section]:
    """A stage: its name, and when it opens."""
    say = words.say
    at: Path = ("stages", index)
    rows = (
        Row((*at, "name"), "text", say("edit.stage.name"), say("edit.stage.name.how")),
        Row((*at, "stage_id"), "text", say("edit.id"), say("edit.stage.id.how")),
        Row(at, "note", say("edit.stage.takes"), state.stage_minutes(index)),
    )
    return [Section(say("edit.stage"), rows), unlock_section(state, at)]


def unlock_section(state: State, at: Path) -> Section:
    """When an entry or a stage opens, how that stands, and the step that is taken by hand."""
    say = words.say
    where: Path = (*at, "unlock_after")
    title = say("edit.unlock")
    if not isinstance(value_at(state.data, where), dict):
        note = Row(where, "note", text=say("edit.unlock.none"))
        add = Row(where, "button", act="add_unlock", act_text=say("edit.unlock.add"))
        return Section(title, (note, add))
    names = [(n, n) for n in names_before(state.data, at)]
    rows = (
        Row((*where, "condition"), "area", say("edit.condition"), say("edit.condition.how")),
        choice(
            state.data,
            (*where, "after"),
            say("edit.after"),
            names,
            say("edit.after.how"),
            none=say("edit.none"),
        ),
        number((*where, "sessions"), say("edit.sessions")),
        number((*where, "rise_most"), say("edit.rise_most")),
        number((*where, "settle_minutes_most"), say("edit.settle_most")),
        number((*where, "on_target_least"), say("edit.on_target"), step=0.05),
        number((*where, "measured_least"), say("edit.measured"), step=0.05),
        Row((*where, "clear"), "tick", say("edit.clear")),
        Row(where, "note", say("edit.standing"), state.standing(at), strong=True),
        Row(
            (*where, "met_on"),
            "day",
            say("edit.met_on"),
            say("edit.met_on.how"),
            act="met",
            act_text=say("edit.met_today"),
        ),
        Row(where, "button", act="remove_unlock", act_text=say("edit.unlock.remove")),
    )
    return Section(title, rows)


def _usual(value: float, source: str) -> str:
    return words.say("edit.usual.from", usual=f"{value:g}", source=source)


def number(path: Path, label: str, text: str = "", step: float = 1.0) -> Row:
    """A number; ``text`` is said below it, else what is usual."""
    return Row(path, "number", label, text or default_words(path), step=step)


def choice(
    data: Data,
    path: Path,
    label: str,
    choices: Sequence[tuple[Any, str]],
    text: str = "",
    *,
    none: str = "",
    default: Any = None,
) -> Row:
    """One of some values.

    Parameters
    ----------
    none
        Words for leaving the field out, where that is a choice of its own.
    default
        The value that holds where it is left out, where it is not.
    """
    given = value_at(data, path)
    found: list[tuple[Any, str]] = [(UNSET, none)] if none else []
    found += choices
    if given not in (UNSET, None) and given not in [v for v, _ in choices]:
        # What the file says stays to be seen, however wrong it is.
        found.append((given, str(given)))
    return Row(path, "choice", label, text, choices=tuple(found), default=default)


def default_words(path: Path) -> str:
    """What holds where a field of the plan is left empty."""
    field = Plan.model_fields.get(str(path[0])) if len(path) == 1 else None
    default = None if field is None else field.default
    if not isinstance(default, int | float):
        return ""
    return words.say("edit.usual", usual=f"{default:g}")
