"""The command line: finds the command, runs it, and says in one line what went wrong."""

from __future__ import annotations

import argparse
import difflib
import errno
import importlib
import os
import sys
from collections.abc import Sequence
from typing import Any, NoReturn

from tracker.crash import leave_no_image
from ui.commands import COMMANDS, DEFAULT

#: Longest message that is shown of an unexpected failure.
MAX_MESSAGE = 300

#: Older ones can't read the code (``pyproject.toml``).
OLDEST_PYTHON = (3, 11)


class WrongCallError(Exception):
    """The words of the command line make no call."""


class Parser(argparse.ArgumentParser):
    """Says what is wrong with a call in one line and how to learn the right one."""

    def error(self, message: str) -> NoReturn:
        """Turn the parser's complaint into our own error."""
        raise WrongCallError(f"{self.prog}: {message}\nSee '{self.prog} --help'.")


class ShowVersion(argparse.Action):
    """Prints the version; looked up only when asked for."""

    def __call__(self, parser: argparse.ArgumentParser, *_: Any) -> NoReturn:
        """Print and end."""
        print(f"turnpost {program_version()}")
        parser.exit()


def program_version() -> str:
    """Version of the installed program."""
    from importlib import metadata

    try:
        return metadata.version("turnpost")
    except metadata.PackageNotFoundError:
        return "(not installed)"


def build_parser(chosen: str | None) -> Parser:
    """Parser in which the chosen command is complete and the others are only named."""
    parser = Parser(
        prog="turnpost",
        description="Watches vestibular home exercises through the webcam, coaches them calmly, "
        "and saves a summary. Without a command it opens the program.",
        epilog="'turnpost COMMAND --help' explains a command.",
        allow_abbrev=False,
    )
    parser.add_argument("--version", action=ShowVersion, nargs=0, help="show the version and end")
    parser.add_argument("--debug", action="store_true", help="show details of a failure")
    sub = parser.add_subparsers(dest="command", metavar="COMMAND", title="commands")
    for name, (module, help_line) in COMMANDS.items():
        if name == chosen:
            importlib.import_module(module).add_parser(sub)
            sub.choices[name].add_argument(
                "--debug", action="store_true", default=argparse.SUPPRESS, help=argparse.SUPPRESS
            )
        else:
            sub.add_parser(name, help=help_line, add_help=False)
    return parser


def parse(words: Sequence[str]) -> argparse.Namespace:
    """Turn the words of a call into arguments with a ``run`` to call."""
    named = next((w for w in words if not w.startswith("-")), None)
    if named is not None and named not in COMMANDS:
        near = difflib.get_close_matches(named, COMMANDS, n=1)
        hint = f"; did you mean '{near[0]}'?" if near else ""
        raise WrongCallError(
            f"turnpost: there is no command '{named}'{hint}\nSee 'turnpost --help'."
        )
    asks = any(w in ("-h", "--help", "--version") for w in words)
    if named is None and not asks and DEFAULT in COMMANDS:
        words = [*words, DEFAULT]
        named = DEFAULT
    parser = build_parser(named)
    args, beyond = parser.parse_known_args(words)
    if beyond:
        parser.error(f"unrecognized arguments: {' '.join(told(args, beyond))}")
    if not hasattr(args, "run"):
        raise WrongCallError("turnpost: no command was given\nSee 'turnpost --help'.")
    return args


def told(args: argparse.Namespace, beyond: Sequence[str]) -> list[str]:
    """Words of a call that no option takes, as they may be shown.

    Where a command may be given secrets (``secret`` among its defaults), a misspelt option is
    named without what was meant for it.
    """
    if not getattr(args, "secret", False):
        return list(beyond)
    return [word.partition("=")[0] if word.startswith("-") else "..." for word in beyond]


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; return the exit code.

    0 fine, 1 a failure while running, 2 a wrong call or bad input, 130 stopped
    by the keyboard.
    """
    words = list(sys.argv[1:] if argv is None else argv)
    if sys.version_info[:2] < OLDEST_PYTHON:
        found = ".".join(str(n) for n in sys.version_info[:3])
        print(
            f"turnpost: Python {found} can't be used; install Python 3.11, 3.12 or 3.13",
            file=sys.stderr,
        )
        return 1
    leave_no_image()
    # Before numpy is loaded, here and in the measuring process. Our equations are small: more
    # threads would wait for each other, spinning, and take the processor from a video call.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    # A terminal that can't show a character gets a "?" for it, not a failure.
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    args = argparse.Namespace()
    try:
        args = parse(words)
        code = int(args.run(args))
        sys.stdout.flush()
        return code
    except SystemExit as end:  # --help and --version
        return end.code if isinstance(end.code, int) else 1
    except WrongCallError as error:
        print(error, file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        return 130
    except Exception as error:
        code = _failed(error, debug="--debug" in words)
        # A command that is started from an icon shows it in a window, too.
        getattr(args, "tell", lambda _: None)(error)
        return code


def _failed(error: Exception, debug: bool) -> int:
    """Say what failed, in one line unless details are asked for."""
    from tracker.errors import TurnpostError

    if isinstance(error, BrokenPipeError) and _reader_is_gone():
        return 1
    if debug:
        import traceback

        traceback.print_exception(error)
    if isinstance(error, TurnpostError):
        print(f"turnpost: {in_short(str(error))}", file=sys.stderr)
        return error.exit_code
    if isinstance(error, OSError) and error.errno == errno.ENAMETOOLONG:
        # Only a name that was given can be so long; any call of the system may say so first.
        name = in_short(str(error.filename), 60)
        print(f"turnpost: {name}: no file or folder can have so long a name", file=sys.stderr)
        return 2
    if isinstance(error, ImportError):
        print(
            f"turnpost: something that Turnpost needs is missing or broken: {in_short(str(error))} "
            "('turnpost doctor' says what to do)",
            file=sys.stderr,
        )
        return 1
    print(
        "turnpost: something failed inside Turnpost: "
        f"{in_short(f'{type(error).__name__}: {error}')} (run again with --debug for details)",
        file=sys.stderr,
    )
    return 1


def _reader_is_gone() -> bool:
    """Whether it was our own output that nobody reads any more, as after ``| head``."""
    import select

    try:
        number = sys.stdout.fileno()
        poll = select.poll()
        poll.register(number, select.POLLOUT)
        if not any(state & select.POLLERR for _, state in poll.poll(0)):
            return False
        # Python flushes once more at exit, which must not fail aloud.
        os.dup2(os.open(os.devnull, os.O_WRONLY), number)
    except (AttributeError, OSError, ValueError):  # no such call, or no real output
        return False
    return True


def in_short(text: str, most: int = MAX_MESSAGE) -> str:
    """A text in one line of at most ``most`` letters; of a longer one both ends.

    A message ends with what is wrong, and a name before it may be of any length.
    """
    text = " ".join(text.split())
    half = (most - 1) // 2
    return text if len(text) <= most else f"{text[:half]}…{text[-half:]}"


if __name__ == "__main__":
    sys.exit(main())
