"""English words around those which work anywhere; all folded."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What may stand around the name of a language where it is asked for.
    "command_words.around_a_name": """
        language lang speak talk write answer reply use set switch change go on in to
        the please pls can could you we i want would like prefer only my is now linn hi
        hello hey and""",
    # Who has lost the thread asks for the next step: a word that asks, one of time or of doing,
    # and nothing else than small words.
    "command_words.asking": "what whats how hows where",
    "command_words.next": "now next then first",
    "command_words.doing": "do start begin continue proceed",
    "command_words.and": "and",
    "command_words.by_the_way": """
        ok okay so well hm hmm done right linn please again here exactly""",
    "command_words.small": """
        i we should must shall can am would will supposed meant have need to go on is
        comes the step dont know no idea just""",
    # Who does not understand what is asked: a word for that, or one that asks with what is asked
    # of.
    "command_words.unclear": "mean means meaning understand huh",
    "command_words.of_a_question": """
        blink blinking blinks warning highlights highlight format sensor edge edges
        corner corners anchor texture nearest tall see find know
        dots patches""",
    "command_words.about_it": """
        i you do does dont did not is are it that this the a an by with of if there me
        one my what how where which can should in on""",
    # Who wants to see what was taken in: a word for that and one that asks.
    "command_words.taken_in": """
        understood understand got noted heard told tell know have remember kept""",
    "command_words.teller": "you i",
    "command_words.so_far": """
        what whats did do have has you i we so far until now already then all of it show
        tell up to by has how much""",
    # What may stand around a word of keeping: praise, assent, small words.
    "command_words.around_keeping": """
        good great nice fine perfect lovely super cool ok okay yes yeah yep wow happy
        love like it this that one a frame shot i ill im we well lets with""",
}
