"""What the patient hands over: which sessions, and the one file they go into."""

from __future__ import annotations

import contextlib
import datetime as dt
import json
import secrets
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from tracker.errors import InputError, TurnpostError
from tracker.handover import container, crypt
from tracker.handover.fingerprint import keys_words
from tracker.plan.model import HandOver, Plan
from tracker.session.files import data_folder, make_private_folder, write_atomically
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary import load_summary

#: What was handed over already, and to which keys; in the data folder.
RECORD, RECORD_FORMAT = "handed-over.json", "turnpost-handed-over"
MAX_RECORD = 5_000_000
#: To whom plain files go, in the record.
_PLAIN = "plain"

Which = Literal["new", "all"]


@dataclass(frozen=True, slots=True)
class Offer:
    """What can be handed over.

    Attributes
    ----------
    new, all
        Folders of sessions of the plan's person, the oldest first: those that were not handed
        to this clinic yet, and all of them.
    unread
        Sessions that can't be read, and why: left out.
    """

    new: tuple[Path, ...]
    all: tuple[Path, ...]
    unread: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Handed:
    """What went into a file.

    Attributes
    ----------
    sessions
        IDs of the sessions in it.
    left
        How many more there are, for a further file: one file would have become too large.
    without_trace
        IDs of sessions whose samples were left out, because they alone are too large.
    encrypted
        Whether only the clinic can read it.
    """

    sessions: tuple[str, ...]
    left: int
    without_trace: tuple[str, ...]
    encrypted: bool


def way_of(plan: Plan) -> HandOver:
    """How a plan's sessions are handed over.

    Raises
    ------
    InputError
        If the plan names no way.
    """
    if plan.hand_over is None:
        raise InputError(
            "this plan does not say to whom sessions are handed over; ask your therapist for a "
            "plan with the clinic's key ('turnpost plan keys')"
        )
    return plan.hand_over


def offer_of(plan: Plan, data: Path | None = None) -> Offer:
    """Sessions that can be handed over with a plan."""
    data = data or data_folder()
    found, unread = [], []
    for path in sorted((data / "sessions").glob(f"*/{SUMMARY_NAME}")):
        try:
            summary = load_summary(path)
        except InputError as error:
            unread.append(str(error))
            continue
        folder = path.parent
        if summary.person != plan.person or summary.session_id != folder.name:
            continue
        if plan.person is None and summary.plan_id != plan.plan_id:
            # Without pseudonyms two people on one computer are told apart by their plans alone.
            continue
        if container.is_safe_session(folder.name):
            found.append((summary.started_at or "", folder))
    every = [folder for _, folder in sorted(found, key=lambda f: (f[0], f[1].name))]
    done = set(_record(data).get(_receiver(plan), ()))
    new = [folder for folder in every if folder.name not in done]
    return Offer(tuple(new), tuple(every), tuple(unread))


def file_name(plan: Plan) -> str:
    """A name for the file that tells nothing about anybody."""
    ending = "turnpost" if plan.hand_over is not None and plan.hand_over.plain else "age"
    return f"turnpost-{secrets.token_hex(3)}.{ending}"


def hand_over(
    plan: Plan,
    sessions: Sequence[Path],
    to: Path,
    *,
    data: Path | None = None,
    version: str = "",
    now: Callable[[], dt.datetime] = lambda: dt.datetime.now().astimezone(),
) -> Handed:
    """Write sessions into one file, and remember that they were handed over.

    Parameters
    ----------
    plan
        Says to which keys it is encrypted, or that it is not.
    sessions
        Folders of sessions, the oldest first.
    to
        The file.

    Raises
    ------
    InputError
        If the plan names no way, there are no sessions, or ``to`` exists or can't be written to.
    RunError
        If writing fails; nothing is left over, and nothing counts as handed over.
    """
    way = way_of(plan)
    if not sessions:
        raise InputError("there is no session to hand over")
    if to.exists():
        raise InputError(f"{to}: is there already; name another file")
    members, contents, taken, thin = _gather(sessions)
    at = now()
    head = container.Head.model_validate(
        {
            "format": container.FORMAT,
            "format_version": container.FORMAT_VERSION,
            "handover_id": f"{at:%Y%m%d-%H%M%S}-{secrets.token_hex(3)}",
            "made_at": at.isoformat(timespec="seconds"),
            "program_version": version[:40],
            "person": plan.person,
            "plan_id": plan.plan_id,
            "members": [m.model_dump() for m in members],
        }
    )
    packed = container.pack(head, contents)
    write_atomically(to, packed if way.plain else crypt.encrypt(packed, way.keys))
    _remember(plan, taken, data or data_folder())
    left = len(sessions) - len(taken)
    return Handed(tuple(taken), left, tuple(thin), encrypted=not way.plain)


