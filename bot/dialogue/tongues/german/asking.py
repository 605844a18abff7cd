"""German words by which a message asks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_WAS: Final = r"was(?! (?:jetzt|nun|für ein\w*)\b)|wie(?! (?:schön|geil|cool|toll))"
# What stands before an "ich" in a sentence that only lacks its first word: "hab ich gemacht".
_TOLD_FIRST: Final = (
    r"(?:hab|habe|hatte|hätt\w*|mach|mache|wei(?:ss|ß)|glaub|glaube|denk|denke|seh|sehe|sah|find"
    r"|finde|versteh|verstehe|probier|probiere|schick|schicke|bin|bleib|bleibe|war|wär\w*|würd\w*"
    r"|will|wollt\w*|möcht\w*|da|dann|jetzt|hier|wenn|weil|dass|ob|als|heute|gestern|morgen|und"
    r"|also|aber|oben|unten|vorn|vorne|hinten|links|rechts|so|nun|nur|auch|leider|damit|falls)\b"
)

WORDS: Final[Mapping[str, str]] = {
    # How a question begins when it lacks its mark.
    "asking.begins": (
        r"(?:(?:und|also|aber|ok|okay|hallo|hi|hey|moin|servus|linn|bitte|du|sag mal)\W+)*"
        rf"(?:(?:(?:in|auf|mit|bei|ab|bis|für|von|zu|um|aus|an|nach) )?(?:{_WAS}|welche\w*)"
        r"|wo|wohin|woran|worauf|wieso|warum|weshalb|wann|wozu|(?:ab|bis) wann|von wo|um wie ?viel"
        r"|soll\w*|kann|könn\w*|darf|dürf\w*|muss|müss\w*|brauch\w*|geht|gehts|gibts?|hilft|reicht"
        r"|lohnt|bringt|ist|sind|hast du|wei(?:ss|ß)t du|taugt|funktioniert|beißt sich|genügt|goht"
        r"|cha[n]?"
        rf"|(?!{_TOLD_FIRST})\w+ (?:ich|man|es|mich|uns))\b"
    ),
    # How a question begins behind something told: "no tripod, can it be done".
    "asking.begins_behind": (
        rf"(?:{_WAS}|welche\w*|wo|wohin|woran|worauf|wieso|warum|weshalb|wann"
        r"|(?:soll(?:te)?|kann|darf|muss|brauch[et]?) (?:ich|man|ma|i|wir)"
        r"|(?:geht|reicht|ist) (?:das|des|es)|hilft|lohnt|oder was)\b"
    ),
    # What asks wherever it stands: "the pola eats how many stops", "cpl vs nd"; and at the end.
    "asking.anywhere": (
        r"wie ?viele?|wie lange?|woran liegt|ja oder nein|oder nicht|möglich"
        r"|geht (?:das|des|trotzdem)|bringt (?:das|des|es|der)|vertragen sich|sinnvoll|bis wann"
        r"|stimmt (?:das|des)|goht (?:das|des)|beißt sich|ja nein|welche (?:zeit|blende|iso)"
        r"|hab (?:ich|i) (?:eine?|ne|a) chance"
    ),
    "asking.at_end": r"oder|was (?:jetzt|nun|tun)",
    # Who asks what a word means.
    "asking.of_a_word": (
        r"was (?:ist|sind|heißt|heisst|bedeutet|bedeuten|meinst du|verstehst du)"
        r"|was du (?:\w+ )?meinst"
    ),
    # How a question begins where no sign parts it from what is told: "dann kann ich" tells.
    "asking.within": (
        r"(?:(?:was|wie|wo|warum|wieso|weshalb|woran|wohin|welche\w*)(?: \w+){1,2} (?:ich|man|wir"
        r"|i|das|es)|(?<!dann )(?<!da )(?<!jetzt )(?<!hier )(?<!so )(?<!damit )"
        r"(?:soll(?:te)?|darf|muss|kann|brauch[et]?) (?:ich|man|wir|i)"
        r"|(?:ist|geht|reicht|hilft|liegt|kommt) (?:das|des|es)|liegts|oder was)\b"
    ),
    # The verb before who is asked about: here it stands so in what is told, too.
    "asking.inverted": NOTHING,
    # Between two things of which one is to be chosen, or two numbers.
    "asking.or": r"oder",
    "asking.either": r"oder",
    # Where something else begins.
    "asking.and": r"und|aber",
    # In front of a question that is asked at second hand: "sag mir einfach wie lang".
    "asking.indirect": (
        r"(?:sag|sags|erklär\w*|erklaer\w*)(?: (?:mir|mal|ehrlich|einfach|bitte))*"
        r"|(?:ich )?(?:mein|meine|meinte|frag\w*|wollte? wissen|hab gefragt)(?: ich)?"
        r"|(?:die|meine) frage (?:war|ist)"
    ),
    # "Whether", where it begins such a question.
    "asking.whether": r"ob",
}
