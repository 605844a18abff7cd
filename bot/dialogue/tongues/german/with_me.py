"""German words: parts of a reply that tell that somebody is near, or was no person."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Anybody, by a pronoun, as kin, or by a name.
_WER: Final = (
    r"(?!(?:niemand|keiner|koana|nicht|wer|ich|hand|arm|bein|blut|schmerz)\b)"
    r"(?:(?:beide|alle|mein\w*|der|die|das|unser\w*|andere\w*) )*(?:kleine\w* )?\w+"
)
_IST: Final = (
    r"(?: (?:ist|is|sind|san|steht|stehen|sitzt|sitzen|war|waren|blieb|blieben|bleibt|bleiben|jetzt"
    r"|noch|wieder|beide|alle|direkt|ganz|eh|sicher|geblieben|die ganze zeit))+"
)
_MIR: Final = r"(?:mir|uns|meiner seite|mama|papa|meine[rm] (?:frau|mann))"
# What may stand in such a wish: nobody, and no place to go to.
_SONST: Final = (
    r"(?!(?:er|sie|ihn|ihr|in|ins|rein|ruber|uber|dort|druben|kante|rand|felsen?|steine?|verloren"
    r"|rucksack|stativ|zuruck|klettern|waten|holen)\b)\w+"
)

WORDS: Final[Mapping[str, str]] = {
    "with_me.lead": r"und|aber|also|nein|nee|ne|ja|ok|jetzt|na|1|2|puh",
    "with_me.told": (
        rf"(?:{_WER}{_IST}|(?:alle|beide)(?: (?:hier|jetzt|wieder))*)"
        rf" (?:bei|neben|hinter|mit) {_MIR}(?: (?:geblieben|am weg|aufm weg|auf dem weg"
        r"|am ufer|jetzt|wieder|sicher))*"
        rf"|{_WER} (?:halt|haelt|hat)(?: (?:sich|jetzt|noch))*(?: an)? mein\w* (?:hand|arm|armel"
        rf"|jacke)"
        r"(?: (?:jetzt|fest))*"
        rf"|{_WER} (?:hab|habe|halt|halte|haben|halten) (?:ich|wir)(?: (?:jetzt|fest))*"
        r" (?:an der hand|am arm|im arm|auf dem arm|bei der hand)"
        r"|(?:ich )?(?:hab|habe|halt|halte|haben|halten)(?: (?:ich|wir|jetzt))*"
        r" (?:sie|ihn|beide|das kind|mein\w* \w+|die kinder|den hund)(?: jetzt)*"
        r" (?:an der hand|am arm|bei der hand|an der leine|fest)"
    ),
    "with_me.animal": (
        r"(?:es|das)(?: (?:ist|is|war|wars))?(?: (?:nur|bloss|doch))* (?:der|mein|unser|ein) hund"
        r"(?:(?: ,)? (?:und )?(?:nicht das|kein|nicht mein) (?:kind|mensch|bub))?"
        r"|(?:der hund |er |sie )?(?:schuttelt|beutelt) sich(?: ab| grad| gerade)*"
    ),
    "with_me.wish": (
        r"(?:ich |wir |i )?(?:will|wollt\w*|mocht\w*|wurd\w*|brauch\w*)(?: (?:ich|wir|nur|bloss"
        r"|doch"
        rf"|gern|gerne|eh))* (?:{_SONST} )*?(?:naher|foto|bild|einstellung\w*|zoom\w*|kamera"
        rf"|handy|objektiv"
        rf"|langzeit\w*|iso|zeit|blende|weich\w*|seidig\w*)(?: {_SONST})*"
    ),
    # Who they are, one after the other, who writes among them.
    "with_me.named": (
        r"(?:die |der |mein\w* )?\w+ und (?:ich|i)|ich(?: \w+){0,2} und (?:die |der |mein\w* )?\w+"
    ),
    # Somebody rests where nothing happens.
    "with_me.rests": (
        rf"{_WER}{_IST} (?:(?:nur|grad|jetzt|wieder|beleidigt|gemutlich) )*(?:auf|am|im|in|beim)"
        r" (?:(?:dem|der|sein\w*|ihr\w*|unser\w*|mein\w*) )*"
        r"(?:handtuch|decke|ufer|wiese|gras|bank|auto|sonne)"
        r"(?: (?:jetzt|wieder|(?:mit|neben|bei) \w+))*"
    ),
    "with_me.calm": (
        r"(?:ich |wir )?(?:bin |sind )?(?:ganz |eh |total )*(?:entspannt|gechillt|ruhig)"
    ),
}
