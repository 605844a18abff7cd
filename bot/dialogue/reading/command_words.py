"""Whole messages that are one of the words which work anywhere, as a word or asked for in a few."""

from __future__ import annotations

from typing import Final

from bot.dialogue.texts import COMMAND_WORDS
from bot.dialogue.texts.commands import command_word, folded


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


#: Commands whose words name a language that can be spoken.
_SPOKEN: Final = frozenset({"english", "german", "spanish"})
#: Names of languages, folded, each with its command.
_NAMES: Final = {
    word: command
    for word, command in COMMAND_WORDS.items()
    if command in _SPOKEN and " " not in word
}
#: What may stand around the name of a language where it is asked for, in any of the languages.
_AROUND_A_NAME: Final = _words(
    "language lang speak talk write answer reply use set switch change go on in to the please "
    "pls can could you we i want would like prefer only my is now linn hi hello hey and kann "
    "gern gerne sprache sprich sprechen rede reden schreib schreibe schreiben antworte "
    "wechsle stell auf um zu bitte kannst konnen konntest du wir ich will mochte lieber nur "
    "meine ist jetzt hallo idioma lengua habla hablame hablar hablas hablo escribe escribeme "
    "responde cambia pon en a al el por favor puedes podemos quiero prefiero mi es ahora solo "
    "hola y"
)

#: Who has lost the thread asks for the next step: a word that asks, one of time or of doing, and
#: nothing else than small words. All folded, in any of the languages.
_ASKING: Final = _words("what whats how hows where was wie womit que cual como")
_NEXT: Final = _words(
    "now next then first jetzt nun dann nachstes nachster weiter zuerst ahora sigue siguiente "
    "luego despues primero toca"
)
_DOING: Final = _words(
    "do start begin continue proceed mach mache machen tu tue tun anfangen fang fange "
    "weitermachen hago hacemos hacer empiezo empezar sigo seguir"
)
_AND: Final = frozenset({"and", "und", "y"})
_BY_THE_WAY: Final = _words(
    "ok okay so well hm hmm done right linn please again here exactly na also gut fertig "
    "bitte denn hier bueno vale pues listo aqui por favor"
)
_SMALL: Final = _words(
    "i we should must shall can am would will supposed meant have need to go on is comes the "
    "step dont know no idea just ich wir soll sollen muss mussen kann kommt geht gehts es als "
    "schritt der an weiss nicht keine ahnung debo debemos tengo tenemos hay puedo el paso "
    "viene se yo lo"
)
_OF_THE_STEP: Final = _ASKING | _NEXT | _DOING | _AND | _BY_THE_WAY | _SMALL

#: Who does not understand what is asked: a word for that, or one that asks with what is asked of.
_UNCLEAR: Final = _words(
    "mean means meaning understand huh heisst bedeutet versteh verstehe kapier kapiere hä "
    "significa entiendo meinst decir refieres"
)
_OF_A_QUESTION: Final = _words(
    "blink blinking blinks blinkt blinken blinke parpadea parpadear warning highlights "
    "highlight format sensor edge edges corner corners lip anchor ladder leaf frame texture "
    "nearest tall see find know sehe seh finde weiss veo encuentro kante rand ecken flecken "
    "manchas dots patches puntos punkte"
)
_ABOUT_IT: Final = _words(
    "i you do does dont did not is are it that this the a an by with of if there me one my "
    "what how where which can should was wie wo woran ich du das es ist nicht ein eine der "
    "die man den sich mit denn quiere que como donde no lo eso esto se es un una el la mi en in on"
)

#: Who wants to see what was taken in: a word for that and one that asks, nothing but small words.
_TAKEN_IN: Final = _words(
    "understood understand got noted heard told tell know have remember kept verstanden notiert "
    "gehort gemerkt weisst hast gespeichert erzahlt gesagt entendido entendiste anotado tienes "
    "sabes recuerdas dicho"
)
_TELLER: Final = _words("you du i ich has tienes sabes recuerdas entendiste he te hemos")
_SO_FAR: Final = _words(
    "what whats did do have has you i we me so far until now already then all of it show tell up "
    "to by was du ich dir mir bisher bis jetzt schon alles denn zeig sag que has he te me hasta "
    "ahora ya todo de lo muestrame dime wie viel how much cuanto"
)

#: What may stand around a word of keeping: praise, assent, small words.
_AROUND_KEEPING: Final = _words(
    "good great nice fine perfect lovely super cool ok okay yes yeah yep wow happy love like it "
    "this that one a frame shot i ill im we well lets with ja jo jep gut passt so prima klasse "
    "perfekt toll schon das die den dieses diese es ich wir mag gefallt mir bild bitte dann si "
    "vale bien perfecto genial bueno me la lo esta este esa ese asi gusta foto nos quedamos con"
)
_KEEPING: Final = frozenset(
    word
    for phrase, command in COMMAND_WORDS.items()
    if command == "keep"
    for word in phrase.split()
    if word not in _AROUND_KEEPING
)


def command_of(text: str) -> str | None:
    """The command that a whole message is, None for anything else.

    Args:
        text: the message as typed.
    """
    words = folded(text).split()
    named = command_word(text) or _language(words)
    if named is not None:
        return named
    if _asks_now(words):
        return "now"
    if _asks_what_is_known(words):
        return "where"
    if "?" not in text and _keeps(words):
        return "keep"
    return "unclear" if _is_unclear(words) else None


def _language(words: list[str]) -> str | None:
    """The one language that a message asks for, with nothing else in it."""
    named = {_NAMES[word] for word in words if word in _NAMES}
    rest = {word for word in words if word not in _NAMES}
    return named.pop() if len(named) == 1 and rest <= _AROUND_A_NAME else None


def _keeps(words: list[str]) -> bool:
    """Whether a message keeps the frame, whatever praise stands beside it: "great, keep it"."""
    said = set(words)
    return bool(said & _KEEPING) and said <= _KEEPING | _AROUND_KEEPING


def _asks_what_is_known(words: list[str]) -> bool:
    """Whether a message asks what was understood, and nothing else: "what have you got so far"."""
    said = set(words)
    asks = bool(said & {"what", "was", "que"})
    return bool(
        asks and said & _TAKEN_IN and said & _TELLER and said <= _TAKEN_IN | _TELLER | _SO_FAR
    )


def _is_unclear(words: list[str]) -> bool:
    """Whether a message asks what is meant, and tells nothing: "what is blinking"."""
    said = set(words)
    if not said <= _UNCLEAR | _OF_A_QUESTION | _ABOUT_IT | _BY_THE_WAY:
        return False
    asks = bool(said & _ASKING - {"was"}) or words[:1] == ["was"] or bool(said & {"wo", "donde"})
    return bool(said & _UNCLEAR) or (asks and bool(said & (_OF_A_QUESTION | {"that", "this"})))


def _asks_now(words: list[str]) -> bool:
    """Whether a message asks for the next step and for nothing of it: "what do i do now"."""
    said = set(words)
    if said & _NEXT and said & _AND and said <= _NEXT | _AND | _BY_THE_WAY:
        return True
    return bool(said <= _OF_THE_STEP and said & _ASKING and said & (_NEXT | _DOING))
