"""What is stored, for window and command: with whose face it is, and what hangs on a face."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from tracker.session.files import data_folder
from tracker.stored.delete import Deleted, delete
from tracker.stored.look import SESSIONS, Item, Kind, Stored, what_is_stored
from tracker.stored.readers import Readers, who_can_read

#: What can be deleted by one word.
WHAT: Mapping[str, frozenset[Kind]] = {
    "sessions": SESSIONS,
    "faces": frozenset({Kind.faces}),
    "everything": frozenset(Kind),
}


def look() -> Stored:
    """What is stored on this computer."""
    from calibration.profile_file import about_profile

    return what_is_stored(about=about_profile)


def readers_of_folder() -> Readers:
    """Who can read what lies in the data folder: soon, unless the folder is open to others."""
    return who_can_read([data_folder().resolve()])


def delete_for_good(stored: Stored, items: Iterable[Item]) -> Deleted:
    """Delete some of it; what a mark on the wall showed for a face goes with that face."""
    from tracker.errors import TurnpostError
    from ui.camera_file import FILE
    from ui.setup.lens_store import keep_mark

    done = delete(stored, items)
    left = list(done.left)
    for item in done.gone:
        if item.kind == Kind.faces:
            try:
                keep_mark(item.path.stem, None)
            except TurnpostError as error:
                left.append((stored.folder / FILE, str(error)))
    return Deleted(done.gone, tuple(left))
