"""What may stand beside "all are safe" without making it doubtful; anything else is asked about."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

#: Words that tell of nobody's trouble, in each language; own list. What is not in it may be a
#: danger in words that nobody thought of ("all clear, he just lies there"), and is asked about.
_ENGLISH: Final = """
    a an the and so just very really now again all both each everyone everybody we i you he she they
    it me us him her them my our his their ours mine is are was were am be been got get have has had
    did that this these those there here at in on to of from for with by up back as too also then
    car cars path trail road track hut shelter hotel home house tent bus van parking park lot bridge
    viewpoint platform deck trailhead meadow lawn grass bench table picnic sun shade shore bank
    blanket blankets tea cocoa soup coffee clothes socks jacket jackets dry warm wet muddy dirty
    tired hungry thirsty scared shaken frightened happy relieved fine ok okay safe sound good well
    great alright right unhurt thanks thank thx cheers phew whew wow lol haha god lucky luck sorry
    yes yep yeah yup finally already close call scare lesson learned learnt friend friends wife
    husband son daughter brother sister mum mom dad kid kids child children dog group people came
    made sitting sit sat standing waiting together inside indoors drinking eating heading driving
    drove going moment minute minutes ago one two three four five six seven eight nine ten pm old
    seen your much many only bit little quite scary heating counting counted count heads complete
    fuss storm thunder rain sky passed over stopped linn everything calm worry worries helping kind
    heater sorted anymore more any plaster bandage easily himself herself themselves laughing
    glove gloves hat hats mittens on just bruise bruises bruised scratch scratches scratched graze
    nice hug hugs proper safely soundly crew team class high higher ground out but no nothing nobody
    students pupils participants
"""
_GERMAN: Final = """
    und so sehr jetzt nun wieder alle alles beide wir ich du er sie es uns ihn ihm ihr mir mich dir
    mein meine unser unsere der die das dem den des ein eine einen einem ist sind war waren bin bist
    habe haben hat hab hatten sitzen sitzt sitz sitze stehen steht stehe warten warm warme trocken
    trockene im am an auf in ins ans beim vom zum zur bei mit nach aus auto autos pfad strasse hutte
    hotel haus daheim zuhause heim bus parkplatz zelt brucke plattform aussichtspunkt wiese bank
    sonne ufer schatten tee kakao kaffee decke decken kleider socken jacke nass mude schlammig
    dreckig hungrig erschrocken froh glucklich danke vielen dank puh uff gott sei gluck lol haha ja
    jo jep nein ok okay gut super prima sicher sicherheit gesund munter heil wohlauf endlich schon
    auch da dort hier oben zuruck raus draussen drinnen angekommen freund freundin freunde kinder
    kind hund mann frau tochter sohn bruder schwester papa mama gruppe leute aber dann schreck
    schrecken knapp sorry entschuldigung fahren gehen gerade grad eben minute minuten vor eins zwei
    drei vier funf sechs sieben acht neun zehn nichts niemand keiner passiert wohl allen allem nur
    bisschen bissl heizung vollzahlig gezahlt gewitter regen vorbei ruhig aufregung linn gemutlich
    handschuh handschuhe handschuhen mutze an drauf san sann guat eh passt
    trockenen warmen klasse team gehts geht unverletzt dass kratzer schramme schrammen blauer blaue
    fleck flecken beisammen beieinander strasse schuler schulerinnen teilnehmer
"""
_SPANISH: Final = """
    y e muy ya ahora otra vez todos todas todo ambos los las el la lo un una nosotros yo tu ella
    ellos ellas nos me te se mi mis nuestro nuestra su sus es son era estoy esta estan estamos soy
    somos fuimos he ha han hemos en al a de del por para con desde coche carro camino sendero pista
    carretera refugio hotel casa autobus bus furgoneta aparcamiento parking tienda puente mirador
    plataforma prado banco sol sombra orilla manta mantas cafe cacao sopa ropa calcetines chaqueta
    seco secos seca secas mojado mojada mojados mojadas cansado cansada cansados cansadas hambre
    asustado asustada asustados susto contentos contenta contento feliz gracias uf menos mal suerte
    jaja lol dios perdon si vale ok bien bueno salvo sanos sana sano sanas fin tambien aqui ahi alli
    arriba vuelta volvimos regreso juntos juntas amigo amiga amigos mujer marido hijo hija hermano
    hermana papa mama ninos ninas nino nina perro grupo gente pero no nada nadie paso pasado fuera
    salimos sentados sentado sentada esperando vamos minuto minutos hace dos tres cuatro cinco seis
    siete ocho nueve diez que solo poco calefaccion contados completos tormenta lluvia tranquilos
    guante guantes gorro puestos puesto moreton moretones raspon rasguno rasgunos aranazo
    tranquilo tranquila linn muchas mucho equipo clase seguros seguras
    alumnos alumnas estudiantes chicos chicas contadas barranco
"""
_KNOWN: Final = frozenset(f"{_ENGLISH} {_GERMAN} {_SPANISH}".split())
#: What they came away from, and where they went themselves: who else "went" is not safe by that.
_LEFT_BEHIND: Final = re.compile(
    r"\b(?:(?:away |far )?(?:of|from|off) the"
    r" (?:water|river|creek|stream|pool|gorge|canyon|edge|cliff|falls?)"
    r"|(?:aus|weg von|von) (?:dem|der) (?:wasser|bach|fluss|schlucht|klamm|kante)"
    r"|(?:fuera|lejos|salido|salimos) (?:del|de la)"
    r" (?:agua|rio|arroyo|poza|borde|canon|barranco)"
    r"|(?:we|i) (?:all )?(?:left|went (?:up|back|inside|home))|(?:auf dem|am|zum) weg"
    r"|fue (?:un|el) susto)\b"
)
_WORD: Final = re.compile(r"[^\W\d_]+")


def is_only_good(rest: str, also: frozenset[str] = frozenset()) -> bool:
    """Whether what is left of a message beside its good news tells of nothing else.

    Args:
        rest: the message in plain letters, without the words that say who is safe.
        also: more words that tell of nobody's trouble there.
    """
    return set(_WORD.findall(_LEFT_BEHIND.sub(" ", rest))) <= _KNOWN | also


def without(said: str, patterns: Iterable[re.Pattern[str]]) -> str:
    """A message without what some patterns find in it."""
    for pattern in patterns:
        said = pattern.sub(" ", said)
    return said
