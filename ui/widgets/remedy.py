"""What to do about a camera in trouble, under the line that says what is wrong."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QFontMetrics

from ui import theme, words
from ui.session.flow import LIVE_PHASES, Director
from ui.widgets.shrinking import LEAST, STEP, Shrinking, beginnings


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


class Remedy(Shrinking):
    """Is there only while there is trouble.

    In a pause it has its place under the cue. While one looks at a target it lies over what
    stands around that (:attr:`over`), so that the target stays where it is. In the layout for
    a call the board has the words in place of the figures.
    """

    #: Whether it lies over the page, and takes no room of it.
    over = False

    def __init__(self) -> None:
        self._place = 0
        #: All that is to be read, of which a low window may have no room for the end.
        self._whole = ""
        super().__init__()
        self.setAutoFillBackground(True)
        self.hide()

    def follow(self, director: Director, *, elsewhere: bool) -> bool:
        """Show what to do, unless it stands ``elsewhere``; whether anything is new."""
        text = remedy_words(director)
        on = bool(text) and not director.sharing and not elsewhere
        new = self.isHidden() == on or (on and text != self._whole)
        if new:
            self._whole = text
            self.setText(text)
            self.setVisible(on)
        return new

    def fit(self, width: int, room_px: int) -> bool:
        """Take no more than a height, as far as the letters may shrink; all of it is shown."""
        self.setText(self._whole)
        return super().fit(width, room_px)

    def takes_px(self, width: int) -> int:
        """Height that it takes of the page now, in a width."""
        return 0 if self.isHidden() or self.over else self.heightForWidth(width)

    def lie_over(self, places: Sequence[QRect], least_px: int = 0) -> None:
        """Lie at the top of that of some places in which its letters can be largest.

        In the first of them it is at least so high: it covers all of what stands there. Where
        none has room for all of it, its last sentences are left out: what to do now comes
        first, and a target that is looked at is never covered.
        """
        sizes = [(p.width(), p.height()) for p in places]
        asked = (self._whole, tuple(sizes), self._percent)
        if asked != self._fitted:
            self._choose(sizes)
            self._fitted = asked
        place = places[self._place]
        high = max(self.heightForWidth(place.width()), 0 if self._place else least_px)
        high = min(high, max(place.height(), 0))
        self.setGeometry(place.x(), place.y(), place.width(), high)
        self.raise_()

    def _choose(self, sizes: Sequence[tuple[int, int]]) -> None:
        """Say as much as there is room for, in the place in which it is largest."""
        text, found = "", [0 for _ in sizes]
        for text in beginnings(self._whole):
            found = [self._largest(text, *size) for size in sizes]
            if any(found):
                break
        self._place = max(range(len(sizes)), key=found.__getitem__)
        self.setText(text)
        self._draw_at(max(found[self._place], LEAST))

    def _largest(self, text: str, width: int, height: int) -> int:
        """Text size in percent that has room, up to the one that was chosen; 0 if none has."""
        flags, box = int(Qt.TextFlag.TextWordWrap), QRect(0, 0, max(width, 1), 10_000)
        for percent in range(self._percent, LEAST - 1, -STEP):
            metrics = QFontMetrics(theme.font(self.role, percent, bold=self.bold))
            # What right-to-left words keep free at their edge comes off the width.
            box.setWidth(max(width - metrics.horizontalAdvance(" ") - 2, 1))
            if metrics.boundingRect(box, flags, text).height() <= height:
                return percent
        return 0
