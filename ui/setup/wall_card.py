"""How the lengths of notes on the wall are asked for: what it was last time first, if known."""

from __future__ import annotations

from math import ceil, floor

from tracker.plan.asked import Asked
from tracker.practice.tasks import AskWall
from ui import words
from ui.card import Card, Option
from ui.manner import wall_words

#: How far away a wall is taken to be, before somebody has measured it (common practice).
USUAL_WALL_CM = 150


def wall_card(task: AskWall, asked: Asked) -> Card:
    """A length of the notes on the wall, in whole centimetres; what it was is to be confirmed."""
    none = Option(words.say("ask.wall.none"), False)
    if task.last_mm is not None:
        cm = words.number(task.last_mm / 10.0)
        key = f"ask.wall.{task.length}.still"
        return Card(
            words.say(key, cm=cm),
            (words.say("ask.wall.still.how"), wall_words(asked)),
            options=(
                Option(words.say("ask.wall.still.yes", cm=cm), True, main=True),
                Option(words.say("ask.wall.still.no"), act="measure"),
                none,
            ),
        )
    # Inwards: what can be chosen will do.
    least, most = ceil(task.least_mm / 10.0), floor(task.most_mm / 10.0)
    values = {"least": words.number(least), "most": words.number(most)}
    usual = round(0.5 * (least + most))
    key = f"ask.wall.{task.length}"
    if task.length == "spacing":
        how = words.say(f"{key}.how", usual=words.number(usual), **values)
    else:
        usual = min(max(USUAL_WALL_CM, least), most)
        where = "sitting" if asked.posture == "sitting" else "standing"
        how = words.say(f"{key}.{where}", **values)
    return Card(
        words.say(key),
        (wall_words(asked), how),
        options=(Option(words.say("ask.go_on"), main=True, act="length"), none),
        count=range(least, most + 1),
        first=usual,
    )
