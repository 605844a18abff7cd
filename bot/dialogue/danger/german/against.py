"""German wordings: what speaks against a danger: over, supposed, denied, of the picture."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

AGAINST: Final[Mapping[str, str]] = {
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
