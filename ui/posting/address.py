"""What the therapist names: the server's address, the token and the certificate."""

from __future__ import annotations

import os
import re
import ssl
from collections.abc import Mapping
from pathlib import Path

from urllib3.exceptions import LocationParseError
from urllib3.util import parse_url

from tracker.errors import InputError, system_reason
from tracker.inputs import read_input

TOKEN_VARIABLE = "TURNPOST_SEND_TOKEN"
#: Longer than the tokens that servers give out; own choice.
MAX_TOKEN = 16_000
#: The system's own file of all authorities takes a fifth of a megabyte; own choice.
MAX_CERTIFICATE = 4_000_000
#: Longest system of pseudonyms; own choice.
MAX_URI = 200


def address_of(text: str) -> str:
    """An address as it is used and written down, without a stroke at its end.

    Raises
    ------
    InputError
        If it is no https address, or holds a password or what is no part of an address.
    """
    # What was typed is never shown again: a password may stand in it.
    try:
        url = parse_url(text.strip())
    except LocationParseError:
        raise InputError("--to is no address; name it as in https://server.example/fhir") from None
    if url.scheme != "https" or not url.host:
        raise InputError(
            "--to must begin with https://, because anything else can be read on its way"
        )
    if url.auth is not None:
        raise InputError(
            "--to has a name or password in it; leave that out and give a token in a file"
        )
    if url.query is not None or url.fragment is not None:
        raise InputError("--to has a ? or # in it; name only where the server's FHIR base is")
    port = "" if url.port in (None, 443) else f":{url.port}"
    return f"https://{url.host}{port}{(url.path or '').rstrip('/')}"


def people_of(text: str) -> str:
    """The system that a clinic's pseudonyms belong to: an absolute URI (RFC 3986), as typed.

    Raises
    ------
    InputError
        If it is none.
    """
    if len(text) > MAX_URI or not re.fullmatch(
        r"[A-Za-z][A-Za-z0-9+.-]*:[!#-;=?-\[\]_a-z~]+", text
    ):
        raise InputError(
            "--people is no URI; name one of the clinic's own, as in https://clinic.example/people"
        )
    return text


def token_of(file: Path | None, environment: Mapping[str, str] = os.environ) -> str | None:
    """The token out of a file, or else out of the environment; None without either.

    Raises
    ------
    InputError
        If the file can't be read or what is there can be no token; the token is not shown.
    """
    if file is None:
        where, text = TOKEN_VARIABLE, environment.get(TOKEN_VARIABLE, "")
        if not text:
            return None
    else:
        where = "the file of --token-file"
        try:
            with file.open("rb") as opened:
                text = opened.read(MAX_TOKEN + 1).decode("ascii", "replace")
        except OSError as error:
            # Not its name either: somebody may have put the token itself there.
            raise InputError(f"{where} can't be read ({system_reason(error)})") from None
    token = text.strip()
    if not token or len(token) > MAX_TOKEN or not all("!" <= c <= "~" for c in token):
        raise InputError(f"{where} holds no token; it has to be one line of letters and digits")
    return token


def trust(certificate: Path | None) -> ssl.SSLContext:
    """Whose word is taken for who the server is: the system's authorities, or one file alone.

    Raises
    ------
    InputError
        If the file can't be read or holds no certificate.
    """
    if certificate is None:
        return ssl.create_default_context()
    # OpenSSL would wait for a pipe without end.
    read_input(certificate, MAX_CERTIFICATE, "a certificate")
    try:
        context = ssl.create_default_context(cafile=str(certificate))
    except ssl.SSLError:
        raise InputError(f"{certificate}: holds no certificate in the form PEM") from None
    except OSError as error:
        raise InputError(f"{certificate}: can't be read ({system_reason(error)})") from error
    # The server's own certificate may be given, not only the authority that signed it.
    context.verify_flags |= ssl.VERIFY_X509_PARTIAL_CHAIN
    return context
