"""Reading and writing a plan; errors name the line and the field."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from pydantic import ValidationError

from tracker.errors import InputError
from tracker.inputs import read_input_text
from tracker.plan.findings import MESSAGES, Finding, fields_of
from tracker.plan.lines import LineIndex, field_name, index_lines
from tracker.plan.model import FORMAT, FORMAT_VERSION, Plan
from tracker.plan.rules import faults
from tracker.session.files import write_atomically

#: Keeps a foreign file from filling the memory (this project's own choice).
MAX_FILE_BYTES = 1_000_000


class NewerPlanError(InputError):
    """A plan is of a newer version of this program."""


def load_plan(path: Path) -> Plan:
    """Read a plan.

    Raises
    ------
    InputError
        If it can't be read, is none, is of a newer version (:class:`NewerPlanError`), or asks for
        what is not given; one line with the line number and the field.
    """
    return parse_plan(read_text(path), str(path))


def read_text(path: Path) -> str:
    """Text of a plan's file, as far as it is text and no larger than a plan."""
    return read_input_text(path, MAX_FILE_BYTES, "a plan")


def parse_plan(text: str, name: str = "plan") -> Plan:
    """Plan of a text; ``name`` stands at the beginning of an error."""
    _, index = parse_data(text, name)
    plan, found = examine(text, index)
    if plan is None or found:
        raise refusal(name, index, found)
    return plan


def parse_data(text: str, name: str = "plan") -> tuple[dict[str, Any], LineIndex]:
    """Data and lines of a text that says it is a plan of this version; its fields may be wrong.

    Raises
    ------
    InputError
        If it is no JSON, no plan, of a newer version, too deep, or says a thing twice.
    """
    data = _json_of(text, name)
    index = index_lines(text)
    if index.too_deep is not None:
        line = index.line_of(index.too_deep)
        raise InputError(f"{name}: line {line}: nested too deeply for a plan")
    if index.repeated:
        raise refusal(name, index, [Finding(p, "twice") for p in index.repeated])
    _must_be_a_plan(data, name)
    return dict(data), index


def examine(text: str, index: LineIndex | None = None) -> tuple[Plan | None, list[Finding]]:
    """What a JSON text that says it is a plan holds, and every fault in it.

    Parameters
    ----------
    text
        The text.
    index
        Its lines, if they are known already.

    Returns
    -------
    plan, found
        The plan, None where its fields are not those of one; and its faults, at most one
        a field. A plan with faults must not be practised.
    """
    index = index_lines(text) if index is None else index
    try:
        plan = Plan.model_validate_json(text, strict=True)
    except ValidationError as error:
        found = [_in_words(dict(e), index) for e in error.errors(include_url=False)]
        return None, _once(found)
    return plan, faults(plan)


def save_plan(path: Path, plan: Plan) -> None:
    """Write a plan, whole or not at all."""
    write_atomically(path, format_plan(plan))


def format_plan(plan: Plan) -> str:
    """Text of a plan; what was left to the catalogue stays left out."""
    data = plan.model_dump(mode="json", exclude_unset=True)
    return json.dumps(data, indent=2, ensure_ascii=False) + "\n"


def schema() -> dict[str, Any]:
    """JSON Schema of a plan; it can't say which options an exercise is given with."""
    return Plan.model_json_schema()


def _json_of(text: str, name: str) -> Any:
    def refuse(word: str) -> None:
        raise ValueError(f"{word} is no number of JSON")

    try:
        return json.loads(text, parse_constant=refuse)
    except json.JSONDecodeError as error:
        raise InputError(f"{name}: line {error.lineno}: not a JSON file ({error.msg})") from error
    except RecursionError as error:
        raise InputError(f"{name}: nested too deeply for a plan") from error
    except ValueError as error:
        raise InputError(f"{name}: not a JSON file ({error})") from error


def _must_be_a_plan(data: Any, name: str) -> None:
    kind = data.get("format") if isinstance(data, dict) else None
    if kind != FORMAT:
        what = f"it says format {kind!r}" if isinstance(kind, str) else "it has no such format"
        raise InputError(f'{name}: not a plan: {what}, a plan says "format": "{FORMAT}"')
    version = data.get("format_version")
    if isinstance(version, int) and version > FORMAT_VERSION:
        raise NewerPlanError(
            f"{name}: this plan is of version {version}, made by a newer Turnpost; "
            f"this one reads up to version {FORMAT_VERSION}: update it, then try again"
        )


def _in_words(error: dict[str, Any], index: LineIndex) -> Finding:
    """One error of pydantic."""
    kind, path = error["type"], tuple(error["loc"])
    if kind == "extra_forbidden":
        return Finding(path, kind)
    if kind == "string_pattern_mismatch" and path[-1] == "emergency_number":
        return Finding(path, "telephone")
    if kind == "string_pattern_mismatch" and path[:2] == ("hand_over", "keys"):
        return Finding(path, "public_key")
    if kind == "string_pattern_mismatch":
        return Finding.of(path, "name", given=repr(error["input"]))
    known = path[:-1] if kind == "missing" else path
    if known not in index.lines:  # pydantic adds the branches of a union
        while path and path not in index.lines:
            path = path[:-1]
    if kind not in MESSAGES:
        return Finding.of(path, "other", text=str(error["msg"]))
    context = error.get("ctx", {})
    return Finding(path, kind, {k: context[k] for k in fields_of(MESSAGES[kind])})


def _once(found: list[Finding]) -> list[Finding]:
    """The first finding of each field: a union gives one for each of its branches."""
    kept: dict[tuple[str | int, ...], Finding] = {}
    for finding in found:
        kept.setdefault(finding.path, finding)
    return list(kept.values())


def refusal(name: str, index: LineIndex, found: list[Finding]) -> InputError:
    """The first fault by line, and how many more there are."""
    found = sorted(found, key=lambda f: index.line_of(f.path))
    first, more = found[0], len(found) - 1
    rest = f" (and {more} more)" if more else ""
    line = index.line_of(first.path)
    said = "".join(c if c.isprintable() else "?" for c in f"{field_name(first.path)}: {first.text}")
    return InputError(f"{name}: line {line}, {said}{rest}")
