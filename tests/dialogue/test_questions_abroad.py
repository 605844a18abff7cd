"""Questions of German and Spanish speakers, and what a question tells beside what it asks."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asides import Aside, aside_of
from bot.dialogue.meaning.asking import asks, told_beside
from bot.dialogue.meaning.said import OWN_TABLES, Said, in_all, in_english, table_of
from bot.dialogue.meaning.tables import examples
from bot.dialogue.meaning.topics import topic_of
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.asked.topic_or_cause import topic_meant
from bot.dialogue.steps.asked.which_topic import meant_by
from tests.dialogue.player import Player
from tests.dialogue.test_at_the_creek import given_of as given
from tests.dialogue.walked import TOLD, keys_of, walked

#: The fall and kit of `TOLD`, with the two border questions answered, in each language.
_TOLD = {
    "deutsch": "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70, Stativ, Polfilter",
    "español": "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70, trípode, polarizador",
}


def abroad(word: str) -> Player:
    """Somebody at the first settings who writes in another language."""
    player = Player()
    for line in (word, _TOLD[word], "1", "1"):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("word", "text", "key"),
    [
        ("deutsch", "welche blende ist die beste", "asked.f_number"),
        ("deutsch", "wohin soll ich scharfstellen", "asked.focus"),
        ("deutsch", "was soll ich einstellen", "where.given"),
        ("deutsch", "welche einstellungen", "where.given"),
        ("deutsch", "kann ich polfilter und graufilter zusammen benutzen", "asked.both"),
        ("deutsch", "darf man da mit stativ fotografieren", "permit.ask"),
        ("español", "dónde enfoco", "asked.focus"),
        ("español", "a qué hora es mejor la luz", "asked.best_time"),
        ("español", "qué balance de blancos uso", "asked.white_balance"),
        ("español", "qué ajustes pongo", "where.given"),
        ("deutsch", "wie lange muss ich denn da belichten?", "asked.time"),
        ("deutsch", "und wie lange belichte ich jetzt", "asked.time"),
        ("deutsch", "wie krieg ich das Foto etwas dunkler", "asked.how_much_darker"),
        ("deutsch", "sag mir nochmal die Werte", "where.given"),
        ("deutsch", "wie waren nochmal die Einstellungen", "where.given"),
        ("deutsch", "wie viele davon soll ich behalten", "asked.keep_few"),
        ("deutsch", "wieviele Fotos heb ich auf", "asked.keep_few"),
        ("deutsch", "wie oft soll ich alle durchzählen", "asked.head_count"),
        ("deutsch", "wie oft sollen wir uns treffen?", "asked.head_count"),
        ("deutsch", "welche Aufgabe geb ich den Schülern?", "asked.exercise"),
        ("deutsch", "wie lange soll ich da bleiben", "asked.stay"),
        ("deutsch", "bis wann dürfen wir bleiben?", "arrive."),
        ("español", "cuánto tiempo tengo que exponer?", "asked.time"),
        ("español", "q velocidad pongo", "asked.time"),
        ("español", "qué le pongo a la cámara", "where.given"),
        ("español", "repíteme los números porfa", "where.given"),
        ("español", "con cuántas fotos me quedo", "asked.keep_few"),
        ("español", "cuántas debo guardar?", "asked.keep_few"),
        ("español", "cada cuánto los junto para contarlos", "asked.head_count"),
        ("español", "¿cada cuánto tengo que pasar lista?", "asked.head_count"),
        ("español", "qué tarea les doy a los chicos", "asked.exercise"),
        ("español", "me salió una chueca", "answer.tilted"),
        ("español", "cuánto tiempo debería quedarme", "asked.stay"),
        ("español", "¿hasta cuándo puedo quedarme?", "arrive."),
    ],
)
def test_questions_are_answered_in_their_language(word: str, text: str, key: str) -> None:
    """The questions that most people ask (thirty of them by teachers' columns) have answers."""
    assert any(one.startswith(key) for one in keys_of(abroad(word), text))


def test_what_a_question_and_a_fact_lead_to_is_said_once() -> None:
    """Until when one may stay, with the way to the bus told in the same breath."""
    text = "bis wann können wir bleiben wenn wir 40 minuten zum bus brauchen?"
    assert keys_of(abroad("deutsch"), text).count("arrive.way") == 1


@pytest.mark.parametrize(
    ("word", "told", "text"),
    [
        ("deutsch", "nur Handy", "wie mach ich das Bild dunkler?"),
        ("deutsch", "nur Handy", "wie bekomm ich es dunkler"),
        ("español", "solo el móvil", "cómo la hago más oscura"),
        ("english", "just my phone", "how do i make it darker?"),
    ],
)
def test_a_phone_is_made_darker_by_a_finger(word: str, told: str, text: str) -> None:
    """No stops are counted where there is no dial."""
    player = Player()
    for line in (word, told):
        player.say(line)
    assert "phone.darker" in keys_of(player, text)


@pytest.mark.parametrize("word", ["deutsch", "español"])
def test_beginners_are_led(word: str) -> None:
    """Who does it for the first time hears what comes first, whatever the language."""
    player = Player()
    player.say(word)
    first = {"deutsch": "ich mach das zum ersten mal, was muss ich tun"}
    text = first.get(word, "es mi primera vez con cascadas, qué hago")
    assert "ask.geometry" in keys_of(player, text)


def test_a_beginner_is_led_in_english() -> None:
    """The first message of all may say no more than that it is the first."""
    assert "ask.geometry" in keys_of(Player(), "first time doing waterfalls, what do i need to do")


@pytest.mark.parametrize("table", ["topics", "small_talk", "sights"])
@pytest.mark.parametrize("language", OWN_TABLES)
def test_every_label_has_wordings_in_each_language(table: str, language: str) -> None:
    """The same labels, at least ten wordings each, none twice and none under two labels."""
    own = examples(table_of(table, language))
    assert own.keys() == examples(table).keys()
    assert min(map(len, own.values())) >= 10
    every = [text for texts in own.values() for text in texts]
    assert len(set(every)) == len(every)


def test_examples_of_every_language_teach() -> None:
    """The English ones stand first."""
    tables = ("topics", "topics_de", "topics_es")
    every = [text for table in tables for text in examples(table)["iso"]]
    assert list(in_all(("topics",))["iso"]) == every


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("is it worth it", "en"),
        ("no tripod with me, can it be done", "en"),
        ("the pola eats how many stops", "en"),
        ("cpl vs nd", "en"),
        ("f/8 or f/11", "en"),
        ("six stop or ten stop", "en"),
        ("hab kein stativ, geht das auch so", "de"),
        ("der pol nimmt licht weg, aber wie viel", "de"),
        ("solo traigo el celular, se puede", "es"),
    ],
)
def test_what_asks_in_any_part(text: str, language: str) -> None:
    """A question may begin behind something told, and lack its mark."""
    assert asks(Said(glossed(text, language), text, language))


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("what a lovely spot", "en"),
        ("tripod is up, polariser on", "en"),
        ("f/8 and 1/4, what now", "en"),
        ("was für ein schönes licht", "de"),
        ("stativ steht, polfilter drauf", "de"),
        ("qué bonito quedó", "es"),
        ("trípode puesto", "es"),
    ],
)
def test_what_does_not_ask(text: str, language: str) -> None:
    """Praise, facts and the wish for the next step are no questions of the trade."""
    assert not asks(Said(glossed(text, language), text, language))


