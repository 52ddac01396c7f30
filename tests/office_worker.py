"""Runs under the office suite's own Python: starts the office and hands it requests, a line of JSON each.

`libreoffice.py` starts it as `office_worker.py SOFFICE PROFILE [OPTION...]`. What answers is `office_inside.py`.
`uno` is imported where it is used: only that Python has it, and the test run reads this file too.
"""

import contextlib
import json
import subprocess
import sys
import time
from pathlib import Path

INSIDE = Path(__file__).with_name("office_inside.py")
START_SECONDS, STOP_SECONDS = 90, 10


def main(soffice, profile, *options):
    # A pipe has a name of our own choosing, where a port could be taken by another office.
    pipe = f"pipe,name=candles{Path(profile).name};urp;"
    office = subprocess.Popen(  # noqa: S603
        [soffice, f"-env:UserInstallation={Path(profile).as_uri()}", f"--accept={pipe}", *options]
        + ["--headless", "--norestore", "--nolockcheck", "--nodefault", "--nologo"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    try:
        context = _context(office, pipe)
        answer = _inside(context)
        _say(json.dumps({"ready": True}))
        for line in sys.stdin:
            try:
                _say(answer(line))
            except Exception:  # whatever the bridge says: nobody is at its other end, as who asked will see
                return
        with contextlib.suppress(Exception):  # the office hangs up before it answers
            context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context).terminate()
        office.wait(STOP_SECONDS)
    finally:
        office.terminate()


def _context(office, pipe):
    import uno

    context = uno.getComponentContext()
    resolver = context.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", context)
    end = time.monotonic() + START_SECONDS
    while time.monotonic() < end and office.poll() is None:
        try:
            return resolver.resolve(f"uno:{pipe}StarOffice.ComponentContext")
        except Exception:  # not up yet
            time.sleep(0.1)
    raise SystemExit("the office did not start")


def _inside(context):
    """What answers a request, in the office's own process: to read cells over the pipe takes ten times as long."""
    from com.sun.star.beans import NamedValue

    loader = context.ServiceManager.createInstanceWithContext("com.sun.star.loader.Python", context)
    answers = loader.activate("Answers", "", INSIDE.as_uri(), None).createInstanceWithContext(context)
    return lambda line: answers.execute((NamedValue("request", line),))


def _say(line):
    print(line, flush=True)


if __name__ == "__main__":
    main(*sys.argv[1:])
