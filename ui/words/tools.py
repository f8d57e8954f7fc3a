"""The words of what is measured once: the camera's lens, the screen, the mark on the wall.

Keys: ``tools.KEY``, ``lens.KEY`` (``lens.hint.KEY``: what to do with the sheet),
``screen.KEY``, ``mark.KEY``.
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

TOOLS_WORDS: dict[str, object] = {
    "tools.open": QT_TRANSLATE_NOOP("turnpost", "Camera, screen, more"),
    "tools.title": QT_TRANSLATE_NOOP("turnpost", "Camera, screen, and what else there is"),
    "tools.why": QT_TRANSLATE_NOOP(
        "turnpost",
        "Two measures make your figures more exact. You take them once. Without them usual "
        "values are taken, and your results say so.",
    ),
    "tools.lens": QT_TRANSLATE_NOOP("turnpost", "Measure the camera"),
    "tools.screen": QT_TRANSLATE_NOOP("turnpost", "Measure the screen"),
    "tools.edit": QT_TRANSLATE_NOOP("turnpost", "For therapists: plan"),
    "tools.baseline": QT_TRANSLATE_NOOP("turnpost", "For therapists: baseline together"),
    "tools.review": QT_TRANSLATE_NOOP("turnpost", "For therapists: review sessions"),
    "tools.review.folder": QT_TRANSLATE_NOOP("turnpost", "Choose the folder with the sessions"),
    "tools.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    "screen.title": QT_TRANSLATE_NOOP("turnpost", "Hold a bank card against the screen"),
    "screen.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Put the card's upper left corner on the corner drawn here. "
        "Fit the size with the arrow keys.",
    ),
    "screen.outline": QT_TRANSLATE_NOOP("turnpost", "Outline of a card"),
    "screen.width": QT_TRANSLATE_NOOP("turnpost", "{mm} pixels wide"),
    "screen.fits": QT_TRANSLATE_NOOP("turnpost", "It fits"),
    "screen.smaller": QT_TRANSLATE_NOOP("turnpost", "Smaller"),
    "screen.larger": QT_TRANSLATE_NOOP("turnpost", "Larger"),
    "screen.forget": QT_TRANSLATE_NOOP("turnpost", "Forget the measure"),
    "screen.known.card": QT_TRANSLATE_NOOP(
        "turnpost", "Screen: {cm} cm wide, measured with a card."
    ),
    "screen.known.screen": QT_TRANSLATE_NOOP(
        "turnpost", "Screen: {cm} cm wide, as the screen says of itself."
    ),
    "screen.known.assumed": QT_TRANSLATE_NOOP(
        "turnpost", "Screen: not measured, and it does not say. {cm} cm are taken for its width."
    ),
    "mark.open": QT_TRANSLATE_NOOP("turnpost", "Check the measuring"),
    "mark.title": QT_TRANSLATE_NOOP("turnpost", "Is your head measured rightly?"),
    "mark.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stick a mark on the wall in front of you, at the height of your eyes and to one side. "
        "Measure with a tape from your eyes straight to the wall, and from there along the wall "
        "to the mark. You can leave this out.",
    ),
    "mark.distance": QT_TRANSLATE_NOOP("turnpost", "From your eyes to the wall"),
    "mark.offset": QT_TRANSLATE_NOOP("turnpost", "Along the wall to the mark"),
    "mark.side": QT_TRANSLATE_NOOP("turnpost", "Side of the mark"),
    "mark.side.right": QT_TRANSLATE_NOOP("turnpost", "To my right"),
    "mark.side.left": QT_TRANSLATE_NOOP("turnpost", "To my left"),
    "mark.begin": QT_TRANSLATE_NOOP("turnpost", "Begin the check"),
    "mark.last": QT_TRANSLATE_NOOP(
        "turnpost", "As last time: wall {distance}, mark {offset}. {side}"
    ),
    "mark.unset": QT_TRANSLATE_NOOP("turnpost", "First give both lengths, by the tape."),
    "mark.back": QT_TRANSLATE_NOOP("turnpost", "Back to the exercises"),
    "mark.ahead": QT_TRANSLATE_NOOP(
        "turnpost", "Point your nose straight ahead and hold it. A sound says when to go on."
    ),
    "mark.mark": QT_TRANSLATE_NOOP(
        "turnpost", "Turn slowly until your nose points at the mark. Hold it until the sound."
    ),
    "mark.back_ahead": QT_TRANSLATE_NOOP(
        "turnpost", "Turn slowly back to straight ahead and hold it until the sound."
    ),
    "mark.gave_up": QT_TRANSLATE_NOOP(
        "turnpost", "Your head was not held still long enough at the mark. Try again if you like."
    ),
    "mark.camera_lost": QT_TRANSLATE_NOOP(
        "turnpost", "The camera was gone for a while. Begin the check again if you like."
    ),
    "mark.refused": QT_TRANSLATE_NOOP("turnpost", "This can't be used: {why}."),
    "mark.found": QT_TRANSLATE_NOOP(
        "turnpost",
        "The camera read {measured} degrees, the tape says {expected}. Both go into your results.",
    ),
    "lens.title": QT_TRANSLATE_NOOP("turnpost", "How wide does your camera see?"),
    "lens.known.default": QT_TRANSLATE_NOOP(
        "turnpost", "Camera: not measured. {deg} degrees are taken, give or take {error}."
    ),
    "lens.known.stated": QT_TRANSLATE_NOOP(
        "turnpost", "Camera: {deg} degrees from top to bottom, as typed, give or take {error}."
    ),
    "lens.known.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Camera: {deg} degrees from top to bottom, measured with a sheet, give or take {error}.",
    ),
    "lens.known.card": QT_TRANSLATE_NOOP(
        "turnpost",
        "Camera: {deg} degrees from top to bottom, measured with a card, give or take {error}.",
    ),
    "lens.with": QT_TRANSLATE_NOOP("turnpost", "What do you measure with?"),
    "lens.with.paper": QT_TRANSLATE_NOOP("turnpost", "A sheet of A4 paper"),
    "lens.with.card": QT_TRANSLATE_NOOP("turnpost", "A bank card"),
    "lens.with.stated": QT_TRANSLATE_NOOP("turnpost", "I know the figure"),
    "lens.how.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold a plain white sheet flat in front of something darker, at its edges, about an "
        "arm's length from the camera. Tilt it up, down and to both sides, and hold it still "
        "each time.",
    ),
    "lens.how.card": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold a plain bank card by its rim, about a hand's length from the camera, in front of "
        "something darker or lighter. Cover its number if you like: no picture is stored. Tilt it "
        "to every side, and hold it still each time.",
    ),
    "lens.how.stated": QT_TRANSLATE_NOOP(
        "turnpost",
        "Take the angle from the camera's papers. Most makers state it corner to corner.",
    ),
    "lens.distance": QT_TRANSLATE_NOOP("turnpost", "Distance to the camera"),
    "lens.distance.none": QT_TRANSLATE_NOOP("turnpost", "not measured"),
    "lens.distance.cm": QT_TRANSLATE_NOOP("turnpost", "{cm} cm"),
    "lens.angle": QT_TRANSLATE_NOOP("turnpost", "Angle"),
    "lens.angle.deg": QT_TRANSLATE_NOOP("turnpost", "{deg} degrees"),
    "lens.across.corner": QT_TRANSLATE_NOOP("turnpost", "Corner to corner"),
    "lens.across.upright": QT_TRANSLATE_NOOP("turnpost", "Top to bottom"),
    "lens.start": QT_TRANSLATE_NOOP("turnpost", "Camera on, begin"),
    "lens.stop": QT_TRANSLATE_NOOP("turnpost", "Camera off"),
    "lens.keep": QT_TRANSLATE_NOOP("turnpost", "Keep this angle"),
    "lens.forget": QT_TRANSLATE_NOOP("turnpost", "Take the usual value"),
    "lens.going_on": QT_TRANSLATE_NOOP("turnpost", "{views} of {wanted} views. {hint}"),
    "lens.done": QT_TRANSLATE_NOOP("turnpost", "Done, and kept for this camera."),
    "lens.no_camera": QT_TRANSLATE_NOOP("turnpost", "No camera was found."),
    "lens.hint.sheet_none": QT_TRANSLATE_NOOP(
        "turnpost", "Hold it up so that all four corners show."
    ),
    "lens.hint.sheet_moving": QT_TRANSLATE_NOOP("turnpost", "I see it. Hold it still."),
    "lens.hint.sheet_same": QT_TRANSLATE_NOOP("turnpost", "Good. Now tilt it another way."),
    "lens.hint.sheet_taken": QT_TRANSLATE_NOOP("turnpost", "Good. That view is taken."),
}
