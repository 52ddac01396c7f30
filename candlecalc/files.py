"""Files as we write them: whole or not at all, and the same bytes each time.

A file is written beside its place, under a name that says whose it is and that it is not done, and put there at the
end. Who stops a run half-way leaves such a `.part`; the next run that writes in the folder clears it.
"""

import errno
import io
import os
import secrets
import stat
import zipfile
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

try:
    import fcntl
except ImportError:  # Windows, which by itself keeps an open file from being removed
    fcntl = None  # type: ignore[assignment]

THERE_ALREADY = "is there already; --force writes over it"
NO_FILE = "it is a pipe or a device, no file"
READ_ONLY = "it is read-only"
OF_ANOTHER = "it belongs to another user or group and cannot be written so that it stays theirs; name another file"
MANY_NAMES = "it has several names (hard links), which it would lose; name another file"
OURS, NOT_DONE = ".candlecalc-", ".part"


def write_whole(path: Path, data: bytes, *, force: bool = False) -> None:
    """Write a file whole or not at all; an OSError names the file and says why not."""
    write_all({path: data}, force=force)


def write_folder(files: Mapping[Path, bytes], *, force: bool = False) -> None:
    """Write files with the folders that they need; where one cannot be written, nothing new is left."""
    with ExitStack() as undo:
        for folder in dict.fromkeys(folder for path in files for folder in reversed(path.parents)):
            if not folder.exists():
                folder.mkdir()
                undo.callback(_remove_empty, folder)
        write_all(files, force=force)
        undo.pop_all()


def write_all(files: Mapping[Path, bytes], *, force: bool = False) -> None:
    """Write files whole: all of them or none, but that with `force` some may be replaced when another cannot be.

    Without `force` no file is replaced, even one that appears while we work.
    """
    for folder in {path.parent for path in files}:
        _clear(folder)
    # Each part stays open until it has its place: an open one is another run's work.
    with ExitStack() as opened, ExitStack() as undo:
        done = []
        for path, data in files.items():
            with _named(path):
                there = _to_replace(path) if force else path
                part = _part(there, data, opened)
                undo.callback(part.unlink, missing_ok=True)
                done.append((path, there, part))
        for path, there, part in done:
            with _named(path):
                if force:
                    part.replace(there)
                else:
                    _put_new(part, there)
                    undo.callback(there.unlink, missing_ok=True)
        undo.pop_all()
    for folder in {there.parent for _, there, _ in done}:
        _sync(folder)


@contextmanager
def _named(path: Path) -> Iterator[None]:
    """An OSError names the file that was asked for."""
    try:
        yield
    except OSError as problem:
        raise OSError(problem.errno, problem.strerror, str(path)) from None


def _to_replace(path: Path) -> Path:
    """The file itself where a link points to it; an OSError where putting another in its place would lose something."""
    there = path.resolve() if path.is_symlink() else path
    if there.exists():
        facts = there.stat()
        if not stat.S_ISREG(facts.st_mode):
            raise OSError(errno.EINVAL, NO_FILE)
        # Putting another file in its place would pass over what its owner said.
        if not facts.st_mode & 0o222:
            raise PermissionError(errno.EACCES, READ_ONLY)
        if facts.st_nlink > 1:
            raise OSError(errno.EMLINK, MANY_NAMES)
    return there


def _part(there: Path, data: bytes, opened: ExitStack) -> Path:
    """The data beside its place, on the disk, with the mode and the owner of the file that it replaces."""
    facts = there.stat() if there.exists() else None
    part, handle = _new_part(there.parent, stat.S_IMODE(facts.st_mode) if facts else 0o666)
    file = os.fdopen(handle, "wb")
    try:
        file.write(data)
        file.flush()
        os.fsync(handle)
        if facts:
            _make_alike(handle, facts)
    except BaseException:
        file.close()
        part.unlink(missing_ok=True)
        raise
    if fcntl:
        opened.callback(file.close)
    else:  # an open file cannot be renamed there
        file.close()
    return part


def _new_part(folder: Path, mode: int) -> tuple[Path, int]:
    """A new file, locked as long as it is open; its mode is cut down by the umask, as that of any new file."""
    while True:
        part = folder / f"{OURS}{secrets.token_hex(8)}{NOT_DONE}"
        handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), mode)
        if not fcntl:
            return part, handle
        fcntl.flock(handle, fcntl.LOCK_EX)
        if os.fstat(handle).st_nlink:
            return part, handle
        os.close(handle)  # another run took it for a leftover before it was locked


def _make_alike(handle: int, facts: os.stat_result) -> None:
    ours = os.fstat(handle)
    if hasattr(os, "fchown") and (ours.st_uid, ours.st_gid) != (facts.st_uid, facts.st_gid):
        try:
            os.fchown(handle, facts.st_uid, facts.st_gid)
        except PermissionError:
            raise PermissionError(errno.EPERM, OF_ANOTHER) from None
    if hasattr(os, "fchmod"):
        os.fchmod(handle, stat.S_IMODE(facts.st_mode))


def _put_new(part: Path, there: Path) -> None:
    """Give a part its name, which nothing else may have by now."""
    try:
        os.link(part, there)
    except FileExistsError:
        raise FileExistsError(errno.EEXIST, THERE_ALREADY) from None
    except OSError:  # a file system without links, such as that of a memory card: the name is taken first, then filled
        _take(there)
        with ExitStack() as undo:
            undo.callback(there.unlink)
            part.replace(there)
            undo.pop_all()
        return
    part.unlink()


def _take(there: Path) -> None:
    try:
        os.close(os.open(there, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o666))
    except FileExistsError:
        raise FileExistsError(errno.EEXIST, THERE_ALREADY) from None


def _sync(folder: Path) -> None:
    """Have the folder itself on the disk, where the system can; the file is whole in any case."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def _clear(folder: Path) -> None:
    """Remove what runs that were stopped have left."""
    for part in folder.glob(f"{OURS}*{NOT_DONE}"):
        with suppress(OSError):
            if not _in_use(part):
                part.unlink()


def _in_use(part: Path) -> bool:
    if not fcntl:
        return False
    handle = os.open(part, os.O_RDONLY | os.O_NOFOLLOW | os.O_NONBLOCK)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return True
    finally:
        os.close(handle)
    return False


def _remove_empty(folder: Path) -> None:
    with suppress(OSError):
        folder.rmdir()


def zipped(parts: Mapping[str, bytes], compression: int = zipfile.ZIP_DEFLATED) -> bytes:
    """Parts as one file, the same bytes each time."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for name, data in parts.items():
            entry = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
            entry.compress_type, entry.create_system, entry.external_attr = compression, 3, 0o644 << 16
            target.writestr(entry, data)
    return out.getvalue()
