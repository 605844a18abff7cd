"""A homeserver that answers what a test tells it to, broken answers included."""

from __future__ import annotations

import asyncio
import gzip
from collections import defaultdict
from collections.abc import Awaitable, Callable
from typing import Any, Final

from aiohttp import web
from aiohttp.test_utils import TestServer

USER_ID: Final = "@linn:example.org"
DEVICE_ID: Final = "LINNDEVICE"
TOKEN: Final = "syt_secret"

Answer = Callable[[web.Request], Awaitable[web.StreamResponse]]


def json(status: int = 200, **answer: Any) -> Answer:
    """An answer as a homeserver gives it."""

    async def respond(_: web.Request) -> web.StreamResponse:
        return web.json_response(answer, status=status)

    return respond


def error(status: int, code: str, **more: Any) -> Answer:
    """A refusal with its Matrix error code."""
    return json(status, errcode=code, error="no", **more)


def page(status: int) -> Answer:
    """The page of something that stands in front of the homeserver."""

    async def respond(_: web.Request) -> web.StreamResponse:
        return web.Response(status=status, text="<html>Bad day</html>", content_type="text/html")

    return respond


async def hang_up(request: web.Request) -> web.StreamResponse:
    """No answer: the connection ends."""
    assert request.transport is not None
    request.transport.close()
    return web.Response()


def file(data: bytes, *, sized: bool = True) -> Answer:
    """A file, in one piece that tells its size or in pieces that do not."""

    async def respond(request: web.Request) -> web.StreamResponse:
        if sized:
            return web.Response(body=data, content_type="image/png")
        response = web.StreamResponse()
        response.enable_chunked_encoding()
        await response.prepare(request)
        for start in range(0, len(data), 1000):
            await response.write(data[start : start + 1000])
        return response

    return respond


def trickle(data: bytes, *, stated: int | None = None, ends: bool = False) -> Answer:
    """A file that begins and then neither goes on nor ends; or breaks off before what it stated."""

    async def respond(request: web.Request) -> web.StreamResponse:
        response = web.StreamResponse()
        response.content_length = stated
        if stated is None:
            response.enable_chunked_encoding()
        await response.prepare(request)
        await response.write(data)
        if ends:
            await hang_up(request)
        else:
            await asyncio.sleep(600)
        return response

    return respond


def zipped(data: bytes) -> Answer:
    """A file that comes compressed, as a web server may do."""

    async def respond(_: web.Request) -> web.StreamResponse:
        return web.Response(body=gzip.compress(data), headers={"Content-Encoding": "gzip"})

    return respond


class ScriptedServer:
    """Gives for each path the answers in turn; the last one again and again."""

    def __init__(self) -> None:
        self.answers: defaultdict[str, list[Answer]] = defaultdict(list)
        self.asked: list[tuple[str, str]] = []
        self._queries: list[tuple[str, dict[str, str]]] = []
        self.bodies: list[bytes] = []
        app = web.Application()
        app.router.add_route("*", "/{path:.*}", self._respond)
        self._server = TestServer(app)

    @property
    def url(self) -> str:
        """Base address."""
        return str(self._server.make_url("")).rstrip("/")

    async def start(self) -> None:
        """Listen on loopback."""
        await self._server.start_server()

    async def stop(self) -> None:
        """Stop listening."""
        await self._server.close()

    def say(self, path_end: str, *answers: Answer) -> None:
        """Answer requests whose path ends like this."""
        self.answers[path_end] = list(answers)

    def asked_for(self, path_end: str) -> int:
        """How often such a path was asked for."""
        return sum(path.endswith(path_end) for _, path in self.asked)

    def queries(self, path_end: str) -> list[dict[str, str]]:
        """The parameters with which such a path was asked for."""
        return [query for path, query in self._queries if path.endswith(path_end)]

    async def _respond(self, request: web.Request) -> web.StreamResponse:
        self.asked.append((request.method, request.path))
        self._queries.append((request.path, dict(request.query)))
        self.bodies.append(await request.read())
        for path_end, answers in self.answers.items():
            if request.path.endswith(path_end):
                answer = answers.pop(0) if len(answers) > 1 else answers[0]
                return await answer(request)
        return web.json_response({"errcode": "M_UNRECOGNIZED", "error": "no"}, status=404)
