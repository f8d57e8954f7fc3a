"""The patient's words for each exercise: its name, how it is done, what to take care of.

Keys: ``exercise.ID``, ``exercise.ID.how``, and for the keys of the catalogue
``care.KEY`` (cautions) and ``unmeasured.KEY`` (what the camera doesn't measure).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

EXERCISE_WORDS: dict[str, object] = {
    "exercise.eyes-up-down": QT_TRANSLATE_NOOP(
        "turnpost", "Move your eyes up and down, head still"
    ),
    "exercise.eyes-up-down.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your eyes jump to the target at each beat, a short way at first. Your head stays still.",
    ),
    "exercise.eyes-side-to-side": QT_TRANSLATE_NOOP("turnpost", "Move your eyes, head still"),
    "exercise.eyes-side-to-side.how": QT_TRANSLATE_NOOP(
        "turnpost", "Your eyes jump to the target at each beat. Your head stays still."
    ),
    "exercise.nods-on-target": QT_TRANSLATE_NOOP("turnpost", "Nod, eyes on the target"),
    "exercise.nods-on-target.how": QT_TRANSLATE_NOOP(
        "turnpost", "Nod up and down, one nod a beat. Your eyes stay on the target."
    ),
    "exercise.turns-on-target": QT_TRANSLATE_NOOP("turnpost", "Turn your head, eyes on the target"),
    "exercise.turns-on-target.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turn your head from side to side, one turn a beat. Your eyes stay on the target.",
    ),
    "exercise.nods-together": QT_TRANSLATE_NOOP("turnpost", "Nod, head and eyes together"),
    "exercise.nods-together.how": QT_TRANSLATE_NOOP(
        "turnpost", "Look up with head and eyes, then look down. Move once a beat."
    ),
    "exercise.turns-together": QT_TRANSLATE_NOOP("turnpost", "Turn head and eyes together"),
    "exercise.turns-together.how": QT_TRANSLATE_NOOP(
        "turnpost", "Look to the right with head and eyes, then to the left. Move once a beat."
    ),
    "exercise.near-far": QT_TRANSLATE_NOOP("turnpost", "Fingertip near and far"),
    "exercise.near-far.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold one finger up at arm's length, just under the camera. Bring it slowly to 30 cm from "
        "your eyes, then back. Keep your eyes on the tip, your head still.",
    ),
    "exercise.shoulders-back": QT_TRANSLATE_NOOP("turnpost", "Roll your shoulders back"),
    "exercise.shoulders-back.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level. "
        "Keep both shoulders in the picture.",
    ),
    "exercise.shoulders-forward": QT_TRANSLATE_NOOP("turnpost", "Roll your shoulders forward"),
    "exercise.shoulders-forward.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head "
        "level. Keep both shoulders in the picture.",
    ),
    "exercise.floor-reach": QT_TRANSLATE_NOOP("turnpost", "Pick up from the floor"),
    "exercise.floor-reach.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Bend and lay a small thing on the floor. Sit up tall. Bend and pick it up. Sit up "
        "tall. Your eyes stay on it. Change arms half way through.",
    ),
    "exercise.sit-to-stand": QT_TRANSLATE_NOOP("turnpost", "Stand up and sit down"),
    "exercise.sit-to-stand.how": QT_TRANSLATE_NOOP(
        "turnpost", "Stand up from your chair, then sit down again. You may use your hands."
    ),
    "exercise.hand-toss": QT_TRANSLATE_NOOP("turnpost", "Toss from hand to hand"),
    "exercise.hand-toss.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your "
        "eyes and head go with it. If it drops, let it lie and take a new one. Stay far back, so "
        "that both hands stay in the picture.",
    ),
    "exercise.stand": QT_TRANSLATE_NOOP("turnpost", "Stand in the corner"),
    "exercise.stand.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand with your back to the corner, feet as wide as your shoulders. Let your arms "
        "hang. Chin up. Look at a mark on the wall, as high as your eyes.",
    ),
    "exercise.ankle-sway": QT_TRANSLATE_NOOP("turnpost", "Sway from toes to heels"),
    "exercise.ankle-sway.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at "
        "the hips. Look straight ahead.",
    ),
    "exercise.stand-head-shake": QT_TRANSLATE_NOOP("turnpost", "Stand and turn your head"),
    "exercise.stand-head-shake.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand with your feet as wide as your hips. Turn your head from side to side "
        "with the beat.",
    ),
    "exercise.weight-shift": QT_TRANSLATE_NOOP("turnpost", "Shift from foot to foot"),
    "exercise.weight-shift.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand tall. Put your weight on one foot, then on the other. Go slowly.",
    ),
    "exercise.walk": QT_TRANSLATE_NOOP("turnpost", "Walk forward and backward"),
    "exercise.walk.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Walk ten steps forward, then ten steps backward. Your helper walks with you. Count your "
        "own steps.",
    ),
    "exercise.stairs": QT_TRANSLATE_NOOP("turnpost", "Up and down the stairs"),
    "exercise.stairs.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Go up one step and down again. Hold the rail. Your helper stays close. Count for "
        "yourself.",
    ),
    "exercise.partner-turns": QT_TRANSLATE_NOOP("turnpost", "Turn with a partner"),
    "exercise.partner-turns.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turn to one side and take the ball from your partner. Turn to the other side and "
        "give it back.",
    ),
    "exercise.turns-x2": QT_TRANSLATE_NOOP("turnpost", "Head and target move apart"),
    "exercise.turns-x2.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turn your head one way while the target goes the other way. Your eyes stay on the "
        "target. Turn as far as the target goes, and no farther.",
    ),
    "exercise.nods-x2": QT_TRANSLATE_NOOP("turnpost", "Nod while the target moves"),
    "exercise.nods-x2.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Nod up while the target goes down, then the other way round. Your eyes stay on the "
        "target. Nod as far as the target goes, and no farther.",
    ),
    "exercise.eyes-then-head": QT_TRANSLATE_NOOP("turnpost", "Eyes first, then head"),
    "exercise.eyes-then-head.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Look at one mark with your eyes. Then turn your head to it. Now look at the other "
        "mark, and turn again.",
    ),
    "exercise.remembered-target": QT_TRANSLATE_NOOP("turnpost", "Turn with your eyes shut"),
    "exercise.remembered-target.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Look at the target. Shut your eyes and turn your head. Keep your eyes where the "
        "target was. Open them and see if you are right.",
    ),
    "exercise.follow-slowly": QT_TRANSLATE_NOOP("turnpost", "Follow the target with your eyes"),
    "exercise.follow-slowly.how": QT_TRANSLATE_NOOP(
        "turnpost", "The target moves slowly. Your eyes go with it. Your head stays still."
    ),
    "exercise.thumb-together": QT_TRANSLATE_NOOP("turnpost", "Follow your thumb, head too"),
    "exercise.thumb-together.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold your thumb out in front of you. Move it from side to side. Your head and eyes "
        "go with it.",
    ),
    "exercise.head-tilts": QT_TRANSLATE_NOOP("turnpost", "Tilt your head"),
    "exercise.head-tilts.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Tip your ear to your right shoulder, then to your left. Go slowly. Look straight ahead.",
    ),
    "exercise.near-hold": QT_TRANSLATE_NOOP("turnpost", "Hold your eyes on a near tip"),
    "exercise.near-hold.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold one finger up where you see just one tip. Keep your eyes on it. Your head stays "
        "still.",
    ),
    "exercise.moving-background": QT_TRANSLATE_NOOP("turnpost", "Look past a moving scene"),
    "exercise.moving-background.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Look at the mark. It stays where it is. Soft stripes behind it move slowly. Your head "
        "stays still.",
    ),
    "exercise.stand-tandem": QT_TRANSLATE_NOOP("turnpost", "Stand heel to toe"),
    "exercise.stand-tandem.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Put one foot right in front of the other. Stand still and look at a mark on the wall, "
        "as high as your eyes.",
    ),
    "exercise.stand-one-leg": QT_TRANSLATE_NOOP("turnpost", "Stand on one leg"),
    "exercise.stand-one-leg.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Lift one foot a little. Stand still and look at a mark on the wall, as high as your "
        "eyes. Then change legs.",
    ),
    "exercise.chair-stands-five": QT_TRANSLATE_NOOP("turnpost", "Five stands from a chair"),
    "exercise.chair-stands-five.how": QT_TRANSLATE_NOOP(
        "turnpost", "Cross your arms. Stand up and sit down, as fast as is safe."
    ),
    "exercise.chair-stands-30-s": QT_TRANSLATE_NOOP("turnpost", "Stands for half a minute"),
    "exercise.chair-stands-30-s.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Cross your arms. Stand up and sit down as often as is safe, until you hear the end.",
    ),
    "care.settle": QT_TRANSLATE_NOOP(
        "turnpost", "Some dizziness is expected. Stop if it gets strong or does not go away."
    ),
    "care.neck": QT_TRANSLATE_NOOP(
        "turnpost", "Stay where your neck feels fine. Stop if your neck hurts or your arm tingles."
    ),
    "care.blur": QT_TRANSLATE_NOOP("turnpost", "If the target blurs or jumps, go slower."),
    "care.double": QT_TRANSLATE_NOOP(
        "turnpost", "If you see two tips, stop there. Move your finger back out."
    ),
    "care.shoulder": QT_TRANSLATE_NOOP("turnpost", "It must not hurt. Start small."),
    "care.bend": QT_TRANSLATE_NOOP("turnpost", "If the room spins, hold on, sit still, and stop."),
    "care.slide": QT_TRANSLATE_NOOP(
        "turnpost", "Use a firm chair with no wheels. Keep both feet flat."
    ),
    "care.chair": QT_TRANSLATE_NOOP(
        "turnpost", "Put the chair against a wall. It must not have wheels."
    ),
    "care.toss": QT_TRANSLATE_NOOP(
        "turnpost", "Use something soft. Leave it on the floor if it drops."
    ),
    "care.stand": QT_TRANSLATE_NOOP(
        "turnpost",
        "Have the corner behind you and a firm chair or a helper in front. Wear flat shoes or "
        "go barefoot.",
    ),
    "care.steady": QT_TRANSLATE_NOOP(
        "turnpost", "A little sway is fine. Hold on as soon as you need to."
    ),
    "care.soft": QT_TRANSLATE_NOOP(
        "turnpost", "Your helper stays within reach of you. The mat must not slip."
    ),
    "care.walk": QT_TRANSLATE_NOOP(
        "turnpost",
        "Clear the floor. Turn on the light. Your helper is at your side, and behind you when "
        "you walk backward.",
    ),
    "care.stairs": QT_TRANSLATE_NOOP("turnpost", "Keep one hand on the rail and your eyes open."),
    "care.partner": QT_TRANSLATE_NOOP("turnpost", "Hand the ball over. Do not throw it."),
    "care.flashes": QT_TRANSLATE_NOOP(
        "turnpost",
        "Have moving or flashing scenes ever made you ill, or brought on a fit (seizure) or a "
        "migraine? Then do not do this.",
    ),
    "unmeasured.count": QT_TRANSLATE_NOOP(
        "turnpost", "The camera does not count this. Count for yourself."
    ),
    "unmeasured.everything": QT_TRANSLATE_NOOP(
        "turnpost", "The camera measures nothing here. You are led by voice."
    ),
    "unmeasured.reach_vertical": QT_TRANSLATE_NOOP("turnpost", "how far your eyes go up and down"),
    "unmeasured.gaze_short": QT_TRANSLATE_NOOP("turnpost", "eyes that stop short of the target"),
    "unmeasured.peak_speed_of_eyes": QT_TRANSLATE_NOOP("turnpost", "how fast your eyes jump"),
    "unmeasured.blur_of_target": QT_TRANSLATE_NOOP("turnpost", "how clear the target is to you"),
    "unmeasured.hand_target": QT_TRANSLATE_NOOP("turnpost", "a target in your hand"),
    "unmeasured.gaze_eyes_shut": QT_TRANSLATE_NOOP(
        "turnpost", "where your eyes point when they are shut"
    ),
    "unmeasured.eyes_opened": QT_TRANSLATE_NOOP("turnpost", "the moment your eyes open"),
    "unmeasured.small_jumps": QT_TRANSLATE_NOOP("turnpost", "small jumps of your eyes"),
    "unmeasured.double_image": QT_TRANSLATE_NOOP("turnpost", "if you see two tips"),
    "unmeasured.vergence": QT_TRANSLATE_NOOP("turnpost", "how far your eyes turn in"),
    "unmeasured.hand_place": QT_TRANSLATE_NOOP("turnpost", "how near your finger really comes"),
    "unmeasured.hand": QT_TRANSLATE_NOOP("turnpost", "your hand"),
    "unmeasured.hands": QT_TRANSLATE_NOOP("turnpost", "your hands"),
    "unmeasured.arm": QT_TRANSLATE_NOOP("turnpost", "which arm you use, if it is out of sight"),
    "unmeasured.shoulder_height": QT_TRANSLATE_NOOP("turnpost", "how high your shoulders go"),
    "unmeasured.direction": QT_TRANSLATE_NOOP("turnpost", "which way your shoulders roll"),
    "unmeasured.gaze_bent": QT_TRANSLATE_NOOP("turnpost", "your eyes while you bend"),
    "unmeasured.object": QT_TRANSLATE_NOOP("turnpost", "the ball itself"),
    "unmeasured.eyes_follow": QT_TRANSLATE_NOOP("turnpost", "if your eyes follow the ball"),
    "unmeasured.feet": QT_TRANSLATE_NOOP("turnpost", "your feet"),
    "unmeasured.steadied": QT_TRANSLATE_NOOP("turnpost", "if you hold on"),
    "unmeasured.hip_bend": QT_TRANSLATE_NOOP("turnpost", "if you bend at the hips"),
    "unmeasured.chair": QT_TRANSLATE_NOOP("turnpost", "how high your chair is"),
}
