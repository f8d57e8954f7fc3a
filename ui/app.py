"""The window: header, pages, keys, and the one timer that drives the director."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QGuiApplication, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QApplication, QFileDialog, QStackedWidget, QVBoxLayout, QWidget

from tracker.errors import InputError
from tracker.plan.files import load_plan
from tracker.plan.model import Plan
from tracker.practice.tasks import SINCE_LAST, AskGate, AskScores, AskSinceLast, DoSet, Task
from tracker.session.files import data_folder
from ui import words
from ui.any_key import AnyKey
from ui.appearance import Appearance
from ui.geometry import FieldExtent, ScreenGeometry
from ui.handing_over import HandingOver
from ui.keys import KEYS, Key
from ui.languages import language_of
from ui.motion import is_still
from ui.pages.camera import CameraPage
from ui.pages.choose import ChoosePage
from ui.pages.first import FirstPage, Looks
from ui.pages.gate import GatePage
from ui.pages.lens import LensPage
from ui.pages.mark import MarkPage
from ui.pages.practice import PracticePage
from ui.pages.scores import ScoresPage
from ui.pages.screen import ScreenPage
from ui.pages.setup import SetupPage
from ui.pages.sound import SoundPage
from ui.pages.summary import SummaryPage
from ui.pages.task import TaskPage
from ui.pages.tools import ToolsPage
from ui.pages.welcome import WelcomePage
from ui.ports import Baseline, ClipPlan, World
from ui.screen import geometry_of
from ui.session_first import STEPS
from ui.session_flow import LIVE_PHASES, Director, Phase
from ui.settings import Settings
from ui.share import text_percent
from ui.widgets.field import TargetField
from ui.widgets.header import Header
from ui.widgets.moving import MovementBox
from ui.widgets.picture import Picture

TICK_MS = 16
#: Pages are drawn anew this often; figures in them change at turning points only.
REFRESH_MS = 33
#: The same where the measuring does not keep up with the camera: it comes first.
BUSY_REFRESH_MS = 150
SMALLEST = (960, 600)
#: Phases whose page nothing may cover: something goes on that one has to see, or to stop.
_GOING_ON = frozenset({Phase.setup, Phase.fitting, Phase.countdown, Phase.exercise, Phase.saving})
#: Room kept free around a target at the field's edge.
EDGE_MM = 12.0

_PAGE_OF = {
    Phase.welcome: "welcome",
    Phase.camera: "camera",
    Phase.setup: "setup",
    Phase.fitting: "setup",
    Phase.setup_failed: "setup",
    Phase.choose: "choose",
    Phase.first: "first",
    Phase.tools: "tools",
    Phase.lens: "lens",
    Phase.screen: "screen",
    Phase.mark: "mark",
    Phase.asking: "task",
    Phase.countdown: "practice",
    Phase.exercise: "practice",
    Phase.paused: "practice",
    Phase.saving: "practice",
    Phase.summary: "summary",
}


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
        self.fields: list[TargetField] = [TargetField(), TargetField()]
        self.director = Director(world, self.extent, clip)
        self.director.extent_of_set = self.extent_of_set
        self.director.sounds = settings.sounds
        self.director.still = lambda: is_still(settings.motion)
        self.director.plan_at_hand = self._plan_at_hand
        self._any_key = AnyKey(self.stop, self.director.unwell)
        self.appearance = Appearance(
            self, settings, drawn=self._drawn_percent, also=self._field_text
        )
        #: The page that lies over another for a while, and what is under it.
        self._covered: tuple[str, Phase, Task | None] | None = None
        self._run = world.run
        #: The therapist's desk, once it was opened from here.
        self.desk: QWidget | None = None
        #: The plan editor, once it was opened from here.
        self.editor: QWidget | None = None
        self.pages = self._make_pages()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.header)
        column.addWidget(self.stack, 1)
        for page in self.pages.values():
            self.stack.addWidget(page)
        self._shortcuts = self._make_shortcuts()
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
        self.appearance.draw_text()
        self._target_size(settings.target_percent)
        self._shown: Phase | None = None
        self._asked: Task | None = None
        self._refreshed_s = 0.0
        self.follow()
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
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self.tick)
        self._timer.start(TICK_MS)

    def _make_pages(self) -> dict[str, QWidget]:
        director = self.director
        setup_field, practice_field = self.fields
        welcome = WelcomePage(director, self.open_plan, self._remember_starter)
        hand_over = HandingOver(
            self._run, director, self.settings, welcome, self.cover, self._covering
        )
        self.handing_over = hand_over
        gate, scores = GatePage(), ScoresPage()
        gate.first_time = lambda: director.first_time
        gate.answered.connect(director.answer)
        scores.answered.connect(director.answer)
        for page in (gate, scores):
            page.unwell.connect(director.unwell)
            page.ended.connect(lambda: director.end_today())
        return {
            "welcome": welcome,
            "gate": gate,
            "scores": scores,
            "task": TaskPage(director),
            "camera": CameraPage(director, self.use_clip, self.settings),
            "tools": ToolsPage(
                director,
                self._geometry,
                self.open_review,
                self.open_editor,
                hand_over.open,
                lambda: welcome.plan,
            ),
            "same": hand_over.same,
            "handover": hand_over.page,
            "screen": ScreenPage(director, self.settings),
            "lens": LensPage(director),
            "setup": SetupPage(director, setup_field),
            "choose": ChoosePage(director, self.settings, self._target_size),
            "mark": MarkPage(director),
            "practice": PracticePage(director, practice_field),
            "summary": SummaryPage(director, self.close, hand_over.open, lambda: hand_over.plan),
            "sound": SoundPage(director, self.settings, self.close_sound),
            "first": FirstPage(
                director,
                Looks(
                    self.settings,
                    self.appearance.set_text,
                    self.appearance.set_colours,
                    self.appearance.set_motion,
                    self.set_language,
                ),
            ),
        }

    def _make_shortcuts(self) -> list[tuple[QShortcut, Key]]:
        actions: dict[str, Callable[[], object]] = {
            "stop": self.stop,
            "pause": self.director.pause_or_go_on,
            "picture": self.pages["practice"].toggle_picture,  # type: ignore[attr-defined]
            "unwell": self.director.unwell,
            "text_larger": lambda: self.appearance.step_text(1),
            "text_smaller": lambda: self.appearance.step_text(-1),
            "text_normal": lambda: self.appearance.set_text(100),
            "colours": self.appearance.switch_colours,
            "still": self.appearance.switch_still,
            "share": self.switch_sharing,
            "mark": self.director.mark_moment,
            "slower": lambda: self.director.change_coming("tempo", -1),
            "faster": lambda: self.director.change_coming("tempo", 1),
            "smaller": lambda: self.director.change_coming("amplitude", -1),
            "larger": lambda: self.director.change_coming("amplitude", 1),
            "other_next": lambda: self.director.change_coming("next"),
            "take_back": lambda: self.director.change_coming("undo"),
            "sound": self.open_sound,
            "full_screen": self.switch_full_screen,
            "quit": self.close,
        }
        made = []
        for key in KEYS:
            shortcut = QShortcut(QKeySequence(key.sequence), self)
            # A key that is held down for long must not go through two pages.
            shortcut.setAutoRepeat(key.action.startswith("text"))
            action = actions[key.action]
            shortcut.activated.connect(lambda act=action: act())
            made.append((shortcut, key))
        return made

    # --- where things are on the screen ---

    def extent(self) -> FieldExtent:
        """The part of the screen that targets may be drawn on."""
        return self._extent_of(self.fields[1 if self.director.phase in LIVE_PHASES else 0])

    def extent_of_set(self, exercise: str) -> FieldExtent:
        """The same for a set that is still to come, whose page isn't shown yet."""
        page = self.pages["practice"]
        assert isinstance(page, PracticePage)
        if self.stack.currentWidget() is not page:
            page.prepare(exercise, self.stack.size())
        return self._extent_of(page.field)

    def _extent_of(self, field: TargetField) -> FieldExtent:
        self._measure(field)
        screen = self.screen()
        origin = screen.geometry().topLeft()
        middle = field.mapToGlobal(QRectF(field.rect()).center()) - QPointF(origin)
        geometry = self._geometry()
        free = EDGE_MM
        return FieldExtent(
            geometry.to_mm((middle.x(), middle.y())),
            max(field.width() / 2 / geometry.px_per_mm - free, 1.0),
            max(field.height() / 2 / geometry.px_per_mm - free, 1.0),
            geometry,
        )

    def _geometry(self) -> ScreenGeometry:
        return geometry_of(self.screen(), self.settings)

    def _measure(self, field: TargetField) -> None:
        field.px_per_mm = self._geometry().px_per_mm
        field.distance_mm = self.director.distance_mm

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
        page = self._page()
        new_page = self.stack.currentWidget() is not page
        self.stack.setCurrentWidget(page)
        live, sharing = page is self.pages["practice"], self.director.sharing
        for shortcut, key in self._shortcuts:
            shortcut.setEnabled((live or not key.live_only) and (sharing or not key.call_only))
        self.refresh()
        self._ask(page)
        if new_page or phase != self._shown:
            if new_page or self._shown is None or phase == Phase.setup_failed:
                page.enter()  # type: ignore[attr-defined]
            self._shown = phase
        if phase == Phase.welcome and self._covered is None:
            # What came in between, as another language, took the page away unanswered.
            self.handing_over.show_waiting()

    def _remember_first(self) -> None:
        """How far the first steps have come, so that the next start goes on from there."""
        director, settings = self.director, self.settings
        step = "" if director.first_over else director.first_step
        if (step or director.first_over) and settings.first_step not in ("", step):
            settings.first_step = step

    def _page(self) -> QWidget:
        """The page of the director's phase, and of its task."""
        director = self.director
        phase, task = director.phase, director.task
        if self._covered is not None:
            return self.pages[self._covered[0]]
        if phase == Phase.first and director.first_step == "sound":
            return self.pages["sound"]
        if phase == Phase.asking and isinstance(task, AskGate):
            return self.pages["gate"]
        if phase == Phase.asking and isinstance(task, AskScores | AskSinceLast):
            return self.pages["scores"]
        return self.pages[_PAGE_OF[phase]]

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
        clip = director.clip is not None
        key = "clip_on" if clip else "camera_on" if director.camera_on else "camera_off"
        if self.header.mark.text != words.say(key):
            self.header.mark.show_state(key)
            self.header.make_room()
        for field in self.fields:
            self._measure(field)
        self.stack.currentWidget().refresh()  # type: ignore[attr-defined]

    # --- commands ---

    def stop(self) -> None:
        """Stop at once; from a page that lies over another, back: nothing goes on there."""
        if self._covered is None:
            self.director.stop()
        else:
            self.cover("")

    def _may_cover(self) -> bool:
        director = self.director
        return director.phase not in _GOING_ON and not isinstance(director.task, DoSet)

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

    def cover(self, name: str) -> None:
        """Lay a page over the one that is shown, unless something goes on there; empty: none."""
        if not name and self._covering() == "same":
            self.handing_over.waits = None
        if not name or self._may_cover():
            under = (self.director.phase, self.director.task)
            self._covered = (name, *under) if name else None
            self.follow()

    def _covering(self) -> str:
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

    def open_review(self) -> None:
        """Ask for a folder of sessions, and open the therapist's desk beside this window."""
        if self.desk is not None and self.desk.isVisible():
            self.desk.activateWindow()
            self.desk.raise_()
            return
        title = words.say("tools.review.folder")
        folder = QFileDialog.getExistingDirectory(self, title, str(data_folder()))
        if folder:
            # Its plots take half a second to load, which a patient need not wait for.
            from ui.desk.opening import show_desk

            self.desk = show_desk(Path(folder), self.settings)

    def open_editor(self) -> None:
        """Open the plan editor beside this window."""
        if self.editor is not None and self.editor.isVisible():
            self.editor.activateWindow()
            self.editor.raise_()
            return
        from ui.editor.opening import show_editor

        self.editor = show_editor(self.settings)

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

    def _remember_starter(self) -> None:
        self.settings.plan, self.settings.starter = None, True

    def _drawn_percent(self, percent: int) -> int:
        """The text size that is drawn; in a call the words grow with the window."""
        return text_percent(self.height(), percent) if self.director.sharing else percent

    def _field_text(self, percent: int) -> None:
        for field in self.fields:
            field.text_percent = percent
            field.update()

    def _target_size(self, percent: int) -> None:
        for field in self.fields:
            field.target_percent = percent
            field.update()

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

    def switch_full_screen(self) -> None:
        """Full screen and back."""
        self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Save what there is, end the measuring, remember the window."""
        # Else the program would go on unseen, and hold the lock of its folder. Where a plan
        # is not saved yet, its window asks, and this one stays until it is answered.
        for beside in (self.editor, self.desk):
            if beside is not None and not beside.close():
                # Its question may lie behind this window.
                beside.raise_()
                beside.activateWindow()
                event.ignore()
                return
        self._timer.stop()
        self.handing_over.page.close_jobs()
        self._any_key.switch(on=False)
        self.director.close()
        self.settings.window = self.saveGeometry()
        self.settings.sync()
        super().closeEvent(event)

    def bring_back(self) -> None:
        """Where the window was last time, if that is on a screen; else large."""
        place = self.settings.window
        if place is not None and self.restoreGeometry(place) and self._is_visible_somewhere():
            return
        available = self.screen().availableGeometry()
        self.resize(min(1366, available.width()), min(768, available.height()))
        self.move(available.topLeft() + QPoint(0, 0))
        self.setWindowState(Qt.WindowState.WindowMaximized)

    def _is_visible_somewhere(self) -> bool:
        middle = self.frameGeometry().center()
        return any(s.availableGeometry().contains(middle) for s in QApplication.screens())
