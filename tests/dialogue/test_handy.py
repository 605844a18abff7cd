"""Questions with the camera in hand: filters that turn, clouds, eddies, twigs, gear, a length."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.reading import read
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player

#: A walk up to the first test frame, with a near rock and a known camera; in each language.
WALKED = {
    "en": ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70 at 24", "1", "1"),
    "de": (
        "deutsch",
        "start",
        "12 m hoch, 18 m entfernt, fels 1,5 m",
        "vollformat, 24-70",
        "1",
        "1",
    ),
    "es": ("español", "start", "12 m de alto, a 18 m, roca a 1,5 m", "full frame, 24-70", "1", "1"),
}


def walked(*more: str, language: str = "en") -> Player:
    """Somebody who has base settings."""
    player = Player()
    for line in (*WALKED[language], *more):
        player.say(line)
    return player


def keys(player: Player, text: str) -> tuple[str, ...]:
    """The texts of an answer."""
    (said, *_) = player.say(text)
    return said.keys


def facts_of(player: Player) -> Facts:
    """What is known by now."""
    assert player.context is not None
    return Turn(player.context, player.origin(), player.now).facts


def body(player: Player, text: str) -> str:
    """The words of an answer."""
    (said, *_) = player.say(text)
    return said.body


@pytest.mark.parametrize(
    ("language", "text", "key"),
    [
        (
            "en",
            "so this nd has a ring from min to max, where do I leave the ring",
            "asked.variable_plain",
        ),
        (
            "en",
            "My adjustable filter draws a black cross over the middle. Defective?",
            "asked.variable_cross",
        ),
        (
            "en",
            "is it any good to have the variable nd and the cpl on together?",
            "asked.variable_polariser",
        ),
        ("en", "should we hold off till that cloud covers it", "asked.wait_cloud"),
        ("en", "Why do the bubbles spin in a ring behind that boulder", "asked.eddy"),
        ("en", "no detail in the drop: too much light or too many seconds?", "white.which"),
        ("en", "what is it you can do for someone like me", "asked.can_do"),
        ("en", "is it fine to dry the front glass with my sweater", "asked.wipe"),
        ("en", "do i zoom past that stick or shift sideways", "asked.in_the_way"),
        ("en", "can i snap off that little branch, its dead anyway", "asked.gardening"),
        ("en", "whats this number 31 about the lens", "term.focal"),
        (
            "de",
            "der ring am variablen nd geht von zwei bis acht, wo soll ich stehenbleiben",
            "asked.variable_plain",
        ),
        (
            "de",
            "Mein verstellbarer Filter malt ein schwarzes Kreuz in die Mitte. Kaputt?",
            "asked.variable_cross",
        ),
        (
            "de",
            "die sonne versteckt sich und kommt wieder, abdrücken oder aussitzen",
            "asked.wait_cloud",
        ),
        ("de", "wieso drehen sich die blasen hinter dem block im ring", "asked.eddy"),
        (
            "de",
            "keine zeichnung im fall: zu viel licht oder zu viele sekunden?",
            "white.which",
        ),
        ("de", "kann ich den kleinen ast abknicken, der ist eh tot", "asked.gardening"),
        ("es", "el aro del nd variable va de dos a ocho, dónde lo dejo", "asked.variable_plain"),
        ("es", "qué es esa X de sombra desde que moví el filtro", "asked.variable_cross"),
        ("es", "el sol se esconde y vuelve, disparo o aguanto", "asked.wait_cloud"),
        ("es", "por qué las burbujas giran en anillo detrás de la roca", "asked.eddy"),
        ("es", "puedo quebrar esa ramita, total está seca", "asked.gardening"),
    ],
)
def test_what_people_ask_beside_the_walk_is_answered(language: str, text: str, key: str) -> None:
    """In words that stand in no table."""
    assert key in keys(walked(language=language), text)


@pytest.mark.parametrize(
    ("light", "key"),
    [
        ("in a wooded gorge", "asked.variable_weak"),
        ("bright cloud", "asked.variable"),
        ("full sun", "asked.variable_strong"),
    ],
)
def test_a_variable_nd_is_turned_for_the_light(light: str, key: str) -> None:
    """Off where nothing is too bright; shade first where it would go to its end."""
    player = walked(f"we are in {light}", "I want silky water")
    assert key in keys(player, "how far do I turn the variable ND?")


def test_a_variable_nd_takes_the_light_and_look_that_are_told_with_the_question() -> None:
    """Its settings are the answer: what blinks in the same message leads to no others."""
    player = walked()
    text = "sun is full on it now and i want it crisp how much do i turn the variable nd"
    said = keys(player, text)
    assert "asked.variable" in said
    assert not any(key.startswith("adjust.") for key in said)


def test_a_phone_has_no_time_to_turn_a_filter_for() -> None:
    """Then the way of it is said without numbers."""
    player = Player()
    for line in ("phone, 12 m tall, 18 m away", "1", "1", "full sun"):
        player.say(line)
    assert "asked.variable_plain" in keys(player, "how far do I turn the variable ND?")


@pytest.mark.parametrize(
    ("lines", "key"),
    [
        (("we are in a wooded gorge",), "asked.first_neither"),
        (("light canopy", "I want silky water"), "asked.first_polariser"),
        (("we are in full sun",), "asked.first_both"),
        ((), "asked.polariser_first"),
    ],
)
def test_polariser_or_nd_is_a_matter_of_the_light(lines: tuple[str, ...], key: str) -> None:
    """Each answer says of which filter it speaks."""
    player = walked(*lines)
    assert key in keys(player, "do they need the ND at all, or only the polariser?")


def test_which_goes_on_first_is_answered_behind_it() -> None:
    """Two questions about two filters."""
    player = walked("in a wooded gorge")
    said = keys(
        player, "do they need the ND or only the polariser? And which goes on first of the two?"
    )
    assert {"asked.first_neither", "asked.filter_order"} <= set(said)


@pytest.mark.parametrize("language", ["en", "de", "es"])
@pytest.mark.parametrize(
    ("asked", "light"),
    [
        ({"en": "do I need an ND?", "de": "brauch ich einen ND?", "es": "¿necesito un ND?"}, False),
        ({"en": "ND on?", "de": "ND drauf?", "es": "¿pongo el ND?"}, True),
    ],
)
def test_an_answer_on_a_filter_says_which(
    language: str, asked: dict[str, str], *, light: bool
) -> None:
    """A bare "off" or "no" was asked back: which of the two?"""
    shade = {"en": "in a wooded gorge", "de": "in einer waldschlucht", "es": "en un bosque cerrado"}
    player = walked(*((shade[language],) if light else ()), language=language)
    assert "ND" in body(player, asked[language]).split(":")[0]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("what's 3.9 m in feet?", "3.9 m is 12.8 ft."),
        ("how many feet is 3.9 m", "3.9 m is 12.8 ft."),
        ("12 ft in metres please", "12 ft is 3.66 m."),
        ("how much is 5 miles in km", "5 mi is 8.05 km."),
        ("30 cm in inches?", "30 cm is 11.8 in."),
    ],
)
def test_a_length_is_said_in_the_other_unit(text: str, said: str) -> None:
    """Its number tells nothing of the fall."""
    player = walked()
    before = facts_of(player)
    assert said in body(player, text)
    assert facts_of(player) == before


def test_what_is_told_beside_a_length_is_kept() -> None:
    """The rest of the message is read as ever."""
    player = walked()
    said = body(player, "whats 3.9 m in feet? and the rock is 4 ft away")
    assert "12.8 ft" in said
    assert facts_of(player).nearest_m == pytest.approx(1.219, abs=0.01)


@pytest.mark.parametrize("text", ["3 m in front of me", "12 m to the fall", "5 m in 5 m"])
def test_no_length_is_asked_for_without_another_unit(text: str) -> None:
    """What is told of a place stays told."""
    assert "asked.length_is" not in keys(walked(), text)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("took another only dots under cloud now do we wait or shoot", "asked.wait_cloud"),
        (
            "i had it on the foam before. tripods shaky on this trail could it be that",
            "asked.sinking",
        ),
        (
            "got one at 1/8 dots only but the stones look yellowish was that the filter",
            "cause.nd_cast",
        ),
        ("we stay on the bank so what should i do about that log", "asked.in_the_way"),
    ],
)
def test_a_question_behind_what_is_told_is_heard_without_signs(text: str, key: str) -> None:
    """Dictated messages have none."""
    assert key in keys(walked(), text)


def test_what_is_told_before_such_a_question_is_taken_in() -> None:
    """Both count: the wind and what is asked."""
    player = walked()
    said = keys(
        player,
        "took f/11 1/4 s iso 100 dots only and the stones look yellowish was that the filter",
    )
    assert "cause.nd_cast" in said
    assert player.context is not None
    given = player.context.conversation.walk
    assert given is not None
    assert given.given is not None
    assert given.given.shutter_s == pytest.approx(0.25)


@pytest.mark.parametrize(
    "text",
    [
        "how do i tell if it's blinking?",
        "how would i know that it blinks",
        "what blinking do you mean",
        "does every camera blink",
        "is there a button for the blinking",
    ],
)
def test_who_asks_about_the_warning_tells_nothing_of_the_frame(text: str) -> None:
    """No patch is read out of a question."""
    assert read(text).blink is None


@pytest.mark.parametrize(
    "text", ["how do i fix it, a patch blinks", "it blinks in the middle, what now"]
)
def test_what_blinks_beside_a_question_is_told(text: str) -> None:
    """The question is about something else."""
    assert read(text).blink is not None


def test_nothing_blinks_and_where_is_it_shown() -> None:
    """Asked at the question whether it blinks, it is answered, not taken for a reply."""
    assert "asked.warning_where" in keys(walked(), "nothing flashes on mine, how would i see it")


def test_white_or_long_says_what_the_time_makes() -> None:
    """The person's own time beside the rule, before any frame the rule alone."""
    assert "white.time_short" in keys(walked(), "blown out or too long a time, how do you tell?")
    first, *_ = keys(Player(), "blown out or too long a time, how do you tell?")
    assert first == "white.which"


