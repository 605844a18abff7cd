"""Who asks for, or tells of, a place where nobody stands in words that need no weighing."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: Talk of the picture: there an edge is an edge of the frame, or something to focus on.
_PICTURE: Final = whole_words("permission.picture")
_ASKED: Final = tuple(
    (kind, re.compile(rf"(?<!\w){in_any(name)}(?!\w)"))
    for kind, name in (
        (DangerKind.LIP, "permission.to_lip"),
        (DangerKind.WADING, "permission.into_water"),
        (DangerKind.LIP, "permission.stands"),
    )
)
_SETTINGS_THERE: Final = re.compile(rf"(?<!\w){in_any('permission.settings')}(?!\w)")


def leave_asked(text: str) -> DangerKind | None:
    """The place where nobody stands for which a message asks leave, or where it tells of somebody.

    Args:
        text: as typed or dictated, in any of Linn's languages.

    Returns:
        The kind of place; None where no leave is asked, or where the picture is meant.
    """
    said = folded(text)
    if _SETTINGS_THERE.search(said):
        return DangerKind.LIP
    clauses = said.split(" . ")
    return next(
        (
            kind
            for kind, pattern in _ASKED
            for clause in clauses
            if pattern.search(clause) and not _PICTURE.search(clause)
        ),
        None,
    )
