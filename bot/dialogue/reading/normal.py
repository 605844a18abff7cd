"""A typed message in one spelling: signs, fractions, number words and names of formats."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache
from typing import Final

from bot.dialogue.reading.angles import in_degrees
from bot.dialogue.reading.format_names import FORMATS, Rule
from bot.dialogue.reading.others import without_others
from bot.dialogue.reading.paces import in_metres
from bot.dialogue.reading.places_chosen import of_places
from bot.dialogue.reading.rewriting import Rewriting
from bot.dialogue.reading.slips import mend_slips
from bot.dialogue.reading.spans import parted
from bot.dialogue.reading.spoken_numbers import ORDINALS, dictated_times, in_digits
from bot.dialogue.reading.taken_back import without_taken_back
from bot.dialogue.reading.turns import plainly, plainly_numbered
from bot.dialogue.reading.unit_lists import with_units
from bot.dialogue.reading.unit_words import LENGTH

#: Longer messages are cut: nobody types facts beyond this (own rule), and reading stays quick.
LONGEST_TEXT: Final = 2000

_SIGNS: Final = str.maketrans(
    {
        **dict.fromkeys("‘’‚‛′`´ʹʼ", "'"),
        **dict.fromkeys("“”„‟″ʺ", '"'),
        **dict.fromkeys("‐‑‒–—−﹣", "-"),
        "⁄": "/",
        "∕": "/",
        "÷": "/",
        "×": "x",
        "ƒ": "f",
        "Ƒ": "f",
        "→": ">",
        "±": " ",
        "~": " ",
        "≈": " ",
    }
)
#: "12½": from five on a decimal, below it a whole and a fraction, whose thirds stay exact.
_HALVES: Final = re.compile(r"(?<![\d.,])([5-9]|\d{2,3}) ?([½¼¾])")
_DECIMALS: Final = {"½": ".5", "¼": ".25", "¾": ".75"}
_VULGAR_FRACTION: Final = re.compile(r"(?<=\d)(?=[¼-¾⅐-⅞])")

_DENOMINATORS: Final = {"half": 2, "third": 3, "quarter": 4} | {
    word: below for word, below in ORDINALS.items() if below <= 60
}
_PART: Final = "|".join(_DENOMINATORS)
#: "a third under" and "a quarter" are fractions, "a third lens" and "a third of the frame" not.
_AFTER_FRACTION: Final = (
    r"(?=[ -]*(?:of a (?:s|sec|second|stop)\b|a (?:s|sec|second|stop|mile)\b|stops?\b|secs?\b"
    r"|seconds?\b|under|over|less|more|dark|bright|light|too|down|up|mile"
    r"|(?:at |@ ?)?(?:iso\b|f ?/? ?\d)"
    r"|$|[,.;:!?)]))"
)


def _plain(pattern: str, replacement: str) -> Rule:
    return re.compile(pattern), replacement


#: Word forms of fractions and counts, before number words are turned into digits.
_FRACTIONS: Final[tuple[Rule, ...]] = (
    _plain(r"\b(?:an? |one )?third (?:of )?(?:a |1 )stop\b", "1/3 stop"),
    _plain(r"\b(?:an? |one )?half (?:of )?(?:a |1 )stop\b", "1/2 stop"),
    _plain(r"\b(?:an? |one )?quarter (?:of )?(?:a |1 )stop\b", "1/4 stop"),
    _plain(r"\b(?:a|one|1) (met(?:er|re)|foot|mile|yard|sec(?:ond)?) and a half\b", r"1.5 \1"),
    _plain(r"\b(\d{1,3}) (met(?:er|re)s|feet|miles|yards|sec(?:ond)?s) and a half\b", r"\1.5 \2"),
    _plain(r"(?<=\d) (?:full|whole|good) (?=sec|stop|met)", " "),
    _plain(r"\b(?:a|one|1) stop and (?:a|one) (half|third|quarter)\b", r"1 \1part stop"),
    _plain(r"\b(?:a|one|1) stop and (?:two|2)[ -]thirds?\b", "1 2/3 stop"),
    _plain(
        r"\b(two|three|four|[2-4]) stops and (?:a|one) (half|third|quarter)\b", r"\1 \2part stop"
    ),
    _plain(r"\b(two|three|four|[2-4]) stops and (?:two|2)[ -]thirds?\b", r"\1 2/3 stop"),
    _plain(r"(?<=\d)[ -]?ish\b", ""),
    _plain(r"^(?:(?:about|maybe|roughly|like|just) )*a (?=(?:met(?:er|re)|foot|yard)\W*$)", "1 "),
    _plain(r"(?<=[a-z])-ish\b", ""),
    _plain(r"(?<![\d./])1(?: /|/ | / )(?=\d{1,4}\b)", "1/"),
    _plain(r"(?<=\d)f(?=/?\d)", " f"),
    _plain(r"^,(?=\d{1,2} ?s(?:ecs?)?\b)", "0."),
    _plain(r"\b(\d{1,2})/(\d{1,2})/(\d{1,2})(?=[ -]?stops?\b)", r"\1, \2, \3"),
    _plain(
        r"(?<=\d) ?k(?= (?:each way|one way|round trip|there and back|walk|hike|in\b|out\b"
        r"|(?:from|to|back to) the (?:car|road|parking|falls?|waterfall|trailhead)))",
        " km",
    ),
    _plain(r"(\b(?:walk|hike|trail|path)\b[^.;]{0,40}\d) ?k\b(?! ?(?:px|mp|iso))", r"\1 km"),
    _plain(
        r"\b((?:about|depth|deep|nearly|maybe|roughly|around|almost|is|at|distance) (?:of )?)a "
        r"(?=(?:met(?:er|re)|foot|yard)\b(?! ?(?:bridge|path|step|hold|print|of|and|\d)))",
        r"\g<1>1 ",
    ),
    _plain(r"\b(\w+) (?:more|extra|additional) stops?\b(?! of)", r"\1 stops more"),
    _plain(
        r"(?<!a )(?<!an )(?<!one )(?<!\d )(?<!twenty )(?<!thirty )(?<!hundred )"
        rf"\b({_PART}) of a (?=sec)",
        r"a \1 of a ",
    ),
    _plain(r"(\d/\d) of an? (?=mile)", r"\1 "),
    #: "50/1.8" and "1.8/50" are lenses.
    _plain(r"(?<![\d/.-])([1-9]\d{1,2}) ?/ ?(1\.[248]|2\.8)(?!\d|\.\d)", r"\1 mm f/\2"),
    _plain(r"(?<![\d/.f])(1\.[248]|2\.8)/([1-9]\d{1,2})(?: ?mm)?(?!\d|\.\d)", r"\2 mm f/\1"),
    _plain(
        r"\b(iso|aperture) from (?:iso ?)?(\d+(?:\.\d)?) to (?:iso ?)?(?=\d)", r"from \1 \2 to \1 "
    ),
    _plain(
        r"\bfrom (iso|f ?/?) ?(\d+(?:\.\d)?) to (?=\d+(?:\.\d)?(?![\d/]| ?[a-z]))",
        r"from \1 \2 to \1 ",
    ),
    _plain(
        r"(?<![\w.] )\bpoint (?=(?:\d|one|two|three|four|five|six|seven|eight|nine)\b)", "0 point "
    ),
    _plain(r"\b(?:a )?couple (?:of )?(?=stops?|met|feet|sec)", "2 "),
    #: "Swapped it for the three".
    _plain(
        r"\b((?:swapped|changed|switched|traded)(?: \w+){0,5}? (?:for|to) (?:the|a|my)"
        r" (?:two|three|four|six|ten|[2-9]|10))(?=\s*(?:$|[,;.!?]|(?:now|and|instead|one)\b))",
        r"\1 stop",
    ),
    _plain(r"\band (?:a|one) half\b", "halfpart"),
    _plain(r"\band (?:a|one) third\b", "thirdpart"),
    _plain(r"\band two[ -]thirds\b", "2/3"),
    _plain(
        r"(?<![\d/.])([1-4]) and ([12]/3|1/2)(?= (?:stops?|under|over|too|more|less)\b)", r"\1 \2"
    ),
    _plain(
        r"(?:\b(?:one|a|1) )?\bhalf[ -](?:of )?(?:an? )?(?=(?:s|sec|second|stop|mile|met(?:er"
        r"|re))s?\b)",
        "1/2 ",
    ),
    #: "From half to a third of a second".
    _plain(r"\bhalf (?=to (?:an? |one |1/)(?:\d|third|quarter))", "1/2 "),
    _plain(r"\b(?:a )?quarter (?=to (?:an? |one |1/)(?:\d|third|half))", "1/4 "),
    _plain(r"\b(?:two|2)[ -]thirds?\b", "2/3"),
    _plain(r"\b(?:three|3)[ -]quarters?\b", "3/4"),
    _plain(r"\b(?:a|one) (\d{2,4})(?:th|st|nd|rd)\b", r"1/\1"),
    _plain(
        r"\b((?:pushed|bumped|cranked|raised|turned|brought|put|took|dropped|set|upped)(?: the"
        r"| my)?"
        r" iso)(?: (?:up|down|right|back|all the way))+ to (?=\d)",
        r"\1 ",
    ),
    _plain(r"\b(plus|minus) point (?=(?:\d|three|seven|five)\b)", r"\1 0 point "),
    _plain(
        r"((?:^|\b(?:at|says|reads|shows|to|is|meter|by) ))([+-]) (?=\d/\d|\d(?:\.\d)? ?(?:ev"
        r"|stops?)\b"
        r"|\d\.[37]\b)",
        r"\1\2",
    ),
    #: "Needs another stop".
    _plain(
        r"\b((?:needs?|wants?|give it|gave it|missing|could (?:do with|use)) (?:about )?)"
        r"(?:another|one more|an extra|1 more|a|one|1) (?:full |whole )?stop\b"
        r"(?! (?:less|more|darker|brighter|under|over|down|up|of|and|too|or))",
        r"\g<1>1 stop more",
    ),
    _plain(
        r"((?:\bshutter(?: speed)?(?: is| at| of| to)? )|(?<![/\d]))\b(\d{2,4})(?:th|rd|nd|st)"
        r"(?=(?: of a)? sec| at f|,? f ?/?\d|,? iso)",
        r"\g<1>1/\2",
    ),
    _plain(r"\b(shutter(?: speed)?(?: is| at| of| to)?) (\d{2,4})(?:th|rd|nd|st)\b", r"\1 1/\2"),
    _plain(r"\b((?:about|nearly|roughly|around|exactly) )a (?=sec(?:ond)?(?:$|[,.;]))", r"\g<1>1 "),
    _plain(
        r"(\bf(?:[ /]{1,2}[\w.]+|\d[\d.]*)|\biso [\w ]{2,12}),? a (?=sec(?:ond)?\W*$)", r"\1, 1 "
    ),
    _plain(r"\bv-?nd\b", "nd"),
    _plain(r"\bnd is an? (?=\d+\b(?! ?-?stop))", "nd"),
    _plain(r"\biso[ -]?wise,? (?:i'm |im |it's )?(?:at |on )?(?=\d)", "iso "),
    _plain(r"\bav (?=\d)", "f "),
    _plain(rf"\ba dozen (?={LENGTH}\b)", "12 "),
    _plain(
        r"\b((?:wide open at|stopped down to|opened up to|closed down to) )"
        r"(?=\d+(?:\.\d)?(?![\d/]| ?mm))",
        r"\1f/",
    ),
    #: "ND 8 (3 stops)" is one filter, "64x nd" an ND64.
    _plain(r"(\bnd ?\d+(?:\.\d)?) ?\( ?\d+ ?-?stops? ?\)", r"\1"),
    _plain(r"(\b\d+[ -]?stop(?: nd| filter)?) ?\( ?nd ?\d+(?:\.\d)? ?\)", r"\1"),
    _plain(r"\b(\d{1,4}) ?x (?=nd\b|gr[ea]y|filter)", r"nd\1 "),
    _plain(r"\bnd x ?(?=\d)", "nd"),
    #: "F5 6" is f/5.6.
    _plain(
        r"\b(f ?/?)(1 [248]|2 [258]|3 [25]|4 5|5 6|6 3|7 1)(?![\d./-]| ?-?(?:stops?|s|secs?|m"
        r"|mm|ft)\b)",
        r"\1\2DECIMAL",
    ),
    _plain(r"(\d) (\d)DECIMAL", r"\1.\2"),
    _plain(r"\ba (?:full|whole|good|solid|straight) (?=sec(?:ond)?s?\b)", "1 "),
    _plain(r"(?<!of )\ba (?=sec(?:ond)?(?: at f|,? f ?/?\d|,? iso ?\d| exposure| @))", "1 "),
    _plain(r"(?:\b(?:one|a|1) )?\bquarter (?=sec|stop|mile)", "1/4 "),
    _plain(r"(?<=\d)/(?=f ?/?\d)", " "),
    _plain(r"\b(f ?/?\d+(?:\.\d)?)/(?=1/)", r"\1 "),
    _plain(r"\b(?:another|one more|an extra|1 more) stop(?= of (?:light|exposure))", "1 stop more"),
    _plain(r"(\d/\d) of (?:an? |one |1 )(?=stop\b)", r"\1 "),
    #: "What is a stop?" measures nothing.
    _plain(
        r"(?<!what is )(?<!what's )(?<!whats )(?<!means )(?<!explain )(?<!does )"
        r"\ba (?:full |whole |good )?(?=stop\b)",
        "1 ",
    ),
    _plain(
        r"\ba (?=(?:met(?:er|re)|foot|yard) (?:away|off|from|in front|tall|high|to |deep|wide|above"
        r"|of water))",
        "1 ",
    ),
    #: "Background (the far wall): 35 m": the remark belongs to what stands before.
    _plain(r"\(([^()\d]{1,40})\) ?(?=:)", r"\1"),
)
_IN_FIGURES: Final = Rewriting(FORMATS + _FRACTIONS)
#: "f 8 and a fifteenth" is a time; "and a half" belongs to the number before.
_SMALL_PART: Final = (
    rf"(?=an? (?:{'|'.join(word for word, below in _DENOMINATORS.items() if below >= 8)})\b)"
)
_PARTS: Final = re.compile(
    rf"(?:(?<!and )|(?=an? \w+ of a (?:s|stop))|{_SMALL_PART})"
    rf"\b(?:an?|one|1) ({_PART})(?:th)?\b{_AFTER_FRACTION}"
)
_MIXED_PART: Final = re.compile(r"(?<=\d )(half|third|quarter)part\b")
_LONE_PART: Final = re.compile(r"\b(half|third|quarter)part\b")
#: No single filter is darker than this [stops] (common practice).
_MOST_STOPS: Final = 15
#: "nd 8 and 64", "nds: 3/6/10": the name stands once for all of the list.
_ND_LIST: Final = re.compile(
    r"\bnds?(?: ?filters?)?(?: of)? ?:? ?(?P<strengths>\d+(?:\.\d)?"
    r"(?:(?: ?[,/+&] ?| and | (?=(?:[2-46]|8|10|16|32|64|1000)(?![\d./-])))(?:nd ?)?\d+(?:\.\d)?"
    r"(?![\d-]))++)"
    r"(?! ?-?(?:stops?|mm|m|x|ft|s|st|mp)\b|[\d.]*[-/\d])"
)
#: "one and a half" without a unit; before one it stays a whole and a fraction, but of degrees,
#: where a half alone would be a time.
_AND_A_HALF: Final = re.compile(
    r"\b(\d{1,3}) (?:halfpart|1/2)(?=(?: |-)?(?:deg(?:rees?)?\b|°))"
    r"|\b(\d{1,3}) halfpart(?=\s*(?:$|[,;.!?])| (?:to|or) (?:\d|one|two|three|four)\b)"
)
_POINT: Final = re.compile(r"\b(\d{1,2}) point (\d)\b")
#: "12 m (40 ft)" is one length said twice.
_LENGTH: Final = rf"(?:{LENGTH}|mi|in|'|\")"
_SAID_TWICE: Final = re.compile(
    rf"(\d ?{_LENGTH}) ?\( ?(?:about |ca\.? |approx\.? )?[\d.,]+ ?{_LENGTH} ?\)"
)
_SHORTENED: Final = re.compile(
    r"\b(do|ca|wo|is|does|has|have|are|did|would|could|should|was|were)nt\b"
)
_SPACE: Final = re.compile(r"\s*[\r\n\v\f\x1c-\x1e\x85\u2028\u2029]\s*")


#: "20 or so metres", "30 odd feet".
_OR_SO: Final = re.compile(rf"(?<=\d) ?(?:or so|odd|plus)(?= {LENGTH}\b)")


def _nd_list(match: re.Match[str]) -> str:
    """Each strength with its name, or all as stops where most can be nothing else."""
    strengths = re.findall(r"\d+(?:\.\d)?", match["strengths"])
    factors = [text for text in strengths if "." in text or int(text) & (int(text) - 1) == 0]
    if max(float(text) for text in strengths) <= _MOST_STOPS and 2 * len(factors) < len(strengths):
        return f"{', '.join(strengths)} stop nd"
    return ", ".join(f"nd{text}" for text in strengths)


def _and_a_half(match: re.Match[str]) -> str:
    return f"{match[1] or match[2]}.5"


def _part(match: re.Match[str]) -> str:
    return f"1/{_DENOMINATORS[match.group(1)]}"


def _signs(text: str) -> str:
    halves = _HALVES.sub(lambda match: match[1] + _DECIMALS[match[2]], text[:LONGEST_TEXT])
    spaced = _VULGAR_FRACTION.sub(" ", halves)
    plain = unicodedata.normalize("NFKC", spaced.translate(_SIGNS)).translate(_SIGNS)
    return _SPACE.sub("; ", plain.strip().lower()).replace("''", '"')


#: One message is read several times while it is answered.
@lru_cache(maxsize=16)
def normalise(text: str, *, with_others: bool = False) -> str:
    """The message in lower case and one spelling.

    Typographic quotes, dashes, fraction signs and no-break spaces become plain ones; "half a
    second" becomes "1/2 second", "f eleven" "f 11"; names of sensor formats lose their digits.

    Args:
        text: any text; cut at `LONGEST_TEXT` characters.
        with_others: what others have and do stays, for who walks along.

    Returns:
        One line; clauses that stood on their own lines are parted by a semicolon.
    """
    plain = of_places(_SHORTENED.sub(r"\1n't", " ".join(_signs(text).split())))
    return _spelt(plain if with_others else without_others(plain))


#: In most messages nobody else is spoken of.
@lru_cache(maxsize=16)
def _spelt(plain: str) -> str:
    """A message in lower case, its fractions, number words and turns of speech in one spelling."""
    plain = in_degrees(mend_slips(_SAID_TWICE.sub(r"\1", plain)))
    plain = dictated_times(plainly(plain))
    plain = _PARTS.sub(_part, _ND_LIST.sub(_nd_list, _IN_FIGURES.of(plain)))
    plain = without_taken_back(_AND_A_HALF.sub(_and_a_half, with_units(in_digits(plain))))
    plain = in_metres(plainly_numbered(_OR_SO.sub("", plain)))
    plain = _LONE_PART.sub(r"and a \1", _MIXED_PART.sub(_part, plain))
    return " ".join(parted(_POINT.sub(r"\1.\2", plain)).split())
