"""German words around those which work anywhere; all folded."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What may stand around the name of a language where it is asked for.
    "command_words.around_a_name": """
        kann gern gerne sprache sprich sprechen rede reden schreib schreibe schreiben
        antworte wechsle stell auf um zu bitte kannst konnen konntest du wir ich will
        mochte lieber nur meine ist jetzt hallo""",
    # Who has lost the thread asks for the next step: a word that asks, one of time or of doing,
    # and nothing else than small words.
    "command_words.asking": "was wie womit",
    "command_words.next": "jetzt nun dann nachstes nachster weiter zuerst",
    "command_words.doing": """
        mach mache machen tu tue tun anfangen fang fange weitermachen""",
    "command_words.and": "und",
    "command_words.by_the_way": "na also gut fertig bitte denn hier",
    "command_words.small": """
        ich wir soll sollen muss mussen kann kommt geht gehts es als schritt der an
        weiss nicht keine ahnung""",
    # Who does not understand what is asked: a word for that, or one that asks with what is asked
    # of.
    "command_words.unclear": "heisst bedeutet versteh verstehe kapier kapiere hä meinst",
    "command_words.of_a_question": """
        blinkt blinken blinke sehe seh finde weiss rand ecken flecken punkte""",
    "command_words.about_it": """
        was wie wo woran ich du das es ist nicht ein eine der die man den sich mit denn""",
    # Who wants to see what was taken in: a word for that and one that asks.
    "command_words.taken_in": """
        verstanden notiert gehort gemerkt weisst hast gespeichert erzahlt gesagt""",
    "command_words.teller": "du ich",
    "command_words.so_far": """
        was du ich dir mir bisher bis jetzt schon alles denn zeig sag wie viel""",
    # What may stand around a word of keeping: praise, assent, small words.
    "command_words.around_keeping": """
        ja jo jep gut passt so prima klasse perfekt toll schon das die den dieses diese
        es ich wir mag gefallt mir bild bitte dann""",
}
