"""The container: whatever it claims, nothing leaves its folder, swells up or hides."""

from __future__ import annotations

import json
import zlib
from typing import Any

import pytest

from tracker.errors import InputError
from tracker.handover import container
from tracker.handover.container import MAGIC, Head, member_of, pack, unpack

CONTENTS = [b'{"a": 1}', b"time_s\n0\n" * 400]


def head_of(**changes: Any) -> dict[str, Any]:
    members = [
        member_of("20261120-090000-ab00", name, content).model_dump()
        for name, content in zip(("summary.json", "trace.csv"), CONTENTS, strict=True)
    ]
    return {
        "format": "turnpost-handover",
        "format_version": 1,
        "handover_id": "20261126-101500-a1b2c3",
        "made_at": "2026-11-26T10:15:00+01:00",
        "program_version": "0.1.0",
        "person": "P-07",
        "plan_id": "plan-7",
        "members": members,
    } | changes


def raw(head: Any, body: bytes | None = None) -> bytes:
    """A container with any head and body."""
    text = head if isinstance(head, bytes) else json.dumps(head).encode()
    body = zlib.compress(b"".join(CONTENTS)) if body is None else body
    return MAGIC + len(text).to_bytes(4, "big") + text + body


def named(session: str, name: str = "summary.json") -> dict[str, Any]:
    head = head_of()
    head["members"][0] |= {"session": session, "name": name}
    head["members"] = head["members"][:1]
    return head


def one(content: bytes = CONTENTS[0]) -> bytes:
    return zlib.compress(content)


def test_what_is_packed_comes_out() -> None:
    head = Head.model_validate(head_of())
    found, contents = unpack(pack(head, CONTENTS))
    assert found == head
    assert list(contents.values()) == CONTENTS
    assert unpack(raw(head_of())) == (found, contents)


@pytest.mark.parametrize(
    "session",
    [
        "../up", "..", ".", "/etc", "a/b", "a\\b", "C:", "c:x", "a\x00b", "", ".hidden", "a.", "a ",
        "CON", "nul", "com1.x", "é", "a" * 101, "-a", "a\n", "\u202ea", "~", "a:stream",
    ],
)  # fmt: skip
def test_a_session_can_not_be_named_so(session: str) -> None:
    with pytest.raises(InputError, match="no usable hand-over"):
        unpack(raw(named(session), one()))
    assert not container.is_safe_session(session)


@pytest.mark.parametrize(
    "name", ["../summary.json", "summary.JSON", "journal.jsonl", "p.npz", "", "/summary.json"]
)
def test_only_known_files_are_in_it(name: str) -> None:
    with pytest.raises(InputError, match="no usable hand-over"):
        unpack(raw(named("s1", name), one()))


def test_what_swells_up_is_stopped_at_what_the_head_says(monkeypatch: pytest.MonkeyPatch) -> None:
    bomb = zlib.compress(b"\0" * 50_000_000)
    assert len(bomb) < 60_000
    with pytest.raises(InputError, match="not what was packed"):
        unpack(raw(named("s1"), bomb))
    largest: list[int] = []
    real = zlib.decompressobj

    class Watched:
        def __init__(self) -> None:
            self._it = real()

        def decompress(self, data: bytes, most: int) -> bytes:
            assert most > 0, "without a bound"
            found = self._it.decompress(data, most)
            largest.append(len(found))
            return found

        def __getattr__(self, name: str) -> Any:
            return getattr(self._it, name)

    monkeypatch.setattr(zlib, "decompressobj", Watched)
    with pytest.raises(InputError):
        unpack(raw(named("s1"), bomb))
    assert max(largest) <= len(CONTENTS[0])


def sized(*sizes: int) -> dict[str, Any]:
    head = head_of()
    names = [(f"s{k}", "summary.json") for k in range(len(sizes))]
    head["members"] = [
        {"session": s, "name": n, "size": size, "sha256": "0" * 64}
        for (s, n), size in zip(names, sizes, strict=True)
    ]
    return head


@pytest.mark.parametrize(
    "head",
    [
        sized(container.MAX_MEMBER + 1),
        sized(-1),
        sized(*[container.MAX_MEMBER] * 5),
        sized(*[0] * (3 * container.MAX_SESSIONS + 1)),
        sized(),
    ],
    ids=["a member", "below nothing", "all together", "too many", "none"],
)
def test_sizes_and_numbers_are_bounded(head: dict[str, Any]) -> None:
    with pytest.raises(InputError, match=r"too large|no usable hand-over"):
        unpack(raw(head))


def twice() -> dict[str, Any]:
    head = head_of()
    return head | {"members": [head["members"][0]] * 2}


def in_capitals() -> dict[str, Any]:
    head = named("abc")
    return head | {"members": [head["members"][0], head["members"][0] | {"session": "ABC"}]}


def without_summary() -> dict[str, Any]:
    head = head_of()
    return head | {"members": head["members"][1:]}


@pytest.mark.parametrize(
    ("packed", "said"),
    [
        (b"", "not a hand-over"),
        (b"PK\x03\x04", "not a hand-over"),
        (MAGIC, "head is not whole"),
        (MAGIC + b"\xff\xff\xff\xff{}", "head is not whole"),
        (raw(b"{", b""), "head can't be read"),
        (raw(b"[" * 100_000, b""), "head can't be read"),
        (raw([], b""), "no usable hand-over"),
        (raw(head_of(format_version=2)), "newer Turnpost"),
        (raw(head_of(format_version=0)), "format_version"),
        (raw(head_of(format="turnpost-plan")), "format"),
        (raw(head_of(extra=1)), "extra"),
        (raw(head_of(person="Jane Doe")), "person"),
        (raw(head_of(handover_id="../x")), "handover_id"),
        (raw(twice()), "names a file twice"),
        (raw(in_capitals()), "names a file twice"),
        (raw(without_summary()), "has no summary.json"),
        (raw(head_of(), zlib.compress(b"".join(CONTENTS)) + b"more"), "more than its head says"),
        (raw(head_of(), zlib.compress(b"".join([*CONTENTS, b"m"]))), "more than its head says"),
        (raw(head_of(), zlib.compress(b"".join(CONTENTS)[:-1])), "content is not whole"),
        (raw(head_of(), b"not squeezed"), "content is not whole"),
        (raw(head_of(), zlib.compress(b"x" + b"".join(CONTENTS)[1:])), "not what was packed"),
    ],
)
def test_what_is_wrong_is_said(packed: bytes, said: str) -> None:
    with pytest.raises(InputError, match=said):
        unpack(packed)


def test_each_byte_counts() -> None:
    packed = raw(head_of())
    for at in range(len(packed)):
        with pytest.raises(InputError):
            unpack(packed[:at])
    # A changed letter in a free field of the head can't be seen here: encryption sees it.
    for at in range(len(packed) - len(zlib.compress(b"".join(CONTENTS))), len(packed)):
        with pytest.raises(InputError):
            unpack(packed[:at] + bytes([packed[at] ^ 0x55]) + packed[at + 1 :])
