"""Small copies of the bot's own pictures, for rooms where the server can't make them."""

from __future__ import annotations

import io
from dataclasses import dataclass
from typing import Final

from PIL import Image

#: Kinds that this package writes; nothing else is ever opened here.
OWN_KINDS: Final = {"PNG": "image/png", "JPEG": "image/jpeg"}
#: Longest sides of a thumbnail (width, height) [px]: sharp at the 183 × 244 points at which
#: clients show a portrait picture (tried in a client at three pixels a point).
LONGEST_PX: Final = (600, 800)
JPEG_QUALITY: Final = 80


@dataclass(frozen=True)
class Thumbnail:
    """A small picture: the file, its media type, width and height [px]."""

    data: bytes
    mime: str
    width: int
    height: int


def size_of(picture: bytes) -> tuple[int, int, str]:
    """Width [px], height [px] and media type of a picture that the bot drew.

    Raises:
        ValueError: it is neither a PNG nor a JPEG.
    """
    with _opened(picture) as image:
        return image.width, image.height, OWN_KINDS[str(image.format)]


def thumbnail(picture: bytes, longest: tuple[int, int] = LONGEST_PX) -> Thumbnail:
    """A copy of a picture that the bot drew, no wider and no taller than `longest`.

    Never call it with a file that somebody shared: this opens it in the calling process.

    Args:
        picture: a PNG or JPEG of this package.
        longest: largest width and height [px], each at least 1.

    Returns:
        The same kind of file, never enlarged, without metadata.

    Raises:
        ValueError: it is neither a PNG nor a JPEG, or `longest` is under 1 px.
    """
    if min(longest) < 1:
        raise ValueError(f"longest: {longest}")
    with _opened(picture) as image:
        kind = str(image.format)
        small = Image.new(image.mode, image.size)
        small.paste(image)
    small.thumbnail(longest, Image.Resampling.LANCZOS)
    file = io.BytesIO()
    small.save(file, kind, quality=JPEG_QUALITY)
    return Thumbnail(file.getvalue(), OWN_KINDS[kind], small.width, small.height)


def _opened(picture: bytes) -> Image.Image:
    """The picture, opened; only the two kinds that are drawn here are tried."""
    try:
        return Image.open(io.BytesIO(picture), formats=tuple(OWN_KINDS))
    except OSError as error:
        raise ValueError("not a picture of this bot") from error
