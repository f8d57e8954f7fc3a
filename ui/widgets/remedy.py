"""What to do about a camera in trouble, under the line that says what is wrong."""

from __future__ import annotations

from ui import words
from ui.session_flow import LIVE_PHASES, Director
from ui.widgets.basic import Words


class Remedy(Words):
    """Is there only while there is trouble: the target moves up for it, and back."""

    def __init__(self) -> None:
        super().__init__(role="body", centred=True)
        self.hide()

    def follow(self, director: Director, *, elsewhere: bool) -> bool:
        """Show what to do, unless it stands ``elsewhere``; whether it has come or gone."""
        trouble = director.trouble
        text = ""
        if director.paused_by_camera:
            text = director.lost_words()[1]
        elif director.phase in LIVE_PHASES and trouble is not None:
            text = words.say_or(f"trouble.{trouble.state}.do", "trouble.failed.do")
        on = bool(text) and not director.sharing and not elsewhere
        if on:
            self.setText(text)
        if self.isHidden() != on:
            return False
        self.setVisible(on)
        return True

    def takes_px(self, width: int) -> int:
        """Height that it takes now in a width."""
        return 0 if self.isHidden() else self.heightForWidth(width)
