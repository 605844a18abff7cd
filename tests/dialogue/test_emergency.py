"""Emergencies and places where nobody stands, as conversations that can be read."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue.actions import CheckFrame, Say
from bot.dialogue.compose import FIRST_LINE, WHOLE
from bot.dialogue.context import Context
from bot.dialogue.danger import DangerKind, Level
from bot.dialogue.danger.kinds import LEVELS
from bot.dialogue.engine import handle
from bot.dialogue.events import (
    Event,
    FrameReceived,
    MediaRef,
    Origin,
    OtherReceived,
    PlaceReceived,
    TextReceived,
    TimerFired,
)
from tests.dialogue.player import START, Player, play
from tests.dialogue.unsure import unsure

CALL = (
    "Call the emergency number now (112, 911 or the local one): I can't call. "
    "Throw a rope or branch, don't go in."
)
NO_POSITION = (
    "No shared position here: read the coordinates or the last sign from your phone's map."
)
ARE_ALL_SAFE = "Are all safe now? 1 not yet  2 yes"
OUT_THERE = "Is anyone out there now? 1 no  2 yes"
HELD = "First the people. Everything else waits, your walk is kept."
OVER = "Good. Warm, dry, sit down before anything else."


def spoken(*lines: str) -> list[str]:
    """What the bot says after the last of the lines, row by row."""
    written = play(lines)
    last = max(place for place, row in enumerate(written) if row.startswith((">", "!")))
    return [row[2:] for row in written[last + 1 :] if row.startswith("< ")]


def test_a_friend_in_the_water() -> None:
    """The first sentence protects, no settings follow, and one question holds the walk."""
    assert spoken("> start", "> 12 m tall, 18 m away", "> my friend slipped in") == [
        CALL,
        NO_POSITION,
        ARE_ALL_SAFE,
    ]


def test_the_position_is_given_back_with_its_time() -> None:
    """The last shared position, in the time of that place, with its age, to be read out."""
    said = spoken("! place 44.1512 -71.3498", "! later 25 min", "> my friend slipped in")
    assert said[1] == (
        "Your last shared position: 44.1512, -71.3498 at 08:00 EDT, 25 min ago. "
        "Read it to rescuers."
    )


HOLDING = ("> start", "> 12 m tall, 18 m away", "> my friend slipped in")


@pytest.mark.parametrize(
    "line",
    ["> f/11, 1/4 s, iso 100", "> 7", "> why", "> back", "> skip", "> start", "> stop", "! voice"],
)
def test_nothing_else_is_answered_while_held(line: str) -> None:
    """Facts, commands and voice messages wait; no setting is said."""
    assert spoken(*HOLDING, line) == [HELD, NO_POSITION, ARE_ALL_SAFE]


def test_a_frame_is_not_measured_while_held() -> None:
    """A frame that is shared meanwhile gets the same answer and no check."""
    player = _played(*HOLDING)
    said = player.frame("clipped")
    assert [message.body.split("\n")[0] for message in said] == [HELD]
    assert not any(isinstance(action, CheckFrame) for action in player.actions)


def test_a_location_shared_while_held_is_given_back() -> None:
    """A new position is what rescuers need: kept, and said at once."""
    said = spoken(*HOLDING, "! place 44.1512 -71.3498")
    assert said[1].startswith("Your last shared position: 44.1512, -71.3498 at 08:00 EDT, 0 min")
    assert said[2] == ARE_ALL_SAFE


def test_reminders_are_silent_while_held() -> None:
    """A turn-back reminder does not talk into an emergency."""
    player = _played("> 3 km walk out, sunset 18:40", *HOLDING)
    event = TimerFired(origin=player.origin(), name="turn_back_now", due=START)
    assert player.take(event) == []


@pytest.mark.parametrize("line", ["> 1", "> not yet", "> no", "> no, he's still in there"])
def test_not_yet_says_what_to_do_next(line: str) -> None:
    """The second instruction comes, and the question stands."""
    said = spoken(*HOLDING, line)
    assert said[0].startswith("Keep eyes on them, stay on the bank.")
    assert said[-1] == ARE_ALL_SAFE


@pytest.mark.parametrize(
    "line", ["> 2", "> yes", "> all safe", "> she's out and ok, we're all fine", "> YES all safe!"]
)
def test_when_all_are_safe_the_walk_goes_on(line: str) -> None:
    """First warmth, then the walk's own question is put again."""
    said = spoken(*HOLDING, line)
    assert said[:2] == [OVER, "The walk is as it was."]
    assert said[-1].startswith("What is the nearest thing that must be sharp?")


