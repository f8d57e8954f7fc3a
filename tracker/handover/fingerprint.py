"""A plan and its keys as a few words, to be compared aloud in a call."""

from __future__ import annotations

import hashlib
import json

from tracker.handover.word_list import WORD_LIST
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.model import Plan

#: Words of a byte each: 64 bits. Own choice: as many as one still reads aloud without a slip.
WORDS = 8
#: Each guess of a forger costs this many hashes, which adds some 16 bits to those of the words;
#: an honest reader waits less than a tenth of a second.
ROUNDS = 100_000
_SALT = b"turnpost plan words 1"


def plan_words(plan: Plan) -> tuple[str, ...]:
    """The eight words of a plan: the same wherever the plan says the same.

    They come from what the plan says, keys included, not from how its file is laid out,
    so that a mail program that changes line ends changes nothing.
    """
    digest = hashlib.pbkdf2_hmac("sha256", _content(plan), _SALT, ROUNDS, WORDS)
    return tuple(WORD_LIST[byte] for byte in digest)


def keys_words(keys: list[str]) -> str:
    """A short name for a set of public keys, to tell one clinic's from another's."""
    return hashlib.sha256("\n".join(sorted(keys)).encode()).hexdigest()[:32]


def _content(plan: Plan) -> bytes:
    # Through its file's text: a plan that was built and one that was read are then alike.
    data = parse_plan(format_plan(plan)).model_dump(mode="json", exclude_unset=True)
    return json.dumps(data, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode()
