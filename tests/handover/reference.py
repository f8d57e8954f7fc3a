"""A second reading of the format age, from its specification, with other primitives than rage's.

Written from the text of https://age-encryption.org/v1 (C2SP, ``age.md``: header, X25519 and
scrypt stanzas, payload; read 26 November 2026). Decrypts whole files only; for tests.
"""

from __future__ import annotations

import base64
import hashlib
import hmac
import os

from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

LETTERS = "qpzry9x8gf2tvdw0s3jn54khce6mua7l"  # BIP 173's alphabet of bech32
CHUNK, TAG = 65536, 16

Stanza = tuple[list[str], bytes]


def decrypt(content: bytes, secret: str) -> bytes:
    """What a file holds, with the secret key in text."""
    key = X25519PrivateKey.from_private_bytes(from_bech32(secret.lower()))
    own = key.public_key().public_bytes_raw()
    stanzas, header, payload = parts_of(content)
    for words, body in stanzas:
        if words[0] != "X25519":
            continue
        share = unpadded(words[1])
        shared = key.exchange(X25519PublicKey.from_public_bytes(share))
        wrap = hkdf(shared, share + own, b"age-encryption.org/v1/X25519")
        try:
            file_key = ChaCha20Poly1305(wrap).decrypt(bytes(12), body, None)
        except Exception:
            continue
        return opened(file_key, header, payload)
    raise ValueError("no stanza for this key")


def decrypt_with_passphrase(content: bytes, passphrase: str) -> bytes:
    """What a file holds, with its passphrase."""
    ((words, body),), header, payload = parts_of(content)
    assert words[0] == "scrypt"
    wrap = hashlib.scrypt(
        passphrase.encode(),
        salt=b"age-encryption.org/v1/scrypt" + unpadded(words[1]),
        n=1 << int(words[2]),
        r=8,
        p=1,
        dklen=32,
        maxmem=(1 << 31) - 1,
    )
    return opened(ChaCha20Poly1305(wrap).decrypt(bytes(12), body, None), header, payload)


def public_key(secret: str) -> bytes:
    """The 32 bytes of the public key of a secret one."""
    return (
        X25519PrivateKey.from_private_bytes(from_bech32(secret.lower()))
        .public_key()
        .public_bytes_raw()
    )


def parts_of(content: bytes) -> tuple[list[Stanza], bytes, bytes]:
    """Stanzas, the header up to its MAC, and what follows the header."""
    at = content.index(b"\n---") + 1
    end = content.index(b"\n", at)
    lines = content[:at].decode("ascii").split("\n")[:-1]
    assert lines[0] == "age-encryption.org/v1"
    stanzas: list[tuple[list[str], str]] = []
    for line in lines[1:]:
        if line.startswith("-> "):
            stanzas.append((line[3:].split(" "), ""))
        else:
            words, body = stanzas[-1]
            stanzas[-1] = (words, body + line)
    return [(w, unpadded(b)) for w, b in stanzas], content[:end], content[end + 1 :]


def opened(file_key: bytes, header: bytes, payload: bytes) -> bytes:
    """The payload, once the header's MAC was found right."""
    signed, _, mac = header.rpartition(b" ")
    expected = hmac.new(hkdf(file_key, b"", b"header"), signed, "sha256").digest()
    assert hmac.compare_digest(expected, unpadded(mac.decode()))
    cipher = ChaCha20Poly1305(hkdf(file_key, payload[:16], b"payload"))
    rest, out, number = payload[16:], b"", 0
    while True:
        piece, rest = rest[: CHUNK + TAG], rest[CHUNK + TAG :]
        nonce = number.to_bytes(11, "big") + (b"\x00" if rest else b"\x01")
        out += cipher.decrypt(nonce, piece, None)
        number += 1
        if not rest:
            return out


def hkdf(secret: bytes, salt: bytes, info: bytes) -> bytes:
    return HKDF(hashes.SHA256(), 32, salt or None, info).derive(secret)


def unpadded(text: str) -> bytes:
    return base64.b64decode(text + "=" * (-len(text) % 4), validate=True)


def from_bech32(text: str) -> bytes:
    """The bytes of a bech32 text (BIP 173), its check sum not looked at."""
    letters = text[text.rindex("1") + 1 : -6]
    number = 0
    for letter in letters:
        number = number << 5 | LETTERS.index(letter)
    spare = len(letters) * 5 % 8
    return (number >> spare).to_bytes(len(letters) * 5 // 8, "big")


def lock_quickly(identity: str, passphrase: str, log_n: int = 10) -> bytes:
    """A key behind a passphrase with little work for scrypt, in place of a second of it."""
    file_key, salt, nonce = (os.urandom(16) for _ in range(3))
    label = b"age-encryption.org/v1/scrypt"
    wrap = hashlib.scrypt(
        passphrase.encode(), salt=label + salt, n=1 << min(log_n, 10), r=8, p=1, dklen=32
    )
    body = ChaCha20Poly1305(wrap).encrypt(bytes(12), file_key, None)
    header = f"age-encryption.org/v1\n-> scrypt {padless(salt)} {log_n}\n{padless(body)}\n---"
    mac = hmac.new(hkdf(file_key, b"", b"header"), header.encode(), "sha256").digest()
    cipher = ChaCha20Poly1305(hkdf(file_key, nonce, b"payload"))
    payload = cipher.encrypt(bytes(11) + b"\x01", f"{identity}\n".encode(), None)
    return f"{header} {padless(mac)}\n".encode() + nonce + payload


def padless(content: bytes) -> str:
    return base64.b64encode(content).decode().rstrip("=")