@pytest.mark.parametrize(
    ("lines", "key"),
    [
        (WALKED["en"], "asked.log_line_now"),
        ((*WALKED["en"], "in a wooded gorge"), "asked.log_line_now"),
        (("hi",), "asked.log_line"),
    ],
)
def test_a_line_for_the_log(lines: tuple[str, ...], key: str) -> None:
    """With the settings where there are some, and the light where it was told."""
    player = Player()
    for line in lines:
        player.say(line)
    assert key in keys(player, "write a note about today for my logbook")


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("can she stand on the path in her orange coat for scale?", "asked.people_coat"),
        (
            "is it ok to walk on the stones by the stream, wet leaves, in trainers?",
            "asked.slippery_shoes",
        ),
        ("will rain make it hard to get back out of the gorge on foot?", "asked.slippery"),
        ("ferns smeared, the rock beside them sharp, what's the cause?", "keep.leaf_frame"),
        ("why do my ferns smear?", "verdict.wind"),
        ("why is focusing on the foam wrong?", "asked.focus_water"),
        ("can i get it smooth with just a phone, handheld?", "asked.phone"),
        ("where do i even find the iso?", "asked.find_setting"),
        ("can I save it in the raw or is it toast?", "asked.recover_white"),
        (
            "what would you tell her about the polariser and the ND, which goes on first?",
            "asked.filter_order",
        ),
    ],
)
def test_plain_questions_find_their_answer(text: str, key: str) -> None:
    """The words that led elsewhere."""
    assert key in keys(walked(), text)


