"""Safety as people say it in the middle of other things: what rises, who is cold, who is back."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, Level, read_danger
from bot.dialogue.danger.calm_parts import denies_rising, without_calm, without_idle
from bot.dialogue.danger.cold_child import child_cools_out, child_is_cold
from bot.dialogue.danger.cold_hands import beside_cold_hands, without_cold_hands
from bot.dialogue.danger.given_up import gives_up, wishes
from bot.dialogue.danger.with_me import is_with_me, wishes_a_picture
from bot.dialogue.meaning.water_colour import Brown, brown_asked
from bot.dialogue.reading.standing import asks_to_stand, only_asks_to_stand
from tests.dialogue.player import Player

WALK = "fall 8 m tall, 12 m away, rock at 1.5 m, full frame, 24-70 and tripod"
FLOOD = "the water is brown and rising"
IN_IT = "my son fell in the water"


def after(*lines: str) -> Player:
    """A walk with settings, and then these messages."""
    player = Player()
    for line in (WALK, "1", "1", *lines):
        player.say(line)
    return player


def keys(*lines: str) -> list[str]:
    """The texts of the answer to the last of the lines."""
    return [key for say in after(*lines[:-1]).say(lines[-1]) for key in say.keys]


def state(*lines: str) -> tuple[bool, bool, bool]:
    """Whether a place is closed, an emergency held, somebody doubted."""
    context = after(*lines).context
    assert context is not None
    talk = context.conversation
    return talk.closed, talk.emergency is not None, talk.doubted is not None


NOTHING_OPEN = (False, False, False)


@pytest.mark.parametrize(
    "text",
    [
        (
            "one more thing, which I should have asked first: the stream is a little browner than"
            " when"
            " I arrived and the stones I marked are half covered. I am alone. Pack up?"
        ),
        "is f/11 ok? also the water looks murkier than before",
        "the stones I marked are half covered",
        "der Bach ist etwas brauner als vorhin, und welche Zeit nehme ich?",
        "die markierten Steine sind halb bedeckt",
        "el río viene más alto que cuando llegamos, qué tiempo pongo?",
        "las piedras que marqué están medio cubiertas",
    ],
)
def test_water_that_is_browner_or_higher_than_before_rises(text: str) -> None:
    """However small the difference, and whatever is asked beside it."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is DangerKind.FLOOD
    assert "danger.flood" in keys(text)


@pytest.mark.parametrize(
    "text",
    [
        "the water is not higher than before",
        "der bach ist nicht höher als vorhin",
        "if the stream gets browner than before we leave",
        "the fall is higher than before in the frame",
        "it ain't rising",
        "there's no waterfall below, just more stream n it aint rising",
        "no its NOT rising",
        "das wasser steigt nich",
        "el agua no sube",
    ],
)
def test_water_that_is_denied_to_rise_does_not(text: str) -> None:
    danger = read_danger(text)
    assert danger is None or danger.level is Level.HINT


