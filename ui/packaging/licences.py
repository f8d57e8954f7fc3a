"""The licences of what a frozen folder carries, collected into it.

Of every library its own texts; of those that come without one the text that their
licence names; of the system's libraries what Debian says of them; of Python its own.
What has no text stops the build: it must not be passed on like that.
"""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from importlib import metadata
from pathlib import Path

from tracker.errors import RunError

#: Where Debian keeps the texts that many licences share.
COMMON_TEXTS = Path("/usr/share/common-licenses")
#: Words in a library's own statement -> texts it needs, where it brings none.
#: The LGPL 3 is written as an addition to the GPL 3, so that both go along.
TEXTS = {"LGPL-3.0": ("LGPL-3", "GPL-3"), "Apache": ("Apache-2.0",)}
_OF_LICENCES = re.compile(r"(licen[cs]e|copying|notice|authors)", re.IGNORECASE)
#: Said to be a licence by their name, and none.
_CODE = (".py", ".pyc", ".pyi", ".h")
_MENTIONED_ONLY = re.compile(r"extra\s*==")


@dataclass(slots=True)
class Carried:
    """One thing that the folder carries: its name, its licence in a word, and the texts."""

    name: str
    licence: str
    texts: list[Path] = field(default_factory=list)
    home: str = ""


def distributions(root: str, more: Iterable[str] = ()) -> list[metadata.Distribution]:
    """A package and all that it needs here, each once, by name.

    What is named and not installed is meant for another system.
    """
    found: dict[str, metadata.Distribution] = {}
    waiting = [root, *more]
    while waiting:
        name = _plain(waiting.pop())
        if name in found:
            continue
        try:
            found[name] = metadata.distribution(name)
        except metadata.PackageNotFoundError:
            continue
        needs = found[name].requires or []
        waiting += [_name_of(need) for need in needs if not _MENTIONED_ONLY.search(need)]
    return [found[name] for name in sorted(found)]


def of_library(dist: metadata.Distribution, common: Path = COMMON_TEXTS) -> Carried:
    """What a library says of its licence.

    Raises
    ------
    RunError
        If there is no text for it.
    """
    about = dist.metadata
    # Some have the whole text there, where others have a word.
    said = about.get("License-Expression") or _if_short(about.get("License"))
    classes = [c for c in about.get_all("Classifier") or [] if c.startswith("License ::")]
    licence = said or ", ".join(c.split(" :: ")[-1] for c in classes)
    made = Carried(f"{about['Name']} {dist.version}", licence or "see its text")
    made.home = _home_of(about)
    files = [f for f in dist.files or [] if _OF_LICENCES.search(f.name) and f.suffix not in _CODE]
    made.texts = [p for p in (Path(str(f.locate())) for f in files) if p.is_file()]
    if not made.texts:
        made.texts = common_texts(made.name, licence, common)
    return made


def common_texts(name: str, licence: str, common: Path) -> list[Path]:
    """The shared texts that a licence's name asks for.

    Raises
    ------
    RunError
        If they are not known, or not there.
    """
    wanted = next((texts for word, texts in TEXTS.items() if word in licence), ())
    paths = [common / text for text in wanted]
    if not paths or not all(path.is_file() for path in paths):
        needed = ", ".join(str(path) for path in paths) or f"that of {licence or 'its maker'}"
        raise RunError(
            f"no licence text for {name}; needed: {needed}; name their folder in --texts"
        )
    return paths


def of_python() -> Carried:
    """Python itself.

    Raises
    ------
    RunError
        If its licence is nowhere beside it.
    """
    places = (Path(sysconfig.get_path("stdlib")), Path(sys.base_prefix))
    for place in places:
        if (place / "LICENSE.txt").is_file():
            version = ".".join(str(n) for n in sys.version_info[:3])
            return Carried(f"Python {version}", "PSF-2.0", [place / "LICENSE.txt"])
    raise RunError("the licence of Python was not found beside it (LICENSE.txt)")


def of_system(sources: Iterable[Path]) -> Iterator[Carried]:
    """Debian's packages that some libraries of the system came from.

    Raises
    ------
    RunError
        If a library belongs to no package, or the package tells no licence.
    """
    packages: dict[str, None] = {}
    for source in sorted(set(sources)):
        packages[_package_of(source)] = None
    for package in packages:
        text = Path("/usr/share/doc") / package / "copyright"
        if not text.is_file():
            raise RunError(f"the system's package {package} tells no licence ({text})")
        yield Carried(f"{package} (system library)", "see its text", [text])


def _package_of(source: Path) -> str:
    """Debian's package of a file; the package list knows some by their place before /usr."""
    asked = [source, source.resolve()]
    asked += [Path("/", *p.parts[2:]) for p in asked if p.parts[:2] == ("/", "usr")]
    for path in asked:
        try:
            done = subprocess.run(
                ["dpkg-query", "-S", str(path)], capture_output=True, text=True, check=False
            )
        except OSError:
            break
        if done.returncode == 0:
            return done.stdout.split(":")[0].split(",")[0]
    raise RunError(f"{source}: not known whose library this is; its licence must be added by hand")


def collect(carried: Iterable[Carried], folder: Path) -> list[Carried]:
    """Copy the texts into a folder, and a list of all; what was copied."""
    every = list(carried)
    lines = ["What this folder carries, each unchanged and in files of its own:", ""]
    for item in every:
        place = folder / re.sub(r"[^\w.+-]+", "-", item.name)
        place.mkdir(parents=True, exist_ok=True)
        for number, text in enumerate(item.texts):
            name = text.name if not (place / text.name).exists() else f"{number}-{text.name}"
            shutil.copyfile(text, place / name)
        lines.append("  ".join(filter(None, (item.name, item.licence, item.home))))
    lines += [
        "",
        "Libraries under the LGPL (Qt, FFmpeg and others) are shared libraries below _internal:",
        "anyone may put a changed one of the same kind in their place. Where the source of Qt for",
        "Python is to be had stands beside its name.",
    ]
    (folder / "LIST.txt").write_text("\n".join(lines) + "\n", "utf-8")
    return every


def _if_short(text: str | None) -> str:
    return text.strip() if text and "\n" not in text.strip() else ""


def _home_of(about: metadata.PackageMetadata) -> str:
    """Where its source is to be had, as far as it says."""
    links = dict(link.split(", ", 1) for link in about.get_all("Project-URL") or [])
    named = {label.lower(): link for label, link in links.items()}
    labels = ("repository", "source", "source code", "homepage")
    return next((named[n] for n in labels if n in named), about.get("Home-page") or "")


def _plain(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).lower()


def _name_of(requirement: str) -> str:
    found = re.match(r"[\w.-]+", requirement)
    return found[0] if found else requirement
