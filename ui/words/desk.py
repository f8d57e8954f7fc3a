"""The words around the therapist's desk; the lines about people are in tracker.records.telling."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

DESK_WORDS: dict[str, object] = {
    "desk.title": QT_TRANSLATE_NOOP("turnpost", "Review"),
    "desk.open": QT_TRANSLATE_NOOP("turnpost", "Another folder"),
    "desk.people": QT_TRANSLATE_NOOP("turnpost", "People, most urgent first"),
    "desk.reading": QT_TRANSLATE_NOOP("turnpost", "Reading {done} of {of} files ..."),
    "desk.looking": QT_TRANSLATE_NOOP("turnpost", "Looking through the folder ..."),
    "desk.stop": QT_TRANSLATE_NOOP("turnpost", "Stop reading"),
    "desk.stopped": QT_TRANSLATE_NOOP(
        "turnpost", "Stopped: only a part of the folder was read ({count} sessions)."
    ),
    "desk.go_on": QT_TRANSLATE_NOOP("turnpost", "Read on"),
    "desk.failed": QT_TRANSLATE_NOOP("turnpost", "Not read: {why}"),
    "desk.read": QT_TRANSLATE_NOOP("turnpost", "People: {people}, sessions: {sessions}"),
    "desk.unread": QT_TRANSLATE_NOOP("turnpost", "Files left out: {count}"),
    "desk.unread.some": QT_TRANSLATE_NOOP(
        "turnpost", "Files left out: {count} (could not be read: {not_read})"
    ),
    "desk.unread.name": QT_TRANSLATE_NOOP("turnpost", "Files left out, and why"),
    "desk.unread.row": QT_TRANSLATE_NOOP("turnpost", "{path}: {why}"),
    "desk.nobody": QT_TRANSLATE_NOOP("turnpost", "There are no sessions in this folder yet."),
    "desk.nothing_first": QT_TRANSLATE_NOOP("turnpost", "Nothing that needs a look first"),
    "desk.first": QT_TRANSLATE_NOOP("turnpost", "Urgent"),
    "desk.then": QT_TRANSLATE_NOOP("turnpost", "See"),
    "desk.more": QT_TRANSLATE_NOOP("turnpost", "and {count} more"),
    "desk.last": QT_TRANSLATE_NOOP("turnpost", "Last session: {day}"),
    "desk.share.one": QT_TRANSLATE_NOOP("turnpost", "In one day: {share} % of bouts asked"),
    "desk.share": QT_TRANSLATE_NOOP("turnpost", "In {days} days: {share} % of bouts asked"),
    "desk.nameless": QT_TRANSLATE_NOOP("turnpost", "Sessions without a pseudonym"),
    "desk.nameless.each": QT_TRANSLATE_NOOP("turnpost", "Each stands by itself"),
    "desk.nameless.what": QT_TRANSLATE_NOOP(
        "turnpost",
        "Whose sessions these are is not known: they may be of several people. So each stands by "
        "itself, without practice, trends and conditions. Give each person a plan of their own, "
        "with a pseudonym; what is practised with it from then on has a name.",
    ),
    "desk.no_plan": QT_TRANSLATE_NOOP("turnpost", "No plan at hand"),
    "desk.counted_to": QT_TRANSLATE_NOOP("turnpost", "Practice is counted up to {day}."),
    "desk.side.right": QT_TRANSLATE_NOOP("turnpost", "affected side: right"),
    "desk.side.left": QT_TRANSLATE_NOOP("turnpost", "affected side: left"),
    "desk.side.both": QT_TRANSLATE_NOOP("turnpost", "affected side: both"),
    "desk.side.unknown": QT_TRANSLATE_NOOP("turnpost", "affected side not known"),
    "desk.baseline.mean": QT_TRANSLATE_NOOP("turnpost", "◆ {value}"),
    "desk.baseline.of": QT_TRANSLATE_NOOP("turnpost", "{text}; baseline of {day}"),
    "desk.baseline": QT_TRANSLATE_NOOP("turnpost", "◆ baseline, {text}"),
    "desk.together": QT_TRANSLATE_NOOP("turnpost", "Baseline together"),
    "desk.together.no_plan": QT_TRANSLATE_NOOP(
        "turnpost", "This folder has no plan with this pseudonym. Make one first."
    ),
    "desk.together.begun": QT_TRANSLATE_NOOP(
        "turnpost",
        "The program opens beside this window. Once it is over, the session stands here by itself.",
    ),
    "desk.together.open": QT_TRANSLATE_NOOP(
        "turnpost", "The program is open already. Close its window first, then begin here again."
    ),
    "desk.together.here": QT_TRANSLATE_NOOP(
        "turnpost",
        "The program's window is ready for it. Once it is over, the session stands here by itself.",
    ),
    "desk.together.busy": QT_TRANSLATE_NOOP(
        "turnpost",
        "Something goes on in the program's window. End it there, then begin here again.",
    ),
    "desk.together.sample": QT_TRANSLATE_NOOP(
        "turnpost",
        "The program's window shows the sample clip. Go back to the first page there, then begin "
        "here again.",
    ),
    "desk.together.clip": QT_TRANSLATE_NOOP(
        "turnpost",
        "The program's window shows the sample clip until it is closed. Close it, and this window "
        "with it; then start the program again and begin here once more.",
    ),
    "desk.together.refused": QT_TRANSLATE_NOOP(
        "turnpost", "The program could not take the plan; its window says why."
    ),
    "desk.together.failed": QT_TRANSLATE_NOOP("turnpost", "The program could not be opened."),
    "desk.ranges": QT_TRANSLATE_NOOP(
        "turnpost", "Today's baseline is here. Set ranges and tempo by it?"
    ),
    "desk.ranges.set": QT_TRANSLATE_NOOP("turnpost", "Ranges and tempo"),
    "desk.plan": QT_TRANSLATE_NOOP("turnpost", "Plan (Ctrl+E)"),
    "desk.show": QT_TRANSLATE_NOOP("turnpost", "Open session"),
    "desk.show_name": QT_TRANSLATE_NOOP("turnpost", "Open the session of {day}"),
    "desk.practice": QT_TRANSLATE_NOOP("turnpost", "Practice"),
    "desk.strip": QT_TRANSLATE_NOOP("turnpost", "Bouts a day. {text}"),
    "desk.strip.key": QT_TRANSLATE_NOOP(
        "turnpost",
        "a box a bout: full = measured, half = not seen by the camera, empty = asked, not done",
    ),
    "desk.step": QT_TRANSLATE_NOOP("turnpost", "Next: {text}"),
    "desk.condition": QT_TRANSLATE_NOOP("turnpost", "Condition: {text}"),
    "desk.trends": QT_TRANSLATE_NOOP("turnpost", "Trends"),
    "desk.sessions": QT_TRANSLATE_NOOP("turnpost", "Sessions"),
    "desk.filter.exercise": QT_TRANSLATE_NOOP("turnpost", "Exercise"),
    "desk.filter.all": QT_TRANSLATE_NOOP("turnpost", "All exercises"),
    "desk.filter.from": QT_TRANSLATE_NOOP("turnpost", "From"),
    "desk.filter.to": QT_TRANSLATE_NOOP("turnpost", "to"),
    "desk.filter.changed": QT_TRANSLATE_NOOP("turnpost", "Changes only"),
    "desk.filter.reset": QT_TRANSLATE_NOOP("turnpost", "Show all"),
    "desk.whole": QT_TRANSLATE_NOOP("turnpost", "Whole session"),
    "desk.trends.marked": QT_TRANSLATE_NOOP("turnpost", "{what} (with {count} marked not valid)"),
    "desk.affected": QT_TRANSLATE_NOOP("turnpost", "{figure} ◄ affected side"),
    "desk.col.figure": QT_TRANSLATE_NOOP("turnpost", "Figure"),
    "desk.col.trend": QT_TRANSLATE_NOOP("turnpost", "All sessions"),
    "desk.col.first": QT_TRANSLATE_NOOP("turnpost", "At first"),
    "desk.col.last": QT_TRANSLATE_NOOP("turnpost", "Lately"),
    "desk.col.change": QT_TRANSLATE_NOOP("turnpost", "Change"),
    "desk.change.rose": QT_TRANSLATE_NOOP("turnpost", "▲ rose"),
    "desk.change.fell": QT_TRANSLATE_NOOP("turnpost", "▼ fell"),
    "desk.change.no_change": QT_TRANSLATE_NOOP("turnpost", "no change (within ±{least})"),
    "desk.change.uneven": QT_TRANSLATE_NOOP(
        "turnpost", "too uneven to tell a change below {least}"
    ),
    "desk.change.answers": QT_TRANSLATE_NOOP(
        "turnpost", "{count} answers tell no change below {least}"
    ),
    "desk.change.too_few": QT_TRANSLATE_NOOP("turnpost", "too few to compare"),
    "desk.change.unlike": QT_TRANSLATE_NOOP("turnpost", "not comparable: other limits"),
    "desk.change.since": QT_TRANSLATE_NOOP("turnpost", "{text}, against the baseline of {day}"),
    "desk.change.other_dose": QT_TRANSLATE_NOOP("turnpost", "{text}; another dose was asked"),
    "desk.change.left_out": QT_TRANSLATE_NOOP("turnpost", "{text}; {count} left out"),
    "desk.in_doubt": QT_TRANSLATE_NOOP("turnpost", "{value}?"),
    "desk.chart": QT_TRANSLATE_NOOP(
        "turnpost", "{measured} of {all} sessions measured, {doubt} of them in doubt"
    ),
    "desk.key": QT_TRANSLATE_NOOP(
        "turnpost",
        "● session   ◆ baseline   ○ ? in doubt, not compared   ┆ not measured   grey: asked for   "
        "At first, Lately: means of up to 5",
    ),
    "desk.key.repetition": QT_TRANSLATE_NOOP("turnpost", "every other repetition"),
    "desk.key.event": QT_TRANSLATE_NOOP("turnpost", "noticed"),
    "desk.key.not_valid": QT_TRANSLATE_NOOP("turnpost", "marked not valid"),
    "desk.key.pause": QT_TRANSLATE_NOOP("turnpost", "pause"),
    "desk.key.gap": QT_TRANSLATE_NOOP("turnpost", "not measured"),
    "desk.key.doubt": QT_TRANSLATE_NOOP("turnpost", "in doubt"),
    "desk.key.mark": QT_TRANSLATE_NOOP("turnpost", "marked"),
    "desk.event.times": QT_TRANSLATE_NOOP("turnpost", "{what} ×{count}"),
    "desk.scol.when": QT_TRANSLATE_NOOP("turnpost", "When"),
    "desk.scol.ended": QT_TRANSLATE_NOOP("turnpost", "How it ended"),
    "desk.scol.done": QT_TRANSLATE_NOOP("turnpost", "Exercises"),
    "desk.scol.dizzy": QT_TRANSLATE_NOOP("turnpost", "Dizziness"),
    "desk.scol.doubt": QT_TRANSLATE_NOOP("turnpost", "In doubt"),
    "desk.scol.notes": QT_TRANSLATE_NOOP("turnpost", "Notes"),
    "desk.dizzy": QT_TRANSLATE_NOOP("turnpost", "{before} → {after}"),
    "desk.not_asked": QT_TRANSLATE_NOOP("turnpost", "not asked"),
    "desk.nothing_done": QT_TRANSLATE_NOOP("turnpost", "nothing practised"),
    "desk.back": QT_TRANSLATE_NOOP("turnpost", "Back (Esc)"),
    "desk.session": QT_TRANSLATE_NOOP("turnpost", "{person}, {day}"),
    "desk.set": QT_TRANSLATE_NOOP("turnpost", "Exercise"),
    "desk.beside": QT_TRANSLATE_NOOP("turnpost", "Compare with"),
    "desk.beside.none": QT_TRANSLATE_NOOP("turnpost", "no other session"),
    "desk.loading": QT_TRANSLATE_NOOP("turnpost", "Reading the session ..."),
    "desk.no_sets": QT_TRANSLATE_NOOP(
        "turnpost", "Nothing was practised in this session. What was answered is under Figures."
    ),
    "desk.no_trace": QT_TRANSLATE_NOOP(
        "turnpost", "The measured samples of this session are not in the folder: {why}"
    ),
    "desk.no_samples": QT_TRANSLATE_NOOP("turnpost", "this folder has only the summary"),
    "desk.trace": QT_TRANSLATE_NOOP("turnpost", "Head, gaze and target over time"),
    "desk.trace.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "← → cursor, with Shift a second; + − zoom; Page keys move; Home shows the whole exercise",
    ),
    "desk.at": QT_TRANSLATE_NOOP("turnpost", "{time} s"),
    "desk.line.value": QT_TRANSLATE_NOOP("turnpost", "{line} {value}"),
    "desk.line.none": QT_TRANSLATE_NOOP("turnpost", "{line} not measured"),
    "desk.line.head": QT_TRANSLATE_NOOP("turnpost", "head"),
    "desk.line.gaze": QT_TRANSLATE_NOOP("turnpost", "gaze"),
    "desk.line.target": QT_TRANSLATE_NOOP("turnpost", "target"),
    "desk.line.eye": QT_TRANSLATE_NOOP("turnpost", "eyes in the head"),
    "desk.line.vergence": QT_TRANSLATE_NOOP("turnpost", "angle between the eyes"),
    "desk.line.sideways": QT_TRANSLATE_NOOP("turnpost", "neck sideways"),
    "desk.line.fore_aft": QT_TRANSLATE_NOOP("turnpost", "neck forward"),
    "desk.line.height": QT_TRANSLATE_NOOP("turnpost", "neck height"),
    "desk.axis.yaw": QT_TRANSLATE_NOOP("turnpost", "degrees, right is up"),
    "desk.axis.pitch": QT_TRANSLATE_NOOP("turnpost", "degrees, up is up"),
    "desk.axis.vergence": QT_TRANSLATE_NOOP("turnpost", "degrees, near is up"),
    "desk.axis.roll": QT_TRANSLATE_NOOP("turnpost", "degrees, right ear down is up"),
    "desk.axis.mm": QT_TRANSLATE_NOOP("turnpost", "millimetres"),
    "desk.zoom_in": QT_TRANSLATE_NOOP("turnpost", "Zoom in"),
    "desk.zoom_out": QT_TRANSLATE_NOOP("turnpost", "Zoom out"),
    "desk.what": QT_TRANSLATE_NOOP("turnpost", "Over time"),
    "desk.figures": QT_TRANSLATE_NOOP("turnpost", "Figures"),
    "desk.figure": QT_TRANSLATE_NOOP("turnpost", "{name}: {value}"),
    "desk.rep": QT_TRANSLATE_NOOP("turnpost", "repetition {number}"),
    "desk.rep.turn": QT_TRANSLATE_NOOP("turnpost", "{side} {value}"),
    "desk.rep.invalid": QT_TRANSLATE_NOOP("turnpost", "{what} (marked not valid)"),
    "desk.marked": QT_TRANSLATE_NOOP("turnpost", "⚑ Marked while it went on"),
    "desk.marked.outside": QT_TRANSLATE_NOOP("turnpost", "⚑ Marked outside the exercise"),
    "desk.mark.at": QT_TRANSLATE_NOOP("turnpost", "⚑ marked at {time} s"),
    "desk.gap.of": QT_TRANSLATE_NOOP("turnpost", "▨ Not measured for {length} s: {why}"),
    "desk.doubt.of": QT_TRANSLATE_NOOP("turnpost", "? In doubt for {length} s: {why}"),
    "desk.doubt.dark": QT_TRANSLATE_NOOP("turnpost", "dark"),
    "desk.doubt.unsure": QT_TRANSLATE_NOOP("turnpost", "the face was hard to follow"),
    "desk.pause": QT_TRANSLATE_NOOP("turnpost", "paused"),
    "desk.between": QT_TRANSLATE_NOOP("turnpost", "between exercises"),
    "desk.pause.of": QT_TRANSLATE_NOOP("turnpost", "Ⅱ Paused for {length} s"),
    "desk.set.part": QT_TRANSLATE_NOOP("turnpost", "{name} ({number} of {of})"),
    "desk.event.why": QT_TRANSLATE_NOOP("turnpost", "{what} ({why})"),
    "desk.event": QT_TRANSLATE_NOOP("turnpost", "! {what}, {length} s"),
    "desk.notes": QT_TRANSLATE_NOOP("turnpost", "Notes"),
    "desk.note": QT_TRANSLATE_NOOP("turnpost", "{author}, {day}: {text}"),
    "desk.note.invalid": QT_TRANSLATE_NOOP("turnpost", "repetition {number} is not valid"),
    "desk.note.none": QT_TRANSLATE_NOOP("turnpost", "No notes yet."),
    "desk.note.text": QT_TRANSLATE_NOOP("turnpost", "A note on this session"),
    "desk.note.add": QT_TRANSLATE_NOOP("turnpost", "Add note"),
    "desk.note.mark": QT_TRANSLATE_NOOP("turnpost", "Mark repetition not valid"),
    "desk.note.undo": QT_TRANSLATE_NOOP("turnpost", "Undo my last note"),
    "desk.note.no_undo": QT_TRANSLATE_NOOP(
        "turnpost",
        "There is nothing of yours to take back here: a note is taken back only by who wrote it, "
        "on the computer on which it was written.",
    ),
    "desk.note.older": QT_TRANSLATE_NOOP(
        "turnpost", "This older note may be of another computer with the same login: {note}"
    ),
    "desk.note.sure": QT_TRANSLATE_NOOP("turnpost", "Take this old note back"),
    "desk.draft": QT_TRANSLATE_NOOP(
        "turnpost", "Typed and not added to the notes yet, gone if you close now: {text}"
    ),
    "desk.draft.show": QT_TRANSLATE_NOOP("turnpost", "Go to the note"),
    "desk.draft.drop": QT_TRANSLATE_NOOP("turnpost", "Close without it"),
    "desk.note.failed": QT_TRANSLATE_NOOP("turnpost", "Not saved: {why}"),
    "desk.note.kept": QT_TRANSLATE_NOOP(
        "turnpost", "Notes stand beside the measured figures, which never change."
    ),
    "desk.flag": QT_TRANSLATE_NOOP("turnpost", "In doubt: {why}"),
    # how a day is written (d, MMM and yyyy stay)
    "desk.day": QT_TRANSLATE_NOOP("turnpost", "d MMM yyyy"),
    "desk.day.short": QT_TRANSLATE_NOOP("turnpost", "d MMM"),
    "desk.notes_count": QT_TRANSLATE_NOOP("turnpost", "{count}"),
    "report.make": QT_TRANSLATE_NOOP("turnpost", "Make a report"),
    "report.pdf": QT_TRANSLATE_NOOP("turnpost", "Report to file, a page a session, PDF ({ending})"),
    "report.pdf_details": QT_TRANSLATE_NOOP("turnpost", "Report with all figures, PDF ({ending})"),
    "report.trends_csv": QT_TRANSLATE_NOOP("turnpost", "Table of practice and trends ({ending})"),
    "report.html": QT_TRANSLATE_NOOP("turnpost", "Report to read on a screen, HTML ({ending})"),
    "report.csv": QT_TRANSLATE_NOOP("turnpost", "Table, a row a session ({ending})"),
    "report.repetitions_csv": QT_TRANSLATE_NOOP("turnpost", "Table, a row a repetition ({ending})"),
    "report.scores_csv": QT_TRANSLATE_NOOP(
        "turnpost", "Table, a row a questionnaire score ({ending})"
    ),
    "report.fhir": QT_TRANSLATE_NOOP("turnpost", "For a record system, FHIR R4 ({ending})"),
    "report.working": QT_TRANSLATE_NOOP("turnpost", "Making the report ..."),
    "report.done": QT_TRANSLATE_NOOP("turnpost", "Written, of {count} sessions: {path}"),
    "report.left_out": QT_TRANSLATE_NOOP(
        "turnpost", "Left out, because they broke off and were not saved: {count}."
    ),
    "report.nothing": QT_TRANSLATE_NOOP("turnpost", "no session is shown that can be reported"),
    "report.over": QT_TRANSLATE_NOOP(
        "turnpost",
        "{path} holds what was measured or written, or has the name of a session's file; name "
        "another file for the report",
    ),
    "report.there": QT_TRANSLATE_NOOP(
        "turnpost", "{path} is there already; choose it with its ending, or name another file"
    ),
    "report.failed": QT_TRANSLATE_NOOP("turnpost", "No report: {why}"),
}
