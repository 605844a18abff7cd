"""Names of sensor formats in one spelling, without their digits."""

from __future__ import annotations

import re
from typing import Final

Rule = tuple[re.Pattern[str], str]

#: Names of formats that hold digits lose them here, so that no digit is read as a measure.
FORMATS: Final[tuple[Rule, ...]] = tuple(
    (re.compile(pattern), f" {name} ")
    for pattern, name in (
        (r"\b(?:2(?:\.0)? ?x?[ -]?crop|crop(?: factor)?(?: of)? 2x?)\b", "formatmft"),
        (r"\bmicro[ -]?(?:four|4)[ /-]*(?:thirds?|3rds?|3)\b", "formatmft"),
        (
            (
                r"\b(?:four|4)[ /-](?:thirds|3rds)\b|\bfour[ -]third\b(?! (?:of|stop))"
                r"|\bm ?4 ?/ ?3(?:rd)?s?\b|\bm43\b|\bmft\b"
            ),
            "formatmft",
        ),
        (
            r"\b(?:1|one)[ -]?(?:\"|inch|in\b)[ -]?(?:\w+ )?(?:sensor|type|compact|camera|chip)\b",
            "formatinch",
        ),
        (
            r"\bsensor(?:'s|:| is| of)?(?: an?| just an?)? (?:1|one)[ -]?inch(?: \w+)?\b",
            "formatinch",
        ),
        (r"(?:(?<=^)|(?<=[,;] )|(?<=a ))(?:1|one)[ -]?inch(?=\s*(?:$|[,;.]))", "formatinch"),
        (r"\bmedium[ -]?format\b|\b44 ?x ?33\b|\b33 ?x ?44\b", "formatmedium"),
        (
            r"\b35 ?mm[ -](?:sensor|format|film|body|full[ -]?frame)\b|\b(?:36 ?x ?24|24 ?x ?36)\b",
            "formatfull",
        ),
        (r"\bfull[ -]?frame\b|\bff\b|\bfullframe\b", "formatfull"),
        (r"\bfull[ -]?sized? (?:sensor|chip|camera)\b", "formatfull"),
        (r"\bthe crop (?:kind|type|sort|one)\b", "formatcrop"),
        (r"\b(?:aps[ -]?c |crop )?1[.,]6 ?x?[ -]?(?:crop|aps[ -]?c)\b", "formatsmallcrop"),
        (r"\b(?:crop|aps[ -]?c)(?: factor| sensor| body)?(?: of)? 1[.,]6x?\b", "formatsmallcrop"),
        (
            r"\b(?:crop|aps[ -]?c)(?: \w+)?,? (?:of )?(?:the )?1[.,]6 (?:kind|sort|type|one)s?\b",
            "formatsmallcrop",
        ),
        (r"\b1[.,]6 ?x\b|\bx ?1[.,]6\b", "formatsmallcrop"),
        (r"\b1[.,]5 ?x?[ -]?(?:crop|aps[ -]?c)\b", "formatcrop"),
        (r"\b(?:crop|aps[ -]?c)(?: factor| sensor| body)?(?: of)? 1[.,]5x?\b", "formatcrop"),
        (r"\b1[.,]5 ?x\b|\bx ?1[.,]5\b|\baps[ -]?c\b", "formatcrop"),
    )
)
