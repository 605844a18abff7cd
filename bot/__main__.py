"""The command line: serve, try, check-config, keys, backup, restore, talk, frame."""

from __future__ import annotations

import argparse
import signal
import sys
from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path
from typing import Final

from bot.exits import MEANINGS, Exit
from bot.terminal.commands import LineError, read_place

_EPILOG: Final = "\n".join(
    (
        "exit codes:",
        *(f"  {code:<4} {meaning}" for code, meaning in MEANINGS.items()),
        "",
        "Settings are read from the environment; deploy/env.sample lists them.",
    )
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code.

    Args:
        arguments: the words after the program's name; None takes the process's own.
    """
    given = _parser().parse_args(arguments)
    run: Callable[[argparse.Namespace], int] = given.run
    try:
        return run(given)
    except KeyboardInterrupt:
        return Exit.INTERRUPTED
    except BrokenPipeError:
        # The reader of a pipe went away (`linn frame … | head`): nothing to complain about.
        sys.stderr.close()
        return Exit.DONE


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="linn",
        description="A Matrix bot that walks a photographer of waterfalls from lens to keeper.",
        epilog=_EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    serve = commands.add_parser("serve", help="run the bot with the settings of the environment")
    serve.set_defaults(run=_serve)
    check = commands.add_parser("check-config", help="read the settings and say what is wrong")
    check.set_defaults(run=_check_config)
    _add_keys(commands)
    _add_backup(commands)
    _add_try(commands)
    _add_talk(commands)
    _add_frame(commands)
    return parser


def _add_keys(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    keys = commands.add_parser(
        "keys",
        help="show the bot's keys and whether the homeserver has them; export, import, replace",
        description="Without a further word: shows device, identity and what is wrong. It may run "
        "while the bot does.",
    )
    keys.set_defaults(run=_keys)
    deeds = keys.add_subparsers(metavar="[WHAT]")
    export = deeds.add_parser("export", help="write the signing identity, sealed, to a new FILE")
    export.set_defaults(run=_keys_export)
    back = deeds.add_parser("import", help="take the signing identity out of an export")
    back.set_defaults(run=_keys_import)
    for sealed in (export, back):
        sealed.add_argument("file", type=Path, metavar="FILE")
        sealed.add_argument(
            "--passphrase-file",
            metavar="FILE",
            help="its first line is the passphrase; - reads the standard input (default: ask)",
        )
    reset = deeds.add_parser("reset", help="make a new signing identity; all trust in the old ends")
    reset.set_defaults(run=_keys_reset)
    for replacing in (back, reset):
        replacing.add_argument(
            "--yes-replace", metavar="USER", help="the bot's full user id, to confirm"
        )
    device = deeds.add_parser("new-device", help="sign in as a new device at the next start")
    device.set_defaults(run=_keys_new_device)


def _add_backup(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    backup = commands.add_parser(
        "backup", help="save database, pictures and signing identity while the bot runs"
    )
    backup.add_argument("file", type=Path, metavar="FILE", help="the new archive")
    backup.set_defaults(run=_backup)
    restore = commands.add_parser(
        "restore",
        help="bring a backup into an empty data folder, as a new device",
        description="The bot then signs in as a new device, which its kept identity signs.",
    )
    restore.add_argument("file", type=Path, metavar="FILE", help="an archive made by backup")
    restore.add_argument(
        "--answer-old",
        action="store_true",
        help="go on where the backup ended, instead of ignoring what is older than the restore",
    )
    restore.set_defaults(run=_restore)


def _add_try(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    trial = commands.add_parser(
        "try", help="talk to the bot over a homeserver of its own on this machine"
    )
    trial.add_argument("--demo", action="store_true", help="play one whole walk and end")
    trial.add_argument(
        "--frames", type=Path, metavar="DIR", help="the folder of the frames that --demo shares"
    )
    trial.add_argument(
        "--folder",
        type=Path,
        default=Path(".linn") / "trial",
        metavar="DIR",
        help="where the trial keeps its data (default: %(default)s)",
    )
    trial.add_argument("--fresh", action="store_true", help="forget the data of earlier trials")
    trial.set_defaults(run=_try, parser=trial)


def _add_talk(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    talk = commands.add_parser(
        "talk",
        help="the same dialogue in the terminal, without a server",
        description="One line in, the bot's messages out. /frame PATH shares a picture, "
        "/place LAT LON a place, /quit ends.",
    )
    talk.add_argument(
        "--now",
        type=_moment,
        metavar="ISO",
        help="the time at which the talk begins, like 2027-06-21T14:05+02:00",
    )
    talk.add_argument(
        "--place", type=_place, metavar='"LAT LON"', help="a place that is shared at the beginning"
    )
    talk.add_argument(
        "--pictures", type=Path, metavar="DIR", help="where the bot's pictures are saved"
    )
    talk.set_defaults(run=_talk)


def _add_frame(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    frame = commands.add_parser("frame", help="measure frames and say what is clipped")
    frame.add_argument("files", type=Path, nargs="+", metavar="FILE")
    frame.add_argument("--json", action="store_true", help="one JSON object per frame and line")
    frame.add_argument(
        "--picture",
        type=Path,
        metavar="OUT.png",
        help="save the marked picture of the one frame (a JPEG, if it is called so)",
    )
    frame.set_defaults(run=_frame, parser=frame)


def _moment(text: str) -> datetime:
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(
            f"“{text}” is no time; write it like 2027-06-21T14:05+02:00"
        ) from None


def _place(text: str) -> tuple[float, float]:
    try:
        return read_place(text)
    except LineError as error:
        raise argparse.ArgumentTypeError(str(error)) from None


def _serve(_: argparse.Namespace) -> int:
    # Loading takes a second or two; whoever stops the bot meanwhile has stopped it well.
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(Exit.DONE))
    from bot.app import serve

    return serve()


def _check_config(_: argparse.Namespace) -> int:
    from bot.terminal.check_config import check_config

    return check_config()


def _keys(_: argparse.Namespace) -> int:
    from bot.terminal.keys import show_keys

    return show_keys()


def _keys_export(given: argparse.Namespace) -> int:
    from bot.terminal.keys import export_identity

    return export_identity(given.file, given.passphrase_file)


def _keys_import(given: argparse.Namespace) -> int:
    from bot.terminal.keys import import_identity

    return import_identity(given.file, given.passphrase_file, given.yes_replace)


def _keys_reset(given: argparse.Namespace) -> int:
    from bot.terminal.keys import reset_identity

    return reset_identity(given.yes_replace)


def _keys_new_device(_: argparse.Namespace) -> int:
    from bot.terminal.keys import new_device

    return new_device()


def _backup(given: argparse.Namespace) -> int:
    from bot.backup.commands import backup

    return backup(given.file)


def _restore(given: argparse.Namespace) -> int:
    from bot.backup.commands import restore

    return restore(given.file, answer_old=given.answer_old)


def _try(given: argparse.Namespace) -> int:
    if given.demo and given.frames is None:
        given.parser.error("--demo needs --frames DIR (deploy/try.sh renders them)")
    from bot.trial.trial import run_trial

    demo_frames = given.frames if given.demo else None
    return run_trial(given.folder, fresh=given.fresh, demo_frames=demo_frames)


def _talk(given: argparse.Namespace) -> int:
    from bot.terminal.talk import talk

    return talk(now=given.now, place=given.place, pictures=given.pictures)


def _frame(given: argparse.Namespace) -> int:
    if given.picture is not None and len(given.files) > 1:
        given.parser.error("--picture takes one FILE")
    from bot.terminal.frame import measure_files

    return measure_files(given.files, as_json=given.json, picture=given.picture)


if __name__ == "__main__":
    sys.exit(main())
