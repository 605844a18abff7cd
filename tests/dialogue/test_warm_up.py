"""Whatever a message needs is loaded before the first one comes."""

from __future__ import annotations

import subprocess
import sys
from datetime import UTC, datetime

from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived
from bot.dialogue.warm_up import warm_up

#: Run in a process of its own: here everything has been loaded long ago.
SCRIPT = """
import sys
from datetime import UTC, datetime
from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived
from bot.dialogue.warm_up import warm_up

opened, modules = [], set()
def hear(event, arguments):
    if event == "open":
        opened.append(str(arguments[0]))
warm_up()
modules = set(sys.modules)
sys.addaudithook(hear)
place = Origin(
    room_id="!mill:mill.example", person_id="@fern:mill.example", event_id="$one",
    sent_at=datetime.now(UTC), direct=True,
)
context = Context.fresh(place)
for text in (
    "hello", "start", "its just mush", "12 m tall, 18 m away", "why", "my friend slipped in",
    "all safe", "language de", "zu hell", "die Blätter sind unscharf", "idioma es", "todo blanco",
):
    context, _ = handle(context, TextReceived(origin=place, text=text), datetime.now(UTC))
print(opened, sorted(set(sys.modules) - modules))
"""


def test_it_leaves_nothing_behind() -> None:
    """It may be run at any time: what somebody is answered is the same before it and after it."""
    now = datetime(2026, 6, 21, 12, tzinfo=UTC)
    place = Origin(room_id="!a:b", person_id="@c:b", event_id="$d", sent_at=now, direct=True)
    message = TextReceived(origin=place, text="12 m tall, 18 m away")
    before = handle(Context.fresh(place), message, now)
    warm_up()
    assert handle(Context.fresh(place), message, now) == before


def test_a_first_message_loads_nothing() -> None:
    """After the warm-up no message opens a file or imports a module, in any language."""
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT], capture_output=True, text=True, check=True, timeout=120
    )
    assert done.stdout == "[] []\n"
