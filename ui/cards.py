"""What a task of a planned session looks like: a title, a few lines, the answers to choose from.

Pure words and values; the page draws them.
"""

from __future__ import annotations

from dataclasses import replace

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import Asked, asked_of, seat_mm
from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.plan.model import Entry, Plan
from tracker.plan.rules import minutes_of
from tracker.practice.tasks import (
    CHOICES,
    MAX_COUNT,
    AskAfterSet,
    AskDayOver,
    AskOpen,
    AskReader,
    AskSound,
    AskSupport,
    AskWall,
    AskWeekly,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    ShowToday,
    Task,
    Wait,
)
from tracker.session.weekly import FALLS
from ui import words
from ui.card import Card, Option
from ui.manner import care_keys, form_of, how_of, other_posture, wall_words
from ui.session.hands_free import stop_key
from ui.setup.wall_card import wall_card

#: More of what the camera doesn't see would be too much to read before a set.
UNSEEN_MOST = 2
#: Ends whose first words are the title: whom to call has to be read at once, and from afar.
_TO_CALL = (
    "gate.outcome.emergency",
    "gate.outcome.emergency_no_number",
    "gate.outcome.call_therapist",
)
#: From an adult's eyes to the hand of an arm held out, about (common practice).
ARM_MM = (600.0, 800.0)


def card_of(
    task: Task,
    plan: Plan,
    *,
    week: int = 1,
    setup_first: bool = False,
    can_sound: bool = True,
    can_speak: bool = False,
    sounds: str = "voice",
    still: bool = False,
) -> Card:
    """Card of a task that has one (the safety questions and the scores have pages of their own).

    Parameters
    ----------
    task
        The task.
    plan
        The plan it comes from.
    week
        Week of the plan, for its ladders.
    setup_first
        Whether a set-up comes before the set.
    can_sound, can_speak
        Whether this computer can play a sound, and speak.
    sounds
        What was chosen for seated work with the eyes open: ``voice``, ``beats``, ``silence``.
    still
        Whether the person wants nothing to move on the screen.
    """
    match task:
        case ShowToday():
            return today_card(task, plan, week)
        case AskOpen() | AskSound() | AskReader() | AskWeekly() | AskSupport():
            return _question(task, plan, can_sound=can_sound, can_speak=can_speak)
        case AskWall(asked=asked) if asked is not None:
            return wall_card(task, asked)
        case Prepare(asked=asked) if asked is not None:
            lead = "voice" if task.voice == "sound" and can_speak else task.voice
            place = place_of(asked, plan, task.chair_mm)
            return _prepare(asked, place, lead, setup_first, heard=sounds != "silence", still=still)
        case DoSet(asked=asked) if asked is not None:
            return Card(
                words.say(f"exercise.{asked.exercise.id}"),
                (how_of(asked), dose_words(asked)),
                _cares(asked),
                (Option(words.say("ask.done"), main=True, act="done"),),
                runs=True,
            )
        case Wait() | Settle() | Rest():
            return _pause(task, plan)
        case AskDayOver():
            return _day_over(task, plan)
        case Over():
            return _over(task, plan)
    raise ValueError(f"{type(task).__name__} has a page of its own")


def guided_card(card: Card, key: str) -> Card:
    """The card of a set that is spoken through: the line that is now stands in the first place."""
    more = (
        Option(words.say("ask.guide.again"), act="again"),
        Option(words.say("ask.guide.next"), act="next"),
    )
    return replace(card, lines=(words.say(key), *card.lines[1:]), options=(*card.options, *more))


