"""Putting the parts together: starts, answers, stops when told, and says why it can't go on."""

from __future__ import annotations

import asyncio
import errno
import logging
import os
import signal
import time
from collections.abc import Awaitable, Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from bot import app
from bot.backup.marker import write_mark
from bot.exits import Exit
from bot.matrix.errors import IdentityError, UnknownTokenError
from bot.matrix.policy import Policy
from bot.matrix.session import Account
from bot.runtime import checkers
from bot.runtime.ports import Inbox
from bot.settings import Settings
from bot.sole_use import sole_use
from bot.store.database import Database
from bot.store.failures import DatabaseRefusedError
from bot.trouble import Troubles
from tests.runtime.fakes import FakeServer, FakeTransport, text

Run = Callable[[Inbox], Awaitable[None]]


class FakeClient:
    """The Matrix side, with a homeserver in memory."""

    server = FakeServer()
    closed = 0
    not_before: datetime | None = None

    def __init__(
        self,
        account: Account,
        policy: Policy,
        *,
        not_before: datetime | None = None,
        troubles: Troubles,
    ) -> None:
        type(self).not_before = not_before
        self.account = account
        self.policy = policy
        self.troubles = troubles
        self.transport = FakeTransport(self.server)

    async def start(self) -> None:
        """Sign in."""

    async def run(self, inbox: Inbox) -> None:
        """Receive."""
        raise AssertionError(f"each test says what {inbox} receives")

    async def close(self) -> None:
        """Count the goodbyes."""
        type(self).closed += 1


class FakeFrameServer:
    """Measures nothing."""

    at_once = 1

    def __init__(self, *, workers: int) -> None:
        assert workers == len(os.sched_getaffinity(0))

    async def start(self) -> float:
        """Ready at once."""
        return 0.0

    async def stop(self) -> None:
        """Nothing to stop."""


@pytest.fixture
def client(monkeypatch: pytest.MonkeyPatch) -> Iterator[type[FakeClient]]:
    """The Matrix side that the app will use."""

    class Client(FakeClient):
        server = FakeServer()

    monkeypatch.setattr(app, "MatrixClient", Client)
    monkeypatch.setattr(checkers, "FrameServer", FakeFrameServer)
    levels = {name: logging.getLogger(name).level for name in ("bot", "core")}
    yield Client
    for name, level in levels.items():
        logging.getLogger(name).setLevel(level)


@pytest.fixture
def settings(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Settings:
    """The least that is needed, in the environment too."""
    for name in [name for name in os.environ if name.upper().startswith("LINN_")]:
        monkeypatch.delenv(name)
    values = {
        "homeserver": "https://matrix.mill.example",
        "user": "@linn:mill.example",
        "access_token": "token",
        "device_id": "DEVICE",
        "data_dir": str(tmp_path / "data"),
    }
    for name, value in values.items():
        monkeypatch.setenv(f"LINN_{name.upper()}", value)
    return Settings()


def runs(client: type[FakeClient], run: Run) -> None:
    """What the Matrix side does once it is started."""

    async def bound(self: FakeClient, inbox: Inbox) -> None:
        del self
        await run(inbox)

    setattr(client, "run", bound)  # noqa: B010  typed as a method, replaced as one


async def _answered(client: type[FakeClient]) -> None:
    async with asyncio.timeout(20):
        while not client.server.sent:
            await client.server.bell.sleep()


async def test_the_parts_answer_a_message(client: type[FakeClient], settings: Settings) -> None:
    """What the Matrix side takes in is answered by the dialogue; a cancel closes everything."""
    answered = asyncio.Event()

    async def run(inbox: Inbox) -> None:
        await inbox.take_in([text("help")], "token")
        await _answered(client)
        answered.set()
        await asyncio.Event().wait()

    runs(client, run)
    async with asyncio.TaskGroup() as group:
        bot = group.create_task(app.run_bot(settings))
        await answered.wait()
        bot.cancel()
    assert client.server.bodies[0]
    assert client.closed == 1
    assert settings.data_dir.stat().st_mode & 0o777 == 0o700


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGINT])
def test_a_signal_stops_within_ten_seconds(
    client: type[FakeClient], settings: Settings, number: signal.Signals
) -> None:
    """Told to stop, the bot finishes the answer under way, closes, and reports success."""
    del settings
    told: list[float] = []

    async def run(inbox: Inbox) -> None:
        await inbox.take_in([text("help")], "token")
        told.append(time.monotonic())
        os.kill(os.getpid(), number)
        await asyncio.Event().wait()

    runs(client, run)
    assert app.serve() == Exit.DONE
    assert time.monotonic() - told[0] < 10
    assert len(client.server.sent) == 1
    assert client.closed == 1


@pytest.mark.parametrize(
    ("error", "code", "logged"),
    [
        (UnknownTokenError("The token is refused."), Exit.NO_PERMISSION, "The token is refused."),
        (IdentityError("The keys are lost."), Exit.CONFIG, "The keys are lost."),
        (DatabaseRefusedError("NoSuchError"), Exit.FAILED, "refuses the bot (NoSuchError)"),
        (ValueError("kingfisher"), Exit.FAILED, "broke down: ValueError < test_app.py"),
    ],
)
def test_what_ends_the_bot_is_said_and_has_its_exit_code(
    client: type[FakeClient],
    settings: Settings,
    caplog: pytest.LogCaptureFixture,
    error: Exception,
    code: int,
    logged: str,
) -> None:
    """What an operator has to do is quoted; of anything else only the place is logged."""
    del settings

    async def run(inbox: Inbox) -> None:
        del inbox
        raise error

    runs(client, run)
    assert app.serve() == code
    assert logged in caplog.text
    assert "kingfisher" not in "".join(record.getMessage() for record in caplog.records)
    assert client.closed == 1


