"""Two devices and their agreement: what is compared, and the codes over their keys."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from bot.matrix.verification.agreement import EMOJI, Agreement
from bot.matrix.verification.messages import Code, JsonObject
from bot.matrix.verification.negotiation import RefusedError, text


@dataclass(frozen=True)
class Party:
    """One of the two devices.

    Attributes:
        user_id: whose it is.
        device_id: the device.
        keys: key id to public key, unpadded base64: the device's own key, and the master key
            of the user's identity when there is one.
    """

    user_id: str
    device_id: str
    keys: Mapping[str, str]

    @property
    def own_key_id(self) -> str:
        """The id of the device's own signing key."""
        return f"ed25519:{self.device_id}"


class Exchange:
    """What passes between two devices about their keys.

    Args:
        ours: this device.
        theirs: the other one, with the keys that the server shows for it.
        transaction_id: the id that both sides know the verification by.
        agreement: makes this side's key.
    """

    def __init__(
        self,
        ours: Party,
        theirs: Party,
        transaction_id: str,
        agreement: Callable[[], Agreement],
    ) -> None:
        self.ours = ours
        self.theirs = theirs
        self._transaction_id = transaction_id
        self._agreement = agreement()
        self._their_key = ""

    @property
    def public_key(self) -> str:
        """This side's key, unpadded base64."""
        return self._agreement.public_key

    def meet(self, content: JsonObject) -> str:
        """Take the other side's key out of its event.

        Raises:
            RefusedError: it is no usable key.
        """
        try:
            self._their_key = self._agreement.meet(text(content, "key"))
        except ValueError as error:
            raise RefusedError(Code.INVALID_MESSAGE) from error
        return self._their_key

    def words(self, strings: list[str], *, we_started: bool) -> tuple[str, ...]:
        """What is compared: seven emoji by name, or three numbers.

        Source: specification 1.16, "SAS HKDF calculation": who started, who accepted, the id.
        """
        sides = [(self.ours, self.public_key), (self.theirs, self._their_key)]
        if not we_started:
            sides.reverse()
        named = [f"{side.user_id}|{side.device_id}|{key}" for side, key in sides]
        info = "|".join(("MATRIX_KEY_VERIFICATION_SAS", *named, self._transaction_id))
        if EMOJI in strings:
            return self._agreement.emoji(info)
        return tuple(map(str, self._agreement.numbers(info)))

    def our_codes(self) -> JsonObject:
        """The codes over our keys and over the list of them."""
        info = self._info(self.ours, self.theirs)
        codes = {
            key_id: self._agreement.mac(key, info + key_id)
            for key_id, key in self.ours.keys.items()
        }
        listed = self._agreement.mac(",".join(sorted(codes)), f"{info}KEY_IDS")
        return {"mac": codes, "keys": listed}

    def check_codes(self, content: JsonObject) -> None:
        """Nothing, when the codes are over these keys and right for each that we know.

        Raises:
            RefusedError: one is wrong, or the device's own key is not among them.
        """
        codes, listed = content.get("mac"), text(content, "keys")
        if not isinstance(codes, dict) or not all(isinstance(mac, str) for mac in codes.values()):
            raise RefusedError(Code.INVALID_MESSAGE)
        info, known = self._info(self.theirs, self.ours), self.theirs.keys
        checks = {f"{info}KEY_IDS": (listed, ",".join(sorted(codes)))}
        checks |= {info + name: (codes[name], known[name]) for name in codes if name in known}
        right = [self._agreement.is_mac(mac, over, info) for info, (mac, over) in checks.items()]
        if not all(right) or self.theirs.own_key_id not in codes.keys() & known.keys():
            raise RefusedError(Code.KEY_MISMATCH)

    def _info(self, sender: Party, receiver: Party) -> str:
        """Specification 1.16, "MAC calculation": all but the key id."""
        sides = (sender.user_id, sender.device_id, receiver.user_id, receiver.device_id)
        return "".join(("MATRIX_KEY_VERIFICATION_MAC", *sides, self._transaction_id))
