"""Spanish wordings of a plain day out: errands, small complaints, a hand's breadth of water."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

EVERYDAY: Final[Mapping[str, str]] = {
    "errand": """
        (cafe|cafes|helado|helados|merienda|merendero|picnic|bocadillo|bocadillos|bocata|tarta|
        cerveza|bano|aseo|servicio|servicios|bar|kiosco|quiosco|cafeteria|restaurante|
        chiringuito|parque infantil|tienda), (fue|fueron|va|van|ha ido|han ido|anda) (a|por) (por|
        buscar|comprar|el|la|un|una)? (cafe|helado|tele|objetivo|filtro|chaqueta|bateria|
        tripode|agua|pan|comida|coche|bano)*, (al|en el|del) (coche|carro|bano|bar|hotel|bus|
        merendero|aparcamiento|refugio|prado), (cambia|cambiando|cambiar|cambiarse|se cambia) (de|
        el|la)? (objetivo|lente|zapatos|bateria|tarjeta|filtro|panal|carrete), (viene|vuelve|
        vuelvo|regresa) en (un|dos|cinco|\\d+) (minuto|minutos|momento|rato), nos vemos (a|en),
        con (un|su) (libro|cuaderno), (lee|leyendo|teje|tejiendo|dibuja|dibujando|pinta|pintando|
        retratos|duerme en la|duerme en el)""",
    "mild": """
        (poco|poquito|algo|poquitin|pelin|levemente) (de)? (frio|fria|fresco|rigido|cansado|
        cansada|cansancio|mojado|mojada|humedo|humeda|sudado|embarrado|sin aliento|aburrido|
        aburrida|hambre|sed), (tirita|tiritas|curita|ampolla|ampollas|mosquito|mosquitos|
        picaduras de mosquito|ortiga|ortigas|pica|pican|picor|polen|estornudo|alergia al polen|
        hambre|sed|molido|molida|agujetas|bostezo|fresquito|fresquita), (piernas|pies|brazos|ojos|
        espalda|rodillas|hombros) (estan|van|algo|un poco)? (cansad*|cargad*|rigid*), (guantes|
        gorro|plumas|chaqueta|chubasquero|gorra) (puesto|puestos|puesta|puestas|y sigo)*, (me
        puse|ya puse) (el|la|los)? (plumas|guantes|chaqueta|chubasquero|tirita|gorro), me siento ~
        (banco|minutos|rato|ratito|hierba), de estar (agachado|agachada|sentado|sentada),
        demasiado cafe, botas nuevas, todo (bien|bueno|perfecto|ok)""",
    "shallow": """
        (apenas|solo|ni|casi no|como mucho) ~ (tobillo|tobillos|suela|suelas|punta|mojo|moje|
        mojamos|zapatos), (al|hasta el) tobillo como mucho, agua al tobillo, punta de (las|los)
        (botas|zapatos), (charco|charcos|hilo|hilito), (dos|tres|cinco|diez|\\d+) (cm|
        centimetros) (de agua|de hondo)*, (media|medio|un) (bota|paso|zapato) (de|ancho)*, (en|
        sobre) (grava|hierba|arena|tierra|la hierba|la orilla) (seca|firme)*, poca agua, agua
        baja, no me moje, ni me moje""",
}
