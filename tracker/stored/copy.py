"""A copy of what is stored: one ordinary zip file, which anybody who gets it can open."""

from __future__ import annotations

import shutil
import zipfile
from collections.abc import Collection
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

from tracker.errors import InputError, RunError, system_reason
from tracker.inputs import open_file
from tracker.session.files import whole_file
from tracker.session.recovery import is_in_use
from tracker.stored.look import RECORDED, Item, Kind, Stored, files_in, is_left_by_looking

#: Can be made anew, or is nothing whole.
NEVER = frozenset({Kind.desk_index, Kind.remains})
READ_ME = "read-me.txt"
_TEXT = """\
This is a copy of what Turnpost has stored on one computer. It is NOT encrypted: whoever gets
this file can read it. It may hold what was practised, scored and answered (sessions), and
the shape and look of a face as numbers (profiles), and a clinic's keys, locked by their
passphrase (keys). There are no pictures in it.

Each folder in "sessions" is one session: summary.json has its figures, trace.csv what was
measured, journal.jsonl all that was written down meanwhile.
"""


@dataclass(frozen=True, slots=True)
class Copied:
    """How many files went into a copy, and the sessions that were left out: in use now."""

    files: int
    in_use: tuple[Path, ...]


def save_copy(stored: Stored, to: Path, kinds: Collection[Kind] = tuple(Kind)) -> Copied:
    """Write what is stored, or some kinds of it, into a zip file; whole or not at all.

    Links are not followed, nor copied; nor is what another program has left in a session's folder.
    A session that is being recorded is left out.

    Raises
    ------
    InputError
        If the file would lie in the data folder itself, its place can't be written to, or there
        is nothing of these kinds.
    RunError
        If something can't be read, or writing fails half-way.
    """
    if to.absolute().parent.resolve().is_relative_to(stored.folder):
        raise InputError(
            f"{to}: lies in the folder that is copied, and would be deleted with it; "
            "choose another place"
        )
    wanted = [i for i in stored.items if i.kind in kinds and i.kind not in NEVER]
    in_use = tuple(i.path for i in wanted if i.kind in RECORDED and is_in_use(i.path))
    wanted = [i for i in wanted if i.path not in in_use]
    if not wanted:
        raise InputError("there is nothing to copy")
    with whole_file(to) as file:
        return Copied(_pack(stored.folder, wanted, file), in_use)


def _pack(folder: Path, items: list[Item], file: BinaryIO) -> int:
    count = 0
    how = zipfile.ZIP_DEFLATED
    with zipfile.ZipFile(file, "w", how, strict_timestamps=False) as packed:
        packed.writestr(READ_ME, _TEXT)
        for item in items:
            for path in files_in(item.path):
                if is_left_by_looking(path.name) or path.is_symlink() or not path.is_file():
                    continue
                name = path.relative_to(folder).as_posix()
                try:
                    source = open_file(path)
                    member = zipfile.ZipInfo.from_file(path, name, strict_timestamps=False)
                except OSError as error:
                    raise RunError(f"{path}: can't be read ({system_reason(error)})") from error
                member.compress_type = how
                with source, packed.open(member, "w") as into:
                    shutil.copyfileobj(source, into)
                count += 1
    return count
