"""Questions that people ask beside the walk, known by their words."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning.asking import asked_directly, asks_at_once, is_asking
from bot.dialogue.meaning.said import OWN_TABLES, Said, in_english
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.topics import TALK, nearness, topic_of
from bot.dialogue.meaning.values_named import named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.reading.visit import read_visit
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.asked import (
    asked_at_end,
    depth_enough,
    filter_answers,
    filter_meant,
    filter_now,
    filter_unknown,
    handy_answers,
    held_longer,
    numbers_asked,
    own_words,
    reach,
    shake_asked,
    terms,
    time_enough,
    trade_answers,
    tried_values,
    verdicts,
    wondered,
)
from bot.dialogue.steps.asked.question_words import topic_named
from bot.dialogue.steps.asked.told_beside_question import wished
from bot.dialogue.steps.asked.topic_answers import MOVING, TOPICS, Answer
from bot.dialogue.steps.asked.topic_or_cause import IN_ITS_WORDS
from bot.dialogue.steps.asked.which_topic import meant_by
from bot.dialogue.turn import Turn

#: What is told, not asked, in a clause that holds it.
_TELLING: Final = frozenset(
    {"symptoms", "meter_stops", "change_stops", "blink", "fall_height_m", "distance_m", "nearest_m"}
    | {"walk_km", "sunset"}
)
_SETTINGS: Final = frozenset({"f_number", "shutter_s", "iso"})
#: Where somebody stands, told before a question.
_OF_PLACE: Final = frozenset({"fall_height_m", "distance_m", "nearest_m", "focal_mm"})

#: Beside the first question so many more are answered (own rule: what a message holds).
_MOST_MORE: Final = 2
_TWO: Final = 2
#: A clause asks something by its sense from this nearness on (own rule: as a whole message does
#: beside facts, and a little more, since less of it is read).
_SURE: Final = 0.4

#: Where one clause ends and a question may begin.
_CLAUSE: Final = re.compile(
    r"(?<=[?!;.])\s+|\n|,\s*(?=(?:and |but |so )?"
    r"(?:(?:at|with|in|for|to|on) )?"
    r"(?:whats?|which|where|how|why|when|do|does|should|can|could|is|am|may)\b)"
    r"|\s+(?=(?:but|and) (?:am|is|can|may|should|do|how|why|what|which|where)\b)"
)


def parted(heard: Said) -> Said:
    """A message in another language with the question at its end apart from what it tells before.

    Its gloss has no question word that English would part it by: "rock at 2 m, need i a nd?".
    """
    told, comma, asked = heard.english.rpartition(", ")
    if heard.language not in OWN_TABLES or not comma or not asked.rstrip().endswith("?"):
        return heard
    known = read(told).known().keys()
    if not known & _OF_PLACE or "symptoms" in known:
        return heard  # "the leaves are soft, is it the focus?" is one question
    return heard._replace(english=f"{told}. {asked}")


def answer(turn: Turn, heard: Said) -> str | None:
    """Answer the questions of a message that are known here.

    Returns:
        What else the message says, to be read for facts; None when it asks nothing known.
    """
    rest = _first(turn, heard)
    said = None if rest is None or turn.question_put else rest
    for _ in range(_MOST_MORE):
        said = None if not said else _more(turn, said, by_sense=heard.typed == heard.english)
        rest = rest if said is None else said
    return rest


def _of_numbers(turn: Turn, heard: Said) -> str | None:
    """Answer a question about numbers, and what is asked of depth behind it."""
    rest = numbers_asked.answer(turn, heard)
    if rest is not None:
        _say_depth_behind(turn, heard)
    return rest


def _first(turn: Turn, heard: Said) -> str | None:
    """Answer the first question; what else the message says, None when it asks nothing known."""
    text = heard.english
    clauses = _CLAUSE.split(text)
    for answered in _FIRST:
        rest = answered(turn, heard)
        if rest is not None:
            return rest
    judged = _judged(turn, heard, clauses)
    if judged is not None:
        return judged
    asked = _named_in(clauses) or _meant_in(turn, heard, clauses)
    if not asked:
        return asked_at_end.answer(turn, heard)
    first, named = asked[0]
    topic = meant_by(_of_several(heard, clauses[first], len(asked)), named)
    say, rest = TOPICS[topic], _rest_of(clauses, first, topic)
    if turn.context.conversation.walk is not None:
        turn.learn(wished(text))
    told = read(rest)  # "m43, and which f-number?" asks about that camera
    kit = told.only(told.known().keys() & KIT_SLOTS).updated(_own(turn, clauses[first]))
    turn.change_person(kit=turn.context.person.kit.updated(kit))
    if _waits(say, rest):
        return rest
    say(turn, text)
    if not turn.notes:
        turn.reason("why.practice")
    return rest


#: Questions known as a whole, in the order in which they count.
_FIRST: Final[tuple[Callable[[Turn, Said], str | None], ...]] = (
    own_words.answer,
    filter_unknown.answer,
    filter_now.answer,
    held_longer.answer,
    wondered.answer,
    shake_asked.answer,
    _of_numbers,
)


def _say_depth_behind(turn: Turn, heard: Said) -> None:
    """Answer whether an f-number is enough, asked in a sentence behind another question.

    "14 mm or 10 mm for that? f/11 at 14 enough or two frames".
    """
    _, *behind = sentences_of(heard.english)
    if any("depth" in part.key for part in turn.parts) or heard.typed != heard.english:
        return
    for sentence in behind:
        if depth_enough.answer(turn, in_english(sentence)) is not None:
            return


def _rest_of(clauses: Sequence[str], asked: int, topic: str) -> str:
    """What a message says beside its question, but for what only belongs to that.

    Args:
        clauses: of the message, in English.
        asked: the place of the one that asks.
        topic: that it asks about; "nothing blinks, where is that shown" tells of no frame.
    """
    rest = " ".join(clauses[place] for place in range(len(clauses)) if place != asked)
    known = read(rest).known().keys()
    return "" if known and known <= IN_ITS_WORDS.get(topic, frozenset()) else rest


def _judged(turn: Turn, heard: Said, clauses: Sequence[str]) -> str | None:
    """Answer what wants a yes or a no; what else the message says, None where nothing does."""
    text = heard.english
    judged = time_enough.answer(turn, text)
    judged = reach.answer(turn, text, clauses) if judged is None else judged
    judged = depth_enough.answer(turn, heard) if judged is None else judged
    judged = verdicts.answer(turn, text) if judged is None else judged
    return tried_values.answer(turn, heard) if judged is None else judged


def _of_several(heard: Said, clause: str, asked: int) -> Said:
    """The words whose sense counts: of several questions in English each has its own."""
    if heard.language in OWN_TABLES:
        _, comma, last = heard.typed.rpartition(", ")
        _, parted_off, asked_last = heard.english.rpartition(". ")
        apart = parted_off and comma and last.rstrip().endswith("?") and clause in asked_last
        return heard._replace(english=clause, typed=last) if apart else heard
    return in_english(clause) if asked > 1 and heard.typed == heard.english else heard


def _more(turn: Turn, rest: str, *, by_sense: bool) -> str | None:
    """Answer one more question of a message; what it says beside that, None without another.

    It stands behind the first answer, and goes to `why` where there is no room.

    Args:
        turn: the answer under construction.
        rest: what else the message says, in English.
        by_sense: whether it was typed so, and a clause may ask by its sense.
    """
    clauses = _CLAUSE.split(rest)
    asked = _named_in(clauses) or (_by_sense(map(in_english, clauses)) if by_sense else [])
    if not asked or asked[0][1] in MOVING:
        return None
    place, named = asked[0]
    before, turn.parts = turn.parts, []
    TOPICS[named](turn, clauses[place])
    more = [replace(part, role=Role.ASSUMPTION) for part in turn.parts]
    turn.parts = [*before, *(part for part in more if part.key not in {p.key for p in before})]
    return " ".join(clauses[:place] + clauses[place + 1 :])


def answer_late(turn: Turn, heard: Said, rest: str | None) -> None:
    """Say what waited for the rest of a message to be taken in, in front of what that led to."""
    if rest is None or any(part.key.startswith("wondered.") for part in turn.parts):
        return
    clauses = _CLAUSE.split(heard.english)
    asked = _named_in(clauses) or _meant_in(turn, heard, clauses)
    if not asked:
        return
    place, named = asked[0]
    say = TOPICS[meant_by(_of_several(heard, clauses[place], len(asked)), named)]
    if not _waits(say, rest):
        return
    if say is trade_answers.say_turn_back and any(map(_is_of_the_way, turn.parts)):
        return  # what was told led to it already
    if say is handy_answers.say_leaves:
        handy_answers.say_why_leaves(turn, heard.english)
        return
    said, turn.parts = turn.parts, []
    say(turn, heard.english)
    turn.parts = [*turn.parts, *said]


def _is_of_the_way(part: Part) -> bool:
    return part.key.startswith(("arrive.turn_back", "arrive.way"))


def _waits(say: Answer, rest: str) -> bool:
    """Whether an answer's numbers change by what else is told, or that leads to the same."""
    if say is handy_answers.say_leaves:
        return Symptom.LEAVES_SMEARED in read(rest).symptoms
    return say in _OF_NUMBERS and bool(read(rest).known() or read_visit(rest).known())


