"""Numbers in words turned into digits, as dictation writes them: `two hundred and fifty`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.unit_words import LENGTH

_ONES: Final = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_TEENS: Final = (
    *("ten", "eleven", "twelve", "thirteen", "fourteen"),
    *("fifteen", "sixteen", "seventeen", "eighteen", "nineteen"),
)
_TENS: Final = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
#: Numbers of one word.
SIMPLE: Final = {word: number for number, word in enumerate(("zero", *_ONES, *_TEENS))} | {
    ten: 20 + 10 * index for index, ten in enumerate(_TENS)
}


def number_said(said: str) -> float:
    """A number in digits, or of one word, as a number."""
    return float(said) if said.isdigit() else float(SIMPLE[said])


_ONE: Final = "|".join(_ONES)
_TEEN: Final = "|".join(_TEENS)
_TEN: Final = "|".join(_TENS)
_BELOW_HUNDRED: Final = rf"(?:(?:{_TEN})(?:[ -](?:{_ONE})\b)?|{_TEEN}|{_ONE})"
_HUNDREDS: Final = (
    rf"(?:(?:(?:a|{_ONE}|{_TEEN}|{_TEN})[ -])?hundred(?:(?: and)? {_BELOW_HUNDRED}\b(?! \w*th\b))?"
    rf"|(?:(?:a|{_ONE}|{_TEEN})[ -])thousand)"
)
#: Any number in words, the longest first; "a hundred and one times" is one too.
WORD_NUMBER: Final = rf"(?:{_HUNDREDS}|{_BELOW_HUNDRED}|zero)"
#: From here on a number word is hardly ever a mere word; "one of us" and "two" stay.
_SURE: Final = rf"(?:{_HUNDREDS}|(?:{_TEN})(?:[ -](?:{_ONE})\b)?|{'|'.join(_TEENS[1:])})"
#: What makes a small number word a measure; "two of us" stays words.
_MEASURE: Final = (
    rf"(?:stops?|stoppers?|clicks?|sec|secs|seconds?|min|mins|minutes?|{LENGTH}|megapixels?"
    rf"|under|over"
    r"|high|tall|wide|across|and a half|point)"
)
#: "minus one" is a number, "plus one of my friends" is not.
_SIGNED_END: Final = r"(?=$|[,;.!]| stops?| on\b| ev\b)"
_WORD: Final = WORD_NUMBER
#: "Five ten high" may be feet and inches: not the ten alone.
_NO_WORD_BEFORE: Final = "".join(rf"(?<!\b{one} )" for one in _ONES)
_COUNT: Final = re.compile(
    rf"{_NO_WORD_BEFORE}\b(?:{_WORD})\b(?=[ -]{_MEASURE}\b|[ -](?:\d/\d|halfpart|thirdpart))"
    rf"|\b(?:{_ONE}|{_TEEN})\b(?= (?:or|to) (?:{_ONE}|{_TEEN}|\d+) {_MEASURE}\b)"
    rf"|(?:(?<=\bf )|(?<=\bf number )|(?<=\bf stop )|(?<=\biso )|(?<=\baperture )"
    r"|(?<=\baperture is )|(?<=\biso is )|(?<=\bf stop is )|(?<=\bf number is )"
    r"|(?<=\baperture of )|(?<=\baperture at )"
    rf"|(?<=\bdiaphragm )|(?<=\bpoint ))(?:{_WORD})\b"
    rf"|(?:(?<=\bfoot )|(?<=\bfeet ))(?:{_ONE}|ten|eleven)\b(?! (?:people|of))"
    r"|(?:(?<=\bon )|(?<=\bat )|(?<=\bmeter )|(?<=\bneedle )|(?<=\bmeter says )|(?<=\bmeter is )"
    rf"|(?<=\bmeter reads )|(?<=\bmeter shows )|(?<=\bmeter's ))zero\b|\bzero(?= on the (?:meter"
    rf"|scale|needle))|^(?:{_WORD})$"
    rf"|(?:(?<=\bminus )|(?<=\bplus ))(?:{_WORD})\b{_SIGNED_END}"
    rf"|(?<=\bby )(?:{_WORD})(?=\W*$)"
    rf"|^(?:{_WORD})(?=,? 1/\d)|\b{_SURE}\b(?!-)"
    #: "The veil hangs at nine", "first rock at two".
    r"|(?:(?<=hangs at )|(?<=sits at )|(?<=lies at )|(?<=rock at )|(?<=stone at )|(?<=log at )"
    rf"|(?<=boulder at )|(?<=fall at )|(?<=falls at ))(?:{_WORD})(?=\s*(?:$|[,.;!?]|and\b|but\b))"
)
#: Marks of exposure times that are said as "one over eight" (ISO 516 series, from memory).
_OVER_MARKS: Final = (
    "2|3|4|5|6|8|10|13|15|20|25|30|40|50|60|80|100|125|160|200|250|320|400|500|640|800|1000"
)
_ONE_OVER: Final = re.compile(
    rf"\b(?:one|1|a) (?:over|by|upon|slash|stroke) ({_WORD}|\d+)\b"
    r"(?! (?:stops?|ev|people|the|exposed|met\w+|m|ft|feet|one)\b)"
)
#: Denominators as ordinals: "one sixtieth", "a two hundred and fiftieth".
ORDINALS: Final = {
    "fifth": 5, "sixth": 6, "eighth": 8, "tenth": 10, "thirteenth": 13,
    "fifteenth": 15, "twentieth": 20, "thirtieth": 30, "fortieth": 40, "fiftieth": 50,
    "sixtieth": 60, "eightieth": 80, "hundredth": 100,
    "hundred and twenty-fifth": 125, "hundred and twenty fifth": 125, "hundred twenty fifth": 125,
    "two hundredth": 200, "two hundred and fiftieth": 250, "two hundred fiftieth": 250,
    "five hundredth": 500, "thousandth": 1000,
}  # fmt: skip
_SAID_ORDINAL: Final = rf"({'|'.join(sorted(ORDINALS, key=len, reverse=True))})"
#: Not the end of a longer one.
_WHOLE: Final = r"(?<!one )(?<!two )(?<!five )(?<!hundred )(?<!and )(?<!\d )"
#: Where an ordinal is a fraction of a second.
_ORDINAL_TIMES: Final = (
    re.compile(
        rf"\b(?:an?|one|1)[ -](?:1 )?{_SAID_ORDINAL}\b"
        r"(?! (?:time|day|year|birthday|frame|of (?!an? s)|person|one|visit|fall|step|tier|drop"
        r"|shot|try|attempt|lens|stop|walk|as|more|less|mile))"
    ),
    re.compile(
        rf"{_WHOLE}(?<!the )\b{_SAID_ORDINAL}(?= (?:at|on) f ?/?(?:\d|{_ONE}|{_TEEN})"
        r"|,? f ?/?\d|,? iso \d)"
    ),
    re.compile(rf"{_WHOLE}\b{_SAID_ORDINAL} of a(?= sec)"),
    re.compile(rf"^(?:about |at )?(?:an? )?{_SAID_ORDINAL}(?=\W*$)"),
)
#: "ISO one twenty five", "at two fifty": hundreds as they are said.
_SAID_HUNDREDS: Final = re.compile(
    rf"(?:(?<=\biso )|(?<=1/))({_ONE}|[1-9])[ -](hundred(?! and)|(?:{_TEN})(?:[ -](?:{_ONE})\b)?)\b"
)
#: "One meter twenty" is 1.20 m.
_METRE_REST: Final = re.compile(
    r"\b(\d ?|a )(?:m|met(?:er|re)s?) ([1-9]\d)\b"
    r"(?=\s*(?:$|[,;!?]|\.(?!\d)|(?:and|or|from|away|off|tall|high|wide|deep|above|to|in front)\b))"
)
#: "Twenty four to one oh five": the long end of a zoom.
_ONE_OH_FIVE: Final = re.compile(r"(?<=\bto )one (?:oh|o|zero) five\b")
#: "Zoomed in to one thirty five": the hundred is not said.
_ZOOMED_ONE: Final = re.compile(
    r"(\b(?:zoom\w*|racked)(?: (?:in|out|all|the|way|lens))* (?:to|at) )one "
    rf"((?:{_TEN})(?:[ -](?:{_ONE}))?)\b(?! (?:met\w+|m|feet|ft))"
)
#: "Sixteen thirty five at twenty", "twenty-four seventy lens": the two ends of a zoom.
_DICTATED_ZOOM: Final = re.compile(
    r"(?<![\w./,-])([1-9]\d) ([1-9]\d{1,2})(?= (?:at \d|mm|millimet|kit|lens|zoom))"
    r"|(?:(?<=\ba )|(?<=\bmy )|(?<=\bthe ))([1-9]\d) ([1-9]\d{1,2})"
    r"(?=\s*(?:$|[,;.!]|and\b|with\b|on\b|f ?/?\d))"
)


def _value(words: str) -> int:
    """The value of a number in words."""
    total = 0
    for word in re.split(r"[ -]", words):
        if word in {"hundred", "thousand"}:
            total = max(total, 1) * (100 if word == "hundred" else 1000)
        elif word not in {"a", "and"}:
            total += SIMPLE[word]
    return total


def in_figures(said: str) -> str:
    """A number in digits, whether it was said in words or not.

    Args:
        said: a number of `WORD_NUMBER`, or digits.
    """
    return said if said[:1].isdigit() else str(_value(said))


def _count(match: re.Match[str]) -> str:
    return str(_value(match.group()))


def _said_hundreds(match: re.Match[str]) -> str:
    hundreds, rest = match.groups()
    first = int(hundreds) if hundreds.isdigit() else _value(hundreds)
    return str(100 * first + (0 if rest == "hundred" else _value(rest)))


def _over(match: re.Match[str]) -> str:
    below = match.group(1)
    number = below if below.isdigit() else str(_value(below))
    return f"1/{number}" if number in _OVER_MARKS.split("|") else match.group()


#: "F five six", "f two eight": f-numbers with a decimal, said without the point.
_F_DECIMALS: Final = (
    "1.2",
    "1.4",
    "1.8",
    "2.2",
    "2.5",
    "2.8",
    "3.2",
    "3.5",
    "4.5",
    "5.6",
    "6.3",
    "7.1",
)
_F_SAID: Final = re.compile(rf"\bf ({_ONE}) ({_ONE})\b(?! (?:stops?|sec|met|feet))")
#: "Two point eight", before wordings look for digits.
_DECIMAL_SAID: Final = re.compile(rf"\b({_ONE}|{_TEEN}|zero) point ({_ONE}|zero)\b")
#: "ND thousand", "nd sixty-four": filters named by their factor.
_ND_SAID: Final = re.compile(
    r"\bnd[ -](?:(?:a|one) )?(thousand|eight|sixteen|thirty[ -]two|sixty[ -]four)\b(?! stops?)"
)
_TENTHS: Final = re.compile(
    r"\b(two|three|four|five|six|seven|eight|nine"
    r"|[2-9]) tenths? of a(?= sec)"
)
_HUNDREDTHS: Final = re.compile(
    rf"\b({_BELOW_HUNDRED}|[1-9]\d?) (?:hundredths|100ths) of a(?= sec)"
)


def _f_said(match: re.Match[str]) -> str:
    number = f"{SIMPLE[match.group(1)]}.{SIMPLE[match.group(2)]}"
    return f"f {number}" if number in _F_DECIMALS else match.group()


def _decimal(match: re.Match[str]) -> str:
    return f"{SIMPLE[match.group(1)]}.{SIMPLE[match.group(2)]}"


def _nd_said(match: re.Match[str]) -> str:
    return f"nd{1000 if match.group(1) == 'thousand' else _value(match.group(1))}"


def _tenths(match: re.Match[str]) -> str:
    return f"0.{SIMPLE.get(match.group(1), match.group(1))}"


def _hundredths(match: re.Match[str]) -> str:
    said = match.group(1)
    return f"0.{int(said) if said.isdigit() else _value(said):02d}"


def dictated_times(text: str) -> str:
    """`One over eight` and `a sixtieth` as fractions.

    Args:
        text: a message in lower case.
    """
    text = _ONE_OH_FIVE.sub("105", text)
    text = _ZOOMED_ONE.sub(lambda match: f"{match[1]}{100 + _value(match[2])}", text)
    text = _HUNDREDTHS.sub(_hundredths, text)
    text = _DECIMAL_SAID.sub(_decimal, _ND_SAID.sub(_nd_said, text))
    text = _TENTHS.sub(_tenths, _F_SAID.sub(_f_said, text))
    text = _SAID_HUNDREDS.sub(_said_hundreds, text)
    text = _ONE_OVER.sub(_over, text)
    for pattern in _ORDINAL_TIMES:
        text = pattern.sub(lambda match: f"1/{ORDINALS[match.group(1)]}", text)
    return text


#: "Six and ten", "no idea, about seven": numbers are the message, or its last clause.
_HEDGES: Final = (
    r"(?:(?:about|around|maybe|perhaps|probably|roughly|like|so|just|only|say|i guess|i'd say"
    r"|i think|it's|it must be|at|is|are)[ ,]+)*"
)
_ONLY_NUMBERS: Final = re.compile(
    rf"(?:^|(?<=[,.?!] )){_HEDGES}(?:{_WORD})(?:(?:,| and|, and| &) (?:{_WORD}))*"
    r"(?: (?:or so|i guess|i think|about))*\W*$"
)
_ANY_NUMBER: Final = re.compile(rf"\b(?:{_WORD})\b")


def in_digits(text: str) -> str:
    """The message with its numbers in digits where they are meant as numbers.

    Args:
        text: a message in lower case, its fractions already in digits.
    """
    text = _ONLY_NUMBERS.sub(lambda clause: _ANY_NUMBER.sub(_count, clause.group()), text)
    text = _METRE_REST.sub(_metres, _COUNT.sub(_count, text))
    return _DICTATED_ZOOM.sub(_zoom, text)


def _metres(match: re.Match[str]) -> str:
    return f"{match.group(1).strip().replace('a', '1')}.{match.group(2)} m"


def _zoom(match: re.Match[str]) -> str:
    short, long = (int(end) for end in match.groups() if end is not None)
    return f"{short}-{long}" if long > short else match.group()