def _question(
    task: AskOpen | AskSound | AskReader | AskWeekly | AskSupport,
    plan: Plan,
    *,
    can_sound: bool,
    can_speak: bool,
) -> Card:
    """What has to be answered before it goes on."""
    match task:
        case AskOpen(name=name):
            how = words.say("ask.stage.how", name=name_of(name, plan))
            return Card(words.say("ask.stage"), (how,), options=_yes_no())
        case AskSound():
            again = Option(words.say("ask.sound.again"), act="sound")
            voice = Option(words.say("ask.sound.voice"), act="voice")
            return _asked("ask.sound", (*_yes_no(), again, *([voice] if can_speak else [])))
        case AskReader(needs_words=needs_words):
            silent = () if can_sound else (words.say("ask.reader.silent"),)
            if needs_words:
                silent = (words.say("ask.reader.no_words"),)
            how = words.say("ask.reader.how")
            return Card(words.say("ask.reader"), (*silent, how), options=_yes_no())
        case AskWeekly(question=question):
            return _asked(f"ask.weekly.{question}", weekly_options(question))
        case AskSupport(support=support):
            return Card(
                words.say(f"ask.support.{support}"),
                (words.say(f"ask.support.{support}.how"), words.say("ask.support.shoes")),
                (words.say("ask.support.fall"),),
                _yes_no(),
            )


def _pause(task: Wait | Settle | Rest, plan: Plan) -> Card:
    """What is over by itself when its time is up."""
    match task:
        case Wait():
            keys = ("ask.wait.double", "ask.wait.how") if task.saw_double else ("ask.wait.how",)
            how = tuple(words.say(key) for key in keys)
            return Card(words.say("ask.wait"), how, until_s=task.until_s)
        case Settle():
            done = Option(words.say("ask.settle.done"), True, main=True)
            how = (words.say("ask.settle.how"),)
            return Card(words.say("ask.settle"), how, options=(done,), until_s=task.until_s)
        case Rest(next_id=next_id):
            name = words.say("ask.rest.next", name=name_of(next_id, plan))
            go_on = Option(words.say("ask.rest.go_on"), True)
            return Card(words.say("ask.rest"), (name,), options=(go_on,), until_s=task.until_s)


def after_set_card(
    task: AskAfterSet, question: str, plan: Plan, counted: int | None = None
) -> Card:
    """Card of one question after a set of a plan.

    ``counted`` is what the camera counted, None where it doesn't count.
    """
    assert question in task.questions
    title = words.say(f"ask.{question}")
    if question in CHOICES:
        if question == "clarity" and "landed" in task.questions:
            title = words.say("ask.clarity.opened")
        options = tuple(Option(words.say(f"ask.{question}.{c}"), c) for c in CHOICES[question])
        return Card(title, options=options)
    if question == "steadied":
        return _asked("ask.steadied", _yes_no())
    go_on = Option(words.say("ask.go_on"), main=True, act="count")
    entry = next((e for e in plan.entries if e.entry_id == task.entry_id), None)
    first = counted
    if first is None:
        first = 0 if entry is None else asked_of(entry).repetitions or 0
    unknown = Option(words.say("ask.own_count.unknown"))
    how = (words.say("ask.own_count.how"),)
    return Card(title, how, options=(go_on, unknown), count=range(MAX_COUNT + 1), first=first)


def today_card(task: ShowToday, plan: Plan, week: int) -> Card:
    """Today's practice at a glance: what comes and how much of it, what waits and why."""
    waits = {entry_id: why for entry_id, why in task.entries if why}
    today = dict(task.entries)
    by_id = {e.entry_id: e for e in plan.entries}
    coming = [by_id[e] for e in today if e in by_id and e not in waits]
    minutes = round(minutes_of(plan, coming, week))
    how = "ask.today.none"
    if coming:
        how = "ask.today.how" if minutes > 1 else "ask.today.short"
    lines = [words.say(how, minutes=words.number(minutes))]
    if plan.words:
        lines.append(words.say("ask.today.words", words=plan.words))
    rows = (
        words.say("ask.today.row", number=k, name=name_of(e.entry_id, plan), dose=_amount(e, week))
        for k, e in enumerate(coming, 1)
    )
    lines.append("\n".join(rows))
    not_today = [
        words.say(
            "ask.today.waits",
            name=name_of(entry_id, plan),
            why=words.say_or(f"refused.{why[0]}", "summary.left_out"),
        )
        for entry_id, why in waits.items()
    ]
    if not_today:
        lines.append("\n".join([words.say("ask.today.not"), *not_today]))
    title = words.say("ask.today")
    if task.stage_id is not None:
        title = words.say("ask.today.stage", name=name_of(task.stage_id, plan))
    begin = words.say("ask.today.begin" if coming else "ask.go_on")
    return Card(title, tuple(lines), options=(Option(begin, True, main=True),))


