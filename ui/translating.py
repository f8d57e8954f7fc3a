"""The translations' files: ``python -m ui.translating`` brings them up to date.

The words stand in the code, by key, and once in Qt's file of each language
(``ui/translations/turnpost_LANGUAGE.ts``), with the key as the comment that tells the same
English in two places apart. This takes new and changed words over, marks them unfinished,
drops those that are gone, says what is to be translated, and compiles the rest. An
unfinished text is not shown: the English stands in its place, never an old meaning.
"""

from __future__ import annotations

import string
import subprocess
import sys
import tempfile
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path
from xml.etree import ElementTree

import PySide6

from ui.desk import trade_words
from ui.editor import telling
from ui.languages import CODES, FOLDER, SOURCE
from ui.words import CONTEXT, WORDS

#: Context and key of a text.
Key = tuple[str, str]


@dataclass(frozen=True, slots=True)
class Text:
    """A text in one language; ``words`` is empty, or of an older source, while unfinished."""

    source: str
    words: str
    finished: bool


def sources() -> dict[Key, str]:
    """Every text that there is to translate, in English."""
    own = {(CONTEXT, key): str(text) for key, text in WORDS.items()}
    trade = {(trade_words.CONTEXT, key): text for key, text in trade_words.TRADE.items()}
    plans = {(telling.CONTEXT, key): text for key, text in telling.PLAN_TEXTS.items()}
    return own | trade | plans


def file_of(code: str) -> Path:
    """A language's file."""
    return FOLDER / f"turnpost_{code}.ts"


def read(path: Path) -> dict[Key, Text]:
    """The texts of a file; none where there is no file yet."""
    if not path.exists():
        return {}
    found = {}
    for context in ElementTree.parse(path).getroot().iter("context"):
        name = context.findtext("name", "")
        for message in context.iter("message"):
            translation = message.find("translation")
            assert translation is not None, f"{path}: a message without a translation"
            found[name, message.findtext("comment", "")] = Text(
                message.findtext("source", ""),
                translation.text or "",
                translation.get("type") != "unfinished",
            )
    return found


def brought_up(old: Mapping[Key, Text], wanted: Mapping[Key, str]) -> dict[Key, Text]:
    """A language's texts for the words that there are now."""
    found = {}
    for key, source in wanted.items():
        text = old.get(key, Text(source, "", False))
        finished = text.finished and text.source == source and bool(text.words)
        found[key] = Text(source, text.words, finished)
    return found


def write(path: Path, code: str, texts: Mapping[Key, Text]) -> None:
    """Write a language's file."""
    root = ElementTree.Element("TS", version="2.1", language=code, sourcelanguage=SOURCE)
    contexts: dict[str, ElementTree.Element] = {}
    for (name, key), text in sorted(texts.items()):
        if name not in contexts:
            contexts[name] = ElementTree.SubElement(root, "context")
            ElementTree.SubElement(contexts[name], "name").text = name
        message = ElementTree.SubElement(contexts[name], "message")
        ElementTree.SubElement(message, "source").text = text.source
        ElementTree.SubElement(message, "comment").text = key
        state = {} if text.finished else {"type": "unfinished"}
        ElementTree.SubElement(message, "translation", state).text = text.words
    ElementTree.indent(root, "    ")
    content = ElementTree.tostring(root, encoding="unicode")
    path.write_text(
        f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{content}\n', encoding="utf-8"
    )


def compile_to(source: Path, target: Path) -> None:
    """Compile a file with Qt's own compiler; what is unfinished stays out."""
    suffix = ".exe" if sys.platform == "win32" else ""
    compiler = Path(PySide6.__file__).parent / f"lrelease{suffix}"
    command = [str(compiler), "-silent", "-nounfinished", str(source), "-qm", str(target)]
    subprocess.run(command, check=True)


def put_in_place(code: str) -> None:
    """Compile a language's file beside the old one, and take its place when it is whole.

    Qt reads the old one from the disk as it needs it: written over, it would crash every
    program that has it open, a test for one.
    """
    target = file_of(code).with_suffix(".qm")
    new = target.with_suffix(".new")
    compile_to(file_of(code), new)
    new.replace(target)


def compiled(code: str) -> bytes:
    """What a language's file compiles to now."""
    with tempfile.TemporaryDirectory() as folder:
        target = Path(folder) / "new.qm"
        compile_to(file_of(code), target)
        return target.read_bytes()


def fields(text: str) -> set[str]:
    """Names of the places that a text has for values."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def faults(texts: Mapping[Key, Text], wanted: Mapping[Key, str]) -> list[str]:
    """What is wrong with a language's texts: a line each."""
    found = [f"{key}: not in the file" for (_, key) in wanted.keys() - texts.keys()]
    found += [f"{key}: not in the program any more" for (_, key) in texts.keys() - wanted.keys()]
    for where, text in texts.items():
        key = where[1]
        if where in wanted and wanted[where] != text.source:
            found.append(f"{key}: the English is now {wanted[where]!r}")
        elif not text.finished or not text.words.strip():
            found.append(f"{key}: untranslated: {text.source!r}")
        elif fields(text.words) != fields(text.source):
            found.append(f"{key}: other fields than {text.source!r}: {text.words!r}")
    return sorted(found)


def main(codes: Iterable[str] = CODES) -> int:
    """Bring all files up to date; gives 1 while anything is to be translated."""
    wanted, failed = sources(), False
    for code in codes:
        if code == SOURCE:
            continue
        path = file_of(code)
        texts = brought_up(read(path), wanted)
        write(path, code, texts)
        put_in_place(code)
        found = faults(texts, wanted)
        for fault in found:
            sys.stdout.write(f"{code}  {fault}\n")
        sys.stdout.write(f"{code}: {len(texts)} texts, {len(found)} to be done\n")
        failed = failed or bool(found)
    return int(failed)


if __name__ == "__main__":
    sys.exit(main())
