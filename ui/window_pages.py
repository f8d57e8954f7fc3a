"""The pages of the window: made once, and which of them belongs to what goes on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from tracker.practice.tasks import AskGate, AskScores, AskSinceLast, AskWell
from ui.handing_over import HandingOver
from ui.pages.came import CamePage
from ui.pages.camera import CameraPage
from ui.pages.choose import ChoosePage
from ui.pages.first import FirstPage, Looks
from ui.pages.gate import GatePage
from ui.pages.help import HelpPage
from ui.pages.leave import LeavePage
from ui.pages.lens import LensPage
from ui.pages.mark import MarkPage
from ui.pages.meant import MeantPage
from ui.pages.practice import PracticePage
from ui.pages.scores import ScoresPage
from ui.pages.screen import ScreenPage
from ui.pages.setup import SetupPage
from ui.pages.sound import SoundPage
from ui.pages.stored import StoredPage
from ui.pages.summary import SummaryPage
from ui.pages.task import TaskPage
from ui.pages.tools import ToolsPage
from ui.pages.welcome import WelcomePage
from ui.pages.well import WellPage
from ui.ports import Runner
from ui.session.flow import Director, Phase

if TYPE_CHECKING:
    from ui.app import Window

_PAGE_OF = {
    Phase.welcome: "welcome",
    Phase.camera: "camera",
    Phase.setup: "setup",
    Phase.fitting: "setup",
    Phase.setup_failed: "setup",
    Phase.setup_told: "came",
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


def make_pages(window: Window, run: Runner) -> tuple[HandingOver, dict[str, QWidget]]:
    """The pages by name, and what hands over sessions, which has two of them.

    ``run`` starts work that takes long, apart from the window.
    """
    director = window.director
    director.ask_if_meant = lambda: _lay_over(window, "meant")
    welcome = WelcomePage(
        director, window.open_plan, window.remember_starter, lambda: window.cover("stored")
    )
    hand_over = HandingOver(run, director, window.settings, welcome, window.cover, window.covering)
    gate, scores, well = GatePage(), ScoresPage(), WellPage()
    gate.first_time = lambda: director.first_time
    gate.answered.connect(director.answer)
    scores.answered.connect(director.answer)
    well.answered.connect(director.answer)
    for page in (gate, scores):
        page.unwell.connect(director.unwell)
        page.ended.connect(lambda: director.end_today())
    return hand_over, {
        "welcome": welcome,
        "gate": gate,
        "scores": scores,
        "well": well,
        "task": TaskPage(director),
        "camera": CameraPage(director, window.use_clip, window.settings),
        "tools": ToolsPage(
            director,
            window.fields.geometry,
            window.beside.open_desk,
            window.beside.open_editor,
            hand_over.open,
            window.switch_help,
            lambda: window.cover("stored"),
            lambda: welcome.plan,
        ),
        "stored": StoredPage(
            run,
            window.settings,
            lambda: director.sharing,
            lambda: window.cover(""),
            director.recovering.drop_gone,
        ),
        "same": hand_over.same,
        "handover": hand_over.page,
        "screen": ScreenPage(director, window.settings),
        "lens": LensPage(director),
        "setup": SetupPage(director, window.fields.setup),
        "came": CamePage(director),
        "choose": ChoosePage(director, window.settings, window.fields.set_target),
        "mark": MarkPage(director, window.settings),
        "practice": PracticePage(director, window.fields.practice),
        "summary": SummaryPage(director, window.close, hand_over.open, lambda: hand_over.plan),
        "help": HelpPage(window.switch_help),
        "leave": LeavePage(director, lambda: window.cover("")),
        "meant": MeantPage(director, lambda: window.cover("")),
        "sound": SoundPage(director, window.settings, window.close_sound),
        "first": FirstPage(
            director,
            lambda: window.cover("stored"),
            Looks(
                window.settings,
                window.appearance.set_text,
                window.appearance.set_colours,
                window.appearance.set_motion,
                window.set_language,
            ),
        ),
    }


def _lay_over(window: Window, name: str) -> bool:
    """Lay a page over the one that is shown; false where it lies there already."""
    if window.covering() == name:
        return False
    window.cover(name)
    return True


def page_now(director: Director) -> str:
    """Name of the page of the director's phase, and of its task."""
    phase, task = director.phase, director.task
    if phase == Phase.first and director.first_step == "sound":
        return "sound"
    if phase == Phase.asking and isinstance(task, AskGate):
        return "gate"
    if phase == Phase.asking and isinstance(task, AskScores | AskSinceLast):
        return "scores"
    if phase == Phase.asking and isinstance(task, AskWell):
        return "well"
    return _PAGE_OF[phase]
