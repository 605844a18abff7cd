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
    #: A setting is missing, unknown or wrong; a restart does not help.
    SETTINGS = 3
    #: The homeserver no longer knows the access token; a restart does not help.
    SIGNED_OUT = 4
    #: Stopped from the keyboard (128 + SIGINT, as shells report it).
    INTERRUPTED = 130