@pytest.mark.parametrize(
    "text",
    [
        "it aint rising and my friend fell in",
        "the water is brown and loud but not rising",
        "no it's not rising, my son fell in though",
        "mi hijo se cayó al agua y no sube",
        "he fell in, not coming up",
        "el agua ya no sube",
        "I pulled her back, she's bleeding",
    ],
)
def test_what_stands_beside_a_denial_is_heard(text: str) -> None:
    """Nor is who does not come up a water that does not."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.level is Level.EMERGENCY


def test_water_that_rose_before_is_no_calm() -> None:
    """It rises no more, so it had: that is asked about at least."""
    assert read_danger("das wasser steigt nicht mehr") is not None


def test_a_denial_that_asks_or_goes_on_is_none() -> None:
    assert without_calm("it's not rising?") == "it's not rising?"
    assert without_calm("its not rising any more") == "its not rising any more"
    assert denies_rising("all clear, and it isn't rising at all")
    assert not denies_rising("is it not rising?")
    assert without_idle("the kids are bored already") == ""
    assert without_idle("ben is bored and wandered off") == "ben is bored and wandered off"


@pytest.mark.parametrize(
    "text",
    [
        "can my 8 year old paddle at the edge, the water is brown-ish but clear",
        "is it ok if the dog swims a bit",
        "may my daughter splash about in the pool",
        "is it ok to let the dog in the water",
        "kids want to paddle, ok?",
        "can the kids play by the water's edge while I shoot",
        "darf mein kleiner da plantschen",
        "kann der Hund ins Wasser",
        "puede bañarse el perro?",
        "pueden los niños chapotear en la orilla?",
    ],
)
def test_who_may_be_in_the_water_is_answered_as_leave_to_stand(text: str) -> None:
    """Never a leave, and no rescue of a child that is dry."""
    said = keys(text)
    assert said[0] == "danger.wading"
    assert state(text) == (True, False, False)


@pytest.mark.parametrize(
    "text",
    [
        "alright, no paddling then",
        "can I get the splash at 1/250",
        "should the kids who swim be in the frame",
        "kann ich mit der zeit spielen am wasser",
    ],
)
def test_what_asks_no_leave(text: str) -> None:
    assert not asks_to_stand(text)


def test_who_is_in_the_water_already_asks_no_leave() -> None:
    assert only_asks_to_stand("may my daughter splash about in the pool")
    assert not only_asks_to_stand("can he go in the water he cant get out")
    assert not only_asks_to_stand("can he go in the water? he fell in")
    assert keys("can he get in the water he cant get out")[0] == "danger.in_water"


def test_leave_that_is_let_be_opens_the_walk_again() -> None:
    """With whatever is said of a hungry child beside it; a wish in German is one, too."""
    asked = "you're not listening. can my 8 year old paddle at the edge, the water is brownish"
    let_be = "Alright, no paddling then. Milo is already moaning he's hungry. Path with steps"
    assert state(asked, let_be) == NOTHING_OPEN
    wish = "würd gern auf den stein mitten im bach, das wasser geht nur bis zum knöchel"
    zoom = "ne bin am rand, allein aber. ok lass ich. kann ich mit dem zoom näher ran"
    assert state(wish)[0]
    assert state(wish, zoom) == NOTHING_OPEN
    assert gives_up("ok, no swimming for the kids then")
    assert gives_up("dann kein plantschen")
    assert wishes("me gustaría subir")
    assert not wishes("he went up")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("the beck here is a sort of tea color, thats not mud is it?", "water.brown_asked"),
        ("der bach ist braun wie tee aber klar, ist das schlamm?", "water.tea"),
        ("el arroyo es color té, ¿es barro?", "water.brown_asked"),
        ("brown but see through, no twigs, not rising, is it ok?", "water.tea"),
        ("the water is brown and full of twigs, is that normal?", "danger.flood"),
        ("creek color of whisky, a bit silty, is that normal?", "danger.flood"),
    ],
)
def test_the_colour_of_the_water_gets_its_own_answer(text: str, said: str) -> None:
    """Peat or flood; what is cloudy or carries twigs is flood."""
    assert said in keys(text)


def test_peat_is_no_leave() -> None:
    text = (
        "I asked about the colour. you can see the stones through it, brown but clear like tea."
        " is it safe for the kids or not"
    )
    assert keys(text)[:2] == ["water.tea", "water.no_leave"]
    assert brown_asked("the stream is murky and brown, is that mud?") is Brown.CLOUDY


@pytest.mark.parametrize(
    "text",
    [
        "the water is brown in the raw, which white balance?",
        "the brown rocks in the stream, is f/8 ok?",
        "brown leaves, is that normal?",
        "el agua me sale marrón en la foto pero es transparente, qué color pongo",
        "the stream is brown and clear.",
        "what is a polariser?",
    ],
)
def test_other_colours_are_not_of_the_water(text: str) -> None:
    assert brown_asked(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "kids are cold, wet sleeves, fleece is in the car 20 minutes down. go now or one more?",
        "the kids are getting cold, wet sleeves. how long till i should worry, jonas is 8",
        "my 8 year old is freezing, how long can we stay",
        "der kleinen ist kalt und die socken sind nass, noch ein bild?",
        "die Kinder frieren, wie lange geht das noch",
        "los niños tienen frío y están mojados",
    ],
)
def test_a_cold_child_goes_home(text: str) -> None:
    """Dry, warm, now; no advice for the path, no next frame."""
    assert keys(text)[0] == "danger.cold.child"
    assert state(text)[1]


def test_a_child_that_only_is_cold_is_warmed() -> None:
    """What is graver is said first; cold that is over, or of a picture, is none."""
    assert keys("my kids are cold")[0] == "danger.cold.child"
    assert not state("my kids are cold")[1]
    assert child_cools_out("my son is wet and cold. he fell in")
    graver = read_danger("the water is rising, the kids are cold and wet")
    assert graver is not None
    assert graver.kind is DangerKind.FLOOD
    assert not child_is_cold("the kids love cold colours")
    assert not child_is_cold("der Bub zittert vor Aufregung")
    assert not child_is_cold("the kids were cold, now warm again")
    sounds = read_danger("my son is freezing cold and pale")
    assert sounds is not None
    assert sounds.kind is DangerKind.COLD


@pytest.mark.parametrize(
    "text",
    [
        "fingers numb already",
        "mir frieren langsam die finger ab",
        "mir frieren langsam die finger ab und es wird dunkler, wie viel iso darf ich denn hoch",
        "my fingers are numb, which iso now?",
        "tengo los dedos dormidos, qué tiempo pongo?",
    ],
)
def test_cold_fingers_are_warmed_and_the_walk_goes_on(text: str) -> None:
    """Also beside a question of the picture, which is answered."""
    assert read_danger(text) is None
    assert keys(text)[0] == "precaution.cold_hands"
    assert state(text) == NOTHING_OPEN


def test_shaking_from_the_cold_is_answered_before_the_frame() -> None:
    said = keys("does 1/25 work handheld when I'm shaking from cold?")
    assert said[0] == "precaution.cold"
    assert len(said) > 1


@pytest.mark.parametrize(
    "text",
    [
        "fingers numb and white, which iso?",
        "I'm shaking from the cold and can't stop, which iso",
        "my fingers are numb, they are waxy and hard, which iso?",
        "my fingers are numb and i fell, which shutter?",
        "my hands are numb and I am so tired, f/8?",
        "my hands are numb and ben went under, which iso?",
        "can't feel my fingers",
    ],
)
def test_what_is_worse_than_cold_hands_stays_an_emergency(text: str) -> None:
    danger = read_danger(text)
    assert danger is not None
    assert danger.level is Level.EMERGENCY


def test_cold_hands_alone_leave_nothing_beside() -> None:
    assert beside_cold_hands("my hands are cold") == ""
    assert beside_cold_hands("which iso now?") == ""
    assert without_cold_hands("all good, just cold fingers") == "all good"
    assert without_cold_hands("all good") == "all good"


@pytest.mark.parametrize(
    "lines",
    [
        (
            "there's a platform. 11yo already hanging over the railing. any settings for handheld?",
            "1, I pulled her back, she's holding my sleeve now. so handheld, what do I set?",
        ),
        (
            "the dog just got into the water, he's paddling, quite quick there",
            (
                "it's the DOG not a child. he's out, shaking all over us. kids stayed with me. all"
                " safe, everyone wet"
            ),
        ),
        (IN_IT, "we're fine, he's out. my wife holds his hand. which iso"),
        (IN_IT, "sí, todos a salvo, está conmigo. solo quiero una foto"),
        ("mein freund ist reingerutscht", "ja alle sicher. er steht neben mir. will ein foto"),
        (FLOOD, "what?? no its NOT rising, were chill. yes all safe. just want 2 get closer"),
        (FLOOD, "ja alle sicher, will nur näher ran mit dem handy"),
        ("I'm shivering and can't stop", "yes all good, just cold fingers, gloves on. iso 800?"),
        (
            "ich zittere und kann nicht aufhören",
            "ja alles gut nur kalte finger, hab handschuhe an. geht iso 800?",
        ),
        (
            "kids are cold, wet sleeves. go now?",
            (
                "we're back at the car, everyone's warm again. dog smells. of the two frames, the"
                " 1/30"
                " one and one at 1/60 that's darker, which is better to keep?"
            ),
        ),
    ],
)
def test_good_news_counts_as_what_it_says(lines: tuple[str, ...]) -> None:
    """Who is back, held by the hand, or was the dog; a wish for the picture, and frames."""
    assert any(state(lines[0]))
    assert state(*lines) == NOTHING_OPEN


@pytest.mark.parametrize(
    "lines",
    [
        (FLOOD, "yes all safe. i want to get closer to the phone i dropped in"),
        (FLOOD, "yes all safe, we just want settings for the phone. ben is fetching the bag"),
        (IN_IT, "yes all safe. kids stayed with me. he is shaking all over. which iso"),
        (IN_IT, "all safe. she's with me but he is not"),
    ],
)
def test_who_is_not_with_them_holds_the_walk(lines: tuple[str, ...]) -> None:
    assert state(*lines)[1]


def test_parts_about_somebody_are_known_as_a_whole() -> None:
    """What goes on may tell of more."""
    assert is_with_me("Ruby is next to me now")
    assert is_with_me("die kleine ist bei mir")
    assert not is_with_me("she's with me but she hit her head")
    assert not is_with_me("nobody is with me")
    assert not is_with_me("is she with you?")
    assert wishes_a_picture("just want to get closer with the phone")
    assert not wishes_a_picture("just want to get closer to the edge")


@pytest.mark.parametrize(
    "text",
    [
        "wheres long exposure mode?? and can i put my hoodie under it",
        "kann ich da meinen pulli drunterlegen, und welche zeit?",
    ],
)
def test_bored_children_and_a_hoodie_are_no_danger(text: str) -> None:
    assert "danger.hint" not in keys(text)
    assert state(text) == NOTHING_OPEN
