"""Puts the parts together: settings, store, frame server, Matrix side, runtime; start and stop."""

from __future__ import annotations

import asyncio
import logging
import signal
import sys
from contextlib import AsyncExitStack
from typing import Final

from bot.backup.marker import not_before
from bot.dialogue.engine import failure, handle
from bot.dialogue.warm_up import warm_up
from bot.exits import Exit
from bot.faults import where_it_broke
from bot.log import set_up_log
from bot.matrix.client import MatrixClient
from bot.matrix.errors import MatrixError
from bot.matrix.policy import Policy
from bot.matrix.session import Account
from bot.runtime.checkers import NoClusterLibraryError, frame_checker
from bot.runtime.granting import Limits
from bot.runtime.job_kinds import Surroundings
from bot.runtime.runtime import Runtime
from bot.runtime.workers import Dialogue
from bot.settings import Settings, SettingsError, load_settings
from bot.sole_use import FolderInUseError, FolderUnusableError, sole_use
from bot.store.database import Database, SchemaNewerError
from bot.store.failures import DatabaseRefusedError
from bot.store.pictures import PictureFiles
from bot.store.store import Store
from bot.trouble import Troubles

_LOG: Final = logging.getLogger(__name__)

#: Exceptions whose words are made for the operator.
_FOR_OPERATORS: Final = (
    MatrixError,
    SchemaNewerError,
    FolderInUseError,
    FolderUnusableError,
    DatabaseRefusedError,
    NoClusterLibraryError,
)


def serve() -> int:
    """Run the bot with the settings of the environment until it is told to stop.

    Returns:
        An exit code that says whether a restart may help.
    """
    try:
        settings = load_settings()
    except SettingsError as error:
        sys.stderr.write("\n".join((*error.problems, "")))
        return Exit.CONFIG
    set_up_log(settings.log_level)
    try:
        asyncio.run(_run_until_told(settings))
    except Exception as error:
        return _exit_code(error)
    return Exit.DONE


def _exit_code(error: Exception) -> int:
    """Say what ended the bot; only messages made for the operator are quoted."""
    for cause in _causes(error):
        if isinstance(cause, _FOR_OPERATORS):
            _LOG.critical("%s", cause)
            return cause.exit_code
    _LOG.critical("broke down: %s", where_it_broke(error))
    return Exit.FAILED


def _causes(error: BaseException) -> list[BaseException]:
    """The exceptions of a group, or the exception itself."""
    if isinstance(error, BaseExceptionGroup):
        return [cause for member in error.exceptions for cause in _causes(member)]
    return [error]


async def _run_until_told(settings: Settings) -> None:
    """Run until SIGTERM or SIGINT, then end within ten seconds."""
    loop = asyncio.get_running_loop()
    async with asyncio.TaskGroup() as group:
        bot = group.create_task(run_bot(settings))
        for number in (signal.SIGTERM, signal.SIGINT):
            loop.add_signal_handler(number, bot.cancel)
    _LOG.info("stopped")


async def run_bot(settings: Settings) -> None:
    """Run the bot until cancelled; then what is under way is finished and all is closed.

    Raises:
        FolderInUseError: another bot works with the data folder.
        FolderUnusableError: the data folder can't be made, or not written in.
        SchemaNewerError: the database was written by a newer version.
        DatabaseRefusedError: the database server does not let the bot in.
        ExceptionGroup: with a MatrixError, when an operator has to act.
    """
    if not settings.allowed:
        _LOG.warning("LINN_ALLOWED is empty: the bot answers nobody")
    async with AsyncExitStack() as stack:
        stack.enter_context(sole_use(settings.data_dir))
        store = Store(Database(settings.database))
        stack.push_async_callback(store.close)
        await store.open()
        await asyncio.to_thread(warm_up)
        troubles = Troubles()
        frames = await frame_checker(stack, settings.processes, settings.scheduler, troubles)
        client = MatrixClient(
            account_of(settings),
            Policy.of(settings.allowed, settings.leaders),
            not_before=not_before(settings.data_dir),
            troubles=troubles,
        )
        stack.push_async_callback(client.close)
        await client.start()
        files = PictureFiles(settings.data_dir / "pictures")
        runtime = Runtime(
            Surroundings(store, files, client.transport, frames),
            Dialogue(handle, failure),
            limits=limits_of(settings),
            troubles=troubles,
        )
        stack.push_async_callback(runtime.stop)
        await runtime.start()
        async with asyncio.TaskGroup() as group:
            group.create_task(client.run(runtime))
            group.create_task(runtime.wait())


def account_of(settings: Settings) -> Account:
    """The bot's account, as the Matrix side takes it."""
    password, token = settings.password, settings.access_token
    return Account(
        homeserver=settings.homeserver,
        user_id=settings.user,
        data_dir=settings.data_dir,
        password=password.get_secret_value() if password else None,
        access_token=token.get_secret_value() if token else None,
        device_id=settings.device_id,
        device_name=settings.device_name,
    )


def limits_of(settings: Settings) -> Limits:
    """What work may cost, as the runtime takes it."""
    return Limits(
        frames_days=settings.frames_days,
        frame_bytes=settings.frame_bytes,
        frames_a_day=settings.frames_a_day,
        messages_a_minute=settings.messages_a_minute,
        kept_bytes=settings.kept_megabytes * 1_000_000,
        leader_factor=settings.leader_factor,
        silent_days=settings.silent_days,
        backup_days=settings.backup_days,
    )
