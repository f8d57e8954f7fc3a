"""The command line: one clear line for every failure, and nothing heavy without need."""

from __future__ import annotations

import argparse
import errno
import importlib
import os
import subprocess
import sys
import types
from collections.abc import Callable
from pathlib import Path
from types import SimpleNamespace

import pytest

from tracker.errors import InputError, RunError
from ui import cli
from ui.commands import COMMANDS

ROOT = Path(__file__).parents[2]
Install = Callable[[Callable[[argparse.Namespace], int]], None]


@pytest.fixture
def install(monkeypatch: pytest.MonkeyPatch) -> Install:
    """Put a command ``try CLIP [--size N]`` into the table."""

    def put(run: Callable[[argparse.Namespace], int]) -> None:
        def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
            parser = sub.add_parser("try", help="x")
            parser.add_argument("clip", metavar="CLIP")
            parser.add_argument("--size", type=int, default=1)
            parser.set_defaults(run=run)

        module = types.ModuleType("turnpost_try")
        module.add_parser = add_parser  # type: ignore[attr-defined]
        monkeypatch.setitem(sys.modules, "turnpost_try", module)
        monkeypatch.setitem(COMMANDS, "try", ("turnpost_try", "a command for tests"))

    return put


def _raise(error: BaseException) -> Callable[[argparse.Namespace], int]:
    def run(args: argparse.Namespace) -> int:
        raise error

    return run


def test_a_command_gets_its_words_and_gives_its_code(install: Install) -> None:
    seen = []

    def run(args: argparse.Namespace) -> int:
        seen.append((args.clip, args.size, args.debug))
        return 7

    install(run)
    assert cli.main(["try", "a.mp4", "--size", "3"]) == 7
    assert cli.main(["--debug", "try", "a.mp4"]) == 7
    assert cli.main(["try", "a.mp4", "--debug"]) == 7
    assert seen == [("a.mp4", 3, False), ("a.mp4", 1, True), ("a.mp4", 1, True)]


@pytest.mark.parametrize(
    ("words", "says", "hint"),
    [
        (["try"], "required: CLIP", "turnpost try --help"),
        (["try", "a", "b"], "unrecognized arguments: b", "turnpost --help"),
        (["try", "a", "--size", "big"], "invalid int value: 'big'", "turnpost try --help"),
        (["tri", "a"], "no command 'tri'; did you mean 'try'?", "turnpost --help"),
        (["--colour", "try", "a"], "--colour", "turnpost --help"),
    ],
)
def test_a_wrong_call_is_one_line_and_a_hint(
    words: list[str], says: str, hint: str, install: Install, capsys: pytest.CaptureFixture[str]
) -> None:
    install(_raise(AssertionError("must not run")))
    assert cli.main(words) == 2
    out, err = capsys.readouterr()
    first, second = err.splitlines()
    assert out == "" and says in first and first.startswith("turnpost")
    assert hint in second


@pytest.mark.parametrize(
    ("error", "code", "line"),
    [
        (InputError("a.mp4: no such clip"), 2, "turnpost: a.mp4: no such clip"),
        (RunError("the camera is gone"), 1, "turnpost: the camera is gone"),
        (RunError("two\nlines"), 1, "turnpost: two lines"),
        (KeyboardInterrupt(), 130, ""),
        (
            ZeroDivisionError("division\nby zero"),
            1,
            "turnpost: something failed inside Turnpost: ZeroDivisionError: division by zero "
            "(run again with --debug for details)",
        ),
        (
            ImportError("libEGL.so.1: cannot open shared object file"),
            1,
            "turnpost: something that Turnpost needs is missing or broken: libEGL.so.1: cannot "
            "open shared object file ('turnpost doctor' says what to do)",
        ),
    ],
)
def test_a_failure_is_one_line(
    error: BaseException,
    code: int,
    line: str,
    install: Install,
    capsys: pytest.CaptureFixture[str],
) -> None:
    install(_raise(error))
    assert cli.main(["try", "a"]) == code
    out, err = capsys.readouterr()
    assert out == "" and err == (line + "\n" if line else "")


