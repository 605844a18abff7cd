"""German words: parts of a reply after a fright that tell of nobody's trouble."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SOFORT: Final = (
    r"(?: (?:sofort|gleich|direkt|alle|beide|schon|jetzt|rechtzeitig|schnell|gleich darauf|dann"
    r"|eben|grad|gerade))*"
)
_WEG: Final = (
    r"(?:weg|los|gegangen|losgegangen|raufgegangen|hochgegangen|hoch|rauf|rauf gegangen"
    r"|hochgestiegen|raufgestiegen|aufgestiegen|aufgebrochen|umgekehrt|abgehauen|hinauf)"
)

_NAME: Final = (
    r"(?!(?:es|das|alles|nichts|nix|niemand\w*|keine?n?|zeit|stativ|kamera|rucksack|tasche"
    r"|handy|mutze|hut|handschuhe?|filter|deckel|objektiv|sachen|zeug|ausrustung|schuhe?|empfang"
    r"|orientierung|weg)\b)\w+"
)

WORDS: Final[Mapping[str, str]] = {
    "aftermath.lead": r"und|aber|ja|also|ok|puh|dann|na|1|2",
    "aftermath.left": (
        rf"(?:(?:wir|ich) )?(?:sind|bin|san)(?: (?:wir|ich))?{_SOFORT} {_WEG}"
        rf"|(?:sofort|gleich|schon) {_WEG}"
        r"|(?:(?:wir|ich) )?(?:haben|hab|habe)(?: (?:alles|sofort|gleich))* (?:zusammen)?gepackt"
    ),
    "aftermath.view": (
        r"(?:von hier(?: oben)?(?: aus)?|oben)? ?(?:(?:sieht man|sehen wir|sehe ich|seh ich)"
        r"|(?:wir sehen|ich sehe|man sieht))"
        r" (?:noch )?(?:den|die|das) (?:fall|wasserfall|bach|fluss|schlucht|klamm|wasser|tal)"
        r"(?: (?:gut|noch|von hier(?: oben)?|durch die \w+|zwischen den \w+|unten|da unten))*"
    ),
    # Somebody only would have liked to.
    "aftermath.keen": (
        r"(?:(?:sie|er) )?(?:hat|hatte|haben) (?:nur|bloss|halt|nur so) lust(?: (?:drauf|darauf))?"
        r"|(?:sie|er) (?:will|wollte) (?:nur|bloss|halt)"
    ),
    "aftermath.wonders": (
        r"(?:(?:ich|wir) )?(?:wollte?n? |will )?(?:(?:nur|bloss|halt) )?(?:frag\w*|wissen)"
        r"(?: (?:ich|wir|mich|uns|nur|bloss|halt))*(?: ob)?|ob"
    ),
    "aftermath.sun": (
        r"(?:jetzt )?(?:(?:kommt|bricht) (?:jetzt |grad |gerade )?die sonne|die sonne kommt"
        r"(?: jetzt| grad| gerade)?) (?:durch|raus|heraus)"
        r"(?: und (?:steht|scheint|liegt) (?:genau |direkt |voll )?auf (?:dem|den|das)"
        r" (?:wasser|fall|wasserfall))?"
    ),
    "aftermath.next": r"(?:und )?fur(?:s| das)? nachste(?:s|n)? (?:mal|tour|besuch)",
    # Whether something is safe, asked behind a "no" to whether anybody is in danger.
    "aftermath.is_it_safe": (
        r"(?:ist|ware|is) (?:das|es|des|s) (?:\w+ )?(?:gefahrlich|sicher|riskant)|geht das"
        r"|(?:kann|darf) (?:man|sie|er) (?:das|ruber)"
    ),
    # Somebody who is not with them: by kin, or by a name, which is no thing.
    "aftermath.without_somebody": (
        rf"(?:haben|hab|habe|mussten|musste)(?: (?:wir|ich|aber|leider|nur))* (?:ihn|sie|{_NAME}"
        r"|(?:mein\w*|unser\w*|den|die|das) (?:sohn|tochter|kind\w*|frau|mann|freund\w*|bruder"
        r"|schwester|vater|mutter|bub\w*|enkel\w*|hund|jungen?|madchen))"
        r"(?: (?:dort|da|unten|in der klamm|am bach))* (?:zuruckgelassen|verloren|dagelassen"
        r"|zurucklassen|aus den augen verloren)"
        rf"|{_NAME} (?:ist|blieb|is)(?: (?:noch|dort|unten|da))* (?:zuruckgeblieben"
        rf"|zuruck geblieben)"
    ),
    "aftermath.nothing_more": (
        r"fur (?:die |das |den )?(?:\w+ )?(?:uns|mich|ihn|sie|kinder|kind|kleinen?|alle|hund|sohn"
        r"|tochter)|da|dort|hier|jetzt|dann|denn|eigentlich|wirklich|oder nicht|machen"
    ),
    "aftermath.wet": (
        r"wasser|bach|fluss|becken|furt|ruber\w*|hinuber\w*|uberquer\w*|durchwat\w*|waten|steine?n?"
        r"|felsen|stamm|andere seite|drubergehen|baden|schwimmen|springen|planschen"
    ),
    "aftermath.shaken": (
        r"(?:nur |bloss )?(?:mir |uns )?(?:zittern|schlottern|wackeln)(?: (?:mir|uns|noch|nur|halt"
        r"|jetzt))*"
        r" (?:die |meine )?(?:beine|knie)(?: (?:noch|ein bisschen|bisschen|etwas|halt|nur))*"
        r"|(?:nur |bloss )?(?:die|meine|mir|uns) (?:die |meine )?(?:beine|knie)(?: (?:sind))?"
        r"(?: (?:noch|nur|halt|etwas|ein bisschen))*"
        r" (?:zittern|schlottern|weich|wackelig|zittrig)(?: (?:noch|halt|etwas))*"
        r"|(?:(?:ich bin|wir sind|bin|sind) )?(?:nur |noch |etwas |ein bisschen )*(?:zittrig"
        r"|wackelig auf den beinen)"
    ),
    # What is asked of another day, or of a shop: no picture of now.
    "aftermath.later": (
        r"(?:fur(?: s| das)? )?nachstes mal|nachste (?:tour|woche)|ein andermal|kaufen|kauf"
        r"|anschaffen|zulegen|leisten kann"
    ),
    # Where people stand who are away from the water.
    "aftermath.from_here": r"von (?:hier|dort|da)(?: oben)?|vom \w*weg(?: aus)?|hier oben",
}
