"""English words: a wish to end one's life."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "despair.of_life": (
        r"(?:i|he|she|they|we|who|friend|wife|husband|son|daughter|brother|sister|mate|partner"
        r"|somebody"
        r"|someone|to|just|really|says?|said|always)(?: (?:just|really|only|he|she|they|i))*"
        r" (?:want|wants|wanted|wish|wishes|wanting|going)(?: to)? (?:die(?! (?:laughing|of|from"
        r"|for|down|off|away|out))|be dead(?! cent)|end (?:it all"
        r"|my life|his life"
        r"|her life|their li(?:fe|ves))|kill (?:myself|himself|herself|themselves))"
        r"|(?:kill|killing) (?:myself|himself|herself|themselves)(?! (?:laughing|on|up|getting"
        r"|carrying))"
        r"|suicid(?:e|al)|(?:end|ending|take|taking) (?:my|his|her|their) (?:own )?li(?:fe|ves)"
        r"|(?:do|does|did)(?:nt| not) want to (?:live|be alive)|no (?:reason|point) (?:to live"
        r"|in living"
        r"|living)|better off dead|self harm"
    ),
}
