"""Spanish number words: `treinta y cinco`, `ciento veinticinco`, `un quinceavo`, `paso y medio`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.foreign.numerals import (
    NO_UNIT,
    SMALL,
    SURE_TIME,
    TENS_OF_CM,
    THIRD,
    VALUE,
    Rules,
    digits,
    rules,
    shown,
)

_VALUES: Final = {
    "cero": 0, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7,
    "ocho": 8, "nueve": 9, "diez": 10, "once": 11, "doce": 12, "trece": 13, "catorce": 14,
    "quince": 15, "dieciseis": 16, "diecisiete": 17, "dieciocho": 18, "diecinueve": 19,
    "veinte": 20, "veintiuno": 21, "veintiun": 21, "veintidos": 22, "veintitres": 23,
    "veinticuatro": 24, "veinticinco": 25, "veintiseis": 26, "veintisiete": 27, "veintiocho": 28,
    "veintinueve": 29, "treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60,
    "setenta": 70, "ochenta": 80, "noventa": 90, "cien": 100, "ciento": 100, "doscientos": 200,
    "doscientas": 200, "trescientos": 300, "cuatrocientos": 400, "quinientos": 500,
    "seiscientos": 600, "setecientos": 700, "ochocientos": 800, "novecientos": 900,
}  # fmt: skip
_ONES: Final = "un|" + "|".join(word for word, value in _VALUES.items() if 0 < value < 10)
_TENS: Final = "|".join(word for word, value in _VALUES.items() if value in range(30, 100))
_HUNDREDS: Final = "|".join(word for word, value in _VALUES.items() if value in range(100, 1000))
_SIMPLE: Final = "|".join(
    sorted((word for word, value in _VALUES.items() if value in range(30)), key=len, reverse=True)
)
_BELOW_HUNDRED: Final = rf"(?:(?:{_TENS})(?: y (?:{_ONES})\b(?! (?:medio|media)))?|(?:{_SIMPLE}))"
_BELOW_THOUSAND: Final = rf"(?:(?:{_HUNDREDS})(?: {_BELOW_HUNDRED}\b)?|{_BELOW_HUNDRED})"
_NUMBER: Final = re.compile(
    rf"\b(?:(?P<thousands>(?:{_BELOW_THOUSAND} )?mil\b)(?: (?P<rest>{_BELOW_THOUSAND}))?"
    rf"|(?P<few>{_BELOW_THOUSAND}))\b"
)
_PARTS: Final = {
    "tercio": 3, "cuarto": 4, "quinto": 5, "sexto": 6, "octavo": 8, "decimo": 10, "decima": 10,
    "treceavo": 13, "quinceavo": 15, "veinteavo": 20, "veinticincoavo": 25, "treintavo": 30,
    "treintaavo": 30, "cuarentavo": 40, "cincuentavo": 50, "sesentavo": 60, "sesentaavo": 60,
    "ochentavo": 80, "centesimo": 100, "centesima": 100, "centavo": 100,
    "cientoveinticincoavo": 125, "ciento veinticincoavo": 125, "doscientosavo": 200,
    "doscientos cincuentavo": 250, "quinientosavo": 500, "milesima": 1000,
}  # fmt: skip
_TENTH: Final = 10
_PART: Final = re.compile(
    rf"\b(?:(?P<one>una?|1)|(?P<several>{'|'.join(SMALL[2:])}|[2-9]))"
    rf" (?P<part>{'|'.join(sorted(_PARTS, key=len, reverse=True))})s?\b"
    r"(?P<unit> de segundos?)?(?! (?:piso|lugar|dia|vez|intento|foto|oscuro|de hora))"
)
_PERCENT: Final = re.compile(r"\bpor ?ciento\b")
_AVO: Final = re.compile(r"\b1 ?/ ?(\d+)(?:avo|ava)s?\b|\bun (\d+) ?(?:avo|ava)s?\b")
_STOP: Final = r"(?:paso|punto|stop|diafragma)"
_MEASURE: Final = r"(?:metro|kilometro|pie|pulgada|yarda)"
_FEW: Final = "|".join(SMALL[1:])
#: What several words make one number of, in this order; "metro y medio".
JOINTS: Final[Rules] = rules(
    (rf"\b(?:una? )?(segundo|{_MEASURE}|{_STOP}) y medi[oa]\b", r"1.5 \1s"),
    (
        rf"\b({VALUE}) (segundos|{_MEASURE}s|km|m|{_STOP}s) y medi[oa]\b",
        r"\1.5 \2",
    ),
    (rf"(?<!\d )\b(?:una? )?({_MEASURE}) y (?:cuarto|1/4)\b", r"1.25 \1s"),
    (rf"\b({VALUE}) ({_MEASURE}s|km|m) y (?:cuarto|1/4)\b", r"\1.25 \2"),
    (rf"\b(menos|mas) ({VALUE}) y medi[oa]\b", r"\1 \2.5"),
    (rf"\b({VALUE}) {_STOP}s? y ([12]/3)\b(?: stop)?", r"\1 \2 pasos"),
    (rf"\bun {_STOP} y ([12]/3)\b(?: stop)?", r"1 \1 pasos"),
    (rf"\b({VALUE}) y ([12]/3)\b", r"\1 \2"),
    (r"\b(?:la )?mitad de (?:un )?segundo\b", "1/2 s"),
    (r"\b(?:la )?tercera parte de (?:un )?segundo\b", "1/3 s"),
    (r"\b(?:la )?cuarta parte de (?:un )?segundo\b", "1/4 s"),
    (r"\b(?:la )?quinta parte de (?:un )?segundo\b", "1/5 s"),
    (r"\b(?:un )?medio seg(?:undo)?\b|\bmedia? de segundo\b", "1/2 s"),
    (rf"\btercio (?=de {_STOP})", "1/3 "),
    (
        r"\bun (?=(?:paso|diafragma|stop)\b|punto (?:de|mas|menos|por|arriba|abajo|oscur\w*))",
        "1 ",
    ),
    (rf"(?<=\d/\d) de (?={_STOP})", " "),
    (r"\b(?:un )?medio metro\b", "0.5 m"),
    (rf"\b(?:un )?medi[oa] (?={_STOP}s?\b)", "1/2 "),
    (r"\b(1/\d+) de seg(?:undo)?\b", r"\1 s"),
    (rf"\b({VALUE}) y medi[oa](?= (?:segundos|metros|pasos|stops))", r"\1.5"),
    (r"\bun (?=(?:metro|segundo|kilometro)\b)", "1 "),
    (rf"\b({VALUE}) (?:metros?|m) (?:con )?{TENS_OF_CM}{NO_UNIT}", r"\1.\2 m"),
    (rf"\b({VALUE}) (?:metros?|m) (?:con )?ten\b{NO_UNIT}", r"\1.1 m"),
    (rf"(?<!\w )(?<!\d)\bmetro (?:con )?{TENS_OF_CM}{NO_UNIT}", r"1.\1 m"),
    (rf"\b(a|en|mide|medira) (one|two|three) {TENS_OF_CM}{NO_UNIT}(?=$|[,.;!])", r"\1 \2.\3 m"),
    (rf"^((?:como |unos |a )*)([1-9]|{_FEW}) {TENS_OF_CM}$", r"\1\2.\3"),
)


def spanish_words(text: str) -> str:
    """The message with its Spanish number words and parts turned.

    Args:
        text: in lower case, without accents.
    """
    text = _PART.sub(_part, _NUMBER.sub(_number, _PERCENT.sub("%", text)))
    return _AVO.sub(lambda match: f"1/{match[1] or match[2]} s", text)


def _number(match: re.Match[str]) -> str:
    if match["few"]:
        return shown(_below_thousand(match["few"]))
    thousands = _below_thousand(match["thousands"].removesuffix("mil")) or 1
    return shown(1000 * thousands + _below_thousand(match["rest"] or ""))


def _below_thousand(words: str) -> int:
    return sum(_VALUES.get(word, 1 if word == "un" else 0) for word in words.split())


def _part(match: re.Match[str]) -> str:
    below = _PARTS[match["part"]]
    unit = " s" if match["unit"] or below >= SURE_TIME else ""
    if below == THIRD and not unit and not match.string.startswith(" de ", match.end()):
        unit = " stop"
    above = 1 if match["one"] else int(digits(match["several"]))
    if below == _TENTH and above > 1:
        return f"{above / below:g}{unit}"
    return f"{above}/{below}{unit}"
