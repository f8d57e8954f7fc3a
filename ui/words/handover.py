"""The words of the hand-over, at both ends.

Keys: ``same.KEY`` (is this the therapist's plan?), ``handover.KEY`` (the patient's file),
``exchange.KEY`` (the therapist's desk).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

HANDOVER_WORDS: dict[str, object] = {
    # is this plan the therapist's?
    "same.title": QT_TRANSLATE_NOOP("turnpost", "Is it your therapist's plan?"),
    "same.ask": QT_TRANSLATE_NOOP(
        "turnpost",
        "Ask your therapist, on the phone or in a call, to read out the words of your plan. They "
        "must be:",
    ),
    "same.word": QT_TRANSLATE_NOOP("turnpost", "{number}. {word}"),
    "same.why": QT_TRANSLATE_NOOP(
        "turnpost",
        "One other word, and somebody may have changed the plan on its way. Then do not use it.",
    ),
    "same.locked": QT_TRANSLATE_NOOP(
        "turnpost", "What you hand over later will be locked: only your clinic can open it."
    ),
    "same.plain": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your clinic has chosen files without a lock. What you hand over later can be read by "
        "whoever gets hold of the file.",
    ),
    "same.yes": QT_TRANSLATE_NOOP("turnpost", "All words are the same"),
    "same.no": QT_TRANSLATE_NOOP("turnpost", "A word is different"),
    "same.later": QT_TRANSLATE_NOOP("turnpost", "Compare later"),
    "same.refused": QT_TRANSLATE_NOOP(
        "turnpost",
        "The words did not match, so this plan is put away. Ask your therapist to give you the "
        "plan again.",
    ),
    "same.open": QT_TRANSLATE_NOOP("turnpost", "Compare the words"),
    # the patient's file
    "handover.open": QT_TRANSLATE_NOOP("turnpost", "Hand over to my therapist"),
    "handover.title": QT_TRANSLATE_NOOP("turnpost", "Hand over to your therapist"),
    "handover.looking": QT_TRANSLATE_NOOP("turnpost", "Looking at what you have practised ..."),
    "handover.making": QT_TRANSLATE_NOOP("turnpost", "Making the file ..."),
    "handover.failed": QT_TRANSLATE_NOOP("turnpost", "That did not work: {why}"),
    "handover.no_plan": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have no plan from your therapist open. Open it on the first page, then come back.",
    ),
    "handover.no_way": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your plan does not name a clinic that can receive files. Ask your therapist for a plan "
        "with the clinic's key in it.",
    ),
    "handover.none": QT_TRANSLATE_NOOP(
        "turnpost", "There is nothing to hand over yet. Practise once, then come back."
    ),
    "handover.no_new": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have handed over all you practised with this plan. If a file was lost, you can make "
        "one with everything again.",
    ),
    "handover.one_new": QT_TRANSLATE_NOOP("turnpost", "One session waits to be handed over."),
    "handover.new": QT_TRANSLATE_NOOP("turnpost", "Sessions waiting to be handed over: {count}."),
    "handover.inside": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turnpost puts them into one file. In it are your answers and what was measured. There is "
        "no picture in it, nor the shape of your face, nor your name.",
    ),
    "handover.locked": QT_TRANSLATE_NOOP(
        "turnpost", "The file is locked: only your clinic can open it."
    ),
    "handover.plain": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your clinic has chosen files without a lock. Whoever gets hold of this file can read it, "
        "so give it to your therapist by hand if you can.",
    ),
    "handover.unread": QT_TRANSLATE_NOOP(
        "turnpost", "Left out, because they can't be read: {count}. Tell your therapist."
    ),
    "handover.unchecked": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have not compared the words of your plan yet. Do it first: then you know that the "
        "file goes to your clinic.",
    ),
    "handover.make_new": QT_TRANSLATE_NOOP("turnpost", "Make the file"),
    "handover.make_all": QT_TRANSLATE_NOOP("turnpost", "Make one with all {count}"),
    "handover.where": QT_TRANSLATE_NOOP("turnpost", "Where to put the file"),
    "handover.kinds": QT_TRANSLATE_NOOP("turnpost", "Files for the clinic (*.age *.turnpost)"),
    "handover.made": QT_TRANSLATE_NOOP(
        "turnpost", "The file is made. Sessions in it: {count}. It is here: {path}"
    ),
    "handover.send": QT_TRANSLATE_NOOP(
        "turnpost",
        "Now send it to your therapist: attach it to an e-mail, or bring it along on a memory "
        "stick.",
    ),
    "handover.more": QT_TRANSLATE_NOOP(
        "turnpost", "Not all went into one file. Send these, too: {names}"
    ),
    "handover.thin": QT_TRANSLATE_NOOP(
        "turnpost", "Sessions whose curves stayed behind, too large or not readable: {count}."
    ),
    "handover.foreign": QT_TRANSLATE_NOOP(
        "turnpost",
        "There are sessions of other plans, of which this clinic has nothing yet: {plans}. They "
        "stay here unless you say that they are yours and meant for this clinic.",
    ),
    "handover.foreign.take": QT_TRANSLATE_NOOP("turnpost", "Mine: take them, too"),
    "handover.unsent": QT_TRANSLATE_NOOP(
        "turnpost",
        "Not in the file, because they were practised as another person or without a plan: "
        "{count}.",
    ),
    "handover.broken_off": QT_TRANSLATE_NOOP(
        "turnpost",
        "Not in the file, because they broke off: {count}. Close Turnpost and open it again to "
        "save them.",
    ),
    "handover.elsewhere": QT_TRANSLATE_NOOP(
        "turnpost",
        "Not in the file, because you saved them in a folder of your own: {count}. Bring that "
        "folder to your therapist.",
    ),
    "handover.in_call": QT_TRANSLATE_NOOP(
        "turnpost", "Names of files are not shown in a call. Leave the call's layout (F4) first."
    ),
    "handover.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    # the plan editor
    "edit.hand_over": QT_TRANSLATE_NOOP("turnpost", "Hand-over"),
    "edit.hand_over.how": QT_TRANSLATE_NOOP(
        "turnpost", "Changed when the plan is handed out: in the review, under Files in and out."
    ),
    "edit.hand_over.nobody": QT_TRANSLATE_NOOP(
        "turnpost", "Names no key yet: the patient can make no file for you with this plan."
    ),
    "edit.hand_over.plain": QT_TRANSLATE_NOOP(
        "turnpost", "The patient's files are without a lock: anybody can read them."
    ),
    "edit.hand_over.keys": QT_TRANSLATE_NOOP(
        "turnpost", "The patient's files are locked. Keys that open them: {count}."
    ),
    # the therapist's desk
    "exchange.open": QT_TRANSLATE_NOOP("turnpost", "Files in and out"),
    "exchange.title": QT_TRANSLATE_NOOP("turnpost", "Files from and to patients"),
    "exchange.back": QT_TRANSLATE_NOOP("turnpost", "Back (Esc)"),
    "exchange.working": QT_TRANSLATE_NOOP("turnpost", "Working ..."),
    "exchange.failed": QT_TRANSLATE_NOOP("turnpost", "Not done: {why}"),
    "exchange.in": QT_TRANSLATE_NOOP("turnpost", "From a patient"),
    "exchange.in.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Takes the sessions out of a file that a patient has made, into the folder that is open. "
        "You can also drop the file on this window. The file itself stays where it is.",
    ),
    "exchange.take": QT_TRANSLATE_NOOP("turnpost", "Take in a file"),
    "exchange.kinds": QT_TRANSLATE_NOOP(
        "turnpost", "Files from patients (*.age *.turnpost);;All files (*)"
    ),
    "exchange.no_folder": QT_TRANSLATE_NOOP(
        "turnpost", "the folder {folder} is not there; connect its disk, or open another folder"
    ),
    "exchange.missed": QT_TRANSLATE_NOOP(
        "turnpost", "A file that came in between was not taken in. Take it in now."
    ),
    "exchange.nobody": QT_TRANSLATE_NOOP("turnpost", "no pseudonym"),
    "exchange.taken": QT_TRANSLATE_NOOP(
        "turnpost", "{person}: new sessions {new}, here before {known}."
    ),
    "exchange.other": QT_TRANSLATE_NOOP(
        "turnpost", "Left as they are, although the file has other versions of them: {names}."
    ),
    "exchange.was_plain": QT_TRANSLATE_NOOP("turnpost", "This file was not locked."),
    "exchange.out": QT_TRANSLATE_NOOP("turnpost", "To a patient"),
    "exchange.out.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Writes a plan that names keys. What the patient hands over opens with each of them, on "
        "any computer that has it. Was a key stolen? Then make a new one, leave the stolen one "
        "out, hand the plan out again, and read its words to the patient in a call.",
    ),
    "exchange.keep": QT_TRANSLATE_NOOP("turnpost", "Keep other computers' keys in the plan"),
    "exchange.give": QT_TRANSLATE_NOOP("turnpost", "Hand out a plan"),
    "exchange.give_plain": QT_TRANSLATE_NOOP("turnpost", "Hand out a plan without a lock"),
    "exchange.tell": QT_TRANSLATE_NOOP("turnpost", "Show the words of a plan"),
    "exchange.which": QT_TRANSLATE_NOOP("turnpost", "Which plan?"),
    "exchange.where": QT_TRANSLATE_NOOP("turnpost", "Where to put the plan for the patient"),
    "exchange.plans": QT_TRANSLATE_NOOP("turnpost", "Plans (*.json)"),
    "exchange.given": QT_TRANSLATE_NOOP("turnpost", "Written: {path}"),
    "exchange.opens": QT_TRANSLATE_NOOP(
        "turnpost", "What the patient hands over opens with: {names}."
    ),
    "exchange.here": QT_TRANSLATE_NOOP("turnpost", "{name} (this computer)"),
    "exchange.elsewhere": QT_TRANSLATE_NOOP("turnpost", "{name} (not this computer)"),
    "exchange.words": QT_TRANSLATE_NOOP("turnpost", "Its words:  {words}"),
    "exchange.plain.ask": QT_TRANSLATE_NOOP(
        "turnpost",
        "Without a lock anybody who gets hold of a patient's file can read it: e-mail providers, "
        "whoever finds a stick. The plan and the patient's program will say so. Is that meant?",
    ),
    "exchange.plain.yes": QT_TRANSLATE_NOOP("turnpost", "Yes, without a lock"),
    "exchange.plain.no": QT_TRANSLATE_NOOP("turnpost", "No"),
    "exchange.plain.on": QT_TRANSLATE_NOOP(
        "turnpost", "This clinic has chosen files without a lock. A key changes that."
    ),
    "exchange.key": QT_TRANSLATE_NOOP("turnpost", "The clinic's key"),
    "exchange.key.none": QT_TRANSLATE_NOOP(
        "turnpost",
        "There is no key on this computer. Make one, or bring in the copy of a key that the clinic "
        "has already.",
    ),
    "exchange.key.has": QT_TRANSLATE_NOOP("turnpost", "On this computer: {names}."),
    "exchange.key.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "A key lies behind a passphrase. If either is lost, what patients hand over can't be read "
        "by anybody: keep a copy in a safe place.",
    ),
    "exchange.key.make": QT_TRANSLATE_NOOP("turnpost", "Make a key"),
    "exchange.key.made": QT_TRANSLATE_NOOP(
        "turnpost", "The key {name} is made. Copy it to a safe place now."
    ),
    "exchange.key.copy": QT_TRANSLATE_NOOP("turnpost", "Copy the key"),
    "exchange.key.copy_where": QT_TRANSLATE_NOOP("turnpost", "A safe place for the copy"),
    "exchange.key.copied": QT_TRANSLATE_NOOP("turnpost", "Copied to {path}"),
    "exchange.key.bring": QT_TRANSLATE_NOOP("turnpost", "Bring in a key"),
    "exchange.key.which": QT_TRANSLATE_NOOP("turnpost", "The copy of the key"),
    "exchange.key.kinds": QT_TRANSLATE_NOOP("turnpost", "Keys (*.age);;All files (*)"),
    "exchange.key.brought": QT_TRANSLATE_NOOP("turnpost", "The key {name} is here now."),
    "exchange.pass.open": QT_TRANSLATE_NOOP("turnpost", "Passphrase of the clinic's key"),
    "exchange.pass.new": QT_TRANSLATE_NOOP(
        "turnpost", "A passphrase for the new key: three or four words that nobody would guess"
    ),
    "exchange.pass.brought": QT_TRANSLATE_NOOP("turnpost", "Passphrase of the key in the copy"),
    "exchange.pass.again": QT_TRANSLATE_NOOP("turnpost", "The same once more"),
    "exchange.pass.differ": QT_TRANSLATE_NOOP("turnpost", "The two are not the same."),
    "exchange.pass.ok": QT_TRANSLATE_NOOP("turnpost", "Go on"),
    "exchange.pass.cancel": QT_TRANSLATE_NOOP("turnpost", "Leave it"),
}
