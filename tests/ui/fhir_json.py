"""Whether a Bundle is one: by the model of FHIR, and by the rules of its JSON."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from fhir.resources.R4B.bundle import Bundle


def must_be_valid(text: str | bytes) -> None:
    """Hold a Bundle against the model, and its text against what the model lets pass.

    Arrays and objects are never empty, and an element that is there has a value that isn't ""
    (hl7.org/fhir/R4/json.html, "JSON representation of resources"; R4/datatypes.html#string).
    """
    assert Bundle.model_validate_json(text).get_resource_type() == "Bundle"
    assert list(empty_in(json.loads(text))) == []


def empty_in(value: Any, where: str = "") -> Iterator[str]:
    """Places of what is empty in it, or nothing."""
    if value in ("", None, [], {}):
        yield where
    elif isinstance(value, dict | list):
        parts = value.items() if isinstance(value, dict) else enumerate(value)
        for name, part in parts:
            yield from empty_in(part, f"{where}/{name}")
