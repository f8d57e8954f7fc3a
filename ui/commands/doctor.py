"""``turnpost doctor``: what this machine lacks, in words that can be read out on the phone."""

from __future__ import annotations

import argparse
import contextlib
import os
import platform
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from importlib import metadata
from pathlib import Path
from typing import Literal, get_args

from tracker.errors import InputError, RunError, system_reason
from ui import installed
from ui.native import NATIVE, is_examined
from ui.start import PYTHONS, has_screen, is_debian, missing_libraries, package_of
from ui.x_screen import unreached

State = Literal["good", "note", "bad"]

#: Distribution -> the versions that the program was tested with, as a prefix.
LIBRARIES = {
    "mediapipe": "0.10.31",
    "opencv-python": "5.",
    "PySide6-Essentials": "6.12.",
    "PySide6-Addons": "6.12.",
    "pyqtgraph": "0.14.",
    "numpy": "2.",
    "numba": "0.",
    "scipy": "1.",
    "pydantic": "2.",
    "platformdirs": "4.",
    "pyrage": "1.",
}
#: Why another version is not merely untested.
WHY = {
    "mediapipe": "others send usage figures to their maker, or fail on Windows",
    "pyqtgraph": "others end with a crash beside this Qt",
}
#: All of these fill the same folder, so that the last one installed wins.
OPENCV_PACKAGES = (
    "opencv-python",
    "opencv-contrib-python",
    "opencv-python-headless",
    "opencv-contrib-python-headless",
)
#: Room for some long sessions, whose trace is 0.5 MB a minute (own choice).
LEAST_FREE_MB = 200
#: Where Linux keeps what processes share: of ours the picture of oneself alone.
SHARED = "/dev/shm"
#: So many of its blocks are to find room: one that is just ending may be there yet (own choice).
LEAST_BLOCKS = 2
#: What each model file is for, as one would say it.
FINDS = {"face": "the face", "pose": "the shoulders", "hand": "the hands"}


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing looked at: how it is, what it is, what to do about it."""

    state: State
    what: str
    to_do: str = ""

    def __str__(self) -> str:
        """One line, the state first."""
        word = {"good": "good", "note": "note", "bad": "MISSING"}[self.state]
        return f"{word:<8} {self.what}" + (f"; {self.to_do}" if self.to_do else "")


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "doctor",
        help="say what this machine lacks",
        description="Looks at what Turnpost needs: libraries, model files, screen, camera, sound, "
        "a folder to save in. Opens no camera and no window. Ends with 1 if something is missing.",
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Print every finding, the worst as the exit code."""
    del args
    print(f"{this_copy()}\n")
    missing = []
    for finding in findings():
        print(finding)
        if finding.state == "bad":
            missing.append(finding)
    print()
    if not missing:
        print("Nothing that Turnpost needs is missing.")
        return 0
    print("\n".join(to_read_out(missing)))
    return 1


def to_read_out(missing: list[Finding]) -> Iterator[str]:
    """What to say to a helper on the phone: short lines, the same remedy once."""
    number = len(missing)
    yield "Turnpost can't work yet. If somebody helps you, read this out to them:"
    yield f"  This is {this_copy()}."
    yield f"  {number} thing{'s have' if number > 1 else ' has'} to be put right:"
    for place, finding in enumerate(missing, 1):
        yield f"  {place}. {finding.what}"
    remedies = list(dict.fromkeys(f.to_do for f in missing if f.to_do))
    yield "What to do:" if remedies else "Nothing is known that would help; ask your clinic."
    for remedy in remedies:
        yield f"  - {remedy}"
    yield "Then run 'turnpost doctor' again."


def this_copy() -> str:
    """Which Turnpost on which system this is."""
    try:
        version = metadata.version("turnpost")
    except metadata.PackageNotFoundError:
        version = "of no known version"
    return f"Turnpost {version} ({installed.way()}) on {platform.system()} {platform.release()}"


