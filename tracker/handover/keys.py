"""The clinic's keys on this computer: each a file that only its passphrase opens.

They lie in the folder ``keys`` of the user's data, ``NAME.age`` beside ``NAME.pub``, whose
one line is the public key. Old keys stay, because older hand-overs need them.
"""

from __future__ import annotations

import contextlib
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from tracker.errors import InputError
from tracker.handover import crypt
from tracker.inputs import open_file, read_bytes, read_input
from tracker.outputs import must_harm_nothing
from tracker.session.files import data_folder, make_private_folder, write_atomically

FOLDER = "keys"
#: Least letters of a passphrase (common practice), and far more than a locked key's bytes.
LEAST_LETTERS, MAX_KEY_FILE = 10, 20_000


@dataclass(frozen=True, slots=True)
class ClinicKey:
    """A key: its public half, and the file with the secret one."""

    public: str
    path: Path

    @property
    def name(self) -> str:
        """Short name, to tell keys apart."""
        return self.path.stem


def name_of(public: str) -> str:
    """Short name of a key, by which it is told from others."""
    return f"clinic-{public[4:12]}"


def clinic_keys() -> list[ClinicKey]:
    """The keys on this computer, the oldest first; files that are none are passed over."""
    folder = data_folder() / FOLDER
    found = []
    for path in folder.glob("*.pub") if folder.is_dir() else ():
        try:
            public = read_bytes(path, MAX_KEY_FILE).decode("ascii").strip()
            made = path.with_suffix(".age").stat().st_mtime_ns
        except (OSError, UnicodeDecodeError):
            continue
        if crypt.is_public_key(public):
            found.append((made, ClinicKey(public, path.with_suffix(".age"))))
    return [key for _, key in sorted(found, key=lambda f: (f[0], f[1].name))]


def check_passphrase(passphrase: str) -> None:
    """Refuse a passphrase for a new key that is too short to keep anybody out.

    Raises
    ------
    InputError
        If it has too few letters; blanks are none.
    """
    if len("".join(passphrase.split())) < LEAST_LETTERS:
        raise InputError(
            f"the passphrase needs {LEAST_LETTERS} letters or more: three or four words do well"
        )


def new_key(passphrase: str) -> ClinicKey:
    """Make a key and keep it.

    Raises
    ------
    InputError
        If the passphrase is too short.
    RunError
        If it can't be kept.
    """
    check_passphrase(passphrase)
    identity, public = crypt.new_identity()
    return _keep(public, crypt.lock(identity, passphrase))


def back_up(key: ClinicKey, to: Path) -> None:
    """Copy a key, still locked by its passphrase.

    Raises
    ------
    InputError
        If there is something at that place already, or it can't be written to.
    """
    if to.exists():
        raise InputError(f"{to}: is there already; name another file")
    must_harm_nothing(to)
    write_atomically(to, _read(key.path))


def bring_in(backup: Path, passphrase: str) -> ClinicKey:
    """Keep the key of a backup; its passphrase stays.

    Of a key that is here already the file is put right where it is another than the backup,
    which has just been opened: it may be damaged. The other one stays as ``NAME.old``.

    Raises
    ------
    InputError
        If it is no key, or the passphrase is another one (:class:`crypt.WrongPassphraseError`).
    RunError
        If it can't be kept.
    """
    locked = _read(backup)
    public = crypt.public_of(_unlocked(backup, locked, passphrase))
    known = next((k for k in clinic_keys() if k.public == public), None)
    if known is None:
        return _keep(public, locked)
    _put_right(known, locked)
    return known


def _put_right(key: ClinicKey, locked: bytes) -> None:
    """Write a key's file anew; what it was before stays beside it."""
    before = None
    with contextlib.suppress(OSError), open_file(key.path) as file:
        before = file.read()
    if before == locked:
        return
    if before is not None:
        old, number = key.path.with_suffix(".old"), 1
        while old.exists():
            number += 1
            old = key.path.with_suffix(f".old-{number}")
        write_atomically(old, before)
    write_atomically(key.path, locked)


def open_keys(passphrase: str, keys: Sequence[ClinicKey] | None = None) -> list[str]:
    """The secret keys that a passphrase opens.

    Raises
    ------
    InputError
        If there is no key on this computer, or the passphrase opens none of them.
    """
    keys = clinic_keys() if keys is None else keys
    if not keys:
        raise InputError(
            "there is no key on this computer; bring in a backup of the clinic's key "
            "('turnpost keys import')"
        )
    opened, why = [], None
    for key in keys:
        try:
            opened.append(_unlocked(key.path, _read(key.path), passphrase))
        except InputError as error:
            wrong = isinstance(error, crypt.WrongPassphraseError)
            why = error if wrong or why is None else why
    if not opened and why is not None:
        raise why
    return opened


def _unlocked(path: Path, locked: bytes, passphrase: str) -> str:
    try:
        return crypt.unlock(locked, passphrase)
    except crypt.WrongPassphraseError:
        raise
    except InputError as error:
        raise InputError(f"{path}: {error}") from error


def _keep(public: str, locked: bytes) -> ClinicKey:
    folder = make_private_folder(data_folder() / FOLDER)
    key = ClinicKey(public, folder / f"{name_of(public)}.age")
    # The secret half first: a public one alone would encrypt to nobody.
    write_atomically(key.path, locked)
    write_atomically(key.path.with_suffix(".pub"), public + "\n")
    return key


def _read(path: Path) -> bytes:
    return read_input(path, MAX_KEY_FILE, "a key")
