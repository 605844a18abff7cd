"""What can go wrong between the bot and its homeserver, each with the exit code that it means."""

from __future__ import annotations

from pathlib import Path
from typing import Any, ClassVar

from bot.exits import Exit


class MatrixError(Exception):
    """The bot cannot go on as it is; waiting does not help, an operator has to act.

    The message is for the operator and names no secret.
    """

    exit_code: ClassVar[Exit] = Exit.CONFIG


class UnknownTokenError(MatrixError):
    """The homeserver does not know the access token (any more)."""

    exit_code = Exit.NO_PERMISSION


class LoginRefusedError(MatrixError):
    """Name or password is wrong, or the account may not log in this way."""

    exit_code = Exit.NO_PERMISSION


class WrongDeviceError(MatrixError):
    """Token, configured device and the kept keys do not belong together."""


class IdentityError(MatrixError):
    """The bot's keys are lost, replaced or contradict the server's; see the kinds."""


class IdentityLostError(IdentityError):
    """The account has a signing identity whose keys are not here."""

    exit_code = Exit.IDENTITY_LOST

    def __init__(self, path: Path) -> None:
        super().__init__(
            f"The account has a signing identity, but its keys are gone: there is no {path.name}. "
            "`linn keys import FILE` brings them back from an export, `linn restore` from a "
            "backup. If they are lost for good, `linn keys reset` makes a new identity; everybody "
            "then has to trust the bot anew."
        )


class IdentityChangedError(IdentityError):
    """The server shows another signing identity than the one kept here."""

    exit_code = Exit.IDENTITY_CHANGED

    def __init__(self) -> None:
        super().__init__(
            "The homeserver shows another signing identity than the one kept here: somebody has "
            "replaced it, or these keys are an old copy. Find out which before you go on, and "
            "change the bot's password if it was nobody of yours. `linn keys import FILE` takes "
            "the homeserver's one over from its export; `linn keys reset` makes a new one, and "
            "everybody then has to trust the bot anew."
        )


class DeviceChangedError(IdentityError):
    """The server shows other keys for the bot's device than the ones kept here."""

    exit_code = Exit.DEVICE_CHANGED

    def __init__(self, device_id: str) -> None:
        super().__init__(
            f"The homeserver shows other keys for device {device_id} than the ones kept here: the "
            "folder matrix_keys was lost or belongs to another device. `linn keys new-device` "
            "lets the bot come back as a new device, signed by the same identity."
        )


class IdentityFileError(IdentityError):
    """The file of the signing identity is damaged, or of another account."""

    exit_code = Exit.IDENTITY_DAMAGED

    def __init__(self, path: Path, what: str) -> None:
        super().__init__(
            f"{path.name} cannot be used: {what}. `linn keys import FILE` brings the identity "
            "back from an export, `linn restore` from a backup; if it is lost for good, "
            "`linn keys reset` makes a new one."
        )


class NotSignedError(IdentityError):
    """The server did not keep the signature of the device."""

    exit_code = Exit.NOT_SIGNED

    def __init__(self) -> None:
        super().__init__(
            "The homeserver took the signature of the bot's device and does not show it. Start "
            "the bot once more; `linn keys` shows what the homeserver has."
        )


class NoDeviceError(IdentityError):
    """There is no device whose keys could be looked at or signed."""

    exit_code = Exit.NO_DEVICE

    def __init__(self) -> None:
        super().__init__(
            "The bot has not signed in from this data folder yet, or its keys are not in it: "
            "`linn serve` signs in and makes them."
        )


class IdentityRefusedError(IdentityError):
    """The server does not take the identity without another proof, or refuses the one given."""

    exit_code = Exit.NO_PERMISSION


class ServerAnswerError(Exception):
    """The homeserver, or something in front of it, answered with something else than success.

    Args:
        status: HTTP status.
        answer: the JSON body, empty when there was none.
        asked_s: how long the server asks to wait [s]; None when it does not say.
    """

    def __init__(self, status: int, answer: dict[str, Any], asked_s: float | None = None) -> None:
        self.status = status
        self.answer = answer
        self.asked_s = asked_s
        super().__init__(f"{status} {self.code if self.is_the_homeservers else 'a foreign page'}")

    @property
    def is_the_homeservers(self) -> bool:
        """Whether it was the homeserver that spoke: it always gives an error code."""
        return "errcode" in self.answer

    @property
    def code(self) -> str:
        """The Matrix error code, `M_UNKNOWN` when none was given."""
        return str(self.answer.get("errcode", "M_UNKNOWN"))

    @property
    def retry_after_s(self) -> float:
        """How long the server asks to wait [s]; 5 s when it does not say (common practice)."""
        return 5.0 if self.asked_s is None else self.asked_s
