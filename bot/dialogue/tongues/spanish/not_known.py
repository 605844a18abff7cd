"""Spanish words of not knowing, and of people who are well, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "not_known.said": (
        r"ni (?:la menor |la mas minima )?idea|no (?:lo )?se(?! (?:ve|mueve|nota|han?|pierde"
        r"|quema|puede))"
        r"|no sabria|no estoy segur[oa]|no tengo (?:ni )?idea|como voy a saber(?:lo)?|no distingo"
        r"|no entiendo|no veo (?:si|donde|que)|vaya uno a saber"
    ),
    "not_known.people_well": (
        r"(?:estamos|estoy|todos|todas|los ninos)(?: (?:estan|esta|estamos|todos|todas|muy|aqui|los"
        r" dos))* (?:bien|a salvo|sanos?|ilesos?|ok)"
        r"|nadie(?: esta)? (?:herido|en peligro|perdido)"
    ),
    # "I don't know what depth of field is": a word is asked for.
    "not_known.a_term": (r"que (?:es|son|significan?|quiere decir) [^.,]{2,30}"),
}
