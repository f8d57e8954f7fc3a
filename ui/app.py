"""The window: header, pages, keys, and the one timer that drives the director."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QGuiApplication, QResizeEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from tracker.errors import InputError
from tracker.plan.files import load_plan
from tracker.plan.model import Plan
from tracker.practice.tasks import SINCE_LAST, AskScores, AskSinceLast, AskWell, DoSet, Task
from ui import tab_order, words
from ui.any_key import AnyKey
from ui.appearance import Appearance
from ui.begun_from_desk import begin_baseline
from ui.beside import Beside
from ui.geometry import FieldExtent
from ui.languages import language_of
from ui.motion import is_still
from ui.pages.camera import CameraPage
from ui.pages.first import FirstPage
from ui.pages.lens import LensPage
from ui.pages.practice import PracticePage
from ui.pages.task import TaskPage
from ui.pages.welcome import WelcomePage
from ui.ports import Baseline, ClipPlan, World
from ui.session.first import STEPS
from ui.session.flow import LIVE_PHASES, Director, Phase
from ui.settings import Settings
from ui.share import text_percent
from ui.shortcuts import let_work, make_shortcuts
from ui.target_fields import TargetFields
from ui.widgets.basic import Page
from ui.widgets.field import TargetField
from ui.widgets.header import Header
from ui.widgets.moving import MovementBox
from ui.widgets.picture import Picture
from ui.window_pages import make_pages, page_now

TICK_MS = 16
#: Pages are drawn anew this often; figures in them change at turning points only.
REFRESH_MS = 33
#: The same where the measuring does not keep up with the camera: it comes first.
BUSY_REFRESH_MS = 150
SMALLEST = (960, 600)
#: Pages on which one sees oneself, and may not want to.
_MIRRORS = PracticePage | CameraPage | LensPage
#: Phases whose page nothing may cover: something goes on that one has to see, or to stop.
_GOING_ON = frozenset({Phase.setup, Phase.fitting, Phase.countdown, Phase.exercise, Phase.saving})


class Window(QWidget):
    """The program's window.

    Parameters
    ----------
    world
        What the director works with.
    clip
        A clip in place of the camera, or None.
    demo_clip
        Gives the sample clip that is offered when the camera can't be used.
    settings
        What is remembered.
    plan
        A plan's file that is offered on the first page, in place of the one remembered.
    """

    #: Another language was chosen, by its code: a new window is to take this one's place.
    other_language = Signal(str)

    def __init__(
        self,
        world: World,
        *,
        clip: ClipPlan | None,
        demo_clip: Callable[[], ClipPlan],
        settings: Settings,
        plan: Path | None = None,
    ) -> None:
        super().__init__()
        self.settings = settings
        self._demo_clip = demo_clip
        self.setWindowTitle(words.say("program"))
        self.setMinimumSize(*SMALLEST)
        self.header = Header()
        self.stack = QStackedWidget()
        self.fields = TargetFields(self, settings)
        self.director = Director(world, self.extent, clip)
        self.director.extent_of_set = self.extent_of_set
        self.director.field_place = lambda: self.fields.place_of(self._field())
        self.director.sounds = settings.sounds
        self.director.still = lambda: is_still(settings.motion)
        self.director.plan_at_hand = self._plan_at_hand
        self._any_key = AnyKey(self.stop, self.director.unwell)
        self.appearance = Appearance(
            self, settings, drawn=self._drawn_percent, also=self.fields.set_text
        )
        #: The page that lies over another for a while, and what is under it.
        self._covered: tuple[str, Phase, Task | None] | None = None
        self._under_help = ""
        self.director.asks_to_leave = lambda: self.covering() == "leave"
        #: The page that takes no answer yet.
        self._held: Page | None = None
        self.beside = Beside(self, settings, lambda plan, new: begin_baseline(self, plan, new))
        self.handing_over, self.pages = make_pages(self, world.run)
        self._lay_out()
        self._shortcuts = make_shortcuts(self)
        self._connect()
        self.appearance.draw_text()
        self.fields.set_target(settings.target_percent)
        self._shown: Phase | None = None
        self._asked: Task | None = None
        self._refreshed_s = 0.0
        self.follow()
        self._begin(plan, clip)
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self.tick)
        self._timer.start(TICK_MS)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.header)
        column.addWidget(self.stack, 1)
        for page in self.pages.values():
            self.stack.addWidget(page)

    def _connect(self) -> None:
        """Join the header, the director, the drawn movements and the system's wishes."""
        self.header.call.connect(self.switch_sharing)
        self.header.sound.connect(self.open_sound)
        self.header.smaller.connect(lambda: self.appearance.step_text(-1))
        self.header.larger.connect(lambda: self.appearance.step_text(1))
        self.header.colours.connect(self.appearance.switch_colours)
        self.director.listeners.append(self.follow)
        for box in self.findChildren(MovementBox):
            box.still_asked.connect(self.appearance.switch_still)
        self.appearance.hold_still()
        accessibility = QGuiApplication.styleHints().accessibility()
        accessibility.motionPreferenceChanged.connect(self.hold_still)

    def _begin(self, plan: Path | None, clip: ClipPlan | None) -> None:
        """Offer the plan that was asked for or remembered, and go on with the first steps."""
        settings = self.settings
        remembered = plan or self.handing_over.remembered()
        if remembered is not None and clip is None:
            self.open_plan(remembered)
        elif settings.starter and clip is None:
            welcome = self.pages["welcome"]
            assert isinstance(welcome, WelcomePage)
            welcome.offer_starter()
        if plan is None and settings.first_step in STEPS:
            # No camera goes on by itself when the program starts.
            step = settings.first_step
            self.director.open_first("privacy" if step == "camera" else step)

    # --- where things are on the screen ---

    def extent(self) -> FieldExtent:
        """The part of the screen that targets may be drawn on."""
        return self.fields.extent_of(self._field(), self.director.drawn_distance_mm)

    def _field(self) -> TargetField:
        live = self.director.phase in LIVE_PHASES
        return self.fields.practice if live else self.fields.setup

    def extent_of_set(self, exercise: str) -> FieldExtent:
        """The same for a set that is still to come, whose page isn't shown yet."""
        page = self.pages["practice"]
        assert isinstance(page, PracticePage)
        if self.stack.currentWidget() is not page:
            page.prepare(exercise, self.stack.size())
        return self.fields.extent_of(page.field, self.director.drawn_distance_mm)

    # --- time ---

    def tick(self) -> None:
        """Let the director work; draw now and then."""
        self.director.tick()
        self._any_key.switch(on=self.director.any_key_stops)
        page = self.stack.currentWidget()
        if isinstance(page, PracticePage):
            page.move_target()
        now_s = time.monotonic()
        pause_ms = BUSY_REFRESH_MS if self.director.load.busy else REFRESH_MS
        if now_s - self._refreshed_s >= pause_ms / 1000:
            self._refreshed_s = now_s
            self.refresh()

    def follow(self) -> None:
        """Show the page of the director's phase, or one over it while nothing new comes."""
        phase = self.director.phase
        self._remember_first()
        if self._covered is not None:
            _, was, task = self._covered
            if phase != was or self.director.task is not task:
                self._covered = None
        self.header.let_sound(self._may_cover())
        self.header.let_share(self._may_share(), self.director.sharing)
        self.header.let_text(not self.director.place_matters)
        page = self._page()
        new_page = self.stack.currentWidget() is not page
        self.stack.setCurrentWidget(page)
        live = page is self.pages["practice"]
        let_work(self._shortcuts, self.director, live=live, seen=isinstance(page, _MIRRORS))
        self.refresh()
        self._ask(page)
        if new_page or phase != self._shown:
            if new_page or self._shown is None or phase == Phase.setup_failed:
                page.enter()  # type: ignore[attr-defined]
            self._shown = phase
        if phase == Phase.welcome and self._covered is None:
            # What came in between, as another language, took the page away unanswered.
            self.handing_over.show_waiting()
        self._hold_answers()

    def _hold_answers(self) -> None:
        """Show that a page takes no answer yet, and give it the keys once it does."""
        page, had = self.stack.currentWidget(), self._held
        holds = self._covered is None and self.director.takes_no_answer
        self._held = page if holds and isinstance(page, Page) else None
        if self._held is had:
            return
        if had is not None:
            had.hold(on=False)
            if had is page and had.hasFocus():
                had.enter()
        if self._held is not None:
            self._held.hold(on=True)

    def _remember_first(self) -> None:
        """How far the first steps have come, so that the next start goes on from there."""
        director, settings = self.director, self.settings
        step = "" if director.first_over else director.first_step
        if (step or director.first_over) and settings.first_step not in ("", step):
            settings.first_step = step

    def _page(self) -> QWidget:
        """The page of the director's phase, and of its task, or one that lies over it."""
        return self.pages[self.covering() or page_now(self.director)]

    def _ask(self, page: QWidget) -> None:
        """Have a page ask a task that has come."""
        task = self.director.task if self.director.phase == Phase.asking else None
        if task is self._asked:
            return
        self._asked = task
        if isinstance(task, AskSinceLast):
            task = AskScores(when="since_last", names=SINCE_LAST)
        if task is not None:
            page.ask(task)  # type: ignore[attr-defined]

    def refresh(self) -> None:
        """Draw what has changed."""
        director = self.director
        without = "clip_on" if director.clip is not None else "camera_off"
        # Beside a clip, too: a camera that is being let go may still see.
        key = "camera_on" if director.camera_on else without
        if self.header.mark.text != words.say(key):
            self.header.mark.show_state(key)
            self.header.make_room()
        # In a set its own line says it, and in a call the board or the panel.
        elsewhere = director.phase != Phase.exercise and not director.sharing
        marked = director.just_marked and elsewhere
        self.header.show_note(words.say("call.marked") if marked else "")
        self.fields.measure(director.drawn_distance_mm)
        self.stack.currentWidget().refresh()  # type: ignore[attr-defined]
        self._hold_answers()

    # --- commands ---

    def stop(self) -> None:
        """Stop at once; from a page that lies over another, back: nothing goes on there."""
        if self._covered is None:
            if self.director.escape():
                self.cover("leave")
        elif self.covering() == "help":
            self.switch_help()
        elif not getattr(self._page(), "step_back", bool)():
            self.cover("")

    def _may_cover(self) -> bool:
        director = self.director
        return director.phase not in _GOING_ON and not isinstance(director.task, DoSet | AskWell)

    def open_sound(self) -> None:
        """The page where one chooses what to hear, unless something goes on."""
        if self._page() is not self.pages["sound"]:
            self.cover("sound")

    def close_sound(self) -> None:
        """Back to where one came from; as one of the first steps, on to the next."""
        if self._covered is None:
            self.director.first_go_on()
            return
        self.cover("")

    def switch_help(self) -> None:
        """The page of keys and help, unless something goes on; and back to what it covered."""
        if self.covering() == "help":
            self.cover(self._under_help)
            return
        self._under_help = self.covering()
        self.cover("help")

    def toggle_picture(self) -> None:
        """Hide the picture of oneself, or show it, on the page that has one."""
        page = self.stack.currentWidget()
        if isinstance(page, _MIRRORS):
            page.toggle_picture()

    def cover(self, name: str) -> None:
        """Lay a page over the one that is shown, unless something goes on there; empty: none."""
        if not name and self.covering() == "same":
            self.handing_over.waits = None
        if not name or self._may_cover():
            under = (self.director.phase, self.director.task)
            self._covered = (name, *under) if name else None
            self.follow()

    def covering(self) -> str:
        """Name of the page that lies over another; empty where none does."""
        return "" if self._covered is None else self._covered[0]

    def _may_share(self) -> bool:
        """A set-up is not to be disturbed: its targets must stay where they are."""
        return self.director.phase not in (Phase.setup, Phase.fitting, Phase.saving)

    def switch_sharing(self) -> None:
        """Lay the window out for a call that it is shared in, or for the person alone."""
        director = self.director
        if self._may_share():
            if director.phase == Phase.exercise and director.target_coming:
                # The target gets another place, and the set goes on with it there.
                director.pause_or_go_on()
            director.sharing = not director.sharing
            self._lay_out_for_call()
        self.follow()

    def _lay_out_for_call(self) -> None:
        sharing = self.director.sharing
        practice, task = self.pages["practice"], self.pages["task"]
        assert isinstance(practice, PracticePage) and isinstance(task, TaskPage)
        practice.set_sharing(sharing)
        for picture in self.findChildren(Picture):
            picture.set_hidden(sharing)
        self.appearance.draw_text()
        task.show_again()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """In a call the words grow with the window."""
        super().resizeEvent(event)
        if self.director.sharing:
            self.appearance.draw_text()

    def use_clip(self) -> None:
        """Go on with the sample clip."""
        self.director.use_clip(self._demo_clip())

    def open_plan(self, path: Path) -> None:
        """Offer a plan on the first page, and remember it; or say what is wrong with it."""
        welcome = self.pages["welcome"]
        assert isinstance(welcome, WelcomePage)
        try:
            plan = load_plan(path)
        except InputError as error:
            welcome.refuse(str(error))
            return
        welcome.offer(plan)
        self.settings.plan, self.settings.starter = path, False
        self.handing_over.take(plan)

    def _plan_at_hand(self) -> Plan | None:
        """The plan that is offered."""
        welcome = self.pages["welcome"]
        assert isinstance(welcome, WelcomePage)
        return welcome.plan

    def expect_baseline(self, baseline: Baseline | None) -> None:
        """The next session with the plan at hand is the baseline, or none is.

        One that is for another plan is not taken, nor any where no plan is at hand.
        """
        plan = self._plan_at_hand()
        fits = plan is not None and baseline is not None and baseline.is_of(plan)
        self.director.baseline = baseline.of(plan) if plan and baseline and fits else None
        self.follow()

    def remember_starter(self) -> None:
        """The starter plan is the one to offer, and no file."""
        self.settings.plan, self.settings.starter = None, True

    def _drawn_percent(self, percent: int) -> int:
        """The text size that is drawn; in a call the words grow with the window."""
        if not self.director.sharing:
            return percent
        return text_percent(self.width(), self.height(), percent)

    def set_language(self, language: str) -> None:
        """Speak another language; where one chooses it nothing else goes on."""
        if language != language_of(self.settings.language):
            self.other_language.emit(language)

    def show_language(self) -> None:
        """Go back to where the language was chosen, so that the choice is seen."""
        self.director.open_first("text")
        first = self.pages["first"]
        assert isinstance(first, FirstPage)
        first.looks.language.take_keys()

    def hold_still(self) -> None:
        """The system wants other movement than before."""
        self.appearance.hold_still()

    def switch_still(self) -> None:
        """Drawings hold still, or move again: where one is in sight, so that it is noticed."""
        if any(box.hold.isVisible() for box in self.findChildren(MovementBox)):
            self.appearance.switch_still()
            self.director.tell_still()

    def switch_full_screen(self) -> None:
        """Full screen and back."""
        self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Tab goes through the window as it is read."""
        return tab_order.step(self, forward=forward)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Save what there is, end the measuring, remember the window."""
        # Else the program would go on unseen, and hold the lock of its folder. Where a plan
        # is not saved yet, its window asks, and this one stays until it is answered.
        if not self.beside.close_all():
            event.ignore()
            return
        self._timer.stop()
        for name in ("handover", "stored"):
            self.pages[name].close_jobs()  # type: ignore[attr-defined]
        self._any_key.switch(on=False)
        self.director.close()
        self.settings.window = self.saveGeometry()
        self.settings.sync()
        super().closeEvent(event)
