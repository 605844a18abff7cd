"""English words: what people tell while an emergency is held, and what makes it no move."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "moves.water": r"water|creek|stream|river|fall|falls|it",
    "moves.louder": r"louder",
    "moves.roar": r"new roar|roars?|roaring",
    "moves.who": r"he|she|they|her|his|my|buddy",
    "moves.went_or_said": (
        r"went|gone|goes|walked|wanted|said|says|seen|saw|think|maybe|probably|perhaps"
    ),
    "moves.place": (
        r"car|cars|van|bus|hut|toilet|toilets|loo|parking|car park|trailhead|shelter|path|bridge"
        r"|viewpoint|hotel"
    ),
    "moves.found": (
        r"there is|theres|there are|i see|we see|i can see|found|up here|above|leads|goes"
    ),
    "moves.way": r"track|road|lane|path|trail|bridge|footbridge|farm track",
    "moves.going": (
        r"(?:going|heading|walking|climbing|moving|running|on (?:my|our|the) way)\b.*"
        r"\b(?:up|out|away|higher|back|shelter|car|cars|hut|slope|path|trail|road|safe)"
        r"|leaving|we left|packed up|on our way|off we go"
    ),
    # What turns a move round: nobody goes, or the way leads through the water.
    "moves.turned_round": (
        r"not|cant|cannot|wont|dont|no|never|if|should|can|shall|across|cross|wade|through"
        r"|other side|ford|stuck|trapped"
    ),
    # What one leaves behind, before its name.
    "moves.out_of": r"out of|away from|off|above|clear of",
    "moves.the": r"the|this|that|here",
    # Where nobody goes in a flood or a storm, and what tells of somebody hurt.
    "moves.to_danger": (
        r"water|creek|streams?|river|falls?|gorge|canyon|bed|bank|pool|rocks?|ridge|crest|summit"
        r"|tree|cliff|wall|lip|edge|swim\w*|fell|fallen|limp\w*|hurt|injured"
    ),
    # What nobody goes back for, and who is not with them.
    "moves.for_gear": (
        r"tripod|camera|lens|bags?|backpack|gear|filters?|batter\w*|frames?|shots?|pictures?"
        r"|one last|running out|(?:he|she|they|who) (?:went|goes|is|stay\w*)"
    ),
    # A way that goes down leads to the water.
    "moves.down": r"down|along",
    "moves.not": r"not|no|isnt",
}