def test_focus_on_water_without_a_near_thing() -> None:
    """Then there is no distance to say."""
    assert "answer.focus_on_water" in keys(Player(), "why is focusing on the foam wrong?")


def test_a_phone_in_the_hand() -> None:
    """Somebody else's phone is answered for, too."""
    assert "asked.phone_by_hand" in keys(
        walked(), "is it possible by hand, her phone has no tripod?"
    )


def test_without_a_polariser_is_no_question_of_an_nd() -> None:
    """It speaks of the filter that was named: "geht das auch ohne"."""
    player = walked(language="de")
    said = keys(player, "polfilter vergessen, liegt zuhause. geht das auch ohne?")
    assert "asked.no_polariser" in said


FLOOD = ("the water turned brown and it is rising",)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("do I have to leave the camera? it's on the bank", "danger.gear_stays"),
        ("when can we go back down to the pool, is it over in an hour?", "danger.not_today"),
    ],
)
def test_who_left_a_flood_hears_that_gear_stays_and_nobody_goes_back(text: str, key: str) -> None:
    """Said in front of the instruction, which stays."""
    said = keys(walked(*FLOOD), text)
    assert key in said
    assert any(other.startswith("danger.flood") for other in said)
    assert "ask.safe" in said


def test_gear_is_no_matter_of_who_is_hurt() -> None:
    """There the instruction alone counts."""
    said = keys(walked("he broke his leg"), "do I have to leave the camera?")
    assert not {"asked.leave_gear", "danger.gear_stays"} & set(said)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "may i walk about on the rocks at the edge, full of wet leaves, only sneakers on"),
        ("de", "darf ich am rand auf den steinen rumlaufen, lauter nasses laub, hab turnschuhe an"),
    ],
)
def test_leaves_on_stones_at_the_edge_are_cautioned_without_the_lip(
    language: str, text: str
) -> None:
    """Who asks so stands at a stream; nobody is asked to come back."""
    said = keys(walked(language=language), text)
    assert "asked.slippery_shoes" in said
    assert "danger.lip" not in said


@pytest.mark.parametrize(
    "text",
    [
        "may i walk along the edge above the fall on the rocks in sneakers, wet leaves there",
        "i stand on the rocks at the edge in my boots, wet leaves all over",
        "can i stand right at the edge of the cliff in boots, leaves and all",
    ],
)
def test_an_edge_above_a_drop_stays_the_lip(text: str) -> None:
    """A height, or somebody there, is answered as ever."""
    assert "danger.lip" in keys(walked(), text)
