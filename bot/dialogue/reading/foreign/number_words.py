"""German and Spanish number words as digits or English words, with their fractions and decimals."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

#: Up to ten numbers stay words, which the reader takes for measures beside a unit alone.
SMALL: Final = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
)
#: A number as it stands after the number words were turned.
VALUE: Final = rf"(?:\d+(?:\.\d+)?|{'|'.join(SMALL)})"
_WORD: Final = re.compile(r"[^\W\d_]+")

_GERMAN_UMLAUTS: Final = str.maketrans({"ä": "a", "ö": "o", "ü": "u"})
_GERMAN_ONES: Final = {
    "null": 0, "ein": 1, "eins": 1, "zwei": 2, "zwo": 2, "zwoa": 2, "drei": 3, "vier": 4, "funf": 5,
    "sechs": 6, "sieben": 7, "acht": 8, "neun": 9,
}  # fmt: skip
_GERMAN_TEENS: Final = {
    "zehn": 10, "elf": 11, "zwolf": 12, "dreizehn": 13, "vierzehn": 14, "funfzehn": 15,
    "fuffzehn": 15, "fuchzehn": 15, "sechzehn": 16, "siebzehn": 17, "achtzehn": 18, "neunzehn": 19,
}  # fmt: skip
_GERMAN_TENS: Final = {
    "zwanzig": 20, "dreissig": 30, "vierzig": 40, "funfzig": 50, "fuffzig": 50, "fuchzig": 50, "sechzig": 60,
    "siebzig": 70, "achtzig": 80, "neunzig": 90,
}  # fmt: skip
_ONE_OF: Final = "|".join(sorted(_GERMAN_ONES, key=len, reverse=True))
_GERMAN: Final = re.compile(
    rf"(?:(?P<thousands>{_ONE_OF})?(?P<thousand>tausend)(?:und)?)?"
    rf"(?:(?P<hundreds>{_ONE_OF})?(?P<hundred>hundert)(?:und)?)?"
    rf"(?:(?P<one>{_ONE_OF})und(?P<ten>{'|'.join(_GERMAN_TENS)})"
    rf"|(?P<simple>{'|'.join([*_GERMAN_TEENS, *_GERMAN_TENS, _ONE_OF])}))?"
)
#: Articles, and words that hold a number word by chance.
_NO_GERMAN_NUMBERS: Final = frozenset({"", "ein", "und"})
_GERMAN_PART: Final = re.compile(r"(?P<number>\w+?)(?:s?tel)(?P<unit>sekunden?)?")
_GERMAN_NAMED_PARTS: Final = {"drit": 3, "drittel": 3, "ach": 8, "sieb": 7, "vier": 4}
_AND_PARTS: Final = {"einhalb": ".5", "einviertel": ".25", "dreiviertel": ".75"}

_SPANISH: Final = {
    "cero": 0, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7,
    "ocho": 8, "nueve": 9, "diez": 10, "once": 11, "doce": 12, "trece": 13, "catorce": 14,
    "quince": 15, "dieciseis": 16, "diecisiete": 17, "dieciocho": 18, "diecinueve": 19,
    "veinte": 20, "veintiuno": 21, "veintiun": 21, "veintidos": 22, "veintitres": 23,
    "veinticuatro": 24, "veinticinco": 25, "veintiseis": 26, "veintisiete": 27, "veintiocho": 28,
    "veintinueve": 29, "treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60,
    "setenta": 70, "ochenta": 80, "noventa": 90, "cien": 100, "ciento": 100, "doscientos": 200,
    "doscientas": 200, "trescientos": 300, "cuatrocientos": 400, "quinientos": 500,
    "seiscientos": 600, "setecientos": 700, "ochocientos": 800, "novecientos": 900, "mil": 1000,
}  # fmt: skip
_SPANISH_ONES: Final = "uno|un|dos|tres|cuatro|cinco|seis|siete|ocho|nueve"
_SPANISH_TENS: Final = "treinta|cuarenta|cincuenta|sesenta|setenta|ochenta|noventa"
_SPANISH_HUNDREDS: Final = "|".join(word for word, value in _SPANISH.items() if value in
                                    range(100, 1000))  # fmt: skip
_BELOW_HUNDRED: Final = (
    rf"(?:(?:{_SPANISH_TENS})(?: y (?:{_SPANISH_ONES})(?! (?:medio|media)))?"
    rf"|{'|'.join(sorted((word for word, value in _SPANISH.items() if value < 30), key=len, reverse=True))})"
)  # fmt: skip
_SPANISH_NUMBER: Final = re.compile(
    rf"\b(?:(?:{_SPANISH_HUNDREDS})(?: {_BELOW_HUNDRED})?|{_BELOW_HUNDRED}|mil)\b"
)
_SPANISH_PARTS: Final = {
    "tercio": 3, "cuarto": 4, "quinto": 5, "sexto": 6, "octavo": 8, "decimo": 10, "decima": 10,
    "treceavo": 13, "quinceavo": 15, "veinteavo": 20, "veinticincoavo": 25, "treintavo": 30,
    "treintaavo": 30, "cuarentavo": 40, "cincuentavo": 50, "sesentavo": 60, "sesentaavo": 60,
    "ochentavo": 80, "centesimo": 100, "centesima": 100, "centavo": 100,
    "cientoveinticincoavo": 125, "ciento veinticincoavo": 125, "doscientosavo": 200,
    "doscientos cincuentavo": 250, "quinientosavo": 500, "milesima": 1000,
}  # fmt: skip
_NAMED_PART: Final = "|".join(sorted(_SPANISH_PARTS, key=len, reverse=True))
_SPANISH_PART: Final = re.compile(
    rf"\b(?:(?P<one>una?|1)|(?P<several>{'|'.join(SMALL[2:])}|[2-9])) (?P<part>{_NAMED_PART})s?\b"
    r"(?P<unit> de segundos?)?(?! (?:piso|lugar|dia|vez|intento|foto|oscuro|de hora))"
)
_SPANISH_AVO: Final = re.compile(r"\b1 ?/ ?(\d+)(?:avo|ava)s?\b|\bun (\d+)(?:avo|ava)\b")
#: "A quarter" without a unit may be of many things; from a fifth on it is a time.
_SURE_TIME: Final = 5
#: From here on "achter", "fuffziger" names an f-number, a lens or a filter.
_LEAST_NAMED: Final = 8
_THIRD: Final = 3


def _shown(value: int) -> str:
    return SMALL[value] if value < len(SMALL) else str(value)


def value_of(said: str) -> float:
    """The value of a number as `VALUE` finds it."""
    return float(SMALL.index(said)) if said in SMALL else float(said)


def _digits(said: str) -> str:
    return str(SMALL.index(said)) if said in SMALL else said


def german_number(word: str) -> int | None:
    """The value of one German word, None when it is no number: `achtundzwanzig`, `fuffzehn`.

    Args:
        word: in lower case, with umlauts, their two letters, or none.
    """
    plain = word.translate(_GERMAN_UMLAUTS).replace("fuenf", "funf").replace("zwoelf", "zwolf")
    plain = re.sub(r"z(?:ich|g)\b", "zig", plain).replace("dreissg", "dreissig")
    match = None if plain in _NO_GERMAN_NUMBERS else _GERMAN.fullmatch(plain)
    if match is None:
        return None
    total = 1000 * _GERMAN_ONES[match["thousands"] or "ein"] if match["thousand"] else 0
    total += 100 * _GERMAN_ONES[match["hundreds"] or "ein"] if match["hundred"] else 0
    simple = _GERMAN_TEENS | _GERMAN_TENS | _GERMAN_ONES
    if match["one"]:
        return total + _GERMAN_ONES[match["one"]] + _GERMAN_TENS[match["ten"]]
    return total + (simple[match["simple"]] if match["simple"] else 0)


def _german_part(word: str) -> str | None:
    """`sechzigstel`, `viertelsekunde` as a fraction; a drittel or viertel alone has no unit."""
    match = _GERMAN_PART.fullmatch(word)
    if match is None:
        return None
    named = _GERMAN_NAMED_PARTS.get(match["number"])
    number = named or german_number(match["number"])
    if number is None or number < len("ab"):
        return None
    unit = " s" if match["unit"] or number >= _SURE_TIME else ""
    return f"1/{number}{unit}"


#: A third alone is one of stops; of a picture or a second it is not.
_OF_STOPS: Final = re.compile(r" ?(?:blende|stufe|ev\b|lw\b|s\b|sek|meter|m\b)")
_OF_SOMETHING: Final = re.compile(r" (?:wasser|himmel|bild|des|vom|von|der|davon|de)\b")


def _third(after: str) -> str:
    """What "drittel" and "tercio" are, by the words behind."""
    if _OF_SOMETHING.match(after):
        return "drittel"
    return "1/3" if _OF_STOPS.match(after) else "1/3 stufe"


def _german_word(match: re.Match[str]) -> str:
    word = match.group()
    for ending, decimal in _AND_PARTS.items():
        whole = german_number(word.removesuffix(ending)) if word.endswith(ending) else None
        if word == ending and ending == "einhalb":
            return "1/2"
        if whole is not None or word == f"ein{ending}":
            return f"{whole or 1}{decimal}"
    if word == "drittel":
        return _third(match.string[match.end() :])
    ordinal = german_number(word.removesuffix("er")) if word.endswith("er") else None
    if ordinal is not None and ordinal >= _LEAST_NAMED:
        return f"{ordinal}er"
    value = german_number(word)
    return (_german_part(word) or word) if value is None else _shown(value)


def _spanish_words(match: re.Match[str]) -> str:
    words = match.group().split()
    return _shown(sum(_SPANISH.get(word, 1 if word == "un" else 0) for word in words))


def _spanish_part(match: re.Match[str]) -> str:
    below = _SPANISH_PARTS[match["part"]]
    unit = " s" if match["unit"] or below >= _SURE_TIME else ""
    if below == _THIRD and not unit and not match.string.startswith(" de ", match.end()):
        unit = " stop"
    if match["one"]:
        return f"1/{below}{unit}"
    above = _digits(match["several"])
    return f"{int(above) / below:g}{unit}" if below == len(SMALL) - 1 else f"{above}/{below}{unit}"


_Rules = tuple[tuple[re.Pattern[str], str], ...]
_UNIT: Final = r"(?:m|meter|metern|cm|zentimeter|km|kilometer|mm|s|sek|sekunden?|blenden?|stufen?)"
_NO_UNIT: Final = r"(?! ?(?:m|cm|mm|km|s|sek\w*|seg\w*|metros?|iso|grad|%|hm|blenden?|pasos?)\b)"
_DECIMAL: Final = (
    re.compile(r"(?<![\d.,/])(\d{1,3}),(\d{1,2})(?![\d/]|,\d|[^\W\d_]|\w* ?mm\b)"
               r"|(?<![\d.,/])(\d{1,3}),(\d{1,2})(?= ?(?:m|cm|km|s|sek)\b|m\b|s\b)"),
    r"\1\3.\2\4",
)  # fmt: skip
_TENS_OF_CM: Final = r"([1-9]\d)(?![\d.,/:])"
#: What several words make one number of, in this order; "fünf komma sechs", "ein meter zwanzig".
_GERMAN_JOINTS: Final[_Rules] = tuple(
    (re.compile(pattern), replacement)
    for pattern, replacement in (
        (r"\b(?:eine?[rnm]?|'?ne[rnm]?|nem)[ -](1/\d+)", r"\1"),
        (r"\b(?:anderthalb|einundeinhalb)(?:e[rn]?)?\b", "1.5"),
        (rf"\b({VALUE}) (?:und )?(?:ein(?:e|en)? )?(?:halb(?:e[rnsm]?)?|1/2)(?= {_UNIT}\b)", r"\1.5"),
        (rf"\b({VALUE}) und (?:eine? )?(1/[34]|[23]/[34])\b", r"\1 \2"),
        (r"\b(?:two|2) ?-?(?:1/3|drittel\w*)(?: s\b)?", "2/3"),
        (r"\b(?:three|3) ?-?(?:1/4|viertel\w*)", "3/4"),
        (r"\b(?:two|2) 1/10 s\b", "0.2 s"),
        (r"\b(?:three|3) 1/10 s\b", "0.3 s"),
        (r"\b(?:four|4) 1/10 s\b", "0.4 s"),
        (r"\b(?:six|6) 1/10 s\b", "0.6 s"),
        (r"\b(?:eight|8) 1/10 s\b", "0.8 s"),
        (r"\bdreiviertel(?= ?s)", "3/4 "),
        (r"\b(?:eine?[rn]? |ne )?halben? (?=(?:blenden)?stufen?\b|blenden?\b|ev\b|lw\b)", "1/2 "),
        (r"\b1 ?/ ?(\d+) ?-?(?:s?tel|er)(?: ?sek(?:unden?)?)?\b", r"1/\1 s"),
        (r"(?<![\d/])\b(\d{2,4})(?:stel|tel)(?: ?sek(?:unden?)?)?\b", r"1/\1 s"),
        (r"(\d/\d+)(?: s)?[ -]?(?:sek(?:unden?)?)\b", r"\1 s"),
        (r"\b(?:eine?[rnm]?|'?ne[rnm]?)? ?halbe[nrs]?[ -]?(?:sekunde|sek)\b", "1/2 s"),
        (r"\b(?:eine?[rnm]?|'?nen?) ?halben? (?:meter|m)\b", "0.5 m"),
        (r"\b(?:eine?n?|'?nen?) (?=(?:meter|m|zentimeter|cm|sekunde|sek|kilometer|km)\b)", "1 "),
        (rf"\b(1|one|{VALUE}) (?:meter|m) {_TENS_OF_CM}{_NO_UNIT}", r"\1.\2 m"),
        (rf"^((?:so |ca\.? |etwa |um die )*)([1-9]|{'|'.join(SMALL[1:])}) {_TENS_OF_CM}$", r"\1\2.\3"),
    )
)  # fmt: skip
_SPANISH_JOINTS: Final[_Rules] = tuple(
    (re.compile(pattern), replacement)
    for pattern, replacement in (
        (r"\b(?:un )?(segundo|metro|paso|punto|stop|diafragma) y medi[oa]\b", r"1.5 \1s"),
        (rf"\b({VALUE}) (segundos|metros|pasos|puntos|stops|diafragmas) y medi[oa]\b", r"\1.5 \2"),
        (rf"\b({VALUE}) (?:pasos?|puntos?|stops?|diafragmas?) y ([12]/3)\b", r"\1 \2 pasos"),
        (r"\bun (?:paso|punto|stop|diafragma) y ([12]/3)\b", r"1 \1 pasos"),
        (rf"\b({VALUE}) y ([12]/3)\b", r"\1 \2"),
        (r"\b(?:un )?medio segundo\b|\bmedia? de segundo\b", "1/2 s"),
        (r"\btercio (?=de (?:paso|punto|stop|diafragma))", "1/3 "),
        (r"\bun (?=(?:paso|diafragma|stop)\b|punto (?:de|mas|menos|por|arriba|abajo|oscur|clar))", "1 "),
        (r"(?<=\d/\d) de (?=(?:paso|punto|stop|diafragma))", " "),
        (r"\b(?:un )?medio metro\b", "0.5 m"),
        (r"\b(?:un )?medi[oa] (?=(?:pasos?|puntos?|stops?|diafragmas?)\b)", "1/2 "),
        (r"\b(1/\d+) de segundo\b", r"\1 s"),
        (rf"\b({VALUE}) y medi[oa](?= (?:segundos|metros|pasos|stops))", r"\1.5"),
        (r"\bun (?=(?:metro|segundo|kilometro)\b)", "1 "),
        (rf"\b(1|one|{VALUE}) (?:metros?|m) (?:con )?{_TENS_OF_CM}{_NO_UNIT}", r"\1.\2 m"),
        (rf"^((?:como |unos |a )*)([1-9]|{'|'.join(SMALL[1:])}) {_TENS_OF_CM}$", r"\1\2.\3"),
    )
)  # fmt: skip
_SAID_POINT: Final = re.compile(rf"\b({VALUE}) (?:komma|coma|punkt|punto) ({VALUE})\b(?! de )")


def _pointed(match: re.Match[str]) -> str:
    return f"{_digits(match.group(1))}.{_digits(match.group(2))}"


_LENGTH: Final = r"(?:m|cm|km|metern?|metros?|zentimetern?|centimetros?|kilometern?|kilometros?)"
#: "Acht bis zehn Meter", "entre ocho y diez metros".
_RANGE: Final = re.compile(
    rf"\b(?:(?:de|von) )?({VALUE}) (?:bis|a|o|oder) ({VALUE})(?= ?{_LENGTH}\b)"
    rf"|\b(?:entre|zwischen) ({VALUE}) (?:y|und) ({VALUE})(?= ?{_LENGTH}\b)"
)


def _ranged(match: re.Match[str]) -> str:
    low, high = (_digits(said) for said in match.groups() if said)
    return f"{low}-{high}"


_BEFORE_POINT: Final = re.compile(rf"\b({'|'.join(SMALL)})(?=\.\d| \d/\d)")
_JOINTS: Final[Mapping[str, _Rules]] = {"de": _GERMAN_JOINTS, "es": _SPANISH_JOINTS}


def in_english(text: str, language: str) -> str:
    """The message with its number words as digits, or as English words up to ten.

    Args:
        text: in lower case; Spanish without accents.
        language: "de" or "es".
    """
    text = _DECIMAL[0].sub(_DECIMAL[1], text)
    if language == "de":
        text = _WORD.sub(_german_word, text)
    else:
        text = _SPANISH_NUMBER.sub(_spanish_words, text)
        text = _SPANISH_PART.sub(_spanish_part, text)
        text = _SPANISH_AVO.sub(lambda match: f"1/{match[1] or match[2]} s", text)
    text = _RANGE.sub(_ranged, _SAID_POINT.sub(_pointed, text))
    for pattern, replacement in _JOINTS[language]:
        text = pattern.sub(replacement, text)
    return _BEFORE_POINT.sub(lambda match: _digits(match.group()), text)
