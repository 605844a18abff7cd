"""Angles in one spelling: "four and a half degrees" is "4.5 degrees", which no reader takes."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.spoken_numbers import WORD_NUMBER, in_figures

#: "Grad" alone is "just" in German and a filter in English: only with what leans.
_LEANS: Final = r"(?=\W+(?:geneigt|schr[äa]g|schief|crooked|nach|after|gekippt|ge?dreht|links|left"
_DEGREE: Final = (
    rf"(?:degrees?\b|degs?\b|° ?[cf]\b|°|grados?\b|grad\b{_LEANS}|rechts|right|verkippt|tilted"
    r"|tilt|up|down|off)\b))"
)
_PARTS: Final = {"half": 1 / 2, "third": 1 / 3, "quarter": 1 / 4, "medio": 1 / 2, "halben": 1 / 2,
                 "halbes": 1 / 2, "halber": 1 / 2}  # fmt: skip
_PART: Final = "|".join(_PARTS)
_WHOLE: Final = rf"(?:\d+(?:[.,]\d+)?|\b(?:{WORD_NUMBER})\b)"
#: What is left of "half a degree" where another language put its own article.
_A: Final = r"(?:an?|one|un|una|eine?[nm]?)"
_HALF_A: Final = re.compile(
    rf"\b(?:{_A} )?(?P<part>{_PART})[ -](?:of )?(?:{_A} )?(?:degree\b|grado\b|grad\b)"
)
_AND_A_HALF: Final = re.compile(
    rf"(?:(?P<whole>{_WHOLE})(?: and {_A} (?P<part>{_PART})| (?P<figures>[1-3]/[2-4]))?"
    rf"|\b(?P<figure>[1-3]/[2-4])(?: of {_A})?)[ -]?{_DEGREE}"
)
#: "A degree and a half".
_DEGREE_AND: Final = re.compile(rf"\b{_A} degree and {_A} (?P<part>{_PART})\b")
#: "Four to five degrees", "10 or 15°": the sign stands once for both.
_TWO: Final = re.compile(
    rf"(?<![\w/.:])(?P<first>{_WHOLE}) ?(?P<between>to|or|-) ?"
    rf"(?=(?:{_WHOLE})(?: and {_A} (?:{_PART}))?[ -]?{_DEGREE})"
)
_ANGLE: Final = re.compile(r"deg|°|gra[d]")


def in_degrees(text: str) -> str:
    """A message with its angles (and temperatures) in digits, so that no part of one is a time.

    Args:
        text: in lower case, its numbers in words or digits.
    """
    if _ANGLE.search(text) is None:
        return text
    text = _DEGREE_AND.sub(lambda match: _said(1 + _PARTS[match["part"]]), text)
    text = _HALF_A.sub(lambda match: _said(_PARTS[match["part"]]), text)
    return _AND_A_HALF.sub(_angle, _TWO.sub(_both, text))


def _said(degrees: float) -> str:
    return f"{round(degrees, 2):g} degrees"


def _both(match: re.Match[str]) -> str:
    if match["between"] == "-" and not match["first"][:1].isdigit():
        return match.group()  # "thirty-two" is one number
    return f"{_said(_number(match['first']))} {match['between'].replace('-', 'to')} "


def _angle(match: re.Match[str]) -> str:
    if match["figure"]:
        return _said(_fraction(match["figure"]))
    part = _PARTS.get(match["part"] or "", 0.0)
    more = _fraction(match["figures"]) if match["figures"] else part
    return _said(_number(match["whole"]) + more)


def _number(said: str) -> float:
    return float(in_figures(said).replace(",", "."))


def _fraction(said: str) -> float:
    top, below = said.split("/")
    return int(top) / int(below)
