"""The ways out of a planned session, alike on every page."""

from __future__ import annotations

from ui import words
from ui.widgets.basic import Button


def unwell_button() -> Button:
    """Say to feel unwell; the key is in the label, as it is pressed in a hurry."""
    button = Button(words.say("ask.unwell"), "stop", words.say("ask.unwell_name"))
    button.setToolTip(words.say("ask.unwell_name"))
    button.way_out = True
    return button


def end_button() -> Button:
    """End the session; what was done is saved."""
    button = Button(words.say("ask.end"))
    button.way_out = True
    return button
