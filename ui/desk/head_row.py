"""The row at the top of a therapist's window: its name, its buttons, and how it looks."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QHBoxLayout

from ui import theme, words
from ui.appearance import Appearance
from ui.desk.small import small_button
from ui.widgets.basic import Button, Words
from ui.widgets.flow import FlowRow


def head_row(
    title: str, before: Sequence[Button], apart: Sequence[Button], appearance: Appearance
) -> QHBoxLayout:
    """Make the row; it ends with the buttons for the text size and the colours.

    Parameters
    ----------
    title
        The window's name.
    before
        Buttons that follow the name at once.
    apart
        Buttons that stand at the other end, before those for how the window looks.
    appearance
        What those change.
    """
    name = Words(title, "lead", bold=True)
    name.setWordWrap(False)
    smaller = small_button("A −", words.say("text_smaller"))
    larger = small_button("A +", words.say("text_larger"))
    colours = small_button("◐", words.say("switch_colours"))
    smaller.clicked.connect(lambda: appearance.step_text(-1))
    larger.clicked.connect(lambda: appearance.step_text(1))
    colours.clicked.connect(appearance.switch_colours)
    at_the_end = [*apart, smaller, larger, colours]
    # Large words have no room for all of it in one row.
    flow = FlowRow()
    for part in (name, *before, *at_the_end):
        flow.addWidget(part)
    flow.set_apart(*at_the_end)
    row = QHBoxLayout()
    row.setContentsMargins(theme.M, theme.S, theme.M, 0)
    row.addLayout(flow)
    return row
