"""German number words: `achtundzwanzig`, `fuffzehn`, `zwoeinhalb`, `sechzigstel`, `achter`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.foreign.numerals import (
    LENGTH,
    NO_UNIT,
    SMALL,
    SURE_TIME,
    TENS_OF_CM,
    VALUE,
    Rules,
    rules,
    shown,
    value_of,
)

_WORD: Final = re.compile(r"[^\W\d_]+")
_UMLAUTS: Final = str.maketrans({"ä": "a", "ö": "o", "ü": "u"})
_ONES: Final = {
    "null": 0, "ein": 1, "eins": 1, "zwei": 2, "zwo": 2, "zwoa": 2, "drei": 3, "vier": 4,
    "funf": 5, "sechs": 6, "sieben": 7, "acht": 8, "neun": 9,
}  # fmt: skip
_TEENS: Final = {
    "zehn": 10, "elf": 11, "zwolf": 12, "dreizehn": 13, "vierzehn": 14, "funfzehn": 15,
    "fuffzehn": 15, "fuchzehn": 15, "sechzehn": 16, "siebzehn": 17, "achtzehn": 18,
    "neunzehn": 19,
}  # fmt: skip
_TENS: Final = {
    "zwanzig": 20, "dreissig": 30, "vierzig": 40, "funfzig": 50, "fuffzig": 50, "fuchzig": 50,
    "sechzig": 60, "siebzig": 70, "achtzig": 80, "neunzig": 90,
}  # fmt: skip
_ONE: Final = "|".join(sorted(_ONES, key=len, reverse=True))
_NUMBER: Final = re.compile(
    rf"(?:(?P<thousands>{_ONE})?(?P<thousand>tausend)(?:und)?)?"
    rf"(?:(?P<hundreds>{'|'.join(_TEENS)}|{_ONE})?(?P<hundred>hundert)(?:und)?)?"
    rf"(?:(?P<one>{_ONE})(?:und|a)(?P<ten>{'|'.join(_TENS)})"
    rf"|(?P<simple>{'|'.join([*_TEENS, *_TENS, _ONE])}))?"
)
#: As the Swiss write them.
_SWISS: Final = {
    "zwöi": "zwei", "drü": "drei", "füf": "funf", "sächs": "sechs", "sibe": "sieben", "nün": "neun",
    "füfzäh": "funfzehn", "zwänzg": "zwanzig", "drissg": "dreissig", "drissig": "dreissig",
    "füfzg": "funfzig", "sächzg": "sechzig", "sibezg": "siebzig", "achzg": "achtzig",
    "achzig": "achtzig", "nünzg": "neunzig",
}  # fmt: skip
#: Articles, and words that hold a number word by chance.
_NO_NUMBERS: Final = frozenset({"", "ein", "und"})
#: "Viertl" as the south says it.
_PART: Final = re.compile(r"(?P<number>\w+)te?l(?P<unit>sekund(?:en?)?)?")
#: What a number is written together with.
_COMPOUND: Final = re.compile(
    r"(?P<number>\w+?)(?:er)?-?(?P<thing>stopper|(?:blenden|stufen)-?filter|meter(?=fall|wasserfall)\w+"
    r"|sekunden|millimeter)"
)
_NAMED_PARTS: Final = {"drit": 3, "ach": 8, "sieb": 7, "vier": 4}
_LEAST_PART: Final = 2
_AND_PARTS: Final = {"einhalb": ".5", "einviertel": ".25", "dreiviertel": ".75"}
#: Of the point: "zweikommaacht".
_SIDES: Final = 2
#: From here on "achter", "fuffziger" names an f-number, a lens or a filter.
_LEAST_NAMED: Final = 8
#: A third alone is one of stops; of a picture or a second it is not.
_UNIT_BEHIND: Final = re.compile(r" ?(?:blende|stufe|ev\b|lw\b|s\b|sek|meter|m\b)")
_OF_SOMETHING: Final = re.compile(r" (?:wasser|himmel|bild|des|vom|von|der|davon)\b")
_UNIT: Final = rf"(?:{LENGTH}|mm|s|sek|sekunden?|blenden?|stufen?)"
_A: Final = r"(?:eine?[rnm]?|'?ne[rnm]?|an?|e)"
#: What a half behind is none of: "f 13 halbe Sekunde".
_NO_SETTING: Final = r"(?<!f )(?<!f/)(?<!iso )(?<!blende )"
#: What stands below a fraction bar is no whole before a part: "1/4 und 1/2 s".
_NO_PART: Final = r"(?<![\d./])"
_AND_A: Final = r"(?:und )?(?:ein(?:e|en)? )?"
_FEW: Final = "|".join(SMALL[1:])
#: "Iso 200 1/10" are two settings, and so many tenths are no time that is said so.
_TENTHS: Final = re.compile(rf"(?<!iso )\b(?!\d{{3}})({VALUE}) 1/10(?: s)?(?: ?sek(?:unden?)?)?\b")
#: What several words make one number of, in this order; "ein Meter zwanzig".
JOINTS: Final[Rules] = rules(
    (rf"\b{_A}[ -](1/\d+)", r"\1"),
    (r"\b(?:anderthalb|einundeinhalb)(?:e[rn]?)?\b", "1.5"),
    (
        rf"{_NO_SETTING}{_NO_PART}\b({VALUE}) {_AND_A}(?:halb(?:e[rnsm]?)?|1/2)(?= {_UNIT}\b)",
        r"\1.5",
    ),
    (rf"{_NO_PART}\b({VALUE}) und (?:eine? )?(1/[34]|[23]/[34])\b", r"\1 \2"),
    (rf"\b(?:{_A} )?drittel-?(?=(?:blenden)?stufe\b|blende\b)", "1/3 "),
    (r"\bzweidrittel", "2/3 "),
    (rf"\b(?:{_A} )?halb-?(?=(?:blenden)?stufe\b|blende\b)", "1/2 "),
    (r"\b(?:two|2) ?-?(?:1/3|drittel\w*)(?: s\b)?", "2/3"),
    (r"\b(?:three|3) ?-?(?:1/4|viertel\w*)", "3/4"),
    (r"\bdreiviertel(?= ?s)", "3/4 "),
    (
        rf"\b(?:{_A} )?halben? (?=(?:blenden)?stufen?\b|blenden?\b|ev\b|lw\b)",
        "1/2 ",
    ),
    (r"\b1 ?/ ?(\d+) ?-?(?:s?tel|er)(?: ?sek(?:unden?)?)?\b", r"1/\1 s"),
    (r"(?<![\d/])\b(\d{2,4})(?:stel|tel)(?: ?sek(?:unden?)?)?\b", r"1/\1 s"),
    (r"(\d/\d+)(?: s)?[ -]?(?:sek(?:und(?:en?)?)?)\b", r"\1 s"),
    (rf"\b(?:{_A} ?)?halbe[nrs]?[ -]?(?:sekunde|sek)\b", "1/2 s"),
    (rf"\b(?:{_A} )?halbe[rnm]? (?:meter|m)\b", "0.5 m"),
    (rf"\b{_A} (?=(?:{LENGTH}|sekunde|sek)\b)", "1 "),
    (rf"\b({VALUE}) (?:meter|m) {TENS_OF_CM}{NO_UNIT}", r"\1.\2 m"),
    (rf"\b({VALUE}) (?:meter|m) ten\b{NO_UNIT}", r"\1.1 m"),
    (rf"\b(auf|bei|in) (one|two|three) {TENS_OF_CM}{NO_UNIT}(?=$|[,.;!])", r"\1 \2.\3 m"),
    (rf"^((?:so |ca\.? |etwa |um die )*)([1-9]|{_FEW}) {TENS_OF_CM}$", r"\1\2.\3"),
    #: "Bei einsfuffzig".
    *(
        (rf"\b(auf|bei|in|etwa|nur) {one}{ten}\b", rf"\g<1> {metres}.{tenths}0 m")
        for metres, one in enumerate(("eins", "zwei", "drei"), start=1)
        for tenths, ten in enumerate(
            (
                *("zwanzi(?:g|ch)", "drei(?:ss|ß)ig", "vierzig", "(?:f[üu]n?f|fuff)zig"),
                *("sechzig", "siebzig", "achtzig", "neunzig"),
            ),
            start=2,
        )
    ),
)


def german_number(word: str) -> int | None:
    """The value of one German word, None when it is no number: `achtundzwanzig`, `fuffzehn`.

    Args:
        word: in lower case, with umlauts, their two letters, or none.
    """
    plain = _SWISS.get(word, word).translate(_UMLAUTS)
    plain = plain.replace("fuenf", "funf").replace("zwoelf", "zwolf")
    plain = re.sub(r"z(?:ich|g)\b", "zig", plain).replace("dreissg", "dreissig")
    match = None if plain in _NO_NUMBERS else _NUMBER.fullmatch(plain)
    if match is None:
        return None
    total = 1000 * _ONES[match["thousands"] or "ein"] if match["thousand"] else 0
    simple = _TEENS | _TENS | _ONES
    total += 100 * simple[match["hundreds"] or "ein"] if match["hundred"] else 0
    if match["one"]:
        return total + _ONES[match["one"]] + _TENS[match["ten"]]
    return total + (simple[match["simple"]] if match["simple"] else 0)


def german_words(text: str) -> str:
    """The message with each of its German number words turned.

    Args:
        text: in lower case.
    """
    return _TENTHS.sub(_tenths, _WORD.sub(_turned, text))


def _tenths(match: re.Match[str]) -> str:
    """`fünf zehntel sekunden` as 0.5 s."""
    return f"{value_of(match[1]) / 10:g} s"


def _turned(match: re.Match[str]) -> str:
    word = match.group()
    if word == "drittel":
        return _third(match.string[match.end() :])
    value = german_number(word)
    if value is not None:
        return shown(value)
    return _part(word) or _with_part(word) or _with_point(word) or _compound(word) or word


def _third(after: str) -> str:
    """What a third is, by the words behind."""
    if _OF_SOMETHING.match(after):
        return "drittel"
    return "1/3" if _UNIT_BEHIND.match(after) else "1/3 stufe"


def _part(word: str) -> str | None:
    """`sechzigstel`, `viertelsekunde` as a fraction; a viertel alone has no unit."""
    match = _PART.fullmatch(word)
    if match is None:
        return None
    said = match["number"]
    number = _NAMED_PARTS.get(said) or german_number(said) or german_number(said.removesuffix("s"))
    if number is None or number < _LEAST_PART:
        return None
    return f"1/{number} s" if match["unit"] or number >= SURE_TIME else f"1/{number}"


def _with_part(word: str) -> str | None:
    """`zweieinhalb` as 2.5; `einhalb` alone is a half."""
    for ending, decimal in _AND_PARTS.items():
        if word.endswith(ending) and word != ending:
            before = word.removesuffix(ending)
            whole = 1 if before == "ein" else german_number(before)
            return None if whole is None else f"{whole}{decimal}"
    return "1/2" if word == "einhalb" else None


def _with_point(word: str) -> str | None:
    """`zweikommaacht` as 2.8."""
    numbers = [german_number(part) for part in word.split("komma")]
    if len(numbers) != _SIDES or None in numbers:
        return None
    return ".".join(map(str, numbers))


def _compound(word: str) -> str | None:
    """`sechserstopper`, `zwölfmeterfall` as two words; `achter` with its number in digits."""
    match = _COMPOUND.fullmatch(word)
    number = match and german_number(match["number"])
    return f"{shown(number)} {match['thing']}" if match and number else _named(word)


def _named(word: str) -> str | None:
    """`achter`, `fuffziger` with their number in digits."""
    number = german_number(word.removesuffix("er")) if word.endswith("er") else None
    return f"{number}er" if number is not None and number >= _LEAST_NAMED else None
