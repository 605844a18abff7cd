"""German words: who is away from where nobody should stand, and who is meant."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_PLATZ: Final = (
    r"(?:weg|pfad|steig|steg|wanderweg|forstweg|strasse|brucke|plattform|aussichtspunkt"
    r"|aussichtsplattform|terrasse|parkplatz|auto|wagen|bus|hutte|hotel|haus|wiese|bank|handtuch|decke)"
)
_ZAUN: Final = r"(?:gelander|zaun|absperrung|seil|schild|schranke)"
_DER: Final = r"(?:dem |der |den |das |die |unserem |einem |einer |markierten |anderen )*"
_KANTE: Final = r"(?:kante|abbruch|klippe|rand|abgrund|abrisskante)"
_BACH: Final = r"(?:wasser|bach|fluss|becken|gumpen?)"
_AM_UFER: Final = r"am ufer|an land|ans ufer"
_RAUS: Final = (
    r"^(?:ok )?(?:(?:ich|wir|er|sie|alle) )?(?:bin|sind|ist|schon|wieder)(?: (?:jetzt|schon|wieder"
    r"|alle))* (?:raus|draussen|heraussen)(?= ,|$)"
)

WORDS: Final[Mapping[str, str]] = {
    "away.reached": (
        rf"(?:auf|am|an|beim|im|in|zum|zur|bei|ans|ins) {_DER}{_PLATZ}|daheim|zu ?hause"
        rf"|hinter[mn]? {_DER}{_ZAUN}|(?:am|beim|zum) {_DER}{_ZAUN}|heruben"
        r"|auf (?:dieser|der (?:sicheren|richtigen)) seite"
    ),
    "away.returned": (
        r"an der leine"
        r"|(?!(?:es|wasser|regen|gewitter|sonne|licht|niemand|keiner|das|wer|ich)\b)\w+"
        r" (?:ist |is )?(?:wieder )?(?:runter|zuruck|raus|heraus|herunter)gekommen"
        r"|(?:er|sie|\w+) (?:ist|sind) (?:(?:wieder|jetzt|schon) )*"
        r"(?:zuruck|wieder da|wieder hier|bei (?:mir|uns))"
        r"|^(?:ist|sind|jetzt) (?:(?:er|sie|jetzt|ist|sind) )*wieder"
        r" (?:da|hier|zuruck|bei (?:mir|uns))"
    ),
    "away.stepped": r"(?:zuruckgetreten|zuruckgegangen|weggegangen)",
    "away.beside": """
        zuruckgekehrt zuruckgelaufen gegangen gelaufen gekommen geklettert bin heruben heut heute
        fruh morgen vorhin unten beide fusse stiefel bleib bleibe bleiben bleibt davon hin jetzt
        gerufen hab""",
    "away.with_things": (
        r"(?:mit|samt|und) (?:(?:dem|der|das|die|den|allen|allem|meinem|meiner|ganzen) )*(?:stativ"
        r"|kamera|ausrustung|sachen|zeug|rucksack|hund)|(?:stativ|kamera|hund)(?: ist)?"
        r" (?:auch|dabei|eingepackt)"
    ),
    "away.another": r"er ist|sie ist|mein\w* \w+ (?:ist|war|hat|kam|ging)",
    "away.for_oneself": (
        r"(?:kann|darf|soll|konnen|durfen|sollen) (?:ich|wir)"
        r"|(?:ich|wir) (?:steh\w*|will|wollen|geh\w*|kletter\w*)"
    ),
    "away.who_writes": r"ich|bin",
    "away.self": r"ich|mir|wir|uns|alle|beide|niemand|nein",
    "away.others": r"wir|alle|beide|er|sie|ihn|niemand|keiner|mein\w* \w+",
    "away.no_more": (
        r"(?:nicht|niemand)(?: (?:ist|steht))? mehr(?: (?:da|dort|draussen|(?:am|auf|an|im|unter"
        r"|hinter) (?:(?:dem|der) )?\w+))*(?= ,|$)"
    ),
    # What leaves one kind of place, and no other.
    "away.left_lip": (
        rf"(?:weg von|runter von|zuruck von) der {_KANTE}|von der {_KANTE} (?:weg|zuruck)"
    ),
    "away.left_wading": (
        rf"{_AM_UFER}|(?:aus|raus aus) (?:dem|der) {_BACH}(?: raus| heraus)?|{_RAUS}"
    ),
    "away.left_ice": rf"{_AM_UFER}|runter vom eis|vom eis (?:runter|weg|herunten)",
    "away.left_under": (
        rf"(?:raus|weg|hervor) (?:hinter|unter|von) (?:da|dort|dem \w+|der \w+)|{_RAUS}"
    ),
    "away.left_climb": r"^(?:bin|sind|ist) (?:(?:wieder|jetzt|schon|heil) )+unten(?= ,|$)",
    "away.left_barrier": r"wieder (?:druben|zuruck)",
}
