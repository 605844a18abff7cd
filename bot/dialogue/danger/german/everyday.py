"""German wordings of a plain day out: errands, small complaints, a hand's breadth of water."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

EVERYDAY: Final[Mapping[str, str]] = {
    "errand": """
        (kaffee|eis essen|ein eis|eis holen|brotzeit|jause|picknick|picknickplatz|kuchen|bier|klo|
        toilette|wc|kiosk|cafe|gasthaus|gasthof|wirtshaus|hutte|spielplatz|imbiss|semmel|
        mittagessen), (holt|hol|holen|hole|kauft|kaufen|bringt|besorgt) ~ (kaffee|eis|tee|tele|
        objektiv|filter|jacke|jacken|akku|stativ|brot|wasser|essen|auto), (im|am|beim|zum|ins|aus
        dem) (auto|klo|cafe|kiosk|gasthaus|bus|hotel|parkplatz|wirt), (objektiv|schuhe|akku|karte|
        film|filter|windel) (wechseln|wechselt|tauschen|an|tauscht), gleich (wieder)? (da|zuruck|
        hier), (um|gegen) (eins|zwei|drei|vier|funf|sechs|\\d+) ~ (brucke|auto|hutte|treffen|
        wieder), mit (einem|nem|seinem|ihrem)? (buch|strickzeug|skizzenbuch|zeitung), (liest|
        strickt|zeichnet|malt|portrats|portrat|schlaft in der|schlaft im|schlaft auf)""",
    "mild": """
        (bisschen|bissl|bissel|bisserl|etwas|wenig|leicht|a bissl) (kalt|frisch|kuhl|steif|mude|
        mud|nass|feucht|matschig|hungrig|verschwitzt|ausser atem|langweilig), (pflaster|blase|
        blasen|blasenpflaster|muckenstich|muckenstiche|mucken|brennnessel|brennnesseln|juckt|
        jucken|pollen|niese|niesen|heuschnupfen|sonnenbrand|hunger|durst|barenhunger|platt|
        gahne|muskelkater|zwicken|zwickt), (beine|fusse|arme|augen|rucken|knie|schultern) (sind|
        ist|tun|tut)? (mude|mud|schwer|steif|weh), (warm|warme|aufwarmen|warmen) ~ (tasche|
        taschen|auf|sonne|tee|jacke), (handschuhe|jacke|daunenjacke|mutze|regenjacke|kapuze) (an|
        auf|drauf), (sitz|sitze|setz|pause|rast) ~ (bank|minuten|wiese|kurz), eingeschlafen vom
        (hocken|knien|sitzen), zu viel kaffee, neue (schuhe|stiefel), (alles|eh) (gut|ok|okay|
        bestens|paletti)""",
    "shallow": """
        (kaum|grad mal|gerade mal|grad so|knapp|nur|nicht mal|hochstens|maximal) ~ (knochel|
        knocheltief|zehen|sohle|sohlen|schuhspitzen|schuhe|nass|zentimeter|cm), knocheltief,
        knochelhoch, schuhspitzen, stiefelspitze*, (pfutze|pfutzen|rinnsal), (zwei|
        drei|funf|zehn|\\d+) (zentimeter|cm) (wasser|tief), (halber|ein|einen) (schuh|schritt|
        stiefel) (tief|breit), (auf|am) (trockenem|trocknem|dem) (kies|ufer|gras|boden|weg), wenig
        wasser, niedrigwasser, nicht nass geworden""",
}