def test_a_question_tells_of_the_kit_beside_it() -> None:
    """What stands outside the question is told: by hand then, which is answered."""
    assert told_beside(in_english("no tripod with me, can it be done")) == "no tripod with me"
    player = walked()
    keys = keys_of(player, "left the tripod in the car, can it be done")
    assert any(key.startswith("asked.by_hand") for key in keys)
    assert player.context is not None
    assert player.context.facts.hand_held is True


def test_told_numbers_are_not_taken_for_a_question() -> None:
    """A fall's measures are taken in, whatever topic the words are near to."""
    said = in_english("12 m tall, which lens")
    assert topic_meant(said, Facts(fall_height_m=12.0)) is None


def test_nobody_tells_which_filter_to_buy() -> None:
    """Some topics are only asked, so that near words ask."""
    said = in_english("polariser or nd first")
    assert topic_meant(said, Facts(has_polariser=True)) == "polariser_first"


def test_words_name_a_topic_by_chance() -> None:
    """The sense decides where it is surely another; what no example tells stands by its words."""
    text = "welche iso bei dem licht mit polfilter"
    said = Said(glossed(text, "de"), text, "de")
    assert meant_by(said, "choose") == topic_of(said) == "iso"
    assert meant_by(said, "iso_or_grain") == "iso_or_grain"
    assert meant_by(in_english("which one"), "choose") == "choose"  # two words mean little
    cost = in_english("how much light does a cpl cost")
    assert meant_by(cost, "polariser") == meant_by(cost, "stay") == "polariser_stops"
    assert meant_by(in_english("is the polariser any good today"), "polariser") == "polariser"


