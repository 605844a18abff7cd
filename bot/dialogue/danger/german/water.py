"""German wordings: people in the water, and water that rises."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WATER: Final[Mapping[str, str]] = {
    "drowning": """
        ertrink*, ertrunken, (am|beim) ertrinken, sauft ab und er, (schluckt|schluckte|
        geschluckt) (viel)? wasser, mit dem gesicht (im|nach unten)""",
    "submerged": """
        (ist|sind|geht|ging|gerade|grad|eben|immer wieder|war) ~ untergegangen, (geht|ging|
        taucht|gehen) ~ unter ., (nicht|nimmer|nicht mehr) ~ (aufgetaucht|hochgekommen|
        aufgetaucht|auftaucht|hochkommt|hoch), taucht ~ nicht (mehr|wieder) auf, (kommt|kam) ~
        nicht (mehr|wieder) (hoch|rauf|nach oben), unter wasser (gezogen|gedruckt),
        untergetaucht, (kopf|gesicht) ~ (unter wasser|unter der oberflache), verschwunden im
        (wasser|strudel), (im|in der) (wasser|strudel|gumpe|stromung) (verschwunden|weg),
        weggetaucht, (die|der|eine) (hand|arm|hande|kopf|mutze) ~ (aus dem|uber) wasser""",
    "adrift": """
        treiben ~ ab, treibt ~ ab, (strudel|bach|fluss|stromung) hat (ihn|sie|es), (treibt|
        treiben|trieb|getrieben|treibe) (ab|auf|im|in|den|vorbei|flussabwarts|bachabwarts|weg|
        richtung|davon|gerade|grad|da), (abgetrieben|abgetrieben|fortgerissen|mitgerissen|
        weggerissen|weggespult|fortgespult|weggeschwemmt|weggetrieben|mitgenommen|abgedriftet),
        (reisst|riss|zieht|zog|spult|spulte|schwemmt|tragt|nimmt|nahm|druckt) ~ (mit|fort|weg|
        ab|davon|rein|hinunter|unter|runter|richtung|hinein), (stromung|wasser|bach|fluss) ~
        (hat|reisst|zieht|nimmt) (ihn|sie|mich|uns|ihm), uber ~ (kante|fall|abgrund|wehr)
        (gegangen|gespult|gerissen|gerutscht|gesturzt|getrieben), die umgerissen, (von den|die)
        (fusse|beine|fussen|beinen) (gerissen|weggezogen|weggerissen), umgerissen""",
    "into_water": """
        (reingesprungen|reingehupft|hineingesprungen) ~ (hinterher|nach|und|jetzt), (person|
        mensch|jemand|kind|mann|frau|einer|hund) im (wasser|bach|fluss|strudel|kolk|becken|
        pool), (in den|im) strudel, durchgebrochen, durchs eis gebrochen, eingebrochen, (in|ins|
        in den|in die|in das) (wasser|bach|fluss|strom|stromung|pool|becken|gumpe|kolk|see|
        wildbach|stromschnelle|tumpel|klamm|schlucht) ~ (gefallen|gesturzt|gerutscht|
        reingefallen|geflogen|gekippt|gestolpert|geplumpst|gerollt|gesprungen|hineingefallen|
        abgerutscht|gerissen|gegangen|gezogen), (fallt|fiel|sturzt|rutscht|rutschte|kippt|
        plumpst|flog|fliegt|sturzte|stolperte|springt|sprang) ~ (ins|in den|in die) (wasser|
        bach|fluss|strom|stromung|pool|becken|gumpe|kolk|see|klamm), (reingefallen|
        hineingefallen|reingerutscht|hineingerutscht|reingestolpert|reingeplumpst), vom (stein|
        steg|felsen|fels|baumstamm|ufer) (gefallen|gerutscht|abgerutscht|gesturzt), (liegt|
        liegen|ist|steckt|sitzt|hangt|schwimmt|steht) ~ im (wasser|bach|fluss|kolk|strudel)
        (und|fest|hilfe|kommt|liegt)*, im (wasser|bach|fluss) und (kann|kommt|kriegt|sie|er|wir)""",
    "out_of_reach": """
        vollgelaufen, voll gelaufen, (schafft|schaffts|schaffen|schaff) ~ nicht ~ (ufer|raus|
        zuruck|an land|rauf), nicht (mehr)? ans ufer, geht ~ unter, kippt ~ um, (kriegen|kriege|
        bekommen|bekomme|kommen|kommt|komme|komm|krieg|schafft|schaffen|konnen|kann) ~ (nicht|
        nimmer|nich|net|kaum) (mehr)? ~ (raus|heraus|ran|heran|hin|hoch|rauf|ans ufer|aus dem|
        aus eigener), (kann|konnen) (nicht|nich|net|gar nicht) schwimmen, nichtschwimmer*, nicht
        (mehr)? (halten|rankommen|erreichen|greifen), (brauchen|brauch|wirf|werft|werfen) ~
        (seil|ast|stange|leine), zieht wie verruckt, zu stark, kraft* (lasst|lassen|verlassen|
        geht|sind) ~ (nach|aus|am ende), fuchtel*, rudert mit den armen, (ruft|schreit) um hilfe""",
    "fell": """
        (gefallen|gesturzt|ausgerutscht|abgerutscht|gerutscht|umgekippt|gestolpert|hingefallen|
        gestrauchelt|weggerutscht|fiel|sturzte|rutschte|geknallt|abgesturzt|sturz|umgeknickt|
        gesturtzt|umgefallen|gestrauchelt)""",
    "clinging": """
        (klammert|klammern|klammere|hangt|hange|halt|halte|halten|krallt|festgeklammert) ~ (am|
        an einem|an einer|an den|an nem|an der|sich|mich|noch) ~ (ast|stein|fels|felsen|
        baumstamm|stamm|wurzel|seil|holz|brocken|rand|fest|ufer)""",
    "jammed": """
        (fuss|bein|stiefel|schuh|arm|knochel|hand) ~ (eingeklemmt|klemmt|verklemmt|steckt|
        feststeckt|hangt fest|verkeilt|festgeklemmt|gefangen), (eingeklemmt|verkeilt|
        festgeklemmt|klemmt fest)""",
    "midstream": """
        mitten (im|in der) (bach|fluss|stromung|strom|wasser|furt), halbem weg (druben|ruber),
        bei der querung, beim (queren|durchqueren|uberqueren|ruberspringen)""",
    "struggling": """
        (strampelt|zappelt|kampft|rudert|fuchtelt|japst|schreit|prustet), um hilfe, mit den
        armen, panik""",
    "flooding": """
        sturzflut, flutwelle, hochwasser (kommt|jetzt|ist|da|im|rollt|welle|.), uberflut*,
        uberschwemm*, springflut, schwallwelle, schwall vom, wasserwand, (braune|schmutzige|
        schlammige|braunes|trubes|schlammiges|riesige|braun) (welle|wasser|bruhe|flut|wand),
        (pegel|wasserstand) ~ (steigt|gestiegen|hoher|rauf|hoch|klettert), tritt uber die ufer,
        uber die ufer""",
    "rising": """
        steigt, steigen, gestiegen, stieg, ansteig*, angestiegen, (wird|ist|steht|kommt|geht|
        war|wurde) ~ (hoher|tiefer|mehr|breiter), (kommt|kam) ~ (hoch|naher|rauf), anschwill*,
        schwillt, angeschwollen, zugenommen, nimmt ~ zu, cm (hoher|mehr|rauf)""",
    "siren": """
        sirene*, (lang|laut|dreimal|zweimal|eben|kraftwerk) ~ gehupt, (hupe|horn|hupt|warnhorn|
        warnton|alarm|signalhorn) ~ (gehort|vom|am|ging|geht|kraftwerk|staudamm|stausee|wehr),
        (stausee|staudamm|wehr|kraftwerk) ~ (ablass|offnet|gehupt|lasst|geoffnet|spult|sirene|
        schwall), schwallwarnung""",
    "dirty": """
        (braun|braune|braunes|brauner|braunlich|trub|trube|trubes|truber|schlammig|schlammiges|
        matschig|dreckig|dreckiges|lehmig|kakao|schokolade|milchkaffee|kaffee|bruhe|schmutzig|
        dreck|undurchsichtig)""",
    "sudden": """
        (plotzlich|auf einmal|jetzt|gerade|grad|eben|seit|vorhin|wird|wurde|werden|geworden|
        innerhalb|minuten|immer mehr|immer|schnell|schlagartig|war ~ klar|noch klar|war heute|
        farbt|gefarbt|nimmer klar|heute fruh)""",
    "debris": """
        (ast|aste|zweige|zweig|blatter|laub|holz|treibholz|baumstamm|baumstamme|stamme|stamm|
        schaum|geast|dreck|baum|baume|gestrupp|unrat|steine|gerol*)""",
    "coming": """
        (kommt|kommen|kam|kamen|treibt|treiben|schwimmt|schwimmen|rauscht|schiesst|daher|
        angeschwommen|schwemmt|spult|angetrieben|heruntergeschossen) ~ (runter|herunter|vorbei|
        daher|an|entgegen|angeschwommen|geschwommen|durch|mit|hinunter|den bach|den fluss|ohne
        ende|nach dem andern|nach dem anderen)*""",
    "cut_off": """
        abgeschnitten, (kommen|konnen|komm|komme) ~ nicht (mehr)? (zuruck|ruber|hinuber|druber|
        heim), (sitzen|sitze|stehen|hocken|stecken|hangen) ~ (fest|inselchen|kiesbank|insel|
        sandbank), (insel|kiesbank|sandbank) ~ (kleiner|umspult|fest)""",
    "swallowed": """
        (stein|steine|markierung|kiesbank) ~ (ist|sind) (jetzt|nun|schon)? (weg|unter|nass|
        verschwunden), (ist|sind|wird|werden) (immer)? kleiner, kleiner ., (weg|pfad|ruckweg|
        steg|trittsteine|steine|brucke|furt|ufer|stein|kiesbank|insel|stativ|strasse|parkplatz|
        markierung|rucksack) ~ (unter wasser|uberspult|weggespult|verschwunden|im wasser|ein
        fluss|ein bach|weg .|uberschwemmt|nimmer da|nass|umspult|nicht mehr zu sehen), (unter
        wasser|uberspult|umspult), (schwappt|lauft|leckt|reicht|rinnt|geht) ~ (uber den|bis zu|
        an die|schuhe|stiefel|weg|zum rucksack|rucksack|fusse|uber)""",
    "bigger": """
        (lauter|wilder|starker|mehr|grosser|breiter|schneller|heftiger|hoher|machtiger|reissend|
        reissender|wutend|tost)""",
    "roar_new": """
        (grollen|rumpeln|drohnen|donnern|rumoren|tosen|brausen|rauschen) ~ (von oben|
        bachaufwarts|flussaufwarts|talaufwarts|aus der schlucht|lauter|naher|uns), (grollt|
        rumpelt|drohnt|poltert) ~ (oben|bachaufwarts|weiter oben|schlucht|hinten|tal)""",
    "was_dry": """
        trockenen, (war|waren|stand|standen) ~ (trocken|trockenen), vorhin ~ trocken*, auf
        trockenem""",
}
