"""Files as we write them: whole or not at all, and the same bytes each time."""

import errno
import io
import os
import tempfile
import zipfile
from collections.abc import Mapping
from pathlib import Path

THERE_ALREADY = "is there already; --force writes over it"


def write_whole(path: Path, data: bytes, *, force: bool = False) -> None:
    """Write a file whole or not at all; an OSError names the file and says why not."""
    # Putting another file in its place would pass over what its owner said.
    if path.exists() and not path.stat().st_mode & 0o222:
        raise PermissionError(errno.EACCES, "it is read-only", str(path))
    try:
        _write(path, data)
    except OSError as problem:
        raise OSError(problem.errno, problem.strerror, str(path)) from None


def _write(path: Path, data: bytes) -> None:
    handle, beside = tempfile.mkstemp(dir=path.parent or Path(), prefix=".", suffix=".part")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
        Path(beside).chmod(0o644)
        Path(beside).replace(path)
    except BaseException:
        Path(beside).unlink(missing_ok=True)
        raise


def zipped(parts: Mapping[str, bytes], compression: int = zipfile.ZIP_DEFLATED) -> bytes:
    """Parts as one file, the same bytes each time."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for name, data in parts.items():
            entry = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
            entry.compress_type, entry.create_system, entry.external_attr = compression, 3, 0o644 << 16
            target.writestr(entry, data)
    return out.getvalue()