@pytest.mark.parametrize(
    ("word", "text"),
    [
        ("deutsch", "passt so, behalten"),
        ("deutsch", "gut, das behalte ich"),
        ("español", "perfecto, me la quedo"),
    ],
)
def test_a_frame_is_kept_with_praise_around_the_word(word: str, text: str) -> None:
    """Praise beside the word of keeping changes nothing."""
    player = abroad(word)
    player.say("f/11 ISO 100 1/4 s")
    assert "my_look.kept_walk" in keys_of(player, text)


def test_a_wish_for_longer_is_no_complaint_of_too_much_light() -> None:
    """Who can't go longer for the light asks for a longer time: it does not get a shorter one."""
    player = walked(told=f"{TOLD}, no nd, overcast")
    player.say("f/11 iso 100 1/8 s")
    player.say("can't go longer, it's too bright")
    assert given(player)[1] > 1 / 8


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("f/8 or f/11", "weighed.equal"),
        ("iso 100 or 200", "weighed.equal"),
        ("24-70 or 70-200", "asked.lens"),
        ("f/22?", "asked.why_not_f22"),
    ],
)
def test_two_numbers_to_choose_from_are_a_question(text: str, key: str) -> None:
    """Neither is taken for told, nor called unread."""
    player = walked()
    keys = keys_of(player, text)
    assert any(one.startswith(key) for one in keys)
    assert "unread" not in keys


@pytest.mark.parametrize(
    ("word", "text", "key"),
    [
        ("español", "no entiendo el histograma, qué miro ahí", "asked.histogram"),
        ("español", "no tengo trípode, se puede a pulso", "asked.by_hand"),
    ],
)
def test_a_no_at_the_beginning_is_no_reply(word: str, text: str, key: str) -> None:
    """Many Spanish sentences begin with it, and some English ones."""
    assert any(one.startswith(key) for one in keys_of(abroad(word), text))
    keys = keys_of(walked(), "no tripod with me, can it be done")
    assert any(one.startswith("asked.by_hand") for one in keys)


def test_white_that_is_lost_is_no_nothing() -> None:
    """A bright nothing is no answer that nothing blinks, and brings no brighter frame."""
    for text in ("the fall is a bright nothing", "there is nothing in the fall but white"):
        assert "highlights.brighter" not in keys_of(walked(), text)
    assert "highlights.brighter" in keys_of(walked(), "nothing blown")


def test_the_name_of_the_water_alone_changes_nothing() -> None:
    """There is nothing to note; the question comes again."""
    assert keys_of(walked(), "cascades") == ("ask.blink",)


def test_servus_is_a_greeting_at_the_beginning() -> None:
    """In the south it opens a talk and ends one."""
    player = Player()
    player.say("deutsch")
    assert "ask.geometry" in keys_of(player, "servus, i mach des zum ersten moi, wia geht des")
    assert aside_of("danke, servus!") is Aside.BYE
    assert aside_of("servus") is None


def test_what_if_in_german_moves_nothing() -> None:
    """Dialect or not, what is only tried is not taken for told."""
    for text in ("und wenn ich auf iso 400 gehe", "und wenn i auf blende 16 geh"):
        player = abroad("deutsch")
        player.say("f/11 ISO 100 1/4 s")
        before = given(player)
        assert any(key.startswith("what_if") for key in keys_of(player, text))
        assert given(player) == before


def test_a_stone_in_dialect_is_the_nearest_thing() -> None:
    """A stoa is a stone."""
    assert read(glossed("vor mir a moosiger stoa 80 cm", "de")).nearest_m == 0.8


def test_what_waits_for_the_rest_is_the_topic_that_was_meant() -> None:
    """A question whose numbers the same message tells is answered after them, by its sense."""
    keys = keys_of(walked(), "how many stops of dark glass do I need here? it's full sun now")
    assert any(key.startswith("asked.nd") for key in keys)
