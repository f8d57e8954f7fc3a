"""What to do about a camera in trouble, under the line that says what is wrong."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QFontMetrics

from ui import theme, words
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


def places_around(
    page: QRect, middle: QPoint, band: int, *, upright: bool, mirrored: bool
) -> list[QRect]:
    """Places that the targets of a set leave free: above and below, or to the left and right.

    Parameters
    ----------
    page
        What there is, in px.
    middle
        The middle of the targets, and ``band`` how far they reach across their line, in px.
    upright
        Whether their line goes up and down.
    mirrored
        Whether one reads from the right, so that the place there comes first.
    """
    if not upright:
        above, below = middle.y() - band - page.y(), page.bottom() - middle.y() - band
        return [
            QRect(page.x(), page.y(), page.width(), above),
            QRect(page.x(), middle.y() + band, page.width(), below),
        ]
    wide = middle.x() - band - page.x()
    places = [
        QRect(page.x(), page.y(), wide, page.height()),
        QRect(middle.x() + band, page.y(), page.right() - middle.x() - band, page.height()),
    ]
    return places[::-1] if mirrored else places


class Remedy(Words):
    """Is there only while there is trouble.

    In a pause it has its place under the cue. While one looks at a target it lies over what
    stands around that (:attr:`over`), so that the target stays where it is. In the layout for
    a call the board has the words in place of the figures.
    """

    #: Whether it lies over the page, and takes no room of it.
    over = False

    def __init__(self) -> None:
        self._percent = 100
        self._fitted: tuple[object, ...] = ()
        self._place = 0
        super().__init__(role="body", centred=True)
        self.setAutoFillBackground(True)
        self.hide()

    @property
    def percent(self) -> int:
        """The text size that was chosen."""
        return self._percent

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
        """Height that it takes of the page now, in a width."""
        return 0 if self.isHidden() or self.over else self.heightForWidth(width)

    def lie_over(self, places: Sequence[QRect], least_px: int = 0) -> None:
        """Lie at the top of that of some places in which its letters can be largest.

        In the first of them it is at least so high: it covers all of what stands there.
        """
        text, keys = self.text(), [(p.width(), p.height()) for p in places]
        asked = (text, tuple(keys), self._percent)
        if asked != self._fitted:
            self._fitted = asked
            self._place = max(range(len(keys)), key=lambda k: self._largest(*keys[k]))
            super().set_percent(self._largest(*keys[self._place]))
        place = places[self._place]
        high = max(self.heightForWidth(place.width()), 0 if self._place else least_px)
        self.setGeometry(place.x(), place.y(), place.width(), high)
        self.raise_()

    def _largest(self, width: int, height: int) -> int:
        """Text size in percent that has room, up to the one that was chosen."""
        flags, box = int(Qt.TextFlag.TextWordWrap), QRect(0, 0, max(width, 1), 10_000)
        for percent in range(self._percent, _LEAST - 1, -_STEP):
            metrics = QFontMetrics(theme.font(self.role, percent, bold=self.bold))
            # What right-to-left words keep free at their edge comes off the width.
            box.setWidth(max(width - metrics.horizontalAdvance(" ") - 2, 1))
            if metrics.boundingRect(box, flags, self.text()).height() <= height:
                return percent
        return _LEAST
