"""Seals a Python process and all that it starts from the network, and writes down each attempt.

Python loads a module of this name at its start when this folder is in ``PYTHONPATH``. What
Python code tries is told by an audit hook; what native code tries meets a system-call filter
that lets no internet socket come about (seccomp(2), Linux). Other sockets - the screen's, the
sound's, those between processes - are local and stay.
"""

from __future__ import annotations

import ctypes
import os
import platform
import signal
import struct
import sys
import traceback
from typing import Any

ATTEMPTS = os.environ["TURNPOST_TEST_ATTEMPTS"]
#: Number of the system call ``socket``, and the machine's name for the kernel (linux/audit.h).
SOCKET, MACHINE = {"x86_64": (41, 0xC000003E), "aarch64": (198, 0xC00000B7)}[platform.machine()]
INTERNET = (2, 10)  # AF_INET, AF_INET6 (bits/socket.h)
NAMES = ("socket.getaddrinfo", "socket.gethostbyname", "socket.gethostbyaddr")

# linux/filter.h, linux/seccomp.h, linux/prctl.h.
LOAD, JUMP_IF_EQUAL, RETURN = 0x20, 0x15, 0x06
ALLOW, TRAP = 0x7FFF0000, 0x00030000
CALL_AT, MACHINE_AT, FIRST_ARGUMENT_AT = 0, 4, 16
SET_SECCOMP, FILTER, NO_NEW_PRIVILEGES = 22, 2, 38


def write_down(what: str) -> None:
    """Add an attempt, with where it was made."""
    place = " < ".join(f"{f.filename}:{f.lineno}" for f in traceback.extract_stack()[-3:-1][::-1])
    line = f"{os.getpid()} {what} at {place}\n".encode()
    out = os.open(ATTEMPTS, os.O_WRONLY | os.O_APPEND | os.O_CREAT, 0o600)
    os.write(out, line)
    os.close(out)


def audit(event: str, args: tuple[Any, ...]) -> None:
    """Refuse what Python code tries."""
    if event in NAMES or (event == "socket.__new__" and int(args[1]) in INTERNET):
        write_down(f"{event}{args[1:]!r}")
        raise PermissionError("sealed from the network")


def filter_calls() -> None:
    """Let no internet socket come about in this process and its children."""
    program = [
        (LOAD, 0, 0, MACHINE_AT),
        (JUMP_IF_EQUAL, 0, 5, MACHINE),
        (LOAD, 0, 0, CALL_AT),
        (JUMP_IF_EQUAL, 0, 3, SOCKET),
        (LOAD, 0, 0, FIRST_ARGUMENT_AT),
        (JUMP_IF_EQUAL, 2, 0, INTERNET[0]),
        (JUMP_IF_EQUAL, 1, 0, INTERNET[1]),
        (RETURN, 0, 0, ALLOW),
        (RETURN, 0, 0, TRAP),
    ]
    code = ctypes.create_string_buffer(b"".join(struct.pack("HBBI", *step) for step in program))
    head = ctypes.create_string_buffer(
        struct.pack("HxxxxxxQ", len(program), ctypes.addressof(code))
    )
    libc = ctypes.CDLL(None, use_errno=True)
    for call in (
        (NO_NEW_PRIVILEGES, 1, 0, 0, 0),
        (SET_SECCOMP, FILTER, ctypes.addressof(head), 0, 0),
    ):
        if libc.prctl(*(ctypes.c_ulong(v) for v in call)) != 0:
            sys.exit(f"can't be sealed from the network: {os.strerror(ctypes.get_errno())}")


signal.signal(signal.SIGSYS, lambda *_: write_down("an internet socket of native code"))
sys.addaudithook(audit)
filter_calls()
