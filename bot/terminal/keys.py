"""`linn keys`: shows the bot's keys, exports and imports its identity, replaces what is lost."""

from __future__ import annotations

import asyncio
import getpass
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Final

from aiohttp import ClientError

from bot.app import account_of
from bot.exits import Exit
from bot.matrix.errors import IdentityFileError, MatrixError, ServerAnswerError
from bot.matrix.identity import Identity, in_fours
from bot.matrix.identity_export import (
    ExportDamagedError,
    WrongPassphraseError,
    read_export,
    seal,
    unseal,
    write_export,
)
from bot.matrix.own_keys import OwnKeys, replace_identity
from bot.matrix.private_file import keep_copy, set_aside
from bot.matrix.session import Account
from bot.settings import SettingsError, load_settings

#: Own rule: an export is tried offline for as long as somebody likes.
_SHORTEST: Final = 12
_NEW_DEVICE: Final = (
    "At its next start the bot signs in with LINN_PASSWORD as a new device, signed by the same "
    "identity. What was sent to the old device only, it cannot read any more; end the old device "
    "in the account's list of sessions."
)


class _StoppedError(Exception):
    """The command ends here; the message is for the operator.

    Args:
        exit_code: how the command ends.
        message: one or more plain sentences.
    """

    def __init__(self, exit_code: Exit, message: str) -> None:
        self.exit_code = exit_code
        super().__init__(message)


def show_keys() -> int:
    """Print what is here and what the homeserver shows; the exit code is the gravest finding."""
    return _run(_show)


def export_identity(path: Path, passphrase_from: str | None) -> int:
    """Write the sealed identity to a new file.

    Args:
        path: the file.
        passphrase_from: a file that holds the passphrase, "-" for the standard input; None asks.
    """
    return _run(lambda account: _export(account, path, passphrase_from))


def import_identity(path: Path, passphrase_from: str | None, yes_replace: str | None) -> int:
    """Take the identity out of an export.

    Args:
        path: the export.
        passphrase_from: as in `export_identity`.
        yes_replace: the full user id, to replace another identity that is kept here.
    """
    return _run(lambda account: _import(account, path, passphrase_from, yes_replace))


def reset_identity(yes_replace: str | None) -> int:
    """Make a new identity and put it in the place of the one that the homeserver shows.

    An earlier identity can't be put back: homeservers fail over keys that they have seen before
    (seen with Synapse 1.163).

    Args:
        yes_replace: the full user id; None asks for it.
    """
    return _run(lambda account: _reset(account, yes_replace))


def new_device() -> int:
    """Put the kept login aside, so that the bot comes back as a new device."""
    return _run(_new_device)


def _run(act: Callable[[Account], int]) -> int:
    """Do it for the account of the settings, and say in a sentence what went wrong."""
    try:
        return act(account_of(load_settings()))
    except SettingsError as error:
        _complain(*error.problems)
        return Exit.CONFIG
    except (_StoppedError, MatrixError) as error:
        _complain(str(error))
        return error.exit_code
    except (ServerAnswerError, ClientError, TimeoutError):
        _complain("The homeserver did not answer; nothing is known to have changed.")
        return Exit.UNAVAILABLE
    except OSError as error:
        _complain(f"{error.filename or 'The disk'}: {error.strerror}.")
        return Exit.FAILED


def _show(account: Account) -> int:
    keys = asyncio.run(OwnKeys.look(account))
    print(f"User: {account.user_id}")
    print(f"Device: {keys.device_id or 'none yet'}")
    findings = keys.findings()
    for finding in findings:
        print(finding.sentence)
    return max((finding.exit_code for finding in findings), key=_gravity)


def _gravity(code: Exit) -> int:
    """A lost or changed key is graver than what the next start mends or what is not known."""
    mild = (Exit.DONE, Exit.UNAVAILABLE, Exit.NOT_SIGNED, Exit.NO_DEVICE)
    return mild.index(code) if code in mild else len(mild)


def _export(account: Account, path: Path, passphrase_from: str | None) -> int:
    identity = _kept(account)
    if identity is None:
        raise _StoppedError(Exit.IDENTITY_LOST, "There is no signing identity here to export.")
    passphrase = _passphrase(passphrase_from, twice=True)
    if len(passphrase) < _SHORTEST:
        raise _StoppedError(
            Exit.NOT_CONFIRMED, f"The passphrase needs {_SHORTEST} characters or more."
        )
    try:
        write_export(path, seal(identity, passphrase))
    except FileExistsError:
        raise _StoppedError(
            Exit.NOT_CONFIRMED, f"{path} is there already; name another file."
        ) from None
    except OSError as error:
        raise _StoppedError(Exit.FAILED, f"{path}: {error.strerror}.") from error
    print(f"The identity of {account.user_id} is in {path}. Keep it and the passphrase apart.")
    return Exit.DONE