def _amount(entry: Entry, week: int) -> str:
    """The dose of an entry without its tempo."""
    return words.row_of(_dose_parts(asked_of(entry, week), tempo=False))


def dose_words(asked: Asked, *, tempo: bool = True) -> str:
    """The dose in words: how many or how long, how fast, how."""
    return "   ·   ".join(_dose_parts(asked, tempo=tempo))


def _dose_parts(asked: Asked, *, tempo: bool) -> list[str]:
    parts = []
    if asked.repetitions is not None:
        parts.append(words.times(asked.repetitions))
    if asked.seconds is not None:
        parts.append(words.say("ask.dose.seconds", count=words.number(asked.seconds)))
    pace = asked.tempo_bpm
    if tempo and isinstance(pace, tuple):
        first, last = (words.number(bpm) for bpm in pace)
        parts.append(words.say("ask.dose.from_to", first=first, last=last))
    elif tempo and pace is not None:
        parts.append(words.say("ask.dose.tempo", tempo=words.number(pace)))
    return [*parts, *other_posture(asked), *form_of(asked)]


def place_of(asked: Asked, plan: Plan, chair_mm: float | None = None) -> tuple[str, dict[str, str]]:
    """Key of the words for the place that an entry is done at, and the values in them.

    ``chair_mm`` is how far from the screen the chair stands by now, None if that isn't known.
    """
    if "face" not in asked.exercise.needs:
        return "ask.place.walking", {}
    if asked.posture != "sitting":
        shut = asked.eyes == "closed" != asked.exercise.eyes
        own = "_shut" if shut else "" if asked.wall is None else "_wall"
        return f"ask.place.standing{own}", {}
    here_mm = seat_mm(asked, plan)
    if here_mm > plan.seat_distance_mm:
        key = "ask.place.further"
    elif chair_mm is not None and here_mm < chair_mm:
        key = "ask.place.closer"
    else:
        within = ARM_MM[0] <= here_mm <= ARM_MM[1]
        key = "ask.place.arm" if within else "ask.place.sitting"
    return key, {"cm": words.number(here_mm / 10)}


def _prepare(
    asked: Asked,
    place: tuple[str, dict[str, str]],
    lead: str,
    setup_first: bool,
    *,
    heard: bool,
    still: bool,
) -> Card:
    exercise = asked.exercise
    where, values = place
    seen = "face" in exercise.needs
    lines = [
        how_of(asked),
        # Nobody hears or sees the beats where a helper reads.
        dose_words(asked, tempo=lead != "reader"),
        words.say(where, **values),
        *([wall_words(asked)] if asked.wall is not None else []),
    ]
    if lead in ("sound", "voice"):
        lines.append(words.say("ask.place.by_voice" if lead == "voice" else "ask.place.by_ear"))
        if not heard:
            lines.append(words.say("ask.place.not_silent"))
    elif lead == "reader":
        lines.append(words.say("ask.place.by_reader"))
        if asked.tempo_bpm is not None:
            lines.append(words.say("ask.place.no_beat"))
    if exercise.near_work:
        lines.append(words.say("ask.place.double"))
    if to_stop := stop_key(asked):
        lines.append(words.say(to_stop))
    if seen and setup_first:
        lines.append(words.say("ask.place.setup"))
    cares, key = _cares(asked), "ask.place.ready"
    if still and exercise.target in ("against", "sweep"):
        cares = (words.say("ask.place.moves"), *cares)
    elif exercise.target == "background":
        cares, key = (words.say("ask.place.backdrop"), *cares), "ask.place.backdrop_ready"
    ready = Option(words.say(key), main=True, act="in_place")
    skip = Option(words.say("ask.place.skip"), False)
    title = words.say(f"exercise.{exercise.id}")
    quiet = unseen_words(asked) if seen else ""
    return Card(title, tuple(lines), cares, (ready, skip), quiet=quiet)


