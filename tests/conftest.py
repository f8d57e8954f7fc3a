"""What holds for every test: nothing left running, private data, windows that really open."""

from __future__ import annotations

import contextlib
import gc
import multiprocessing
import os
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from tracker.collector import collect_by_hand, collect_what_is_due, spare_what_stays
from ui.reserve import keep_constants_alive
from ui.start import virtual_screen

#: How long a test's threads and processes may take to end after it.
GRACE_S = 3.0
#: Platforms of Qt that draw nothing anybody could see.
BLIND_PLATFORMS = ("offscreen", "minimal", "vnc")
GUI_FIXTURES = {"qtbot", "qapp", "qapp_cls"}
AT_LEAST = "gui_tests_at_least"
#: What ``start.py test`` runs first, in several processes.
TOGETHER = "not alone"


# As the program has it (ui/cli.py); here several test processes share the processors.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

# Searches that name no number of their own: enough to notice a slip, in a run of minutes.
# The usual run looks at the same examples each time, so that it says the same of the same
# code; ``--hypothesis-profile=long`` looks for others, and as far as the accuracy
# statement does. A busy machine is no fault of an example's.
settings.register_profile("short", max_examples=15, derandomize=True, deadline=None)
settings.register_profile("long", max_examples=300, deadline=None)
settings.load_profile("short")


def collect_garbage_for(item: pytest.Item) -> None:
    """As in the program: windows of earlier tests must not die in another thread."""
    if item.get_closest_marker("gui"):
        collect_by_hand()
    elif not gc.isenabled():
        # Windows of earlier tests go now; a long test without any needs the collector's own.
        gc.collect()
        gc.enable()


def pytest_collection_finish() -> None:
    """Thousands of tests and all libraries stay: a look through them takes half a second."""
    spare_what_stays()


def pytest_runtest_teardown() -> None:
    """Let what earlier tests have left go."""
    if not gc.isenabled():
        collect_what_is_due()


# --- Left-overs ---------------------------------------------------------------


def running_threads() -> dict[int, str]:
    """Return the threads that run now, by their number: what Python knows of."""
    found = {}
    for thread in threading.enumerate():
        if thread.native_id is None or thread is threading.current_thread():
            continue
        # A thread of native code that once ran Python stays listed after its end.
        task = Path(f"/proc/self/task/{thread.native_id}")
        if sys.platform == "linux" and not task.exists():
            continue
        found[thread.native_id] = thread.name
    return found


def running_children() -> dict[int, str]:
    """Return the processes started from this one that still run (Linux: all, else Python's)."""
    children = {p.pid: p.name for p in multiprocessing.active_children() if p.pid is not None}
    # Asked for twice a test: a look through all processes would take minutes of a whole run.
    for started in Path("/proc/self/task").glob("*/children"):
        with contextlib.suppress(OSError):
            for number in started.read_text().split():
                children |= _if_running(number)
    return children


def _if_running(number: str) -> dict[int, str]:
    entry = Path("/proc") / number
    try:
        # "pid (name) state parent ..."; the name may hold brackets and blanks.
        state = (entry / "stat").read_text().rpartition(")")[2].split()[0]
        words = (entry / "cmdline").read_bytes().replace(b"\0", b" ").decode(errors="replace")
    except OSError:
        return {}
    # Python's own helper of shared memory lives as long as the program.
    if state in "ZX" or "multiprocessing.resource_tracker" in words:
        return {}
    return {int(number): words.strip()[:120] or number}


def left_over(threads: dict[int, str], children: dict[int, str]) -> list[str]:
    """Return names of what runs now and did not before; waits a little for it to end."""
    deadline = time.monotonic() + GRACE_S
    while True:
        found = [f"thread {n}" for t, n in running_threads().items() if t not in threads]
        found += [f"process {p}: {n}" for p, n in running_children().items() if p not in children]
        if not found or time.monotonic() > deadline:
            return found
        time.sleep(0.02)


@pytest.fixture(autouse=True)
def nothing_left_running() -> Iterator[None]:
    """Fail a test that leaves threads or processes behind, and name them."""
    threads, children = running_threads(), running_children()
    yield
    found = left_over(threads, children)
    if found:
        pytest.fail(f"left running: {'; '.join(found)}", pytrace=False)


# --- Data and models ------------------------------------------------------------


@pytest.fixture(autouse=True)
def private_data_folder(tmp_path: Path) -> Iterator[Path]:
    """Keep every test away from the user's sessions: data and cache folders of its own.

    By a patch of its own: a test that undoes what it has patched must not come upon the user's
    folder, and delete what is there.
    """
    folder = tmp_path / "data-of-turnpost"
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("TURNPOST_DATA", str(folder))
        patch.setenv("TURNPOST_CACHE", str(tmp_path / "cache-of-turnpost"))
        for name in ("TURNPOST_MODELS", "TURNPOST_VENV"):
            patch.delenv(name, raising=False)
        yield folder


@pytest.fixture
def other_group() -> int:
    """A group that new files don't have by themselves, and that they may be given here."""
    if os.name != "posix":
        pytest.skip("groups are those of Unix")
    own = os.getegid()
    # Root may give any; this one stands for none that is known here.
    groups = [own + 54_321] if os.geteuid() == 0 else [g for g in os.getgroups() if g != own]
    if not groups:
        pytest.skip("this account belongs to one group alone")
    return groups[0]


@pytest.fixture(scope="session")
def small_clinic(tmp_path_factory: pytest.TempPathFactory, request: pytest.FixtureRequest) -> Path:
    """The invented clinic, a few days of it, made once in a run. Never write into it."""
    from tests.records import clinic

    own = tmp_path_factory.getbasetemp()
    # A helper's folder lies in that of the run, beside those of the others.
    return clinic.small_clinic(own.parent if is_helper(request.config) else own)


