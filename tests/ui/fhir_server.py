"""A server for tests, on this machine alone: https with a certificate made here, a little FHIR.

It does what the specification says of a transaction of PUTs and conditional creates, and can be
told to answer otherwise.
"""

from __future__ import annotations

import ipaddress
import json
import ssl
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread
from typing import Any
from urllib.parse import parse_qs

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from tests.ui.fhir_json import must_be_valid

#: Status, body, further headers.
Answer = tuple[int, bytes, dict[str, str]]


def certificate(folder: Path, host: str = "127.0.0.1") -> Path:
    """A self-signed certificate for a host, with its key in the same file."""
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "a made-up clinic")])
    now = datetime.now().astimezone()
    try:
        own: x509.GeneralName = x509.IPAddress(ipaddress.ip_address(host))
    except ValueError:
        own = x509.DNSName(host)
    made = (
        x509.CertificateBuilder()
        .subject_name(name)
        .issuer_name(name)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - timedelta(days=1))
        .not_valid_after(now + timedelta(days=1))
        .add_extension(x509.SubjectAlternativeName([own]), critical=False)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    path = folder / "server.pem"
    path.write_bytes(
        made.public_bytes(serialization.Encoding.PEM)
        + key.private_bytes(
            serialization.Encoding.PEM,
            serialization.PrivateFormat.PKCS8,
            serialization.NoEncryption(),
        )
    )
    return path


class FhirServer:
    """What the server has, what it was asked, and how it is to answer."""

    def __init__(self, address: str) -> None:
        self.address = address
        self.resources: dict[str, dict[str, Any]] = {}
        self.requests: list[tuple[str, str, dict[str, str]]] = []
        #: What was posted, as it came.
        self.bundles: list[str] = []
        #: Called with a Bundle; None answers as a server should.
        self.otherwise: Callable[[dict[str, Any]], Answer | None] = lambda _: None

    def answer(self, body: bytes) -> Answer:
        self.bundles.append(body.decode("utf-8"))
        bundle = json.loads(body)
        other = self.otherwise(bundle)
        return self.take(bundle) if other is None else other

    def take(self, bundle: dict[str, Any]) -> Answer:
        """Do a transaction: all of it is valid here, so all is done."""
        must_be_valid(json.dumps(bundle))
        assert bundle["type"] == "transaction"
        entries = [self._do(e["request"], e["resource"]) for e in bundle["entry"]]
        body = {"resourceType": "Bundle", "type": "transaction-response", "entry": entries}
        return 200, json.dumps(body).encode(), {}

    def _do(self, request: dict[str, Any], resource: dict[str, Any]) -> dict[str, Any]:
        if request["method"] == "PUT":
            new = request["url"] not in self.resources
            self.resources[request["url"]] = resource
            return {"response": {"status": "201 Created" if new else "200 OK"}}
        (wanted,) = parse_qs(request["ifNoneExist"])["identifier"]
        system, value = wanted.replace("\\|", "\0").split("|")
        value = value.replace("\0", "|").replace("\\,", ",").replace("\\$", "$")
        for known in self.resources.values():
            if known["resourceType"] != "Patient":
                continue
            if {"system": system, "value": value} in known["identifier"]:
                return {"response": {"status": "200 OK"}}
        self.resources[f"{request['url']}/{len(self.resources)}"] = resource
        return {"response": {"status": "201 Created"}}


@contextmanager
def fhir_server(pem: Path) -> Iterator[FhirServer]:
    """A server that runs until the block ends."""

    class Handler(BaseHTTPRequestHandler):
        protocol_version = "HTTP/1.1"

        def do_POST(self) -> None:
            body = self.rfile.read(int(self.headers["Content-Length"]))
            fhir.requests.append((self.command, self.path, dict(self.headers)))
            status, content, headers = fhir.answer(body)
            self.send_response(status)
            for name, value in {"Content-Length": str(len(content)), **headers}.items():
                self.send_header(name, value)
            self.end_headers()
            try:
                self.wfile.write(content)
            except OSError:
                self.close_connection = True  # the other side has heard enough

        def do_GET(self) -> None:
            fhir.requests.append((self.command, self.path, dict(self.headers)))
            self.send_error(405)

        def log_message(self, *_: Any) -> None:
            """Say nothing."""

    class Quiet(ThreadingHTTPServer):
        daemon_threads = False

        def handle_error(self, *_: Any) -> None:
            """A client that breaks off is no news."""

    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(pem)
    server = Quiet(("127.0.0.1", 0), Handler)
    # The handshake belongs to the request's own thread, so that a broken one stops nobody.
    server.socket = context.wrap_socket(
        server.socket, server_side=True, do_handshake_on_connect=False
    )
    fhir = FhirServer(f"https://127.0.0.1:{server.server_port}/fhir")
    thread = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02})
    thread.start()
    try:
        yield fhir
    finally:
        server.shutdown()
        thread.join()
        server.server_close()