def unseen_words(asked: Asked) -> str:
    """What the camera doesn't see of an exercise, the first of it only; empty where it sees all."""
    missed = asked.exercise.not_measured[:UNSEEN_MOST]
    what = words.row_of(words.say(f"unmeasured.{key}") for key in missed)
    return words.say("ask.place.unseen", what=what) if what else ""


def _cares(asked: Asked) -> tuple[str, ...]:
    return tuple(words.say(f"care.{key}") for key in care_keys(asked))


def over_keys(task: Over, plan: Plan) -> list[str]:
    """Keys of what is told at an end, in their order; ``number`` is that for help."""
    because, number = set(task.because), plan.emergency_number
    if because & set(EMERGENCY):
        return ["gate.outcome.emergency" if number else "gate.outcome.emergency_no_number"]
    keys = [f"over.{key}" for key in (*task.because, task.ended) if words.has(f"over.{key}")]
    outcome = []
    if SPIN in because:
        outcome = ["gate.outcome.sit_and_stop"]
    elif because & set(CALL):
        outcome = ["gate.outcome.call_therapist"]
    if task.ended == "possible_fall":
        # The number is in sight at once, however large the text.
        of_number = ["over.number"] if number else []
        return [*keys[:-1], *of_number, keys[-1], *outcome]
    # A fall may have been told at the end of another day, and called for only now.
    return [*outcome, *(k for k in keys if k == "over.fall")] if outcome else keys


def _over(task: Over, plan: Plan) -> Card:
    number = words.apart(plan.emergency_number or "")
    keys = over_keys(task, plan)
    of_number = ["over.number"] if "fine" not in task.because else []
    # Whom to call is the title, wherever else it stands among what is spoken.
    first = next((k for k in (*of_number, *_TO_CALL) if k in keys), "over.title")
    keys = [first, *(k for k in keys if k != first)]
    title, *lines = (words.say(key, number=number) for key in keys)
    lines += [words.say(f"symptoms.{b}") for b in task.because if words.has(f"symptoms.{b}")]
    show = Option(words.say("over.to_summary"), True, main=True)
    return Card(title, tuple(lines), options=(show,), leave=False)


def _day_over(task: AskDayOver, plan: Plan) -> Card:
    if task.sure:
        yes = Option(words.say("day_over.yes"), True)
        back = Option(words.say("leave.back"), False, main=True)
        how = (words.say("day_over.sure.how"),)
        return Card(words.say("day_over.sure"), how, options=(back, yes), leave=False)
    title, lines, number = "over.title", ["day_over"], plan.emergency_number
    if not set(EMERGENCY).isdisjoint(task.because):
        title = "day_over.emergency" if number else "day_over.emergency_no_number"
    elif not set(CALL).isdisjoint(task.because):
        lines.append("day_over.call")
    told = [words.say(key, number=words.apart(number or "")) for key in (title, *lines)]
    options = [Option(words.say("ask.end"), False, main=True)]
    if not task.final:
        options.append(Option(words.say("day_over.go_on"), True))
    return Card(told[0], tuple(told[1:]), options=tuple(options), leave=False)


def _asked(key: str, options: tuple[Option, ...]) -> Card:
    return Card(words.say(key), (words.say(f"{key}.how"),), options=options)


def weekly_options(question: str) -> tuple[Option, ...]:
    """Answers to a question of the week; it may be passed over."""
    skip = Option(words.say("ask.weekly.skip"))
    if question != "falls":
        return (*_yes_no(), skip)
    return (*(Option(words.say(f"ask.weekly.falls.{f}"), f) for f in FALLS), skip)


def _yes_no() -> tuple[Option, ...]:
    return Option(words.say("ask.yes"), True), Option(words.say("ask.no"), False)


def name_of(name: str, plan: Plan) -> str:
    """Words for a stage or an entry."""
    for stage in plan.stages:
        if stage.stage_id == name:
            return words.told(stage.name)
    for entry in plan.entries:
        if entry.entry_id == name and entry.exercise in CATALOGUE:
            return words.say(f"exercise.{entry.exercise}")
    return name