def test_without_a_walk_the_end_says_how_to_begin() -> None:
    """An emergency before any walk ends with the way in."""
    assert spoken("> my friend slipped in", "> 2")[0] == OVER


def test_half_good_news_keeps_the_emergency() -> None:
    """A "yes, but" is no all-clear; a new danger in it is answered."""
    assert spoken(*HOLDING, "> yes but not her")[-1] == ARE_ALL_SAFE
    said = spoken(*HOLDING, "> yes she is out but her leg is broken")
    assert said[0].startswith("Call the emergency number now")
    assert said[-1] == ARE_ALL_SAFE


def test_a_second_emergency_keeps_the_graver_kind_and_the_first_time() -> None:
    """Dark falls while somebody is in the water: the water stays what is asked about."""
    player = _played(*HOLDING, "! later 20 min", "> it's getting dark and we can't find the trail")
    assert player.context is not None
    emergency = player.context.conversation.emergency
    assert emergency is not None
    assert emergency.kind == "in_water"
    assert emergency.since == START


def test_a_bad_place_while_held_does_not_change_the_question() -> None:
    """Somebody wants to wade in to help: stopped, and still asked whether all are safe."""
    said = spoken(*HOLDING, "> can I wade in to reach her?")
    assert said[0].startswith("Stay on the bank.")
    assert said[-1] == ARE_ALL_SAFE


SLAB = "> can I get it from the slab at the top, the water's only ankle deep there"


def test_the_lip_gets_no_settings_but_a_safe_picture() -> None:
    """Step back first; then the focal length for the place the walk knows, if it is away."""
    assert spoken("> 12 m tall, 45 m away, full frame", SLAB) == [
        (
            "Step back from the edge first. Nobody stands on or above the lip: wet rock there is "
            "slick, and the water leaves no second try."
        ),
        "From where you said, 45 m off, 135 mm shows 12 m: stay at the path or railing.",
        OUT_THERE,
    ]  # 36 mm x 45 m / 12 m = 135 mm, by similar triangles


@pytest.mark.parametrize("before", ["> start", "> 12 m tall, 4 m away"])
def test_an_unknown_or_near_place_is_not_taken_for_a_safe_one(before: str) -> None:
    """Without a distance that is away from the water only the advice is given."""
    assert spoken(before, SLAB)[1].startswith("A longer lens from the path or the railing")


def test_the_width_of_the_fall_is_shown_where_it_is_known() -> None:
    """The safe picture shows the fall's own width."""
    said = spoken("> 12 m tall, 9 m wide, 45 m away, full frame", SLAB)
    assert "180 mm shows 9 m" in said[1]  # 36 mm x 45 m / 9 m


@pytest.mark.parametrize("line", ["> 2", "> yes", "> yes, someone is out there", "> me"])
def test_somebody_out_there_is_called_back(line: str) -> None:
    """Called back at once, and asked again."""
    said = spoken("> start", SLAB, line)
    assert said[0].startswith("Call them back now, one at a time")
    assert said[-1] == OUT_THERE


@pytest.mark.parametrize("line", ["> 1", "> no", "> nobody", "> no, we're all on the path"])
def test_nobody_out_there_brings_the_walk_back(line: str) -> None:
    """The walk's own question is put again."""
    said = spoken("> start", SLAB, line)
    assert said[0] == "Good. Stay on the path side; local signs and rangers decide."
    assert said[-1].startswith("How tall is the fall, how far are you")


_SAYINGS = {
    DangerKind.IN_WATER: "my friend slipped in",
    DangerKind.FLOOD: "water's getting brown but",
    DangerKind.HURT: "ankle's twisted and I'm by myself",
    DangerKind.DESPAIR: "he says he wants to die",
    DangerKind.THUNDER: "I hear thunder",
    DangerKind.MISSING: "my son is missing",
    DangerKind.COLD: "cant feel my fingers",
    DangerKind.DARK: "it's getting dark and we can't find the trail",
    DangerKind.LOST: "I'm lost",
    DangerKind.LIP: "I'm at the lip",
    DangerKind.ICE: "walk onto the ice?",
    DangerKind.UNDER: "going behind the curtain",
    DangerKind.WADING: "may I stand in the stream?",
    DangerKind.CLIMB: "can i climb up beside the fall",
    DangerKind.BARRIER: "just hop the rail",
    DangerKind.UNCLEAR: unsure(),
}


