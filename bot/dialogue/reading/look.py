"""The look of the water that is wished, and which way it runs in the picture."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Flow, Symptom
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.light_words import WINDS_WAY
from bot.dialogue.reading.others_wish import without_wish
from bot.dialogue.reading.phrases import any_of, exactly

#: Smooth water, soft water and a veil are a look where they are wished.
_WISH: Final = (
    r"(?:want|wanted|like|love|get|make|made|making|wish|after|go(?:ing)? for|prefer|hop(?:e|ing)"
    r" for|need)"
)
#: The looks by their words; values of core.water.Look.
_LOOKS: Final = (
    (
        "frozen",
        any_of(
            "freeze",
            r"freezing (?:the |every )(?:water|drops?|motion)",
            r"(?<!nearly )(?<!almost )frozen",
            r"stop the (?:drops|water|motion)",
            r"(?:droplets|drops|splashes) (?:sharp|visible|in the air)",
        ),
    ),
    (
        "crisp",
        any_of(
            r"(?<!come out )(?<!came out )(?<!comes out )(?<!tack )crisp(?! (?:packet|air|morning"
            r"|day))",
            r"short (?:trails|streaks)",
            r"(?:nearly|almost) frozen",
        ),
    ),
    (
        "textured",
        any_of(
            r"(?<!has )(?<!have )(?<!had )(?<!shows )(?<!got )(?<!as a )(?<!as )(?<!of )textured?",
            r"(?:lots|loads|plenty|(?:want|like|with|for) an? (?:bit|touch|hint)|more) of"
            r" textured?",
            r"strands|(?:each|every|a) strand",
            r"(?:separate|single|fine|white|water|some|(?<!can )see|want|with|like|more)(?: the"
            r"| some| those| its| any)? threads",
            "structure",
            r"(?<!keeps its )(?<!holds its )(?<!keep their )(?<!hold their )streaks(?! of light)",
            "stringy",
        ),
    ),
    (
        "silky",
        any_of(
            r"silk(?:y|en|ier)?",
            "satin",
            r"velvet\w*",
            rf"{_WISH}\b[^.;!?]{{0,30}}?(?<!too )(?<!so )(?<!not )(?<!less )(?<!dead )"
            r"\bsmooth(?:er)?"
            r"(?! (?:out|rocks?|stones?|slabs?|boulders?|walls?|ledges?))",
            rf"{_WISH} (?:the |this |that |my )?(?:water|falls?|it|stream|waterfall)"
            r" (?:look |to look |be |to be |all |go |nice and |really |super )*(?:soft|flowy|creamy"
            r"|blurry)(?!er| (?:rock|spot|edge))(?![^.;!?]{0,12}\b(?:mist|milk|dream|fog))",
            rf"{_WISH}\b[^.;!?]{{0,40}}?\b(?:like|as|into|of) an? (?:\w+ )?veil",
            rf"{_WISH}\b[^.;!?]{{0,20}}?\b(?:soft|flowing),? (?:\w+ )?(?:water|look)",
            r"(?:soft|smooth),? (?:and )?milky (?:water|look|style|effect)",
        ),
    ),
    (
        "misty",
        any_of(
            r"misty|ethereal|milky(?! (?:\w+ )?(?:blobs?|circles?|haze|veil|film|sky|sun|light"
            r"|spots?|dis[ck]s?))|ghost(?:ly)?",
            r"foggy (?:water|look|fall|feel|effect)|(?:look|water|fall|it) (?:\w+ )?foggy",
            r"dream(?:y|like)",
            "like fog",
            "cotton candy",
        ),
    ),
)
_DENIED: Final = re.compile(
    r"\b(?:no|not|isn't|without|avoid|stop|prevent|against|don't|too|never|less|little|lost|lacks"
    r"|bored of|tired of|sick of|hate|hated|enough of|enough)"
    r"(?: (?:the|a|want|like|so|too|it|that|look|be|only|just|all))* ?$"
)
#: Frozen fingers are no look.
_COLD: Final = re.compile(
    r"\bfrozen (?:peas|pizza|food|yogh?urt|(?:water)?falls?|curtain|pool|tarn|lake|pond|ground"
    r"|path|over|river|puddles?|fingers?|toes|hands|solid"
    r" lake|fish|waterfalls?)\b"
    r"|\b(?:ponds?|pool|tarn|screen|display|app|laptop|lake|puddles?|ground|path|river|car"
    r"|windscreen)(?:'s)? (?:is |are |all |half )*(?:frozen|freezing)\b"
    r"|\b(?:degrees?|cold|air|morning|day|weather|autumn|frost\w*)\b[^.;]{0,20}\bcrisp\b"
    r"|\bcrisp (?:and (?:cold|clear|sunny|dry|fresh|bright|frosty|chilly|still|blue)|air|morning"
    r"|day)\b"
    r"|\b(?:rocks?|stones?|ferns?|edges?|back(?:ground)?|front|foreground|trees|leaves|moss|everything|cliffs?|fall"
    r"(?: itself)?|waterfall|boulders?)(?:'s| is| are| was| were| looks?| come| comes| came| out"
    r"| all| quite| really"
    r"| very| nice and)+ crisp\b"
    r"|\b(?:fingers?|hands?|toes?|feet|nose|thumbs?|ears|face|i'm|im|i am|we're|battery|ponds?"
    r"|lake)"
    r"(?: (?:are|is|all|so|half|nearly|almost|totally|absolutely))* (?:frozen|freezing)\b"
)
#: "Is crisp bad?": a look whose worth is asked is not wished.
_ONLY_ASKED: Final = re.compile(
    r"\b(?:is|are|was|isn't|what's wrong with|what is wrong with|why is it|why)(?: it| that| this)?"
    r" (?:\w+ )?(?:crisp|frozen|textured|silky|misty|milky)"
    r"(?: (?:water|bad|wrong|worse|ok|okay|a problem|not good|good|better|a fault))*\?"
)
#: Two looks with one of these between them are no wish yet.
_UNDECIDED: Final = any_of("between|or")
_MIST_IN_AIR: Final = any_of(
    "gr[ea]y|all over|outside|spray|sun|cloud|valley|air|lens|weather|morning|day|glass"
    "|drizzl\\w*|rain\\w*"
)
#: With one of these the words name what is wrong, not what is wished.
_COMPLAINTS: Final = frozenset(
    {Symptom.NO_TEXTURE, Symptom.TOO_FROZEN, Symptom.JUST_WHITE}
    | {Symptom.SOFT_SPOTS, Symptom.SOFT_ALL, Symptom.SOFT_NEAR, Symptom.SOFT_FAR}
)


#: "Frozen solid but i wanted silk": a wish beside the complaint.
_WISHED: Final = re.compile(
    r"\b(?:wanted|want|i'd like|id like|would like|was after|i'm after|im after|hoped for"
    r"|hoping for"
    r"|prefer|aim(?:ing|ed) for|supposed to be|should be|meant to be|going for)"
    r"(?: (?:it|a|the|that|some|more|to|be|look|water|nice|really|something|have))*"
    r" (?P<wish>\w+(?: \w+)?)"
)


def _read_wish_beside(draft: Draft) -> None:
    """The look that is asked for in words, where the frame is complained of."""
    wished = _WISHED.search(draft.text)
    looks = [look for look, pattern in _LOOKS if wished and pattern.search(wished["wish"])]
    if len(looks) == 1:
        draft.note("look", looks[0])


def read_look(draft: Draft) -> None:
    """The look that is wished; what the person complains of is a symptom, not a wish."""
    if _COMPLAINTS & set(draft.values.get("symptoms", ())):
        _read_wish_beside(draft)
        return
    text = _ONLY_ASKED.sub("", _COLD.sub("", without_wish(draft.text)))
    found = [
        look
        for look, pattern in _LOOKS
        if (match := pattern.search(text)) and not _DENIED.search(text[: match.start()])
    ]
    if (len(found) > 1 and _UNDECIDED.search(draft.text)) or _BETWEEN.search(draft.text):
        return
    if found and not (found == ["misty"] and _MIST_IN_AIR.search(draft.text)):
        draft.note("look", found[0])


#: "Silky but with some lines in it": between two looks.
_BETWEEN: Final = any_of(
    r"(?:silk\w*|smooth|soft)\b[^.;]{0,12}\bbut\b(?: \w+){0,3} (?:lines?|strands?|texture|threads?)"
)
_TOWARDS: Final = any_of(
    r"(?:towards?|at|to|for|away from) (?:me|us|my (?:tripod|camera|lens|feet)|the camera|the lens"
    r"|camera|you|where i)"
)
_MOVES: Final = any_of(
    r"flow\w*|runs?|running|comes?|coming|rush\w*|straight|pours?|pouring|head\w*|moves?|moving|tumbl\w*|spill\w*|dropping|cascad\w*|rac(?:es|ing)|shoots?"
)
_TOWARDS_ALONE: Final = re.compile(r"^towards?\b")
_ACROSS: Final = any_of(
    r"(?<!fall_width_m )(?<!\dm )(?<!\d m )(?<!ft )(?<!metres )(?<!meters )(?<!feet )(?<!yards"
    r" )across"
    r"(?! (?:from|the (?:pool|path|valley)))",
    r"(?<!fall_width_m )(?<!fall_width_m from )(?:left(?: side)? to (?:the )?right"
    r"|right(?: side)? to (?:the )?left|side to side|sideways)",
    r"\b(?:l|left) ?(?:to|-?>|2) ?(?:r|right)\b(?! (?:hand|eye))|\br ?(?:to|-?>) ?l\b",
    r"from the (?:left|right)|cross(?:es|ing) the (?:frame|picture|image)",
)
#: "The histogram stops far from the right".
_GRAPH: Final = re.compile(r"\bhist\w*\b[^,;.]*|\bgraph\b[^,;.]*")
#: "Light swept across the hill", "the path goes across": no water.
_OTHER_MOVES: Final = re.compile(
    r"\b(?:zebras?|blink\w*|flash\w*|stripes|light|wind|spray|clouds?|birds?|path|trail|bridge|log|branch|tree|rope|shadows?|sun|mist|fog"
    r"|breeze|people|cars?|dog|i|we|he|she|they|jump\w*|walk\w*|wade\w*|step\w*|climb\w*|cross(?:ed|ing)?"
    r"|look\w*|came|come|run across|stumbl\w*)\b(?: (?!water|stream|river|fall|flow)\w+){0,3}"
    r" (?:across|sideways|from the (?:left|right))\b"
)
_DOWN: Final = any_of(
    r"(?<!looking )(?<!look )(?<!looks )(?<!pointed )(?<!pointing )(?<!shooting"
    r" )(?<!aimed )(?<!tilted )"
    r"straight down|(?:runs?|flows?|falls?|comes?|drops?|pours?|goes)\b[^;.]{0,24}\btop to bottom",
    r"(?:runs?|flows?|comes?|pours?|goes) down the (?:frame|picture|photo|image)",
    "downwards?",
    r"(?:flows?|runs?|drops?|comes|pours?|falls|falling|plunges) (?:straight )?down",
    r"vertical(?:ly)? (?:drop|down)",
)
_DOWN_ALONE: Final = exactly("down")
#: The flow against the frame's own sides: which way that is, portrait or landscape says.
_LONG_SIDE: Final = any_of(r"along the (?:frame's )?(?:long|longer) (?:side|edge)", "lengthwise")
_SHORT_SIDE: Final = any_of(r"along the (?:frame's )?(?:short|shorter) (?:side|edge)")


#: What runs across: of anything else the words tell no flow.
_RUNS: Final = any_of(
    r"(?:water|stream|creek|brook|beck|river|cascade|rapids?|current|flow\w*|falls?|chute|it|it's)",
    r"(?:runs?|running|goes|going|moves?|moving|cross\w*|slid\w*|pour\w*|cuts?|sweeps?)",
)
_SHORT_WORDS: Final = 5


def _is_across(draft: Draft) -> bool:
    """Whether the words say that the water runs across, and not something else."""
    text = _OTHER_MOVES.sub("", _GRAPH.sub("", draft.skeleton()))
    short = "flow" in draft.expecting or len(text.split()) <= _SHORT_WORDS
    return _ACROSS.search(text) is not None and (short or _RUNS.search(text) is not None)


def read_flow(draft: Draft) -> None:
    """Which way the water runs in the picture."""
    text = WINDS_WAY.sub("", draft.text)
    if (_TOWARDS.search(text) and _MOVES.search(text)) or _TOWARDS_ALONE.match(text):
        draft.note("flow", Flow.TOWARDS)
    elif _is_across(draft):
        draft.note("flow", Flow.ACROSS)
    elif _LONG_SIDE.search(text) or _SHORT_SIDE.search(text):
        upright = bool(draft.values.get("portrait"))
        down = upright is bool(_LONG_SIDE.search(text))
        draft.note("flow", Flow.DOWN if down else Flow.ACROSS)
    elif _DOWN.search(text) or _DOWN_ALONE.match(text):
        draft.note("flow", Flow.DOWN)
