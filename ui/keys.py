"""The keys, in one table: no two alike on one page."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Key:
    """A key, what it does, and where it works.

    ``live_only`` is on the live page alone (``picture_too``: and wherever else one sees oneself),
    ``call_only`` in the layout for a call alone.
    """

    action: str
    sequence: str
    live_only: bool = False
    call_only: bool = False
    picture_too: bool = False


KEYS: tuple[Key, ...] = (
    Key("stop", "Esc"),
    Key("pause", "Space", live_only=True),
    Key("double", "D", live_only=True),
    Key("picture", "P", live_only=True, picture_too=True),
    Key("unwell", "U"),
    Key("text_larger", "Ctrl++"),
    Key("text_larger", "Ctrl+="),
    Key("text_smaller", "Ctrl+-"),
    Key("text_normal", "Ctrl+0"),
    Key("colours", "Ctrl+D"),
    Key("still", "S"),
    Key("share", "F4"),
    # Keys without letters: they lie in the same place on every keyboard, and a person who
    # answers questions or types a number doesn't come near them.
    Key("mark", "F2"),
    Key("slower", "F5", call_only=True),
    Key("faster", "F6", call_only=True),
    Key("smaller", "F7", call_only=True),
    Key("larger", "F8", call_only=True),
    Key("other_next", "F9", call_only=True),
    Key("take_back", "F10", call_only=True),
    Key("sound", "Ctrl+M"),
    Key("help", "F1"),
    Key("full_screen", "F11"),
    Key("quit", "Ctrl+Q"),
)

#: Keys that pages and buttons answer to by themselves; Space presses too, but not in a set.
PAGE_KEYS: tuple[Key, ...] = (
    Key("next", "Tab"),
    Key("press", "Enter"),
    Key("down", "PgDown"),
    Key("up", "PgUp"),
)
