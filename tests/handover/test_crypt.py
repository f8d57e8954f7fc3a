"""Encryption: read by a second implementation, refused in clear words when it can't be opened."""

from __future__ import annotations

import base64
import textwrap

import pyrage
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.handover import reference
from tests.handover.made import pair
from tracker.errors import InputError, RunError
from tracker.handover import crypt
from tracker.handover.crypt import WrongKeyError, WrongPassphraseError

CONTENT = b"Sessions of P-07, of 2026-11-20." * 5000
SHORT = b"a few bytes"


@pytest.fixture(scope="module")
def locked() -> bytes:
    return crypt.lock(pair()[0], "three plain words")


@pytest.mark.parametrize("size", [0, 1, 65535, 65536, 65537, len(CONTENT)])
def test_another_implementation_reads_what_is_written(size: int) -> None:
    one, other = pair(0), pair(1)
    made = crypt.encrypt(CONTENT[:size], [one[1], other[1]])
    assert reference.decrypt(made, one[0]) == CONTENT[:size]
    assert reference.decrypt(made, other[0]) == CONTENT[:size]
    with pytest.raises(ValueError, match="no stanza"):
        reference.decrypt(made, pair(2)[0])


def test_keys_are_those_of_the_specification() -> None:
    # The example pair of the specification (see reference.py).
    secret = "AGE-SECRET-KEY-1GFPYYSJZGFPYYSJZGFPYYSJZGFPYYSJZGFPYYSJZGFPYYSJZGFPQ4EGAEX"
    public = "age1zvkyg2lqzraa2lnjvqej32nkuu0ues2s82hzrye869xeexvn73equnujwj"
    assert crypt.public_of(secret) == public
    assert reference.from_bech32(public) == reference.public_key(secret)


def test_another_implementation_opens_a_locked_key(locked: bytes) -> None:
    text = reference.decrypt_with_passphrase(locked, "three plain words").decode()
    assert pair()[0] in text.splitlines()
    assert pair()[0].encode() not in locked


def test_each_of_several_keys_opens_it_and_no_other() -> None:
    pairs = [pair(k) for k in range(3)]
    made = crypt.encrypt(CONTENT, [public for _, public in pairs])
    for secret, _ in pairs:
        assert crypt.decrypt(made, [secret]) == CONTENT
    assert crypt.decrypt(made, [pair(3)[0], pairs[1][0]]) == CONTENT
    for wrong in ([], [pair(3)[0]]):
        with pytest.raises(WrongKeyError, match="another clinic"):
            crypt.decrypt(made, wrong)


def test_the_form_in_letters_for_mail_texts_is_opened_too() -> None:
    recipients = [pyrage.x25519.Recipient.from_str(pair()[1])]
    made = bytes(pyrage.encrypt(CONTENT, recipients, armored=True))
    assert made.isascii() and crypt.is_encrypted(made)
    assert crypt.decrypt(made, [pair()[0]]) == CONTENT


@given(st.integers(min_value=0, max_value=10**6))
def test_cut_anywhere_it_gives_nothing(at: int) -> None:
    made = crypt.encrypt(SHORT, [pair()[1]])
    cut = made[: at % len(made)]
    with pytest.raises(InputError):
        crypt.decrypt(cut, [pair()[0]])


def test_cut_at_each_length_and_flipped_in_each_byte_it_gives_nothing() -> None:
    made = crypt.encrypt(SHORT, [pair()[1]])
    for at in range(len(made)):
        with pytest.raises(InputError):
            crypt.decrypt(made[:at], [pair()[0]])
        flipped = made[:at] + bytes([made[at] ^ (1 << at % 8)]) + made[at + 1 :]
        with pytest.raises(InputError):
            crypt.decrypt(flipped, [pair()[0]])


@given(st.integers(min_value=0, max_value=10**9), st.integers(min_value=1, max_value=255))
def test_one_changed_byte_of_a_long_file_gives_nothing(at: int, change: int) -> None:
    made = bytearray(crypt.encrypt(CONTENT, [pair()[1]]))
    made[at % len(made)] ^= change
    with pytest.raises(InputError):
        crypt.decrypt(bytes(made), [pair()[0]])


