"""German words: who asks, before they set out, of a gorge after rain."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_BACH: Final = r"(?:bach|bache|fluss|wildbach|wasser|pegel|klamm|wasserstand|gebirgsbach|es|er|der)"

WORDS: Final[Mapping[str, str]] = {
    "rain_asked.rain": r"regen\w*|geregnet|regnet\w*|geschuttet|gegossen|wolkenbruch|starkregen",
    "rain_asked.narrow": r"klamm|schlucht|tobel|canyon",
    "rain_asked.place": r"bach|wasserfall|fall|fluss|wasserfalle",
    "rain_asked.safe": (
        r"gefahrlich\w*|gefahr|sicher|riskant|hochwasser|sturzflut|zu (?:viel wasser|riskant)"
    ),
    "rain_asked.child": (
        r"kind(?:er|ern)?|kids|sohn|tochter|klein(?:e|en|er)|bub\w*|madchen|madel|jungs?|enkel\w*"
        r"|baby|schuler\w*"
    ),
    "rain_asked.ask": (
        r"kann|konnen|darf|durfen|soll|sollen|ist|is|sind|geht|ob|wie|wird|war|traut|meinst"
    ),
    "rain_asked.plan": (
        r"(?:will|wollen|mocht\w*|gehen|geh|fahren|fahr)(?: \w+){0,9}? (?:los|hin|gehen|fahren|rein"
        r"|zum|in die)|losgeh\w*|aufbrechen|morgen|nachher|gleich|heute"
    ),
    "rain_asked.rises": (
        rf"(?:steigt|steigen|schwillt|schwellen|kommt|kann)(?: (?:denn|eigentlich|dann|da))*"
        rf" (?:(?:so|ein|eine|nem|der|die|das|solche\w*|kleine\w*) )*{_BACH}(?: \w+){{0,7}}?"
        r" (?:weiter|noch|an|hoher|mehr|regen)"
        rf"|(?:ob|wie lang\w*)(?: \w+){{0,5}}? (?:{_BACH})(?: \w+){{0,6}}? (?:steigt|ansteigt"
        rf"|steigen"
        r"|anschwillt)"
        r"|(?:is|ist|ob)(?: (?:das|des|dann))* (?:schlimmste|argste)(?: \w+){0,2} (?:vorbei"
        r"|uberstanden"
        r"|durch)"
    ),
    "rain_asked.signs": (
        r"(?:woran|wie|wann)(?: (?:merk\w*|erkenn\w*|seh\w*|weiss|mussen|muss|sollen|sollte\w*|kann"
        r"|ich|wir|man|das|dass|es|,))+(?: \w+){0,4}? (?:umdreh\w*|umkehr\w*|raus\w*|zuruck\w*|weg)"
    ),
    "rain_asked.again": (
        r"(?:beantwort\w*|sag|antwort\w*|was ist|noch ?mal|zuruck zu\w*)(?: \w+){0,6}"
        r" (?:hochwasser|sturzflut|wasser ?anstieg)"
    ),
    "rain_asked.there": (
        r"(?:ich bin|wir sind|bin|sind|stehen|steh) (?:(?:jetzt|grad|gerade|schon|mitten|unten) )*"
        r"(?:in der|in dieser|am|im) (?:klamm|schlucht|tobel|bach|bachbett)|braun\w*|lauter|trub\w*"
        r"|(?<!ob der )(?<!ob ein )(?<!so ein )(?:bach|wasser|pegel|fluss|wasserstand)"
        r"(?: (?:in|im|der|dem|hier|da|jetzt|klamm|schlucht))* (?:steigt|ist gestiegen|kommt hoch)"
    ),
    # Who cannot get away, or is down there while it pours; not what is only supposed.
    "rain_asked.trouble": (
        r"abgeschnitten|eingeschlossen|gefangen|sitz\w*(?: \w+)? fest|stecken?(?: \w+)? fest"
        r"|festsitzen|(?:komm|komme|kommen|kommt|kann|konnen)(?: (?:ich|wir|sie|er|da|hier|jetzt"
        r"|ja))* (?:nicht|nich|nimmer|net|ned|nit)(?: mehr)? (?:ruber|hinuber|heruber|zuruck|raus"
        r"|heraus|druber|weg|uber den|uber die)"
        r"|(?:bin|sind|ist|stehen|steh|stehe|sitzen|sitze|sitz|sitzt|steht)"
        r"(?: (?:ich|wir|jetzt|hier|da|noch|gerade|grad))*"
        r" auf (?:der|dem|einer|einem|nem|ner)(?: \w+)? (?:insel|stein|felsen|fels|felsblock"
        r"|kiesbank)"
        r"|(?<!wenn die )(?<!wenn meine )(?<!ob die )(?<!ob meine )(?:kind|kinder|kids|sohn"
        r"|tochter|enkel\w*|bub\w*|jungs?|madchen|madel|mann|frau|freund\w*|kleinen?|sie)"
        r"(?: \w+)?? (?:ist|is|sind|stecken|steckt|spielen|spielt)"
        r"(?: (?:noch|jetzt|da|schon|gerade|grad|alle|allein|unten|drunten|drin))*"
        r" (?:in der|in einer|im) (?:klamm|schlucht|tobel|canyon|bach|fluss|wasser)"
        r"|(?:mitgerissen|weggerissen|fortgerissen|weggespult|weggeschwemmt|fortgespult"
        r"|mitgenommen)|(?:steg|brucke|weg|strasse) (?:ist|is) (?:jetzt |schon )?(?:weg|uberflutet"
        r"|unter wasser)"
    ),
}
