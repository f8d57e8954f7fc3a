"""Words of the summary after a session: what was done, noticed, and not measured."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

SUMMARY_WORDS: dict[str, object] = {
    "summary.title": QT_TRANSLATE_NOOP("turnpost", "Your session"),
    "summary.finished": QT_TRANSLATE_NOOP("turnpost", "You did the whole exercise."),
    "summary.finished_plan": QT_TRANSLATE_NOOP("turnpost", "Your practice for now is done."),
    "summary.nothing_done": QT_TRANSLATE_NOOP(
        "turnpost", "Nothing was practised this time. Why stands beside each exercise."
    ),
    "summary.nothing_stopped": QT_TRANSLATE_NOOP(
        "turnpost", "Nothing was practised this time. What you answered is saved."
    ),
    "summary.done_before": QT_TRANSLATE_NOOP(
        "turnpost", "What you practised before is saved, and so is what you answered."
    ),
    "summary.finished_reported": QT_TRANSLATE_NOOP(
        "turnpost", "Noted as you say it. The camera did not see it, so nothing is measured."
    ),
    "summary.reported": QT_TRANSLATE_NOOP("turnpost", "done, as you say"),
    "summary.take_back": QT_TRANSLATE_NOOP("turnpost", "Take it back"),
    "summary.not_taken_back": QT_TRANSLATE_NOOP(
        "turnpost", "It could not be taken back, so it still counts. {why}"
    ),
    "summary.try_stopped": QT_TRANSLATE_NOOP("turnpost", "Stopped. What you did is saved."),
    "summary.try": QT_TRANSLATE_NOOP(
        "turnpost", "This was only to try it out: it is not counted as practice."
    ),
    "summary.bring": QT_TRANSLATE_NOOP(
        "turnpost", "To show it to your therapist, bring this computer, or a copy of that folder."
    ),
    "summary.stopped": QT_TRANSLATE_NOOP(
        "turnpost", "You stopped early. What you did is saved and counts."
    ),
    "summary.repetitions": QT_TRANSLATE_NOOP("turnpost", "Repetitions"),
    "summary.right": QT_TRANSLATE_NOOP("turnpost", "To the right"),
    "summary.left": QT_TRANSLATE_NOOP("turnpost", "To the left"),
    "summary.up": QT_TRANSLATE_NOOP("turnpost", "Up"),
    "summary.down": QT_TRANSLATE_NOOP("turnpost", "Down"),
    "summary.turned_in": QT_TRANSLATE_NOOP("turnpost", "How far your eyes turned in"),
    "summary.speed": QT_TRANSLATE_NOOP("turnpost", "Fastest in a turn"),
    "summary.tempo": QT_TRANSLATE_NOOP("turnpost", "Tempo"),
    "summary.on_target": QT_TRANSLATE_NOOP("turnpost", "Eyes on the target"),
    "summary.noticed": QT_TRANSLATE_NOOP("turnpost", "Noticed"),
    "summary.measured": QT_TRANSLATE_NOOP("turnpost", "Measured"),
    "summary.asked": QT_TRANSLATE_NOOP("turnpost", "asked: {asked}"),
    "summary.not_past": QT_TRANSLATE_NOOP("turnpost", "not past the middle"),
    "summary.not_measured": QT_TRANSLATE_NOOP("turnpost", "not measured"),
    "summary.nothing_noticed": QT_TRANSLATE_NOOP("turnpost", "nothing to mention"),
    "summary.degrees": QT_TRANSLATE_NOOP("turnpost", "{value} degrees"),
    "summary.degrees_range": QT_TRANSLATE_NOOP("turnpost", "{low} to {high} degrees"),
    "summary.degrees_s": QT_TRANSLATE_NOOP("turnpost", "{value} degrees a second"),
    "summary.per_minute": QT_TRANSLATE_NOOP("turnpost", "{value} turns a minute"),
    "summary.seconds": QT_TRANSLATE_NOOP("turnpost", "{value} seconds"),
    "summary.held": QT_TRANSLATE_NOOP("turnpost", "Held"),
    "summary.each": QT_TRANSLATE_NOOP("turnpost", "Time for each"),
    "summary.of_time": QT_TRANSLATE_NOOP("turnpost", "{value} % of the time"),
    "summary.saved": QT_TRANSLATE_NOOP("turnpost", "Saved in {folder}"),
    "summary.not_saved": QT_TRANSLATE_NOOP("turnpost", "Not saved: {why}"),
    "summary.not_saved_do": QT_TRANSLATE_NOOP(
        "turnpost",
        "What you did is still here. Make room, or choose another place, before you close this "
        "window.",
    ),
    "summary.place": QT_TRANSLATE_NOOP("turnpost", "Choose another place"),
    "summary.retry": QT_TRANSLATE_NOOP("turnpost", "Try again"),
    "summary.again": QT_TRANSLATE_NOOP("turnpost", "Practise again"),
    "summary.first_page": QT_TRANSLATE_NOOP("turnpost", "To the first page"),
    "summary.close": QT_TRANSLATE_NOOP("turnpost", "Close"),
    "summary.demo": QT_TRANSLATE_NOOP("turnpost", "This was the sample clip, not you."),
    "event.times": QT_TRANSLATE_NOOP("turnpost", "{count} times"),
    "event.once": QT_TRANSLATE_NOOP("turnpost", "once"),
    "event.gaze_off_target": QT_TRANSLATE_NOOP("turnpost", "eyes left the target"),
    "event.head_turned": QT_TRANSLATE_NOOP("turnpost", "head turned, not tilted"),
    "event.head_moved": QT_TRANSLATE_NOOP("turnpost", "head moved along"),
    "event.gaze_short": QT_TRANSLATE_NOOP("turnpost", "eyes stopped short"),
    "event.eyes_closed": QT_TRANSLATE_NOOP("turnpost", "eyes closed"),
    "event.eyes_opened": QT_TRANSLATE_NOOP("turnpost", "eyes opened"),
    "event.too_small": QT_TRANSLATE_NOOP("turnpost", "turns a little small"),
    "event.too_large": QT_TRANSLATE_NOOP("turnpost", "turns larger than asked"),
    "event.too_slow": QT_TRANSLATE_NOOP("turnpost", "slower than the beat"),
    "event.too_fast": QT_TRANSLATE_NOOP("turnpost", "faster than the beat"),
    "event.eyes_not_with_head": QT_TRANSLATE_NOOP("turnpost", "eyes stayed behind"),
    "event.head_with_target": QT_TRANSLATE_NOOP("turnpost", "head went with the target"),
    "event.head_first": QT_TRANSLATE_NOOP("turnpost", "head went before the eyes"),
    "event.moved_together": QT_TRANSLATE_NOOP("turnpost", "eyes and head went together"),
    "event.chin_down": QT_TRANSLATE_NOOP("turnpost", "chin down"),
    "event.not_upright": QT_TRANSLATE_NOOP("turnpost", "not all the way up"),
    "event.throw_low": QT_TRANSLATE_NOOP("turnpost", "throws below the eyes"),
    "event.possible_fall": QT_TRANSLATE_NOOP("turnpost", "a sudden drop of the head"),
    "event.left_picture": QT_TRANSLATE_NOOP("turnpost", "out of the picture"),
    "event.not_measured": QT_TRANSLATE_NOOP("turnpost", "not measured for a while"),
    "event.other": QT_TRANSLATE_NOOP("turnpost", "{code}"),
}
