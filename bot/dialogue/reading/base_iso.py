"""The base ISO of a camera, and where it is what is set."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity

#: Full, half and third marks of the ISO series that a bare number may be (ISO 12232 marks).
ISO_MARKS: Final = frozenset(
    {50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 3200, 6400}
)


_BASE: Final = r"(?:base|native|lowest|minimum|min)"
_BASE_ISO: Final = re.compile(
    rf"\b(?:{_BASE}|lower than|starts (?:at|from)|goes down to|bottoms out at)"
    r"(?: (?:on|of|for|with|is|it|its|my|mine|this|the|that|camera|body|sensor|one|goes|go|i|can"
    r"|has"
    r"|value|setting|at|to|are))*[ :=]*$"
)
#: "Base iso on mine is 64", "lowest iso it can do is 100", "iso starts at 64".
_BASE_SPOKEN: Final = re.compile(
    rf"\b(?:{_BASE}(?: \w+)? iso|iso(?: \w+){{0,2}} (?:starts|begins|goes down|bottoms out|stops"
    r"|goes as low as)|base)"
    r"(?:,? (?:on|of|for|with|is|it|its|my|mine|this|the|that|camera|body|sensor|one|goes|go|i|can"
    r"|do|which|being|has|value|setting|at|to|from|get|as|low|here|would|be))*[ :='s]*$"
)
_BASE_AFTER: Final = re.compile(
    r"^\W*(?:(?:is|as|and|that's|thats|that is) )*(?:my |the |its )?(?:base|native|lowest)\b"
)
_BASE_OPENS: Final = re.compile(
    r"^ ?(?:and |at |on )?base iso\b"
    r"|(?P<set>\biso )(?:is )?(?:back |down )?(?:to|at|on) (?:the |its )?base\b"
)
_BASE_HEAD: Final = re.compile(rf"\b{_BASE} iso ?[,(:] ?$")


def is_base(draft: Draft, quantity: Quantity) -> bool:
    """Whether the words beside an ISO say that it is the camera's base."""
    before, after = draft.before(quantity), draft.after(quantity)
    return bool(_BASE_ISO.search(before) or _BASE_AFTER.search(after))


def read_named_base(draft: Draft) -> None:
    """Bare marks behind the base's name: `base iso on mine is 64`."""
    for quantity in draft.free(""):
        before = draft.clause_before(quantity)
        headed = _BASE_HEAD.search(draft.before(quantity))
        if quantity.value in ISO_MARKS and (headed or _BASE_SPOKEN.search(before)):
            draft.put("base_iso", quantity.value, quantity)
            if _sets_base(draft, before):
                draft.note("iso", quantity.value)


def _sets_base(draft: Draft, before: str) -> bool:
    """Whether the base is named where the ISO is, or the ISO is said to be there."""
    opens = _BASE_OPENS.search(before)
    return opens is not None and (opens["set"] is not None or "f_number" in draft.values)
