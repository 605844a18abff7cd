"""German words: who wishes to jump, dive or slide into the water from a height."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_JUMP: Final = (
    r"(?:(?:rein|hinein|runter|hinunter|ab|herunter|obi|eini)?"
    r"(?:springen|springt|spring|zuspringen|hupfen|hupft|hupf|hechten)"
    r"|(?:rein|hinein|runter|hinunter|herunter)(?:rutschen|tauchen)|(?:einen? )?kopfer\w*"
    r"|(?:einen? )?kopfsprung\w*|arschbombe\w*|salto\w*)"
)
_HEIGHT: Final = (
    r"(?:(?:vom|von dem|von der|von einem|von einer|von so einem|von so einer|uber den|uber die"
    r"|uber das|ubern) (?:\w+ )?\w*(?:fels|felsen|felsblock|stein|brucke|steg|fall|wasserfall"
    r"|kante|klippe|absatz|block|vorsprung|stufe|rand|mauer|wand|platte)"
    r"|von (?:ganz |da |dort )?oben|von (?:da|dort))"
)
_POOL: Final = (
    r"(?:ins|in das|in den|in die|in dem) (?:\w+ )?(?:wasser|becken|pool|gumpen?|tumpel|kolk|bach"
    r"|fluss)"
)

WORDS: Final[Mapping[str, str]] = {
    "leaps.wish": (
        r"will|wills|wollen|willst|mocht\w*|mogen|mag|wurden?(?: gern\w*)?|darf|durfen"
        r"|durften|kann"
        r"|konnen|konnten|konnte|kannst|soll|sollen|sollten|trau\w*|vorhaben|haben vor"
        r"|hat vor|lust"
        r"|ok wenn|okay wenn|plan\w*|uberleg\w*|gleich|nachher"
        r"|geht|erlaubt|tief genug"
    ),
    "leaps.leap": (
        rf"{_JUMP}(?: (?!nicht)\w+){{0,3}}? {_HEIGHT}"
        rf"|{_HEIGHT}(?: (?!nicht)\w+){{0,4}}? {_JUMP}"
        rf"|{_POOL}(?: (?!nicht)\w+)?? (?:spring\w*|hupf\w*|hecht\w*|kopfer)"
        r"|(?:oben|von oben|da oben|dort oben)"
        r" (?:rein|hinein|runter|hinunter)(?:spring\w*|hupf\w*)"
        r"|klippenspringen"
    ),
    "leaps.noun": (rf"(?:kopfer|kopfsprung|sprung|arschbombe|salto) (?:\w+ )??{_HEIGHT}"),
    "leaps.denied": r"nicht|nie|niemals|niemand|keiner|kein\w*|nix|net|ned|ohne",
    "leaps.after": r"hinterher\w*|nachspring\w*|um (?:ihn|sie|es|ihm|ihr) (?:zu|raus\w*)|retten",
    "leaps.else": (
        r"(?:das wasser|es|strahl|gischt|bach|wasserfall|tropfen) (?:da |dort )?(?:springt|hupft)"
        r"|zeit(?:en)? springt|schritt\w* (?:uber|weiter)spring\w*|blende springt"
    ),
    # What may stand before it, from the start of a clause on: no person.
    "leaps.before_wild": (
        r"und|aber|also|oh|ok|ja|nein|jetzt|da|hier|wenn|dass|schau|ein|eine|der|die|das"
        r"|den|einen|zwei|drei|viele|paar|kleine|grosse|kleiner"
    ),
    "leaps.caught": (r"(?:kann|wie kann|soll|wie) ich"),
    # What leaps by nature: an animal, a leaf or light, named beside its leap.
    "leaps.wild": (
        r"(?:fische?n?|\w*forellen?|lachse?|vogel\w*|\w*amseln?|eisvogel|enten?|reiher"
        r"|(?:fisch)?otter"
        r"|frosche?|frosch|kroten?|biber|libellen?|blatt|blatter|laub|licht|sonnenlicht"
        r"|lichtfleck\w*"
        r"|schatten)(?: (?:die|der|das|da|dort|hier|immer|gerade|grad|oft|gleich|wieder"
        r"|will|wollen"
        r"|kann|konnen|darf|soll|standig|manchmal|auch|mal|jetzt|dauernd))*"
    ),
    # What parts two clauses without a sign.
    "leaps.joint": r"und ausserdem|ausserdem|ubrigens|aber|doch",
}
