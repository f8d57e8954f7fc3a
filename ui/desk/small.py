"""Words and buttons in the size of the desk."""

from __future__ import annotations

from html import escape

from PySide6.QtWidgets import QDateEdit, QWidget

from ui import words
from ui.widgets.basic import Button, Words
from ui.widgets.flow import FlowRow


def desk_words(text: str = "", *, bold: bool = False, soft: bool = False) -> Words:
    """Words in the size of the desk."""
    return Words(text, "desk", bold=bold, soft=soft)


def small_button(text: str, name: str = "") -> Button:
    """A button in the size of the desk."""
    made = Button(text, "small", name)
    made.role = "desk"
    made.set_percent(100)
    return made


def as_tip(text: str) -> str:
    """Text for a tooltip, which Qt would take for HTML where a foreign file made it look so."""
    return "<qt>" + escape(text).replace("\n", "<br>") + "</qt>" if text else ""


def row_of(buttons: list[Button]) -> QWidget:
    """Buttons side by side."""
    holder = QWidget()
    row = FlowRow(holder)
    row.setContentsMargins(0, 0, 0, 0)
    for button in buttons:
        row.addWidget(button)
    return holder


def show_as_day(edit: QDateEdit) -> None:
    """A day as the desk writes it everywhere else."""
    parts = words.say("desk.day").split(" ")
    if words.from_right():
        # Qt turns their order there, and so would the letters.
        parts.reverse()
    edit.setDisplayFormat(" ".join(parts))
