"""German wordings of danger, as cues; without umlauts, as `folding` writes them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.folding import folded
from bot.dialogue.danger.lexicon import Lexicon

_PEOPLE: Final[Mapping[str, str]] = {
    "person": """
        (ich|wir|er|sie|ihn|ihm|ihr|uns|mich|mir|einer|eine|jemand|keiner|alle|beide|der|die|
        leute|typ|mann|frau), (kind|kinder|junge|jungs|jungen|madchen|bub|sohn|tochter|bruder|
        schwester|mutter|vater|mama|papa|opa|oma), (freund|freundin|kollege|kollegin|partner|
        partnerin|schuler|schulerin|lehrer|lehrerin|teilnehmer|teilnehmerin), (gruppe|braut|
        wanderer|hund|kumpel|onkel|tante|nichte|neffe|enkel|herr|tourist|touristen|kleine|
        kleiner|dame)""",
    "other": """
        (er|sie|ihn|ihm|ihr|einer|eine|jemand|mann|frau|kind|kinder|junge|jungs|madchen|bub|
        sohn|tochter|bruder|schwester), (mutter|vater|mama|papa|opa|oma|freund|freundin|kollege|
        kollegin|partner|partnerin|schuler|schulerin|lehrer), (teilnehmer|teilnehmerin|wanderer|
        hund|kumpel|onkel|tante|nichte|neffe|enkel|herr|frau|zwei von|drei von|kleine|kleiner|
        beiden|dame|leute)""",
    "thing": """
        (kappe|hut|mutze|objektiv|deckel|objektivdeckel|stativ|kamera|handy|blatt|blatter|ast|
        ente|filter|regler|schatten|farben|histogramm|bild|foto|licht)""",
    "thing_adrift": """
        (deckel|hut|mutze|blatt|blatter|ente|filter|flasche|schaum|nebel|blasen|laub|efeu|
        horizont|fokus|stein)""",
    "water": """
        (wasser|bach|fluss|strom|stromung|pool|becken|gumpe|kolk|tumpel|see|wasserfall|fall|
        klamm|pegel|furt|wildbach|flut|schnelle|stromschnelle|stromschnellen|fluten|wehr|
        strudel|zug)""",
}
_WATER: Final[Mapping[str, str]] = {
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
_BODY: Final[Mapping[str, str]] = {
    "limb": """
        (knochel|knie|handgelenk|ellbogen|schulter|schienbein|oberschenkel|rippe|rippen|finger|
        daumen|hand|hande|arm|arme|bein|beine|fuss|fusse|zeh|zehe|zehen|hals|nase|auge|augen|
        schadel|hufte|wade|gesicht|stirn|kinn|lippe|zahn|kopf|rucken|gelenk|ohr|ferse|haut|haxn|
        braue|sprunggelenk|fingerkuppen|fingerspitzen)""",
    "damaged": """
        (gebrochen|verstaucht|verdreht|verknackst|ausgekugelt|ausgerenkt|geschwollen|schwillt|
        angeschwollen|dick|blutet|bluten|blutig|blut|aufgeschlitzt|aufgerissen|aufgeschlagen|
        geschnitten|gequetscht|zerquetscht|verbrannt|verbruht|platzwunde|schnittwunde|wunde|
        offen|gerissen|geknackt|geknackst|knacks|krach|schief|komisch ab|steht ab|tut ~ weh|
        schmerzen|schmerzt|weh|nicht ~ bewegen|blau|lila|durchbohrt|verrenkt|eingeklemmt|
        geknallt|aufgeschurft ~ tief|hin)""",
    "injured": """
        (schreit|brullt|wimmert|weint) (vor|wegen) schmerz*, (loch|platzwunde|schnitt|wunde)
        (im|am|in der) (kopf|stirn|hand|bein|fuss|knie|arm), (gestutzt|gesturzt|gefallen) ~
        (huf*|kopf|hand|knie|arm|bein|rucken), (stein|ast|brocken|block|eiszapfen|zapfen|
        felsbrocken) hat ~ (erwischt|getroffen|gestreift), kreislauf*, (er|sie) ~ zuckt, (in|
        durch) (den|die|das) (fuss|hand|auge|finger|bein|wade) (gerammt|gebohrt|gestochen|
        gerammelt|getreten), zusammengeklappt, nicht mehr hoch, (zunge|gesicht|hals|lippe) ~
        (dick|geschwollen|schwillt), (auge|augen) ~ (haken|splitter|nichts mehr), was gebrochen,
        etwas gebrochen, verletzt, schwer verletzt, umgeknickt, (auftreten|laufen|gehen|stehen)
        ~ (nicht|nich|nimmer|net|kaum) (mehr)? (moglich|.)?, (kann|konnen) ~ (nicht|nich|nimmer|
        net|kaum) (mehr)? (auftreten|laufen|gehen|aufstehen|stehen|belasten), geht ~ nicht ~
        auftreten, (bein|arm|fuss|knochel|knie|handgelenk|rippe|finger|schulter|nase|hand) (ist|
        sind)? ~ (gebrochen|gebrochn|verstaucht|ausgekugelt|verdreht), herzinfarkt,
        schlaganfall, allergisch*, allergieschock, epipen, gehirnerschutterung, notarzt,
        krankenwagen, rettungswagen, (brauchen|brauch|ruf*|holt|hol) ~ (arzt|sanitater|rettung|
        bergrettung|bergwacht|notruf|hubschrauber|hilfe|heli), (hort|horts|hor) nicht auf zu
        bluten, blutet ~ (stark|heftig|nicht auf|wie|ordentlich|ziemlich|und|aus|am), asthma*,
        zuckerschock, unterzuckert, insulin, schlangenbiss, (kreuzotter|schlange|viper|wespe|
        hornisse|hornissen) ~ (gebissen|gestochen|biss|erwischt|mund|hals), (gebissen|gestochen)
        worden, platzwunde, knochen ~ (schaut|sieht|steht|raus)""",
    "collapsed": """
        bewusstlos*, ohnmacht*, ohnmachtig*, zusammengebrochen, zusammengesackt,
        zusammengeklappt, umgekippt und (reagiert|liegt|bewegt), weggetreten, nicht (mehr)?
        ansprechbar, (reagiert|atmet|antwortet|ruhrt sich|bewegt sich|regt sich) ~ (nicht|
        nimmer|kaum), krampft, krampfanfall, krampfe und, anfall, kein puls, verdreht die augen,
        stohnt nur, schaum vorm mund, (wacht|kommt) nicht ~ (auf|zu sich), lippen ~
        (geschwollen|schwellen|dick), hals ~ (zu|schwillt|dick), schwillt ~ (hals|zunge|
        gesicht), kippt (uns|mir|weg|um) .""",
    "heavy_blood": """
        (alles voll|voller|viel|so viel|uberall|lauft|spritzt|tropft|verliert|uberstromt|das|
        sein|ihr|ganze) ~ blut, blut (uberall|lauft|spritzt|tropft|rinnt|stromt|aus|im|am|an|
        und|ohne|hort|durch), blutuberstromt, blutet""",
    "chest": """
        (brust|herz|brustkorb|linker arm|linken arm|brustschmerz*)""",
    "pain": """
        (schmerz|schmerzen|eng|engegefuhl|druck|sticht|stechen|stiche|weh|fasst sich|halt sich|
        grau|schweiss|taub|rast)""",
    "breath_hard": """
        (kriegt|krieg|kriege|bekommt|bekomme|kriegen) (keine|kaum|schlecht|keinen|schwer|fast
        keine) (luft|atem), (atmet|atmen) (schwer|nicht|schlecht|kaum|komisch|flach), atemnot,
        rochelt, pfeift beim atmen, schnappt nach luft, nach luft, erstick*""",
    "no_standing": """
        (kann|konnen|kommt|komm|komme) ~ (nicht|nimmer|nich|net) (mehr)? ~ (aufstehen|laufen|
        gehen|auftreten|stehen|hoch|weiter|weitergehen|auf die beine), humpel*, hinkt, (mussen|
        muss) ~ (tragen|getragen), liegen geblieben, liegt (da|dort|am boden|unten|auf)""",
    "fell_far": """
        (abgesturzt|absturz|abgestuerzt), (meter|metern|m) (tief|runter|hinunter|weit|
        abgerutscht|gefallen|gesturzt|in die|den hang|die wand|hinab), (runtergefallen|
        hinuntergefallen|heruntergefallen|hinuntergesturzt|runtergesturzt|runtergeflogen|
        hinabgesturzt|hinuntergerutscht|runtergerutscht|runtergekracht|runtergestrutzt),
        (boschung|hang|abhang|wand|felsen|klippe|steig|leiter|brucke|kante|gelander|mauer) ~
        (runter|hinunter|hinab|gesturzt|gefallen|abgerutscht|gerutscht|gekippt), (rucken|kopf|
        steiss|hufte) (auf|voll|gegen)""",
    "head_hit": """
        (kopf|schadel|hinterkopf|stirn) ~ (gestossen|geschlagen|angeschlagen|angehauen|
        aufgeschlagen|gefallen|geknallt|getroffen|gegen|abbekommen|gehauen|gekracht), (stein|
        steine|ast|brocken|eiszapfen|felsbrocken|zapfen|baum|stativ) ~ (auf den kopf|auf den
        fuss|abbekommen|auf die|getroffen|am kopf|erwischt|auf sein*|auf ihr*|auf mein*)""",
    "bitten": """
        (gebissen|gestochen|biss|stich|insektenstich|bienenstich|wespenstich|otter|kreuzotter|
        zecke)""",
    "dazed": """
        (verwirrt|benommen|schwindelig|schwindlig|schwindel|duselig|ubel|kotzt|ubergibt|
        erbricht|erbrochen|gekotzt|brabbelt|lallt|wirr|wirres|weiss nicht ~ (wo|wie|welcher|wer|
        was)|blass|bleich|kreidebleich|schwummrig|doppelt|erinnert sich)""",
    "hypothermic": """
        unterkuhl*, (alles|komplett|ganz|schon) (taub|gefuhllos|abgestorben), erfrier*,
        erfroren*, (zahne|zahnen) klappern, klapper* ~ zahne*, zahneklappern, (will|mochte|
        wollen) ~ (schlafen|hinlegen|einschlafen), hort auf zu zittern, zittert nicht mehr,
        (mir|ihm|ihr|uns) ist (so|sehr|wahnsinnig|furchtbar|arg|saukalt|eiskalt|schweinekalt|
        richtig|total|extrem) (kalt|.), durchgefroren, friert ~ (erbarmlich|so|furchtbar|sehr|
        schrecklich|total)""",
    "shivers": """
        (zittert|zittere|zittern|zitter|schlottert|schlottere|schlottern|bibbert|bibbere|
        bibbern|frostelt|schuttelfrost)""",
    "numb": """
        taub, taube, gefuhllos, kein gefuhl, (spur|spure|spurt|spuren|fuhl|fuhle|fuhlt) ~
        (nicht|nichts|nix|keine|keinen|nimmer|kaum|net), (weiss|blau|steif|klamm|eisig|starr|
        eiskalt|wachsern), abgestorben, eingefroren, wie (eis|holz|steine|tot), (kann|kriege|
        krieg|bring|bringe) ~ (nicht|nimmer|nich|net) (mehr)? ~ (bewegen|drucken|zumachen|
        aufdrehen|halten|auf|zu|greifen|aufmachen|festhalten)""",
    "lips_blue": """
        (blaue|lila|weisse|wachsweisse|bleiche|violette) (lippen|finger|fingernagel|zehen|
        fingerspitzen|nase|hande), (lippen|finger|zehen|fingerspitzen|nase|hande) ~ (blau|lila|
        weiss|wachsern|violett)""",
    "soaked": """
        (nass|nasse|nassen|klatschnass|pitschnass|patschnass|durchnasst|durchweicht|tropfnass|
        triefend|triefnass|klitschnass|pudelnass|quatschnass|baden gegangen|reingefallen|nix
        trockenes|nichts trockenes)""",
    "freezing": """
        (friert|frier|friere|frieren|kalt|eiskalt|saukalt|arschkalt|schweinekalt|kalte|frostig|
        eisig|wind|gefroren|ausgekuhlt|kuhl|durchgefroren|frostelt)""",
    "dull": """
        (mude|schlafrig|lallt|nuschelt|torkelt|taumelt|stolpert|verwirrt|apathisch|teilnahmslos|
        still|ruhig|benommen|redet wirr|redet nicht|antwortet nicht|ungeschickt|redet kaum|sagt
        nichts|schlapp|zittert|zittern|zittere|langsam|wirr|schwach|abwesend|komisch|hinsetzen|
        hinlegen|schlafen|kraftlos)""",
    "pale": """
        (blass|bleich|kreidebleich|kalt|nass|klatschnass|grau|blau|wachsern)""",
}
_ALONE: Final[Mapping[str, str]] = {
    "thunder": """
        donner, donnert, donnern, gedonnert, donnerte, donnergrollen, donnerschlag, gewittert,
        (hor|hore|horen|gehort|hort) ~ (grollen|grummeln|rumpeln), (grollt|grummelt|rumpelt) ~
        (himmel|naher|hinten|grat|oben|berg|jetzt|wolken)*""",
    "lightning": """
        blitzt, blitzte, geblitzt, blitze, (ein|der|erste|erster|grad|naher|grosser) blitz
        (uber|am|schlug|eingeschlagen|hat|ist|da|hinter|war|gesehen|und), blitzeinschlag, blitz
        und donner, (schlagt|schlug|eingeschlagen) ~ (blitz|ein), blitzen (am|uber|hinter),
        wetterleuchten""",
    "storm": """
        (gewitter|gewitterfront|gewitterwolken|gewitterwolke|unwetter|sturm|gewitterzelle|
        wetter)""",
    "near": """
        (zieht|kommt|ziehen|rollt|braut|baut|steht|ist|kommen|naht|bricht|war) ~ (auf|naher|ran|
        heran|her|uber uns|druber|los|zu|zusammen|da|da .|rein|an|uber dem|schnell), uber uns,
        direkt uber, (im|von) anmarsch, nahert, hinterm (grat|berg|hang|kamm), im nacken,
        erwischt uns, uber dem (grat|kamm|berg|hang|tal)""",
    "shelter": """
        (unter|unterm|stellen|warten|unterstellen|hocken) ~ (baum|baume|fichte|eiche|buche|
        tanne|fichten|baumen|larche|kiefer|abwarten|unter), abwarten, unterstand""",
    "flash": """
        (blitz|leuchten|aufgeleuchtet|lichtblitz|geblitzt|zuckt|flackert|hell|blitzt)""",
    "bang": """
        (knall|rumms|krach|gekracht|gerumst|donner|sekunden spater|grollen|gerumpelt|grummelt|
        grollt|kracht|knallt|gezahlt)""",
    "hair_stands": """
        haare ~ (stehen|zu berge|stellen|hoch|aufgestellt|auf), (stativ|stocke|metall|pickel|
        geländer|schirm|stock|seil|drahtseil|felsen|luft) ~ (summt|surrt|brummt|knistert|
        kribbelt|summen|surren|knistern|brizzelt|bitzelt), (summt|surrt|knistert|kribbelt) ~
        (stativ|stocke|metall|luft|pickel|haut|drahtseil)""",
    "sky_black": """
        himmel ~ (schwarz|tiefschwarz|pechschwarz|stockfinster|lila|grunlich|gelb|zu) ~ (hagel*|
        grollt|wind|jetzt|.|westen|zieht|schnell), (schwarze|dunkle|riesige|grosse|turmt) ~
        (wand|gewitterwolke|wolkenwand|ambosswolke|wolkenturm) ~ (zieht|kommt|auf|uns|naher|
        grat), hagelt, hagelkorner""",
    "overdue": """
        (wieder|zuruck|hier|da) (da)? sein (wollen|sollen)?, (wollte|sollte) ~ (wieder da|
        zuruck|hier) sein, (musste|sollte|wollte|wollten|hatte|sollten|hatten|mussten) ~ (schon|
        langst|seit|um|vor) ~ (da|zuruck|hier|wieder|sein|da sein|treffpunkt), uberfallig, (ist|
        sind|kam|kommt|kommen|war|bis jetzt|bisher) ~ (nicht|noch nicht|nimmer|nie|net) (mehr)?
        ~ (zuruck|zuruckgekommen|gekommen|wiedergekommen|aufgetaucht|da|angekommen|erschienen|
        wieder da|heimgekommen|eingetroffen|zuruckgekehrt|wieder), (kommt|kommen|kam|kamen)
        (nicht|einfach nicht|nimmer) (mehr)? (zuruck|wieder|nach|her|an), nicht (mehr)?
        (zuruckgekommen|aufgetaucht|wiedergekommen|zuruckgekehrt|zuruck), noch nicht (zuruck|da|
        wieder), (wollte|wollten) nur (kurz|schnell|mal), um (zwei|drei|vier|eins|elf|zwolf|
        funf|zehn|\\d+) (uhr)? ~ (treffen|treffpunkt|ausgemacht|verabredet)""",
    "whereabouts": """
        (eben|vorhin|grad|gerade) noch (da|hier|hinter|neben|bei|vor), (jetzt|nun) ist (er|sie|
        es) (weg|nicht|nirgends|fort), (ist|sind) (er|sie) (nicht|nirgends|weg), (er|sie) (ist|
        sind) (nicht|nirgends|weg), kommt ohne (ihn|sie), ohne (ihn|sie) zuruck, weiss (jemand|
        wer|einer) ~ wo, alle ~ (ausser|bis auf), (vermiss|vermisse|vermissen|vermisst) (einen|
        eine|ihn|sie|unseren|unsere|meinen|meine|den|das|die|seit|noch|jemanden|ein|zwei|wird|
        werden|unser|.), (ist|sind) ~ (verschwunden|weg .|nirgends|nirgendwo|spurlos|
        unauffindbar|weg und|wie vom erdboden), (finde|finden|find|seh|sehe|sehen|findet) ~
        (ihn|sie|meinen|meine|mein|unseren|unsere|unser|den|kind|sohn|tochter|bruder|schwester|
        freund|freundin|mann|frau|hund|opa|oma|keinen) ~ (nicht|nirgends|nicht mehr|nimmer|
        nirgendwo|net), wo (ist|sind|steckt|stecken|bleibt|bleiben) (er|sie|mein|meine|der|die|
        das|unser|unsere|denn|nur), (hat|habt|haben) (jemand|wer|ihr|irgendwer|einer) ~ gesehen,
        keine spur, kein lebenszeichen, aus den augen verloren, (zuletzt|letztes mal) gesehen,
        (suchen|suche|such|sucht) ~ (ihn|sie|nach|meinen|meine|mein|unseren|unsere|den|seit|
        uberall|herrn|frau), nirgends (zu sehen|zu finden|mehr)?, fehlt (uns|einer|eine|noch|
        jemand|ein kind|.)""",
    "gone_off": """
        (weggelaufen|losgelaufen|vorausgegangen|vorgelaufen|vorgegangen|losgezogen|
        zuruckgegangen|weggegangen|abgehauen|davongelaufen|verschwunden|losgegangen|
        hochgestiegen|hinterher|alleine los|allein los|gegangen|gelaufen|voraus|los|ums eck|um
        die ecke|kurz|ging|lief|abgebogen|weiter|pinkeln|zuruck zum)""",
    "long_since": """
        (vor|seit) ~ (stunde|stunden|halben|ewigkeit|ewig|minuten|viertelstunde|mittag|
        dreiviertelstunde|morgen|langem|fruh|uhr), (stunde|stunden|minuten|dreiviertelstunde|
        viertelstunde|ewigkeiten|ewigkeit) (her|schon|lang), schon (ewig|lang|lange|langer|
        seit), langst, stundenlang, (ganze|halbe|anderthalb|eine|zwei|drei) (stunde|stunden|
        zeit)""",
    "no_answer": """
        (geht|gehen) ~ (nicht|nimmer|net|nich) (ran|ans|hin|an das|dran), (antwortet|antworten|
        meldet|melden|reagiert|ruhrt|erreiche|erreichen|erreichbar|gemeldet) ~ (nicht|nicht
        mehr|nimmer|keiner|niemand|net), (keine|kein|keinen) (antwort|reaktion|ruckmeldung|echo|
        mucks|ton|empfang bei|signal von), mailbox, handy (ist)? (aus|tot|ausgeschaltet), nicht
        erreichbar, nichts zuruck, (nichts|nix|stille|niemand|keiner) ~ (zuruck|antwortet|
        gehort|kommt|meldet)""",
    "calling": """
        (rufen|rufe|ruf|gerufen|pfeifen|pfeife|pfiffe|gepfiffen|schreien|schreie|geschrien|
        anrufen|angerufen|telefon|handy|rufst|gebrullt|brullen|trillerpfeife|pfiff|gefunkt)""",
    "abandoned": """
        (stativ|kamera|rucksack|jacke|schuhe|tasche|sachen|ausrustung|handy|kleider|zeug|stock|
        stocke) ~ (steht|liegt|lag|stand|liegen|stehen|hangt|allein|verlassen|umgekippt|einsam|
        herrenlos|noch da|noch) ~ (aber|und|von|sie|er|ohne|niemand|keiner|nirgends|kein|weit
        und breit|allein|herrenlos) ~ (nirgends|nicht|weg|niemand|keiner|kein|mensch|spur|sehen|
        weit|da|dabei|dazu|keine|von|verschwunden|nirgendwo)*, herrenlos*""",
    "one_short": """
        (einer|eine|zwei|jemand|ein kind|eins|ein schuler|eine schulerin|drei|wer) (fehlt|
        fehlen|zu wenig|weniger|ist weg|sind weg), fehlt (einer|eine|jemand|uns|ein|eins|noch),
        fehlen (uns|zwei|drei|noch), zu wenig ., (waren|sind|zahle|zahl|gezahlt|komme auf|nur) ~
        (nur)? (noch)? (zwei|drei|vier|funf|sechs|sieben|acht|neun|zehn|elf|zwolf|dreizehn|\\d+)
        ~ (statt|nur noch|jetzt|vorher|waren|losgegangen|sollten|von), durchgezahlt ~ (fehlt|
        nur|einer|eins), vollzahlig""",
    "search": """
        suchtrupp, such* ~ (bergwacht|bergrettung|polizei), vermisstenmeldung, (bergwacht|
        bergrettung) ~ (rufen|alarmier*|gerufen)""",
    "wandered": """
        (davongelaufen|weggelaufen|abgehauen|ausgebuxt|ausgebuchst|entwischt|verschwunden)""",
}
_DARK: Final[Mapping[str, str]] = {
    "dark": """
        (dunkel|dunkler|dunkelheit|dunklen|finster|stockdunkel|stockfinster|zappenduster|nacht|
        dammert|dammerung|pechschwarz|sonne ist weg|sonne weg|sonne ist schon|zu dunkel|duster|
        rabenschwarz|finsternis)""",
    "blind": """
        (seh|sehe|sehen|sieht|erkenn|erkenne|erkennen|finde|finden|find) ~ (nix|nichts|nicht|
        kaum|nimmer|die hand|keinen|keine|gar nichts|net|den weg nicht|nicht mehr)""",
    "still_out": """
        (sind|bin|stehen|stecken|sitzen|hangen|hocken|noch) ~ (noch|immer noch|erst|mitten|fest)
        ~ (klamm|schlucht|wald|pfad|steig|hang|berg|oben|unterwegs|weg|fall|wasserfall|hier|
        drin|tal|felsen), (noch|haben) ~ (stunde|stunden|km|kilometer|stuck|abstieg|hohenmeter|
        weit) ~ (vor uns|vor mir|bis|zum|zuruck|auto|ubrig|abzusteigen|runter|.), (abstieg|
        ruckweg|heimweg|leiter|steilstuck|stufen|klettersteig|treppe) ~ (noch|vor uns|vor mir|
        ohne|jetzt|bevor), wie komm* ~ (runter|heim|zuruck|raus|hinunter|ins tal)""",
    "light_gone": """
        (stirnlampe|lampe|taschenlampe|licht|handylicht|akku|lampen|stirnlampen|lampchen|funzel)
        ~ (leer|kaputt|aus|tot|vergessen|ausgegangen|hin|flackert|gestorben|gibt|streikt|geht
        nicht|daheim|im auto|verloren|defekt|schwach|bald), (keine|ohne|kein|hab keine|keiner
        hat eine|ohne eine) (stirnlampe|lampe|taschenlampe|licht|lampen|stirnlampen|
        taschenlampen)""",
    "light_low": """
        (handy|akku|lampe|handylicht|telefon|stirnlampe) ~ (prozent|\\d+|fast leer|einzige|leer|
        letzte|nur), (einzige|einzig|letzte|eine) (lampe|licht|taschenlampe|stirnlampe|
        lichtquelle|funzel)""",
    "night_caught": """
        (nacht|dunkelheit|dammerung|finsternis) (uberrascht|eingeholt|erwischt|gekommen|geraten|
        hereingebrochen|bricht), (hier|draussen) ubernachten mussen, biwak*""",
    "way": """
        (weg|pfad|steig|ruckweg|heimweg|abstieg|steg|markierung|markierungen|auto|runter|heim|
        zuruck|ausgang|stufen|treppe|leiter|kante|wurzeln)""",
    "scared": """
        (angst|panik|weint|heult|furchte|hilfe|schiss|mulmig|unheimlich|weinen)""",
    "lost_self": """
        verfranst, verfahren, sieht alles gleich aus, alles gleich, uberall nur (gestrupp|wald|
        dickicht|baume|brombeeren|felsen), im (dickicht|gestrupp|unterholz|moor|sumpf)
        (gelandet|fest|.), verlaufen, verirrt, verlaufn, verfranzt, verstiegen, (weiss|wissen|
        wissn|keinen plan|keine ahnung|kein plan|keinen schimmer|weis) ~ (nicht|nimmer|net|nich|
        mehr|,)? ~ wo (ich|wir|er|sie|mir) (bin|bins|sind|steckt|ist|hin)*, (keine ahnung|keinen
        plan|keinen schimmer) wo, orientierung verloren, (finde|finden|find) ~ (weg|pfad|zuruck|
        raus|heim|ausgang|steig) ~ (nicht|nimmer|nicht mehr|net)*, (finde|finden|find) nicht
        (mehr)? (zuruck|raus|heim|heraus|hinaus), wo (sind|bin) (wir|ich) (hier|jetzt|uberhaupt|
        denn|eigentlich|.)""",
    "lost_word": """
        (verlaufen|wohin|wo lang|falsch|keine ahnung|orientierung|verloren)""",
    "circles": """
        (gleiche|gleichen|selbe|selben|derselbe|demselben|dieselbe|denselben|dem) ~ (baum|stein|
        hutte|hochsitz|bank|stelle|kreuzung|wegkreuz|brucke|felsen|stumpf|baumstumpf|marterl|
        zaun|wurzel|abzweigung|lichtung) ~ (schon|wieder|zum dritten|zweimal|dreimal|vorbei|
        waren|noch mal|nochmal), im kreis (gelaufen|gegangen|gehen|laufen|herum|rum|unterwegs|
        .), (laufen|gehen|rennen) im kreis, (wieder|zum dritten mal|dreimal|zweimal) ~
        (vorbeigekommen|hier|am gleichen|am selben|an der)""",
    "wrong_way": """
        (falsche|falschen|falscher|verkehrte|verkehrten) (tal|weg|pfad|seite|abzweigung|
        richtung|steig|ufer|graben|grat|schlucht|rucken), im falschen, (abzweigung|abzweig|
        kreuzung) ~ (verpasst|ubersehen), (hier|da) (waren|war|sind|bin) (wir|ich) (auf dem
        hinweg|vorhin|noch nie|nicht|nie|heute) ~ (nicht|nie|vorbei|gekommen|noch nie)*, nicht
        (der|unser) weg, kommt ~ (nicht|nichts|nix) bekannt vor, (mussten|hatten|sollten|musste)
        ~ (langst|schon) ~ (parkplatz|auto|brucke|hutte|bach|weg|angekommen|da sein|dort|
        strasse), vom weg (ab|abgekommen)""",
    "path_gone": """
        (weg|pfad|steig|spur) (ist|war) (jetzt|einfach|auf einmal|plotzlich)? (weg|aus|fort|
        verschwunden), (weg|pfad|steig|spur|wanderweg|markierung|markierungen|trampelpfad) ~
        (hort|horte|horen) ~ (auf|einfach), (weg|pfad|steig|spur|wanderweg|markierung|
        markierungen|trampelpfad|forstweg) ~ (verschwunden|weg .|zu ende|endet|endete|verliert|
        verloren|nicht mehr (da|zu)|gibts nicht|verlauft|aus .|nirgends|zugewachsen), (kein|
        keinen|keine) (weg|pfad|markierung|markierungen|wegweiser|steig) (mehr|zu|weit|hier|
        nirgends), (finde|finden|find|seh|sehe|sehen) ~ (weg|pfad|steig|markierung|markierungen|
        abzweigung|spur) ~ (nicht|nimmer|keine|mehr|nirgends)""",
    "map_fails": """
        (karte|gps|handy|app|navi|punkt|kompass|kartn) ~ (zeigt|sagt|spinnt|stimmt|hangt|
        springt|passt|ladt|tot|leer|quatsch|mitten im|falsch|eingefroren|dreht), (kein|keinen|
        ohne|null) (empfang|netz|gps|karte|kompass|signal)""",
    "whereabouts_own": """
        (wo|wohin) (bin|sind|mussen|muss|geht|gehts|lang|gehen) (ich|wir|es|mir|lang|hin|zuruck|
        raus), (welche|welcher) (richtung|weg|seite) (ist|geht|mussen|muss|zuruck|zum|jetzt)""",
    "fog": """
        (nebel|wolke|wolken|suppe|schnee|whiteout|nebelsuppe|nebelbank)""",
}
_PLACES: Final[Mapping[str, str]] = {
    "brink": """
        (kante|abbruchkante|fallkante|abrisskante|felskante|oberkante|abbruch|abgrund|klippe|
        felsvorsprung|felsnase|felssporn|sporn|uberhang ganz|klippenrand) , (an|auf|uber|uberm|
        ueber|vor|vorn|am|direkt|ganz|bis) ~ (kante|abbruchkante|fallkante|abgrund|felskante|
        klippe|abbruch|rand), (oben|oberhalb|uber|uberm|kopf|knapp|direkt) ~ (am|vom|auf dem|
        des|dem|uberm|ueberm|uber dem) (fall|wasserfall|wasserfalls|falls|abgrund|absturz|klamm|
        schlucht), wo (es|er|das wasser|der bach|der fluss) ~ (runtergeht|hinuntersturzt|
        runterfallt|abbricht|abfallt|hinunterfallt|kippt|uber die kante|in die tiefe|abgeht|
        runtersturzt|hinabsturzt|drubergeht|hinuntergeht|runterschiesst), (sitzen|stehen|steh|
        sitz|liegen) (oben|ganz oben), oberhalb vom (fall|wasserfall), in die tiefe""",
    "goes": """
        (steh|stehe|stehen|steht|stell|stelle|stellen|stellt|sitz|sitze|sitzen|sitzt|setz|setze|
        setzen|lieg|liege|liegen|liegt|leg|lege|knie|knien|kniet|hock|hocke|hocken|hockt|kriech|
        krieche|kriechen|kriecht|geh|gehe|gehen|geht|lauf|laufe|laufen|lauft|steig|steige|
        steigen|steigt|kletter|klettere|klettern|klettert|spring|springe|springen|springt|
        balancier*|wat|wate|waten|watet|schwimm|schwimme|schwimmen|baden|badet|tanzt|tanzen|
        posier*|turnt|turnen|spielen|spielt|robb*|quetsch*|zwang*|rutsch|beug|beuge|beugt|
        beugen|lehn|lehne|lehnt|lehnen|hang|hange|hangt|tret|trete|treten|tritt|komm|komme|
        kommen|stapf*|tapp*|kraxel*), (kann|kannst|konnen|konnte|darf|durfen|soll|sollen|sollte|
        will|wollen|mochte|mochten|wurd|wurde|wurden|geht|gehts|mag) (ich|wir|er|sie|man|es|da|
        sich|der|die|das|hier), (bin|sind) (direkt|grad|gerade|jetzt|schon|ganz|oben|auf|am|an|
        vorn), (stativ|selfie|foto|bild) ~ (auf|am|an der|direkt|da|oben|vorn|von), standpunkt,
        (perfekt|super|toll|geil|traumhaft|bester|beste|genial|ideal|tollste|schonste|hammer) ~,
        ich, wir""",
    "sits": """
        (sitzt|sitzen|steht|stehen|liegt|baumeln|beine|fusse|planscht|planschen|spielt|spielen|
        turnt|turnen|tanzt|tanzen|posieren|lehnt|lehnen|springen|uberqueren|waten|klettern)""",
    "look_down": """
        (runterschauen|hinunterschauen|runterfotografieren|runtergucken|runterschaun|senkrecht
        runter|senkrecht nach unten|von oben|nach unten|in die tiefe|gerade runter|direkt
        runter|runterblicken|hinunter|drubergucken|druberschauen|druber)""",
    "lean_out": """
        (beine|fusse) in der luft, auf dem (vorsprung|sporn|uberhang), (nah|naher|nahe|dicht|
        knapp) (an|am|bis) (die|der|den|rand|kante|abgrund) ~ (kante|rand|abgrund|stehen|ran|
        hin), einen schritt (vom|vor dem|von der), (lehn|lehne|lehnt|lehnen|beug|beuge|beugt|
        beugen|hang|hange|hangt|hangen|streck|strecke) ~ (raus|hinaus|uber die|uber den|ubers|
        drüber|druber|weit vor|vornuber|uber), (rauslehnen|hinauslehnen|rausbeugen|hinausbeugen|
        raushangen|vorbeugen|druberlehnen|druberbeugen|raushalten), (halt|halte|haltst|halten|
        haltet) (mich|mir|ihn|sie|du mich|uns) ~ (gurtel|rucksack|jacke|fussen|kapuze|hosenbund|
        gurt|fest|beinen|bein), auf dem bauch ~ (kante|rand|raus|uber|vor)""",
    "dangle": """
        (beine|fusse) ~ (baumeln|hangen|baumelt|uberm|uber dem|uber die kante|ins leere|
        runterhangen)""",
    "drop_below": """
        (unter mir|unter uns|drunter|darunter) ~ (meter|nichts|nix|m|abgrund), meter (tief|
        runter|senkrecht|abgrund), geht (es|s) ~ (runter|senkrecht|hinunter|steil)""",
    "tripod": """
        (stativ|kamera)""",
    "ice": """
        (eis|eise|eisdecke|eisflache|eiszapfen|eisvorhang|eisfall|zapfen|eissaule|gefroren|
        gefrorenen|gefrorene|gefrorener|zugefroren|zugefrorenen|zugefrorene|vereist|vereiste|
        vereisten|eisplatte|eiswand|eisscholle|spiegelglatt|schneebrucke|eishohle|eisbrucke|
        eisig|glatteis)""",
    "goes_on": """
        (auf|ubers|uber|aufs|hinter|unter|unterm|in|mitten|quer) (das|dem|den|die|der|m|n|
        meinem|nem)? (eis|eisdecke|eisflache|gefrorenen|zugefrorenen|see|tumpel|weiher|teich|
        pool|becken|gumpe|vereisten|vereiste|eisplatte|eisvorhang|schneebrucke|zugefrorene),
        (halt|tragt|tragen|hielt|trug) ~ (mich|uns|das|es|eis|noch|schon|bestimmt|aus|.), ubers
        eis, aufs eis, (ohne) (grodel|steigeisen|spikes), (rutsche|rutsch|schlitter*)""",
    "creaks": """
        (knackt|knackst|knirscht|kracht|knarzt|riss|risse|reisst|bricht|gibt nach|gebrochen|
        knackte|achzt|singt|wasser drauf|tropft|biegt)""",
    "below": """
        (drunter|darunter|direkt unter|direkt drunter|unterm|unter den|unter dem|unter einem|
        unter die|hinter dem|hinterm|hinter den|hinter die|dahinter|uber mir|uber uns|uber
        meinem|neben mir|neben uns|liegen rum|liegen herum|um mich|um uns|zwischen den|unter
        der)""",
    "chunks": """
        (brocken|stucke|zapfen|eiszapfen|platten|schollen|klumpen|teile) ~ (runter|herunter|
        fallen|fallt|krachen|krachend|brechen|abgebrochen|kommen|ab|losen)""",
    "behind_fall": """
        (hinter|hinterm|hinterem|unter|unterm) (den|dem|das|die|der)? ~ (fall|wasserfall|
        wasservorhang|vorhang|strahl|wasserstrahl|wasser|schleier|wasserschleier|dusche),
        (hinten|in|hohle|grotte|nische|hohlung|spalt) ~ (hinten|grotte|hohle|hinterm|vorhang|
        hinter dem|hinterm fall|halbhohle), (dahinter|dahinterstellen|hinterlaufen|von hinten|
        durch den vorhang) ~ (stellen|fall|wasserfall|vorhang|gehen|schlupfen|raus|fotografier*|
        durch)""",
    "ask": """
        (kann|kannst|konnen|darf|durfen|kommt man|komm ich|gibts|gibt es|geht das|soll|sollen|
        wie komm|wie komme|ok wenn|mochte|will|wollen|ist es|lasst sich|stell|stelle|wurd)""",
    "landing": """
        (wo|dort wo|da wo|genau) ~ (aufprallt|aufschlagt|auftrifft|runterkommt|aufkommt|
        reinkracht|aufklatscht|niederprasselt|landet|einschlagt|runterkracht), aufprall*,
        (direkt|genau|ganz|mitten) ~ (unterm|unter den|unter dem|am fuss vom|am fuss des|in den)
        (strahl|fall|wasserfall|wasserstrahl), in die gischt (stellen|gehen|rein)""",
    "overhang": """
        uberhang*, uberhangend*, (unter|unterm) (der|dem|die|den|einem|einer|nem) ~ (wand|
        felswand|fels|felsen|felsdach|brocken|block|uberhang|felsvorsprung|abbruch|losen|
        lockeren|hang), felsdach, (lose|lockere|wackelige) (felsen|brocken|steine|blocke|platte)""",
    "fresh_rock": """
        (frische|frischer|neue|neuer|helle) ~ (brocken|felssturz|steine|bruch|bruchstellen|
        abbruch|steinschlag|felsen|splitter|blocke|geroll|narben|abbruchstelle), steinschlag,
        felssturz""",
    "stonefall": """
        (rieseln|rieselt|fallen|prasseln|kommen|poltern|fliegen|fallt) ~ (steinchen|steine|
        kiesel|brocken|geroll|kies|stein|sand), (steine|stein|brocken|kiesel|felsbrocken|
        gestein|steinchen|kies|geroll|felsen) ~ (fallen|fallt|prasseln|kommen|kommt|runter|
        herunter|rieseln|rieselt|springen|poltern|knallen|geflogen|runtergekommen|krachen|losen|
        schlagen) ~ (runter|herunter|von oben|neben|um|mir|uns|runtergekommen|ein|auf|ab|vorbei|
        dauernd|.), steinschlag (hier|gerade|grad|jetzt|uber|von)""",
    "wade_in": """
        (wat|wate|waten|watet|hineinwaten|reinwaten|durchwaten|ruberwaten|reingewatet|durchs
        wasser), (stell|stelle|stellen|steh|stehe|stehen|steht|geh|gehe|gehen|geht|steig|steige|
        steigen|lauf|laufe|laufen|setz|spring|springe|springen|hock|knie|tret) ~ (ins|im|in den|
        in die|in das|durch den|durchs|durch die|mitten) ~ (wasser|bach|fluss|strom|stromung|
        gumpe|becken|wildbach|furt|bachbett|flussbett|stromschnelle|zug|kolk), (stativ|fusse|
        beine) ~ (im|ins|in den) (wasser|bach|fluss|stromung), (bach|fluss|wildbach|strom)
        (queren|uberqueren|durchqueren|zu fuss), (quer|quere|queren|uberquer*|durchquer*) ~
        (bach|fluss|wildbach|strom|furt|stromung)""",
    "waders": """
        (wathose|wathosen|watstiefel|neopren|barfuss|gummistiefel|badehose|neoprenanzug|
        hochgekrempelt|wasserschuhe|schuhe aus|trekkingsandalen)""",
    "go_in": """
        (rein|hinein|durch|ruber|hinuber|mitten|mittendrin|reingehen|reinsteigen|raus|ins
        wasser|im wasser|im bach|in den bach|in den fluss|los|drin|zug|stromung)""",
    "deep": """
        (knietief|hufttief|brusttief|knochelhoch|kniehoch|huftehoch|oberschenkelhoch|
        knocheltief|tief|huftthoch|schenkeltief), bis ~ (knie|knien|hufte|brust|bauch|
        oberschenkel|schenkel|hals|huften|nabel|waden|schritt|achseln|arsch|po)""",
    "deep_in": """
        (wasser|bach|steh|stehe|stehen|drin|im|ich|mir|wir|er|sie|geht|reicht) ~ (bis zum|bis
        zur|bis zu den|bis an die|bis uber die|ubers|uber die) (knie|knien|hufte|brust|bauch|
        bauchnabel|oberschenkel|hals|huften|nabel|schritt), (knietief|hufttief|brusttief|
        hufthoch|schenkeltief|bauchtief) (im|in|ist|drin|wird|durch|stehen)*""",
    "water_speed": """
        (meter pro sekunde|m s|km h|meter in der sekunde)""",
    "bottom_unseen": """
        (grund|boden) ~ (nicht|nimmer|kaum|net) (zu sehen|zu erkennen|sehen|erkennen), (seh|
        sehe|sieht|sehen|erkenn|erkenne) ~ (grund|boden) ~ (nicht|nimmer|kaum|nicht mehr|net)*,
        (keinen|kein) grund""",
    "island_target": """
        (insel|inselchen|kiesbank|sandbank|andere ufer|anderen ufer|andere seite|anderen seite|
        druben|gegenuber|felsen im|stein in der mitte|stein im|fels im|felsblock im|felsen
        mitten|steininsel|ruber)""",
    "swim_in": """
        (schwimm|schwimme|schwimmen|schwimmt|tauch|tauche|tauchen|spring|springe|springen|
        springt|baden|bad|hupf|hupfe|hupfen|reinspringen|reinhupfen|kopfer) ~ (zum|unter den|
        unter dem|durch|ruber|ins|in die|in den|im|in der|rein|quer|hinter|vom|von) ~ (fall|
        wasserfall|becken|gumpe|pool|kolk|wasser|fluss|bach|strudel|see|insel|seite|ufer|felsen|
        klippe|brucke|stromung|vorhang|tumpel|ruber)""",
    "pushes_me": """
        (stromung|wasser|es|bach|fluss|zug) ~ (druckt|schiebt|zieht|zerrt|reisst) ~ (mich|mir|
        uns|an den|beine|fusse|beinen|fussen|ihn|sie|stark|ganz schon), (wacklig|wackelig|
        wackel|unsicher) ~ (beine|beinen|wasser|stromung|fussen|drin), ganz wacklig, (fast|
        beinah|beinahe) ~ (umgerissen|weggerissen|umgeworfen|mitgenommen|umgefallen)""",
    "climb_up": """
        (kletter|klettere|klettern|klettert|hochklettern|raufklettern|hochsteigen|raufsteigen|
        steig|steige|steigen|hochkommen|hochkomme|kraxel|kraxle|kraxeln|kraxelt|hoch|rauf|
        hinauf|hochkraxeln|aufsteigen|erklimm*|hochziehen|bouldern|hochhangeln|hangeln|queren|
        hochgehen|rauflaufen|hochrobben|aufstieg)""",
    "wet_rock": """
        (nass|nasse|nassen|nasser|glitschig|glitschige|glitschigen|glitschiger|rutschig|
        rutschige|rutschigen|rutschiger|moosig|moosige|moosigen|schmierig|schmierige|
        schmierigen|veralgt|veralgte|feucht|feuchten|glatt|glatte|glatten|algig|bemoost|
        bemooste|bemoosten|schlupfrig|schlupfrige|schlupfrigen|speckig) ~ (fels|felsen|wand|
        platte|platten|steine|stein|felswand|block|blocke|rinne|stufe|stufen|riss|kamin|hang|
        felsplatte|felsplatten|zeug), (fels|felsen|wand|platte|platten|steine|felswand|blocke|
        rinne|stufen|hang) ~ (nass|glitschig|rutschig|moosig|schmierig|veralgt|feucht|glatt|
        schlupfrig|bemoost|seifig), moos""",
    "fall_side": """
        (neben|seitlich|links|rechts|entlang|direkt) ~ (fall|wasserfall|wasserfalls|falls|
        kaskade), am (fall|wasserfall) ~ (hoch|rauf|hinauf), (wand|felswand|fels|felsen|rinne|
        steilwand|kamin|felsen) (hoch|rauf|hinauf), (den|am) (fall|wasserfall|wasserfalls)
        (hoch|rauf|hinauf)""",
    "no_rope": """
        (ohne|kein|keinen|brauch kein|ungesichert) ~ (seil|sicherung|gurt|helm|gesichert|
        klettersteigset)*, ungesichert, (in|mit) (turnschuhen|sandalen|flipflops|sneakers|
        gummistiefeln|socken), mit einer hand, einhandig""",
    "solo": """
        free solo, freesolo""",
    "next_step": """
        (zweite|zweiten|nachste|nachsten|obere|oberen|mittlere|mittleren|dritte|dritten|erste|
        ersten) (absatz|stufe|kaskade|becken|terrasse|etage|sims|band|gumpe|ebene|plateau|fall)""",
    "stuck_up": """
        (komm|komme|kommt|kommen|trau|traue|trauen|traut|kann|weiss) ~ (nicht|nimmer|net|nich|
        weder|kaum) ~ (runter|rauf|vor|zuruck|hinunter|weiter|hoch), (hange|hang|stecke|steck|
        hangt|sitze|sitzt) ~ (fest|in der wand|felswand)""",
    "climb_bad": """
        (kletter|klettere|klettern|klettert|kraxel|kraxle|kraxeln|kraxelt|steig|steige|steigen|
        kraxln) ~ (felswand|wand|felsen|fels|wasserfall|platte|rinne|steilhang|fall|boschung|
        felsblock|felsblocke|kamin|platten|klippe) ~ (hoch|rauf|hinauf|runter|hinunter|rum|
        hinab|.), (felswand|wand|felsen|wasserfall|rinne|steilhang|platte) ~ (hochklettern|
        raufklettern|hochkraxeln|raufkraxeln|erklettern|hochsteigen|runterklettern|
        hinaufklettern|hinaufkraxeln|klettern|kraxeln|abklettern)""",
    "bar": """
        (gelander|zaun|absperrung|absperrband|sperre|kette|seil|schranke|gatter|tor|tur|schild|
        schilder|tafel|verbotsschild|warnschild|flatterband|band|barriere|absperrgitter|gitter|
        brustung|holzzaun|drahtseil|drangitter|betreten verboten|durchgang verboten|kein
        zutritt|zutritt verboten|lebensgefahr)""",
    "closed": """
        (gesperrt|gesperrte|gesperrten|gesperrter|abgesperrt|abgesperrte|abgesperrten|
        geschlossen|verboten|verbotene|sperrung|wegsperrung|betreten verboten|zutritt verboten|
        kein zutritt|lebensgefahr)""",
    "pass_it": """
        (uber|ubers|uberm|druber|drunter|unter|unterm|durch|hinter|hinters|vor|vors|jenseits|
        ausserhalb|vorbei|drumherum|drum herum|auf der anderen seite|andere seite) (das|die|den|
        dem|der|eine|ein|nem)? ~ (gelander|zaun|absperrung|absperrband|sperre|kette|seil|
        schranke|gatter|tor|brustung|flatterband|band|barriere|gitter|absperrgitter|schild|
        schilder|drahtseil|geklettert|gestiegen|klettern|steigen|durch|geschlupft|schlupfen|
        hupfen|gehupft|gegangen|vorbei|drangitter), (druber|drubersteigen|druberklettern|
        drunterdurch|durchschlupfen|ubersteigen|drubergestiegen|drubergeklettert|untendurch|drum
        rum|durchgeschlupft|drubersteig|druberhupfen|uberklettern|vorbeigehen|vorbeigequetscht),
        (steig|steige|kletter|klettere|hupf|hupfe|spring|springe|schlupf|schlupfe) ~ (druber|
        drunter|durch|vorbei|ruber)""",
    "go_anyway": """
        trotzdem, (keiner|niemand|kein mensch) ~ (da|schaut|merkt|sieht|kontrolliert|hin|
        interessiert|guckt), (alle|andere|jeder|die anderen|viele|einheimische|leute) ~ (gehen|
        machen|laufen|steigen|auch|ignorier*|durch|rein|vorbei|gegangen|geht|macht), ignorier*,
        (nur|mal|bloss) (kurz|schnell|eben|fur ein|eine minute|zwei minuten|funf minuten|ein
        foto), wird schon, gilt ~ (nicht|bestimmt|eh|wohl|nur|sicher), bestimmt nur, (eh|wohl|
        sicher|wahrscheinlich) nur, egal, (kann|konnen|darf|durfen|soll|sollen|konnte|geht) ~
        (rein|durch|vorbei|hin|schnell|kurz|trotzdem|weiter|doch|hinter), (geh|gehe|gehen|bin|
        sind|lauf|laufe) ~ (rein|durch|weiter|vorbei|trotzdem|drin|durchgegangen|reingegangen),
        ubertrieben, schlimm ~ (sein|nicht|werden)""",
    "in_picture": """
        (im bild|stort|ins bild|bessere sicht|freie sicht|bester blick|besserer blick|im weg|
        besser)""",
}
_AGAINST: Final[Mapping[str, str]] = {
    "past": """
        (letzte|letzten|letztes|letzter|vorige|vorigen|voriges|vergangene|vergangenen|
        vergangenes) (jahr|woche|monat|sommer|winter|herbst|fruhling|fruhjahr|mal|wochenende|
        montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag|saison|urlaub), vor ~
        (jahren|jahr|monaten|wochen|tagen|woche|monat), gestern, vorgestern, damals, fruher
        (war|sind|bin|hat|ist|mal|hab|gab), in den (achtzigern|neunzigern|siebzigern), anno,
        19\\d\\d, 18\\d\\d, (im|seit) 20\\d\\d, im jahr, als kind, neulich, jedes (jahr|mal), am
        (montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag) (ist|war|hat|sind|kam|bin|
        haben)""",
    "told": """
        (donner|blitz|eis|kalter|wild) (wetter|schnell|lichtquelle), (mein|meine) (stolz|seele),
        (adler|wasseramsel|amsel|vogel|ente|forelle|fisch|reiher|otter) ~ (taucht|schwimmt|
        springt|fliegt|unter|hinter), (film|krimi|buch|roman|geschichte|gedicht|lied|witz|
        legende|sage|marchen|chronik|gelesen|zeitung|artikel|podcast|titel|traum|getraumt|
        albtraum|marterl|plakat|quiz|vortrag|diashow|erzahlt|heisst das|wort|ausstellung|
        gedenktafel|applaus|theater|ubersetzt|nachrichten|doku|poster|hiess|kiosk|spruch|
        redewendung|kalender), (wie|als) (ein|eine|der|die)? (donner|blitz|eis|sturm|gewitter|
        donnern)""",
    "editing": """
        sonne steht, nebel steigt, steigt ~ nebel, (welcher|wieviel|wie viel|wie) ~ hoher,
        (farn|zweig|ast|blatt|baum|fels) die kante, (sonne|mond|licht) steht ~ hinter, (stuck|
        bild|bilder|foto|frame|aufnahme|dateien) (vom|im|fehlt|fehlen|weg|von), (fehlt|fehlen) ~
        (stuck|bild|bilder|foto|fotos|himmel|vordergrund|spannung|datei|deckel|scharfe), ersatz
        (im|ist|in|dabei|hab), (bei|mit) 1 \\d+, kante beruhren, haltung, (histogramm|
        zuschneiden|beschneiden|beschnitt|wegschneiden|wegstempeln|stempeln|lichter|schatten|
        tiefen|sattigung|klarheit|regler|kontrast|struktur|pixel|raw|rohdaten|rohdateien|jpeg|
        rauschen|scharfe|vignette|kurve|ebene|maske|vorschau|abzug|abzuge|druck|drucken|
        passepartout|album|galerie|abstimmung|juror|jury|wettbewerb|weissabgleich|kelvin|
        magenta|farbstich|mitteltone|belichtungsmesser|menu|bildschirm|display|autofokus|bokeh|
        bildaufbau|komposition|belichtungsreihe|ausgefressen|ausgerissen|verwackelt|unscharf|
        fokus|belichtet|unterbelichtet|uberbelichtet|dunkelbild|bearbeitung|bearbeiten|
        entwickeln|nachbearbeitung|vordergrund|hintergrund|diagonale|bildrand|bildecke|bilds|
        farbe|farben|tonwert|tonwerte|leuchtkasten|speicherkarte|abgeklebt|zeichnung|hochformat|
        querformat|ecke|f 22), (bild|foto|aufnahme|licht|himmel|farbton) (ist|wirkt|hat|lebt|
        fallt|wird|fehlt), (rand|ecke|kante) (beschneiden|im bild|vom bild|des bildes|unten|
        oben), (im|ins|aus dem|am) bild, bewegung (einfrieren|ziehen), wirkt""",
    "over": """
        (alle|alles|beide|wir|sie|er) (sind|ist|wieder|gut|wohlauf)* (wohlauf|heil|gut|
        wohlbehalten|sicher|gesund|okay|ok) (zuruck|zuhause|angekommen|gegangen|und|.)*,
        fehlalarm, (wieder|alle) (daheim|zuhause|im bus|am auto|im auto), alle wieder (da|hier),
        (sitzen|sind) ~ (im bus|daheim|zuhause|am parkplatz|im auto|in der hutte), nichts
        passiert, nix passiert, (ist|wurde|haben) ~ (wiedergefunden|gefunden), umgekehrt,
        umgedreht, bleib daheim""",
    "supposed": """
        (falls|wenn|angenommen|was ware|gesetzt) (jemand|einer|mal|es|man|der|das) ~ (fallt|
        sturzt|rutscht|kommt|steigt|passiert|ware|sollte|verletzt|gewittert|donnert), (gefahr|
        risiko|wahrscheinlichkeit) (von|fur|dass|eines), (ubung|uben|kurs|lehrgang|training|
        versicherung|probe), angst vor""",
    "denied": """
        (keiner|niemand|nie|niemals|nicht|kein|keine|ohne zu) ~ (gefallen|gerutscht|
        ausgerutscht|passiert|verletzt|gewitter|donner|gefahr|hochwasser|klettern|reingehen|
        betreten|uber die|uber das|uber den|hinter die|hinter das|an die kante|zur kante),
        (bleib|bleibe|bleiben|blieben) ~ (dahinter|hinterm|hinter|weg|draussen|am weg|auf dem
        weg|auf der brucke|vor dem|vor der|fern|hinter der), (vom|von der|auf der|auf dem|von
        dem|auf) ~ (brucke|plattform|aussichtsplattform|aussichtspunkt|steg|parkplatz|weg|wiese|
        terrasse|kanzel|bank|strasse|weg aus)""",
    "plan": """
        morgen, ubermorgen, (vorhergesagt|vorhersage|gemeldet|angesagt|wetterbericht|wetterapp),
        nachste (woche|tage), nachsten (montag|dienstag|mittwoch|donnerstag|freitag|samstag|
        sonntag|monat), verschoben, abgesagt, fallt aus, zu verkaufen, verkaufe, umleitung""",
    "now": """
        (jetzt|gerade|grad|eben|soeben|im moment|vor ein paar minuten|vor \\d+ minuten)""",
    "help": """
        (hilfe|sos|notfall|notruf|dringend|was tun|was sollen wir|was soll ich tun|bitte
        schnell|112)""",
}

GERMAN: Final = Lexicon(
    common="""
        der das und ist nicht ich wir ein eine einen mit auf den dem zu sich von wie wo noch schon
        hab habe haben sind bin im ins am auch aber oder kann mein meine mir mich uns er ihn ihm
        grad nur jetzt beim vom zum zur bei da wenn unser unsere kein keine keiner hat wird
        sie es""",
    wordings={**_PEOPLE, **_WATER, **_BODY, **_ALONE, **_DARK, **_PLACES, **_AGAINST},
    spelling=folded,
)
