"""Choosing the camera by name, with a live picture and a verdict; or what is wrong with it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from tracker.plan.starter import TRY_ID
from ui import theme, words
from ui.pages.first import leave_button, progress_words
from ui.ports import CameraChoice
from ui.session.flow import Director
from ui.session.seat import seat_words
from ui.settings import EYES, GLASSES, Settings
from ui.verdict import verdict
from ui.widgets.basic import Button, Page, Words, relabel
from ui.widgets.choices import Choices
from ui.widgets.leave import unwell_button
from ui.widgets.picture import Picture


class CameraPage(Page):
    """Camera, picture, verdict; trouble takes the place of the picture."""

    def __init__(
        self, director: Director, use_clip: Callable[[], None], settings: Settings
    ) -> None:
        super().__init__()
        self._director, self._settings = director, settings
        self._shown: list[CameraChoice] = []
        # Of the last picture: one that is hidden changes no verdict.
        self._is_kept = False
        self._kept_for: CameraChoice | None = None
        self.progress = Words(progress_words("camera"), soft=True)
        self.title = Words(words.say("camera.title"), "title")
        self.choice = Choices(words.say("camera.choose"))
        self.choice.chosen.connect(self._chosen)
        # Everything else has to be in sight too, at the usual text size.
        self.picture = Picture(180)
        self.picture.setMinimumSize(320, 180)
        self.verdict = Words(role="lead", bold=True)
        self.seat = Words(soft=True)
        self.what_to_do = Words(role="lead")
        self.without = Words(words.say("camera.without", button=words.say("ask.place.skip")))
        self._make_questions()
        director.glasses, director.eyes = settings.glasses, settings.eyes
        self._lay_out()
        self._make_buttons(use_clip)

    def _make_questions(self) -> None:
        """Which glasses are worn, and which eyes are followed."""
        self.ask_glasses = Words(words.say("glasses.title"))
        self.glasses = Choices(words.say("glasses.title"), across=True)
        self.glasses.fill([words.say(f"glasses.{g}") for g in GLASSES])
        self.glasses.choose(GLASSES.index(self._settings.glasses))
        self.glasses.chosen.connect(self._wear)
        self.ask_eyes = Words(words.say("eyes.title"))
        self.eyes = Choices(words.say("eyes.title"), across=True)
        self.eyes.fill([words.say(f"eyes.{e}") for e in EYES])
        self.eyes.choose(EYES.index(self._settings.eyes))
        self.eyes.chosen.connect(self._watch)

    def _lay_out(self) -> None:
        for part in (self.progress, self.title, self.choice):
            self.body.addWidget(part)
        self.body.addWidget(self.picture, 1)
        self.body.addWidget(self.verdict)
        self.body.addWidget(self.seat)
        self.body.addWidget(self.ask_glasses)
        self.body.addWidget(self.glasses)
        self.body.addWidget(self.ask_eyes)
        self.body.addWidget(self.eyes)
        self.body.addWidget(self.what_to_do)
        self.body.addWidget(self.without)
        self.body.addStretch(0)

    def _make_buttons(self, use_clip: Callable[[], None]) -> None:
        director = self._director
        self.next = Button(words.say("camera.next"), "main")
        self.next.clicked.connect(director.begin_setup)
        self.kept = Button(words.say("camera.kept"), "main")
        self.kept.clicked.connect(director.use_kept)
        self.retry = Button(words.say("trouble.retry"), "main")
        self.retry.clicked.connect(director.retry)
        self.leave_out = Button(words.say("ask.place.skip"))
        self.leave_out.clicked.connect(director.leave_out)
        self.demo = Button(words.say("trouble.demo"))
        self.demo.clicked.connect(use_clip)
        self.back = Button(words.say("trouble.back"))
        self.back.clicked.connect(self._go_back)
        self.on = Button(words.say("first.next"), "main")
        self.on.clicked.connect(director.first_go_on)
        self.skip = leave_button(director)
        self.unwell = unwell_button()
        self.unwell.clicked.connect(director.unwell)
        self.buttons.set_apart(self.unwell, self.skip)
        for button in (
            self.on,
            self.kept,
            self.next,
            self.retry,
            self.leave_out,
            self.demo,
            self.back,
            self.skip,
            self.unwell,
        ):
            self.buttons.addWidget(button)

    def _go_back(self) -> None:
        if self._director.looking:
            self._director.first_back()
        else:
            self._director.stop()

    def _chosen(self, row: int) -> None:
        if 0 <= row < len(self._shown):
            self._director.use_camera(self._shown[row])

    def enter(self) -> None:
        """The page comes to the front: another set-up may have been kept meanwhile."""
        self._look_for_kept()
        super().enter()
        # While it opens nothing leads on, and the keys must not lie on a way out.
        looking, trouble = self._director.looking, self._director.trouble
        if trouble is None and not looking and not self.next.isEnabled():
            self.setFocus()

    def toggle_picture(self) -> None:
        """Hide the picture, or show it again; the camera goes on, and the verdict stays."""
        self._director.show_picture(not self._director.picture_shown)
        self.refresh()

    def _wear(self, row: int) -> None:
        self._settings.glasses = self._director.glasses = GLASSES[row]
        self._look_for_kept()

    def _watch(self, row: int) -> None:
        self._settings.eyes = self._director.eyes = EYES[row]
        self._look_for_kept()

    def _look_for_kept(self) -> None:
        """Offer the set-up of last time where there is one for these glasses and this eye."""
        self._is_kept = self._director.kept is not None

    def refresh(self) -> None:
        """Show the cameras, and the verdict or the trouble."""
        director = self._director
        self._fill()
        trouble = director.trouble
        # For a moment no picture comes: what was said of the last one holds no more.
        gone = trouble is None and director.camera_gone
        had = self.focusWidget()
        _show(self.picture, trouble is None)
        _show(self.choice, len(self._shown) > 1 or trouble is None)
        _show(self.ask_glasses, trouble is None)
        _show(self.glasses, trouble is None)
        _show(self.ask_eyes, trouble is None)
        _show(self.eyes, trouble is None)
        if director.camera is not self._kept_for:
            self._kept_for = director.camera
            self._look_for_kept()
        looking = director.looking
        # A line more stands above the picture then.
        self.body.setSpacing(theme.S if looking else theme.M)
        came = trouble is not None and self.retry.isHidden()
        self._show_ways(trouble=trouble is not None)
        _show(self.what_to_do, trouble is not None or gone)
        if (came and had in (None, self)) or (had is not None and not had.isVisibleTo(self)):
            self.enter()
        if trouble is not None or gone:
            _show(self.seat, False)
            what, to_do = director.lost_words_now
            self.verdict.setText(what)
            retry = "" if trouble is None else f"trouble.{trouble.state}.do.retry"
            self.what_to_do.setText(words.say(retry) if words.has(retry) else to_do)
        if trouble is not None:
            return
        picture = director.preview()
        self.picture.show_bgr(picture)
        shown = director.picture_shown or director.sharing
        self.picture.say_instead("" if shown else words.say("practice.picture_show"))
        if not gone:
            height_px, rate_hz = director.picture_height_px, director.picture_rate_hz
            self._show_verdict(verdict(director.sample, height_px, rate_hz))
        ready = director.sample is not None and not gone
        if ready != self.next.isEnabled():
            if not ready and (self.next.hasFocus() or self.kept.hasFocus()):
                # Whoever presses on must not go back by it.
                self.setFocus()
            self.next.setEnabled(ready)
            self.kept.setEnabled(ready)
            if ready and not looking and not self.choice.isAncestorOf(self.focusWidget()):
                (self.kept if self._is_kept else self.next).setFocus()

    def _show_ways(self, *, trouble: bool) -> None:
        """The ways on: to the set-up, through the first steps, or what to do about trouble."""
        director = self._director
        looking, in_session = director.looking, director.conductor is not None
        for part in (self.on, self.progress, self.skip):
            _show(part, looking)
        relabel(self.back, words.say("first.before" if looking else "trouble.back"))
        _show(self.kept, not trouble and self._is_kept and not looking)
        _show(self.next, not trouble and not looking)
        _show(self.retry, trouble)
        _show(self.demo, trouble and not in_session and not looking)
        # A session goes on without it.
        _show(self.leave_out, trouble and in_session)
        # The try can be left out, too, but is nothing to be noted.
        a_try = director.plan is not None and director.plan.plan_id == TRY_ID
        _show(self.without, trouble and in_session and not a_try)
        # The first steps are crowded enough; the key works there, too.
        _show(self.unwell, director.can_be_unwell and not looking)

    def _show_verdict(self, key: str) -> None:
        """Light and picture first, then the distance that the exercise asks for."""
        director = self._director
        seat, wanted_mm = director.seat, director.seat_wanted_mm
        move = known = ""
        if seat is not None and wanted_mm is not None:
            move, known = seat_words(seat, wanted_mm)
        told = bool(move) and director.seat_told == director.seat_verdict
        if told:
            known = f"{known} {words.say('seat.told')}"
        self.verdict.setText(
            move if move and key in ("good", "slow") else words.say(f"verdict.{key}")
        )
        self.seat.setText(known)
        _show(self.seat, bool(known))
        # With two ways on both keep their names: the second press of either goes on.
        anyway = told and not self._is_kept
        relabel(self.next, words.say("seat.anyway" if anyway else "camera.next"))

    def _fill(self) -> None:
        cameras = self._director.cameras
        if cameras != self._shown:
            self._shown = list(cameras)
            self.choice.fill([c.name or words.say("camera.default") for c in cameras])
        if self._director.camera in self._shown:
            self.choice.choose(self._shown.index(self._director.camera))


def _show(widget: QWidget, on: bool) -> None:
    if widget.isHidden() == on:
        widget.setVisible(on)
