"""Every sum that `why` shows comes out right by hand, from the numbers as they are printed."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from typing import Final

import pytest

from tests.dialogue.player import Player

#: A number as it is printed; digits are never grouped.
_NUMBER: Final = r"\d+(?:[.,]\d+)?"
#: A printed time with its exact seconds: the seconds count.
_EXACTLY: Final = re.compile(rf"(?:\d+/\d+|{_NUMBER}) s \(({_NUMBER})\)")
_UNIT: Final = re.compile(r"(?<=[\d)]) ?(?:m/s|ft/s|mm|m|ft|s)(?![\w/])")
_WORD: Final = re.compile(r"(?<!\w)(?!(?:sin|sen|tan|atan|log2|f)(?!\w))[^\W\d_]+(?!\w)|f/")
#: Remarks and sources: brackets with words in them.
_REMARK: Final = re.compile(r" ?\((?=[^()]*[^\W\d_]{3})[^()]*\)")
#: What stands on the left of an equals sign as a sum, and on its right as a number.
_SUM: Final = re.compile(rf"([^=;:]*?) = ([-+−]?{_NUMBER}) ?(%|°)?")
_BEGINS: Final = re.compile(r"(?:√|log2|atan|tan|\d).*")
_NAMED: Final = {"√": "sqrt", "×": "*", "÷": "/", "−": "-", ",": "."}
#: Three digits that count are printed: sums of them are right to about this share.
_CLOSE: Final = 0.012


def _by_hand(text: str) -> float:
    """A printed sum, done again from its printed numbers."""
    text = re.sub(r"\b(sin|sen|tan) (\d+)°", r"sin(radians(\2))", text)
    text = re.sub(rf"tan\(({_NUMBER})°\)", r"tan_deg(\1)", text)
    text = re.sub(r"(?<!\w)atan\(", "atan_deg(", text)
    for sign, code in _NAMED.items():
        text = text.replace(sign, code)
    names = {
        "sqrt": math.sqrt,
        "log2": math.log2,
        "sin": math.sin,
        "radians": math.radians,
        "tan_deg": lambda value: math.tan(math.radians(value)),
        "atan_deg": lambda value: math.degrees(math.atan(value)),
    }
    return float(eval(text.strip(" /"), {"__builtins__": {}}, names))  # noqa: S307  # our own texts


def _sums(line: str) -> Iterator[tuple[str, float, float]]:
    """The sums of a line: as printed, done by hand, and what the line says."""
    plain = _REMARK.sub("", _EXACTLY.sub(r"\1 s", line))
    plain = _WORD.sub("", _UNIT.sub("", plain))
    before = ""
    for left, right, unit in _SUM.findall(re.sub(r", (?=\D)|\. ", " ; ", plain)):
        # "= 29.6 mm; × 0.9 = 26.6": what goes on is done with the number before.
        goes_on = left.strip().startswith(("×", "÷"))
        start = _BEGINS.search(f"{before} {left}" if goes_on else left)
        before = right
        if start is not None and re.search(r"[×÷−√]|log|tan", start[0]):
            said = float(right.replace(",", ".").replace("−", "-"))
            yield left, _by_hand(start[0]) * (100 if unit == "%" else 1), said


def _whys(talk: str, why: str) -> Iterator[str]:
    """The lines of `why`, all pages, behind each message of a talk."""
    player = Player()
    for message in talk.splitlines():
        player.say(message)
        for _ in range(4):
            for said in player.say(why):
                yield from said.body.split("\n")


TALKS: Final = {
    "metres": (
        (
            "12 m tall, 18 m away, rock at 1.5 m, full frame 24-105, tripod, polariser\n1\n1\n"
            "under trees\nwhich focal length do I need\nis f/8 enough for the rock?\n"
            "how much light does the polariser take\ndo I need an nd\nwhere do I focus\n"
            "what if f/16\n"
            "what if the sun comes out\ntrunks lean inwards\nam I too far away\nwhat f-number\n"
            "where do I stand so that 35 mm holds a 20 m fall\nthe fall looks tiny"
        ),
        "why",
    ),
    "feet": (
        (
            "40 ft tall, 60 ft away, rocks at 5 ft. aps-c, 16-50\n1\n1\novercast\nwhat if 35 mm\n"
            "does the polariser matter?\nis f/8, 1/15 s right here?"
        ),
        "why",
    ),
    "a stream towards": (
        (
            "stream, 3 m away, rock at 0.7 m, leaf 3 m in 2 s, it flows towards me, "
            "full frame 16-35\n"
            "1\n1\n1"
        ),
        "why",
    ),
    "a section": (
        "20 m fall, 30 m away, rock at 8 m, full frame 70-200, a 4 m section\n1\n1\n1\nskip\n1",
        "why",
    ),
    "near": ("12 m tall, 18 m away, rock at 0.7 m, full frame 28 mm, tripod\n1\n1\n1", "why"),
    "German": (
        (
            "12 m hoch, 18 m weg, Stein bei 1,5 m, Vollformat 24-105, Stativ, Polfilter\n1\n1\n"
            "bedeckt\nwohin stelle ich scharf\nwelches Objektiv nehme ich\n"
            "wie viel Licht schluckt der Polfilter"
        ),
        "warum",
    ),
    "Spanish": (
        (
            "cascada de 12 m, a 18 m, roca a 1,5 m, full frame 24-105, trípode, polarizador\n1\n1\n"
            "nublado\n¿dónde enfoco?\n¿qué objetivo llevo?\n¿cuánta luz quita el polarizador?"
        ),
        "por qué",
    ),
}


@pytest.mark.parametrize("name", TALKS)
def test_sums_by_hand(name: str) -> None:
    """Each sum of each page of `why` comes out as the page says."""
    found = 0
    for line in _whys(*TALKS[name]):
        for left, by_hand, said in _sums(line):
            found += 1
            assert math.isclose(by_hand, said, rel_tol=_CLOSE, abs_tol=0.06), (line, left, by_hand)
    assert found >= 5
