"""No command writes over what nobody can make again, whatever name is given to it.

The kinds of files are those of the data dictionary and the formats of ``DEVELOPERS.md``; the
rule is this project's own.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from tests.handover.made import everything, pair, plan_with, write_session
from tests.plan.examples import TEXT
from tests.session.synthetic import steps, turns_samples
from tracker.handover import crypt
from tracker.handover.sending import hand_over
from tracker.outputs import CLIP_SUMMARY, TRACE, HeldDataError, kind_of, must_harm_nothing
from tracker.plan.files import save_plan
from tracker.records.notes import NoteBook
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.saving import SUMMARY_NAME
from ui.cli import main
from ui.commands import measure

REPORTS = ("pdf", "pdf-details", "html", "csv", "repetitions-csv", "fhir")


def held(folder: Path) -> dict[str, Path]:
    """One file of each kind under a name of no meaning, and those of two sessions."""
    folder.mkdir()
    sessions = [write_session(folder, day) for day in ("2026-11-20", "2026-11-21")]
    one, other = sessions
    found = {f"own {p.name}": p for p in one.iterdir()}
    found |= {f"other {p.name}": p for p in other.iterdir()}
    found |= {f"beside {n}": one / n for n in ("Stage.json", "journal.jsonl", "SUMMARY.JSON")}
    for source, name in ((SUMMARY_NAME, "copied.json"), ("trace.csv", "copied.csv")):
        (folder / name).write_bytes((one / source).read_bytes())
        found[name] = folder / name
    # One cut in the middle is somebody's work as well.
    (folder / "cut.json").write_bytes((one / SUMMARY_NAME).read_bytes()[:400])
    NoteBook(folder, "kim").add("note", "s", "was tired")
    found |= {"cut": folder / "cut.json", "notes": folder / "notes" / "kim.notes.jsonl"}
    found["notes to come"] = folder / "notes" / "lee.notes.jsonl"
    save_plan(folder / "plan-of-theirs.json", plan_with(plain=True))
    (folder / "draft").write_text(TEXT.replace('"entries"', '"entriez"'), encoding="utf-8")
    found |= {"plan": folder / "plan-of-theirs.json", "draft": folder / "draft"}
    data = folder / "data"
    for name, plan in (("plain", plan_with(plain=True)), ("locked", plan_with(pair()[1]))):
        found[name] = folder / f"{name}.bin"
        hand_over(plan, sessions, found[name], data=data)
    found["key"] = folder / "k.age"
    found["key"].write_bytes(crypt.lock(pair()[0], "three quiet words"))
    found["public"] = folder / "k.pub"
    found["public"].write_text(pair()[1] + "\n", encoding="utf-8")
    found["journal"] = folder / "j.txt"
    found["journal"].write_text('{"format": "turnpost-journal", "format_version": 1}\n{}\n')
    return found


@pytest.mark.parametrize("kind", REPORTS)
def test_no_report_takes_the_place_of_data(
    kind: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    files = held(tmp_path / "clinic")
    before = everything(tmp_path)
    source = str(files["own summary.json"])
    for what, path in files.items():
        assert main(["report", source, f"--{kind}", str(path)]) == 2, what
        assert path.name in capsys.readouterr().err, what
    # The name of the file forgotten: the next word is taken for it.
    assert main(["report", f"--{kind}", source, str(files["other summary.json"])]) == 2
    assert everything(tmp_path) == before


def other_commands(folder: Path, files: dict[str, Path]) -> dict[str, Callable[[str], list[str]]]:
    plan, own = str(folder / "mine.json"), str(files["own trace.csv"])
    return {
        "sheet as PDF": lambda to: ["plan", "sheet", plan, "--pdf", to],
        "sheet as HTML": lambda to: ["plan", "sheet", plan, "--html", to],
        "starter": lambda to: ["plan", "new", "--out", to],
        "keys": lambda to: ["plan", "keys", plan, "--plain", "--out", to],
        "check": lambda to: ["check", own, "--exercise", "turns-on-target", "--out", to],
        "hand-over": lambda to: ["handover", "--plan", plan, "--all", "--to", to],
    }


def test_nor_does_any_other_command_with_an_output(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    files = held(tmp_path / "clinic")
    monkeypatch.setenv("TURNPOST_DATA", str(tmp_path / "clinic"))
    save_plan(tmp_path / "mine.json", plan_with(plain=True))
    before = everything(tmp_path)
    for name, words in other_commands(tmp_path, files).items():
        for what, path in files.items():
            assert main(words(str(path))) == 2, (name, what)
            said = capsys.readouterr().err
            assert path.name in said, (name, what)
    now = everything(tmp_path)
    assert {k: v for k, v in now.items() if k in before} == before


def test_measuring_a_clip_is_refused_before_it_begins(tmp_path: Path) -> None:
    files = held(tmp_path / "clinic")
    for path in files.values():
        assert main(["measure", str(tmp_path / "no.mp4"), "--out", str(path)]) == 2
        with pytest.raises(HeldDataError):
            must_harm_nothing(path)


FILMS = {
    "mp4": b"\0\0\0\x20ftypisom",
    "mov": b"\0\0\0\x08wide",
    "avi": b"RIFF\x10\0\0\0AVI LIST",
    "mkv": b"\x1aE\xdf\xa3\x01",
    "mpg": b"\0\0\x01\xba!",
    "ts": b"G" + 187 * b"\0" + b"G" + 187 * b"\0" + b"G",
    "png": b"\x89PNG\r\n\x1a\n",
    "jpg": b"\xff\xd8\xff\xe0",
    "webp": b"RIFF\x10\0\0\0WEBPVP8 ",
}


@pytest.mark.parametrize("ending", FILMS)
def test_no_output_takes_the_place_of_a_video_or_a_picture(
    ending: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The beginnings are those of the formats, from memory; the two first words of each command
    are the same file, as when a name is given twice by mistake."""
    film = tmp_path / f"c.{ending}"
    film.write_bytes(FILMS[ending] + b"0" * 400)
    session = str(write_session(tmp_path, "2026-11-20"))
    before = everything(tmp_path)
    for words in (
        ["measure", str(film), "--out", str(film)],
        ["check", str(film), "--exercise", "turns-on-target", "--out", str(film)],
        ["report", session, "--pdf", str(film)],
    ):
        assert main(words) == 2
        assert "name another file" in capsys.readouterr().err
    assert everything(tmp_path) == before


