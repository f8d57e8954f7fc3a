"""The row of buttons under a set: which are there, what room they take, and where the keys lie."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from ui import words
from ui.session.flow import Director, Phase
from ui.widgets.basic import Button, relabel
from ui.widgets.flow import FlowRow
from ui.widgets.leave import unwell_button


class PracticeButtons:
    """The buttons of the live page, in one row that keeps the room of those that may come.

    Parameters
    ----------
    page
        Has the keys where there is no visible way on.
    director
        Its state says which buttons there are.
    """

    def __init__(self, page: QWidget, director: Director) -> None:
        self._page, self._director = page, director
        self.stop = Button(words.say("practice.stop"), "stop", words.say("practice.stop_name"))
        self.stop.clicked.connect(lambda: director.stop())
        name = words.say("practice.double_name")
        self.double = Button(words.say("practice.double"), "stop", name)
        self.double.clicked.connect(director.saw_double)
        self.pause = Button(words.say("practice.pause"))
        self.pause.clicked.connect(director.pause_or_go_on)
        self.done = Button(words.say("ask.done"), "main")
        self.done.clicked.connect(director.set_done)
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.show_me = Button(words.say("practice.picture_show"))
        # As wide as each of the words that they come to bear: the others stay where they are.
        self.pause.others = tuple(words.say(f"practice.{k}") for k in ("pause", "go_on"))
        both = ("practice.picture_show", "practice.picture_hide")
        self.show_me.others = tuple(map(words.say, both))
        self.row = FlowRow()
        # What leaves comes first: in a small window the last ones may lie below its foot.
        for button in (self.stop, self.double, self.unwell, self.done, self.pause, self.show_me):
            self.row.addWidget(button)
        #: What the way on hung on when the keys were placed: a pause, a set that one says is done.
        self._way = (False, False)

    def show(self, *, outline: bool) -> None:
        """Show those that there are now; ``outline`` is what one wants to see in a call."""
        director = self._director
        clip = director.clip is not None
        had = self._page.focusWidget()
        if self.pause.isHidden() != clip:
            self.pause.setHidden(clip)
        live = director.phase == Phase.exercise
        by_hand = live and (director.until_said or director.count_lost)
        # Where the camera went one's picture is of no use, and "Done" takes its place in the row.
        picture = not director.count_lost
        shown = (
            (self.unwell, director.can_be_unwell),
            (self.done, by_hand),
            (self.double, director.near_set),
            (self.show_me, picture),
        )
        for button, on in shown:
            if button.isHidden() == on:
                button.setVisible(on)
        self.row.keep_room_for(*self._may_come())
        paused = director.phase == Phase.paused
        new = (paused, director.until_said and by_hand)
        gone = had is not None and not had.isVisibleTo(self._page)
        if (new != self._way or gone) and self._page.isVisible():
            self._way = new
            # Whoever went on by it must not pause or stop by the same key pressed twice.
            self.place_keys()
        relabel(self.pause, words.say("practice.go_on" if paused else "practice.pause"))
        key = "practice.picture_hide" if director.picture_shown else "practice.picture_show"
        if director.sharing:
            key = "share.hide" if outline else "share.show"
        relabel(self.show_me, words.say(key))

    def place_keys(self) -> None:
        """The visible way on gets the keys; where there is none, no stray key does anything.

        Esc stops at once wherever they are.
        """
        director = self._director
        said = director.until_said and self.done.isVisibleTo(self._page)
        way = self.done if said else self._page
        (self.pause if director.phase == Phase.paused else way).setFocus()

    def _may_come(self) -> list[Button]:
        """Buttons that may come while the set goes on, and those that are there."""
        entry = self._director.entry
        found = [b for b in (self.stop, self.pause, self.unwell) if not b.isHidden()]
        if entry is not None and entry.exercise.near_work:
            found.append(self.double)
        if self._director.until_said:
            found.append(self.done)
        return [*found, self.show_me]
