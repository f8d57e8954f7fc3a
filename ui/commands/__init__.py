"""One module for each command of ``turnpost``.

Each has ``add_parser(sub)``, which adds its parser and sets ``run`` as default,
and ``run(args)``, which does the work and returns the exit code. A command is
listed in :data:`COMMANDS` and imported only when it is called.
"""

from __future__ import annotations

#: Name of the command -> its module and one line of help.
COMMANDS: dict[str, tuple[str, str]] = {
    "open": ("ui.commands.open", "open the program (also without a command)"),
    "demo": ("ui.commands.demo", "the whole main job with a sample clip in place of a camera"),
    "measure": ("ui.commands.measure", "measure a clip: one row a frame"),
    "check": ("ui.commands.check", "check one exercise in a clip or a trace"),
    "practise": ("ui.commands.practise", "practise a stage of a plan, from clips without a window"),
    "review": ("ui.commands.review", "review the sessions of many people"),
    "plan": ("ui.commands.plan", "make, check and show a plan; the catalogue of exercises"),
    "handover": ("ui.commands.handover", "patient: put new sessions into one file for the clinic"),
    "receive": ("ui.commands.receive", "therapist: take in what a patient handed over"),
    "keys": ("ui.commands.keys", "therapist: the clinic's keys, which open what is handed over"),
    "stored": ("ui.commands.stored", "list what is stored here; save a copy of it; delete it"),
    "report": ("ui.commands.report", "documents from summaries: PDF, HTML, tables, FHIR, text"),
    "send": ("ui.commands.send", "therapist: send sessions to the clinic's FHIR server (extra)"),
    "schema": (
        "ui.commands.schema",
        "print the JSON Schema of a plan, a summary, a stage log, answers or a hand-over",
    ),
    "bench": ("ui.commands.bench", "print figures: accuracy against truth, speed as a ratio"),
    "clips": ("ui.commands.clips", "list the sample clips; render new ones with their truth"),
    "camera": ("ui.commands.camera", "say what each camera gives, or why it can't be used"),
    "desktop": ("ui.commands.desktop", "put Turnpost into the desktop's menu, or take it out"),
    "doctor": ("ui.commands.doctor", "say what this machine lacks"),
}

#: The command that runs when none is named.
DEFAULT = "open"
