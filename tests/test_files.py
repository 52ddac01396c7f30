"""Files are written whole or not at all, and a command says in one line why not."""

import errno
import os
import signal
import stat
import subprocess
import sys
from pathlib import Path

import foreign
import pytest
from click.testing import CliRunner

from candlecalc import files
from candlecalc.commands.cli import main
from candlecalc.files import write_whole

# Every command that writes, with what it writes in the last place.
WRITING = [
    ["new", "out.xlsx"],
    ["functions", "--workbook", "out.xlsx"],
    ["add-functions", "mine.xlsx", "out.xlsx"],
    ["addin", "calc", "out.oxt"],
    ["addin", "web", "out.js"],
    ["addin", "excel", "out"],
]
ORDINARY = 12345  # a user of no name and no rights
needs_root = pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="only root gives files away")


@pytest.fixture
def here(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "mine.xlsx").write_bytes(foreign.by_pandas())
    return tmp_path


def full_after(monkeypatch, written):
    """A disk that is full once so many files were written to it."""
    fsync, count = os.fsync, iter(range(written))

    def fill(handle):
        if next(count, None) is None:
            raise OSError(errno.ENOSPC, "No space left on device")
        fsync(handle)

    monkeypatch.setattr(os, "fsync", fill)


@pytest.mark.parametrize("words", WRITING, ids=lambda words: " ".join(words[:-1]))
def test_a_full_disk_is_told_in_one_line_and_leaves_nothing_behind(here, monkeypatch, words):
    full_after(monkeypatch, 0)
    told = CliRunner().invoke(main, words)
    assert (told.exit_code, told.stdout) == (1, "")
    assert told.stderr.startswith(f"candlecalc: {words[-1]}")
    assert told.stderr.endswith(": No space left on device\n") and told.stderr.count("\n") == 1
    assert [path.name for path in here.rglob("*")] == ["mine.xlsx"]


@pytest.mark.parametrize("written", [1, 7])
def test_a_disk_that_fills_up_leaves_no_half_folder(here, monkeypatch, written):
    (here / "out").mkdir()
    (here / "out" / "mine.txt").write_text("mine")
    full_after(monkeypatch, written)
    for folder in ("new/deep", "out"):
        assert CliRunner().invoke(main, ["addin", "excel", folder]).exit_code == 1
    assert sorted(path.relative_to(here).as_posix() for path in here.rglob("*")) == ["mine.xlsx", "out", "out/mine.txt"]


def test_a_file_that_appears_meanwhile_takes_the_other_files_back(here, monkeypatch):
    link, count = os.link, iter(range(3))

    def late(part, there):
        if next(count, None) is None:
            Path(there).write_bytes(b"another's")
        link(part, there)

    monkeypatch.setattr(os, "link", late)
    told = CliRunner().invoke(main, ["addin", "excel", "out"])
    assert (told.exit_code, "is there already" in told.stderr) == (2, True)
    assert [path.read_bytes() for path in (here / "out").rglob("*") if path.is_file()] == [b"another's"]


@pytest.mark.parametrize("words", WRITING[:5], ids=lambda words: " ".join(words[:-1]))
def test_a_file_that_may_not_be_written_is_kept_even_with_force(here, words):
    out = here / words[-1]
    out.write_bytes(b"keep")
    out.chmod(0o444)
    told = CliRunner().invoke(main, [*words, "--force"])
    assert (told.exit_code, told.stderr) == (1, f"candlecalc: {words[-1]}: it is read-only\n")
    assert out.read_bytes() == b"keep"


def test_a_folder_that_is_none_of_ours_to_write_in_is_told(tmp_path):
    with pytest.raises(OSError, match="No such file or directory") as refused:
        write_whole(tmp_path / "nowhere" / "out.xlsx", b"")
    assert refused.value.filename == str(tmp_path / "nowhere" / "out.xlsx")


# Without --force


@pytest.mark.parametrize("links", [True, False], ids=["links", "a file system without links"])
@pytest.mark.parametrize("words", WRITING[:5], ids=lambda words: " ".join(words[:-1]))
def test_a_file_that_appears_while_we_work_is_not_replaced(here, monkeypatch, words, links):
    make, out = files._part, here / words[-1]

    def late(*given):
        out.write_bytes(b"another's")
        return make(*given)

    monkeypatch.setattr(files, "_part", late)
    if not links:
        without_links(monkeypatch)
    told = CliRunner().invoke(main, words)
    assert (told.exit_code, told.stderr) == (2, f"candlecalc: {words[-1]} is there already; --force writes over it\n")
    assert out.read_bytes() == b"another's"
    assert {path.name for path in here.iterdir()} == {"mine.xlsx", out.name}


def without_links(monkeypatch):
    def none(*_):
        raise OSError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "link", none)


def test_a_file_system_without_links_gets_the_file_too(tmp_path, monkeypatch):
    without_links(monkeypatch)
    write_whole(tmp_path / "out.xlsx", b"data")
    assert [(path.name, path.read_bytes()) for path in tmp_path.iterdir()] == [("out.xlsx", b"data")]


def test_a_name_that_was_taken_and_cannot_be_filled_is_given_up(tmp_path, monkeypatch):
    def refused(*_):
        raise OSError(errno.EIO, "Input/output error")

    without_links(monkeypatch)
    monkeypatch.setattr(os, "replace", refused)
    monkeypatch.setattr(Path, "replace", refused)
    with pytest.raises(OSError, match="Input/output error"):
        write_whole(tmp_path / "out.xlsx", b"data")
    assert list(tmp_path.iterdir()) == []


