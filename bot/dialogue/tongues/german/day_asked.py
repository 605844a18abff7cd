"""German words of what is asked of a day's hours: when to start, when to leave the water."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # When to start, asked at home; words of the way back ask when to turn round.
    "day_asked.start": (
        r"(?:wann|um wie ?viel uhr|wie früh|wie spät)\b(?:(?!\b(?:zurück|umkehr\w*|heim|sonn\w*)\b)"
        r"[^?.;!]){0,40}?\b(?:los(?:gehen|laufen|fahren|ziehen)?|starten?|aufbrechen|abfahren"
        r"|anfangen"
        r"|dort sein|da sein|ankommen|loszugehen)\b"
    ),
    # Whether a start is good, or another would be better.
    "day_asked.start_good": (
        r"(?:passt|reicht|geht|ist|wäre) (?:das|es|\d[\d:.]*(?: uhr)?)(?: \w+)?(?: (?:gut|okay"
        r"|ok|recht|früh genug|zu (?:früh|spät)))?"
        r"(?= ?(?:[?,.]|oder\b))|(?:lieber|besser|doch) (?:etwas |noch )?(?:später|früher)"
        r"|zu (?:früh|spät)"
    ),
    # When to leave the water, or how long is left.
    "day_asked.leave": (
        r"(?:wann|um wie ?viel uhr|wie lange noch|bis wann|spätestens)\b[^?.;!]{0,30}?\b(?:ich"
        r"|wir|man)\b[^?.;!]{0,20}?"
        r"\b(?:los(?:gehen|laufen)?|zurück(?:gehen|laufen)?|umkehren|umdrehen|aufbrechen|gehen"
        r"|heim|packen|einpacken|zusammenpacken|aufhör\w*|schluss machen)\b"
        r"|(?:muss|müssen|soll|sollen|sollten?) (?:ich|wir)(?: (?:jetzt|schon|langsam|bald|nicht))*"
        r" (?:los|gehen|heim|zurück|aufbrechen|packen|zusammenpacken|umkehren)(?= ?[?,]|$)"
        r"|wie lange (?:kann|können|darf|dürfen) (?:ich|wir)(?: \w+)? bleiben"
        r"|zeit (?:zu gehen|zum (?:gehen|aufbruch|aufbrechen|packen)|loszugehen|aufzubrechen)"
        r"|(?:bin ich|sind wir)(?: \w+)? (?:zu )?spät(?: dran)?"
        r"|(?:schaff|erwisch)\w* (?:ich|wir)(?: noch)? (?:den|die|meinen|unseren) (?:\S+ )?"
        r"(?:bus|zug|bahn|fähre)"
        r"|wie (?:viel zeit|lange) (?:hab\w*|bleib\w*) (?:ich|wir|mir|uns) noch"
    ),
    # "It's 2:20 now".
    "day_asked.it_is": r"es ist|jetzt(?: ist es)?|ist (?:jetzt|gerade)|uhrzeit(?: ist)?",
    "day_asked.about": r"schon|jetzt|gerade|fast|etwa|kurz nach|erst|ungefähr",
    "day_asked.now": r"uhr|jetzt|schon",
    # Signs for which one leaves at once.
    "day_asked.at_once": (
        r"steig\w*|braun\w*|schlammig\w*(?! (?:weg|pfad|boden|steig|stück))|hochwasser"
        r"|treibholz|donner\w*|blitz\w*|gewitter\w*"
        r"|unwetter"
        r"|wolkenbruch"
    ),
    # Before an hour that is asked about alone.
    "day_asked.what_of": r"und|oder|wie wäre es|was ist mit|wie wär's|was wäre",
}
