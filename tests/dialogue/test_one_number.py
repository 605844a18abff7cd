"""Who wants one number gets it; filters, rain, phones and second thoughts are heard as meant."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.group import of_phones
from bot.dialogue.meaning.wordings import topic_by_words
from bot.dialogue.reading.edges import edges_told
from tests.dialogue.player import Player

WALK = ("10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod", "1", "1")
SUNNY = ("full sun, 6 stop nd, polariser", *WALK)


def talk(*lines: str) -> Player:
    """A person who has said these lines."""
    player = Player()
    for line in lines:
        player.say(line)
    return player


def body(player: Player, line: str) -> str:
    """The answer to a line."""
    return "\n".join(message.body for message in player.say(line))


def keys(player: Player, line: str) -> list[str]:
    """The texts of the answer to a line."""
    return [key for message in player.say(line) for key in message.keys]


@pytest.mark.parametrize(
    ("line", "first"),
    [
        # 24² ÷ (0.029 × 2 × 0.75 m) = f/13.3; the least blur lies at f/16
        ("what f number for 24 mm rock at 0.75", "f/16, focus at 1.5 m"),
        ("aperture for 35 mm, rock at 2 m", "f/16, focus at 4 m"),
        ("what f number for 70 mm, rock at 0.5 m", "Not in one frame"),
        # (30 m - 1 m) × 24 mm ÷ 18 mm = 39 m; ÷ 12 mm = 58 m
        ("distance for a 30 m fall level at 24 mm portrait", "39 m"),
        ("how far back for a 30 m fall, level, 24 mm, landscape", "58 m"),
    ],
)
def test_one_number(line: str, first: str) -> None:
    """The number stands first, and nothing of the walk changes by it."""
    player = talk("full frame, 50 mm, tripod", "skip")
    before = player.context
    assert before is not None
    walk = before.conversation.walk
    assert body(player, line).startswith(first)
    after = player.context
    assert after is not None
    known = None if after.conversation.walk is None else after.conversation.walk.facts
    assert known == (None if walk is None else walk.facts)


@pytest.mark.parametrize(
    "line", ["what f number?", "how far is it?", "what f number for rock at 2 m, fall 12 m away"]
)
def test_other_questions_go_their_own_way(line: str) -> None:
    """Without numbers of its own, or with more of them, it is another question."""
    assert not [key for key in keys(talk(*WALK), line) if key.startswith("one.")]


def test_a_phone_has_one_f_number() -> None:
    """Nothing is reckoned that cannot be set."""
    assert "one.f_number" not in keys(talk("phone"), "what f number for a rock at 2 m")


def test_without_a_lens_no_f_number_is_reckoned() -> None:
    """Depth needs a focal length."""
    assert "one.f_number" not in keys(talk(), "what f number for a rock at 2 m")


def test_a_time_is_asked_for_at_another_f_number() -> None:
    """A question, not a frame that was taken; the next one builds on it."""
    player = talk(*WALK, "bright cloud, 3 stop nd on", "took f/16 1/4 iso 100 with the 3 stop")
    tried = body(player, "time with the 3 stop at f/11")
    assert tried.startswith("f/11, ISO 100, 3-stop ND: 1 stop brighter")
    assert "0.4 s" in body(player, "and with polariser too").split("\n")[0]


def test_both_filters_with_the_time() -> None:
    """With the ND alone on, the polariser makes 1/4 s to 0.8 s; else the order only."""
    player = talk(*SUNNY, "took 1/4 f/11 iso 100 with the six")
    assert "1/4 s becomes 0.8 s" in body(player, "how about both filters at once?")
    assert keys(talk(*WALK), "how about both filters at once?")[0] == "asked.both_filters"
    both = talk(*SUNNY, "took 0.8 s f/11 iso 100, polariser on, 6 stop on")
    assert keys(both, "how about both filters at once?")[0] == "asked.both_filters"


def test_settings_with_the_nd_alone_take_the_advised_polariser_off() -> None:
    """It may be advised again: nobody refused it."""
    player = talk(*SUNNY, "took 1/4 f/11 iso 100 with the six")
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.facts.polariser_on is False
    assert "polariser" not in walk.checks


def test_an_nd_that_was_taken_off_stays_off_until_the_light_changes() -> None:
    """Another light, look or filter asks for it anew."""
    player = talk(*SUNNY)
    assert "ND on" not in body(player, "forget the 6 stop, without")
    assert "ND on" in body(player, "full sun again, silky please")


def test_shade_by_the_hour_that_is_told() -> None:
    """The hour is taken up; without one the fist and the wall tell it."""
    player = talk(*WALK)
    line = "when does it get shade here? wall's on the west side, about 3 they say"
    assert body(player, line).startswith("From about 3 then")
    assert keys(player, "when does it get shade here?")[0] == "asked.shade"


def test_drops_that_come_back() -> None:
    """The same advice would not help."""
    assert topic_by_words("wiped it, gone, but after two shots they are back") == "spray_again"
    assert keys(talk(*WALK), "the spots keep coming back")[0] == "symptom.spots_again"


def test_rain_is_minded_once() -> None:
    """After much of it the water's edge is marked; in it the glass is covered; none at home."""
    player = talk()
    assert "rain.before" in keys(player, "hi! at the creek, it rained like mad yesterday")
    assert "rain.before" not in keys(player, "so much water!")
    assert "rain.now" in keys(player, "overcast, drizzle")
    assert "rain.now" not in keys(player, "still drizzle, full frame")
    planned = talk("I want to plan a visit tomorrow")
    assert "rain.before" not in keys(planned, "it rained heavily yesterday, 10 m tall")


