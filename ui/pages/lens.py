"""How wide the camera sees: a sheet or a card held up, or the figure typed."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from ui import words
from ui.pages.tools import say_lens
from ui.ports import CameraChoice
from ui.session.flow import Director
from ui.setup.lens_work import Stage
from ui.widgets.basic import Button, Page, Words
from ui.widgets.choices import Choices, Stepper
from ui.widgets.labelled import Labelled
from ui.widgets.picture import Picture

KINDS = ("paper", "card", "stated")
#: Distances that can be typed, in cm; 0 is "not measured".
DISTANCES_CM = (0, *range(15, 151))
ANGLES_DEG = range(25, 131)


class LensPage(Page):
    """Camera, what is measured with, picture and hint; or the figure."""

    def __init__(self, director: Director) -> None:
        super().__init__()
        self._director, self._work = director, director.lens
        self._shown: list[CameraChoice] = []
        self.known = Words(soft=True)
        self.cameras = Choices(words.say("camera.choose"))
        self.cameras.chosen.connect(lambda k: self._work.use_camera(self._shown[k]))
        self.kind = Choices(words.say("lens.with"), across=True)
        self.kind.fill([words.say(f"lens.with.{k}") for k in KINDS])
        self.kind.chosen.connect(lambda _row: self._work.stop())
        self.how = Words()
        self.picture = Picture(180)
        self.picture.setMinimumSize(320, 180)
        self.hint = Words(role="lead", bold=True)
        self.why = Words()
        self.distance = Stepper(words.say("lens.distance"), DISTANCES_CM, 0, _say_distance)
        self.angle = Stepper(
            words.say("lens.angle"), ANGLES_DEG, 78, lambda v: words.say("lens.angle.deg", deg=v)
        )
        self.across = Choices(words.say("lens.angle"), across=True)
        self.across.fill([words.say(f"lens.across.{k}") for k in ("corner", "upright")])
        self._lay_out()
        self._make_buttons()

    def _lay_out(self) -> None:
        self.body.addWidget(Words(words.say("lens.title"), "title"))
        for part in (self.known, self.hint, self.cameras, self.kind, self.how):
            self.body.addWidget(part)
        self._labelled = Labelled(self.distance, self.angle)
        self.body.addWidget(self._labelled)
        self.body.addWidget(self.across)
        self.body.addWidget(self.picture, 1)
        self.body.addWidget(self.why)
        self.body.addStretch(0)

    def _make_buttons(self) -> None:
        self.begin = Button(words.say("lens.start"), "main")
        self.begin.clicked.connect(self._begin)
        self.end = Button(words.say("lens.stop"), "main")
        self.end.clicked.connect(self._end)
        self.keep = Button(words.say("lens.keep"), "main")
        self.keep.clicked.connect(self._keep)
        self.forget = Button(words.say("lens.forget"))
        self.forget.clicked.connect(self._work.forget)
        self.back = Button(words.say("tools.back"))
        self.back.clicked.connect(lambda: self._director.stop())
        for button in (self.begin, self.end, self.keep, self.forget, self.back):
            self.buttons.addWidget(button)

    @property
    def chosen(self) -> str:
        """What is measured with: one of :data:`KINDS`."""
        return KINDS[max(self.kind.row, 0)]

    def enter(self) -> None:
        """The main button gets the keys; hands that hold a sheet up must not end it by one."""
        super().enter()
        if self._work.watching:
            self.setFocus()

    def toggle_picture(self) -> None:
        """Hide the picture, or show it again; what is held up is still watched."""
        if self._work.watching:
            self._work.show_picture(not self._work.picture_shown)
            self.refresh()

    def _begin(self) -> None:
        cm = self.distance.value
        self._work.start(self.chosen, 10.0 * cm if cm else None)
        self.enter()

    def _end(self) -> None:
        self._work.stop()
        self.refresh()
        self.enter()

    def _keep(self) -> None:
        self._work.state(float(self.angle.value), diagonal=self.across.row == 0)

    def refresh(self) -> None:
        """Show what goes on."""
        work, kind = self._work, self.chosen
        if self._director.cameras != self._shown:
            self._shown = list(self._director.cameras)
            self.cameras.fill([c.name or words.say("camera.default") for c in self._shown])
        if work.camera in self._shown:
            self.cameras.choose(self._shown.index(work.camera))
        was, watching, typed = self.end.isVisibleTo(self), work.watching, kind == "stated"
        had = self.focusWidget()
        self.known.setText(say_lens(self._director))
        self.how.setText(words.say(f"lens.how.{kind}"))
        said, why = self._say()
        shown = {
            self.known: not watching,
            self.hint: bool(said),
            self.why: bool(why),
            self.cameras: len(self._shown) > 1 and not watching,
            self.how: not watching,
            self.kind: not watching,
            self.picture: watching,
            self.across: typed,
            self.begin: not typed and not watching and work.camera is not None,
            self.end: watching,
            self.keep: typed and work.camera is not None,
            self.forget: not watching and work.lens.source != "default",
        }
        for widget, on in shown.items():
            if widget.isHidden() == on:
                widget.setVisible(on)
        self._labelled.show_row(self.distance, on=not typed and not watching)
        self._labelled.show_row(self.angle, on=typed)
        if (isinstance(had, QWidget) and not had.isVisibleTo(self)) or (was and not watching):
            self.enter()
        self.picture.show_bgr(work.preview())
        seen = work.picture_shown or self._director.sharing
        self.picture.say_instead("" if seen else words.say("practice.picture_show"))
        self.hint.setText(said)
        self.why.setText(why)

    def _say(self) -> tuple[str, str]:
        """What to do or what became of it, and why nothing did so far."""
        work = self._work
        why = words.told(work.why)
        why = f"{why[:1].upper()}{why[1:]}." if why else ""
        if work.trouble:
            return words.say_or(f"trouble.{work.trouble}", "trouble.failed"), words.say_or(
                f"trouble.{work.trouble}.do", "trouble.failed.do"
            )
        if work.camera is None:
            return words.say("lens.no_camera"), ""
        if work.stage == Stage.done:
            return words.say("lens.done"), ""
        if not work.watching:
            return "", why
        hint = words.say_or(f"lens.hint.{work.hint}", "lens.hint.sheet_none")
        return words.say("lens.going_on", hint=hint, views=work.views, wanted=work.wanted), why


def _say_distance(cm: int) -> str:
    return words.say("lens.distance.cm", cm=cm) if cm else words.say("lens.distance.none")
