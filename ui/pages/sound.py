"""What one wants to hear: voice and beats, beats only, or nothing."""

from __future__ import annotations

from collections.abc import Callable

from ui import words
from ui.pages.first import leave_button, progress_words
from ui.pages.task import TEST_BPM, TEST_S
from ui.session.flow import Director
from ui.settings import SOUNDS, Settings
from ui.widgets.basic import Button, Page, Rule, Words, relabel
from ui.widgets.choices import Choices


class SoundPage(Page):
    """The choice, what it is for, and a way to hear it; it holds at once.

    Parameters
    ----------
    director, settings
        Whose sounds they are, and where the choice is kept.
    leave
        Goes back to where one came from.
    """

    def __init__(self, director: Director, settings: Settings, leave: Callable[[], object]) -> None:
        super().__init__()
        self._director, self._settings = director, settings
        self.choice = Choices(words.say("sound.title"))
        self.choice.fill([words.say(f"sound.{s}") for s in SOUNDS], SOUNDS.index(settings.sounds))
        self.choice.chosen.connect(self._choose)
        self.lack = Words(bold=True)
        self._lack = Rule(self.lack)
        self.progress = Words(progress_words("sound"), soft=True)
        self.body.addWidget(self.progress)
        self.body.addWidget(Words(words.say("sound.title"), "title"))
        self.body.addWidget(self._lack)
        self.body.addWidget(self.choice)
        self.body.addWidget(Words(words.say("sound.seated")))
        self.always = Words()
        self.body.addWidget(self.always)
        self.fall = Words(words.say("sound.fall"))
        self.body.addWidget(self.fall)
        self.body.addStretch(1)
        self.back = Button(words.say("sound.back"), "main")
        self.back.clicked.connect(leave)
        self.hear = Button(words.say("sound.try"))
        self.hear.clicked.connect(self._hear)
        self.before = Button(words.say("first.before"))
        self.before.clicked.connect(director.first_back)
        self.skip = leave_button(director)
        for button in (self.back, self.hear, self.before, self.skip):
            self.buttons.addWidget(button)
        self.buttons.set_apart(self.skip)
        for part in (self.progress, self.before, self.skip):
            part.hide()

    def enter(self) -> None:
        """The page comes to the front; whether there is a voice is looked up now."""
        self._director.prepare_voice()
        self.refresh()
        super().enter()

    def _choose(self, row: int) -> None:
        self._settings.sounds = self._director.sounds = SOUNDS[row]
        self.refresh()

    def _hear(self) -> None:
        director = self._director
        if director.sounds == "voice" and (director.can_speak or director.read_out):
            director.say_test()
        else:
            director.play_test(TEST_BPM, TEST_S)

    def refresh(self) -> None:
        """What is lacking, and whether there is something to hear."""
        director = self._director
        step = director.first_step == "sound"
        for part in (self.progress, self.before, self.skip):
            if part.isHidden() == step:
                part.setVisible(step)
        relabel(self.back, words.say("first.next" if step else "sound.back"))
        lacking = director.voice_lack
        key = f"voice.lack.{lacking}" if lacking else "sound.reader" if director.read_out else ""
        if not director.can_sound:
            key = "sound.none"
        if bool(key) == self._lack.isHidden():
            self._lack.setVisible(bool(key))
        if self.fall.isHidden() == director.can_speak:
            self.fall.setVisible(director.can_speak)
        always = words.say("sound.always" if director.can_sound else "sound.always.none")
        if self.always.text() != always:
            self.always.setText(always)
        text = words.say(key) if key else ""
        if self.lack.text() != text:
            self.lack.setText(text)
        can = director.can_sound or director.read_out
        self.hear.setEnabled(can and director.sounds != "silence")
