"""German words of who tells where they stand, what they came for, or that they are new to this."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_WATER: Final = "<arrival.water>"
_OK: Final = r"(?:<arrival.ok>\W+)*"
_MIT: Final = r"(?: (?:jetzt|heute|hier))*(?: (?:mit|nahe|im) [^,.;]*)?"
_ICH_WILL: Final = (
    r"(?:(?:ich|wir) )?(?:m(?:ö|oe|o)chten?|will|wollen"
    r"|(?:w(?:ü|ue|u)rden?|h(?:ä|ae|a)tten?) gern\w*)"
)
_FOTOGRAFIEREN: Final = (
    r"(?:fotografieren|photographieren|knipsen|ablichten"
    r"|(?:fotos?|bild(?:er)?|aufnahmen?) (?:machen|schie(?:ß|ss)en|knipsen|haben|mitnehmen))"
)
#: A camera that is along, without its kind: that one is a fact.
_MIT_KAMERA: Final = (
    r"(?:ich )?hab(?:e|en)?(?: (?:heute|auch|nur|ganz))* (?:meine?|eine?|die|unsere)"
    r"(?: (?:neue|alte|kleine|erste))? (?:\w*kamera|knipse)(?: (?:dabei|mit|hier))?"
)

WORDS: Final[Mapping[str, str]] = {
    "arrival.water": (
        r"(?:wasser)?f(?:a|ä)lle?s?|bach(?:es)?|bäche|flu(?:ss|ß)|schlucht|klamm|tobel"
    ),
    "arrival.ok": (
        r"hallo|und|grüezi|servus|moin|guten (?:tag|morgen|abend)|gr(?:ü|ue|u)(?:ß|ss) (?:gott"
        r"|dich|euch)|griaß di"
    ),
    "arrival.arrived": (
        rf"{_OK}(?:ich|wir|bin|sind) (?:\w+ ){{0,2}}?(?:am|an|beim|bei|im|in|vor|unter)\b"
        rf"(?: [^\W\d]+){{0,8}}? \w*{_WATER}{_MIT}"
        rf"|{_OK}(?:gerade )?angekommen|{_OK}(?:ich bin|wir sind) (?:jetzt )?(?:da|hier|dort)"
    ),
    # The clause of a longer message that ends a plan: "ok we are here now. It's cloudy".
    "arrival.here": (
        rf"{_OK}(?:(?:ich bin|wir sind|sind|bin) (?:jetzt |nun |endlich )*(?:da|hier|dort"
        rf"|(?:(?:am|beim) (?:wasser)?fall )?angekommen|(?:am|beim) (?:wasser)?fall))"
        r"(?: (?:jetzt|nun))?"
    ),
    # What tells of a frame, or of its fault.
    "arrival.of_a_frame": r"zu|bild|foto|aufnahme|verloren|wirkt|weiß|daheim",
    "arrival.new": (
        rf"{_OK}(?:ich bin|bin|wir sind) (?:\w+ ){{0,2}}?(?:anfänger\w*|neu(?: hier| dabei)?)"
        r"|(?:ich )?(?:habe?|hab) (?:das|sowas) noch nie gemacht|wie (?:geht|funktioniert) (?:das"
        r"|es)"
    ),
    # A greeting, and what everybody comes for: they tell of no frame.
    "arrival.wished": (
        r"gr(?:ü|ue?)e?zi(?: mitenand)?|servus|moin(?: moin)?|grüß gott|guten (?:tag|morgen)"
        r"|(?:(?:ich|wir) )?(?:möchten?|will|wollen|würden? gern\w*) (?:ihn|es|sie|den|das)"
        r" (?:gern\w* )?fotografieren"
        rf"|{_ICH_WILL}(?: (?!nicht)\w+){{0,6}}? {_FOTOGRAFIEREN}"
        rf"|{_MIT_KAMERA}|(?:es )?(?:hat|gibt|kommt|führt) (?:heute )?(?:wenig|kaum|viel) wasser"
    ),
    # Who wants to photograph water, wherever they stand, is asked what a beginner is.
    "arrival.wished_fall": (
        rf"{_OK}{_ICH_WILL}(?: (?:ein\w*|den|die|das|diesen|dieses|gern\w*|mal|hier|jetzt|heute|am"
        rf"|beim|vom|von|an|klein\w*)){{0,6}} \w*{_WATER}(?: (?:hier|jetzt|heute|gern\w*|mal"
        rf"|ein\w*|paar|schöne\w*|gute\w*))* {_FOTOGRAFIEREN}"
    ),
    # Where a clause begins that may tell of the place, or ask what comes first.
    "arrival.and": r"und",
    "arrival.next_clause": r"ich|habe?|was|wie|möchten?|will|wollen|hätten?|würden?",
}
