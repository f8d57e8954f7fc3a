"""Sentences that come from below the window, and names in the starter plan, for a patient to read.

Measuring knows no languages: it says why something failed in English. What is listed here is
found by its text and put into the user's language (``words.told``); a sentence that is not
here, such as one of the system's own, stays as it came.
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

TOLD_WORDS: dict[str, object] = {
    # set-up
    "told.face_dark": QT_TRANSLATE_NOOP(
        "turnpost", "the face is too dark or too blurred to be measured; more light helps"
    ),
    "told.face_short": QT_TRANSLATE_NOOP(
        "turnpost", "the face was not seen for long enough in the set-up; do it again"
    ),
    "told.eyes_other": QT_TRANSLATE_NOOP(
        "turnpost", "your eyes look another way than last time; do the whole set-up"
    ),
    "told.pictures_gone": QT_TRANSLATE_NOOP(
        "turnpost", "the pictures of the other steps are gone; do the whole set-up"
    ),
    "told.kept_camera": QT_TRANSLATE_NOOP(
        "turnpost", "this is another camera than that of the kept set-up; do the whole set-up"
    ),
    "told.kept_short": QT_TRANSLATE_NOOP(
        "turnpost", "the face was not seen for long enough; do the whole set-up"
    ),
    "told.kept_unlike": QT_TRANSLATE_NOOP(
        "turnpost", "the kept set-up does not fit this face or this light; do the whole set-up"
    ),
    "told.kept_nearer": QT_TRANSLATE_NOOP(
        "turnpost",
        "you sit much nearer to the camera than in the kept set-up; do the whole set-up",
    ),
    "told.kept_farther": QT_TRANSLATE_NOOP(
        "turnpost",
        "you sit much farther from the camera than in the kept set-up; do the whole set-up",
    ),
    "told.ended": QT_TRANSLATE_NOOP(
        "turnpost", "the measuring process ended while the set-up was being used"
    ),
    "told.nothing": QT_TRANSLATE_NOOP("turnpost", "nothing is being measured"),
    "told.unusable": QT_TRANSLATE_NOOP("turnpost", "the set-up could not be used ({why})"),
    # the camera's lens
    "told.lens_unseen": QT_TRANSLATE_NOOP(
        "turnpost", "nothing was seen to measure; hold it up so that all four corners show"
    ),
    "told.lens_shape": QT_TRANSLATE_NOOP(
        "turnpost", "what was held up has another shape; use a flat, whole one"
    ),
    "told.lens_square": QT_TRANSLATE_NOOP(
        "turnpost", "it was held too square to the camera; tilt it more, to several sides"
    ),
    "told.lens_wide": QT_TRANSLATE_NOOP(
        "turnpost", "no webcam sees so wide or so narrow; measure again"
    ),
    # the mark on the wall
    "told.mark_out": QT_TRANSLATE_NOOP(
        "turnpost", "the mark would ask for a turn of {turn} degrees; put it farther out"
    ),
    "told.mark_in": QT_TRANSLATE_NOOP(
        "turnpost", "the mark would ask for a turn of {turn} degrees; put it farther in"
    ),
    # the file for the therapist
    "told.file_there": QT_TRANSLATE_NOOP("turnpost", "{path}: is there already; name another file"),
    # stages of the starter plan
    "told.stage_eyes": QT_TRANSLATE_NOOP("turnpost", "Eyes and head, sitting"),
    "told.stage_body": QT_TRANSLATE_NOOP("turnpost", "Body, sitting"),
    "told.stage_firm": QT_TRANSLATE_NOOP("turnpost", "Standing, firm floor"),
    "told.stage_soft": QT_TRANSLATE_NOOP("turnpost", "Standing, soft surface"),
    "told.stage_walking": QT_TRANSLATE_NOOP("turnpost", "Walking"),
    # a copy of what is stored
    "told.copy_inside": QT_TRANSLATE_NOOP(
        "turnpost",
        "{path}: lies in the folder that is copied, and would be deleted with it; choose another "
        "place",
    ),
    "told.copy_nothing": QT_TRANSLATE_NOOP("turnpost", "there is nothing to copy"),
}
