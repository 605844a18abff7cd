"""German wordings: illnesses that turn bad in minutes, what was eaten, and how it shows."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

ILLNESS: Final[Mapping[str, str]] = {
    "illness": """
        diabet*, zuckerkrank*, insulin*, (unterzucker*|blutzucker), zucker ~ (niedrig|
        unten|keller), asthma*, (asthmaspray|notfallspray|nitrospray|herzspray), allerg*,
        epipen, adrenalinpen, notfallpen, epilep*, krampfanfall, anfall, dement, demenz, alzheimer,
        schwanger*, fruchtblase, wehen, herzanfall, herzfehler, herzinfarkt, herzkrank*,
        herztabletten, schrittmacher, schlaganfall, hitzschlag, sonnenstich, blutverdunner,
        tabletten, blinddarm, (wespe|wespen|biene|bienen|hornisse|hornissen|kreuzotter|schlange|
        viper|spinne|zecke)""",
    "unwell": """
        (verwirrt|wirr|schwitzt|schweissgebadet|kaltschweissig|zittrig|pfeift|rochelt|keucht|
        ohnmachtig|umgekippt|schlaff|schlafrig|schwindlig|schwindelig|ubel|speibt|speib|kotzt|
        erbricht|ubergibt|gespieben|krampft|zuckt|geschwollen|schwillt|quaddeln|ausschlag|heiser|
        wurgt|lallt|lallen|murmelt|benommen|bleich|aschfahl|leichenblass), redet (wirr|komisch|
        unsinn|bloedsinn|blodsinn|zeug|durcheinander|nur), (wie|benimmt sich wie) betrunken,
        (findet|kriegt|sucht) ~ (worte|worter), (pfeift|schnarcht|rasselt) ~ (atmen|komisch|luft),
        fragt ~ (gleiche|dasselbe|selbe|des gleiche), (ist|wird|ganz) (grau|weiss|blau|blass|gelb),
        (ganz|so|sehr|immer) (schlafrig|mud|mude|still), (spray|pen|tabletten|gels|insulin|akku|
        inhalator|asthmaspray) (ist|liegt|sind|liegen|im|leer|vergessen)*, (im|in der|beim|in dem)
        (auto|andern rucksack|anderen rucksack|hutte|zelt|hotel|bus), kribbelt, kribbeln, druck
        (auf|in) (der)? brust, (hals|zunge|lippe|lippen|gesicht|augen) ~ (zu|dick|schwillt|
        geschwollen|schwellen), keine klare antwort""",
    "ate_bad": """
        (pilz|pilze|beeren|beere|fliegenpilz|pflanze|blatter|wurzel|tabletten|eibe|tollkirschen) ~
        (gegessen|probiert|verschluckt|gekostet|geschluckt|genascht|gessn), (isst|ass|gegessen|
        probiert|geschluckt|verschluckt|gekostet) ~ (pilz|pilze|beeren|beere|pflanze|wurzel|
        tabletten), aus dem bach getrunken""",
}
