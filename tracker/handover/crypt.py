"""Encryption in the open format age (https://age-encryption.org/v1), by the library pyrage.

The library is a binding of rage, an implementation of that format. No cipher is our own.
"""

from __future__ import annotations

import base64
import re
import unicodedata
from collections.abc import Sequence

import pyrage

from tracker.errors import InputError, RunError

#: How a file of the format begins, whatever its version.
_FAMILY = b"age-encryption.org/"
#: How those begin that can be read; the second is its form in letters, for e-mail texts.
BEGINS = b"age-encryption.org/v1\n"
ARMOUR_BEGINS = b"-----BEGIN AGE ENCRYPTED FILE-----"
#: The library's word for "this was encrypted to somebody else".
_NO_KEY = "No matching keys found"
#: A key behind a passphrase names the work of opening it, as a power of two (scrypt).
_WORK = re.compile(re.escape(BEGINS) + rb"-> scrypt \S{1,100} (\d{1,3})\n")
#: scrypt takes 128 * r * N bytes (RFC 7914), with the format's r = 8 and N = 2 to the power of the
#: work: 2 GiB for 21, 4 GiB for 22, all that a small laptop has (own choice). The library makes
#: keys with what takes it a second: 17 to 19 were seen, a faster computer takes more.
MOST_WORK = 21
#: How often a key is made anew whose work is too much: the library measures it each time (own
#: choice).
_TRIES = 3
_TOO_LONG = "to open it would take this computer too long; use the computer it was made on"


class WrongKeyError(InputError):
    """None of the keys at hand opens the file."""


class WrongPassphraseError(InputError):
    """The passphrase does not open the key."""


def new_identity() -> tuple[str, str]:
    """A new secret key and its public key, as text."""
    identity = pyrage.x25519.Identity.generate()
    return str(identity), str(identity.to_public())


def public_of(identity: str) -> str:
    """Public key of a secret key."""
    return str(_identity(identity).to_public())


def is_public_key(text: str) -> bool:
    """Whether a text is a public key, its check sum included."""
    try:
        pyrage.x25519.Recipient.from_str(text)
    except pyrage.RecipientError:
        return False
    return True


def is_encrypted(content: bytes) -> bool:
    """Whether a file says of itself that it is encrypted in this format."""
    return content.startswith((_FAMILY, ARMOUR_BEGINS))


def encrypt(content: bytes, keys: Sequence[str]) -> bytes:
    """Encrypt to each of some public keys.

    Raises
    ------
    InputError
        If there is none, or one is no public key.
    """
    if not keys:
        raise InputError("there is no key to encrypt to; ask the clinic for a plan with its key")
    try:
        recipients = [pyrage.x25519.Recipient.from_str(k) for k in keys]
    except pyrage.RecipientError as error:
        raise InputError(f"a key of the clinic can't be used ({error})") from error
    return bytes(pyrage.encrypt(content, recipients))


def decrypt(content: bytes, identities: Sequence[str]) -> bytes:
    """Decrypt with whichever of some secret keys fits.

    Raises
    ------
    WrongKeyError
        If none does (or the head of the file, where the keys stand, is damaged).
    InputError
        If the file is of a newer version of the format, is cut or was changed: nothing of it
        is given.
    """
    if content.startswith(_FAMILY) and b"\n" in content[:40] and not content.startswith(BEGINS):
        raise InputError("it is encrypted in a form that this program does not know; update it")
    try:
        return bytes(pyrage.decrypt(content, [_identity(i) for i in identities]))
    except pyrage.DecryptError as error:
        if _NO_KEY in str(error):
            raise WrongKeyError(
                "none of this clinic's keys opens it: it was made for another clinic, or its "
                "beginning is damaged; bring in the right key, or ask for the file again"
            ) from error
        raise InputError(
            "it is cut or was changed on its way; nothing was taken from it, ask for it again"
        ) from error


def lock(identity: str, passphrase: str) -> bytes:
    """A secret key as a file that only its passphrase opens.

    The format's own way with passphrases (scrypt); other programs for the format open it, too.

    Raises
    ------
    InputError
        If the passphrase can't be written as text.
    RunError
        If this computer makes only keys that :func:`unlock` would refuse.
    """
    text = f"# public key: {public_of(identity)}\n{identity}\n"
    composed = _composed(passphrase)
    for _ in range(_TRIES):
        locked = bytes(pyrage.passphrase.encrypt(text.encode(), composed))
        if _work_of(locked) <= MOST_WORK:
            return locked
    raise RunError("the key would take too much memory to be opened; make it on another computer")


def unlock(locked: bytes, passphrase: str) -> str:
    """The secret key in a file made by :func:`lock`.

    Raises
    ------
    WrongPassphraseError
        If the passphrase is another one.
    InputError
        If it is no such file, or a damaged one.
    """
    composed = _composed(passphrase)
    try:
        return _unlock(locked, composed)
    except WrongPassphraseError:
        if composed == passphrase:
            raise
        # Another program may have locked it with the letters as they were typed.
        return _unlock(locked, passphrase)


def _composed(passphrase: str) -> str:
    """A passphrase with each accent and its letter in one: keyboards differ in that."""
    try:
        passphrase.encode()
    except UnicodeEncodeError as error:
        raise InputError("the passphrase holds a sign that is no letter; type it again") from error
    return unicodedata.normalize("NFC", passphrase)


def _unlock(locked: bytes, passphrase: str) -> str:
    if _work_of(locked) > MOST_WORK:
        raise InputError(_TOO_LONG)
    try:
        text = bytes(pyrage.passphrase.decrypt(locked, passphrase)).decode()
    except pyrage.DecryptError as error:
        # The library's word for it; any other is about the file.
        if str(error) == "Decryption failed":
            raise WrongPassphraseError(
                "this is not the passphrase of the key; try again as often as you like"
            ) from error
        if "Excessive work" in str(error):
            raise InputError(_TOO_LONG) from error
        raise InputError("it is no key with a passphrase, or a damaged one") from error
    except UnicodeDecodeError as error:
        raise InputError("it is no key with a passphrase") from error
    lines = [line.strip() for line in text.splitlines() if line and not line.startswith("#")]
    if len(lines) != 1:
        raise InputError("it does not hold one key")
    public_of(lines[0])
    return lines[0]


def _work_of(locked: bytes) -> int:
    """The work that a key names, in letters for e-mail texts too; 0 where it names none."""
    locked = locked.lstrip()
    if locked.startswith(ARMOUR_BEGINS):
        start = re.sub(rb"[^A-Za-z0-9+/]", b"", locked[len(ARMOUR_BEGINS) :][:400])
        locked = base64.b64decode(start[: len(start) // 4 * 4])
    work = _WORK.match(locked)
    return 0 if work is None else int(work[1])


def _identity(text: str) -> pyrage.x25519.Identity:
    try:
        return pyrage.x25519.Identity.from_str(text)
    except pyrage.IdentityError as error:
        raise InputError("it does not hold a usable key") from error
