"""Spoilt files: what a bad disk, a half transfer, a slip of the hand or malice makes of a file."""

from __future__ import annotations

import random
from collections.abc import Callable

#: What is put in place of a number or a word, or in between.
ODD = (
    b"1e999", b"-1e400", b"9" * 400, b"9" * 5000, b"NaN", b"-Infinity", b"null", b"true", b"[]",
    b"{}", b'""', b"-0", b"0.0000001", b"\x00", b"\xff\xfe", b"\xef\xbb\xbf", b"\r\n", b'"',
    b"\\ud800", b"=1+1", b"<script>", b"../../x", b"[" * 5000, b'{"a":' * 3000, b"," * 200,
    "\u202e".encode(), b"1_000", b"0x10", b"1" * 20, b"- ", b"\t", b"'" * 3,
)  # fmt: skip


def spoilt(content: bytes, rng: random.Random) -> bytes:
    """The content after one to four faults."""
    for _ in range(rng.randint(1, 4)):
        content = rng.choice(FAULTS)(content, rng)
    return content[:2_000_000]


def _cut(content: bytes, rng: random.Random) -> bytes:
    return content[: rng.randint(0, len(content))]


def _hole(content: bytes, rng: random.Random) -> bytes:
    at = rng.randint(0, len(content))
    return content[:at] + content[at + rng.choice((1, 4, 40, 400)) :]


def _bit(content: bytes, rng: random.Random) -> bytes:
    if not content:
        return b"\x00"
    at = rng.randrange(len(content))
    return content[:at] + bytes([content[at] ^ (1 << rng.randrange(8))]) + content[at + 1 :]


def _noise(content: bytes, rng: random.Random) -> bytes:
    at = rng.randint(0, len(content))
    more = rng.randbytes(rng.choice((1, 8, 64)))
    return content[:at] + more + content[at + rng.choice((0, len(more))) :]


def _odd(content: bytes, rng: random.Random) -> bytes:
    at = rng.randint(0, len(content))
    return content[:at] + rng.choice(ODD) + content[at:]


def _odd_value(content: bytes, rng: random.Random) -> bytes:
    """Something odd in place of a number or a word."""
    starts = [k for k in range(1, len(content)) if content[k - 1] in b" :,[" and content[k] > 32]
    if not starts:
        return _odd(content, rng)
    at = rng.choice(starts)
    end = at + 1
    while end < len(content) and content[end] not in b",]}\n:":
        end += 1
    return content[:at] + rng.choice(ODD) + content[end:]


def _twice(content: bytes, rng: random.Random) -> bytes:
    """A stretch comes twice."""
    at, to = sorted(rng.randint(0, len(content)) for _ in range(2))
    return content[:to] + content[at:to] + content[to:]


def _swapped(content: bytes, rng: random.Random) -> bytes:
    """Two lines have changed places."""
    lines = content.split(b"\n")
    a, b = (rng.randrange(len(lines)) for _ in range(2))
    lines[a], lines[b] = lines[b], lines[a]
    return b"\n".join(lines)


FAULTS: tuple[Callable[[bytes, random.Random], bytes], ...] = (
    _cut, _hole, _bit, _bit, _noise, _odd, _odd_value, _odd_value, _odd_value, _twice, _swapped,
)  # fmt: skip
