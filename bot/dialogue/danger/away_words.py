"""Words of who is away from where nobody should stand, of all languages together."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.kinds import LEVELS, DangerKind, Level
from bot.dialogue.tongues import single_words, whole_words

#: A safe place that was reached: good for every kind, whoever is meant.
REACHED: Final = whole_words("away.reached")
#: Others who are back with who writes: says nothing where that is where nobody should stand.
RETURNED: Final = whole_words("away.returned")
#: What leaves one kind of place: its own words, or the step itself, away from an edge, down from a
#: climb, where nothing is left to be guessed.
OF_KIND: Final[Mapping[str, re.Pattern[str]]] = {
    kind.value: whole_words("away.stepped", f"away.left_{kind.value}")
    for kind in DangerKind
    if LEVELS[kind] is Level.STOP
}
#: Words of a way, a time and people's own things that came along.
BESIDE: Final = single_words("away.beside")
WITH_THINGS: Final = whole_words("away.with_things")
#: Another one, where who writes is there, too: that one's path is none of theirs.
ANOTHER: Final = whole_words("away.another")
#: Who asks for themselves, or stands there, whoever else is named.
FOR_ONESELF: Final = whole_words("away.for_oneself")
WHO_WRITES: Final = whole_words("away.who_writes")
SELF: Final = whole_words("away.self")
OTHERS: Final = whole_words("away.others")
#: Nobody is there any more.
NO_MORE: Final = whole_words("away.no_more")
