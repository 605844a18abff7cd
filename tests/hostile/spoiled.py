"""Good files cut off and with flipped bits."""

from __future__ import annotations

import random
from collections.abc import Iterator

from core.errors import FrameFault
from tests.hostile.cases import REPORT, Case

#: What may become of a file that is cut off; never a report, which would be made up.
CUT = frozenset({FrameFault.DAMAGED.value})
#: What may become of flipped bits: a report where they do not show, else a fault of the file.
FLIPPED = frozenset(
    {
        REPORT,
        *(
            fault.value
            for fault in (
                FrameFault.DAMAGED,
                FrameFault.NOT_A_PICTURE,
                FrameFault.KIND_NOT_READ,
                FrameFault.TOO_SMALL,
                FrameFault.TOO_MANY_PIXELS,
                FrameFault.TOO_MUCH_MEMORY,
            )
        ),
    }
)


def cuts(kind: str, data: bytes, allowed: frozenset[str] = CUT) -> Iterator[Case]:
    """A file cut off at every sixteenth."""
    for sixteenths in range(1, 16):
        part = data[: len(data) * sixteenths // 16]
        yield Case(f"{kind}, cut", f"at {sixteenths}/16", part, allowed)


def flips(
    kind: str, data: bytes, number: int, seed: int, allowed: frozenset[str] = FLIPPED
) -> Iterator[Case]:
    """A file with 1, 4 or 16 flipped bits, so many times; the same for the same seed."""
    chance = random.Random(f"{seed} {kind}")
    for index in range(number):
        spoiled = bytearray(data)
        for _ in range(chance.choice((1, 4, 16))):
            spoiled[chance.randrange(len(spoiled))] ^= 1 << chance.randrange(8)
        yield Case(f"{kind}, flipped", f"{index} of seed {seed}", bytes(spoiled), allowed)