@pytest.mark.parametrize("kind", DangerKind)
def test_every_answer_fits_and_drops_nothing(kind: DangerKind) -> None:
    """160 characters first, 320 in all, with the position or the picture, and the question."""
    player = _played("> 12 m tall, 45 m away, aps-c", "! place 44.1512 -171.3498", "! later 19 h")
    said, level = player.say(_SAYINGS[kind]), LEVELS[kind]
    if level is Level.UNSURE:
        said, level = player.say("yes"), Level.EMERGENCY
    _check(said, f"danger.{kind.value}", level)
    if level is Level.EMERGENCY:
        _check(player.say("not yet"), f"danger.{kind.value}.again", Level.EMERGENCY)


def _check(said: list[Say], key: str, level: Level) -> None:
    message, *on_map = said
    assert [place.keys for place in on_map] in ([], [("danger.on_map",)])
    question = "ask.safe" if level is Level.EMERGENCY else "ask.out_there"
    assert message.keys[0] == key
    assert message.keys[-1] == question
    assert len(message.keys) == 3
    assert message.urgent
    assert len(message.body.split("\n")[0]) <= FIRST_LINE
    assert len(message.body) <= WHOLE


def _played(*lines: str) -> Player:
    player = Player()
    for line in lines:
        if line.startswith(">"):
            player.say(line[2:])
        else:
            player.happen(line[2:])
    return player


# in a group room


class _Group:
    """One person in a group room, mostly talking to others."""

    def __init__(self, context: Context | None = None) -> None:
        self.context = context

    def origin(self, *, addressed: bool = False) -> Origin:
        return Origin(
            event_id="$event",
            room_id="!workshop",
            person_id="@fern:example.org",
            direct=False,
            addressed=addressed,
            sent_at=START,
        )

    def take(self, event: Event) -> list[str]:
        context = self.context or Context.fresh(event.origin)
        self.context, actions = handle(context, event, START + timedelta(minutes=1))
        return [action.body for action in actions if isinstance(action, Say)]

    def say(self, text: str, *, addressed: bool = False) -> list[str]:
        return self.take(TextReceived(origin=self.origin(addressed=addressed), text=text))


def test_others_are_overheard_for_emergencies_only() -> None:
    """Talk among people is not answered, not even about the lip; an emergency is."""
    group = _Group()
    assert group.say("f/11 and 1/4 s, who wants tea") == []
    assert group.say("just hop the rail") == []
    (body,) = group.say("my friend slipped in")
    assert body.startswith(CALL)


def test_good_news_to_the_room_ends_the_emergency() -> None:
    """Only a plain all-safe counts when the bot was not spoken to; chat does not."""
    group = _Group()
    group.say("my friend slipped in")
    assert group.say("hold on to the rope") == []
    assert group.say("2") == []
    (body,) = group.say("she's out, all safe")
    assert body.startswith(OVER)


def test_news_to_the_room_of_who_was_left_ends_nothing() -> None:
    """The others are safe, one is not with them."""
    group = _Group()
    group.say("my friend slipped in")
    assert not any(body.startswith(OVER) for body in group.say("all safe, we left Ben behind"))


def test_a_caption_is_overheard_too() -> None:
    """A picture among people: its words are read for emergencies, the picture is not measured."""
    group = _Group()
    media = MediaRef(address="mxc://example.org/frame")
    quiet = FrameReceived(origin=group.origin(), media=media, caption="nice light")
    assert group.take(quiet) == []
    loud = FrameReceived(origin=group.origin(), media=media, caption="water's rising fast")
    (body,) = group.take(loud)
    assert body.startswith("Leave now, up and out")


def test_a_caption_about_a_bad_place_gets_no_settings() -> None:
    """The frame is not measured: nobody gets settings for that place."""
    player = Player()
    media = MediaRef(address="mxc://example.org/frame")
    event = FrameReceived(
        origin=player.origin(), media=media, caption="from the lip, standing on the edge"
    )
    (message,) = player.take(event)
    assert message.keys[0] == "danger.lip"
    assert not any(isinstance(action, CheckFrame) for action in player.actions)


def test_a_position_from_the_direct_room_stays_there() -> None:
    """In a group room only a position that was shared in it is printed."""
    direct = _played("! place 44.1512 -71.3498")
    assert direct.context is not None
    group = _Group(Context(person=direct.context.person))
    (body,) = group.say("my friend slipped in")
    assert "44.1512" not in body
    assert "stays in our direct room" in body
    shared = PlaceReceived(origin=group.origin(), latitude=44.2, longitude=-71.3)
    (body,) = group.take(shared)
    assert "44.2000, -71.3000" in body


