"""What is heard: voice, beats or nothing, and which words when.

Seated, with the eyes open, the person chooses. With the eyes shut, or away from the
screen, sound leads: the voice where there is one, else the beats; never nothing, unless
a helper reads. Otherwise the voice keeps quiet. It never praises.
"""

from __future__ import annotations

from math import ceil, nan

from tracker.exercises.events import Cue
from tracker.plan.asked import Asked as EntryAsked
from tracker.plan.model import Plan
from tracker.practice.tasks import AskWell, DoSet, Over, Prepare, Rest, Task, Voice
from tracker.session.live import LiveState
from tracker.session.stage import Step
from ui import words
from ui.cards import over_keys, place_of
from ui.ports import NoBeats
from ui.session.clock import ClockPart
from ui.session.guiding import Guiding
from ui.session.hands_free import stop_key
from ui.setup.notes_on_wall import setup_key
from ui.sounds.speaking import Grave, Rank, Speaking, rank_of_cue

#: Later than this a cue is not about what is being done any more.
_CUE_FRESH_S = 1.0
#: Slow beats, one a second, lead into a set.
_BEFORE_BPM = 60.0
#: Only in sets so long is it worth a word how much is left (common practice).
_COUNTED_FROM, _HALF_FROM_S = 5, 10.0
#: Half-way is said so soon after, or not at all.
_HALF_WITHIN_S = 2.0
_TWO = 2
#: A question that nobody answers is said again after so long (own choice: twice in the time that
#: an answer is waited for, ``flow.WELL_S``).
_ASKED_AGAIN_S = 25.0


