"""Takes files, network, programs and other processes away from the process of a shared file."""

from __future__ import annotations

import ctypes
import errno
import os
import platform
import struct
from dataclasses import dataclass
from typing import Final

# Values of Linux's prctl, seccomp and clone; from the kernel's headers, from memory.
_PR_SET_SECCOMP: Final = 22
_PR_SET_NO_NEW_PRIVS: Final = 38
_MODE_FILTER: Final = 2
_ALLOW: Final = 0x7FFF0000
_REFUSE: Final = 0x00050000  # with the error number in its lower half
_CLONE_THREAD: Final = 0x00010000

# Offsets in what a filter sees of a call: its number, the machine, its first argument.
_NUMBER: Final = 0
_MACHINE: Final = 4
_FIRST: Final = 16

# Instructions of a filter: load a word, compare, test a bit, end.
_LOAD: Final = 0x20
_EQUAL: Final = 0x15
_BIT: Final = 0x45
_RETURN: Final = 0x06

_Instruction = tuple[int, int, int, int]


#: What computing needs, with its numbers on x86_64 and aarch64; from the kernel's tables of calls.
_CALLS: Final = {
    "read": (0, 63), "write": (1, 64), "readv": (19, 65), "writev": (20, 66), "pread64": (17, 67),
    "lseek": (8, 62), "close": (3, 57), "fstat": (5, 80),
    "mmap": (9, 222), "mprotect": (10, 226), "munmap": (11, 215), "mremap": (25, 216),
    "brk": (12, 214), "madvise": (28, 233), "futex": (202, 98), "membarrier": (324, 283),
    "set_robust_list": (273, 99), "rseq": (334, 293), "sched_yield": (24, 124),
    "sched_getaffinity": (204, 123), "sigaltstack": (131, 132), "rt_sigaction": (13, 134),
    "rt_sigprocmask": (14, 135), "rt_sigreturn": (15, 139), "restart_syscall": (219, 128),
    "nanosleep": (35, 101), "clock_nanosleep": (230, 115), "clock_gettime": (228, 113),
    "clock_getres": (229, 114), "gettimeofday": (96, 169), "getpid": (39, 172),
    "gettid": (186, 178), "getppid": (110, 173), "getrandom": (318, 278), "getrusage": (98, 165),
    "uname": (63, 160), "sysinfo": (99, 179), "exit": (60, 93), "exit_group": (231, 94),
}  # fmt: skip


@dataclass(frozen=True)
class _Machine:
    """Numbers of one kind of processor: its own in filters, and those of the calls."""

    audit: int
    allowed: frozenset[int]
    clone: int
    clone3: int
    kill: int
    tgkill: int


_MACHINES: Final = {
    "x86_64": _Machine(
        audit=0xC000003E,
        allowed=frozenset(number for number, _ in _CALLS.values()),
        clone=56,
        clone3=435,
        kill=62,
        tgkill=234,
    ),
    "aarch64": _Machine(
        audit=0xC00000B7,
        allowed=frozenset(number for _, number in _CALLS.values()),
        clone=220,
        clone3=435,
        kill=129,
        tgkill=131,
    ),
}


def confine() -> bool:
    """Leave this process memory, time and the connections that it has; there is no way back.

    Whoever takes over a decoder can then open no file, reach no network, start no program, and
    harm no other process: such calls fail with EPERM. Only for a process with one thread.

    Returns:
        Whether it could be done: Linux on a processor that is known, and a kernel with filters.
    """
    machine = _MACHINES.get(platform.machine())
    if machine is None:
        return False
    instructions = _filter(machine, os.getpid())
    code = b"".join(struct.pack("=HBBI", *instruction) for instruction in instructions)
    buffer = ctypes.create_string_buffer(code, len(code))
    # The kernel's struct sock_fprog: a count, padded to a word, and an address.
    program = ctypes.create_string_buffer(
        struct.pack("@HP", len(instructions), ctypes.addressof(buffer))
    )
    prctl = ctypes.CDLL(None, use_errno=True).prctl
    prctl.argtypes = [ctypes.c_int, *[ctypes.c_ulong] * 4]
    if prctl(_PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0:
        return False
    done: int = prctl(_PR_SET_SECCOMP, _MODE_FILTER, ctypes.addressof(program), 0, 0)
    return done == 0


def _filter(machine: _Machine, pid: int) -> list[_Instruction]:
    """What is allowed, one call after the other; everything else is refused."""
    refuse = (_RETURN, 0, 0, _REFUSE | errno.EPERM)
    allow = (_RETURN, 0, 0, _ALLOW)
    instructions = [
        (_LOAD, 0, 0, _MACHINE),
        (_EQUAL, 1, 0, machine.audit),
        refuse,
        (_LOAD, 0, 0, _NUMBER),
    ]
    for number in sorted(machine.allowed):
        instructions += [(_EQUAL, 0, 1, number), allow]
    first = (_LOAD, 0, 0, _FIRST)
    for number in (machine.kill, machine.tgkill):  # only itself, as `abort` does
        instructions += [(_EQUAL, 0, 4, number), first, (_EQUAL, 0, 1, pid), allow, refuse]
    # Threads, no processes; the newer call hides its flags, and without it the older is tried.
    instructions += [(_EQUAL, 0, 4, machine.clone), first, (_BIT, 0, 1, _CLONE_THREAD)]
    instructions += [allow, refuse]
    instructions += [(_EQUAL, 0, 1, machine.clone3), (_RETURN, 0, 0, _REFUSE | errno.ENOSYS)]
    return [*instructions, refuse]
