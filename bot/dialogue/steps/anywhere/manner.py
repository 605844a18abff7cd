"""How Linn talks with a person: in which language, and at which length."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.context import Length
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.hands import can_hardly_type
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read, texting, texting_spanish
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.tongue import language_of
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.texts import TEXTS, measures, speaking
from bot.dialogue.texts.languages import LANGUAGES, go_on_in
from bot.dialogue.turn import Turn

#: Languages that are read in shortened words, too.
_TEXTED: Final = {"en": texting.in_full, "es": texting_spanish.in_full}


def speak(turn: Turn, language: str) -> None:
    """Speak this language with the person from now on, this answer included."""
    _go_on_in(turn, language)
    turn.say(Role.SETTINGS, "language.now")
    repeat.put_again_if_open(turn)


def _go_on_in(turn: Turn, language: str) -> None:
    turn.change_person(language=language, language_heard=True)
    go_on_in(language)


def begin(turn: Turn, text: str) -> None:
    """Speak from the first answer on the language in which somebody clearly begins to write.

    Their first caution is of use in words that they read. Afterwards nothing switches by itself:
    a quoted sentence would, too.
    """
    language = language_of(text)
    if language is not None and not turn.context.person.language_heard:
        under_way = turn.context.conversation.walk is not None
        _go_on_in(turn, turn.context.person.language if under_way else language)


def list_languages(turn: Turn) -> None:
    """Name the languages, each by its own name."""
    turn.say(Role.SETTINGS, "language.list", list=measures.listing(_own_names(), TEXTS["and"]))
    repeat.put_again_if_open(turn)


def _own_names() -> list[str]:
    return [_in(language, "language.own_name") for language in LANGUAGES]


def _in(language: str, key: str) -> str:
    with speaking(language):
        return TEXTS[key]


def written_in(turn: Turn, text: str) -> str:
    """The language to read a message in: the person's own, or the one it is clearly written in.

    Who has not chosen yet tells their facts all the same.
    """
    language = turn.context.person.language
    return language if language != "en" else language_of(text) or language


def in_full(turn: Turn, text: str) -> str:
    """A message with the short words of thumbs in full, where its language has such."""
    in_full_by = _TEXTED.get(written_in(turn, text))
    return text if in_full_by is None else in_full_by(text)


def said(turn: Turn, english: str, typed: str) -> Said:
    """A message with the language in which it is to be read.

    Args:
        turn: the answer under construction.
        english: glossed.
        typed: as it came.
    """
    return Said(english, typed, written_in(turn, typed))


def as_said(turn: Turn, typed: str) -> Said:
    """A message as it came, glossed from the language in which it is to be read."""
    return said(turn, glossed(typed, written_in(turn, typed)), typed)


def tells_or_asks(turn: Turn, text: str) -> bool:
    """Whether a message tells facts or numbers, or asks something."""
    said = as_said(turn, text)
    facts = read(said.english, units=turn.units)
    return bool(facts.known() or facts.unread) or asks(said)


def offer(turn: Turn, text: str) -> None:
    """Once, who clearly writes in another language is told the word for it, where room is left.

    So is who was just understood to speak another language than English.
    """
    person, language = turn.context.person, language_of(text)
    if person.language != turn.before.person.language and language == person.language:
        language = turn.before.person.language
    if turn.urgent or not turn.parts or language in {None, person.language}:
        return
    part = Part(Role.CHECK, "language.offered", {"offer": _in(language or "", "language.offer")})
    if not person.language_offered and turn.has_room_for(part):
        turn.parts.append(part)
        turn.change_person(language_offered=True)


def be(turn: Turn, length: Length) -> None:
    """Write messages of this length from now on."""
    turn.change_person(length=length)
    turn.say(Role.SETTINGS, f"length.{length}")
    repeat.put_again_if_open(turn)


def note_hands(turn: Turn, text: str) -> bool:
    """Who can hardly type gets short messages, and hears of taps; whether somebody said so."""
    if not can_hardly_type(text):
        return False
    turn.change_person(length="short")
    taps = turn.context.person.taps
    turn.say(Role.ASSUMPTION, "length.hands_taps" if taps else "length.hands")
    return True
