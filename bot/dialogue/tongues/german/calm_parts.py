"""German words: parts of a message that sound of the danger that they deny."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_ES: Final = r"(?:(?:das |der |die )?(?:wasser|bach|fluss|pegel|wasserstand|es|des|s))"
_NICHT: Final = r"(?:nicht|nich|nit|net|ned|nie)"
_EH: Final = r"(?:(?:gar|doch|eh|auch|aber|uberhaupt|bisher|ja|wirklich) )*"
_ALS: Final = r"(?: als (?:vorhin|vorher|zuvor|am anfang))?"

_BISSL: Final = (
    r"(?:(?:nur|bloss|noch|immer|etwas|a|ein|bisschen|bissl|wenig|es|da|dort|unten|schaut gut aus)"
    r" )*"
)
_BISSL_AM_ENDE: Final = r"(?: (?:noch|immer|etwas|a|ein|bisschen|bissl|wenig|es|da|dort|unten))*"
_LANDET: Final = (
    r"(?:(?:wasser|fall|wasserfall|bach|strahl) )?(?:auf\w+|reinfallt|hinfallt|landet"
    r"|runterkommt|herunterkommt|hineinfallt|unten ankommt|ins becken fallt)"
)
_BLINKT: Final = r"(?:blinkts?|blinken|blinkt es)"

WORDS: Final[Mapping[str, str]] = {
    "calm_parts.last": NOTHING,
    "calm_parts.joined": r"und|aber|also|weil|doch",
    "calm_parts.lead": r"und|aber|also|nein|nee|ne|na|doch|ok",
    # "Es steigt nicht", which "nicht mehr" or "noch nicht" would take back.
    "calm_parts.not_rising": (
        rf"{_ES} steigt {_EH}{_NICHT}(?: an)?"
        rf"|{_ES} (?:ist|is|wird|hat sich) {_EH}{_NICHT}"
        rf" (?:gestiegen|hoher(?: geworden)?|am steigen|angestiegen){_ALS}"
    ),
    "calm_parts.pulled_back": (
        r"(?:ich )?(?:hab|habe|haben)(?: (?:ich|wir))? (?:sie|ihn|es|(?:mein\w*|den|die|das)"
        r" (?:sohn|tochter|kind|kinder|hund|kleine\w*|bub\w*|freund\w*|frau|mann))"
        r"(?: (?:schon|gleich|sofort|wieder|grad|weg|vom|von der|von dem|gelander|rand|kante))*"
        r" (?:zuruckgezogen|zuruckgeholt|weggezogen|weggeholt|zuruckgerufen|runtergeholt)"
    ),
    # What tells that nothing is the matter, where danger only is likely by other words.
    "calm_parts.idle": (
        r"(?:(?:die|der|das|mein\w*|unser\w*|alle|beide|den) )*\w+(?: (?:ist|is|sind|hat|haben"
        r"|jammer\w*"
        r"|schon|jetzt|so|langsam|wieder|nur|eh|auch|wird|werden|ihm|ihr|ihnen|muss|mussen))*"
        r" (?:hunger|hungrig|durst|durstig|fad|langweilig|aufs klo)(?: (?:schon|jetzt|haha|lol))*"
    ),
    # A thing that is put under the camera: nobody stands under anything.
    "calm_parts.put_under": (
        r"(?:(?:kann|konnte|soll|darf) ich )?(?:da )?(?:mein\w*|ein\w*|den|die"
        r"|das) (?:\w+ )?(?:pulli"
        r"|jacke|tasche|rucksack|schal|handtuch|handschuhe?|mutze|hemd|buch|stein|hoodie|kissen)"
        r"(?: da)? (?:drunter\w*|unter\w*|drauf\w*|drum\w*|unter (?:das|die"
        r"|mein\w*) \w+)(?: (?:legen|tun"
        r"|packen|stopfen))?"
    ),
    # What a camera or phone shows, that nobody finds: no way is lost.
    "calm_parts.where_shown": (
        r"(?:(?:ich|hab|habe|leider|auch) )*(?:weiss(?: (?:ich|doch|gar|auch))* (?:nicht|nich|net"
        r"|ned|nit)|keine? ahnung|ka|finde? (?:nicht|nich|net|ned)|kein plan)"
        r"(?: ,)? wo (?:(?:ich|man|du|des|das|sowas|so was"
        r"|die (?:zahl|einstellung|warnung|anzeige|option|iso|werte?|blende)) )+"
        r"(?:(?:da|hier|bei mir|an der kamera|am handy) )*"
        r"(?:sehe?|sieht|siehst|finde?|findet|steht|stehen soll|einstelle?|einstellt|einschalte?"
        r"|einschaltet|angezeigt wird|nachschaue?|ablese?n?|kann|sehen kann|finden kann)"
    ),
    # Where the water lands, in a picture that blinks: nobody stands there.
    "calm_parts.blinks": (
        rf"{_BISSL}(?:(?:unten|oben|hinten|links|rechts|am fuss|ganz) )*"
        rf"wo (?:der|das|die|es|s) (?:\w+ )??{_LANDET} {_BISSL}{_BLINKT}{_BISSL_AM_ENDE}"
        rf"|{_BISSL}(?:es |s |das )?{_BLINKT}{_BISSL_AM_ENDE}"
        rf" (?:(?:unten|da|dort|ganz) )*wo (?:der|das|die|es|s) (?:\w+ )??{_LANDET}"
    ),
    # Under trees is shade.
    "calm_parts.trees": (
        r"(?:(?:ich|wir|sind|bin|haben|stehen|steh|jetzt|sitzen|uns|mich) )+unter (?:die "
        r"|den |der "
        r"|paar )?(?:baumen?|blatter\w*|buchen|tannen|fichten)(?: (?:gegangen|gestellt|gesetzt"
        r"|gezogen|jetzt|ein|bisschen|bissl|weiter|oben|am weg))*"
    ),
    # Water that looks as a short time makes it.
    "calm_parts.looks_crisp": (
        r"(?:das |mein )*(?:wasser|der fall|alles|es) (?:schaut|sieht|wirkt|kommt)"
        r" (?:(?:ganz|so|total|noch|immer|zu|etwas) )*(?:eingefroren|gefroren|stachelig|spitz"
        r"|hart|eisig)(?: und (?:stachelig|hart|spitz|scharf))*(?: aus| raus)?"
    ),
    # A deck that moves the tripod.
    "calm_parts.wobbles": (
        r"(?:der |die |das )*(?:steg|brucke|plattform|bretter|boden)"
        r" (?:wackelt|schwingt|vibriert|wippt|wackeln|zittert)(?: (?:auch|etwas|bissl|a|ein|immer"
        r"|halt))*(?: ,)? (?:wenn|sobald) (?:\w+ ){1,3}(?:hupft|springt|geht|lauft|druber\w*|hopst"
        r"|tritt|trampelt)"
    ),
    # The bot's own word: a ladder of times.
    "calm_parts.own_words": (
        r"was ist (?:ein\w*|die|das mit der) (?:\w*leiter|zeitenleiter)"
        r"|(?:du |damit )?(?:meinst|meinen)(?: du| sie)?(?: (?:aber|doch|ja))* nicht(?: ,)?"
        r" dass (?:ich|wir) (?:\w+ )?kletter\w*(?: soll\w*| muss)?"
        r"|(?:ich )?(?:versteh|kapier)\w* (?:die|deine|das mit der) (?:reihe|\w*leiter)"
        r" (?:nicht|net)"
    ),
    # Dry ground some metres from the fall.
    "calm_parts.dry_ground": (
        r"(?:(?:ich|wir|jetzt|hier) )*(?:steh\w*|stehn)(?: (?:ich|wir|jetzt|hier))* (?:auf|am)"
        r" (?:(?:ein\w*|der|dem|flach\w*|trocken\w*|fest\w*|eben\w*) )*"
        r"(?:kies\w*|schotter\w*|wiese|weg|ufer|sand\w*|gras)"
        r"(?: (?:etwa|ca|ungefahr|so|rund))* \d{1,3}(?:[.,]\d)? ?(?:m|meter)"
        r"(?: (?:weg|entfernt))?(?: (?:vom|von dem) (?:fall|wasserfall|wasser))?(?: weg"
        r"| entfernt)?"
    ),
    # Who is bored by the water: what is thrown goes in, not over an edge.
    "calm_parts.stones": (
        r"(?:(?:der|die|das|den|mein\w*|unser\w*|beide) )*\w+ (?:wirft|werfen|schmeisst|schmeissen"
        r"|schmeisst)(?: (?:grad|gerade|nur|halt|immer|kleine|wieder|die ganze zeit))*"
        r" (?:steine?|steinchen|kiesel\w*|stocke|stockchen|aste|zweige)"
        r" (?:rein|hinein|ins wasser|in den bach|ins becken|in den fluss)"
    ),
    # Who walks along, and for which meal they are back.
    "calm_parts.planned": (
        r"(?:nur ich|ich gehe? allein|ich allein)(?: (?:gehe?|lauf\w*|wander\w*|unterwegs))?"
        r"|(?:zum|vor dem|bis zum) (?:mittag\w*|abendessen|kaffee|fruhstuck)"
        r" (?:bin ich|sind wir) (?:wieder )?(?:zuruck|daheim|zu ?hause)"
        r"|(?:ich bin|wir sind|bin|sind) (?:zum|vor dem|bis zum) (?:mittag\w*|abendessen|kaffee)"
        r" (?:wieder )?(?:zuruck|daheim|zu ?hause)"
    ),
    # How long somebody has been there.
    "calm_parts.waited": (
        r"(?:(?:ich|wir) )?(?:bin|sind)(?: (?:ich|wir|jetzt|schon|fast|etwa|ca|seit|bald"
        r"|gut|nun))*"
        r" (?:eine?r?|zwei|drei|\d+|einer halben|eine halbe) ?(?:stunden?|minuten|min|h)"
        r" (?:hier|da)"
        r"(?: (?:jetzt|schon|glaub(?:e)? ich|ungefahr))*"
    ),
    # Nobody has looked up when the sun sets.
    "calm_parts.sunset": (
        r"(?:(?:ich|hab|habe|wir|haben) )*(?:keine ahnung|kein plan|weiss (?:ich )?nicht"
        r"|ka)(?: ,)?"
        r" (?:vom sonnenuntergang|wann (?:die )?(?:sonne untergeht|sonnenuntergang(?: ist)?))"
    ),
    # Beside a storm, or a way over ice, none of what is seen is harmless.
    "calm_parts.unsafe": (
        r"gewitter\w*|donner\w*|(?:ge)?grummel\w*|(?:ge)?rumpel\w*|grollt?\w*|kracht?|gekracht"
        r"|knallt?|geknallt|(?:dunkle|schwarze) wolken|blitz\w*|unwetter"
        r"|(?:drauf|druber|drueber|darauf|daruber)(?: \w+)?"
    ),
}
