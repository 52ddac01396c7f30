"""What each command takes of a processor and of memory, with its imports, on the demo.

    python tests/bench/bench_commands.py [FOLDER]

FOLDER is another checkout to measure instead, such as one of an earlier commit. The least of several runs is told.
"""

import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent.parent.parent
RUNS = 5


def commands(book: Path, out: Path) -> dict[str, list[str]]:
    return {
        "check": ["check", str(book)],
        "show costs": ["show", str(book), "costs"],
        "show batch": ["show", str(book), "batch"],
        "new --demo": ["new", str(out), "--demo", "--force"],
        "new --from": ["new", str(out), "--from", str(book), "--force"],
        "ask": ["ask", "oil_for_wax", "wax=10 oz", "load=7%"],
        "functions --find": ["functions", "--find", "highest load"],
    }


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


def main() -> None:
    folder = Path(sys.argv[1]).resolve() if sys.argv[1:] else HERE
    with tempfile.TemporaryDirectory() as place:
        book, out = Path(place, "demo.xlsx"), Path(place, "out.xlsx")
        subprocess.run([sys.executable, "-m", "candlecalc", "new", book, "--demo"], cwd=folder, check=True)  # noqa: S603
        for name, arguments in commands(book, out).items():
            runs = [taken(folder, arguments) for _ in range(RUNS)]
            print(f"{name:18} {min(cpu for cpu, _ in runs):5.2f} s  {max(memory for _, memory in runs):4.0f} MB")


if __name__ == "__main__":
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    main()
