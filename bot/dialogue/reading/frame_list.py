"""Frames told in a list: their times, and which setting holds for which of them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final, Literal, get_args

from bot.dialogue.kept import ToldFrame
from bot.dialogue.reading.draft import RANGES
from bot.dialogue.reading.frame_times import SpokenTime, times_in
from bot.dialogue.reading.lens_marks import PRIMES
from bot.dialogue.reading.ordinals import ENGLISH, FIRST, FOREIGN, LAST
from bot.dialogue.tongues import in_any, whole_words
from core.series import SAME_STOPS, exact_shutter_s

Slot = Literal["f_number", "iso", "focal_mm", "nd_on_stops"]

_SETTINGS: Final[dict[Slot, re.Pattern[str]]] = {
    "f_number": re.compile(r"(?<!\w)f ?/? ?(\d{1,2}(?:\.\d)?)(?![\d/])"),
    "iso": re.compile(r"(?<!\w)(?:iso|asa) ?-?(\d{2,5})(?!\d)"),
    "focal_mm": re.compile(
        r"(?<![\w/.-])(\d{1,3}(?:\.\d)?) ?mm\b"
        r"|\b(?:with|on|at|through) the (\d{2,3})(?![\d/.]| ?-?(?:m|s|ft|sec\w*|met\w+|st|nd|th)\b)"
    ),
}
#: A grey filter by its stops; "two stops under" is none.
_FILTER: Final = re.compile(
    rf"\b{in_any('frame_list.behind')} (?:{in_any('frame_list.a')} )?(?:nd )?"
    r"(\d{1,2})[ -]?stop(?:per|s)?\b(?! (?:under|over|darker|brighter|less|more|too|down|up))"
)
FEW: Final = {"two": 2, "three": 3, "four": 4, "2": 2, "3": 3, "4": 4}
_FEW_WORDS: Final = "|".join(FEW)
_ENDS: Final = re.compile(
    rf"\b(?:(?P<before>{_FEW_WORDS}) )?(?:(?P<last>{LAST})|{FIRST})\b"
    rf"(?: (?P<behind>{_FEW_WORDS})\b)?"
)
#: "The second 1/8" is a time.
_NTH: Final = tuple(
    (re.compile(rf"\b(?:the {word}|{FOREIGN[place]})\b(?! \d)"), place)
    for place, word in ENGLISH.items()
)
#: "All but the last, which was f/22".
_WHICH: Final = re.compile(rf",? ?{in_any('frame_list.which')} ")
#: So far back stands what "which" speaks of [characters] (own rule).
_JUST_BEFORE: Final = 12
_ALL: Final = whole_words("frame_list.all")
#: "F/22 for the last", "f/8 the first two": the scope stands behind.
_FOR: Final = re.compile(
    rf"(?: was| is)?(?:,? {in_any('frame_list.for')} | (?=the (?:first|last|long|short|rest)))"
    r"[^,.;]{0,30}?(?=$|[,.;]|\b(?:and|but)\b (?:f ?/?\d|iso))"
)
_LONGEST: Final = whole_words("frame_list.longest")
_SHORTEST: Final = whole_words("frame_list.shortest")
#: A time that is named again, not taken again.
_AGAIN: Final = re.compile(r"^ ?(?:ones?|frames?|shots?|pictures?|photos?|exposures?)\b")
#: "1/4 has patches": said of a frame, which was told before.
_SAID_OF: Final = re.compile(rf" ?{in_any('told_sights.says')}\b")
_SENTENCE_ENDS: Final = re.compile(r"[;!?]|\.(?=\s)")
#: "Then another at 1/8".
_MORE: Final = whole_words("frame_list.more")
#: So many frames of a day are kept (own rule: what is gone through in words is fewer).
MOST_FRAMES: Final = 24


@dataclass(frozen=True)
class Scope:
    """Of which frames a setting is told: all, the first or last few, one by place, or by times."""

    kind: Literal["all", "first", "last", "nth", "times"]
    number: int = 1
    times: tuple[SpokenTime, ...] = ()


@dataclass(frozen=True)
class Told:
    """What a message tells of frames: times in its order, and settings with their scopes."""

    times: tuple[SpokenTime, ...]
    settings: tuple[tuple[Slot, float, Scope], ...]

    def is_any(self) -> bool:
        """Whether it tells anything of frames."""
        return bool(self.times or self.settings)


def is_same_time(one_s: float, other_s: float) -> bool:
    """Whether two marked times are the same on a dial: `0.3 s` and a third of a second are."""
    exact = sorted((exact_shutter_s(one_s), exact_shutter_s(other_s)))
    return exact[1] / exact[0] < 2**SAME_STOPS


def told_in(said: str) -> Told:
    """The times and settings of a message.

    Args:
        said: the message as `plain_times` leaves it.
    """
    times = _without_places(times_in(said))
    settings: list[tuple[Slot, float, Scope]] = [
        (slot, value, scope)
        for slot, pattern in _SETTINGS.items()
        for value, scope in _of_slot(said, times, _found(slot, pattern, said))
    ]
    return Told(_taken(said, times), (*settings, *_filters(said, times)))


def _filters(said: str, times: tuple[SpokenTime, ...]) -> Iterator[tuple[Slot, float, Scope]]:
    """Grey filters beside the times: of the frame before, of all where the words say so."""
    for one in _found("nd_on_stops", _FILTER, said) if times else ():
        before = [time for time in times if time.start < one.start]
        words = said[before[-1].end if before else 0 : one.end]
        yield "nd_on_stops", one.value, _of_times([] if _ALL.search(words) else before[-1:])


def _without_places(times: tuple[SpokenTime, ...]) -> tuple[SpokenTime, ...]:
    """The times without words that name a frame of the list by its place: "the third at f/16"."""
    sure = sum(time.place is None for time in times)
    return tuple(time for time in times if time.place is None or time.place > sure)


def _taken(said: str, times: tuple[SpokenTime, ...]) -> tuple[SpokenTime, ...]:
    """The times without those that are only named again."""
    taken: list[SpokenTime] = []
    for time in times:
        known = any(is_same_time(time.shutter_s, other.shutter_s) for other in taken)
        named = "the" in said[max(time.start - 5, 0) : time.start + 3].split()
        named = named or _SAID_OF.match(said, time.end) is not None
        named = named or _is_of_a_later_sentence(said, time, taken)
        if not (known and (named or _AGAIN.match(said[time.end :]))):
            taken.append(time)
    return tuple(taken)


def _is_of_a_later_sentence(said: str, time: SpokenTime, taken: list[SpokenTime]) -> bool:
    """Whether a sentence ended since the list: "1/4, 1/8 and 1/15. 1/4 blinks" took none twice."""
    between = said[taken[-1].end if taken else 0 : time.start]
    ends = [*_SENTENCE_ENDS.finditer(between)]
    return bool(ends) and _MORE.search(between[ends[-1].end() :]) is None


@dataclass(frozen=True)
class _Found:
    value: float
    start: int
    end: int


def _found(slot: Slot, pattern: re.Pattern[str], said: str) -> list[_Found]:
    found = []
    for match in pattern.finditer(said):
        number = float(next(group for group in match.groups() if group))
        made = slot != "focal_mm" or "mm" in match.group() or number in PRIMES
        if made and RANGES[slot][0] <= number <= RANGES[slot][1]:
            found.append(_Found(number, *match.span()))
    # One lens for all of them is told of the place, not of a frame.
    return [] if slot == "focal_mm" and len({one.value for one in found}) < 2 else found


def _of_slot(
    said: str, times: tuple[SpokenTime, ...], found: list[_Found]
) -> list[tuple[float, Scope]]:
    leads = len(found) > 1 and bool(times) and found[0].start < times[0].start
    leads = leads and _named(said[: found[0].start], (), (0, 0)) is None
    scoped, since = [], 0
    for place, one in enumerate(found):
        behind = _FOR.match(said, one.end)
        if leads:
            until = found[place + 1].start if place + 1 < len(found) else len(said)
            scope = _of_times([time for time in times if one.end <= time.start < until])
        elif behind is not None and (named := _named_of(behind.group(), times, behind.span())):
            scope, since = named, behind.end()
        else:
            span = (since, one.start)
            scope = _of_length(said[since : one.start], times) or _before(
                said, times, span, alone=len(found) == 1
            )
            since = one.end
        scoped.append((one.value, scope))
    return scoped


def _named_of(words: str, times: tuple[SpokenTime, ...], span: tuple[int, int]) -> Scope | None:
    return _of_length(words, times) or _named(words, times, span)


def _of_length(words: str, times: tuple[SpokenTime, ...]) -> Scope | None:
    """The longest or the shortest of several times, where words name it: "f/16 the long one"."""
    last = words.rsplit(",", 1)[-1]
    if len(times) > 1 and not times_in(last):
        order = sorted(times, key=lambda time: time.shutter_s)
        if _LONGEST.search(last):
            return _of_times(order[-1:])
        if _SHORTEST.search(last):
            return _of_times(order[:1])
    return None


def _of_times(times: list[SpokenTime]) -> Scope:
    return Scope("times", times=tuple(times)) if times else Scope("all")


def _before(
    said: str, times: tuple[SpokenTime, ...], span: tuple[int, int], *, alone: bool
) -> Scope:
    """The scope by the words before a setting, behind the last time among them."""
    inside = [time for time in times if span[0] <= time.start < span[1]]
    words = said[inside[-1].end if inside else span[0] : span[1]]
    if _WHICH.match(words):
        words = said[max(span[0] - _JUST_BEFORE, 0) : span[1]]
    named = _named(words, (), span)
    if named is not None:
        return named
    if inside and (_AGAIN.match(words) or len(inside) == 1):
        return _of_times(inside[-1:])
    return Scope("all") if alone else _of_times(inside)


def _named(words: str, times: tuple[SpokenTime, ...], span: tuple[int, int]) -> Scope | None:
    """The scope that words name; the exception before the rule: "all but the last"."""
    inside = [time for time in times if span[0] <= time.start < span[1]]
    if inside:
        return _of_times(inside)
    ends = _ENDS.search(words)
    if ends is not None and not _ALL.search(words[: ends.start()]):
        number = FEW.get(ends["before"] or ends["behind"] or "", 1)
        return Scope("last" if ends["last"] else "first", number)
    if _ALL.search(words) or ends is not None:
        return Scope("all")
    nth = next((number for pattern, number in _NTH if pattern.search(words)), None)
    return None if nth is None else Scope("nth", nth)


def laid(frames: tuple[ToldFrame, ...], told: Told) -> tuple[ToldFrame, ...]:
    """The frames with what a message tells laid over them; new ones behind the others.

    Args:
        frames: as they are known.
        told: by a message.
    """
    new = [time for time in told.times if not _is_known(time, frames)]
    new = [time for time in new if time.place is None or time.place > len(frames)]
    new = new[: max(MOST_FRAMES - len(frames), 0)]
    whole = frames + tuple(ToldFrame(shutter_s=time.shutter_s) for time in new)
    pool = range(len(frames) if new else 0, len(whole))
    values: dict[Slot, dict[int, float]] = {slot: {} for slot in get_args(Slot)}
    for slot, value, scope in sorted(told.settings, key=lambda one: one[2].kind == "all"):
        for place in _places(whole, pool, scope, new):
            values[slot].setdefault(place, value)
    return tuple(
        frame.model_copy(update={s: v[place] for s, v in values.items() if place in v})
        for place, frame in enumerate(whole)
    )


def _is_known(time: SpokenTime, frames: tuple[ToldFrame, ...]) -> bool:
    return any(is_same_time(time.shutter_s, frame.shutter_s) for frame in frames)


def _places(
    whole: tuple[ToldFrame, ...], pool: range, scope: Scope, new: list[SpokenTime]
) -> list[int]:
    """The places of the frames in a scope; a time that was taken twice is told apart by where."""
    match scope.kind:
        case "times":
            taken = dict(zip(pool, new, strict=False))
            named = [time for time in scope.times if time not in new]
            return [
                place
                for place, frame in enumerate(whole)
                if taken.get(place) in scope.times
                or any(is_same_time(frame.shutter_s, time.shutter_s) for time in named)
            ]
        case "nth":
            return list(pool[scope.number - 1 : scope.number])
        case "last":
            return list(pool[-scope.number :])
        case "first":
            return list(pool[: scope.number])
    return list(pool)
