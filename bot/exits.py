"""The exit codes of the command line, so that a service manager can tell what happened."""

from __future__ import annotations

from collections.abc import Mapping
from enum import IntEnum
from typing import Final


class Exit(IntEnum):
    """How a command ended; the values are what service files and scripts rely on."""

    DONE = 0
    #: Something failed while it ran; a restart may help.
    FAILED = 1
    #: The command line was wrong (argparse's own code).
    USAGE = 2
    #: The database was written by a newer version (EX_DATAERR of sysexits, from memory).
    SCHEMA_NEWER = 65
    #: A backup can't be read (EX_NOINPUT, from memory).
    ARCHIVE_DAMAGED = 66
    #: The homeserver did not answer a command that needs it (EX_UNAVAILABLE, from memory).
    UNAVAILABLE = 69
    #: A backup, or the folder for one, can't be made where it was wanted (EX_CANTCREAT, from
    #: memory).
    CANNOT_CREATE = 73
    #: Another process works with the same data folder (EX_TEMPFAIL, from memory).
    IN_USE = 75
    #: The homeserver no longer knows the access token, or refuses the login (EX_NOPERM of
    #: sysexits, from memory); a restart does not help.
    NO_PERMISSION = 77
    #: A setting is missing, unknown or wrong (EX_CONFIG); a restart does not help.
    CONFIG = 78
    #: The rest is trouble with the bot's keys (numbers above those of sysexits, own rule); each
    #: needs an operator, and the message names the command that helps.
    IDENTITY_LOST = 80
    IDENTITY_CHANGED = 81
    DEVICE_CHANGED = 82
    IDENTITY_DAMAGED = 83
    NOT_SIGNED = 84
    WRONG_PASSPHRASE = 85
    EXPORT_DAMAGED = 86
    OTHER_IDENTITY = 87
    NOT_CONFIRMED = 88
    NO_DEVICE = 89
    #: Stopped from the keyboard (128 + SIGINT, as shells report it).
    INTERRUPTED = 130


#: What each code means, as `linn --help` tells it.
MEANINGS: Final[Mapping[Exit, str]] = {
    Exit.DONE: "done",
    Exit.FAILED: "something failed while it ran; a restart may help",
    Exit.USAGE: "the command line was wrong",
    Exit.SCHEMA_NEWER: "the database or the backup was written by a newer version of Linn",
    Exit.ARCHIVE_DAMAGED: "the backup is damaged, or is none",
    Exit.UNAVAILABLE: "the homeserver did not answer",
    Exit.CANNOT_CREATE: "there is something already where a backup should go",
    Exit.IN_USE: "another process works with the same data folder",
    Exit.NO_PERMISSION: "the homeserver refuses the access token, the login or the password",
    Exit.CONFIG: "a setting is missing, unknown or wrong",
    Exit.IDENTITY_LOST: "the keys of the bot's signing identity are gone",
    Exit.IDENTITY_CHANGED: "the homeserver shows another signing identity",
    Exit.DEVICE_CHANGED: "the homeserver shows other keys for the bot's device",
    Exit.IDENTITY_DAMAGED: "the file of the signing identity cannot be used",
    Exit.NOT_SIGNED: "the bot's device or identity is not signed or not published",
    Exit.WRONG_PASSPHRASE: "the passphrase does not open the export",
    Exit.EXPORT_DAMAGED: "the export is damaged, or is none",
    Exit.OTHER_IDENTITY: "another identity is here already, or the export is of another account",
    Exit.NOT_CONFIRMED: "it was not confirmed; nothing was changed",
    Exit.NO_DEVICE: "the bot has not signed in from this data folder",
    Exit.INTERRUPTED: "stopped from the keyboard",
}
