"""German words of water that somebody would stand in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Can I", and "stand in the water" behind it.
    "standing.leave": r"(?:darf|kann|konnen|durfen|soll)(?: (?:ich|wir|man|er|sie|mein \w+))*",
    "standing.into": (
        r"(?: \w+){0,3} (?:im|in den|ins|durch den|durchs) (?:wasser|bach|fluss)\b(?! (?:spiegel"
        r"|sehen))|(?: \w+){0,3} waten\b"
    ),
    # What else somebody may do in water, and how leave is asked for it in the same sentence.
    "standing.play": (
        r"plan?t?schen|rumplan?t?schen|baden|schwimmen|reinhupfen|waten"
        r"|(?:am|im|ans|ins|beim) (?:wasser|bach|ufer|fluss|becken|tumpel)(?: \w+)? spielen"
        r"|spielen (?:am|im|beim) (?:wasser|bach|ufer|fluss)|(?:fusse|zehen|beine) (?:ins|rein"
        r"|in den)"
        r"|(?:hund|kind\w*|klein\w*|sohn|tochter) (?:\w+ )?(?:ins|in den) (?:wasser|bach|fluss)"
    ),
    "standing.may": (
        r"darf|durfen|kann|konnen|konnt\w*|soll\w*|ok|okay|sicher|erlaubt|mochte\w*|will|wollen"
        r"|lass\w*"
        r"|geht das|ist das"
    ),
    # Things that may be put there.
    "standing.thing": (
        r"stativ|zeit|blende|belichtung|handy|kamera|filter|objektiv\w*|blatt"
        r"|rucksack"
    ),
    # Somebody who is in it already.
    "standing.out": r"hilfe|raus|heraus|gefallen|\w*gerutscht|ertrink\w*|unter|schon|noch|weg",
    "standing.no_play": r"(?:kein\w*|nicht|ohne|nie) (?:\w+ )?",
    # Beside a depth: "knee deep, can I stand there?".
    "standing.stand": r"(?: (?:da|dort|hier|drin|noch)* ?stehen)",
    "standing.wading": r"ist waten",
    # Marks of a body, by which a depth is told.
    "standing.ankle": r"knochel\w*",
    "standing.shin": r"schienbein\w*|waden\w*",
    "standing.knee": r"knie\w*",
    "standing.thigh": r"oberschenkel\w*",
    "standing.hip": r"huft\w*|bauch\w*",
    "standing.chest": r"brust\w*",
    # "40 cm deep", "2 metres per second".
    "standing.unit": r"zentimeter",
    "standing.deep": r"tief\w*|wasser",
    "standing.per": r"pro",
    "standing.second": r"sekunde",
    "standing.in_seconds": r"sek\w*",
    # A leaf that drifts shows the speed.
    "standing.leaf": r"blatt|zweig",
    "standing.fast": r"(?<!nicht )(?:schnell\w*|reissend\w*|stark\w*)",
    # The bottom.
    "standing.seen": r"klar\w*|grund (?:ist )?(?:sichtbar|zu sehen)|seh\w* den grund",
    "standing.hidden": r"seh\w* (?:den )?grund nicht|kein\w* grund|nicht klar|trub\w*",
    # What makes it a danger, and what takes that away.
    "standing.above_a_drop": (
        r"(?:uber|oberhalb) (?:dem|des|vom|von dem|eines|einem) (?:\w*fall\w*|stromschnelle\w*)"
    ),
    "standing.brown": r"(?<!nicht )(?:braun\w*|schlamm\w*)",
    "standing.rising": r"(?<!nicht )(?:steigt|steigend\w*)\b(?! nicht)",
    "standing.alone": r"(?<!nicht )(?:allein\w*)",
    "standing.child_or_frail": (
        r"kind\w*|sohn|tochter|bub\w*|madchen|klein(?:e|en|er)|oma|opa|\d+ ?jahrige\w*"
    ),
    "standing.nothing_below": (
        r"nichts (?:darunter|unterhalb)|kein\w* (?:fall|absturz) (?:darunter|unterhalb)"
    ),
    "standing.not_brown": r"nicht braun|klar\w*",
    "standing.not_rising": r"steigt nicht|nicht steigend",
    "standing.not_alone": r"nicht allein|zu zweit|mit mein\w* \w+",
    "standing.dry_clothes": r"trockene \w+ dabei",
}
