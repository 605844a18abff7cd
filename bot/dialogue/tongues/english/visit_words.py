"""English words for a visit: the day, the place, who goes, the car."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import FEW_WORDS, NAME, NOTHING

_KINSMAN: Final = r"(?:my|our) (?:(?:old|young|little|two|three) )?[\w'’-]+"

WORDS: Final[Mapping[str, str]] = {
    "visit_words.monday": r"monday",
    "visit_words.tuesday": r"tuesday",
    "visit_words.wednesday": r"wednesday",
    "visit_words.thursday": r"thursday",
    "visit_words.friday": r"friday",
    "visit_words.saturday": r"saturday",
    "visit_words.sunday": r"sunday",
    "visit_words.tomorrow": r"tomorrow",
    "visit_words.after_tomorrow": r"(?:the )?day after tomorrow",
    "visit_words.coming": r"this|next|coming|on the",
    "visit_words.week": r"weekend|week|month",
    # What is said of a visit to come, and not only of a day.
    "visit_words.visit": (
        r"(?:we|i|i'm|i'll|we'll|we're|i'd|we'd)(?: \w+){0,2} (?:go|visit|visiting|drive|driving"
        r"|hike|hiking|walk|walking|head|heading|be at|leave|start|set off|plan|planning|shoot"
        r"|return)|(?:going|taking|heading|driving|off) (?:to|with|on|there|up|out|my|our|the)"
        r"|plan(?:ning|s)?|prepare|forecast|trip|(?:i|we)(?:'d| would)? (?:want|like|love|hope"
        r"|wish) to (?:\w+ )?(?:photograph|shoot|capture|take|get|see|go|visit|try)|(?:setting"
        r"|card|pack|bring|need)\w*\b.* for tomorrow"
    ),
    # A wish for such a day, whatever it is for; who does it already does not wish it.
    "visit_words.wished": (
        r"want(?:s|ed)?|wanna|will|'ll|would|going to|plan(?:s|ning)?|can|could|may|should|we climb"
    ),
    "visit_words.doing": r"standing|shooting|sitting|climbing|wading|from (?:the|here)",
    "visit_words.past": r"yesterday|last (?:\w+day|week|time)|came back|were|was there",
    # What stands before the name of a place to go to, in it, and behind it.
    "visit_words.to_place": (
        r"(?:go|going|goes|off|taking|take|head|heading|trip|drive|driving|hike|hiking|walk|walking"
        r"|visit|visiting|plan|planning|see|shoot|photograph|day)(?: (?!with\b)[\w()]+){0,6}?"
        r" (?:out |up |over |back )?(?:(?:to|for|at) )?(?:the )?(?<![.!?] )"
    ),
    "visit_words.plan_of_place": r"(?:plan|planning|trip)\b[^.;!?:]{0,30}[:,-] ?(?:the )?",
    "visit_words.in_a_name": r"of|the",
    "visit_words.kind_of_place": r"(?:water)?falls?|gorge|creek|beck|burn|force|spout|canyon",
    "visit_words.no_place": r"I|I'm|I'd|We|And|The|Like|Linn|Falls?|Waterfalls?|Iso|ISO|ND",
    "visit_words.no_place_of_time": (
        r"tomorrow|january|february|march|april|may|june|july|august|september|october|november"
        r"|december"
    ),
    # Who goes.
    "visit_words.party": (
        rf"(?:me|I|myself) (?:and|&|\+) {_KINSMAN}(?:(?:,| and| &) {_KINSMAN})*"
        rf"|{_KINSMAN}(?:(?:,| and| &) {_KINSMAN})* (?:and|&|\+) (?:me|I)\b"
        rf"|with (?:my|our) {FEW_WORDS}?"
        r"(?= ?(?:[,.;!?]|$|and (?:he|she|they)|who|to\b|along|at\b|on\b))"
        r"|(?:two|three|four|five|\d) (?:\w+ )?(?:friends|mates|others|kids|children|students)"
        r" (?:and|&) (?:I|me)\b"
        rf"|(?:taking|bringing) {_KINSMAN}"
        rf"|(?:my|our) [\w'’-]+(?: {NAME})?(?= (?:comes|is coming|will come|joins|walks) )"
        rf"|with {NAME}(?:(?:,| and| &) {NAME})*"
    ),
    # Who stays at home, or is written to.
    "visit_words.waits": r"at home|stays?|write|text|leave (?:it|a note|word)",
    # Things that somebody carries.
    "visit_words.no_party": (
        r"camera|lens|tripod|phone|kit|gear|filter|polariser|settings|24|zoom|boots|car"
    ),
    "visit_words.car": (
        r"car|van|estate|saloon|hatchback|suv|minibus|camper(?: ?van)?|truck|pick-?up|motorhome"
        r"|jeep|bike|motorbike"
    ),
    "visit_words.mine": r"my|our|the|a",
    # "The car is parked at …".
    "visit_words.is": r"'s| is| will be| was| gets",
    "visit_words.stands": r"stands|standing|parked|parks|left|waits",
    "visit_words.at": r"at|in|on|by|near|beside|behind",
    "visit_words.hour": r"half|quarter|noon",
    # Told behind the car.
    "visit_words.colour": NOTHING,
    "visit_words.lot": r"parking|car ?park|trail ?head",
    "visit_words.we_park": (
        r"(?:we|i)(?:'ll|'re|'d| will| are)? (?:\w+ )?(?:park|leave)\b"
        r"(?: (?:the|our|my) <visit_words.car>)?"
    ),
    # A clause with a verb of its own, and a measure: they tell nothing of the car.
    "visit_words.clause": r"we|i|it|and|start|when|what|how|sunset",
    "visit_words.measure": r"km|m|mm|min|h|miles?|ft|pm|am",
    # Kit and clothes in a car say nothing of where it stands.
    "visit_words.in_car": (
        r"in (?:the |my |our )?(?:car|van|auto|boot|trunk)"
        r"|(?:walk|way|back|minutes?|min)\b.*\bto (?:the )?car"
    ),
    # Words that say nothing of how a car looks.
    "visit_words.any_car": r"(?:(?:my|our|the) )?(?:car)",
}