# --- Tests with a window ----------------------------------------------------------


def pytest_addoption(parser: pytest.Parser) -> None:
    """Let the number of expected tests with a window stand in pyproject.toml."""
    parser.addoption("--kills", type=int, default=5, help="sessions to kill (test_kill.py)")
    parser.addoption("--spoilt", type=int, default=150, help="files to spoil for each reader")
    parser.addoption("--examples", type=int, help="at most so many for each property")
    parser.addoption("--first-runs", choices=("each", "all"), default="each", help="languages")
    parser.addoption("--rows", type=int, default=1, help="films of test_rendered_rows.py")
    parser.addoption("--films", default=None, help="folder that keeps the films of --rows")
    parser.addoption("--pictures", default=None, help="folder for pictures of the pages")
    parser.addini(AT_LEAST, "tests with a window that must pass in a full run", default="0")


def is_helper(config: pytest.Config) -> bool:
    """Whether this process only runs tests for another one (pytest-xdist)."""
    return hasattr(config, "workerinput")


def pytest_configure(config: pytest.Config) -> None:
    """Begin to count; and let a long run with many windows not end in an abort."""
    keep_constants_alive()
    config.stash[_PASSED] = set()
    if not is_helper(config):
        config.pluginmanager.register(GuiTestsCounted(config.stash[_PASSED]))
    elif no_screen() is None and sys.platform == "linux":
        # Windows of two processes on one screen take the focus from each other.
        shown = config.stash[_SCREEN] = contextlib.ExitStack()
        os.environ.update(shown.enter_context(virtual_screen(dict(os.environ))))


def pytest_unconfigure(config: pytest.Config) -> None:
    """Take down a screen of one's own."""
    if _SCREEN in config.stash:
        config.stash[_SCREEN].close()


class GuiTestsCounted:
    """Keeps which tests with a window passed, here or in a process that runs them for this one."""

    def __init__(self, passed: set[str]) -> None:
        self._passed = passed

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Count one."""
        if "gui" in report.keywords and report.when == "call" and report.passed:
            self._passed.add(report.nodeid)


_PASSED: pytest.StashKey[set[str]] = pytest.StashKey()
_SCREEN: pytest.StashKey[contextlib.ExitStack] = pytest.StashKey()


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Mark each test that uses Qt's application; where tests are shared out, long ones go first."""
    for item in items:
        if GUI_FIXTURES & set(getattr(item, "fixturenames", ())):
            item.add_marker(pytest.mark.gui)
    most = config.option.examples
    for item in items if most else ():
        # Where hypothesis keeps what a test says of itself; no option of its own overrides it.
        function = getattr(item, "function", None)
        own = getattr(function, "_hypothesis_internal_use_settings", None)
        if own is not None:
            fewer = min(own.max_examples, most)
            function._hypothesis_internal_use_settings = settings(own, max_examples=fewer)
    if is_helper(config):
        # One that begins last would run while the other processes have nothing left to do.
        # Leave a test that uses a fixture of its whole package unmarked: it would be made twice.
        items.sort(key=lambda item: item.get_closest_marker("slow") is None)


def no_screen() -> str | None:
    """Why a window can't be shown for real; None if it can."""
    if os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0] in BLIND_PLATFORMS:
        return "QT_QPA_PLATFORM names a platform without a screen"
    shown = os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")
    if sys.platform == "linux" and not shown:
        return "there is no display; 'python3 ui/start.py test' brings its own"
    return None


@pytest.hookimpl(tryfirst=True)
def pytest_runtest_setup(item: pytest.Item) -> None:
    """Fail, not skip, a test with a window where none can be shown (Qt itself would abort)."""
    collect_garbage_for(item)
    if item.get_closest_marker("gui"):
        reason = no_screen()
        if reason:
            pytest.fail(f"a test with a window can't run: {reason}", pytrace=False)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item, call: pytest.CallInfo[None]
) -> Iterator[pytest.TestReport]:
    """Let a test with a window that was skipped have failed."""
    del call
    report: pytest.TestReport = yield  # type: ignore[misc,assignment]
    skipped = report.skipped and not hasattr(report, "wasxfail")
    if skipped and item.get_closest_marker("gui"):
        report.outcome = "failed"
        report.longrepr = f"{item.nodeid}: a test with a window must not be skipped"
    return report  # type: ignore[return-value]


def is_full_run(config: pytest.Config) -> bool:
    """Whether nothing was left out by the words of the call, but for what runs by itself."""
    option = config.option
    if is_helper(config):
        return False
    marks = option.markexpr not in ("", TOGETHER)
    chosen = option.keyword or marks or option.collectonly
    chosen = chosen or getattr(option, "lf", False) or getattr(option, "deselect", None)
    return not chosen and config.args_source is config.ArgsSource.TESTPATHS


def too_few_gui_tests(config: pytest.Config) -> str | None:
    """What to say when a full run had fewer tests with a window than it should."""
    wanted, passed = int(config.getini(AT_LEAST)), len(config.stash[_PASSED])
    if not is_full_run(config) or passed >= wanted:
        return None
    return f"only {passed} tests with a window passed, {wanted} must ({AT_LEAST})"


def pytest_sessionfinish(session: pytest.Session, exitstatus: int) -> None:
    """Fail a full run in which tests with a window went missing."""
    if exitstatus == pytest.ExitCode.OK and too_few_gui_tests(session.config):
        session.exitstatus = pytest.ExitCode.TESTS_FAILED


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Say how many tests with a window passed."""
    config = terminalreporter.config
    terminalreporter.write_line(f"tests with a window that passed: {len(config.stash[_PASSED])}")
    problem = too_few_gui_tests(config)
    if problem:
        terminalreporter.write_line(problem, red=True)
