"""German wordings: caught by the dark, lost, off the path."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

DARK: Final[Mapping[str, str]] = {
    "dark": """
        (dunkel|dunkler|dunkelheit|dunklen|finster|stockdunkel|stockfinster|zappenduster|nacht|
        dammert|dammerung|pechschwarz|sonne ist weg|sonne weg|sonne ist schon|zu dunkel|duster|
        rabenschwarz|finsternis)""",
    "blind": """
        (seh|sehe|sehen|sieht|erkenn|erkenne|erkennen|finde|finden|find) ~ (nix|nichts|nicht|
        kaum|nimmer|die hand|keinen|keine|gar nichts|net|den weg nicht|nicht mehr)""",
    "still_out": """
        (sind|bin|stehen|stecken|sitzen|hangen|hocken|noch) ~ (noch|immer noch|erst|mitten|fest)
        ~ (klamm|schlucht|wald|pfad|steig|hang|berg|oben|unterwegs|weg|fall|wasserfall|hier|
        drin|tal|felsen), (noch|haben) ~ (stunde|stunden|km|kilometer|stuck|abstieg|hohenmeter|
        weit) ~ (vor uns|vor mir|bis|zum|zuruck|auto|ubrig|abzusteigen|runter|.), (abstieg|
        ruckweg|heimweg|leiter|steilstuck|stufen|klettersteig|treppe) ~ (noch|vor uns|vor mir|
        ohne|jetzt|bevor), wie komm* ~ (runter|heim|zuruck|raus|hinunter|ins tal)""",
    "light_gone": """
        (stirnlampe|lampe|taschenlampe|licht|handylicht|akku|lampen|stirnlampen|lampchen|funzel)
        ~ (leer|kaputt|aus|tot|vergessen|ausgegangen|hin|flackert|gestorben|gibt|streikt|geht
        nicht|daheim|im auto|verloren|defekt|schwach|bald), (keine|ohne|kein|hab keine|keiner
        hat eine|ohne eine) (stirnlampe|lampe|taschenlampe|licht|lampen|stirnlampen|
        taschenlampen)""",
    "light_low": """
        (handy|akku|lampe|handylicht|telefon|stirnlampe) ~ (prozent|\\d+|fast leer|einzige|leer|
        letzte|nur), (einzige|einzig|letzte|eine) (lampe|licht|taschenlampe|stirnlampe|
        lichtquelle|funzel)""",
    "night_caught": """
        (nacht|dunkelheit|dammerung|finsternis) (uberrascht|eingeholt|erwischt|gekommen|geraten|
        hereingebrochen|bricht), (hier|draussen) ubernachten mussen, biwak*""",
    "way": """
        (weg|pfad|steig|ruckweg|heimweg|abstieg|steg|markierung|markierungen|auto|runter|heim|
        zuruck|ausgang|stufen|treppe|leiter|kante|wurzeln)""",
    "scared": """
        (angst|panik|weint|heult|furchte|hilfe|schiss|mulmig|unheimlich|weinen)""",
    "lost_self": """
        verfranst, verfahren, sieht alles gleich aus, alles gleich, uberall nur (gestrupp|wald|
        dickicht|baume|brombeeren|felsen), im (dickicht|gestrupp|unterholz|moor|sumpf)
        (gelandet|fest|.), verlaufen, verirrt, verlaufn, verfranzt, verstiegen, (weiss|wissen|
        wissn|keinen plan|keine ahnung|kein plan|keinen schimmer|weis) ~ (nicht|nimmer|net|nich|
        mehr|,)? ~ wo (ich|wir|er|sie|mir) (bin|bins|sind|steckt|ist|hin)*, (keine ahnung|keinen
        plan|keinen schimmer) wo, orientierung verloren, (finde|finden|find) ~ (weg|pfad|zuruck|
        raus|heim|ausgang|steig) ~ (nicht|nimmer|nicht mehr|net)*, (finde|finden|find) nicht
        (mehr)? (zuruck|raus|heim|heraus|hinaus), wo (sind|bin) (wir|ich) (hier|jetzt|uberhaupt|
        denn|eigentlich|.)""",
    "lost_word": """
        (verlaufen|wohin|wo lang|falsch|keine ahnung|orientierung|verloren)""",
    "circles": """
        (gleiche|gleichen|selbe|selben|derselbe|demselben|dieselbe|denselben|dem) ~ (baum|stein|
        hutte|hochsitz|bank|stelle|kreuzung|wegkreuz|brucke|felsen|stumpf|baumstumpf|marterl|
        zaun|wurzel|abzweigung|lichtung) ~ (schon|wieder|zum dritten|zweimal|dreimal|vorbei|
        waren|noch mal|nochmal), im kreis (gelaufen|gegangen|gehen|laufen|herum|rum|unterwegs|
        .), (laufen|gehen|rennen) im kreis, (wieder|zum dritten mal|dreimal|zweimal) ~
        (vorbeigekommen|hier|am gleichen|am selben|an der)""",
    "wrong_way": """
        (falsche|falschen|falscher|verkehrte|verkehrten) (tal|weg|pfad|seite|abzweigung|
        richtung|steig|ufer|graben|grat|schlucht|rucken), im falschen, (abzweigung|abzweig|
        kreuzung) ~ (verpasst|ubersehen), (hier|da) (waren|war|sind|bin) (wir|ich) (auf dem
        hinweg|vorhin|noch nie|nicht|nie|heute) ~ (nicht|nie|vorbei|gekommen|noch nie)*, nicht
        (der|unser) weg, kommt ~ (nicht|nichts|nix) bekannt vor, (mussten|hatten|sollten|musste)
        ~ (langst|schon) ~ (parkplatz|auto|brucke|hutte|bach|weg|angekommen|da sein|dort|
        strasse), vom weg (ab|abgekommen)""",
    "path_gone": """
        (weg|pfad|steig|spur) (ist|war) (jetzt|einfach|auf einmal|plotzlich)? (weg|aus|fort|
        verschwunden), (weg|pfad|steig|spur|wanderweg|markierung|markierungen|trampelpfad) ~
        (hort|horte|horen) ~ (auf|einfach), (weg|pfad|steig|spur|wanderweg|markierung|
        markierungen|trampelpfad|forstweg) ~ (verschwunden|weg .|zu ende|endet|endete|verliert|
        verloren|nicht mehr (da|zu)|gibts nicht|verlauft|aus .|nirgends|zugewachsen), (kein|
        keinen|keine) (weg|pfad|markierung|markierungen|wegweiser|steig) (mehr|zu|weit|hier|
        nirgends), (finde|finden|find|seh|sehe|sehen) ~ (weg|pfad|steig|markierung|markierungen|
        abzweigung|spur) ~ (nicht|nimmer|keine|mehr|nirgends)""",
    "map_fails": """
        (karte|gps|handy|app|navi|punkt|kompass|kartn) ~ (zeigt|sagt|spinnt|stimmt|hangt|
        springt|passt|ladt|tot|leer|quatsch|mitten im|falsch|eingefroren|dreht), (kein|keinen|
        ohne|null) (empfang|netz|gps|karte|kompass|signal)""",
    "whereabouts_own": """
        (wo|wohin) (bin|sind|mussen|muss|geht|gehts|lang|gehen) (ich|wir|es|mir|lang|hin|zuruck|
        raus), (welche|welcher) (richtung|weg|seite) (ist|geht|mussen|muss|zuruck|zum|jetzt)""",
    "fog": """
        (nebel|wolke|wolken|suppe|schnee|whiteout|nebelsuppe|nebelbank)""",
}
