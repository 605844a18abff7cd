"""German wordings: where nobody stands, ways that nobody takes, stones that fall."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

PLACES: Final[Mapping[str, str]] = {
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
