"""What German and Spanish speakers tell and ask on a walk, each class in more than one wording."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, Safe, in_danger, read_danger, who_is_safe
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.foreign.dialects import in_plain_german
from tests.dialogue.player import Player
from tests.dialogue.test_questions_abroad import abroad
from tests.dialogue.walked import keys_of

_WORD = {"de": "deutsch", "es": "español"}


def last(*lines: str) -> str:
    """The whole answer to the last of these lines."""
    player = Player()
    return "\n".join(one.body for one in [player.say(line) for line in lines][-1])


@pytest.mark.parametrize(
    ("language", "text", "term"),
    [
        ("de", "was bedeutet eigentlich Schärfentiefe?", "depth"),
        ("de", "sag mal, was issn n Histogramm", "histogram"),
        ("de", "Graufilter, was ist das?", "nd"),
        ("de", "ich weiß nicht, was eine Belichtungsreihe ist", "bracket"),
        ("de", "erklär mir bitte mal die Brennweite", "focal"),
        ("de", "was ist Blende und wozu brauch ich die", "f_number"),
        ("es", "oye, ¿qué es la apertura?", "f_number"),
        ("es", "no sé qué significa profundidad de campo", "depth"),
        ("es", "¿a qué le llaman polarizador?", "polariser"),
        ("es", "el histograma qué es", "histogram"),
        ("es", "explícame qué es un paso", "stop"),
    ],
)
def test_words_of_the_trade_are_explained(language: str, text: str, term: str) -> None:
    """What it means, not which to set."""
    assert f"term.{term}" in keys_of(abroad(_WORD[language]), text)


def test_what_about_a_filter_is_no_question_for_its_meaning() -> None:
    """Nor is the best of something."""
    player = abroad("deutsch")
    assert "term.polariser" not in keys_of(player, "was ist mit dem polfilter")
    assert "term.f_number" not in keys_of(player, "was ist die beste blende")


@pytest.mark.parametrize(
    ("language", "text", "look"),
    [
        ("de", "wie bekomme ich so einen weichen Bach hin, so schleierig", "Seidig"),
        ("de", "wie schaff ichs dass das wasser wie watte aussieht", "Neblig"),
        ("es", "¿cómo hago para que el agua salga suavecita?", "Sedosa"),
        ("es", "como consigo que parezca neblina", "Brumosa"),
    ],
)
def test_a_question_may_wish_a_look(language: str, text: str, look: str) -> None:
    """Its times are told, not those of the usual look."""
    fall = {
        "de": "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70",
        "es": "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70",
    }[language]
    assert last(_WORD[language], fall, text).startswith(look)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "Filter hab ich leider keine"),
        ("de", "filter: fehlanzeige"),
        ("de", "keine filter dabei"),
    ],
)
def test_filters_that_are_not_there(language: str, text: str) -> None:
    """None of either kind."""
    facts = read(glossed(text, language))
    assert facts.has_polariser is False
    assert facts.nd_stops == ()


@pytest.mark.parametrize(
    "text",
    ["Der Hallerbachfall ist 9 Meter hoch", "the Ravenfall is about 9 m high"],
)
def test_a_name_may_say_that_it_is_a_fall(text: str) -> None:
    """Its height is the fall's, not another thing's."""
    assert read(glossed(text, "de")).fall_height_m == 9.0


def test_a_height_by_its_verb_alone() -> None:
    """The fall was named before the comma."""
    said = "ando por la cascada del coigüe, tendra como 9 metros y estoy a 14"
    assert read(glossed(said, "es")).fall_height_m == 9.0


@pytest.mark.parametrize(
    ("text", "lens"),
    [
        ("llevo un dieciocho ciento treinta y cinco", (18.0, 135.0)),
        ("mi lente es un veintiocho setenta y cinco", (28.0, 75.0)),
        ("setenta doscientos", (70.0, 200.0)),
    ],
)
def test_zooms_as_they_are_said(text: str, lens: tuple[float, float]) -> None:
    """Two numbers that are the ends of a zoom."""
    (found,) = read(glossed(text, "es")).lenses or ()
    assert (found.shortest_mm, found.longest_mm) == lens


@pytest.mark.parametrize(
    ("text", "light"),
    [
        ("acá hay un solazo, sol pleno", "full sun"),
        ("tremendo sol hoy", "full sun"),
        ("en la cañada está todo oscurito", "open gorge"),
        ("no entra el sol en este barranco", "open gorge"),
    ],
)
def test_light_in_spanish(text: str, light: str) -> None:
    """Sun in more of its words; shade in a gorge is a gorge's."""
    assert read(glossed(text, "es")).light == light


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "meine Oma ist schon ganz erschöpft"),
        ("de", "mein Papa ist ziemlich müde geworden"),
        ("es", "mi suegra está agotada"),
        ("es", "estamos molidos"),
    ],
)
def test_who_is_tired_turns_back(language: str, text: str) -> None:
    """The slowest sets the pace."""
    assert "asked.tired" in keys_of(abroad(_WORD[language]), text)


