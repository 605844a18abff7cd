"""German words of what goes into the bag, and of what may stay at home."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Can I leave the 14 at home?"
    "bag_words.leave": (
        r"(?:zu ?hause|daheim|im auto) (?:lassen|bleiben|liegen lassen)|bleibt (?:\S+ ){0,3}?"
        r"(?:zu ?hause|daheim)|(?:kann|soll|könnte|darf) (?:ich|wir) (?:\S+ ){1,4}?(?:weglassen"
        r"|dalassen|sparen)|verzichten"
    ),
    # "Do I need the 10 stop?", "is the 70-200 worth carrying?"
    "bag_words.bring": (
        r"(?:brauche?n?|brauch) (?:ich|wir)|(?:soll|sollte|muss|sollen|müssen) (?:ich|wir) "
        r"(?:\S+ ){0,5}?(?:mitnehmen|einpacken|mitbringen|tragen|schleppen)|(?:lohnt sich|lohnt es)"
        r"|(?:reicht|genügt) (?:das|mir das|der|mein)"
    ),
    "bag_words.which_filters": (
        r"welche[nrs]?(?: von (?:meinen|den))? filter\b[^?.;!]*\b(?:mit(?:nehmen)?|nehmen?"
        r"|einpacken|brauche?n?|packen?|sollen?)"
        r"|filter\b[^?.;!]*\bwelche[nrs]?\b[^?.;!]*\b(?:mit(?:nehmen)?|nehmen?|einpacken"
        r"|brauche?n?)"
    ),
    "bag_words.list": (
        r"packliste|was (?:muss|soll|kommt|gehört|packe?n?|nehme?n?) (?:\S+ ){0,4}?(?:mit|rein"
        r"|ein(?:packen)?|in (?:den|die) (?:rucksack|tasche))|was (?:noch )?in (?:den|die) "
        r"(?:rucksack|tasche)"
    ),
    # What speaks of packing, before any visit is planned.
    "bag_words.packs": (
        r"mit(?:nehmen|bringen)?|ein(?:packen)?|pack\w*|zu ?hause|daheim|rucksack|tasche"
    ),
    "bag_words.the": r"den|das|der|mein\w*",
    "bag_words.stop": r"stopp?s?|stufen?|blenden|er nd",
    # What a permit may be needed for.
    "bag_words.tripod": r"stativ\w*",
    "bag_words.selling": r"verkauf\w*|abzüge|gewerblich\w*|kommerziell\w*|kunden",
    "bag_words.group": r"workshops?|kurse?|gruppe|schüler\w*",
    "bag_words.drone": r"drohnen?",
    # Who names what they own.
    "bag_words.owns": r"ich (?:hab|habe|besitze)|hab(?:e)? (?:nur |eh )?(?:einen|ein|den|zwei)",
}
