"""Installed native libraries are of the versions looked into, and open connections where known."""

from __future__ import annotations

import struct
import sys
import tomllib
from importlib import metadata
from pathlib import Path

import pytest
from packaging.requirements import Requirement

from ui.native import NATIVE

ROOT = Path(__file__).parents[1]
DEPENDENCIES: list[str] = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"][
    "dependencies"
]
#: Calls without which no connection comes about, or that ask for an address (POSIX.1, libcurl,
#: OpenSSL).
CALLS = {
    *("socket", "connect", "getaddrinfo", "gethostbyname", "gethostbyname_r"),
    *("curl_easy_perform", "SSL_connect"),
}


def named(name: str) -> str:
    return name.lower().replace("_", "-")


BY_NAME = {named(name): examined for name, examined in NATIVE.items()}


def brought() -> dict[str, metadata.Distribution]:
    """What an install brings, by name: the dependencies, theirs, and so on."""
    found: dict[str, metadata.Distribution] = {}
    waiting = list(DEPENDENCIES)
    while waiting:
        wanted = Requirement(waiting.pop())
        here = wanted.marker is None or wanted.marker.evaluate({"extra": ""})
        if here and named(wanted.name) not in found:
            found[named(wanted.name)] = metadata.distribution(wanted.name)
            waiting += found[named(wanted.name)].requires or []
    return found


def compiled(distribution: metadata.Distribution) -> list[Path]:
    """Its compiled files that are there."""
    ends = (".so", ".pyd", ".dll", ".dylib")
    files = [f for f in distribution.files or [] if f.name.endswith(ends) or ".so." in f.name]
    return [p for f in files if (p := Path(str(distribution.locate_file(f)))).exists()]


def asked_for(path: Path) -> set[str]:
    """Names that a library takes from others (System V ABI, ELF: .dynsym and .dynstr)."""
    data = path.read_bytes()
    assert data[:6] == b"\x7fELF\x02\x01", path
    at, size, count = struct.unpack_from("<Q10xHH", data, 0x28)
    sections = [struct.unpack_from("<IIQQQQIIQQ", data, at + k * size) for k in range(count)]
    found: set[str] = set()
    for _, kind, _, _, start, length, link, _, _, each in sections:
        if kind != 11:  # SHT_DYNSYM
            continue
        texts = sections[link][4]
        for place in range(start, start + length, each):
            name, _, _, section = struct.unpack_from("<IBBH", data, place)
            if name and section == 0:
                begin = texts + name
                found.add(data[begin : data.index(b"\0", begin)].decode())
    return found


def test_every_native_library_that_comes_is_one_that_was_looked_into() -> None:
    native = {name: d.version for name, d in brought().items() if compiled(d)}
    assert set(native) == set(BY_NAME)
    for name, version in native.items():
        assert version in BY_NAME[name].versions, f"{name} {version} was not looked into"


def test_an_install_brings_the_versions_looked_into_and_no_others() -> None:
    for python in ("3.11", "3.12", "3.13"):
        pinned = set()
        for wanted in map(Requirement, DEPENDENCIES):
            here = wanted.marker is None or wanted.marker.evaluate({"python_version": python})
            if here and named(wanted.name) in BY_NAME:
                (pin,) = wanted.specifier
                assert pin.operator == "==" and pin.version in BY_NAME[named(wanted.name)].versions
                pinned.add(named(wanted.name))
        # PySide6 and pydantic bring the very one that belongs to them.
        assert set(BY_NAME) - pinned == {"shiboken6", "pydantic-core"}, python
    core = Requirement(next(r for r in metadata.requires("pydantic") or [] if "core" in r))
    assert str(core.specifier) == f"=={BY_NAME['pydantic-core'].versions[0]}"
    pydantic = Requirement(next(d for d in DEPENDENCIES if d.startswith("pydantic")))
    assert str(pydantic.specifier) == f"=={metadata.version('pydantic')}"


@pytest.mark.skipif(sys.platform != "linux", reason="reads the form of Linux's libraries")
def test_nothing_else_of_them_can_open_a_connection() -> None:
    found, looked = set(), 0
    for name, distribution in brought().items():
        for path in compiled(distribution):
            looked += 1
            if asked_for(path) & CALLS:
                found.add((name, path.name))
    assert looked > 300
    for name, file in found:
        assert file.startswith(BY_NAME[name].opens or ("-",)), (name, file)
    # Where there is one it is seen; nothing is named that has none.
    for name, examined in BY_NAME.items():
        begins = {b for b in examined.opens if any(n == name and f.startswith(b) for n, f in found)}
        assert begins == set(examined.opens), name
