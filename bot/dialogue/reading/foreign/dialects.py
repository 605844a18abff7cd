"""German as the south and the Swiss write it, in the standard words that wordings know."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.foreign.numerals import Rules, rules

#: "Gschraubt", "runtergnommen": participles without their e.
_PARTICIPLE: Final = re.compile(
    r"\b((?:runter|herunter|drauf|auf|ab|weg|vor|an|hin|raus|rein|aus|ein|um)?)g"
    r"(?=[bdfhkmnpstwz])(\w{3,}(?:t|en))\b"
)
#: "Belichtn", "eistelln": infinitives without their e.
_INFINITIVE: Final = re.compile(r"\b(\w{2,}(?:cht|ck|ft|ll|lt|nk|pf|rt|ss|st|tz))n\b")
_KIT: Final = r"(?=(?:nd|pol|polfilter|graufilter|stativ)(?:\b|\d))"
_WORDS: Final[Rules] = rules(
    (r"\b(?:w[ao]sser)?foi\b", "fall"),
    (r"\bisch\b", "ist"),
    (r"\bsto(?:a|an)\b", "stein"),
    (r"\bgua[td]\b", "gut"),
    (r"\bois\b", "alles"),
    (r"\bwos\b", "was"),
    (r"\bwia\b", "wie"),
    (r"\bsoi\b(?= (?:i|ich|ma|mir|man|des|das)\b)", "soll"),
    (r"\b(?:ei|oi)(?=stell)", "ein"),
    (r"\bobn\b", "oben"),
    (r"\bhimme\b", "himmel"),
    (r"\blinsn\b", "linse"),
    (r"\bnoss\b", "nass"),
    (r"\bvo (?=da|der|dem|de)\b", "von "),
    (r"\baiso\b", "also"),
    (r"\b(?:iatz|jetz|jetzad|iazt)\b", "jetzt"),
    (r"\bdoa\b", "da"),
    (r"\b(soll|kann|muss|darf) i\b", r"\1 ich"),
    (r"\bu?f ?em\b", "auf dem"),
    (r"\buf\b", "auf"),
    (r"\bdruf\b", "drauf"),
    (r"\b(?:(?:han|hob|hab) i|hani)\b", "hab ich"),
    (r"\b(auf)(?=(?:baut|stellt|spreizt)\b)", r"\1ge"),
    (rf"\b(?:an|en|nen) {_KIT}", "ein "),
)


def in_standard(text: str) -> str:
    """The message with the words of dialects that matter to the trade in standard German.

    Args:
        text: in lower case.
    """
    text = _INFINITIVE.sub(r"\1en", _PARTICIPLE.sub(r"\1ge\2", text))
    for pattern, standard in _WORDS:
        text = pattern.sub(standard, text)
    return text
