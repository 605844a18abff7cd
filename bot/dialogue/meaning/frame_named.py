"""Which of the frames that were told a part of a message names: by time, f-number or place."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from bot.dialogue.kept import ToldFrame
from bot.dialogue.reading.frame_list import FEW, is_same_time
from bot.dialogue.reading.frame_times import SpokenTime, times_in
from bot.dialogue.reading.ordinals import ENGLISH, FIRST, FOREIGN, LAST
from bot.dialogue.reading.phrases import any_of
from bot.dialogue.tongues import in_any

#: "The second one" is counted; "the second" may be one of time.
_COUNTED: Final = re.compile(r" (?:one|frame|shot|picture|photo|exposure|of|and third)\b")
_FRAME: Final = rf"{in_any('frame_named.frame')}s?"
#: What stands before a frame that only measures another one.
_THAN: Final = re.compile(
    rf"\b{in_any('frame_named.than')}(?: {in_any('frame_named.behind_than')})*[ ,]*$"
)
_COUNT: Final = rf"(?: (?P<{{}}>{'|'.join(FEW)}))?"
_ARTICLE: Final = rf"(?:(?<!\w){in_any('frame_named.the')} |(?<=^)|(?<=^and )|(?<=^but ))"
_ENDS: Final = any_of(
    rf"{_ARTICLE}(?:(?P<lead>{'|'.join(FEW)}) )?"
    rf"(?:(?P<last>{LAST})|(?P<first>{FIRST})"
    rf"|(?P<long>{in_any('frame_named.longest')})|(?P<short>{in_any('frame_named.shortest')})"
    rf"|(?P<second>(?<!\d ){ENGLISH[2]}|{FOREIGN[2]})|(?P<middle>{in_any('frame_named.middle')}))"
    rf"{_COUNT.format('behind')}"
    r"(?! (?:time|try|thing|rock|step|drop|stone|tier|leaf|ledge|fall))"
)
_PLACE: Final = re.compile(
    rf"\b(?:the )?{in_any('frame_named.number')} (?P<number>\d{{1,2}})\b(?!/)"
)
_F_NUMBER: Final = re.compile(
    rf"\b{in_any('frame_named.at')} f ?/? ?(?P<f>\d{{1,2}}(?:\.\d)?)(?![\d/])"
)
#: "The 15 one", "the 0.6": by the number that the camera shows.
_BARE: Final = re.compile(
    rf"\b{in_any('frame_named.in')} (?P<below>\d{{1,4}}(?:\.\d)?)"
    rf"(?: {_FRAME}\b|(?=$|[,.;!?] ?| {in_any('frame_named.is')}\b))"
)
_ORDINALS: Final = tuple(
    (
        re.compile(
            r"(?:\bthe |^|\band |\bder |\bdas |\bdie |\bla |\bel )"
            rf"(?:{word}|{FOREIGN[place]})\b(?! of a| \d)"
        ),
        place,
    )
    for place, word in ENGLISH.items()
    if place > 2  # the second one is told apart from a time of one second
)


@dataclass(frozen=True)
class Named:
    """The frames that a part of a message is about, and the one that it is compared with."""

    places: tuple[int, ...] = ()
    against: int | None = None


def named_in(part: str, frames: tuple[ToldFrame, ...]) -> Named:
    """The frames that a part of a message names.

    Args:
        part: in English, as `plain_times` leaves it.
        frames: that were told of, in their order.
    """
    places: list[int] = []
    against: int | None = None
    for start, found in sorted((*_by_time(part, frames), *_by_words(part, frames))):
        if _THAN.search(part[:start]):
            against = found[0]
        else:
            places += found
    return Named(tuple(dict.fromkeys(places)), against)


def _by_time(part: str, frames: tuple[ToldFrame, ...]) -> list[tuple[int, list[int]]]:
    named = [(time.start, _from_time(time, part, frames)) for time in times_in(part)]
    for match in _BARE.finditer(part):
        number = max(float(match["below"]), 0.1)
        below, whole = (
            _of_time(SpokenTime(time_s, *match.span()), frames) for time_s in (1 / number, number)
        )
        named.append((match.start(), below if "." not in match["below"] and below else whole))
    return [(start, found) for start, found in named if found]


#: "Everything from 1/4 up", "1/4 and longer".
_AND_LONGER: Final = re.compile(
    r" ?(?:s|secs?|seconds?)? ?(?:(?:and|or) )?(?P<shorter>down(?:wards)?|shorter|faster|below"
    r"|under)?(?(shorter)|(?:up(?:wards)?|on(?:wards?)?|longer|slower|above|beyond))\b(?! the\b)"
)


def _from_time(time: SpokenTime, part: str, frames: tuple[ToldFrame, ...]) -> list[int]:
    """The frames of a time, and those beyond it where all of them are meant."""
    same, beyond = _of_time(time, frames), _AND_LONGER.match(part, time.end)
    if not same or beyond is None:
        return same
    edge, sign = frames[same[0]].shutter_s, -1.0 if beyond["shorter"] else 1.0
    return [
        place
        for place, frame in enumerate(frames)
        if place in same or (frame.shutter_s - edge) * sign > 0
    ]


def _of_time(time: SpokenTime, frames: tuple[ToldFrame, ...]) -> list[int]:
    """The frames of a time; else the one at the place that the word may name, too."""
    same = [
        place for place, frame in enumerate(frames) if is_same_time(frame.shutter_s, time.shutter_s)
    ]
    if same or time.place is None:
        return same
    return [time.place - 1] if time.place <= len(frames) else []


def _by_words(part: str, frames: tuple[ToldFrame, ...]) -> list[tuple[int, list[int]]]:
    found = [(match.start(), _at_end(match, frames)) for match in _ENDS.finditer(part)]
    named = {time.start for time in times_in(part)}
    for pattern, place in _ORDINALS:
        for match in pattern.finditer(part):
            apart = not named & set(range(match.start(), match.end()))
            found += [(match.start(), [place - 1])] if apart and place <= len(frames) else []
    for match in _PLACE.finditer(part):
        place = int(match["number"]) - 1
        found.append((match.start(), [place] if 0 <= place < len(frames) else []))
    for match in () if times_in(part) else _F_NUMBER.finditer(part):
        of_f = [place for place, frame in enumerate(frames) if frame.f_number == float(match["f"])]
        found.append((match.start(), of_f if len(of_f) < len(frames) else []))
    return [(start, places) for start, places in found if places]


def _at_end(match: re.Match[str], frames: tuple[ToldFrame, ...]) -> list[int]:
    """`the last two`, `the longest`, `the middle one`."""
    number = FEW.get(match["lead"] or match["behind"] or "", 1)
    order = list(range(len(frames)))
    if match["long"] or match["short"]:
        order.sort(key=lambda place: frames[place].shutter_s, reverse=bool(match["long"]))
        return order[:number]
    if match["second"]:
        counted = match["second"] != "second" or _COUNTED.match(match.string, match.end())
        whole = [place for place in order if is_same_time(frames[place].shutter_s, 1.0)]
        return whole if whole and not counted else order[1:2]
    if match["middle"]:
        return order[len(order) // 2 : len(order) // 2 + 1] if len(order) % 2 else []
    return order[-number:] if match["last"] else order[:number]
