"""German wordings: what hurts, bleeds, or is too cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

BODY: Final[Mapping[str, str]] = {
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
