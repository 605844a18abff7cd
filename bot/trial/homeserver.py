"""A throwaway homeserver on loopback: its configuration, its process, its accounts.

    with Homeserver(folder) as server:              # writes homeserver.yaml, starts, waits
        server.url                                  # "http://127.0.0.1:45123"
        server.register("ada", "secret")            # "@ada:localhost"; again: the same answer

`start()` and `stop()` do what the context manager does. All calls block for a few seconds at
most: from a coroutine use `asyncio.to_thread`. The same folder again brings back the accounts.
"""

from __future__ import annotations

import hashlib
import hmac
import http.client
import json
import secrets
import socket
import subprocess
import sys
import time
from pathlib import Path
from types import TracebackType
from typing import Any, Final, Self

#: The homeserver answers nobody but this machine.
LOOPBACK: Final = "127.0.0.1"
#: No limit at all for a server that only this machine can reach.
_NO_LIMIT: Final = {"per_second": 10_000, "burst_count": 10_000}
_LIFTED: Final[dict[str, Any]] = {
    "rc_message": _NO_LIMIT,
    "rc_registration": _NO_LIMIT,
    "rc_login": {"address": _NO_LIMIT, "account": _NO_LIMIT, "failed_attempts": _NO_LIMIT},
    "rc_joins": {"local": _NO_LIMIT, "remote": _NO_LIMIT},
    "rc_joins_per_room": _NO_LIMIT,
    "rc_invites": {"per_room": _NO_LIMIT, "per_user": _NO_LIMIT, "per_issuer": _NO_LIMIT},
    "rc_admin_redaction": _NO_LIMIT,
    "rc_key_requests": _NO_LIMIT,
    "rc_room_creation": _NO_LIMIT,
    "rc_media_create": _NO_LIMIT,
}


class HomeserverError(Exception):
    """The homeserver did not start, or refused an account; the message says why."""


class Homeserver:
    """One homeserver process and the folder that it lives in.

    Args:
        folder: where configuration, database, media and log are kept; made when missing.
        port: the port on loopback; None takes a free one.
        in_memory: keep the database in memory (quicker; gone when the process ends).
        limits_lifted: False keeps the server's own rate limits.
    """

    def __init__(
        self,
        folder: Path,
        *,
        port: int | None = None,
        in_memory: bool = False,
        limits_lifted: bool = True,
    ) -> None:
        self.folder = folder
        self.port = port or free_port()
        self.server_name = "localhost"
        self._in_memory = in_memory
        self._limits_lifted = limits_lifted
        self._process: subprocess.Popen[bytes] | None = None

    @property
    def url(self) -> str:
        """Base address of the client-server interface."""
        return f"http://{LOOPBACK}:{self.port}"

    @property
    def log_path(self) -> Path:
        """The file that the process writes its log to."""
        return self.folder / "homeserver.log"

    def start(self, within_s: float = 60.0) -> None:
        """Write the configuration, start the process and wait until it answers.

        Raises:
            HomeserverError: it ended, or did not answer within `within_s` seconds.
        """
        config_path = self._write_config()
        command = [sys.executable, "-m", "synapse.app.homeserver", "-c", str(config_path)]
        with self.log_path.open("ab") as log:
            # Nothing in the command comes from outside this program.
            self._process = subprocess.Popen(  # noqa: S603
                command, cwd=self.folder, stdout=log, stderr=subprocess.STDOUT
            )
        give_up_at = time.monotonic() + within_s
        while not self._answers():
            if self._process.poll() is not None or time.monotonic() > give_up_at:
                self.stop()
                raise HomeserverError(f"The homeserver did not start; see {self.log_path}.")
            time.sleep(0.1)

    def stop(self, grace_s: float = 20.0) -> None:
        """End the process, by force after `grace_s` seconds; nothing happens when it has ended."""
        process, self._process = self._process, None
        if process is None:
            return
        process.terminate()
        try:
            process.wait(grace_s)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()

    def register(self, name: str, password: str, *, admin: bool = False) -> str:
        """The user id of the account `name`, which is made when it is not there.

        Raises:
            HomeserverError: the server refused.
        """
        path = "/_synapse/admin/v1/register"
        _, start = self._ask("GET", path)
        nonce = str(start["nonce"])
        parts = (nonce, name, password, "admin" if admin else "notadmin")
        # SHA-1 is what this interface of the homeserver asks for.
        mac = hmac.new(self._shared_secret().encode(), "\0".join(parts).encode(), hashlib.sha1)
        status, answer = self._ask(
            "POST",
            path,
            {
                "nonce": nonce,
                "username": name,
                "password": password,
                "admin": admin,
                "mac": mac.hexdigest(),
            },
        )
        if status != http.client.OK and answer.get("errcode") != "M_USER_IN_USE":
            raise HomeserverError(f"No account for {name}: {answer.get('error', status)}")
        return f"@{name}:{self.server_name}"

    def __enter__(self) -> Self:
        """Start."""
        self.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Stop."""
        self.stop()

    def _answers(self) -> bool:
        try:
            status, _ = self._ask("GET", "/_matrix/client/versions")
        except OSError:
            return False
        return status == http.client.OK

    def _ask(
        self, method: str, path: str, body: dict[str, Any] | None = None
    ) -> tuple[int, dict[str, Any]]:
        connection = http.client.HTTPConnection(LOOPBACK, self.port, timeout=30)
        try:
            content = None if body is None else json.dumps(body)
            connection.request(method, path, content, {"Content-Type": "application/json"})
            answer = connection.getresponse()
            return answer.status, json.loads(answer.read())
        finally:
            connection.close()

    def _shared_secret(self) -> str:
        """The secret that lets this program make accounts; made once for each folder."""
        path = self.folder / "registration_secret"
        if not path.exists():
            path.touch(mode=0o600)
            path.write_text(secrets.token_hex(32))
        return path.read_text()

    def _write_config(self) -> Path:
        self.folder.mkdir(parents=True, exist_ok=True)
        path = self.folder / "homeserver.yaml"
        path.touch(mode=0o600)
        # JSON is YAML, so no YAML library is needed.
        path.write_text(json.dumps(self._config(), indent=2))
        return path

    def _config(self) -> dict[str, Any]:
        database = ":memory:" if self._in_memory else str(self.folder / "homeserver.db")
        secret = self._shared_secret()
        return {
            "server_name": self.server_name,
            "public_baseurl": f"{self.url}/",
            "report_stats": False,
            "listeners": [_listener(self.port)],
            "database": {"name": "sqlite3", "args": {"database": database}},
            "signing_key_path": str(self.folder / "signing.key"),
            "media_store_path": str(self.folder / "media"),
            "registration_shared_secret": secret,
            "macaroon_secret_key": secret,
            "form_secret": secret,
            # It talks to no other server.
            "federation_domain_whitelist": [],
            "trusted_key_servers": [],
            "suppress_key_server_warning": True,
            "presence": {"enabled": False},
            # A repeated first sync within two minutes would be answered from a cache.
            "caches": {"sync_response_cache_duration": "0s"},
            # The fewest rounds that bcrypt knows: throwaway accounts on loopback.
            "bcrypt_rounds": 4,
            **(_LIFTED if self._limits_lifted else {}),
        }


def _listener(port: int) -> dict[str, Any]:
    return {
        "port": port,
        "type": "http",
        "bind_addresses": [LOOPBACK],
        "resources": [{"names": ["client"]}],
    }


def free_port() -> int:
    """A port on loopback that nobody listens on at this moment."""
    with socket.socket() as listener:
        listener.bind((LOOPBACK, 0))
        port: int = listener.getsockname()[1]
        return port
