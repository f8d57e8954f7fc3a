"""Finds out which of many known sentences a text is, and what stands in its fields."""

from __future__ import annotations

import re
from collections.abc import Mapping


class Sentences:
    """Known sentences, some with fields such as ``{days}``.

    Parameters
    ----------
    known
        Their keys and texts.
    """

    def __init__(self, known: Mapping[str, str]) -> None:
        self._plain = {text: key for key, text in known.items() if "{" not in text}
        with_fields = [(key, text) for key, text in known.items() if "{" in text]
        # What says most by itself comes first: "{what}, {side}" would fit nearly everything.
        with_fields.sort(key=lambda k: -len(re.sub(r"\{\w+\}", "", k[1])))
        self._forms = [(key, _form(text)) for key, text in with_fields]

    def find(self, text: str) -> tuple[str, dict[str, str]] | None:
        """Key of a text's sentence and its fields; None if it is none of them."""
        if text in self._plain:
            return self._plain[text], {}
        for key, form in self._forms:
            found = form.fullmatch(text)
            if found:
                return key, found.groupdict()
        return None


#: Fields that hold a number and nothing else, so that "{low} to {high}" is no sentence.
_NUMBERS = {"low", "high", "first", "last", "count", "number", "days", "most", "least", "share"}


def _form(text: str) -> re.Pattern[str]:
    def field(found: re.Match[str]) -> str:
        name = found[1]
        return rf"(?P<{name}>{'-?[0-9.]+' if name in _NUMBERS else '.+?'})"

    return re.compile(re.sub(r"\\\{(\w+)\\\}", field, re.escape(text)), re.DOTALL)
