"""What the records say of people and sessions, in English: the texts that are translated.

Words stand in the tables of ``tracker.records`` and of the catalogue and are taken from
there; sentences are listed as the records build them (``telling``, ``attention``,
``plan.unlocking``, ``of_exercise``, ``of_session``), with fields for what differs.
"""

from __future__ import annotations

from collections.abc import Iterator

from tracker.exercises.catalogue import CATALOGUE
from tracker.exercises.catalogue.notes import CAUTIONS, NOT_MEASURED
from tracker.plan.unlocking import TO_COME
from tracker.records import telling, terms
from tracker.records.figure import ASPECTS
from tracker.records.of_body import COUNTED
from tracker.records.of_exercise import CHOSEN, MOVEMENT
from tracker.records.of_session import BENCH_TOLD
from tracker.records.of_target import ARRIVALS, ARRIVED, LEFT_OUT, OFF, WALL, WALL_ERROR
from tracker.records.telling import exercise
from tracker.records.trends import SPECS
from tracker.session.arrivals import NEVER_AT_REST, NO_TARGETS, TOO_COARSE
from tracker.session.figures import GAZE_TOO_COARSE, LOOKS_DOWN, NOT_CHECKED
from tracker.session.reckoned import FAR, NO_SETUP, UNKNOWN_SETUP
from tracker.session.uncertain import (
    FASTER_ASKED,
    MORE_ASKED,
    NOT_DRAWN,
    NOT_EACH,
    NOT_OF_ASKED,
    OF_BODY,
    OF_EYES,
    OF_STAYS,
    SLOWER_ASKED,
    TOO_FEW,
    TOO_UNSTEADY,
)

CONTEXT = "trade"

