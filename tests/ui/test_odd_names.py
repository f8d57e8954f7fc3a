"""Names that no file can have, and folders in place of files: one clear line, never a crash."""

from __future__ import annotations

from pathlib import Path

import pytest

from ui import cli

#: Longer than any system's bound for a path, and than most systems' bound for a name alone.
PATH, NAME = "x" * 5000, "y" * 300


@pytest.mark.parametrize(
    "call",
    [
        ["measure", PATH],
        ["measure", "a.mp4", "--out", NAME],
        ["measure", "a.mp4", "--stage", PATH],
        ["report", PATH, "--text"],
        ["report", "a", "--html", NAME],
        ["review", PATH],
        ["review", PATH, "--text"],
        ["plan", "check", PATH],
        ["plan", "new", "--out", PATH],
        ["plan", "new", "--out", NAME],
        ["clips", "render", PATH, "--out", "new"],
        ["receive", PATH, "--into", "new"],
        ["demo", "--clip", PATH],
    ],
    ids=lambda call: " ".join(word[:8] for word in call),
)
def test_too_long_a_name_is_said_in_one_line(
    call: list[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(tmp_path)
    assert cli.main(call) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1 and len(said) < 400
    assert "so long a name" in said or "the name is too long" in said, said
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("name", [".", "/", "", ".."])
def test_a_folder_in_place_of_a_clip_is_said(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    assert cli.main(["measure", name]) == 2
    assert "is a folder; name a clip in it" in capsys.readouterr().err


def test_the_doctor_says_that_the_data_folder_has_too_long_a_name(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("TURNPOST_DATA", PATH)
    assert cli.main(["doctor"]) == 1
    said = capsys.readouterr().out
    assert "sessions can't be saved in xxx" in said and "too long" in said.casefold()
    assert max(map(len, said.splitlines())) < 500


def test_of_a_long_message_both_ends_are_shown() -> None:
    assert cli.in_short("a\n b") == "a b"
    assert cli.in_short("a" * 500 + "end", 21) == "a" * 10 + "…" + "a" * 7 + "end"