class VoicePart(ClockPart):
    """Decides what is heard; ``sounds`` is what the person chose (``ui.settings.SOUNDS``)."""

    plan: Plan | None = None
    _sounds = "voice"
    _led_by: Voice = ""
    _lack_told = False
    _cue_heard: Cue | None = None
    _half_said = _two_said = False
    #: What speaks the set through that goes on, if it is a guided one.
    guiding: Guiding | None = None
    _speaking: Speaking | None = None
    #: When it was last asked aloud whether all is well.
    _asked_well_s = nan
    #: The set-up's step and the part of it that were announced.
    _setup_said = _hint_said = ""

    # --- what leads ---

    @property
    def sounds(self) -> str:
        """What the person wants to hear in seated work with the eyes open."""
        return self._sounds

    @sounds.setter
    def sounds(self, value: str) -> None:
        self._sounds = value
        if value != "voice":
            self._world.voice.stop()
        if value == "silence":
            self._world.beats.stop()

    @property
    def by_ear(self) -> bool:
        """Whether the entry is led by sound: the eyes are shut, or not on the screen."""
        entry = self.entry
        if entry is None:
            return False
        return entry.eyes == "closed" or entry.posture != "sitting" or entry.wall is not None

    @property
    def led(self) -> str:
        """What leads now: ``voice`` (with beats), ``beats`` or ``silence``."""
        if self.entry is not None and self._led_by == "reader":
            return "silence"
        wanted = "voice" if self.by_ear else self._sounds
        return "beats" if wanted == "voice" and not self.can_speak else wanted

    @property
    def can_sound(self) -> bool:
        """Whether this computer can play a sound."""
        return not isinstance(self._world.beats, NoBeats)

    @property
    def can_speak(self) -> bool:
        """Whether this computer can speak the words' language."""
        return self._world.voice.usable

    @property
    def voice_lack(self) -> str:
        """Why there is no voice; empty where there is one, and while that is not known."""
        return self._world.voice.lack

    @property
    def read_out(self) -> bool:
        """Whether a screen reader says the words."""
        return self._world.screen_reader.running

    def take_voice_note(self) -> str:
        """Key of what is to be said of a voice that is missing: once, where one is wanted."""
        lack = self.voice_lack
        if not lack or self._lack_told or not (self._sounds == "voice" or self.by_ear):
            return ""
        self._lack_told = True
        return f"voice.lack.{lack}"

    # --- trying it out ---

    def prepare_voice(self) -> None:
        """Look for a voice, for it takes a moment."""
        self._world.voice.prepare()

    def play_test(self, tempo_bpm: float, duration_s: float) -> None:
        """Sound some beats, to hear whether they are heard."""
        self._world.voice.stop()
        self._world.beats.start(tempo_bpm, duration_s)

    def say_test(self) -> None:
        """Speak a line, to hear whether it is heard."""
        self._world.beats.stop()
        self._say((Grave.edge, 0), "say.test", led="voice")

    def tell_still(self) -> None:
        """Say whether drawings hold still from now on."""
        self._say((Grave.note, 0), "figure.stills" if self.still() else "figure.moves")

    # --- the words ---

    def _sound(self, step: Step) -> None:
        if self.led != "silence":
            super()._sound(step)

    def _say(
        self,
        rank: Rank,
        *keys: str,
        of: EntryAsked | None = None,
        led: str = "",
        **values: object,
    ) -> bool:
        """Say the words for some keys, if the voice leads what they are of."""
        if self._speaking is None:
            self._speaking = Speaking(self._world.voice, self._world.screen_reader)
        entry = of or self.entry
        return self._speaking.say(
            rank,
            keys,
            aloud=(led or self.led) == "voice",
            eyes_shut=entry is not None and entry.eyes == "closed",
            **values,
        )

    def _hush(self) -> None:
        """What is being said of a task that is over is broken off; its end is not."""
        if self._speaking is not None:
            self._speaking.hush(Grave.cue)

    def _say_task(self, task: Task) -> None:
        """A page has come: most say nothing."""
        self._hush()
        if isinstance(task, Prepare) and task.asked is not None:
            name = f"exercise.{task.asked.exercise.id}"
            assert self.plan is not None
            place, values = place_of(task.asked, self.plan, task.chair_mm)
            to_stop = stop_key(task.asked)
            keys = [name, place, *([to_stop] if to_stop else [])]
            self._say((Grave.place, 0), *keys, **values)
        elif isinstance(task, Rest):
            self._say((Grave.place, 0), "say.rest")
        elif isinstance(task, Over) and task.ended == "possible_fall":
            # As to who is not at the screen: whatever was chosen.
            assert self.plan is not None
            number = self.plan.emergency_number or ""
            self._say((Grave.fall, 0), *over_keys(task, self.plan), led="voice", number=number)

    def _lead_in(self, entry: EntryAsked | None, left_s: float, *, again: bool = False) -> None:
        """A countdown has begun: slow beats, and how long it is, as the person wants to hear.

        The number stands on the screen as well. ``again``: to a set that goes on after a pause;
        what was said in it is not said twice, or the person changes arms twice.
        """
        if not again:
            self._half_said = self._two_said = False
        if self.led != "silence":
            self._world.beats.start(_BEFORE_BPM, left_s)
        self._hush()
        keys = []
        standing = entry is not None and entry.posture != "sitting"
        if standing:
            keys.append("say.stand_firm")
        # Where the exercise itself tells when to shut them, nothing else does.
        if entry is not None and entry.eyes == "closed" and entry.exercise.eyes != "closed":
            keys.append("say.shut")
        # Three seconds have room for one sentence: the beats say the rest.
        if standing or not keys:
            keys.append("say.soon")
        self._say((Grave.edge, 0), *keys, seconds=words.number(ceil(left_s)))

    def _say_begin(self) -> None:
        self._say((Grave.edge, 0), "say.begin")

    def _say_end(self, key: str, entry: EntryAsked, led: str) -> None:
        """A set is over, or stopped (``key``); ``led`` is what has led it."""
        keys = [key]
        if entry.eyes == "closed":
            keys.append("say.open_eyes")
        if key == "say.unwell":
            keys[0] = "say.stopped"
            keys.append("say.sit")
        elif entry.posture != "sitting":
            keys.append("say.come")
        grave = Grave.edge if key == "say.end" else Grave.stop
        self._say((grave, 0), *keys, of=entry, led=led)

    def _say_fall(self, entry: EntryAsked | None) -> None:
        """Whatever was chosen: a person on the floor does not see the screen."""
        self._asked_well_s = self.now_s
        self._say((Grave.fall, 0), "cue.possible_fall", "say.fall", of=entry, led="voice")

    def _say_fall_again(self) -> None:
        """Once more while nobody answers: who is dazed may not have heard it."""
        late = self.now_s - self._asked_well_s >= _ASKED_AGAIN_S
        if isinstance(self.task, AskWell) and late:
            self._say_fall(None)

    def _say_of_set(self, entry: EntryAsked, live: LiveState | None, done: int) -> None:
        """While a set goes on: its cue, and once how much is left."""
        self._say_cue(live)
        if self.guiding is not None:
            self._say_guide(self.guiding)
        if entry.seconds is not None:
            past_s = self.set_ran_s - entry.seconds / 2
            if not self._half_said and entry.seconds >= _HALF_FROM_S and past_s >= 0:
                self._half_said = past_s > _HALF_WITHIN_S or self._say((Grave.note, 0), "say.half")
        elif entry.exercise.counted:
            if "arm" in entry.exercise.not_measured:
                self._say_other_arm(entry.repetitions, done)
            self._say_two_left(entry.repetitions, done)

    def _say_guide(self, guiding: Guiding) -> None:
        """The line of a guided exercise, when it is its time and nothing graver is being said."""
        voice, read = self._world.voice, self.led != "voice" or self.read_out
        guiding.take(self.set_ran_s, speaking=not read and voice.speaking)
        if guiding.to_say and (self._say((Grave.note, 0), guiding.key) or self.led != "voice"):
            guiding.said(self.set_ran_s, spoken=not read)

    def guide(self, *, again: bool) -> None:
        """The helper asks for the line of a guided exercise once more, or for the next one."""
        if self.guiding is None:
            return
        if self._speaking is not None:
            self._speaking.hush(Grave.note)
        if again:
            self.guiding.again()
        else:
            self.guiding.go_on()

    def _tell_cue(self, cue: Cue) -> bool:
        """Whether the person gets to know of a cue now: from the page, or with shut eyes by voice.

        Who reads aloud to them has the page. A possible fall is asked about in any case.
        """
        if cue.code == "possible_fall":
            return True
        if self.conductor is not None and not isinstance(self.task, DoSet):
            # What still lasts as its set is over stands on no page any more.
            return False
        if not self._by_voice_alone:
            return True
        return self._say(rank_of_cue(cue.code), f"cue.{cue.code}")

    @property
    def _by_voice_alone(self) -> bool:
        """Whether the person can't see what is on the page, and nobody reads it to them.

        Their eyes are shut, or they are not before the screen: they stand, or look at a wall.
        """
        return self.entry is not None and self.by_ear and self._led_by != "reader"

    def _say_cue(self, live: LiveState | None) -> None:
        cue = None if live is None or self._by_voice_alone else live.cue
        if cue is not None and cue is not self._cue_heard:
            self._cue_heard = cue
            fresh = self.now_s - cue.said_at_s <= _CUE_FRESH_S
            if fresh and words.has(f"cue.{cue.code}"):
                self._say(rank_of_cue(cue.code), f"cue.{cue.code}")

    def _say_other_arm(self, goal: int | None, done: int) -> None:
        """Half of it is done with each arm, and who looks at the floor does not see the count."""
        if goal is None or self._half_said or done >= goal or done != (goal + 1) // 2:
            return
        self._half_said = self._say((Grave.note, 0), "say.other_arm")

    def _say_two_left(self, goal: int | None, done: int) -> None:
        if goal is None or goal < _COUNTED_FROM or goal - done != _TWO or self._two_said:
            return
        self._two_said = self._say((Grave.note, 0), "say.two_left")

    # --- the set-up, and an exercise outside a plan ---

    def _ask_setup(self) -> None:
        self._setup_said = self._hint_said = ""
        super()._ask_setup()

    def _say_setup(self) -> None:
        """What to do comes before each kind of step, and where to turn while one turns."""
        if self.clip is not None or self.trouble is not None:
            return
        asked = self.asked
        coming = asked or self.next_asked
        if coming is None:
            return
        key = setup_key(coming.step)
        if key != self._setup_said and words.has(key):
            self._setup_said, self._hint_said = key, ""
            self._say((Grave.cue, 0), key)
        hint = self.setup_hint
        if hint and hint != self._hint_said:
            self._hint_said = hint
            self._say((Grave.note, 0), hint)

    def _say_alone(self, live: LiveState | None) -> None:
        """While an exercise outside a plan goes on: its cue, and once how much is left."""
        self._say_cue(live)
        if live is not None:
            self._say_two_left(live.goal_repetitions, live.repetitions)

    @property
    def set_ran_s(self) -> float:
        """How long the set has gone on, pauses left out."""
        raise NotImplementedError
