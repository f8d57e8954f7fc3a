"""What to do about a camera in trouble, under the line that says what is wrong."""

from __future__ import annotations

from ui import words
from ui.session_flow import LIVE_PHASES, Director
from ui.widgets.basic import Words

#: Where a window has no room for it, its letters shrink in such steps, and no further than 100.
_STEP, _LEAST = 10, 100


def remedy_words(director: Director) -> str:
    """What to do about the camera in a set; empty where there is nothing to do."""
    if director.paused_by_camera:
        return " ".join(director.lost_words())
    trouble = director.trouble
    if director.counts_alone:
        # What to do now comes before what may bring the camera back.
        return " ".join(words.say(key) for key in ("lost.count", *director.lost_keys[1:]))
    if director.phase not in LIVE_PHASES or trouble is None:
        return ""
    return words.say_or(f"trouble.{trouble.state}.do", "trouble.failed.do")


class Remedy(Words):
    """Is there only while there is trouble: the target moves up for it, and back.

    In the layout for a call the board has the words in place of the figures.
    """

    def __init__(self) -> None:
        self._percent = 100
        self._fitted: tuple[object, ...] = ()
        super().__init__(role="body", centred=True)
        self.hide()

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent, as far as there is room."""
        self._percent, self._fitted = percent, ()
        super().set_percent(percent)

    def follow(self, director: Director, *, elsewhere: bool) -> bool:
        """Show what to do, unless it stands ``elsewhere``; whether anything is new."""
        text = remedy_words(director)
        on = bool(text) and not director.sharing and not elsewhere
        new = self.isHidden() == on or (on and text != self.text())
        if new:
            self.setText(text)
            self.setVisible(on)
        return new

    def fit(self, width: int, room_px: int) -> None:
        """Take no more than a height, as far as the letters may shrink."""
        asked = (self.text(), width, room_px, self._percent)
        if asked == self._fitted:
            return
        self._fitted = asked
        for percent in range(self._percent, _LEAST - 1, -_STEP):
            super().set_percent(percent)
            if self.heightForWidth(width) <= room_px:
                break

    def takes_px(self, width: int) -> int:
        """Height that it takes now in a width."""
        return 0 if self.isHidden() else self.heightForWidth(width)
