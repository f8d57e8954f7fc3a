"""How an exercise is done as a plan asks for it, in words: on the cards and on paper."""

from __future__ import annotations

from tracker.plan.asked import Asked
from ui import words


def how_of(asked: Asked, *, paper: bool = False) -> str:
    """What to do, with the eyes and the head as they are asked for.

    Parameters
    ----------
    paper
        Whether it is read where no camera watches.
    """
    exercise = asked.exercise
    if asked.wall is not None:
        return words.say(f"how.{exercise.id}.wall")
    own = f"how.{exercise.id}"
    keys = [f"{own}.paper"] if paper else []
    if asked.surface == "soft":
        keys.insert(0, f"{own}.soft")
    if asked.eyes == "closed":
        keys = [*(f"{key}.closed" for key in keys if key.endswith(".soft")), f"{own}.closed", *keys]
    key = next((key for key in keys if words.has(key)), f"exercise.{exercise.id}.how")
    parts = [words.say(key)]
    if _shaken(asked):
        parts.append(words.say("how.shake"))
    if asked.eyes == "closed" != exercise.eyes and not key.endswith(".closed"):
        parts.append(words.say("how.shut"))
    return " ".join(parts)


def wall_words(asked: Asked) -> str:
    """Where the notes on the wall hang, and how far away one is, a line each; empty without any.

    Of what the patient is still to measure nothing is said.
    """
    wall, say = asked.wall, words.say
    if wall is None:
        return ""
    two = asked.exercise.wall_marks == 2
    up = asked.exercise.channel == "eye_pitch"
    parts = [say("wall.one" if not two else "wall.two_up" if up else "wall.two")]
    if two and wall.spacing_mm is not None:
        parts.append(say("wall.apart", cm=_cm(wall.spacing_mm)))
    height = "above" if wall.above_mm > 0 else "below" if wall.above_mm < 0 else "level"
    parts.append(say(f"wall.{height}", cm=_cm(abs(wall.above_mm))))
    aside = "right" if wall.right_mm > 0 else "left" if wall.right_mm < 0 else ""
    aside = aside or ("middle" if two and not up else "ahead")
    parts.append(say(f"wall.{aside}", cm=_cm(abs(wall.right_mm))))
    if wall.distance_mm is not None:
        parts.append(say("wall.away", cm=_cm(wall.distance_mm)))
    return "\n".join(parts)


def _cm(length_mm: float) -> str:
    """Centimetres, with a decimal only where there is one."""
    cm = round(length_mm / 10.0, 1)
    return words.number(cm, int(cm % 1 > 0))


def form_of(asked: Asked) -> list[str]:
    """What is special about it besides its posture: eyes, head and floor."""
    parts = []
    if asked.eyes == "closed":
        parts.append(words.say("ask.dose.eyes_closed"))
    if _shaken(asked):
        parts.append(words.say("ask.dose.shake"))
    if asked.surface == "soft":
        parts.append(words.say("ask.dose.soft"))
    elif asked.exercise.surface == "soft":
        parts.append(words.say("ask.dose.firm"))
    if asked.wall is not None:
        parts.append(words.say("ask.dose.wall"))
    return parts


def other_posture(asked: Asked) -> list[str]:
    """The posture where it is not the usual one."""
    usual = asked.posture == asked.exercise.posture
    return [] if usual else [words.say(f"ask.dose.{asked.posture}")]


def care_keys(asked: Asked) -> list[str]:
    """Cautions: those of the exercise, and that of the mat where it is on one."""
    keys = [k for k in asked.exercise.cautions if k != "soft"]
    return [*keys, "soft"] if asked.surface == "soft" else keys


def is_drawn_so(asked: Asked) -> bool:
    """Whether the drawing of the exercise shows it as it is asked for."""
    usual = asked.exercise
    return asked.posture == usual.posture and (usual.surface, asked.surface) != ("soft", "firm")


def _shaken(asked: Asked) -> bool:
    """Whether the head is turned besides, where the exercise itself does not say so."""
    return asked.head_shake and not asked.exercise.head_shake