@pytest.mark.parametrize("words", [["--debug", "try", "a"], ["try", "a", "--debug"]])
def test_debug_shows_where(
    words: list[str], install: Install, capsys: pytest.CaptureFixture[str]
) -> None:
    install(_raise(RunError("the camera is gone")))
    assert cli.main(words) == 1
    err = capsys.readouterr().err
    assert "Traceback" in err and err.splitlines()[-1] == "turnpost: the camera is gone"


def test_a_very_long_message_is_cut(install: Install, capsys: pytest.CaptureFixture[str]) -> None:
    install(_raise(ValueError("x" * 10_000)))
    assert cli.main(["try", "a"]) == 1
    assert len(capsys.readouterr().err) < 500


def test_a_broken_pipe_inside_is_not_hushed(
    install: Install, capsys: pytest.CaptureFixture[str]
) -> None:
    install(_raise(BrokenPipeError(32, "Broken pipe")))
    assert cli.main(["try", "a"]) == 1
    assert "something failed inside Turnpost: BrokenPipeError" in capsys.readouterr().err


@pytest.mark.skipif(os.name == "nt", reason="pipes end otherwise on Windows")
def test_a_reader_that_leaves_is_no_failure() -> None:
    code = (
        "import sys, types, ui.cli as cli\n"
        "from ui.commands import COMMANDS\n"
        "m = types.ModuleType('m')\n"
        "def run(args):\n"
        "    for n in range(100000): print('row', n)\n"
        "    return 0\n"
        "m.add_parser = lambda sub: sub.add_parser('rows').set_defaults(run=run)\n"
        "sys.modules['m'] = m\n"
        "COMMANDS['rows'] = ('m', 'x')\n"
        "sys.exit(cli.main(['rows']))\n"
    )
    with subprocess.Popen(
        [sys.executable, "-c", code], cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE
    ) as process:
        assert process.stdout is not None and process.stderr is not None
        assert process.stdout.readline() == b"row 0\n"
        process.stdout.close()
        assert process.stderr.read() == b""
    assert process.returncode == 1


def test_version(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["--version"]) == 0
    assert capsys.readouterr().out == f"turnpost {cli.program_version()}\n"


def test_help_names_every_command(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["--help"]) == 0
    out = capsys.readouterr().out
    for name, (_, help_line) in COMMANDS.items():
        assert name in out
        assert help_line.split()[0] in out


