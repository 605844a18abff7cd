"""Lines of the log: what people sent is in none of them."""

from __future__ import annotations

import io
import logging
import threading
import warnings
from collections.abc import Iterator

import pytest
from nio import RoomMessage

from bot.log import DiscreetFormatter, OncePerPlace, set_up_log

WORD = "kingfisher"


@pytest.fixture
def log(monkeypatch: pytest.MonkeyPatch) -> Iterator[io.StringIO]:
    """The log as the bot sets it up, on an empty root, and before any client quietened nio."""
    written = io.StringIO()
    root, nio = logging.getLogger(), logging.getLogger("nio.events")
    handlers, level, nio_level = root.handlers[:], root.level, nio.level
    nio.setLevel(logging.NOTSET)
    hook = threading.excepthook
    root.handlers.clear()
    monkeypatch.setattr("sys.stderr", written)
    set_up_log("DEBUG")
    yield written
    root.handlers[:] = handlers
    root.setLevel(level)
    nio.setLevel(nio_level)
    for name in ("bot", "core"):
        logging.getLogger(name).setLevel(logging.NOTSET)
    logging.captureWarnings(False)
    threading.excepthook = hook


def test_our_own_lines_are_written_as_they_are(log: io.StringIO) -> None:
    """At the level that was asked for, with the name of who speaks."""
    logging.getLogger("bot.matrix.receiver").debug("No key yet for %s", "$event")
    assert "DEBUG bot.matrix.receiver: No key yet for $event" in log.getvalue()


def test_a_librarys_line_tells_its_place_only(log: io.StringIO) -> None:
    """Its text may quote anything; what is no warning is not written at all."""
    logging.getLogger("aiohttp.client").warning("could not read %s", WORD)
    logging.getLogger("nio").info(WORD)
    assert "WARNING aiohttp.client: test_log.py:" in log.getvalue()
    assert WORD not in log.getvalue()


def test_nio_quotes_no_malformed_event(log: io.StringIO) -> None:
    """The library warns of an event whose body is no text, and its warning holds the event."""
    RoomMessage.parse_event(
        {
            "type": "m.room.message",
            "event_id": "$e",
            "sender": "@fern:mill.example",
            "origin_server_ts": 1,
            "content": {"msgtype": "m.text", "body": [WORD]},
        }
    )
    assert "misc.py:" in log.getvalue()
    assert WORD not in log.getvalue()


@pytest.mark.parametrize("name", ["bot.app", "asyncio"])
def test_an_exceptions_text_stays_out(log: io.StringIO, name: str) -> None:
    """Type and place are told, whoever logs it, and no line of source either."""
    try:
        int(WORD)
    except ValueError:
        logging.getLogger(name).exception("it broke", stack_info=True)
    logging.getLogger(name).error("nothing broke", exc_info=(None, None, None))
    assert "ValueError < test_log.py:" in log.getvalue()
    assert WORD not in log.getvalue()
    assert "Stack" not in log.getvalue()


def test_threads_and_warnings_stay_out(log: io.StringIO) -> None:
    """A thread that breaks and a warning go the same way."""

    def break_off() -> None:
        raise ValueError(WORD)

    thread = threading.Thread(target=break_off)
    thread.start()
    thread.join()
    with warnings.catch_warnings():
        warnings.simplefilter("always")
        logging.captureWarnings(True)
        warnings.warn(WORD, stacklevel=1)
    assert "a thread broke: ValueError" in log.getvalue()
    assert "py.warnings" in log.getvalue()
    assert WORD not in log.getvalue()


def test_the_record_itself_is_left_alone() -> None:
    """Another handler may still write it in its own way."""
    record = logging.LogRecord("nio", logging.WARNING, "x.py", 1, "said %s", (WORD,), None)
    DiscreetFormatter("%(message)s").format(record)
    assert record.getMessage() == f"said {WORD}"


def test_a_place_in_a_library_speaks_once_in_a_while() -> None:
    """Again after ten minutes; other places, and our own lines, each time."""
    now_s = 0.0
    once = OncePerPlace(lambda: now_s)

    def passes(name: str, line: int) -> bool:
        record = logging.LogRecord(name, logging.WARNING, "machine.py", line, "words", (), None)
        return once.filter(record)

    assert passes("nio.crypto", 7)
    assert not passes("nio.crypto", 7)
    assert passes("nio.crypto", 8)
    assert passes("bot.matrix", 7)
    assert passes("bot.matrix", 7)
    now_s = 601.0
    assert passes("nio.crypto", 7)
