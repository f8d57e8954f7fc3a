"""One server, spoken to by https: a Bundle goes out, the answer is looked at."""

from __future__ import annotations

import ssl
import time
from dataclasses import dataclass

from urllib3 import BaseHTTPResponse, PoolManager, Timeout, exceptions

from tracker.errors import RunError
from ui.posting.answer import fault_in, is_fhir, words_of

#: Own choices: a hospital's server may take its time, and nobody waits longer than this.
CONNECT_S, SILENT_S, ANSWER_S = 10.0, 60.0, 120.0
#: An answer has a line or two for each entry of a Bundle; a session has some hundred of them.
MAX_ANSWER = 5_000_000
#: These would say the same to every session: who asks, where, or when.
FOR_ALL = {401, 403, 404, 405, 408, 429, 502, 503, 504}
KIND = "application/fhir+json"


class NotTakenError(RunError):
    """The server did not take this session; it may well take others."""


class NoServerError(RunError):
    """Nothing can be sent there now."""


@dataclass(frozen=True, slots=True)
class Waits:
    """How long is waited, in seconds: to connect, for the next part, for the whole answer."""

    connect_s: float = CONNECT_S
    silent_s: float = SILENT_S
    answer_s: float = ANSWER_S


class Server:
    """A FHIR server at an address (see :func:`~ui.posting.address.address_of`).

    It is never followed to another address, so that neither token nor data go anywhere
    that was not named; no proxy and no password file of the system is used.
    """

    def __init__(
        self,
        address: str,
        context: ssl.SSLContext,
        token: str | None = None,
        waits: Waits | None = None,
    ) -> None:
        self.address = address
        self._token = token
        self._waits = waits or Waits()
        timeout = Timeout(connect=self._waits.connect_s, read=self._waits.silent_s)
        self._pool = PoolManager(num_pools=1, ssl_context=context, timeout=timeout)

    def close(self) -> None:
        """Let the connection go."""
        self._pool.clear()

    def post(self, bundle: str, entries: int) -> None:
        """Send a transaction of so many entries.

        Raises
        ------
        NotTakenError
            If the server answered that it doesn't take it, or not as a server should.
        NoServerError
            If it can't be reached, is not trusted, or takes nothing from us at all.
        """
        until_s = time.monotonic() + self._waits.answer_s
        try:
            answer = self._ask(bundle)
            try:
                body = _read(answer, until_s)
            finally:
                # What was not read must not be taken for the next answer.
                answer.close()
        except exceptions.HTTPError as error:
            raise NoServerError(_why_not_reached(error)) from error
        self._judge(answer, body, entries)

    def _ask(self, bundle: str) -> BaseHTTPResponse:
        headers = {
            "Content-Type": f"{KIND}; charset=utf-8",
            "Accept": KIND,
            # A packed answer could be larger than it looks.
            "Accept-Encoding": "identity",
            "Prefer": "return=minimal",
            "User-Agent": "turnpost",
        }
        if self._token is not None:
            headers["Authorization"] = f"Bearer {self._token}"
        return self._pool.urlopen(
            "POST",
            f"{self.address}/" if self.address.count("/") == 2 else self.address,
            body=bundle.encode("utf-8"),
            headers=headers,
            redirect=False,
            retries=False,
            preload_content=False,
            decode_content=False,
        )

    def _judge(self, answer: BaseHTTPResponse, body: bytes, entries: int) -> None:
        status = answer.status
        if 300 <= status < 400:
            raise NoServerError("it points to another address, which is not followed; name that")
        if not 200 <= status < 300:
            kind = NoServerError if status in FOR_ALL else NotTakenError
            hint = "; is the token right?" if status in (401, 403) else ""
            hint = "; is this the FHIR base?" if status in (404, 405) else hint
            words = words_of(body, self._hidden)
            said = f"it answered {status}{hint}"
            raise kind(f"{said}: {words}" if words else said)
        if not is_fhir(body):
            # A login page, say: it would be handed everybody's sessions.
            raise NoServerError("it gave no answer of a FHIR server; is this the FHIR base?")
        fault = fault_in(body, entries, self._hidden)
        if fault is not None:
            raise NotTakenError(fault)

    def _hidden(self, text: str) -> str:
        """Without the token, should a server repeat it."""
        return text if self._token is None else text.replace(self._token, "(token)")


def _read(answer: BaseHTTPResponse, until_s: float) -> bytes:
    parts, size = [], 0
    while part := answer.read1(65536, decode_content=False):
        parts.append(part)
        size += len(part)
        if size > MAX_ANSWER:
            raise NotTakenError("its answer is longer than any to a session")
        if time.monotonic() > until_s:
            raise NoServerError("its answer took too long; try again later")
    return b"".join(parts)


def _why_not_reached(error: exceptions.HTTPError) -> str:
    if isinstance(error, exceptions.SSLError):
        reason = getattr(error.args[0] if error.args else None, "verify_message", "") or "TLS"
        return (
            f"it could not be trusted ({reason}); if its certificate is the clinic's own, "
            "name its file with --certificate"
        )
    if isinstance(error, exceptions.NameResolutionError):
        return "no server has this name; is --to spelt right, and is there a network?"
    refused = isinstance(error, exceptions.NewConnectionError)
    if isinstance(error, exceptions.TimeoutError) and not refused:
        return "it did not answer in time; try again later"
    return "there was no connection, or it broke off; try again later"
