"""Whether water is wished soft with its strands still to be seen: the near end of silky."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import in_any, whole_words

#: So few words lie between the two (own rule).
_NEAR: Final = r"(?: (?:,|\.|\w+)){0,6}?"
_BOTH: Final = re.compile(
    rf"\b{in_any('soft_strands.soft')}\b{_NEAR} {in_any('soft_strands.but')}\b{_NEAR}"
    rf" {in_any('soft_strands.strands')}\b"
    rf"|\b{in_any('soft_strands.soft')}\b{_NEAR} {in_any('soft_strands.strands')}\b{_NEAR}"
    rf" {in_any('soft_strands.but')}\b"
    rf"|\b{in_any('soft_strands.strands')}\b{_NEAR} {in_any('soft_strands.but')}\b{_NEAR}"
    rf" {in_any('soft_strands.soft')}\b"
)
_WRONG: Final = whole_words("soft_strands.wrong")
_IS: Final = whole_words("soft_strands.is")
#: Up to so many words before the two may deny them (own rule).
_BEFORE: Final = 3


def wished(said: Said, facts: Facts) -> Facts:
    """The facts of a message, with silky water where soft strands are wished.

    Silky water keeps its direction (`core.water`): the band for who names both.

    Args:
        said: the message.
        facts: what was read in it; a frame that was taken has its look, and is not wished.
    """
    if facts.shutter_s is not None or facts.look not in {None, "textured"}:
        return facts
    text = folded(said.typed)
    found = _BOTH.search(text)
    if found is None:
        return facts
    before = " ".join(text[: found.start()].split()[-_BEFORE:])
    if _WRONG.search(f"{before} {found.group()}") or _IS.search(before):
        return facts
    return facts.model_copy(update={"look": "silky"})
