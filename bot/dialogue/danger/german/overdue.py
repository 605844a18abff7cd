"""German wordings: who is overdue, does not answer, or went off alone."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

OVERDUE: Final[Mapping[str, str]] = {
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
