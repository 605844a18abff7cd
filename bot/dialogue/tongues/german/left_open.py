"""German words: a "no" that leaves things there, comes later, or refuses."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "left_open.things": r"stativ|kamera|ausrustung|rucksack|fernausloser|hund",
    "left_open.still": r"noch|dort|da|dagelassen|gelassen|vergessen|hol\w*|druben|oben|draussen",
    "left_open.from_there": (
        r"von (?:dort|da|druben)(?: (?:oben|draussen|aus))?"
        r"|(?:dort|da) (?:bleiben|stehen|sitzen|hin)"
    ),
    "left_open.later": r"(?<!dann )(?:gleich|bald|nachher|spater)\b(?! wieder weg)"
    r"|\w+ (?:holt|sucht) (?:es|ihn|sie|das|den|die)\b|(?:geht|lauft"
    r"|rennt) (?:noch ?mal )?zuruck",
    "left_open.climbed": r"(?:runter|herunter|hinunter)(?:geklettert|gestiegen)(?= [.,]|$)",
    "left_open.no": r"nein|nee",
    "left_open.yes": r"ja|jo",
    "left_open.refusal": r"nein|nee|ne",
    "left_open.refused": (
        r"danke|(?:das|es) (?:ist |geht )?(?:fine|ok|okay|passt|gut)|passt|ich weiss\b.*"
        r"|ich geh\w* nicht (?:weg|zuruck|runter)\b.*|ich bleib\w*"
        r"|(?:er|sie|die) (?:hor\w*|komm\w*|geh\w*|folg\w*) (?:\w+ )?(?:nicht|ned|net)\b.*"
        r"|(?:ich|wir) (?:sitze|stehe|sitzen|stehen)"
    ),
    "left_open.here": r"hier",
    "left_open.and": r"und|jetzt",
    "left_open.which": r"welche\w*|was|wie",
    "left_open.setting": r"zeit|blende|filter|einstellung\w*|objektiv|lange",
    # A thing that was left, where nobody says that they fetch it.
    "left_open.abandoned": r"(?:stehn|stehen|liegen|dort|da|zuruck) ?(?:ge)?lassen|vergessen",
    # Somebody who is there, by a name that nobody knows.
    "left_open.is_there": (
        r"^(?:und |aber |nur )*(?!(?:niemand|keiner|es|das|sonne|himmel|licht|wer)\b)\w+ (?:ist"
        r"|is|steht|sitzt|sind|stehen|sitzen) (?:noch |jetzt )?(?:auf (?:der|dem) (?:kante"
        r"|fels\w*|klippe|abbruchkante)|(?:da|dort) (?:oben|draussen|druben))"
    ),
}