#: What is answered by numbers that the same message may tell.
_OF_NUMBERS: Final = frozenset(
    {filter_answers.say_nd, filter_answers.say_polariser_stops, trade_answers.say_focus}
    | {trade_answers.say_turn_back}
)


def _own(turn: Turn, clause: str) -> Facts:
    """Filters that a question names as the person's: "do I need my 3 stop?".

    Who has an ND and asks which of the two goes on first has the polariser, too.
    """
    told, said = read(clause), clause.casefold()
    if not (_MINE.search(said) or ("first" in said and turn.facts.nd_stops)):
        return Facts()
    return Facts(nd_stops=told.nd_stops or None, has_polariser=told.has_polariser or None)


_MINE: Final = re.compile(r"\bmy\b")


def _named_in(clauses: Sequence[str]) -> list[tuple[int, str]]:
    """The clauses that ask something known: the place of each, and the topic."""
    meant = filter_meant.named(clauses)
    found = [(place, named) for place, clause in enumerate(meant) if (named := _named(clause))]
    if any(named == "pack" for _, named in found) and _names_a_dial(" ".join(clauses)):
        return [one for one in found if one[1] != "pack"]  # "1/8, is that enough" packs nothing
    return found


def _names_a_dial(text: str) -> bool:
    return any(one.slot in _SETTINGS for one in named_in(plainly(text)))


