"""German words: parts of a message that sound of the danger that they deny."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_ES: Final = r"(?:(?:das |der |die )?(?:wasser|bach|fluss|pegel|wasserstand|es|des|s))"
_NICHT: Final = r"(?:nicht|nich|nit|net|ned|nie)"
_EH: Final = r"(?:(?:gar|doch|eh|auch|aber|uberhaupt|bisher|ja|wirklich) )*"
_ALS: Final = r"(?: als (?:vorhin|vorher|zuvor|am anfang))?"

WORDS: Final[Mapping[str, str]] = {
    "calm_parts.last": NOTHING,
    "calm_parts.joined": r"und|aber|also|weil|doch",
    "calm_parts.lead": r"und|aber|also|nein|nee|ne|na|doch|ok",
    # "Es steigt nicht", which "nicht mehr" or "noch nicht" would take back.
    "calm_parts.not_rising": (
        rf"{_ES} steigt {_EH}{_NICHT}(?: an)?"
        rf"|{_ES} (?:ist|is|wird|hat sich) {_EH}{_NICHT}"
        rf" (?:gestiegen|hoher(?: geworden)?|am steigen|angestiegen){_ALS}"
    ),
    "calm_parts.pulled_back": (
        r"(?:ich )?(?:hab|habe|haben)(?: (?:ich|wir))? (?:sie|ihn|es|(?:mein\w*|den|die|das)"
        r" (?:sohn|tochter|kind|kinder|hund|kleine\w*|bub\w*|freund\w*|frau|mann))"
        r"(?: (?:schon|gleich|sofort|wieder|grad|weg|vom|von der|von dem|gelander|rand|kante))*"
        r" (?:zuruckgezogen|zuruckgeholt|weggezogen|weggeholt|zuruckgerufen|runtergeholt)"
    ),
    # What tells that nothing is the matter, where danger only is likely by other words.
    "calm_parts.idle": (
        r"(?:(?:die|der|das|mein\w*|unser\w*|alle|beide|den) )*\w+(?: (?:ist|is|sind|hat|haben"
        r"|jammer\w*"
        r"|schon|jetzt|so|langsam|wieder|nur|eh|auch|wird|werden|ihm|ihr|ihnen|muss|mussen))*"
        r" (?:hunger|hungrig|durst|durstig|fad|langweilig|aufs klo)(?: (?:schon|jetzt|haha|lol))*"
    ),
    # A thing that is put under the camera: nobody stands under anything.
    "calm_parts.put_under": (
        r"(?:(?:kann|konnte|soll|darf) ich )?(?:da )?(?:mein\w*|ein\w*|den|die"
        r"|das) (?:\w+ )?(?:pulli"
        r"|jacke|tasche|rucksack|schal|handtuch|handschuhe?|mutze|hemd|buch|stein|hoodie|kissen)"
        r"(?: da)? (?:drunter\w*|unter\w*|drauf\w*|drum\w*|unter (?:das|die"
        r"|mein\w*) \w+)(?: (?:legen|tun"
        r"|packen|stopfen))?"
    ),
}
