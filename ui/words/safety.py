"""The words around the exercises: the questions before a session, and why something waits.

Keys: ``gate.KEY`` (questions), ``gate.outcome.KEY`` (what follows), ``meant.KEY`` (whether one
really feels unwell), ``refused.KEY`` (why an entry isn't offered), ``symptoms.KEY`` (what follows
after a set), ``score.KEY`` (the scores), ``lost.KEY`` (a camera that goes in the middle of a set
or of the set-up), ``moved.KEY`` (a window that is moved there).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

SAFETY_WORDS: dict[str, object] = {
    "lost.paused": QT_TRANSLATE_NOOP("turnpost", "This is paused."),
    "lost.figure": QT_TRANSLATE_NOOP("turnpost", "paused"),
    "lost.hold": QT_TRANSLATE_NOOP("turnpost", "Take hold of something firm, or sit down."),
    "lost.back": QT_TRANSLATE_NOOP(
        "turnpost", "The camera is back. Go on when you are ready: press Space."
    ),
    "lost.count": QT_TRANSLATE_NOOP(
        "turnpost", "Go on and count for yourself. Press Done when you have done them all."
    ),
    "lost.again": QT_TRANSLATE_NOOP(
        "turnpost", "The camera is back. Keep counting for yourself, then press Done."
    ),
    "lost.setup": QT_TRANSLATE_NOOP(
        "turnpost", "The set-up waits. It begins again when the camera is back."
    ),
    "lost.setup_again": QT_TRANSLATE_NOOP(
        "turnpost", "The camera is back. The set-up begins again."
    ),
    "moved.set": QT_TRANSLATE_NOOP(
        "turnpost", "The window was moved, so this is paused. Go on with Space."
    ),
    "moved.setup": QT_TRANSLATE_NOOP("turnpost", "The window was moved, and the target with it."),
    "moved.setup_again": QT_TRANSLATE_NOOP("turnpost", "The set-up begins again in a moment."),
    "trouble.silent": QT_TRANSLATE_NOOP("turnpost", "No picture comes from the camera."),
    "trouble.silent.do": QT_TRANSLATE_NOOP(
        "turnpost", "Wait a moment: Turnpost tries again by itself."
    ),
    "trouble.restarting": QT_TRANSLATE_NOOP("turnpost", "It starts to measure again."),
    "trouble.restarting.do": QT_TRANSLATE_NOOP("turnpost", "Wait a moment. You need do nothing."),
    "gate.ask": QT_TRANSLATE_NOOP("turnpost", "Is any of this new since last time?"),
    "gate.ask_first": QT_TRANSLATE_NOOP(
        "turnpost", "Did any of this start or happen not long ago?"
    ),
    "gate.ask_unwell": QT_TRANSLATE_NOOP("turnpost", "Is any of this new just now?"),
    "meant.title": QT_TRANSLATE_NOOP("turnpost", "Do you feel unwell?"),
    "meant.how": QT_TRANSLATE_NOOP(
        "turnpost", "If so, safety questions come now, and that is all practice for today."
    ),
    "meant.back": QT_TRANSLATE_NOOP("turnpost", "Pressed by mistake: go back"),
    "gate.how": QT_TRANSLATE_NOOP(
        "turnpost", "Mark what is new. If nothing is, press “None of these”."
    ),
    "gate.none": QT_TRANSLATE_NOOP("turnpost", "None of these"),
    "gate.some": QT_TRANSLATE_NOOP("turnpost", "Yes, what I marked"),
    "gate.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    "gate.severe_headache": QT_TRANSLATE_NOOP("turnpost", "A sudden bad headache"),
    "gate.double_vision": QT_TRANSLATE_NOOP("turnpost", "Seeing double"),
    "gate.slurred_speech": QT_TRANSLATE_NOOP("turnpost", "Trouble with speech"),
    "gate.weak_or_numb": QT_TRANSLATE_NOOP("turnpost", "A weak or numb face, arm or leg"),
    "gate.cannot_stand": QT_TRANSLATE_NOOP("turnpost", "You can't stand or walk"),
    "gate.blackout": QT_TRANSLATE_NOOP("turnpost", "You blacked out"),
    "gate.chest_pain": QT_TRANSLATE_NOOP("turnpost", "Pain in your chest"),
    "gate.hearing_loss": QT_TRANSLATE_NOOP("turnpost", "You suddenly hear less"),
    "gate.neck_pain": QT_TRANSLATE_NOOP("turnpost", "Your neck hurts"),
    "gate.tingling_arm": QT_TRANSLATE_NOOP("turnpost", "Your arm tingles"),
    "gate.fall": QT_TRANSLATE_NOOP("turnpost", "You had a fall"),
    "gate.unlike_usual": QT_TRANSLATE_NOOP("turnpost", "A dizzy spell not like the usual ones"),
    "gate.positional_spin": QT_TRANSLATE_NOOP(
        "turnpost", "A short spin when you bend, look up or tilt your head"
    ),
    "gate.outcome.emergency": QT_TRANSLATE_NOOP(
        "turnpost", "Call for emergency help now: {number}. Do not practise today."
    ),
    "gate.outcome.emergency_no_number": QT_TRANSLATE_NOOP(
        "turnpost", "Call for emergency help now. Do not practise today."
    ),
    "gate.outcome.call_therapist": QT_TRANSLATE_NOOP(
        "turnpost", "Do not practise today. Call your therapist first."
    ),
    "gate.outcome.sit_and_stop": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold on and sit still until it stops. That is all for today. "
        "Your therapist sees this first when you hand over your sessions.",
    ),
    "gate.outcome.seated_only": QT_TRANSLATE_NOOP("turnpost", "For now you practise sitting down."),
    "refused.no_session": QT_TRANSLATE_NOOP("turnpost", "There is no practice today."),
    "refused.locked": QT_TRANSLATE_NOOP("turnpost", "This one comes later."),
    "refused.not_cleared": QT_TRANSLATE_NOOP(
        "turnpost", "Your therapist has not opened this one yet."
    ),
    "refused.saw_double": QT_TRANSLATE_NOOP(
        "turnpost", "You saw two here today. That is enough of it for one day."
    ),
    "refused.no_start_score": QT_TRANSLATE_NOOP("turnpost", "First say how dizzy you are now."),
    "refused.high_start": QT_TRANSLATE_NOOP(
        "turnpost", "You feel dizzy today, so you stay on your chair."
    ),
    "refused.no_voice": QT_TRANSLATE_NOOP(
        "turnpost",
        "You need to hear the voice for this, or a helper who reads to you. Turn on the sound.",
    ),
    "refused.no_helper": QT_TRANSLATE_NOOP("turnpost", "A helper has to stand next to you."),
    "refused.support_not_confirmed": QT_TRANSLATE_NOOP(
        "turnpost", "First say that you have something or someone to hold on to."
    ),
    "refused.moving_target": QT_TRANSLATE_NOOP(
        "turnpost", "The screen can show this one only while you sit in front of it."
    ),
    "refused.still_screen": QT_TRANSLATE_NOOP(
        "turnpost", "You have asked for a screen on which nothing moves."
    ),
    "refused.small_screen": QT_TRANSLATE_NOOP(
        "turnpost",
        "The target has too little room to move here. It needs a larger window, or you a "
        "little closer.",
    ),
    "refused.no_marks": QT_TRANSLATE_NOOP("turnpost", "There are no notes on the wall for it."),
    "refused.not_in_place": QT_TRANSLATE_NOOP("turnpost", "You left this one out."),
    "refused.no_camera": QT_TRANSLATE_NOOP(
        "turnpost", "You left this one out, as no camera could be used."
    ),
    "refused.session_ended": QT_TRANSLATE_NOOP("turnpost", "You stopped before this one."),
    "symptoms.score_above": QT_TRANSLATE_NOOP(
        "turnpost", "That was a lot. It is enough for today."
    ),
    "symptoms.not_settled": QT_TRANSLATE_NOOP(
        "turnpost", "It takes long to settle. It is enough for today."
    ),
    "symptoms.settling": QT_TRANSLATE_NOOP("turnpost", "Rest until you feel as usual."),
    "symptoms.not_answered": QT_TRANSLATE_NOOP("turnpost", "How dizzy are you now?"),
    "score.dizziness": QT_TRANSLATE_NOOP("turnpost", "How dizzy are you now?"),
    "score.nausea": QT_TRANSLATE_NOOP("turnpost", "How sick do you feel now?"),
    "score.unsteadiness": QT_TRANSLATE_NOOP("turnpost", "How unsteady do you feel now?"),
    "score.least": QT_TRANSLATE_NOOP("turnpost", "0: not at all"),
    "score.most": QT_TRANSLATE_NOOP("turnpost", "10: it can't get worse"),
    "score.how": QT_TRANSLATE_NOOP(
        "turnpost", "Press a number, or use the arrow keys. For ten press 1, then 0."
    ),
    "score.value": QT_TRANSLATE_NOOP("turnpost", "{value} of 10"),
    "score.done": QT_TRANSLATE_NOOP("turnpost", "Go on"),
}