def test_who_is_tired_in_english() -> None:
    """As in the other languages."""
    assert "asked.tired" in keys_of(Player(), "my grandfather is a bit tired now")


@pytest.mark.parametrize(
    ("told", "yes"), [("pralle Sonne", "Nicht ohne ND"), ("dunkle Schlucht im Wald", "Ja")]
)
def test_whether_it_works_without_a_filter(told: str, yes: str) -> None:
    """A yes to "without" is a no to "do I need one"."""
    player = abroad("deutsch")
    for line in (told, "seidig"):
        player.say(line)
    (said,) = player.say("klappt es auch ohne ND?")
    assert said.body.startswith(yes)
    (said,) = player.say("brauche ich einen ND?")
    assert not said.body.startswith(yes)


@pytest.mark.parametrize(
    ("language", "text"),
    [("de", "geht das ohne Graufilter?"), ("es", "¿se puede sin filtro ND?")],
)
def test_without_a_filter_in_any_light(language: str, text: str) -> None:
    """In the shade it works."""
    assert "asked.nd_plain_without" in keys_of(abroad(_WORD[language]), text)


@pytest.mark.parametrize(
    "text",
    [
        "buenos días, estamos en la cascada del Coigüe y queremos sacarle unas fotos",
        "quisiera fotografiar un salto",
        "me gustaría tomar fotos de una catarata",
        "Guten Tag, ich stehe am Hallerbach und möchte ein paar Bilder machen",
        "würde gern einen Wasserfall fotografieren",
        "wir sind im herbst am unteren graben bei einem wasserfall",
        "hi, i'd love to take some photos of a waterfall",
    ],
)
def test_who_says_what_they_came_for_is_led(text: str) -> None:
    """The walk begins, with its caution."""
    assert "ask.geometry" in keys_of(Player(), text)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("¿y si se moja la lente?", "symptom.spots"),
        ("qué hago si me salpica el objetivo", "symptom.spots"),
        ("¿a qué hora tenemos que volver si el auto está a 40 minutos?", "arrive.way"),
        ("a que hora conviene emprender la vuelta, la camioneta queda a una hora", "arrive.way"),
    ],
)
def test_questions_in_spanish(text: str, key: str) -> None:
    """What is told beside them counts, too."""
    assert key in keys_of(abroad("español"), text)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("der Fluss ist heute ganz schlammig", DangerKind.FLOOD),
        ("das wasser rinnt jetzt braun daher", DangerKind.FLOOD),
        ("el río viene color chocolate", DangerKind.FLOOD),
        ("oye, el arroyo se ve turbio desde ayer", DangerKind.FLOOD),
        ("unsere Enkel wollen in die Gumpe hüpfen", DangerKind.WADING),
        ("darf mein Sohn im Becken planschen?", DangerKind.WADING),
        ("meine Kleine möchte im Bach baden", DangerKind.WADING),
        ("mis sobrinos quieren nadar un rato", DangerKind.WADING),
        ("¿puede mi hija meterse en la poza?", DangerKind.WADING),
    ],
)
def test_dangers_in_plain_words(text: str, kind: DangerKind) -> None:
    """Murky water, and bathing under a fall."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is kind


@pytest.mark.parametrize(
    "text",
    [
        "das Wasser ist gar nicht trüb",
        "ist das Wasser sonst auch braun?",
        "der Bach ist braun vom Moor",
        "heute ist trübes Wetter",
        "meine Zehen sind schon richtig klamm",
        "mir wird a bissl kalt an den Fingern",
        "se me hielan los dedos",
    ],
)
def test_no_danger_in_plain_words(text: str) -> None:
    """What is denied or asked, grey weather, hands that are only cold."""
    assert read_danger(text) is None


@pytest.mark.parametrize("text", ["der Himmel ist trüb", "trübes Licht heute", "recht trüb heute"])
def test_grey_weather_is_a_light(text: str) -> None:
    """Heavy clouds."""
    assert read(glossed(text, "de")).light == "overcast"


@pytest.mark.parametrize(
    ("word", "text"),
    [
        ("deutsch", "ich hab ganz klamme Finger"),
        ("deutsch", "meine Zehen sind schon richtig klamm"),
    ],
)
def test_clammy_fingers_are_no_gorge(word: str, text: str) -> None:
    """The same word names both."""
    assert read(glossed(text, "de")).light is None
    assert "noted" not in keys_of(abroad(word), text)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "das Foto ist mir zu hell geworden"),
        ("es", "la foto me sale muy clara"),
        ("es", "salen muy claras las fotos"),
    ],
)
def test_a_bright_picture_is_no_bright_corner(language: str, text: str) -> None:
    """While the sides of the frame are asked about."""
    fall = {"de": "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70"}
    told = fall.get(language, "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70")
    said = last(_WORD[language], told, "1", text)
    assert "f/11, 1/4 s, ISO 100" in said


@pytest.mark.parametrize(
    ("text", "time"),
    [("im ersten ist die Struktur gut", "1/30 s"), ("beim letzten gefällt mir gar nix", "1 s")],
)
def test_frames_by_their_place(text: str, time: str) -> None:
    """With whatever stands before it."""
    said = last("deutsch", "bin wieder daheim", "hab 1/30, 1/8 und 1 s, alle f/11", text)
    assert said.startswith(time)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("derf i do obn auf de kantn aufi?", DangerKind.UNCLEAR),
        ("kemma obn am foi aufi und owa knipsn?", DangerKind.CLIMB),
        ("i hör an donner hinterm berg, hob koan schirm", DangerKind.THUNDER),
    ],
)
def test_dangers_in_southern_german(text: str, kind: DangerKind) -> None:
    """What is plainly southern is read in standard words, too."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is kind


