"""From the parts of an answer to one message that keeps the rules for the water."""

from __future__ import annotations

import html
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from enum import IntEnum
from typing import Final

from bot.dialogue.actions import Poll, Say
from bot.dialogue.context import Length
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.texts import TEXTS
from bot.dialogue.texts.languages import with_times_spoken

#: One text segment of the mobile network (3GPP TS 23.038); the first line alone answers.
FIRST_LINE: Final = 160
#: Two of them: what a cold person reads at the water (own rule).
WHOLE: Final = 320
#: What is read at home, dry and on a large screen (own rule: less than what is asked for).
AT_HOME: Final = 800
#: What who asked for long messages reads in one: a screen of a phone (own rule).
LONG: Final = 1000
#: Room for the line which names the light of the settings [characters].
_LIGHT_LINE: Final = 32


class Role(IntEnum):
    """What a part is for; the lower, the longer it stays when the space ends."""

    SAFETY = 0
    CAUTION = 1
    SETTINGS = 2
    CHECK = 3
    QUESTION = 4
    ASSUMPTION = 5


#: The order on the screen: the question stands last, where the thumb is.
_SHOWN: Final = (
    Role.SAFETY,
    Role.SETTINGS,
    Role.CHECK,
    Role.CAUTION,
    Role.ASSUMPTION,
    Role.QUESTION,
)


@dataclass(frozen=True)
class Part:
    """One piece of an answer: a text by its key, the values put in, numbered options."""

    role: Role
    key: str
    values: Mapping[str, str] = field(default_factory=dict)
    #: Keys of the options' texts in the order of their numbers.
    options: tuple[str, ...] = ()

    def text(self) -> str:
        """The words, with marks for code spans still in them."""
        return with_times_spoken(TEXTS[self.key].format(**self.values))

    def _option_texts(self) -> list[str]:
        options = (TEXTS[key].format(**self.values) for key in self.options)
        return [with_times_spoken(option) for option in options]

    def plain(self) -> str:
        """The words for the plain body, options in a line."""
        numbered = "  ".join(f"{n} {text}" for n, text in enumerate(self._option_texts(), 1))
        return _quoted(" ".join(piece for piece in (self.text(), numbered) if piece))

    def taps(self) -> tuple[str, ...]:
        """The options as they stand on a poll, in a few words where they have more."""
        keys = (f"{key}.tap" for key in self.options)
        pairs = zip(keys, self.options, strict=True)
        return tuple(TEXTS.get(tap, TEXTS[key]).format(**self.values) for tap, key in pairs)

    def formatted(self) -> str:
        """The words for the formatted body, an option a line."""
        numbered = [
            f"<b>{n}</b> {html.escape(text, quote=False)}"
            for n, text in enumerate(self._option_texts(), 1)
        ]
        return "<br>".join([_code(self.text()), *numbered])


def _quoted(text: str) -> str:
    """Code spans in single quotes, for a body that shows no markup."""
    return re.sub(r"`([^`]*)`", "‘\\1’", text)


def _code(text: str) -> str:
    """Code spans as HTML, everything else escaped."""
    escaped = html.escape(text, quote=False)
    return re.sub(r"`([^`]*)`", r"<code>\1</code>", escaped)


def _shown(parts: Sequence[Part]) -> list[Part]:
    """The parts in the order of the screen, a line each."""
    return sorted(parts, key=lambda part: _SHOWN.index(part.role))


def body_of(parts: Sequence[Part]) -> str:
    """The plain body of these parts, a line each."""
    return "\n".join(part.plain() for part in _shown(parts))


def fit(parts: Sequence[Part], whole: int = WHOLE) -> tuple[list[Part], list[Part]]:
    """What fits into a message, and what has to stand under `why` instead.

    The least important part goes first, later ones before earlier ones of the same role;
    the most important part always stays.
    """
    kept = list(parts)
    left: list[Part] = []
    while len(kept) > 1 and not _fits(kept, whole):
        weakest = max(range(len(kept)), key=lambda n: (kept[n].role, n))
        left.insert(0, kept.pop(weakest))
    return kept, left


