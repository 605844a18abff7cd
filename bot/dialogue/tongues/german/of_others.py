"""German words of scenes and frames that are somebody else's, told to ask about them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_LEARNER: Final = (
    r"(?:kurs)?teilnehmer(?:in|innen|n)?|schüler(?:in|innen|n)?|anfänger(?:in|innen|n)?"
    r"|kursleute|lehrling\w*|student(?:in|innen|en)?"
)

WORDS: Final[Mapping[str, str]] = {
    # Who is taught, and what comes of it.
    "of_others.learner": rf"{_LEARNER}|kurs|workshop|klasse|eine[rs]? von (?:ihnen|meinen|den)",
    # One of them, as the one whose scene is told.
    "of_others.one": (
        rf"(?:(?:eine?[rnms]?|der|die|das|a|the|mein\w*) (?:\w+ )?)?(?:{_LEARNER})"
        r"|eine[rs]? von (?:ihnen|meinen|den)"
    ),
    "of_others.alone": (
        r"(?:eine?[rnm]?|der|die|das|a|the|meine[rnm]?) (?:\w+ )?(?:(?:kurs)?teilnehmer(?:in)?"
        r"|schüler(?:in)?|anfänger(?:in)?|student(?:in)?)|eine[rs]? von (?:ihnen|meinen|den)"
    ),
    "of_others.they": r"sie|er",
    "of_others.their": r"ihre?[nrms]?|seine?[nrms]?",
    # A further case behind the last one.
    "of_others.next": r"(?:und |dann )*(?:noch eins|noch ein \w+|das nächste|nächstes|still one)",
    # Asks for the cause of what went wrong.
    "of_others.cause": (
        r"schief ?gegangen|schief ?gelaufen|warum|wieso|woran|ursache|grund|was ist (?:da )?falsch"
        r"|(?:über|unter)belichtet|wie (?:merkt|erkennt|sieht) \w+"
    ),
    # "Überbelichtet oder zu lang": each of two causes of white without lines.
    "of_others.blown": r"überbelichtet|ausgefressen|ausgebrannt|zu hell|too bright",
    "of_others.long": r"zu lang\w*|too lang\w*|verwischt|bewegung",
}
