"""Fields of two numbers: a range, and a tempo with its four ways."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from tracker.plan.draft import UNSET
from ui import theme, words
from ui.editor.inputs import ChoiceInput, LineInput
from ui.widgets.basic import Words

#: What stands in a tempo that is newly given: common practice.
USUAL_BEATS = 60


class PairInput(QWidget):
    """Two numbers, from one to another; both empty leaves the field out."""

    edited = Signal(object)

    def __init__(self, step: float = 1.0) -> None:
        super().__init__()
        self.ends = [LineInput("number", step=step), LineInput("number", step=step)]
        self._to = Words(words.say("edit.to"), "desk")
        self._to.setWordWrap(False)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.M)
        for part in (self.ends[0], self._to, self.ends[1]):
            row.addWidget(part)
        row.addStretch(1)
        for end in self.ends:
            end.edited.connect(lambda _value: self.edited.emit(self.value))

    def name(self, text: str) -> None:
        """Name both ends for a screen reader."""
        for key, end in zip(("edit.low", "edit.high_end"), self.ends, strict=True):
            end.setAccessibleName(words.say(key, what=text))

    @property
    def pending(self) -> bool:
        """Whether something is typed that has not been taken over."""
        return any(end.pending for end in self.ends)

    def commit(self) -> None:
        """Take over what is typed."""
        for end in self.ends:
            end.commit()

    def revert(self) -> None:
        """Back to what stood there."""
        for end in self.ends:
            end.revert()

    @property
    def value(self) -> Any:
        """The two numbers, or what there is of them."""
        found = [end.value for end in self.ends]
        if found == [UNSET, UNSET]:
            return UNSET
        return [v for v in found if v is not UNSET]

    def show_value(self, value: Any) -> None:
        """Show a pair."""
        pair = value if isinstance(value, list) else []
        for k, end in enumerate(self.ends):
            end.show_value(pair[k] if k < len(pair) else UNSET)


class TempoInput(QWidget):
    """A tempo: left out, the person's own pace, one figure, or from one to another."""

    edited = Signal(object)

    def __init__(self, ways: Sequence[tuple[Any, str]], step: float) -> None:
        super().__init__()
        self.way = ChoiceInput()
        self.way.set_choices(ways)
        self.pair = PairInput(step)
        self._value: Any = UNSET
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.M)
        row.addWidget(self.way)
        row.addWidget(self.pair)
        row.addStretch(1)
        self.way.edited.connect(self._choose)
        self.pair.edited.connect(lambda _value: self.edited.emit(self.value))

    def name(self, text: str) -> None:
        """Name its parts for a screen reader."""
        self.way.setAccessibleName(text)
        self.pair.name(text)

    @property
    def pending(self) -> bool:
        """Whether something is typed that has not been taken over."""
        return self.pair.pending

    def commit(self) -> None:
        """Take over what is typed."""
        self.pair.commit()

    def revert(self) -> None:
        """Back to what stood there."""
        self.pair.revert()

    @property
    def value(self) -> Any:
        """The tempo as a plan has it."""
        way = self.way._value
        if way == "own":
            return None
        if way == "unset":
            return UNSET
        low, high = (end.value for end in self.pair.ends)
        if way == "fixed":
            return "" if low is UNSET else low
        return [v for v in (low, high) if v is not UNSET]

    def show_value(self, value: Any) -> None:
        """Show a tempo."""
        self._value = value
        way = "unset" if value is UNSET else "own" if value is None else "fixed"
        if isinstance(value, list):
            way = "pair"
        self.way.show_value(way)
        self.pair.show_value(value if way == "pair" else [value])
        for k, end in enumerate(self.pair.ends):
            end.setVisible(way == "pair" or (way == "fixed" and k == 0))
        self.pair._to.setVisible(way == "pair")

    def _choose(self, way: str) -> None:
        """Another way; a figure that stands there already is kept."""
        have = self._value if isinstance(self._value, list) else [self._value]
        figures = [v for v in have if isinstance(v, int | float)]
        first = figures[0] if figures else USUAL_BEATS
        found = {
            "unset": UNSET,
            "own": None,
            "fixed": first,
            "pair": [first, figures[-1] if figures else first],
        }
        self.edited.emit(found[way])
