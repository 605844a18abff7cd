"""German words of what the white of the water does in a frame, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # The camera's warning.
    "whites.blinks": r"blink\w*|geblinkt|flacker\w*|zebras?|zebramuster|uberbelichtungswarnung",
    # "It won't stop blinking" denies nothing.
    "whites.on_and_on": r"hort nicht auf(?: zu)?|will nicht aufhoren(?: zu)?",
    "whites.nothing": r"nichts?|nix|nich|nicht|ned|net|nie|kein\w*|null|nimmer",
    "whites.gone": r"nichts?|nix|nich|nicht|ned|net|nimmer|weg|aufgehort|gar nicht",
    # "Nothing blinks except the sky".
    "whites.except": r"ausser|bis auf",
    "whites.only": r"nur|bloss|lediglich|hochstens",
    # "Not only sky, the water too".
    "whites.not_only": r"(?:nicht|nich|net|ned) (?:nur|bloss)",
    "whites.denied": r"kein\w*|nicht|nich|ned|net|ohne",
    # The size of what blinks.
    "whites.dots": (
        r"punkt|punkte[nr]?|punktchen|punkterl|puenktchen|tupfelchen|sprenkel|glitzern|funkeln"
        r"|pixel|kleine tupfer"
    ),
    "whites.patches": (
        r"fleck\w*|klecks\w*|flache[n]?|stelle[n]?|bereich\w*|partie[n]?|brocken|klumpen|batzen"
        r"|streifen"
    ),
    "whites.sheet": r"alles|ganze[rsnm]?|komplett\w*|uberall|gesamte[rsnm]?|vollstandig",
    "whites.sized": (
        r"(?:daumen|faust|hand|handteller|finger|munz|ei)(?:nagel)?(?: ?gross\w*)"
        r"|so gross wie (?:mein|meine|ein|eine|der|die)? ?\w+|gross wie (?:ein|eine|mein|meine) \w+"
    ),
    # A part of it: the rest is another thing.
    "whites.part": (
        r"oben|ober\w*|unten|unter(?:e|er|en|es|em|ste\w*)|links|linke\w*|rechts|rechte\w*|halfte"
        r"|teil|seite|mitte|kante|rand|fuss|rest"
    ),
    "whites.holds": r"gut|ok|okay|fein|passt|sauber|ruhig|nix|nichts|nicht|halt|schon",
    # What is no more: two frames ago, or only thought of.
    "whites.past": r"vorher|vorhin|zuerst|anfangs|das erste|beim ersten|letztes mal|fruher",
    # Who asks where the warning is, or how it looks, tells of no frame.
    "whites.how_to_see": (
        r"(?:wie|woran|wo) (?:kann |konnte |soll )?(?:seh|erkenn|merk|weiss|find|schalt|stell)\w*"
        r"|(?:wie|wo|woran) (?:kann|soll) (?:ich|man)|was (?:heisst|bedeutet|ist)"
    ),
    # What was told before, and was not heard, it seems.
    "whites.said": (
        r"(?:hab|habe|habs) (?:ich |i )?(?:\w+ ){0,2}gesagt|wie gesagt|sag(?:te)? ich doch"
    ),
    "whites.if": r"falls|ob|wenn|sofern|angenommen|bis",
    "whites.sky": r"himmel\w*",
    "whites.water": r"wasser|fall|strahl|schaum|bach|vorhang|hauptstrahl|sturz|kaskade",
    # What else has patches and dots.
    "whites.else": (
        r"linse|glas|objektiv|filter|moos\w*|flechten?|schnee|eis|fels\w*|stein\w*|blatt|blatter"
        r"|laub|farne?|gras|weg|regen|tropfen|rund\w*|blass\w*|unscharf\w*|sensor|staub|licht"
        r"|gischt|spruh\w*|spritz\w*|nass\w*|wind\w*|ecken|rander|seiten|hande?|finger"
        r"|ast|aste|nebel|sonne (?:auf|scheint auf)|baum\w*|wald|jacke|scharf|fokus|schatten"
    ),
    "whites.white": r"weiss\w*|hell\w*|ausgefressen\w*|uberbelichtet\w*|ausgebrannt\w*",
    # A frame that is too bright, whatever else is said of it.
    "whites.pale": r"blass\w*|bleich\w*|weiss\w*|ausgebleicht\w*|ausgewaschen\w*|zu hell\w*",
    # White that is lost, told beside its size.
    "whites.lost": (
        r"ohne (?:jede )?(?:zeichnung|struktur|details?|strahnen)|keine? (?:zeichnung|struktur"
        r"|details?|strahnen)(?: (?:drin|mehr|mehr drin))?"
    ),
    # While, or where, the sun is on it; while it is not.
    "whites.in_sun": (
        r"(?:wenn|sobald|wo|solange|nur bei|in der|bei)(?: \w+){0,2}? sonne|sonnig\w*"
        r"|sonne (?:kommt|rauskommt|draufscheint|drauf ist|draufliegt|scheint)"
    ),
    "whites.in_shade": (
        r"(?:wenn|sobald|wo|unter|hinter)(?: \w+){0,2}? (?:wolken?|schatten)|im schatten"
        r"|wolke (?:kommt|davor|druber)"
    ),
    # Small words beside the size of what blinks, as a whole clause of its own.
    "whites.small": (
        r"ein|eine|einen|einer|eines|n|ne|nen|so|son|sone|paar|einige|wenige|einzelne?|kleine\w*"
        r"|klein|grosse\w*|gross|dicke\w*|dick|fette\w*|richtige\w*|richtig|schon|immer|noch|nur"
        r"|bloss|wieder|jetzt|nun|ja|nein|nee|no|doch|das|dat|des|is|ist|sind|war|da|dort|es|hab"
        r"|habe|ich|i|seh|sehe|man|sieht|im|in|am|an|auf|mitten|bild|display|der|die|den|dem|und"
        r"|aber|auch|mal|eher|von|vom|zum|zur|gesagt|sag|sagte|sagt|ungefahr|etwa|circa|vielleicht"
        r"|wie|mehr|weniger|kleiner|grosser|ganz|halt|eben|gleich|hier|wo|sorry|meinte|mein|also"
        r"|dass|weil|ok|okay|na|mir|dir|zwei|drei|eins|gar|ubrig|davon|drin|geworden|gut"
        r"|fast|beinah\w*|nahezu|praktisch|wohl|glaub\w*|denk\w*"
    ),
}
