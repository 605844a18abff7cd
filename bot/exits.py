"""The exit codes of the command line, so that a service manager can tell what happened."""

from __future__ import annotations

from enum import IntEnum


class Exit(IntEnum):
    """How a command ended; the values are what service files and scripts rely on."""

    DONE = 0
    #: Something failed while it ran; a restart may help.
    FAILED = 1
    #: The command line was wrong (argparse's own code).
    USAGE = 2
    #: The homeserver no longer knows the access token, or refuses the login (EX_NOPERM of
    #: sysexits, from memory); a restart does not help.
    NO_PERMISSION = 77
    #: A setting is missing, unknown or wrong (EX_CONFIG); a restart does not help.
    CONFIG = 78
    #: Stopped from the keyboard (128 + SIGINT, as shells report it).
    INTERRUPTED = 130
