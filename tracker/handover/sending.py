"""What the patient hands over: which sessions, and the one file they go into."""

from __future__ import annotations

import datetime as dt
import json
import secrets
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from tracker.errors import InputError, TurnpostError, system_reason
from tracker.handover import container, crypt
from tracker.handover.sent import receiver, record, remember
from tracker.inputs import TooLargeError, read_bytes
from tracker.outputs import must_harm_nothing
from tracker.plan.model import HandOver, Plan
from tracker.plan.starter import TRY_ID
from tracker.practice.tries import is_quiet_try
from tracker.session.files import data_folder, write_atomically
from tracker.session.recovery import interrupted_sessions, moved_sessions
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import load_summary


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
    foreign
        Sessions of the same pseudonym under plans of which this clinic has got none yet, by
        the plan's ID, and how many: left out unless asked for. They may be another clinic's,
        or another person's.
    unsent
        How many of other pseudonyms, or of none, never went to anybody: left out.
    broken_off, elsewhere
        How many broke off and were not saved yet, or were saved in another folder: left out.
    """

    new: tuple[Path, ...]
    all: tuple[Path, ...]
    unread: tuple[str, ...] = ()
    foreign: tuple[tuple[str, int], ...] = ()
    unsent: int = 0
    broken_off: int = 0
    elsewhere: int = 0


@dataclass(frozen=True, slots=True)
class Handed:
    """What went into a file.

    Attributes
    ----------
    sessions
        IDs of the sessions in it.
    path
        The file.
    left
        Folders of those that are left for a further file: one would have become too large.
    without_trace
        IDs of sessions that went without a file of theirs, which alone is too large or can't
        be read.
    encrypted
        Whether only the clinic can read it.
    """

    sessions: tuple[str, ...]
    path: Path
    left: tuple[Path, ...]
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


def offer_of(plan: Plan, data: Path | None = None, *, foreign: bool = False) -> Offer:
    """Sessions that can be handed over with a plan.

    Parameters
    ----------
    plan
        The plan.
    data
        The user's data; their usual place if None.
    foreign
        Offer those under plans that this clinic has got nothing of, too.
    """
    data = data or data_folder()
    own: dict[str, tuple[str, str, Path, str | None]] = {}
    unread, unsent = [], set()
    given = record(data)
    done, sent = set(given.get(receiver(plan), ())), set().union(*given.values())
    for path in sorted((data / "sessions").glob(f"*/{SUMMARY_NAME}")):
        try:
            summary = load_summary(path)
        except InputError as error:
            unread.append(str(error))
            continue
        first = (summary.gate or {}).get("put_first")
        if is_quiet_try(summary.plan_id, summary.ended, first if isinstance(first, list) else ()):
            continue
        # Its folder may have been renamed, or copied: a session is told by its own ID.
        name = summary.session_id or ""
        # Without pseudonyms two people on one computer are told apart by their plans alone.
        # What was told in a try can't be told apart so: it is asked for, and not left out.
        known = plan.person is not None or summary.plan_id in (plan.plan_id, TRY_ID)
        if summary.person != plan.person or not known:
            unsent |= {name or str(path)} - sent
        elif not container.is_safe_session(name):
            unread.append(f"{path}: its session has no ID that it could be handed over by")
        elif name not in own or path.parent.name == name:
            own[name] = (summary.started_at or "", name, path.parent, summary.plan_id)
    ordered = sorted(own.values(), key=lambda f: f[:2])
    plans = {plan.plan_id, *(p for _, name, _, p in ordered if name in done and p != TRY_ID)}
    if plan.person is not None:
        plans.add(TRY_ID)
    strange = Counter(p or "" for _, name, _, p in ordered if p not in plans and name not in done)
    every = [(n, f) for _, n, f, p in ordered if foreign or p in plans or n in done]
    return Offer(
        tuple(f for name, f in every if name not in done),
        tuple(f for _, f in every),
        tuple(unread),
        () if foreign else tuple(sorted(strange.items())),
        len(unsent),
        len(interrupted_sessions(data)),
        len(moved_sessions(data)),
    )


def session_of(folder: Path) -> str:
    """The ID of the session in a folder, by its summary; the folder's name where it tells none."""
    try:
        told = json.loads(read_bytes(folder / SUMMARY_NAME, container.MAX_MEMBER))["session_id"]
    except (OSError, TooLargeError, ValueError, TypeError, KeyError, RecursionError):
        return folder.name
    return told if isinstance(told, str) and container.is_safe_session(told) else folder.name


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
    must_harm_nothing(to)
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
    remember(plan, taken, data or data_folder())
    left = tuple(sessions[len(taken) :])
    return Handed(tuple(taken), to, left, tuple(thin), encrypted=not way.plain)


def hand_over_all(
    plan: Plan, sessions: Sequence[Path], to: Path, *, data: Path | None = None, version: str = ""
) -> list[Handed]:
    """As :func:`hand_over`, into as many files as it takes: ``F.age``, ``F-2.age`` ...

    Raises
    ------
    InputError, RunError
        As there. Files that were made before one that fails stay, and are named.
    """
    made: list[Handed] = []
    left, number, place = tuple(sessions), 1, to
    while not made or left:
        try:
            made.append(hand_over(plan, left, place, data=data, version=version))
        except TurnpostError as error:
            if not made:
                raise
            names = ", ".join(str(m.path) for m in made)
            raise type(error)(f"{error}; made before, and to be sent: {names}") from error
        left = made[-1].left
        while place.exists():
            number += 1
            place = to.with_name(f"{to.stem}-{number}{to.suffix}")
    return made


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
        if len(taken) >= container.MAX_SESSIONS:
            break
        files, dropped = _files_of(folder)
        size = sum(len(content) for _, content in files)
        if taken and total + size > container.MAX_TOTAL:
            break
        total += size
        session = session_of(folder)
        taken.append(session)
        if dropped:
            thin.append(session)
        for name, content in files:
            members.append(container.member_of(session, name, content))
            contents.append(content)
    return members, contents, taken, thin


def _files_of(folder: Path) -> tuple[list[tuple[str, bytes]], bool]:
    """The files of a session, and whether one that is too large or can't be read stays behind."""
    found, dropped = [], False
    for name in container.FILES:
        path = folder / name
        try:
            if not path.is_file():
                continue
            content = read_bytes(path, container.MAX_MEMBER)
            found.append((name, nameless(content) if name == SUMMARY_NAME else content))
        except TooLargeError as error:
            if name == SUMMARY_NAME:
                raise InputError(f"{path}: is too large to hand over") from error
            dropped = True
        except OSError as error:
            if name == SUMMARY_NAME:
                raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
            dropped = True
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
