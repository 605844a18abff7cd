"""A proxy of our own between bot and homeserver that does by a seeded plan what bad networks do.

    with ProxyProcess(server.url, seed=7) as proxy:
        proxy.url                          # what the bot takes for its homeserver
        proxy.counts()                     # how often it did what

It passes everything through: long polls, media, whatever method and path. `python -m
tests.torture.proxy URL PORT SEED FILE` runs it, and keeps its counts in FILE.
"""

from __future__ import annotations

import asyncio
import json
import random
import signal
import subprocess
import sys
import time
from collections import Counter
from enum import Enum
from pathlib import Path
from types import TracebackType
from typing import Final, Self

import aiohttp
from aiohttp import ClientError, ClientSession, ClientTimeout, web

from bot.trial.homeserver import LOOPBACK, free_port


class Fault(Enum):
    """What the proxy does to a request."""

    PASSED = "passed through"
    DELAYED = "delayed"
    LIMITED = "429, not passed on"
    BAD_GATEWAY = "502 with a page, not passed on"
    RESET = "reset, not passed on"
    GATEWAY_TIMED_OUT = "504 with a page, after the server had acted"
    CUT = "cut in mid-response, after the server had acted"
    DOWN = "502 because the homeserver was down"


#: How often each comes [share of requests]; the rest passes. Own rule: about one in eight goes
#: wrong, so that a message with its room key meets several faults and still gets through.
SHARES: Final = {
    Fault.DELAYED: 0.04,
    Fault.LIMITED: 0.025,
    Fault.BAD_GATEWAY: 0.02,
    Fault.RESET: 0.02,
    Fault.GATEWAY_TIMED_OUT: 0.02,
    Fault.CUT: 0.03,
}
#: How long a delayed request waits [s] (own rule: past the bot's patience for a burst).
_DELAY_S: Final = (0.1, 2.0)
#: What a 429 asks to wait [ms].
_RETRY_MS: Final = (100, 1500)
#: Longest exchange with the homeserver; past any long poll [s].
_UPSTREAM_S: Final = 120.0
#: Own rule: the largest body of a request; frames of a torture are far smaller [bytes].
_MOST_BYTES: Final = 100_000_000
#: Headers about one connection, which a proxy does not pass on (RFC 9110, section 7.6.1), and
#: those that aiohttp makes anew.
_OWN_HEADERS: Final = frozenset(
    {"connection", "keep-alive", "transfer-encoding", "te", "upgrade", "host", "content-length"}
)
_PAGE: Final = "<html><head><title>{0}</title></head><body><h1>{0}</h1></body></html>"


class FaultProxy:
    """Answers requests with what the homeserver says, or with a fault.

    Args:
        upstream: address of the homeserver.
        seed: of the plan.
        shares: how often each fault comes [share of requests].
    """

    def __init__(self, upstream: str, seed: int, shares: dict[Fault, float] | None = None) -> None:
        self._upstream = upstream
        self._chance = random.Random(seed)
        self._shares = SHARES if shares is None else shares
        self._session: ClientSession | None = None
        self.counts: Counter[Fault] = Counter()

    def application(self) -> web.Application:
        """The web application, to be served on one loop."""
        application = web.Application(client_max_size=_MOST_BYTES)
        application.router.add_route("*", "/{path:.*}", self.answer)
        application.on_startup.append(self._open)
        application.on_cleanup.append(self._close)
        return application

    async def answer(self, request: web.Request) -> web.StreamResponse:
        """One request."""
        fault = self._next()
        match fault:
            case Fault.LIMITED:
                answer: web.StreamResponse = self._limited()
            case Fault.BAD_GATEWAY:
                answer = _page(502, "Bad Gateway")
            case Fault.RESET:
                answer = _hang_up(request)
            case _:
                if fault is Fault.DELAYED:
                    await asyncio.sleep(self._chance.uniform(*_DELAY_S))
                return await self._pass_on(request, fault)
        self.counts[fault] += 1
        return answer

    def _next(self) -> Fault:
        drawn = self._chance.random()
        for fault, share in self._shares.items():
            if drawn < share:
                return fault
            drawn -= share
        return Fault.PASSED

    async def _open(self, _: web.Application) -> None:
        self._session = ClientSession(
            timeout=ClientTimeout(total=_UPSTREAM_S),
            auto_decompress=False,
            connector=aiohttp.TCPConnector(limit=0),
        )

    async def _close(self, _: web.Application) -> None:
        if self._session is not None:
            await self._session.close()

    async def _pass_on(self, request: web.Request, fault: Fault) -> web.StreamResponse:
        assert self._session is not None
        body = await request.read()
        headers = {
            name: value
            for name, value in request.headers.items()
            if name.lower() not in _OWN_HEADERS
        }
        try:
            async with self._session.request(
                request.method,
                self._upstream + request.raw_path,
                headers=headers,
                data=body or None,
                allow_redirects=False,
            ) as response:
                answer = await self._hand_back(request, response, fault)
        except (ClientError, TimeoutError):
            fault = Fault.DOWN
            answer = _page(502, "Bad Gateway")
        self.counts[fault] += 1
        return answer

    async def _hand_back(
        self, request: web.Request, response: aiohttp.ClientResponse, fault: Fault
    ) -> web.StreamResponse:
        if fault is Fault.GATEWAY_TIMED_OUT:
            await response.read()
            return _page(504, "Gateway Timeout")
        answer = web.StreamResponse(status=response.status)
        for name, value in response.headers.items():
            if name.lower() not in _OWN_HEADERS:
                answer.headers[name] = value
        if fault is Fault.CUT:
            return await self._cut(request, response, answer)
        answer.content_length = response.content_length
        await answer.prepare(request)
        async for piece in response.content.iter_any():
            await answer.write(piece)
        await answer.write_eof()
        return answer

    async def _cut(
        self, request: web.Request, response: aiohttp.ClientResponse, answer: web.StreamResponse
    ) -> web.StreamResponse:
        """Announce the whole body and hand over a part of it."""
        body = await response.read()
        answer.content_length = len(body)
        await answer.prepare(request)
        await answer.write(body[: self._chance.randrange(len(body) or 1)])
        if request.transport is not None:
            request.transport.close()  # what was written still goes out
        return answer

    def _limited(self) -> web.Response:
        return web.json_response(
            {
                "errcode": "M_LIMIT_EXCEEDED",
                "error": "Too Many Requests",
                "retry_after_ms": self._chance.randint(*_RETRY_MS),
            },
            status=429,
        )


