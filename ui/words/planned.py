"""The words of a planned session, beside the exercises and the safety questions.

Keys: ``plan.KEY`` (opening and offering a plan), ``ask.KEY`` (what is asked and its
answers), ``far.KEY`` (what a large figure is), ``over.KEY`` (why a session ended).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

PLANNED_WORDS: dict[str, object] = {
    "plan.start": QT_TRANSLATE_NOOP("turnpost", "Practise my plan"),
    "plan.report": QT_TRANSLATE_NOOP("turnpost", "I practised without the laptop"),
    "plan.noted_today": QT_TRANSLATE_NOOP(
        "turnpost", "Already noted today, at {time}. Note it again only if you practised again."
    ),
    "plan.report_again": QT_TRANSLATE_NOOP("turnpost", "I practised once more"),
    "plan.open": QT_TRANSLATE_NOOP("turnpost", "Open a plan"),
    "plan.files": QT_TRANSLATE_NOOP("turnpost", "Plans (*.json)"),
    "plan.named": QT_TRANSLATE_NOOP("turnpost", "Your plan. Exercises: {entries}."),
    "plan.bad": QT_TRANSLATE_NOOP("turnpost", "This plan can't be used. {why}"),
    "plan.starter": QT_TRANSLATE_NOOP("turnpost", "Seated starter"),
    "plan.starter_named": QT_TRANSLATE_NOOP(
        "turnpost",
        "The seated starter: {entries} exercises on a chair. Do it only if your therapist has "
        "told you to.",
    ),
    "plan.starter_begin": QT_TRANSLATE_NOOP("turnpost", "Practise the starter"),
    "baseline.next": QT_TRANSLATE_NOOP(
        "turnpost",
        "Baseline: do the next session together with your therapist. Later ones are compared "
        "with it.",
    ),
    "baseline.ask": QT_TRANSLATE_NOOP(
        "turnpost", "Later sessions are compared with this one. Is your therapist with you now?"
    ),
    "baseline.ask.yes": QT_TRANSLATE_NOOP("turnpost", "Yes, we do it together"),
    "baseline.start": QT_TRANSLATE_NOOP("turnpost", "Begin the baseline"),
    "baseline.not": QT_TRANSLATE_NOOP("turnpost", "No baseline today"),
    "baseline.kept": QT_TRANSLATE_NOOP("turnpost", "It is kept as your baseline."),
    "plan.try": QT_TRANSLATE_NOOP("turnpost", "Try one exercise"),
    "glasses.title": QT_TRANSLATE_NOOP("turnpost", "Which glasses do you wear now?"),
    "glasses.none": QT_TRANSLATE_NOOP("turnpost", "None"),
    "glasses.single": QT_TRANSLATE_NOOP("turnpost", "One strength"),
    "glasses.varifocal": QT_TRANSLATE_NOOP("turnpost", "Bi- or varifocal"),
    "eyes.title": QT_TRANSLATE_NOOP("turnpost", "Which eye shall be watched?"),
    "eyes.both": QT_TRANSLATE_NOOP("turnpost", "Both"),
    "eyes.left": QT_TRANSLATE_NOOP("turnpost", "My left"),
    "eyes.right": QT_TRANSLATE_NOOP("turnpost", "My right"),
    "camera.kept": QT_TRANSLATE_NOOP("turnpost", "Use the last set-up"),
    "ask.yes": QT_TRANSLATE_NOOP("turnpost", "Yes"),
    "ask.no": QT_TRANSLATE_NOOP("turnpost", "No"),
    "ask.go_on": QT_TRANSLATE_NOOP("turnpost", "Go on"),
    "ask.unwell": QT_TRANSLATE_NOOP("turnpost", "I feel unwell (U)"),
    "ask.unwell_name": QT_TRANSLATE_NOOP("turnpost", "I feel unwell, key U"),
    "ask.end": QT_TRANSLATE_NOOP("turnpost", "End for today"),
    "leave.title": QT_TRANSLATE_NOOP("turnpost", "Is that all for today?"),
    "leave.how": QT_TRANSLATE_NOOP("turnpost", "What you have done so far is kept either way."),
    "leave.go_on": QT_TRANSLATE_NOOP("turnpost", "Go on practising"),
    "leave.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    "ask.done": QT_TRANSLATE_NOOP("turnpost", "Done"),
    "ask.guide.again": QT_TRANSLATE_NOOP("turnpost", "Say it again"),
    "ask.guide.next": QT_TRANSLATE_NOOP("turnpost", "Next step"),
    "ask.left": QT_TRANSLATE_NOOP("turnpost", "{time} left"),
    "ask.left_out": QT_TRANSLATE_NOOP("turnpost", "Left out today: {name}. {why}"),
    "ask.today": QT_TRANSLATE_NOOP("turnpost", "Your practice today"),
    "ask.today.stage": QT_TRANSLATE_NOOP("turnpost", "Today: {name}"),
    "ask.today.short": QT_TRANSLATE_NOOP("turnpost", "Exercises and rests take about a minute."),
    "ask.today.how": QT_TRANSLATE_NOOP(
        "turnpost", "Exercises and rests take about {minutes} minutes."
    ),
    "ask.today.none": QT_TRANSLATE_NOOP("turnpost", "Nothing in your plan can be done today."),
    "ask.today.words": QT_TRANSLATE_NOOP("turnpost", "From your therapist: {words}"),
    "ask.today.row": QT_TRANSLATE_NOOP("turnpost", "{number}.  {name}: {dose}"),
    "ask.today.not": QT_TRANSLATE_NOOP("turnpost", "Not today:"),
    "ask.today.waits": QT_TRANSLATE_NOOP("turnpost", "{name}: {why}"),
    "ask.today.begin": QT_TRANSLATE_NOOP("turnpost", "Begin"),
    "ask.stage": QT_TRANSLATE_NOOP("turnpost", "Something new may come now"),
    "ask.stage.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your plan has a next part: {name}. You may begin with it today, or wait. Do you want "
        "to begin?",
    ),
    "ask.sound": QT_TRANSLATE_NOOP("turnpost", "Did you hear the beats just now?"),
    "ask.sound.how": QT_TRANSLATE_NOOP(
        "turnpost", "What comes now is led by sound. Turn it up if you need to."
    ),
    "ask.sound.again": QT_TRANSLATE_NOOP("turnpost", "Play again"),
    "ask.reader.silent": QT_TRANSLATE_NOOP(
        "turnpost", "This computer can't play a sound, and what comes now is led by sound."
    ),
    "ask.reader.no_words": QT_TRANSLATE_NOOP(
        "turnpost", "This computer can't speak, and what comes now is led by spoken words."
    ),
    "ask.reader": QT_TRANSLATE_NOOP("turnpost", "Is somebody with you who reads to you?"),
    "ask.reader.how": QT_TRANSLATE_NOOP(
        "turnpost", "They read the words on the screen aloud and tell you when to stop."
    ),
    "ask.support.corner_and_chair": QT_TRANSLATE_NOOP("turnpost", "Is your corner ready?"),
    "ask.support.corner_and_chair.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your back is to a corner. A chair that does not roll stands in front of you, to hold "
        "on to. The laptop stands firm, farther away than your arm reaches, its cable out of "
        "the way.",
    ),
    "ask.support.helper": QT_TRANSLATE_NOOP("turnpost", "Is your helper next to you?"),
    "ask.support.helper.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your helper stands so near that a hand can hold you, the whole time. The laptop stands "
        "firm, farther away than your arm reaches, its cable out of the way.",
    ),
    "ask.support.shoes": QT_TRANSLATE_NOOP(
        "turnpost", "Wear flat shoes with a closed heel, or go barefoot. Keep the floor clear."
    ),
    "ask.support.fall": QT_TRANSLATE_NOOP(
        "turnpost", "The camera can't hold you, and it calls nobody."
    ),
    "ask.place.sitting": QT_TRANSLATE_NOOP(
        "turnpost", "Sit on a firm chair, about {cm} cm from the screen."
    ),
    "ask.place.arm": QT_TRANSLATE_NOOP(
        "turnpost", "Sit on a firm chair, at arm's length from the screen, about {cm} cm."
    ),
    "ask.place.closer": QT_TRANSLATE_NOOP(
        "turnpost", "Move your chair closer again, about {cm} cm from the screen."
    ),
    "ask.place.further": QT_TRANSLATE_NOOP(
        "turnpost", "Sit further back for this one, on a firm chair, about {cm} cm from the screen."
    ),
    "ask.place.standing": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand so that the camera sees your face. Look at a mark on the wall behind it, as high "
        "as your eyes.",
    ),
    "ask.place.standing_shut": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand so that the camera sees your face. Until it begins, look at a mark on the wall "
        "behind it, as high as your eyes.",
    ),
    "ask.place.standing_wall": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand so that the camera sees your face, and look over the screen at the wall.",
    ),
    "wall.one": QT_TRANSLATE_NOOP("turnpost", "Stick one note on the wall behind the screen."),
    "wall.two": QT_TRANSLATE_NOOP(
        "turnpost", "Stick two notes on the wall behind the screen, side by side."
    ),
    "wall.two_up": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stick two notes on the wall behind the screen, one above the other. How high they "
        "hang is measured from the place midway between them.",
    ),
    "wall.apart": QT_TRANSLATE_NOOP("turnpost", "From note to note: {cm} cm."),
    "wall.above": QT_TRANSLATE_NOOP("turnpost", "Higher than the camera: {cm} cm."),
    "wall.below": QT_TRANSLATE_NOOP("turnpost", "Lower than the camera: {cm} cm."),
    "wall.level": QT_TRANSLATE_NOOP("turnpost", "As high as the camera."),
    "wall.right": QT_TRANSLATE_NOOP("turnpost", "To the right of the camera: {cm} cm."),
    "wall.left": QT_TRANSLATE_NOOP("turnpost", "To the left of the camera: {cm} cm."),
    "wall.middle": QT_TRANSLATE_NOOP("turnpost", "The camera is midway between them."),
    "wall.ahead": QT_TRANSLATE_NOOP("turnpost", "Neither to the left nor to the right of it."),
    "wall.away": QT_TRANSLATE_NOOP("turnpost", "From your eyes straight to the wall: {cm} cm."),
    "ask.wall.distance": QT_TRANSLATE_NOOP("turnpost", "How far is the wall?"),
    "ask.wall.distance.sitting": QT_TRANSLATE_NOOP(
        "turnpost",
        "Sit as you will practise. With a tape measure how far it is from your eyes straight to "
        "the wall behind the screen. {least} to {most} cm will do.",
    ),
    "ask.wall.distance.standing": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand as you will practise, and have somebody measure with a tape how far it is from "
        "your eyes straight to the wall behind the screen. {least} to {most} cm will do.",
    ),
    "ask.wall.spacing": QT_TRANSLATE_NOOP("turnpost", "How far apart are the two notes?"),
    "ask.wall.spacing.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Measure from the middle of one note to the middle of the other. {least} to {most} cm "
        "will do here; {usual} cm is a good distance.",
    ),
    "ask.wall.distance.still": QT_TRANSLATE_NOOP(
        "turnpost", "Is the wall still {cm} cm from your eyes?"
    ),
    "ask.wall.spacing.still": QT_TRANSLATE_NOOP(
        "turnpost", "Are the two notes still {cm} cm apart?"
    ),
    "ask.wall.still.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "That is how it was last time. If your place, the screen or the notes have moved since, "
        "measure again.",
    ),
    "ask.wall.still.yes": QT_TRANSLATE_NOOP("turnpost", "Yes, still {cm} cm"),
    "ask.wall.still.no": QT_TRANSLATE_NOOP("turnpost", "Measure again"),
    "ask.wall.length": QT_TRANSLATE_NOOP("turnpost", "Centimetres"),
    "ask.wall.none": QT_TRANSLATE_NOOP("turnpost", "I can't put notes there"),
    "ask.place.to_stop": QT_TRANSLATE_NOOP(
        "turnpost",
        "To stop, sit down, or hold one hand up beside your head. Or step out of the picture "
        "for a few seconds.",
    ),
    "ask.place.to_stop_aside": QT_TRANSLATE_NOOP(
        "turnpost",
        "To stop, hold one hand up beside your head. Or step aside, out of the picture, for a "
        "few seconds.",
    ),
    "ask.place.to_stop_hand": QT_TRANSLATE_NOOP(
        "turnpost", "To stop, hold one hand up beside your head."
    ),
    "ask.place.walking": QT_TRANSLATE_NOOP(
        "turnpost", "The camera does not watch this one. Press “Done” when you are through."
    ),
    "ask.place.setup": QT_TRANSLATE_NOOP(
        "turnpost", "First the camera gets to know how you look from here. That takes a minute."
    ),
    "ask.place.by_ear": QT_TRANSLATE_NOOP(
        "turnpost", "Slow beats lead you in. Three quick beats tell you that it is over."
    ),
    "ask.place.by_reader": QT_TRANSLATE_NOOP(
        "turnpost",
        "No sound plays. The screen counts down and shows when it is over: your helper reads "
        "that to you.",
    ),
    "ask.place.moves": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have asked for a still screen. Here the target has to move: that is the exercise. "
        "Leave it out if you would rather not.",
    ),
    "ask.place.backdrop": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stripes will move on the screen. This can make you dizzy or sick. Any key stops it at "
        "once.",
    ),
    "ask.place.backdrop_ready": QT_TRANSLATE_NOOP("turnpost", "I have read this and am in place"),
    "ask.place.no_beat": QT_TRANSLATE_NOOP("turnpost", "Move at a calm, even pace."),
    "ask.place.double": QT_TRANSLATE_NOOP(
        "turnpost", "As soon as you see two tips, press “I see double (D)”."
    ),
    "ask.place.unseen": QT_TRANSLATE_NOOP("turnpost", "The camera does not see: {what}."),
    "ask.place.ready": QT_TRANSLATE_NOOP("turnpost", "I am in place"),
    "ask.place.skip": QT_TRANSLATE_NOOP("turnpost", "Not this one"),
    "ask.dose.repetitions": QT_TRANSLATE_NOOP("turnpost", "{count} times"),
    "ask.dose.once": QT_TRANSLATE_NOOP("turnpost", "once"),
    "ask.dose.seconds": QT_TRANSLATE_NOOP("turnpost", "{count} seconds"),
    "ask.dose.tempo": QT_TRANSLATE_NOOP("turnpost", "{tempo} beats a minute"),
    "ask.dose.from_to": QT_TRANSLATE_NOOP(
        "turnpost", "{first} beats a minute at first, {last} at the end"
    ),
    "ask.dose.eyes_closed": QT_TRANSLATE_NOOP("turnpost", "eyes closed"),
    "ask.dose.soft": QT_TRANSLATE_NOOP("turnpost", "on the soft mat"),
    "ask.dose.wall": QT_TRANSLATE_NOOP("turnpost", "with notes on the wall"),
    "ask.dose.firm": QT_TRANSLATE_NOOP("turnpost", "on the firm floor"),
    "ask.dose.shake": QT_TRANSLATE_NOOP("turnpost", "turning your head"),
    "ask.dose.sitting": QT_TRANSLATE_NOOP("turnpost", "sitting"),
    "ask.dose.standing": QT_TRANSLATE_NOOP("turnpost", "standing"),
    "ask.dose.walking": QT_TRANSLATE_NOOP("turnpost", "walking"),
    "ask.clarity": QT_TRANSLATE_NOOP("turnpost", "How did the target look while you moved?"),
    "ask.clarity.opened": QT_TRANSLATE_NOOP(
        "turnpost", "How did the target look when you opened your eyes?"
    ),
    "ask.clarity.clear": QT_TRANSLATE_NOOP("turnpost", "Clear"),
    "ask.clarity.blurred": QT_TRANSLATE_NOOP("turnpost", "Blurred"),
    "ask.clarity.jumping": QT_TRANSLATE_NOOP("turnpost", "It jumped"),
    "ask.clarity.double": QT_TRANSLATE_NOOP("turnpost", "I saw two"),
    "ask.steadied": QT_TRANSLATE_NOOP("turnpost", "Did you have to hold on?"),
    "ask.steadied.how": QT_TRANSLATE_NOOP(
        "turnpost", "To sway a little is normal. Holding on was right if you needed it."
    ),
    "ask.arm": QT_TRANSLATE_NOOP("turnpost", "Which arm did you reach with?"),
    "ask.arm.right": QT_TRANSLATE_NOOP("turnpost", "My right"),
    "ask.arm.left": QT_TRANSLATE_NOOP("turnpost", "My left"),
    "ask.arm.both": QT_TRANSLATE_NOOP("turnpost", "Both, in turn"),
    "ask.arm.not_sure": QT_TRANSLATE_NOOP("turnpost", "Not sure"),
    "ask.landed": QT_TRANSLATE_NOOP(
        "turnpost", "When you opened your eyes, did they still point at the target?"
    ),
    "ask.landed.on": QT_TRANSLATE_NOOP("turnpost", "Yes, at the target"),
    "ask.landed.beside": QT_TRANSLATE_NOOP("turnpost", "No, beside it"),
    "ask.landed.not_sure": QT_TRANSLATE_NOOP("turnpost", "Not sure"),
    "ask.own_count": QT_TRANSLATE_NOOP("turnpost", "How many did you do?"),
    "ask.own_count.how": QT_TRANSLATE_NOOP("turnpost", "Press + and − until your number is there."),
    "ask.own_count.unset": QT_TRANSLATE_NOOP("turnpost", "no number chosen yet"),
    "ask.own_count.unknown": QT_TRANSLATE_NOOP("turnpost", "I don't know"),
    "ask.own_count.name": QT_TRANSLATE_NOOP("turnpost", "Count"),
    "ask.wait": QT_TRANSLATE_NOOP("turnpost", "Sit still for a moment"),
    "ask.did": QT_TRANSLATE_NOOP("turnpost", "The camera counted {count}."),
    "ask.did.of": QT_TRANSLATE_NOOP("turnpost", "The camera counted {count} of {goal}."),
    "ask.did.turns": QT_TRANSLATE_NOOP(
        "turnpost", "Your last turns: {first} degrees right, {second} degrees left."
    ),
    "ask.did.nods": QT_TRANSLATE_NOOP(
        "turnpost", "Your last nods: {first} degrees up, {second} degrees down."
    ),
    "ask.did.right": QT_TRANSLATE_NOOP("turnpost", "Your last turn right: {degrees} degrees."),
    "ask.did.left": QT_TRANSLATE_NOOP("turnpost", "Your last turn left: {degrees} degrees."),
    "ask.did.up": QT_TRANSLATE_NOOP("turnpost", "Your last nod up: {degrees} degrees."),
    "ask.did.down": QT_TRANSLATE_NOOP("turnpost", "Your last nod down: {degrees} degrees."),
    "ask.did.tempo": QT_TRANSLATE_NOOP("turnpost", "Your tempo: {tempo} a minute."),
    "ask.wait.double": QT_TRANSLATE_NOOP(
        "turnpost", "You saw two, so you stopped. Move your finger back out, and rest your arm."
    ),
    "ask.wait.how": QT_TRANSLATE_NOOP("turnpost", "Then you say how you feel."),
    "ask.settle": QT_TRANSLATE_NOOP("turnpost", "Rest until you feel as usual"),
    "ask.settle.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Take your time. If you don't feel as usual by then, that is all for today.",
    ),
    "ask.settle.done": QT_TRANSLATE_NOOP("turnpost", "I feel as usual again"),
    "ask.rest": QT_TRANSLATE_NOOP("turnpost", "A short rest"),
    "ask.rest.next": QT_TRANSLATE_NOOP("turnpost", "Next: {name}"),
    "ask.rest.go_on": QT_TRANSLATE_NOOP("turnpost", "Go on now"),
    "far.begins": QT_TRANSLATE_NOOP("turnpost", "until it begins"),
    "far.of": QT_TRANSLATE_NOOP("turnpost", "of {goal}"),
    "far.left": QT_TRANSLATE_NOOP("turnpost", "left"),
    "far.left_done": QT_TRANSLATE_NOOP("turnpost", "left, {count} done"),
    "far.so_far": QT_TRANSLATE_NOOP("turnpost", "so far"),
    "score.rest_of_day": QT_TRANSLATE_NOOP(
        "turnpost", "After last time: how dizzy were you for the rest of that day?"
    ),
    "score.next_morning": QT_TRANSLATE_NOOP("turnpost", "And how dizzy on the morning after?"),
    "score.leave_out": QT_TRANSLATE_NOOP("turnpost", "I do not remember"),
    "over.title": QT_TRANSLATE_NOOP("turnpost", "That is all for today"),
    "over.symptom_rule": QT_TRANSLATE_NOOP(
        "turnpost",
        "Rest now. Your therapist sees how it went when you hand over your sessions.",
    ),
    "day_over": QT_TRANSLATE_NOOP(
        "turnpost",
        "You were asked to stop for today. Please rest, and practise again another day.",
    ),
    "day_over.call": QT_TRANSLATE_NOOP(
        "turnpost", "Call your therapist before you practise again."
    ),
    "day_over.emergency": QT_TRANSLATE_NOOP(
        "turnpost", "If you have not called for emergency help yet, call now: {number}."
    ),
    "day_over.emergency_no_number": QT_TRANSLATE_NOOP(
        "turnpost", "If you have not called for emergency help yet, call now."
    ),
    "day_over.go_on": QT_TRANSLATE_NOOP("turnpost", "My therapist told me today that I may go on"),
    "day_over.sure": QT_TRANSLATE_NOOP(
        "turnpost", "Did your therapist say today that you may go on?"
    ),
    "day_over.sure.how": QT_TRANSLATE_NOOP(
        "turnpost", "Your answer is kept for your therapist. Then the first questions come again."
    ),
    "day_over.yes": QT_TRANSLATE_NOOP("turnpost", "Yes, my therapist said so today"),
    "over.stopped_unwell": QT_TRANSLATE_NOOP(
        "turnpost",
        "You felt unwell, and stopping was right. Sit down and rest. If it does not get better, "
        "get help.",
    ),
    "over.fall": QT_TRANSLATE_NOOP(
        "turnpost", "You told of a fall. Your therapist should know before you go on."
    ),
    "over.possible_fall": QT_TRANSLATE_NOOP(
        "turnpost",
        "The camera saw a sudden drop of your head. If you fell or are hurt, get help now.",
    ),
    "over.fine": QT_TRANSLATE_NOOP(
        "turnpost",
        "Good. Sit down and rest. Nobody has been called: if you feel unwell later, call for help. "
        "Your therapist reads of the drop when you hand over your sessions.",
    ),
    "over.not_well": QT_TRANSLATE_NOOP(
        "turnpost",
        "Sit or lie down where you are safe. Nobody has been called: if you are not better at "
        "once, call for help. Your therapist reads of this when you hand over your sessions.",
    ),
    "over.no_answer": QT_TRANSLATE_NOOP(
        "turnpost", "Nobody has answered, and nobody has been called."
    ),
    "over.closed_unsaid": QT_TRANSLATE_NOOP(
        "turnpost",
        "You closed the question without saying how you are. Nobody has been called.",
    ),
    "over.number": QT_TRANSLATE_NOOP("turnpost", "The number for help: {number}"),
    "ask.well.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "The camera saw a sudden drop of your head. Nobody has been called. Press 1 or 2.",
    ),
    "ask.well.fine": QT_TRANSLATE_NOOP("turnpost", "{key}: I am all right"),
    "ask.well.not_well": QT_TRANSLATE_NOOP("turnpost", "{key}: I am not well"),
    "summary.left_out": QT_TRANSLATE_NOOP("turnpost", "Left out"),
    "summary.own_count": QT_TRANSLATE_NOOP("turnpost", "{count}, as you counted"),
    "summary.not_kept": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your set-up could not be kept ({why}). Next time you do it again; nothing else is lost.",
    ),
    "over.to_summary": QT_TRANSLATE_NOOP("turnpost", "Show what I did"),
}