def test_a_newer_database_is_refused(
    client: type[FakeClient], settings: Settings, caplog: pytest.LogCaptureFixture
) -> None:
    """The message says what to do; nothing is signed in or changed."""

    async def age() -> None:
        database = Database(settings.database)
        await database.open()
        await database.write(
            lambda connection: connection.exec_driver_sql(
                "UPDATE alembic_version SET version_num = '9999'"
            )
        )
        await database.close()

    asyncio.run(age())
    assert app.serve() == Exit.SCHEMA_NEWER
    assert "run the newer version again" in caplog.text
    assert client.closed == 0


def test_a_second_bot_on_the_same_folder_is_refused(
    client: type[FakeClient], settings: Settings, caplog: pytest.LogCaptureFixture
) -> None:
    """Two would use the device's keys twice: the second ends at once, with its own exit code."""
    with sole_use(settings.data_dir):
        assert app.serve() == Exit.IN_USE
    assert "stop it first" in caplog.text
    assert client.closed == 0


@pytest.mark.parametrize(
    ("place", "reason"),
    [("file", "there is a file in its place"), ("file/below", "there is a file in its place")],
)
def test_a_data_folder_that_cannot_be_is_said(
    client: type[FakeClient],
    settings: Settings,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
    place: str,
    reason: str,
) -> None:
    """A slip in LINN_DATA_DIR is a sentence, and no restart is asked for."""
    parent = settings.data_dir.parent
    (parent / "file").write_text("")
    monkeypatch.setenv("LINN_DATA_DIR", str(parent / place))
    assert app.serve() == Exit.CONFIG
    assert f"{parent / place} can't be used ({reason}): LINN_DATA_DIR has to name" in caplog.text
    assert client.closed == 0


@pytest.mark.parametrize(
    ("number", "code"),
    [
        (errno.EACCES, Exit.CONFIG),
        (errno.EROFS, Exit.CONFIG),
        (errno.ENOSPC, Exit.FAILED),  # room may come back: a restart may help
    ],
)
def test_a_data_folder_that_is_not_written_in_is_said(
    client: type[FakeClient],
    settings: Settings,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
    number: int,
    code: Exit,
) -> None:
    """Another's folder, a mount for reading only, a full disk: each with its own reason."""

    def refuse(*_: object) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(Path, "open", refuse)
    assert app.serve() == code
    assert f"{settings.data_dir} can't be used ({os.strerror(number)})" in caplog.text
    assert client.closed == 0


def test_a_database_whose_folder_cannot_be_is_said(
    client: type[FakeClient],
    settings: Settings,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    """The sentence names the setting that is to be changed."""
    file = settings.data_dir.parent / "file"
    file.write_text("")
    monkeypatch.setenv("LINN_DATABASE_URL", f"sqlite:///{file}/linn.db")
    assert app.serve() == Exit.CONFIG
    assert f"{file} can't be used" in caplog.text
    assert "LINN_DATABASE_URL has to name" in caplog.text
    assert client.closed == 0


def test_an_empty_list_of_people_is_told(
    client: type[FakeClient], settings: Settings, caplog: pytest.LogCaptureFixture
) -> None:
    """With nobody allowed the bot is silent for everybody: its log says why."""
    del settings

    async def run(inbox: Inbox) -> None:
        del inbox
        raise UnknownTokenError("The token is refused.")

    runs(client, run)
    app.serve()
    assert "LINN_ALLOWED is empty: the bot answers nobody" in caplog.text


async def test_a_restored_bot_leaves_older_messages_alone(
    client: type[FakeClient], settings: Settings, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The mark of a restore reaches the Matrix side."""

    async def end(*_: object) -> None:
        raise UnknownTokenError("The token is refused.")

    monkeypatch.setattr(client, "run", end)
    settings.data_dir.mkdir(parents=True, exist_ok=True)
    moment = datetime(2027, 6, 21, tzinfo=UTC)
    write_mark(settings.data_dir, moment)
    with pytest.raises(ExceptionGroup):
        await app.run_bot(settings)
    assert client.not_before == moment


def test_wrong_settings_are_said_on_the_error_output(
    settings: Settings, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """One line for each problem, and the exit code that tells a service manager not to retry."""
    del settings
    monkeypatch.setenv("LINN_ALOWED", "x")
    assert app.serve() == Exit.CONFIG
    assert capsys.readouterr().err.endswith("did you mean LINN_ALLOWED?\n")


def test_settings_reach_their_parts(settings: Settings) -> None:
    """Account and limits carry what was set."""
    values: dict[str, Any] = {"password": "word", "frame_megabytes": 5, "workers": 2}
    changed = Settings.model_validate(settings.model_dump() | values)
    account, limits = app.account_of(changed), app.limits_of(changed)
    assert (account.password, account.access_token, account.device_id) == (
        "word",
        "token",
        "DEVICE",
    )
    assert (limits.frame_bytes, limits.frames_days) == (5_000_000, 30)
    assert (changed.processes, changed.scheduler) == (2, None)
    assert app.account_of(settings).password is None
