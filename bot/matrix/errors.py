"""What can go wrong between the bot and its homeserver, each with the exit code that it means."""

from __future__ import annotations

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
    """The bot's signing identity is lost, replaced or contradicts the server's."""


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
