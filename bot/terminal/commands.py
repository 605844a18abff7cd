"""What a line typed in the terminal asks for: a message, a frame, a place, the end."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from core.errors import OutOfDomainError, within


class LineError(ValueError):
    """A line that cannot be carried out; the text is one plain sentence."""


@dataclass(frozen=True)
class Message:
    """Words for the bot."""

    text: str


@dataclass(frozen=True)
class Frame:
    """A picture to share, by its path on this machine."""

    path: Path


@dataclass(frozen=True)
class Place:
    """A place to share: latitude and longitude [deg]."""

    latitude: float
    longitude: float


@dataclass(frozen=True)
class Quit:
    """The end of the talk."""


#: What reaches the bot.
Said = Message | Frame | Place


def read_line(line: str) -> Said | Quit | None:
    """What the line asks for; None for an empty one.

    Raises:
        LineError: an unknown word after the slash, no such file, no such place.
    """
    # Bytes that are no UTF-8 come in as halves of characters, which nothing behind here takes.
    text = line.encode("utf-8", "replace").decode().strip()
    if not text:
        return None
    if not text.startswith("/"):
        return Message(text)
    word, _, rest = text.partition(" ")
    if word == "/quit":
        return Quit()
    if word == "/frame":
        return Frame(_file(rest))
    if word == "/place":
        return Place(*read_place(rest))
    raise LineError(f"“{word}” is unknown here; there are /frame PATH, /place LAT LON and /quit.")


def read_place(text: str) -> tuple[float, float]:
    """Latitude and longitude [deg] of a text like `44.15 -71.35`; a comma may stand between.

    Raises:
        LineError: not two numbers, or no place on Earth.
    """
    try:
        latitude, longitude = (float(part) for part in text.replace(",", " ").split())
        within("latitude", latitude, "deg", -90, 90)
        within("longitude", longitude, "deg", -180, 180)
    except (ValueError, OutOfDomainError):
        raise LineError(
            f"“{text}” is no place; write latitude and longitude like 44.15 -71.35."
        ) from None
    return latitude, longitude


def _file(rest: str) -> Path:
    # A path that was dragged into the terminal often comes in quotation marks.
    path = Path(rest.strip().strip("'\"")).expanduser()
    if not path.is_file():
        raise LineError(f"There is no file “{path}”.")
    return path.resolve()