def test_a_link_that_points_nowhere_is_a_file_that_is_there(tmp_path):
    (tmp_path / "out.xlsx").symlink_to(tmp_path / "gone.xlsx")
    with pytest.raises(FileExistsError, match="is there already"):
        write_whole(tmp_path / "out.xlsx", b"data")


@pytest.mark.parametrize("umask, mode", [(0o022, 0o644), (0o077, 0o600), (0o002, 0o664)])
def test_a_new_file_keeps_to_the_umask(tmp_path, umask, mode):
    before = os.umask(umask)
    try:
        write_whole(tmp_path / "out.xlsx", b"data")
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "out.xlsx").stat().st_mode) == mode


# With --force


@pytest.fixture
def there(tmp_path):
    path = tmp_path / "there.xlsx"
    path.write_bytes(b"before")
    return path


def test_a_file_that_is_written_over_keeps_its_mode(there):
    there.chmod(0o600)
    write_whole(there, b"after", force=True)
    assert (there.read_bytes(), stat.S_IMODE(there.stat().st_mode)) == (b"after", 0o600)


@needs_root
def test_a_file_that_is_written_over_keeps_its_owner(there):
    os.chown(there, ORDINARY, ORDINARY)
    write_whole(there, b"after", force=True)
    assert (there.read_bytes(), there.stat().st_uid, there.stat().st_gid) == (b"after", ORDINARY, ORDINARY)


def test_an_owner_that_cannot_be_kept_is_a_reason_to_refuse(there, monkeypatch):
    monkeypatch.setattr(os, "fchown", lambda *_: _not_permitted())
    monkeypatch.setattr(files.os, "fstat", lambda handle, fstat=os.fstat: _of_another(fstat(handle)))
    with pytest.raises(PermissionError, match="it belongs to another user or group"):
        write_whole(there, b"after", force=True)
    assert [(path.name, path.read_bytes()) for path in there.parent.iterdir()] == [("there.xlsx", b"before")]


def _not_permitted():
    raise PermissionError(errno.EPERM, "Operation not permitted")


def _of_another(facts):
    values = list(facts)
    values[4] += 1  # its owner
    return os.stat_result(values)


def test_a_link_is_kept_and_the_file_behind_it_written(there):
    link = there.with_name("link.xlsx")
    link.symlink_to("there.xlsx")
    write_whole(link, b"after", force=True)
    assert link.is_symlink()
    assert there.read_bytes() == b"after"


def test_a_file_of_several_names_is_refused(there):
    os.link(there, there.with_name("other.xlsx"))
    with pytest.raises(OSError, match="several names"):
        write_whole(there, b"after", force=True)
    assert there.read_bytes() == b"before"


def test_a_pipe_is_not_written_over(tmp_path):
    os.mkfifo(tmp_path / "pipe.xlsx")
    with pytest.raises(OSError, match="it is a pipe or a device"):
        write_whole(tmp_path / "pipe.xlsx", b"after", force=True)
    assert (tmp_path / "pipe.xlsx").is_fifo()


# On the disk, and after a run that was stopped


def test_the_file_is_on_the_disk_before_it_has_its_name_and_the_folder_after(there, monkeypatch):
    done = []
    for name in ("fsync", "link", "replace"):
        monkeypatch.setattr(os, name, _noted(done, name, getattr(os, name)))
    write_whole(there.with_name("new.xlsx"), b"data")
    assert done == ["fsync a file", "link", "fsync a folder"]
    done.clear()
    write_whole(there, b"data", force=True)
    assert done[0] == "fsync a file" and done[-1] == "fsync a folder"


def _noted(done, name, does):
    def noted(*given, **named):
        what = "" if name != "fsync" else " a folder" if stat.S_ISDIR(os.fstat(given[0]).st_mode) else " a file"
        done.append(name + what)
        return does(*given, **named)

    return noted


KILLED = """
import os, pathlib, signal, sys
from candlecalc import files
os.fsync = lambda handle: os.kill(os.getpid(), signal.{signal})
files.write_whole(pathlib.Path("out.xlsx"), b"data")
"""


def test_what_a_killed_run_leaves_is_known_as_ours_and_cleared_by_the_next(tmp_path):
    done = subprocess.run([sys.executable, "-c", KILLED.format(signal="SIGKILL")], cwd=tmp_path)  # noqa: S603
    assert done.returncode == -signal.SIGKILL
    (left,) = tmp_path.iterdir()
    assert left.name.startswith(".candlecalc-") and left.name.endswith(".part")
    for name in (".other.part", ".candlecalc-notes.txt"):
        (tmp_path / name).write_bytes(b"not ours")
    write_whole(tmp_path / "out.xlsx", b"data")
    assert {path.name for path in tmp_path.iterdir()} == {"out.xlsx", ".other.part", ".candlecalc-notes.txt"}


def test_what_another_run_is_writing_is_left_alone(tmp_path):
    running = subprocess.Popen([sys.executable, "-c", KILLED.format(signal="SIGSTOP")], cwd=tmp_path)  # noqa: S603
    try:
        os.waitpid(running.pid, os.WUNTRACED)
        (part,) = tmp_path.iterdir()
        write_whole(tmp_path / "mine.xlsx", b"data")
        assert part.exists()
    finally:
        running.kill()
        running.wait()
