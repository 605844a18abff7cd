"""Lists of which the last member alone has its unit: `a 24, a 35 and an 85 mm prime`."""

from __future__ import annotations

import re
from typing import Final

_AND: Final = r"(?:, and |, | and | & | plus )(?:an? |the |my |one )?"
_PRIMES: Final = re.compile(
    rf"(?<![\w./-])(\d{{2,3}})(?=(?:{_AND}\d{{2,3}})*{_AND}\d{{2,3}} ?(?:mm|millimet\w+)"
    r" (?:primes?|fixed|lens(?:es)?)\b)"
)
#: "1/4, 0.5 and 1 s": a time in a list of times.
_TIMES: Final = re.compile(
    r"(?<![\w./])(0?\.\d+)(?=(?:,? and |, | or |/)(?:0?\.\d+, )*\d+(?:\.\d+)? ?s(?:ecs?)?\b)"
)


def with_units(text: str) -> str:
    """The message with each member of such a list named as the last one.

    Args:
        text: in lower case, numbers in digits.
    """
    return _TIMES.sub(r"\1 s", _PRIMES.sub(r"\1 mm prime", text))