def _gather(
    sessions: Sequence[Path],
) -> tuple[list[container.Member], list[bytes], list[str], list[str]]:
    """Members and contents of as many sessions as one file may hold; those without samples."""
    members: list[container.Member] = []
    contents: list[bytes] = []
    taken: list[str] = []
    thin: list[str] = []
    total = 0
    for folder in sessions:
        files, dropped = _files_of(folder)
        size = sum(len(content) for _, content in files)
        if taken and (total + size > container.MAX_TOTAL or len(taken) >= container.MAX_SESSIONS):
            break
        total += size
        taken.append(folder.name)
        if dropped:
            thin.append(folder.name)
        for name, content in files:
            members.append(container.member_of(folder.name, name, content))
            contents.append(content)
    return members, contents, taken, thin


def _files_of(folder: Path) -> tuple[list[tuple[str, bytes]], bool]:
    """The files of a session, and whether one was too large to go with them."""
    found, dropped = [], False
    for name in container.FILES:
        path = folder / name
        try:
            if not path.is_file():
                continue
            if path.stat().st_size > container.MAX_MEMBER:
                if name == SUMMARY_NAME:
                    raise InputError(f"{path}: is too large to hand over")
                dropped = True
                continue
            content = path.read_bytes()
            found.append((name, nameless(content) if name == SUMMARY_NAME else content))
        except OSError as error:
            raise InputError(f"{path}: can't be read ({error.strerror})") from error
    if not any(name == SUMMARY_NAME for name, _ in found):
        raise InputError(f"{folder}: has no {SUMMARY_NAME}; name a session's folder")
    return found, dropped


def nameless(summary: bytes) -> bytes:
    """A summary without the names of cameras: a phone's is often that of its owner.

    One without such names stays as it is, byte for byte.
    """
    try:
        data = json.loads(summary)
        parts = [data, *data["exercises"]]
        cameras = [(p.get("setup") or {}).get("camera") for p in parts]
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError):
        return summary
    named = [c for c in cameras if isinstance(c, dict) and c.get("name") is not None]
    if not named:
        return summary
    for camera in named:
        camera["name"] = None
    return (json.dumps(data, indent=1, ensure_ascii=False) + "\n").encode()


def _receiver(plan: Plan) -> str:
    way = plan.hand_over
    return keys_words(list(way.keys)) if way is not None and way.keys else _PLAIN


def _record(data: Path) -> dict[str, list[str]]:
    """Sessions by who got them; a record that can't be read counts as none.

    Then they are handed over once more, which changes nothing at the other end.
    """
    try:
        path = data / RECORD
        if path.stat().st_size > MAX_RECORD:
            return {}
        content = json.loads(path.read_text(encoding="utf-8"))
        given = content["given"] if content["format"] == RECORD_FORMAT else {}
        return {str(k): [str(s) for s in v] for k, v in dict(given).items()}
    except (OSError, ValueError, TypeError, KeyError, RecursionError):
        return {}


def _remember(plan: Plan, sessions: Sequence[str], data: Path) -> None:
    given = _record(data)
    receiver = _receiver(plan)
    given[receiver] = sorted({*given.get(receiver, ()), *sessions})
    content = {"format": RECORD_FORMAT, "format_version": 1, "given": given}
    # The file is written already; without this record its sessions only go out once more.
    with contextlib.suppress(TurnpostError):
        make_private_folder(data)
        write_atomically(data / RECORD, json.dumps(content, indent=1) + "\n")
