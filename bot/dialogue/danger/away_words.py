"""Words of who is away from where nobody should stand, of all languages together."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.all_languages import in_any, whole_words
from bot.dialogue.danger.english import away as english
from bot.dialogue.danger.german import away as german
from bot.dialogue.danger.spanish import away as spanish

_AWAY: Final = (english.AWAY, german.AWAY, spanish.AWAY)
_LEFT: Final = (english.LEFT, german.LEFT, spanish.LEFT)


def _of_all(name: str) -> re.Pattern[str]:
    return whole_words(in_any(_AWAY, name))


#: A safe place that was reached: good for every kind, whoever is meant.
REACHED: Final = _of_all("reached")
#: Others who are back with who writes: says nothing where that is where nobody should stand.
RETURNED: Final = _of_all("returned")
#: What leaves one kind of place: its own words, or the step itself, away from an edge, down from a
#: climb, where nothing is left to be guessed.
OF_KIND: Final[Mapping[str, re.Pattern[str]]] = {
    kind.value: whole_words(in_any(_AWAY, "stepped"), in_any(_LEFT, kind)) for kind in english.LEFT
}
#: Words of a way, a time and people's own things that came along.
BESIDE: Final = frozenset(" ".join(table["beside"] for table in _AWAY).split())
WITH_THINGS: Final = _of_all("with_things")
#: Another one, where who writes is there, too: that one's path is none of theirs.
ANOTHER: Final = _of_all("another")
#: Who asks for themselves, or stands there, whoever else is named.
FOR_ONESELF: Final = _of_all("for_oneself")
WHO_WRITES: Final = _of_all("who_writes")
SELF: Final = _of_all("self")
OTHERS: Final = _of_all("others")
#: Nobody is there any more.
NO_MORE: Final = _of_all("no_more")
