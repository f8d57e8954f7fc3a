"""What the system refuses is said in our own words, in every language, wherever it is shown."""

from __future__ import annotations

import ast
import errno
import os
import re
from pathlib import Path

import pytest

import calibration
import tracker
import ui
from tests.ui.fakes import Make
from tracker.errors import SYSTEM_REASONS, WINDOWS_REASONS, InputError, system_reason
from ui import words
from ui.languages import CODES
from ui.words.told import TOLD_WORDS

#: What only the command line says, which speaks English.
TERMINAL = ("ui/posting", "ui/commands", "ui/bench", "ui/desktop_entry.py", "vision/cameras.py")


def sentences() -> set[str]:
    """Every sentence in which a reason of the system stands, other fields as ``{path}``."""
    found = set()
    for package in (tracker, calibration, ui):
        for path in Path(package.__path__[0]).rglob("*.py"):
            if any(part in path.as_posix() for part in TERMINAL):
                continue
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.JoinedStr) and "system_reason(" in ast.unparse(node):
                    found.add("".join(map(_part, node.values)))
    return found


def _part(node: ast.expr) -> str:
    if isinstance(node, ast.Constant):
        return str(node.value)
    return "{why}" if "system_reason(" in ast.unparse(node) else "{path}"


def test_every_sentence_and_every_reason_can_be_said() -> None:
    said = set(TOLD_WORDS.values())
    assert len(sentences()) >= 8 and sentences() - said == set()
    assert set(SYSTEM_REASONS) - said == set()
    assert set(WINDOWS_REASONS) <= set(SYSTEM_REASONS)


def refused() -> set[str]:
    """What this program itself gives as a reason, in the system's place."""
    return {
        str(node.args[1].value)
        for package in (tracker, calibration, ui)
        for path in Path(package.__path__[0]).rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and ast.unparse(node.func) == "RefusedError"
        if isinstance(node.args[1], ast.Constant)
    }


def test_every_reason_of_our_own_can_be_said() -> None:
    assert len(refused()) >= 3 and refused() - set(TOLD_WORDS.values()) == set()


def test_no_page_takes_the_words_of_the_system() -> None:
    # The launcher runs before any of us is installed.
    theirs = {"errors.py", "start.py", "inputs.py"}
    for package in (tracker, calibration, ui):
        for path in Path(package.__path__[0]).rglob("*.py"):
            if path.name not in theirs:
                assert "strerror" not in path.read_text(encoding="utf-8"), path


def test_no_page_shows_an_error_as_it_came() -> None:
    for folder in ("pages", "desk", "widgets", "session"):
        paths = list((Path(ui.__path__[0]) / folder).rglob("*.py"))
        assert paths
        for path in paths:
            found = re.findall(r"str\([\w.]*\.error\)", path.read_text(encoding="utf-8"))
            assert not found, f"{path}: words.failed says it in the language"


@pytest.mark.parametrize("language", [c for c in CODES if c != "en"])
@pytest.mark.parametrize("number", [errno.EACCES, errno.ENOSPC, errno.EROFS, errno.ENOENT])
def test_a_refusal_is_told_whole_in_the_language(make: Make, number: int, language: str) -> None:
    make(language=language)
    reason = system_reason(OSError(number, os.strerror(number)))
    told = words.told(f"/somewhere/a.zip: can't be read ({reason})")
    assert "a.zip" in told and words.told(reason) in told
    assert words.told(reason) != reason and reason not in told and "can't" not in told
    assert os.strerror(number) not in told


def test_what_nobody_knows_keeps_its_words() -> None:
    assert system_reason(OSError(9999, "something odd")) == "something odd"
    assert system_reason(OSError()) == "OSError" and system_reason(ValueError("so")) == "so"


@pytest.mark.parametrize(
    ("winerror", "number", "reason"),
    [
        # Numbers of Windows and what CPython makes of them: from memory of both lists.
        (5, errno.EACCES, "this account has no right to it"),
        (19, errno.EACCES, "nothing can be changed there, only read"),
        (21, errno.EACCES, "the disk is no longer connected"),
        (23, errno.EACCES, "the disk has a fault"),
        (32, errno.EACCES, "another program is using it"),
        (33, errno.EACCES, "another program is using it"),
        (39, errno.EINVAL, "the disk is full"),
        (112, errno.ENOSPC, "the disk is full"),
        (53, errno.ENOENT, "the place on the network does not answer"),
        (64, errno.EINVAL, "the place on the network does not answer"),
        (121, errno.EINVAL, "the place on the network does not answer"),
        (123, errno.EINVAL, "this name can't be used here"),
        # Neither a right nor a name: the system's own words tell more.
        (34, errno.EACCES, "Verweigert"),
        (1006, errno.EINVAL, "Verweigert"),
        (None, errno.EINVAL, "this name can't be used here"),
    ],
)
def test_windows_own_numbers_tell_more_than_what_they_come_as(
    winerror: int | None, number: int, reason: str
) -> None:
    error = OSError(number, "Verweigert")
    error.winerror = winerror
    assert system_reason(error) == reason


def test_a_refusal_that_nobody_caught_is_told_like_any_other(make: Make) -> None:
    make(language="de")
    full = OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), "/somewhere/x")
    assert words.failed(full) == words.say("told.disk_full")
    assert words.failed(InputError("there is nothing to copy")) == words.say("told.copy_nothing")
    assert "KeyError" in words.failed(KeyError("x"))
