"""The functions that a workbook's macros declare, as far as they can be read.

A `vbaProject.bin` is a compound file ([MS-CFB]) whose module streams hold their source compressed
([MS-OVBA] 2.4.1). What cannot be read is passed over: this looks for clashes, it proves nothing.
"""

import re
import struct
from collections.abc import Iterator

HEADER = bytes.fromhex("d0cf11e0a1b11ae1")
ENTRY, CHUNK = 128, 4096
STREAM, ROOT = 2, 5
# Every module's source starts with the word Attribute, its letters not yet compressed: a flag byte, then eight.
SOURCE_START, BEFORE_IT = b"\x00Attribut", 3
DECLARED = re.compile(rb"^[ \t]*(?:(?:public|private|friend|static)[ \t]+)*(?:function|sub)[ \t]+(\w+)", re.I | re.M)


def declared(project: bytes) -> set[str]:
    """The names of functions and subs in a macro project, in small letters."""
    names: set[str] = set()
    for stream in _streams(project):
        at = stream.find(SOURCE_START)
        if at >= BEFORE_IT:
            source = unpacked(stream[at - BEFORE_IT :])
            names |= {name.decode("latin-1").lower() for name in DECLARED.findall(source.replace(b"\r", b"\n"))}
    return names


def unpacked(container: bytes) -> bytes:
    """A compressed container of [MS-OVBA], as far as it can be read."""
    out, at = bytearray(), 1
    while at + 2 <= len(container):
        (head,) = struct.unpack_from("<H", container, at)
        end = min(at + (head & 0x0FFF) + 3, len(container))
        if head & 0x8000:
            _unpack_chunk(container[at + 2 : end], out)
        else:
            out += container[at + 2 : at + 2 + CHUNK]
            end = at + 2 + CHUNK
        at = end
    return bytes(out)


def _unpack_chunk(chunk: bytes, out: bytearray) -> None:
    start, at = len(out), 0
    while at < len(chunk):
        flags, at = chunk[at], at + 1
        for bit in range(8):
            if at >= len(chunk):
                return
            if not flags >> bit & 1:
                out.append(chunk[at])
                at += 1
            elif at + 2 <= len(chunk) and len(out) > start:
                (token,) = struct.unpack_from("<H", chunk, at)
                _copy(out, token, len(out) - start)
                at += 2
            else:
                return


def _copy(out: bytearray, token: int, behind: int) -> None:
    # How many bits of the token are the distance depends on how much stands behind.
    bits = max(4, (behind - 1).bit_length())
    length, distance = (token & (0xFFFF >> bits)) + 3, (token >> (16 - bits)) + 1
    for _ in range(length if distance <= behind else 0):
        out.append(out[-distance])


def _streams(data: bytes) -> Iterator[bytes]:
    """Every stream of a compound file."""
    if len(data) < 512 or not data.startswith(HEADER):
        return
    shift, small_shift = struct.unpack_from("<HH", data, 30)
    first, _, cutoff, first_small = struct.unpack_from("<4I", data, 48)
    if shift not in (9, 12) or small_shift != 6:
        return
    size = 1 << shift
    table = _numbers(b"".join(_sector(data, size, at) for at in struct.unpack_from("<109I", data, 76)))
    entries = _chain(data, size, table, first)
    small_table = _numbers(_chain(data, size, table, first_small))
    small = b""
    for at in range(0, len(entries) - ENTRY + 1, ENTRY):
        kind = entries[at + 66]
        start, length = struct.unpack_from("<II", entries, at + 116)
        if kind == ROOT:
            small = _chain(data, size, table, start)
        elif kind == STREAM and length >= cutoff:
            yield _chain(data, size, table, start)[:length]
        elif kind == STREAM:
            yield _chain(small, 1 << small_shift, small_table, start, head=0)[:length]


def _chain(data: bytes, size: int, table: tuple[int, ...], start: int, head: int = 1) -> bytes:
    """The sectors that follow one another from `start`; a table that runs in a circle ends."""
    found: list[bytes] = []
    at = start
    while at < len(table) and len(found) <= len(table):
        found.append(_sector(data, size, at, head))
        at = table[at]
    return b"".join(found)


def _sector(data: bytes, size: int, at: int, head: int = 1) -> bytes:
    # Numbers from 0xFFFFFFFA on mean that there is none.
    return data[(at + head) * size : (at + head + 1) * size] if at < 0xFFFFFFFA else b""


def _numbers(data: bytes) -> tuple[int, ...]:
    return struct.unpack(f"<{len(data) // 4}I", data[: len(data) // 4 * 4])
