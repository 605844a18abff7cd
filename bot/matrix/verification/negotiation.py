"""What two sides agree on, and the fields of a stranger's event, read strictly."""

from __future__ import annotations

from typing import Final

from bot.matrix.verification.agreement import DECIMAL, EMOJI, HASH, KEY_AGREEMENT, MAC, METHOD
from bot.matrix.verification.messages import Code, JsonObject

#: What we offer when we start.
OFFER: Final[JsonObject] = {
    "method": METHOD,
    "key_agreement_protocols": [KEY_AGREEMENT],
    "hashes": [HASH],
    "message_authentication_codes": [MAC],
    "short_authentication_string": [DECIMAL, EMOJI],
}
#: What we choose of another side's offer; strings and commitment come to it.
CHOICE: Final[JsonObject] = {
    "method": METHOD,
    "key_agreement_protocol": KEY_AGREEMENT,
    "hash": HASH,
    "message_authentication_code": MAC,
}


class RefusedError(Exception):
    """The event that is being read ends the verification.

    Args:
        code: what the other side is told.
    """

    def __init__(self, code: Code) -> None:
        self.code = code
        super().__init__(code.name)


def common_strings(content: JsonObject) -> list[str]:
    """What both sides can show, decimal before emoji.

    Raises:
        RefusedError: nothing, or no list.
    """
    theirs = texts(content, "short_authentication_string")
    common: list[str] = [known for known in (DECIMAL, EMOJI) if known in theirs]
    if not common:
        raise RefusedError(Code.UNKNOWN_METHOD)
    return common


def check_start(content: JsonObject, device_id: str) -> None:
    """Nothing, when we can go on from this start.

    Args:
        content: of the start event.
        device_id: the device that has to be the one that starts.

    Raises:
        RefusedError: another method, another device, or no protocol in common.
    """
    if text(content, "method") != METHOD:
        raise RefusedError(Code.UNKNOWN_METHOD)
    if text(content, "from_device") != device_id:
        raise RefusedError(Code.USER_MISMATCH)
    agreed = (
        KEY_AGREEMENT in texts(content, "key_agreement_protocols"),
        HASH in texts(content, "hashes"),
        MAC in texts(content, "message_authentication_codes"),
    )
    if not all(agreed):
        raise RefusedError(Code.UNKNOWN_METHOD)


def check_accept(content: JsonObject) -> None:
    """Nothing, when the other side chose what we offered.

    Raises:
        RefusedError: it chose something else.
    """
    chosen = {name: text(content, name) for name in CHOICE if name != "method"}
    if chosen | {"method": METHOD} != CHOICE:
        raise RefusedError(Code.UNKNOWN_METHOD)


def text(content: JsonObject, name: str) -> str:
    """A field that has to be a string.

    Raises:
        RefusedError: it is not.
    """
    value = content.get(name)
    if not isinstance(value, str):
        raise RefusedError(Code.INVALID_MESSAGE)
    return value


def texts(content: JsonObject, name: str) -> list[object]:
    """A field that has to be a list.

    Raises:
        RefusedError: it is not.
    """
    value = content.get(name)
    if not isinstance(value, list):
        raise RefusedError(Code.INVALID_MESSAGE)
    return value


def reason_of(content: JsonObject) -> str:
    """The code of a cancellation; no other word of a stranger goes into a log."""
    code = content.get("code")
    if not isinstance(code, str) or not code.replace(".", "").replace("_", "").isalnum():
        return "no code"
    return code[:50]