@pytest.mark.parametrize("name", sorted(COMMANDS))
def test_every_command_keeps_its_promises(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    module = importlib.import_module(COMMANDS[name][0])
    assert callable(module.add_parser)
    assert cli.main([name, "--help"]) == 0
    assert f"usage: turnpost {name}" in capsys.readouterr().out
    assert cli.main([name, "--no-such-option"]) == 2
    assert capsys.readouterr().err.startswith("turnpost")


def _modules_after(words: list[str]) -> set[str]:
    code = (
        f"import sys, ui.cli; ui.cli.main({words!r}); "
        "print(*(m.partition('.')[0] for m in sys.modules), sep='\\n', file=sys.stderr)"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    return set(done.stderr.split())


HEAVY = {"numpy", "scipy", "cv2", "mediapipe", "PySide6", "pyqtgraph", "pydantic", "av", "numba"}


@pytest.mark.parametrize(
    "words", [["--help"], ["--version"], ["doctor", "--help"], ["clips", "list"]]
)
def test_help_imports_nothing_heavy(words: list[str]) -> None:
    assert not HEAVY & _modules_after(words)


WITH_WINDOWS = {"open", "demo", "practise", "review", "report"}


@pytest.mark.parametrize("name", sorted(set(COMMANDS) - WITH_WINDOWS))
def test_commands_without_a_window_import_no_qt(name: str) -> None:
    assert not {"PySide6", "pyqtgraph"} & _modules_after([name, "--help"])


@pytest.mark.skipif(sys.platform != "linux", reason="threads are counted as Linux lists them")
def test_equations_are_solved_by_one_thread() -> None:
    """More of them spin while they wait for each other."""
    code = (
        "import os, sys; from ui.cli import main; main(['--version']); import numpy as np; "
        "np.linalg.solve(np.eye(400), np.ones(400)); print(len(os.listdir('/proc/self/task')))"
    )
    plain = {k: v for k, v in os.environ.items() if k != "OPENBLAS_NUM_THREADS"}
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, env=plain, stdout=subprocess.PIPE, check=True
    )
    assert done.stdout.split()[-1] == b"1"


def test_without_a_command_the_program_opens(
    install: Install, monkeypatch: pytest.MonkeyPatch
) -> None:
    ran = []
    module = types.ModuleType("turnpost_open")

    def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
        sub.add_parser("open").set_defaults(run=lambda args: ran.append(args.debug) or 0)

    module.add_parser = add_parser  # type: ignore[attr-defined]
    monkeypatch.setitem(sys.modules, "turnpost_open", module)
    monkeypatch.setitem(COMMANDS, "open", ("turnpost_open", "open the program"))
    assert cli.main([]) == 0
    assert cli.main(["--debug"]) == 0
    assert ran == [False, True]


def test_doctor_finds_what_is_wrong(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    from ui.commands import doctor

    monkeypatch.setenv("DISPLAY", ":7")
    monkeypatch.setattr(doctor, "unreached", str)
    code = cli.main(["doctor"])
    fine = capsys.readouterr().out
    assert "MISSING" not in fine, fine
    assert code == 0 and "library mediapipe 0.10.31" in fine and "model file for the face" in fine

    real = doctor.metadata.version
    others = {"mediapipe": "0.10.35", "opencv-python-headless": "5.0.0", "pyqtgraph": None}

    def version(name: str) -> str:
        if name in others:
            found = others[name]
            if found is None:
                raise doctor.metadata.PackageNotFoundError(name)
            return found
        return real(name)

    unwritable = tmp_path / "a file"
    unwritable.touch()
    monkeypatch.setenv("TURNPOST_DATA", str(unwritable / "data"))
    monkeypatch.setattr(doctor.metadata, "version", version)
    monkeypatch.setattr(doctor, "missing_libraries", lambda: ["libEGL.so.1"])
    monkeypatch.setattr(doctor, "has_screen", lambda: False)
    assert cli.main(["doctor"]) == 1
    bad = [x for x in capsys.readouterr().out.splitlines() if x.startswith("MISSING")]
    for fact in (
        "mediapipe is 0.10.35, and must be 0.10.31 (others send usage figures",
        "pyqtgraph is not installed",
        "overwrite each other: opencv-python, opencv-python-headless",
        "system libraries",
        "no screen",
        "can't be saved",
    ):
        assert sum(fact in line for line in bad) == 1, (fact, bad)
    assert len(bad) == 6


def test_an_older_python_is_named_with_what_to_do(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(cli.sys, "version_info", (3, 9, 18, "final", 0))
    assert cli.main(["doctor"]) == 1
    said = capsys.readouterr().err
    assert said == "turnpost: Python 3.9.18 can't be used; install Python 3.11, 3.12 or 3.13\n"


NOTHING_THERE = """
import sys
for name in ("numpy", "scipy", "cv2", "mediapipe", "pydantic", "platformdirs", "pyrage", "PySide6"):
    sys.modules[name] = None
from ui.cli import main
sys.exit(main(["doctor"]))
"""


def test_the_doctor_goes_on_where_next_to_nothing_is_installed() -> None:
    command = [sys.executable, "-c", NOTHING_THERE]
    bare = {k: v for k, v in os.environ.items() if k != "TURNPOST_DATA"}
    ended = subprocess.run(command, cwd=ROOT, env=bare, check=False, capture_output=True, text=True)
    assert ended.returncode == 1 and ended.stderr == ""
    missing = [x for x in ended.stdout.splitlines() if x.startswith("MISSING")]
    assert any("the model files can't be looked at" in x and "numpy" in x for x in missing)
    # Which folder that is, platformdirs would say.
    assert "folder for sessions can't be looked at" in ended.stdout
    assert ended.stdout.rstrip().endswith("Then run 'turnpost doctor' again.")


def test_without_what_shows_windows_the_program_says_so_in_one_line(tmp_path: Path) -> None:
    code = "import sys; sys.modules['PySide6.QtGui'] = None; from ui.cli import main; "
    ended = subprocess.run(
        [sys.executable, "-c", f"{code}sys.exit(main([]))"],
        cwd=ROOT,
        env=os.environ | {"TURNPOST_DATA": str(tmp_path)},
        check=False,
        capture_output=True,
        text=True,
    )
    assert ended.returncode == 1
    (line,) = ended.stderr.splitlines()
    assert "missing or broken" in line and "PySide6.QtGui" in line and "turnpost doctor" in line


def test_the_doctor_tells_a_file_in_the_place_of_the_folder(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    from ui.commands import doctor

    (tmp_path / "data").touch()
    for named in (tmp_path / "data", tmp_path / "data" / "below"):
        monkeypatch.setenv("TURNPOST_DATA", str(named))
        found = doctor.data_folder()
        assert found.state == "bad" and "it is not there" not in found.what
        assert "it is a file" in found.what


@pytest.mark.parametrize("number", [errno.EACCES, errno.ENAMETOOLONG])
def test_the_doctor_tells_of_a_folder_that_can_not_be_looked_for(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, number: int
) -> None:
    from ui.commands import doctor

    named = tmp_path / ("a" * 300 if number == errno.ENAMETOOLONG else "closed")
    monkeypatch.setenv("TURNPOST_DATA", str(named / "below"))
    if number == errno.EACCES:
        # By hand: root, as which tests may run, has the right to everything.
        stat = Path.stat

        def refuse(path: Path, **more: bool) -> os.stat_result:
            if named in (path, path.parent):
                raise PermissionError(number, os.strerror(number))
            return stat(path, **more)

        monkeypatch.setattr(Path, "stat", refuse)
    found = doctor.data_folder()
    assert found.state == "bad" and "can't be saved" in found.what


@pytest.mark.parametrize(
    # Two blocks, each of a head and two pictures of 640 x 640 with a head of their own.
    ("free", "state"),
    [(64e6, "good"), (2 * 2_457_792, "good"), (2 * 2_457_792 - 1, "bad"), (0, "bad")],
)
def test_the_doctor_tells_of_too_little_memory_for_pictures(
    monkeypatch: pytest.MonkeyPatch, free: float, state: str
) -> None:
    from ui.commands import doctor

    monkeypatch.setattr(doctor.shutil, "disk_usage", lambda _: SimpleNamespace(free=free))
    found = doctor.room_for_pictures()
    assert found.state == state and (state == "good" or "start the computer anew" in found.to_do)

    def refuse(_: object) -> None:
        raise FileNotFoundError

    monkeypatch.setattr(doctor.shutil, "disk_usage", refuse)
    assert doctor.room_for_pictures().state == "note"


def test_the_doctor_tells_of_native_code_that_nobody_looked_into(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    from ui.commands import doctor

    real = doctor.metadata.version
    others = {"numpy": "2.4.99", "llvmlite": "0.50.9"}
    monkeypatch.setattr(doctor.metadata, "version", lambda name: others.get(name) or real(name))
    notes = [f for f in [*doctor.libraries(), *doctor.brought_libraries()] if f.state != "good"]
    assert [f.state for f in notes] == ["note", "note"]
    assert "numpy is 2.4.99; 2.4.6 or 2.5.5 was looked into" in notes[0].what
    assert "llvmlite is 0.50.9" in notes[1].what and "install Turnpost anew" in notes[1].to_do


def test_clips_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    import sample_clips

    assert cli.main(["clips", "list"]) == 0
    out = capsys.readouterr().out.split()
    assert [str(p) for p in sample_clips.shipped()] == [x for x in out if x.endswith(".mp4")]
    assert {p.stem for p in sample_clips.scenarios()} <= set(out)


def test_a_scenario_becomes_a_clip_with_its_truth(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    scenario = tmp_path / "short.json"
    scenario.write_text(
        '{"name": "short", "setup": false, "movement": {"kind": "turns", "repetitions": 1, '
        '"tempo_bpm": 120}, "camera": {"width_px": 160, "height_px": 120, "exposures": 1}}'
    )
    assert cli.main(["clips", "render", str(scenario), "--out", str(tmp_path / "out")]) == 0
    assert capsys.readouterr().out == f"{tmp_path / 'out' / 'short.mp4'}\n"
    made = {p.name for p in (tmp_path / "out").iterdir()}
    assert made == {"short.mp4", "short.truth.csv", "short.stage.json", "short.events.json"}


@pytest.mark.parametrize(
    ("text", "code", "says"),
    [
        (None, 2, "no such scenario; these come along: "),
        ("{", 2, "not a readable scenario"),
        ('{"name": "a", "colour": 1}', 2, "colour: "),
        ('{"name": "a", "head": "nobody"}', 2, "no head is called 'nobody'"),
        ('{"name": "a"}', 1, "a file/out: "),
    ],
)
def test_a_scenario_that_can_not_be_rendered(
    text: str | None, code: int, says: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    scenario = tmp_path / "wanted.json"
    if text is not None:
        scenario.write_text(text)
    (tmp_path / "a file").touch()
    out = tmp_path / "a file" / "out"
    assert cli.main(["clips", "render", str(scenario), "--out", str(out)]) == code
    err = capsys.readouterr().err
    assert says in err and len(err.splitlines()) == 1


def test_rendering_without_its_package(tmp_path: Path) -> None:
    missing = "av"
    scenario = tmp_path / "a.json"
    scenario.write_text('{"name": "a"}')
    words = ["clips", "render", str(scenario), "--out", str(tmp_path)]
    code = f"import sys, ui.cli; sys.modules[{missing!r}] = None; sys.exit(ui.cli.main({words!r}))"
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 1 and done.stdout == ""
    assert f"needs the package {missing}; 'python3 ui/start.py clips render" in done.stderr
    assert len(done.stderr.splitlines()) == 1


@pytest.mark.parametrize("day", ["0001-01-01", "9999-12-31"])
def test_a_day_at_the_end_of_the_calendar_is_refused(
    day: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(["review", str(tmp_path), "--text", "--today", day]) == 2
    assert "too far from today" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("variable", "words"),
    [
        ("TURNPOST_DATA", ["stored"]),
        ("TURNPOST_CACHE", ["review", ".", "--text"]),
    ],
)
def test_a_folder_of_somebody_unknown_is_named(
    variable: str,
    words: list[str],
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setenv(variable, "~nobody-of-this-name/turnpost")
    assert cli.main(words) == 2
    said = capsys.readouterr().err
    assert "~nobody-of-this-name" in said and variable in said


def test_the_doctor_goes_on_where_a_folder_is_somebodys_unknown(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("TURNPOST_MODELS", "~nobody-of-this-name/turnpost")
    assert cli.main(["doctor"]) == 1
    said = capsys.readouterr().out
    assert "~nobody-of-this-name" in said and "TURNPOST_MODELS" in said
    assert said.index("~nobody-of-this-name") < said.index("camera")