def test_a_key_opens_with_its_passphrase_alone_as_often_as_one_tries(locked: bytes) -> None:
    for wrong in ("three plain word", "Three plain words", ""):
        with pytest.raises(WrongPassphraseError, match="try again"):
            crypt.unlock(locked, wrong)
    assert crypt.unlock(locked, "three plain words") == pair()[0]


@pytest.mark.parametrize("cut", [0, 10, 60, 120, -1])
def test_a_damaged_key_is_said_to_be_one(locked: bytes, cut: int) -> None:
    with pytest.raises(InputError, match=r"damaged|no key") as told:
        crypt.unlock(locked[:cut], "three plain words")
    assert not isinstance(told.value, WrongPassphraseError)


def test_what_is_no_key_of_the_clinic_is_refused() -> None:
    with pytest.raises(InputError, match="no key with a passphrase"):
        crypt.unlock(crypt.encrypt(b"x", [pair()[1]]), "three plain words")
    with pytest.raises(InputError, match="no key to encrypt to"):
        crypt.encrypt(b"x", [])
    with pytest.raises(InputError, match="can't be used"):
        crypt.encrypt(b"x", ["age1no"])
    swapped = pair()[1][:-1] + ("q" if pair()[1][-1] != "q" else "p")
    assert crypt.is_public_key(pair()[1]) and not crypt.is_public_key(swapped)


def test_a_key_that_asks_for_too_much_work_holds_nobody_up() -> None:
    asks = reference.lock_quickly(pair()[0], "three plain words", log_n=40)
    with pytest.raises(InputError, match="too long"):
        crypt.unlock(asks, "three plain words")
    assert crypt.unlock(reference.lock_quickly(pair()[0], "abc"), "abc") == pair()[0]


@pytest.mark.parametrize("armoured", [False, True])
def test_nor_one_that_asks_for_more_memory_than_a_laptop_has(
    armoured: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The library would take four gigabytes for this one."""
    monkeypatch.setattr(
        crypt.pyrage.passphrase, "decrypt", lambda *_: pytest.fail("it was tried all the same")
    )
    asks = reference.lock_quickly(pair()[0], "abc").replace(b" 10\n", b" 22\n", 1)
    assert b" 22\n" in asks
    if armoured:
        body = "\n".join(textwrap.wrap(base64.b64encode(asks).decode(), 64)).encode()
        asks = crypt.ARMOUR_BEGINS + b"\n" + body + b"\n-----END AGE ENCRYPTED FILE-----\n"
    with pytest.raises(InputError, match="too long"):
        crypt.unlock(asks, "abc")


def test_no_key_is_made_that_would_be_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    good = reference.lock_quickly(pair()[0], "abc")
    heavy = good.replace(b" 10\n", b" 22\n", 1)
    made = [heavy, good]
    monkeypatch.setattr(crypt.pyrage.passphrase, "encrypt", lambda *_: made.pop(0))
    assert crypt.lock(pair()[0], "abc") == good
    monkeypatch.setattr(crypt.pyrage.passphrase, "encrypt", lambda *_: heavy)
    with pytest.raises(RunError, match="another computer"):
        crypt.lock(pair()[0], "abc")


def test_an_accent_opens_a_key_however_a_keyboard_writes_it() -> None:
    identity, _ = crypt.new_identity()
    whole, apart = "caf\u00e9 au lait", "cafe\u0301 au lait"
    assert crypt.unlock(crypt.lock(identity, apart), whole) == identity
    # One that another program has locked with the letters apart.
    foreign = reference.lock_quickly(identity, apart)
    assert crypt.unlock(foreign, apart) == identity
    with pytest.raises(crypt.WrongPassphraseError):
        crypt.unlock(foreign, whole)


def test_a_passphrase_that_is_no_text_is_refused() -> None:
    identity, _ = crypt.new_identity()
    with pytest.raises(InputError, match="type it again"):
        crypt.lock(identity, "half a letter \ud800")
    with pytest.raises(InputError, match="type it again"):
        crypt.unlock(b"", "half a letter \ud800")
