"""The keys, in one table: no two alike on one page."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Key:
    """A key, what it does, and whether it works on the live page alone."""

    action: str
    sequence: str
    live_only: bool = False


KEYS: tuple[Key, ...] = (
    Key("stop", "Esc"),
    Key("pause", "Space", live_only=True),
    Key("picture", "P", live_only=True),
    Key("unwell", "U"),
    Key("text_larger", "Ctrl++"),
    Key("text_larger", "Ctrl+="),
    Key("text_smaller", "Ctrl+-"),
    Key("text_normal", "Ctrl+0"),
    Key("colours", "Ctrl+D"),
    Key("still", "S"),
    Key("share", "F4"),
    Key("sound", "Ctrl+M"),
    Key("full_screen", "F11"),
    Key("quit", "Ctrl+Q"),
)
