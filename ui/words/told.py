"""Sentences that come from below the window, and names in the starter plan, for a patient to read.

Measuring knows no languages: it says why something failed in English. What is listed here is
found by its text and put into the user's language (``words.told``), and so is a reason that
stands in it as ``{why}``; a sentence that is not here stays as it came.
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
    # the clinic's key
    "told.key_heavy": QT_TRANSLATE_NOOP(
        "turnpost",
        "the key would take too much memory to be opened; make it on another computer",
    ),
    # why the system refuses something (tracker.errors.SYSTEM_REASONS)
    "told.no_right": QT_TRANSLATE_NOOP("turnpost", "this account has no right to it"),
    "told.read_only": QT_TRANSLATE_NOOP("turnpost", "nothing can be changed there, only read"),
    "told.disk_full": QT_TRANSLATE_NOOP("turnpost", "the disk is full"),
    "told.not_there": QT_TRANSLATE_NOOP("turnpost", "it is not there"),
    "told.is_folder": QT_TRANSLATE_NOOP("turnpost", "it is a folder"),
    "told.name_taken": QT_TRANSLATE_NOOP("turnpost", "something of this name is there already"),
    "told.not_empty": QT_TRANSLATE_NOOP("turnpost", "something else lies in it"),
    "told.name_long": QT_TRANSLATE_NOOP("turnpost", "the name is too long"),
    "told.too_large": QT_TRANSLATE_NOOP("turnpost", "it is too large"),
    "told.in_use": QT_TRANSLATE_NOOP("turnpost", "another program is using it"),
    "told.disk_fault": QT_TRANSLATE_NOOP("turnpost", "the disk has a fault"),
    "told.disk_gone": QT_TRANSLATE_NOOP("turnpost", "the disk is no longer connected"),
    "told.network_silent": QT_TRANSLATE_NOOP(
        "turnpost", "the place on the network does not answer"
    ),
    "told.circle": QT_TRANSLATE_NOOP("turnpost", "its links lead round in a circle"),
    "told.many_open": QT_TRANSLATE_NOOP("turnpost", "too many files are open"),
    "told.memory": QT_TRANSLATE_NOOP("turnpost", "the computer has too little memory"),
    "told.name_wrong": QT_TRANSLATE_NOOP("turnpost", "this name can't be used here"),
    # and of our own
    "told.no_name": QT_TRANSLATE_NOOP("turnpost", "no file can have such a name"),
    "told.no_file": QT_TRANSLATE_NOOP("turnpost", "it is not an ordinary file"),
    "told.newer_wrote": QT_TRANSLATE_NOOP("turnpost", "a newer version of this program wrote it"),
    "told.behind_link": QT_TRANSLATE_NOOP("turnpost", "it lies behind a link"),
    "told.folder_gone": QT_TRANSLATE_NOOP("turnpost", "its folder is gone"),
    "told.disk_silent": QT_TRANSLATE_NOOP("turnpost", "the disk does not answer"),
    "told.record_lost": QT_TRANSLATE_NOOP("turnpost", "a record could not be written"),
    # what could not be done with a file or a folder
    "told.unread": QT_TRANSLATE_NOOP("turnpost", "{path}: can't be read ({why})"),
    "told.unread.short": QT_TRANSLATE_NOOP("turnpost", "can't be read ({why})"),
    "told.unread.folder": QT_TRANSLATE_NOOP("turnpost", "the folder can't be read ({why})"),
    "told.newer": QT_TRANSLATE_NOOP(
        "turnpost", "{path}: was written by a newer version of this program; update it"
    ),
    "told.no_place": QT_TRANSLATE_NOOP(
        "turnpost", "{path}: can't be written ({why}); choose another place"
    ),
    "told.unwritten": QT_TRANSLATE_NOOP("turnpost", "{path}: can't be written ({why})"),
    "told.broke_off": QT_TRANSLATE_NOOP("turnpost", "{path}: could not be written ({why})"),
    "told.no_folder": QT_TRANSLATE_NOOP("turnpost", "{path}: the folder can't be made ({why})"),
    "told.name_file": QT_TRANSLATE_NOOP("turnpost", "{path}: is a folder; name a file"),
    "told.undeleted": QT_TRANSLATE_NOOP("turnpost", "{path}: can't be deleted ({why})"),
    "told.note": QT_TRANSLATE_NOOP("turnpost", "{path}: the note was not saved ({why})"),
    "told.not_taken_in": QT_TRANSLATE_NOOP(
        "turnpost", "{path}: can't be written to, nothing was taken in ({why})"
    ),
    "told.not_taken_in.room": QT_TRANSLATE_NOOP(
        "turnpost",
        "{path}: can't be written to, nothing was taken in ({why}); make room or choose another "
        "folder",
    ),
    "told.window": QT_TRANSLATE_NOOP(
        "turnpost", "{path}: is in use by another window; close that first"
    ),
    "told.disk_wait": QT_TRANSLATE_NOOP(
        "turnpost", "{path}: the disk does not answer; try again in a moment"
    ),
    # files that the desk leaves out
    "told.left.copy": QT_TRANSLATE_NOOP("turnpost", "is a second copy of {path}, left out"),
    "told.left.other": QT_TRANSLATE_NOOP(
        "turnpost",
        "is the same session as {path} with other content, left out; look which of them is right",
    ),
    "told.left.shut": QT_TRANSLATE_NOOP(
        "turnpost",
        'is a file that a patient has handed over: take it in ("Files in and out" at the desk, or '
        "'turnpost receive'), then move it elsewhere; taken in twice it changes nothing",
    ),
    "told.left.foreign": QT_TRANSLATE_NOOP("turnpost", "is no file of this program"),
    "told.left.half": QT_TRANSLATE_NOOP(
        "turnpost", "is not a whole JSON file; is it still being copied?"
    ),
    "told.left.no_json": QT_TRANSLATE_NOOP("turnpost", "not a whole JSON file ({error})"),
    "told.left.large": QT_TRANSLATE_NOOP("turnpost", "is too large for a file of this program"),
    "told.left.written": QT_TRANSLATE_NOOP(
        "turnpost", "is being written just now, or was a minute ago; look again soon"
    ),
}
