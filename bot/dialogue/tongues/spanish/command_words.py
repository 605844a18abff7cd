"""Spanish words around those which work anywhere; all folded."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What may stand around the name of a language where it is asked for.
    "command_words.around_a_name": """
        idioma lengua habla hablame hablar hablas hablo escribe escribeme responde
        cambia pon en a al el por favor puedes podemos quiero prefiero mi es ahora solo
        hola y""",
    # Who has lost the thread asks for the next step: a word that asks, one of time or of doing,
    # and nothing else than small words.
    "command_words.asking": "que cual como",
    "command_words.next": "ahora sigue siguiente luego despues primero toca",
    "command_words.doing": "hago hacemos hacer empiezo empezar sigo seguir",
    "command_words.and": "y",
    "command_words.by_the_way": "bueno vale pues listo aqui por favor",
    "command_words.small": "debo debemos tengo tenemos hay puedo el paso viene se yo lo",
    # Who does not understand what is asked: a word for that, or one that asks with what is asked
    # of.
    "command_words.unclear": "significa entiendo decir refieres",
    "command_words.of_a_question": "parpadea parpadear veo encuentro manchas puntos",
    "command_words.about_it": """
        quiere que como donde no lo eso esto se es un una el la mi en""",
    # Who wants to see what was taken in: a word for that and one that asks.
    "command_words.taken_in": "entendido entendiste anotado tienes sabes recuerdas dicho",
    "command_words.teller": "has tienes sabes recuerdas entendiste he te hemos",
    "command_words.so_far": """
        me que he te me hasta ahora ya todo de lo muestrame dime cuanto""",
    # What may stand around a word of keeping: praise, assent, small words.
    "command_words.around_keeping": """
        si vale bien perfecto genial bueno me la lo esta este esa ese asi gusta foto nos
        quedamos con""",
}
