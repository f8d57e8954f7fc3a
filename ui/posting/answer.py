"""What a FHIR server says to a transaction (hl7.org/fhir/R4/http.html#transaction)."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from typing import Any

#: Longest part of a server's own words that is shown; own choice.
MAX_WORDS = 200
#: Takes what must not be shown out of a text, while that is still whole.
Hide = Callable[[str], str]


def fault_in(body: bytes, entries: int, hide: Hide) -> str | None:
    """What is wrong with the answer to a transaction of so many entries; None if nothing is."""
    content = _content(body)
    if content is None or content.get("resourceType") != "Bundle":
        return _with_words("the answer is none to a FHIR transaction", content, hide)
    if content.get("type") != "transaction-response":
        return "the answer is not a transaction-response"
    answers = content.get("entry")
    if not isinstance(answers, list) or len(answers) != entries:
        return f"the answer does not speak of each of the {entries} entries"
    for answer in answers:
        response = answer.get("response") if isinstance(answer, dict) else None
        status = response.get("status") if isinstance(response, dict) else None
        if not isinstance(status, str) or not re.match(r"2\d\d\b", status):
            outcome = response.get("outcome") if isinstance(response, dict) else None
            said = hide(str(status))[:40]
            return _with_words(f"one entry was answered {said!r}", outcome, hide)
    return None


def is_fhir(body: bytes) -> bool:
    """Whether it is something that a FHIR server says to a transaction at all."""
    content = _content(body)
    return content is not None and content.get("resourceType") in ("Bundle", "OperationOutcome")


def words_of(body: bytes, hide: Hide) -> str:
    """What an OperationOutcome says, in one line; empty if the body is none."""
    return _words(_content(body), hide)


def _content(body: bytes) -> dict[str, Any] | None:
    try:
        content = json.loads(body.decode("utf-8"))
    except (ValueError, RecursionError):
        return None
    return content if isinstance(content, dict) else None


def _with_words(fault: str, outcome: Any, hide: Hide) -> str:
    words = _words(outcome, hide)
    return f"{fault}: {words}" if words else fault


def _words(outcome: Any, hide: Hide) -> str:
    if not isinstance(outcome, dict) or outcome.get("resourceType") != "OperationOutcome":
        return ""
    issues = outcome.get("issue")
    found = []
    for issue in issues if isinstance(issues, list) else []:
        if not isinstance(issue, dict) or issue.get("severity") not in ("error", "fatal"):
            continue
        details = issue.get("details")
        told = details.get("text") if isinstance(details, dict) else None
        texts = (issue.get("diagnostics"), told, issue.get("code"))
        found.append(next((t for t in texts if t and isinstance(t, str)), ""))
    line = hide(" ".join("; ".join(filter(None, found)).split()))
    return line if len(line) <= MAX_WORDS else line[: MAX_WORDS - 1] + "…"
