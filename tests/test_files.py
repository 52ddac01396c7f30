"""Files are written whole or not at all, and a command says in one line why not."""

from pathlib import Path

import foreign
import pytest
from click.testing import CliRunner

from candlecalc.cli import main
from candlecalc.files import write_whole

# Every command that writes, with what it writes in the last place.
WRITING = [
    ["new", "out.xlsx"],
    ["functions", "--workbook", "out.xlsx"],
    ["add-functions", "mine.xlsx", "out.xlsx"],
    ["addin", "calc", "out.oxt"],
    ["addin", "excel", "out"],
]


@pytest.fixture
def here(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "mine.xlsx").write_bytes(foreign.by_pandas())
    return tmp_path


@pytest.mark.parametrize("words", WRITING, ids=lambda words: " ".join(words[:-1]))
def test_a_full_disk_is_told_in_one_line_and_leaves_nothing_behind(here, monkeypatch, words):
    def full(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", full)
    told = CliRunner().invoke(main, words)
    assert (told.exit_code, told.stdout) == (1, "")
    assert told.stderr.startswith(f"candlecalc: {words[-1]}")
    assert told.stderr.endswith(": No space left on device\n") and told.stderr.count("\n") == 1
    assert [path.name for path in here.rglob("*") if path.is_file()] == ["mine.xlsx"]


@pytest.mark.parametrize("words", WRITING[:4], ids=lambda words: " ".join(words[:-1]))
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
