"""What a reply in free words says: who is safe, whether anybody is out there or in danger."""

from __future__ import annotations

import re
from collections.abc import Mapping
from enum import Enum
from functools import lru_cache
from typing import Final

from bot.dialogue.danger.aftermath import leaves_somebody
from bot.dialogue.danger.came_away import came_away, speaks_for_one
from bot.dialogue.danger.english.replies import REPLIES as ENGLISH
from bot.dialogue.danger.german.replies import REPLIES as GERMAN
from bot.dialogue.danger.good_news import is_only_good, without
from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.left_open import leaves_open
from bot.dialogue.danger.meaning import all_cues
from bot.dialogue.danger.spanish.replies import REPLIES as SPANISH
from bot.dialogue.danger.spelling import sentences
from bot.dialogue.danger.whereabouts import tells_of_staying
from bot.dialogue.folding import folded, without_accents
from bot.dialogue.reading.foreign.dialects import in_plain_german
from bot.dialogue.tongues import in_any, whole_words


class Safe(Enum):
    """Who a reply says is safe."""

    ALL = "all"
    #: Several others.
    THEY = "they"
    #: One other.
    ONE = "one"
    #: Who writes, and nobody else.
    OWN = "own"
    #: There never was any danger: a joke, a slip, the camera.
    RETRACTED = "retracted"
    #: Not yet, or not all.
    NOT = "not"
    #: A bare yes.
    YES = "yes"
    #: What was said is understood; that tells nothing of anybody.
    HEARD = "heard"


_Table = Mapping[str, re.Pattern[str]]
_TABLES: Final[tuple[_Table, ...]] = tuple(
    {meaning: re.compile("|".join(wordings)) for meaning, wordings in replies.items()}
    for replies in (ENGLISH, GERMAN, SPANISH)
)
_SPANISH: Final = _TABLES[2]
#: Statements in which a denial is the good news itself.
_GOOD_DENIALS: Final = ("but_fine", "all", "retracted", "mended")
#: What says who is safe, and where.
_GOOD_NEWS: Final = ("but_fine", "all", "here", "they", "one", "own", "place", "mended")
#: In this order one that is found says it: all hold the others.
_STATED: Final = (Safe.ALL, Safe.THEY, Safe.ONE, Safe.OWN)
#: "This is no joke", "nicht nur ein Test".
_SERIOUS: Final = re.compile(
    rf"\b{in_any('replies.no')}(?: {in_any('replies.only_a')})* {in_any('replies.joke')}\b"
)
#: What calms without telling anything.
_COMFORT: Final = re.compile(rf"^\W*{in_any('replies.comfort')}\b[\s,.!:-]*(?=\w)", re.IGNORECASE)
#: Who speaks of all of them, wherever they are.
_EVERYBODY: Final = whole_words("replies.everybody")
#: What stands before an answer without telling anything.
_LEAD: Final = re.compile(rf"^(?:{in_any('replies.lead')}[ ,]+)+")
#: What a "no" may deny in the same breath: "no, we're not", "no, it was only the light".
_WITH_NO: Final = whole_words("replies.with_no")

#: Where nobody is.
_OUT_THERE: Final = re.compile(
    rf"^ (?:{in_any('replies.is')} )?(?:mehr )?{in_any('replies.out_there')}\b"
)


@lru_cache(maxsize=8)
def spelled(text: str) -> tuple[tuple[str, _Table], ...]:
    """The message in the spelling of each language, sentences parted by commas, and its words.

    Every meaning is looked for in it anew; it is spelled once.
    """
    other = folded(text).replace(" . ", " , ")
    english = " , ".join(sentences(without_accents(text)))
    return ((english, _TABLES[0]), *((other, table) for table in _TABLES[1:]))


@lru_cache(maxsize=8)
def who_is_safe(text: str) -> Safe | None:
    """What a reply to "are all safe?" says, in any of Linn's languages.

    Args:
        text: the message as typed.

    Returns:
        Who is safe, only for a plain statement without doubt or exception; `NOT` for a "no";
        None where it says nothing of it.
    """
    text = in_plain_german(text)
    if leaves_somebody(text):
        return Safe.NOT
    if is_retracted(text):
        return Safe.RETRACTED
    text = _COMFORT.sub("", text)
    for bare in (Safe.HEARD, Safe.YES):
        if _is_whole(text, bare.value):
            return bare
    stated = None if "?" in text else _stated(text)
    denied = stated is None and (_begins(text, "no") or _begins(text, "not_yet"))
    return Safe.NOT if denied else stated


def _stated(text: str) -> Safe | None:
    found = {safe for safe in _STATED if says(text, safe.value)}
    found |= {Safe.ALL} if says(text, "here") else set()
    if not found or _is_unsure(text):
        return None
    if Safe.OWN in found and found & {Safe.THEY, Safe.ONE}:
        found.add(Safe.ALL)
    stated = next(safe for safe in _STATED if safe in found)
    return None if stated is Safe.ALL and not _is_only_good(text) else stated


def tells_only_where(text: str) -> bool:
    """Whether good news only tells where who writes is: "we're at the car"."""
    everybody = _EVERYBODY.search(folded(text)) is not None
    where = ((*table["here"].subn(" ", said), table) for said, table in spelled(text))
    return not everybody and any(n and not table["all"].search(rest) for rest, n, table in where)


def speaks_for_everybody(text: str) -> bool:
    """Whether a message says of all of them, by that word, that they are safe, and nothing else."""
    return who_is_safe(text) is Safe.ALL and _EVERYBODY.search(folded(text)) is not None


