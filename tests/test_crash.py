"""A crash leaves no image of the memory behind, in which the pictures of a person are."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from collections.abc import Iterator
from functools import partial
from pathlib import Path

import pytest

from tests.vision import fakes
from tests.vision.fakes import EndlessSource
from tracker.crash import MOST_BYTES
from tracker.vision.messages import Measured
from tracker.vision.service import Service

resource = pytest.importorskip("resource")

ROOT = Path(__file__).parents[1]
CRASH = "import os; os.abort()"
LIMIT = "import resource; print(resource.getrlimit(resource.RLIMIT_CORE)[0])"


@pytest.fixture(autouse=True)
def images_wanted() -> Iterator[None]:
    """A system that keeps an image of what crashes, as large as it may be."""
    before = resource.getrlimit(resource.RLIMIT_CORE)
    if before[1] == 0:
        pytest.skip("this system keeps no images, whatever a program does")
    resource.setrlimit(resource.RLIMIT_CORE, (before[1], before[1]))
    yield
    resource.setrlimit(resource.RLIMIT_CORE, before)


def left_an_image(code: str, folder: Path) -> bool:
    """Whether the system kept one of a Python that runs this."""
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    number = os.posix_spawn(
        sys.executable,
        [sys.executable, "-c", f"import os; os.chdir({str(folder)!r}); {code}"],
        env,
    )
    _, status = os.waitpid(number, 0)
    assert os.WIFSIGNALED(status)
    return os.WCOREDUMP(status)


def test_a_crash_leaves_no_image(tmp_path: Path) -> None:
    if not left_an_image(CRASH, tmp_path):
        pytest.skip("this system keeps no images, whatever a program does")
    for image in tmp_path.iterdir():
        image.unlink()
    code = f"from tracker.crash import leave_no_image; leave_no_image(); {CRASH}"
    assert not left_an_image(code, tmp_path)
    assert not list(tmp_path.iterdir())


def test_every_command_sees_to_it() -> None:
    code = f"from ui import cli; cli.main(['--version']); {LIMIT}"
    done = subprocess.run(
        [sys.executable, "-c", code],
        env=os.environ | {"PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert done.stdout.split()[-1] == str(MOST_BYTES)


@pytest.mark.skipif(sys.platform != "linux", reason="/proc is Linux's")
def test_the_process_that_has_the_pictures_does_whoever_starts_it() -> None:
    with Service(EndlessSource(), partial(fakes.make), keep_spare=False) as service:
        service.start()
        end_s = time.monotonic() + 30.0
        news = service.poll()
        while not (found := [m for m in news if isinstance(m, Measured)]):
            assert time.monotonic() < end_s
            time.sleep(0.01)
            news = service.poll()
        number = int(found[-1].sample.light)
        limits = Path(f"/proc/{number}/limits").read_text()
    (line,) = [row for row in limits.splitlines() if row.startswith("Max core file size")]
    assert line.split()[4] == str(MOST_BYTES)
