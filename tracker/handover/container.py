"""What lies inside a hand-over: some sessions' files, each with its size and hash.

Layout (version 1): the line ``turnpost-handover``; the length of the head, four bytes, the
highest first; the head, JSON (:class:`Head`); then one zlib stream with the contents of
the members, one after the other, as the head lists them. Nothing may follow.
"""

from __future__ import annotations

import hashlib
import json
import re
import zlib
from collections.abc import Iterator, Sequence
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, ValidationError

from tracker.errors import InputError
from tracker.plan.model import Name
from tracker.session.saving import STAGE_NAME, SUMMARY_NAME, TRACE_NAME

FORMAT, FORMAT_VERSION = "turnpost-handover", 1
MAGIC = b"turnpost-handover\n"
#: Own bounds. A session of 20 minutes has about 4 MB of samples, so that some 50 fit into one
#: file, and whoever hands over more makes several.
MAX_HEAD, MAX_SESSIONS = 2_000_000, 1000
MAX_MEMBER, MAX_TOTAL = 50_000_000, 200_000_000
#: What of a session is handed over; never the journal, and nothing of the profile.
FILES = (SUMMARY_NAME, TRACE_NAME, STAGE_NAME)

#: Names that Windows keeps for devices, whatever follows a dot.
_DEVICES = re.compile(r"(con|prn|aux|nul|com[0-9]|lpt[0-9])(\..*)?\Z", re.IGNORECASE)

SessionId = Annotated[
    str, StringConstraints(pattern=r"^[A-Za-z0-9]([A-Za-z0-9._-]{0,98}[A-Za-z0-9_-])?$")
]


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)


class Member(_Strict):
    """One file of a session."""

    session: SessionId
    name: Literal["summary.json", "trace.csv", "stage.json"]
    size: Annotated[int, Field(ge=0, le=MAX_MEMBER)]
    sha256: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{64}$")]


class Head(_Strict):
    """What a hand-over says of itself."""

    format: Literal["turnpost-handover"]
    format_version: Literal[1]
    handover_id: Annotated[str, StringConstraints(pattern=r"^[0-9]{8}-[0-9]{6}-[0-9a-f]{6}$")]
    made_at: Annotated[str, StringConstraints(max_length=40)]
    program_version: Annotated[str, StringConstraints(max_length=40)]
    person: Name | None
    plan_id: Name | None
    members: Annotated[list[Member], Field(min_length=1, max_length=len(FILES) * MAX_SESSIONS)]


#: Contents of members by session and name of file.
Contents = dict[tuple[str, str], bytes]


def is_safe_session(name: str) -> bool:
    """Whether a session's ID can be a folder's name on every system."""
    matched = re.fullmatch(r"[A-Za-z0-9]([A-Za-z0-9._-]{0,98}[A-Za-z0-9_-])?", name)
    return matched is not None and not _DEVICES.match(name)


def member_of(session: str, name: str, content: bytes) -> Member:
    """What the head says of a file."""
    digest = hashlib.sha256(content).hexdigest()
    return Member.model_validate(
        {"session": session, "name": name, "size": len(content), "sha256": digest}
    )


def pack(head: Head, contents: Sequence[bytes]) -> bytes:
    """A hand-over, not encrypted; ``contents`` in the order of the head's members."""
    text = json.dumps(head.model_dump(mode="json"), ensure_ascii=False).encode()
    squeezer = zlib.compressobj()
    squeezed = b"".join([*(squeezer.compress(c) for c in contents), squeezer.flush()])
    return b"".join((MAGIC, len(text).to_bytes(4, "big"), text, squeezed))


def unpack(packed: bytes) -> tuple[Head, Contents]:
    """What a hand-over holds, once all of it was found to be as its head says.

    Raises
    ------
    InputError
        If it is none, is of another version, is damaged, or asks for more than is allowed.
    """
    if not packed.startswith(MAGIC):
        raise InputError("is not a hand-over of this program")
    at = len(MAGIC) + 4
    length = int.from_bytes(packed[len(MAGIC) : at], "big")
    if length > MAX_HEAD or len(packed) < at + length:
        raise InputError("is a damaged hand-over: its head is not whole; ask for it again")
    head = _head_of(packed[at : at + length])
    contents: Contents = {}
    parts = _parts(packed[at + length :], [m.size for m in head.members])
    for member, content in zip(head.members, parts, strict=True):
        if hashlib.sha256(content).hexdigest() != member.sha256:
            raise InputError(
                f"is a damaged hand-over: {member.session}/{member.name} is not what was packed; "
                "ask for it again"
            )
        contents[member.session, member.name] = content
    return head, contents


def _head_of(text: bytes) -> Head:
    try:
        data = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError("is a damaged hand-over: its head can't be read") from error
    version = data.get("format_version") if isinstance(data, dict) else None
    if isinstance(version, int) and version > FORMAT_VERSION:
        raise InputError(
            f"was made by a newer Turnpost (its format is {version}, this one reads up to "
            f"{FORMAT_VERSION}): update this one, then take it in again"
        )
    try:
        head = Head.model_validate_json(text)
    except ValidationError as error:
        first = error.errors(include_url=False)[0]
        where = ".".join(str(p) for p in first["loc"])
        raise InputError(f"is no usable hand-over: {where}: {first['msg']}") from error
    _must_make_sense(head)
    return head


def _must_make_sense(head: Head) -> None:
    if sum(m.size for m in head.members) > MAX_TOTAL:
        raise InputError(f"is too large: it says it holds more than {MAX_TOTAL // 10**6} MB")
    sessions = {m.session for m in head.members}
    bad = next((s for s in sorted(sessions) if not is_safe_session(s)), None)
    if bad is not None:
        raise InputError(f"is no usable hand-over: {bad!r} can't be the name of a session")
    # Some disks don't tell capital letters from small ones.
    names = [(m.session.casefold(), m.name) for m in head.members]
    if len(set(names)) != len(names) or len({s.casefold() for s in sessions}) != len(sessions):
        raise InputError("is no usable hand-over: it names a file twice")
    lacks = sessions - {m.session for m in head.members if m.name == SUMMARY_NAME}
    if lacks:
        raise InputError(f"is no usable hand-over: {min(lacks)} has no {SUMMARY_NAME}")


def _parts(squeezed: bytes, sizes: Sequence[int]) -> Iterator[bytes]:
    """The contents, never more than their sizes whatever the stream would swell to."""
    damaged = InputError("is a damaged hand-over: its content is not whole; ask for it again")
    opener, rest = zlib.decompressobj(), squeezed
    for size in sizes:
        content = bytearray()
        while len(content) < size:
            try:
                more = opener.decompress(rest, size - len(content))
            except zlib.error as error:
                raise damaged from error
            rest = opener.unconsumed_tail
            if not more and not rest:
                raise damaged
            content += more
        yield bytes(content)
    try:
        left = opener.decompress(rest, 1)
    except zlib.error as error:
        raise damaged from error
    if left or not opener.eof or opener.unused_data or opener.unconsumed_tail:
        raise InputError("is no usable hand-over: it holds more than its head says")