_SENTENCES = (
    # why to look at a person
    "answered yes: {what}",
    "ended by a safety question",
    "told of falls in the last week: {what}",
    "and was hurt",
    "not hurt",
    "said that medicines have changed",
    "possible fall, and the session ended with it",
    "possible fall, and the session ended with it: {said}",
    "possible fall seen in {what}",
    "possible fall seen in {what}: {said}",
    "sudden drop of the head in a set not seen to its end: {said}",
    "sudden drop of the head in {what} not seen to its end: {said}",
    "symptoms did not settle in the time that the plan allows",
    "symptoms above the plan's limit ended the session",
    "symptoms above the plan's limit ended the session ({score} of 10 at the end)",
    "{what} rose from {first} to {last} of 10",
    "no practice for {days} days",
    "sessions dated after today: {count}; was that computer's clock right?",
    "gaze on target fell from {first} to {last} % ({name})",
    "gaze on target fell from {first} to {last} % with the head to the {side} ({name})",
    "gaze on target fell from {first} to {last} % with the head to the {side}, "
    "less so to the other side ({name})",
    "practised {done} of {asked} bouts in {days} days",
    "{practice}, and {count} beyond a day's dose",
    "figures can't be trusted in {bad} of the last {all} sets: {why}",
    "condition met: {what}",
    "{count} plan files differ and start on the same day: the newest file is taken",
    "the plan taken differs from the one handed out: {words}",
    "older: {text}",
    "outside any plan: {text}",
    "in a try of the program: {text}",
    "{text} ({count} sessions, the last one shown)",
    "{text} ({count} sessions, the gravest one shown)",
    # practice
    "no day to count yet",
    "no bouts",
    "{count} bouts a day",
    "{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)",
    "{rate} on {days} days a week in the last {length} days "
    "({measured} measured, {reported} not seen by the camera)",
    "{practice}; no plan at hand to compare with",
    "{practice}; asked: {bouts} a day on {days} days; done {share} %",
    "gaze stabilisation: {measured} minutes a day measured, {reported} told of",
    "{gaze}; planned {planned}",
    "{gaze}; planned {planned}; guideline, as quoted: {least} or more",
    "{gaze}; planned {planned}; guideline, as quoted: {least} to {most}",
    # conditions of a plan
    "{words} (opens {what})",
    "{words} (opens {what}, practised already)",
    "{opening}: met; {why}",
    "{opening}: not met; {why}",
    "{why} and {count} more",
    "opens only with the patient's yes",
    # what a plan asks for next by its weeks
    "{what}: from week {week} on ({day}): {dose}",
    "the plan has no first day",
    "own pace",
    "{tempo} beats a minute",
    "{first} to {last} beats a minute",
    "{least} to {most} degrees to each side",
    "nothing was asked for",
    "the therapist found it met on {day}",
    f"{TO_COME} ({{day}})",
    "it is in words only, and the therapist has not said so yet",
    "{count} of {needed} sessions",
    "session {number} of the last {needed}: {why}",
    "met in the last {needed} sessions",
    "it was stopped unwell",
    "the symptom rule ended it",
    "a safety question ended it",
    "it ended with a possible fall",
    "it broke off",
    "how it ended is not known",
    "rise of the score {value}, asked at most {most}",
    "minutes to settle {value}, asked at most {most}",
    "share on target {value}, asked at least {least} %",
    "share measured {value}, asked at least {least} %",
    "target not said to be clear",
    "a set was made easier than the plan has it",
    # figures
    "Repetitions",
    "Single turns",
    "Time",
    "Held as asked",
    "Time that was measured",
    "Gaze on target",
    "Gaze from target",
    "Gaze error at set-up",
    *(name for name, _, _ in BENCH_TOLD.values()),
    "Slow turn",
    "Slow nod",
    "Eye turn per head turn (no diagnostic gain)",
    "Head away from its middle",
    "Eyes closed, blinks included",
    "Sway, RMS",
    "Sway, range",
    "Sway, 95 % area",
    "Target looked",
    "Support",
    "Had to hold on",
    "Set stopped for seeing double",
    "Counted by the patient",
    "Dizziness",
    "Dizziness after last time",
    "Nausea",
    "Unsteadiness",
    "Noticed, in all",
    "Throw above the eyes",
    "Five stands",
    "Stands in 30 s",
    "Against the published table",
    "Length",
    "Exercises begun",
    "Changed in the call",
    "Moments marked",
    "Baseline",
    "After an end for today",
    "went on, as the therapist had said today",
    "taken together in the clinic",
    "Safety questions",
    "Falls in the last week",
    "After a sudden drop of the head",
    "The head after the drop",
    "seen to stay down",
    "lost while it dropped",
    "Hurt in a fall",
    "Medicines changed",
    "Frame rate",
    "Light on the face, of full",
    "Eyes to camera",
    "Head turn against a mark on the wall",
    "Camera's vertical field of view",
    "Field of view known by",
    "Glasses",
    "Eyes watched",
    # their values, and why there is none
    "yes",
    "no",
    "clear",
    "blurred",
    "jumping",
    "double",
    "not asked",
    "not answered",
    "no fall was told",
    "not settled",
    "not measured",
    "not known",
    "not recorded",
    "no reason recorded",
    "its end is not recorded",
    "none was counted",
    "no gaze set-up",
    "too few frames",
    "no face seen",
    "differs between the exercises",
    "all answered no",
    "yes to: {what}",
    "{low} to {high}",
    "{number} ± {most}",
    "rose",
    "fell",
    *telling.NO_CHANGE.values(),
    terms.UNCERTAINTY,
    terms.UNCERTAINTY_SAYS,
    TOO_FEW,
    TOO_UNSTEADY,
    OF_BODY,
    OF_EYES,
    OF_STAYS,
    NOT_OF_ASKED,
    NO_SETUP,
    UNKNOWN_SETUP,
    FAR,
    NOT_DRAWN,
    NOT_EACH,
    MORE_ASKED,
    FASTER_ASKED,
    SLOWER_ASKED,
    "{value} of 10",
    "{value} beats/min",
    "{value} frames/s",
    "below average ({bound} {limit} is below)",
    "not below average ({bound} {limit} is below)",
    "fewer than",
    "longer than",
    "fewer than two turns",
    "fewer than two repetitions",
    "fewer than five stands",
    "not every stand was all the way up",
    "fewer than ten repetitions",
    "too few samples in a turn",
    "too few turns with the eyes measured at both ends",
    "too little was measured: a stand may be missing",
    "nothing was measured",
    "no turn was counted",
    "no throw was counted",
    "the head was not measured",
    "the lids were not measured",
    LOOKS_DOWN,
    "the line of sight was not measured",
    "gaze and target were never measured together",
    "the place of the target isn't known",
    "the eyes went beyond what the set-up taught",
    "the eyes look unlike those of the set-up: another light, or other glasses",
    "the eyes can't be judged in nods behind bi- or varifocal glasses",
    GAZE_TOO_COARSE,
    NOT_CHECKED,
    "a camera's frame rate can't carry the speed of an eye jump",
    "the neck point was measured for less than 5 seconds",
    "the movement that was asked for is itself a sway or a stand",
    "nothing is watched for in this exercise",
    "the camera does not count this exercise in this version",
    "it is held for a time: there is nothing to count",
    "what it is counted from was never measured",
    "how far the turns went was not seen",
    "not back to usual in the time that the plan allows",
    "its end was out of the picture",
    "the plan gives no age group or sex for the table",
    "the table ends before this age",
    "the test lasts 30 seconds, this set did not",
    # what limits the figures of a set
    "no set-up for this person: generic values were used",
    "a trace alone: whether there was a set-up, and how well the gaze was read, is not known",
    "the set-up could not be used, so nothing rests on it",
    "the stage log says that another exercise was asked for",
    "made from clips: the times between the sets are the plan's, nobody was there",
    "half a minute to try the program out: not counted as practice",
    "practised away from the camera, as the patient says",
    "the camera was gone for a while: what was done then is missing in its count",
    "the set-up was too poor for the line of sight",
    "the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees "
    "off, turns by a tenth",
    "{value} pictures a second",
    "{share} % of the time fewer than {value} pictures a second",
    "{share} % of the time",
    "{share} % of the time the eyes went beyond the set-up's range",
    "{share} % of the time the eyes were not read: they looked unlike those of the set-up "
    "(another light, or other glasses)",
    # (of earlier versions)
    "{share} % of the time the eyes looked unlike those of the set-up "
    "(another light, or other glasses)",
    "light on the face {value} of 1",
    "the eyes turned in by {value} degrees (within {error}) as the finger came near",
    "{count} lines could not be read",
    "{count} lines could not be read, the first one too: whose it is and of which plan is not "
    "known",
    "{count} lines could not be read, the first one too: whose it is and of which plan is not "
    "known; it may be from the sample",
    # how an exercise differs from its usual form
    "standing",
    "sitting",
    "walking",
    "eyes open",
    "firm surface",
    "soft surface",
    "head shake",
    "marks on the wall",
    # jumps between two targets
    ARRIVALS,
    LEFT_OUT,
    OFF,
    WALL_ERROR,
    *ARRIVED.values(),
    *WALL.values(),
    TOO_COARSE,
    NO_TARGETS,
    NEVER_AT_REST,
)


def _texts() -> Iterator[str]:
    for name, table in vars(terms).items():
        if name.isupper() and isinstance(table, dict):
            yield from table.values()
    yield from (text for text in ASPECTS.values() if text)
    yield from (spec.words for spec in SPECS.values())
    yield from (name for name, _ in MOVEMENT.values())
    yield from (name for name, _ in CHOSEN.values())
    for name, kinds in COUNTED.values():
        yield name
        yield from kinds.values()
    yield from (exercise(key) for key in CATALOGUE)
    yield from (known.therapist for known in CATALOGUE.values())
    yield from CAUTIONS.values()
    yield from NOT_MEASURED.values()
    yield from _SENTENCES


def _all() -> dict[str, str]:
    texts = list(dict.fromkeys(_texts()))
    # "Amplitude" is found by "amplitude".
    return {t: t for t in texts if t == t[:1].lower() + t[1:] or t[:1].lower() + t[1:] not in texts}


#: Every text, by itself: the same English has one meaning here.
TRADE: dict[str, str] = _all()
