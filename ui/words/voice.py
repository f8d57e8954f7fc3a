"""The words that are spoken, and those about the voice.

Keys: ``say.KEY`` (spoken in a session; cues are spoken as they are shown), ``voice.KEY``
(what is lacking), ``sound.KEY`` (the page where one chooses).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

VOICE_WORDS: dict[str, object] = {
    # The code of the language that these words are in: a voice for it is looked for.
    "voice.language": QT_TRANSLATE_NOOP("turnpost", "en"),
    "voice.lack.no_engine": QT_TRANSLATE_NOOP(
        "turnpost",
        "This computer has no voice. Beats and the words on the screen lead you.",
    ),
    "voice.lack.no_language": QT_TRANSLATE_NOOP(
        "turnpost",
        "This computer has no voice for your language. Beats and the words on the screen lead you.",
    ),
    "voice.lack.failed": QT_TRANSLATE_NOOP(
        "turnpost",
        "The voice can't be heard any more. Beats and the words on the screen lead you.",
    ),
    "say.test": QT_TRANSLATE_NOOP("turnpost", "This is how I speak to you while you practise."),
    "say.soon": QT_TRANSLATE_NOOP("turnpost", "It begins in {seconds} seconds."),
    "say.shut": QT_TRANSLATE_NOOP("turnpost", "Shut your eyes."),
    "say.stand_firm": QT_TRANSLATE_NOOP("turnpost", "Stand firm."),
    "say.begin": QT_TRANSLATE_NOOP("turnpost", "Begin now."),
    "say.two_left": QT_TRANSLATE_NOOP("turnpost", "Only two more."),
    "say.half": QT_TRANSLATE_NOOP("turnpost", "Half the time is over."),
    "say.other_arm": QT_TRANSLATE_NOOP("turnpost", "That is half. Now with the other arm."),
    "say.end": QT_TRANSLATE_NOOP("turnpost", "And stop. This one is done."),
    "say.open_eyes": QT_TRANSLATE_NOOP("turnpost", "Open your eyes."),
    "say.come": QT_TRANSLATE_NOOP("turnpost", "Come to the screen once you feel steady."),
    "say.stopped": QT_TRANSLATE_NOOP("turnpost", "Stopped."),
    "say.double": QT_TRANSLATE_NOOP("turnpost", "Stop here. Move your finger back out."),
    "say.sit": QT_TRANSLATE_NOOP("turnpost", "Sit down if you can."),
    "say.rest": QT_TRANSLATE_NOOP("turnpost", "Now rest for a while."),
    "say.fall": QT_TRANSLATE_NOOP(
        "turnpost", "Nobody has been called. If you are hurt, call for help."
    ),
    "say.out_of_sight": QT_TRANSLATE_NOOP(
        "turnpost",
        "I can't see you. Take your time. When you are steady, sit down on your chair, so that I "
        "see you again.",
    ),
    "ask.sound.voice": QT_TRANSLATE_NOOP("turnpost", "Hear the voice"),
    "ask.place.by_voice": QT_TRANSLATE_NOOP(
        "turnpost", "A voice tells you when to begin and when it is over. Slow beats lead you in."
    ),
    "ask.place.not_silent": QT_TRANSLATE_NOOP(
        "turnpost", "You chose to hear nothing. This one is led by sound all the same."
    ),
    "sound.open": QT_TRANSLATE_NOOP("turnpost", "Sound: voice, beats or none (Ctrl+M)"),
    "sound.title": QT_TRANSLATE_NOOP("turnpost", "What do you want to hear?"),
    "sound.voice": QT_TRANSLATE_NOOP("turnpost", "Voice and beats"),
    "sound.beats": QT_TRANSLATE_NOOP("turnpost", "Beats only"),
    "sound.silence": QT_TRANSLATE_NOOP("turnpost", "Nothing"),
    "sound.seated": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your choice holds while you sit with your eyes open. What is said also stands on the "
        "screen.",
    ),
    "sound.always": QT_TRANSLATE_NOOP(
        "turnpost",
        "With your eyes shut, or standing, sound leads you whatever you choose here.",
    ),
    "sound.always.none": QT_TRANSLATE_NOOP(
        "turnpost",
        "Without sound, practice with your eyes shut or standing needs somebody who reads to you.",
    ),
    "sound.fall": QT_TRANSLATE_NOOP(
        "turnpost", "After a sudden drop of your head the voice always asks how you are."
    ),
    "sound.reader": QT_TRANSLATE_NOOP(
        "turnpost",
        "A screen reader seems to be on. It says the words, and the voice is quiet unless your "
        "eyes are shut.",
    ),
    "sound.none": QT_TRANSLATE_NOOP("turnpost", "This computer can't play a sound."),
    "sound.try": QT_TRANSLATE_NOOP("turnpost", "Let me hear it"),
    "sound.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
}
