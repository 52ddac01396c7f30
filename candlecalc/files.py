"""Files as we write them: whole or not at all, and the same bytes each time."""

import io
import os
import tempfile
import zipfile
from collections.abc import Mapping
from pathlib import Path


def write_whole(path: Path, data: bytes) -> None:
    """Write a file whole or not at all."""
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