def findings() -> Iterator[Finding]:
    """Everything that is looked at, in order."""
    yield python_version()
    yield from libraries()
    yield from brought_libraries()
    yield one_opencv()
    yield system_libraries()
    yield from _as_far_as_can_be("the model files", models)
    yield screen()
    yield camera()
    yield sound()
    yield room_for_pictures()
    yield from _as_far_as_can_be("the folder for sessions", lambda: [data_folder()])


def _as_far_as_can_be(what: str, look: Callable[[], Iterable[Finding]]) -> Iterator[Finding]:
    """What is found, or that nobody can look: where much is missing the rest is told all the same.

    ``what`` says what is looked at with our own code, which needs libraries for it.
    """
    try:
        yield from look()
    except ImportError as error:
        lacks = error.name or str(error)
        again = installed.AGAIN[installed.way()]
        yield Finding("bad", f"{what} can't be looked at: {lacks} is missing or broken", again)
    except InputError as error:
        yield Finding("bad", f"{what} can't be looked at: {error}", "name another, or none")


def python_version() -> Finding:
    """Whether the libraries exist for this Python."""
    version = ".".join(str(n) for n in sys.version_info[:3])
    if sys.version_info[:2] in PYTHONS:
        return Finding("good", f"Python {version}")
    return Finding("bad", f"Python {version} can't be used", "install Python 3.11, 3.12 or 3.13")


def libraries() -> Iterator[Finding]:
    """Whether each library is there, in a version that was tested."""
    again = installed.AGAIN[installed.way()]
    for name, prefix in LIBRARIES.items():
        try:
            version = metadata.version(name)
        except metadata.PackageNotFoundError:
            yield Finding("bad", f"library {name} is not installed", again)
            continue
        exact = version == prefix or (prefix.endswith(".") and version.startswith(prefix))
        if exact and is_examined(name, version):
            yield Finding("good", f"library {name} {version}")
        elif exact:
            yield _unknown(name, version)
        else:
            wanted = f"{prefix}*" if prefix.endswith(".") else prefix
            why = f" ({WHY[name]})" if name in WHY else ""
            yield Finding("bad", f"library {name} is {version}, and must be {wanted}{why}", again)


def brought_libraries() -> Iterator[Finding]:
    """Native libraries that others bring, where one is not of a version that was looked into."""
    for name in NATIVE:
        with contextlib.suppress(metadata.PackageNotFoundError):
            version = metadata.version(name)
            if name not in LIBRARIES and not is_examined(name, version):
                yield _unknown(name, version)


def _unknown(name: str, version: str) -> Finding:
    looked = " or ".join(NATIVE[name].versions)
    what = f"library {name} is {version}; {looked} was looked into, to see that it sends nothing"
    return Finding("note", what, installed.AGAIN[installed.way()])


def one_opencv() -> Finding:
    """Whether OpenCV's packages overwrite each other."""
    again = installed.AGAIN[installed.way()]
    found = []
    for name in OPENCV_PACKAGES:
        try:
            metadata.version(name)
        except metadata.PackageNotFoundError:
            continue
        found.append(name)
    if found == ["opencv-python"]:
        return Finding("good", "one OpenCV")
    if not found:
        return Finding("bad", "OpenCV is not installed", again)
    return Finding("bad", f"these overwrite each other: {', '.join(found)}", again)


def system_libraries() -> Finding:
    """Whether the libraries of the system that a window needs can be loaded."""
    missing = missing_libraries()
    if not missing:
        return Finding("good", "system libraries for windows and pictures")
    if is_debian():
        packages = " ".join(dict.fromkeys(package_of(name) for name in missing))
        return Finding(
            "bad", "system libraries are not installed", f"sudo apt-get install -y {packages}"
        )
    return Finding("bad", f"system libraries are not installed: {', '.join(missing)}")


