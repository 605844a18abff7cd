"""Good news, assent, pauses and goodbyes: one fitting line, and no question that was heard."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asides import Aside, aside_of, took_off
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.topics import nearness, topic_of
from bot.dialogue.questions import Asked
from bot.dialogue.reading.phrases import any_of
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import manner, planning, repeat
from bot.dialogue.steps.walk import highlights, keep, liking
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.series import SAME_STOPS

#: Facts that words of an aside hold by chance: "back from the tripod", "lovely smooth water".
_BY_CHANCE: Final = frozenset(
    {"has_tripod", "hand_held", "look", "stream", "section", "flow", "wind"}
)
#: What is told of the last frame by who goes: "nothing blinks any more, I'm off".
_OF_THE_LAST: Final = frozenset({"blink", "symptoms", "light"})
_BYE: Final = "talk.bye"
_PAUSE: Final = "talk.wait"
_FEWEST: Final = 2
#: A sentence is a goodbye by its sense from this nearness on (own rule, as a question is one
#: beside what else is told).
_GOES: Final = 0.5
#: Shorter times are for leaves, not for water (common practice: 1/125 s).
_WATER_S: Final = 1 / 50
_FOR_LEAVES: Final = any_of(
    r"(?:leaf|second|short|fast) (?:frame|one|shot)|for the (?:leaves|ferns?|foliage|branches)"
    r"|the (?:leaves|ferns?) (?:at|with)"
)
#: The frame for the leaves is the one that a message just told.
_TAKEN: Final = "taken"
#: "Yes, I turned it already" of the polariser that was offered.
_TURNED: Final = re.compile(
    r"\W*(?:(?:yes|yep|yeah|ok|okay|done|i|i've|have|already|did)\W+)*(?:turned|rotated)"
    r" (?:it|that)(?! (?:off|around|back|down|away)\b)",
    re.IGNORECASE,
)
_FILTER: Final = whole_words("filters_on.filter")
_LEAVES: Final = whole_words("told_sights.leaves")


def leave(turn: Turn, text: str, told: Facts, asked: Asked | None) -> bool:
    """Answer a goodbye or a pause, before an option is heard in its words.

    Args:
        turn: the answer under construction.
        text: as typed.
        told: what was read in it.
        asked: the open question; an interruption's own answers come first.

    Returns:
        Whether it was one.
    """
    aside = aside_of(text)
    known = set(told.known()) - _BY_CHANCE
    if told.unread or known - _OF_THE_LAST:
        return False
    if aside not in {Aside.BYE, Aside.WAIT} and _goes(turn, text):
        aside = Aside.BYE
    if aside not in {Aside.BYE, Aside.WAIT} or (known and aside is Aside.WAIT):
        return False
    conversation = turn.context.conversation
    leaving = aside is Aside.BYE and (conversation.closed or conversation.doubted is not None)
    if asked is not None and asked.passing and asked.name not in planning.OFFERS and not leaving:
        return False
    if aside is Aside.BYE:
        part(turn)
    else:
        wait(turn)
    return True


def _goes(turn: Turn, text: str) -> bool:
    """Whether a sentence of a message that asks nothing says that its writer goes now."""
    if len(text.split()) < _FEWEST:
        return False  # "bye" is known by its word
    sentences = [manner.as_said(turn, one) for one in sentences_of(text)]
    if any(map(asks, sentences)):
        return False
    if not any(topic_of(one) == _BYE and nearness(one)[_BYE] >= _GOES for one in sentences):
        return False
    parts = (manner.as_said(turn, part) for part in text.split(","))
    return not any(topic_of(part) == _PAUSE for part in parts)  # "thanks, we take a break now"


def wait(turn: Turn) -> None:
    """A pause: nothing is asked again meanwhile."""
    sunlit = turn.facts.light in solving.SUNLIT
    turn.say(Role.SETTINGS, "aside.wait_sun" if sunlit else "aside.wait")


def part(turn: Turn) -> None:
    """A goodbye: what is worth to be noted, and no question any more; the walk can be resumed."""
    given = turn.walk.given
    if (given is not None and turn.walk.state is State.KEEP) or turn.walk.kept is not None:
        keep.finish(turn)
        return
    conversation = turn.context.conversation
    if conversation.closed or conversation.doubted:
        turn.say(Role.SAFETY, "danger.bye_open")  # its question stands last
        turn.close_question()
        return
    if given is not None:
        camera = turn.camera
        turn.say(Role.SETTINGS, "aside.bye_kept", settings=solving.settings_on(given, camera))
    else:
        planned = turn.context.conversation.walk is not None
        turn.say(Role.SETTINGS, "aside.bye_plan" if planned else "aside.bye")
    turn.close_question()


def answer(turn: Turn, text: str, told: Facts) -> bool:
    """Answer good news and assent; whether it was that and nothing else."""
    if turn.walk.checks.get("leaf_frame") == _TAKEN:
        turn.change_walk(checks=turn.walk.checks | {"leaf_frame": "given"})
        _both_frames(turn)
        return True
    if set(told.known()) - _BY_CHANCE or told.unread:
        return False
    match aside_of(text):
        case Aside.THANKS:
            turn.say(Role.SETTINGS, "thanks")
        case Aside.PRAISE:
            _praised(turn, text)
        case Aside.ASSENT:
            turn.say(Role.SETTINGS, "aside.good")
            repeat.put_again_if_open(turn, whole=False)
        case _ if took_off(text):
            turn.say(Role.SETTINGS, "aside.good")
            repeat.put_again_if_open(turn, whole=False)
        case _:
            return False
    return True


def with_filter(turn: Turn, text: str, told: Facts) -> Facts:
    """The facts of "took it off": the one filter on the lens; of "turned it": the polariser."""
    if told.known() and not _names_filter(text, told):
        return told
    if not told.known() and turn.facts.has_polariser and _TURNED.match(text):
        return Facts(polariser_on=True)
    if not took_off(text):
        return told
    given = turn.walk.given
    polariser = bool(turn.facts.polariser_on or (given is not None and given.polariser_on))
    nd = bool(turn.facts.nd_on_stops or (given is not None and given.nd_on_stops))
    if polariser is nd:
        return told
    return told.updated(Facts(polariser_on=False) if polariser else Facts(nd_on_stops=0.0))


def _names_filter(text: str, told: Facts) -> bool:
    """Whether a message that tells other things names a filter, of which nothing was read."""
    read = told.nd_on_stops is not None or told.polariser_on is not None
    return _FILTER.search(text.casefold()) is not None and not read


def without_leaf_frame(turn: Turn, text: str, told: Facts) -> Facts:
    """The facts without the settings of the frame for the leaves: the water's stay as they are."""
    if not _is_leaf_frame(turn, text, told):
        return told
    rest = told.model_copy(update={"f_number": None, "shutter_s": None, "iso": None})
    if not rest.known():
        turn.change_walk(checks=turn.walk.checks | {"leaf_frame": _TAKEN})
    return rest


