"""English words around the number of an option: "option 3", "2 as I said"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What names an option, wherever it stands in a message.
    "numbered.option": r"option|answer|choice",
    # What may stand before its number at the beginning alone.
    "numbered.before": (
        r"number|no|nr|it's|its|it is|that's|thats|definitely|still|again|so|ok|well"
    ),
    "numbered.one": r"one",
    "numbered.two": r"two",
    "numbered.three": r"three",
    "numbered.four": r"four",
    "numbered.five": r"five",
    # What adds something to the option instead of naming another.
    "numbered.also": r"and|also|plus|as well as",
    # What points back to an earlier message, and tells nothing.
    "numbered.as_said": (
        r"(?:as|like) (?:(?:i|we)(?:'ve| have)? (?:just )?)?(?:said|told you|wrote|typed)"
        r"|as (?:before|above)|(?:i(?:'ve)? )?(?:already )?told you(?: already| that| so)*"
        r"|i (?:just |already )?(?:said|wrote|typed)(?: that| it| so)?(?: already)?"
    ),
    # What may follow it without a sign between: none of it is counted or measured.
    "numbered.goes_on": (
        r"<numbered.as_said>|i|i'm|i've|it|it's|its|we|we're|they|there's|theres"
        r"|that's|yes|yeah|yep|no|nope|but|because|cos|since|still|again|please|pls|definitely"
        r"|probably|think|sorry|though|already"
    ),
    # Who is unsure chooses all the same.
    "numbered.unsure": (
        r"not sure|not certain|(?:i )?don'?t know|dunno|idk|no idea|hm+|um+|uh+|er+|maybe"
        r"|probably|i (?:think|guess|reckon)|i'?d say|guess"
    ),
}