def models() -> Iterator[Finding]:
    """Whether each model file is there and is the right one."""
    from tracker.vision.models import MODELS, ModelName, load_model, own_folder

    folder = installed.models_beside() or own_folder()
    by_hand = f"put the missing files into the folder {folder}"
    if installed.models_beside() is None:
        by_hand = f"{installed.AGAIN[installed.way()]}; or {by_hand}"
    for name in get_args(ModelName):
        try:
            load_model(name)
        except RunError as error:
            wrong = "sha256 differs" in str(error)
            how = "is not the right one" if wrong else "is missing"
            what = f"the file that finds {FINDS[name]} {how}: {MODELS[name].filename}"
            yield Finding("bad", what, by_hand)
        else:
            yield Finding("good", f"model file for the {name}")


def screen() -> Finding:
    """Whether a window can be opened."""
    to_do = "start from a desktop; 'measure' and 'check' work without one"
    if not has_screen():
        return Finding("bad", "no screen for the window", to_do)
    named = unreached() if sys.platform == "linux" else ""
    if named:
        return Finding("bad", f"the screen {named} can't be reached", to_do)
    return Finding("good", "a screen")


def camera() -> Finding:
    """Whether the system knows of a camera; none is opened."""
    if sys.platform != "linux":
        return Finding("note", "the camera was not looked for", "'turnpost camera' tries it")
    cameras = list(Path("/dev").glob("video*"))
    if cameras and not any(os.access(c, os.R_OK | os.W_OK) for c in cameras):
        return Finding(
            "bad",
            "a camera is connected, but you have no right to use it",
            "have yourself added to the group 'video', and log in again",
        )
    if cameras:
        return Finding("good", "a camera is connected")
    return Finding("note", "no camera is connected", "'turnpost demo' works without one")


def sound() -> Finding:
    """Whether the system knows of something that sounds."""
    if sys.platform != "linux":
        return Finding("note", "sound was not looked for")
    with_server = os.environ.get("XDG_RUNTIME_DIR")
    servers = [Path(with_server) / s for s in ("pipewire-0", "pulse/native")] if with_server else []
    try:
        cards = Path("/proc/asound/cards").read_text("utf-8")
    except OSError:
        cards = ""
    if any(s.exists() for s in servers) or "]:" in cards:
        return Finding("good", "sound")
    return Finding("note", "no sound device was found", "beats and words are shown on screen only")


def room_for_pictures() -> Finding:
    """Whether there is memory in which the measuring hands pictures over (Linux)."""
    try:
        from tracker.vision.preview import BLOCK_BYTES

        free_bytes = shutil.disk_usage(SHARED).free
    except (OSError, ImportError):
        return Finding("note", "memory for pictures was not looked at")
    if free_bytes < LEAST_BLOCKS * BLOCK_BYTES:
        return Finding(
            "bad",
            f"too little memory for pictures: {free_bytes / 1e6:.1f} MB are free in {SHARED}",
            "start the computer anew; if it comes again, have more room given to it",
        )
    return Finding("good", "memory for pictures")


def data_folder() -> Finding:
    """Whether sessions can be saved."""
    from tracker.session.files import data_folder as folder_of_data
    from ui.cli import in_short

    folder = folder_of_data()
    named = in_short(str(folder))
    place = folder
    try:
        # What isn't there yet is made in the nearest folder that is.
        place = next((p for p in (folder, *folder.parents) if p.exists()), folder)
        with tempfile.NamedTemporaryFile(dir=place):
            pass
    except OSError as error:
        # The system says only that there is no such folder.
        is_file = os.path.isfile(place)  # noqa: PTH113 - Path's raises where it can't be looked at
        reason = "it is a file" if is_file else system_reason(error)
        return Finding(
            "bad",
            f"sessions can't be saved in {named} ({reason})",
            "name another folder in TURNPOST_DATA",
        )
    free_mb = shutil.disk_usage(place).free / 1e6
    if free_mb < LEAST_FREE_MB:
        return Finding(
            "bad",
            f"the disk is nearly full: {free_mb:.0f} MB are free for sessions in {named}",
            "delete what you don't need, or name a folder on another disk in TURNPOST_DATA",
        )
    return Finding("good", f"sessions are saved in {named}")