def _import(
    account: Account, path: Path, passphrase_from: str | None, yes_replace: str | None
) -> int:
    identity = _unsealed(path, passphrase_from)
    if identity.user_id != account.user_id:
        raise _StoppedError(
            Exit.OTHER_IDENTITY,
            f"{path} holds the identity of {identity.user_id}, not of {account.user_id}.",
        )
    kept = _kept_if_usable(account)
    if kept is not None and kept.public("master") == identity.public("master"):
        print("This identity is here already; nothing was changed.")
        return Exit.DONE
    if kept is not None and yes_replace != account.user_id:
        raise _StoppedError(
            Exit.OTHER_IDENTITY,
            "Another identity is here. If it may be replaced, do the same again with "
            f"`--yes-replace {account.user_id}`.",
        )
    account.data_dir.mkdir(mode=0o700, parents=True, exist_ok=True)
    _tell_copy(keep_copy(account.identity_path))
    identity.save(account.identity_path)
    print(f"Master key of the identity: {in_fours(identity.public('master'))}")
    print("It is here now. `linn keys` compares it with the homeserver; the bot signs its device")
    print("with it at its next start.")
    return Exit.DONE


def _reset(account: Account, yes_replace: str | None) -> int:
    print("This makes a new signing identity: everybody then has to trust the bot anew.")
    _confirm(account.user_id, yes_replace)
    identity = Identity.generate(account.user_id)
    _tell_copy(keep_copy(account.identity_path))
    device = asyncio.run(replace_identity(account, identity))
    print(f"Master key of the identity: {in_fours(identity.public('master'))}")
    print(f"The homeserver has it, and device {device.device_id} is signed by it. The bot need not")
    print("be restarted. Make an export of it now: `linn keys export FILE`.")
    return Exit.DONE


def _new_device(account: Account) -> int:
    if account.access_token is not None and not account.session_path.exists():
        raise _StoppedError(
            Exit.CONFIG,
            "The device is set by LINN_ACCESS_TOKEN and LINN_DEVICE_ID: sign in as a new device "
            "there and set both anew, or set LINN_PASSWORD in their place.",
        )
    if account.password is None:
        raise _StoppedError(
            Exit.CONFIG, "The bot can sign in as a new device only with LINN_PASSWORD set."
        )
    login, keys = set_aside(account.session_path), set_aside(account.key_store_path)
    if login is None and keys is None:
        print("There is no login here; nothing was changed.")
        return Exit.DONE
    print("The old login was put aside. Start the bot, or restart it.", _NEW_DEVICE)
    return Exit.DONE


def _tell_copy(copy: Path | None) -> None:
    if copy is not None:
        print(f"What was here before is in {copy.name}.")


def _kept(account: Account) -> Identity | None:
    return Identity.load(account.identity_path, account.user_id)


def _kept_if_usable(account: Account) -> Identity | None:
    """The kept identity; a damaged one may be replaced by any."""
    try:
        return _kept(account)
    except IdentityFileError:
        return None


def _unsealed(path: Path, passphrase_from: str | None) -> Identity:
    try:
        content = read_export(path)
    except OSError as error:
        raise _StoppedError(Exit.EXPORT_DAMAGED, f"{path}: {error.strerror}.") from error
    try:
        return unseal(content, _passphrase(passphrase_from, twice=False))
    except ExportDamagedError as error:
        raise _StoppedError(Exit.EXPORT_DAMAGED, f"{path} cannot be used: {error}.") from error
    except WrongPassphraseError:
        raise _StoppedError(
            Exit.WRONG_PASSPHRASE, f"The passphrase does not open {path}."
        ) from None


def _passphrase(source: str | None, *, twice: bool) -> str:
    """The first line of the file or of the standard input, or what is typed unseen."""
    if source is not None:
        try:
            text = sys.stdin.read() if source == "-" else Path(source).read_text()
        except (OSError, UnicodeDecodeError) as error:
            raise _StoppedError(Exit.USAGE, f"{source} cannot be read.") from error
        return text.partition("\n")[0].rstrip("\r")
    if not sys.stdin.isatty():
        raise _StoppedError(
            Exit.USAGE, "Nobody can type here: give the passphrase with `--passphrase-file FILE`."
        )
    passphrase = getpass.getpass("Passphrase of the export: ")
    if twice and getpass.getpass("Once more: ") != passphrase:
        raise _StoppedError(Exit.NOT_CONFIRMED, "The two passphrases differ.")
    return passphrase


def _confirm(user_id: str, yes_replace: str | None) -> None:
    if yes_replace is None and not sys.stdin.isatty():
        raise _StoppedError(
            Exit.NOT_CONFIRMED, f"Nobody can type here: confirm with `--yes-replace {user_id}`."
        )
    given = yes_replace or input(f"To go on, type the full user id, {user_id}: ").strip()
    if given != user_id:
        raise _StoppedError(Exit.NOT_CONFIRMED, f"That is not {user_id}; nothing was changed.")


def _complain(*sentences: str) -> None:
    sys.stderr.write("\n".join((*sentences, "")))