@pytest.mark.parametrize(
    "text",
    [
        "wir sitzen fest in der Klamm",
        "ich bin gestürzt am Wasserfall",
        "ich häng in der Wand",
        "quedamos atrapados en la quebrada",
        "estoy lastimada cerca de la cascada",
        "i'm stuck on the ledge",
    ],
)
def test_who_is_held_or_hurt_is_asked_for(text: str) -> None:
    """No walk begins with it, however few the words."""
    assert read_danger(text) is not None


def test_southern_replies_are_heard() -> None:
    """Nobody is in danger, all are safe."""
    assert in_danger("na na, ois guat do", others=False) is False
    assert who_is_safe("jo mia san olle in sicherheit") is Safe.ALL


@pytest.mark.parametrize("text", ["is it safe to go on", "de nada", "de la casa, mog", "na gut"])
def test_nothing_else_is_taken_for_southern_german(text: str) -> None:
    """Two words of it at least, of which no other language has any."""
    assert in_plain_german(text) == text


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "wie lange muss ich belichten, damit der Bach so cremig wird?"),
        ("de", "ich hätte das Wasser gern milchig"),
        ("es", "quiero la cascada bien cremosa"),
        ("es", "me gusta el agua suavecita"),
    ],
)
def test_more_words_for_silk(language: str, text: str) -> None:
    """Milk and cream are of the water, no haze."""
    facts = read(glossed(text, language))
    assert facts.look == "silky"
    assert facts.light is None


