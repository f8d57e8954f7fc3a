"""Words whose letters shrink where a window has no room for them at the text size chosen."""

from __future__ import annotations

import re
from collections.abc import Iterator

from ui.widgets.basic import Words

#: Where one sentence ends and the next begins.
_NEXT = re.compile(r"(?<=[.!?؟])\s+")
#: The letters shrink in such steps, in percent, and no further than 100.
STEP, LEAST = 10, 100


def beginnings(text: str) -> Iterator[str]:
    """A text, and then the same without its last sentences, down to the first alone."""
    yield text
    sentences = _NEXT.split(text)
    for count in range(len(sentences) - 1, 0, -1):
        yield " ".join(sentences[:count])


class Shrinking(Words):
    """Words that take a height as their limit, as far as their letters may shrink."""

    def __init__(self, role: str = "body", *, bold: bool = False) -> None:
        self._percent = LEAST
        self._fitted: tuple[object, ...] = ()
        self._said: tuple[object, ...] = ()
        super().__init__(role=role, bold=bold, centred=True)

    @property
    def percent(self) -> int:
        """The text size that was chosen."""
        return self._percent

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent, as far as there is room."""
        self._percent, self._fitted, self._said = percent, (), ()
        super().set_percent(percent)

    def _draw_at(self, percent: int) -> None:
        """Draw at a text size that is not the one chosen."""
        super().set_percent(percent)

    def fit(self, width: int, room_px: int) -> bool:
        """Take no more than a height, as far as the letters may shrink; whether they do."""
        asked = (self.text(), width, room_px, self._percent)
        if asked != self._fitted:
            self._fitted = asked
            for percent in range(self._percent, LEAST - 1, -STEP):
                self._draw_at(percent)
                if self.heightForWidth(width) <= room_px:
                    break
        return self.heightForWidth(width) <= room_px

    def say(self, text: str, width: int, room_px: int) -> None:
        """Show a text in a height; where it has no room, its last sentences are left out."""
        asked = (text, width, room_px, self._percent)
        if asked == self._said:
            return
        for part in beginnings(text):
            self.setText(part)
            if self.fit(width, room_px):
                break
        self._said = asked
