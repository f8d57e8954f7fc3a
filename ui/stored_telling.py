"""What is stored, in the user's words: lines of days, counts and sizes."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QDateTime, QLocale

from tracker.stored.delete import IN_USE, Deleted
from tracker.stored.look import Item, Kind, Stored
from ui import words
from ui.settings import GLASSES
from ui.widgets.paths import breakable, shown_path

#: As many names of foreign things, and of what could not be deleted, are said.
MOST_NAMES = 5
#: Kinds of which it matters how many there are.
_COUNTED = frozenset({Kind.sessions, Kind.broken_off, Kind.faces, Kind.keys})


def rows_of(stored: Stored, *, named: bool) -> list[str]:
    """A line for each kind that there is; ``named``: with the names of cameras."""
    lines = []
    for kind in Kind:
        items = stored.of(kind)
        if items:
            key = "stored.row" if kind in _COUNTED else "stored.row_one"
            what = words.say(f"stored.kind.{kind}")
            line = words.say(
                key, what=what, count=len(items), size=size_words(items), days=days_words(items)
            )
            if kind == Kind.faces:
                line = " ".join([line, *dict.fromkeys(_face(i, named=named) for i in items)])
            lines.append(line)
    return lines


def others_words(stored: Stored, *, named: bool) -> str:
    """What lies there besides, and what lies elsewhere; or nothing."""
    told = (("stored.others", stored.others), ("stored.elsewhere", stored.elsewhere))
    lines = [words.say(key, names=_names(stored, paths)) for key, paths in told if paths and named]
    return "\n".join(lines)


def _names(stored: Stored, paths: Sequence[Path]) -> str:
    names = [
        p.relative_to(stored.folder) if p.is_relative_to(stored.folder) else p.name
        for p in paths[:MOST_NAMES]
    ]
    said = [words.apart(breakable(str(n))) for n in names]
    return words.row_of([*said, "…"] if len(paths) > MOST_NAMES else said)


def session_words(item: Item) -> str:
    """When a session was, and how large it is."""
    clock = QLocale().toString(QDateTime(item.at).time(), "HH:mm")
    size = size_words([item])
    told = words.say("stored.session", day=day_words(item.at), time=clock, size=size)
    if item.kind == Kind.broken_off:
        return words.say("stored.session.broken_off", session=told)
    return told


def days_words(items: Sequence[Item]) -> str:
    """From the first day to the last."""
    days = sorted(i.at for i in items)
    if days[0].date() == days[-1].date():
        return day_words(days[0])
    return words.say("stored.days", first=day_words(days[0]), last=day_words(days[-1]))


def day_words(at: datetime) -> str:
    """A day, as the user's country writes it, with the whole year."""
    form = QLocale().dateFormat(QLocale.FormatType.ShortFormat)
    if "yyyy" not in form:
        form = form.replace("yy", "yyyy")
    return QLocale().toString(QDateTime(at).date(), form).replace(" ", "\u00a0")


def size_words(items: Sequence[Item]) -> str:
    """How much it takes; what is less than a hundred bytes counts as a tenth of a kB."""
    total = sum(i.size_bytes for i in items)
    if total < 1e6:
        return words.say("stored.size.kb", size=words.number(max(total / 1e3, 0.1), 1))
    return words.say("stored.size.mb", size=words.number(total / 1e6, 1))


def left_words(done: Deleted, *, named: bool) -> str:
    """What could not be deleted, or nothing."""
    if not done.left:
        return ""
    said = []
    for path, why in done.left[:MOST_NAMES]:
        reason = words.say("stored.left.in_use") if why == IN_USE else words.told(why)
        name = shown_path(path) if named else words.apart(breakable(path.name))
        said.append(words.say("stored.left.row", path=name, why=reason))
    if len(done.left) > MOST_NAMES:
        said.append("…")
    return words.say("stored.left", what=words.row_of(said))


def _face(item: Item, *, named: bool) -> str:
    glasses, _, eye = item.worn.partition("-")
    worn = words.say(f"glasses.{glasses}") if glasses in GLASSES else words.say("stored.unknown")
    if words.has(f"stored.eye.{eye}"):
        worn = words.row_of([worn, words.say(f"stored.eye.{eye}")])
    camera = words.apart(breakable(item.camera))
    if not item.camera or not named:
        return words.say("stored.face_worn", worn=worn)
    return words.say("stored.face", worn=worn, camera=camera)
