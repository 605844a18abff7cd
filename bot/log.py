"""The log: our own lines as they are, of libraries only where in their code they spoke."""

from __future__ import annotations

import copy
import logging
import sys
import threading
import time
from collections.abc import Callable
from pathlib import Path
from types import TracebackType
from typing import Final

from bot.faults import where_it_broke
from bot.trouble import AGAIN_S

#: Whose lines are written by us, and hold ids and places in the code but never what people sent.
_OURS: Final = ("bot", "core")
_FORMAT: Final = "%(asctime)s %(levelname)s %(name)s: %(message)s"


class OncePerPlace(logging.Filter):
    """Lets a library speak from one place in its code once in a while.

    Of its lines only that place is told, so that the same one again tells nothing new: a group of
    eight with new devices filled the log with them.

    Args:
        time_s: a clock that only goes forward [s].
    """

    def __init__(self, time_s: Callable[[], float] = time.monotonic) -> None:
        super().__init__()
        self._time_s = time_s
        self._told_s: dict[tuple[str, int], float] = {}

    def filter(self, record: logging.LogRecord) -> bool:
        """Whether the line is written."""
        if record.name.partition(".")[0] in _OURS:
            return True
        place, now_s = (record.pathname, record.lineno), self._time_s()
        told_s = self._told_s.get(place)
        if told_s is not None and now_s - told_s < AGAIN_S:
            return False
        self._told_s[place] = now_s
        return True


class DiscreetFormatter(logging.Formatter):
    """Leaves out what people sent.

    A library's warning often quotes what it could not read (nio's on a malformed event quotes the
    event), and an exception's text what it broke on. Of both, the place in the code is told: who
    looks into a case finds the line there, and the log can be shown to anybody.
    """

    def format(self, record: logging.LogRecord) -> str:
        """One line of the log."""
        discreet = copy.copy(record)
        discreet.exc_text = discreet.stack_info = None
        if record.name.partition(".")[0] not in _OURS:
            discreet.msg = "%s:%d"
            discreet.args = (Path(record.pathname).name, record.lineno)
        return super().format(discreet)

    def formatException(  # noqa: N802  the base class's name
        self,
        ei: tuple[type[BaseException], BaseException, TracebackType | None]
        | tuple[None, None, None],
    ) -> str:
        """Type and place of an exception."""
        return "" if ei[1] is None else where_it_broke(ei[1])


def set_up_log(level: str, file: Path | None = None) -> None:
    """Log our own lines at this level, those of libraries as warnings.

    Args:
        level: name of a level, as in the settings.
        file: where to; None is the error output.
    """
    handler = (
        logging.StreamHandler(sys.stderr)
        if file is None
        else logging.FileHandler(file, encoding="utf-8", delay=True)
    )
    handler.setFormatter(DiscreetFormatter(_FORMAT))
    handler.addFilter(OncePerPlace())
    logging.basicConfig(handlers=[handler], level=logging.WARNING)
    for name in _OURS:
        logging.getLogger(name).setLevel(level)
    logging.captureWarnings(True)
    threading.excepthook = _log_thread


def _log_thread(broken: threading.ExceptHookArgs) -> None:
    """A thread that broke would print its exception's text past the log."""
    if broken.exc_value is not None:
        logging.getLogger(__name__).error("a thread broke: %s", where_it_broke(broken.exc_value))
