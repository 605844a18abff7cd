"""German words of who is home again, or wants to go through frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "at_home.home": (
        r"(?:bin|sind|sitze|wieder|jetzt|endlich|gut) (?:\w+ ){0,2}?(?:zu ?hause|daheim|im hotel"
        r"|auf der hütte|am rechner|am computer)"
        r"|^(?:(?:so|na|also|puh|endlich|wieder)[ ,]+)*(?:zu ?hause|daheim)\b"
    ),
    "at_home.review": (
        r"(?:die |meine |unsere )?(?:\d+ )?(?:bilder|fotos|aufnahmen)(?: von heute| des tages)?"
        r" (?:durchgehen|durchsehen|durchschauen|besprechen|ansehen|anschauen|sichten)"
        r"|geh\w* (?:ich |wir )?(?:die |meine |unsere )?(?:\d+ )?(?:bilder|fotos|aufnahmen) durch"
        r"|^bildbesprechung$"
    ),
    # Where one begins to sort.
    "at_home.sort": (
        r"(?:wie|wo|womit) (?:(?:fang\w*|beginn\w*|soll\w*|kann|starte\w*|sortier\w*) )?"
        r"(?:ich|wir|man|fang\w*)(?: (?:am besten|denn|jetzt|da|die|bilder|fotos|aufnahmen|damit))*"
        r" (?:an|anfangen|beginnen|aus|auszusortieren|aussortieren|sortieren|sichten)"
        r"|wo(?:mit)? (?:beginn|fang)\w* (?:ich|wir)"
    ),
    "at_home.brings": r"hier (?:ist|sind|kommt|kommen)|(?:schick|sende|zeig)\w*",
    # "I left it at home", "we are going home": said on the way, or of something else.
    "at_home.not_yet": (
        r"vergessen|liegt|lassen|wenn|sobald|bevor|auf dem weg|fahre\w*"
        r"|gehe\w*(?!(?: \w+){0,4} durch\b)|später"
    ),
    # A part of a sentence that says so by itself: "caught the bus, home with tea now".
    "at_home.back": (
        r"(?:(?:und|jetzt|nun|dann|wieder|bin|sind) )*(?:zu ?hause|daheim)"
        r"(?: (?:jetzt|wieder|endlich|trocken|(?:mit|bei) (?:einem |einer |ner |nem )?\w+))+"
    ),
    # Who only longs for it.
    "at_home.wished": r"will|wollen|möchte\w*|wär\w*|bald",
    # Before the walk: nobody has left yet.
    "at_home.still": (
        r"noch (?:\w+ ){0,2}?(?:zu ?hause|daheim|im hotel|auf der hütte"
        r"|in der (?:küche|wohnung|hütte)|im (?:bett|zimmer|haus))"
        r"|noch (?:gar )?nicht (?:unterwegs|aufgebrochen|losgegangen|losgefahren)"
    ),
    # What only somebody says who stands there.
    "at_home.at_water": (
        r"(?:stativ|kamera) steht|(?:steh|stehe|stehen|steht|bin|sind) (?:\w+ ){0,3}?(?:davor"
        r"|auf (?:dem|m|nem|einem) (?:steg|felsen|fels|kies|bootssteg)"
        r"|auf der (?:brücke|plattform|kanzel)"
        r"|(?:am|vorm|beim|vor dem) (?:fall|wasser|bach|ufer|steg|geländer|wasserfall|becken))\b"
        r"|(?:steh|stehe|stehen) (?:jetzt |hier |ja |da |wieder |noch |ca\.? |etwa |so )*\d"
        r"|nicht bewegt"
    ),
    # No frame is there to be gone through.
    "at_home.none_taken": (
        r"hab\w*(?: (?:doch|ja|noch|bisher|jetzt|ich|wir))* (?:gar ?)?kein\w*(?: einzige\w*)?"
        r" (?:bild(?:er)?|fotos?|aufnahmen?)"
        r"(?= ?(?:gemacht|geschossen|aufgenommen|bisher|hier|[.;!?]|$|,(?! (?:das|die|der)\b)))"
        r"|noch (?:gar )?nichts (?:fotografiert|aufgenommen)"
        r"|(?:vom|von dem|das) alten? (?:bild|foto)"
    ),
    # What is asked for a frame to come.
    "at_home.asks_now": (
        r"(?:worauf|wohin|auf was) (?:\w+ )?(?:stell\w*|fokussier\w*|soll) (?:ich|wir)"
        r"|(?:auf was|worauf) ich scharf|was stell\w* (?:ich|wir)|womit fang\w* (?:ich|wir)"
        r"|welche\w* (?:blende|zeit|linse|brennweite|objektiv|einstellung\w*|filter)(?: \w+){0,4}?"
        r" (?:nehm|stell|brauch|soll)\w*"
    ),
    # What was, or is asked for another time.
    "at_home.of_then": (
        r"war|waren|(?:auf|in|bei) (?:dem|diesem)(?: \w+)? (?:bild|foto)"
        r"|hatte\w*|hätte\w*|nächste\w* mal|morgen|letzte\w*|gewesen"
    ),
}
