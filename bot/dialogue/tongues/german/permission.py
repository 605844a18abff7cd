"""German words: who asks for, or tells of, a place where nobody stands."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

#: Between who asks and the place: nothing that denies, and no end of the clause.
_GAP: Final = r"(?: (?!nicht\b|nie\b|kein|no\b|not\b|never\b|nunca\b)[^ ,.]+){0,5}?"
_DARF: Final = (
    r"(?:(?:darf|durfen|durfte|kann|konnen|konnte|soll|sollte|mochte|will|wollen|wurde)"
    r" (?:ich|wir|man|jemand|mein \w+|meine \w+|das model|er|sie)"
    r"|(?:ich|wir) (?:will|wollen|mochte|mochten|wurde gern|darf|durfen)"
    r"|ist es (?:ok|okay|erlaubt|sicher|moglich)|geht es)"
)
_AN: Final = r"(?:an|auf|uber|zu|zur|bis zur|bis an|bis auf|vor bis an|direkt an|ganz an)"
_KANTE: Final = (
    r"(?:die |der |den |dem )?(?:\w+ )?(?:abbruchkante|kante|fallkante|felskante|abrisskante"
    r"|oberkante|klippe|klippenrand|abgrund|abbruch|absturzkante)"
)
#: "Rand" is the frame's, too: only where somebody climbs, steps or stands there.
_RAND: Final = (
    r"(?=.*\b(?:rauf|rauf\w+|hoch|hoch\w+|hinauf\w*|klett\w+|kraxel\w*|steig\w*|stehen(?! lass)"
    r"|stellen|treten|setzen|hocken)\b)"
)
_AM_RAND: Final = (
    r"(?:zum|an den|bis zum|bis an den|auf den|am|auf dem)(?: (?:oberen|obersten|ausseren))? rand"
    r"(?! (?:vom|des|der|von|im) )"
)
_POOL: Final = r"(?:wasser|bach|fluss|wildbach|bachbett|becken|pool|tumpel|kolk|see|gumpen?)"
_INS_WASSER: Final = (
    r"(?:ins wasser|in den (?:bach|fluss|wildbach)|in die (?:gumpe|stromung)|ins (?:becken"
    r"|bachbett)|im (?:wasser|bach|fluss|bachbett) stehen"
    rf"|(?:in (?:den|die|das|der|dem|einen|eine)|ins|im) {_POOL} (?:baden|schwimmen|springen"
    r"|hupfen|plan?t?schen|gehen|steigen|waten|spielen|rein\w*))"
)
#: Somebody of the party, and what they want or may: "die Kinder wollen ins Wasser".
_WHO_WANTS: Final = (
    r"(?:(?:mein|meine|unsere?|die|der|das) (?:[^ ,.]+ )?(?:kind|kinder|kids|sohn|tochter|enkel"
    r"|enkelin|enkelkinder|kleinen?|freund\w*|frau|mann|bruder|schwester|jungs|madels|buben|bub"
    r"|opa|oma|schuler\w*|gruppe|leute|model)|er|sie|jemand|einer|alle)"
    r" (?:will|wollen|mochten?|mag|mogen|durfen|darf|kann|konnen|wurden? gern\w*)"
)
_DARF_WER: Final = (
    r"(?:darf|durfen|kann|konnen|soll|sollen) (?:die|der|das|unsere?|mein|meine) (?:[^ ,.]+ )?"
    r"(?:kind|kinder|kids|sohn|tochter|enkel|enkelin|kleinen?|jungs|madels|buben|bub|gruppe|leute)"
)
_DORT: Final = (
    r"(?<!im )(?<!ins )(?:einstellung\w*|werte|blende|zeit|objektiv|fotos?|bild|aufnahme"
    r"|fotografier\w*)(?: \w+)? (?:von|an|auf) der (?:kante|abbruchkante|fallkante|felskante"
    r"|klippe)"
)
_STEHT: Final = (
    r"(?:kind|kinder|sohn|tochter|freund\w*|frau|mann|bruder|schwester|er|sie|jemand|leute)"
    r" (?:ist|sind|steht|stehen|sitzt|spielt|spielen|turnt|lauft|geht)"
    rf"(?: (?!nicht\b)[^ ,.]+){{0,2}}? (?:an|auf|am|bei) {_KANTE}"
)

WORDS: Final[Mapping[str, str]] = {
    "permission.picture": (
        r"im bild|ins bild|bildrand|bildkante|im foto|foto(?:s)? (?:lassen|haben)|scharf\w*"
        r"|fokus\w*|belicht\w*|anschneid\w*|abschneid\w*|beschneid\w*|schneid\w*|weglass\w*"
        r"|messen"
    ),
    "permission.to_lip": (
        rf"{_DARF}{_GAP} {_AN} {_KANTE}"
        r"|wie (?:nah|nahe|weit|dicht) (?:darf|kann|durfen|konnen|soll) (?:ich|wir|man)"
        rf"{_GAP} {_AN} {_KANTE}|{_RAND}{_DARF}{_GAP} {_AM_RAND}|ist {_KANTE} (?:erlaubt|ok|okay"
        rf"|sicher|begehbar|betretbar|frei)"
    ),
    "permission.into_water": rf"(?:{_DARF}|{_WHO_WANTS}|{_DARF_WER}){_GAP} {_INS_WASSER}",
    "permission.stands": _STEHT,
    "permission.settings": _DORT,
}