def test_a_full_message_leaves_the_drizzle_out() -> None:
    """Settings and the question stand before it."""
    told = "10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod, drizzle, 3 stop nd, dusk"
    assert "rain.now" not in keys(talk(), told)


def test_a_phone_averages_to_the_wished_time() -> None:
    """Frames of its own time add up to the aim; where one frame is enough none is averaged."""
    told = "5 m tall, 8 m away, phone, wooded gorge, rock at 1 m, no tripod"
    assert "base.phone_average" in keys(talk(told, "1"), "1")
    assert "base.phone_take" in keys(talk(told, "dense canopy", "1"), "1")
    afar = keys(talk("phone"), "can I climb over the railing")
    assert "danger.from_afar_phone" in afar


@pytest.mark.parametrize(
    ("text", "phones"),
    [
        ("the phone student wants to know what she should do", True),
        ("die Handyschülerin will wissen, was sie tun soll", True),
        ("la alumna del móvil pregunta qué hace", True),
        ("I have the phone one", False),
        ("phone", False),
    ],
)
def test_somebody_elses_phone(text: str, phones: bool) -> None:
    """It is no camera of who writes."""
    assert of_phones(text) is phones
    if phones:
        assert keys(talk(*WALK), text)[0] == "group.phones"


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("leaves at the top. hm actually there's a bit of white sky", {"top": "sky"}),
        ("leaves over the top, actually it's fine", {"top": "covered"}),
        ("left side a bright stone. no never mind it's outside", {"sides": "clean"}),
        ("left side a bright stone", {"sides": "bright"}),
    ],
)
def test_second_thoughts_of_an_edge(text: str, told: dict[str, str]) -> None:
    """What is so after all counts."""
    assert edges_told(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("white sky at the top", {"top": "sky"}),
        ("the left corner is bright", {"sides": "bright"}),
    ],
)
def test_white_sky_at_the_top_is_nothing_at_the_side(text: str, told: dict[str, str]) -> None:
    """It is one edge, and says nothing of the light."""
    assert edges_told(text) == told
    player = talk("10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod")
    player.say(text)
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.facts.light is None


def test_a_twig_that_is_gone_answers_no_other_question() -> None:
    """After the remedy "it is gone" is the twig, whatever is asked by then."""
    player = talk("10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod", "1")
    assert "sides.twig" in keys(player, "a branch comes in at the right side")
    assert keys(player, "it's gone")[0] == "edges.noted"
    assert keys(player, "it's gone")[0] != "edges.noted"


def test_how_a_phone_makes_it_darker() -> None:
    """By the finger on the glass."""
    assert keys(talk(*WALK), "how do I make it darker on the phone?")[0] == "phone.darker"
    es = talk("español", "10 m de alto, a 15 m, roca a 2 m, solo el móvil")
    assert keys(es, "como lo hago mas oscuro en el movil")[0] == "phone.darker"


@pytest.mark.parametrize(
    ("language", "lines", "key"),
    [
        ("deutsch", ("10 m hoch, 15 m weg, Stein bei 2 m", "1"), "sides.twig"),
        ("español", ("10 m de alto, a 15 m, roca a 2 m, sin trípode",), "top.sky"),
    ],
)
def test_edges_in_other_languages(language: str, lines: tuple[str, ...], key: str) -> None:
    """A branch that comes in, white sky above, and that they are gone."""
    told = {"sides.twig": "rechts ragt ein Ast rein", "top.sky": "arriba se ve cielo blanco"}[key]
    gone = {"sides.twig": "ist weg", "top.sky": "ya no se ve"}[key]
    player = talk(language, *lines)
    assert key in keys(player, told)
    assert "edges.noted" in keys(player, gone)


def test_white_water_is_no_white_sky() -> None:
    """While the top edge is asked about, burnt water is a complaint."""
    player = talk("10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod")
    assert "top.sky" not in keys(player, "the water is all white")


def test_a_goodbye_is_heard_while_a_place_is_closed() -> None:
    """It brings no settings; the question stands all the same."""
    taken = (*WALK, "took 1/4 f/11 iso 100", "nothing blinks")
    said = keys(talk(*taken, "can I step into the stream"), "done for today")
    assert "danger.insist" not in said
    assert said[0] == "keep.log_line"
    assert said[-1] == "ask.out_there"


def test_who_has_not_chosen_a_language_is_read_all_the_same() -> None:
    """The first message is in Spanish, and its phone is not asked for again."""
    player = talk("hola, estoy en una cascada con el movil", "español")
    assert player.context is not None
    assert player.context.person.kit.camera_format == "phone"


@pytest.mark.parametrize("line", ["I want it silky", "the water looks frozen, I want it silky"])
def test_a_phone_that_gives_no_longer_time_is_told_of_its_mode(line: str) -> None:
    """The same frame again would help nobody; one that has the look goes the usual way."""
    told = "10 m tall, 15 m away, phone, rock at 2 m, no tripod"
    player = talk(told, "1", "1", "skip", "took one, nothing blinks")
    assert keys(player, line) == ["phone.longer", "ask.phone_again"]
    lit = talk(f"{told}, wooded gorge", "1", "1", "took one, nothing blinks")
    assert "phone.longer" not in keys(lit, "I want it crisp")
