"""German words that may stand beside good news without making it doubtful."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Words that tell of nobody's trouble; own list.
_KNOWN: Final = """
    und so sehr jetzt nun wieder alle alles beide wir ich du er sie es uns ihn ihm ihr mir mich dir
    mein meine unser unsere der die das dem den des ein eine einen einem ist sind war waren bin bist
    habe haben hat hab hatten sitzen sitzt sitz sitze stehen steht stehe warten warm warme trocken
    trockene im am an auf in ins ans beim vom zum zur bei mit nach aus auto autos pfad strasse hutte
    hotel haus daheim zuhause heim bus parkplatz zelt brucke plattform aussichtspunkt wiese bank
    sonne ufer schatten tee kakao kaffee decke decken kleider socken jacke nass mude schlammig
    dreckig hungrig erschrocken froh glucklich danke vielen dank puh uff gott sei gluck lol haha ja
    jo jep nein ok okay gut super prima sicher sicherheit gesund munter heil wohlauf endlich schon
    auch da dort hier oben zuruck raus draussen drinnen angekommen freund freundin freunde kinder
    kind hund mann frau tochter sohn bruder schwester papa mama gruppe leute aber dann schreck
    schrecken knapp sorry entschuldigung fahren gehen gerade grad eben minute minuten vor eins zwei
    drei vier funf sechs sieben acht neun zehn nichts niemand keiner passiert wohl allen allem nur
    bisschen bissl heizung vollzahlig gezahlt gewitter regen vorbei ruhig aufregung linn gemutlich
    seit stunden stunde langem langst lang mittag stehn handtuch handtucher
    handschuh handschuhe handschuhen mutze an drauf san sann guat eh passt
    trockenen warmen klasse team gehts geht unverletzt dass kratzer schramme schrammen blauer blaue
    fleck flecken beisammen beieinander strasse schuler schulerinnen teilnehmer
"""

WORDS: Final[Mapping[str, str]] = {
    "good_news.known": _KNOWN,
    # What they came away from, and where they went themselves.
    "good_news.left_behind": (
        r"(?:aus|weg von|von) (?:dem|der) (?:wasser|bach|fluss|schlucht|klamm|kante)"
        r"|(?:auf dem|am|zum) weg"
    ),
    # What warms, beside the news that somebody is warm again.
    "good_news.warmth": """
        hande finger fusse zehen jacke angezogen pulli warme getrunken besser viel bewegt karte""",
}
