"""Spanish words by which a message asks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_QUE: Final = (
    r"qu[eé](?! (?:(?:hago )?ahora\b|bien|lind|bonit|genial|chul|buen|guap|maravilla|pasada))"
)

WORDS: Final[Mapping[str, str]] = {
    # How a question begins when it lacks its mark.
    "asking.begins": (
        r"(?:(?:y|o|pero|ok|okay|hola|oye|linn|por favor|perdona|una pregunta)\W+)*¿?"
        r"(?:(?:(?:por|para|en|a|de|desde|hasta|con|hacia) ?)?(?:cu[aá]l\w*|c[oó]mo|a?d[oó]nde"
        rf"|cu[aá]ndo|cu[aá]nt\w+|{_QUE})"
        r"|se puede\w*|puedo|podemos|puede\w*|debo|debemos|deber[ií]a\w*|necesit(?:o|amos)"
        r"|hace falta|hay que|tengo que|tenemos que|conviene|sirven?|vale la pena|es mejor"
        r"|sabes)\b"
    ),
    # How a question begins behind something told: "no tripod, can it be done".
    "asking.begins_behind": (
        rf"¿?(?:(?:(?:por|para|en|a|de|con) )?(?:{_QUE}|cu[aá]l\w*|c[oó]mo"
        r"|d[oó]nde|cu[aá]ndo|cu[aá]nt\w+)|se puede|puedo|podemos|debo|debemos|sirve|hace falta"
        r"|conviene|vale la pena|es mejor|o qu[eé])\b"
    ),
    # What asks wherever it stands: "the pola eats how many stops", "cpl vs nd"; and at the end.
    "asking.anywhere": (
        r"cu[aá]nt[oa]s?|s[ií] o no|posible|se puede|(?:en|con|a|de) qué \w+"
        r"|qu[eé] (?:tiempo|f|iso|diafragma|velocidad)"
    ),
    "asking.at_end": r"qu[eé] (?:hago|hacemos|se hace)(?: ahora)?",
    # Who asks what a word means.
    "asking.of_a_word": (
        r"qu[eé] (?:es|son|significa|quiere decir|quieres decir)|a qu[eé] te refieres"
    ),
    # How a question begins where no sign parts it from what is told: "no puedo" tells.
    "asking.within": (
        r"¿?(?:qu[eé] (?:hago|hacemos|pongo|le hago)|c[oó]mo \w+|cu[aá]nt[oa]s? \w+|por qu[eé]"
        r"|(?<!no )(?:puedo|podemos|debo|debemos|se puede)|es (?:el|la|eso|por)|ser[aá]|o qu[eé])\b"
    ),
    # The verb before who is asked about: here it stands so in what is told, too.
    "asking.inverted": NOTHING,
    # Between two things of which one is to be chosen, or two numbers.
    "asking.or": r"o",
    "asking.either": r"o|ó",
    # Where something else begins.
    "asking.and": r"y|pero",
    # In front of a question that is asked at second hand: "dime cuánto".
    "asking.indirect": (
        r"(?:dime|expl[ií]came)(?: (?:solo|por favor|de verdad))*"
        r"|(?:lo que )?(?:pregunt(?:o|é|aba)|quiero saber|quer[ií]a saber|digo)(?: es)?"
        r"|la pregunta (?:es|era)"
    ),
    # "Whether", where it begins such a question.
    "asking.whether": r"si",
}