def _page(status: int, title: str) -> web.Response:
    return web.Response(status=status, text=_PAGE.format(title), content_type="text/html")


def _hang_up(request: web.Request) -> web.Response:
    if request.transport is not None:
        request.transport.abort()
    return web.Response()


async def serve(upstream: str, port: int, seed: int, counts_path: Path) -> None:
    """Serve until SIGTERM, and write the counts at the start, each second and at the end."""
    proxy = FaultProxy(upstream, seed)
    runner = web.AppRunner(proxy.application(), access_log=None, shutdown_timeout=0.1)
    await runner.setup()
    await web.TCPSite(runner, LOOPBACK, port).start()
    _write(counts_path, proxy.counts)
    told = asyncio.Event()
    asyncio.get_running_loop().add_signal_handler(signal.SIGTERM, told.set)
    while not told.is_set():
        try:
            async with asyncio.timeout(1.0):
                await told.wait()
        except TimeoutError:
            _write(counts_path, proxy.counts)
    _write(counts_path, proxy.counts)
    await runner.cleanup()


def _write(path: Path, counts: Counter[Fault]) -> None:
    beside = path.with_suffix(".new")
    beside.write_text(json.dumps({fault.name: number for fault, number in counts.items()}))
    beside.replace(path)


class ProxyProcess:
    """The proxy in a process of its own, so that it shares no loop with anybody.

    Args:
        upstream: address of the homeserver.
        seed: of the plan.
        folder: for its counts and its log.
    """

    def __init__(self, upstream: str, seed: int, folder: Path) -> None:
        self._upstream = upstream
        self._seed = seed
        self._counts_path = folder / "proxy.json"
        self._log_path = folder / "proxy.log"
        self._port = free_port()
        self._process: subprocess.Popen[bytes] | None = None

    @property
    def url(self) -> str:
        """Where it listens."""
        return f"http://{LOOPBACK}:{self._port}"

    def counts(self) -> dict[Fault, int]:
        """How often it did what; complete once it has ended."""
        if not self._counts_path.exists():
            return {}
        counts = json.loads(self._counts_path.read_text())
        return {fault: counts.get(fault.name, 0) for fault in Fault}

    def __enter__(self) -> Self:
        """Start."""
        command = (sys.executable, "-m", "tests.torture.proxy")
        words = (self._upstream, str(self._port), str(self._seed), str(self._counts_path))
        with self._log_path.open("wb") as log:
            self._process = subprocess.Popen((*command, *words), stdout=log, stderr=log)
        give_up_at = time.monotonic() + 20.0
        while not self._counts_path.exists():  # it writes them when it listens
            assert self._process.poll() is None, self._log_path.read_text()
            assert time.monotonic() < give_up_at, "the proxy did not start"
            time.sleep(0.05)
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Stop."""
        assert self._process is not None
        self._process.terminate()
        self._process.wait(20.0)


if __name__ == "__main__":
    asyncio.run(serve(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), Path(sys.argv[4])))
