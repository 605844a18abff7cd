"""English words of who teaches: a group of mixed cameras, formats, one other person."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.english.people import KIN, STRANGER

_NUMBERS: Final = r"(?:line|settings?|numbers?|values?)"

_THINGS: Final = """
    it that this mine camera body lens kit bag gear sensor zoom phone tripod filter
    polariser water fall falls frame one which what who there here now settings light canon
    nikon sony fuji fujifilm panasonic olympus pentax leica sigma tamron everything nothing
    something and ok yes no neither none both nobody
    everybody correction update edit note setup iso time
    format shutter aperture focus height distance rock stream place only just
"""

WORDS: Final[Mapping[str, str]] = {
    "group.count": r"\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|twelve|some|several|many",
    "group.people": (
        r"students?|pupils?|participants?|people|persons|beginners|guests|learners|members|others"
        r"|group|class|workshop|course|everybody|everyone"
    ),
    "group.cameras": r"cameras?|formats?|sensors?|kit|gear|bodies",
    "group.mixed": r"mixed|different|various|other|all kinds of|all sorts of",
    "group.we": r"<group.count> of us|we(?: are|'re) <group.count>",
    "group.asked": (
        rf"(?:one|a|which|what|same|give me|need|have) (?:\w+ ){{0,3}}{_NUMBERS}\b.*\bfor (?:all"
        rf"|us all|all of (?:us|them)|(?:the |my )?(?:whole )?<group.people>)"
        r"|(?:one|a|give me a) line (?:that )?(?:i can|to) (?:read|call|say|shout|give)"
        rf"|(?:what|which) (?:\w+ )?(?:do|should|shall|can|must) i (?:tell|give|say to|set for) "
        rf"(?:all )?(?:the |my |our |these )?(?:<group.count> )?(?:\w+ )?<group.people>"
    ),
    "group.phone": r"(?:smart|i)?phones?|mobiles?",
    "group.full_frame": r"full ?frames?",
    "group.and": r"and",
    # What is asked for other formats: "and on APS-C?".
    "group.for_it": (
        r"(?:translate|convert|what about|how about|what (?:does|is|would|do) (?:that|this|it"
        r"|those)(?: mean| be)?|and|same|settings?|numbers?|line|equivalent) (?:\w+ ){0,2}?(?:for"
        r"|on|with|to|at|in)|^(?:and |ok |so )*(?:for|on|with|at)"
    ),
    "group.mine": r"i|i'm|i've|my|mine|me",
    "group.own": r"i (?:have|own|use|shoot|bring|brought)",
    "group.of_us": r"of us",
    "group.counted": r"frames?|aps-?c|m43|mft|phones?",
    # Somebody, what they do with a camera, and which number they have.
    "group.who": (
        rf"<group.numbered> ?\d{{1,2}}|(?:another )?one of (?:mine|them|the others)"
        rf"|(?:the|one|a|another|my|our) (?:of my (?:\w+ )?)?(?:\w+ )?(?:{KIN}|{STRANGER}"
        rf"|participant"
        r"|beginner)s?(?: \d{1,2})?|he|she"
    ),
    "group.has": r"'s got|has|shoots|uses|owns|brought|is on|is with|is using|works with|has got",
    "group.numbered": r"student|participant|person|pupil|number|nr",
    "group.only": r"only|just",
    "group.then": r"and|ok|so|then|but",
    # What has a camera, or is one, and is nobody.
    "group.things": _THINGS,
    "group.phone_person": (
        r"(?:the|our|one|a|my) (?:mobile |smart)?phone (?:<group.numbered>|user|person|one|girl"
        r"|boy|lady|guy|people|folks|lot)s?"
    ),
}