def _is_leaf_frame(turn: Turn, text: str, told: Facts) -> bool:
    """Whether settings are those of the frame for the leaves, by name or by what was advised."""
    given = turn.walk.given
    if given is None or told.shutter_s is None or told.shutter_s >= _WATER_S or told.symptoms:
        return False
    said = text.casefold()
    if _FOR_LEAVES.search(said):
        return True
    advised = turn.walk.checks.get("leaf_frame") == "given" and told.blink is None
    raised = told.iso is not None and told.iso > given.iso * 2
    return advised and (raised or _LEAVES.search(said) is not None)


def _praised(turn: Turn, text: str) -> None:
    turn.remember_for_back()
    liking.note(turn, text, Facts())
    given, state = turn.walk.given, turn.walk.state
    if "leaf_frame" in turn.walk.checks and _LEAVES.search(text.casefold()):
        _both_frames(turn)
    elif given is None or state is State.KEEP or turn.is_at_home:
        turn.say(Role.SETTINGS, "aside.good")
        repeat.put_again_if_open(turn, whole=False)
    elif _is_clean(turn, given) or _asked_enough(turn):
        highlights.enter(turn)
        highlights.holds(turn)
    else:
        camera = turn.camera
        turn.say(Role.SETTINGS, "aside.kept", settings=solving.settings_on(given, camera))
        repeat.put_again_if_open(turn, whole=False)


def _is_clean(turn: Turn, given: GivenSettings) -> bool:
    """Whether a frame as bright as this one, or a brighter one, was told to hold the white."""
    clean = turn.walk.clean_stops
    return clean is not None and solving.level_of(given) <= clean + SAME_STOPS


def _both_frames(turn: Turn) -> None:
    """The frame of the leaves is taken, too: what to look at before leaving."""
    if turn.walk.state is not State.KEEP:
        highlights.enter(turn)
        turn.move(Trigger.HELD)
    turn.say(Role.SETTINGS, "aside.both_frames")
    keep.close(turn)


def _asked_enough(turn: Turn) -> bool:
    question = repeat.standing(turn)
    return question is not None and question.times >= repeat.PASSED_OVER
