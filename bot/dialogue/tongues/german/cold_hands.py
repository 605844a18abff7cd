"""German words: cold hands and feet, and what may stand beside them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_KALT: Final = r"(?:eiskalt\w*|kalt\w*|eisig\w*|klamm\w*|durchgefroren)"
_HANDE: Final = r"(?:handen?|haende|hand|fingern?|fussen?|fuesse|zehen)"
_GANZ: Final = (
    r"(?:(?:sind|san|werden|ganz|so|sehr|echt|ziemlich|schon|etwas|richtig|voll|jetzt|auch|mir"
    r"|a bissl|ein bisschen|bisschen|leider|total) )*"
)
#: "Mir ist kalt an den Händen".
_AN_HANDEN: Final = (
    r"(?:mir|uns) (?:ist|is|wird)(?: (?:a|ein|bissl|bisschen|etwas|so|ganz|recht|sehr|schon))*"
    r" kalt an (?:den |die )?(?:handen|fingern|fussen|zehen|hand|finger|zehen)"
)

WORDS: Final[Mapping[str, str]] = {
    "cold_hands.told": (
        rf"{_HANDE} {_GANZ}{_KALT}(?: vor (?:lauter )?kalte)?|{_KALT} {_HANDE}|{_AN_HANDEN}"
        rf"|(?:mir|uns)? ?(?:frier\w*|frieren)(?: (?:mir|uns|langsam|schon|echt|gleich|grad|fast))*"
        rf" (?:die |meine )?{_HANDE}(?: (?:ab|ein|langsam|schon))*"
        rf"|{_HANDE} (?:frieren|frier\w*)(?: (?:mir|uns|langsam|schon|echt|gleich|grad|fast|ab"
        rf"|ein))*"
        # Fingers alone: whole hands or feet without feeling have cooled through.
        rf"|finger {_GANZ}taub"
        r"|(?:was hilft|was tun) gegen (?:die )?kalte"
    ),
    "cold_hands.shaking": (
        r"(?:ich )?zitter\w*(?: ich)?(?: (?:grad|schon|etwas))* vor (?:lauter )?kalte"
    ),
    "cold_hands.cold_alone": r"(?:mir|uns) (?:ist|wird) (?:(?:ein bisschen|etwas|langsam) )?kalt",
    "cold_hands.numb": rf"{_HANDE} {_GANZ}taub",
    "cold_hands.but": r"aber",
    "cold_hands.they_are": r"sonst|es geht|geht|mir|alles",
    "cold_hands.fine": r"gut",
    "cold_hands.beside": (
        r"kann kaum tippen|(?:is |ist )?(?:gar )?(?:nicht|nich|ned) so (?:leicht|einfach)"
        r"|zu tippen|tippen|den|(?:nasse |dicke )?handschuhen?(?: (?:an|sind nass))?|mir|uns|ich"
        r"|i|hab"
        r"|habe|hob|halt|leider|noch|schon|jetzt|meine?|die|und|aber|mit|sind|heute?|so|gut|alles"
        r"|gehts|geht|es|bitte|kurz|grad"
    ),
    # The picture that goes on, the light that goes, and what is worse than cold hands.
    "cold_hands.picture": (
        r"was (?:jetzt|nun)|wie (?:geht es )?weiter|was kommt (?:jetzt|als nachstes)"
        r"|iso|zeit|blende|belicht\w*|stativ|freihand|objektiv|filter|werte?|einstellung\w*"
        r"|fokus\w*|bild\w*|foto\w*|rausch\w*|griesel\w*"
    ),
    "cold_hands.dusk": (
        r"(?:es )?wird (?:jetzt |schon |langsam |a )?(?:dunkler|dunkel|finster)(?: jetzt)?"
    ),
    "cold_hands.worse": (
        r"aufhoren|verwirrt|schlafrig|mude|lall\w*|stolper\w*|weiss|weisse|blau|hart"
        r"|erfrierung\w*|ohnmach\w*|schwindlig|gehen"
    ),
    # Before it, behind good news: "all good, only cold fingers".
    "cold_hands.just": r"nur|bloss|aber|halt|mit|meine|eh|a",
}
