"""German words of slick ground beside who writes, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SEITE: Final = r"(?:links|rechts|zur seite|zur linken|zur rechten)"

WORDS: Final[Mapping[str, str]] = {
    # Where a step could go.
    "slick_side.step": (
        rf"(?:etwas |ein bisschen |bissl |ein stuck |ein wenig |weiter )*(?:nach )?{_SEITE}"
        r"(?: (?:kann|konnte|kannt)(?: (?:ich|wir|schon|noch))*"
        r"(?: (?:gehen|rucken|treten|rutschen|ausweichen))?)?"
        r"|(?:ich|wir) (?:kann|konnte|konnen|konnten)(?: (?:noch|schon|nur|etwas|bissl|ein|bisschen"
        rf"|stuck|wenig|weiter|nach))* {_SEITE}(?: (?:gehen|rucken|treten|rutschen|ausweichen))?"
    ),
    "slick_side.slick": (
        r"algen?|rutschig\w*|glitschig\w*|schmierig\w*|schlupfrig\w*"
        r"|(?:nass|moosig|matschig)\w* (?:boden|steine?n?|fels\w*|platten?)"
        r"|(?:boden|steine?n?|fels\w*|platten?|es)(?: (?:da|dort|ist|sind|wird|werden|ganz|sehr"
        r"|recht|so))* (?:nass|moosig|matschig)"
        r"|(?:ist|sind|wird|werden)(?: (?:da|dort|der|die|boden|steine|fels|es|ganz|sehr))*"
        r" (?:nass|moosig|matschig)"
    ),
    "slick_side.ground": """
        aber und nur da dort ist sind wird werden es hat gibt der die das den dem ein bisschen ganz
        sehr recht so auf am an boden stein steine steinen fels felsen platte platten algen alge
        rutschig glitschig schmierig schlupfrig nass nasse nassen moosig moos matschig matsch voll
        mit auch ja wie gesagt halt leider von mir kann ich schon gehen""",
}
