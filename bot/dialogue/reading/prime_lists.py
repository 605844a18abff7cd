"""Lists of primes, named before or behind: "20, 35, 85 primes", "three primes, 24 35 50"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.lens_marks import PRIMES
from bot.dialogue.reading.numbers import Quantity

_ONE: Final = r"(?:an? |my |the )?\d{2,3}(?: ?mm)?"
_LIST: Final = rf"(?P<list>{_ONE}(?:(?:,|;|\+|&|\band\b|\bplus\b| )+{_ONE})+)"
_PRIMES: Final = r"(?:primes|prime lenses|fixed (?:lenses|focals)|prime)"
_NAMED_BEHIND: Final = re.compile(rf"\b{_LIST} {_PRIMES}\b")
_NAMED_BEFORE: Final = re.compile(
    rf"\b{_PRIMES}(?: (?:are|at|of|in|with me|here|today|only|my|the))*[,:]? {_LIST}(?![\w./-])"
)
_NUMBER: Final = re.compile(r"\d+")


def is_listed_prime(text: str, quantity: Quantity) -> bool:
    """Whether a number stands in a list of nothing but focal lengths of primes that are made.

    Args:
        text: the message, as it is read.
        quantity: one of its numbers.
    """
    for named in (_NAMED_BEHIND, _NAMED_BEFORE):
        for found in named.finditer(text):
            inside = found.start("list") <= quantity.start < found.end("list")
            if inside and all(float(one) in PRIMES for one in _NUMBER.findall(found["list"])):
                return True
    return False
