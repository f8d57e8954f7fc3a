"""The languages that there are words in: code and own name, in the order that they are offered."""

from __future__ import annotations

LANGUAGES: tuple[tuple[str, str], ...] = (("en", "English"),)
