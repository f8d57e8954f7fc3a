"""The words of what is stored: keys ``stored.KEY``; ``stored.kind.KIND``; ``stored.ask.WHAT``."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

STORED_WORDS: dict[str, object] = {
    "stored.open": QT_TRANSLATE_NOOP("turnpost", "What is stored here"),
    "stored.title": QT_TRANSLATE_NOOP("turnpost", "What is stored on this computer"),
    "stored.who.own": QT_TRANSLATE_NOOP(
        "turnpost",
        "Only your own account on this computer can read these files, and an administrator's. They "
        "are not encrypted, unless the disk is.",
    ),
    "stored.who.others": QT_TRANSLATE_NOOP(
        "turnpost",
        "Other accounts on this computer may be able to read these files. They are not encrypted, "
        "unless the disk is. Whoever helps you with the computer can close the folder to others.",
    ),
    "stored.who.unknown": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turnpost can't tell which accounts on this computer can read these files. They are not "
        "encrypted, unless the disk is.",
    ),
    "stored.where": QT_TRANSLATE_NOOP("turnpost", "They lie in this folder: {folder}"),
    "stored.looking": QT_TRANSLATE_NOOP("turnpost", "Looking at what is stored ..."),
    "stored.nothing": QT_TRANSLATE_NOOP("turnpost", "Nothing is stored."),
    # the kinds
    "stored.kind.sessions": QT_TRANSLATE_NOOP(
        "turnpost", "Your sessions, with all that was measured, answered and scored"
    ),
    "stored.kind.broken_off": QT_TRANSLATE_NOOP(
        "turnpost", "Sessions that broke off and are not saved yet"
    ),
    "stored.kind.received": QT_TRANSLATE_NOOP("turnpost", "Sessions of other people"),
    "stored.kind.faces": QT_TRANSLATE_NOOP(
        "turnpost", "The shape and look of your face, as numbers"
    ),
    "stored.kind.plans": QT_TRANSLATE_NOOP("turnpost", "A copy of your plan"),
    "stored.kind.cameras": QT_TRANSLATE_NOOP("turnpost", "What was measured of your camera"),
    "stored.kind.handed_over": QT_TRANSLATE_NOOP("turnpost", "Which sessions you handed over"),
    "stored.kind.settings": QT_TRANSLATE_NOOP("turnpost", "What you chose: text, language, sound"),
    "stored.kind.keys": QT_TRANSLATE_NOOP("turnpost", "The keys of a clinic, locked"),
    "stored.kind.notes": QT_TRANSLATE_NOOP("turnpost", "Notes of a therapist"),
    "stored.kind.desk_index": QT_TRANSLATE_NOOP("turnpost", "An index for the therapist's desk"),
    "stored.kind.remains": QT_TRANSLATE_NOOP("turnpost", "Remains of something that broke off"),
    "stored.row": QT_TRANSLATE_NOOP("turnpost", "{what}: {count} ({days}), {size}."),
    "stored.row_one": QT_TRANSLATE_NOOP("turnpost", "{what} ({days}), {size}."),
    "stored.face": QT_TRANSLATE_NOOP("turnpost", "Glasses: {worn}. Camera: {camera}."),
    "stored.face_worn": QT_TRANSLATE_NOOP("turnpost", "Glasses: {worn}."),
    "stored.eye.left": QT_TRANSLATE_NOOP("turnpost", "left eye only"),
    "stored.eye.right": QT_TRANSLATE_NOOP("turnpost", "right eye only"),
    "stored.unknown": QT_TRANSLATE_NOOP("turnpost", "not known"),
    "stored.days": QT_TRANSLATE_NOOP("turnpost", "{first} to {last}"),
    "stored.size.kb": QT_TRANSLATE_NOOP("turnpost", "{size} kB"),
    "stored.size.mb": QT_TRANSLATE_NOOP("turnpost", "{size} MB"),
    "stored.others": QT_TRANSLATE_NOOP(
        "turnpost",
        "This folder also holds things that Turnpost did not put there. They always stay: {names}",
    ),
    "stored.elsewhere": QT_TRANSLATE_NOOP(
        "turnpost", "These lie in another place and are never deleted from here: {names}"
    ),
    # a copy
    "stored.copy": QT_TRANSLATE_NOOP("turnpost", "Save a copy"),
    "stored.copy.what": QT_TRANSLATE_NOOP("turnpost", "What do you want a copy of?"),
    "stored.copy.everything": QT_TRANSLATE_NOOP("turnpost", "All of it"),
    "stored.copy.sessions": QT_TRANSLATE_NOOP("turnpost", "The sessions"),
    "stored.copy.faces": QT_TRANSLATE_NOOP("turnpost", "The shape of my face"),
    "stored.copy.open": QT_TRANSLATE_NOOP(
        "turnpost",
        "The copy is one ordinary file (zip). It is not encrypted: whoever gets it can read it.",
    ),
    "stored.copy.keys": QT_TRANSLATE_NOOP(
        "turnpost",
        "A copy of all of it also holds the clinic's keys, locked by their passphrase. Keep such a "
        "copy where nobody else gets at it.",
    ),
    "stored.copy.go": QT_TRANSLATE_NOOP("turnpost", "Choose the place"),
    "stored.copy.where": QT_TRANSLATE_NOOP("turnpost", "Where shall the copy be?"),
    "stored.copy.kinds": QT_TRANSLATE_NOOP("turnpost", "Zip files (*.zip)"),
    "stored.copy.making": QT_TRANSLATE_NOOP("turnpost", "Saving the copy ..."),
    "stored.copy.made": QT_TRANSLATE_NOOP(
        "turnpost", "The copy is saved, and it is not encrypted: {path}"
    ),
    "stored.copy.in_use": QT_TRANSLATE_NOOP(
        "turnpost", "The session that is being recorded now is not in it."
    ),
    "stored.failed": QT_TRANSLATE_NOOP("turnpost", "That did not work: {why}"),
    # deleting
    "stored.delete.one": QT_TRANSLATE_NOOP("turnpost", "Delete one session"),
    "stored.delete.sessions": QT_TRANSLATE_NOOP("turnpost", "Delete all sessions"),
    "stored.delete.faces": QT_TRANSLATE_NOOP("turnpost", "Delete the shape of my face"),
    "stored.delete.everything": QT_TRANSLATE_NOOP("turnpost", "Delete everything"),
    "stored.which": QT_TRANSLATE_NOOP("turnpost", "Which session do you want to delete?"),
    "stored.session": QT_TRANSLATE_NOOP("turnpost", "{day}, {time} ({size})"),
    "stored.session.broken_off": QT_TRANSLATE_NOOP("turnpost", "{session}, broken off"),
    "stored.newer": QT_TRANSLATE_NOOP("turnpost", "Newer ones"),
    "stored.older": QT_TRANSLATE_NOOP("turnpost", "Older ones"),
    "stored.this": QT_TRANSLATE_NOOP("turnpost", "Delete this one"),
    "stored.ask.one": QT_TRANSLATE_NOOP("turnpost", "Delete this session for good? {when}"),
    "stored.ask.sessions": QT_TRANSLATE_NOOP(
        "turnpost", "Delete all your sessions for good? There are {count} ({size})."
    ),
    "stored.ask.faces": QT_TRANSLATE_NOOP(
        "turnpost", "Delete the shape and look of your face for good?"
    ),
    "stored.ask.everything": QT_TRANSLATE_NOOP(
        "turnpost", "Delete everything that Turnpost has stored here, for good?"
    ),
    "stored.goes.sessions": QT_TRANSLATE_NOOP(
        "turnpost",
        "What is deleted no longer counts for your plan, and you can't hand it over any more.",
    ),
    "stored.goes.faces": QT_TRANSLATE_NOOP(
        "turnpost", "Before you practise again you do the whole set-up once more."
    ),
    "stored.goes.everything": QT_TRANSLATE_NOOP(
        "turnpost",
        "All sessions (those of other people, too), the shape of your face, the copy of your plan, "
        "all measures and all that you chose go. Turnpost is then as on its first day.",
    ),
    "stored.goes.keys": QT_TRANSLATE_NOOP(
        "turnpost",
        "The clinic's keys go, too. Without a backup of them nobody can open what patients hand "
        "over.",
    ),
    "stored.no_way_back": QT_TRANSLATE_NOOP(
        "turnpost",
        "This can't be undone. Copies that you handed over or saved elsewhere stay where they "
        "are. An expert may still be able to read parts of deleted files from the disk.",
    ),
    "stored.keep": QT_TRANSLATE_NOOP("turnpost", "Keep it"),
    "stored.yes": QT_TRANSLATE_NOOP("turnpost", "Delete for good"),
    "stored.deleting": QT_TRANSLATE_NOOP("turnpost", "Deleting ..."),
    "stored.deleted": QT_TRANSLATE_NOOP("turnpost", "It is deleted."),
    "stored.deleted.in_part": QT_TRANSLATE_NOOP("turnpost", "Not all of it is deleted."),
    "stored.deleted.everything": QT_TRANSLATE_NOOP(
        "turnpost", "All of it is deleted. Turnpost now begins as on its first day."
    ),
    "stored.left": QT_TRANSLATE_NOOP("turnpost", "This could not be deleted: {what}"),
    "stored.left.row": QT_TRANSLATE_NOOP("turnpost", "{path} ({why})"),
    "stored.left.in_use": QT_TRANSLATE_NOOP("turnpost", "it is being recorded now"),
    "stored.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    "stored.anew": QT_TRANSLATE_NOOP("turnpost", "Begin anew"),
}