#: What stays in a short message beside its first line.
_ALWAYS: Final = frozenset({Role.SAFETY, Role.CAUTION, Role.QUESTION})


def by_length(
    parts: Sequence[Part], length: Length, reasons: Sequence[Part], whole: int = WHOLE
) -> tuple[list[Part], list[Part]]:
    """What a message of this length holds, and what has to stand under `why` instead.

    Short is the first line and the question, with all of safety; long has the reasons, too.
    """
    if length == "short":
        return _shortest(parts)
    if length == "long":
        return _longest(parts, reasons)
    return fit(parts, whole)


def _shortest(parts: Sequence[Part]) -> tuple[list[Part], list[Part]]:
    kept, _ = fit(parts)
    first = next((part for part in _shown(kept) if part.role not in _ALWAYS), None)
    short = [part for part in kept if part is first or part.role in _ALWAYS]
    return short, [part for part in parts if part not in short]


def _longest(parts: Sequence[Part], reasons: Sequence[Part]) -> tuple[list[Part], list[Part]]:
    kept, left = fit(parts, LONG)
    for reason in () if left else reasons:
        if _fits([*kept, reason], LONG):
            kept.append(reason)
    return kept, left


def has_room(parts: Sequence[Part], more: Part) -> bool:
    """Whether one more part fits, with room left for the line that names the light."""
    return not fit([*parts, more], WHOLE - _LIGHT_LINE)[1]


def leads(part: Part) -> bool:
    """Whether a part is short enough to stand in the first line."""
    return len(part.plain()) <= FIRST_LINE


def _fits(parts: Sequence[Part], whole: int) -> bool:
    body = body_of(parts)
    return len(body) <= whole and len(body.split("\n", 1)[0]) <= FIRST_LINE


def message(parts: Sequence[Part], *, urgent: bool = False, question: str = "") -> Say:
    """One message from parts that fit."""
    return Say(
        body=body_of(parts),
        formatted_body="<br>".join(part.formatted() for part in _shown(parts)),
        keys=tuple(part.key for part in parts),
        urgent=urgent,
        question=question,
    )


def poll(part: Part, *, question: str) -> Say:
    """A question with options as a poll; a line each for clients that show none."""
    asked, options = _quoted(part.text()), part.taps()
    numbered = (f"{number} {option}" for number, option in enumerate(options, 1))
    return Say(
        body="\n".join((asked, *numbered)),
        keys=(part.key,),
        question=question,
        poll=Poll(question=asked, options=options),
    )


def answer(
    parts: Sequence[Part],
    reasons: Sequence[Part],
    *,
    question: str,
    length: Length,
    whole: int,
    urgent: bool,
    taps: bool,
) -> tuple[list[Say], list[Part]]:
    """An answer as messages: the first holds what fits, its question may follow as a poll.

    Args:
        parts: of the answer, at least one.
        reasons: what stands under `why`; a long message has it, too.
        question: the name of the question that the answer puts, "" for none.
        length: as the person wants messages.
        whole: most characters of a message of the usual length.
        urgent: it goes before others.
        taps: a question with options goes out as a poll.

    Returns:
        The messages, and the parts that found no room.
    """
    polled = next((part for part in parts if part.options), None) if taps else None
    said = [part for part in parts if part is not polled]
    kept, left = by_length(said, length, reasons, whole) if said else ([], [])
    if polled is None:
        return [message(kept, urgent=urgent, question=question)], left
    return [*([message(kept)] if kept else []), poll(polled, question=question)], left


def question_part(name: str, values: Mapping[str, str], *, briefly: bool = False) -> Part:
    """A question as a part; briefly it is only named, without its options.

    Args:
        name: of the question, as in `bot.dialogue.questions`.
        values: what stands in its text.
        briefly: its options were put often enough.
    """
    asked = QUESTIONS[name]
    if not briefly:
        return Part(Role.QUESTION, asked.key, values, asked.option_keys)
    said = TEXTS[asked.key].format(**values)
    first = said.partition("?")[0] + "?" if "?" in said else said
    first = first.rpartition(". ")[2]  # "Take it. Blinking now?": what is open is the question
    return Part(Role.QUESTION, "still_open", {"question": first})