def test_others_things_stay_unanswered_while_held() -> None:
    """A voice message to others is not for the bot."""
    group = _Group()
    group.say("my friend slipped in")
    assert group.take(OtherReceived(origin=group.origin(), what="voice")) == []


def test_good_boots_open_no_place() -> None:
    """Who argues is told once more, and the question stays; facts or a no go on."""
    player = _played("> 12 m tall, 45 m away, aps-c", "> can I shoot from the slab at the lip")
    (said,) = player.say("oh come on, I've got good boots")
    assert said.keys == ("danger.insist", "ask.out_there")
    (said,) = player.say("no")
    assert said.keys[0] == "danger.nobody_there"


# whose emergency it is


def _keys(player: Player, text: str) -> list[str]:
    return [key for said in player.say(text) for key in said.keys]


@pytest.mark.parametrize(
    "text", ["ok", "Ok!", "fine", "ok thanks", "alright, got it", "alles klar", "vale", "gut"]
)
@pytest.mark.parametrize("told", ["my friend slipped in", "I fell in", "water's rising fast"])
def test_assent_is_no_all_clear(told: str, text: str) -> None:
    """It says that the instruction was understood: the next one follows."""
    player = _played("> start", f"> {told}")
    said = _keys(player, text)
    assert said[0].endswith(".again")
    assert said[-1] == "ask.safe"


@pytest.mark.parametrize("text", ["I am safe", "I'm out", "mir geht's gut", "estoy a salvo"])
def test_who_is_safe_asks_about_the_other(text: str) -> None:
    """An emergency of another does not end with the person's own safety."""
    player = _played("> start", "> my friend slipped in")
    assert _keys(player, text)[0] == "danger.others_left"
    assert _keys(player, "she is out")[0] == "danger.over"


@pytest.mark.parametrize(
    "text",
    ["she is out", "we're all safe", "got him out, he's fine", "er ist wieder raus", "ya salió",
     "ihm geht es gut", "todo bien, ya salimos", "everybody is ok", "the rangers have him"],
)  # fmt: skip
def test_words_about_the_other_end_it(text: str) -> None:
    """Words about that person, or about everybody, do."""
    assert _keys(_played("> start", "> my friend slipped in"), text)[0] == "danger.over"


@pytest.mark.parametrize("text", ["I am safe", "I'm out", "we're all safe", "2", "yes"])
def test_ones_own_emergency_ends_with_ones_own_words(text: str) -> None:
    """Who was alone in it is asked about nobody else."""
    assert _keys(_played("> start", "> I slipped and fell in"), text)[0] == "danger.over"


def test_both_are_asked_about_in_turn() -> None:
    """Who got out asks about the other, and the other way round."""
    player = _played("> start", "> my friend and I fell in")
    assert _keys(player, "he is out")[0] == "danger.you_left"
    assert _keys(player, "I am out")[0] == "danger.over"
    player = _played("> start", "> I fell in", "> my son fell in, too")
    assert _keys(player, "I'm out")[0] == "danger.others_left"
    assert _keys(player, "found him, he's fine")[0] == "danger.over"


def test_one_of_several_ends_nothing() -> None:
    """Two slipped in and one is out: the other is asked about, until both are."""
    player = _played("> start", "> my two friends slipped in")
    assert _keys(player, "she is out")[0] == "danger.others_left"
    assert _keys(player, "they are both out")[0] == "danger.over"


@pytest.mark.parametrize(
    "text",
    ["false alarm", "was just a joke", "no i meant the camera fell in",
     "nur die Kamera ist reingefallen", "solo se cayó la cámara"],
)  # fmt: skip
def test_what_never_was_is_taken_back(text: str) -> None:
    """A joke, or a camera that fell in, needs no blanket: the walk is as it was."""
    player = _played("> start", "> 12 m tall, 18 m away", "> my friend slipped in")
    said = _keys(player, text)
    assert said[:2] == ["danger.retracted", "danger.walk_kept"]
    assert said[-1] == "ask.nearest"
    assert _keys(_played("> my friend slipped in"), text)[0] == "danger.retracted"


