"""What the keys of the table do in the window, and when each of them works."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from PySide6.QtGui import QKeySequence, QShortcut

from ui.keys import KEYS, Key
from ui.session.flow import Director

if TYPE_CHECKING:
    from ui.app import Window

#: Keys with what they do.
Shortcuts = list[tuple[QShortcut, Key]]


def make_shortcuts(window: Window) -> Shortcuts:
    """A shortcut of the window for each key of the table."""
    director, appearance = window.director, window.appearance
    actions: dict[str, Callable[[], object]] = {
        "stop": window.stop,
        "pause": director.pause_or_go_on,
        "picture": window.toggle_picture,
        "unwell": director.unwell,
        "text_larger": lambda: appearance.step_text(1),
        "text_smaller": lambda: appearance.step_text(-1),
        "text_normal": lambda: appearance.set_text(100),
        "colours": appearance.switch_colours,
        "still": window.switch_still,
        "share": window.switch_sharing,
        "double": director.saw_double,
        "mark": director.mark_moment,
        "slower": lambda: director.change_coming("tempo", -1),
        "faster": lambda: director.change_coming("tempo", 1),
        "smaller": lambda: director.change_coming("amplitude", -1),
        "larger": lambda: director.change_coming("amplitude", 1),
        "other_next": lambda: director.change_coming("next"),
        "take_back": lambda: director.change_coming("undo"),
        "sound": window.open_sound,
        "help": window.switch_help,
        "full_screen": window.switch_full_screen,
        "quit": window.close,
    }
    made = []
    for key in KEYS:
        shortcut = QShortcut(QKeySequence(key.sequence), window)
        # A key that is held down for long must not go through two pages.
        shortcut.setAutoRepeat(_sizes_text(key))
        action = actions[key.action]
        shortcut.activated.connect(lambda act=action: act())
        made.append((shortcut, key))
    return made


def let_work(
    shortcuts: Iterable[tuple[QShortcut, Key]], director: Director, *, live: bool, seen: bool
) -> None:
    """Switch each key on or off: on the live page (``live``), where one sees oneself (``seen``)."""
    for shortcut, key in shortcuts:
        here = live or not key.live_only or (key.picture_too and seen)
        called = director.sharing or not key.call_only
        kept = director.place_matters and _sizes_text(key)
        shortcut.setEnabled(here and called and not kept)


def _sizes_text(key: Key) -> bool:
    return key.action.startswith("text")
