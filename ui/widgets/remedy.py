"""What to do about a camera in trouble, under the line that says what is wrong."""

from __future__ import annotations

from ui import words
from ui.session_flow import LIVE_PHASES, Director
from ui.widgets.basic import Words

#: Where a window has no room for it, its letters shrink in such steps, and no further than 100.
_STEP, _LEAST = 10, 100


class Remedy(Words):
    """Is there only while there is trouble: the target moves up for it, and back."""

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
        trouble = director.trouble
        text = ""
        if director.paused_by_camera:
            text = " ".join(director.lost_words())
        elif director.phase in LIVE_PHASES and trouble is not None:
            text = words.say_or(f"trouble.{trouble.state}.do", "trouble.failed.do")
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