def test_a_sound_was_something_else() -> None:
    """What was taken for thunder was a truck; in other emergencies that says nothing."""
    assert _keys(_played("> i hear thunder"), "was just a truck")[0] == "danger.retracted"
    assert _keys(_played("> i hear thunder"), "was it just a truck?")[0] == "danger.thunder.again"
    assert _keys(_played("> i broke my leg"), "was just a truck")[0] == "danger.held"


@pytest.mark.parametrize(
    ("told", "text"),
    [
        ("river looks brown", "it's always brown, peat"),
        ("the river is rising!", "sorry i meant the sun is rising"),
        ("der Bach ist braun geworden", "der ist immer so, Moor"),
        ("el río viene marrón", "siempre así"),
    ],
)
def test_water_that_is_always_so(told: str, text: str) -> None:
    """Brown water that is always brown is no flood."""
    assert _keys(_played(f"> {told}"), text)[0] == "danger.retracted"


@pytest.mark.parametrize(
    ("told", "text"),
    [
        ("my son is missing", "he was only behind a tree"),
        ("mein sohn ist weg", "er war nur pinkeln"),
        ("mein sohn ist weg", "wir haben ihn"),
        ("mi hijo no vuelve", "solo estaba en el baño"),
    ],
)
def test_who_was_never_gone(told: str, text: str) -> None:
    """Where a missing one was ends it; in other emergencies the same words do not."""
    assert _keys(_played(f"> {told}"), text)[0] == "danger.over"
    assert _keys(_played("> my friend slipped in"), "she was only there")[0] == "danger.held"


def test_an_edit_takes_it_back() -> None:
    """The message that told of it, edited into a harmless one; others change nothing."""
    player = _played("> start", "> my friend slipped in")
    said = player.edit(2, "my lens cap slipped in")
    assert said[0].keys[0] == "danger.retracted"
    player = _played("> start", "> my friend slipped in", "> I can't see her any more")
    assert player.edit(2, "my lens cap slipped in")[0].keys[0] == "danger.held"


@pytest.mark.parametrize("text", ["help", "help!!", "hilfe", "socorro", "i need help"])
def test_a_cry_repeats_the_card(text: str) -> None:
    """In an emergency a call for help brings the first instruction again."""
    assert spoken(*HOLDING, f"> {text}") == [CALL, NO_POSITION, ARE_ALL_SAFE]


def test_a_closed_place_stays_closed_through_an_emergency() -> None:
    """When all are safe, it is still asked whether anybody is out there."""
    player = _played("> start", "> 12 m tall, 18 m away", "> I'm at the lip")
    assert _keys(player, "my friend slipped in")[-1] == "ask.safe"
    assert _keys(player, "she is out")[-1] == "ask.out_there"


@pytest.mark.parametrize("text", ["yes", "ok", "she is out of sight", "I'm fine with that"])
def test_chat_in_the_room_ends_nothing(text: str) -> None:
    """Said to others, only good news of all who are in it counts."""
    group = _Group()
    group.say("my friend slipped in")
    assert group.say(text) == []
    assert group.say("I am safe") == []
    (body,) = group.say("got her out")
    assert body.startswith(OVER)


FLOOD = "the water is brown and rising fast, we are in the gorge"


@pytest.mark.parametrize(
    "text",
    [
        "all of us safe, left Ben behind",
        "all of us are safe, but we lost Anna",
        "all safe, we lost my son and have not found him",
        "we're all safe, my son was left behind",
        "wir sind alle in Sicherheit, haben Ben zurückgelassen",
        "todos a salvo, perdimos a Ana",
    ],
)
def test_who_was_left_behind_ends_nothing(text: str) -> None:
    """A name, or kin, that is not with them: the flood is held."""
    player = Player()
    player.say(FLOOD)
    assert "danger.flood.over" not in [key for one in player.say(text) for key in one.keys]
    assert player.context is not None
    assert player.context.conversation.emergency is not None


@pytest.mark.parametrize(
    "text",
    [
        "all of us safe, we left the tripod behind",
        "all safe, nobody was left behind",
        "all safe, left the kids in the car",
        "Ben got lost but is back with us, all safe",
        "all of us safe, we left straight away",
        "alle sicher, haben das Stativ dagelassen",
        "todos a salvo, dejamos el trípode",
    ],
)
def test_what_was_left_behind_ends_it(text: str) -> None:
    """A thing is nobody, and who left is safe."""
    player = Player()
    player.say(FLOOD)
    assert "danger.flood.over" in [key for one in player.say(text) for key in one.keys]
