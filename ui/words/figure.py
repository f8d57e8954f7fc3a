"""The words about drawn movements."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

FIGURE_WORDS: dict[str, object] = {
    "figure.name": QT_TRANSLATE_NOOP("turnpost", "Drawing: {what}"),
    "figure.moving": QT_TRANSLATE_NOOP("turnpost", "It moves slowly, over and over again."),
    "figure.stills": QT_TRANSLATE_NOOP("turnpost", "Drawings hold still now."),
    "figure.moves": QT_TRANSLATE_NOOP("turnpost", "Drawings move again."),
    "figure.still": QT_TRANSLATE_NOOP("turnpost", "It does not move."),
    "figure.hold": QT_TRANSLATE_NOOP("turnpost", "Hold still (S)"),
    "figure.hold_name": QT_TRANSLATE_NOOP("turnpost", "Hold the drawing still, key S"),
    "figure.go": QT_TRANSLATE_NOOP("turnpost", "Let it move (S)"),
    "figure.go_name": QT_TRANSLATE_NOOP("turnpost", "Let the drawing move, key S"),
    "figure.view.front": QT_TRANSLATE_NOOP("turnpost", "As in a mirror"),
    "figure.view.body_front": QT_TRANSLATE_NOOP("turnpost", "From the front"),
    "figure.view.side": QT_TRANSLATE_NOOP("turnpost", "From the side"),
    "figure.view.above": QT_TRANSLATE_NOOP("turnpost", "From above"),
}
