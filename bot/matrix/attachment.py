"""What an event says of its attached file, in plain and in encrypted rooms alike; pure."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any, Final

from bot.dialogue.events import MediaRef
from bot.matrix.plain import part_of, text_of

#: Specification 1.16, "Matrix Content (mxc://) URIs" and the grammar of server names: a host name
#: or address, perhaps a port, and an opaque media id. Nothing that means something in a path
#: (`..`, `%`, `?`) gets through. Lengths: a server name has 230 letters at most; own rule for ids.
MXC_URI: Final = re.compile(
    r"mxc://(?=[^/]{1,230}/)"
    r"(?P<server>(?:[A-Za-z0-9-]+(?:\.[A-Za-z0-9-]+)*|\[[0-9A-Fa-f:.]{2,45}\])(?::[0-9]{1,5})?)"
    r"/(?P<media_id>[A-Za-z0-9_-]{1,255})"
)
#: Files that may hold a picture; what they really hold, the decoder finds out.
_MAYBE_A_PICTURE: Final = frozenset({"", "application/octet-stream", "binary/octet-stream"})
#: Larger than any file, and still exact in every JSON reader.
_MAX_STATED_BYTES: Final = 2**53 - 1


def media_of(content: Mapping[str, Any]) -> MediaRef | None:
    """The picture that an `m.image` or `m.file` points to; None when it cannot be one.

    Clients put the address into `url`, or into `file` together with the key when it is encrypted;
    some send a camera's file as `m.file`.
    """
    info = part_of(content, "info")
    stated_type = text_of(info.get("mimetype")).lower()
    may_be = stated_type.startswith("image/") or stated_type in _MAYBE_A_PICTURE
    if content.get("msgtype") == "m.file" and not may_be:
        return None
    file = part_of(content, "file")
    address = text_of(file.get("url") if file else content.get("url"))
    encryption = _encryption(file) if file else None
    if MXC_URI.fullmatch(address) is None or (file and encryption is None):
        return None
    return MediaRef(
        address=address,
        stated_type=stated_type[:100],
        stated_bytes=_size(info.get("size")),
        encryption=encryption,
    )


def _encryption(file: Mapping[str, Any]) -> dict[str, object] | None:
    """Key, iv and hash, and nothing else that the event may hold; None when one is missing."""
    key = text_of(part_of(file, "key").get("k"))
    iv = text_of(file.get("iv"))
    sha256 = text_of(part_of(file, "hashes").get("sha256"))
    if not (key and iv and sha256):
        return None
    return {"key": {"k": key}, "iv": iv, "hashes": {"sha256": sha256}}


def _size(value: object) -> int | None:
    if isinstance(value, bool) or not isinstance(value, int):
        return None
    return value if 0 <= value <= _MAX_STATED_BYTES else None
