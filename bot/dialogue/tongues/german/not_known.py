"""German words of not knowing, and of people who are well, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "not_known.said": (
        r"(?:keine|null|ka) (?:ahnung|plan|dunst)|keinen? (?:plan|dunst|schimmer)|kein plan|ka"
        r"|weiss (?:ich |das |es |ich das |i )*(?:nich|nicht|net|ned|nimmer|leider nicht)"
        r"|(?:bin|ich bin)? ?(?:mir )?(?:nicht|nich|net) sicher|woher soll ich das wissen"
        r"|wie (?:soll|kann) ich das (?:wissen|sehen|erkennen)|kann ich nicht (?:sagen|sehen"
        r"|erkennen)"
        r"|(?:seh|sehe|erkenn|erkenne) (?:ich )?(?:nicht|nich|net),? (?:ob|wo|was)"
        r"|versteh\w* (?:ich )?(?:nicht|nich)"
    ),
    "not_known.people_well": (
        r"(?:wir|uns|mir|allen|alle|ich)(?: (?:sind|bin|ist|is|gehts|geht es|geht s|alle|beide|ganz"
        r"|noch|total|hier|ja|auch))* (?:gut|okay|ok|wohlauf|in ordnung|sicher|unverletzt)"
        r"|(?:niemand|keiner)(?: (?:ist|is|hier))* (?:verletzt|in gefahr|verloren)"
    ),
    # "I don't know what depth of field is": a word is asked for.
    "not_known.a_term": (r"was [^.,]{2,40} (?:ist|sind|bedeutet|heisst|meint)"),
}