def _meant_in(turn: Turn, heard: Said, clauses: Sequence[str]) -> list[tuple[int, str]]:
    """The clause of several that asks something by its sense, behind what the others tell.

    On a walk only: before it, what is told begins one.
    """
    typed = _CLAUSE.split(heard.typed)
    begun = turn.context.conversation.walk is not None
    if not begun or len(clauses) < _TWO or len(typed) != len(clauses):
        return []
    parts = zip(clauses, typed, strict=True)
    return _by_sense(heard._replace(english=one, typed=own) for one, own in parts)


def _by_sense(parts: Iterable[Said]) -> list[tuple[int, str]]:
    """The first part that asks something by its sense: its place, and the topic."""
    return [(place, topic) for place, part in enumerate(parts) if (topic := _meant(part))][:1]


def _meant(part: Said) -> str | None:
    """The topic of a clause that begins or ends as a question, and tells nothing by itself."""
    topic = topic_of(part)
    if topic is None or "what if" in part.english.casefold() or not asks_at_once(part):
        return None
    if topic in MOVING or _tells(part.english, IN_ITS_WORDS.get(topic, frozenset())):
        return None
    return None if topic.startswith(TALK) or nearness(part)[topic] < _SURE else topic


def _named(clause: str) -> str | None:
    typed = clause.casefold().strip()
    said = asked_directly(typed)
    if (term := terms.asked(said)) is not None:
        return term
    asks = is_asking(said) or said != typed
    if "what if" in said or not asks or _tells(clause):
        return None
    return topic_named(said)


def topic_asked(text: str) -> str | None:
    """The first topic that a message asks of in known words; None where it asks none."""
    return next((topic for clause in _CLAUSE.split(text) if (topic := _named(clause))), None)


def _tells(clause: str, in_its_words: frozenset[str] = frozenset()) -> bool:
    """Whether a clause tells of a frame or of the fall, whatever it asks beside.

    Args:
        clause: in English.
        in_its_words: what a question's own words hold without telling it.
    """
    known = set(read(clause).known()) - in_its_words
    return bool(known & _TELLING) or len(known & _SETTINGS) > 1