def test_nor_that_of_what_it_is_made_from(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """By the file and not by its name, and whatever it holds."""
    clip, other = tmp_path / "c.mp4", tmp_path / "other.csv"
    clip.write_bytes(b"no format that is known")
    other.symlink_to(clip)
    for to in (clip, other):
        assert main(["measure", str(clip), "--out", str(to)]) == 2
        assert "is read for this" in capsys.readouterr().err
        words = ["check", str(clip), "--exercise", "turns-on-target"]
        assert main([*words, "--out", str(to)]) == 2
        assert "is read for this" in capsys.readouterr().err
    assert clip.read_bytes() == b"no format that is known"


def test_what_a_command_has_made_from_a_clip_it_makes_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A summary and a trace of no session, in a folder of their own as well."""
    source = write_session(tmp_path / "clinic", "2026-11-20") / "trace.csv"
    out = tmp_path / "out"
    out.mkdir()
    words = ["check", str(source), "--exercise", "turns-on-target", "--out"]
    for _ in range(2):
        assert main([*words, str(out / SUMMARY_NAME)]) == 0
    record = run_samples(turns_samples(to_s=8.0), steps(to_s=8.0), SessionInfo())
    monkeypatch.setattr(measure, "measure_clip", lambda *_: record)
    film = tmp_path / "c.mp4"
    film.write_bytes(FILMS["mp4"])
    for to in (tmp_path / "t.csv", out / "trace.csv"):
        for _ in range(2):
            assert main(["measure", str(film), "--out", str(to)]) == 0
        assert kind_of(to) == TRACE
    # The other command made it; and beside a session it is a session's, whatever its name.
    assert main([*words, str(out / "trace.csv")]) == 2
    assert main(["measure", str(film), "--out", str(out / SUMMARY_NAME)]) == 2
    beside = source.with_name("t.csv")
    beside.write_bytes(source.read_bytes())
    for to in (source, beside):
        assert main(["measure", str(film), "--out", str(to)]) == 2
    (out / SUMMARY_NAME).write_bytes(source.with_name(SUMMARY_NAME).read_bytes())
    assert main(["measure", str(film), "--out", str(out / "trace.csv")]) == 2
    assert main([*words, str(out / SUMMARY_NAME)]) == 2


def test_documents_and_clips_own_summaries_are_made_again(tmp_path: Path) -> None:
    files = held(tmp_path / "clinic")
    source = str(files["own summary.json"])
    for kind in REPORTS[2:] * 2:
        assert main(["report", source, f"--{kind}", str(tmp_path / kind)]) == 0
        assert kind_of(tmp_path / kind) == ""
    words = ["check", str(files["copied.csv"]), "--exercise", "turns-on-target", "--out"]
    for _ in range(2):
        assert main([*words, str(tmp_path / "check.json")]) == 0
    assert kind_of(tmp_path / "check.json") == CLIP_SUMMARY
    assert main(["report", source, "--fhir", str(tmp_path / "check.json")]) == 2
    # A name alone would make a folder a session's.
    assert main(["report", source, "--fhir", str(tmp_path / SUMMARY_NAME)]) == 2
