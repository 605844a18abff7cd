"""German words: where nobody may stand, the note left at home, and that nobody is hurt."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_STELLEN: Final = r"(?:wo|wohin|(?:an )?welche[nr]? (?:stellen?|platze[n]?|orte[n]?|felsen))"
_HIN: Final = (
    r"(?:(?:zu )?(?:hin|stehen|stellen|hinstellen|gehen|sein|hingehen|treten|betreten|aufstellen"
    r"|rein|rauf|drauf|steigen|sitzen|fotografieren))"
)
_VERBOTEN: Final = r"(?:verboten|gefahrlich|tabu|gesperrt|nicht (?:erlaubt|sicher))"
_WENN: Final = (
    r"(?:(?:wenn|falls|sollte|sollten) (?:ich|wir|er|sie)(?: (?!und\b|aber\b)[^ ,.]+){0,8}?"
    r" (?:nicht|noch nicht|spater|uberfallig)(?: (?!und\b|aber\b|ruf|hol)[^ ,.]+){0,6}?"
    r"|bin ich (?:bis|um) [^ ]+(?: uhr)? nicht (?:zuruck|da|daheim))"
)
_RUFT: Final = (
    r"(?:(?:dann |bitte |sollst? |soll |sie |er |du |die |den |der |das |meine? \w+ |bergrettung "
    r"|bergwacht |rettung |notruf |polizei |112 )*(?:ruf\w*|anrufen|anruft|verstandig\w*"
    r"|alarmier\w*|gib|gebt|meld\w*|hol\w*|wahl\w*)\b"
    r"(?: (?:die|den|der|das|bei|bitte|bescheid|an))*(?: (?!und\b|aber\b)[^ ,.]+)?)"
)

WORDS: Final[Mapping[str, str]] = {
    # Who is late, who calls whom; and that somebody knows where they are.
    "spoken_of.note_home": (
        rf"{_WENN}(?: ,)?(?: und)? {_RUFT}"
        rf"|{_RUFT}(?: ,)? {_WENN}(?= [.,]|$)"
        r"|(?:zettel|nachricht|notiz|gesagt|geschrieben|bescheid|hinterlass\w+|(?:frau|mann"
        r"|schwester|bruder|mutter|vater|freund|freundin|hotel|hutte|jemand|sie"
        r"|er) weiss)(?: (?!nicht\b|niemand\b|kein|ahnung\b|weiss\b)[^ .]+){0,6}?(?: \.)? wo"
        r" (?:ich|wir)(?: (?:bin|sind|hingehen|hingehe|gehe|gehen|unterwegs))*"
    ),
    "spoken_of.where_not": (
        rf"{_STELLEN} (?:darf|durfen|soll|sollen|sollte|sollten|kann|kannst|konnen|muss)"
        rf"(?: (?:ich|wir|man|mich|das|mein|stativ|denn|hier|da|am|beim|fall|wasserfall))*"
        rf" (?:lieber |besser |auf keinen fall )?(?:nicht|nie|niemals|niemand|keiner)"
        rf"(?: mit (?:dem|meinem) stativ)?(?: {_HIN})?(?= [.,]|$)"
        rf"|{_STELLEN} (?:ist es|ists|ist|sind|ware es|war es)(?: (?:hier|da|am|beim|fall|zu))*"
        rf" {_VERBOTEN}(?: (?:zu )?{_HIN})?"
    ),
    # That nobody is hurt or out there.
    "spoken_of.nobody": (
        r"(?:niemand|keiner|keinem|niemandem)(?: von uns)? (?:ist|war|steht|wurde|hat sich|ging)"
        r"(?: (?:mehr|was|jetzt))*(?: (?:(?:im|in|am|an|auf)(?: (?:der|dem|den))? \w+|verletzt"
        r"|passiert|da draussen|weh getan|verloren|verirrt|reingefallen))"
    ),
    # They focus or meter on the lip.
    "spoken_of.picture": (
        r"(?:auf|an) (?:die|der|den) (?:kante|oberkante|abbruchkante|fallkante|rand)"
        r" (?:scharf\w*|fokus\w*|mess\w*|belicht\w*)"
    ),
    # A message holds one of these where any of that can be found.
    "spoken_of.gate": (
        r"wo|wohin|welche\w*|wenn|falls|sollte\w*|bin ich|niemand\w*|kein\w*"
        r"|\w*(?:scharf|fokus|mess|belicht)\w*"
    ),
}
