"""How much of the measuring the tests look at: branches of ``tracker`` and ``calibration``.

``python -m tests.coverage_run`` counts with the tests of ``TESTS``, and then the loops that are
machine code otherwise with those of ``LOOPS``. ``python -m tests.coverage_run tests/practice``
counts one piece and adds it to what the last call left; ``--fresh`` begins anew, which it must
after a change to what is counted. Every process that the tests start is counted, the measuring
process too, which ends without tidying up. Takes long; run by hand, on a machine with nothing
else to do: many of these tests measure time. Nothing of it is in the program.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
from collections import defaultdict
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
COUNTED = ("tracker", "calibration")
#: Tests that drive the measuring, most of them without a window. Of ``tests/ui`` those that hold
#: what stands in a package below it: commands, documents, the editor's draft, the real process.
TESTS = (
    "tests/body",
    "tests/calibration",
    "tests/exercises",
    "tests/eyes",
    "tests/handover",
    "tests/head",
    "tests/motion",
    "tests/plan",
    "tests/practice",
    "tests/records",
    "tests/sample_clips",
    "tests/session",
    "tests/stored",
    "tests/targets",
    "tests/vision",
    "tests/test_collector.py",
    "tests/test_compiled.py",
    "tests/test_differing.py",
    "tests/test_inputs.py",
    "tests/test_lens.py",
    "tests/test_rotation.py",
    "tests/test_sample.py",
    "tests/test_spoilt_files.py",
    "tests/ui/test_camera_lost_alone.py",
    "tests/ui/test_desk_documents.py",
    "tests/ui/test_editor.py",
    "tests/ui/test_handover_commands.py",
    "tests/ui/test_measure_check.py",
    "tests/ui/test_outputs.py",
    "tests/ui/test_plan_command.py",
    "tests/ui/test_real_worker.py",
    "tests/ui/test_report_marks.py",
    "tests/ui/test_report_tables.py",
)
#: Tests of the loops that are compiled, run a second time as plain Python.
LOOPS = (
    "tests/head/test_perspective.py",
    "tests/head/test_settling.py",
    "tests/test_compiled.py",
)
FOLDER = ROOT / "tests" / "output" / "coverage"
KEYS = ("covered_branches", "num_branches", "covered_lines", "num_statements")
#: Sorts after the packages.
WHOLE = "~ all"
#: Turns numba off, so that lines of compiled loops can be seen.
PLAIN = {"NUMBA_DISABLE_JIT": "1"}

# "_exit" and "sigterm" write down what a process ran that ends by os._exit or is asked to end,
# "subprocess" counts in all that is started (coverage 7.10 or later).
SETTINGS = """
[run]
branch = true
parallel = true
sigterm = true
patch = _exit, subprocess
data_file = {data}
source =
    {sources}
"""


def settings(folder: Path) -> Path:
    """Write down what is counted, and where to; a test may have its children in any folder."""
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / "settings.ini"
    sources = "\n    ".join(str(ROOT / name) for name in COUNTED)
    path.write_text(SETTINGS.format(data=folder / "counted", sources=sources), encoding="utf-8")
    return path


def count(path: Path, tests: Sequence[str], more: dict[str, str]) -> int:
    """Run tests and count; gives pytest's answer."""
    pytest = ["-m", "pytest", "-q", "-p", "no:cacheprovider", *tests]
    command = [sys.executable, "-m", "coverage", "run", f"--rcfile={path}", *pytest]
    return subprocess.run(command, cwd=ROOT, env=os.environ | more, check=False).returncode


def coverage(path: Path, *words: str) -> None:
    """Have the tool of that name do something with what was written down."""
    command = [sys.executable, "-m", "coverage", words[0], f"--rcfile={path}", "-q", *words[1:]]
    subprocess.run(command, cwd=ROOT, check=False)


def counted(path: Path) -> Any:
    """Put together what all processes wrote down, with what was counted before."""
    out = path.with_name("counted.json")
    out.unlink(missing_ok=True)
    coverage(path, "combine", "--append")
    coverage(path, "json", "-o", str(out))
    return json.loads(out.read_text(encoding="utf-8"))


def table(found: dict[str, dict[str, dict[str, int]]]) -> Iterator[str]:
    """Lines of the result: each package, then the whole.

    Parameters
    ----------
    found
        ``files`` of coverage's JSON.
    """
    rows: dict[str, list[int]] = defaultdict(lambda: [0, 0, 0, 0])
    for name, file in found.items():
        parts = Path(name).parts
        sums = file["summary"]
        for row in (rows["/".join(parts[: 2 if len(parts) > 2 else 1])], rows[WHOLE]):
            row[:] = [a + sums[key] for a, key in zip(row, KEYS, strict=True)]
    for name in sorted(rows):
        row = rows[name]
        yield f"{name:22} {_share(row[0], row[1])} {_share(row[2], row[3])}"


def _share(part: int, whole: int) -> str:
    return f"{100 * part / whole if whole else 100.0:6.1f} % of {whole:5}"


def main(words: Sequence[str] | None = None) -> int:
    """Count, and print what was found; says no where a test failed or too little was looked at."""
    parser = argparse.ArgumentParser(prog="python -m tests.coverage_run", description=__doc__)
    parser.add_argument("tests", nargs="*", help="only these (default: all that count)")
    parser.add_argument("--fresh", action="store_true", help="forget what was counted before")
    parser.add_argument("--plain", action="store_true", help="run these with loops not compiled")
    parser.add_argument("--missing", action="store_true", help="print each branch not taken")
    parser.add_argument(
        "--examples", type=int, default=3, help="for each property (3; 0: as usual)"
    )
    parser.add_argument("--at-least", type=float, default=0.0, help="percent of branches")
    args = parser.parse_args(words)
    path = settings(FOLDER)
    if args.fresh or not args.tests:
        for old in FOLDER.glob("counted*"):
            old.unlink()
    few = (f"--examples={args.examples}",) if args.examples else ()
    failed = count(path, (*few, *(args.tests or TESTS)), PLAIN if args.plain else {})
    if not args.tests:
        failed = count(path, (*few, *LOOPS), PLAIN) or failed
    return report(path, args.missing, args.at_least) or failed


def report(path: Path, missing: bool, at_least: float) -> int:
    """Print what was counted; says no (1) where it is too little."""
    found = counted(path)
    if missing:
        for name, file in found["files"].items():
            for start, end in file["missing_branches"]:
                print(f"{name}:{start} -> {end if end > 0 else 'end'}")
    print(f"{'':22} {'branches':>17} {'lines':>17}")
    print("\n".join(table(found["files"])))
    sums = found["totals"]
    return int(100 * sums["covered_branches"] < at_least * sums["num_branches"])


if __name__ == "__main__":
    sys.exit(main())
