"""The command's first step. A key that stops it ends it without a word, until the commands are there to say so."""

import gc
import signal
import sys

signal.signal(signal.SIGINT, signal.SIG_DFL)


def main() -> None:
    # One command makes much and throws little away: looking for what is thrown away takes a tenth of its time.
    gc.disable()
    from candlecalc.commands.cli import STOPPED
    from candlecalc.commands.cli import main as commands

    try:
        signal.signal(signal.SIGINT, signal.default_int_handler)
        commands()
    except KeyboardInterrupt:
        sys.exit(STOPPED)


if __name__ == "__main__":
    main()