@pytest.mark.parametrize(
    ("word", "text"),
    [
        ("deutsch", "da laufen dauernd Touristen durchs Bild"),
        ("deutsch", "ein paar Wanderer stehen mir im Motiv"),
        ("español", "hay turistas en mi foto"),
        ("español", "se me metió un señor en la toma"),
        ("english", "some hikers keep walking through my frame"),
    ],
)
def test_people_in_the_picture(word: str, text: str) -> None:
    """They give scale, or one waits for a gap."""
    player = Player()
    player.say(word)
    assert "asked.people" in keys_of(player, text)


@pytest.mark.parametrize(
    ("word", "text"),
    [
        ("deutsch", "welche Brennweite für ein Detail vom Fall?"),
        ("español", "¿qué objetivo uso para un detalle?"),
    ],
)
def test_a_lens_for_a_part(word: str, text: str) -> None:
    """Not the one that holds the whole fall."""
    assert "asked.lens_plain" in keys_of(abroad(word), text)


def test_spray_in_southern_german() -> None:
    """The drill for drops."""
    assert "symptom.spots" in keys_of(abroad("deutsch"), "wossa spritzt ma oiwei aufs objektiv")


@pytest.mark.parametrize("text", ["servas", "griaß di"])
def test_greetings_of_the_south_are_german(text: str) -> None:
    """A greeting is enough."""
    assert last(text).startswith("Linn hier")


@pytest.mark.parametrize(
    "text",
    [
        "hola, qué tal, ando por la cascada El Coigüe con mi hermana",
        "estoy empezando en esto. ando por un salto, hay poca agua",
        "hallo, ich steh am Hallerbach und hab eine kleine Kamera dabei",
    ],
)
def test_small_talk_beside_an_arrival(text: str) -> None:
    """The walk begins all the same."""
    assert "caution.arrive" in keys_of(Player(), text)


@pytest.mark.parametrize(
    "text",
    [
        "home again, i took three: 1/8, 1/4 and 1 s",
        "bin daheim, hab drei: 1/8, 1/4 und 1 s",
        "ya en casa, saqué tres: 1/8, 1/4 y 1 s",
    ],
)
def test_frames_that_come_with_being_home(text: str) -> None:
    """They are not asked for again."""
    assert "home.what_seen" in keys_of(Player(), text)


@pytest.mark.parametrize(
    ("word", "text"),
    [
        ("deutsch", "so, die grellen Steine unten sind jetzt raus"),
        ("deutsch", "der helle Ast links ist weg"),
        ("español", "ya no se ven las rocas brillantes"),
        ("español", "quité las hojas claras del borde"),
        ("english", "ok now the bright rocks on the left are gone"),
    ],
)
def test_bright_things_that_are_out_raise_no_alarm(word: str, text: str) -> None:
    """They were asked for; stones to cross on are another matter."""
    player = abroad(word) if word in _WORD.values() else Player()
    if word == "english":
        player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod")
    assert read_danger(text) is None
    assert not any(key.startswith("danger") for key in keys_of(player, text))


def test_stones_to_cross_on_are_no_bright_ones() -> None:
    """They were there to go back on."""
    for text in ("die Trittsteine sind jetzt weg", "die Steine sind weg, das Wasser steigt"):
        danger = read_danger(text)
        assert danger is not None
        assert danger.kind is DangerKind.FLOOD


@pytest.mark.parametrize(
    ("word", "text", "said"),
    [
        ("deutsch", "unser Sohn möchte die Tropfen eingefroren", "Unser Sohn: eingefroren"),
        ("deutsch", "meine Kollegin mag es lieber samtig", "Meine Kollegin: seidig"),
        ("español", "mi primo quiere que quede como niebla", "Mi primo: brumosa"),
        ("español", "mi vecina la prefiere suave", "Mi vecina: sedosa"),
    ],
)
def test_what_somebody_else_wishes_is_not_ones_own(word: str, text: str, said: str) -> None:
    """They are named as they were, and the person's own look stays."""
    player = abroad(word)
    (answer,) = player.say(text)
    assert answer.body.startswith(said)
    assert player.context is not None
    assert player.context.facts.look is None