def _is_only_good(text: str) -> bool:
    """Whether a message that all are safe says nothing else, in one of the languages."""
    return any(
        is_only_good(without(said, (table[meaning] for meaning in _GOOD_NEWS)))
        for said, table in spelled(text)
    )


def says(text: str, meaning: str) -> bool:
    """Whether a message holds a wording of some meaning, in any of the languages."""
    return any(table[meaning].search(said) for said, table in spelled(text))


def _begins(text: str, meaning: str) -> bool:
    return any(_beginning(said, table, meaning) for said, table in spelled(text))


def _beginning(said: str, table: _Table, meaning: str) -> re.Match[str] | None:
    return re.match(rf"(?:{table[meaning].pattern})(?!\w)", said)


def _is_whole(text: str, meaning: str) -> bool:
    """Whether a message is made of such words of one language alone."""
    return any(
        said and not re.sub(rf"(?<!\w)(?:{table[meaning].pattern})(?!\w)|[ ,]", "", said)
        for said, table in spelled(text)
    )


def _is_unsure(text: str) -> bool:
    """Whether a message doubts or excepts, in any of the languages."""
    for said, table in spelled(text):
        rest = said
        for meaning in _GOOD_DENIALS:
            for words in _TABLES:
                rest = words[meaning].sub(" ", rest)
        if table["unsure"].search(rest):
            return True
    return False


def is_retracted(text: str) -> bool:
    """Whether a message says that nobody ever was in danger: a joke, a slip, only the camera."""
    return _is_joke(text) or _is_thing(text)


def is_serious(text: str) -> bool:
    """Whether it is said to be no joke."""
    return _SERIOUS.search(folded(text)) is not None


def _is_joke(text: str) -> bool:
    return "?" not in text and says(text, "retracted") and not is_serious(text)


def _is_thing(text: str) -> bool:
    """Whether it is said to have been a thing only, and nobody is named beside it."""
    if "?" in text or not (says(text, "meant") or says(text, "only")):
        return False
    cues = all_cues(text)
    return "thing" in cues and "other" not in cues


def anyone_out_there(text: str, kind: str = "", *, others: bool = False) -> bool | None:
    """What a reply to "is anyone out there now?" says.

    Args:
        text: the message as typed, in any of Linn's languages.
        kind: what kind of place that is, by its value; "" where it is not known.
        others: whether only others than who writes were there.

    Returns:
        True when somebody is, False when nobody is, None where it says neither.
    """
    all_safe = who_is_safe(text) is Safe.ALL and not tells_of_staying(text)
    if came_away(text, kind, others=others) or _is_joke(text):
        return False
    doubtful = leaves_open(text) or (others and speaks_for_one(text))
    if not doubtful and (all_safe or _says_nobody(text)):
        return False
    return True if _says_yes(text) else None


def in_danger(text: str, *, others: bool) -> bool | None:
    """What a reply to "is anybody hurt, lost, in the water or near an edge?" says.

    Args:
        text: the message as typed, in any of Linn's languages.
        others: whether somebody else than the person may be: then "I'm fine" says nothing.

    Returns:
        True when somebody is, False when nobody is, None where it says neither.
    """
    text = in_plain_german(text)
    fine = {Safe.ALL, Safe.RETRACTED, Safe.THEY, Safe.ONE} | (set() if others else {Safe.OWN})
    if _says_nobody(text) or who_is_safe(text) in fine or _is_whole(text, "fine"):
        return False
    if came_away(text, DangerKind.WADING.value, others=others):
        return False
    if "?" not in text and (says(text, "meant") or says(text, "always_so")):
        return False
    return True if _says_yes(text) else None


def _says_nobody(text: str) -> bool:
    if "?" in text or tells_of_staying(text):
        return False
    if _answers_no(text) or any(
        _is_nobody(said, table) or table["stepped_back"].search(said)
        for said, table in spelled(text)
    ):
        return True
    return says(text, "place") and not _is_unsure(text)


def _is_nobody(said: str, table: _Table) -> bool:
    """Whether a "nobody" answers, without doubt or exception behind it: "one is missing"."""
    said = _LEAD.sub("", said)
    found = table["nobody"].match(said)
    return found is not None and not _doubts(_OUT_THERE.sub("", said[found.end() :]))


def _doubts(rest: str) -> bool:
    """Whether what follows an answer doubts or excepts, in any of the languages."""
    left = _WITH_NO.sub(" ", rest)
    return any(words["unsure"].search(left) for words in _TABLES)


def _answers_no(text: str) -> bool:
    """Whether a "no" answers, without doubt or exception behind it."""
    for said, table in spelled(text):
        rest = _goes_on(said, table, "no")
        if rest is not None and not _doubts(rest):
            return True
    return False


def _says_yes(text: str) -> bool:
    """A yes alone, before a comma, or before whom it is of; or nothing but who it is."""
    return _is_whole(text, "somebody") or any(
        _goes_on(said, table, "yes") is not None and not (table is _SPANISH and _is_if(text, said))
        for said, table in spelled(text)
    )


def _goes_on(said: str, table: _Table, word: str) -> str | None:
    """What follows a yes or no that answers: nothing, a comma, or words that go on from it."""
    found = _beginning(said, table, word)
    if found is None:
        return None
    rest = said[found.end() :].strip()
    answers = not rest or rest[0] == "," or _beginning(rest, table, f"after_{word}")
    return rest if answers else None


def _is_if(text: str, said: str) -> bool:
    """Whether a Spanish "si" without its accent begins a condition."""
    return "sí" not in text.casefold() and re.match(r"si(?: ,|$)", said) is None
