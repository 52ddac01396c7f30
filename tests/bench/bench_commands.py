"""What each command takes of a processor and of memory, with its imports, on the demo and on the demo's year.

    python tests/bench/bench_commands.py [FOLDER]

FOLDER is another checkout, such as one of an earlier commit: it is measured in turn with this one, and told before it.
The least of several runs is told, and the most memory.
"""

import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent.parent.parent
BOOKS = {"demo": (["--demo"], 5), "year": (["--demo", "--records"], 2)}  # how it is made, how often each is run


def commands(made: list[str], book: Path, out: Path) -> dict[str, list[str]]:
    return {
        "check": ["check", str(book)],
        "show costs": ["show", str(book), "costs"],
        "show batch": ["show", str(book), "batch"],
        " ".join(["new", *made]): ["new", str(out), *made, "--force"],
        "new --from": ["new", str(out), "--from", str(book), "--force"],
    }


OF_NO_BOOK = {
    "ask": ["ask", "oil_for_wax", "wax=10 oz", "load=7%"],
    "functions --find": ["functions", "--find", "highest load"],
}
RUNS_OF_NO_BOOK = 5


def taken(folder: Path, arguments: list[str]) -> tuple[float, float]:
    """CPU seconds and megabytes of one run."""
    child = os.fork()
    if not child:
        os.chdir(folder)
        with open(os.devnull, "w") as nowhere:  # noqa: PTH123
            os.dup2(nowhere.fileno(), 1)
            os.dup2(nowhere.fileno(), 2)
        os.execv(sys.executable, [sys.executable, "-m", "candlecalc", *arguments])  # noqa: S606
    _, status, used = os.wait4(child, 0)
    if os.waitstatus_to_exitcode(status) not in (0, 1):
        raise SystemExit(f"{' '.join(arguments)}: it ended with {os.waitstatus_to_exitcode(status)}")
    return used.ru_utime + used.ru_stime, used.ru_maxrss / 1024


def told(name: str, calls: dict[Path, list[str]], runs: int) -> None:
    """A line of the table: the checkouts side by side, each run in turn."""
    each = [[taken(folder, arguments) for folder, arguments in calls.items()] for _ in range(runs)]
    cells = [
        f"{min(cpu for cpu, _ in of_one):.2f} s, {max(memory for _, memory in of_one):.0f} MB"
        for of_one in zip(*each, strict=True)
    ]
    print("|", " | ".join([name, *cells]), "|", flush=True)


def main() -> None:
    folders = [*(Path(given).resolve() for given in sys.argv[1:2]), HERE]
    with tempfile.TemporaryDirectory() as place:
        for kind, (made, runs) in BOOKS.items():
            calls: dict[str, dict[Path, list[str]]] = {}
            for number, folder in enumerate(folders):
                book = Path(place, f"{kind}-{number}.xlsx")
                subprocess.run([sys.executable, "-m", "candlecalc", "new", book, *made], cwd=folder, check=True)  # noqa: S603
                for name, arguments in commands(made, book, Path(place, "out.xlsx")).items():
                    calls.setdefault(name, {})[folder] = arguments
            for name, of_each in calls.items():
                told(f"{kind}: {name}", of_each, runs)
    for name, arguments in OF_NO_BOOK.items():
        told(name, dict.fromkeys(folders, arguments), RUNS_OF_NO_BOOK)


if __name__ == "__main__":
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    main()
